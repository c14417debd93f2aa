"""Not known yet: why, the cheapest step that would decide, and the prompt for it."""

from math import isfinite

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.criteria import Criteria
from co2vent.inference.doubts import deficit, lost_before, may_be_liquid_yet
from co2vent.inference.hold_facts import HoldContext
from co2vent.inference.leak import Leak
from co2vent.inference.outcome import Instruction
from co2vent.inference.power import Power
from co2vent.inference.trace import HoldTrace
from co2vent.inference.trend import Trend
from co2vent.inference.wording import duration_text, pressure_text, slope_text
from co2vent.sentence import Sentence


def room_to_vent_pa(context: HoldContext, criteria: Criteria) -> float:
    """How far above the stop pressure a vent must begin so that a hand can still stop it there."""
    by_rate = min(context.fall_pa_per_s * criteria.revent_hand_s, criteria.revent_most_pa)
    return max(criteria.revent_above_stop_pa, by_rate)


def undecided(
    trace: HoldTrace,
    trend: Trend,
    context: HoldContext,
    strength: Power,
    leak: Leak,
    settled: bool,
    away: bool,
    falling: bool,
    criteria: Criteria,
) -> tuple[str, str, Instruction]:
    """Why nothing is known yet, the cheapest step that would decide, and the prompt for it."""
    setup, age_s, last_pa = context.setup, trace.duration_s, float(trace.last_pa)
    keep = Instruction.KEEP_HOLDING
    least = slope_text(strength.least_wet_slope, setup)
    between = Sentence(
        "rising between {least} and {most}",
        least=slope_text(trend.slope_lower, setup),
        most=slope_text(trend.slope_upper, setup),
    )
    if not settled:
        return (
            Sentence(
                "Not known yet: {time} into the hold; the first rise is gas warming in every case.",
                time=duration_text(age_s),
            ),
            Sentence("Keep holding."),
            keep,
        )
    if trace.changes < criteria.least_changes:
        return (
            Sentence(
                "Not known: the reading has not moved since the vent closed; a gauge that is cut "
                "off looks the same. Crack the vent and see it answer."
            ),
            Sentence("Crack the vent and see the gauge answer."),
            Instruction.CHECK_GAUGE if age_s > 2.0 * criteria.shortest_clear_s else keep,
        )
    if not away:
        return (
            Sentence(
                "Not known: {pressure} is too near the triple point to tell a quiet gas from "
                "melting dry ice.",
                pressure=pressure_text(last_pa, setup),
            ),
            Sentence("Keep holding: dry ice that has melted lets the pressure climb on."),
            keep,
        )
    quiet = trend.slope_upper < strength.least_wet_slope
    if quiet and context.lowest_pa < TRIPLE_PRESSURE_PA and not context.cleared:
        return (
            Sentence(
                "Not known: {between}, but the section has been below the triple point, and dry "
                "ice that melts swallows the heat that would show liquid.",
                between=between,
            ),
            Sentence("Warm the lowest point 15 K above saturation and hold 5 min."),
            keep,
        )
    if quiet and deficit(trend, strength, setup, trace.first_pa, last_pa, criteria):
        return (
            Sentence(
                "Not known: {between}, less than the {gain} that the metal's warming gives "
                "shut-in gas: an outward leak may hide boiling.",
                between=between,
                gain=slope_text(strength.metal_slope, setup),
            ),
            Sentence("Prove the vent and the joints tight, and hold again."),
            keep,
        )
    if quiet and lost_before(context):
        return (
            Sentence(
                "Not known: {between}, but the hold before lost pressure, or gained less than its "
                "metal's warming gives: an outward leak may hide boiling.",
                between=between,
            ),
            Sentence("Prove the vent and the joints tight, and hold again."),
            keep,
        )
    if trend.misfit > criteria.worst_misfit:
        return (
            Sentence(
                "Not known yet: {between}, but the curve is not that of a closed section left "
                "alone.",
                between=between,
            ),
            Sentence("Leave the section still and hold again."),
            keep,
        )
    room = last_pa > context.stop_pa + room_to_vent_pa(context, criteria)
    long = age_s > criteria.long_hold_s and room
    if quiet and may_be_liquid_yet(trace.first_pa, last_pa, strength, context, criteria):
        return (
            Sentence(
                "Not known: {between}, but it rose to {pressure} first; gas rises less from the "
                "same pressure the next time, liquid as much again.",
                between=between,
                pressure=pressure_text(last_pa, setup),
            ),
            Sentence("Vent to the stop pressure and hold again: the rise must be smaller."),
            Instruction.VENT_AGAIN if room else keep,
        )
    if not strength.source and trend.slope_upper < criteria.dry_slope_bare:
        if strength.drive_k >= criteria.clamp_power_k:
            return (
                Sentence(
                    "Not known: {between}, and the clamp cools though the vent is shut: what is "
                    "near it may boil.",
                    between=between,
                ),
                Sentence("Hold on until the clamp stands or warms."),
                Instruction.VENT_AGAIN if long else keep,
            )
        if isfinite(strength.drive_k):
            step = Sentence(
                "The clamp is {drive} above saturation: warm the lowest point to {wanted} above "
                "it and hold again.",
                drive=f"{strength.drive_k:.0f} K",
                wanted=f"{criteria.clamp_power_k + 4:.0f} K",
            )
        else:
            step = Sentence("Put a clamp on the lowest point, or say that the metal is bare.")
        return (
            Sentence(
                "Not known: {between}, and with no metal shown warm this hold has no power; "
                "insulated liquid can rise as slowly as {least}.",
                between=between,
                least=least,
            ),
            step,
            Instruction.VENT_AGAIN if long else keep,
        )
    return (
        Sentence(
            "Not known yet: {between}; liquid would keep up {least} or more{given}.",
            between=between,
            least=least,
            given=Sentence(" ({source})", source=strength.source) if strength.source else "",
        ),
        Sentence("Hold on; if it does not settle, vent to the stop pressure and hold again.")
        if setup.section_volume_m3 is not None
        else Sentence(
            "Hold on; if it does not settle, vent to the stop pressure and hold again. Give the "
            "section's volume: in a small one liquid would show more."
        ),
        Instruction.VENT_AGAIN if long else keep,
    )
