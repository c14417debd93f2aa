"""What a section loses while it is shut: a leak hides as much of what boils.

By a fall, by a gain that is too small for the metal's warming, and by what holds before have shown.
"""

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.criteria import Criteria
from co2vent.inference.hold_facts import Hold, HoldContext
from co2vent.inference.power import Power
from co2vent.inference.trace import HoldArrays
from co2vent.inference.trend import Trend
from co2vent.readings.reading import Setup


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


def fell_by(hold: Hold, trend: Trend) -> float:
    """What leaves the section at least [Pa/s], by a hold that ends and falls; else 0.

    Of a fall that the gas warming still hides, the steady part; of one that has passed its highest
    pressure, the mean since then.
    """
    blocks = hold.blocks
    lost = -trend.slope_upper
    if is_falling(blocks, trend, hold.context, hold.criteria):
        highest = int(blocks.p.argmax())
        since_s = max(float(blocks.t[-1] - blocks.t[highest]), 1.0)
        lost = max(lost, -trend.steady_upper, float(blocks.p[highest] - blocks.p[-1]) / since_s)
    return max(lost, 0.0)


def lacks(hold: Hold, trend: Trend) -> float:
    """What a bare section gains too little [Pa/s], by a hold that ends: a leak or the clamp's spot.

    Missing of the least that counts as enough; 0 where it gains that.
    """
    criteria, setup, warming = hold.criteria, hold.context.setup, hold.power.metal_slope
    if setup.insulated is not False or hold.end_pa <= TRIPLE_PRESSURE_PA:
        return 0.0
    if not deficit(trend, hold.power, setup, hold.trace.first_pa, hold.end_pa, criteria):
        return 0.0
    return max(criteria.deficit_share * warming - trend.slope, 0.0)


def carried_off(context: HoldContext, end_pa: float, criteria: Criteria) -> float:
    """What leaves the section at least [Pa/s], by the holds before.

    A joint that leaks does not heal, and what boils rises by so much less; in proportion to the
    pressure, as gas leaves into the open (choked flow, ISO 9300). 67 g behind such a leak fell in
    one hold, stood in the next and were quiet in the third. What the last hold gained too little
    counts once: 52 g gained 0.28 of their metal's warming, and less than liquid would in the next.
    """
    judged = [
        hold
        for hold in context.earlier
        if hold.duration_s >= criteria.shortest_clear_s and hold.end_pa > TRIPLE_PRESSURE_PA
    ]
    fell = max((hold.fell * end_pa / hold.end_pa for hold in judged), default=0.0)
    return max(fell, judged[-1].lacked * end_pa / judged[-1].end_pa if judged else 0.0)
