"""What fresh readings do to a gate: met after its steady time, lost when they say otherwise."""

from dataclasses import replace
from typing import Final

from co2vent.guidance import job_items as items
from co2vent.guidance.job import GateRecord, Observed
from co2vent.guidance.job_items import JobItem
from co2vent.guidance.procedure import Gate

#: Readings about a limit cross it with every noise: a gate is lost, and that is kept, only after
#: so long; until then it holds the step back all the same. This program's choice.
LOSE_S: Final = 5.0
#: A test, the gate quantity that it decides and the verdict that meets it.
TESTS: Final = {
    "standing": ("standing_test_tight", "tight"),
    "vacuum": ("vacuum_test_passed", "tight_and_dry"),
}
#: Quantities that a test decides.
TESTED: Final = {quantity for quantity, _ in TESTS.values()}
#: Told once with the source and repeated with each reading: never newer than what is read off.
_TOLD_ONCE: Final = {"zero_offset"}


def judge_gate(
    gate: Gate, record: GateRecord, observed: Observed, begun_s: float
) -> tuple[GateRecord, JobItem | None]:
    """Return the gate's record after `observed`, and what its file must keep of the change.

    `begun_s`: when the step began, for the timeout. No gate passes because time has run out.
    """
    at_s = observed.at_s
    value_si = None if observed.stale else observed.values.get(gate.quantity)
    holds = value_si is not None and gate.allows(value_si)
    if record.met_s is not None:
        return _judge_met(gate, record, at_s, value_si, holds)
    refuted = bool(record.typed_by)  # what a person read off last does not meet the gate
    if holds and value_si is not None and not (refuted and gate.quantity in _TOLD_ONCE):
        since_s = at_s if record.true_since_s is None else min(record.true_since_s, at_s)
        value = gate.from_si(value_si)
        # one good reading is no answer to a person's bad one
        if at_s - since_s >= (max(gate.steady_s, LOSE_S) if refuted else gate.steady_s):
            met = replace(record, met_s=at_s, value=value, typed_by="", true_since_s=since_s)
            return met, items.GateMet(at_s, gate.id, value)
        return replace(record, value=record.value if refuted else value, true_since_s=since_s), None
    record = replace(record, true_since_s=None)
    if not refuted:
        record = replace(record, value=None if value_si is None else gate.from_si(value_si))
    if not record.timed_out and at_s - begun_s > gate.timeout_s:
        return replace(record, timed_out=True), items.GateTimedOut(at_s, gate.id)
    return record, None


def _judge_met(
    gate: Gate, record: GateRecord, at_s: float, value_si: float | None, holds: bool
) -> tuple[GateRecord, JobItem | None]:
    """Keep or lose a gate that was met. While it is in doubt it counts as not met."""
    if holds and value_si is not None and not record.typed_by:
        return replace(record, value=gate.from_si(value_si), false_since_s=None), None
    # A typed value stands until readings of the same quantity contradict it.
    if holds or (record.typed_by and value_si is None):
        return replace(record, false_since_s=None), None
    since_s = at_s if record.false_since_s is None else min(record.false_since_s, at_s)
    if at_s - since_s < LOSE_S:
        return replace(record, false_since_s=since_s), None
    reason = "no fresh reading" if value_si is None else f"now {gate.from_si(value_si):.3g}"
    return GateRecord(timed_out=record.timed_out), items.GateLost(at_s, gate.id, reason)
