"""The large figures: the margin above the triple point first, then the pressure.

Digits never blink. Stale digits are struck through and hatched, so that they cannot be read as new.
"""

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from co2vent.window.sizes import DIGIT_SHARE_OF_FONT, Sizes
from co2vent.window.theme import OUTDOOR, Band, Palette
from co2vent.window.words import translate

TAIL_SHARE = 0.25  # of the font's size: how far a g hangs below the line; DejaVu Sans Bold 0.24


class Figure(QWidget):
    """One number in large digits with its unit, under a caption that says what it is."""

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._digits = ""
        self._unit = ""
        self._caption = ""
        self._second = ""
        self._stale = False
        self._band: Band | None = None
        self._digit_px = 54
        self._text_px = 16
        self._name = name
        self.painted_digit_px = 0.0
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        self.update()

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self._digit_px = sizes.digit_px
        self._text_px = sizes.text_px
        line = max(sizes.text_px * 1.4, 0.48 * sizes.digit_px)  # small text leaves room for air
        self.setFixedHeight(round(sizes.digit_px * 1.1 + line))
        self.update()

    def show_figure(
        self,
        digits: str,
        unit: str,
        caption: str,
        second: str = "",
        *,
        stale: bool = False,
        band: Band | None = None,
    ) -> None:
        """Show a number; `second` is the same in another unit.

        A `band` gives it a ground and ink of its own, which warn; stale digits warn of nothing.
        """
        band = None if stale else band
        new = (digits, unit, caption, second, stale, band)
        if new == (
            self._digits, self._unit, self._caption, self._second, self._stale, self._band
        ):  # fmt: skip
            return
        self._digits, self._unit, self._caption, self._second, self._stale, self._band = new
        state = f" {translate('Text', 'STALE')}" if stale else ""
        self.setAccessibleName(f"{self._name}: {digits} {unit} {caption}{state}")
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint digits, unit and caption."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        width, height = float(self.width()), float(self.height())
        if self._band is not None:
            painter.fillRect(self.rect(), QColor(self._band.ground))
        caption_height = self._text_px * 1.35
        font = QFont(self.font())
        font.setBold(True)
        unit_font = QFont(self.font())
        unit_font.setBold(True)
        pixel = min(self._digit_px, (height - caption_height) / 1.1) / DIGIT_SHARE_OF_FONT
        while pixel > 10:
            font.setPixelSize(round(pixel))
            unit_font.setPixelSize(max(9, round(min(pixel * 0.42, self._text_px * 1.7))))
            digits_width = QFontMetricsF(font).horizontalAdvance(self._digits)
            unit_width = QFontMetricsF(unit_font).horizontalAdvance(" " + self._unit)
            if digits_width + unit_width <= width:
                break
            pixel *= 0.95
        self.painted_digit_px = round(pixel) * DIGIT_SHARE_OF_FONT
        comma = 0.09 * self.painted_digit_px if "," in self._digits else 0.0
        lift = max(comma, TAIL_SHARE * unit_font.pixelSize())  # comma and g hang down
        baseline = height - lift
        ink = QColor(self._palette.faint if self._stale else self._ink())
        painter.setPen(ink)
        painter.setFont(font)
        painter.drawText(QPointF(0.0, baseline), self._digits)
        painter.setFont(unit_font)
        painter.drawText(QPointF(digits_width, baseline), " " + self._unit)
        box = QRectF(0.0, baseline - self.painted_digit_px, digits_width, self.painted_digit_px)
        if self._second and not self._stale:
            self._paint_second(painter, digits_width, baseline, width)
        if self._stale:
            self._strike(painter, box)
        self._paint_caption(painter, QRectF(0.0, 0.0, width, caption_height))
        painter.end()

    def _ink(self) -> str:
        return self._palette.ink if self._band is None else self._band.ink

    def _paint_second(self, painter: QPainter, left: float, baseline: float, width: float) -> None:
        font = QFont(self.font())
        for size in range(round(self._text_px * 1.25), 9, -1):
            font.setPixelSize(size)
            if QFontMetricsF(font).horizontalAdvance(" " + self._second) + left <= width:
                break
        painter.setFont(font)
        y = baseline - self.painted_digit_px + font.pixelSize() * 0.8
        painter.drawText(QPointF(left, y), " " + self._second)

    def _strike(self, painter: QPainter, box: QRectF) -> None:
        painter.save()
        painter.setClipRect(box.adjusted(-4, -4, 4, 4))
        painter.setPen(QPen(QColor(self._palette.ink), 2.0))
        step = max(9.0, box.height() / 5.0)
        x = box.left() - box.height()
        while x < box.right():
            painter.drawLine(QPointF(x, box.bottom() + 4), QPointF(x + box.height(), box.top() - 4))
            x += step
        painter.setPen(QPen(QColor(self._palette.ink), max(4.0, box.height() / 9.0)))
        middle = box.center().y()
        painter.drawLine(QPointF(box.left() - 4, middle), QPointF(box.right() + 4, middle))
        painter.restore()

    def _paint_caption(self, painter: QPainter, area: QRectF) -> None:
        font = QFont(self.font())
        stale = translate("Text", "STALE")
        caption = f"{stale}  {self._caption}" if self._stale else self._caption
        font.setBold(self._stale)
        for size in range(round(self._text_px * 1.1), 8, -1):
            font.setPixelSize(size)
            if QFontMetricsF(font).horizontalAdvance(caption) <= area.width():
                break
        painter.setFont(font)
        painter.setPen(QColor(self._ink()))
        painter.drawText(area, int(Qt.AlignmentFlag.AlignVCenter.value), caption)
