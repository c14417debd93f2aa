"""What every hold test shares: a trend left over from the model of a tight section, with bounds.

A section is held. A model says what its readings would do if all is well; what is left over is
fitted with a straight line, and the line's slope is bounded. Neighbouring readings are alike
(averaging gauges, wandering temperature), so the bound counts independent readings, not rows.
"""

from dataclasses import dataclass
from math import sqrt
from typing import Final

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

MAX_BLOCKS: Final = 400  # a day at 10 Hz becomes this many means; a line needs no more
MIN_INDEPENDENT: Final = 6.0  # fewer independent readings bound no slope
#: Medians of so many neighbours are compared: a flicker of one or two readings is no movement.
STEADIED_READINGS: Final = 5
#: A change counts beyond so many standard deviations of single readings (judgement): the highest of
#: 10 000 such medians lies about 4.5 of them above the lowest.
NOISE_FACTOR: Final = 6.0
#: Or beyond so many steps of the display: a last digit that goes to and fro is no movement.
STEP_FACTOR: Final = 1.5


@dataclass(frozen=True, slots=True)
class Slope:
    """A straight trend per second with 95 % bounds; `None`: too few independent readings."""

    estimate: float
    lower: float | None
    upper: float | None
    independent: float

    def widened(self, systematic: float) -> "Slope":
        """Return the slope with `systematic` (a bound per second, either way) added."""
        if self.lower is None or self.upper is None:
            return self
        return Slope(
            self.estimate, self.lower - systematic, self.upper + systematic, self.independent
        )

    def agrees_with(self, other: "Slope") -> bool:
        """Say whether both bounds overlap; without bounds nothing disagrees."""
        if None in (self.lower, self.upper, other.lower, other.upper):
            return True
        assert self.lower is not None
        assert self.upper is not None
        assert other.lower is not None
        assert other.upper is not None
        return self.lower <= other.upper and other.lower <= self.upper


def block_means(*series: Floats, most: int = MAX_BLOCKS) -> tuple[Floats, ...]:
    """Return the series cut into at most `most` blocks of neighbours, averaged."""
    count = len(series[0])
    size = -(-count // most)
    if size <= 1:
        return series
    starts = np.arange(0, count, size)
    lengths = np.diff(np.append(starts, count))
    return tuple(np.add.reduceat(values, starts) / lengths for values in series)


def fit_slope(
    at_s: Floats, values: Floats, step: float = 0.0, fading_s: float | None = None
) -> Slope:
    """Return the trend of `values` per second. `step` is the resolution of a single reading.

    `fading_s`: a part that fades with this time constant is fitted beside the trend, of any size.

    The residuals are taken as first-order autoregressive; their correlation is raised by the bias
    that a short record gives it (Kendall 1954, Biometrika 41, 403: about -(1 + 4 rho) / n).
    """
    at_s, values = block_means(at_s, values)
    count = len(at_s)
    centred = at_s - at_s.mean()
    spread = float(centred @ centred)
    if count < 4 or spread <= 0.0:
        return Slope(0.0, None, None, 0.0)
    rest = values - values.mean()
    if fading_s is not None:
        # what time and values share with the fading part is taken out of both (Frisch and Waugh)
        fading = np.exp(-(at_s - at_s[0]) / fading_s)
        fading -= fading.mean()
        size = float(fading @ fading)
        centred = centred - fading * (float(fading @ centred) / size)
        rest = rest - fading * (float(fading @ rest) / size)
        spread = float(centred @ centred)
    slope = float(centred @ rest) / spread
    residuals = rest - slope * centred
    variance = float(residuals @ residuals) / (count - 2) + step * step / 12.0
    rho = 0.0
    power = float(residuals @ residuals)
    if power > 0.0:
        rho = float(residuals[:-1] @ residuals[1:]) / power
        rho = min(rho + (1.0 + 4.0 * rho) / count, 0.999)
    rho = max(rho, 0.0)  # alternating residuals buy no credit
    independent = count * (1.0 - rho) / (1.0 + rho)
    if independent < MIN_INDEPENDENT:
        return Slope(slope, None, None, independent)
    error = sqrt(variance / spread * (1.0 + rho) / (1.0 - rho))
    half = student_975(independent - 2.0) * error
    # A reading's own step can move both ends of a line, however many readings there are.
    half += step / (float(at_s[-1] - at_s[0]))
    return Slope(slope, slope - half, slope + half, independent)


def student_975(freedom: float) -> float:
    """Return the two-sided 95 % point of Student's t (Abramowitz and Stegun 26.7.5), within 1 %."""
    z = 1.959963984540054
    nu = max(freedom, 3.0)
    return z + sum(
        (
            (z**3 + z) / (4.0 * nu),
            (5 * z**5 + 16 * z**3 + 3 * z) / (96.0 * nu**2),
            (3 * z**7 + 19 * z**5 + 17 * z**3 - 15 * z) / (384.0 * nu**3),
            (79 * z**9 + 776 * z**7 + 1482 * z**5 - 1920 * z**3 - 945 * z) / (92160.0 * nu**4),
        )
    )


def smallest_step(values: Floats) -> float:
    """Return the smallest change between distinct values: the resolution; 0 if there is none."""
    distinct = np.unique(values)
    return float(np.diff(distinct).min()) if len(distinct) > 1 else 0.0


def steadied(values: Floats) -> Floats:
    """Return running medians over `STEADIED_READINGS` neighbours: single flickers are gone."""
    if len(values) < STEADIED_READINGS:
        return values
    padded = np.pad(values, STEADIED_READINGS // 2, mode="edge")
    windows = np.lib.stride_tricks.sliding_window_view(padded, STEADIED_READINGS)
    return np.asarray(np.median(windows, axis=1), dtype=np.float64)


def reading_noise(values: Floats) -> float:
    """Return the standard deviation of single readings, from what neighbours differ by.

    By medians, so that the few jumps that are looked for do not count as noise; 1.4826 makes a
    median deviation a standard deviation (normal distribution).
    """
    steps = np.diff(values)
    if not len(steps):
        return 0.0
    spread = float(np.median(np.abs(steps - np.median(steps))))
    return 1.4826 * spread / sqrt(2.0)
