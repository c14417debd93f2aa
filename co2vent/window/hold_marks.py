"""The holds in the trace: shaded, numbered, and with the curves the verdict was made from.

The two curves may run close or on each other. They differ in dash, width, luminance and the signs
along them, which stand at different places and before the names: open circles for vapour only,
filled triangles for liquid.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Final

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QFont

from co2vent.guidance.session import View
from co2vent.inference.outcome import Charge, HoldAssessment
from co2vent.window.name_places import NO_POINTS, Places, Points, as_points, box_at, pixels_of
from co2vent.window.plot_style import DASH, DASH_DOT, LINE_PX, Scale, pen
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette
from co2vent.window.words import translate

LABEL_SHARE = 0.25  # of the width: a narrower hold has no room for the names of its curves
VAPOR_SIGN: Final = "○"
LIQUID_SIGN: Final = "▲"
VAPOR_SIGNS_AT: Final = (0.2, 0.45, 0.7, 0.95)  # shares of the hold; those of liquid lie between
LIQUID_SIGNS_AT: Final = (0.08, 0.33, 0.58, 0.83)
SIGN_PX: Final = 9
#: Where a name may end, a share of the hold, and how far from its curve, in heights of text.
NAME_ENDS: Final = (1.0, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 1.1)
NAME_AWAY: Final = (0.35, 0.7, 1.1, 1.9, 2.8)


@dataclass(slots=True)
class _Shade:
    region: Any
    label: Any


class HoldMarks:
    """Shades and curves on a pressure plot."""

    def __init__(self, plot: pg.PlotItem) -> None:
        self._plot = plot
        self._shades: dict[int, _Shade] = {}
        self._places = Places()
        self._sign_px = SIGN_PX
        self._palette: Palette | None = None
        self._font = QFont()
        self._vapor = self._curve()
        self._liquid = self._curve()
        self._vapor_signs = self._signs("o")
        self._liquid_signs = self._signs("t1")
        self._vapor_words = self._words((1, 0))
        self._liquid_words = self._words((1, 1))

    def _curve(self) -> Any:
        item = pg.PlotCurveItem()
        item.setZValue(8)
        self._plot.addItem(item, ignoreBounds=True)
        return item

    def _signs(self, symbol: str) -> Any:
        item = pg.ScatterPlotItem(symbol=symbol)
        item.setZValue(9)
        self._plot.addItem(item, ignoreBounds=True)
        return item

    def _words(self, anchor: tuple[int, int]) -> Any:
        words = pg.TextItem(anchor=anchor)
        words.setZValue(20)
        words.setVisible(False)
        self._plot.addItem(words, ignoreBounds=True)
        return words

    def set_theme(self, palette: Palette, font: QFont, sizes: Sizes | None = None) -> None:
        """Paint in the colours of `palette`."""
        self._palette, self._font = palette, font
        self._vapor.setPen(pen(palette.vapor_curve, LINE_PX, DASH, sizes))
        self._liquid.setPen(pen(palette.liquid_curve, LINE_PX + 1, DASH_DOT, sizes))
        size = round(SIGN_PX * (1.0 if sizes is None else max(1.0, 0.75 * sizes.scale)))
        self._sign_px = size
        self._vapor_signs.setSize(size)
        self._vapor_signs.setPen(pen(palette.vapor_curve, LINE_PX, sizes=sizes))
        self._vapor_signs.setBrush(QColor(palette.hold_shade))
        self._liquid_signs.setSize(size)
        self._liquid_signs.setPen(pen(palette.liquid_curve))
        self._liquid_signs.setBrush(QColor(palette.liquid_curve))
        for words, colour in (
            (self._vapor_words, palette.vapor_curve),
            (self._liquid_words, palette.liquid_curve),
        ):
            words.setColor(QColor(colour))
            words.setFont(font)
            words.fill = pg.mkBrush(QColor(palette.hold_shade))  # they stand within the hold
        for shade in self._shades.values():
            self._dress(shade)

    def _dress(self, shade: _Shade) -> None:
        if self._palette is not None:
            shade.region.setBrush(QColor(self._palette.hold_shade))
            shade.label.setColor(QColor(self._palette.ink))
            shade.label.setFont(self._font)

    def clear(self) -> None:
        """Forget all holds."""
        for number in list(self._shades):
            self._remove(number)
        self._show_curves(None, None)

    def _remove(self, number: int) -> None:
        shade = self._shades.pop(number)
        self._plot.removeItem(shade.region)
        self._plot.removeItem(shade.label)

    def show(
        self,
        view: View,
        scale: Scale,
        selected: int | None,
        lines: Points = NO_POINTS,
        names: Sequence[QRectF] = (),
    ) -> None:
        """Shade the holds of the view; draw the curves of one: the selected or the newest.

        `lines` (points in the view box) and `names` (in the scene) are what else is drawn: the
        names of the curves keep clear of it.
        """
        for hold in view.holds:
            shade = self._shades.get(hold.number)
            if shade is None:
                shade = self._add(hold.number)
            running = hold is view.running_hold and view.latest is not None
            end_s = view.latest.at_s if running and view.latest is not None else hold.end_s
            shade.region.setRegion((hold.start_s, end_s))
        for number in set(self._shades) - {hold.number for hold in view.holds}:
            self._remove(number)
        chosen = next((hold for hold in view.holds if hold.number == selected), None)
        if chosen is None and view.holds:
            chosen = view.holds[-1]
        self._show_curves(chosen, scale)
        self._place_names(lines, names)

    def _add(self, number: int) -> _Shade:
        region = pg.LinearRegionItem(movable=False, pen=pg.mkPen(None))
        region.setZValue(-20)
        label = pg.TextItem(str(number), anchor=(0, 0))
        label.setZValue(15)
        self._plot.addItem(region, ignoreBounds=True)
        self._plot.addItem(label, ignoreBounds=True)
        shade = self._shades[number] = _Shade(region, label)
        self._dress(shade)
        return shade

    def _show_curves(self, hold: HoldAssessment | None, scale: Scale | None) -> None:
        curves = hold.curves if hold is not None and scale is not None else ()
        found = {curve.hypothesis: curve for curve in curves if curve.at_s}
        # not inside an f-string: the translators' tool would not find them there
        dry_words, wet_words = (
            translate("Plot", "if vapour only"),
            translate("Plot", "least with liquid left"),
        )
        for charge, item, signs, words, shares, said in (
            (Charge.VAPOR_ONLY, self._vapor, self._vapor_signs, self._vapor_words, VAPOR_SIGNS_AT,
             f"{VAPOR_SIGN} {dry_words}"),
            (Charge.TWO_PHASE, self._liquid, self._liquid_signs, self._liquid_words,
             LIQUID_SIGNS_AT, f"{LIQUID_SIGN} {wet_words}"),
        ):  # fmt: skip
            curve = found.get(charge)
            if curve is None or scale is None:
                words.setVisible(False)
                item.setData([], [])
                signs.setData([], [])
                continue
            at_s, values = np.asarray(curve.at_s), scale.up(np.asarray(curve.pressure_pa))
            item.setData(at_s, values)
            places = at_s[0] + np.asarray(shares) * (at_s[-1] - at_s[0])
            signs.setData(places, np.interp(places, at_s, values))
            words.setText(said)
            words.setPos(float(at_s[-1]), float(values[-1]))
            low, high = self._plot.viewRange()[0]
            words.setVisible(bool(at_s[-1] - at_s[0] > LABEL_SHARE * (high - low)))

    def _place_names(self, lines: Points, names: Sequence[QRectF]) -> None:
        """Put each name on the outer side of its curve, where neither lines nor names are."""
        box = self._plot.getViewBox()
        room = QRectF(0.0, 0.0, box.width(), box.height())
        if room.isEmpty():
            return
        curves = (self._vapor.getData(), self._liquid.getData())
        drawn = as_points(box, [curve for curve in curves if curve[0] is not None])
        seen = np.vstack([lines, drawn, self._sign_edges(box)])
        taken = [box.mapRectFromScene(name) for name in names]
        taken += self._place_numbers(box, room, seen, taken)
        for name, words, (time, value), above in (
            ("liquid", self._liquid_words, curves[1], True),
            ("vapor", self._vapor_words, curves[0], False),
        ):
            if not words.isVisible() or time is None or not len(time):
                continue
            size, line_px = words.boundingRect().size(), max(self._font.pixelSize(), 1)
            at_s = time[0] + np.array(NAME_ENDS) * (time[-1] - time[0])
            ends = pixels_of(box, at_s, np.interp(at_s, time, value)).tolist()
            places = [
                (QPointF(x, y - away * line_px if side else y + away * line_px), (1.0, float(side)))
                for side in (above, not above)
                for away in NAME_AWAY
                for x, y in ends
            ]
            boxes = [box_at(place, size, anchor) for place, anchor in places]
            best, _under = self._places.choose(name, boxes, room, seen, taken)
            place, anchor = places[best]
            words.setAnchor(anchor)
            words.setPos(box.mapToView(place))
            taken.append(boxes[best])

    def _sign_edges(self, box: Any) -> Points:
        """Return the edges of the signs along the curves: they reach over the lines."""
        half = 0.5 * self._sign_px + 1.0
        around = np.array([[half, 0.0], [-half, 0.0], [0.0, half], [0.0, -half]])
        found = [
            pixels_of(box, *signs.getData())[:, None, :] + around
            for signs in (self._vapor_signs, self._liquid_signs)
        ]
        edges: Points = np.concatenate(found).reshape(-1, 2)
        return edges

    def _place_numbers(
        self, box: Any, room: QRectF, seen: Points, taken: Sequence[QRectF]
    ) -> list[QRectF]:
        """Put each hold's number where it begins: on top, or at the foot where the trace is."""
        placed: list[QRectF] = []
        for number, shade in self._shades.items():
            x = float(pixels_of(box, [shade.region.getRegion()[0]], [0.0])[0, 0])
            size = shade.label.boundingRect().size()
            ends = ((QPointF(x, 0.0), (0.0, 0.0)), (QPointF(x, room.height()), (0.0, 1.0)))
            boxes = [box_at(place, size, anchor) for place, anchor in ends]
            best, _under = self._places.choose(str(number), boxes, room, seen, taken)
            shade.label.setAnchor(ends[best][1])
            shade.label.setPos(box.mapToView(ends[best][0]))
            placed.append(boxes[best])
        return placed
