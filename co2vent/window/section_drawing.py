"""A small drawing of the section: the liquid as estimated, with its uncertainty.

The level is logarithmic, because a few grams matter and would not be seen on a true scale; the
marks at the side say so. Solid: at least this much. Hatched: up to this much. Line: the best
estimate. All hatched with a question mark: not bounded. Dry ice is drawn without a scale: crossed
at the bottom where it shows, hatched above while nothing bounds it.
"""

import math
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from co2vent.inference.outcome import Bounds, Charge
from co2vent.window import text
from co2vent.window.sizes import Sizes
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.words import charge_words, translate

LOWEST_SHARE: Final = 1e-4  # of the volume: 0.01 % is drawn as nothing
MARKS: Final = ((1e-3, 1), (1e-2, 0), (1e-1, 0), (1.0, 0))  # share of the volume, decimals
ICE_SHARE: Final = 0.4  # of the height: the dry ice that shows, however much it is
LINE_OF_MARK: Final = 1.15  # a mark's words need so many times their size


def level(share: float) -> float:
    """Return the height, 0 to 1, at which a volume share is drawn.

    >>> round(level(0.01), 2)
    0.5
    """
    if share <= LOWEST_SHARE:
        return 0.0
    return min(1.0, 1.0 - math.log10(min(share, 1.0)) / math.log10(LOWEST_SHARE))


class SectionDrawing(QWidget):
    """The section between two closed valves, seen from the side."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._share: Bounds | None = None
        self._charge = Charge.UNDETERMINED
        self._known = False
        self._small_px = 13
        self.setAccessibleName(translate("Spoken", "section: nothing known yet"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(40)

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        self.update()

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self._small_px = max(10, round(sizes.small_px * 0.85))
        self.update()

    def show_liquid(self, share: Bounds | None, charge: Charge, *, known: bool) -> None:
        """Show the liquid's share of the volume.

        `known` is False where no hold has spoken, or nothing bounds the dry ice.
        """
        if (share, charge, known) == (self._share, self._charge, self._known):
            return
        self._share, self._charge, self._known = share, charge, known
        self.setAccessibleName(
            translate("Spoken", "section: {state}").format(state=charge_words(charge))
        )
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint pipe, valves, liquid and marks."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        marks_width = self._small_px * 4.0
        valve = min(self.height() * 0.4, self.width() * 0.09)
        width = max(20.0, self.width() - 2 * valve - marks_width - 6.0)
        room = self.height() - 1.2 * self._small_px  # half the words of the marks at both ends
        height = min(room, 0.75 * width)  # a length of pipe lies down
        body = QRectF(valve + 2.0, (self.height() - height) / 2.0, width, height)
        shape = QPainterPath()
        corner = body.height() * 0.32
        shape.addRoundedRect(body, corner, corner)
        painter.save()
        painter.setClipPath(shape)
        painter.fillPath(shape, QColor(self._palette.surface))
        self._paint_contents(painter, body)
        painter.restore()
        painter.setPen(QPen(QColor(self._palette.ink), 2.5))
        painter.drawPath(shape)
        self._paint_valve(painter, QPointF(body.left() - valve / 2.0, body.center().y()), valve)
        self._paint_valve(painter, QPointF(body.right() + valve / 2.0, body.center().y()), valve)
        if self._charge is not Charge.SOLID_PRESENT:  # the marks are those of liquid
            self._paint_marks(painter, body, valve, marks_width)
        painter.end()

    def _paint_contents(self, painter: QPainter, body: QRectF) -> None:
        liquid = QColor(self._palette.liquid)
        share = self._share
        if self._charge is Charge.SOLID_PRESENT:
            self._paint_ice(painter, body)
            return
        if self._charge is Charge.SUBCOOLED_LIQUID:
            painter.fillRect(body, liquid)
            return
        if not self._known or share is None or share.upper is None:
            painter.fillRect(body, QBrush(QColor(self._palette.rule), Qt.BrushStyle.BDiagPattern))
            self._ask(painter, body)
            return
        low = level(share.lower or 0.0) * body.height()
        high = level(share.upper) * body.height()
        painter.fillRect(
            QRectF(body.left(), body.bottom() - high, body.width(), high - low),
            QBrush(liquid, Qt.BrushStyle.BDiagPattern),
        )
        painter.fillRect(QRectF(body.left(), body.bottom() - low, body.width(), low), liquid)
        if share.estimate:
            best = body.bottom() - level(share.estimate) * body.height()
            painter.setPen(QPen(QColor(self._palette.ink), 2.5))
            painter.drawLine(QPointF(body.left(), best), QPointF(body.right(), best))
        painter.setPen(QPen(liquid, 2.0, Qt.PenStyle.DashLine))
        painter.drawLine(
            QPointF(body.left(), body.bottom() - high), QPointF(body.right(), body.bottom() - high)
        )

    def _paint_ice(self, painter: QPainter, body: QRectF) -> None:
        """Paint the dry ice that shows, and over it how much more there may be."""
        colour = QColor(self._palette.ice)
        top = body.bottom() - body.height() * ICE_SHARE
        if not self._known:
            more = QRectF(body.left(), body.top(), body.width(), top - body.top())
            painter.fillRect(more, QBrush(colour, Qt.BrushStyle.BDiagPattern))
            self._ask(painter, more)
        ice = QRectF(body.left(), top, body.width(), body.bottom() - top)
        painter.fillRect(ice, QBrush(colour, Qt.BrushStyle.DiagCrossPattern))

    def _ask(self, painter: QPainter, area: QRectF) -> None:
        font = QFont(self.font())
        font.setPixelSize(max(14, round(area.height() * (1.0 - ICE_SHARE))))
        font.setBold(True)
        painter.setFont(font)
        painter.setPen(QColor(self._palette.ink))
        painter.drawText(area, int(Qt.AlignmentFlag.AlignCenter.value), "?")

    def _paint_valve(self, painter: QPainter, middle: QPointF, size: float) -> None:
        half = size / 2.0
        path = QPainterPath(QPointF(middle.x() - half, middle.y() - half))
        path.lineTo(middle.x() + half, middle.y() + half)
        path.lineTo(middle.x() + half, middle.y() - half)
        path.lineTo(middle.x() - half, middle.y() + half)
        path.closeSubpath()
        painter.fillPath(path, QColor(self._palette.ink))

    def _paint_marks(
        self, painter: QPainter, body: QRectF, valve: float, marks_width: float
    ) -> None:
        font = QFont(self.font())
        font.setPixelSize(self._small_px)
        painter.setFont(font)
        painter.setPen(QPen(QColor(self._palette.faint), 1.5))
        left = body.right() + valve + 2.0
        sparse = body.height() / len(MARKS) < self._small_px * LINE_OF_MARK
        for at, (share, places) in enumerate(MARKS):
            if sparse and at % 2 == 0:
                continue
            y = body.bottom() - level(share) * body.height()
            painter.drawLine(QPointF(left, y), QPointF(left + 4.0, y))
            box = QRectF(left + 6.0, y - self._small_px, marks_width, self._small_px * 2.0)
            words = f"{text.number(100.0 * share, places)} %"
            painter.drawText(box, int(Qt.AlignmentFlag.AlignVCenter.value), words)
