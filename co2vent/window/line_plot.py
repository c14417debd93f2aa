"""The P-T diagram: saturation and sublimation lines, the triple point and the path of the vent."""

from typing import Any, Final

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QPointF, QRectF
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
from co2vent.window.name_places import Places, Points, box_at, dense, pixels_of
from co2vent.window.number_axes import NumberAxis
from co2vent.window.plot_style import DASH, LINE_PX, dress, pen, plain_font
from co2vent.window.sizes import Sizes
from co2vent.window.text import UnitChoice
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.traces import Traces
from co2vent.window.words import translate

PATH_POINTS = 4000  # a path is thinned to this many points
COLDEST_K = 190.0
LEFT_K = 205.0
WARMEST_K = 303.0
NAMES_Z = 20
#: Where the names of the regions may stand, the usual place first: temperature [K] and share of
#: the picture's height, within the region.
REGIONS: Final[dict[str, tuple[tuple[float, float], ...]]] = {
    "liquid": tuple((k, up) for k in (225.0, 232.0, 240.0, 248.0) for up in (0.75, 0.88, 0.6)),
    "vapour": tuple(
        (k, up) for up in (0.12, 0.2, 0.28, 0.4, 0.05) for k in (285.0, 270.0, 290.0, 258.0)
    )
    + tuple((k, up) for up in (0.5, 0.62, 0.75, 0.88) for k in (290.0, 285.0, 279.0)),
    "ice": tuple((205.5, up) for up in (0.5, 0.6, 0.7, 0.8, 0.4, 0.9)),
}
#: Round the triple point, in heights of its name, right and down.
AROUND: Final = ((0.2, 0.3), (0.6, 0.05), (0.6, -0.5)) + tuple(
    (right, down)
    for rights in ((0.2, 1.5, -2.0, -4.0), (3.5, 6.0))  # near it first
    for down in (0.3, 0.9, 1.6, -1.4, -2.3, 2.4, -3.0)
    for right in rights
)
ALONG: Final = tuple(  # the stop line: share of the width, above or below
    (share, side) for side in (1.0, 0.0) for share in (0.99, 0.8, 0.6, 0.45)
)


