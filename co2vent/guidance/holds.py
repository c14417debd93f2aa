"""The holds of a vent: the running one, its fits at fixed data times, and those that ended."""

from collections.abc import Iterable
from dataclasses import replace
from math import inf

from co2vent.guidance.event_log import EventLog
from co2vent.guidance.events import EventKind
from co2vent.inference.criteria import CRITERIA
from co2vent.inference.hold_facts import EarlierHold, HoldContext
from co2vent.inference.outcome import Charge, HoldAssessment
from co2vent.inference.trace import HoldTrace
from co2vent.inference.verdict import judge
from co2vent.readings.reading import Reading
from co2vent.sentence import Sentence

FIRST_FIT_S = 8.0
FIT_EVERY_LEAST_S = 2.0
FIT_EVERY_SHARE = 0.08  # of the hold's age: a trace that has run for long changes slowly
FIT_EVERY_MOST_S = 20.0
FELL_PA = 3.0e4  # a vent that let out less has not tested what is inside ...
FELL_SHARE = 0.04  # ... nor one of a smaller share of the pressure


class Holds:
    """The running hold, if the vent is shut, and the ended ones."""

    __slots__ = (
        "_ceiling_pa",
        "_highest_before_pa",
        "_log",
        "_next_fit_s",
        "begun_pa",
        "earlier",
        "ended",
        "fell",
        "number",
        "running",
        "trace",
    )

    def __init__(self, log: EventLog) -> None:
        self._log = log
        self.trace: HoldTrace | None = None  # None: the vent is open, or nothing has come yet
        self.number = 0
        self.running: HoldAssessment | None = None
        self.ended: list[HoldAssessment] = []
        self.earlier: list[EarlierHold] = []  # what the verdict needs of those
        self._next_fit_s = FIRST_FIT_S
        self.fell = False  # the pressure has fallen in a vent: opening alone is none
        self.begun_pa: float | None = None  # where the running hold began, whatever was voided
        self._highest_before_pa = 0.0
        self._ceiling_pa = inf  # above it what earlier holds have shown is past

    @property
    def every(self) -> tuple[HoldAssessment, ...]:
        """The ended holds, then the running one."""
        return (*self.ended, *((self.running,) if self.running is not None else ()))

    @property
    def due_at_s(self) -> float:
        """When the running hold's next fit is due, as the data's time."""
        return self.trace.start_s + self._next_fit_s if self.trace is not None else inf

    def start(
        self, at_s: float, vented: bool, past: Iterable[Reading], highest_pa: float | None
    ) -> None:
        """The vent was shut at `at_s`; `past`: readings between that and its discovery.

        `highest_pa` is the highest pressure of the record so far.
        """
        self.begun_pa = None
        self._highest_before_pa = highest_pa or 0.0
        if self.ended:
            self.number = self.ended[-1].number + 1
        else:
            self.number = 1 if vented else 0
        self.trace = HoldTrace(at_s)
        self._next_fit_s = FIRST_FIT_S
        self.running = None
        text = (
            Sentence("hold {number} starts", number=str(self.number))
            if self.number
            else Sentence("closed, before the first vent")
        )
        self._log.say(at_s, EventKind.HOLD_STARTED, text)
        for reading in past:
            self.add(reading)

    def add(self, reading: Reading) -> bool:
        """Take a reading of the running hold; return whether its next fit is due."""
        trace = self.trace
        assert trace is not None
        if self.begun_pa is None:
            self.begun_pa = reading.pressure_pa
            highest_pa = self._highest_before_pa
            fallen_pa = highest_pa - self.begun_pa
            self.fell = self.fell or fallen_pa > max(FELL_PA, FELL_SHARE * highest_pa)
        trace.add(
            reading.at_s,
            reading.pressure_pa,
            reading.line_temperature_k,
            reading.upper_temperature_k,
        )
        return trace.last_s - trace.start_s >= self._next_fit_s

    def see_pressure(self, pressure_pa: float) -> None:
        """Take every pressure: one above where the last hold ended shows that something came in."""
        if pressure_pa > self._ceiling_pa:
            self._forget_shown()

    def judge(self, context: HoldContext, *, closed: bool) -> tuple[HoldAssessment, Charge] | None:
        """Judge the running hold; return that and what was said before; `None` without readings.

        `closed`: the hold ends with it, and later holds may lean on it.
        """
        trace, before = self.trace, self.running
        if trace is None or trace.count == 0:
            return None
        shown = before is not None and before.charge is Charge.VAPOR_ONLY
        verdict, earlier = judge(trace, replace(context, shown_now=shown), closed=closed)
        if (
            closed
            and not context.valve_known
            and verdict.charge is Charge.VAPOR_ONLY
            and before is not None
            and before.charge is not Charge.VAPOR_ONLY
        ):
            # an opening found from the pressure: the hold's end is the beginning of the fall
            verdict = before
        if before is not None and before.start_s < verdict.start_s:
            # its evidence started anew, the hold did not
            verdict = replace(
                verdict, start_s=before.start_s, start_pressure_pa=before.start_pressure_pa
            )
        age_s = trace.duration_s
        every_s = min(max(FIT_EVERY_LEAST_S, FIT_EVERY_SHARE * age_s), FIT_EVERY_MOST_S)
        self._next_fit_s = age_s + every_s
        self.running = verdict
        if earlier is not None:
            self.earlier.append(earlier)
            self._ceiling_pa = earlier.end_pa + CRITERIA.joint_gained_pa
        return verdict, before.charge if before is not None else Charge.UNDETERMINED

    def keep_part(self, context: HoldContext) -> None:
        """The evidence is about to start anew: keep what the part so far has raised of doubts."""
        trace = self.trace
        if trace is None or trace.duration_s < CRITERIA.shortest_clear_s or not self.number:
            return
        _, part = judge(trace, replace(context, faults=()), closed=True)
        if part is not None:
            self.earlier.append(replace(part, shown=None))

    def end(self, at_s: float, *, valve_told: bool) -> HoldAssessment | None:
        """The vent was opened at `at_s`: keep the hold as it was judged last, if it was."""
        ended = self.running
        if ended is not None:
            # an opening found from the pressure lies before the reading that showed it
            end_s = ended.end_s if valve_told else min(at_s, ended.end_s)
            ended = replace(ended, end_s=end_s, closed=True)
            self.ended.append(ended)
            self._log.say(
                at_s,
                EventKind.HOLD_ENDED,
                Sentence(
                    "hold {number} ends: {charge}. {reason}",
                    number=str(ended.number),
                    charge=ended.charge,
                    reason=ended.reason,
                )
                if ended.number
                else Sentence(
                    "the closed time before the vent ends: {reason}", reason=ended.reason
                ),
            )
        self.trace = None
        self.running = None
        return ended

    def _forget_shown(self) -> None:
        self.earlier = [replace(one, shown=None) for one in self.earlier]
        self._ceiling_pa = inf

    def void(self, at_s: float, why: str, latest: Reading | None) -> None:
        """The hold goes on, its evidence starts again: what was read before does not count.

        Nor does what earlier holds have shown: nobody saw what happened in between.
        """
        self._forget_shown()
        if self.trace is None:
            return
        if self.trace.count == 0 and self.running is not None:
            return  # nothing was gathered since it was voided last
        started_s = self.running.start_s if self.running else self.trace.start_s
        start_pa = self.running.start_pressure_pa if self.running else self.trace.first_pa
        if self.trace.count == 0:
            start_pa = latest.pressure_pa if latest else 0.0
        self._log.say(
            at_s,
            EventKind.HOLD_VOIDED,
            Sentence(
                "hold {number}: {why}; its evidence starts anew",
                number=str(self.number),
                why=why,
            ),
        )
        self.trace = HoldTrace(at_s)
        self._next_fit_s = FIRST_FIT_S
        self.running = HoldAssessment(
            number=self.number,
            start_s=min(started_s, at_s),  # the clock may have run back
            end_s=at_s,
            start_pressure_pa=start_pa,
            end_pressure_pa=latest.pressure_pa if latest else start_pa,
            reason=Sentence("Not known yet: {why}, so the hold's evidence starts anew.", why=why),
        )
