"""What an emulated gauge set sends, and when: the rows of a log."""

from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path
from typing import Final, Protocol

from co2vent.errors import RefusedInputError, SourceUnavailableError
from co2vent.readings.lines import Line, LineAssembler
from co2vent.readings.log_decoder import LogDecoder
from co2vent.readings.log_writer import LogLayout, metadata_from_setup, metadata_lines
from co2vent.readings.reading import Reading, Setup
from co2vent.wire.source import words_of

MAX_LOG_BYTES: Final = 500_000_000
SIMULATED_LINE: Final = "# simulated: yes"


@dataclass(frozen=True, slots=True)
class FeedRow:
    """A line to send; `reading` is what it says, where it is a reading."""

    due_s: float
    text: str
    reading: Reading | None


class Feed(Protocol):
    """A gauge set that is not there."""

    preamble: tuple[str, ...]  # metadata and header, sent first and again and again
    ended: bool
    setup: Setup
    interval_s: float

    def rows_until(self, elapsed_s: float) -> list[FeedRow]:
        """Return the rows that became due; the first row of all is due at 0."""

    def set_valve(self, is_open: bool) -> None:
        """Move the vent valve, where there is one to move."""


class LogFeed:
    """A recorded vent, row by row as it is in the file, with its own time column."""

    def __init__(self, path: Path, columns: list[str] | None = None) -> None:
        """Read the log.

        Raises:
            SourceUnavailableError: the file can't be opened.
            RefusedInputError: it is no readings log.
        """
        try:
            if path.stat().st_size > MAX_LOG_BYTES:
                raise RefusedInputError(f"{path}: too large to emulate")
            data = path.read_bytes()
        except OSError as error:
            raise SourceUnavailableError(f"{path}: {words_of(error)}; give a log") from error
        assembler = LineAssembler()
        lines = [*assembler.feed(data), *assembler.finish()]
        self.ended = False
        self._next = 0
        self.preamble, self._rows, self.setup = _preamble_and_rows(lines, columns)
        if not any(row.reading for row in self._rows):
            raise RefusedInputError(f"{path}: no readings")
        self.interval_s = _interval_s(self._rows)

    def rows_until(self, elapsed_s: float) -> list[FeedRow]:
        """Return the rows whose time has come."""
        first = self._next
        while self._next < len(self._rows) and self._rows[self._next].due_s <= elapsed_s:
            self._next += 1
        self.ended = self._next == len(self._rows)
        return self._rows[first : self._next]

    def set_valve(self, is_open: bool) -> None:
        """Do nothing: what was recorded can't be changed."""


def _interval_s(rows: list[FeedRow]) -> float:
    """Return the usual time between readings."""
    times = [row.due_s for row in rows if row.reading is not None]
    gaps = sorted(b - a for a, b in pairwise(times) if b > a)
    return gaps[len(gaps) // 2] if gaps else 1.0


def _preamble_and_rows(
    lines: list[Line], columns: list[str] | None
) -> tuple[tuple[str, ...], list[FeedRow], Setup]:
    decoder = LogDecoder(columns)
    preamble: list[str] = []
    if columns is not None:
        preamble.append(",".join(columns))
    header_lines = 0
    rows: list[FeedRow] = []
    due_s, last_s, segment = 0.0, None, 0
    for line in lines:
        if line.text is None or not line.text.strip():
            continue
        known = decoder.columns is not None
        items = decoder.feed_text(f"{line.text}\n")
        if line.text.startswith("#") and not rows:
            preamble.append(line.text)
            continue
        if not known:
            header_lines += 1
            preamble.append(line.text)
            continue
        reading = items[0] if items and isinstance(items[0], Reading) else None
        if reading is not None:
            # time that runs backwards in the log goes on here, with no wait
            if last_s is not None and reading.segment == segment:
                due_s += max(0.0, reading.at_s - last_s)
            last_s, segment = reading.at_s, reading.segment
        rows.append(FeedRow(due_s, line.text, reading))
    if decoder.columns is None:
        decoder.finish()  # says why
    if not any(text.lower().replace(" ", "") == "#simulated:yes" for text in preamble):
        preamble.insert(0, SIMULATED_LINE)
    if header_lines > 1:
        return *_canonical(decoder, rows), decoder.setup
    return tuple(preamble), rows, decoder.setup


def _canonical(decoder: LogDecoder, rows: list[FeedRow]) -> tuple[tuple[str, ...], list[FeedRow]]:
    """Return a log with words above its header in the log format: those can't be repeated."""
    layout = LogLayout(
        decoder.setup,
        quantities=("line_temperature_k", "upper_temperature_k", "ambient_temperature_k",
                    "vent_open", "pressure_2_pa", "vacuum_pa", "room_co2_ppm", "note"),
    )  # fmt: skip
    values = {**metadata_from_setup(decoder.setup), "simulated": "yes"}
    texts = [
        FeedRow(row.due_s, layout.row(row.reading), row.reading)
        for row in rows
        if row.reading is not None
    ]
    return (*metadata_lines(values), layout.header()), texts
