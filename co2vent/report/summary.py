"""The first page: who, what, when, the trace, each hold's verdict with numbers, signatures."""

from collections import Counter
from collections.abc import Callable, Sequence

from co2vent.guidance.assess import final_of
from co2vent.guidance.job import Job
from co2vent.guidance.job_items import GoBack
from co2vent.guidance.procedure_rules import cautions
from co2vent.guidance.session import View
from co2vent.inference.amounts import WARMING_W
from co2vent.inference.outcome import HoldAssessment, Instruction
from co2vent.readings.reading import Gas, Setup
from co2vent.report import values
from co2vent.report.facts import LogFacts, ReportFacts
from co2vent.report.markup import heading, pairs, paragraph, table

TraceMarkup = Callable[[LogFacts], str]

NEWEST_HOLDS = 4  # with their reasons about as many as the trace leaves room for on a page
SIGNED = (
    "A signature here is a typed name with its time over a digest of all before it. The digest "
    "shows later changes to whoever kept this print; it does not prove who typed the name."
)
NO_RELEASE = (
    "This record states what the readings show. It does not release the section for work: "
    "that is for the responsible person, with both bleeds open."
)


def summary(facts: ReportFacts, trace: TraceMarkup, newest: int = NEWEST_HOLDS) -> str:
    """Return the first page's markup, with the `newest` holds where there are more."""
    log = facts.vent_log
    parts = [f"<h1>{_title(facts)}</h1>", pairs(_head(facts)), _left_out(facts)]
    if log is None:
        parts.append(paragraph("No vent readings in this record: nothing shows what is inside."))
    else:
        parts.append(log_part(log, trace, newest))
    parts.append(_signatures(facts))
    return "".join(parts)


def _left_out(facts: ReportFacts) -> str:
    """Return what was skipped or done again, over the whole width: a reader must not miss it."""
    if facts.record is None:
        return ""
    job = facts.record.job
    less = cautions(job.procedure)
    said = [paragraph(f"THE STEPS OF THIS SITE ASK LESS. {' '.join(less)}")] if less else []
    said += [paragraph(f"LEFT OUT: {'; '.join(job.skipped)}.")] if job.skipped else []
    said += [
        paragraph(
            f"WENT BACK to {event.item.id!r}: {event.item.reason}. What was read before it says "
            "nothing of after it."
        )
        for event in job.history
        if isinstance(event.item, GoBack)
    ]
    return "".join(said)


def log_part(log: LogFacts, trace: TraceMarkup, newest: int = NEWEST_HOLDS) -> str:
    """Return verdict, figures, trace and holds of one log; of a test with other gas the trace."""
    if log.view.setup.gas is not Gas.CO2:
        return trace(log)
    head = heading("Holds (95 % bounds)")
    return _verdict(log) + pairs(_figures(log)) + trace(log) + head + _newest_holds(log, newest)


def _title(facts: ReportFacts) -> str:
    return "Record of a CO<sub>2</sub> (R-744) section " + (
        "job" if facts.record is not None else "vent"
    )


def _head(facts: ReportFacts) -> list[tuple[str, object]]:
    log = facts.vent_log
    entries: list[tuple[str, object]] = []
    if facts.record is not None:
        head = facts.record.job.head
        people = "; ".join(
            ", ".join(part for part in (one.name, one.role, one.certificate) if part)
            for one in head.people
        )
        entries += [
            ("Site, unit", ", ".join(part for part in (head.site, head.unit) if part)),
            ("Section", head.section),
            ("Drawing", head.drawing),
            ("Work", head.order),
            ("People", people),
            ("Begun", f"{facts.record.started:%Y-%m-%d %H:%M %Z}"),
            ("Steps", _steps(facts.record.job)),
        ]
    else:
        entries += [("Section", facts.section), ("Readings log", "" if log is None else log.name)]
    if log is not None:
        setup = log.view.setup
        entries += [
            *([("Recorded", log.recorded)] if log.recorded else []),
            ("Section volume", _volume(log.view)),
            ("Ambient", _ambient(setup)),
            ("Gauge", _gauge(setup)),
            ("Zero", _zero(log)),
            ("Relief, rated", _ratings(setup)),
            ("Metal minimum", _metal(log.view)),
        ]
    entries.append(("Printed", f"{facts.made_at}, co2vent {facts.version}"))
    return entries


def _steps(job: Job) -> str:
    ended = sum(record.ended_s is not None for record in job.steps)
    return f"{ended} of {len(job.steps)} ended, {len(job.skipped)} of them left out"


