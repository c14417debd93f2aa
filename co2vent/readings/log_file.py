"""A whole log at once: clean blocks in numpy, everything else line by line, the same result."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Final

import numpy as np

from co2vent.errors import RefusedInputError, SourceUnavailableError
from co2vent.readings.arrays import ArrayBuilder, ReadingArrays
from co2vent.readings.clean_rows import read_clean_block
from co2vent.readings.columns import Columns
from co2vent.readings.log_decoder import Decoded, LogDecoder
from co2vent.readings.metadata import unknown_keys
from co2vent.readings.reading import Reading, Rejection, Setup

BLOCK_BYTES: Final = 1 << 20
# One unusual line sends its piece to the slower decoder: small enough not to hurt (2000 rows in
# 20 ms), large enough for numpy.
PIECE_BYTES: Final = 1 << 16


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
) -> LogFile:
    """Read a log file.

    Raises:
        SourceUnavailableError: the file can't be opened.
        RefusedInputError: no pressure, unit, datum, time or reading; see `LogDecoder`.
    """
    try:
        with path.open("rb") as file:
            return _read_blocks(iter(lambda: file.read(BLOCK_BYTES), b""), columns, overrides)
    except OSError as error:
        raise SourceUnavailableError(
            f"{path}: {error.strerror or error}; check the name and the access to it"
        ) from error


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
    decoder = LogDecoder(columns, overrides)
    builder = ArrayBuilder()
    rejections: list[Rejection] = []

    def keep(items: Sequence[Decoded]) -> None:
        readings = [item for item in items if isinstance(item, Reading)]
        lines = [
            line
            for item, line in zip(items, decoder.line_of_item, strict=True)
            if isinstance(item, Reading)
        ]
        rejections.extend(item for item in items if isinstance(item, Rejection))
        builder.add_readings(readings, lines)

    for piece in _line_pieces(blocks):
        rows = decoder.steady_rows
        block = None
        if rows is not None and piece.endswith(b"\n"):
            block = read_clean_block(piece, decoder.next_line, rows)
        if block is None:
            keep(decoder.feed_bytes(piece))
        else:
            builder.add_block(block)
            last_line = piece[piece.rfind(b"\n", 0, -1) + 1 :]
            decoder.rows_passed(len(block["at_s"]), last_line.decode("ascii"))
    keep(decoder.finish())
    if not builder.count or decoder.columns is None:
        raise RefusedInputError(_no_readings(rejections))
    return LogFile(
        decoder.setup,
        builder.build(),
        tuple(rejections),
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
