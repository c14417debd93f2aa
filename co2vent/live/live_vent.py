"""A live vent, step by step: from the source through the core to the recorder. No thread here."""

import logging
import queue
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from co2vent.errors import Co2ventError, RefusedInputError
from co2vent.guidance.events import Event, EventKind
from co2vent.guidance.session import Item, Tick, View
from co2vent.live.clock import LiveClock
from co2vent.live.lateness import LATE_S
from co2vent.live.live_core import LiveCore
from co2vent.live.log_keeper import LogKeeper
from co2vent.live.newest import Newest
from co2vent.live.rejections import Rejections
from co2vent.live.said import Said
from co2vent.live.status import Command, NoteSaid, SourceState, Status, ValveSaid
from co2vent.readings.log_decoder import LogDecoder
from co2vent.readings.reading import Reading, Rejection
from co2vent.sentence import Sentence
from co2vent.store.recorder import Recorder
from co2vent.wire.link import (
    Arrival,
    Back,
    Ended,
    Lines,
    Link,
    Lost,
    PassedOver,
    Readable,
    Unreadable,
)
from co2vent.wire.source import Source

READ_S: Final = 0.05  # a command of the person waits no longer than this for the source
TICK_S: Final = 0.1  # so that staleness shows at its 2 s
LONGEST_SHOWN: Final = 200  # characters of a raw line

_log = logging.getLogger(__name__)


