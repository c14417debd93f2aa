"""How all plots look: axes with units, thin opaque traces, wide lines only where static."""

from dataclasses import dataclass
from typing import Any, Final

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont

from co2vent.units import PRESSURE_UNITS, temperature_from_k
from co2vent.window import text
from co2vent.window.sizes import Sizes
from co2vent.window.text import UnitChoice
from co2vent.window.theme import Palette

# A wide pen costs ten times the paint time on a long trace; the traces come reduced to what is
# seen, so two pixels are affordable and can be read from two metres.
LINE_PX: Final = 2
NAMED_AXIS_LINES: Final = 2.9  # heights of text that ticks and a name under them need
GRID_SHARE: Final = 0.18  # of the rule's colour, on the page: seen when looked for

SOLID, DASH, DOT, DASH_DOT = (
    Qt.PenStyle.SolidLine,
    Qt.PenStyle.DashLine,
    Qt.PenStyle.DotLine,
    Qt.PenStyle.DashDotLine,
)


@dataclass(frozen=True, slots=True)
class Scale:
    """From pascal and kelvin to the units of the screen."""

    units: UnitChoice
    ambient_pa: float

    def up(self, pressure_pa: Any) -> Any:
        """Return absolute pressures [Pa] in the large pressure unit."""
        unit = PRESSURE_UNITS[self.units.pressure]
        offset = self.ambient_pa if unit.gauge else 0.0
        return (np.asarray(pressure_pa, np.float64) - offset) / unit.pascals

    def warm(self, temperature_k: Any) -> Any:
        """Return temperatures [K] in the temperature unit that goes with it."""
        return temperature_from_k(temperature_k, self.units.temperature)


class ClockAxis(pg.AxisItem):
    """A time axis in m:ss or h:mm:ss."""

    room_px = 110.0  # between two ticks

    def tickStrings(self, values: list[float], _scale: float, spacing: float) -> list[str]:
        """Return the words of the ticks."""
        if spacing < 1.0:
            return [f"{value:.1f} s" for value in values]
        return [
            text.duration(value) if value >= 0 else text.MINUS + text.duration(-value)
            for value in values
        ]

    def tickSpacing(self, low: float, high: float, size: float) -> list[tuple[float, float]]:
        """Return tick distances that are round in minutes and hours."""
        wanted = (high - low) / max(2.0, size / self.room_px)
        for step in (1, 2, 5, 10, 20, 30, 60, 120, 180, 300, 600, 900, 1800, 3600, 7200, 14400):
            if step >= wanted:
                return [(float(step), 0.0)]
        days = int(-(-wanted // 86_400))
        return [(28_800.0 if wanted <= 28_800 else 86_400.0 * days, 0.0)]


def pen(
    colour: str, width: float = 1.0, style: Qt.PenStyle = SOLID, sizes: Sizes | None = None
) -> Any:
    """Return a pen in `colour`; its width grows with the screen."""
    scale = 1.0 if sizes is None else max(1.0, 0.75 * sizes.scale)
    return pg.mkPen(QColor(colour), width=round(width * scale), style=style)


def plain_font(sizes: Sizes | None) -> QFont:
    """Return the font of ticks and words in a plot."""
    font = QFont()
    font.setPixelSize(round((sizes.small_px if sizes is not None else 13) * 0.95))
    return font


def dress(plot: pg.PlotItem, palette: Palette, sizes: Sizes | None) -> None:
    """Give axes, grid and labels the colours and sizes of the screen."""
    font = plain_font(sizes)
    size = font.pixelSize()
    for side in ("left", "bottom"):
        axis = plot.getAxis(side)
        axis.setPen(QColor(palette.rule))
        axis.setTextPen(QColor(palette.ink))
        axis.setTickFont(font)
        # Each grid line costs paint time, a translucent one ten times that of an opaque one.
        axis.enableAutoSIPrefix(False)  # the unit in the name is that of the numbers
        axis.setStyle(tickTextOffset=4, maxTickLevel=0, tickAlpha=255)
        axis.setZValue(-1)  # the grid lies under the curves
        axis.setTickPen(_mixed(palette.rule, palette.page, GRID_SHARE))
        if isinstance(axis, ClockAxis):
            axis.room_px = 7.5 * size
        axis.label.setFont(font)
        axis.labelStyle = {"color": palette.ink, "font-size": f"{size}px"}
        axis.setLabel(axis.labelText)
    plot.getAxis("left").setWidth(round(size * 4.2))
    plot.showGrid(x=True, y=True, alpha=1.0)


def _mixed(one: str, other: str, share: float) -> QColor:
    """Return `share` of one colour and the rest of the other."""
    a, b = QColor(one), QColor(other)
    pairs = ((a.red(), b.red()), (a.green(), b.green()), (a.blue(), b.blue()))
    return QColor(*(round(share * x + (1.0 - share) * y) for x, y in pairs))
