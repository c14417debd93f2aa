"""What a site's own steps may not drop, and what they may drop only so that the record says it.

Refused is what stands between a person and liquid, pressure or the air they breathe, and which no
reading could make good later: the five points, a hold that proves vapour only, both bleeds open and
at zero, a joint and bleeds that can't be skipped, vapour before liquid, air below the short-term
limit. A caution in the record is enough where the shipped steps themselves may be skipped with a
reason, or where a limit is for the site's own law to set: it must not vanish without a trace.
"""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from typing import Final

from co2vent.guidance.procedure import VENTING_CONFIRMATIONS, Gate, Procedure, Step, StepKind
from co2vent.readings.limits import SMALLEST_STOP_MARGIN_PA
from co2vent.sentence import Sentence

#: The bleeds at both ends: one alone leaves pressure behind a plug or a shut strainer valve.
BLEED_CONFIRMATIONS: Final = ("bleed_first_end", "bleed_second_end")
#: The least pressure above the triple point at which a site may let liquid follow the vapour: the
#: stop pressure's own margin. This program's choice.
MIN_VAPOUR_BREAK_PA: Final = SMALLEST_STOP_MARGIN_PA
#: 0.5 bar g on a 78 mm cover is 240 N: what a zero may hide at most. This program's choice.
MAX_ZERO_PA: Final = 0.5e5
#: One reading at zero shows no rise. This program's choice; the shipped steps ask for five minutes.
MIN_ZERO_STEADY_S: Final = 60.0
#: 8 h: OSHA PEL and NIOSH REL. 15 min: NIOSH and ACGIH STEL. Both from the NIOSH IDLH page
#: 124-38-9. People work beside the section for hours, so 5000 is the usual limit; up to the
#: short-term one a country's law or a short stay may allow more, above it none does.
LONG_TERM_PPM: Final = 5_000.0
SHORT_TERM_PPM: Final = 30_000.0
#: What a test, a hold or a verdict decides: read off no instrument, so typed by nobody.
VERDICTS: Final = frozenset(
    {"vapor_only_holds", "dry_ice_cleared", "standing_test_tight", "vacuum_test_passed"}
)
_EMPTIES: Final = frozenset({StepKind.BLEEDS, StepKind.OPEN, StepKind.VACUUM_TEST})


@dataclass(frozen=True, slots=True)
class Fault:
    """Why steps are refused; `step` is the number of the step it is about, if it is about one."""

    words: str
    step: int | None = None


def first_fault(steps: tuple[Step, ...], *, stored: bool = False) -> Fault | None:
    """Return the first rule that `steps` break; `stored`: only the rules of the first jobs."""
    rules: list[Callable[[tuple[Step, ...]], Iterator[Fault]]] = [_oldest]
    if not stored:
        rules += [_joint, _holds, _bleeds, _refilling, _air, _typed_verdicts]
    return next((fault for rule in rules for fault in rule(steps)), None)


def _kinds(steps: Iterable[Step]) -> list[StepKind]:
    return [step.kind for step in steps]


def _before(steps: tuple[Step, ...], kind: StepKind) -> tuple[Step, ...]:
    """Return the steps before the first of `kind`; none where there is no such step."""
    kinds = _kinds(steps)
    return steps[: kinds.index(kind)] if kind in kinds else ()


def _oldest(steps: tuple[Step, ...]) -> Iterator[Fault]:
    """Rules that the first jobs kept already."""
    kinds = _kinds(steps)
    if StepKind.VENT not in kinds:
        yield Fault('no step of kind "vent"; a job that opens a section has one')
        return
    first_vent = kinds.index(StepKind.VENT)
    before = {item.id for step in steps[: first_vent + 1] for item in step.confirmations}
    for identity in VENTING_CONFIRMATIONS:
        if identity not in before:
            yield Fault(
                f"the confirmation {identity!r} must be in or before the first vent step "
                f"({steps[first_vent].id}); put it back"
            )
    if StepKind.OPEN in kinds and StepKind.BLEEDS not in _kinds(_before(steps, StepKind.OPEN)):
        yield Fault('a step of kind "bleeds" must come before the step of kind "open"')
    if StepKind.VACUUM_TEST in kinds:
        later = steps[kinds.index(StepKind.VACUUM_TEST) :]
        if not any(_breaks_vacuum(step, 1e5) for step in later):
            yield Fault(
                'after the vacuum test a step of kind "vapour_break" needs a gate on '
                "pressure_above_triple_point with at_least of 1.03 bar or more; put it back"
            )
    yield from _firm(steps, StepKind.BLEEDS)


