"""Not known yet: why, the cheapest step that would decide, and the prompt for it."""

from collections.abc import Callable
from dataclasses import replace
from math import isfinite

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference import undecided_record as record
from co2vent.inference.doubts import may_be_liquid_yet, rose_beyond_clamp
from co2vent.inference.hold_facts import Hold
from co2vent.inference.outcome import Instruction
from co2vent.inference.power import explained_slope, power
from co2vent.inference.trend import Trend
from co2vent.inference.undecided_case import Case, Doubts, Undecided, room_by_rate_pa
from co2vent.inference.wording import kelvin_text, pressure_text, slope_text, temperature_text
from co2vent.sentence import Sentence

KEEP = Instruction.KEEP_HOLDING


def undecided(hold: Hold, trend: Trend, found: Doubts) -> Undecided:
    """Say why nothing is known yet, in the order in which a technician can mend it."""
    case = Case(hold, trend, found)
    for rule in RULES:
        said = rule(case)
        if said is not None:
            return said
    return _liquid_not_excluded(case)


def _large_rise(case: Case) -> Undecided | None:
    """A rise that gas makes less of the next time, and liquid or a balance as much of."""
    hold = case.hold
    context, criteria, strength = hold.context, hold.criteria, hold.power
    first_pa, end_pa = hold.trace.first_pa, hold.end_pa
    if not case.found.quiet or not may_be_liquid_yet(first_pa, end_pa, strength, context, criteria):
        return None
    # a puff is enough here, and without one a section that stands would be held for ever
    puff_pa = criteria.puff_above_stop_pa
    if case.age_s < criteria.long_hold_s:
        puff_pa = max(puff_pa, room_by_rate_pa(context, criteria))
    again = Instruction.VENT_AGAIN if end_pa > context.stop_pa + puff_pa else KEEP
    pressure = pressure_text(end_pa, context.setup)
    if not strength.drive_k >= criteria.clamp_power_k:
        return Undecided(
            Sentence(
                "Not known: {between}, but no clamp shows the lowest metal warm; boiling in "
                "balance with an outward leak stands as still, and after a vent it climbs "
                "back to {pressure}.",
                between=case.between,
                pressure=pressure,
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
            between=case.between,
            pressure=pressure,
        ),
        Sentence("Vent to the stop pressure and hold again: the rise must be smaller."),
        again,
        waits=False,
    )


def _beyond_clamp(case: Case) -> Undecided | None:
    """Gas as warm as the clamp can't have come so far."""
    hold = case.hold
    if not case.found.quiet or not rose_beyond_clamp(hold):
        return None
    setup = hold.context.setup
    return Undecided(
        Sentence(
            "Not known: {between}, but it rose to {pressure}, further than gas as warm as the "
            "clamp ({clamp}) can: something boiled, and may yet.",
            between=case.between,
            pressure=pressure_text(hold.end_pa, setup),
            clamp=temperature_text(hold.line_k, setup),
        ),
        Sentence("Vent to the stop pressure and hold again: the rise must be smaller."),
        Instruction.VENT_AGAIN if case.has_room else KEEP,
        waits=False,
    )


def _not_shut(case: Case) -> Undecided | None:
    """An open vent that carries off what boils stands as still."""
    if not case.found.quiet or case.found.shut:
        return None
    return Undecided(
        Sentence(
            "Not known: {between}, quieter than liquid, but nothing shows that the vent is "
            "shut; a vent that carries off what boils stands as still.",
            between=case.between,
        ),
        Sentence("Say when the vent is opened and when it is closed, and hold again."),
        KEEP,
        waits=False,
    )


def _may_lose(case: Case) -> Undecided | None:
    """A small loss is not excluded."""
    if not case.found.quiet or not case.found.may_lose:
        return None
    return Undecided(
        Sentence(
            "Not known yet: {between}; a small loss by a leak, which would hide boiling, is "
            "not excluded.",
            between=case.between,
        ),
        Sentence("Hold on; a longer hold, or one more like it, narrows it."),
        KEEP,
    )


