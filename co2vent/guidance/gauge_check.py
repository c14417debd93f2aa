"""A gauge in doubt: at the top of its range, frozen, or jumping as no closed section can."""

from co2vent.inference.trace import GaugeWatch
from co2vent.inference.wording import difference_text
from co2vent.readings.reading import Reading, Setup
from co2vent.sentence import Sentence

FROZEN_S = 60.0  # a gauge that showed noise and then none for so long is frozen or cut off
FROZEN_LEAST_READINGS = 60  # before that the noise is not known
FROZEN_LEAST_SAME = 30  # with a slow logger a minute is a few readings only
IMPOSSIBLE_JUMP_PA = 3.0e5  # no closed section steps by 3 bar from one reading to the next
JUMP_WITHIN_S = 2.0
SETTLED_S = 30.0


class GaugeCheck:
    """Says what is wrong with a gauge. Feed `fault` with every reading, in order."""

    __slots__ = ("_closed_since_s", "_count", "_noisy", "_same", "_same_since_s")

    def __init__(self) -> None:
        self._same_since_s: float | None = None
        self._closed_since_s: float | None = None
        self._noisy = False  # when the reading changed last: readings that stand teach no noise
        self._count = 0
        self._same = 0

    def fault(
        self,
        reading: Reading,
        last: Reading | None,
        setup: Setup,
        gauge: GaugeWatch,
        *,
        closed: bool,
    ) -> str | None:
        """Return what is wrong, in words that follow "check the gauge: ", or `None`."""
        self._count += 1
        if not closed:
            self._closed_since_s = None
        elif self._closed_since_s is None:
            self._closed_since_s = reading.at_s
        pressure_pa = reading.pressure_pa
        shows_noise = gauge.shows_noise
        found: str | None = None
        if setup.gauge_full_scale_pa is not None and pressure_pa >= setup.gauge_full_scale_pa:
            found = Sentence("the gauge is at the top of its range")
        if last is None or pressure_pa != last.pressure_pa:
            self._same_since_s = None
            self._same = 0
            # just after a vent its fall is still taken for noise
            settled = self._closed_since_s is not None and (
                reading.at_s - self._closed_since_s > SETTLED_S
            )
            self._noisy = shows_noise and settled
        else:
            self._same += 1
            if self._same_since_s is None:
                self._same_since_s = last.at_s
            same_s = reading.at_s - self._same_since_s
            noisy = self._noisy or shows_noise
            long = same_s >= FROZEN_S and self._same >= FROZEN_LEAST_SAME
            if long and noisy and self._count > FROZEN_LEAST_READINGS:
                found = Sentence(
                    "the reading has not changed for {time}, though it used to show noise",
                    time=f"{same_s:.0f} s",
                )
        if closed and last is not None and reading.at_s - last.at_s < JUMP_WITHIN_S:
            jump = abs(pressure_pa - last.pressure_pa)
            if jump > IMPOSSIBLE_JUMP_PA:
                found = Sentence(
                    "the reading jumped by {jump} with the vent closed",
                    jump=difference_text(jump, setup),
                )
        return found
