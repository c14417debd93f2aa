"""The band that says UNCHECKED: word, sign and hatching, so that no colour is needed to see it."""

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from co2vent.guidance.events import Severity
from co2vent.window.fit_label import FitLabel
from co2vent.window.prompt_band import outline
from co2vent.window.sizes import Sizes
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.words import translate


class UncheckedBand(QWidget):
    """Says that the rows on the screen have not been checked, and how far the check is."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self.word = FitLabel(self, bold=True)
        self.why = FitLabel(self)
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.word, 3)
        words.addWidget(self.why, 2)
        self._row = QHBoxLayout(self)
        self._row.addLayout(words)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_share(self, share: float) -> None:
        """Show how much of the log has been checked."""
        self.word.say(
            translate("Loading", "UNCHECKED: {percent} % of the rows checked").format(
                percent=int(100 * share)
            )
        )
        self.why.say(
            translate(
                "Loading",
                "The trace as it stands in the file, for looking only: no verdict, no saving yet.",
            )
        )
        self.setAccessibleName(f"{self.word.text()}. {self.why.text()}")

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        for label in (self.word, self.why):
            label.set_ink(palette.caution.ink)
        self.update()

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self.word.set_max_px(round(sizes.text_px * 1.6))
        self.why.set_max_px(sizes.text_px)
        self.setFixedHeight(round(sizes.text_px * 4.2))
        side = self.height()
        self._row.setContentsMargins(round(1.9 * side), 4, round(0.9 * side), 4)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the ground, the hatching at both ends and the triangle of caution."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ground, ink = QColor(self._palette.caution.ground), QColor(self._palette.caution.ink)
        painter.fillRect(self.rect(), ground)
        side = float(self.height())
        hatch = QBrush(ink, Qt.BrushStyle.BDiagPattern)
        for left in (0.0, self.width() - 0.8 * side):
            painter.fillRect(QRectF(left, 0.0, 0.8 * side, side), hatch)
        sign = QRectF(1.0 * side, 0.14 * side, 0.8 * side, 0.72 * side)
        triangle = outline(Severity.CAUTION, sign)
        if triangle is not None:
            painter.setPen(QPen(ink, max(3.0, 0.05 * side)))
            painter.drawPolygon(triangle)
        painter.end()
