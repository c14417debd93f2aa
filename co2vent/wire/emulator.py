"""Plays a feed to whoever connects: header first and again, rows when they are due."""

import threading
import time
from collections.abc import Callable, Sequence
from typing import Final, Protocol

from co2vent.readings.reading import Reading
from co2vent.wire.emulator_feed import Feed, FeedRow

# A reader that joins late waits so long at most (a gauge would repeat it each 5 s or so).
HEADER_EVERY_S: Final = 2.0
# A port throws away what came before it was set up; the first rows wait for that.
SETTLE_S: Final = 0.3
STEP_S: Final = 0.01  # how finely rows are timed
DRAIN_S: Final = 5.0  # how long the last rows may take to be read


class Outlet(Protocol):
    """The near end of an emulated gauge set's wire."""

    source: str  # the SOURCE that leads to it

    def wait_for_reader(self, timeout_s: float) -> bool:
        """Return whether somebody is connected, waiting at most `timeout_s`."""

    def put(self, texts: list[str], newest: Reading | None) -> None:
        """Send lines; registers show `newest`."""

    def take_commands(self) -> list[str]:
        """Return the lines that came from the other end: `open`, `closed`."""

    def drained(self) -> bool:
        """Return whether the other end has read everything."""

    def close(self) -> None:
        """Close it."""


def play(
    feed: Feed,
    outlet: Outlet,
    *,
    speed: float = 1.0,
    stopping: threading.Event | None = None,
    now_s: Callable[[], float] = time.monotonic,
) -> None:
    """Play `feed` from the moment somebody connects until it ends or `stopping` is set.

    The rows keep their own time column; `speed` only makes them come sooner.
    """
    stopping = stopping or threading.Event()
    waiting = feed.rows_until(0.0)
    # a register holds the first row before anybody asks; lines are sent to a reader only
    outlet.put([], _newest(waiting))
    while not outlet.wait_for_reader(0.1):
        if stopping.is_set():
            return
    if stopping.wait(SETTLE_S):
        return
    started_s = now_s()
    header_due_s = started_s
    while not stopping.is_set():
        for word in outlet.take_commands():
            if word in ("open", "closed"):
                feed.set_valve(word == "open")
        rows = [*waiting, *feed.rows_until((now_s() - started_s) * speed)]
        waiting = []
        header_due = now_s() >= header_due_s
        if header_due:
            header_due_s = now_s() + HEADER_EVERY_S
        if rows or header_due:
            preamble = feed.preamble if header_due else ()
            outlet.put([*preamble, *(row.text for row in rows)], _newest(rows))
        if feed.ended:
            break
        stopping.wait(STEP_S)
    give_up_s = now_s() + DRAIN_S
    while not outlet.drained() and now_s() < give_up_s and not stopping.is_set():
        stopping.wait(STEP_S)
    stopping.wait(SETTLE_S)  # unplugging throws away what the reader has not fetched


def _newest(rows: Sequence[FeedRow]) -> Reading | None:
    return next((row.reading for row in reversed(rows) if row.reading), None)
