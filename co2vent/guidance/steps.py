"""The job's state: `begin_job`, then `advance_job(job, item) -> (job, events)`. Pure.

Readings enter as `Observed` (made from the session's view) and can meet or lose the gates of the
running step. Nothing is passed by time alone, and stale readings pass nothing. What was accepted
comes back as items, so that a file of items rebuilds the job exactly.
"""

from dataclasses import replace
from typing import Final

from co2vent.guidance import job_items as items
from co2vent.guidance.job import (
    GateRecord,
    Job,
    JobEvent,
    JobEventKind,
    JobHead,
    Observed,
    StepRecord,
    StepState,
)
from co2vent.guidance.job_gates import TESTED, TESTS, judge_gate
from co2vent.guidance.job_items import JobItem
from co2vent.guidance.job_refusals import gate_of, refusal
from co2vent.guidance.job_words import describe
from co2vent.guidance.procedure import VENTING_CONFIRMATIONS, Procedure, StepKind
from co2vent.sentence import Sentence, listed

PRACTICE: Final = Sentence("Simulated readings: this job is practice and can't be signed.")
POINTS_HOLD_S: Final = 4 * 3600.0  # how long the five points outlive a stop; program's choice


def begin_job(procedure: Procedure, head: JobHead, at_s: float = 0.0) -> Job:
    """Return a job whose first step is running."""
    waiting = [StepRecord() for _ in procedure.steps]
    waiting[0] = StepRecord(StepState.RUNNING, at_s)
    return Job(head, procedure, tuple(waiting), 0)


def advance_job(
    job: Job, item: JobItem | Observed, *, stored: bool = False
) -> tuple[Job, tuple[JobEvent, ...]]:
    """Return the job after `item` and what to report.

    Accepted items come back in the events' `item`, in the order in which a file must keep them;
    feeding those to a fresh job, as `stored`, gives the same job, also where an older version
    accepted what this one would not. A refused item changes nothing but the history.
    """
    if isinstance(item, Observed):
        job, events = _observe(job, item)
    else:
        refused = refusal(job, item, stored=stored)
        if refused:
            events = [JobEvent(item.at_s, JobEventKind.REFUSED, refused)]
        else:
            job, caution = _apply(job, item)
            events = [
                JobEvent(item.at_s, JobEventKind.ACCEPTED, describe(job.procedure, item), item)
            ]
            if caution:
                events.append(JobEvent(item.at_s, JobEventKind.CAUTION, caution))
    return replace(job, history=(*job.history, *events)) if events else job, tuple(events)


def _observe(job: Job, observed: Observed) -> tuple[Job, list[JobEvent]]:
    """Meet, lose and time out the running step's gates."""
    step = job.step
    observed = _since_gone_back(job, observed)
    job = replace(job, observed=observed)
    events: list[JobEvent] = []
    if observed.simulated and not job.simulated:
        seen = items.SimulatedSeen(observed.at_s)
        job, caution = _apply(job, seen)
        text = describe(job.procedure, seen)
        events.append(JobEvent(observed.at_s, JobEventKind.ACCEPTED, text, seen))
        events.append(JobEvent(observed.at_s, JobEventKind.CAUTION, caution))
    if step is None:
        return job, events
    begun_s = job.steps[job.current].begun_s or 0.0
    for gate in step.gates:
        if gate.quantity in TESTED:
            continue  # decided by the test's verdict, which outlives the readings
        record = job.gates.get(gate.id, GateRecord())
        after, change = judge_gate(gate, record, observed, begun_s)
        if after != record:
            job = replace(job, gates={**job.gates, gate.id: after})
        if change is not None:
            events.append(
                JobEvent(
                    observed.at_s, JobEventKind.ACCEPTED, describe(job.procedure, change), change
                )
            )
            if isinstance(change, items.GateTimedOut):
                events.append(JobEvent(observed.at_s, JobEventKind.CAUTION, gate.on_timeout))
    return job, events


def _since_gone_back(job: Job, observed: Observed) -> Observed:
    """Leave out what holds from before the job went back have shown: a hiss refuted them."""
    ends_s = observed.hold_ends_s
    if job.went_back_s is None or ends_s is None:
        return observed
    newer = sum(end_s > job.went_back_s for end_s in ends_s)
    values = dict(observed.values)
    values["vapor_only_holds"] = float(newer)
    if not newer:
        values["dry_ice_cleared"] = 0.0
    return replace(observed, values=values)


