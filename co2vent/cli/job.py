"""`co2vent job …`: the whole job from a command line: begin, confirm, read, test, skip, sign."""

import argparse
import getpass
import json
import sys
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

from co2vent.errors import RefusedInputError
from co2vent.guidance import job_items as items
from co2vent.guidance.job import GaugeRecord, JobEvent, JobEventKind, JobHead, Person
from co2vent.guidance.job_gates import TESTED
from co2vent.guidance.job_tests import TestOptions
from co2vent.guidance.procedure_rules import cautions
from co2vent.guidance.procedure_text import MAX_BYTES, default_procedure_text, read_procedure
from co2vent.guidance.steps import POINTS_HOLD_S
from co2vent.store.job_file import JobFile
from co2vent.store.job_record import STEPS_FILE, folder_name, read_job
from co2vent.units import ZERO_CELSIUS_K

#: Readings that met a gate longer ago say nothing of now, read or typed. This program's choice.
OLD_S: Final = 900.0
#: What a test or the gauge's zero says lasts.
LASTING: Final = TESTED | {"zero_offset"}

Action = Callable[[argparse.Namespace], int]


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the actions of `job`."""
    actions = parser.add_subparsers(dest="action", metavar="ACTION", required=True)

    def action(name: str, summary: str, run_it: Action, by: bool = True) -> argparse.ArgumentParser:
        sub = actions.add_parser(name, help=summary, description=summary[0].upper() + summary[1:])
        sub.set_defaults(run_action=run_it)
        if name not in ("begin", "steps", "check-steps"):
            sub.add_argument("folder", metavar="FOLDER", type=Path, help="the job's folder")
        if by:
            sub.add_argument("--by", default=_user(), metavar="NAME", help="who does it")
        return sub

    begin = action("begin", "begin a job in a new folder; prints the folder", _begin, by=False)
    begin.add_argument("--folder", type=Path, metavar="FOLDER", help="else named by time, section")
    begin.add_argument("--in", dest="parent", type=Path, default=Path(), metavar="FOLDER",
                       help="where to put it")  # fmt: skip
    for name in ("site", "unit", "section", "drawing", "order"):
        begin.add_argument(f"--{name}", default="", metavar="TEXT")
    begin.add_argument("--person", action="append", default=[], metavar="NAME,ROLE,CERTIFICATE")
    begin.add_argument("--gauge", action="append", default=[],
                       metavar="NAME,SERIAL,CLASS,RANGE,CALIBRATED,ZERO")  # fmt: skip
    begin.add_argument("--steps", type=Path, metavar="FILE", help="a site's own steps (TOML)")
    begin.add_argument("--plan", type=Path, metavar="FILE", help="what plan --json gave")
    begin.add_argument("--simulated", action="store_true", help="practice: never signed")

    action("show", "where the job stands and what the step waits for", _show, by=False)
    confirm = action("confirm", "say yes to confirmations of the step", _confirm)
    confirm.add_argument("ids", nargs="+", metavar="ID")
    withdraw = action("withdraw", "take a confirmation back", _withdraw)
    withdraw.add_argument("id", metavar="ID")
    withdraw.add_argument("--reason", required=True)
    write = action("write", "write an entry down", _write)
    write.add_argument("id", metavar="ID")
    write.add_argument("value", metavar="TEXT")
    typed = action("value", "give a gate's value read off an instrument, in its unit", _typed)
    typed.add_argument("id", metavar="ID")
    typed.add_argument("value", type=float, metavar="NUMBER")
    valve = action("valve", "put a valve on the isolation list", _valve)
    valve.add_argument("name", metavar="VALVE")
    valve.add_argument("position", choices=("shut", "open"))
    valve.add_argument("--lock", default="")
    valve.add_argument("--tag", default="")
    read = action("read", "add a readings log and let it decide the step's gates", _read)
    read.add_argument("log", type=Path, metavar="LOG")
    read.add_argument("--to-s", type=float, metavar="SECONDS", help="only up to this log time")
    test = action("test", "judge a standing-pressure or vacuum-rise log", _test)
    test.add_argument("test", choices=("standing", "vacuum"))
    test.add_argument("log", type=Path, metavar="LOG")
    test.add_argument("--begin-s", type=float, metavar="SECONDS", help="when the hold began")
    test.add_argument("--coldest-metal-c", type=float, metavar="DEGC")
    test.add_argument("--gauge-seen-moving", action="store_true")
    action("done", "end the step", _done)
    skip = action("skip", "leave the step out", _skip)
    skip.add_argument("--reason", required=True)
    back = action("back", "go back to an earlier step", _back)
    back.add_argument("id", metavar="STEP")
    back.add_argument("--reason", required=True)
    note = action("note", "add a note", _note)
    note.add_argument("text", metavar="TEXT")
    amend = action("amend", "add a later word on an entry", _amend)
    amend.add_argument("entry", type=int, metavar="NUMBER")
    amend.add_argument("text", metavar="TEXT")
    sign = action("sign", "sign all entries so far", _sign)
    sign.add_argument("--role", default="", metavar="TEXT")
    steps = action("steps", "write the steps to a file that a site can edit", _steps, by=False)
    steps.add_argument("out", type=Path, metavar="FILE")
    check = action("check-steps", "check a site's own steps", _check_steps, by=False)
    check.add_argument("file", type=Path, metavar="FILE")


def _user() -> str:
    """Return the account's name; a system without accounts has none, and `--by` must be given."""
    try:
        return getpass.getuser()
    except (OSError, KeyError, ImportError):
        return ""


