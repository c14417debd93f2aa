"""The rows of a plain log as a picture needs them, UNCHECKED: some thirty times faster.

No check sum, order of time or range is looked at here, so nothing may be concluded from these
numbers; `read_log` reads the same file with all checks. A cell that both take has the same value:
its digits, as an integer below 2**53, divided by a power of ten (see `clean_rows`).
"""

from collections.abc import Mapping, Sequence
from typing import Final, NamedTuple

import numpy as np
from numpy.typing import NDArray

from co2vent.errors import RefusedInputError
from co2vent.readings.arrays import Floats
from co2vent.readings.cells import is_number, to_number
from co2vent.readings.clean_rows import kelvins
from co2vent.readings.columns import Columns, Role, looks_like_header
from co2vent.readings.digit_words import KEEP_LAST, Flags, Ints, Words, joined
from co2vent.readings.log_decoder import LogDecoder
from co2vent.readings.reading import Setup

HEAD_BYTES: Final = 1 << 16
# More rows than this that are not plain (words, other decimals) are not this form of a log.
MOST_ODD_SHARE: Final = 0.02
MOST_ODD_ROWS: Final = 50  # in a block, whatever its size
PAD: Final = 16  # bytes before a block, so that no window of eight starts before the buffer
WIDEST: Final = 17  # characters of a plain cell: sign, eight digits, point, seven or more decimals
MOST_DECIMALS: Final = 6

Bytes = NDArray[np.uint8]
Singles = NDArray[np.float32]

_DRAWN: Final = (
    Role.ELAPSED, Role.PRESSURE, Role.LINE_TEMPERATURE, Role.UPPER_TEMPERATURE,
)  # fmt: skip


class QuickBlock(NamedTuple):
    """Rows of a log, unchecked, in file order. NaN: no number in that cell."""

    at_s: Floats
    pressure_pa: Singles
    line_temperature_k: Singles | None
    upper_temperature_k: Singles | None


class _UnknownFormError(Exception):
    """The block is of a form that only the checked reader knows."""


class QuickForm:
    """What the head of a log says of its rows; reads blocks of them."""

    def __init__(self, decoder: LogDecoder, start: int) -> None:
        """Take a decoder that has read the first reading, whose row begins at byte `start`."""
        assert decoder.columns is not None
        self.setup: Setup = decoder.setup
        self.start = start
        self._roles = decoder.columns.by_role
        self._count = decoder.columns.count

    def read(self, buffer: Bytes, end: int) -> QuickBlock | None:
        """Return the rows of the whole lines in `buffer[PAD:end]`, `None` where they are not known.

        Lines that are comments, and rows whose time or pressure is no number, are left out. The
        bytes of `buffer` before `PAD` are written over; nothing is copied.
        """
        try:
            return self._read(_Lines(buffer[:end], self._count))
        except _UnknownFormError:
            return None

    def _read(self, lines: "_Lines") -> QuickBlock:
        numbers: dict[Role, Floats] = {}
        wanted = {self._roles[role].index: role for role in _DRAWN if role in self._roles}
        for index in range(max(wanted) + 1):
            if index in wanted:
                numbers[wanted[index]] = lines.next_numbers()
            else:
                lines.pass_over()
        unit, setup = self._roles[Role.PRESSURE].pressure_unit, self.setup
        assert unit is not None
        at_s = numbers[Role.ELAPSED] * self._roles[Role.ELAPSED].scale
        ambient_pa = setup.ambient_pressure_pa if unit.gauge else 0.0
        pressure_pa = numbers[Role.PRESSURE] * unit.pascals + ambient_pa - setup.zero_offset_pa
        warm = [
            kelvins(numbers[role], self._roles[role].temperature_unit).astype(np.float32)
            if role in numbers
            else None
            for role in (Role.LINE_TEMPERATURE, Role.UPPER_TEMPERATURE)
        ]
        plain = np.isfinite(at_s) & np.isfinite(pressure_pa)
        if not plain.all():
            at_s, pressure_pa = at_s[plain], pressure_pa[plain]
            warm = [None if column is None else column[plain] for column in warm]
        return QuickBlock(at_s, pressure_pa.astype(np.float32), *warm)


