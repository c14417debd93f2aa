"""Opens a large log in threads of its own: first a quick look at its rows, then all checks.

The quick look is for drawing alone. What is judged, exported or replayed comes from the checked
reading, which takes its place wholly.
"""

import time
from collections import deque
from collections.abc import Mapping, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from io import FileIO
from pathlib import Path
from threading import Event, Thread
from typing import Final

import numpy as np

from co2vent.errors import Co2ventError
from co2vent.readings.log_file import read_log
from co2vent.readings.quick_rows import (
    HEAD_BYTES,
    PAD,
    QuickBlock,
    QuickForm,
    quick_form,
)
from co2vent.readings.reading import Setup
from co2vent.window import drawing_library
from co2vent.window.replay_index import ReplayIndex
from co2vent.window.traces import Traces
from co2vent.window.wrong_file import why_not

BLOCK_BYTES: Final = 1 << 20  # some 20,000 rows: their columns stay in the processor's cache
PARSERS: Final = 2
SHOWN_MOST_S: Final = 0.5  # the check waits so long at most until the trace is on the screen
STAND_BACK_S: Final = 0.15  # after each movement of the trace
SPARE_ROWS: Final = 4096


class _GivenUpError(Exception):
    """Nobody waits for this log any more."""


class Opening:
    """A log being opened; the attributes are set whole, each by one assignment."""

    def __init__(
        self,
        path: Path,
        columns: Sequence[str] | None = None,
        overrides: Mapping[str, str] | None = None,
    ) -> None:
        self._path = path
        self._columns = columns
        self._overrides = overrides
        self.size = path.stat().st_size
        self.unchecked: tuple[Traces, Setup] | None = None
        self.looked = False  # the quick look has ended, with or without a trace
        self.checked: ReplayIndex | None = None
        self.failure = ""
        self.share = 0.0  # of the bytes, checked
        self._given_up = Event()
        self._shown = Event()
        self._stand_back_until_s = 0.0
        self._thread = Thread(target=self._run, name="opening", daemon=True)

    def start(self) -> None:
        """Begin."""
        self._thread.start()

    def trace_is_shown(self) -> None:
        """Begin to check: the unchecked trace is on the screen."""
        self._shown.set()

    def stand_back(self) -> None:
        """Leave the processor and the interpreter to the window: a person moves the trace."""
        self._stand_back_until_s = time.monotonic() + STAND_BACK_S

    def give_up(self) -> None:
        """Stop soon; nothing is waited for."""
        self._given_up.set()
        self._shown.set()

    @property
    def running(self) -> bool:
        """Whether the threads still work."""
        return self._thread.is_alive()

    def _run(self) -> None:
        drawing_library.load_behind()  # the window is not to wait for it
        try:
            self.unchecked = self._look()
            self.looked = True
            if self.unchecked is not None:
                self._shown.wait(SHOWN_MOST_S)  # drawing the trace comes first
            log = read_log(self._path, self._columns, self._overrides, self._watch)
            index = ReplayIndex(log)
            del log
            index.traces.prepare()
            self._watch(self.size)
            self.checked = index
        except _GivenUpError:
            pass
        except Co2ventError as error:
            self.failure = why_not(self._path, error)
        except Exception as error:  # noqa: BLE001 - a thread has nobody to raise to
            self.failure = f"{self._path.name}: {type(error).__name__}: {error}"

    def _watch(self, taken: int) -> None:
        while time.monotonic() < self._stand_back_until_s and not self._given_up.is_set():
            time.sleep(STAND_BACK_S / 10)
        if self._given_up.is_set():
            raise _GivenUpError
        self.share = taken / max(1, self.size)

    def _look(self) -> tuple[Traces, Setup] | None:
        """Return the unchecked trace, `None` where the log is of another form."""
        try:
            with self._path.open("rb", buffering=0) as file:
                form = quick_form(file.read(HEAD_BYTES), self._columns, self._overrides)
                if form is None:
                    return None
                file.seek(form.start)
                traces = self._read_rows(file, form)
        except OSError:
            return None  # the checked reading says what is wrong
        if traces is None or not len(traces):
            return None
        traces.prepare()
        return traces, form.setup

    def _read_rows(self, file: FileIO, form: QuickForm) -> Traces | None:
        """Return the rows from here on: this thread reads bytes, others turn them into numbers."""
        ring = [bytearray(PAD + BLOCK_BYTES) for _ in range(PARSERS + 2)]
        buffers = [np.frombuffer(memory, np.uint8) for memory in ring]  # the same bytes
        waiting: deque[Future[QuickBlock | None]] = deque()
        traces: Traces | None = None
        place, end = 0, PAD
        with ThreadPoolExecutor(PARSERS, "quick look") as pool:
            while taken := file.readinto(memoryview(ring[place])[end:]):
                if self._given_up.is_set():
                    raise _GivenUpError
                end += taken
                whole = ring[place].rfind(b"\n", PAD, end) + 1
                if not whole:
                    return None  # no line is as long as a block
                waiting.append(pool.submit(form.read, buffers[place], whole))
                rest = end - whole
                after = (place + 1) % len(ring)
                ring[after][PAD : PAD + rest] = ring[place][whole:end]
                place, end = after, PAD + rest
                if len(waiting) > PARSERS:
                    traces = self._add(waiting.popleft().result(), traces)
                    if traces is None:
                        return None
            for future in waiting:
                traces = self._add(future.result(), traces)
                if traces is None:
                    return None
        return traces

    def _add(self, block: QuickBlock | None, traces: Traces | None) -> Traces | None:
        """Return the traces with the rows of the next block, `None` where its form is unknown."""
        if block is None:
            return None
        if traces is None:
            rows = len(block.at_s) / min(BLOCK_BYTES, self.size) * self.size
            traces = Traces.unchecked(int(1.02 * rows) + SPARE_ROWS)
        traces.extend(block.at_s, (*block[1:], None))
        return traces