def _firm(steps: tuple[Step, ...], kind: StepKind) -> Iterator[Fault]:
    for number, step in enumerate(steps, 1):
        if step.kind is kind and step.skippable:
            yield Fault(f"{kind} can't be skippable; write skippable = false", number)


def _joint(steps: tuple[Step, ...]) -> Iterator[Fault]:
    """Nobody works behind a joint that the steps don't name."""
    yield from _firm(steps, StepKind.OPEN)
    opened = False
    for number, step in enumerate(steps, 1):
        opened = opened or step.kind is StepKind.OPEN
        if step.kind is StepKind.WORK and not opened:
            yield Fault('a step of kind "open" must come before the work; put it back', number)


def _holds(steps: tuple[Step, ...]) -> Iterator[Fault]:
    """A joint is broken only after a hold that showed vapour only, in a step nobody skips."""
    before = _before(steps, StepKind.OPEN)
    kinds = _kinds(before)
    if StepKind.OPEN not in _kinds(steps):
        return
    after_vent = before[kinds.index(StepKind.VENT) :] if StepKind.VENT in kinds else ()
    if not any(
        gate.quantity == "vapor_only_holds" and (gate.at_least or 0.0) >= 1.0
        for step in after_vent
        if not step.skippable
        for gate in step.gates
    ):
        yield Fault(
            "no hold must prove vapour only before the joint: between the first vent and the step "
            'of kind "open", put a gate on vapor_only_holds with at_least of 1 or more into a step '
            "with skippable = false",
            len(before) + 1,
        )


def _bleeds(steps: tuple[Step, ...]) -> Iterator[Fault]:
    """Zero is seen with the vent shut, for a while, with both ends open to air."""
    bleeds = [(n, step) for n, step in enumerate(steps, 1) if step.kind is StepKind.BLEEDS]
    for number, step in bleeds:
        given = {item.id for item in step.confirmations}
        for identity in BLEED_CONFIRMATIONS:
            if identity not in given:
                yield Fault(
                    f"the confirmation {identity!r} must be in this step: pressure stays behind a "
                    "bleed that nobody opened; put it back",
                    number,
                )
        if not any(_shows_zero(gate) for gate in step.gates):
            yield Fault(
                "put back the gate on pressure_shut, at_most 0.5 bar_g or less, steady 60 or more, "
                "by_hand = false: zero that nobody watched is no zero",
                number,
            )


def _shows_zero(gate: Gate) -> bool:
    return (
        gate.quantity == "pressure_shut"
        and gate.at_most is not None
        and gate.to_si(gate.at_most) <= MAX_ZERO_PA
        and gate.steady_s >= MIN_ZERO_STEADY_S
        and not gate.by_hand
    )


def _breaks_vacuum(step: Step, least_pa: float) -> bool:
    """Say whether `step` brings gas well above the triple point before liquid may follow."""
    return step.kind is StepKind.VAPOUR_BREAK and any(
        gate.quantity == "pressure_above_triple_point"
        and gate.at_least is not None
        and gate.to_si(gate.at_least) >= least_pa
        for gate in step.gates
    )


