"""What a job is: its head, its steps' states, its gates, and what it still waits for."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum

from co2vent.guidance import job_items as items
from co2vent.guidance.job_items import JobItem
from co2vent.guidance.procedure import (
    VENTING_CONFIRMATIONS,
    Entry,
    Gate,
    Procedure,
    Step,
    StepKind,
)
from co2vent.sentence import Sentence


@dataclass(frozen=True, slots=True, kw_only=True)
class Person:
    """Somebody on the job."""

    name: str
    role: str = ""
    certificate: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class GaugeRecord:
    """An instrument as its label and certificate describe it; empty where nobody wrote it down."""

    name: str
    serial: str = ""
    accuracy: str = ""
    range: str = ""
    calibrated: str = ""
    zero: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class JobHead:
    """What is known when a job is begun."""

    site: str = ""
    unit: str = ""
    section: str = ""
    drawing: str = ""
    order: str = ""  # what is to be done to the section
    people: tuple[Person, ...] = ()
    gauges: tuple[GaugeRecord, ...] = ()
    simulated: bool = False


class StepState(StrEnum):
    """Where a step stands."""

    WAITING = "waiting"
    RUNNING = "running"
    DONE = "done"
    SKIPPED = "skipped"


@dataclass(frozen=True, slots=True)
class StepRecord:
    """A step's state, since when, who ended it and why it was left out."""

    state: StepState = StepState.WAITING
    begun_s: float | None = None
    ended_s: float | None = None
    by: str = ""
    reason: str = ""


@dataclass(frozen=True, slots=True)
class GateRecord:
    """A gate's state in the running or an ended step. Values are in the gate's unit."""

    met_s: float | None = None
    value: float | None = None
    typed_by: str = ""  # empty: readings met it
    true_since_s: float | None = None
    false_since_s: float | None = None  # met, but the newest readings say otherwise
    timed_out: bool = False


@dataclass(frozen=True, slots=True)
class Observed:
    """The readings as gates see them: SI by quantity; a quantity that isn't measured is absent."""

    at_s: float
    stale: bool
    values: Mapping[str, float] = field(default_factory=dict)
    simulated: bool = False
    # when the holds ended that say vapour only, in job time, the newest first; None: not told
    hold_ends_s: tuple[float, ...] | None = None


class JobEventKind(StrEnum):
    """What `advance_job` reports."""

    ACCEPTED = "accepted"
    REFUSED = "refused"
    CAUTION = "caution"


@dataclass(frozen=True, slots=True)
class JobEvent:
    """A report: what happened, in words. `item`: what the job's file must keep."""

    at_s: float
    kind: JobEventKind
    text: str
    item: JobItem | None = None


@dataclass(frozen=True, slots=True)
class Job:
    """The whole job after its newest item."""

    head: JobHead
    procedure: Procedure
    steps: tuple[StepRecord, ...]
    current: int  # index of the running step; len(steps) when all have ended
    gates: Mapping[str, GateRecord] = field(default_factory=dict)
    confirmed: Mapping[str, tuple[float, str]] = field(default_factory=dict)
    written: Mapping[str, tuple[items.WriteDown, ...]] = field(default_factory=dict)
    isolation: tuple[items.Isolate, ...] = ()
    notes: tuple[items.Note, ...] = ()
    tests: tuple[items.TestResult, ...] = ()
    logs: tuple[items.LogAdded, ...] = ()
    history: tuple[JobEvent, ...] = ()
    observed: Observed | None = None
    simulated_seen: bool = False
    went_back_s: float | None = None  # holds that ended before prove nothing any more

    @property
    def step(self) -> Step | None:
        """The running step; `None` when every step has ended."""
        return self.procedure.steps[self.current] if self.current < len(self.steps) else None

    @property
    def simulated(self) -> bool:
        """Whether anything in the job is simulated: such a job is practice and is never signed."""
        logs = any(log.simulated for log in self.logs)
        return self.head.simulated or self.simulated_seen or logs

    @property
    def venting_lacks(self) -> tuple[str, ...]:
        """The confirmations that venting still waits for, in words."""
        texts = {item.id: item.text for step in self.procedure.steps for item in step.confirmations}
        return tuple(
            texts[identity] for identity in VENTING_CONFIRMATIONS if identity not in self.confirmed
        )

    @property
    def valves_shut(self) -> tuple[str, ...]:
        """The valves whose latest word on the isolation list is shut."""
        latest = {one.valve: one.position for one in self.isolation}
        return tuple(valve for valve, position in latest.items() if position == "shut")

    @property
    def skipped(self) -> tuple[str, ...]:
        """The steps that were left out, with their reasons."""
        return tuple(
            Sentence("{step}: {reason}", step=step.title, reason=record.reason)
            for step, record in zip(self.procedure.steps, self.steps, strict=True)
            if record.state is StepState.SKIPPED
        )

    def lacks(self) -> tuple[str, ...]:
        """Return what the running step still waits for, in words; empty: it can be ended."""
        step = self.step
        if step is None:
            return ()
        # in the order of their doing: people and valves come before what a gauge shows
        missing: list[str] = list(self.venting_lacks) if step.kind is StepKind.VENT else []
        if step.kind is StepKind.RETURN and self.valves_shut:
            missing.append(
                Sentence(
                    "still shut on the isolation list: {valves}", valves=", ".join(self.valves_shut)
                )
            )
        if step.kind is StepKind.ISOLATE and not self.isolation:
            missing.append(Sentence("the isolation list is empty: name each valve"))
        missing += [
            item.text
            for item in step.confirmations
            if item.id not in self.confirmed and item.text not in missing
        ]
        missing += [
            entry_lack(item)
            for item in step.entries
            if item.required and item.id not in self.written
        ]
        missing += [gate.condition for gate in step.gates if not self.gate_met(gate)]
        return tuple(missing)

    def gate_met(self, gate: Gate) -> bool:
        """Say whether `gate` is met, by readings or by a typed value."""
        record = self.gates.get(gate.id, GateRecord())
        return record.met_s is not None and record.false_since_s is None


def entry_lack(entry: Entry) -> str:
    """Return what a step waits for that `entry` holds back, in words."""
    return Sentence("write down: {what}", what=entry.text)
