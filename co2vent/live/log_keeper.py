"""What a live session writes down: its readings as the core sees them, and what happened when."""

from collections.abc import Sequence
from datetime import UTC, datetime
from typing import Final

from co2vent import __version__
from co2vent.guidance.events import Event
from co2vent.live.log_text import LogText
from co2vent.readings.columns import Columns
from co2vent.readings.log_decoder import Decoded
from co2vent.readings.reading import Reading, Setup
from co2vent.store.recorder import Recorder

MOST_EARLY: Final = 20  # lines kept from before the first row; a talkative stranger fills nothing


class LogKeeper:
    """Keeps the recording of one source; without a recorder, only the text that goes through it."""

    def __init__(self, recorder: Recorder | None) -> None:
        """Write to `recorder`, which somebody else opens and closes."""
        self._recorder = recorder
        self._text: LogText | None = None
        self._early: list[str] = []  # happened before the recording had its columns

    @property
    def setup(self) -> Setup | None:
        """What a reader of the recording knows of the section; `None` before its first row."""
        return None if self._text is None else self._text.setup

    def use(self, setup: Setup, columns: Columns, source: str) -> bool:
        """Begin the recording, or go on with other columns; return whether it was begun."""
        lines: list[str] = []
        begun = self._text is None
        if self._text is None:
            remarks = {
                "recorded_utc": utc_now("seconds"),
                "recorded_by": f"co2vent {__version__}",
                "recorded_from": source,
            }
            self._text = LogText(setup, columns, remarks)
            lines = self._text.preamble
        elif (header := self._text.use(columns)) is not None:
            lines = [header]
        if self._recorder is not None:
            for line in lines:
                self._recorder.preamble(line)
            for text in self._early:
                self._recorder.event(text)
        self._early = []
        return begun

    def row(self, reading: Reading) -> Decoded | None:
        """Write a reading; return what its row says when it is read."""
        assert self._text is not None
        return self._written(self._text.row(reading))

    def over_range(self, at_s: float) -> Decoded | None:
        """Write that the gauge could not show the value; return how that is read."""
        return None if self._text is None else self._written(self._text.over_range_row(at_s))

    def event(self, text: str) -> None:
        """Write down what happened now."""
        line = f"{utc_now('milliseconds')} {text}"
        if self._text is None:
            self._early = [*self._early, line][:MOST_EARLY]
        elif self._recorder is not None:
            self._recorder.event(line)

    def events(self, events: Sequence[Event]) -> None:
        """Write down what the core says."""
        for event in events:
            self.event(f"{event.at_s:.3f} s {event.kind.value}: {event.text}")

    def _written(self, row_and_item: tuple[str, Decoded | None]) -> Decoded | None:
        row, item = row_and_item
        if self._recorder is not None:
            self._recorder.row(row)
        return item


def utc_now(timespec: str) -> str:
    """Return the wall clock in UTC, ISO 8601."""
    return datetime.now(UTC).isoformat(timespec=timespec).replace("+00:00", "Z")
