"""The holds in the trace: shaded, numbered, and with the curves the verdict was made from.

The two curves may run close or on each other. They differ in dash, width, luminance and the signs
along them, which stand at different places and before the names: open circles for vapour only,
filled triangles for liquid.
"""

from dataclasses import dataclass
from typing import Any, Final

import numpy as np
import pyqtgraph as pg
from PySide6.QtGui import QColor, QFont

from co2vent.guidance.session import View
from co2vent.inference.outcome import Charge, Curve, HoldAssessment
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
CLOSE_LINES: Final = 2.6  # ends nearer than so many heights of text: names side by side
ASIDE: Final = 0.62  # where the name of the lower curve then ends, a share of the hold


@dataclass(slots=True)
class _Shade:
    region: Any
    label: Any


class HoldMarks:
    """Shades and curves on a pressure plot."""

    def __init__(self, plot: pg.PlotItem) -> None:
        self._plot = plot
        self._shades: dict[int, _Shade] = {}
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

    def show(self, view: View, scale: Scale, selected: int | None) -> None:
        """Shade the holds of the view; draw the curves of one: the selected or the newest."""
        for hold in view.holds:
            shade = self._shades.get(hold.number)
            if shade is None:
                shade = self._add(hold.number)
            running = hold is view.running_hold and view.latest is not None
            end_s = view.latest.at_s if running and view.latest is not None else hold.end_s
            shade.region.setRegion((hold.start_s, end_s))
            shade.label.setPos(hold.start_s, self._plot.viewRange()[1][1])
        for number in set(self._shades) - {hold.number for hold in view.holds}:
            self._remove(number)
        chosen = next((hold for hold in view.holds if hold.number == selected), None)
        if chosen is None and view.holds:
            chosen = view.holds[-1]
        self._show_curves(chosen, scale)

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
        ends: dict[Charge, float] = {}
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
            ends[charge] = float(values[-1])
        if len(ends) == 2:
            self._part_words(found[Charge.VAPOR_ONLY], ends, scale)

    def _part_words(self, vapor: Curve, ends: dict[Charge, float], scale: Scale | None) -> None:
        """Put the lower name aside where the two curves end close to each other."""
        height = self._plot.getViewBox().viewPixelSize()[1]
        apart_px = abs(ends[Charge.TWO_PHASE] - ends[Charge.VAPOR_ONLY]) / max(height, 1e-12)
        if scale is None or apart_px > CLOSE_LINES * max(self._font.pixelSize(), 1):
            return
        at_s = np.asarray(vapor.at_s)
        aside_s = float(at_s[0] + ASIDE * (at_s[-1] - at_s[0]))
        value = np.interp(aside_s, at_s, scale.up(np.asarray(vapor.pressure_pa)))
        self._vapor_words.setPos(aside_s, float(value))
