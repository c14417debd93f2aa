"""The P-T diagram: saturation and sublimation lines, the triple point and the path of the vent."""

from typing import Any

import numpy as np
import pyqtgraph as pg
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QVBoxLayout, QWidget

from co2vent.co2 import (
    TRIPLE_PRESSURE_PA,
    TRIPLE_TEMPERATURE_K,
    saturation_pressure_pa_array,
    sublimation_pressure_pa_array,
)
from co2vent.guidance.session import View
from co2vent.units import PRESSURE_UNITS, temperature_from_k
from co2vent.window import text
from co2vent.window.number_axes import NumberAxis
from co2vent.window.plot_style import DASH, LINE_PX, dress, pen, plain_font
from co2vent.window.sizes import Sizes
from co2vent.window.text import UnitChoice
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.traces import Traces
from co2vent.window.words import translate

PATH_POINTS = 4000  # a path is thinned to this many points
COLDEST_K = 190.0
WARMEST_K = 303.0


class LinePlot(QWidget):
    """Where the vent stands between vapour, liquid and dry ice."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._units = UnitChoice.BAR
        self._sizes: Sizes | None = None
        self._lines_for: tuple[str, float] | None = None
        self.setAccessibleName(translate("Spoken", "pressure against temperature"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        axes = {side: NumberAxis(side) for side in ("left", "bottom")}
        self.widget = pg.PlotWidget(axisItems=axes)
        self.plot = self.widget.getPlotItem()
        self.plot.hideButtons()
        self.plot.setMenuEnabled(False)
        self.plot.disableAutoRange()
        column.addWidget(self.widget)
        self._saturation = pg.PlotCurveItem()
        self._sublimation = pg.PlotCurveItem()
        self._path = pg.PlotCurveItem(connect="finite")
        self._triple = pg.ScatterPlotItem(size=12, symbol="d")
        self._now = pg.ScatterPlotItem(size=14, symbol="o")
        self._stop = pg.InfiniteLine(angle=0)
        self._pressure_line = pg.InfiniteLine(angle=0)
        self._words = {
            name: pg.TextItem(anchor=anchor)
            for name, anchor in (
                ("liquid", (0.5, 0.5)),
                ("vapour", (0.5, 0.5)),
                ("ice", (0.0, 0.5)),
                ("triple", (0.0, 0.0)),
            )
        }
        for item in (
            self._saturation, self._sublimation, self._stop, self._pressure_line,
            self._path, self._triple, self._now, *self._words.values(),
        ):  # fmt: skip
            self.plot.addItem(item, ignoreBounds=True)

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        self.widget.setBackground(QColor(palette.page))
        dress(self.plot, palette, self._sizes)
        sizes = self._sizes
        self._saturation.setPen(pen(palette.saturation, LINE_PX, sizes=sizes))
        self._sublimation.setPen(pen(palette.ice, LINE_PX, DASH, sizes))
        self._path.setPen(pen(palette.trace, LINE_PX, sizes=sizes))
        self._triple.setBrush(QColor(palette.triple_point))
        self._triple.setPen(pen(palette.triple_point))
        scale = 1.0 if sizes is None else max(1.0, 0.75 * sizes.scale)
        self._triple.setSize(round(12 * scale))
        self._now.setSize(round(14 * scale))
        self._now.setBrush(QColor(palette.ink))
        self._now.setPen(pen(palette.page, LINE_PX))
        self._stop.setPen(pen(palette.stop, LINE_PX, DASH, sizes))
        self._pressure_line.setPen(pen(palette.rule))
        for words in self._words.values():
            words.setColor(QColor(palette.faint))

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self._sizes = sizes
        for words in self._words.values():
            words.setFont(plain_font(sizes))
        self.set_theme(self._palette)

    def set_units(self, units: UnitChoice) -> None:
        """Speak other units; the path is drawn again at the next reading."""
        self._units = units
        self._lines_for = None

    def show_path(self, traces: Traces, rows: int, view: View) -> None:
        """Draw the first `rows` rows as a path through the diagram."""
        unit = PRESSURE_UNITS[self._units.pressure]
        ambient = view.setup.ambient_pressure_pa
        offset = ambient if unit.gauge else 0.0

        def up(pressure_pa: Any) -> Any:
            return (np.asarray(pressure_pa, np.float64) - offset) / unit.pascals

        def across(temperature_k: Any) -> Any:
            return temperature_from_k(temperature_k, self._units.temperature)

        if self._lines_for != (self._units.pressure, ambient):
            self._draw_lines(up, across)
            self._lines_for = (self._units.pressure, ambient)
        step = max(1, rows // PATH_POINTS)
        line_k = traces.line_temperature_k(rows)[::step]
        pressure_pa = traces.pressure_pa(rows)[::step]
        self._path.setData(across(line_k), up(pressure_pa))
        self._stop.setPos(float(up(view.stop_pressure_pa)))
        latest = view.latest
        highest = float(np.nanmax(pressure_pa)) if rows else view.stop_pressure_pa
        if latest is not None:
            self._pressure_line.setPos(float(up(latest.pressure_pa)))
            known = latest.line_temperature_k is not None
            self._now.setData(
                [across(latest.line_temperature_k)] if known else [],
                [float(up(latest.pressure_pa))] if known else [],
            )
        self._fit(up, across, highest, view)

    def _draw_lines(self, up: Any, across: Any) -> None:
        wet_k = np.linspace(TRIPLE_TEMPERATURE_K, WARMEST_K, 240)
        ice_k = np.linspace(COLDEST_K, TRIPLE_TEMPERATURE_K, 120)
        self._saturation.setData(across(wet_k), up(saturation_pressure_pa_array(wet_k)))
        self._sublimation.setData(across(ice_k), up(sublimation_pressure_pa_array(ice_k)))
        self._triple.setData([across(TRIPLE_TEMPERATURE_K)], [float(up(TRIPLE_PRESSURE_PA))])
        self._words["triple"].setPos(across(TRIPLE_TEMPERATURE_K), float(up(TRIPLE_PRESSURE_PA)))
        self.plot.setLabel("left", text.unit_words(self._units.pressure))
        self.plot.setLabel("bottom", text.unit_words(self._units.temperature))
        for name, words in (
            ("liquid", translate("Plot", "liquid")),
            ("vapour", translate("Plot", "vapour")),
            ("ice", translate("Plot", "dry ice")),
            ("triple", translate("Plot", "triple point")),
        ):
            self._words[name].setText(words)

    def _fit(self, up: Any, across: Any, highest_pa: float, view: View) -> None:
        top = float(up(highest_pa * 1.1))
        low = float(up(0.4e5))
        left, right = across(205.0), across(WARMEST_K)
        self.plot.setXRange(left, right, padding=0)
        self.plot.setYRange(low, top, padding=0)
        height = top - low
        self._words["liquid"].setPos(across(225.0), low + height * 0.75)
        self._words["vapour"].setPos(across(285.0), low + height * 0.12)
        self._words["ice"].setPos(across(205.5), low + height * 0.5)
        del view
