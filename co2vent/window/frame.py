"""What a feed gives the vent page at each tick, and what kinds of feed there are."""

from dataclasses import dataclass
from enum import StrEnum
from typing import Protocol

from co2vent.guidance.events import Event
from co2vent.guidance.session import View
from co2vent.window.traces import Traces


class Mode(StrEnum):
    """Where the readings come from; all but `LIVE` carry a banner."""

    LIVE = "live"
    REPLAY = "replay"
    CLASS = "class"


@dataclass(frozen=True, slots=True, kw_only=True)
class Frame:
    """One moment of a vent, live or recorded."""

    view: View | None
    rows: int  # how many rows of the traces belong to this moment
    rows_ahead: int = 0  # rows of a record that lie after this moment
    age_s: float | None  # of the newest reading, by the feed's clock
    source: str = ""  # words for the status row
    recording: bool | None = None  # None: nothing to record here
    recording_words: str = ""
    blind: bool = False  # the view has had its verdict taken out
    trouble: str = ""  # why there are no readings, where that is known
    events: tuple[Event, ...] | None = (
        None  # with those the core does not know of; None: the view's
    )
    notes: tuple[Event, ...] = ()  # written on a recording; in `events` too


class Feed(Protocol):
    """Readings for the vent page. `frame` never waits."""

    mode: Mode
    traces: Traces

    def frame(self) -> Frame:
        """Return the present moment."""

    def close(self) -> None:
        """Stop threads and let go of files."""
