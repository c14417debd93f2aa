"""From files to facts: a readings log, or a job with the logs in its folder."""

import hashlib
from collections.abc import Callable, Mapping, Sequence
from datetime import datetime
from pathlib import Path

import numpy as np

from co2vent import __version__
from co2vent.errors import Co2ventError, SourceUnavailableError
from co2vent.guidance.assess import assess_readings
from co2vent.readings.arrays import Floats
from co2vent.readings.log_file import decode_log, refusals_named
from co2vent.report.facts import LogFacts, ReportFacts, thin_runs
from co2vent.store.job_record import is_job, read_job
from co2vent.store.notes import read_notes
from co2vent.store.rows import torn_bytes


def log_facts(
    path: Path,
    columns: Sequence[str] | None = None,
    overrides: Mapping[str, str] | None = None,
) -> LogFacts:
    """Return what the core says of the log at `path`; the digest is of the bytes that were read.

    Raises:
        SourceUnavailableError: it can't be opened.
        RefusedInputError: it is not a log that can be read with certainty.
    """
    try:
        data = path.read_bytes()
    except OSError as error:
        raise SourceUnavailableError(f"{path}: {error.strerror}; check the name") from None
    with refusals_named(path):
        log = decode_log(data, columns, overrides)
    readings = log.readings
    at_s = readings.at_s
    recorded = (log.metadata.get(key, "") for key in ("recorded_utc", "recorded_from"))
    notes, notes_problem = read_notes(path)
    usual_s = float(np.median(np.diff(at_s))) if len(at_s) > 1 else 1.0
    return LogFacts(
        name=path.name,
        sha256=hashlib.sha256(data).hexdigest(),
        view=assess_readings(log.setup, log.items()),
        runs=thin_runs(readings.readings(), len(at_s), usual_s),
        rejections=log.rejections,
        torn_bytes=torn_bytes(path),
        coldest_clamp_k=_extreme(np.min, readings.line_temperature_k, readings.upper_temperature_k),
        most_room_co2_ppm=_extreme(np.max, readings.room_co2_ppm),
        recorded=", ".join(part for part in recorded if part),
        notes=notes,
        notes_problem=notes_problem,
        zero_given="zero_reading" in log.metadata or "zero_reading" in (overrides or {}),
    )


def _extreme(of: Callable[[Floats], np.float64], *columns: Floats | None) -> float | None:
    """Return the extreme of what was measured in the columns; `None` where nothing was."""
    measured = [column[np.isfinite(column)] for column in columns if column is not None]
    values = np.concatenate(measured) if measured else np.array([])
    return float(of(values)) if len(values) else None


def report_facts(
    path: Path,
    now: datetime,
    columns: Sequence[str] | None = None,
    overrides: Mapping[str, str] | None = None,
) -> ReportFacts:
    """Return the facts of a readings log or of a job. A job's unreadable logs are named in it.

    Raises:
        Co2ventError: a lone log can't be read, or the job can't.
    """
    made_at = now.isoformat(sep=" ", timespec="minutes")
    if not is_job(path):
        log = log_facts(path, columns, overrides)
        return ReportFacts(made_at=made_at, version=__version__, logs=(log,))
    record = read_job(path)
    logs: list[LogFacts] = []
    missing: list[str] = []
    for added, log_path in zip(record.job.logs, record.log_paths(), strict=True):
        try:
            found = log_facts(log_path)
        except Co2ventError as error:
            missing.append(str(error))
            continue
        if found.sha256 != added.sha256:
            missing.append(f"{added.name}: changed since it was added (sha256 {added.sha256})")
        logs.append(found)
    return ReportFacts(
        made_at=made_at,
        version=__version__,
        logs=tuple(logs),
        record=record,
        missing_logs=tuple(missing),
    )
