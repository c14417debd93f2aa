"""Who stands at the vent valve: a pure `reading -> valve opening (0..1)`, called once a reading.

`RuleOperator` does what the trade's rule of thumb says, `PlanOperator` a fixed schedule,
`PromptOperator` what the program prompts. All are told nothing but what the gauge set shows.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final, Protocol

from co2vent.guidance.session import Tick, advance, begin
from co2vent.inference.outcome import Instruction
from co2vent.readings.limits import stop_pressure_pa_gauge
from co2vent.readings.reading import Reading, Rejection, Setup
from co2vent.units import PSI_PA

FIRST_LOOK_S: Final = 90.0  # closed, before the first vent
NEARLY_ZERO_PA: Final = 0.05e5
# A crew lets the pressure fall ever slower towards where it is to stop: by a fiftieth of what is
# left a second, at least 1.2 bar a minute (1 to 2 bar a minute in the last bars: a proposal of
# trade practice, not a rule)
APPROACH_S: Final = 50.0
SLOWEST_PA_PER_S: Final = 2_000.0
FIRST_OPENING: Final = 0.25  # of the widest
LEAST_OPENING: Final = 0.02
RULE_RISE_PA: Final = PSI_PA  # the trade's rule: no rise over 1 psi means empty
RULE_WATCH_S: Final = 180.0  # "some minutes"
REACTION_S: Final = 2.0  # from a prompt to the hand on the valve
AT_ZERO_S: Final = 120.0  # with the bleeds open, before the record ends


class Operator(Protocol):
    """Somebody at the vent valve."""

    done: bool

    def __call__(self, reading: Reading | None, at_s: float) -> float:
        """Return the valve opening (0..1) to be held until the next reading.

        `reading` is `None` when the gauge showed no value.
        """


class Throttle:
    """A hand on the vent valve: opens it more or less, so that the pressure falls as it should."""

    def __init__(self, widest: float = 1.0) -> None:
        """Take the widest opening."""
        self._widest = widest
        self._opening = 0.0
        self._last: tuple[float, float] | None = None

    def shut(self) -> float:
        """Return 0: the valve is closed, and starts anew when it is opened again."""
        self._opening = 0.0
        self._last = None
        return 0.0

    def towards(self, target_pa: float, shown_pa: float | None, at_s: float) -> float:
        """Return the opening for a fall towards `target_pa` (gauge, as `shown_pa`)."""
        if self._opening == 0.0:
            self._opening = FIRST_OPENING
        elif shown_pa is not None and self._last is not None and at_s > self._last[0]:
            rate = (self._last[1] - shown_pa) / (at_s - self._last[0])
            wanted = max(SLOWEST_PA_PER_S, (shown_pa - target_pa) / APPROACH_S)
            if rate > 1.25 * wanted:
                self._opening *= 0.8
            elif rate < 0.8 * wanted:
                self._opening *= 1.2
            self._opening = min(max(self._opening, LEAST_OPENING), 1.0)
        if shown_pa is not None:
            self._last = (at_s, shown_pa)
        return self._opening * self._widest


@dataclass(frozen=True, slots=True)
class PlanStep:
    """Hold for `hold_s` (with the vacuum pump on, if `pump`), or vent to `vent_to_pa` (gauge)."""

    hold_s: float | None = None
    vent_to_pa: float | None = None
    opening: float = 1.0
    longest_s: float = 3600.0  # of a vent that does not get there
    pump: bool = False
    fast: bool = False  # at `opening` all the way, as a crew in a hurry does


class PlanOperator:
    """Does the steps of a fixed plan, one after the other."""

    def __init__(self, steps: Sequence[PlanStep], ambient_pressure_pa: float) -> None:
        """Take the steps; `ambient_pressure_pa` as the person knows it [Pa]."""
        self.done = False
        self._steps = list(steps)
        self._ambient_pa = ambient_pressure_pa
        self._next = 0
        self._since_s: float | None = None
        self._hand = Throttle()
        self.pump = False

    def __call__(self, reading: Reading | None, at_s: float) -> float:
        """Return the opening for the step that is on."""
        while self._next < len(self._steps):
            step = self._steps[self._next]
            if self._since_s is None:
                self._since_s = at_s
            gone_s = at_s - self._since_s
            self.pump = step.pump
            if step.hold_s is not None:
                if gone_s < step.hold_s:
                    return self._hand.shut()
            elif step.vent_to_pa is not None and gone_s < step.longest_s:
                shown_pa = reading.pressure_pa - self._ambient_pa if reading else None
                if shown_pa is None or shown_pa > step.vent_to_pa:
                    if step.fast:
                        return step.opening
                    return step.opening * self._hand.towards(step.vent_to_pa, shown_pa, at_s)
            self._next += 1
            self._since_s = None
        self.done = True
        self.pump = False
        return 0.0


class RuleOperator:
    """The trade's rule: vent to the stop pressure, close, watch; no rise over 1 psi is "empty"."""

    def __init__(self, setup: Setup, opening: float = 1.0) -> None:
        """Take what is known of the section; `opening` is how far the valve is opened."""
        self.done = False
        self._stop_pa = stop_pressure_pa_gauge(setup)
        self._ambient_pa = setup.ambient_pressure_pa
        self._hand = Throttle(opening)
        self._state = "look"
        self._since_s: float | None = None
        self._from_pa = 0.0

    def __call__(self, reading: Reading | None, at_s: float) -> float:
        """Return the opening that the rule says."""
        if self._since_s is None:
            self._since_s = at_s
        if reading is None:
            if self._state in ("vent", "empty"):
                return self._hand.towards(self._stop_pa, None, at_s)
            return self._hand.shut()
        shown_pa = reading.pressure_pa - self._ambient_pa
        gone_s = at_s - self._since_s
        if self._state == "look" and gone_s >= FIRST_LOOK_S:
            self._go("vent", at_s)
        elif self._state == "vent" and shown_pa <= self._stop_pa:
            self._from_pa = shown_pa
            self._go("watch", at_s)
        elif self._state == "watch" and gone_s >= RULE_WATCH_S:
            risen = shown_pa - self._from_pa > RULE_RISE_PA
            self._go("vent" if risen else "empty", at_s)
        elif self._state == "empty" and shown_pa <= NEARLY_ZERO_PA:
            self._go("open", at_s)
        elif self._state == "open" and gone_s >= AT_ZERO_S:
            self.done = True
        if self._state in ("look", "watch"):
            return self._hand.shut()
        return self._hand.towards(self._stop_pa if self._state == "vent" else 0.0, shown_pa, at_s)

    def _go(self, state: str, at_s: float) -> None:
        self._state, self._since_s = state, at_s


