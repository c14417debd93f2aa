"""The log format, piece by piece: bytes or text in, readings and rejections out, no I/O.

Any cutting of the stream gives the same items. What cannot be a reading is rejected with its line
number and reason; nothing is guessed, and no word ever becomes a number.
"""

import csv
import zlib
from collections.abc import Callable, Mapping, Sequence
from typing import Final

from co2vent.errors import RefusedInputError
from co2vent.readings.cells import is_number, is_over_range
from co2vent.readings.columns import HOW_TO_NAME, Columns, Role, looks_like_header, resolve_columns
from co2vent.readings.lines import MAX_LINE_BYTES, Line, LineAssembler
from co2vent.readings.metadata import (
    METADATA_KEYS,
    build_setup,
    check_values,
    merge_metadata,
    split_metadata_line,
)
from co2vent.readings.reading import Reading, Rejection, Setup
from co2vent.readings.rows import RowReader
from co2vent.readings.unit_words import is_unit_text

DELIMITERS: Final = ("\t", ";", ",")  # a header with a tab or semicolon has commas inside names
MAX_PREAMBLE_LINES: Final = 1000  # a file that shows no header by then has none
ROW_DAMAGED: Final = "the row's check sum doesn't match: the line is damaged"

Decoded = Reading | Rejection


