"""The log p-h diagram: pressure over heat content, the dome, the triple point, the vent's path.

Lines of equal vapour share are left out on purpose: neither gauge nor clamp tells the share, and a
path between such lines would look as if they did. The present pressure is drawn right across.
"""

from pathlib import Path
from typing import Any, Final

import numpy as np
import numpy.typing as npt
import pyqtgraph as pg
from PySide6.QtGui import QColor, QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.guidance.session import View
from co2vent.inference.outcome import Charge
from co2vent.readings.reading import Gas
from co2vent.units import temperature_from_k, temperature_to_k
from co2vent.window import text
from co2vent.window.drawing_file import save_svg
from co2vent.window.fit_label import SMALLEST_PX
from co2vent.window.heat_lines import dome, ends_across, frost, isotherm
from co2vent.window.number_axes import LogPressureAxis, NumberAxis
from co2vent.window.plot_style import DASH, DOT, LINE_PX, NAMED_AXIS_LINES, dress, pen, plain_font
from co2vent.window.sizes import Sizes
from co2vent.window.text import UnitChoice
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.traces import Traces
from co2vent.window.vapour_path import vapour_path
from co2vent.window.words import translate

PATH_POINTS: Final = 500  # a path is thinned to this many points: each is a state to work out
LOWEST_PA: Final = 0.5e5
HIGHEST_PA: Final = 130e5  # room over the critical point for its name
LOWEST_J_KG: Final = -185e3  # dry ice at the lowest pressure
HIGHEST_J_KG: Final = 545e3  # vapour at 45 degC, the warmest that is described
NOTE_J_KG: Final = 60e3  # the note stands left of the liquid, above the stop line: nothing else
WET_J_KG: Final = 310e3  # where the words of the dome stand
WET_UP: Final = 6.55  # lg of the pressure [Pa]: 35 bar, where a vent begins rather than ends
NOTE_UP: Final = 5.8  # lg of the pressure [Pa] of the stop line at most sites
NARROW_LINES: Final = 36  # heights of text: narrower, two names have no room side by side
WORDS_UP: Final = 0.2  # words need so much of lg p
ISOTHERMS: Final = {"degC": (-40.0, 0.0, 40.0), "degF": (-40.0, 30.0, 100.0)}
CONDENSED: Final = (Charge.TWO_PHASE, Charge.SOLID_PRESENT, Charge.SUBCOOLED_LIQUID)
J_PER_KJ: Final = 1e3
J_KG_PER_BTU_LB: Final = 2326.0  # international table Btu and pound, exact by definition
REFERENCE_J_KG: Final = (
    200e3  # saturated liquid at 0 degC, International Institute of Refrigeration
)


