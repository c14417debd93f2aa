"""The pages after the first: assumptions, instruments, isolation, steps, tests, log, events."""

from collections.abc import Iterable, Mapping
from typing import Any

from co2vent.errors import Co2ventError
from co2vent.guidance.event_log import in_order_of_time
from co2vent.guidance.events import EventKind
from co2vent.guidance.job import Job, StepState
from co2vent.guidance.job_items import ITEM_NAMES, item_from_plain
from co2vent.guidance.job_words import describe
from co2vent.guidance.procedure import VENTING_CONFIRMATIONS
from co2vent.report import values
from co2vent.report.facts import LogFacts, ReportFacts, assumptions
from co2vent.report.markup import bullets, heading, pairs, paragraph, table, text
from co2vent.report.summary import NEWEST_HOLDS, TraceMarkup, hold_table, log_part
from co2vent.store.chain import ChainEntry
from co2vent.store.job_record import JobRecord

MAX_EVENTS = 400  # of one log; a report is read by people, the log holds the rest
MAX_REJECTED = 40
_OF_A_VENT = frozenset(
    {
        EventKind.PROMPT,
        EventKind.VERDICT,
        EventKind.HOLD_STARTED,
        EventKind.HOLD_ENDED,
        EventKind.HOLD_VOIDED,
        EventKind.BELOW_TRIPLE_POINT,
        EventKind.SHELF,
    }
)
LIMITS = (
    "Bounds are for 95 % confidence of the model, not of the world: they hold as far as the "
    "section, the gauge and the clamp are as stated.",
    "A gauge can't see cavities, check-valve pockets, or what lies behind a plug.",
    "Gauge, clamp and CO2 meter certificates are as written down; the program did not see them.",
)
NOTES_ARE = (
    "These are opinions written later, kept in a file of their own beside the readings; the digest "
    "of the readings does not cover them."
)


def details(facts: ReportFacts, trace: TraceMarkup, newest: int = NEWEST_HOLDS) -> str:
    """Return the markup of the pages after the first, which shows the `newest` holds only."""
    parts = [heading("What was assumed, and limits", new_page=True)]
    judged = facts.vent_logs or facts.logs[:1]
    for log in judged:
        if len(judged) > 1:
            parts.append(f"<h3>{text(log.name)}</h3>")
        parts.append(bullets(assumptions(log)))
    parts.append(bullets(LIMITS))
    if facts.record is not None:
        parts += _job(facts, facts.record)
    if len(facts.logs) > 1:
        files = [(log.name, log.recorded, log.sha256) for log in facts.logs]
        parts.append(heading("Readings files"))
        parts.append(table(files, ("File", "Recorded", "sha256"), (20, 30, 50)))
    for log in facts.logs:
        if log is not facts.vent_log:
            vented = log in facts.vent_logs
            parts.append(heading(f"Readings {log.name}"))
            parts.append(log_part(log, trace, newest) if vented else trace(log))
    for log in facts.logs:
        if len(log.view.holds) > newest:
            parts += [heading(f"All holds of {log.name}"), hold_table(log, log.view.holds)]
    parts += map(_notes, facts.logs)
    parts.append(_events(facts))
    return "".join(parts)


def _notes(log: LogFacts) -> str:
    """Return what people wrote on the recording afterwards; nothing where there is none."""
    if not log.notes and not log.notes_problem:
        return ""
    parts = [heading(f"Notes on {log.name}")]
    if log.notes_problem:
        parts.append(paragraph(f"Not read: {log.notes_problem}."))
    if log.notes:
        rows = [
            (
                values.duration(one.at_s),
                values.moment(one.written.isoformat()),
                one.author,
                one.text,
            )
            for one in log.notes
        ]
        parts.append(table(rows, ("Log time", "Written", "By", "Note"), (12, 22, 16, 50)))
        parts.append(paragraph(NOTES_ARE, "small"))
    return "".join(parts)


