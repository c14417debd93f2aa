"""What stands over a whole vent: "vapour only" with its limit, and dry ice once seen."""

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.guidance.event_log import EventLog
from co2vent.guidance.events import EventKind
from co2vent.inference.outcome import Charge, HoldAssessment, LeakBy
from co2vent.sentence import Sentence


class Standing:
    """The verdict that stands, from the holds so far."""

    __slots__ = (
        "_log",
        "cleared_before",
        "cleared_limit_kg",
        "low_hold_done",
        "solid_seen",
        "vapor_only_since_s",
    )

    def __init__(self, log: EventLog) -> None:
        self._log = log
        self.vapor_only_since_s: float | None = None
        self.cleared_limit_kg: float | None = None
        self.cleared_before = False  # it stood when the running hold began
        self.solid_seen = False
        self.low_hold_done = False  # a hold below the triple point showed no dry ice

    @property
    def cleared(self) -> bool:
        """Whether "vapour only" stands."""
        return self.vapor_only_since_s is not None

    def hold_starts(self) -> None:
        """A hold begins: its own verdict will be no evidence for it."""
        self.cleared_before = self.cleared

    def withdraw(self, why: str, at_s: float) -> None:
        """Take back a standing "vapour only": recovery never restores an old verdict."""
        if not self.cleared:
            return
        self.vapor_only_since_s = None
        self.cleared_limit_kg = None
        # if the running hold shows it again, that is its own verdict
        self.cleared_before = False
        text = Sentence("vapour only no longer stands: {why}", why=why)
        self._log.say(at_s, EventKind.VERDICT, text)

    def heed(self, hold: HoldAssessment, before: Charge, now_s: float) -> None:
        """Let the newest verdict on the running hold change what stands."""
        if hold.charge is not before:
            self._log.say(
                hold.end_s,
                EventKind.VERDICT,
                Sentence(
                    "hold {number}: {charge}. {reason}",
                    number=str(hold.number),
                    charge=hold.charge,
                    reason=hold.reason,
                ),
            )
        if hold.charge is Charge.VAPOR_ONLY:
            if self.vapor_only_since_s is None:
                self.vapor_only_since_s = hold.end_s
            self.cleared_limit_kg = hold.detection_limit_kg
            self.solid_seen = False
        elif hold.charge is Charge.SOLID_PRESENT:
            if not self.solid_seen:
                text = Sentence("dry ice: {reason}", reason=hold.reason)
                self._log.say(hold.end_s, EventKind.SHELF, text)
            self.solid_seen = True
            self.withdraw(Sentence("dry ice shows"), now_s)
        elif hold.charge in (Charge.TWO_PHASE, Charge.SUBCOOLED_LIQUID):
            self.withdraw(Sentence("the hold shows liquid"), now_s)
            self.solid_seen = False
        elif hold.leak_by is LeakBy.SUSPECTED:
            self.withdraw(Sentence("flow into the section is suspected"), now_s)
        elif before is Charge.VAPOR_ONLY:
            self.withdraw(Sentence("the hold no longer shows it"), now_s)

    def hold_ended(self, hold: HoldAssessment) -> None:
        """A hold ended: one below the triple point that stood the test was the watch for ice."""
        if (
            self.cleared
            and hold.end_pressure_pa < TRIPLE_PRESSURE_PA
            and hold.charge is Charge.VAPOR_ONLY
        ):
            self.low_hold_done = True