def _no_power(case: Case) -> Undecided | None:
    """No metal is shown warm: insulated liquid would rise as slowly."""
    strength, criteria = case.hold.power, case.hold.criteria
    if strength.source or case.trend.slope_upper >= criteria.dry_slope_bare:
        return None
    if strength.drive_k >= criteria.clamp_power_k:
        return Undecided(
            Sentence(
                "Not known: {between}, and the clamp cools though the vent is shut, or the "
                "upper one is at saturation: what is near it may boil.",
                between=case.between,
            ),
            Sentence("Hold on until both clamps stand or warm."),
            case.vent_if_long,
        )
    return Undecided(
        Sentence(
            "Not known: {between}, and with no metal shown warm this hold has no power; "
            "insulated liquid can rise as slowly as {least}.",
            between=case.between,
            least=case.least,
        ),
        _what_gives_power(case.hold),
        case.vent_if_long,
        waits=False,
    )


def _what_gives_power(hold: Hold) -> Sentence:
    if hold.context.clamp_frozen:
        return Sentence(
            "The clamp's reading never changes, and metal cools in a vent: see that it is "
            "alive and on the lowest metal; touched, it must move."
        )
    if hold.context.clamp_doubted:
        return Sentence(
            "The clamp has jumped, as one that hangs in the air does: fix it to the lowest "
            "point again."
        )
    if isfinite(hold.power.drive_k):
        return Sentence(
            "The clamp is {drive} above saturation: warm the lowest point to {wanted} above "
            "it and hold again.",
            drive=kelvin_text(hold.power.drive_k),
            wanted=kelvin_text(hold.criteria.clamp_power_k + 4),
        )
    return Sentence("Put a clamp on the lowest point, or say that the metal is bare.")


def _liquid_not_excluded(case: Case) -> Undecided:
    """The plain case: it rises as liquid might."""
    setup, strength = case.hold.context.setup, case.hold.power
    step: str = Sentence(
        "Hold on; if it does not settle, vent to the stop pressure and hold again."
    )
    if setup.section_volume_m3 is None:
        step = Sentence(
            "Hold on; if it does not settle, vent to the stop pressure and hold again. Give the "
            "section's volume: in a small one liquid would show more."
        )
    bare = _bare_would_decide(case)
    if bare is not None:
        step = Sentence(
            "Say whether the metal is insulated: were it bare, liquid would keep up {least}, and "
            "this hold would decide.",
            least=slope_text(bare, setup),
        )
    return Undecided(
        Sentence(
            "Not known yet: {between}; liquid would keep up {least} or more{given}.",
            between=case.between,
            least=case.least,
            given=Sentence(" ({source})", source=strength.source) if strength.source else "",
        ),
        step,
        case.vent_if_long,
        waits=bare is None,
    )


def _bare_would_decide(case: Case) -> float | None:
    """The slope [Pa/s] that liquid would keep up in bare metal, if that lies over this hold's.

    `None` where it is told whether the metal is insulated, or where bare metal would not decide.
    """
    hold, trend = case.hold, case.trend
    setup = hold.context.setup
    if setup.insulated is not None or hold.end_pa < TRIPLE_PRESSURE_PA:
        return None
    bare = power(
        replace(setup, insulated=False),
        hold.end_pa,
        hold.line_k,
        hold.line_slope,
        hold.criteria,
        hold.age_s,
        ambient_k=hold.context.ambient_k,
    )
    unexplained = trend.slope_upper - explained_slope(trend, bare) + case.found.carried
    return bare.least_wet_slope if bare.source and unexplained < bare.least_wet_slope else None


RULES: tuple[Callable[[Case], Undecided | None], ...] = (
    record.young,
    record.still,
    record.near_triple_point,
    record.melting,
    record.gains_too_little,
    record.lost_in_the_last,
    record.gathers_pace,
    record.odd_shape,
    record.leaves_too_much,
    _large_rise,
    _beyond_clamp,
    _not_shut,
    _may_lose,
    _no_power,
)
