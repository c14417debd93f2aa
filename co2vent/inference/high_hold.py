"""A hold above the triple point: vapour only, liquid, flow past a valve, or not known yet."""

from math import inf, isfinite

from co2vent.inference.amounts import WARMING_W, Amounts, amounts
from co2vent.inference.envelope import Envelope, envelope, may_leak_by
from co2vent.inference.hold_curves import curves_of
from co2vent.inference.hold_facts import Hold
from co2vent.inference.leak import holds_alike
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment, Instruction, LeakBy
from co2vent.inference.statement import changed, say
from co2vent.inference.trend import Trend
from co2vent.inference.undecided_case import room_to_vent_pa
from co2vent.inference.wording import (
    duration_text,
    pressure_text,
    slope_text,
)
from co2vent.sentence import Sentence, joined


def hold_above(hold: Hold, base: HoldAssessment) -> HoldAssessment:
    """Above the triple point: vapour only, liquid, flow past a valve, or not known yet."""
    context, trend, criteria = hold.context, hold.trend, hold.criteria
    setup = context.setup
    volume = setup.section_volume_m3
    if trend is None:
        said = say(
            base,
            Charge.UNDETERMINED,
            Instruction.KEEP_HOLDING,
            Sentence(
                "Not known yet: the hold has just begun; the first rise is gas warming in every "
                "case."
            ),
        )
        return changed(said, time_left_s=criteria.shortest_clear_s)
    limits = envelope(hold, trend)
    found: Amounts = amounts(hold.blocks, trend, context, limits, criteria)
    base = changed(
        base,
        detection_limit_kg=found.detection_limit_kg,
        heat_w=found.heat_w,
        curves=curves_of(hold, limits),
    )
    rising = slope_text(trend.slope, setup)
    # ice that has not melted yet may lie above the triple point too
    ice = Bounds(None, 0.0, None) if hold.may_hold_ice else Bounds(0.0, 0.0, 0.0)
    if limits.falling:
        return say(
            base,
            Charge.UNDETERMINED,
            Instruction.CHECK_GAUGE,
            Sentence(
                "Not known: the closed section loses pressure ({slope}); an outward leak or a "
                "vent not shut can hide boiling. Prove the vent shut and hold again.",
                slope=rising,
            ),
        )
    if limits.leak.by is LeakBy.SUSPECTED:
        said = say(
            base,
            Charge.UNDETERMINED,
            Instruction.CHECK_ISOLATION,
            limits.leak.reason,
            leak_by=LeakBy.SUSPECTED,
        )
        return changed(
            said,
            liquid_kg=Bounds(None, 0.0, None) if volume else None,
            dry_ice_kg=ice if volume else None,
        )
    if limits.wet:
        instruction, step = _after_liquid(hold, trend, limits, found)
        reason = joined(limits.wet, step)
        said = say(base, Charge.TWO_PHASE, instruction, reason, leak_by=limits.leak.by)
        return changed(
            said,
            next_step=step,
            may_leak_by=may_leak_by(hold),
            liquid_kg=found.liquid_kg if volume else None,
            liquid_volume_fraction=found.liquid_fraction,
            dry_ice_kg=ice if volume else None,
            dry_ice_kg_if_vented=found.dry_ice_if_vented_kg,
            boil_off_s=found.boil_off_s,
            boil_off_warmed_s=found.boil_off_warmed_s,
            sublime_s=found.sublime_s,
        )
    if limits.clear and not context.solid_seen:
        limit = found.detection_limit_kg
        said = say(
            base, Charge.VAPOR_ONLY, Instruction.VENT_TO_ZERO, limits.clear, leak_by=LeakBy.NONE
        )
        return changed(
            said,
            liquid_kg=Bounds(0.0, 0.0, limit) if volume else None,
            liquid_volume_fraction=Bounds(0.0, 0.0, found.limit_fraction),
            dry_ice_kg=Bounds(0.0, 0.0, 0.0) if volume else None,
            dry_ice_kg_if_vented=0.0 if volume else None,
        )
    why_not = limits.undecided
    valves = _look_at_valves(hold, trend) if why_not.instruction is Instruction.VENT_AGAIN else None
    said = say(
        base,
        Charge.UNDETERMINED,
        why_not.instruction,
        joined(why_not.reason, valves or ""),
        leak_by=limits.leak.by,
    )
    return changed(
        said,
        liquid_kg=found.liquid_kg if volume else None,
        liquid_volume_fraction=found.liquid_fraction,
        dry_ice_kg=ice if volume else None,
        dry_ice_kg_if_vented=found.dry_ice_if_vented_kg,
        time_left_s=limits.time_left_s,
        next_step=valves or why_not.step,
    )


