"""The last seconds of a vent: the rate of fall, and what belongs to a hold found late."""

from collections import deque
from collections.abc import Iterator

from co2vent.readings.reading import Reading

RATE_WINDOW_S = 6.0
LOOK_BACK_S = 45.0  # a closing found from the pressure is found so long after it, at most


class RecentReadings:
    """Readings of the last seconds, oldest first."""

    __slots__ = ("_kept",)

    def __init__(self) -> None:
        self._kept: deque[Reading] = deque()

    def add(self, reading: Reading, *, has_valve: bool, interval_s: float) -> None:
        """Take the newest; keep less where a valve column says when the valve moved."""
        kept = self._kept
        kept.append(reading)
        keep_s = RATE_WINDOW_S if has_valve else max(LOOK_BACK_S, 4.0 * interval_s)
        oldest_s = reading.at_s - keep_s
        while kept[0].at_s < oldest_s and len(kept) > 2:
            kept.popleft()

    def clear(self) -> None:
        """Nothing from before a gap may be joined to what follows."""
        self._kept.clear()

    def between(self, start_s: float, end_s: float) -> Iterator[Reading]:
        """The readings from `start_s` to before `end_s`."""
        return (reading for reading in self._kept if start_s <= reading.at_s < end_s)

    def rate_pa_per_s(self, opened_s: float | None) -> float | None:
        """The rate over the last seconds, and since the vent was opened at `opened_s`, if it is.

        The closed time before an opening would make the fall look slower than it is.
        """
        if len(self._kept) < 2:
            return None
        last = first = self._kept[-1]
        if last.at_s - self._kept[0].at_s <= RATE_WINDOW_S:
            # all of it is recent; in a vent told by a column nearly all of it is since the opening
            for first in self._kept:
                if opened_s is None or first.at_s >= opened_s:
                    break
            return _slope(first, last)
        for earlier in reversed(self._kept):
            if opened_s is not None and earlier.at_s < opened_s:
                break
            first = earlier
            if last.at_s - first.at_s >= RATE_WINDOW_S:
                break
        return _slope(first, last)


def _slope(first: Reading, last: Reading) -> float | None:
    span = last.at_s - first.at_s
    return (last.pressure_pa - first.pressure_pa) / span if span > 0 else None
