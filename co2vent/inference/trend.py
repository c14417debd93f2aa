"""The late trend of a hold, with honest bounds: a profile over the shapes a closed section allows.

A closed section's pressure is the sum of

- gas warming on metal, ``1 - exp(-t / tau)`` with a fixed heat transfer, or, in free convection
  with heat flow going with the 4/3 power of the difference, ``1 - (1 + t / (3 tau)) ** -3`` (from
  d(theta)/dt = -theta**(4/3) / tau): both are tried;
- a trend that may fade: ``theta * (1 - exp(-t / theta))``: metal warming towards the ambient,
  liquid boiling, flow past a valve (theta infinite: a straight line).

For every (tau, theta) of a grid the rest is linear least squares, so the bound on the slope at the
end is a true profile: the largest slope that any admissible shape reaches within the likelihood
limit, not a slope with one shape's standard error.
"""

from dataclasses import dataclass, replace
from math import sqrt

import numpy as np

from co2vent.inference.trace import Floats, HoldArrays

TAU_S = np.geomspace(4.0, 110.0, 19)  # steps of 20 %: between two of them a fit is off by 2 %
THETA_S = np.array([120.0, 300.0, 700.0, 2000.0, 1e7])
HALF_STEP = 0.092  # ln(1.2) / 2: half a step of the time constants
MISFIT_START = 4.0  # reduced chi square from which the start is taken for foreign
LATER_LEAST_S = 80.0
SHAPE_SHARE = 0.006  # of the hold's range: how far real warming curves leave the family
LATE_SHARE, LATE_LEAST_S = 0.3, 60.0
DITHERED = 0.5  # noise over step from which the steps average out
Z_999 = 3.0902  # one-sided 99.9 % of a normal


@dataclass(frozen=True, slots=True)
class Trend:
    """What the pressure does at the end of a hold. Slopes in Pa/s."""

    slope: float  # at the end, best shape
    slope_lower: float  # 99.9 % bounds over all admissible shapes
    slope_upper: float
    steady: float  # the part of the slope that is not gas warming
    steady_lower: float
    steady_upper: float
    warming_pa: float  # size of the gas-warming part
    tau_s: float
    theta_s: float
    misfit: float  # reduced chi square before scaling
    sigma_pa: float  # of one block, after scaling


def is_grainy(noise_pa: float, step_pa: float) -> bool:
    """Whether the noise is too small to average the gauge's steps out."""
    return noise_pa < DITHERED * step_pa


def block_sigma_pa(blocks: HoldArrays, noise_pa: float, step_pa: float) -> Floats:
    """Standard error of each block mean [Pa].

    A step that the noise does not dither stays a correlated error and is not averaged away.
    """
    quantum = step_pa / sqrt(12.0)
    kept = 1.0 if is_grainy(noise_pa, step_pa) else 0.3
    floor = 60.0  # Pa: Allan floor of a good gauge (0.5 mbar measured on a closed cell)
    return np.sqrt(noise_pa**2 / blocks.n + (kept * quantum) ** 2 + floor**2)


def fit_trend(blocks: HoldArrays, noise_pa: float, step_pa: float) -> Trend | None:
    """Fit the hold's blocks; `None` with fewer than 5 blocks (no freedom left to judge a fit).

    A hold whose start does not fit (a valve closed in two goes, a closing found late) is judged by
    its later part alone, if that is long enough to stand by itself.
    """
    found = _best_part(blocks, noise_pa, step_pa)
    if found is None:
        return None
    mean, error = _late_mean(blocks, noise_pa, step_pa)
    upper = mean + error
    if is_grainy(noise_pa, step_pa):
        upper = max(upper, _grain_slope(blocks, step_pa))
    return replace(
        found,
        slope_lower=min(found.slope_lower, mean - error),
        slope_upper=max(found.slope_upper, upper),
        steady_lower=min(found.steady_lower, mean - error),
        steady_upper=max(found.steady_upper, upper),
    )


def _late_mean(blocks: HoldArrays, noise_pa: float, step_pa: float) -> tuple[float, float]:
    """The mean slope of the hold's last part and its standard error [Pa/s].

    Boiling that gathers pace leaves the family of shapes; a straight line through the end does not
    ask for one. Without it one bound in fifty missed the true slope of wet holds by more than
    3 Pa/s, with it none of some 450 (two models).
    """
    end = float(blocks.t[-1])
    late = blocks.t >= end - max(LATE_LEAST_S, LATE_SHARE * end)
    if late.sum() < 4:
        late = np.ones_like(late)
    sigma = block_sigma_pa(blocks, noise_pa, step_pa)
    return straight_slope(blocks.t[late], blocks.p[late], sigma[late])


def straight_slope(t: Floats, p: Floats, sigma: Floats) -> tuple[float, float]:
    """Slope of a straight line through at least two points and its standard error [Pa/s]."""
    spread = t - t.mean()
    square = float((spread**2).sum())
    error = sqrt(float((spread**2 * sigma**2).sum())) / square
    return float((spread * p).sum()) / square, error