class LinePlot(QWidget):
    """Where the vent stands between vapour, liquid and dry ice."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._units = UnitChoice.BAR
        self._sizes: Sizes | None = None
        self._lines_for: tuple[str, float] | None = None
        self._free = Places(grounded=False)  # only a name that is struck gets a ground
        self.setAccessibleName(translate("Spoken", "pressure against temperature"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        axes = {side: NumberAxis(side) for side in ("left", "bottom")}
        self.widget = pg.PlotWidget(axisItems=axes)
        self.plot = self.widget.getPlotItem()
        self.plot.hideButtons()
        self.plot.setMenuEnabled(False)
        self.plot.disableAutoRange()
        self.plot.getViewBox().sigResized.connect(self._resized)
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
                ("triple", (0.0, 0.0)),
                ("stop", (1.0, 1.0)),
                ("liquid", (0.5, 0.5)),
                ("vapour", (0.5, 0.5)),
                ("ice", (0.0, 0.5)),
            )
        }
        for words in self._words.values():
            words.setZValue(NAMES_Z)
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
        self._words["triple"].setColor(QColor(palette.triple_point))
        self._words["stop"].setColor(QColor(palette.stop))

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

    def _resized(self, _box: object) -> None:
        """The names keep clear of the lines in another room too."""
        if self._lines_for is not None:
            self._place_names()

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
        shown = text.pressure(view.stop_pressure_pa, ambient, self._units.pressure)
        self._words["stop"].setText(translate("Plot", "stop") + f" {shown}")
        latest = view.latest
        highest = float(np.nanmax(pressure_pa)) if rows else view.stop_pressure_pa
        if latest is not None:
            self._pressure_line.setPos(float(up(latest.pressure_pa)))
            known = latest.line_temperature_k is not None
            self._now.setData(
                [across(latest.line_temperature_k)] if known else [],
                [float(up(latest.pressure_pa))] if known else [],
            )
        self._fit(up, across, highest)
        self._place_names()

    def _draw_lines(self, up: Any, across: Any) -> None:
        wet_k = np.linspace(TRIPLE_TEMPERATURE_K, WARMEST_K, 240)
        ice_k = np.linspace(COLDEST_K, TRIPLE_TEMPERATURE_K, 120)
        self._saturation.setData(across(wet_k), up(saturation_pressure_pa_array(wet_k)))
        self._sublimation.setData(across(ice_k), up(sublimation_pressure_pa_array(ice_k)))
        self._triple.setData([across(TRIPLE_TEMPERATURE_K)], [float(up(TRIPLE_PRESSURE_PA))])
        self.plot.setLabel("left", text.unit_words(self._units.pressure))
        self.plot.setLabel("bottom", text.unit_words(self._units.temperature))
        for name, words in (
            ("liquid", translate("Plot", "liquid")),
            ("vapour", translate("Plot", "vapour")),
            ("ice", translate("Plot", "dry ice")),
            ("triple", translate("Plot", "triple point")),
        ):
            self._words[name].setText(words)

    def _fit(self, up: Any, across: Any, highest_pa: float) -> None:
        top = float(up(highest_pa * 1.1))
        low = float(up(0.4e5))
        self.plot.setXRange(across(LEFT_K), across(WARMEST_K), padding=0)
        self.plot.setYRange(low, top, padding=0)

    # --- names -------------------------------------------------------------------------------

    def _place_names(self) -> None:
        """Put each name where no line and no other name is, as far as there is such a place."""
        box = self.plot.getViewBox()
        room = QRectF(0.0, 0.0, box.width(), box.height())
        if room.isEmpty():
            return
        lines = self._lines_px()
        taken: list[QRectF] = []
        for name, words in self._words.items():
            size = words.boundingRect().size()
            anchor = (words.anchor.x(), words.anchor.y())
            places = self._places(name, size.height(), room)
            boxes = [box_at(place, size, hung or anchor) for place, hung in places]
            best, under = self._free.choose(name, boxes, room, lines, taken)
            place, hung = places[best]
            if hung:
                words.setAnchor(hung)
            words.fill = pg.mkBrush(QColor(self._palette.page) if under else None)
            words.setPos(box.mapToView(place))
            taken.append(boxes[best])

    def _places(
        self, name: str, line_px: float, room: QRectF
    ) -> list[tuple[QPointF, tuple[float, float] | None]]:
        """Return where `name` may stand, best first, and by what it hangs there if not as usual."""
        if name == "triple":
            spot = self._px(*self._triple.getData())[0]
            return [
                (QPointF(spot[0] + right * line_px, spot[1] + down * line_px), None)
                for right, down in AROUND
            ]
        if name == "stop":
            level = float(self._px([0.0], [self._stop.value()])[0, 1])
            return [
                (QPointF(share * room.width(), level + (4.0 - 8.0 * side)), (1.0, side))
                for share, side in ALONG
            ]
        kelvin, shares = np.array(REGIONS[name]).T
        across = self._px(
            temperature_from_k(kelvin, self._units.temperature), np.zeros(kelvin.size)
        )
        return [
            (QPointF(x, (1.0 - up) * room.height()), None)
            for x, up in zip(across[:, 0].tolist(), shares.tolist(), strict=True)
        ]

    def _px(self, across: Any, up: Any) -> Points:
        return pixels_of(self.plot.getViewBox(), across, up)

    def _lines_px(self) -> Points:
        """Return all that a name must not stand on: lines, path and marks, as dense points."""
        (left, right), _ = self.plot.getViewBox().viewRange()
        found = [
            self._px(*item.getData())
            for item in (self._saturation, self._sublimation, self._path)
            if item.getData()[0] is not None
        ]
        found += [
            self._px([left, right], [line.value()] * 2)
            for line in (self._stop, self._pressure_line)
        ]
        for mark, half in ((self._triple, 6.0), (self._now, 7.0)):
            for x, y in self._px(*mark.getData()):
                found.append(np.array([[x - half, y], [x + half, y], [x, y - half], [x, y + half]]))
        return np.vstack([dense(*points.T) for points in found])
