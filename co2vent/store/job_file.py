"""A job in a folder: kept entry by entry as it goes, opened again where it stopped.

    folder/job.jsonl     the entries, chained (`co2vent.store.chain`), each forced to the disk
    folder/steps.toml    the steps that this job follows, as they were when it began
    folder/*.csv         its readings

Nothing in the file is ever overwritten: what was wrong is amended by a later entry.
"""

import hashlib
import os
import re
from collections.abc import Mapping
from dataclasses import asdict, replace
from datetime import datetime
from pathlib import Path
from typing import Any

from co2vent.errors import RefusedInputError, StoreError
from co2vent.guidance import job_items as items
from co2vent.guidance.job import Job, JobEvent, JobHead, Observed
from co2vent.guidance.job_items import JobItem, item_to_plain
from co2vent.guidance.procedure_text import read_procedure
from co2vent.guidance.steps import advance_job
from co2vent.store.chain import Chain, ChainEntry, encode, next_entry
from co2vent.store.job_record import (
    JOB_FILE,
    STEPS_FILE,
    JobRecord,
    Signature,
    plain_name,
    read_job,
)
from co2vent.store.whole_file import sync_folder, words


class JobFile:
    """An open job: takes items, keeps what was accepted, and knows the job's state."""

    def __init__(self, record: JobRecord) -> None:
        self._record = record
        self._entries = list(record.chain.entries)
        self._size = _size(record.folder)
        self.job: Job = record.job

    @classmethod
    def create(
        cls,
        folder: Path,
        head: JobHead,
        steps_text: str,
        now: datetime,
        plan: Mapping[str, Any] | None = None,
        steps_name: str = STEPS_FILE,
    ) -> "JobFile":
        """Begin a job in the new folder `folder`. `now` carries its time zone.

        `steps_name`: the file that the steps came from, for an error.

        Raises:
            StoreError: the folder exists already or can't be written.
            RefusedInputError: the steps are not valid.
        """
        procedure = read_procedure(steps_text, steps_name)
        body = {"format": "co2vent job 1", "head": asdict(head), "steps_sha256": procedure.sha256}
        entry = next_entry(Chain((), b"", "").digest, 1, _stamp(now), "job", body)
        try:
            folder.mkdir(parents=True, exist_ok=False)
            # The steps first: a folder whose entries file exists is then always complete.
            _write_synced(folder / STEPS_FILE, steps_text.encode("utf-8"))
            _write_synced(folder / JOB_FILE, encode(entry))
            sync_folder(folder)
        except OSError as error:
            raise StoreError(
                f"{folder}: a job can't be begun here ({words(error)}); choose another folder"
            ) from None
        job_file = cls(read_job(folder))
        if plan is not None:
            job_file._append("plan", plan, now)
        return job_file

    @classmethod
    def open(cls, path: Path, by: str, now: datetime, *, stopped: bool = True) -> "JobFile":
        """Open the job again where it stopped. A torn last line is set aside and that is recorded.

        `stopped`: nobody watched the readings meanwhile, so the running step's gates must be read
        anew; false where one command follows another and the caller minds the readings' age.

        Raises:
            StoreError: an entry does not match its digest; such a job can only be reported.
            RefusedInputError: not a job.
        """
        record = read_job(path)
        if record.problem:
            raise StoreError(
                f"{record.folder}: {record.problem}; it can be reported but not continued"
            )
        torn = record.chain.torn
        if torn:
            entries_file = record.folder / JOB_FILE
            number = len(record.chain.entries) + 1
            aside = f"torn-before-entry-{number}-{hashlib.sha256(torn).hexdigest()[:8]}.bin"
            try:
                if not (record.folder / aside).exists():  # a crash may have come right after it
                    _write_synced(record.folder / aside, torn)
                with entries_file.open("r+b") as file:
                    file.truncate(entries_file.stat().st_size - len(torn))
                    os.fsync(file.fileno())
            except OSError as error:
                raise StoreError(
                    f"{record.folder}: the torn last line can't be set aside ({words(error)})"
                ) from None
        job_file = cls(record)
        if torn:
            job_file._append("recovered", {"bytes": len(torn)}, now)
        if stopped or torn:
            job_file.advance(items.Reopened(job_file.at_s(now), by), now)
        return job_file

    @property
    def record(self) -> JobRecord:
        """The job as its folder tells it now."""
        return replace(self._record, job=self.job, chain=Chain(tuple(self._entries), b"", ""))

    @property
    def digest(self) -> str:
        """The last entry's digest."""
        return self._entries[-1].digest

    def at_s(self, now: datetime) -> float:
        """Return `now` in seconds of the job; a clock that was set back does not go back here."""
        return max((now - self._record.started).total_seconds(), 0.0)

    def advance(self, item: JobItem | Observed, now: datetime) -> tuple[JobEvent, ...]:
        """Take an item. What is accepted is on the disk before this returns.

        Raises:
            StoreError: the entry could not be written; the job is what its file holds.
        """
        job, events = advance_job(self.job, item)
        try:
            for event in events:
                if event.item is not None:
                    self._append(*item_to_plain(event.item), now)
        except StoreError:
            self.job = read_job(self._record.folder).job  # what the disk holds is the job
            raise
        self.job = job
        return events

    def attach_log(
        self, path: Path, readings: int, simulated: bool, now: datetime
    ) -> tuple[JobEvent, ...]:
        """Add a readings file, copied into the folder; the same bytes are added once."""
        name = plain_name(re.sub(r"[^\w.-]+", "-", path.name).lstrip(".-") or "readings.csv")
        target = self._record.folder / name
        try:
            data = path.read_bytes()
            digest = hashlib.sha256(data).hexdigest()
            if self._added_s(digest) is not None:
                return ()
            if path.resolve() != target.resolve():
                if target.exists():
                    name = f"{digest[:8]}-{name}"
                    target = self._record.folder / name
                _write_synced(target, data)
        except OSError as error:
            raise StoreError(f"{path}: can't be added to the job ({words(error)})") from None
        added = items.LogAdded(self.at_s(now), name, digest, readings, simulated)
        return self.advance(added, now)

    def log_added_s(self, path: Path) -> float | None:
        """When the same bytes were added, as the job's time [s]; `None`: they are new."""
        try:
            return self._added_s(hashlib.sha256(path.read_bytes()).hexdigest())
        except OSError:
            return None

    def _added_s(self, digest: str) -> float | None:
        return next((log.at_s for log in self.job.logs if log.sha256 == digest), None)

    def amend(self, entry: int, text: str, by: str, now: datetime) -> None:
        """Add a later word on the entry with number `entry`.

        Raises:
            RefusedInputError: no such entry, or nothing said.
        """
        if not 1 <= entry <= len(self._entries):
            raise RefusedInputError(f"entry {entry}: this job has 1 to {len(self._entries)}")
        if not text.strip() or not by.strip() or len(text) > items.MAX_NOTE:
            raise RefusedInputError("an amendment has a text and the name of who makes it")
        self._append("amendment", {"entry": entry, "text": text.strip(), "by": by.strip()}, now)
        self._reload()

    def sign(self, name: str, role: str, now: datetime) -> Signature:
        """Sign everything so far.

        Raises:
            RefusedInputError: the job is practice on simulated data, or no name.
        """
        if self.job.simulated:
            raise RefusedInputError(
                "this job holds simulated data: practice is never signed; print it as it is"
            )
        if not name.strip() or len(name) > 200 or len(role) > 200:
            raise RefusedInputError("a signature is a name (200 characters at most) and a role")
        body = {"name": name.strip(), "role": role.strip(), "over": self.digest}
        self._append("signature", body, now)
        self._reload()
        return self._record.signatures[-1]

    def _reload(self) -> None:
        """Take signatures and amendments from the folder; the running job keeps its readings."""
        self._record = read_job(self._record.folder)

    def _append(self, kind: str, body: Mapping[str, Any], now: datetime) -> ChainEntry:
        entry = next_entry(self.digest, len(self._entries) + 1, _stamp(now), kind, body)
        path = self._record.folder / JOB_FILE
        line = encode(entry)
        try:
            with path.open("r+b") as file:
                if file.seek(0, os.SEEK_END) != self._size:
                    raise StoreError(
                        f"{path}: changed by another program; close the job there and open it again"
                    )
                try:
                    file.write(line)
                    file.flush()
                    os.fsync(file.fileno())
                except OSError:
                    file.truncate(self._size)  # a half-written line is no entry
                    raise
        except OSError as error:
            raise StoreError(f"{path}: not written ({words(error)}); free the disk") from None
        self._size += len(line)
        self._entries.append(entry)
        return entry


def _stamp(now: datetime) -> str:
    if now.tzinfo is None:
        raise ValueError("a job's times carry their zone")
    return now.isoformat(timespec="milliseconds")


def _size(folder: Path) -> int:
    try:
        return (folder / JOB_FILE).stat().st_size
    except OSError as error:
        raise StoreError(f"{folder / JOB_FILE}: can't be read ({words(error)})") from None


def _write_synced(path: Path, data: bytes) -> None:
    """Write a new file and force it to the disk; an existing one is never overwritten."""
    with path.open("xb") as file:
        file.write(data)
        file.flush()
        os.fsync(file.fileno())
