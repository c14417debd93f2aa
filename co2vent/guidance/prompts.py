"""The prompt: one ordered table of rules, first match wins. Words here are what a person reads.

The rules decide nothing about what is inside; that is the hold analysis. They turn the situation
into the one thing to do now. No prompt says that a section is safe to open.
"""

from collections.abc import Callable

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.guidance.events import Prompt, Severity
from co2vent.guidance.situation import ZERO_GAUGE_PA, Said, Situation
from co2vent.guidance.venting_prompts import (
    vent_stands_still,
    venting,
    venting_below_triple,
    venting_cleared,
)
from co2vent.inference.outcome import Charge, HoldAssessment, Instruction, LeakBy
from co2vent.inference.wording import duration_text
from co2vent.readings.reading import Gas
from co2vent.sentence import Sentence, joined

SETTLE_S = 60.0  # before the first vent: time to see a liquid-full rise or a leak


Rule = Callable[[Situation], Said]


def no_data(s: Situation) -> Said:
    """Nothing can be said on old numbers."""
    if s.latest is None:
        return (
            Instruction.NO_DATA,
            "No data",
            Sentence("No reading has come yet; rely on the mechanical gauge."),
            Severity.CAUTION,
        )
    if s.stale:
        return (
            Instruction.NO_DATA,
            "No data: close the vent",
            Sentence(
                "Readings have stopped: close the vent and read the mechanical gauge; if it rises, "
                "vent."
            ),
            Severity.DANGER if s.vent_open else Severity.CAUTION,
        )
    return None


def closed_in_too_high(s: Situation) -> Said:
    """Trapped liquid rises by bars per kelvin: a relief path comes before everything."""
    if s.vent_open or s.latest is None:
        return None
    if s.hold is not None and s.hold.charge is Charge.SUBCOOLED_LIQUID:
        return (Instruction.VENT_NOW, "Vent now", s.hold.reason, Severity.DANGER)
    if s.high_limit_pa is not None and s.latest.pressure_pa >= s.high_limit_pa:
        return (
            Instruction.VENT_NOW,
            "Vent now",
            Sentence(
                "Closed in at {now}, over {limit}: 90 % of the lowest of relief setting, rated "
                "pressure and gauge range.",
                now=s.now,
                limit=s.at(s.high_limit_pa),
            ),
            Severity.DANGER,
        )
    return None


def gauge_fault(s: Situation) -> Said:
    """A gauge in doubt gives no guidance."""
    if s.gauge_fault is None:
        return None
    return (
        Instruction.CHECK_GAUGE,
        "Check the gauge",
        Sentence(
            "No verdict: {fault}. Close the vent and compare with the mechanical gauge.",
            fault=s.gauge_fault,
        ),
        Severity.CAUTION,
    )


def nitrogen(s: Situation) -> Said:
    """A standing-pressure test: no triple point to mind."""
    if s.setup.gas is not Gas.NITROGEN:
        return None
    return (
        Instruction.WAIT,
        "Wait: watch the closed section",
        Sentence(
            "Nitrogen, {now}. Leave it still; the standing-pressure test judges it. Nitrogen "
            "smothers: air the place before the section is opened.",
            now=s.now,
        ),
        Severity.CALM,
    )


def before_the_vent(s: Situation) -> Said:
    """Closed and never vented."""
    if s.vented or s.latest is None:
        return None
    if s.hold is not None and s.hold.leak_by is LeakBy.SUSPECTED:
        return (Instruction.CHECK_ISOLATION, "Check the isolation", s.hold.reason, Severity.CAUTION)
    if (s.hold_age_s or 0.0) < SETTLE_S:
        return (
            Instruction.WAIT,
            "Wait: watch the closed section",
            Sentence(
                "{now}. A steep rise would mean liquid-full; {time} to see it.",
                now=s.now,
                time=duration_text(SETTLE_S),
            ),
            Severity.CALM,
        )
    return (
        Instruction.VENT,
        "Vent when ready",
        Sentence(
            "{now}, closed in. With meter, second person, hose, outlet and protection in order: "
            "vent vapour from the top, slowly, to {stop}.",
            now=s.now,
            stop=s.at(s.stop_pa),
        ),
        Severity.DO,
    )


