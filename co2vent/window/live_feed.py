"""The feed of a live vent: takes from the monitor's thread what it has, and never waits for it."""

import queue
from pathlib import Path

from co2vent.guidance.events import Event
from co2vent.live.monitor import Monitor
from co2vent.live.status import NoteSaid, SourceState, Status, ValveSaid
from co2vent.window.frame import Frame, Mode
from co2vent.window.sentences import spoken
from co2vent.window.traces import Traces
from co2vent.window.words import translate

MOST_AT_ONCE = 20_000  # readings taken in one tick, so that a flood cannot hold the screen up
TROUBLE = {
    SourceState.LOST,
    SourceState.UNREADABLE,
    SourceState.REFUSED,
    SourceState.FAILED,
    SourceState.ENDED,
    SourceState.LATE,
}


def source_words(state: SourceState) -> str:
    """Return what the source is doing, in words."""
    return {
        SourceState.OPENING: translate("Source", "opening"),
        SourceState.WAITING: translate("Source", "waiting for readings"),
        SourceState.LIVE: translate("Source", "live"),
        SourceState.LATE: translate("Source", "readings come late"),
        SourceState.LOST: translate("Source", "source lost"),
        SourceState.UNREADABLE: translate("Source", "not readable"),
        SourceState.ENDED: translate("Source", "the stream has ended"),
        SourceState.REFUSED: translate("Source", "refused"),
        SourceState.FAILED: translate("Source", "this program has a fault"),
    }[state]


class LiveFeed:
    """Readings, view and status of a running monitor."""

    mode = Mode.LIVE

    def __init__(self, monitor: Monitor, *, recording: bool) -> None:
        self.monitor = monitor
        self.traces = Traces()
        self._recording = recording
        self._events: tuple[Event, ...] = ()

    def frame(self) -> Frame:
        """Return the present moment; the age is by the monitor's monotonic clock."""
        self._take_readings()
        self._take_events()
        status = self.monitor.status
        trouble = ""
        if status.source in TROUBLE:
            trouble = source_words(status.source)
            if status.detail and status.detail != trouble:
                trouble += f": {spoken(status.detail)}"
        return Frame(
            view=self.monitor.view,
            rows=len(self.traces),
            age_s=self.monitor.age_s(),
            source=f"{status.label} · {source_words(status.source)}",
            recording=self._recording and not status.not_recording,
            recording_words=self._recording_words(status),
            trouble=trouble,
            events=self._events,
        )

    def _take_readings(self) -> None:
        try:
            for _ in range(MOST_AT_ONCE):
                self.traces.append(self.monitor.readings.get_nowait())
        except queue.Empty:
            return

    def _take_events(self) -> None:
        new: list[Event] = []
        try:
            while True:
                new.append(self.monitor.events.get_nowait())
        except queue.Empty:
            if new:
                self._events += tuple(new)

    @staticmethod
    def _recording_words(status: Status) -> str:
        recorder = status.recorder
        if recorder is None:
            return ""
        if recorder.space_low:
            return translate("Status", "recording; disk nearly full")
        return translate("Status", "recording: {lines} lines").format(lines=recorder.lines)

    @property
    def recording_path(self) -> Path | None:
        """Where the readings are kept; None where they are not, or none has come."""
        recorder = self.monitor.recorder
        return recorder.path if recorder is not None and len(self.traces) else None

    def say_valve(self, *, is_open: bool) -> None:
        """The person says how the vent valve stands."""
        self.monitor.post(ValveSaid(is_open))

    def say_note(self, words: str) -> None:
        """The person writes something down."""
        self.monitor.post(NoteSaid(words))

    def close(self) -> None:
        """End the monitor: it judges the running hold and closes source and recording."""
        self.monitor.stop()
