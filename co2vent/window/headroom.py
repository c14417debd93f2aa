"""The headroom column: how high the pressure stands above the ice floor.

The floor is the local triple point, the dashed line the stop pressure. The column is linear up to
three times the stop margin; above that it ends in an arrow, because near the floor is where it
matters.
"""

from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from co2vent.window.sizes import Sizes
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.words import translate

TOP_IN_STOP_MARGINS: Final = 3.0
FLOOR_SHARE: Final = 0.16  # of the height, the ground below the triple point


class Headroom(QWidget):
    """A column of headroom over the triple point."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._margin_pa: float | None = None
        self._stop_margin_pa: float | None = None
        self._stale = True
        self.setAccessibleName(translate("Spoken", "headroom above the triple point"))
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        self.setFixedWidth(44)

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        self.update()

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self.setFixedWidth(round(40 * max(1.0, sizes.scale)))

    def show_margin(
        self, margin_pa: float | None, stop_margin_pa: float | None, *, stale: bool
    ) -> None:
        """Show the margin [Pa] above the triple point and where the stop pressure lies."""
        new = (margin_pa, stop_margin_pa, stale)
        if new != (self._margin_pa, self._stop_margin_pa, self._stale):
            self._margin_pa, self._stop_margin_pa, self._stale = new
            self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint floor, stop line and column."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        area = QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5)
        floor_y = area.bottom() - area.height() * FLOOR_SHARE
        ink = QColor(self._palette.ink)
        painter.setPen(QPen(QColor(self._palette.rule), 1.5))
        painter.drawRect(area)
        ground = QRectF(area.left(), floor_y, area.width(), area.bottom() - floor_y)
        painter.fillRect(ground, QBrush(QColor(self._palette.ice), Qt.BrushStyle.BDiagPattern))
        if self._margin_pa is not None and self._stop_margin_pa and not self._stale:
            self._paint_column(painter, area, floor_y)
        painter.setPen(QPen(QColor(self._palette.triple_point), 3.0))
        painter.drawLine(QPointF(area.left(), floor_y), QPointF(area.right(), floor_y))
        stop_y = floor_y - (floor_y - area.top()) / TOP_IN_STOP_MARGINS
        pen = QPen(ink, 3.0, Qt.PenStyle.DashLine)
        painter.setPen(pen)
        painter.drawLine(QPointF(area.left(), stop_y), QPointF(area.right(), stop_y))
        painter.end()

    def _paint_column(self, painter: QPainter, area: QRectF, floor_y: float) -> None:
        margin, stop = self._margin_pa or 0.0, self._stop_margin_pa or 1.0
        share = margin / (stop * TOP_IN_STOP_MARGINS)
        full = floor_y - area.top()
        above = share > 1.0
        top_y = floor_y - full * min(share, 1.0)
        inset = area.width() * 0.24
        if margin < 0:
            depth = min(-share * full, area.bottom() - floor_y)
            column = QRectF(area.left() + inset, floor_y, area.width() - 2 * inset, depth)
            painter.fillRect(column, QColor(self._palette.triple_point))
            return
        if above:
            top_y += area.width() * 0.5
        column = QRectF(area.left() + inset, top_y, area.width() - 2 * inset, floor_y - top_y)
        painter.fillRect(column, QColor(self._palette.ink))
        if above:
            tip = QPolygonF(
                [
                    QPointF(area.center().x(), area.top() + 3.0),
                    QPointF(area.right() - 3.0, top_y),
                    QPointF(area.left() + 3.0, top_y),
                ]
            )
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(self._palette.ink))
            painter.drawPolygon(tip)
