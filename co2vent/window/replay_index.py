"""A recorded vent run through the core in a thread of its own, keeping the view at each moment.

The core is handed over from reading to reading, so a seek cannot run it backwards; instead the
frozen views are kept as they were. Short records keep every reading's view, long ones a few
thousand and every moment at which something happened.
"""

import threading
from bisect import bisect_left, bisect_right
from collections.abc import Collection, Sequence
from dataclasses import dataclass
from typing import Final

from co2vent.guidance.events import EventKind
from co2vent.guidance.session import View, advance, begin, finish, view
from co2vent.readings.log_file import LogFile
from co2vent.readings.reading import Reading
from co2vent.window.traces import Traces

MOST_MOMENTS: Final = 6000  # a view with its curves takes some kilobytes


@dataclass(frozen=True, slots=True)
class Moment:
    """The view after a reading. `play_s` never goes back, even where the record's time does."""

    play_s: float
    rows: int
    view: View


class ReplayIndex:
    """Runs the record once; `moments` grows while it runs."""

    def __init__(self, log: LogFile) -> None:
        self._log: LogFile | None = log  # until it has run: then the traces hold what is shown
        self._span_s = float(log.readings.at_s[-1] - log.readings.at_s[0])
        self.traces, breaks = Traces.of(log.readings)
        self._breaks: list[int] = breaks.tolist()
        self.setup = log.setup
        self.rows_lost = len(log.rejections)
        self.moments: list[Moment] = []
        self._times_s: list[float] = []
        self.done = False
        self.failure: str | None = None
        self._stop = threading.Event()
        self._thread = threading.Thread(target=self._run, name="replay", daemon=True)

    def start(self) -> None:
        """Begin to run the record."""
        self._thread.start()

    def close(self) -> None:
        """Stop the thread and wait for it."""
        self._stop.set()
        if self._thread.is_alive():
            self._thread.join(timeout=5.0)

    def wait(self, timeout_s: float) -> bool:
        """Wait until the whole record has run; return whether it has."""
        self._thread.join(timeout_s)
        return self.done

    @property
    def known_until_s(self) -> float:
        """The play time [s] up to which the record has run."""
        return self._times_s[-1] if self._times_s else 0.0

    @property
    def length_s(self) -> float:
        """The play time [s] of the whole record; an estimate until it has run."""
        if self.done:
            return self.known_until_s
        return max(self._span_s, self.known_until_s)

    def at(self, play_s: float) -> Moment | None:
        """Return the newest moment not later than `play_s`; the first one before that."""
        if not self.moments:
            return None
        place = bisect_right(self._times_s, play_s, hi=len(self.moments)) - 1
        return self.moments[max(0, place)]

    def play_time(self, at_s: float) -> float:
        """Return the play time [s] of the first moment at or after `at_s` of the record."""
        for moment in self.moments:
            if moment.view.latest is not None and moment.view.latest.at_s >= at_s:
                return moment.play_s
        return self.known_until_s

    def marks(self, hidden: Collection[EventKind] = ()) -> Sequence[float]:
        """Return the play times [s] at which something happened, in order.

        Where all that happened is of the `hidden` kinds there is no mark.
        """
        found: list[float] = []
        last_events = 0
        for moment in self.moments:
            new = moment.view.events[last_events:]
            if any(event.kind not in hidden for event in new):
                found.append(moment.play_s)
            last_events = len(moment.view.events)
        return found

    def _keep(self, play_s: float, rows: int, seen: View) -> None:
        self.moments.append(Moment(play_s, rows, seen))
        self._times_s.append(play_s)

    def _run(self) -> None:
        try:
            self._run_core()
        except Exception as error:  # noqa: BLE001 - shown on the screen; the trace stays usable
            self.failure = f"{type(error).__name__}: {error}"
        self._log = None
        self.done = True

    def _rows_until(self, readings: int) -> int:
        """Return how many rows of the traces the first `readings` readings take."""
        return readings + bisect_left(self._breaks, readings - 1)

    def _run_core(self) -> None:
        log = self._log
        assert log is not None
        readings = log.readings
        every = len(readings) > MOST_MOMENTS
        spacing_s = self.length_s / MOST_MOMENTS if every else 0.0
        session = begin(log.setup)
        taken, shift_s, last_at_s, kept_s = 0, -float(readings.at_s[0]), None, -1e9
        play_s = 0.0
        for item in log.items():
            if self._stop.is_set():
                return
            session, events = advance(session, item)
            if not isinstance(item, Reading):
                continue
            if last_at_s is not None and item.at_s < last_at_s:
                shift_s += last_at_s - item.at_s + 1.0
            last_at_s = item.at_s
            play_s = item.at_s + shift_s
            taken += 1
            if events or play_s - kept_s >= spacing_s:
                self._keep(play_s, self._rows_until(taken), view(session))
                kept_s = play_s
        session, _events = finish(session)
        self._keep(play_s, self._rows_until(taken) if taken else 0, view(session))
