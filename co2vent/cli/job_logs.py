"""Readings logs in a job: fed to the step's gates, or judged as a test."""

import math
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path

from co2vent.errors import RefusedInputError
from co2vent.guidance import job_items as items
from co2vent.guidance.job import JobEvent, JobEventKind
from co2vent.guidance.job_gates import TESTED
from co2vent.guidance.job_readings import observe
from co2vent.guidance.job_tests import TestOptions, judge_test, refuse_simulated
from co2vent.guidance.session import begin, view
from co2vent.readings.log_file import LogFile, named_log
from co2vent.readings.reading import Reading
from co2vent.store.job_file import JobFile

LOOK_S = 1.0  # gates are looked at once a second of log time


def feed_log(
    job_file: JobFile, path: Path, now: datetime, to_s: float | None, by: str
) -> Iterator[tuple[JobEvent, ...]]:
    """Add the log to the job and show it to the running step's gates, newest reading at `now`."""
    log = _fitting(job_file, path)
    yield _say_other_section(job_file, log, now, by)
    yield _attach(job_file, path, log, now)
    end_s = float(log.readings.at_s[-1]) if to_s is None else to_s
    shift_s = job_file.at_s(now) - end_s
    session = begin(log.setup)
    looked_s = -math.inf
    for item in log.items():
        at_s = getattr(item, "at_s", None)
        if at_s is not None and at_s > end_s:
            break
        session.take(item)
        if at_s is not None and (at_s >= looked_s + LOOK_S or at_s < looked_s):
            looked_s = at_s
            events = job_file.advance(observe(view(session), at_s + shift_s), now)
            if events:
                yield events
    yield job_file.advance(observe(view(session), end_s + shift_s), now)
    job = job_file.job
    for gate in () if job.step is None else job.step.gates:
        record = job.gates.get(gate.id)
        if (
            gate.quantity not in TESTED
            and record is not None
            and record.met_s is not None
            and not record.typed_by
            and record.met_s < job_file.at_s(now) - 1.0
        ):  # met earlier in the log and still met at its end: that is what counts now
            value = record.value if record.value is not None else math.nan
            yield job_file.advance(items.GateMet(job_file.at_s(now), gate.id, value), now)


def judge_log(
    job_file: JobFile, test: str, path: Path, now: datetime, by: str, options: TestOptions
) -> Iterator[tuple[JobEvent, ...]]:
    """Judge the log as a `standing` or `vacuum` test and put the verdict into the job."""
    log = _fitting(job_file, path)
    yield _say_other_section(job_file, log, now, by)
    readings = [item for item in log.items() if isinstance(item, Reading)]
    at_s = job_file.at_s(now)
    result = judge_test(test, readings, log.setup, options, at_s=at_s, by=by, log=path.name)
    yield _attach(job_file, path, log, now)
    yield job_file.advance(result, now)


def _fitting(job_file: JobFile, path: Path) -> LogFile:
    """Read a log that can say something of the job as it stands.

    What was read before the job went back says nothing of now, whenever it is added again.
    """
    log = named_log(path)
    refuse_simulated(job_file.job, log.setup)
    went_back_s = job_file.job.went_back_s
    added_s = job_file.log_added_s(path)
    if went_back_s is not None and added_s is not None and added_s <= went_back_s:
        raise RefusedInputError(
            f"{path}: in this job since before it went back to an earlier step; only readings made "
            "since prove anything: add a new log"
        )
    return log


def _say_other_section(
    job_file: JobFile, log: LogFile, now: datetime, by: str
) -> tuple[JobEvent, ...]:
    """Write down, and say, that a log names another section than the job.

    Names are written in many ways: a person must tell whether it is the same section.
    """
    mine, other = job_file.job.head.section, log.setup.section_name
    if not mine or not other or _plain(mine) in _plain(other) or _plain(other) in _plain(mine):
        return ()
    at_s = job_file.at_s(now)
    text = f"this log names another section, {other!r}; the job is of {mine!r}: see that it fits"
    job_file.advance(items.Note(at_s, text, by), now)
    return (JobEvent(at_s, JobEventKind.CAUTION, text),)


def _plain(name: str) -> str:
    return " ".join(name.casefold().split())


def _attach(job_file: JobFile, path: Path, log: LogFile, now: datetime) -> tuple[JobEvent, ...]:
    return job_file.attach_log(path, len(log.readings), log.setup.simulated, now)