def _litres(volume_m3: float | None) -> str:
    return "not given" if volume_m3 is None else f"{volume_m3 * 1e3:.3g} L"


def _volume(view: View) -> str:
    told = _litres(view.setup.section_volume_m3)
    found = view.volume_by_bore_m3
    if found is None:
        return told
    return f"{told}; by the fall of vapour through the bore at most {_litres(found.upper)}"


def _metal(view: View) -> str:
    told = values.temperature(view.setup.metal_minimum_temperature_k)
    share = view.metal_below_minimum
    if share is None or share.upper == 0.0:
        return told
    if share.estimate is None:
        return f"{told}; how much of the metal was below it at the end is not known"
    low, high = 100.0 * (share.lower or 0.0), 100.0 * (share.upper or 1.0)
    return (
        f"{told}; below it at the end, by two clamps: about {100.0 * share.estimate:.0f} % of the "
        f"metal ({low:.0f} to {high:.0f} %)"
    )


def _ambient(setup: Setup) -> str:
    altitude = "" if setup.altitude_m is None else f", altitude {setup.altitude_m:.0f} m"
    how = " (assumed: sea level)" if setup.ambient_pressure_assumed else " (given)"
    return f"{setup.ambient_pressure_pa / 100:.0f} mbar{altitude}{how}"


def _gauge(setup: Setup) -> str:
    if setup.gauge_span_pa is None:
        return "range and class not given"
    if setup.gauge_accuracy_fraction is None:
        return f"span {setup.gauge_span_pa / 1e5:.4g} bar, class not given"
    return (
        f"span {setup.gauge_span_pa / 1e5:.4g} bar, ±{setup.gauge_accuracy_fraction * 100:.3g} % "
        f"= ±{setup.gauge_error_pa / 1e5:.2f} bar"
    )


def _zero(log: LogFacts) -> str:
    if not log.zero_given:
        return "not given"
    return f"{log.view.setup.zero_offset_pa / 1e5:+.3f} bar, subtracted"


def _ratings(setup: Setup) -> str:
    ambient_pa = setup.ambient_pressure_pa
    relief = values.gauge_pressure(setup.relief_pressure_pa, ambient_pa)
    rated = values.gauge_pressure(setup.section_max_pressure_pa, ambient_pa)
    return f"relief {relief}, rated {rated}"


def _verdict(log: LogFacts) -> str:
    final = final_of(log.view)
    instruction = values.INSTRUCTIONS[Instruction(final.instruction)]
    words = values.CHARGES[final.charge].capitalize()
    return (
        '<table class="verdict" border="1" cellspacing="0" cellpadding="4" width="100%"><tr><td>'
        f"<b>At the end of the record: {words}. Next: {instruction}.</b>"
        + paragraph(final.reason)
        + paragraph(NO_RELEASE, "small")
        + "</td></tr></table>"
    )


def _figures(log: LogFacts) -> list[tuple[str, object]]:
    view = log.view
    ambient_pa = view.setup.ambient_pressure_pa
    return [
        ("Triple point", values.gauge_pressure(view.triple_point_pa, ambient_pa)),
        ("Stop pressure", values.gauge_pressure(view.stop_pressure_pa, ambient_pa)),
        ("Lowest pressure", values.gauge_pressure(view.minimum_pressure_pa, ambient_pa)),
        ("Below triple point", _below(view)),
        ("CO2 let out", _mass(view)),
        ("Coldest clamp", values.temperature(log.coldest_clamp_k)),
        ("Vapour only since", values.duration(view.vapor_only_since_s)),
        ("Most CO2 in the air", _air(log.most_room_co2_ppm)),
    ]


def _air(ppm: float | None) -> str:
    return "not recorded" if ppm is None else f"{ppm:.0f} ppm"


def _below(view: View) -> str:
    before = view.seconds_below_triple_point_before_vapor_only
    return (
        f"{values.duration(view.seconds_below_triple_point)}, of which "
        f"{values.duration(before)} before vapour only was shown"
    )


def _mass(view: View) -> str:
    if view.mass_vented_kg is None:
        return "not known: section volume not given"
    return f"{values.bounded_mass(view.mass_vented_kg)}, computed"


