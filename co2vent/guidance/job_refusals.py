"""Why an item can't be accepted into a job now, in words that say what to do. Pure."""

from typing import Final

from co2vent.guidance import job_items as items
from co2vent.guidance.job import Job
from co2vent.guidance.job_gates import TESTS
from co2vent.guidance.job_items import JobItem
from co2vent.guidance.procedure import QUANTITY_WORDS, Gate, Step, StepKind
from co2vent.sentence import Sentence, listed

MIN_REASON: Final = 3  # characters; a skip without a reason is no skip
POSITIONS: Final = ("shut", "open")


def refusal(job: Job, item: JobItem, *, stored: bool = False) -> str:
    """Return why `item` can't be accepted now, in words that say what to do; empty: it can.

    `stored`: the item comes from a job's file. Rules that are younger than the first jobs don't
    take back what was accepted then: such a job must read as it was done.
    """
    step = job.step
    by = getattr(item, "by", None)
    if by is not None and not by.strip():
        return Sentence("give the name of the person who does this")
    texts = [
        value
        for name in ("by", "reason", "text", "value", "valve", "lock", "tag")
        if isinstance(value := getattr(item, name, ""), str)
    ]
    if any(len(text) > items.MAX_NOTE for text in texts):
        return Sentence("too long: {most} characters at most", most=str(items.MAX_NOTE))
    match item:
        case items.Confirm(id=identity):
            if identity not in {c.id for s in job.procedure.steps for c in s.confirmations}:
                return f"no confirmation {identity!r} in this job"
            if identity not in {
                c.id for s in job.procedure.steps[: job.current + 1] for c in s.confirmations
            }:
                return Sentence("that confirmation belongs to a later step")
        case items.Withdraw(id=identity, reason=reason):
            if identity not in job.confirmed:
                return f"{identity!r} was not confirmed"
            return _reason_lacks(reason)
        case items.WriteDown(id=identity, value=value):
            if identity not in {e.id for s in job.procedure.steps for e in s.entries}:
                return f"no entry {identity!r} in this job"
            if not value.strip():
                return Sentence("write something, or leave the entry alone")
        case items.Isolate(valve=valve, position=position):
            if not valve.strip():
                return Sentence("name the valve")
            if position not in POSITIONS:
                return "a valve is 'shut' or 'open'"
        case items.Typed(id=identity) | items.GateMet(id=identity) | items.GateLost(id=identity):
            gate = gate_of(step, identity)
            if gate is None:
                return f"no gate {identity!r} in the running step"
            if isinstance(item, items.Typed):
                return _typed_refused(gate, item, stored)
        case items.GateTimedOut(id=identity):
            if gate_of(step, identity) is None:
                return f"no gate {identity!r} in the running step"
        case items.Done():
            if step is None:
                return Sentence("the job has ended; nothing is left to do")
            if job.lacks():
                return Sentence("not yet: {lacks}", lacks=listed(job.lacks()))
            return _next_refused(job)
        case items.Skip(reason=reason):
            if step is None:
                return Sentence("the job has ended; nothing is left to skip")
            if not step.skippable or (step.kind is StepKind.OPEN and not stored):
                return Sentence("'{step}' can't be skipped", step=step.title)
            return _reason_lacks(reason) or _next_refused(job)
        case items.GoBack(id=identity, reason=reason):
            if identity not in [s.id for s in job.procedure.steps[: job.current]]:
                return f"{identity!r} is not an earlier step"
            return _reason_lacks(reason)
        case items.Note(text=text):
            if not text.strip():
                return Sentence("write something")
        case items.TestResult(test=test):
            if test not in TESTS:
                return f"a test is one of {', '.join(TESTS)}"
        case items.LogAdded() | items.SimulatedSeen() | items.Reopened():
            pass
    return ""


def _typed_refused(gate: Gate, item: items.Typed, stored: bool) -> str:
    """Return why a value can't be taken at all; one that merely fails is taken and kept."""
    words = QUANTITY_WORDS[gate.quantity]
    if not gate.by_hand:
        return Sentence("{quantity}: must come from readings here", quantity=words)
    if stored or gate.possible(item.value):
        return ""
    least, most = gate.possible_words
    return Sentence(
        "{value} is no reading of {quantity}: it lies between {least} and {most}. "
        "Read the instrument again.",
        value=f"{item.value:.7g} {gate.unit_words}".strip(),
        quantity=words,
        least=least,
        most=most,
    )


def _reason_lacks(reason: str) -> str:
    return "" if len(reason.strip()) >= MIN_REASON else Sentence("give a reason")


def _next_refused(job: Job) -> str:
    """Return why the next step can't begin: venting waits for its five confirmations."""
    following = job.current + 1
    if following < len(job.steps) and job.procedure.steps[following].kind is StepKind.VENT:
        lacks = job.venting_lacks
        if lacks:
            return Sentence("no venting yet: {lacks}", lacks=listed(lacks))
    return ""


def gate_of(step: Step | None, identity: str) -> Gate | None:
    """Return the gate `identity` of `step`."""
    gates = () if step is None else step.gates
    return next((gate for gate in gates if gate.id == identity), None)
