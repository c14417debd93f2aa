"""The shelf: while solid, liquid and vapour are together, the pressure is the triple point's.

One-component phase rule: three phases leave no freedom. A closed section with dry ice climbs along
the sublimation line to 5.18 bar abs and stands there while the ice melts. Gas that warms can settle
near the triple point too, but it fades into its level; a shelf is met with a knee.
"""

import numpy as np

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.criteria import Criteria
from co2vent.inference.trace import Floats, HoldArrays, HoldTrace
from co2vent.inference.wording import difference_text
from co2vent.readings.reading import Setup
from co2vent.sentence import Sentence

FADE_S = np.geomspace(8.0, 400.0, 16)
SKIPPED_S = 20.0  # the gas warms first in every hold


def shelf_in(
    trace: HoldTrace, blocks: HoldArrays, setup: Setup, step_pa: float, criteria: Criteria
) -> str | None:
    """Return words on the shelf if the hold's end stands on one, else `None`."""
    t, p = blocks.t, blocks.p
    if t.size < 8:
        return None
    band = criteria.shelf_band_pa + setup.gauge_error_pa + step_pa
    if abs(p[-1] - TRIPLE_PRESSURE_PA) > band:
        return None
    # from a hold's start below, or from where an earlier climb of the same hold was lowest
    if p[0] > TRIPLE_PRESSURE_PA - criteria.shelf_approach_pa:
        return None
    used = t >= min(SKIPPED_S, 0.2 * t[-1])
    t, p = t[used], p[used]
    knee_s, level_pa, climb, hinge = _hinge(t, p)
    standing = float(t[-1]) - knee_s
    if standing < criteria.shelf_least_s or abs(level_pa - TRIPLE_PRESSURE_PA) > band:
        return _smooth(blocks, band, step_pa, setup, criteria)
    floor = t.size * (0.29 * step_pa + 150.0) ** 2  # what a gauge leaves of any curve
    late = t >= t[-1] - 0.7 * standing
    flat = float(np.polyfit(t[late], p[late], 1)[0]) if late.sum() >= 3 else climb
    steady = max(criteria.shelf_slope_pa_per_s * 0.3, 0.7 * step_pa / standing)
    if abs(flat) > steady or climb < criteria.shelf_slope_pa_per_s:
        return _smooth(blocks, band, step_pa, setup, criteria)
    if hinge + floor > criteria.shelf_knee_share * (_fade(t, p) + floor):
        return _smooth(blocks, band, step_pa, setup, criteria)
    return Sentence(
        "{time}, within {width} of it",
        time=f"{standing:.0f} s",
        width=difference_text(abs(level_pa - TRIPLE_PRESSURE_PA), setup),
    )


def standing_open(
    trace: HoldTrace, blocks: HoldArrays, setup: Setup, step_pa: float, criteria: Criteria
) -> Sentence | None:
    """Return words on a shelf with the vent open, where no valve column tells the two apart.

    A vent that stops falling at the triple point, and does not rise as gas shut in does, is open:
    what leaves comes from liquid that freezes.
    """
    t, p = blocks.t, blocks.p
    if t.size < 8 or t[-1] < criteria.shelf_open_s:
        return None
    band = criteria.shelf_band_pa + setup.gauge_error_pa + step_pa
    if float(np.abs(p - TRIPLE_PRESSURE_PA).max()) > band:
        return None
    rise = float(p.max()) - min(trace.first_pa, float(p[0]))
    fall = (float(p[0]) - float(p[-1])) / float(t[-1])
    if rise > step_pa + criteria.shelf_open_rise_pa or fall > criteria.shelf_open_fall:
        return None
    return Sentence("{time} s without the rise of gas shut in", time=f"{t[-1]:.0f}")


def _smooth(
    blocks: HoldArrays, band_pa: float, step_pa: float, setup: Setup, criteria: Criteria
) -> str | None:
    """A shelf met without a knee: a large rise that ends dead level at the triple point.

    Gas can level there by chance, but rarely after so large a rise, and metal that warms keeps it
    creeping.
    """
    t, p = blocks.t, blocks.p
    if p[-1] - p[0] < criteria.shelf_smooth_rise * p[0]:
        return None
    late = t >= t[-1] - criteria.shelf_smooth_s
    if t[-1] < criteria.shelf_smooth_s + 40.0 or late.sum() < 4:
        return None
    level = float(p[late].mean())
    if abs(level - TRIPLE_PRESSURE_PA) > band_pa - 0.5 * step_pa:
        return None
    if float(np.ptp(p[late])) > criteria.shelf_band_pa + step_pa:
        return None
    if abs(float(np.polyfit(t[late], p[late], 1)[0])) > criteria.shelf_smooth_slope + 0.3 * (
        step_pa / criteria.shelf_smooth_s
    ):
        return None
    return Sentence(
        "level for {time} after rising {rise}",
        time=f"{criteria.shelf_smooth_s:.0f} s",
        rise=difference_text(float(p[-1] - p[0]), setup),
    )


def _hinge(t: Floats, p: Floats) -> tuple[float, float, float, float]:
    """Best climb-then-level: knee [s], level [Pa], climb [Pa/s], sum of squares [Pa2]."""
    best = (float(t[-1]), float(p[-1]), 0.0, float("inf"))
    for knee in t[3:-2]:
        before = np.minimum(t - knee, 0.0)
        spread = before - before.mean()
        if not (spread**2).sum() > 0.0:
            continue
        climb = float((spread * p).sum() / (spread**2).sum())
        level = float(p.mean() - climb * before.mean())
        squares = float(((p - level - climb * before) ** 2).sum())
        if squares < best[3]:
            best = (float(knee), level, climb, squares)
    return best


def _fade(t: Floats, p: Floats) -> float:
    """Sum of squares [Pa2] of the best exponential approach to a level."""
    shape = np.exp(-(t[None, :] - t[0]) / FADE_S[:, None])
    spread = shape - shape.mean(axis=1, keepdims=True)
    square = (spread**2).sum(axis=1)
    slope = (spread * p).sum(axis=1) / square
    residual = p[None, :] - p.mean() - slope[:, None] * spread
    return float((residual**2).sum(axis=1).min())
