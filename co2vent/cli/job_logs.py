"""Readings logs in a job: fed to the step's gates, or judged as a test."""

import argparse
import math
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path

from co2vent.errors import RefusedInputError
from co2vent.guidance import job_items as items
from co2vent.guidance.job import JobEvent
from co2vent.guidance.job_readings import observe
from co2vent.guidance.session import begin, view
from co2vent.guidance.steps import TESTED
from co2vent.inference.outcome import Bounds
from co2vent.inference.standing_test import standing_test
from co2vent.inference.vacuum_rise import vacuum_rise_test
from co2vent.readings.log_file import LogFile, read_log
from co2vent.readings.reading import Reading
from co2vent.store.job_file import JobFile
from co2vent.units import ZERO_CELSIUS_K

LOOK_S = 1.0  # gates are looked at once a second of log time


def feed_log(
    job_file: JobFile, path: Path, now: datetime, to_s: float | None
) -> Iterator[tuple[JobEvent, ...]]:
    """Add the log to the job and show it to the running step's gates, newest reading at `now`."""
    log = read_log(path)
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
    job_file: JobFile,
    test: str,
    path: Path,
    now: datetime,
    by: str,
    args: argparse.Namespace,
) -> Iterator[tuple[JobEvent, ...]]:
    """Judge the log as a `standing` or `vacuum` test and put the verdict into the job."""
    log = read_log(path)
    readings = [item for item in log.items() if isinstance(item, Reading)]
    at_s = job_file.at_s(now)
    if test == "standing":
        standing = standing_test(
            readings,
            log.setup,
            begin_s=args.begin_s,
            gauge_seen_moving=args.gauge_seen_moving,
        )
        verdict, reason = standing.verdict.value, f"{standing.reason} {standing.next_step}"
        numbers = {
            "gas": log.setup.gas.value,
            "pressure_bar_a": standing.pressure_pa / 1e5,
            "minutes": (standing.end_s - standing.begin_s) / 60.0,
            "temperature_change_K": standing.temperature_change_k,
            **_bounds("loss_mbar_per_h", standing.loss_pa_per_s, 36.0),
            **_bounds("loss_g_per_h", standing.loss_kg_per_s, 3.6e6),
            "allowed_mbar_per_h": standing.allowed_pa_per_s * 36.0,
        }
    else:
        if all(reading.vacuum_pa is None for reading in readings):
            raise RefusedInputError(f"{path}: no vacuum column; a rise test needs one")
        metal = args.coldest_metal_c
        vacuum = vacuum_rise_test(
            readings,
            begin_s=args.begin_s,
            coldest_metal_k=None if metal is None else metal + ZERO_CELSIUS_K,
            volume_m3=log.setup.section_volume_m3,
        )
        verdict, reason = vacuum.verdict.value, f"{vacuum.reason} {vacuum.next_step}"
        numbers = {
            "begin_Pa": vacuum.begin_pa,
            "end_Pa": vacuum.end_pa,
            "minutes": (vacuum.end_s - vacuum.begin_s) / 60.0,
            **_bounds("late_rise_Pa_per_min", vacuum.late_pa_per_s, 60.0),
            "water_Pa": vacuum.water_pa,
        }
    yield _attach(job_file, path, log, now)
    name = job_file.job.logs[-1].name
    result = items.TestResult(at_s, test, verdict, reason.strip(), by, name, numbers)
    yield job_file.advance(result, now)


def _attach(job_file: JobFile, path: Path, log: LogFile, now: datetime) -> tuple[JobEvent, ...]:
    return job_file.attach_log(path, len(log.readings), log.setup.simulated, now)


def _bounds(name: str, bounds: Bounds | None, factor: float) -> dict[str, float | str | None]:
    if bounds is None:
        return {}
    return {
        f"{name}{ending}": None if value is None else value * factor
        for ending, value in (
            ("", bounds.estimate),
            ("_lower", bounds.lower),
            ("_upper", bounds.upper),
        )
    }
