"""A hold's readings, kept as block means, and what they say of the gauge itself.

Blocks keep a fit's cost flat over an eight-hour hold; they lose nothing, because averaging over
more than about a minute buys no resolution in a gauge with a drift floor (Allan deviation of a
millibar gauge on a closed CO2 cell: floor at 10 to 60 samples).
"""

from array import array
from dataclasses import dataclass
from math import sqrt

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

BLOCK_S = 1.0  # shortest block [s]; the gas of a section warms over tens of seconds
LEARNS_FROM = 200  # readings that a gauge's noise is learnt from, the newest counting most
FIT_BLOCKS = 36  # blocks in one fit; more add correlated quantisation error, not knowledge


class GaugeWatch:
    """Learns a gauge's step and white noise [Pa] from its readings, in one pass.

    The step is the smallest change seen (a quantised gauge can't show less); the noise comes from
    second differences, which a steady trend does not move.
    """

    __slots__ = ("_before", "_last", "_mean_square", "_n", "step_pa")

    def __init__(self) -> None:
        self.step_pa = 0.0
        self._last = float("nan")
        self._before = float("nan")
        self._mean_square = 0.0
        self._n = 0

    def see(self, pressure_pa: float) -> None:
        """Take one reading [Pa]."""
        change = abs(pressure_pa - self._last)
        # below 1 Pa it is arithmetic, not a gauge
        if change > 1.0 and (self.step_pa == 0.0 or change < self.step_pa):
            self.step_pa = change
        second = pressure_pa - 2.0 * self._last + self._before
        if second == second:  # not NaN: three readings are there
            self._n += 1
            # clipped, so that a vent's jump is not taken for noise
            mean_square, square = self._mean_square, second * second
            limit = 25.0 * mean_square + 4.0 * self.step_pa**2 + 1e4
            if square > limit:
                square = limit
            weight = 1.0 / self._n if self._n < LEARNS_FROM else 1.0 / LEARNS_FROM
            self._mean_square = mean_square + weight * (square - mean_square)
        self._before, self._last = self._last, pressure_pa

    @property
    def noise_pa(self) -> float:
        """White noise of one reading [Pa]; the variance of a second difference is 6 of it."""
        return sqrt(self._mean_square / 6.0)

    @property
    def shows_noise(self) -> bool:
        """Whether the noise is over half of a step: without a root, asked at every reading."""
        return self._mean_square > 1.5 * self.step_pa**2 > 0.0

    def forget_neighbours(self) -> None:
        """Break the chain of differences at a gap."""
        self._last = self._before = float("nan")


class HoldTrace:
    """Block means of one hold, from the valve's closing on. Times are seconds after `start_s`."""

    __slots__ = (
        "_block",
        "_n",
        "_sums",
        "changes",
        "count",
        "first_pa",
        "highest_pa",
        "last_pa",
        "last_s",
        "lines",
        "lowest_pa",
        "n",
        "p",
        "start_s",
        "t",
        "uppers",
    )

    def __init__(self, start_s: float) -> None:
        self.start_s = start_s
        self.t = array("d")
        self.p = array("d")
        self.n = array("d")
        self.lines = array("d")  # line temperature [K] or NaN
        self.uppers = array("d")
        self.first_pa = float("nan")
        self.last_pa = float("nan")
        self.last_s = start_s
        self.lowest_pa = float("inf")
        self.highest_pa = float("-inf")
        self.count = 0
        self.changes = 0  # how often the reading differed from the one before: a live gauge's sign
        self._block = -1
        self._n = 0
        self._sums = [0.0, 0.0, 0.0, 0, 0.0, 0]

    def add(
        self, at_s: float, pressure_pa: float, line_k: float | None, upper_k: float | None
    ) -> None:
        """Take one reading of the hold."""
        if self.count == 0:
            self.first_pa = pressure_pa
        elif pressure_pa != self.last_pa:
            self.changes += 1
        self.count += 1
        self.last_pa = pressure_pa
        self.last_s = at_s
        if pressure_pa < self.lowest_pa:
            self.lowest_pa = pressure_pa
        if pressure_pa > self.highest_pa:
            self.highest_pa = pressure_pa
        block = int((at_s - self.start_s) / BLOCK_S)
        if block != self._block:
            self._flush()
            self._block = block
        sums = self._sums
        self._n += 1
        sums[0] += at_s - self.start_s
        sums[1] += pressure_pa
        if line_k is not None:
            sums[2] += line_k
            sums[3] += 1
        if upper_k is not None:
            sums[4] += upper_k
            sums[5] += 1

    def _flush(self) -> None:
        n = self._n
        if not n:
            return
        sums = self._sums
        self.t.append(sums[0] / n)
        self.p.append(sums[1] / n)
        self.n.append(float(n))
        self.lines.append(sums[2] / sums[3] if sums[3] else float("nan"))
        self.uppers.append(sums[4] / sums[5] if sums[5] else float("nan"))
        self._n = 0
        self._sums = [0.0, 0.0, 0.0, 0, 0.0, 0]

    def arrays(self) -> "HoldArrays":
        """Return the whole blocks so far, merged to at most `FIT_BLOCKS`."""
        return merged(
            np.array(self.t),
            np.array(self.p),
            np.array(self.n),
            np.array(self.lines),
            np.array(self.uppers),
        )

    @property
    def duration_s(self) -> float:
        """Seconds from the closing to the newest reading."""
        return self.last_s - self.start_s


@dataclass(frozen=True, slots=True)
class HoldArrays:
    """Blocks of a hold: mid time [s], mean pressure [Pa], readings in each, temperatures [K]."""

    t: Floats
    p: Floats
    n: Floats
    line_k: Floats
    upper_k: Floats


def merged(t: Floats, p: Floats, n: Floats, line_k: Floats, upper_k: Floats) -> HoldArrays:
    """Merge blocks so that the early transient stays sharp and the late trend gets long means."""
    if t.size <= FIT_BLOCKS:
        return HoldArrays(t, p, n, line_k, upper_k)
    # edges: a third of the blocks cover the first minute's transient, the rest spread evenly
    end = t[-1] + 1e-9
    early = min(60.0, end / 3.0)
    third = FIT_BLOCKS // 3
    edges = np.concatenate(
        (np.linspace(0.0, early, third + 1)[:-1], np.linspace(early, end, FIT_BLOCKS - third + 1))
    )
    which = np.clip(np.searchsorted(edges, t, side="right") - 1, 0, FIT_BLOCKS - 1)
    weight = np.bincount(which, n, FIT_BLOCKS)
    full = weight > 0

    def mean(values: Floats) -> Floats:
        known = np.isfinite(values)
        total = np.bincount(which[known], (values * n)[known], FIT_BLOCKS)
        count = np.bincount(which[known], n[known], FIT_BLOCKS)
        with np.errstate(invalid="ignore", divide="ignore"):
            return np.asarray((total / count)[full], dtype=np.float64)

    return HoldArrays(
        mean(t), mean(p), weight[full].astype(np.float64), mean(line_k), mean(upper_k)
    )