def quick_form(
    head: bytes,
    columns: Sequence[str] | None = None,
    overrides: Mapping[str, str] | None = None,
) -> QuickForm | None:
    """Return how the rows of a log that begins with `head` are read, `None` where it is not known.

    Known is what the recorder writes and whatever is like it: ASCII, LF or CRLF, commas, elapsed
    time, no text before the columns that are drawn, and the same decimals throughout a column.
    """
    if b"\0" in head:
        return None
    start = 0
    try:
        decoder = LogDecoder(columns, overrides)
        while (end := head.find(b"\n", start) + 1) > 0:
            decoder.feed_bytes(head[start:end])
            if decoder.steady_rows is not None and decoder.columns is not None:
                known = _is_known(decoder.columns)
                return QuickForm(decoder, start) if known else None
            start = end
    except RefusedInputError:
        pass  # the checked reader says why
    return None


def _is_known(columns: Columns) -> bool:
    roles = columns.by_role
    if Role.ELAPSED not in roles:
        return False
    last = max(roles[role].index for role in _DRAWN if role in roles)
    before = {column.index for role, column in roles.items() if role is not Role.NOTE}
    return set(range(last + 1)) <= before  # a note, or a column of unknown use, may hold commas


class _Lines:
    """The data lines of a block; gives their cells column by column."""

    def __init__(self, buffer: Bytes, count: int) -> None:
        buffer[:PAD] = ord("\n")
        self._bytes = buffer
        # Every eight characters as one word, by the place of the first.
        self._words: NDArray[np.void] = np.ndarray((len(buffer) - 7,), "V8", buffer, 0, (1,))
        ends = np.flatnonzero(buffer == ord("\n"))[PAD:]
        starts = np.empty_like(ends)
        starts[:1] = PAD
        np.add(ends[:-1], 1, out=starts[1:])
        first = buffer[starts]
        data = (first != ord("#")) & (first > ord("\r"))
        if not data.all():
            starts, ends = starts[data], ends[data]
        if b"\r" in buffer[-2:].tobytes():
            ends = ends - (buffer[ends - 1] == ord("\r"))
        self._starts, self._ends = starts, ends
        self._left = starts
        self._columns_left = count

    def next_numbers(self) -> Floats:
        """Return the numbers in the cells of the next column, NaN where there is none."""
        left = self._left
        right, guessed = self._guess(left)
        values, plain = self._parse(left, right, self._decimals(left, right))
        odd = np.flatnonzero(~(plain & guessed))
        if len(odd):
            right[odd] = self._cell_ends(left[odd])
            decimals = self._decimals(left, right)
            values[odd], plain = self._parse(left[odd], right[odd], decimals)
            odd = odd[~plain]
            self._read_odd(values, odd, left, right)
        self._go_to(right)
        return values

    def pass_over(self) -> None:
        """Go to the next column."""
        self._go_to(self._cell_ends(self._left))

    def _go_to(self, right: Ints) -> None:
        self._columns_left -= 1
        self._left = np.minimum(right + 1, self._ends)

    def _guess(self, left: Ints) -> tuple[Ints, Flags]:
        """Return where cells seem to end, by the width of the first one, and whether they may.

        A column has few widths, and nearly all cells one of two or three that are neighbours.
        """
        if self._columns_left == 1 or not len(left):
            return self._ends.copy(), np.ones(len(left), np.bool_)
        last = len(self._bytes) - 1
        width = int(self._cell_ends(left[:1])[0] - left[0])
        right = np.minimum(left + width, last)
        found = self._bytes[right] == ord(",")
        for step in (1, -1, 2):
            missed = np.flatnonzero(~found)
            if not len(missed) or width + step < 1:
                break
            places = np.minimum(left[missed] + (width + step), last)
            right[missed] = places
            found[missed] = self._bytes[places] == ord(",")
        return np.minimum(right, self._ends), found

    def _cell_ends(self, left: Ints) -> Ints:
        """Return the first comma after each place, or the end of its line."""
        rows = self._rows_of(left)
        right = self._ends[rows].copy()
        if self._columns_left == 1:
            return right
        open_ = np.arange(len(left))
        for width in range(WIDEST + 1):
            places = left[open_] + width
            inside = places < right[open_]
            open_, places = open_[inside], places[inside]
            comma = self._bytes[places] == ord(",")
            right[open_[comma]] = places[comma]
            open_ = open_[~comma]
            if not len(open_):
                break
        for cell in open_.tolist():  # a word or a note
            text = self._bytes[left[cell] : right[cell]].tobytes()
            right[cell] = left[cell] + (text + b",").index(b",")
        return right

    def _rows_of(self, left: Ints) -> Ints:
        rows: Ints = np.searchsorted(self._ends, left)
        return rows

    def _parse(self, left: Ints, right: Ints, decimals: int) -> tuple[Floats, Flags]:
        """Return the numbers in cells with so many decimals, and which of them are plain."""
        lengths = right - left
        if not len(lengths) or lengths.max() == 0:
            return np.full(len(lengths), np.nan), lengths == -1
        negative = self._bytes[left] == ord("-")
        digits = lengths - negative
        if decimals and lengths.max() <= 8:
            whole, plain = self._short(right, digits - 1, decimals)
        elif decimals:
            point = right - (1 + decimals)
            whole, plain = joined(self._before(point), digits - (1 + decimals))
            part, plain_part = joined(self._before(right), np.full(len(right), decimals))
            whole *= np.uint64(10**decimals)
            whole += part
            plain &= plain_part
            plain &= self._bytes[point] == ord(".")
        else:
            whole, plain = joined(self._before(right), digits)
        values = whole / 10.0**decimals
        if negative.any():
            np.negative(values, out=values, where=negative)
        return values, plain

    def _short(self, right: Ints, counts: Ints, decimals: int) -> tuple[Words, Flags]:
        """Return the numbers of cells that fit into eight characters, the point among them."""
        words = self._before(right)
        below = np.uint64(8 * (7 - decimals))  # the bits of the characters before the point
        plain = (words >> below) & np.uint64(0xFF) == ord(".")
        whole = words << np.uint64(8)
        keep = KEEP_LAST[decimals]
        words &= keep
        whole &= ~keep
        words |= whole
        words, plain_digits = joined(words, counts)
        return words, plain & plain_digits & (counts > decimals)

    def _before(self, ends: Ints) -> Words:
        words: Words = self._words[ends - 8].view(np.uint64)
        return words

    def _decimals(self, left: Ints, right: Ints) -> int:
        """Return the decimals of the first number in a column."""
        for place in range(min(len(left), MOST_ODD_ROWS)):
            cell = self._text(left[place], right[place])
            if is_number(cell) and "e" not in cell.lower():
                return min(len(cell.partition(".")[2]), MOST_DECIMALS)
        return 0

    def _read_odd(self, values: Floats, odd: Ints, left: Ints, right: Ints) -> None:
        """Read the cells that are not plain one by one; empty ones are no number."""
        values[odd] = np.nan
        odd = odd[right[odd] > left[odd]]
        if len(odd) > max(MOST_ODD_ROWS, MOST_ODD_SHARE * len(values)):
            raise _UnknownFormError
        for place in odd.tolist():
            number = to_number(self._text(left[place], right[place]))
            if number is not None:
                values[place] = number
                continue
            line = self._text(self._starts[place], self._ends[place])
            if looks_like_header(line.split(",")):
                raise _UnknownFormError  # other columns from here on

    def _text(self, start: int, end: int) -> str:
        return self._bytes[start:end].tobytes().decode("ascii", "replace").strip()
