"""A hold at or below the triple point: is there dry ice?"""

from dataclasses import dataclass

from co2vent.co2 import (
    PLATEAU_SOLID_FRACTION,
    TRIPLE_PRESSURE_PA,
    TRIPLE_TEMPERATURE_K,
)
from co2vent.inference.amounts import allowable_kg
from co2vent.inference.doubts import has_moved
from co2vent.inference.envelope import Envelope, envelope
from co2vent.inference.hold_facts import Hold
from co2vent.inference.lines import snow_k
from co2vent.inference.losses import deficit, lost_before
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment, Instruction, LeakBy
from co2vent.inference.power import spread
from co2vent.inference.statement import changed, say
from co2vent.inference.trend import Trend
from co2vent.inference.undecided_case import crack_the_vent, not_moved
from co2vent.inference.wording import (
    duration_text,
    kelvin_text,
    pressure_text,
    slope_text,
    temperature_text,
)
from co2vent.sentence import Sentence


@dataclass(frozen=True, slots=True)
class _SnowLeft:
    """How the hold compares with the least slope that dry ice would give."""

    least_slope: float  # Pa/s
    share: float  # of it, not excluded
    unseen: bool  # what snow gives off may leave, and the gauge stands over it
    dry_most: float  # what dry metal gives at most, Pa/s
    climbs: bool  # rises more than that
    excluded: bool


def _snow_left(hold: Hold, trend: Trend, limits: Envelope) -> _SnowLeft:
    context, criteria, setup = hold.context, hold.criteria, hold.context.setup
    at_ambient = hold.end_pa < setup.ambient_pressure_pa + criteria.near_ambient_pa
    by_itself = criteria.ice_slope * spread(setup.section_volume_m3, criteria)
    dry_most = limits.dry_most_slope
    if context.cleared:
        least, unseen = criteria.ice_slope_cleared, False
        # 133 g of snow in a dead leg climbed 14 mbar/min for 10 min under a verdict from before: a
        # lasting climb that the metal's warming does not give refutes it
        if hold.trace.duration_s >= criteria.ice_hold_s:
            dry_most = min(dry_most, by_itself + hold.power.metal_slope)
        # a clamp as cold as snow or melting ice contradicts the verdict from before
        enough = not hold.line_k - TRIPLE_TEMPERATURE_K < criteria.clamp_power_k
        share = max(trend.slope_upper, 0.0) / least
    else:
        # below the triple point without a verdict before the evidence must stand by itself, and
        # bare metal alone is not enough: without a clamp nothing shows what a leak takes, and 99 g
        # of snow stood still for 6 min in balance with one
        least = by_itself
        enough = (
            hold.line_k - TRIPLE_TEMPERATURE_K >= criteria.ice_drive_k
            and hold.trace.duration_s >= criteria.ice_hold_s
        )
        share = max(limits.unexplained_slope if enough else trend.slope_upper, 0.0) / least
        unseen = (
            at_ambient
            or lost_before(context, criteria)
            or deficit(trend, hold.power, setup, hold.trace.first_pa, hold.end_pa, criteria)
        )
    climbs = trend.slope_lower > dry_most
    excluded = (
        enough
        and share < 1.0
        and not climbs
        and hold.end_pa < TRIPLE_PRESSURE_PA - hold.near_triple_pa
        and not limits.falling
        and trend.slope > -criteria.sinking_pa_per_s
        and (context.cleared or trend.slope_lower > -least)
        and trend.misfit <= criteria.worst_misfit
        and has_moved(hold)
        and (context.valve_known or not at_ambient)
        and not unseen
    )
    return _SnowLeft(least, share, unseen, dry_most, climbs, excluded)


def _no_dry_ice(hold: Hold, trend: Trend, left: _SnowLeft, base: HoldAssessment) -> HoldAssessment:
    context, criteria, setup = hold.context, hold.criteria, hold.context.setup
    volume = setup.section_volume_m3
    limit = allowable_kg(volume, criteria) if volume else None
    if limit is not None and context.cleared and context.cleared_limit_kg is not None:
        limit = min(limit, PLATEAU_SOLID_FRACTION * context.cleared_limit_kg)
    over_triple_k = hold.line_k - TRIPLE_TEMPERATURE_K
    given = ""
    if over_triple_k >= criteria.ice_drive_k:
        given = Sentence(
            ", with metal {drive} above the triple point", drive=kelvin_text(over_triple_k)
        )
    reason = Sentence(
        "No dry ice shows: {time} at {pressure}{given}, rising at most {most}; dry ice "
        "would give {least} or more.",
        time=duration_text(hold.trace.duration_s),
        pressure=pressure_text(hold.end_pa, setup),
        given=given,
        most=slope_text(trend.slope_upper, setup),
        least=slope_text(left.least_slope, setup),
    )
    said = say(base, Charge.VAPOR_ONLY, Instruction.VENT_TO_ZERO, reason, leak_by=LeakBy.NONE)
    return changed(
        said,
        dry_ice_kg=Bounds(0.0, 0.0, limit) if volume else None,
        detection_limit_kg=limit,
        dry_ice_kg_if_vented=0.0 if volume else None,
    )


