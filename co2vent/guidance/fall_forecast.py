"""When an open vent reaches the stop pressure: the earliest and the latest, with 90 % confidence.

A vent passes vapour in proportion to its pressure (choked flow, ISO 9300), so the pressure of a
section falls by the same share in equal times, and later than a straight line says. What makes it
uncertain: the gauge's step and noise over the fall that was read, how much the fall has changed
from one window to the next, and the time ahead, in which liquid may boil or a hand move the valve.
The weights were fitted on simulated vents of the first section model and widened until the second
was covered too. On 150 fresh vents of each (some 2,200 moments) the bounds held 93.6 and 93.3 % of
the true times, sooner than the earliest were 2.8 and 3.1 %; the worst part was the first model
more than five minutes ahead, 81 %. `tests/guidance/test_fall_forecast.py` runs a smaller set.
"""

from collections import deque
from math import exp, log, log1p, sqrt
from typing import Final

from co2vent.inference.outcome import Bounds
from co2vent.inference.trace import GaugeWatch
from co2vent.readings.reading import Reading

WINDOW_S: Final = 6.0  # over which the fall is read, twice
LEAST_FALL_PA_PER_S: Final = 50.0  # a slower fall gives no time worth showing
LONGEST_S: Final = 600.0  # further ahead a person has long moved the valve
CONFIDENCE: Final = 0.90
# spread of ln(true time / foreseen time); fitted, see above
BASE: Final = 0.10
OF_GAUGE: Final = 0.70  # times the gauge's step over the fall read
OF_CHANGE: Final = 0.50  # times ln of the change from the window before
MOST_CHANGE: Final = 1.5
NO_CHANGE_KNOWN: Final = 0.5  # the window before is not there yet
OF_TIME: Final = 0.12  # times ln(1 + time ahead / 10 s)
TIME_SCALE_S: Final = 10.0
EARLY: Final = 1.05  # times the spread; late is wider, since boiling holds the pressure up
LATE: Final = 1.70
PAD_S: Final = 1.0  # lag of the gauge


class FallForecast:
    """Foresees the fall of an open vent. Feed `see` in order of time while it is open."""

    __slots__ = ("_recent",)

    def __init__(self) -> None:
        self._recent: deque[tuple[float, float]] = deque()

    def reset(self) -> None:
        """The valve moved, or the readings had a gap."""
        self._recent.clear()

    def see(self, reading: Reading) -> None:
        """Take one reading with the vent open."""
        recent = self._recent
        recent.append((reading.at_s, reading.pressure_pa))
        while len(recent) > 2 and recent[1][0] <= reading.at_s - 2.0 * WINDOW_S:
            recent.popleft()

    def reaches(self, target_pa: float, gauge: GaugeWatch) -> Bounds | None:
        """Return when `target_pa` [Pa absolute] is reached [s from the last reading].

        None where it can't be said: too short a fall, too slow, under the target already, or more
        than ten minutes ahead.
        """
        recent = self._recent
        if not recent:
            return None
        now_s, now_pa = recent[-1]
        middle = self._before(now_s - WINDOW_S)
        if middle is None or now_pa <= target_pa or target_pa <= 0.0:
            return None
        span_s, fallen_pa = now_s - middle[0], middle[1] - now_pa
        if fallen_pa <= LEAST_FALL_PA_PER_S * span_s:
            return None
        share_per_s = log(middle[1] / now_pa) / span_s
        seconds = log(now_pa / target_pa) / share_per_s
        if seconds > LONGEST_S:
            return None
        grain = max(gauge.step_pa, 2.0 * gauge.noise_pa) / fallen_pa
        spread = sqrt(
            BASE**2
            + (OF_GAUGE * grain) ** 2
            + (OF_CHANGE * self._change(middle, share_per_s)) ** 2
            + (OF_TIME * log1p(seconds / TIME_SCALE_S)) ** 2
        )
        return Bounds(
            estimate=seconds,
            lower=max(0.0, seconds * exp(-EARLY * spread) - PAD_S),
            upper=seconds * exp(LATE * spread) + PAD_S,
            confidence=CONFIDENCE,
        )

    def _before(self, at_s: float) -> tuple[float, float] | None:
        """Return the last reading that is not later than `at_s`."""
        for past in reversed(self._recent):
            if past[0] <= at_s + 1e-9:
                return past
        return None

    def _change(self, middle: tuple[float, float], share_per_s: float) -> float:
        """Return how much the fall has changed from the window before, as |ln ratio|."""
        first = self._recent[0]
        span_s = middle[0] - first[0]
        if span_s < 0.5 * WINDOW_S:
            return NO_CHANGE_KNOWN
        earlier = log(first[1] / middle[1]) / span_s
        if earlier <= 0.0:
            return MOST_CHANGE
        return min(abs(log(share_per_s / earlier)), MOST_CHANGE)
