"""A source tried in a thread of its own; what it shows comes to the window as a signal."""

import threading
import time
from collections.abc import Mapping, Sequence
from typing import Final

from PySide6.QtCore import QObject, Signal

from co2vent.errors import Co2ventError
from co2vent.wire.probe import probe_batches
from co2vent.wire.source import Source
from co2vent.wire.source_check import Heard, SourceCheck

LONGEST_TEST_S: Final = 900.0  # time to go to the gauge, move the cable, and come back
LONGEST_CLOSE_S: Final = 10.0  # of a slow driver; then the next who opens the port is refused it
SHOWN_EVERY_S: Final = 0.1  # a flood must not become a flood of signals


class SourceTest(QObject):
    """One try. Has no parent: it lives until its thread has let go of the source."""

    # Each says which try it is from: what was on its way when the try was stopped still arrives.
    heard = Signal(object, object)  # SourceTest, Heard
    ended = Signal(object, str)  # SourceTest, why it could not go on; empty: its time was up

    def __init__(
        self,
        source: Source,
        columns: Sequence[str] | None = None,
        overrides: Mapping[str, str] | None = None,
        before: "SourceTest | None" = None,
    ) -> None:
        """Prepare; nothing is opened until `before`, perhaps of the same port, has closed it."""
        super().__init__()
        self._source = source
        self._before = before
        self._columns = columns
        self._overrides = overrides
        self._stopping = threading.Event()
        self._thread = threading.Thread(target=self._run, name="source test", daemon=True)

    def start(self) -> None:
        """Open the source and listen."""
        self._thread.start()

    def stop(self) -> None:
        """Ask the thread to close the source; returns at once."""
        self._stopping.set()

    def wait(self, timeout_s: float) -> bool:
        """Wait until the source is closed; return whether it is."""
        self._thread.join(timeout_s)
        return not self._thread.is_alive()

    def _run(self) -> None:
        if self._before is not None:
            self._before.wait(LONGEST_CLOSE_S)
            self._before = None
        check = SourceCheck(from_file=not self._source.stamped_on_arrival)
        batches = probe_batches(self._source, LONGEST_TEST_S, self._columns, self._overrides)
        failure, shown_s = "", 0.0
        try:
            for batch in batches:
                now_s = time.monotonic()
                if self._stopping.is_set():
                    break
                check.take(batch, now_s)
                if now_s - shown_s >= SHOWN_EVERY_S or shown_s == 0.0:
                    shown_s = now_s
                    self._show(check.heard())
        except Co2ventError as error:
            failure = str(error)
        except Exception as error:  # noqa: BLE001 - the thread's top: shown, never silent
            failure = f"{type(error).__name__}: {error}"
        finally:
            batches.close()
        self._show(check.heard())
        if not self._stopping.is_set():
            self.ended.emit(self, failure)

    def _show(self, heard: Heard) -> None:
        if not self._stopping.is_set():
            self.heard.emit(self, heard)