def low_hold(hold: Hold, base: HoldAssessment) -> HoldAssessment:
    """At or below the triple point: is there dry ice?"""
    context, trend, criteria = hold.context, hold.trend, hold.criteria
    setup = context.setup
    volume = setup.section_volume_m3
    age_s = hold.trace.duration_s
    if hold.end_pa < TRIPLE_PRESSURE_PA - hold.near_triple_pa:
        # no liquid lasts under the triple point; on the shelf itself it does
        none = Bounds(0.0, 0.0, 0.0)
        base = changed(base, liquid_kg=none if volume else None, liquid_volume_fraction=none)
    sublimation_k = snow_k(hold.end_pa)
    here = pressure_text(hold.end_pa, setup)
    if trend is None or age_s < criteria.shortest_clear_s:
        left = max(criteria.shortest_clear_s - age_s, 0.0)
        said = say(
            base,
            Charge.UNDETERMINED,
            Instruction.HOLD_FOR_DRY_ICE,
            Sentence(
                "Not known yet: {time} into a hold that began below the triple point; dry ice "
                "would climb to {triple} and stand there.",
                time=duration_text(age_s),
                triple=pressure_text(TRIPLE_PRESSURE_PA, setup),
            ),
        )
        return changed(said, time_left_s=left)
    limits = envelope(hold, trend)
    over_triple_k = hold.line_k - TRIPLE_TEMPERATURE_K
    snow = _snow_left(hold, trend, limits)
    if snow.excluded:
        return _no_dry_ice(hold, trend, snow, base)
    if context.solid_seen:
        said = say(
            base,
            Charge.SOLID_PRESENT,
            Instruction.HOLD_FOR_DRY_ICE,
            Sentence(
                "Dry ice was seen and nothing shows it gone: {pressure}, rising {slope} (snow "
                "there is at {snow}).",
                pressure=here,
                slope=slope_text(trend.slope, setup),
                snow=temperature_text(sublimation_k, setup),
            ),
        )
        return changed(said, dry_ice_kg=Bounds(None, 0.0, None) if volume else None)
    cold = over_triple_k < criteria.ice_drive_k
    if limits.leak.by is LeakBy.SUSPECTED and not cold:
        said = say(
            base,
            Charge.UNDETERMINED,
            Instruction.CHECK_ISOLATION,
            limits.leak.reason,
            leak_by=LeakBy.SUSPECTED,
        )
        return changed(said, dry_ice_kg=Bounds(None, 0.0, None) if volume else None)
    if snow.climbs:
        # flow past a valve climbs too: only metal as cold as snow tells the two apart
        words = Sentence("Dry ice") if cold else Sentence("Dry ice, or flow past a closed valve")
        said = say(
            base,
            Charge.SOLID_PRESENT if cold else Charge.UNDETERMINED,
            Instruction.HOLD_FOR_DRY_ICE,
            Sentence(
                "{found}: below the triple point at {pressure} and still climbing {slope} after "
                "{time}; metal warming gives at most {most} (snow there is at {snow}).",
                found=words,
                pressure=here,
                slope=slope_text(trend.slope, setup),
                time=duration_text(age_s),
                most=slope_text(snow.dry_most, setup),
                snow=temperature_text(sublimation_k, setup),
            ),
        )
        least_ice = allowable_kg(volume, criteria) if volume and cold else 0.0
        ice = Bounds(None, least_ice, None) if volume else None
        return changed(said, dry_ice_kg=ice, climbs=True)
    if not has_moved(hold):
        said = say(base, Charge.UNDETERMINED, Instruction.HOLD_FOR_DRY_ICE, not_moved())
        return changed(said, next_step=crack_the_vent())
    if snow.unseen and snow.share < 1.0:
        # 18 g of snow lay for 45 min under a gauge that stood within 20 mbar of zero: what it gave
        # off went out at a joint
        reason = Sentence(
            "Not known: a gauge that stands at {pressure} can sit over dry ice; what it gives "
            "off leaves by a joint that leaks or a vent not quite shut.",
            pressure=here,
        )
        said = say(base, Charge.UNDETERMINED, Instruction.HOLD_FOR_DRY_ICE, reason)
        step = Sentence(
            "Keep the vented side open and warm the lowest point; only a tight section well above "
            "zero can show it."
        )
        return changed(said, next_step=step)
    return say(
        base,
        Charge.UNDETERMINED,
        Instruction.HOLD_FOR_DRY_ICE,
        Sentence(
            "Not known yet: rising between {least} and {most} at {pressure}; dry ice would go on "
            "climbing to the triple point.",
            least=slope_text(trend.slope_lower, setup),
            most=slope_text(trend.slope_upper, setup),
            pressure=here,
        ),
    )
