"""A whole log at once: clean blocks in numpy, everything else line by line, the same result."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import BinaryIO, Final

import numpy as np

from co2vent.errors import RefusedInputError, SourceUnavailableError
from co2vent.readings.arrays import ArrayBuilder, ReadingArrays
from co2vent.readings.clean_rows import read_clean_block
from co2vent.readings.columns import Columns
from co2vent.readings.log_decoder import Decoded, LogDecoder
from co2vent.readings.metadata import unknown_keys
from co2vent.readings.reading import Reading, Rejection, Setup

BLOCK_BYTES: Final = 1 << 20
LARGE_BYTES: Final = 5_000_000  # from here on, some third of a second to read: not while one waits
# Large enough for numpy; a piece with an unusual line is halved down to the small size, some
# hundred rows, which the line decoder takes in 2 ms.
PIECE_BYTES: Final = 1 << 16
SMALL_PIECE_BYTES: Final = 1 << 13
MOST_PASSED_OVER: Final = 31


@dataclass(frozen=True, slots=True)
class LogFile:
    """What a log holds. `rejections` are in file order."""

    setup: Setup
    readings: ReadingArrays
    rejections: tuple[Rejection, ...]
    metadata: dict[str, str]
    columns: Columns
    bad_cells: dict[str, int] = field(default_factory=dict)

    @property
    def unknown_metadata(self) -> tuple[str, ...]:
        """Metadata keys that the log format doesn't know."""
        return unknown_keys(self.metadata)

    def items(self) -> Iterator[Decoded]:
        """Yield readings and rejections in file order."""
        if not self.rejections:
            yield from self.readings.readings()
            return
        before = np.searchsorted(self.readings.line, [r.line for r in self.rejections]).tolist()
        readings = self.readings.readings()
        taken = 0
        for rejection, count in zip(self.rejections, before, strict=True):
            for _ in range(count - taken):
                yield next(readings)
            taken = count
            yield rejection
        yield from readings


def read_log(
    path: Path,
    columns: Sequence[str] | None = None,
    overrides: Mapping[str, str] | None = None,
    watch: Callable[[int], None] | None = None,
) -> LogFile:
    """Read a log file; `watch` is told how many bytes were read, some times a second.

    Raises:
        Exception: whatever `watch` raises, to give up.
        SourceUnavailableError: the file can't be opened.
        RefusedInputError: no pressure, unit, datum, time or reading; see `LogDecoder`.
    """
    try:
        with path.open("rb") as file:
            return _read_blocks(_watched(file, watch), columns, overrides)
    except OSError as error:
        raise SourceUnavailableError(
            f"{path}: {error.strerror or error}; check the name and the access to it"
        ) from error


def named_log(
    path: Path,
    columns: Sequence[str] | None = None,
    overrides: Mapping[str, str] | None = None,
) -> LogFile:
    """Read a log file as `read_log` does; a refusal names it, as a script may have given many.

    Raises:
        SourceUnavailableError: it can't be opened.
        RefusedInputError: it is not a log that can be read with certainty.
    """
    with refusals_named(path):
        return read_log(path, columns, overrides)


@contextmanager
def refusals_named(path: Path) -> Iterator[None]:
    """Put the file's name before what is said of a log that is refused within."""
    try:
        yield
    except RefusedInputError as error:
        raise RefusedInputError(f"{path}: {error}") from error


def _watched(file: BinaryIO, watch: Callable[[int], None] | None) -> Iterator[bytes]:
    taken = 0
    while block := file.read(BLOCK_BYTES):
        yield block
        taken += len(block)
        if watch is not None:
            watch(taken)


def decode_log(
    data: bytes,
    columns: Sequence[str] | None = None,
    overrides: Mapping[str, str] | None = None,
) -> LogFile:
    """Read a log that is already in memory; see `read_log`."""
    blocks = (data[i : i + BLOCK_BYTES] for i in range(0, len(data), BLOCK_BYTES))
    return _read_blocks(blocks, columns, overrides)


