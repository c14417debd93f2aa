"""What a live vent says, above any other page that stands in front of it; a touch goes back."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from co2vent.guidance.events import Severity
from co2vent.window.fit_label import FitLabel
from co2vent.window.look import Look
from co2vent.window.shown import Shown
from co2vent.window.words import translate


class LiveStrip(QWidget):
    """One line in the colours of the prompt."""

    touched = Signal()

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self._severity = Severity.CALM
        self._label = FitLabel(self, bold=True)
        row = QHBoxLayout(self)
        row.setContentsMargins(12, 2, 12, 2)
        row.addWidget(self._label)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.hide()

    def show_live(self, said: Shown, banner: str, *, in_front: bool) -> None:
        """Show the prompt and the pressure, unless the vent's own page is in front.

        `banner` is what the banner of the vent's page says, if it has one.
        """
        self.setVisible(not in_front)
        if in_front:
            return
        figure = f"{said.pressure} {said.pressure_unit}"
        if said.stale:
            figure = f"{translate('Text', 'STALE')} {figure}"
        back = translate("Live", "Ctrl+L: back to the vent")
        self._severity = said.severity
        parts = (banner, said.headline, figure, said.age, back)
        self._label.say("  ·  ".join(part for part in parts if part))
        self.setAccessibleName(self._label.text())
        self.apply_look()

    @property
    def words(self) -> str:
        """The words on the strip."""
        return self._label.text()

    def apply_look(self) -> None:
        """Take theme and sizes."""
        sizes = self._look.sizes(self.window())
        self.setFixedHeight(sizes.target_px)
        self._label.set_max_px(round(sizes.text_px * 1.2))
        self._label.set_ink(self._look.palette.band(self._severity).ink)
        self.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """A touch goes back to the vent."""
        if event.button() is Qt.MouseButton.LeftButton:
            self.touched.emit()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the ground of the prompt."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._look.palette.band(self._severity).ground))
        painter.end()
