"""A job's items in words, one line each, for the event list and the report."""

from co2vent.guidance import job_items as items
from co2vent.guidance.job_items import JobItem
from co2vent.guidance.procedure import Procedure


def describe(procedure: Procedure, item: JobItem) -> str:
    """Return the item in one line, for the event list and the report."""
    texts = {
        identity: text
        for step in procedure.steps
        for identity, text in (
            *((entry.id, entry.text) for entry in step.confirmations),
            *((entry.id, entry.text) for entry in step.entries),
        )
    }
    gates = {gate.id: gate for step in procedure.steps for gate in step.gates}
    titles = {step.id: step.title for step in procedure.steps}
    match item:
        case items.Confirm():
            return f"Confirmed by {item.by}: {texts[item.id]}"
        case items.Withdraw():
            return f"Taken back by {item.by}: {texts[item.id]} ({item.reason})"
        case items.WriteDown():
            return f"{texts[item.id]}: {item.value} ({item.by})"
        case items.Isolate():
            lock = f", lock {item.lock}" if item.lock else ", no lock"
            tag = f", tag {item.tag}" if item.tag else ", no tag"
            return f"Valve {item.valve} {item.position}{lock}{tag} ({item.by})"
        case items.Typed():
            gate = gates[item.id]
            fails = "" if gate.allows(gate.to_si(item.value)) else "does not meet: "
            value = f"{item.value:g} {gate.unit_words}"
            return f"Read off by {item.by}: {value} ({fails}{gate.condition})"
        case items.GateMet():
            gate = gates[item.id]
            return f"Met: {gate.condition}; {item.value:.4g} {gate.unit_words}".rstrip()
        case items.GateLost():
            return f"No longer met: {gates[item.id].condition} ({item.reason})"
        case items.GateTimedOut():
            return f"Not met in {gates[item.id].timeout_s / 60:g} min: {gates[item.id].condition}"
        case items.Done():
            return f"Step done ({item.by})"
        case items.Skip():
            return f"Step skipped by {item.by}: {item.reason}"
        case items.GoBack():
            return f"Back to '{titles[item.id]}' by {item.by}: {item.reason}"
        case items.Note():
            return f"Note by {item.by}: {item.text}"
        case items.TestResult():
            return f"{item.test.capitalize()} test: {item.verdict.replace('_', ' ')}. {item.reason}"
        case items.LogAdded():
            kind = "Simulated readings" if item.simulated else "Readings"
            return f"{kind} {item.name}, {item.readings} rows, sha256 {item.sha256[:16]}"
        case items.SimulatedSeen():
            return "Simulated readings: practice from here on"
        case items.Reopened():
            return f"Opened again by {item.by}"
