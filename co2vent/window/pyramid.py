"""A long column reduced to what a screen can show: least and greatest value of bins, by level.

Level 0 bins `FIRST_BIN` rows, each further level `FACTOR` bins of the one before. New rows extend
the levels; nothing is computed twice.
"""

from typing import Final

import numpy as np
import numpy.typing as npt

FIRST_BIN: Final = 32
FACTOR: Final = 4

Floats = npt.NDArray[np.float32]


class Pyramid:
    """Minimum and maximum of a growing column."""

    def __init__(self) -> None:
        self._levels: list[npt.NDArray[np.float32]] = []  # each (2, bins)
        self._rows = 0  # rows that are in complete bins of level 0

    def clear(self) -> None:
        """Forget all levels."""
        self._levels.clear()
        self._rows = 0

    @property
    def nbytes(self) -> int:
        """The memory [bytes] of all levels."""
        return sum(level.nbytes for level in self._levels)

    def extend(self, column: Floats) -> None:
        """Take the rows of `column` that have come since the last call."""
        whole = column.size // FIRST_BIN * FIRST_BIN
        if whole - self._rows < FIRST_BIN * FACTOR and self._rows:
            return
        part = column[self._rows : whole].reshape(-1, FIRST_BIN)
        if part.size == 0:
            return
        with np.errstate(invalid="ignore"):
            low, high = np.fmin.reduce(part, axis=1), np.fmax.reduce(part, axis=1)
        self._rows = whole
        self._append(0, np.stack([low, high]))

    def _append(self, number: int, bins: npt.NDArray[np.float32]) -> None:
        if number == len(self._levels):
            self._levels.append(np.empty((2, 0), np.float32))
        level = self._levels[number] = np.concatenate([self._levels[number], bins], axis=1)
        above = self._levels[number + 1].shape[1] if number + 1 < len(self._levels) else 0
        ready = level.shape[1] // FACTOR
        if ready > above:
            part = level[:, above * FACTOR : ready * FACTOR].reshape(2, -1, FACTOR)
            reduced = np.stack([np.fmin.reduce(part[0], axis=1), np.fmax.reduce(part[1], axis=1)])
            self._append(number + 1, reduced)

    def bins(self, first: int, last: int, most: int) -> tuple[int, Floats, Floats] | None:
        """Return rows a bin, minima and maxima over rows `first` to `last`, at most `most` bins.

        `None` where the rows themselves are few enough, or not yet in the levels. The bins begin at
        a multiple of their size at or below `first`.
        """
        if last - first <= 2 * most:
            return None
        size = FIRST_BIN
        for level in self._levels:
            if (last - first) / size <= most:
                begin, end = first // size, min(last // size, level.shape[1])
                return size, level[0, begin:end], level[1, begin:end]
            size *= FACTOR
        if not self._levels:
            return None
        size //= FACTOR
        begin, end = first // size, min(last // size, self._levels[-1].shape[1])
        return size, self._levels[-1][0, begin:end], self._levels[-1][1, begin:end]


def reduced(
    at_s: npt.NDArray[np.float64],
    column: Floats,
    pyramid: Pyramid,
    gaps: npt.NDArray[np.int64],
    rows: tuple[int, int],
    most: int,
) -> tuple[npt.NDArray[np.float64], npt.NDArray[np.float64]]:
    """Return the points to draw of rows `rows` of `column`, about two for each of `most` bins.

    `gaps` are the rows that hold no value: lines break there.
    """
    first, last = rows
    found = pyramid.bins(first, last, most)
    if found is None or found[1].size == 0:
        return at_s[first:last], column[first:last].astype(np.float64)
    size, low, high = found
    starts = (first // size + np.arange(low.size)) * size
    ends = starts + size - 1
    falling = np.zeros(low.size, bool)
    falling[1:] = low[1:] < low[:-1]
    time = np.empty(2 * low.size)
    time[0::2], time[1::2] = at_s[starts], at_s[ends]
    value = np.empty(2 * low.size)
    value[0::2], value[1::2] = np.where(falling, high, low), np.where(falling, low, high)
    rest = int(starts[-1] + size)
    inside = gaps[(gaps >= first) & (gaps < rest)]
    if inside.size:
        places = np.searchsorted(time, at_s[inside], side="right")
        time = np.insert(time, places, at_s[inside])
        value = np.insert(value, places, np.nan)
    if rest >= last:
        return time, value
    tail_time, tail_value = reduced(at_s, column, pyramid, gaps, (rest, last), most)
    return np.concatenate([time, tail_time]), np.concatenate([value, tail_value])
