"""What a source has shown while it was tried, and what that means for the person at the gauge.

No clock and no thread here: times come with the calls, so that each finding can be tested.
"""

from collections import deque
from dataclasses import dataclass, replace
from enum import Enum, auto
from typing import Final

from co2vent.wire.probe import Batch, LineKind, ProbedLine

# As of a live vent: a person must know within this that the numbers are old.
LONGEST_INTERVAL_S: Final = 2.0
SILENT_AFTER_S: Final = 1.5  # the person should read the verdict 2 s after the touch (own choice)
RATE_OVER_S: Final = 5.0  # long enough for an instrument that sends every other second
RECENT_LINES: Final = 40
# A rejected row is spoken of until so much later: the fault may be gone. (own choice)
REJECTION_FRESH_S: Final = 5.0


class Finding(Enum):
    """What stands between this source and a job; `ARRIVING` is nothing."""

    OPENING = auto()
    WAITING = auto()  # open; too early to say more
    SILENT = auto()  # open, and not one byte
    NO_LINE_END = auto()  # bytes, but no line
    NO_ROWS = auto()  # a header, and nothing under it
    UNREADABLE = auto()  # bytes, but no text
    NO_COLUMNS = auto()  # lines, but nothing says what they mean
    REFUSED = auto()  # lines whose meaning is not certain
    NO_READING = auto()  # lines under a header, but none is a reading
    ARRIVING = auto()
    PARTLY = auto()  # readings, and lines that are none
    TOO_SLOW = auto()
    STOPPED = auto()  # there were readings
    FILE_BEING_READ = auto()
    FILE_STANDS = auto()  # a file with readings, but nothing is added
    LOST = auto()
    ENDED = auto()


@dataclass(frozen=True, slots=True)
class Heard:
    """All that a source has shown up to now. Times [s] are of one clock that never steps."""

    opened_s: float | None = None
    bytes_heard: int = 0
    tail: bytes = b""
    lines: int = 0  # rows under a header, whether they are readings or not
    readings: int = 0
    rejected: int = 0
    passed_over: int = 0  # rows that came faster than they can be taken
    newest: ProbedLine | None = None  # the newest reading
    newest_s: float | None = None  # None: none yet, or it lay in a file before
    interval_s: float | None = None  # mean, of the last few seconds
    recent: tuple[ProbedLine, ...] = ()
    reason: str = ""  # of the newest line that is no reading
    rejected_s: float | None = None
    from_file: bool = False
    in_backlog: bool = False
    unreadable: bool = False
    lost: str = ""
    ended: bool = False
    refused: str = ""
    no_header: bool = False

    def age_s(self, now_s: float) -> float | None:
        """Return how old the newest reading is; `None` where that is not known."""
        return None if self.newest_s is None else max(0.0, now_s - self.newest_s)

    def finding(self, now_s: float) -> Finding:
        """Return what this means at `now_s`: silence turns into a finding by itself."""
        if self.opened_s is None:
            return Finding.OPENING
        if self.ended:
            return Finding.ENDED
        if self.lost:
            return Finding.LOST
        if self.unreadable:
            return Finding.UNREADABLE
        if self.refused:
            return Finding.REFUSED
        if self.newest is not None:
            return self._finding_of_readings(now_s)
        if self.no_header:
            return Finding.NO_COLUMNS
        if self.lines:
            return Finding.NO_READING
        if now_s - self.opened_s < SILENT_AFTER_S:
            return Finding.WAITING
        if self.bytes_heard == 0:
            return Finding.SILENT
        return Finding.NO_ROWS if self.recent else Finding.NO_LINE_END

    def _finding_of_readings(self, now_s: float) -> Finding:
        age_s = self.age_s(now_s)
        if age_s is None:
            return Finding.FILE_BEING_READ if self.in_backlog else Finding.FILE_STANDS
        slow = self.interval_s is not None and self.interval_s > LONGEST_INTERVAL_S
        if age_s > LONGEST_INTERVAL_S and not (
            slow and self.interval_s is not None and age_s < 1.5 * self.interval_s
        ):
            return Finding.STOPPED
        if slow:
            return Finding.TOO_SLOW
        fresh = self.rejected_s is not None and now_s - self.rejected_s < REJECTION_FRESH_S
        return Finding.PARTLY if fresh else Finding.ARRIVING


class SourceCheck:
    """Collects what a source shows. Used by one thread; what `heard` gives may go to another."""

    def __init__(self, *, from_file: bool = False) -> None:
        """Start with nothing heard."""
        self._heard = Heard(from_file=from_file)
        self._recent: deque[ProbedLine] = deque(maxlen=RECENT_LINES)
        self._arrivals: deque[tuple[float, int]] = deque()  # time, readings

    def heard(self) -> Heard:
        """Return all of it, as it stands."""
        return replace(self._heard, recent=tuple(self._recent), interval_s=self._interval_s())

    def take(self, batch: Batch, now_s: float) -> None:
        """Take what one look at the source gave."""
        before = self._heard
        self._heard = replace(
            before,
            opened_s=now_s if before.opened_s is None else before.opened_s,
            bytes_heard=batch.bytes_heard,
            tail=batch.tail,
            in_backlog=batch.lay_there,
            passed_over=before.passed_over + batch.passed_over,
        )
        for line in batch.lines:
            self._recent.append(line)
            self._heard = _with_line(self._heard, line, now_s)
        arrived = self._heard.readings - before.readings
        if arrived and not batch.lay_there:
            self._heard = replace(self._heard, newest_s=now_s)
            self._arrivals.append((now_s, arrived))
        if self._heard.lost:
            self._arrivals.clear()
        while len(self._arrivals) > 2 and now_s - self._arrivals[0][0] > RATE_OVER_S:
            self._arrivals.popleft()

    def _interval_s(self) -> float | None:
        if len(self._arrivals) < 2:
            return None
        span_s = self._arrivals[-1][0] - self._arrivals[0][0]
        return span_s / (sum(count for _, count in self._arrivals) - self._arrivals[0][1])


def _with_line(heard: Heard, line: ProbedLine, now_s: float) -> Heard:
    match line.kind:
        case LineKind.READING:
            return replace(
                heard,
                lines=heard.lines + 1,
                readings=heard.readings + 1,
                newest=line,
                no_header=False,
            )
        case LineKind.REJECTED:
            return replace(
                heard,
                lines=heard.lines + 1,
                rejected=heard.rejected + 1,
                rejected_s=now_s,
                reason=line.says,
                no_header=False,
            )
        case LineKind.NO_HEADER:
            return replace(heard, reason=line.says, no_header=True)
        case LineKind.REFUSED:
            return replace(heard, refused=line.says)
        case LineKind.LOST:
            return replace(heard, lost=line.says)
        case LineKind.BACK:
            return replace(heard, lost="")
        case LineKind.UNREADABLE | LineKind.READABLE:
            return replace(heard, unreadable=line.kind is LineKind.UNREADABLE)
        case LineKind.ENDED:
            return replace(heard, ended=True)
        case LineKind.HEADER:
            return replace(heard, no_header=False)
        case LineKind.ABOUT:
            return heard