def _grain_slope(blocks: HoldArrays, step_pa: float) -> float:
    """The greatest slope [Pa/s] at the end that a coarse gauge without noise can't exclude.

    A reading that stands may hide a rise of nearly one step; and as a closed section's rise slows
    down, its slope is no greater than between the two steps before.
    """
    t, p = blocks.t, blocks.p
    end = float(t[-1])
    last = t[p <= p[-1] - 0.5 * step_pa]
    stepped_s = float(last[-1]) if last.size else 0.0
    before = t[p <= p[-1] - 1.5 * step_pa]
    standing = step_pa / max(end - stepped_s, 1.0)
    if not before.size:
        return standing
    return min(standing, step_pa / max(stepped_s - float(before[-1]), 1.0))


def _best_part(blocks: HoldArrays, noise_pa: float, step_pa: float) -> Trend | None:
    whole = _fit(blocks, noise_pa, step_pa)
    if whole is None or whole.misfit <= MISFIT_START or blocks.t[-1] < 2.0 * LATER_LEAST_S:
        return whole
    late = blocks.t >= max(0.35 * blocks.t[-1], 45.0)
    later = HoldArrays(
        blocks.t[late], blocks.p[late], blocks.n[late], blocks.line_k[late], blocks.upper_k[late]
    )
    if later.t.size < 8 or later.t[-1] - later.t[0] < LATER_LEAST_S:
        return whole
    part = _fit(later, noise_pa, step_pa)
    return part if part is not None and part.misfit < whole.misfit else whole


def _fit(blocks: HoldArrays, noise_pa: float, step_pa: float) -> Trend | None:
    if blocks.t.size < 5:
        return None
    t, p = blocks.t - (blocks.t[0] if blocks.t[0] > 30.0 else 0.0), blocks.p
    # a share of what moved is left to shapes this family does not have
    sigma = np.hypot(block_sigma_pa(blocks, noise_pa, step_pa), SHAPE_SHARE * np.ptp(p))
    end = float(t[-1])
    tau = np.tile(np.repeat(TAU_S, THETA_S.size), 2)
    theta = np.tile(THETA_S, 2 * TAU_S.size)
    free = np.arange(tau.size) < tau.size // 2  # the first half: free convection
    scaled = t[None, :] / tau[:, None]
    warm = np.where(free[:, None], 1.0 - (1.0 + scaled / 3.0) ** -3.0, -np.expm1(-scaled))
    fade = theta[:, None] * -np.expm1(-t[None, :] / theta[:, None])
    # between two time constants of the grid: the derivative by ln(tau), with half a step's freedom
    decay = np.where(free[:, None], (1.0 + scaled / 3.0) ** -4.0, np.exp(-scaled))
    between = HALF_STEP * -scaled * decay
    columns = (np.ones_like(warm), warm, fade, between)
    basis = np.stack(columns, axis=2) / sigma[None, :, None]
    target = (p - p[0]) / sigma
    normal = basis.transpose(0, 2, 1) @ basis
    # a ridge far below any physical size keeps shapes that look alike solvable
    normal[:, 1, 1] += 1e-10
    normal[:, 2, 2] += 1e-6
    normal[:, 3, 3] += 1.0 / max(float(np.ptp(p)), 1_000.0) ** 2
    right = basis.transpose(0, 2, 1) @ target
    inverse = np.linalg.inv(normal)
    beta = (inverse @ right[:, :, None])[:, :, 0]
    fitted = (basis @ beta[:, :, None])[:, :, 0]
    chi2 = ((target - fitted) ** 2).sum(axis=1)
    best = int(np.argmin(chi2))
    freedom = max(t.size - 5, 1)
    misfit = float(chi2[best]) / freedom
    # a fit that is better than the errors above say does not narrow the bounds: a gauge that drifts
    # slowly is fitted as well as one that doesn't
    scale = max(misfit, 1.0)
    delta = (chi2 - chi2[best]) / scale

    zero = np.zeros_like(tau)
    end_warm = np.where(free, (1.0 + end / (3.0 * tau)) ** -4.0, np.exp(-end / tau)) / tau
    end_fade = np.exp(-end / theta)
    # slope of the in-between column at the end: d/dt of -(t / tau) decay, by tau
    late = end / tau
    turn = np.where(free, (1.0 + late / 3.0) ** -5.0 * (1.0 - late), np.exp(-late) * (1.0 - late))
    end_between = -HALF_STEP * turn / tau
    total = np.stack((zero, end_warm, end_fade, end_between), axis=1)
    steady = np.stack((zero, zero, end_fade, zero), axis=1)

    def bounds(direction: Floats) -> tuple[float, float, float]:
        value = (direction * beta).sum(axis=1)
        variance = np.einsum("ki,kij,kj->k", direction, inverse, direction) * scale
        room = np.sqrt(np.clip(Z_999**2 - delta, 0.0, None) * variance)
        inside = delta <= Z_999**2
        return (
            float(value[best]),
            float((value - room)[inside].min()),
            float((value + room)[inside].max()),
        )

    slope, slope_lower, slope_upper = bounds(total)
    level, level_lower, level_upper = bounds(steady)
    return Trend(
        slope,
        slope_lower,
        slope_upper,
        level,
        level_lower,
        level_upper,
        float(beta[best, 1]),
        float(tau[best]),
        float(theta[best]),
        misfit,
        float(np.median(sigma)) * sqrt(scale),
    )
