"""What keeps a quiet hold from being called vapour only: other things that look as quiet."""

from math import hypot, inf

import numpy as np

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.criteria import Criteria
from co2vent.inference.dry_limits import gas_warmed_pa
from co2vent.inference.hold_facts import Hold, HoldContext
from co2vent.inference.power import Power
from co2vent.inference.trace import Floats, HoldArrays, HoldTrace
from co2vent.inference.trend import block_sigma_pa, straight_slope

MOVED_EARLY_S = 12.0  # the first part of a hold, before most of the gas has warmed
MOVED_ERRORS = 4.0  # so many standard errors are no noise


def really_closed(
    trace: HoldTrace, end_pa: float, strength: Power, context: HoldContext, criteria: Criteria
) -> bool:
    """Without a valve column: whether the pressure rose as behind a shut valve, on warm metal.

    An open vent that just carries off what boils stands as still as a quiet hold.
    """
    least = max(criteria.least_closed_rise_pa, 1.2 * context.step_pa, 5.0 * context.noise_pa)
    return end_pa - trace.first_pa >= least and strength.drive_k >= criteria.clamp_power_k


def has_moved(hold: Hold) -> bool:
    """Whether the gas has warmed since the vent closed, as it always does by tens of mbar.

    A gauge behind a plugged hose or a shut valve stands still but for its own noise. Gas of a lower
    pressure moves less; there means of the beginning and of the end are compared.
    """
    blocks, context, criteria = hold.blocks, hold.context, hold.criteria
    if hold.trace.changes < criteria.least_changes:
        return False
    moved_pa = float(blocks.p.max() - blocks.p.min())
    if moved_pa >= max(criteria.least_moved_pa, context.noise_pa):
        return True
    early, late = blocks.t <= MOVED_EARLY_S, blocks.t >= 0.7 * float(blocks.t[-1])
    if not early.any() or float(blocks.t[-1]) < 4.0 * MOVED_EARLY_S:
        return False
    sigma = block_sigma_pa(blocks, context.noise_pa, context.step_pa)
    error_pa = hypot(_mean_error(sigma[early]), _mean_error(sigma[late]))
    moved_pa = abs(float(blocks.p[late].mean()) - float(blocks.p[early].mean()))
    return moved_pa >= max(criteria.least_moved_share * hold.end_pa, MOVED_ERRORS * error_pa)


def _mean_error(sigma: Floats) -> float:
    return float(np.sqrt((sigma**2).sum())) / sigma.size


def may_be_liquid_yet(
    first_pa: float, end_pa: float, strength: Power, context: HoldContext, criteria: Criteria
) -> bool:
    """Whether a large rise may have slowed for another reason than gas that has warmed.

    Gas rises less in its next hold from the same pressure; liquid, boiling badly or in balance
    with an outward leak, rises as much again, or a little less from one hold to the next. Without a
    clamp that shows the metal warm nothing shows what a leak takes, and one quiet hold far above
    the stop pressure is not enough: a balance would climb back to where it stood before the last
    vent, so this hold must be quiet below that.
    """
    if context.begun_pa is not None:
        first_pa = min(first_pa, context.begun_pa)  # a gap makes no rise smaller
    rise = end_pa / first_pa - 1.0
    volume = context.setup.section_volume_m3
    large = volume is not None and volume > criteria.balance_volume_m3
    most = criteria.most_first_rise if large else criteria.most_first_rise_small
    if not strength.drive_k >= criteria.clamp_power_k:
        balanced_pa = (1.0 + criteria.climbs_back_within) * end_pa
        lower = first_pa < context.stop_pa + criteria.balance_over_stop_pa or any(
            hold.number >= 1 and hold.end_pa > balanced_pa for hold in context.earlier
        )
        most = criteria.most_first_rise_unseen if lower else -inf
    if rise <= most:
        return False
    before = [
        hold.end_pa / hold.start_pa - 1.0
        for hold in context.earlier
        if hold.number >= 1 and abs(hold.start_pa / first_pa - 1.0) < criteria.most_first_rise
    ]
    return not (before and before[-1] > criteria.less_than_before * rise)


def gathers_pace(
    blocks: HoldArrays, strength: Power, context: HoldContext, criteria: Criteria
) -> bool:
    """Whether the pressure rises faster at the end than in the middle of the hold.

    Whatever warms the gas of a dry section fades; only boiling, held back by a leak or by liquid
    colder than saturation, comes late. Two straight lines and their standard errors tell.
    """
    end_s = float(blocks.t[-1])
    sigma = block_sigma_pa(blocks, context.noise_pa, context.step_pa)
    lines: list[tuple[float, float]] = []
    for start, stop in ((0.35, 0.65), (0.7, 1.0)):
        part = (blocks.t >= start * end_s) & (blocks.t <= stop * end_s)
        if part.sum() < 4:
            return False
        lines.append(straight_slope(blocks.t[part], blocks.p[part], sigma[part]))
    (middle, middle_error), (late, late_error) = lines
    seen = strength.drive_k >= criteria.clamp_power_k
    errors = criteria.pace_errors if seen else criteria.pace_errors_unseen
    least = max(errors * hypot(middle_error, late_error), criteria.slope_floor_pa_per_s)
    return late - middle > least


def rose_beyond_clamp(hold: Hold) -> bool:
    """Whether gas that is as warm as the clamp can't have come this far by warming alone.

    Gas is no colder than saturated when the vent closes. Of some 450 dry sections that were cleared
    (independent simulation) none had gas over 3 K warmer than their clamp by this measure; more
    than half of the wet ones did, 290 g beside an outward leak among them: by 40 K.
    """
    drive_k, context, criteria = hold.power.drive_k, hold.context, hold.criteria
    if not drive_k >= criteria.clamp_power_k or hold.end_pa <= TRIPLE_PRESSURE_PA:
        return False
    first_pa = hold.trace.first_pa
    if context.begun_pa is not None:
        first_pa = min(first_pa, context.begun_pa)
    return hold.end_pa > gas_warmed_pa(first_pa, hold.line_k + criteria.gas_over_clamp_k)


def sure_over_ice(strength: Power, unexplained: float, age_s: float, criteria: Criteria) -> bool:
    """Whether a hold clears a section that may hold melting ice: warm lowest metal, and quieter."""
    return (
        strength.drive_k >= criteria.ice_drive_k
        and unexplained < criteria.ice_quieter * strength.least_wet_slope
        and age_s >= criteria.ice_hold_s
    )
