"""A source tried before the job: its raw lines, and how each is read."""

import csv
import time
from collections.abc import Generator, Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import Enum, auto
from typing import Final

from co2vent.errors import RefusedInputError
from co2vent.readings.cells import is_blank
from co2vent.readings.columns import Role
from co2vent.readings.lines import LineAssembler
from co2vent.readings.log_decoder import LogDecoder
from co2vent.readings.reading import Reading, Rejection, Setup
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
from co2vent.wire.polling import PolledSource
from co2vent.wire.source import NO_READING, Source

READ_S: Final = 0.1  # a person who stops the test waits no longer than this
AT_ONCE_S: Final = 0.01  # what a file gives without waiting lay there before
TAIL_BYTES: Final = 64  # of the stream as it came, shown where it holds no line


class LineKind(Enum):
    """What a line is to the decoder, or what happened to the source."""

    READING = auto()
    REJECTED = auto()
    HEADER = auto()
    ABOUT = auto()  # metadata
    NO_HEADER = auto()  # nothing says yet what its cells mean
    REFUSED = auto()  # what its cells mean is not certain: a job would stop here
    LOST = auto()
    BACK = auto()
    UNREADABLE = auto()
    READABLE = auto()
    ENDED = auto()


@dataclass(frozen=True, slots=True)
class ProbedCell:
    """One cell: the name of its column, the text as it came, and what it is taken for."""

    name: str
    raw: str
    role: Role | None  # None: the column has no meaning here
    understood: bool  # False: the text is no value that the column can have


@dataclass(frozen=True, slots=True)
class ProbedLine:
    """A line as it came, and what it says: a reading, or words on what it is or why it is none."""

    raw: str
    reading: Reading | None
    says: str
    kind: LineKind = LineKind.READING
    reply: str = ""  # registers or answer behind the line, where the instrument was asked
    cells: tuple[ProbedCell, ...] = ()
    setup: Setup | None = None


@dataclass(frozen=True, slots=True)
class Batch:
    """What one look at the source gave, perhaps nothing."""

    lines: tuple[ProbedLine, ...] = ()
    lay_there: bool = False  # in a file, before anything was seen to be added
    bytes_heard: int = 0  # so far, also those that made no line
    tail: bytes = b""
    passed_over: int = 0  # rows of this look that came faster than they can be taken


class _Tap:
    """A source that keeps the end of what came through it, and how much it was."""

    def __init__(self, source: Source) -> None:
        self._source = source
        self.joins_midway = source.joins_midway
        self.stamped_on_arrival = source.stamped_on_arrival
        self.label = source.label
        self.heard = 0
        self.tail = b""

    def open(self) -> None:
        self._source.open()
        self.label = self._source.label

    def read(self, timeout_s: float) -> bytes | None:
        data = self._source.read(timeout_s)
        if data:
            self.heard += len(data)
            self.tail = (self.tail + data[-TAIL_BYTES:])[-TAIL_BYTES:]
        return data

    def close(self) -> None:
        self._source.close()

    def send(self, text: str) -> None:
        self._source.send(text)


def probe(
    source: Source,
    seconds: float,
    columns: Sequence[str] | None = None,
    overrides: Mapping[str, str] | None = None,
) -> Iterator[ProbedLine]:
    """Yield the lines of `source` for so many seconds, as they come; then close it.

    Raises:
        SourceUnavailableError: it cannot be opened.
        RefusedInputError: `columns` or `overrides` are not certain.
    """
    for batch in probe_batches(source, seconds, columns, overrides):
        yield from batch.lines


def probe_batches(
    source: Source,
    seconds: float,
    columns: Sequence[str] | None = None,
    overrides: Mapping[str, str] | None = None,
) -> Generator[Batch, None, None]:
    """Yield what comes, at least every 0.1 s and at once when open; close the source at the end.

    Closing the generator closes the source. Raises as `probe` does.
    """
    started_s = time.monotonic()
    stamp = (lambda: time.monotonic() - started_s) if source.stamped_on_arrival else None
    decoder = LogDecoder(columns, overrides, stamp)
    tap = _Tap(source)
    link = Link(tap)
    link.open()
    whole = LineAssembler() if stamp is None else None  # a file comes in pieces, not in lines
    lay_there = stamp is None
    try:
        yield Batch()
        while time.monotonic() - started_s < seconds:
            looked_s = time.monotonic()
            arrivals = link.read(READ_S)
            lay_there = lay_there and time.monotonic() - looked_s < AT_ONCE_S
            reply = source.reply if isinstance(source, PolledSource) else ""
            lines = [
                line for arrival in arrivals for line in _lines(decoder, whole, arrival, reply)
            ]
            passed_over = sum(a.rows for a in arrivals if isinstance(a, PassedOver))
            yield Batch(tuple(lines), lay_there, tap.heard, tap.tail, passed_over)
            if any(isinstance(arrival, Ended) for arrival in arrivals):
                return
    finally:
        link.close()