def holding(s: Situation) -> Said:
    """A hold after a vent: what the analysis asks for."""
    hold = s.hold
    text = Sentence("The hold has begun: leave the vent shut and everything still.")
    if hold is None or s.latest is None:
        if s.latest is not None and s.latest.pressure_pa < TRIPLE_PRESSURE_PA:
            severity = Severity.DO if s.cleared else Severity.DANGER
            return (Instruction.HOLD_FOR_DRY_ICE, "Hold for dry ice", text, severity)
        return (Instruction.KEEP_HOLDING, "Keep holding", text, Severity.DO)
    words: dict[Instruction, tuple[str, Severity]] = {
        Instruction.KEEP_HOLDING: ("Keep holding", Severity.DO),
        Instruction.VENT_AGAIN: ("Vent again", Severity.CAUTION),
        Instruction.VENT_TO_ZERO: ("Vapour only: vent to zero", Severity.DO),
        Instruction.HOLD_FOR_DRY_ICE: ("Hold for dry ice", Severity.CAUTION),
        Instruction.CHECK_ISOLATION: ("Check the isolation", Severity.CAUTION),
        Instruction.CHECK_GAUGE: ("Check the gauge", Severity.CAUTION),
        Instruction.VENT_NOW: ("Vent now", Severity.DANGER),
        Instruction.OPEN_BLEEDS: ("Open the bleeds at both ends", Severity.DO),
    }
    if hold.instruction is Instruction.VENT_TO_ZERO and not s.cleared:
        # what the hold said was taken back
        return (Instruction.KEEP_HOLDING, "Keep holding", text, Severity.CAUTION)
    headline, severity = words.get(hold.instruction, ("Keep holding", Severity.DO))
    if hold.charge is Charge.SOLID_PRESENT:
        headline, severity = "Dry ice: hold, keep clear", Severity.DANGER
    elif hold.charge is Charge.TWO_PHASE:
        if hold.instruction is Instruction.VENT_AGAIN:
            headline = "Liquid or leak-by: vent again" if hold.may_leak_by else "Liquid: vent again"
        elif hold.instruction is Instruction.KEEP_HOLDING:
            headline = "Liquid: keep holding"
            if hold.may_leak_by:
                headline = "Liquid or leak-by: keep holding"
            severity = Severity.CAUTION
    if hold.instruction is Instruction.VENT_TO_ZERO and s.gauge_pa <= ZERO_GAUGE_PA:
        return (
            Instruction.OPEN_BLEEDS,
            "Open the bleeds at both ends",
            joined(
                hold.reason,
                Sentence("Open both bleeds and leave them open; keep out of line of the cover."),
            ),
            Severity.DO,
        )
    return (hold.instruction, headline, _with_step(hold), severity)


def _with_step(hold: HoldAssessment) -> str:
    """Why nothing is known and what would decide it: why alone leaves a crew standing there."""
    waits = hold.next_step.startswith(("Hold on", "Keep holding"))  # the headline says it
    told = hold.instruction in (Instruction.CHECK_GAUGE, Instruction.CHECK_ISOLATION)
    if hold.charge is not Charge.UNDETERMINED or waits or told or hold.next_step in hold.reason:
        return hold.reason
    return joined(hold.reason, hold.next_step)


RULES: tuple[Rule, ...] = (
    no_data,
    closed_in_too_high,
    gauge_fault,
    nitrogen,
    vent_stands_still,
    venting_below_triple,
    venting_cleared,
    venting,
    before_the_vent,
    holding,
)


def prompt_for(situation: Situation, since_s: float = 0.0) -> Prompt:
    """Return the prompt of the first rule that applies; it stands since `since_s`."""
    for rule in RULES:
        said = rule(situation)
        if said is not None:
            instruction, headline, reason, severity = said
            return Prompt(instruction, headline, reason, severity, since_s)
    raise AssertionError("the last rule answers for every closed section")