def _apply(job: Job, item: JobItem) -> tuple[Job, str]:
    """Return the job with the accepted `item`, and a caution in words or nothing."""
    match item:
        case items.Confirm():
            confirmed = {**job.confirmed, item.id: (item.at_s, item.by)}
            return replace(job, confirmed=confirmed), ""
        case items.Withdraw():
            confirmed = {key: value for key, value in job.confirmed.items() if key != item.id}
            job = replace(job, confirmed=confirmed)
            vented = any(
                record.begun_s is not None and step.kind is StepKind.VENT
                for record, step in zip(job.steps, job.procedure.steps, strict=True)
            )
            hurt = item.id in VENTING_CONFIRMATIONS and vented
            again = Sentence("Close the vent until this is confirmed again.")
            return job, again if hurt else ""
        case items.WriteDown():
            written = {**job.written, item.id: (*job.written.get(item.id, ()), item)}
            return replace(job, written=written), ""
        case items.Isolate():
            return replace(job, isolation=(*job.isolation, item)), ""
        case items.Typed():
            return _with_typed(job, item)
        case items.GateMet():
            return _with_gate(job, item.id, GateRecord(item.at_s, item.value)), ""
        case items.GateLost():
            return _with_gate(job, item.id, GateRecord()), ""
        case items.GateTimedOut():
            record = job.gates.get(item.id, GateRecord())
            return _with_gate(job, item.id, replace(record, timed_out=True)), ""
        case items.Done():
            job = _end_step(job, StepState.DONE, item.at_s, item.by, "")
            return job, _opening_caution(job)
        case items.Skip():
            job = _end_step(job, StepState.SKIPPED, item.at_s, item.by, item.reason.strip())
            return job, _opening_caution(job)
        case items.GoBack():
            return _go_back(job, item), ""
        case items.Note():
            return replace(job, notes=(*job.notes, item)), ""
        case items.TestResult():
            return _with_test(replace(job, tests=(*job.tests, item)), item), ""
        case items.LogAdded():
            return replace(job, logs=(*job.logs, item)), PRACTICE if item.simulated else ""
        case items.SimulatedSeen():
            return replace(job, simulated_seen=True), PRACTICE
        case items.Reopened():
            return _reopened(job, item.at_s), ""


def _opening_caution(job: Job) -> str:
    """Say what was left out when the step that breaks the joint begins."""
    if job.step is None or job.step.kind is not StepKind.OPEN or not job.skipped:
        return ""
    return Sentence("Left out before the joint is broken: {steps}", steps=listed(job.skipped))


def _with_gate(job: Job, identity: str, record: GateRecord) -> Job:
    return replace(job, gates={**job.gates, identity: record})


def _with_typed(job: Job, item: items.Typed) -> tuple[Job, str]:
    """Meet or lose the gate with what was read off: the newest reading counts, good or bad."""
    gate = gate_of(job.step, item.id)
    if gate is None or gate.allows(gate.to_si(item.value)):
        return _with_gate(job, item.id, GateRecord(item.at_s, item.value, item.by)), ""
    late = job.gates.get(item.id, GateRecord()).timed_out
    record = GateRecord(value=item.value, typed_by=item.by, timed_out=late)
    caution = Sentence(
        "{value} does not meet: {condition}",
        value=f"{item.value:g} {gate.unit_words}",
        condition=gate.condition,
    )
    return _with_gate(job, item.id, record), caution


def _with_test(job: Job, item: items.TestResult) -> Job:
    """Meet or lose the running step's gate that this test decides."""
    quantity, good = TESTS[item.test]
    for gate in () if job.step is None else job.step.gates:
        if gate.quantity == quantity:
            passed = item.verdict == good
            record = GateRecord(item.at_s, 1.0) if passed else GateRecord(value=0.0)
            job = _with_gate(job, gate.id, record)
    return job


def _reopened(job: Job, at_s: float) -> Job:
    """Forget what readings met in the running step: after a stop they must be read anew.

    The five points are for the people and the wind of now: old ones are void too.
    """
    old = {
        identity
        for identity in VENTING_CONFIRMATIONS
        if identity in job.confirmed and at_s - job.confirmed[identity][0] > POINTS_HOLD_S
    }
    confirmed = {key: value for key, value in job.confirmed.items() if key not in old}
    job = replace(job, confirmed=confirmed)
    running = () if job.step is None else job.step.gates
    forgotten = {
        gate.id
        for gate in running
        if gate.quantity not in TESTED
        and (record := job.gates.get(gate.id)) is not None
        and not record.typed_by
    }
    gates = {key: value for key, value in job.gates.items() if key not in forgotten}
    return replace(job, gates=gates, observed=None)


def _end_step(job: Job, state: StepState, at_s: float, by: str, reason: str) -> Job:
    records = list(job.steps)
    records[job.current] = replace(
        records[job.current], state=state, ended_s=at_s, by=by, reason=reason
    )
    following = job.current + 1
    if following < len(records):
        records[following] = StepRecord(StepState.RUNNING, at_s)
    return replace(job, steps=tuple(records), current=following)


def _go_back(job: Job, item: items.GoBack) -> Job:
    """Run an earlier step again; gates and confirmations from it on are void."""
    target = next(index for index, step in enumerate(job.procedure.steps) if step.id == item.id)
    records = list(job.steps)
    records[target:] = [StepRecord() for _ in records[target:]]
    records[target] = StepRecord(StepState.RUNNING, item.at_s)
    void = {
        identity
        for step in job.procedure.steps[target:]
        for identity in (
            *(gate.id for gate in step.gates),
            *(confirmation.id for confirmation in step.confirmations),
        )
    }
    return replace(
        job,
        steps=tuple(records),
        current=target,
        went_back_s=item.at_s,
        gates={key: value for key, value in job.gates.items() if key not in void},
        confirmed={key: value for key, value in job.confirmed.items() if key not in void},
    )
