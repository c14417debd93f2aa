"""The prompt: one ordered table of rules, first match wins. Words here are what a person reads.

The rules decide nothing about what is inside; that is the hold analysis. They turn the situation
into the one thing to do now. No prompt says that a section is safe to open.
"""

from collections.abc import Callable
from dataclasses import dataclass

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.guidance.events import Prompt, Severity
from co2vent.inference.outcome import Charge, HoldAssessment, Instruction, LeakBy
from co2vent.inference.wording import difference_text, duration_text, pressure_text
from co2vent.readings.reading import Gas, Reading, Setup
from co2vent.sentence import Sentence, joined

SETTLE_S = 60.0  # before the first vent: time to see a liquid-full rise or a leak
ZERO_GAUGE_PA = 1.5e4  # near enough to zero to open the bleeds
LOW_HOLD_GAUGE_PA = 1.0e5  # where the last hold looks for dry ice
LOW_HOLD_WIDTH_PA = 0.5e5


@dataclass(frozen=True, slots=True, kw_only=True)
class Situation:
    """What the rules look at. SI, absolute."""

    setup: Setup
    latest: Reading | None
    stale: bool
    vent_open: bool | None
    vented: bool
    stop_pa: float
    lead_pa: float  # how far the pressure falls while a hand closes the valve
    rate_pa_per_s: float | None
    high_limit_pa: float | None
    gauge_fault: str | None
    plateau: str | None  # "shelf" or "plug": vent open, no fall
    cleared: bool  # "vapour only" stands
    solid_seen: bool
    low_hold_done: bool
    hold: HoldAssessment | None
    hold_age_s: float | None

    @property
    def gauge_pa(self) -> float:
        """Pressure above ambient [Pa]."""
        return self.latest.pressure_pa - self.setup.ambient_pressure_pa if self.latest else 0.0

    def at(self, pressure_pa: float) -> str:
        """An absolute pressure in words."""
        return pressure_text(pressure_pa, self.setup)

    @property
    def now(self) -> str:
        """The newest pressure in words."""
        return self.at(self.latest.pressure_pa) if self.latest else Sentence("no pressure")

    @property
    def triple(self) -> str:
        """The local triple point in words."""
        return self.at(TRIPLE_PRESSURE_PA)


Rule = Callable[[Situation], tuple[Instruction, str, str, Severity] | None]
Said = tuple[Instruction, str, str, Severity] | None


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


def vent_stands_still(s: Situation) -> Said:
    """Valve open and no fall: never a quiet hold."""
    if not s.vent_open or s.plateau is None:
        return None
    if s.plateau == "shelf":
        return (
            Instruction.CHECK_VENT_LINE,
            "Stop: dry ice forming",
            Sentence(
                "The pressure stands at the triple point ({now}) with the vent open: liquid is "
                "freezing. Close the vent; keep out of line with hose and cover; never strike a "
                "plug.",
                now=s.now,
            ),
            Severity.DANGER,
        )
    return (
        Instruction.CHECK_VENT_LINE,
        "Check the vent line",
        Sentence(
            "The vent is open and the pressure stands at {now}: a plug of dry ice, a shut valve, "
            "or a gauge cut off. Close the vent; keep out of line with hose and cover; no flame, "
            "no blows.",
            now=s.now,
        ),
        Severity.DANGER,
    )


def venting_below_triple(s: Situation) -> Said:
    """Below the triple point before "vapour only": liquid becomes dry ice."""
    if not s.vent_open or s.latest is None or s.cleared:
        return None
    if s.latest.pressure_pa >= TRIPLE_PRESSURE_PA:
        return None
    if s.gauge_pa <= ZERO_GAUGE_PA:
        return (
            Instruction.HOLD_FOR_DRY_ICE,
            "Dry ice possible",
            Sentence(
                "At {now} without a verdict before: snow can lie under a gauge at zero. Leave the "
                "vented side open, let it warm, keep out of line; a gauge at zero is no proof.",
                now=s.now,
            ),
            Severity.DANGER,
        )
    return (
        Instruction.CLOSE_AND_HOLD,
        "Close now: below the triple point",
        Sentence(
            "{now} is below the triple point ({triple}) and liquid was not excluded: it turns to "
            "dry ice. Close the vent and hold.",
            now=s.now,
            triple=s.triple,
        ),
        Severity.DANGER,
    )


