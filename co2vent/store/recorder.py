"""The recording: whole lines appended, synced every second, going on when the disk fails.

Lines are written by a thread of their own, one `write` each. Every line is kept in memory until
the disk has confirmed it, so that a full disk or a pulled stick loses nothing that can be written
later. One program writes a log: the file is locked, and a new one is made for each session.
"""

import contextlib
import os
import queue
import shutil
import threading
import time
from collections import deque
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from co2vent.errors import StoreError
from co2vent.store.lock import lock_exclusively
from co2vent.store.new_log import BINARY, CLOSE_ON_EXEC, copy_start, make_log
from co2vent.store.rows import checked_event, checked_row
from co2vent.store.whole_file import sync_folder, words

SYNC_S: Final = 1.0  # what a power cut may cost
RETRY_S: Final = 1.0  # how often a failed recording is tried again
# 8 h at 10 Hz are 288,000 rows, about 30 MB; more than that is given up, oldest first, and said.
MOST_WAITING_LINES: Final = 300_000
LOW_SPACE_BYTES: Final = 100_000_000  # some days of readings: time to react


@dataclass(frozen=True, slots=True)
class RecorderState:
    """How the recording stands; published whole, by one assignment."""

    recording: bool
    reason: str = ""  # why it is not recording
    lines: int = 0  # on disk
    waiting: int = 0  # in memory only
    given_up: int = 0  # dropped for want of memory
    bytes_free: int | None = None

    @property
    def space_low(self) -> bool:
        """Whether the disk is nearly full."""
        return self.bytes_free is not None and self.bytes_free < LOW_SPACE_BYTES


