"""Instruments that speak only when asked: a row of log text for each answer, at a steady pace."""

import time
from typing import Final

from co2vent.errors import RefusedInputError
from co2vent.wire.source import ReadOnlySource

DEFAULT_PERIOD_S: Final = 0.2
SHORTEST_PERIOD_S: Final = 0.02
# Two seconds without a reading are stale, so a slower poll could never be fresh.
LONGEST_PERIOD_S: Final = 1.0
REPLY_TIMEOUT_S: Final = 0.3  # three lost replies stay within the 2 s stale limit
FAILURES_TO_REOPEN: Final = 5  # then the connection itself is opened anew (own choice)


class PolledSource(ReadOnlySource):
    """Asks once a period; the header comes first, then a row an answer."""

    def __init__(self, label: str, preamble: tuple[str, ...], period_s: float) -> None:
        """Name the instrument; the last line of `preamble` are the columns it gives."""
        if not SHORTEST_PERIOD_S <= period_s <= LONGEST_PERIOD_S:
            raise RefusedInputError(
                f"period_s must be from {SHORTEST_PERIOD_S} to {LONGEST_PERIOD_S} seconds"
            )
        self.label = label
        self._header = "".join(f"{line}\n" for line in preamble).encode()
        columns = preamble[-1].split(",")
        self._period_s = period_s
        self._due_s = 0.0
        self._header_due = True
        self._failures = 0
        self.reply = ""  # the newest as it came, for a person to compare with what it is read as
        self._time_cell = columns.index("elapsed_s") if "elapsed_s" in columns else None
        self._last_time = ""

    def read(self, timeout_s: float) -> bytes:
        """Return the row of the next answer, when it is due within `timeout_s`."""
        if self._header_due:
            self._header_due = False
            return self._header
        wait_s = self._due_s - time.monotonic()
        if wait_s > timeout_s:
            time.sleep(timeout_s)
            return b""
        if wait_s > 0.0:
            time.sleep(wait_s)
        self._due_s = max(self._due_s + self._period_s, time.monotonic())
        return self._ask().encode()

    def started(self) -> None:
        """Begin a stream: called when the connection is open."""
        self._header_due = True
        self._due_s = time.monotonic()
        self._failures = 0
        self._last_time = ""

    def row(self, cells: list[str]) -> str:
        """Return the row; "" where the instrument's own clock says that it is no new one."""
        self._failures = 0
        if self._time_cell is not None:
            if cells[self._time_cell] == self._last_time:
                return ""
            self._last_time = cells[self._time_cell]
        return ",".join(cells) + "\n"

    def failed(self) -> bool:
        """Count an answer that did not come; return whether to open the connection anew."""
        self._failures += 1
        return self._failures >= FAILURES_TO_REOPEN

    def _ask(self) -> str:
        """Ask once and return a row, or a line that is no reading and says why."""
        raise NotImplementedError
