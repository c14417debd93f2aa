"""What stands over a whole vent: "vapour only" with its limit, and dry ice once seen."""

from math import inf

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.guidance.event_log import EventLog
from co2vent.guidance.events import EventKind
from co2vent.inference.criteria import CRITERIA
from co2vent.inference.outcome import Charge, HoldAssessment, LeakBy
from co2vent.sentence import Sentence


class Standing:
    """The verdict that stands, from the holds so far."""

    __slots__ = (
        "_ceiling_pa",
        "_log",
        "_open_least_pa",
        "cleared_before",
        "cleared_limit_kg",
        "ice_possible",
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
        self.ice_possible = False  # it was seen, and no hold has excluded it since
        self._ceiling_pa = inf  # above it the verdict was not shown
        self._open_least_pa = inf  # of the running vent
        self.low_hold_done = False  # a hold below the triple point showed no dry ice

    @property
    def cleared(self) -> bool:
        """Whether "vapour only" stands."""
        return self.vapor_only_since_s is not None

    def hold_starts(self) -> None:
        """A hold begins: its own verdict will be no evidence for it."""
        self.cleared_before = self.cleared
        self._open_least_pa = inf

    def see_pressure(self, pressure_pa: float, at_s: float, *, vent_open: bool) -> None:
        """Take every pressure: gas alone does not climb above where it was shown, nor in a vent."""
        if not self.cleared:
            return
        if pressure_pa > self._ceiling_pa:
            self.withdraw(
                Sentence("the pressure is higher than it was shown for; something came in"), at_s
            )
        elif vent_open:
            self._open_least_pa = min(self._open_least_pa, pressure_pa)
            if pressure_pa > self._open_least_pa + CRITERIA.joint_gained_pa:
                self.withdraw(Sentence("the pressure rises with the vent open"), at_s)

    def see_ice(self) -> None:
        """Dry ice was seen."""
        self.solid_seen = self.ice_possible = True

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
            self.solid_seen = self.ice_possible = False
            self._ceiling_pa = hold.end_pressure_pa + CRITERIA.joint_gained_pa
        elif hold.charge is Charge.SOLID_PRESENT:
            if not self.solid_seen:
                text = Sentence("dry ice: {reason}", reason=hold.reason)
                self._log.say(hold.end_s, EventKind.SHELF, text)
            self.see_ice()
            self.withdraw(Sentence("dry ice shows"), now_s)
        elif hold.charge in (Charge.TWO_PHASE, Charge.SUBCOOLED_LIQUID):
            self.withdraw(Sentence("the hold shows liquid"), now_s)
            self.solid_seen = False
        elif hold.leak_by is LeakBy.SUSPECTED:
            self.withdraw(Sentence("flow into the section is suspected"), now_s)
        elif hold.climbs or before is Charge.VAPOR_ONLY:
            self.withdraw(Sentence("the hold no longer shows it"), now_s)

    def hold_ended(self, hold: HoldAssessment) -> None:
        """A hold ended: one below the triple point that stood the test was the watch for ice."""
        if (
            self.cleared
            and hold.end_pressure_pa < TRIPLE_PRESSURE_PA
            and hold.charge is Charge.VAPOR_ONLY
        ):
            self.low_hold_done = True
