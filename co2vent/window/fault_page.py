"""Shown when the screen itself has failed: nothing half alive may look like guidance.

A live vent goes on being read and recorded in its own threads meanwhile.
"""

from PySide6.QtCore import Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from co2vent.window.fit_label import FitLabel
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.words import translate


class FaultPage(QWidget):
    """What to do, what went wrong, and a key to try again."""

    again = Signal()
    leave = Signal()

    def __init__(
        self, error: str, look: Look, *, live: bool, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._look = look
        self.headline = FitLabel(self, bold=True)
        self.headline.say(
            translate("Fault", "Display fault: close the vent")
            if live
            else translate("Fault", "Display fault")
        )
        self.words = FitLabel(self)
        parts = []
        if live:
            parts.append(
                translate(
                    "Fault",
                    "Read the mechanical gauge; if it rises, vent. Readings are still being taken "
                    "and recorded.",
                )
            )
        parts.append(translate("Fault", "This program has a fault: {error}").format(error=error))
        self.words.say("\n\n".join(parts))
        self.keys = [
            Key("play", translate("Fault", "Try again"), "Ctrl+R", self.again.emit, self),
            Key("back", translate("Fault", "Start page"), "Ctrl+W", self.leave.emit, self),
        ]
        row = QHBoxLayout()
        for key in self.keys:
            row.addWidget(key)
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 18, 24, 18)
        column.addWidget(self.headline, 2)
        column.addWidget(self.words, 3)
        column.addLayout(row)

    def apply_look(self) -> None:
        """Take theme and sizes."""
        sizes = self._look.sizes(self)
        ink = self._look.palette.danger.ink
        self.headline.set_ink(ink)
        self.headline.set_max_px(sizes.digit_font_px)
        self.words.set_ink(ink)
        self.words.set_max_px(round(sizes.text_px * 1.4))
        for key in self.keys:
            key.set_theme(self._look.palette)
            key.set_sizes(sizes)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the ground of danger."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._look.palette.danger.ground))
        painter.end()