def venting_cleared(s: Situation) -> Said:
    """Vapour only stands: down to about 1 bar g, hold for dry ice, on to zero, bleeds."""
    if not s.vent_open or not s.cleared or s.latest is None:
        return None
    if s.gauge_pa <= ZERO_GAUGE_PA:
        return (
            Instruction.OPEN_BLEEDS,
            "Open the bleeds at both ends",
            Sentence(
                "At {now} after vapour only. Open both bleeds and leave them open; CO2 meter at "
                "the low spots; keep out of line of the cover. Then the site's own procedure.",
                now=s.now,
            ),
            Severity.DO,
        )
    low = LOW_HOLD_GAUGE_PA + s.lead_pa
    if (
        not s.low_hold_done
        and s.gauge_pa <= low
        and s.gauge_pa > LOW_HOLD_GAUGE_PA - LOW_HOLD_WIDTH_PA
    ):
        return (
            Instruction.CLOSE_AND_HOLD,
            "Close: hold for dry ice",
            Sentence(
                "Near 1 bar g ({now}): close and watch for a climb to {triple}, the sign of dry "
                "ice.",
                now=s.now,
                triple=s.triple,
            ),
            Severity.DO,
        )
    return (
        Instruction.VENT_TO_ZERO,
        "Vapour only: vent to zero",
        Sentence("Now {now}. On to zero.", now=s.now)
        if s.low_hold_done
        else Sentence(
            "Now {now}. Stop near 1 bar g and hold for dry ice; a stand near {triple} means dry "
            "ice.",
            now=s.now,
            triple=s.triple,
        ),
        Severity.DO,
    )


def venting(s: Situation) -> Said:
    """Liquid not excluded: down to the stop pressure, early enough for a gloved hand."""
    if not s.vent_open or s.latest is None:
        return None
    pressure_pa = s.latest.pressure_pa
    if pressure_pa - s.lead_pa <= s.stop_pa:
        rate = ""
        if s.rate_pa_per_s is not None and s.rate_pa_per_s < -100.0:
            fall = difference_text(-s.rate_pa_per_s * 60.0, s.setup)
            rate = Sentence(", falling {fall} a minute", fall=fall)
        return (
            Instruction.CLOSE_AND_HOLD,
            "Close the vent and hold",
            Sentence(
                "{now}{rate}; stop pressure {stop}, triple point {triple}.",
                now=s.now,
                rate=rate,
                stop=s.at(s.stop_pa),
                triple=s.triple,
            ),
            Severity.CAUTION,
        )
    return (
        Instruction.VENT,
        "Vent",
        Sentence(
            "{now}: {above} above the stop pressure of {stop}. Vapour from the top, slowly.",
            now=s.now,
            above=difference_text(pressure_pa - s.stop_pa, s.setup),
            stop=s.at(s.stop_pa),
        ),
        Severity.DO,
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
    if hold is None or s.latest is None:
        text = Sentence("The hold has begun: leave the vent shut and everything still.")
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
    return (hold.instruction, headline, hold.reason, severity)


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


def prompt_for(situation: Situation) -> Prompt:
    """Return the prompt of the first rule that applies; `since_s` is left to the caller."""
    for rule in RULES:
        said = rule(situation)
        if said is not None:
            instruction, headline, reason, severity = said
            return Prompt(instruction, headline, reason, severity, 0.0)
    raise AssertionError("the last rule answers for every closed section")
