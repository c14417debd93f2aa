"""Limits that a vent may pass: the triple point, and the metal's rated minimum temperature."""

from math import inf, isfinite

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.guidance.event_log import EventLog
from co2vent.guidance.events import EventKind
from co2vent.inference.wording import temperature_text
from co2vent.readings.reading import Gas, Reading, Setup
from co2vent.sentence import Sentence

METAL_BACK_K = 2.0  # warmer than the minimum by this before it may be said again
BACK_ABOVE_PA = 5_000.0  # above the triple point by this before passing it may be said again


class TriplePointWatch:
    """Says when the pressure passes below the triple point, and counts the time there."""

    __slots__ = ("_below", "_log", "below_before_s", "below_s", "highest_pa", "lowest_pa")

    def __init__(self, log: EventLog) -> None:
        self._log = log
        self._below = False
        self.below_s = 0.0
        self.below_before_s = 0.0  # of that, with no "vapour only" standing
        self.highest_pa = -inf
        self.lowest_pa = inf

    @property
    def highest(self) -> float | None:
        """The highest pressure of the record [Pa]."""
        return self.highest_pa if isfinite(self.highest_pa) else None

    @property
    def lowest(self) -> float | None:
        """The lowest pressure of the record [Pa]."""
        return self.lowest_pa if isfinite(self.lowest_pa) else None

    def see(
        self, reading: Reading, since_last_s: float | None, setup: Setup, cleared: bool
    ) -> None:
        """Take a reading, `since_last_s` after the one before; `None`: nothing joins them."""
        pressure_pa = reading.pressure_pa
        if pressure_pa > self.highest_pa:
            self.highest_pa = pressure_pa
        if pressure_pa < self.lowest_pa:
            self.lowest_pa = pressure_pa
        if setup.gas is not Gas.CO2:
            return
        below = pressure_pa < TRIPLE_PRESSURE_PA
        if not (below or self._below):
            return
        if below and since_last_s is not None:
            self.below_s += since_last_s
            if not cleared:
                self.below_before_s += since_last_s
        if below and not self._below:
            text = (
                Sentence(
                    "below the local triple point with vapour only standing: watch for the shelf"
                )
                if cleared
                else Sentence(
                    "ALARM: below the local triple point before vapour only was shown; liquid left "
                    "turns to dry ice"
                )
            )
            self._log.say(reading.at_s, EventKind.BELOW_TRIPLE_POINT, text)
            self._below = True
        elif self._below and pressure_pa > TRIPLE_PRESSURE_PA + BACK_ABOVE_PA:
            self._below = False


class ColdMetalWatch:
    """Metal under its rated minimum is brittle: says it once each time it gets there."""

    __slots__ = ("_cold", "_log")

    def __init__(self, log: EventLog) -> None:
        self._log = log
        self._cold = False

    def see(self, reading: Reading, setup: Setup) -> None:
        """Take a reading."""
        least_k, line_k = setup.metal_minimum_temperature_k, reading.line_temperature_k
        if least_k is None or line_k is None:
            return
        if line_k < least_k and not self._cold:
            self._cold = True
            self._log.say(
                reading.at_s,
                EventKind.METAL_COLD,
                Sentence(
                    "the metal at {now} is below its rated minimum of {least}: no blows, no "
                    "repressurising until it has warmed",
                    now=temperature_text(line_k, setup),
                    least=temperature_text(least_k, setup),
                ),
            )
        elif line_k > least_k + METAL_BACK_K:
            self._cold = False