class LogDecoder:
    """Incremental decoder of one log or live stream.

    Args:
        columns: names that replace or give the header (`--columns`).
        overrides: metadata given as options; they win over the log's own.
        stamp: gives the time [s] of a row that arrives without one (live sources); without it a
            log without a time column is refused.

    All feeding methods raise `RefusedInputError` where the meaning of the log is not certain.
    """

    def __init__(
        self,
        columns: Sequence[str] | None = None,
        overrides: Mapping[str, str] | None = None,
        stamp: Callable[[], float] | None = None,
    ) -> None:
        """Start with an empty stream; wrong `columns` or `overrides` are refused here."""
        self.metadata: dict[str, str] = {}
        self.columns: Columns | None = None
        self.skipped_lines = 0  # lines before the header, repeated headers
        self.delimiter: str | None = None
        self._overrides = dict(overrides or {})
        self._stamp = stamp
        self._assembler = LineAssembler()
        self._names_given = columns is not None
        self._rows: RowReader | None = None
        self._setup: Setup | None = None
        self._header_text: str | None = None
        self._possible_header: list[str] | None = None  # awaits a row of units
        self._refusal: str | None = None  # why the newest header-like line is none
        self._blocked = False  # a later header was not understood: its rows mean nothing
        self._last_row_cells: list[str] | None = None
        self.line_of_item: list[int] = []  # line numbers of the items of the last call
        build_setup(self._overrides)
        if columns is not None:
            self.columns = resolve_columns(columns, needs_time=stamp is None)

    @property
    def setup(self) -> Setup:
        """What is known so far; fixed from the first reading on."""
        if self._setup is not None:
            return self._setup
        names = {}
        if self.columns is not None:
            unit = self.columns.pressure.pressure_unit
            line = self.columns.by_role.get(Role.LINE_TEMPERATURE)
            names["pressure_unit"] = unit.name if unit is not None else "bar_g"
            if line is not None and line.temperature_unit is not None:
                names["temperature_unit"] = line.temperature_unit
        return build_setup(merge_metadata(self.metadata, self._overrides), **names)

    @property
    def bad_cells(self) -> dict[str, int]:
        """Cells of optional columns that were no value, counted by column name."""
        return {} if self._rows is None else self._rows.bad_cells

    def feed_bytes(self, data: bytes) -> list[Decoded]:
        """Take the next bytes of the source; return what their ended lines say."""
        return self._decode(self._assembler.feed(data))

    def feed_text(self, text: str) -> list[Decoded]:
        """Take the next characters of the source; return what their ended lines say."""
        return self._decode(self._assembler.feed_text(text))

    def finish(self) -> list[Decoded]:
        """Return what the end of the source leaves.

        Raises:
            RefusedInputError: the log had no usable header.
        """
        items = self._decode(self._assembler.finish())
        if self.columns is None:
            raise RefusedInputError(self._refusal or f"no pressure column: {HOW_TO_NAME}")
        return items

    @property
    def steady_rows(self) -> RowReader | None:
        """The row reader, while plain comma-separated rows are all that is expected."""
        steady = self._setup is not None and not self._blocked and self.delimiter == ","
        return self._rows if steady and self._assembler.between_lines else None

    @property
    def next_line(self) -> int:
        """The number of the line that comes next."""
        return self._assembler.next_number

    def rows_passed(self, count: int, last_line: str) -> None:
        """Take note of rows that were read past the decoder, the last of them as text."""
        self._assembler.next_number += count
        self._last_row_cells = _split(last_line.strip(), ",")

    def _decode(self, lines: Sequence[Line]) -> list[Decoded]:
        items: list[Decoded] = []
        self.line_of_item = []
        for line in lines:
            item = self._decode_line(line)
            if item is not None:
                items.append(item)
                self.line_of_item.append(line.number)
        return items

    def _decode_line(self, line: Line) -> Decoded | None:
        if line.text is None:
            return Rejection(line.number, f"longer than {MAX_LINE_BYTES} bytes")
        text = line.text.strip(" \xa0\0")
        if not text.strip():
            return None
        if text.startswith(("#", '"#')):
            return self._take_metadata(line.number, text.strip('"'))
        if self.columns is None:
            self._look_for_header(line.number, text)
            return None
        return self._decode_row(line, text, self.columns)

    def _take_metadata(self, number: int, text: str) -> Rejection | None:
        pair = split_metadata_line(text)
        if pair is None:
            return None
        key, value = pair
        old = self.metadata.get(key)
        if key in METADATA_KEYS and value != (old or ""):
            if self._setup is not None:
                return Rejection(number, f"{key} came after the first reading; not used")
            try:
                # Only the value itself: what it needs beside it may still come.
                check_values({key: value})
            except RefusedInputError as error:
                if self._stamp is None and key not in self._overrides:
                    raise RefusedInputError(f"line {number}: {error}") from None
                return Rejection(number, str(error))
        self.metadata[key] = value
        return None

    def _look_for_header(self, number: int, text: str) -> None:
        delimiter = next((d for d in DELIMITERS if d in text), ",")
        cells = _split(text, delimiter) or [text]
        pending, self._possible_header = self._possible_header, None
        if pending is not None and len(pending) == len(cells) and all(map(is_unit_text, cells)):
            cells = [
                # A pattern such as hh:mm:ss says how, not in which unit; mm:ss says minutes.
                name if not unit or "h:m" in unit.lower() else f"{name} [{unit}]"
                for name, unit in zip(pending, cells, strict=True)
            ]
        elif any(map(is_number, cells)):
            self.skipped_lines += 1
            if self._refusal is not None:
                raise RefusedInputError(self._refusal)
            if self._stamp is None and self.skipped_lines > MAX_PREAMBLE_LINES:
                raise RefusedInputError(
                    f"no header row that names a pressure column: {HOW_TO_NAME}"
                )
            return
        try:
            self.columns = resolve_columns(cells, needs_time=self._stamp is None)
        except RefusedInputError as error:
            self.skipped_lines += 1
            self._possible_header = cells
            if looks_like_header(cells):
                self._refusal = f"line {number}: {error}"
            return
        self.delimiter = delimiter
        self._header_text = text

    def _decode_row(self, line: Line, text: str, columns: Columns) -> Decoded | None:
        if self.delimiter is None:
            self.delimiter = next((d for d in DELIMITERS if d in text), ",")
        if text == self._header_text:
            self.skipped_lines += 1
            self._blocked = False
            return None
        cells = _split(text, self.delimiter)
        if cells is None:
            return Rejection(line.number, "a quote is not closed")
        if not any(map(is_number, cells)):
            switched = self._take_header_again(line.number, text, cells)
            if switched is not None:
                return switched.pop() if switched else None
        if self._blocked:
            return Rejection(line.number, "the header above it was not understood")
        if not line.ended:
            trusted = self._trusted_tail(cells, columns)
            if trusted is None:
                return Rejection(line.number, "the last line is cut off")
            cells = trusted
        check = columns.by_role.get(Role.ROW_CHECK)
        if check is not None and not _row_check_holds(text, self.delimiter, check.index, cells):
            cut_off = f"the last row is cut off ({len(text.encode())} bytes)"
            return Rejection(line.number, ROW_DAMAGED if line.ended else cut_off)
        if self._rows is None:
            self._rows = RowReader(columns, self.setup, self.delimiter != ",", self._stamp)
        item = self._rows.read(line.number, cells)
        if isinstance(item, Reading):
            self._last_row_cells = cells
            if self._setup is None:
                self._setup = self._rows.setup
        elif self._setup is None:
            self._rows = None  # metadata may still come before the first reading
        return item

    def _take_header_again(
        self, number: int, text: str, cells: list[str]
    ) -> list[Rejection] | None:
        """Return `None` for no header, an empty list for one taken, a rejection for a bad one."""
        if self._names_given:
            first = self._setup is None and not any(map(is_over_range, cells))
            return [] if looks_like_header(cells) or first else None
        try:
            columns = resolve_columns(cells, needs_time=self._stamp is None)
        except RefusedInputError as error:
            if not looks_like_header(cells):
                return None
            self._blocked = True
            return [Rejection(number, f"another header: {error}")]
        self.skipped_lines += 1
        self._blocked = False
        self._header_text = text
        if columns != self.columns:
            self.columns = columns
            if self._rows is not None:
                self._rows = self._rows.with_columns(columns)
        return []

    def _trusted_tail(self, cells: list[str], columns: Columns) -> list[str] | None:
        """Return the cells of a last line that has no line end, as far as they can be trusted.

        A number that was cut short is another number: the last cell needs as many decimals as in
        the row before. Without them an optional cell is left out, and a pressure voids the row.
        """
        before = self._last_row_cells
        if Role.ROW_CHECK in columns.by_role:
            return cells
        if len(cells) != (columns.count if before is None else len(before)):
            return None
        if before is None or not is_number(cells[-1]) or not is_number(before[-1]):
            return cells
        if len(_decimals(cells[-1])) >= len(_decimals(before[-1])):
            return cells
        last = len(cells) - 1
        vital = (Role.PRESSURE, Role.ELAPSED, Role.TIME)
        if any(role in columns.by_role and columns.by_role[role].index == last for role in vital):
            return None
        return [*cells[:-1], ""]


def _decimals(cell: str) -> str:
    return cell.replace(",", ".").partition(".")[2]


def _split(text: str, delimiter: str) -> list[str] | None:
    """Return the cells without their blanks and quotes, `None` where a quote is not closed."""
    if '"' not in text:
        return [cell.strip(" \xa0\0") for cell in text.split(delimiter)]
    try:
        rows = list(csv.reader([text], delimiter=delimiter, strict=True, skipinitialspace=True))
    except csv.Error:
        return None
    return [cell.strip(" \xa0\0") for cell in rows[0]] if len(rows) == 1 else None


def _row_check_holds(text: str, delimiter: str, index: int, cells: list[str]) -> bool:
    """Tell whether the last cell is the CRC-32 of the line before it, as 8 hexadecimal digits."""
    body, _, check = text.rpartition(delimiter)
    if index != len(cells) - 1 or len(check) != 8:
        return False
    return check.lower() == f"{zlib.crc32(body.encode('utf-8')):08x}"
