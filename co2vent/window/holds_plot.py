"""All holds over each other, each from its own beginning: do they repeat?

Gas warms once: a second hold from the same pressure rises much less. Liquid and a leaking valve
repeat. A second vent may be laid over the first: circles stand along its curves and before its
name. Beside each name stands a piece of its line.
"""

from typing import Any, Final

import numpy as np
import numpy.typing as npt
import pyqtgraph as pg
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QVBoxLayout, QWidget

from co2vent.guidance.session import View
from co2vent.inference.outcome import HoldAssessment
from co2vent.units import PRESSURE_UNITS
from co2vent.window import text
from co2vent.window.name_places import Places, box_at, dense, pixels_of
from co2vent.window.number_axes import NumberAxis
from co2vent.window.plot_style import (
    DASH,
    DASH_DOT,
    DOT,
    LINE_PX,
    NAMED_AXIS_LINES,
    SOLID,
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

STYLES: Final = (SOLID, DASH, DASH_DOT, DOT)
SAMPLES: Final = ("━━━", "━ ━", "━ ·", "···")  # how a curve is dashed, beside its name
NAMES_Z: Final = 20  # over all curves: names stand on the page's colour
MOST_POINTS: Final = 2000
LEAST_READINGS: Final = 2
ROOM_SHARE: Final = 0.09  # around the curves: the name of the highest stands over it
SIGN_PX: Final = 8
OTHER_SIGN: Final = "○"
SIGNS_AT: Final = (0.15, 0.4, 0.65, 0.9)  # shares of a hold
#: Where a name may end, a share of its curve, and how far from it, in heights of text.
NAME_AT: Final = (1.0, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3)
NAME_AWAY: Final = (0.25, 0.6, 1.1, 1.9)

Floats = npt.NDArray[np.floating]


def _to_draw(holds: tuple[HoldAssessment, ...]) -> list[HoldAssessment]:
    """Return the holds after a vent; the closed time before it only where there is no other."""
    vented = [hold for hold in holds if hold.number > 0]
    return vented or list(holds)


def _rise(traces: Traces, rows: int, hold: HoldAssessment) -> tuple[Floats, Floats] | None:
    """Return time [s] and rise [Pa] of the hold since its own first reading.

    Not since the pressure it was judged from: where the evidence started anew that one belongs to
    another moment. `None`: fewer than two readings, so nothing to draw.
    """
    at_s = traces.at_s(rows)
    first, last = np.searchsorted(at_s, [hold.start_s, hold.end_s + 1e-6])
    pressure_pa = traces.pressure_pa(rows)[first:last]
    whole = np.flatnonzero(np.isfinite(pressure_pa))
    if whole.size < LEAST_READINGS:
        return None
    step = max(1, (last - first) // MOST_POINTS)
    rise_pa = pressure_pa[::step] - pressure_pa[whole[0]]
    return at_s[first:last:step] - hold.start_s, rise_pa


class HoldsPlot(QWidget):
    """Rise of pressure over the time of the hold, one curve a hold."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._units = UnitChoice.BAR
        self._sizes: Sizes | None = None
        self._items: list[Any] = []
        self._names: list[tuple[Any, Any]] = []  # a name and the curve it belongs to
        self._places = Places()
        self._other: tuple[Traces, tuple[HoldAssessment, ...], str] | None = None
        self.setAccessibleName(translate("Spoken", "holds over each other"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        self.widget = pg.PlotWidget(
            axisItems={"left": NumberAxis("left"), "bottom": ClockAxis("bottom")}
        )
        self.plot = self.widget.getPlotItem()
        self.plot.hideButtons()
        self.plot.setMenuEnabled(False)
        self.plot.getViewBox().setDefaultPadding(ROOM_SHARE)
        column.addWidget(self.widget)

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        self.widget.setBackground(QColor(palette.page))
        dress(self.plot, palette, self._sizes)
        height = NAMED_AXIS_LINES * plain_font(self._sizes).pixelSize()
        self.plot.getAxis("bottom").setHeight(round(height))

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self._sizes = sizes
        self.set_theme(self._palette)

    def set_units(self, units: UnitChoice) -> None:
        """Speak other units."""
        self._units = units

    def compare_with(self, traces: Traces, holds: tuple[HoldAssessment, ...], name: str) -> bool:
        """Lay the holds of a second vent over these; return whether there is one to draw.

        Where there is none, what was laid over them before stays.
        """
        if all(_rise(traces, len(traces), hold) is None for hold in _to_draw(holds)):
            return False
        self._other = (traces, holds, name)
        return True

    def show_holds(self, traces: Traces, rows: int, view: View) -> None:
        """Draw the holds so far."""
        for item in self._items:
            self.plot.removeItem(item)
        self._items.clear()
        self._names.clear()
        unit = text.difference_unit(self._units.pressure)
        self.plot.setLabel("left", translate("Plot", "rise, {unit}").format(unit=unit))
        self.plot.setLabel("bottom", translate("Plot", "time since the vent closed"))
        self.plot.getAxis("bottom").resizeEvent()  # puts the name in the middle again
        for place, hold in enumerate(_to_draw(view.holds)):
            words = (
                translate("Plot", "hold {number}").format(number=hold.number)
                if hold.number
                else translate("Plot", "before the vent")
            )
            self._draw((traces, rows), hold, words, place)
        if self._other is not None:
            other, holds, name = self._other
            for place, hold in enumerate(_to_draw(holds)):
                which = (
                    f"{name} {hold.number}"
                    if hold.number
                    else translate("Plot", "{name}, before the vent").format(name=name)
                )
                words = f"{OTHER_SIGN} {which}"
                self._draw((other, len(other)), hold, words, place, second=True)
        self._part_names()

    def _draw(
        self,
        of: tuple[Traces, int],
        hold: HoldAssessment,
        words: str,
        place: int,
        *,
        second: bool = False,
    ) -> None:
        drawn = _rise(*of, hold)
        if drawn is None:
            return
        colour = self._palette.saturation if second else self._palette.trace
        time_s, rise = drawn[0], drawn[1] / PRESSURE_UNITS[self._units.pressure].pascals
        curve = pg.PlotCurveItem(
            time_s,
            rise,
            connect="finite",
            pen=pen(colour, LINE_PX, STYLES[place % len(STYLES)], self._sizes),
        )
        label = pg.TextItem(
            f"{words} {SAMPLES[place % len(STYLES)]}",
            color=QColor(colour),
            anchor=(1, 1),
            fill=pg.mkBrush(QColor(self._palette.page)),
        )
        label.setZValue(NAMES_Z)
        label.setFont(plain_font(self._sizes))
        label.setPos(float(time_s[-1]), float(rise[-1]))
        items = [curve, label]
        if second:
            at = [round(share * (time_s.size - 1)) for share in SIGNS_AT]
            sign_pen = pen(colour, LINE_PX, sizes=self._sizes)
            ground = QColor(self._palette.page)
            grown = 1.0 if self._sizes is None else max(1.0, 0.75 * self._sizes.scale)
            items.append(
                pg.ScatterPlotItem(
                    time_s[at], rise[at], pen=sign_pen, brush=ground, size=round(SIGN_PX * grown)
                )
            )
        for item in items:
            self.plot.addItem(item)
            self._items.append(item)
        self._names.append((label, curve))

    def _part_names(self) -> None:
        """Put each name near its curve, where no other name and, if there is room, no curve is."""
        box = self.plot.getViewBox()
        box.updateAutoRange()
        room = QRectF(0.0, 0.0, box.width(), box.height())
        curves = [pixels_of(box, *curve.getData()) for _label, curve in self._names]
        if room.isEmpty() or not curves:
            return
        seen = np.vstack([dense(*curve.T) for curve in curves])
        line_px = plain_font(self._sizes).pixelSize()
        taken: list[QRectF] = []
        for (label, _curve), curve in zip(self._names, curves, strict=True):
            size = label.boundingRect().size()
            places: list[tuple[QPointF, tuple[float, float]]] = []
            for away in NAME_AWAY:
                for share in NAME_AT:
                    x, y = curve[round(share * (len(curve) - 1))]
                    places.append((QPointF(x, y - away * line_px), (1.0, 1.0)))
                    places.append((QPointF(x, y + away * line_px), (1.0, 0.0)))
            boxes = [box_at(place, size, anchor) for place, anchor in places]
            best, _under = self._places.choose(label.toPlainText(), boxes, room, seen, taken)
            label.setAnchor(places[best][1])
            label.setPos(box.mapToView(places[best][0]))
            taken.append(boxes[best])
