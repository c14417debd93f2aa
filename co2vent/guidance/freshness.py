"""How old a reading may be: the usual interval, and when a silence makes the numbers stale."""

from collections import deque

STALE_LEAST_S = 2.0  # a person at the valve must know within this that the numbers are old
STALE_INTERVALS = 2.5  # of the usual interval: one lost reading is no alarm
STALE_VENTING_MOST_S = 5.0  # a vent falls 0.2 bar in it; older than that is no guidance


class Freshness:
    """Learns the usual interval [s] of the readings and keeps whether they are stale."""

    __slots__ = ("_intervals", "_said_sparse", "interval_s", "stale")

    def __init__(self) -> None:
        self.interval_s = 1.0
        self.stale = False
        self._intervals: deque[float] = deque(maxlen=9)
        self._said_sparse = False

    def learn(self, interval_s: float, readings: int) -> bool:
        """Take the time since the reading before; `readings` is how many there were.

        Return whether the usual interval was looked at anew.
        """
        self._intervals.append(interval_s)
        if readings % 8 and readings >= 12:
            return False
        self.interval_s = sorted(self._intervals)[len(self._intervals) // 2]
        return True

    def age_limit_s(self, vent_open: bool | None) -> float:
        """The age [s] over which a reading is stale."""
        limit = max(STALE_LEAST_S, STALE_INTERVALS * self.interval_s)
        return min(limit, STALE_VENTING_MOST_S) if vent_open else limit

    def is_gap(self, interval_s: float) -> bool:
        """Whether readings so far apart must not be joined."""
        return interval_s > STALE_INTERVALS * self.interval_s

    @property
    def sparse(self) -> bool:
        """Readings come too seldom for a vent: stale between any two, which is said once."""
        return self._said_sparse and self.interval_s > STALE_VENTING_MOST_S

    def turn_stale(self) -> bool:
        """The readings are stale now; return whether that is to be said."""
        self.stale = True
        if self.sparse:
            return False
        self._said_sparse = self.interval_s > STALE_VENTING_MOST_S
        return True