def _read_blocks(
    blocks: Iterator[bytes],
    columns: Sequence[str] | None,
    overrides: Mapping[str, str] | None,
) -> LogFile:
    log = _WholeLog(LogDecoder(columns, overrides))
    for piece in _line_pieces(blocks):
        log.take_piece(piece)
    return log.finish()


class _WholeLog:
    """Sends plain pieces the fast way and the others through the line decoder, in order."""

    def __init__(self, decoder: LogDecoder) -> None:
        self.decoder = decoder
        self.builder = ArrayBuilder()
        self.rejections: list[Rejection] = []
        self._clean_readings = 0
        self._pass_over = 0  # pieces that go the slow way untried
        self._in_vain = 0  # pieces in which nothing was clean, in a row

    def take_piece(self, piece: bytes) -> None:
        """Take the next bytes; a log that is unusual throughout is soon no longer tried."""
        if self._pass_over > 0:
            self._pass_over -= 1
            self._keep(self.decoder.feed_bytes(piece))
            return
        clean_before, steady = self._clean_readings, self.decoder.steady_rows is not None
        self.take(piece)
        in_vain = steady and self._clean_readings == clean_before
        self._in_vain = self._in_vain + 1 if in_vain else 0
        self._pass_over = min(2**self._in_vain - 1, MOST_PASSED_OVER)

    def take(self, piece: bytes) -> None:
        """Take bytes; an unusual line sends only its own neighbourhood the slow way."""
        rows = self.decoder.steady_rows
        if rows is None or not piece.endswith(b"\n"):
            self._keep(self.decoder.feed_bytes(piece))
            return
        block = read_clean_block(piece, self.decoder.next_line, rows)
        if block is not None:
            count = len(block["at_s"])
            self.builder.add_block(block)
            self._clean_readings += count
            last_line = piece[piece.rfind(b"\n", 0, -1) + 1 :]
            self.decoder.rows_passed(count, last_line.decode("ascii"))
            return
        middle = piece.rfind(b"\n", 0, len(piece) // 2) + 1
        if len(piece) <= SMALL_PIECE_BYTES or middle == 0:
            self._keep(self.decoder.feed_bytes(piece))
        else:
            self.take(piece[:middle])
            self.take(piece[middle:])

    def _keep(self, items: Sequence[Decoded]) -> None:
        numbered = list(zip(items, self.decoder.line_of_item, strict=True))
        readings = [(item, line) for item, line in numbered if isinstance(item, Reading)]
        self.rejections += [item for item in items if isinstance(item, Rejection)]
        self.builder.add_readings([item for item, _ in readings], [line for _, line in readings])

    def finish(self) -> LogFile:
        """Return all that was taken."""
        decoder = self.decoder
        self._keep(decoder.finish())
        if not self.builder.count or decoder.columns is None:
            raise RefusedInputError(_no_readings(self.rejections))
        return LogFile(
            decoder.setup,
            self.builder.build(),
            tuple(self.rejections),
            decoder.metadata,
            decoder.columns,
            decoder.bad_cells,
        )


def _line_pieces(blocks: Iterator[bytes]) -> Iterator[bytes]:
    """Cut the blocks at line ends, where there are any, into pieces of some thousand rows."""
    rest = b""
    for block in blocks:
        data = rest + block
        start = 0
        while len(data) - start > PIECE_BYTES:
            end = data.rfind(b"\n", start, start + PIECE_BYTES) + 1
            if end == 0:
                end = start + PIECE_BYTES  # no line end near: not plain rows
            yield data[start:end]
            start = end
        rest = data[start:]
    end = rest.rfind(b"\n") + 1
    yield from (part for part in (rest[:end], rest[end:]) if part)


def _no_readings(rejections: Sequence[Rejection]) -> str:
    if not rejections:
        return "no readings: the log has a header and no rows"
    first = rejections[0]
    return (
        f"no readings: all {len(rejections)} rows were rejected, "
        f"the first in line {first.line}: {first.reason}"
    )
