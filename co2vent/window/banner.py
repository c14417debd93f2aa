"""The full-width banner of everything that is not a live vent, and of simulated data."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from co2vent.window.fit_label import FitLabel
from co2vent.window.frame import Mode
from co2vent.window.sizes import Sizes
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.words import translate


def banner_words(mode: Mode, *, simulated: bool) -> str:
    """Return the words of the banner; empty for a live vent on a real gauge."""
    words = {
        Mode.LIVE: "",
        Mode.REPLAY: translate("Banner", "REPLAY: a recording, not the gauge"),
        Mode.CLASS: translate("Banner", "CLASS: an exercise, not a vent"),
    }[mode]
    if simulated:
        invented = translate("Banner", "SIMULATED: invented readings")
        return f"{invented} · {words}" if words else invented
    return words


class Banner(QWidget):
    """A band across the whole window; hidden for a live vent."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._label = FitLabel(self, bold=True, align=Qt.AlignmentFlag.AlignHCenter)
        row = QHBoxLayout(self)
        row.setContentsMargins(10, 1, 10, 1)
        row.addWidget(self._label)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setFixedHeight(26)
        self.hide()

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        self._label.set_ink(palette.banner.ink)
        self.update()

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self._label.set_max_px(sizes.text_px)
        self.setFixedHeight(round(sizes.text_px * 1.6))

    def show_mode(self, mode: Mode, *, simulated: bool) -> None:
        """Show what kind of data is on the screen."""
        words = banner_words(mode, simulated=simulated)
        self._label.say(words)
        self.setAccessibleName(words)
        self.setVisible(bool(words))

    @property
    def words(self) -> str:
        """The words on the banner."""
        return self._label.text()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the ground."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._palette.banner.ground))
        painter.end()
