"""How fast the pressure fell in each vent: what boils off a pool lets the next vent fall faster.

Liquid that a vent cools gives off vapour, and that vapour holds the pressure up: a section with
liquid falls slower than one with gas alone, the slower the more there is. Each vent boils off a
share of the liquid, the heat it gives up over its heat of evaporation, cp dT / h, whatever the size
of the section; what boils in the hold comes on top. If nothing flows in, the same fall must take
less time, by that share at least, vent after vent. Where it takes as long, what left was replaced.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from math import log

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.lines import saturated_k

# least cp/h of saturated liquid [1/K]: 0.00558 at the triple point, more above (Span-Wagner)
BOILED_PER_K = 0.0055
POINT_SHARE = 0.005  # of the pressure, between two points that are kept
MOST_FALLS = 12  # the newest
LEAST_FALL_PA = 5.0e4
HIGHEST_PA = 7.0e6


@dataclass(frozen=True, slots=True)
class VentFall:
    """The fall of one vent, thinned; pressures only go down."""

    hold: int  # number of the hold that followed
    at_s: tuple[float, ...]
    pa: tuple[float, ...]

    def takes_s(self, high_pa: float, low_pa: float) -> float:
        """Return the time from `high_pa` to `low_pa` [s]; both must lie within the fall."""
        return self._at(low_pa) - self._at(high_pa)

    def boiled_share(self, high_pa: float, low_pa: float) -> float:
        """Return the least share of its liquid that a fall boils off."""
        high_pa, low_pa = min(high_pa, HIGHEST_PA), max(low_pa, TRIPLE_PRESSURE_PA)
        if high_pa <= low_pa:
            return 0.0
        return BOILED_PER_K * (saturated_k(high_pa) - saturated_k(low_pa))

    def _at(self, pressure_pa: float) -> float:
        for index in range(1, len(self.pa)):
            if self.pa[index] <= pressure_pa:
                before_s, before_pa = self.at_s[index - 1], self.pa[index - 1]
                part = (before_pa - pressure_pa) / (before_pa - self.pa[index])
                return before_s + part * (self.at_s[index] - before_s)
        return self.at_s[-1]


class VentFalls:
    """Keeps the falls of the vents. Feed every reading with the vent open, in order of time."""

    __slots__ = ("_at_s", "_pa", "every")

    def __init__(self) -> None:
        self.every: tuple[VentFall, ...] = ()
        self._at_s: list[float] = []
        self._pa: list[float] = []

    def see(self, at_s: float, pressure_pa: float) -> None:
        """Take one reading with the vent open."""
        if not self._pa or pressure_pa < (1.0 - POINT_SHARE) * self._pa[-1]:
            self._at_s.append(at_s)
            self._pa.append(pressure_pa)
        elif len(self._pa) == 1:
            self._at_s[0] = at_s  # not open yet, or not yet seen

    def shut(self, hold: int) -> None:
        """The vent was shut, and hold `hold` has begun."""
        if len(self._pa) > 2 and self._pa[0] - self._pa[-1] >= LEAST_FALL_PA:
            fall = VentFall(hold, tuple(self._at_s), tuple(self._pa))
            self.every = (*self.every, fall)[-MOST_FALLS:]
        self._at_s, self._pa = [], []

    def forget(self) -> None:
        """Nobody saw what happened: nothing from before may be compared with what follows."""
        self.every = ()
        self._at_s, self._pa = [], []


@dataclass(frozen=True, slots=True)
class SameFall:
    """One fall of pressure in two vents."""

    high_pa: float
    low_pa: float
    before_s: float  # how long it took then
    now_s: float  # and in the later vent
    boiled: float  # least share of its liquid that the section must have lost in between


def same_fall(first: VentFall, later: Iterable[VentFall], margin_pa: float) -> SameFall | None:
    """Compare a vent with the last of the `later` ones over the pressures that both passed.

    `margin_pa` is kept from either end of a fall, where the hand still moves the valve.
    """
    every = list(later)
    last = every[-1]
    high_pa = min(first.pa[0], last.pa[0]) - margin_pa
    low_pa = max(first.pa[-1], last.pa[-1]) + margin_pa
    if high_pa - low_pa < LEAST_FALL_PA:
        return None
    middle_pa = 0.5 * (high_pa + low_pa)
    boiled = first.boiled_share(middle_pa, first.pa[-1]) + last.boiled_share(last.pa[0], middle_pa)
    boiled += sum(one.boiled_share(one.pa[0], one.pa[-1]) for one in every[:-1])
    return SameFall(
        high_pa,
        low_pa,
        first.takes_s(high_pa, low_pa),
        last.takes_s(high_pa, low_pa),
        boiled,
    )


def sooner(fall: SameFall) -> float:
    """By how much the fall takes less time in the later vent, as ln of the ratio."""
    return log(fall.before_s / fall.now_s)