def _job(facts: ReportFacts, record: JobRecord) -> Iterable[str]:
    job = record.job
    gauges = [
        (one.name, one.serial, one.accuracy, one.range, one.calibrated, one.zero)
        for one in job.head.gauges
    ]
    if record.plan is not None:
        yield heading("Plan before the vent")
        yield _plan(record.plan)
    yield heading("Instruments")
    yield (
        table(gauges, ("Instrument", "Serial", "Class", "Range", "Calibrated", "Zero"))
        if gauges
        else paragraph("None written down.")
    )
    yield heading("The five points before venting")
    yield table(_five(job), ("Point", "Confirmed by", "At"), (64, 22, 14))
    yield heading("Isolation list")
    valves = [
        (one.valve, one.position, one.lock, one.tag, one.by, values.duration(one.at_s))
        for one in job.isolation
    ]
    yield (
        table(valves, ("Valve", "Position", "Lock", "Tag", "By", "At"))
        if valves
        else paragraph("Empty.")
    )
    yield heading("Steps")
    yield table(_steps(job), ("Step", "State", "By", "Ended"), (46, 30, 12, 12))
    yield heading("Standing-pressure and vacuum tests")
    yield _tests(job)
    yield heading("Log book")
    yield table(log_book(facts, record), ("Field", "Entry"), (40, 60))
    yield paragraph(LOG_BOOK_SOURCE, "small")
    if record.amendments:
        yield heading("Amendments")
        amended = [
            (f"entry {one.entry}", one.text, one.by, values.moment(one.at))
            for one in record.amendments
        ]
        yield table(amended, ("To", "What", "By", "When"), (12, 50, 16, 22))


def _plan(plan: Mapping[str, Any]) -> str:
    """Return the plan's figures and warnings."""
    figures = [
        values.named_figure(name, value)
        for name, value in plan.items()
        if isinstance(value, int | float) and not isinstance(value, bool)
    ]
    warnings = plan.get("warnings")
    said = [one for one in warnings if isinstance(one, str)] if isinstance(warnings, list) else []
    return (pairs(figures) if figures else paragraph("Empty.")) + (bullets(said) if said else "")


def _five(job: Job) -> list[tuple[object, ...]]:
    texts = {item.id: item.text for step in job.procedure.steps for item in step.confirmations}
    rows: list[tuple[object, ...]] = []
    for identity in VENTING_CONFIRMATIONS:
        given = job.confirmed.get(identity)
        who, at = ("NOT CONFIRMED", "") if given is None else (given[1], values.duration(given[0]))
        rows.append((texts[identity], who, at))
    return rows


def _steps(job: Job) -> list[tuple[object, ...]]:
    rows: list[tuple[object, ...]] = []
    for number, (step, state) in enumerate(zip(job.procedure.steps, job.steps, strict=True), 1):
        words = {
            StepState.WAITING: "not begun",
            StepState.RUNNING: "begun, not ended",
            StepState.DONE: "done",
            StepState.SKIPPED: f"SKIPPED: {state.reason}",
        }[state.state]
        rows.append((f"{number}. {step.title}", words, state.by, values.duration(state.ended_s)))
        for gate in step.gates:
            record = job.gates.get(gate.id)
            if state.state is StepState.DONE and record is not None and record.met_s is not None:
                value = "" if record.value is None else f"{record.value:.4g} {gate.unit_words}"
                how = f"read off by {record.typed_by}" if record.typed_by else "from readings"
                rows.append((f"gate: {gate.condition}: {value.strip()}, {how}",))
    return rows


def _tests(job: Job) -> str:
    if not job.tests:
        return paragraph("None recorded.")
    rows: list[tuple[object, ...]] = []
    for one in job.tests:
        numbers = _numbers(one.numbers)
        rows.append((one.test, one.verdict.replace("_", " "), one.by, values.duration(one.at_s)))
        rows.append((" ".join(part for part in (one.reason, numbers, one.log) if part),))
    return table(rows, ("Test", "Verdict", "By", "At"), (30, 30, 20, 20))


def _numbers(numbers: Mapping[str, float | str | None]) -> str:
    """Return a test's numbers; bounds go in brackets behind what they bound."""
    parts = []
    for name, value in numbers.items():
        base = name.removesuffix("_lower").removesuffix("_upper")
        if base != name and f"{base}_lower" in numbers and base in numbers:
            continue
        words = f"{name.replace('_', ' ')} {_number(value)}"
        if f"{name}_lower" in numbers:
            lower, upper = numbers[f"{name}_lower"], numbers.get(f"{name}_upper")
            words += f" ({_number(lower)} to {_number(upper)})"
        parts.append(words)
    return ", ".join(parts)


def _number(value: float | str | None) -> str:
    if value is None:
        return values.DASH
    return value if isinstance(value, str) else f"{value:.4g}"


LOG_BOOK_SOURCE = (
    "Fields: (m) from memory of EN 378-4 / ISO 5149-4 style logs and ASHRAE 15 declarations, not "
    "checked against their text; (r) from a national list and the log fields of Regulation "
    "517/2014 that were read. R-744 is outside that regulation; its fields serve as a template."
)