class LiveVent:
    """`open`, `step` until it says no, `finish`: a thread does that, or a test that winds the time.

    Others read the newest `view` and `status`, each replaced whole, and take readings and events
    from queues (none is lost). What they want, they post.
    """

    def __init__(
        self,
        source: Source,
        *,
        columns: Sequence[str] | None = None,
        overrides: Mapping[str, str] | None = None,
        recorder: Recorder | None = None,
        clock: LiveClock | None = None,
        queue_readings: bool = True,
    ) -> None:
        """Prepare; nothing is opened yet.

        `queue_readings`: somebody takes the readings from the queue; else they would pile up.

        Raises:
            RefusedInputError: `columns` or `overrides` are not certain.
        """
        self.clock = clock or LiveClock()
        self._source = source
        stamp = self.clock.now_s if source.stamped_on_arrival else None
        self._decoder = LogDecoder(columns, overrides, stamp)
        self._link = Link(source, self.clock.now_s, self.clock.sleep)
        self.recorder = recorder
        self.status = Status(source=SourceState.OPENING, label=source.label)
        self.readings: queue.SimpleQueue[Reading] = queue.SimpleQueue()
        self.last_line = ""  # newest line as it came, to be shown beside how it is read
        self.refusal: Co2ventError | None = None
        self._queue_readings = queue_readings
        self._commands: queue.SimpleQueue[Command] = queue.SimpleQueue()
        self._log = LogKeeper(recorder)
        self._core = LiveCore(self._decoder.setup, self._log, self._present_s)
        self._said = Said()
        self._newest = Newest()
        self._held_back: list[Item] = []  # recorded; late ones wait to come to the core
        self._rejections = Rejections()
        self._ticked_s = 0.0

    def post(self, command: Command) -> None:
        """Say something to the core: it goes into the stream before the next reading."""
        self._commands.put(command)

    def age_s(self) -> float | None:
        """Return how old the newest reading is; `None` before the first. Call at any time."""
        return self._newest.age_s(self.clock.now_s())

    @property
    def view(self) -> View:
        """The newest view; replaced whole."""
        return self._core.view

    @property
    def events(self) -> "queue.SimpleQueue[Event]":
        """What happened, for one reader to take."""
        return self._core.events

    def open(self) -> None:
        """Open the source.

        Raises:
            SourceUnavailableError: it cannot be opened.
        """
        try:
            self._link.open()
        except Co2ventError as error:
            self._say_status(SourceState.LOST, error.text)
            self._close()
            raise
        self._say_status(SourceState.WAITING)

    def step(self) -> bool:
        """Take what arrives within `READ_S`; return whether there may be more. Never raises."""
        try:
            return self._step() and self.status.source is not SourceState.FAILED
        except RefusedInputError as error:
            self.refusal = error
            self._say_status(SourceState.REFUSED, error.text)
            return False
        except Exception as error:  # noqa: BLE001 - the thread's top: shown, never silent
            self._own_fault(error)
            return self.status.source is not SourceState.FAILED

    def _step(self) -> bool:
        arrivals = self._link.read(READ_S)
        step_s = self.clock.check()
        if step_s is not None:
            self._break_in_time(step_s)
        self._take_commands()
        alive = True
        for arrival in arrivals:
            alive = self._take_arrival(arrival) and alive
        now_s = self.clock.now_s()
        if now_s - self._ticked_s >= TICK_S:
            self._ticked_s = now_s
            self._tick(now_s)
        self._core.show()
        return alive

    def _take_arrival(self, arrival: Arrival) -> bool:
        match arrival:
            case Lines(text):
                self._take_text(text)
            case PassedOver(rows):
                self._core.tell(
                    Sentence(
                        "more data than can be shown in time: {rows} rows were passed over",
                        rows=str(rows),
                    )
                )
            case Lost(reason):
                self._core.tell(Sentence("source lost: {reason}", reason=reason))
                self._say_status(SourceState.LOST, reason)
            case Back(label):
                self._core.tell(Sentence("source back: {label}", label=label))
                self._say_status(SourceState.WAITING)
            case Unreadable(reason):
                self._core.tell(reason)
                self._say_status(SourceState.UNREADABLE, reason)
            case Readable():
                self._say_status(SourceState.WAITING)
            case Ended():
                self._take_text(b"", ended=True)
                self._say_status(SourceState.ENDED, "the stream has ended")
                return False
        return True

    def _take_text(self, text: bytes, *, ended: bool = False) -> None:
        """Decode whole lines a few at a time: each batch is stamped when it is taken up."""
        if ended and self._decoder.columns is not None:
            items = self._decoder.finish()
        else:
            items = self._decoder.feed_bytes(text)
            newest = text.rstrip().rpartition(b"\n")[2]
            self.last_line = newest[:LONGEST_SHOWN].decode("utf-8", "replace")
        for item in items:
            if isinstance(item, Reading):
                self._take_reading(item)
            else:
                self._take_rejection(item)

    def _take_reading(self, reading: Reading) -> None:
        columns = self._decoder.columns
        if self._newest.is_repeat(reading, timed=columns is not None and columns.has_time):
            return
        now_s = self.clock.now_s()
        late_s = self._newest.take(reading, now_s)
        self._record(self._said.put_into(reading))
        if late_s > LATE_S:
            detail = Sentence("readings come {time} late", time=f"{late_s:.1f} s")
            if self.status.source is not SourceState.LATE:
                self._core.tell(detail)
            self._say_status(SourceState.LATE, detail)
            self._newest.count_as_old(late_s, now_s)
            return
        if self.status.source is not SourceState.LIVE:
            self._say_status(SourceState.LIVE)
        self._ticked_s = -TICK_S  # it may be no newer than the last: look at its age at once
        held_back, self._held_back = self._held_back, []
        for item in held_back:
            self._advance(item)

    def _record(self, reading: Reading) -> None:
        """Write the row; what it says when read back waits for the core."""
        columns = self._decoder.columns
        assert columns is not None
        if self._log.use(self._decoder.setup, columns, self._link.label):
            self._core.begin(self._log.setup or self._decoder.setup)
        item = self._log.row(reading)
        if item is not None:
            self._held_back.append(item)
        if self._queue_readings and isinstance(item, Reading):
            self.readings.put(item)

    def _take_rejection(self, rejection: Rejection) -> None:
        item: Item = rejection
        if rejection.over_range:
            read = self._log.over_range(self._present_s())
            if isinstance(read, Rejection):
                item = Rejection(rejection.line, rejection.reason, read.over_range)
        self._advance(item)
        reason = f"line {rejection.line}: {rejection.reason}"
        self.status = replace(self.status, rejected=self.status.rejected + 1, last_rejection=reason)
        words = self._rejections.words(reason, self.clock.now_s())
        if words is not None:
            self._log.event(words)

    def _advance(self, item: Item) -> None:
        try:
            self._core.advance(item)
        except Exception as error:  # noqa: BLE001 - one item must not cost the others
            self._own_fault(error)

    def _tick(self, now_s: float) -> None:
        if self._newest.reading is not None:
            self._advance(Tick(self._newest.present_s(now_s)))
        recorder = self.recorder.state if self.recorder is not None else None
        if recorder != self.status.recorder:
            before, self.status = self.status, replace(self.status, recorder=recorder)
            if before.not_recording != self.status.not_recording:
                self._core.tell(self.status.not_recording or "recording again", keep=False)
            if self.status.disk_nearly_full and not before.disk_nearly_full:
                self._core.tell(self.status.disk_nearly_full)

    def _take_commands(self) -> None:
        while not self._commands.empty():
            match self._commands.get():
                case ValveSaid(is_open):
                    self._said.vent_open = is_open
                    self._log.event(f"the person says: vent {'open' if is_open else 'closed'}")
                    if self._decoder.setup.simulated:
                        self._link.send("open" if is_open else "closed")
                case NoteSaid(text):
                    self._said.add_note(text)

    def _break_in_time(self, step_s: float) -> None:
        """Say that the wall clock stepped; the clock has put a gap into stamped readings."""
        self._core.tell(
            f"the wall clock stepped by {step_s:+.0f} s, or the machine slept: no hold reaches "
            "across it",
            EventKind.TIME_BROKEN,
        )
        if self._newest.reading is not None:
            limit_s = max(self.view.age_limit_s, LATE_S)
            self._advance(Tick(self._newest.reading.at_s + limit_s + LATE_S))

    # --- what is told and kept ------------------------------------------------------------

    def _present_s(self) -> float:
        """Return the present on the time line of the readings."""
        return self._newest.present_s(self.clock.now_s())

    def _say_status(self, source: SourceState, detail: str = "") -> None:
        if self.status.source is SourceState.FAILED:
            return
        self.status = replace(self.status, source=source, label=self._link.label, detail=detail)

    def _own_fault(self, error: Exception) -> None:
        """Start the evidence anew after a fault of this program; give up after many."""
        _log.exception("fault while reading %s", self._link.label)
        self._core.begin_after_fault(error)
        if self._core.gave_up:
            detail = Sentence("this program has a fault; use the mechanical gauge")
            self._say_status(SourceState.FAILED, detail)

    def finish(self) -> None:
        """Judge the running hold as it stands, then close; a session that failed says no more."""
        if self.status.source not in (SourceState.FAILED, SourceState.REFUSED):
            try:
                for item in self._held_back:
                    self._advance(item)
                self._core.finish()
            except Exception:  # noqa: BLE001 - the thread's top: shown, never silent
                _log.exception("fault at the end")
                self._say_status(SourceState.FAILED, "this program has a fault at the end")
        if self._said.note:
            self._log.event(f"note: {self._said.note}")
        self._close()

    def _close(self) -> None:
        self._link.close()
        if self.recorder is not None:
            self.recorder.close()
            self.status = replace(self.status, recorder=self.recorder.state)
