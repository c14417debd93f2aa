"""The holds in the trace: shaded, numbered, and with the curves the verdict was made from."""

from dataclasses import dataclass
from typing import Any

import numpy as np
import pyqtgraph as pg
from PySide6.QtGui import QColor, QFont

from co2vent.guidance.session import View
from co2vent.inference.outcome import Charge, HoldAssessment
from co2vent.window.plot_style import DASH, DASH_DOT, LINE_PX, Scale, pen
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette
from co2vent.window.words import translate

LABEL_SHARE = 0.25  # of the width: a narrower hold has no room for the names of its curves


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
        self._vapor_words = self._words((1, 0))
        self._liquid_words = self._words((1, 1))

    def _curve(self) -> Any:
        item = pg.PlotCurveItem()
        item.setZValue(8)
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
        self._liquid.setPen(pen(palette.liquid_curve, LINE_PX, DASH_DOT, sizes))
        for words, colour in (
            (self._vapor_words, palette.vapor_curve),
            (self._liquid_words, palette.liquid_curve),
        ):
            words.setColor(QColor(colour))
            words.setFont(font)
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
        shown = {Charge.VAPOR_ONLY: False, Charge.TWO_PHASE: False}
        for curve in hold.curves if hold is not None and scale is not None else ():
            vapor = curve.hypothesis is Charge.VAPOR_ONLY
            if not curve.at_s or scale is None:
                continue
            item = self._vapor if vapor else self._liquid
            words = self._vapor_words if vapor else self._liquid_words
            values = scale.up(np.asarray(curve.pressure_pa))
            item.setData(np.asarray(curve.at_s), values)
            words.setText(
                translate("Plot", "if vapour only")
                if vapor
                else translate("Plot", "least with liquid left")
            )
            words.setPos(curve.at_s[-1], float(values[-1]))
            low, high = self._plot.viewRange()[0]
            roomy = curve.at_s[-1] - curve.at_s[0] > LABEL_SHARE * (high - low)
            shown[Charge.VAPOR_ONLY if vapor else Charge.TWO_PHASE] = True
            words.setVisible(roomy)
        for charge, item, words in (
            (Charge.VAPOR_ONLY, self._vapor, self._vapor_words),
            (Charge.TWO_PHASE, self._liquid, self._liquid_words),
        ):
            if not shown[charge]:
                words.setVisible(False)
                item.setData([], [])
