"""Pressure against time, with the lines that matter and the holds; temperature beneath."""

from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QVBoxLayout, QWidget

from co2vent.co2 import saturation_pressure_pa_array
from co2vent.guidance.events import Event, EventKind
from co2vent.guidance.session import View
from co2vent.inference.outcome import Charge, HoldAssessment
from co2vent.units import PRESSURE_UNITS, temperature_from_k
from co2vent.window import text
from co2vent.window.plot_style import (
    DASH,
    DASH_DOT,
    DOT,
    LINE_PX,
    ClockAxis,
    dress,
    pen,
    plain_font,
)
from co2vent.window.sizes import Sizes
from co2vent.window.text import UnitChoice
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.traces import Traces
from co2vent.window.words import translate

MARKED_EVENTS = {
    EventKind.VENT_STARTED,
    EventKind.VENT_CLOSED,
    EventKind.VERDICT,
    EventKind.BELOW_TRIPLE_POINT,
    EventKind.SHELF,
    EventKind.DATA_STALE,
    EventKind.DATA_GAP,
    EventKind.TIME_BROKEN,
    EventKind.GAUGE_FAULT,
    EventKind.PRESSURE_HIGH,
    EventKind.NOTE,
    EventKind.HOLD_VOIDED,
}


@dataclass(slots=True)
class _Shade:
    region: Any
    label: Any


