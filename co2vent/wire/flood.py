"""A gauge that floods: rows faster than they can be taken are thinned, newest first.

A burst, such as a gateway's backlog, is no flood and is taken whole.
"""

from dataclasses import dataclass
from typing import Final

# Ten readings a second are usual, fifty are many; some 10,000 can be taken. (own choice)
ROWS_PER_S: Final = 4000
WINDOW_S: Final = 1.0
WINDOWS: Final = 2
# Some 15 ms of work, each time after a pause in which rows gather. (own choice)
MOST_ROWS_AT_ONCE: Final = 200
PAUSE_S: Final = 0.05
MOST_READS: Final = 64  # of what waits, at once


@dataclass(slots=True)
class FloodGuard:
    """Counts rows by the second; `now_s` is the time of the first call."""

    since_s: float
    rows: int = 0
    windows: int = 0

    def flooded(self, rows: int, now_s: float) -> bool:
        """Count `rows` that have come; return whether they have come too fast for seconds."""
        self.rows += rows
        took_s = now_s - self.since_s
        if took_s >= WINDOW_S:
            self.windows = self.windows + 1 if self.rows > ROWS_PER_S * took_s else 0
            self.since_s, self.rows = now_s, 0
        return self.windows >= WINDOWS


def newest_rows(text: bytes) -> tuple[bytes, int]:
    """Return the newest rows of a flood, and how many older ones were left out.

    Headers and metadata stay: what they say holds for the rows behind them.
    """
    lines = text.splitlines(keepends=True)
    surplus = len(lines) - MOST_ROWS_AT_ONCE
    if surplus <= 0:
        return text, 0
    kept = [line for line in lines[:surplus] if line[:1] not in b"0123456789+-."]
    return b"".join([*kept, *lines[surplus:]]), surplus - len(kept)
