"""Reading a job folder: its entries, state and signatures, and whether they hold together."""

import re
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import datetime
from pathlib import Path
from typing import Any, Final

from co2vent.errors import Co2ventError, RefusedInputError, StoreError
from co2vent.guidance.job import GaugeRecord, Job, JobHead, Person
from co2vent.guidance.job_items import item_from_plain
from co2vent.guidance.procedure_text import MAX_BYTES, read_procedure
from co2vent.guidance.steps import advance_job, begin_job
from co2vent.store.chain import Chain, decode
from co2vent.store.whole_file import words

JOB_FILE: Final = "job.jsonl"
STEPS_FILE: Final = "steps.toml"
MAX_JOB_BYTES: Final = 200_000_000
_RESERVED: Final = re.compile(r"(?i)(con|prn|aux|nul|com\d|lpt\d)")  # names that Windows keeps


@dataclass(frozen=True, slots=True)
class Signature:
    """Who signed what: a name, a time, and the digest of everything before."""

    name: str
    role: str
    at: str
    entry: int
    over: str


@dataclass(frozen=True, slots=True)
class Amendment:
    """A later word on an earlier entry; the earlier entry stays as it is."""

    entry: int
    text: str
    by: str
    at: str


@dataclass(frozen=True, slots=True, kw_only=True)
class JobRecord:
    """A job as its folder tells it. `problem` is empty when every entry matches its digest."""

    folder: Path
    job: Job
    started: datetime
    chain: Chain
    signatures: tuple[Signature, ...]
    amendments: tuple[Amendment, ...]
    plan: Mapping[str, Any] | None
    procedure_changed: bool

    @property
    def problem(self) -> str:
        """What does not hold together, in words."""
        if self.chain.problem:
            return self.chain.problem
        return "the steps file was changed after the job began" if self.procedure_changed else ""

    def log_paths(self) -> tuple[Path, ...]:
        """Return the job's readings files, in the order in which they were added."""
        return tuple(self.folder / plain_name(log.name) for log in self.job.logs)


def plain_name(name: str) -> str:
    """Return `name` if it is a bare file name inside a folder.

    Raises:
        StoreError: it is a path, hidden, or a name that some systems keep for themselves.
    """
    stem = name.split(".")[0]
    bad = re.search(r'[\\/:*?"<>|\x00-\x1f]', name) or name.startswith(".") or name.endswith(" ")
    if bad or not name or len(name) > 120 or _RESERVED.fullmatch(stem):
        raise StoreError(f"{name[:60]!r} can't be a file of a job: use a plain file name")
    return name


def folder_name(section: str, started: datetime) -> str:
    """Return a folder name for a job: date, time and what of the section's name is harmless."""
    plain = unicodedata.normalize("NFKD", section).encode("ascii", "ignore").decode()
    slug = re.sub(r"[^A-Za-z0-9]+", "-", plain).strip("-").lower()[:40]
    return f"{started:%Y-%m-%d_%H%M%S}_{slug or 'section'}"


def is_job(path: Path) -> bool:
    """Say whether `path` is a job: its folder, or the entries file in it."""
    return (path / JOB_FILE).is_file() or (path.name == JOB_FILE and path.is_file())


def read_job(path: Path) -> JobRecord:
    """Return the job at `path` (its folder or its entries file) without changing anything.

    Raises:
        RefusedInputError: not a job, or its first entry can't be read.
    """
    folder = path.parent if path.name == JOB_FILE else path
    try:
        if (folder / JOB_FILE).stat().st_size > MAX_JOB_BYTES:
            raise RefusedInputError(f"{folder / JOB_FILE}: too large for a job")
        chain = decode((folder / JOB_FILE).read_bytes())
        with (folder / STEPS_FILE).open("rb") as file:
            steps = file.read(MAX_BYTES + 1)
    except OSError as error:
        raise RefusedInputError(f"{folder}: not a job that can be read ({words(error)})") from None
    if not chain.entries or chain.entries[0].kind != "job":
        raise RefusedInputError(f"{folder / JOB_FILE}: not a job: {chain.problem or 'no entries'}")
    return _replay(folder, chain, steps)


def _replay(folder: Path, chain: Chain, steps: bytes) -> JobRecord:
    first = chain.entries[0]
    try:
        procedure = read_procedure(steps.decode("utf-8"), str(folder / STEPS_FILE), stored=True)
        head = _head(first.body["head"])
        started = datetime.fromisoformat(first.at)
    except (KeyError, TypeError, AttributeError, UnicodeError, ValueError):
        raise RefusedInputError(f"{folder / JOB_FILE}: the first entry can't be read") from None
    job = begin_job(procedure, head)
    signatures: list[Signature] = []
    amendments: list[Amendment] = []
    plan: Mapping[str, Any] | None = None
    problem = chain.problem
    for entry in chain.entries[1:]:
        body = entry.body
        try:
            if entry.kind == "signature":
                signatures.append(
                    Signature(body["name"], body["role"], entry.at, entry.number, body["over"])
                )
            elif entry.kind == "amendment":
                amendments.append(Amendment(body["entry"], body["text"], body["by"], entry.at))
            elif entry.kind == "plan":
                plan = body
            elif entry.kind != "recovered":
                job, _ = advance_job(job, item_from_plain(entry.kind, body), stored=True)
        except (KeyError, Co2ventError) as error:
            problem = problem or f"entry {entry.number} can't be used: {error}"
    return JobRecord(
        folder=folder,
        job=job,
        started=started,
        chain=replace(chain, problem=problem),
        signatures=tuple(signatures),
        amendments=tuple(amendments),
        plan=plan,
        procedure_changed=first.body.get("steps_sha256") != procedure.sha256,
    )


def _head(raw: Mapping[str, Any]) -> JobHead:
    plain = dict(raw)
    people = tuple(Person(**person) for person in plain.pop("people"))
    gauges = tuple(GaugeRecord(**gauge) for gauge in plain.pop("gauges"))
    return JobHead(**plain, people=people, gauges=gauges)
