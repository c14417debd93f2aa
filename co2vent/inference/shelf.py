"""The shelf: while solid, liquid and vapour are together, the pressure is the triple point's.

One-component phase rule: three phases leave no freedom. A closed section with dry ice climbs along
the sublimation line to 5.18 bar abs and stands there while the ice melts.
"""

import numpy as np

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.criteria import Criteria
from co2vent.inference.trace import HoldArrays, HoldTrace


def shelf_in(
    trace: HoldTrace, blocks: HoldArrays, gauge_error_pa: float, step_pa: float, criteria: Criteria
) -> str | None:
    """Return words on the shelf if the hold's end stands on one, else `None`.

    It counts only where the pressure came from below with a slope that then stopped: gas that
    happens to settle near the triple point fades into it instead of meeting a knee.
    """
    t, p = blocks.t, blocks.p
    if t.size < 8:
        return None
    band = criteria.shelf_band_pa + gauge_error_pa + step_pa
    inside = np.abs(p - TRIPLE_PRESSURE_PA) <= band
    if not inside[-1]:
        return None
    outside = np.flatnonzero(~inside)
    first = int(outside[-1]) + 1 if outside.size else 0
    if first < 3 or p[0] > TRIPLE_PRESSURE_PA - criteria.shelf_approach_pa:
        return None
    # the knee: the last quarter of the shelf's time is flat, the approach was not
    standing = t[-1] - t[first]
    late = t >= t[-1] - 0.6 * standing
    if late.sum() < 3 or 0.6 * standing < criteria.shelf_least_s:
        return None
    flat = float(np.polyfit(t[late], p[late], 1)[0])
    # slope while coming in, over a time like the shelf's
    before = (t < t[first]) & (t >= t[first] - max(standing, 30.0))
    if before.sum() < 3:
        return None
    coming = float(np.polyfit(t[before], p[before], 1)[0])
    tolerance = max(criteria.shelf_slope_pa_per_s * 0.3, 0.5 * step_pa / (0.6 * standing))
    if abs(flat) > max(tolerance, 0.12 * coming) or coming < 3.0 * abs(flat) or coming < 20.0:
        return None
    return f"{standing:.0f} s within {band / 1e5:.2f} bar of it"
