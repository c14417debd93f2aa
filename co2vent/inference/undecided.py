"""Not known yet: why, the cheapest step that would decide, and the prompt for it."""

from dataclasses import dataclass
from math import isfinite

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.criteria import Criteria
from co2vent.inference.doubts import deficit, has_moved, lost_before, may_be_liquid_yet
from co2vent.inference.hold_facts import Hold, HoldContext
from co2vent.inference.outcome import Instruction
from co2vent.inference.trend import Trend
from co2vent.inference.wording import duration_text, kelvin_text, pressure_text, slope_text
from co2vent.sentence import Sentence


@dataclass(frozen=True, slots=True)
class Undecided:
    """Why nothing is known yet, the step that would decide, and the prompt for it."""

    reason: str
    step: str
    instruction: Instruction
    waits: bool = True  # time alone may decide it


@dataclass(frozen=True, slots=True, kw_only=True)
class Doubts:
    """What the comparison of slopes has found so far."""

    settled: bool  # the hold is old enough
    away: bool  # far enough above the triple point
    quiet: bool  # rises less than liquid would
    gathers_pace: bool
    shut: bool  # the vent is known to be shut
    may_lose: bool  # it sinks, or as steep a fall is not excluded


def room_to_vent_pa(context: HoldContext, criteria: Criteria) -> float:
    """How far above the stop pressure a vent must begin so that a hand can still stop it there."""
    return max(criteria.revent_above_stop_pa, _by_rate_pa(context, criteria))


def _by_rate_pa(context: HoldContext, criteria: Criteria) -> float:
    return min(context.fall_pa_per_s * criteria.revent_hand_s, criteria.revent_most_pa)


