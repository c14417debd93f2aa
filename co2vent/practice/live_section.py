"""A section that a trainee works: the model stepped in the caller's time, its valve in reach.

    section = LiveSection(scenario, seed=3)
    items = section.step_to(10.0)      # what the gauge set showed since; feeds a session as it is
    section.set_valve(1.0)             # from now on, until moved again
    section.truth()                    # hidden until the reveal

No clock in here: the caller decides how fast the time goes, and may stop it.
"""

from typing import Final

import numpy as np

from co2vent.practice.log_lines import Rows, header_lines, log_layout, row_line, to_reading
from co2vent.practice.room_air import RoomAir
from co2vent.practice.scenario import Scenario
from co2vent.readings.reading import Reading, Rejection
from co2vent.section_model.simulation import SectionRun, Truth

OVER_RANGE: Final = Rejection(0, "the gauge shows no value: over its range", over_range=True)


class LiveSection:
    """One section, its vent valve and its gauge set."""

    def __init__(self, scenario: Scenario, seed: int = 0) -> None:
        """Start the scenario; its first reading is at 0 s, valve closed."""
        self.scenario = scenario
        self.seed = seed
        self.valve = 0.0
        self._run = SectionRun(scenario.setting, seed=seed)
        self._layout = log_layout(scenario)
        self._room = RoomAir(scenario)
        self._rows: list[Rows] = []
        self._readings: list[Reading | None] = []

    @property
    def time_s(self) -> float:
        """Time of the newest reading [s]."""
        return float(self._rows[-1][0]) if self._rows else 0.0

    @property
    def count(self) -> int:
        """How many readings there are so far."""
        return len(self._rows)

    @property
    def rows(self) -> Rows:
        """All rows so far, truth included (columns as `section_model.layout.OUTPUT`)."""
        return np.array(self._rows)

    def set_valve(self, opening: float) -> None:
        """Move the vent valve: 0 closed, 1 fully open."""
        self.valve = min(max(opening, 0.0), 1.0)

    def set_pump(self, running: bool) -> None:
        """Start or stop the vacuum pump."""
        self._run.set_pump(running)

    def step_to(self, time_s: float) -> list[Reading | Rejection]:
        """Go on to `time_s`; return what the gauge set showed meanwhile, oldest first.

        A gauge over its range gives a rejection. Going back is not possible: an earlier time
        returns nothing.
        """
        new: list[Rows] = []
        if not self._rows and time_s >= 0.0:
            new.append(self._run.first_row())
        period_s = self.scenario.setting.gauge.period_s
        readings = int((time_s - self._run.time_s) / period_s + 1e-9)
        if readings > 0:
            new.extend(self._run.step(self.valve, readings))
        shown = [to_reading(self.scenario, row, self._room.ppm(row)) for row in new]
        self._rows.extend(new)
        self._readings.extend(shown)
        return [reading or OVER_RANGE for reading in shown]

    def truth(self) -> Truth:
        """Return what is really inside now."""
        return self._run.truth()

    def log_header_lines(self) -> list[str]:
        """Return the metadata lines (`# simulated: yes` among them) and the header row."""
        return header_lines(self.scenario)

    def log_lines(self, first: int = 0) -> list[str]:
        """Return the rows of the readings log from row `first` on."""
        pairs = zip(self._rows[first:], self._readings[first:], strict=True)
        return [row_line(self._layout, reading, float(row[0])) for row, reading in pairs]
