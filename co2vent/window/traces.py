"""Growing columns of readings for drawing: 28 bytes a reading, under 40 with spare room and levels.

A gap in the data is a row of NaN, so that no line is drawn across it.
"""

from collections.abc import Sequence
from typing import Final

import numpy as np
import numpy.typing as npt

from co2vent.co2 import saturation_pressure_pa_array
from co2vent.readings.arrays import ReadingArrays
from co2vent.readings.reading import Reading
from co2vent.window.pyramid import Floats, Pyramid, reduced

GROWTH: Final = 1.25  # keeps the spare room small; copying stays cheap at these sizes
FIRST_ROOM: Final = 4096
SATURATED_AT_ONCE: Final = 1 << 16  # the steps between stay in the processor's cache
GAP_S: Final = 5.0  # readings further apart than this are not joined

Column = npt.NDArray[np.float64]


class Traces:
    """Time, pressure and three temperatures of all readings so far."""

    def __init__(self, room: int = FIRST_ROOM) -> None:
        self._time = np.empty(room, np.float64)
        # Pressure, line, upper and ambient temperature; a column without any value takes no memory.
        self._values: list[Floats | None] = [None] * 4
        self._used = 0
        self._segment = 0
        self._gaps: list[int] = []
        self._forwards = True  # time never went back
        self._derives = True
        self._saturation = np.empty(0, np.float32)
        self._saturated = 0
        self.pyramids = {name: Pyramid() for name in ("pressure", "line", "upper", "saturation")}

    def __len__(self) -> int:
        return self._used

    @property
    def nbytes(self) -> int:
        """The memory [bytes] the columns take."""
        levels = sum(pyramid.nbytes for pyramid in self.pyramids.values())
        values = sum(column.nbytes for column in self._values if column is not None)
        return self._time.nbytes + values + self._saturation.nbytes + levels

    @classmethod
    def of(cls, readings: ReadingArrays) -> "tuple[Traces, npt.NDArray[np.int64]]":
        """Return the traces of a whole record, and the readings behind which there is a gap."""
        traces = cls(max(1, len(readings)))
        breaks = traces.extend(
            readings.at_s,
            (
                readings.pressure_pa,
                readings.line_temperature_k,
                readings.upper_temperature_k,
                readings.ambient_temperature_k,
            ),
        )
        traces._segment = int(readings.segment[-1]) if len(readings) else 0
        return traces, breaks - 1

    @classmethod
    def unchecked(cls, room: int) -> "Traces":
        """Return traces for rows that nobody has checked; nothing is worked out from them."""
        traces = cls(room)
        traces._derives = False
        return traces

    def extend(
        self, at_s: Column, columns: Sequence[Column | Floats | None]
    ) -> npt.NDArray[np.int64]:
        """Add readings at once; return those before which there is a gap.

        `columns` are pressure, line, upper and ambient temperature. A step back in time begins a
        new segment (see `Reading`).
        """
        if not at_s.size:
            return np.empty(0, np.int64)
        before_s = self._time[self._used - 1] if self._used else at_s[0]
        step_s = np.diff(at_s, prepend=before_s)
        breaks = np.flatnonzero((step_s < 0.0) | (step_s > GAP_S))
        gaps = breaks + np.arange(breaks.size)  # where they come to lie
        if breaks.size:
            self._forwards = self._forwards and not bool((step_s[breaks] < 0.0).any())
            self._gaps += (self._used + gaps).tolist()
            at_s = np.insert(at_s, breaks, (at_s - step_s)[breaks])
            columns = [
                None if c is None else np.insert(c.astype(np.float32), breaks, np.nan)
                for c in columns
            ]
        end = self._used + at_s.size
        if end > self._time.size:
            self._make_room(max(end, int(self._used * GROWTH)))
        self._time[self._used : end] = at_s
        for place, values in enumerate(columns):
            column = self._values[place]
            if column is None and values is None:
                continue
            if column is None:
                column = self._values[place] = np.empty(self._time.size, np.float32)
                column[: self._used] = np.nan
            column[self._used : end] = np.nan if values is None else values
        self._used = end
        return breaks

    def prepare(self) -> None:
        """Work out all that drawing needs, where the window is not to wait for it."""
        for name in self.pyramids:
            self.points(name, self._used, (-np.inf, np.inf), 1000)

    def clear(self) -> None:
        """Forget all readings."""
        self._used = 0
        self._segment = 0
        self._gaps.clear()
        self._forwards = True
        self._saturated = 0
        for pyramid in self.pyramids.values():
            pyramid.clear()

    def append(self, reading: Reading) -> None:
        """Add one reading, after a row of NaN where readings are missing before it."""
        if self._used:
            last_s = float(self._time[self._used - 1])
            broken = reading.segment != self._segment
            if broken or reading.at_s - last_s > GAP_S:
                self._gaps.append(self._used)
                self._forwards = self._forwards and reading.at_s >= last_s
                self._row(last_s, (None,) * 4)
        self._segment = reading.segment
        self._row(
            reading.at_s,
            (
                reading.pressure_pa,
                reading.line_temperature_k,
                reading.upper_temperature_k,
                reading.ambient_temperature_k,
            ),
        )

    def _row(self, at_s: float, values: tuple[float | None, ...]) -> None:
        if self._used == self._time.size:
            self._make_room(int(self._used * GROWTH) + 1)
        self._time[self._used] = at_s
        for place, value in enumerate(values):
            column = self._values[place]
            if column is None:
                if value is None:
                    continue
                column = self._values[place] = np.full(self._time.size, np.nan, np.float32)
            column[self._used] = np.nan if value is None else value
        self._used += 1

    def _make_room(self, rows: int) -> None:
        time = np.empty(rows, np.float64)
        time[: self._used] = self._time[: self._used]
        self._time = time
        for place, column in enumerate(self._values):
            if column is not None:
                larger = np.empty(rows, np.float32)
                larger[: self._used] = column[: self._used]
                self._values[place] = larger

    def gaps(self) -> npt.NDArray[np.int64]:
        """Return the rows that are gaps."""
        return np.asarray(self._gaps, np.int64)

    def saturation_pa(self, rows: int | None = None) -> npt.NDArray[np.float32]:
        """Return the saturation pressures [Pa] of the line temperatures; NaN where none is."""
        if not self._derives or self._values[1] is None:
            return _no_values(self._used if rows is None else rows)
        if self._saturated < self._used:
            if self._saturation.size < self._used:
                room = np.empty(self._time.size, np.float32)
                room[: self._saturated] = self._saturation[: self._saturated]
                self._saturation = room
            for start in range(self._saturated, self._used, SATURATED_AT_ONCE):
                new = slice(start, min(start + SATURATED_AT_ONCE, self._used))
                line_k = self._values[1][new].astype(np.float64)
                self._saturation[new] = saturation_pressure_pa_array(line_k)
            self._saturated = self._used
        return self._saturation[: self._used if rows is None else rows]

    def points(
        self, name: str, rows: int, span_s: tuple[float, float], most: int
    ) -> tuple[Column, Column]:
        """Return times and values of a column to draw within `span_s`, about two a pixel at most.

        `name` is pressure, line, upper or saturation.
        """
        column = {
            "pressure": self.pressure_pa,
            "line": self.line_temperature_k,
            "upper": self.upper_temperature_k,
            "saturation": self.saturation_pa,
        }[name]
        values = column()
        if values.strides == (0,):
            return np.empty(0), np.empty(0)
        self.pyramids[name].extend(values)
        time = self._time[:rows]
        first, last = 0, rows
        if self._forwards:
            first = max(0, int(np.searchsorted(time, span_s[0])) - 1)
            last = min(rows, int(np.searchsorted(time, span_s[1], side="right")) + 1)
        return reduced(time, column(rows), self.pyramids[name], self.gaps(), (first, last), most)

    def _column(self, place: int, rows: int | None) -> Floats:
        column = self._values[place]
        if column is None:
            return _no_values(self._used if rows is None else rows)
        return column[: self._used if rows is None else rows]

    def count_until(self, at_s: float) -> int:
        """Return how many rows are not later than `at_s`."""
        return int(np.searchsorted(self._time[: self._used], at_s, side="right"))

    def at_s(self, rows: int | None = None) -> Column:
        """Return the times [s] of the first `rows` rows (all by default), without a copy."""
        return self._time[: self._used if rows is None else rows]

    def pressure_pa(self, rows: int | None = None) -> npt.NDArray[np.float32]:
        """Return the absolute pressures [Pa]; NaN is a gap."""
        return self._column(0, rows)

    def line_temperature_k(self, rows: int | None = None) -> npt.NDArray[np.float32]:
        """Return the line temperatures [K]; NaN where not measured."""
        return self._column(1, rows)

    def upper_temperature_k(self, rows: int | None = None) -> npt.NDArray[np.float32]:
        """Return the temperatures [K] of the second clamp; NaN where not measured."""
        return self._column(2, rows)

    def ambient_temperature_k(self, rows: int | None = None) -> npt.NDArray[np.float32]:
        """Return the ambient temperatures [K]; NaN where not measured."""
        return self._column(3, rows)


def _no_values(rows: int) -> Floats:
    """Return so many NaN that take no memory."""
    return np.broadcast_to(np.float32(np.nan), rows)