def _refilling(steps: tuple[Step, ...]) -> Iterator[Fault]:
    """Liquid let into an empty section is an instant plug of dry ice: vapour comes first.

    Readings show it and nobody skips it: a value typed or a reason given warms no steel.
    """
    for number, step in enumerate(steps, 1):
        if step.kind is not StepKind.VAPOUR_BREAK:
            continue
        if step.skippable:
            yield Fault("vapour_break can't be skippable; write skippable = false", number)
        for gate in step.gates:
            if gate.by_hand:
                yield Fault(
                    f"gate {gate.id!r} of the vapour break can't be typed; write by_hand = false",
                    number,
                )
        if not _breaks_vacuum(step, MIN_VAPOUR_BREAK_PA):
            yield Fault(
                "a vapour_break needs a gate on pressure_above_triple_point with at_least of "
                "1.03 bar or more; put it back",
                number,
            )
    broken = True
    for number, step in enumerate(steps, 1):
        if step.kind in _EMPTIES:
            broken = False
        elif step.kind is StepKind.VAPOUR_BREAK:
            broken = True
        elif step.kind is StepKind.RETURN and not broken:
            yield Fault(
                'put a step of kind "vapour_break" before it: liquid let in empty is dry ice',
                number,
            )


def _air(steps: tuple[Step, ...]) -> Iterator[Fault]:
    """The air is measured before the first vent and again at the joint, and below a limit."""
    for number, step in enumerate(steps, 1):
        for gate in step.gates:
            if gate.quantity == "room_co2" and _ppm(gate) > SHORT_TERM_PPM:
                yield Fault(
                    f"gate {gate.id!r}: no limit lets people stay in more than 30000 ppm; "
                    "write at_most = 5000",
                    number,
                )
    kinds = _kinds(steps)
    first_vent = kinds.index(StepKind.VENT)
    if not any(_measures_air(step) for step in steps[: first_vent + 1]):
        yield Fault(
            "a gate on room_co2 with at_most must be in or before the first vent step; put it back",
            first_vent + 1,
        )
    for number, step in enumerate(steps, 1):
        if step.kind is StepKind.OPEN and not _measures_air(step):
            yield Fault("put back the gate on room_co2 with at_most = 5000", number)


def _measures_air(step: Step) -> bool:
    return any(gate.quantity == "room_co2" and gate.at_most is not None for gate in step.gates)


def _ppm(gate: Gate) -> float:
    """The most that a gate on the air lets pass; a gate without an upper limit lets all pass."""
    return gate.to_si(gate.at_most) if gate.at_most is not None else float("inf")


def _typed_verdicts(steps: tuple[Step, ...]) -> Iterator[Fault]:
    for number, step in enumerate(steps, 1):
        for gate in step.gates:
            if gate.by_hand and gate.quantity in VERDICTS | {"pressure_shut"}:
                yield Fault(
                    f"gate {gate.id!r}: {gate.quantity} can't be typed; write by_hand = false",
                    number,
                )


def cautions(procedure: Procedure) -> tuple[str, ...]:
    """Return what this site's steps ask less of than the shipped ones, for screen and record."""
    steps = procedure.steps
    found: list[str] = [
        Sentence(
            "{step}: the air may hold {limit} ppm of CO2. Over a working day the limit is 5000.",
            step=step.title,
            limit=f"{_ppm(gate):g}",
        )
        for step in steps
        for gate in step.gates
        if gate.quantity == "room_co2" and _ppm(gate) > LONG_TERM_PPM
    ]
    vent = _before(steps, StepKind.VENT)
    joint = _before(steps, StepKind.OPEN)
    if not _asked(vent, "running_hold"):
        found.append(Sentence("No time shut is watched before the vent: a valve may pass unseen."))
    if not _asked(vent, "zero_offset"):
        found.append(Sentence("No zero of the gauge is asked for before the vent."))
    if joint and not _asked(joint, "vapor_only_holds", 2.0):
        found.append(Sentence("One hold that shows vapour only is enough: no second is asked for."))
    if joint and not _asked(joint, "dry_ice_cleared"):
        found.append(Sentence("No low hold has to rule dry ice out before the joint is broken."))
    breaks = [step for step in steps if step.kind is StepKind.VAPOUR_BREAK]
    if breaks and not _asked(breaks, "metal_above_minimum"):
        found.append(
            Sentence("The metal's minimum temperature is not asked for before it is pressurised.")
        )
    return tuple(found)


def _asked(steps: Iterable[Step], quantity: str, at_least: float = 0.0) -> bool:
    gates = [gate for step in steps for gate in step.gates if gate.quantity == quantity]
    return any((gate.at_least or 0.0) >= at_least for gate in gates)
