"""CO2 in the air of the room that a practice vent ends in: mixed air, fresh air by air changes."""

from math import exp
from typing import Final

from co2vent.practice.log_lines import Rows
from co2vent.practice.scenario import Scenario
from co2vent.section_model.layout import COLUMN

OUTDOOR_PPM: Final = 420.0  # today's outdoor air, from memory
CO2_KG_PER_M3: Final = 0.0440098 / 0.024055  # ideal gas at 20 degC and 1 atm


class RoomAir:
    """Follows the vented mass, row by row."""

    def __init__(self, scenario: Scenario) -> None:
        """Start with outdoor air."""
        self._room_m3 = scenario.room_m3
        self._per_s = scenario.air_changes_per_hour / 3600.0
        self._rise_ppm = 0.0
        self._last: tuple[float, float] | None = None

    def ppm(self, row: Rows) -> float | None:
        """Return the room's CO2 [ppm] at a row; `None` outdoors."""
        if self._room_m3 is None:
            return None
        now_s, vented_kg = float(row[0]), float(row[COLUMN["vented_kg"]])
        if self._last is not None:
            self._rise_ppm *= exp(-self._per_s * (now_s - self._last[0]))
            self._rise_ppm += (vented_kg - self._last[1]) / CO2_KG_PER_M3 / self._room_m3 * 1e6
        self._last = (now_s, vented_kg)
        return OUTDOOR_PPM + self._rise_ppm