def undecided(hold: Hold, trend: Trend, found: Doubts) -> Undecided:
    """Say why nothing is known yet, in the order in which a technician can mend it."""
    context, criteria, strength = hold.context, hold.criteria, hold.power
    setup, trace, end_pa = context.setup, hold.trace, hold.end_pa
    age_s = trace.duration_s
    keep = Instruction.KEEP_HOLDING
    least = slope_text(strength.least_wet_slope, setup)
    between = Sentence(
        "rising between {least} and {most}",
        least=slope_text(trend.slope_lower, setup),
        most=slope_text(trend.slope_upper, setup),
    )
    if not found.settled:
        return Undecided(
            Sentence(
                "Not known yet: {time} into the hold; the first rise is gas warming in every case.",
                time=duration_text(age_s),
            ),
            Sentence("Keep holding."),
            keep,
        )
    if trace.changes < criteria.least_changes or not has_moved(hold):
        return Undecided(
            Sentence(
                "Not known: the reading has not moved since the vent closed; a gauge that is cut "
                "off looks the same. Crack the vent and see it answer."
            ),
            Sentence("Crack the vent and see the gauge answer."),
            Instruction.CHECK_GAUGE if age_s > 2.0 * criteria.shortest_clear_s else keep,
        )
    if not found.away:
        return Undecided(
            Sentence(
                "Not known: {pressure} is too near the triple point to tell a quiet gas from "
                "melting dry ice.",
                pressure=pressure_text(end_pa, setup),
            ),
            Sentence("Keep holding: dry ice that has melted lets the pressure climb on."),
            keep,
        )
    if found.quiet and context.lowest_pa < TRIPLE_PRESSURE_PA and not context.cleared:
        return Undecided(
            Sentence(
                "Not known: {between}, but the section has been below the triple point, and dry "
                "ice that melts swallows the heat that would show liquid.",
                between=between,
            ),
            Sentence(
                "Warm the lowest point {drive} above saturation and hold 5 min.",
                drive=kelvin_text(15.0),
            ),
            keep,
        )
    if found.quiet and deficit(
        trend, strength, setup, trace.first_pa, end_pa, criteria, shown=context.shown_now
    ):
        return Undecided(
            Sentence(
                "Not known: rising about {slope}, less than the {gain} that the metal's warming "
                "gives shut-in gas by itself: an outward leak may hide boiling.",
                slope=slope_text(trend.slope, setup),
                gain=slope_text(strength.metal_slope, setup),
            ),
            Sentence("Prove the vent and the joints tight, and hold again."),
            keep,
            waits=False,
        )
    if found.quiet and lost_before(context, criteria):
        return Undecided(
            Sentence(
                "Not known: {between}, but the hold before lost pressure, or gained less than its "
                "metal's warming gives: an outward leak may hide boiling.",
                between=between,
            ),
            Sentence("Prove the vent and the joints tight, and hold again."),
            keep,
            waits=False,
        )
    if found.gathers_pace and trend.slope_upper > 0.0:
        return Undecided(
            Sentence(
                "Not known: rising at most {most}, but faster now than before; what warms dry gas "
                "fades, and only boiling gathers pace.",
                most=slope_text(trend.slope_upper, setup),
            ),
            Sentence("Hold on: boiling that gathers pace will show."),
            keep,
        )
    if trend.misfit > criteria.worst_misfit:
        return Undecided(
            Sentence(
                "Not known yet: {between}, but the curve is not that of a closed section left "
                "alone.",
                between=between,
            ),
            Sentence("Leave the section still and hold again."),
            keep,
        )
    room = end_pa > context.stop_pa + room_to_vent_pa(context, criteria)
    long = age_s > criteria.long_hold_s and room
    if found.quiet and may_be_liquid_yet(trace.first_pa, end_pa, strength, context, criteria):
        # a puff is enough here, and without one a section that stands would be held for ever
        puff_pa = criteria.puff_above_stop_pa
        if age_s < criteria.long_hold_s:
            puff_pa = max(puff_pa, _by_rate_pa(context, criteria))
        again = Instruction.VENT_AGAIN if end_pa > context.stop_pa + puff_pa else keep
        if not strength.drive_k >= criteria.clamp_power_k:
            return Undecided(
                Sentence(
                    "Not known: {between}, but no clamp shows the lowest metal warm; boiling in "
                    "balance with an outward leak stands as still, and after a vent it climbs "
                    "back to {pressure}.",
                    between=between,
                    pressure=pressure_text(end_pa, setup),
                ),
                Sentence(
                    "Put a clamp on the lowest point, or vent to the stop pressure and hold again: "
                    "it must stay lower."
                ),
                again,
                waits=False,
            )
        return Undecided(
            Sentence(
                "Not known: {between}, but it rose to {pressure} first; gas rises less from the "
                "same pressure the next time, liquid as much again.",
                between=between,
                pressure=pressure_text(end_pa, setup),
            ),
            Sentence("Vent to the stop pressure and hold again: the rise must be smaller."),
            again,
            waits=False,
        )
    if found.quiet and not found.shut:
        return Undecided(
            Sentence(
                "Not known: {between}, quieter than liquid, but nothing shows that the vent is "
                "shut; a vent that carries off what boils stands as still.",
                between=between,
            ),
            Sentence("Say when the vent is opened and when it is closed, and hold again."),
            keep,
            waits=False,
        )
    if found.quiet and found.may_lose:
        return Undecided(
            Sentence(
                "Not known yet: {between}; a small loss by a leak, which would hide boiling, is "
                "not excluded.",
                between=between,
            ),
            Sentence("Hold on; a longer hold, or one more like it, narrows it."),
            keep,
        )
    if not strength.source and trend.slope_upper < criteria.dry_slope_bare:
        if strength.drive_k >= criteria.clamp_power_k:
            return Undecided(
                Sentence(
                    "Not known: {between}, and the clamp cools though the vent is shut, or the "
                    "upper one is at saturation: what is near it may boil.",
                    between=between,
                ),
                Sentence("Hold on until both clamps stand or warm."),
                Instruction.VENT_AGAIN if long else keep,
            )
        if context.clamp_frozen:
            step = Sentence(
                "The clamp's reading never changes, and metal cools in a vent: see that it is "
                "alive and on the lowest metal; touched, it must move."
            )
        elif context.clamp_doubted:
            step = Sentence(
                "The clamp has jumped, as one that hangs in the air does: fix it to the lowest "
                "point again."
            )
        elif isfinite(strength.drive_k):
            step = Sentence(
                "The clamp is {drive} above saturation: warm the lowest point to {wanted} above "
                "it and hold again.",
                drive=kelvin_text(strength.drive_k),
                wanted=kelvin_text(criteria.clamp_power_k + 4),
            )
        else:
            step = Sentence("Put a clamp on the lowest point, or say that the metal is bare.")
        return Undecided(
            Sentence(
                "Not known: {between}, and with no metal shown warm this hold has no power; "
                "insulated liquid can rise as slowly as {least}.",
                between=between,
                least=least,
            ),
            step,
            Instruction.VENT_AGAIN if long else keep,
            waits=False,
        )
    return Undecided(
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
