"""The cut-away section of the reveal: liquid, dry ice, vapour and frost as they really were."""

from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from co2vent.co2 import (
    TRIPLE_TEMPERATURE_K,
    liquid_density_kg_m3,
    solid_density_kg_m3,
)
from co2vent.errors import OutOfRangeError
from co2vent.section_model.simulation import PocketTruth, Truth
from co2vent.units import ZERO_CELSIUS_K
from co2vent.window.section_drawing import level
from co2vent.window.sizes import Sizes
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.words import translate

FROST_BELOW_K: Final = ZERO_CELSIUS_K  # metal colder than this shows frost in damp air
LIQUID_DENSITY_KG_M3: Final = 1178.0  # at the triple point, where the real one can't be had
SOLID_DENSITY_KG_M3: Final = 1512.0  # at the triple point (Span & Wagner 1996: about 1512)


def shares(pocket: PocketTruth, volume_m3: float) -> tuple[float, float]:
    """Return the shares of the section's volume that are liquid and dry ice."""
    liquid, solid = LIQUID_DENSITY_KG_M3, SOLID_DENSITY_KG_M3
    try:
        if pocket.condensed_k >= TRIPLE_TEMPERATURE_K:
            liquid = liquid_density_kg_m3(pocket.condensed_k)
        else:
            solid = solid_density_kg_m3(pocket.condensed_k)
    except OutOfRangeError:
        pass
    return pocket.liquid_kg / liquid / volume_m3, pocket.solid_kg / solid / volume_m3


class TruthDrawing(QWidget):
    """The section cut open. The level is logarithmic, as in the drawing beside the figures."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._truth: Truth | None = None
        self._volume_m3 = 0.01
        self._text_px = 16
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(60)

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        self.update()

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self._text_px = sizes.text_px
        self.update()

    def show_truth(self, truth: Truth, volume_m3: float) -> None:
        """Show what is really inside."""
        self._truth, self._volume_m3 = truth, volume_m3
        liquid_g, ice_g = truth.liquid_kg * 1e3, truth.solid_kg * 1e3
        self.setAccessibleName(f"cut-away section: liquid {liquid_g:.0f} g, dry ice {ice_g:.0f} g")
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint wall, contents and frost."""
        if self._truth is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        margin = self._text_px * 1.2
        body = QRectF(self.rect()).adjusted(margin, margin, -margin, -margin)
        shape = QPainterPath()
        corner = min(body.height(), body.width()) * 0.2
        shape.addRoundedRect(body, corner, corner)
        painter.fillPath(shape, QColor(self._palette.surface))
        painter.save()
        painter.setClipPath(shape)
        pockets = self._truth.pockets
        width = body.width() / max(1, len(pockets))
        for place, pocket in enumerate(pockets):
            part = QRectF(body.left() + place * width, body.top(), width, body.height())
            self._paint_pocket(painter, part, pocket)
        painter.restore()
        painter.setPen(QPen(QColor(self._palette.ink), 5.0))
        painter.drawPath(shape)
        self._paint_frost(painter, body)
        painter.end()

    def _paint_pocket(self, painter: QPainter, part: QRectF, pocket: PocketTruth) -> None:
        liquid, ice = shares(pocket, self._volume_m3)
        high = part.height()
        ice_px = level(ice) * high
        liquid_px = max(level(liquid + ice) * high - ice_px, 0.0) if liquid > 1e-5 else 0.0
        bottom = part.bottom()
        if ice_px > 0:
            box = QRectF(part.left(), bottom - ice_px, part.width(), ice_px)
            painter.fillRect(box, QBrush(QColor(self._palette.ice), Qt.BrushStyle.DiagCrossPattern))
            self._label(painter, box, translate("Class", "dry ice"))
        if liquid_px > 0:
            top = bottom - ice_px - liquid_px
            box = QRectF(part.left(), top, part.width(), liquid_px)
            painter.fillRect(box, QColor(self._palette.liquid))
            self._label(painter, box, translate("Class", "liquid"), QColor(self._palette.page))
        free = QRectF(part.left(), part.top(), part.width(), high - ice_px - liquid_px)
        if free.height() > self._text_px:
            self._label(painter, free, translate("Class", "vapour"))

    def _label(
        self, painter: QPainter, box: QRectF, words: str, colour: QColor | None = None
    ) -> None:
        if box.height() < self._text_px * 0.9:
            return
        font = QFont(self.font())
        font.setPixelSize(self._text_px)
        font.setBold(True)
        painter.setFont(font)
        painter.setPen(colour or QColor(self._palette.ink))
        painter.drawText(box, int(Qt.AlignmentFlag.AlignCenter.value), words)

    def _paint_frost(self, painter: QPainter, body: QRectF) -> None:
        """Paint frost as short strokes outside the wall, where the metal is below freezing."""
        assert self._truth is not None
        painter.setPen(QPen(QColor(self._palette.ice), 3.0))
        coldest = min((p.metal_k for p in self._truth.pockets), default=self._truth.dry_metal_k)
        length, step = self._text_px * 0.5, self._text_px * 0.9
        sides = (
            (coldest, body.bottom() + 6.0, 1.0),
            (self._truth.dry_metal_k, body.top() - 6.0, -1.0),
        )
        for metal_k, y, way in sides:
            if metal_k >= FROST_BELOW_K:
                continue
            x = body.left() + step
            while x < body.right() - step / 2:
                painter.drawLine(QPointF(x, y), QPointF(x, y + way * length))
                x += step
