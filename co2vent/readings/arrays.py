"""Readings as columns: one numpy array per quantity, for logs of millions of rows."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from typing import Final

import numpy as np
from numpy.typing import NDArray

from co2vent.readings.reading import Reading

Floats = NDArray[np.float64]
Block = dict[str, NDArray[np.generic]]

# Small blocks are joined to larger ones as they come: the memory of many small ones is not given
# back, and would stay beside the joined columns.
MERGED_BLOCKS: Final = 128

OPTIONAL_QUANTITIES: Final = (
    "line_temperature_k",
    "upper_temperature_k",
    "ambient_temperature_k",
    "pressure_2_pa",
    "vacuum_pa",
    "room_co2_ppm",
)
VALVE_UNKNOWN: Final = -1


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadingArrays:
    """Accepted readings in file order. NaN: not measured in that row; `None`: no such column."""

    at_s: Floats
    pressure_pa: Floats
    line_temperature_k: Floats | None = None
    upper_temperature_k: Floats | None = None
    ambient_temperature_k: Floats | None = None
    pressure_2_pa: Floats | None = None
    vacuum_pa: Floats | None = None
    room_co2_ppm: Floats | None = None
    vent_open: NDArray[np.int8] | None = None  # 1 open, 0 closed, -1 not told
    segment: NDArray[np.int32]
    line: NDArray[np.int64]  # line number in the file, from 1
    notes: dict[int, str] = field(default_factory=dict)  # by row

    def __len__(self) -> int:
        """Return the number of readings."""
        return len(self.at_s)

    def readings(self, block: int = 4096) -> Iterator[Reading]:
        """Yield the rows as `Reading`s."""
        for start in range(0, len(self), block):
            stop = min(start + block, len(self))
            rows = slice(start, stop)
            optional = [_as_list(getattr(self, name), rows) for name in OPTIONAL_QUANTITIES]
            line_k, upper_k, ambient_k, second_pa, vacuum_pa, ppm = optional
            if self.vent_open is None:
                valves: list[bool | None] = [None] * (stop - start)
            else:
                valves = [_VALVES[v] for v in self.vent_open[rows].tolist()]
            notes: Sequence[str | None] = [None] * (stop - start)
            if self.notes:
                notes = [self.notes.get(i) for i in range(start, stop)]
            yield from map(
                Reading,
                self.at_s[rows].tolist(),
                self.pressure_pa[rows].tolist(),
                line_k,
                upper_k,
                ambient_k,
                valves,
                second_pa,
                vacuum_pa,
                ppm,
                notes,
                self.segment[rows].tolist(),
            )


_VALVES: Final[dict[int, bool | None]] = {-1: None, 0: False, 1: True}


def _as_list(values: Floats | None, rows: slice) -> list[float | None]:
    if values is None:
        return [None] * (rows.stop - rows.start)
    part = values[rows]
    listed: list[float | None] = part.tolist()
    for i in np.flatnonzero(np.isnan(part)).tolist():
        listed[i] = None
    return listed


class ArrayBuilder:
    """Collects readings block by block; one concatenation at the end."""

    def __init__(self) -> None:
        """Start empty."""
        self._blocks: list[Block] = []
        self._merged: list[Block] = []
        self._notes: dict[int, str] = {}
        self.count = 0

    def add_block(self, block: Block) -> None:
        """Take columns of equal length, at least `at_s`, `pressure_pa`, `segment` and `line`."""
        self.count += len(block["at_s"])
        self._blocks.append(block)
        if len(self._blocks) >= MERGED_BLOCKS:
            self._merged.append(_joined(self._blocks))
            self._blocks = []

    def add_readings(self, readings: Sequence[Reading], lines: Sequence[int]) -> None:
        """Add readings that came one by one."""
        if not readings:
            return
        block: Block = {
            "at_s": np.array([r.at_s for r in readings]),
            "pressure_pa": np.array([r.pressure_pa for r in readings]),
            "segment": np.array([r.segment for r in readings], dtype=np.int32),
            "line": np.array(lines, dtype=np.int64),
        }
        for name in OPTIONAL_QUANTITIES:
            values = [getattr(r, name) for r in readings]
            if any(value is not None for value in values):
                block[name] = np.array([np.nan if v is None else v for v in values])
        if any(r.vent_open is not None for r in readings):
            block["vent_open"] = np.array(
                [VALVE_UNKNOWN if r.vent_open is None else int(r.vent_open) for r in readings],
                dtype=np.int8,
            )
        for i, reading in enumerate(readings):
            if reading.note is not None:
                self._notes[self.count + i] = reading.note
        self.add_block(block)

    def build(self) -> ReadingArrays:
        """Return all that was added; the builder is empty afterwards."""
        columns = _joined([*self._merged, *self._blocks])
        return ReadingArrays(notes=self._notes, **columns)  # type: ignore[arg-type]


def _joined(blocks: list[Block]) -> Block:
    """Return the rows of all blocks as one; each column leaves the blocks as it is joined."""
    counts = [len(block["at_s"]) for block in blocks]
    names = [*OPTIONAL_QUANTITIES, "vent_open", "pressure_pa", "segment", "line", "at_s"]
    columns: Block = {}
    for name in names:
        if any(name in block for block in blocks):
            parts = [
                block.pop(name) if name in block else _missing(name, count)
                for block, count in zip(blocks, counts, strict=True)
            ]
            columns[name] = np.concatenate(parts)
    return columns


def _missing(name: str, count: int) -> NDArray[np.generic]:
    if name == "vent_open":
        return np.full(count, VALVE_UNKNOWN, dtype=np.int8)
    return np.full(count, np.nan)