OPEN_ON: Final = {
    Instruction.VENT,
    Instruction.VENT_AGAIN,
    Instruction.VENT_TO_ZERO,
    Instruction.VENT_NOW,
    Instruction.OPEN_BLEEDS,
}
STOP_ON: Final = {Instruction.CHECK_ISOLATION, Instruction.CHECK_VENT_LINE, Instruction.CHECK_GAUGE}
GIVE_UP_S: Final = 300.0  # a prompt that a lone operator in a simulation can't act on


class PromptOperator:
    """Follows the program's prompts, a hand's reaction later."""

    def __init__(self, setup: Setup, opening: float = 1.0, reaction_s: float = REACTION_S) -> None:
        """Start a session for `setup`."""
        self.done = False
        self.instruction = Instruction.WAIT
        self._session = begin(setup)
        self._hand = Throttle(opening)
        self._ambient_pa = setup.ambient_pressure_pa
        self._reaction_s = reaction_s
        self._stop_pa = self._session.stop_pa
        self._wanted: tuple[Instruction, float] = (Instruction.WAIT, 0.0)

    def __call__(self, reading: Reading | None, at_s: float) -> float:
        """Take a reading into the session; return the opening that its prompt asks for."""
        item = Tick(at_s) if reading is None else reading
        if reading is None:
            rejection = Rejection(0, "over range", over_range=True)
            self._session, _ = advance(self._session, rejection)
        self._session, _ = advance(self._session, item)
        prompt = self._session.prompt
        if prompt.instruction != self._wanted[0]:
            self._wanted = (prompt.instruction, at_s)
        since_s = at_s - self._wanted[1]
        if since_s >= self._reaction_s:
            self.instruction = self._wanted[0]
        if self.instruction in STOP_ON and since_s > GIVE_UP_S:
            self.done = True
        if self.instruction is Instruction.OPEN_BLEEDS and since_s > AT_ZERO_S:
            self.done = True
        if self.instruction not in OPEN_ON:
            return self._hand.shut()
        shown_pa = None if reading is None else reading.pressure_pa - self._ambient_pa
        to_zero = self.instruction in (Instruction.VENT_TO_ZERO, Instruction.OPEN_BLEEDS)
        target_pa = 0.0 if to_zero else self._stop_pa - self._ambient_pa
        return self._hand.towards(target_pa, shown_pa, at_s)