def _after_liquid(
    hold: Hold, trend: Trend, limits: Envelope, found: Amounts
) -> tuple[Instruction, str]:
    """Vent again, or first let the pressure rise: near the stop a vent goes below it at once."""
    context, criteria = hold.context, hold.criteria
    setup = context.setup
    least_pa = context.stop_pa + room_to_vent_pa(context, criteria)
    if hold.end_pa < least_pa:
        return (
            Instruction.KEEP_HOLDING,
            Sentence(
                "Hold on to {pressure} before venting again; mild warmth on the low point speeds "
                "it.",
                pressure=pressure_text(least_pa, setup),
            ),
        )
    # metal at saturation shows liquid; anything else may be flow past a valve, which a longer rise
    # in the same hold tells apart at no cost
    if may_leak_by(hold):
        hold_on = _to_two_pressures(hold, limits.power.drive_k)
        if hold_on:
            return Instruction.KEEP_HOLDING, hold_on
    valves = _look_at_valves(hold, trend)
    if valves is not None:
        return Instruction.VENT_AGAIN, valves
    if found.boil_off_s is None or found.boil_off_warmed_s is None:
        return Instruction.VENT_AGAIN, ""
    if found.boil_off_s < criteria.slow_boil_s:
        return Instruction.VENT_AGAIN, ""
    return (
        Instruction.VENT_AGAIN,
        Sentence(
            "Half of the simulated sections that rise like this are not boiled off before {time}; "
            "with {power} W of gentle warmth on the low point, not before {warmed}.",
            time=duration_text(found.boil_off_s),
            power=f"{WARMING_W:.0f}",
            warmed=duration_text(found.boil_off_warmed_s),
        ),
    )


def _look_at_valves(hold: Hold, trend: Trend) -> Sentence | None:
    """Say that hold after hold rose alike; `None` if they did not."""
    alike = holds_alike(hold, trend)
    if alike < hold.criteria.alike_holds:
        return None
    return Sentence(
        "{count} holds in a row rose alike, and what boils dwindles: see that the isolation "
        "valves are shut and tight before venting again.",
        count=str(alike),
    )


def _to_two_pressures(hold: Hold, drive_k: float) -> str | None:
    """What is missing for a comparison at two pressures (see `leak.py`); `None`: nothing.

    A crew that follows the prompts would otherwise end every hold at the same pressure, and vent
    for ever into a section that a valve fills.
    """
    context, criteria = hold.context, hold.criteria
    highest_pa = inf if context.first_pa is None else criteria.two_pressure_most * context.first_pa
    if hold.end_pa >= highest_pa or hold.trace.duration_s >= criteria.two_pressure_s:
        return None
    goal_pa = hold.trace.first_pa + 2.0 * criteria.leak_apart_pa
    ends = [one.end_pa for one in context.earlier if one.number >= 1]
    if ends and not isfinite(drive_k) and max(ends) - min(ends) < criteria.leak_apart_unseen_pa:
        goal_pa = max(goal_pa, min(ends) + 1.05 * criteria.leak_apart_unseen_pa)
    if hold.end_pa < goal_pa:
        return Sentence(
            "Hold on to {pressure}: two pressures tell liquid from flow past a valve.",
            pressure=pressure_text(min(goal_pa, highest_pa), context.setup),
        )
    left_s = criteria.two_pressure_least_s - hold.age_s
    if left_s > 0.0:
        return Sentence(
            "Hold on for {time} more: two pressures tell liquid from flow past a valve.",
            time=duration_text(left_s),
        )
    return None