def _lines(
    decoder: LogDecoder, whole: LineAssembler | None, arrival: Arrival, reply: str
) -> Iterator[ProbedLine]:
    match arrival:
        case Lines(text) if whole is not None:
            for line in whole.feed(text):
                yield _read(decoder, line.text or "", "")
        case Lines(text):
            for raw in text.splitlines():
                yield _read(decoder, raw.decode("utf-8", "backslashreplace"), reply)
        case Lost(reason):
            yield ProbedLine("", None, reason, LineKind.LOST, reply)
        case Unreadable(reason):
            yield ProbedLine("", None, reason, LineKind.UNREADABLE)
        case Back(label):
            yield ProbedLine("", None, f"open again: {label}", LineKind.BACK)
        case Readable():
            yield ProbedLine("", None, "readable again", LineKind.READABLE)
        case Ended():
            yield ProbedLine("", None, "the stream has ended", LineKind.ENDED)


def _read(decoder: LogDecoder, raw: str, reply: str) -> ProbedLine:
    had_columns = decoder.columns is not None
    try:
        items = decoder.feed_text(raw + "\n")
    except RefusedInputError as error:
        return ProbedLine(raw, None, str(error), LineKind.REFUSED, reply)
    for item in items:
        if isinstance(item, Rejection):
            said = _said_by_the_wire(raw) or item.reason
            cells = _cells(decoder, raw, None)
            return ProbedLine(raw, None, said, LineKind.REJECTED, reply, cells)
        cells = _cells(decoder, raw, item)
        return ProbedLine(raw, item, "reading", LineKind.READING, reply, cells, decoder.setup)
    if _said_by_the_wire(raw):
        return ProbedLine(raw, None, _said_by_the_wire(raw), LineKind.REJECTED, reply)
    if raw.startswith("#"):
        return ProbedLine(raw, None, "about the section", LineKind.ABOUT)
    if decoder.columns is None:
        says = "no header yet: name the columns, or wait for one"
        return ProbedLine(raw, None, says, LineKind.NO_HEADER, reply)
    return ProbedLine(raw, None, "header again" if had_columns else "header", LineKind.HEADER)


def _said_by_the_wire(raw: str) -> str:
    """Return why the wire put this line in place of data; empty for a line of the instrument."""
    return raw.removeprefix(f"{NO_READING}: ") if raw.startswith(f"{NO_READING}: ") else ""


def _cells(decoder: LogDecoder, raw: str, reading: Reading | None) -> tuple[ProbedCell, ...]:
    """Return the cells of a row; none where they cannot be put under their names."""
    columns = decoder.columns
    if columns is None or decoder.delimiter is None:
        return ()
    try:
        rows = list(csv.reader([raw], delimiter=decoder.delimiter, skipinitialspace=True))
    except csv.Error:
        return ()
    texts = [text.strip() for text in rows[0]] if rows else []
    roles = {column.index: role for role, column in columns.by_role.items()}
    return tuple(
        ProbedCell(
            columns.names[at],
            text,
            roles.get(at),
            is_blank(text) or at not in roles or _understood(roles[at], reading),
        )
        for at, text in enumerate(texts[: columns.count])
    )


def _understood(role: Role, reading: Reading | None) -> bool:
    """Return whether a cell that is not blank became a value."""
    if reading is None:
        return False
    value = {
        Role.LINE_TEMPERATURE: reading.line_temperature_k,
        Role.UPPER_TEMPERATURE: reading.upper_temperature_k,
        Role.AMBIENT_TEMPERATURE: reading.ambient_temperature_k,
        Role.PRESSURE_2: reading.pressure_2_pa,
        Role.VACUUM: reading.vacuum_pa,
        Role.ROOM_CO2: reading.room_co2_ppm,
        Role.VENT_VALVE: reading.vent_open,
    }
    return role not in value or value[role] is not None