def _newest_holds(log: LogFacts, newest: int) -> str:
    """Return the holds that decide; earlier ones, where there are many, stand on a later page."""
    holds = log.view.holds
    if len(holds) <= newest:
        return hold_table(log, holds)
    earlier = holds[:-newest]
    counts = Counter(values.CHARGES[hold.charge] for hold in earlier)
    said = ", ".join(f"{count} × {words}" for words, count in counts.items())
    return hold_table(log, holds[-newest:]) + paragraph(
        f"Before them {len(earlier)} holds ({said}): all are listed on a later page."
    )


def hold_table(log: LogFacts, holds: Sequence[HoldAssessment]) -> str:
    """Return holds with their numbers, bounds and reasons."""
    rows: list[tuple[object, ...]] = []
    for hold in holds:
        rows += _hold_rows(hold, log.view.setup)
    if not rows:
        return paragraph("None: the record has no closed time.")
    head = ("Hold", "From, length", "Pressure", "Inside", "Leak-by", "Liquid", "Dry ice", "Detects")
    return table(rows, head, (6, 12, 19, 11, 9, 17, 15, 11))


def _hold_rows(hold: HoldAssessment, setup: Setup) -> list[tuple[object, ...]]:
    ambient_pa = setup.ambient_pressure_pa
    liquid = (
        values.bounded_mass(hold.liquid_kg)
        if hold.liquid_kg is not None
        else values.bounded_share(hold.liquid_volume_fraction)
    )
    running = "" if hold.closed else ", running at the end"
    row = (
        hold.number,
        f"{values.duration(hold.start_s)}, {values.duration(hold.end_s - hold.start_s)}{running}",
        f"{values.gauge_pressure(hold.start_pressure_pa, ambient_pa)} to "
        f"{values.gauge_pressure(hold.end_pressure_pa, ambient_pa)}",
        values.CHARGES[hold.charge],
        values.LEAKS[hold.leak_by],
        liquid,
        values.bounded_mass(hold.dry_ice_kg),
        values.mass(hold.detection_limit_kg),
    )
    why = [f"{values.INSTRUCTIONS[hold.instruction].capitalize()}. {hold.reason}"]
    if hold.slope_pa_per_s is not None and hold.slope_pa_per_s.estimate is not None:
        slope = values.rounded(hold.slope_pa_per_s.estimate * 0.6)
        why.append(f"Late slope {slope} mbar/min.")
    if hold.dry_ice_kg_if_vented:
        why.append(f"Dry ice if vented now: {values.mass(hold.dry_ice_kg_if_vented)}.")
    if hold.boil_off_s is not None:
        warmed = ""
        if hold.boil_off_warmed_s is not None:
            warmed = (
                f", with {WARMING_W:.0f} W of gentle warmth not before "
                f"{values.duration(hold.boil_off_warmed_s)}"
            )
        why.append(
            "Half of the simulated sections that rise like this are not boiled off before "
            f"{values.duration(hold.boil_off_s)}{warmed}."
        )
    return [row, (" ".join(why),)]


def _signatures(facts: ReportFacts) -> str:
    rows: list[tuple[object, ...]] = []
    note = ""
    record = facts.record
    if facts.simulated:
        note = "SIMULATED PRACTICE: never signed."
    elif record is None:
        note = "A readings log alone is not signed; a job is."
    elif not record.signatures:
        note = "Not signed."
    if record is not None:
        last = len(record.chain.entries)
        rows += [
            (
                one.name,
                one.role,
                values.moment(one.at),
                f"entry {one.entry} over {one.over[:16]}…"
                + (f", {last - one.entry} entries since" if last > one.entry else ""),
            )
            for one in record.signatures
        ]
    parts = [heading("Signatures and digests")]
    if rows:
        parts.append(table(rows, ("Name", "Role", "Time", "Signed over"), (24, 20, 26, 30)))
    if note:
        parts.append(paragraph(note))
    return "".join(parts) + _digests(facts)


def _digests(facts: ReportFacts) -> str:
    lines = []
    if facts.record is not None:
        if facts.record.signatures:
            lines.append(SIGNED)
        chain = facts.record.chain
        held = facts.record.problem or "every entry matches its digest"
        lines.append(f"Job, {len(chain.entries)} entries, last digest {chain.digest} ({held})")
        if chain.torn:
            lines.append(f"The file ends in a torn line of {len(chain.torn)} bytes, left out.")
    vent = facts.vent_log
    if vent is not None and vent.sha256:
        lines.append(f"{vent.name}: sha256 {vent.sha256}")
    lines += [f"Not read: {missing}" for missing in facts.missing_logs]
    return "".join(paragraph(line, "small") for line in lines)