def run(args: argparse.Namespace) -> int:
    """Do one action on a job."""
    run_action: Action = args.run_action
    return run_action(args)


def _now() -> datetime:
    return datetime.now(UTC).astimezone()


def _file_text(path: Path) -> str:
    try:
        with path.open("rb") as file:
            return file.read(MAX_BYTES + 1).decode("utf-8")
    except OSError as error:
        raise RefusedInputError(f"{path}: {error.strerror}; check the name") from None
    except UnicodeDecodeError:
        raise RefusedInputError(f"{path}: not UTF-8 text; save it as UTF-8") from None


def _begin(args: argparse.Namespace) -> int:
    now = _now()
    head = JobHead(
        site=args.site,
        unit=args.unit,
        section=args.section,
        drawing=args.drawing,
        order=args.order,
        people=tuple(
            Person(**dict(zip(("name", "role", "certificate"), parts, strict=False)))
            for parts in _parts(args.person, 3, "--person")
        ),
        gauges=tuple(
            GaugeRecord(
                **dict(
                    zip(
                        ("name", "serial", "accuracy", "range", "calibrated", "zero"),
                        parts,
                        strict=False,
                    )
                )
            )
            for parts in _parts(args.gauge, 6, "--gauge")
        ),
        simulated=args.simulated,
    )
    steps = default_procedure_text() if args.steps is None else _file_text(args.steps)
    plan = None
    if args.plan is not None:
        try:
            plan = json.loads(_file_text(args.plan))
        except ValueError:
            plan = None
        if not isinstance(plan, dict):
            raise RefusedInputError(f"{args.plan}: not a plan; give what plan --json printed")
    folder = args.folder or args.parent / folder_name(args.section, now)
    name = STEPS_FILE if args.steps is None else str(args.steps)
    job_file = JobFile.create(folder, head, steps, now, plan, name)
    for caution in cautions(job_file.job.procedure):
        print(f"caution: {caution}", file=sys.stderr)
    print(folder)
    return 0


def _parts(texts: list[str], most: int, option: str) -> list[list[str]]:
    found = [[part.strip() for part in text.split(",")] for text in texts]
    if any(len(parts) > most or not parts[0] for parts in found):
        raise RefusedInputError(f"{option}: at most {most} parts with commas between, a name first")
    return found


def _show(args: argparse.Namespace) -> int:
    record = read_job(args.folder)
    job = record.job
    if job.simulated:
        print("SIMULATED PRACTICE")
    if record.problem:
        print(f"Does not hold together: {record.problem}")
    for number, (step, state) in enumerate(zip(job.procedure.steps, job.steps, strict=True), 1):
        reason = f" ({state.reason})" if state.reason else ""
        print(f"{number:2d} {state.state.value:8s} {step.title} [{step.id}]{reason}")
    for caution in cautions(job.procedure):
        print(f"caution: {caution}")
    now = job.step
    if now is None:
        print("Every step has ended.")
        return 0
    print(f"\nNow: {now.title}")
    for words, sign in ((now.do, "do"), (now.cautions, "caution"), (now.goes_wrong, "risk")):
        for text in words:
            print(f"  {sign}: {text}")
    ids = {item.text: item.id for item in now.confirmations}
    ids |= {f"write down: {item.text}": item.id for item in now.entries}
    ids |= {gate.condition: gate.id for gate in now.gates}
    for lack in job.lacks():
        print(f"  waits for: {lack}{f' [{ids[lack]}]' if lack in ids else ''}")
    return 0


