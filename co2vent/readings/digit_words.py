"""Up to eight digits at once: a column of words of eight characters becomes a column of numbers."""

from typing import Final

import numpy as np
from numpy.typing import NDArray

Ints = NDArray[np.int64]
Words = NDArray[np.uint64]
Flags = NDArray[np.bool_]

_ZEROS: Final = np.uint64(0x3030303030303030)
_OVER_NINE: Final = np.uint64(0x7676767676767676)
_HIGH_BITS: Final = np.uint64(0x8080808080808080)
_PAIRS: Final = np.uint64(0x000000FF000000FF)
# KEEP_LAST[n] keeps the last n of eight characters (the first is the lowest byte).
KEEP_LAST: Final = np.array(
    [0] + [(0xFFFFFFFFFFFFFFFF << (8 * (8 - n))) & 0xFFFFFFFFFFFFFFFF for n in range(1, 9)],
    np.uint64,
)


def joined(words: Words, counts: Ints) -> tuple[Words, Flags]:
    """Return the numbers that the last `counts` of eight characters are, and whether they are.

    Neighbours are joined to pairs, pairs to fours, fours to all eight, with a few multiplications
    for a whole column.
    """
    plain = (counts >= 1) & (counts <= 8)
    words ^= _ZEROS
    words &= KEEP_LAST.take(counts, mode="clip")
    over = words + _OVER_NINE
    over |= words
    over &= _HIGH_BITS
    plain &= over == 0
    higher = words >> np.uint64(8)
    words *= np.uint64(10)
    words += higher
    np.right_shift(words, np.uint64(16), out=higher)
    words &= _PAIRS
    words *= np.uint64(100 + (1_000_000 << 32))
    higher &= _PAIRS
    higher *= np.uint64(1 + (10_000 << 32))
    words += higher
    words >>= np.uint64(32)
    return words, plain
