"""The clock of a live session: it never runs backwards, counts sleep, and notices a set wall clock.

Readings without a time of their own are stamped by it, so what it does is what a hold is timed by.
"""

import time
from collections.abc import Callable
from datetime import UTC, datetime
from typing import Final

# A wall clock is kept within milliseconds by the network; a step beyond this is a set clock or a
# sleep that the other clock did not count.
WALL_STEP_S: Final = 1.0
# Put into the time line where time cannot be trusted: beyond every stale limit while venting.
BREAK_S: Final = 6.0


def since_boot_s() -> float:
    """Return seconds that go on while the machine sleeps, where the system has such a clock."""
    boot_clock: int | None = getattr(time, "CLOCK_BOOTTIME", None)
    return time.monotonic() if boot_clock is None else time.clock_gettime(boot_clock)


def wall_s() -> float:
    """Return the wall clock, in seconds since 1970."""
    return datetime.now(UTC).timestamp()


class LiveClock:
    """Seconds since it was made. All of time can be given, so that a test may wind it."""

    def __init__(
        self,
        steady: Callable[[], float] = since_boot_s,
        wall: Callable[[], float] = wall_s,
        sleep: Callable[[float], None] = time.sleep,
    ) -> None:
        """Start at zero."""
        self.sleep = sleep
        self._steady = steady
        self._wall = wall
        self._origin_s = steady()
        self._break_s = 0.0
        self._highest_s = 0.0
        self._wall_ahead_s = wall() - self._origin_s

    def now_s(self) -> float:
        """Return the seconds since the start; never less than the call before."""
        self._highest_s = max(self._highest_s, self._steady() - self._origin_s + self._break_s)
        return self._highest_s

    def check(self) -> float | None:
        """Return by how much the wall clock stepped against the steady one [s], `None` for not.

        A step puts a break into the time line that no hold survives: as long as the step where
        the wall clock ran ahead (a sleep that the steady clock did not count), and at least
        `BREAK_S`.
        """
        ahead_s = self._wall() - self._steady()
        step_s = ahead_s - self._wall_ahead_s
        self._wall_ahead_s = ahead_s
        if abs(step_s) <= WALL_STEP_S:
            return None
        self._break_s += max(step_s, BREAK_S)
        return step_s