def _open(args: argparse.Namespace, now: datetime) -> JobFile:
    record = read_job(args.folder)
    history, at_s = record.job.history, (now - record.started).total_seconds()
    # one command follows another; after hours without one, nobody stood by
    left_alone = bool(history) and at_s - history[-1].at_s > POINTS_HOLD_S
    return JobFile.open(args.folder, args.by, now, stopped=left_alone)


def _advance(args: argparse.Namespace, *what: items.JobItem) -> int:
    """Take the items; the first refusal ends it."""
    now = _now()
    job_file = _open(args, now)
    for item in what:
        _told(job_file.advance(item, now))
    return 0


def _told(events: tuple[JobEvent, ...]) -> None:
    for event in events:
        if event.kind is JobEventKind.REFUSED:
            raise RefusedInputError(event.text)
        print(f"{'CAUTION: ' if event.kind is JobEventKind.CAUTION else ''}{event.text}")


def _at_s(args: argparse.Namespace) -> float:
    return max((_now() - read_job(args.folder).started).total_seconds(), 0.0)


def _confirm(args: argparse.Namespace) -> int:
    at_s = _at_s(args)
    return _advance(args, *(items.Confirm(at_s, one, args.by) for one in args.ids))


def _withdraw(args: argparse.Namespace) -> int:
    return _advance(args, items.Withdraw(_at_s(args), args.id, args.by, args.reason))


def _write(args: argparse.Namespace) -> int:
    return _advance(args, items.WriteDown(_at_s(args), args.id, args.value, args.by))


def _typed(args: argparse.Namespace) -> int:
    return _advance(args, items.Typed(_at_s(args), args.id, args.value, args.by))


def _valve(args: argparse.Namespace) -> int:
    item = items.Isolate(_at_s(args), args.name, args.position, args.lock, args.tag, args.by)
    return _advance(args, item)


def _done(args: argparse.Namespace) -> int:
    job, at_s = read_job(args.folder).job, _at_s(args)
    for gate in () if job.step is None else job.step.gates:
        met = job.gates.get(gate.id)
        if met is None or met.met_s is None or gate.quantity in LASTING:
            continue
        age_s = at_s - met.met_s
        if age_s > OLD_S:
            again = "read it again" if met.typed_by else "add a newer log"
            raise RefusedInputError(f"{gate.condition}: read {age_s / 60:.0f} min ago; {again}")
    return _advance(args, items.Done(at_s, args.by))


def _skip(args: argparse.Namespace) -> int:
    return _advance(args, items.Skip(_at_s(args), args.reason, args.by))


def _back(args: argparse.Namespace) -> int:
    return _advance(args, items.GoBack(_at_s(args), args.id, args.reason, args.by))


def _note(args: argparse.Namespace) -> int:
    return _advance(args, items.Note(_at_s(args), args.text, args.by))


def _amend(args: argparse.Namespace) -> int:
    now = _now()
    _open(args, now).amend(args.entry, args.text, args.by, now)
    return 0


def _sign(args: argparse.Namespace) -> int:
    now = _now()
    signature = _open(args, now).sign(args.by, args.role, now)
    print(f"Signed by {signature.name}, entry {signature.entry}, over {signature.over}")
    return 0


def _read(args: argparse.Namespace) -> int:
    from co2vent.cli.job_logs import feed_log

    now = _now()
    job_file = _open(args, now)
    for events in feed_log(job_file, args.log, now, args.to_s, args.by):
        _told(events)
    return 0


def _test(args: argparse.Namespace) -> int:
    from co2vent.cli.job_logs import judge_log

    now = _now()
    job_file = _open(args, now)
    metal = args.coldest_metal_c
    options = TestOptions(
        begin_s=args.begin_s,
        gauge_seen_moving=args.gauge_seen_moving,
        coldest_metal_k=None if metal is None else metal + ZERO_CELSIUS_K,
    )
    for events in judge_log(job_file, args.test, args.log, now, args.by, options):
        _told(events)
    return 0


def _steps(args: argparse.Namespace) -> int:
    from co2vent.store.whole_file import atomic_write

    if args.out.exists():
        raise RefusedInputError(f"{args.out}: exists already; choose another name")
    atomic_write(args.out, default_procedure_text().encode("utf-8"))
    return 0


def _check_steps(args: argparse.Namespace) -> int:
    procedure = read_procedure(_file_text(args.file), str(args.file))
    asks_less = cautions(procedure)
    for caution in asks_less:
        print(f"caution: {caution}")
    verdict = "accepted, with cautions for the record" if asks_less else "nothing wrong"
    print(f"{args.file}: {len(procedure.steps)} steps, {verdict}")
    return 0