class TracePlot(QWidget):
    """The pressure trace with its lines, and the temperature trace."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._units = UnitChoice.BAR
        self._ambient_pa = 101_325.0
        self._sizes: Sizes | None = None
        self._shades: dict[int, _Shade] = {}
        self._marks: list[Any] = []
        self._marked = 0
        self._follow = True
        self._whole = False
        self._ranges: tuple[float, float, float, float] | None = None
        self.setAccessibleName("pressure and temperature against time")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        self.layout_widget = pg.GraphicsLayoutWidget()
        self.layout_widget.ci.layout.setSpacing(2)
        self.layout_widget.ci.layout.setContentsMargins(0, 2, 6, 0)
        column.addWidget(self.layout_widget)
        self.pressure = self.layout_widget.addPlot(
            row=0, col=0, axisItems={"bottom": ClockAxis("bottom")}
        )
        self.temperature = self.layout_widget.addPlot(
            row=1, col=0, axisItems={"bottom": ClockAxis("bottom")}
        )
        self.layout_widget.ci.layout.setRowStretchFactor(0, 3)
        self.layout_widget.ci.layout.setRowStretchFactor(1, 1)
        self.temperature.setXLink(self.pressure)
        for plot in (self.pressure, self.temperature):
            plot.hideButtons()
            plot.setMenuEnabled(False)
            plot.disableAutoRange()
        self._curve = self._add_curve(self.pressure)
        self._line = self._add_curve(self.temperature)
        self._upper = self._add_curve(self.temperature)
        self._saturation = self._add_curve(self.pressure)
        self._vapor = pg.PlotCurveItem()
        self._liquid = pg.PlotCurveItem()
        for item in (self._vapor, self._liquid):
            item.setZValue(8)
            self.pressure.addItem(item)
        self._triple = self._level(0)
        self._stop = self._level(1)
        self._vapor_words = pg.TextItem(anchor=(1, 0))
        self._liquid_words = pg.TextItem(anchor=(1, 1))
        for words in (self._vapor_words, self._liquid_words):
            words.setZValue(20)
            self.pressure.addItem(words)
        self.pressure.getViewBox().sigRangeChangedManually.connect(self._taken_over)

    def _add_curve(self, plot: Any) -> Any:
        item = pg.PlotDataItem(connect="finite")
        plot.addItem(item)  # before the settings: adding resets them
        item.setDownsampling(auto=True, method="peak")
        item.setClipToView(True)
        return item

    def _level(self, side: int) -> Any:
        """Return a level whose words stand at its right end, above (1) or below (0)."""
        line = pg.InfiniteLine(
            angle=0, label="", labelOpts={"position": 0.995, "anchors": [(1, side), (1, side)]}
        )
        line.setZValue(5)
        self.pressure.addItem(line)
        return line

    # --- looks -------------------------------------------------------------------------------

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        self.layout_widget.setBackground(QColor(palette.page))
        for plot in (self.pressure, self.temperature):
            dress(plot, palette, self._sizes)
        self._curve.setPen(pen(palette.trace))
        self._line.setPen(pen(palette.temperature))
        self._upper.setPen(pen(palette.temperature, 1, DASH))
        self._saturation.setPen(pen(palette.saturation, 1, DOT))
        self._vapor.setPen(pen(palette.vapor_curve, LINE_PX, DASH))
        self._liquid.setPen(pen(palette.liquid_curve, LINE_PX, DASH_DOT))
        self._triple.setPen(pen(palette.triple_point, 3))
        self._stop.setPen(pen(palette.stop, LINE_PX, DASH))
        self._triple.label.setColor(QColor(palette.triple_point))
        self._stop.label.setColor(QColor(palette.stop))
        self._vapor_words.setColor(QColor(palette.vapor_curve))
        self._liquid_words.setColor(QColor(palette.liquid_curve))
        for shade in self._shades.values():
            self._dress_shade(shade)

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self._sizes = sizes
        font = plain_font(sizes)
        for words in (self._vapor_words, self._liquid_words, self._triple.label, self._stop.label):
            words.setFont(font)
        for shade in self._shades.values():
            shade.label.setFont(font)
        self.set_theme(self._palette)

    def set_units(self, units: UnitChoice) -> None:
        """Speak other units; the trace is drawn again at the next reading."""
        self._units = units
        self._ranges = None

    def _dress_shade(self, shade: _Shade) -> None:
        shade.region.setBrush(QColor(self._palette.hold_shade))
        shade.label.setColor(QColor(self._palette.ink))
        if self._sizes is not None:
            shade.label.setFont(plain_font(self._sizes))

    # --- data --------------------------------------------------------------------------------

    def clear(self) -> None:
        """Forget holds and marks, as before a new vent."""
        for shade in self._shades.values():
            self.pressure.removeItem(shade.region)
            self.pressure.removeItem(shade.label)
        self._shades.clear()
        for mark in self._marks:
            self.pressure.removeItem(mark)
        self._marks.clear()
        self._marked = 0
        self._follow = True
        self._ranges = None

    def _shown(self, pressure_pa: Any) -> Any:
        unit = PRESSURE_UNITS[self._units.pressure]
        offset = self._ambient_pa if unit.gauge else 0.0
        return (np.asarray(pressure_pa, np.float64) - offset) / unit.pascals

    def show_trace(self, traces: Traces, rows: int, view: View) -> None:
        """Draw the first `rows` rows and what the view says of them."""
        self._ambient_pa = view.setup.ambient_pressure_pa
        unit = self._units.pressure
        at_s = traces.at_s(rows)
        shown = self._shown(traces.pressure_pa(rows))
        self._curve.setData(at_s, shown)
        line_k = traces.line_temperature_k(rows)
        upper_k = traces.upper_temperature_k(rows)
        degree = self._units.temperature
        self._line.setData(at_s, temperature_from_k(line_k, degree))  # type: ignore[arg-type]
        self._upper.setData(at_s, temperature_from_k(upper_k, degree))  # type: ignore[arg-type]
        self._set_level(self._triple, view.triple_point_pa, translate("Plot", "triple point"), unit)
        self._set_level(self._stop, view.stop_pressure_pa, translate("Plot", "stop"), unit)
        self.pressure.setLabel("left", text.unit_words(unit))
        self.temperature.setLabel("left", text.unit_words(degree))
        self._show_saturation(at_s, line_k)
        self._show_holds(view)
        self._show_events(view.events)
        if self._follow and rows:
            self._fit(at_s, shown, line_k, view)

    def _set_level(self, line: Any, pressure_pa: float, words: str, unit: str) -> None:
        value = float(self._shown(pressure_pa))
        line.setPos(value)
        line.label.setFormat(f"{words} {text.pressure(pressure_pa, self._ambient_pa, unit)}")

    def _show_saturation(self, at_s: Any, line_k: Any) -> None:
        pressure = saturation_pressure_pa_array(line_k)
        self._saturation.setData(at_s, self._shown(pressure))

    def _show_holds(self, view: View) -> None:
        seen: set[int] = set()
        for hold in view.holds:
            seen.add(hold.number)
            shade = self._shades.get(hold.number)
            if shade is None:
                region = pg.LinearRegionItem(movable=False, pen=pg.mkPen(None))
                region.setZValue(-20)
                label = pg.TextItem(anchor=(0, 0))
                label.setZValue(15)
                self.pressure.addItem(region, ignoreBounds=True)
                self.pressure.addItem(label, ignoreBounds=True)
                shade = self._shades[hold.number] = _Shade(region, label)
                self._dress_shade(shade)
                label.setText(str(hold.number))
            running = hold is view.running_hold and view.latest is not None
            end_s = view.latest.at_s if running and view.latest is not None else hold.end_s
            shade.region.setRegion((hold.start_s, end_s))
            shade.label.setPos(hold.start_s, self.pressure.viewRange()[1][1])
        for number in set(self._shades) - seen:
            shade = self._shades.pop(number)
            self.pressure.removeItem(shade.region)
            self.pressure.removeItem(shade.label)
        self._show_curves(view.holds[-1] if view.holds else None)

    def _show_curves(self, hold: HoldAssessment | None) -> None:
        drawn: set[Charge] = set()
        for curve in hold.curves if hold is not None else ():
            vapor = curve.hypothesis is Charge.VAPOR_ONLY
            item = self._vapor if vapor else self._liquid
            words = self._vapor_words if vapor else self._liquid_words
            values = self._shown(curve.pressure_pa)
            item.setData(np.asarray(curve.at_s), values)
            if len(values):
                words.setText(
                    translate("Plot", "if vapour only")
                    if vapor
                    else translate("Plot", "if liquid is left")
                )
                words.setPos(curve.at_s[-1], float(values[-1]))
                words.setVisible(True)
            drawn.add(Charge.VAPOR_ONLY if vapor else Charge.TWO_PHASE)
        for charge, item, words in (
            (Charge.VAPOR_ONLY, self._vapor, self._vapor_words),
            (Charge.TWO_PHASE, self._liquid, self._liquid_words),
        ):
            if charge not in drawn:
                item.setData([], [])
                words.setVisible(False)

    def _show_events(self, events: tuple[Event, ...]) -> None:
        marked = [event for event in events if event.kind in MARKED_EVENTS]
        if len(marked) < self._marked:  # a seek backwards
            for mark in self._marks[len(marked) :]:
                self.pressure.removeItem(mark)
            del self._marks[len(marked) :]
        for event in marked[len(self._marks) :]:
            style = Qt.PenStyle.SolidLine if event.kind is EventKind.NOTE else DOT
            mark = pg.InfiniteLine(event.at_s, angle=90, pen=pen(self._palette.rule, 1, style))
            mark.setZValue(-5)
            self.pressure.addItem(mark, ignoreBounds=True)
            self._marks.append(mark)
        self._marked = len(marked)

    def save_svg(self, path: Path, words: str) -> None:
        """Write the picture as SVG; `words` of the banner become its title.

        Raises:
            OSError: it could not be written.
        """
        from pyqtgraph.exporters import SVGExporter

        self.pressure.setTitle(words or None)
        try:
            data = SVGExporter(self.layout_widget.scene()).export(toBytes=True)
        finally:
            self.pressure.setTitle(None)
        path.write_bytes(data)

    # --- range -------------------------------------------------------------------------------

    def _taken_over(self, *_args: object) -> None:
        self._follow = False  # a person's zoom survives new readings

    @property
    def following(self) -> bool:
        """Whether the plot follows the newest reading."""
        return self._follow

    def toggle_whole(self) -> None:
        """Turn between the whole vent and the running hold; follow the newest reading again."""
        self._whole = not self._whole if self._follow else self._whole
        self._follow = True
        self._ranges = None

    def _fit(self, at_s: Any, shown: Any, line_k: Any, view: View) -> None:
        """Set the ranges: the running hold with its lead-in, else the whole vent.

        The axis is moved in steps of a fifth, so that it does not crawl with each reading.
        """
        start, newest = float(at_s[0]), float(at_s[-1])
        hold = view.running_hold
        if hold is not None and hold.number > 0 and not self._whole:
            lead_s = max(20.0, 0.12 * (newest - hold.start_s))
            start = max(start, hold.start_s - lead_s)
        span = max(60.0, newest - start)
        shown_part = shown[np.searchsorted(at_s, start) :]
        highest = max(float(np.nanmax(shown_part)), float(self._shown(view.stop_pressure_pa)))
        floor = min(float(np.nanmin(shown_part)), float(self._shown(view.triple_point_pa)))
        kept = self._ranges
        if (
            kept is None
            or not kept[0] <= start <= kept[0] + 0.25 * span
            or not newest + 0.02 * span <= kept[1] <= newest + 0.35 * span
            or not (kept[2] <= floor and highest <= kept[3])
            or highest - floor < 0.5 * (kept[3] - kept[2])
        ):
            room = highest - floor
            kept = (start, newest + 0.2 * span, floor - 0.13 * room, highest + 0.13 * room)
            self._ranges = kept
            self.pressure.setXRange(kept[0], kept[1], padding=0)
            self.pressure.setYRange(kept[2], kept[3], padding=0)
            self._fit_temperature(line_k[np.searchsorted(at_s, start) :])

    def _fit_temperature(self, line_k: Any) -> None:
        known = line_k[np.isfinite(line_k)]
        self.temperature.setVisible(known.size > 0)
        if known.size:
            low, high = (
                temperature_from_k(float(value), self._units.temperature)
                for value in (known.min(), known.max())
            )
            margin = max(1.0, 0.1 * (high - low))
            self.temperature.setYRange(low - margin, high + margin, padding=0)
