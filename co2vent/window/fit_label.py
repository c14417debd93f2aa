"""A label whose text is as large as its place allows, up to a limit, and is never cut off."""

import re

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

SMALLEST_PX = 9
# No line ends between a number and its unit, nor within the unit: "bar/" over "min" and "bar" over
# "g" read as other figures.
_BEFORE_UNIT = re.compile(
    r"(?<=\d) (?=(?:m?bar|psi[ag]?|kPa|°[CF]|k?g|oz|lb|K|mm|ppm|min|s|h|l)\b|%)"
)
_WITHIN_UNIT = re.compile(r"(?<=\bbar|\bkPa|\bMPa) (?=(?:g|abs|a)\b)")


class FitLabel(QLabel):
    """Paints its text in the largest font that fits, between 9 pixels and `max_px`."""

    def __init__(
        self,
        parent: QWidget | None = None,
        *,
        max_px: int = 24,
        bold: bool = False,
        wrap: bool = True,
        align: Qt.AlignmentFlag = Qt.AlignmentFlag.AlignLeft,
    ) -> None:
        super().__init__(parent)
        self._max_px = max_px
        self._bold = bold
        self._ink = QColor("black")
        self._flags = int((align | Qt.AlignmentFlag.AlignVCenter).value)
        if wrap:
            self._flags |= int(Qt.TextFlag.TextWordWrap.value)
        self._fitted: tuple[str, QSize, int] | None = None
        self._font = QFont()
        self.fits = True
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)

    def set_max_px(self, max_px: int) -> None:
        """Set the largest font size [logical pixels]."""
        if max_px != self._max_px:
            self._max_px = max_px
            self.updateGeometry()
            self.update()

    def set_ink(self, colour: str) -> None:
        """Set the colour of the text."""
        ink = QColor(colour)
        if ink != self._ink:
            self._ink = ink
            self.update()

    def say(self, text: str) -> None:
        """Show `text`; nothing is painted again when it has not changed."""
        if text != self.text():
            self.setText(text)

    @property
    def painted(self) -> str:
        """The text with its units kept whole."""
        text = _WITHIN_UNIT.sub("\u00a0", _BEFORE_UNIT.sub("\u00a0", self.text()))
        return text.replace("/min", "/\u2060min")

    @property
    def font_px(self) -> int:
        """The font size [logical pixels] the text is painted in."""
        self._fit()
        return self._font.pixelSize()

    def sizeHint(self) -> QSize:
        """Return room for one line in the largest font."""
        metrics = QFontMetrics(self._font_of(self._max_px))
        return QSize(metrics.horizontalAdvance(self.text() or "0"), metrics.height())

    def minimumSizeHint(self) -> QSize:
        """Return next to nothing: the text shrinks rather than pushes."""
        return QSize(10, SMALLEST_PX + 2)

    def _font_of(self, pixel_size: int) -> QFont:
        font = QFont(self.font())
        font.setPixelSize(pixel_size)
        font.setBold(self._bold)
        return font

    def _fits_in(self, font: QFont, room: QRect) -> bool:
        box = QFontMetrics(font).boundingRect(room, self._flags, self.painted)
        return box.width() <= room.width() and box.height() <= room.height()

    def _fit(self) -> None:
        key = (self.text(), self.size(), self._max_px)
        if key == self._fitted:
            return
        room = self.contentsRect()
        low, high = SMALLEST_PX, max(SMALLEST_PX, self._max_px)
        self.fits = self._fits_in(self._font_of(low), room)
        while low < high:
            middle = (low + high + 1) // 2
            if self._fits_in(self._font_of(middle), room):
                low = middle
            else:
                high = middle - 1
        self._font = self._font_of(low)
        self._fitted = key

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the text in the font that fits."""
        self._fit()
        painter = QPainter(self)
        painter.setFont(self._font)
        painter.setPen(self._ink)
        painter.drawText(self.contentsRect(), self._flags, self.painted)
        painter.end()