def log_book(facts: ReportFacts, record: JobRecord) -> list[tuple[str, str]]:
    """Return the fields that refrigerant log books ask for, with what the job knows of each."""
    job = record.job
    log = facts.vent_log

    def written(identity: str) -> str:
        entries = job.written.get(identity, ())
        return "; then ".join(f"{entry.value} ({entry.by})" for entry in entries) or "not recorded"

    vented = "not known"
    if log is not None and log.view.mass_vented_kg is not None:
        vented = f"{values.bounded_mass(log.view.mass_vented_kg)}, computed, let out to the air"
    alarms = sum(event.kind in _ALARMS for each in facts.logs for event in each.view.events)
    tests = "; ".join(f"{one.test}: {one.verdict.replace('_', ' ')}" for one in job.tests)
    people = "; ".join(
        ", ".join(part for part in (one.name, one.certificate) if part) for one in job.head.people
    )
    ended = [state.ended_s for state in job.steps if state.ended_s is not None]
    out_of_use = values.duration(max(ended)) if ended else values.DASH
    return [
        ("Refrigerant (m, r)", "R-744, carbon dioxide"),
        ("Nature of the work (m, r)", job.head.order or "not recorded"),
        ("Quantity removed, and where it went (m, r)", vented),
        ("Quantity added: kg, new, reused or recycled, source (m, r)", written("charged_kg")),
        ("Analysis of reused refrigerant (m)", "not recorded"),
        ("Changes and replaced components (m)", written("parts")),
        ("Oil removed and added", written("oil_kg")),
        ("Results of tightness and pressure tests (m, r)", tests or "not recorded"),
        ("Test pressure and gas (m)", written("test_pressure")),
        ("Faults and alarms (r)", f"{alarms} in the readings, see the events"),
        ("Out of use (m, r)", f"at least {out_of_use} from the beginning of the job"),
        ("Open to air, minutes", written("open_minutes")),
        ("Person and firm, certificate (m, r)", people or "not recorded"),
    ]


_ALARMS = {
    EventKind.BELOW_TRIPLE_POINT,
    EventKind.SHELF,
    EventKind.DATA_STALE,
    EventKind.GAUGE_FAULT,
    EventKind.PRESSURE_HIGH,
    EventKind.HOLD_VOIDED,
    EventKind.TIME_BROKEN,
}


def _entry(job: Job, entry: ChainEntry) -> str:
    """Return an entry of the job's file in words."""
    body = entry.body
    if entry.kind in ITEM_NAMES:
        try:
            return describe(job.procedure, item_from_plain(entry.kind, body))
        except (Co2ventError, KeyError):
            return f"{entry.kind}: can't be read"
    return {
        "job": "The job was begun",
        "plan": "The plan was added",
        "signature": f"Signed by {body.get('name')}",
        "amendment": f"Entry {body.get('entry')} amended by {body.get('by')}: {body.get('text')}",
        "recovered": f"A torn last line of {body.get('bytes')} bytes was set aside",
    }.get(entry.kind, entry.kind)


def _events(facts: ReportFacts) -> str:
    parts: list[str] = []
    if facts.record is not None:
        done = [
            (entry.number, values.moment(entry.at), _entry(facts.record.job, entry))
            for entry in facts.record.chain.entries
        ]
        parts += [heading("What was done"), table(done, ("Entry", "When", "What"), (7, 23, 70))]
    for log in facts.logs:
        events = in_order_of_time(log.view.events)
        if log.name in facts.test_names:
            # a test is judged by itself: prompts for a vent would read as if CO2 were inside
            events = [event for event in events if event.kind not in _OF_A_VENT]
        rows = [
            (values.duration(event.at_s), values.event_words(event))
            for event in events[:MAX_EVENTS]
        ]
        if rows:
            parts += [
                heading(f"Events in {log.name}"),
                table(rows, ("Log time", "Event"), (14, 86)),
            ]
        if len(events) > MAX_EVENTS:
            parts.append(paragraph(f"And {len(events) - MAX_EVENTS} more, in the log itself."))
        if log.rejections:
            refused = [(one.line, one.reason) for one in log.rejections[:MAX_REJECTED]]
            parts += [
                heading(f"Rows of {log.name} that could not be read: {len(log.rejections)}"),
                table(refused, ("Line", "Reason"), (14, 86)),
            ]
    return "".join(parts)