class Recorder:
    """Appends lines to a new log file from a thread of its own.

    `open` raises `StoreError`; after that nothing does, and `state` tells.
    """

    def __init__(self, path: Path, write: Callable[[int, bytes], int] = os.write) -> None:
        """Name the file; nothing is opened yet. `write` stands for the disk, good or bad."""
        self.path = path
        self._write_to = write
        self.state = RecorderState(False, "not opened")
        self._queue: queue.SimpleQueue[tuple[bytes, bool] | None] = queue.SimpleQueue()
        self._thread: threading.Thread | None = None
        self._descriptor: int | None = None
        self._preamble: list[bytes] = []  # written again where the file has to be made anew
        self._waiting: deque[bytes] = deque()  # not written
        self._unsynced: deque[bytes] = deque()  # written, not confirmed by the disk
        self._synced_bytes = 0
        self._whole_bytes = 0  # end of the last whole line
        self._lines = 0
        self._given_up = 0
        self._late = 0  # the most lines that have waited since recording stopped
        self._bytes_free: int | None = None

    def open(self) -> None:
        """Make the file, lock it and start writing.

        Raises:
            StoreError: it exists and is not empty, another program writes it, or the folder
                cannot be written.
        """
        self._descriptor = make_log(self.path)
        sync_folder(self.path.parent)
        self._set_state()
        self._thread = threading.Thread(target=self._run, name="recorder", daemon=True)
        self._thread.start()

    def preamble(self, text: str) -> None:
        """Put a metadata or header line, which has no check; every new file begins with them."""
        self._put(f"{text}\n".encode(), sync=True, preamble=True)

    def row(self, text: str) -> None:
        """Put a data row; its check is added."""
        self._put(checked_row(text), sync=False)

    def event(self, text: str) -> None:
        """Put an event line, synced at once."""
        self._put(checked_event(text), sync=True)

    def close(self, timeout_s: float = 5.0) -> None:
        """Write what is left, sync, and give the lock back."""
        if self._thread is None:
            return
        self._queue.put(None)
        self._thread.join(timeout_s)
        self._thread = None

    def _put(self, line: bytes, *, sync: bool, preamble: bool = False) -> None:
        if preamble:
            self._preamble.append(line)
        self._queue.put((line, sync))

    def _run(self) -> None:
        """Take lines as they come; write at once, sync by the clock or at an event."""
        next_s = time.monotonic() + SYNC_S
        ended = False
        while not ended:
            sync = False
            try:
                item = self._queue.get(timeout=max(0.0, next_s - time.monotonic()))
                while True:
                    if item is None:
                        ended = True
                    else:
                        self._waiting.append(item[0])
                        sync = sync or item[1]
                    item = self._queue.get_nowait()
            except queue.Empty:
                pass
            due = time.monotonic() >= next_s
            if due:
                next_s = time.monotonic() + SYNC_S
            if not self.state.recording and not due and not ended:
                self._keep_bounded()
                self._set_state(self.state.reason)
                continue
            self._work(sync=sync or due or ended)
            if ended and not self.state.recording:
                self._work(sync=True)  # the last chance: the disk may be well again
        if self._descriptor is not None:
            with contextlib.suppress(OSError):
                os.close(self._descriptor)
            self._descriptor = None

    def _work(self, *, sync: bool) -> None:
        try:
            if not self.state.recording:
                self._resume()
            self._late = max(self._late, len(self._waiting)) if self._late else 0
            self._write_waiting()
            if self._late:
                self._say_resumed()
            if sync:
                self._sync()
        except (OSError, StoreError) as error:
            reason = words(error)
            self._cut_to_whole_line()
            self._keep_bounded()
            self._late = max(self._late, len(self._waiting), 1)
            self._set_state(reason)
            return
        self._set_state()

    def _write_waiting(self) -> None:
        while self._waiting:
            self._write(self._waiting[0])
            self._unsynced.append(self._waiting.popleft())
            self._lines += 1

    def _write(self, line: bytes) -> None:
        if self._descriptor is None:
            raise StoreError("the log is not open")
        written = self._write_to(self._descriptor, line)
        if written != len(line):  # a full disk takes a part and says nothing
            raise StoreError("the disk is full")
        self._whole_bytes += written

    def _sync(self) -> None:
        if self._descriptor is None:
            raise StoreError("the log is not open")
        there = os.stat(self.path)  # noqa: PTH116 - compared with fstat
        mine = os.fstat(self._descriptor)
        if (there.st_dev, there.st_ino) != (mine.st_dev, mine.st_ino):
            raise StoreError("the log file was replaced")
        getattr(os, "fdatasync", os.fsync)(self._descriptor)
        self._synced_bytes = self._whole_bytes
        self._unsynced.clear()
        self._bytes_free = shutil.disk_usage(self.path.parent).free

    def _resume(self) -> None:
        """Make the file fit to append to again: the same, the same come back, or a new one."""
        if self._descriptor is not None and not self._is_in_place(self._descriptor):
            self._reopen()
        if self._descriptor is None:
            raise StoreError("the log is not open")
        os.ftruncate(self._descriptor, self._whole_bytes)

    def _say_resumed(self) -> None:
        """Write how many lines had waited, once they are on the disk."""
        text = f"recording resumed; {self._late} lines were written late"
        if self._given_up:
            text += f", {self._given_up} were lost"
        self._late = 0
        self._waiting.append(checked_event(text))
        self._write_waiting()

    def _is_in_place(self, descriptor: int) -> bool:
        try:
            there, mine = os.stat(self.path), os.fstat(descriptor)  # noqa: PTH116
        except OSError:
            return False
        return (there.st_dev, there.st_ino) == (mine.st_dev, mine.st_ino)

    def _reopen(self) -> None:
        """Open the log under its name again, or make it anew there with all that can be saved."""
        old = self._descriptor
        try:
            descriptor = self._reopen_same()
        except FileNotFoundError:
            descriptor = make_log(self.path)
            saved = copy_start(old, descriptor, self._whole_bytes) if old is not None else 0
            if saved < self._whole_bytes:
                os.ftruncate(descriptor, 0)
                gone = checked_event("the recording up to here went with its disk")
                self._start_again([*self._preamble, gone, *self._unsynced])
        if old is not None:
            with contextlib.suppress(OSError):
                os.close(old)
        self._descriptor = descriptor

    def _reopen_same(self) -> int:
        """Open the file that came back, cut to what the disk had confirmed."""
        descriptor = os.open(self.path, os.O_RDWR | os.O_APPEND | BINARY | CLOSE_ON_EXEC)
        try:
            if not lock_exclusively(descriptor):
                raise StoreError("another program writes the log")
            start = b"".join(self._preamble)
            if (
                os.fstat(descriptor).st_size < self._synced_bytes
                or os.read(descriptor, len(start)) != start
            ):
                raise StoreError("another file has taken the log's name")
            os.ftruncate(descriptor, self._synced_bytes)
        except (OSError, StoreError):
            os.close(descriptor)
            raise
        self._start_again(list(self._unsynced), at_bytes=self._synced_bytes)
        return descriptor

    def _start_again(self, lines: list[bytes], at_bytes: int = 0) -> None:
        """Put `lines` before what waits; the file ends at `at_bytes`."""
        self._waiting.extendleft(reversed(lines))
        self._unsynced.clear()
        self._whole_bytes = self._synced_bytes = at_bytes

    def _cut_to_whole_line(self) -> None:
        """Take back a torn line: it works on a full disk too."""
        if self._descriptor is not None:
            with contextlib.suppress(OSError):
                os.ftruncate(self._descriptor, self._whole_bytes)

    def _keep_bounded(self) -> None:
        while len(self._waiting) > MOST_WAITING_LINES:
            self._waiting.popleft()
            self._given_up += 1

    def _set_state(self, reason: str = "") -> None:
        self.state = RecorderState(
            recording=not reason,
            reason=reason,
            lines=self._lines,
            waiting=len(self._waiting),
            given_up=self._given_up,
            bytes_free=self._bytes_free,
        )
