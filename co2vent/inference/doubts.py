"""What keeps a quiet hold from being called vapour only: other things that look as quiet."""

from math import hypot, inf

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.criteria import Criteria
from co2vent.inference.hold_facts import Hold, HoldContext
from co2vent.inference.power import Power
from co2vent.inference.trace import HoldArrays, HoldTrace
from co2vent.inference.trend import Trend, block_sigma_pa, straight_slope
from co2vent.readings.reading import Setup


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

    A gauge behind a plugged hose or a shut valve stands still but for its own noise.
    """
    pressures = hold.blocks.p
    moved_pa = float(pressures.max() - pressures.min())
    return moved_pa >= max(hold.criteria.least_moved_pa, hold.context.noise_pa)


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


def deficit(
    trend: Trend,
    strength: Power,
    setup: Setup,
    first_pa: float,
    end_pa: float,
    criteria: Criteria,
    *,
    shown: bool = False,
) -> bool:
    """Whether the gas gains less than its metal's warming gives: a loss may hide boiling.

    Bare metal is warmed by the ambient everywhere. Behind insulation the spot under the clamp may
    warm from the metal around it, and the gas with neither; there a large rise must have come
    before, as when boiling came into balance with a loss. Over dry ice either is enough. A verdict
    that this hold has given (`shown`) is taken back only for a gain that is too small at its bound.
    """
    warming = strength.metal_slope
    if end_pa < TRIPLE_PRESSURE_PA:
        return (
            warming >= criteria.ice_deficit_least
            and trend.slope < criteria.ice_deficit_share * warming
        )
    if (
        setup.insulated is False
        and warming >= criteria.deficit_least_slope
        and trend.slope_upper < criteria.deficit_share * warming
    ):
        return True
    return (
        end_pa / first_pa - 1.0 > criteria.deficit_large_rise
        and warming >= criteria.deficit_large_least
        and trend.slope < criteria.deficit_large_share * warming
        and not (shown and trend.slope_upper > criteria.deficit_shown_share * warming)
    )


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


def loses(hold: Hold, trend: Trend) -> bool:
    """Whether a hold that ends lost pressure, or gained all but nothing while its metal warmed.

    The next hold leans on it: what leaves may be in balance there with what boils. A hold that
    gained something, if less than its clamp's warming gives, does not count: low metal that boiling
    has cooled warms faster than the rest, and the gas follows the rest.
    """
    setup, criteria, warming = hold.context.setup, hold.criteria, hold.power.metal_slope
    return (
        trend.slope_upper < -criteria.falling_pa_per_s
        or trend.slope < -criteria.fell_pa_per_s
        or (
            trend.slope < criteria.lost_share * warming
            and deficit(trend, hold.power, setup, hold.trace.first_pa, hold.end_pa, criteria)
        )
    )


def lost_before(context: HoldContext, criteria: Criteria) -> bool:
    """Whether the hold before lost pressure, or gained all but nothing (see `loses`).

    One too short to be judged does not make up for it.
    """
    for hold in reversed(context.earlier):
        if hold.falling:
            return True
        if hold.duration_s >= criteria.shortest_clear_s:
            return False
    return False


def sure_over_ice(strength: Power, unexplained: float, age_s: float, criteria: Criteria) -> bool:
    """Whether a hold clears a section that may hold melting ice: warm lowest metal, and quieter."""
    return (
        strength.drive_k >= criteria.ice_drive_k
        and unexplained < criteria.ice_quieter * strength.least_wet_slope
        and age_s >= criteria.ice_hold_s
    )


def is_falling(blocks: HoldArrays, trend: Trend, context: HoldContext, criteria: Criteria) -> bool:
    """Whether the closed section loses pressure: an outward leak can hide boiling."""
    if trend.slope_upper < -criteria.falling_pa_per_s:
        return True
    # a loss that the gas warming still hides counts: the steady part says it
    hidden = trend.steady_upper < -criteria.falling_pa_per_s
    if hidden and trend.slope < -criteria.slope_floor_pa_per_s:
        return True
    lost = float(blocks.p.max()) - float(blocks.p[-1])
    return lost > max(1.5 * context.step_pa, 5.0 * trend.sigma_pa, 2_000.0)
