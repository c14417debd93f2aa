"""Whether readings that carry their own time arrive as they are taken, or late."""

from collections import deque
from typing import Final

# Longer than a backlog that clears itself. An instrument that counts its own rounds and is 1 % slow
# drifts by 1.2 s in it, which is not late. (own choice)
WINDOW_S: Final = 120.0
LATE_S: Final = 2.0  # as the stale limit: a reading that is older when it comes is no live reading
_BUCKET_S: Final = 10.0


class Lateness:
    """Compares each reading's time with its arrival; the quickest arrivals of late are on time."""

    def __init__(self) -> None:
        """Know nothing yet."""
        self._quickest: deque[tuple[float, float]] = deque()  # (arrival bucket, least difference)

    def late_s(self, at_s: float, arrived_s: float) -> float:
        """Return how late the reading of `at_s` is, against the quickest of the last minutes."""
        difference_s = arrived_s - at_s
        bucket_s = arrived_s // _BUCKET_S * _BUCKET_S
        if self._quickest and self._quickest[-1][0] == bucket_s:
            least_s = min(self._quickest.pop()[1], difference_s)
        else:
            least_s = difference_s
        self._quickest.append((bucket_s, least_s))
        while self._quickest[0][0] < arrived_s - WINDOW_S:
            self._quickest.popleft()
        return difference_s - min(least for _, least in self._quickest)

    def forget(self) -> None:
        """Start again: the source's clock has been set."""
        self._quickest.clear()
