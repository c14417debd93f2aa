"""`co2vent assess FILE…`: the verdict on recorded vents."""

import argparse
import json
import os
import sys
from collections.abc import Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass

from co2vent.cli.files import log_path
from co2vent.cli.metadata_options import add_metadata_options, column_names, metadata_overrides
from co2vent.errors import Co2ventError

MANY = 4  # from so many files on, starting worker processes pays


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options of `assess`."""
    parser.add_argument(
        "files", nargs="+", metavar="FILE", help="a readings log (CSV), or sample:NAME"
    )
    parser.add_argument("--json", action="store_true", help="one JSON object per file, one a line")
    add_metadata_options(parser)


@dataclass(frozen=True, slots=True)
class _Job:
    file: str
    overrides: dict[str, str]
    columns: Sequence[str] | None


def assess_file(job: _Job) -> dict[str, object]:
    """Assess one log; a refused one gives its error in one line."""
    from co2vent.guidance.assess import assess_readings, assessment_json
    from co2vent.readings.log_decoder import ROW_DAMAGED
    from co2vent.readings.log_file import read_log
    from co2vent.store.recovery import Damage
    from co2vent.store.rows import torn_bytes

    try:
        log = read_log(log_path(job.file), columns=job.columns, overrides=job.overrides)
        seen = assess_readings(log.setup, log.items())
    except Co2ventError as error:
        # the file is named beside the error
        reason = " ".join(str(error).split()).removeprefix(f"{job.file}: ")
        return {"file": job.file, "error": reason}
    except OSError as error:
        return {"file": job.file, "error": f"cannot be read: {error.strerror or error}"}
    rejected = [(rejection.line, rejection.reason) for rejection in log.rejections]
    damage = Damage(
        damaged_lines=sum(reason == ROW_DAMAGED for _, reason in rejected),
        torn_bytes=torn_bytes(log_path(job.file)),
    )
    return {
        **assessment_json(seen, job.file, rejected),
        "damaged_rows": damage.damaged_lines,
        "torn_bytes": damage.torn_bytes,
        "damage": damage.text or None,
        "unknown_metadata": list(log.unknown_metadata),
        "dropped_cells": dict(log.bad_cells),
    }


def run(args: argparse.Namespace) -> int:
    """Assess every file, in the order given."""
    overrides, columns = metadata_overrides(args), column_names(args)
    jobs = [_Job(file, overrides, columns) for file in args.files]
    failed = False
    show_progress = sys.stderr.isatty() and len(jobs) > 1
    workers = min(os.cpu_count() or 1, len(jobs))
    if len(jobs) >= MANY and workers > 1:
        with ProcessPoolExecutor(workers) as pool:
            results = pool.map(assess_file, jobs, chunksize=max(1, len(jobs) // (workers * 8)))
            for done, result in enumerate(results, 1):
                failed |= _show(result, args)
                if show_progress:
                    _progress(done, len(jobs))
    else:
        for done, job in enumerate(jobs, 1):
            failed |= _show(assess_file(job), args)
            if show_progress:
                _progress(done, len(jobs))
    if show_progress:
        print(file=sys.stderr)
    return 2 if failed else 0


def _progress(done: int, total: int) -> None:
    width = 30
    filled = width * done // total
    print(f"\r[{'#' * filled}{'.' * (width - filled)}] {done}/{total}", end="", file=sys.stderr)


def _show(result: dict[str, object], args: argparse.Namespace) -> bool:
    """Print one result; return whether the file was refused."""
    refused = "error" in result
    if args.json:
        if refused:
            print(f"co2vent: {result['file']}: {result['error']}", file=sys.stderr)
        if not refused or len(args.files) > 1:
            print(json.dumps(result, allow_nan=False), flush=True)
        return refused
    if refused:
        print(f"co2vent: {result['file']}: {result['error']}", file=sys.stderr)
        return True
    from co2vent.guidance.assessment_text import assessment_lines

    print("\n".join(assessment_lines(result)), flush=True)
    return False
