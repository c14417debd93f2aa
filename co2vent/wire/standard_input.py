"""Log text from standard input."""

import os
import queue
import sys
import threading
from typing import Final

from co2vent.wire.source import ReadOnlySource, lost

_CHUNK_BYTES: Final = 65536
_CHUNKS_AHEAD: Final = 64  # then the sender waits: memory stays bounded


class StandardInputSource(ReadOnlySource):
    """Standard input; a helper thread reads it, which works on every system and for every pipe."""

    def __init__(self, descriptor: int | None = None) -> None:
        """Read `descriptor`, by default that of standard input."""
        self.label = "standard input"
        self._descriptor = descriptor
        self._chunks: queue.Queue[bytes | OSError] = queue.Queue(_CHUNKS_AHEAD)
        self._ended = False

    def open(self) -> None:
        """Start reading."""
        descriptor = sys.stdin.fileno() if self._descriptor is None else self._descriptor
        # a daemon: a read that never returns must not keep the program alive
        threading.Thread(
            target=self._pump, args=(descriptor,), name="standard input", daemon=True
        ).start()

    def read(self, timeout_s: float) -> bytes | None:
        """Return what has arrived; `None` once the sender has closed it."""
        if self._ended:
            return None
        try:
            chunk = self._chunks.get(timeout=timeout_s)
        except queue.Empty:
            return b""
        if isinstance(chunk, OSError):
            raise lost(self.label, chunk)
        if not chunk:
            self._ended = True
            return None
        return chunk

    def close(self) -> None:
        """Leave the helper thread to end with the stream."""

    def _pump(self, descriptor: int) -> None:
        while True:
            try:
                chunk = os.read(descriptor, _CHUNK_BYTES)
            except OSError as error:
                self._chunks.put(error)
                chunk = b""
            self._chunks.put(chunk)
            if not chunk:
                return