class HeatPlot(QWidget):
    """Where the vent stands in pressure and heat content, and how much of that is assumed."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._units = UnitChoice.BAR
        self._ambient_pa = 101_325.0
        self._sizes: Sizes | None = None
        self._lines_for: object = None
        self.setAccessibleName(translate("Spoken", "pressure against heat content"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        self._pressures = LogPressureAxis("left")
        axes = {"left": self._pressures, "bottom": NumberAxis("bottom")}
        self.widget = pg.PlotWidget(axisItems=axes)
        self.plot = self.widget.getPlotItem()
        self.plot.hideButtons()
        self.plot.setMenuEnabled(False)
        self.plot.disableAutoRange()
        column.addWidget(self.widget)
        self._isotherms = pg.PlotCurveItem(connect="finite")
        self._dome = pg.PlotCurveItem()
        self._frost = pg.PlotCurveItem(connect="finite")
        self._triple = pg.PlotCurveItem()
        self._stop = pg.InfiniteLine(angle=0)
        self._across = pg.PlotCurveItem()
        self._assumed = pg.PlotCurveItem(connect="finite")
        self._path = pg.PlotCurveItem(connect="finite")
        self._now = pg.ScatterPlotItem(size=14, symbol="o")
        self._warm_words: list[pg.TextItem] = []
        self._words = {
            name: pg.TextItem(anchor=anchor)
            for name, anchor in (
                ("liquid", (0.5, 0.5)),
                ("wet", (0.5, 0.5)),
                ("vapour", (0.5, 0.5)),
                ("frost", (0.5, 0.5)),
                ("critical", (0.5, 1.0)),
                ("triple", (0.0, 0.0)),
                ("stop", (0.0, 1.0)),
                ("across", (0.5, 0.0)),
                ("note", (0.0, 0.0)),
            )
        }
        for item in (
            self._isotherms, self._dome, self._frost, self._triple, self._stop, self._across,
            self._assumed, self._path, self._now, *self._words.values(),
        ):  # fmt: skip
            self.plot.addItem(item, ignoreBounds=True)

    # --- looks -------------------------------------------------------------------------------

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        sizes = self._sizes
        self.widget.setBackground(QColor(palette.page))
        dress(self.plot, palette, sizes)
        font = plain_font(sizes)
        self.plot.getAxis("bottom").setHeight(round(NAMED_AXIS_LINES * font.pixelSize()))
        self._pressures.text_px = font.pixelSize()
        self._isotherms.setPen(pen(palette.rule, 1, sizes=sizes))
        self._dome.setPen(pen(palette.saturation, LINE_PX, sizes=sizes))
        self._frost.setPen(pen(palette.ice, LINE_PX, DASH, sizes))
        self._triple.setPen(pen(palette.triple_point, 3, sizes=sizes))
        self._stop.setPen(pen(palette.stop, LINE_PX, DASH, sizes))
        self._across.setPen(pen(palette.ink, 1, DASH, sizes))
        self._assumed.setPen(pen(palette.trace, LINE_PX, DOT, sizes))
        self._path.setPen(pen(palette.trace, LINE_PX, sizes=sizes))
        scale = 1.0 if sizes is None else max(1.0, 0.75 * sizes.scale)
        self._now.setSize(round(14 * scale))
        inks = {"triple": palette.triple_point, "stop": palette.stop, "across": palette.ink}
        for name, words in self._words.items():
            words.setColor(QColor(inks.get(name, palette.faint)))
            words.setFont(font)
            words.fill = pg.mkBrush(QColor(palette.page))
        self._words["note"].setColor(QColor(palette.ink))
        self._lines_for = None

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self._sizes = sizes
        self.set_theme(self._palette)

    def set_units(self, units: UnitChoice) -> None:
        """Speak other units; all is drawn again at the next reading."""
        self._units = units
        self._lines_for = None

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The note keeps to its corner."""
        super().resizeEvent(event)
        self._place_note()

    def _heat(self, enthalpy_j_kg: Any) -> Any:
        imperial = self._units.temperature == "degF"
        return np.asarray(enthalpy_j_kg) / (J_KG_PER_BTU_LB if imperial else J_PER_KJ)

    # --- lines that stand --------------------------------------------------------------------

    def _draw_lines(self) -> None:
        heat, up = dome()
        self._dome.setData(self._heat(heat), up)
        cold, cold_up = frost()
        self._frost.setData(self._heat(cold), cold_up)
        triple = float(np.log10(TRIPLE_PRESSURE_PA))
        dry_ice_j_kg = float(np.nanmax(cold[: cold.size // 2]))
        self._triple.setData(self._heat([dry_ice_j_kg, heat[-1]]), np.full(2, triple))
        low, high = self._heat([LOWEST_J_KG, HIGHEST_J_KG])
        self.plot.setXRange(low, high, padding=0)
        self.plot.setYRange(np.log10(LOWEST_PA), np.log10(HIGHEST_PA), padding=0)
        self._draw_isotherms()
        top = int(np.argmax(up))
        self._say_lines(triple, float(up[top]), float(heat[top]))
        self._pressures.set_unit(self._units.pressure, self._ambient_pa)

    def _draw_isotherms(self) -> None:
        """Draw temperatures of vapour, named at the foot."""
        for words in self._warm_words:
            self.plot.removeItem(words)
        self._warm_words.clear()
        unit = self._units.temperature
        across: list[npt.NDArray[np.float64]] = []
        up: list[npt.NDArray[np.float64]] = []
        for place, shown in enumerate(ISOTHERMS[unit]):
            heat, lg_pa = isotherm(temperature_to_k(shown, unit), LOWEST_PA)
            across.append(self._heat(heat))
            up.append(lg_pa)
            words = pg.TextItem(
                f"{text.number(shown, 0)}\N{NO-BREAK SPACE}{text.unit_words(unit)}",
                color=QColor(self._palette.faint),
                anchor=(0.5, 1.0),
            )
            words.setFont(plain_font(self._sizes))
            words.fill = pg.mkBrush(QColor(self._palette.page))
            at = 3 + 14 * (place % 2)  # by turns lower and higher: they stand close
            words.setPos(float(across[-1][at]), up[-1][at])
            self.plot.addItem(words, ignoreBounds=True)
            self._warm_words.append(words)
        self._isotherms.setData(np.concatenate(across), np.concatenate(up))

    def _say_lines(self, triple: float, critical: float, critical_j_kg: float) -> None:
        unit = self._units.temperature
        degrees = text.unit_words(unit)
        heat = (
            translate("Plot", "heat content, Btu/lb")
            if unit == "degF"
            else translate("Plot", "heat content, kJ/kg")
        )
        reference = translate("Plot", "{value} = boiling liquid at {temperature}").format(
            value=text.number(float(self._heat(REFERENCE_J_KG)), 0),
            temperature=f"{text.number(temperature_from_k(273.15, unit), 0)} {degrees}",
        )
        self.plot.setLabel("left", text.unit_words(self._units.pressure))
        self.plot.setLabel("bottom", f"{heat} ({reference})")
        self.plot.getAxis("bottom").resizeEvent()  # puts the name in the middle again
        shown = text.pressure(TRIPLE_PRESSURE_PA, self._ambient_pa, self._units.pressure)
        said = {
            "liquid": (translate("Plot", "liquid"), 50e3, np.log10(8.6e5)),
            "wet": (translate("Plot", "liquid and vapour"), WET_J_KG, WET_UP),
            "vapour": (translate("Plot", "vapour"), 497e3, np.log10(2.6e5)),
            "frost": (translate("Plot", "dry ice and vapour"), 130e3, np.log10(1.2e5)),
            "critical": (translate("Plot", "critical point"), critical_j_kg, critical),
            "triple": (translate("Plot", "triple point") + f" {shown}", -120e3, triple),
        }
        for name, (words, heat_j_kg, at) in said.items():
            self._words[name].setText(words)
            self._words[name].setPos(float(self._heat(heat_j_kg)), float(at))
        self._words["note"].setText(
            "\n".join(
                (
                    translate("Plot", "Measured: pressure, metal."),
                    translate("Plot", "Line: vapour assumed as warm as the metal."),
                    translate("Plot", "Dots: saturated vapour assumed."),
                )
            )
        )
        self._place_note()

    def _place_note(self) -> None:
        note, box = self._words["note"], self.plot.getViewBox()
        across_px, up_px = box.viewPixelSize()
        room = float(self._heat(NOTE_J_KG - LOWEST_J_KG)) / max(across_px, 1e-12)
        note.setTextWidth(max(60.0, room))
        top = float(np.log10(HIGHEST_PA))
        note.setPos(float(self._heat(LOWEST_J_KG)), top)
        font = plain_font(self._sizes)
        floor = NOTE_UP + 1.4 * font.pixelSize() * up_px  # there stand the words of the stop line
        for size in range(font.pixelSize(), SMALLEST_PX - 1, -1):
            font.setPixelSize(size)
            note.setFont(font)
            low = top - note.boundingRect().height() * up_px
            if low >= floor:
                break
        liquid = self._words["liquid"]  # stands under the note, where there is room left
        liquid.setVisible(bool(low > liquid.pos().y() + liquid.boundingRect().height() / 2 * up_px))

    # --- the vent ----------------------------------------------------------------------------

    def show_path(self, traces: Traces, rows: int, view: View) -> None:
        """Draw the first `rows` rows as a path of the vapour through the diagram."""
        self._ambient_pa = view.setup.ambient_pressure_pa
        wanted = (self._units, self._ambient_pa, self._palette, self._sizes)
        if self._lines_for != wanted:
            self._draw_lines()
            self._lines_for = wanted
        stop = float(np.log10(view.stop_pressure_pa))
        self._stop.setPos(stop)
        shown = text.pressure(view.stop_pressure_pa, self._ambient_pa, self._units.pressure)
        self._words["stop"].setText(translate("Plot", "stop") + f" {shown}")
        self._words["stop"].setPos(float(self._heat(LOWEST_J_KG)), stop)
        known = rows if view.setup.gas is Gas.CO2 else 0
        step = max(1, known // PATH_POINTS)
        path = vapour_path(
            traces.pressure_pa(known)[::step], traces.line_temperature_k(known)[::step]
        )
        heat, up = self._heat(path.enthalpy_j_kg), np.log10(np.maximum(path.pressure_pa, 1.0))
        self._path.setData(np.where(path.by_clamp, heat, np.nan), up)
        joined = path.by_clamp.copy()
        joined[1:] &= path.by_clamp[:-1]  # the first warm point ends the dotted piece before it
        self._assumed.setData(np.where(joined, np.nan, heat), up)
        self._show_now(view)

    def _show_now(self, view: View) -> None:
        """Mark the newest state; nothing is marked as present once the readings are stale.

        Where the hold shows liquid or dry ice the state is somewhere on the line across, which is
        then drawn full, and the mark at the vapour stays hollow however warm the metal is.
        """
        latest = view.latest
        if latest is None or view.stale or view.setup.gas is not Gas.CO2:
            self._mark(None, None, by_clamp=False)
            return
        clamp = np.nan if latest.line_temperature_k is None else latest.line_temperature_k
        path = vapour_path([latest.pressure_pa], [clamp])
        up = float(np.log10(max(latest.pressure_pa, 1.0)))
        spot = (float(self._heat(path.enthalpy_j_kg[0])), up)
        hold = view.running_hold
        condensed_shown = hold is not None and hold.charge in CONDENSED
        self._across.setPen(
            pen(self._palette.ink, LINE_PX, sizes=self._sizes)
            if condensed_shown
            else pen(self._palette.ink, 1, DASH, self._sizes)
        )
        by_clamp = bool(path.by_clamp[0]) and not condensed_shown
        self._mark(spot, self._heat(ends_across(latest.pressure_pa)), by_clamp=by_clamp)

    def _mark(self, spot: tuple[float, float] | None, ends: Any, *, by_clamp: bool) -> None:
        if spot is None or np.isnan(ends).any():
            self._across.setData([], [])
            self._now.setData([], [])
            self._words["across"].setVisible(False)
            self._words["wet"].setVisible(True)
            self.setAccessibleDescription("")
            return
        self._across.setData(ends, np.full(2, spot[1]))
        palette = self._palette
        self._now.setBrush(QColor(palette.ink if by_clamp else palette.page))
        self._now.setPen(pen(palette.page if by_clamp else palette.ink, LINE_PX))
        self._now.setData([spot[0]], [spot[1]])
        said = (
            translate("Plot", "vapour by the metal temperature")
            if by_clamp
            else translate("Plot", "saturated vapour assumed")
        )
        self.setAccessibleDescription(said)
        self._words["across"].setVisible(True)
        self._words["across"].setText(translate("Plot", "now: share not measured"))
        self._words["wet"].setVisible(not WET_UP - WORDS_UP < spot[1] < WET_UP + WORDS_UP / 2)
        above = spot[1] >= self._stop.value()  # else there is room only under the triple point
        at = spot[1] if above else min(spot[1], float(np.log10(TRIPLE_PRESSURE_PA)))
        narrow = self.plot.getViewBox().width() < NARROW_LINES * self._pressures.text_px
        below = -1.0 if narrow else 0.0  # under the name of the triple point
        self._words["across"].setAnchor((0.5, 1.0 if above else below))
        share = 0.54 if narrow else 0.6
        self._words["across"].setPos(float(ends[0] + share * (ends[1] - ends[0])), at)

    def save_svg(self, path: Path, words: str) -> bool:
        """Write the picture as SVG, `words` of the banner in it; return whether it was written."""
        return save_svg(path, self.widget, self.plot, self._palette.page, words)
