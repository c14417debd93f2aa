"""A hold above the triple point: vapour only, liquid, flow past a valve, or not known yet."""

from co2vent.inference.amounts import WARMING_W, Amounts, amounts
from co2vent.inference.envelope import Envelope, envelope
from co2vent.inference.hold_curves import curves_of
from co2vent.inference.hold_facts import Hold
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment, Instruction, LeakBy
from co2vent.inference.statement import changed, say
from co2vent.inference.undecided import room_to_vent_pa
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
            dry_ice_kg=Bounds(0.0, 0.0, 0.0) if volume else None,
        )
    if limits.wet:
        instruction, step = _after_liquid(hold, limits, found)
        reason = joined(limits.wet, step)
        said = say(base, Charge.TWO_PHASE, instruction, reason, leak_by=limits.leak.by)
        return changed(
            said,
            next_step=step,
            liquid_kg=found.liquid_kg if volume else None,
            liquid_volume_fraction=found.liquid_fraction,
            dry_ice_kg=Bounds(0.0, 0.0, 0.0) if volume else None,
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
    said = say(
        base,
        Charge.UNDETERMINED,
        why_not.instruction,
        why_not.reason,
        leak_by=limits.leak.by,
    )
    return changed(
        said,
        liquid_kg=found.liquid_kg if volume else None,
        liquid_volume_fraction=found.liquid_fraction,
        dry_ice_kg=Bounds(0.0, 0.0, 0.0) if volume and not context.solid_seen else None,
        dry_ice_kg_if_vented=found.dry_ice_if_vented_kg,
        time_left_s=limits.time_left_s,
        next_step=why_not.step,
    )


def _after_liquid(hold: Hold, limits: Envelope, found: Amounts) -> tuple[Instruction, str]:
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
    shown = limits.power.drive_k < criteria.clamp_wet_k
    goal_pa = hold.trace.first_pa + 2.0 * criteria.leak_apart_pa
    if not shown and hold.end_pa < goal_pa and hold.trace.duration_s < criteria.two_pressure_s:
        return (
            Instruction.KEEP_HOLDING,
            Sentence(
                "Hold on to {pressure}: two pressures tell liquid from flow past a valve.",
                pressure=pressure_text(goal_pa, setup),
            ),
        )
    if found.boil_off_s is None or found.boil_off_warmed_s is None:
        return Instruction.VENT_AGAIN, ""
    if found.boil_off_s < criteria.slow_boil_s:
        return Instruction.VENT_AGAIN, ""
    return (
        Instruction.VENT_AGAIN,
        Sentence(
            "Left alone it is not boiled off before {time}; with {power} W of gentle warmth on the "
            "low point not before {warmed}.",
            time=duration_text(found.boil_off_s),
            power=f"{WARMING_W:.0f}",
            warmed=duration_text(found.boil_off_warmed_s),
        ),
    )
