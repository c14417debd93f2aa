"""A live vent in a thread of its own, so that neither a window nor a terminal waits for a gauge."""

import threading
from typing import Final

from co2vent.errors import Co2ventError
from co2vent.live.live_vent import LiveVent

FIRST_OPEN_S: Final = 30.0


class Monitor(LiveVent):
    """Reads a source until it is stopped. `start` and `stop` are called by one other thread."""

    _thread: threading.Thread | None = None
    _opened: threading.Event
    _open_error: Co2ventError | None = None
    _stop_asked = False

    def start(self) -> None:
        """Open recorder and source, and start reading.

        Raises:
            StoreError: the log cannot be written.
            SourceUnavailableError: the source cannot be opened.
        """
        if self.recorder is not None:
            self.recorder.open()
        self._opened = threading.Event()
        self._thread = threading.Thread(target=self._run, name="monitor", daemon=True)
        self._thread.start()
        self._opened.wait(FIRST_OPEN_S)
        if self._open_error is not None:
            self._thread.join()
            raise self._open_error

    def stop(self, timeout_s: float = 10.0) -> None:
        """End: judge the running hold as it stands, close source and recording."""
        self._stop_asked = True
        if self._thread is not None:
            self._thread.join(timeout_s)

    @property
    def running(self) -> bool:
        """Whether the thread still reads."""
        return self._thread is not None and self._thread.is_alive()

    def _run(self) -> None:
        try:
            self.open()
        except Co2ventError as error:
            self._open_error = error
            return
        finally:
            self._opened.set()
        while not self._stop_asked and self.step():
            pass
        self.finish()
