"""The newest reading: when it came, whether it is new, and the present on its time line."""

from co2vent.live.lateness import Lateness
from co2vent.readings.reading import Reading


class Newest:
    """Follows the readings of one source."""

    def __init__(self) -> None:
        """Know no reading."""
        self.reading: Reading | None = None
        self._arrived_s = 0.0
        self._lateness = Lateness()

    def is_repeat(self, reading: Reading, *, timed: bool) -> bool:
        """Return whether an instrument with a clock of its own sends its last row again."""
        return timed and reading == self.reading

    def take(self, reading: Reading, now_s: float) -> float:
        """Take the reading that arrives at `now_s`; return how late it is [s]."""
        last, self.reading = self.reading, reading
        if last is None or (reading.at_s, reading.segment) != (last.at_s, last.segment):
            self._arrived_s = now_s
        if last is not None and reading.segment != last.segment:
            self._lateness.forget()
        return self._lateness.late_s(reading.at_s, now_s)

    def count_as_old(self, late_s: float, now_s: float) -> None:
        """Count the newest reading's age from when it was taken, not from when it came."""
        self._arrived_s = now_s - late_s

    def age_s(self, now_s: float) -> float | None:
        """Return how old the newest reading is; `None` before the first."""
        return None if self.reading is None else max(0.0, now_s - self._arrived_s)

    def present_s(self, now_s: float) -> float:
        """Return the present on the time line of the readings."""
        age_s = self.age_s(now_s)
        return 0.0 if self.reading is None or age_s is None else self.reading.at_s + age_s
