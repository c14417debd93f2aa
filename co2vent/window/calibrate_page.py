"""Tell the program how large the screen really is: drivers often say it wrongly.

A bar is shown that should be 100 mm long. Its length is set until a ruler agrees.
"""

from typing import Final

from PySide6.QtCore import QPointF, QRectF, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from co2vent.window.fit_label import FitLabel
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.sizes import pixels
from co2vent.window.words import translate

BAR_MM: Final = 100.0
STEP: Final = 1.02
LEAST, MOST = 0.3, 3.0


class CalibratePage(QWidget):
    """A bar, a ruler beside it, and two keys."""

    back = Signal()

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.words = FitLabel(self, bold=True)
        self.words.say(
            translate("Calibrate", "Lay a ruler on the screen and make the bar 100 mm long.")
        )
        self.keys = [
            Key("back", translate("Key", "Back"), "Esc", self._leave, self),
            Key("slower", translate("Key", "Shorter"), "-", self._shorter, self),
            Key("faster", translate("Key", "Longer"), "+", self._longer, self),
        ]
        row = QHBoxLayout()
        for key in self.keys:
            row.addWidget(key)
        column = QVBoxLayout(self)
        column.setContentsMargins(14, 10, 14, 10)
        column.addWidget(self.words)
        column.addStretch(1)
        column.addLayout(row)

    @property
    def bar_px(self) -> float:
        """The length of the bar in logical pixels."""
        dots = self.screen().physicalDotsPerInch() * self._look.calibration
        return pixels(BAR_MM, max(dots, 1.0))

    def _longer(self) -> None:
        self._set(self._look.calibration * STEP)

    def _shorter(self) -> None:
        self._set(self._look.calibration / STEP)

    def _set(self, calibration: float) -> None:
        self._look.calibration = min(max(calibration, LEAST), MOST)
        self.update()

    def _leave(self) -> None:
        self._look.save()
        self.back.emit()

    def apply_look(self) -> None:
        """Take theme and sizes."""
        sizes = self._look.sizes(self)
        self.words.set_ink(self._look.palette.ink)
        self.words.set_max_px(round(sizes.text_px * 1.4))
        self.words.setFixedHeight(round(sizes.text_px * 4.0))
        for key in self.keys:
            key.set_theme(self._look.palette)
            key.set_sizes(sizes)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the page and the bar."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._look.palette.page))
        left, middle = 20.0, self.height() / 2.0
        bar = QRectF(left, middle - 12.0, self.bar_px, 24.0)
        painter.fillRect(bar, QColor(self._look.palette.ink))
        painter.setPen(QColor(self._look.palette.ink))
        for end in (bar.left(), bar.right()):
            painter.drawLine(QPointF(end, middle - 30.0), QPointF(end, middle + 30.0))
        painter.end()
