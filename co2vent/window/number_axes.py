"""Axes that speak as the screen does: numbers by the locale; gauge pressure on a logarithmic scale.

A logarithm needs absolute pressure; people read gauge. So the place is the logarithm of the
absolute pressure, and the ticks stand where the gauge pressure is round.
"""

from typing import Final

import numpy as np
import pyqtgraph as pg

from co2vent.units import PRESSURE_UNITS
from co2vent.window import text

BAR_TICKS: Final = (0.0, 1.0, 2.0, 3.0, 5.0, 7.0, 10.0, 20.0, 30.0, 50.0, 70.0)
PSI_TICKS: Final = (0.0, 10.0, 20.0, 40.0, 60.0, 100.0, 200.0, 300.0, 500.0, 1000.0)
LINE_OF_TEXT: Final = 1.5  # a tick needs so many heights of its words


class NumberAxis(pg.AxisItem):
    """An axis whose numbers follow the locale."""

    def tickStrings(self, values: list[float], scale: float, spacing: float) -> list[str]:
        """Return the words of the ticks."""
        step = spacing * scale
        places = 0 if step >= 1.0 else int(np.ceil(-np.log10(step) - 1e-9))
        return [text.number(value * scale, places) for value in values]


class LogPressureAxis(pg.AxisItem):
    """Gauge pressures at the logarithm (base 10) of absolute pressures [Pa]."""

    def __init__(self, orientation: str) -> None:
        super().__init__(orientation)
        self._unit = "bar_g"
        self._ambient_pa = 101_325.0
        self.text_px = 13

    def set_unit(self, unit: str, ambient_pa: float) -> None:
        """Speak `unit`, gauge to `ambient_pa`."""
        if (unit, ambient_pa) != (self._unit, self._ambient_pa):
            self._unit, self._ambient_pa = unit, ambient_pa
            self.picture = None
            self.update()

    def place(self, value: float) -> float:
        """Return where a pressure in the axis's unit stands."""
        unit = PRESSURE_UNITS[self._unit]
        return float(np.log10(unit.to_absolute_pa(value, self._ambient_pa)))

    def tickValues(self, low: float, high: float, size: float) -> list[tuple[float, list[float]]]:
        """Return the round pressures in view, the lower first where two would touch."""
        least = LINE_OF_TEXT * self.text_px / max(size, 1.0) * (high - low)
        places: list[float] = []
        for value in PSI_TICKS if self._unit.startswith("psi") else BAR_TICKS:
            at = self.place(value)
            if low <= at <= high and (not places or at - places[-1] >= least):
                places.append(at)
        return [(1.0, places)]

    def tickStrings(self, values: list[float], _scale: float, _spacing: float) -> list[str]:
        """Return the words of the ticks."""
        unit = PRESSURE_UNITS[self._unit]
        return [
            text.number(unit.from_absolute_pa(10.0**value, self._ambient_pa), 0) for value in values
        ]
