"""Plays a recorded vent: play, pause, speed, seek, jump. No Qt, no clock of its own."""

from bisect import bisect_left, bisect_right
from collections.abc import Callable
from typing import Final

from co2vent.guidance.events import Event
from co2vent.guidance.session import View
from co2vent.window.blind import CONCLUDED, blinded, hidden_name
from co2vent.window.frame import Frame, Mode
from co2vent.window.replay_index import ReplayIndex
from co2vent.window.replay_notes import ReplayNotes
from co2vent.window.words import translate

SPEEDS: Final = (0.5, 1.0, 2.0, 5.0, 10.0, 30.0, 60.0, 300.0)


class ReplayFeed:
    """The feed of a recorded vent."""

    mode = Mode.REPLAY

    def __init__(
        self, index: ReplayIndex, name: str, clock: Callable[[], float], speed: float = 1.0,
        notes: ReplayNotes | None = None, torn: bool = False,
    ) -> None:  # fmt: skip
        self.index = index
        self._torn = torn
        self.notes = notes or ReplayNotes()
        self.traces = index.traces
        self._name = name
        self._clock = clock
        self._ticked_s = clock()
        self.position_s = 0.0
        self.playing = False
        self.speed = speed
        self.wanted_s: float | None = None  # a place beyond what has run yet
        self.blind = False

    def frame(self) -> Frame:
        """Return the present moment; while playing, time goes on."""
        now_s = self._clock()
        if self.playing:
            self.position_s += (now_s - self._ticked_s) * self.speed
            if self.position_s >= self.index.known_until_s:
                self.position_s = self.index.known_until_s
                if self.index.done:
                    self.playing = False
        self._ticked_s = now_s
        if self.wanted_s is not None:
            self.position_s = min(self.wanted_s, self.index.known_until_s)
            if self.index.done or self.index.known_until_s >= self.wanted_s:
                self.wanted_s = None
        moment = self.index.at(self.position_s)
        name = hidden_name() if self.blind else self._name
        if moment is None:
            return Frame(view=None, rows=0, age_s=None, source=name, trouble=self._trouble())
        age_s: float | None = max(0.0, self.position_s - moment.play_s)
        if self.index.failure is not None and moment is self.index.moments[-1]:
            age_s = None  # nothing is known from here on
        return Frame(
            view=blinded(moment.view) if self.blind else moment.view,
            blind=self.blind,
            rows=moment.rows,
            rows_ahead=0 if self.blind else len(self.traces) - moment.rows,
            age_s=age_s,
            source=name,
            recording_words=self._progress(),
            trouble=self._trouble(),
            events=self._events(moment.view),
            notes=() if self.blind else self.notes.events,
        )

    def _events(self, view: View) -> tuple[Event, ...] | None:
        """Return the events so far and all notes of the recording, which are known beforehand."""
        if self.blind or not self.notes.events:
            return None
        return tuple(sorted((*view.events, *self.notes.events), key=lambda event: event.at_s))

    def _progress(self) -> str:
        if self.index.done:
            return self._lost()
        share = self.index.known_until_s / max(1.0, self.index.length_s)
        return translate("Replay", "reading the record: {percent} %").format(
            percent=int(100 * share)
        )

    def _lost(self) -> str:
        """Say what the record lost, if anything: the trace has none of it."""
        words = []
        if self.index.rows_lost:
            words.append(
                translate("Replay", "rows lost: {count}").format(count=self.index.rows_lost)
            )
        if self._torn:
            words.append(translate("Replay", "cut off at the end"))
        return " · ".join(words)

    def _trouble(self) -> str:
        if self.index.failure is None:
            return ""
        return translate("Replay", "the record could not be judged to its end: {error}").format(
            error=self.index.failure
        )

    def toggle(self) -> None:
        """Play or pause; from the end, play from the start."""
        if not self.playing and self.index.done and self.position_s >= self.index.known_until_s:
            self.position_s = 0.0
        self.playing = not self.playing

    def seek(self, position_s: float) -> None:
        """Go to `position_s` of the play time, as far as the record has run."""
        self.wanted_s = None
        self.position_s = min(max(0.0, position_s), self.index.known_until_s)

    def next_mark(self) -> None:
        """Go to the next thing that happened."""
        marks = self._marks()
        place = bisect_right(marks, self.position_s)
        self.seek(marks[place] if place < len(marks) else self.index.known_until_s)

    def previous_mark(self) -> None:
        """Go to the last thing that happened before now."""
        marks = self._marks()
        place = bisect_left(marks, self.position_s) - 1
        self.seek(marks[place] if place >= 0 else 0.0)

    def _marks(self) -> list[float]:
        """Return the play times [s] of what happened and of the notes.

        A blind replay stops neither at notes nor where a conclusion was drawn: the stop itself
        would tell of it.
        """
        if self.blind:
            return list(self.index.marks(CONCLUDED))
        notes = (self.index.play_time(one.at_s) for one in self.notes.events)
        return sorted({*self.index.marks(), *notes})

    def faster(self) -> None:
        """Take the next higher speed."""
        self.speed = min((s for s in SPEEDS if s > self.speed), default=SPEEDS[-1])

    def slower(self) -> None:
        """Take the next lower speed."""
        self.speed = max((s for s in SPEEDS if s < self.speed), default=SPEEDS[0])

    def close(self) -> None:
        """Stop the thread."""
        self.index.close()
