"""Keeps a source open: whole lines while it lives, LOST and BACK when it goes and comes again."""

import time
from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

from co2vent.errors import SourceLostError, SourceUnavailableError
from co2vent.wire import flood
from co2vent.wire.flood import FloodGuard
from co2vent.wire.lines import LineAssembler
from co2vent.wire.source import NO_READING, Source

FIRST_RETRY_S: Final = 0.5  # a re-plugged adapter needs about this long to appear
LONGEST_RETRY_S: Final = 5.0  # a person waiting at the gauge should not wait longer


@dataclass(frozen=True, slots=True)
class Lines:
    """Log text: whole lines from a wire, bytes as they come from a file."""

    text: bytes


@dataclass(frozen=True, slots=True)
class Lost:
    """The source has gone; it is tried again."""

    reason: str


@dataclass(frozen=True, slots=True)
class Back:
    """The source is open again, perhaps under another name."""

    label: str


@dataclass(frozen=True, slots=True)
class Unreadable:
    """Bytes arrive, but they are no text."""

    reason: str


@dataclass(frozen=True, slots=True)
class Readable:
    """The text can be read again."""


@dataclass(frozen=True, slots=True)
class PassedOver:
    """Rows came faster than they can be taken; the older of them were left out."""

    rows: int


@dataclass(frozen=True, slots=True)
class Ended:
    """The stream has ended for good."""


Arrival = Lines | Lost | Back | Unreadable | Readable | PassedOver | Ended


class Link:
    """A source with its reconnection. Used by one thread."""

    def __init__(
        self,
        source: Source,
        now_s: Callable[[], float] = time.monotonic,
        sleep: Callable[[float], None] = time.sleep,
    ) -> None:
        """Wrap `source`; nothing is opened yet."""
        self.source = source
        self._now_s = now_s
        self._sleep = sleep
        # a file is not judged by its bytes: its encoding is the decoder's business
        self._lines: LineAssembler | None = (
            LineAssembler(skip_first=source.joins_midway) if source.stamped_on_arrival else None
        )
        self._open = False
        self._said_unreadable = False
        self._flood = FloodGuard(now_s())
        self._retry_s = FIRST_RETRY_S
        self._retry_at_s = 0.0

    @property
    def label(self) -> str:
        """The source's name as shown."""
        return self.source.label

    def open(self) -> None:
        """Open the source the first time; raises `SourceUnavailableError`."""
        self.source.open()
        self._open = True

    def read(self, timeout_s: float) -> list[Arrival]:
        """Return what happened within `timeout_s`; never raises for a source that has gone."""
        if not self._open:
            return self._try_again(timeout_s)
        try:
            data = self.source.read(timeout_s)
        except SourceLostError as error:
            return [*self._drop(), Lost(error.text)]
        if data is None:
            rest = self._lines.rest() if self._lines is not None else b""
            return [Lines(rest), Ended()] if rest else [Ended()]
        if not data:
            return []
        self._retry_s = FIRST_RETRY_S
        if self._lines is None:
            return [Lines(data)]
        flooded = self._flood.flooded(data.count(b"\n"), self._now_s())
        if flooded and self.source.joins_midway:
            self._sleep(flood.PAUSE_S)
            data += self._all_that_waits()
            self._flood.rows += data.count(b"\n")
        text, passed_over = self._lines.feed(data), 0
        if flooded and self.source.joins_midway:
            text, passed_over = flood.newest_rows(text)
        arrivals: list[Arrival] = self._readability()
        if passed_over:
            arrivals.append(PassedOver(passed_over))
        return [*arrivals, Lines(text)] if text else arrivals

    def send(self, text: str) -> None:
        """Send a line to a simulated gauge set, where there is one to hear it."""
        if self._open:
            try:
                self.source.send(text)
            except SourceLostError:
                return  # the next read finds it gone and says so

    def close(self) -> None:
        """Close the source."""
        self.source.close()
        self._open = False

    def _all_that_waits(self) -> bytes:
        """Return what is there, unless it never ends."""
        parts: list[bytes] = []
        try:
            while len(parts) < flood.MOST_READS and (part := self.source.read(0.0)):
                parts.append(part)
        except SourceLostError:
            pass  # the next read says so
        return b"".join(parts)

    def _drop(self) -> list[Arrival]:
        """Close a source that has gone; the line in progress is forgotten with it."""
        self.source.close()
        self._open = False
        self._retry_at_s = self._now_s() + self._retry_s
        if self._lines is None:
            # joins the torn line, if there is one, so that its last number is none
            return [Lines(f" {NO_READING}: the file was cut here\n".encode())]
        self._lines.cut()
        said, self._said_unreadable = self._said_unreadable, False
        return [Readable()] if said else []

    def _try_again(self, timeout_s: float) -> list[Arrival]:
        """Wait for the next try, at most `timeout_s`; then try."""
        wait_s = self._retry_at_s - self._now_s()
        if wait_s > 0.0:
            self._sleep(min(wait_s, timeout_s))
            if wait_s > timeout_s:
                return []
        try:
            self.source.open()
        except SourceUnavailableError:
            self._retry_s = min(2.0 * self._retry_s, LONGEST_RETRY_S)
            self._retry_at_s = self._now_s() + self._retry_s
            return []
        # the next failure waits longer until data has come: a server that only accepts is no gauge
        self._retry_s = min(2.0 * self._retry_s, LONGEST_RETRY_S)
        self._open = True
        return [Back(self.source.label)]

    def _readability(self) -> list[Arrival]:
        now = self._lines is not None and self._lines.unreadable
        before, self._said_unreadable = self._said_unreadable, now
        if now and not before:
            return [Unreadable("data unreadable: check baud rate, parity and cable")]
        return [Readable()] if before and not now else []
