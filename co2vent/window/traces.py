"""Growing columns of readings for drawing: 28 bytes a reading, under 40 with spare room and levels.

A gap in the data is a row of NaN, so that no line is drawn across it.
"""

from typing import Final

import numpy as np
import numpy.typing as npt

from co2vent.co2 import saturation_pressure_pa_array
from co2vent.readings.arrays import ReadingArrays
from co2vent.readings.reading import Reading
from co2vent.window.pyramid import Pyramid, reduced

GROWTH: Final = 1.25  # keeps the spare room small; copying stays cheap at these sizes
FIRST_ROOM: Final = 4096
GAP_S: Final = 5.0  # readings further apart than this are not joined

Column = npt.NDArray[np.float64]


class Traces:
    """Time, pressure and three temperatures of all readings so far."""

    def __init__(self) -> None:
        self._time = np.empty(FIRST_ROOM, np.float64)
        self._values = np.empty((4, FIRST_ROOM), np.float32)
        self._used = 0
        self._segment = 0
        self._gaps: list[int] = []
        self._forwards = True  # time never went back
        self._saturation = np.empty(0, np.float32)
        self._saturated = 0
        self.pyramids = {name: Pyramid() for name in ("pressure", "line", "upper", "saturation")}

    def __len__(self) -> int:
        return self._used

    @property
    def nbytes(self) -> int:
        """The memory [bytes] the columns take."""
        levels = sum(pyramid.nbytes for pyramid in self.pyramids.values())
        return self._time.nbytes + self._values.nbytes + self._saturation.nbytes + levels

    @classmethod
    def of(cls, readings: ReadingArrays) -> "tuple[Traces, npt.NDArray[np.int64]]":
        """Return the traces of a whole record, and for each reading the rows up to it."""
        count = len(readings)
        step_s = np.diff(readings.at_s)
        broken = np.diff(readings.segment) != 0
        breaks = np.flatnonzero(broken | (step_s > GAP_S))
        rows = np.arange(1, count + 1) + np.searchsorted(breaks, np.arange(count), side="left")
        traces = cls()
        traces._used = count + breaks.size
        traces._time = np.empty(traces._used)
        traces._values = np.full((4, traces._used), np.nan, np.float32)
        at: slice | npt.NDArray[np.int64] = slice(None) if breaks.size == 0 else rows - 1
        traces._time[at] = readings.at_s
        columns = (
            readings.pressure_pa, readings.line_temperature_k, readings.upper_temperature_k,
            readings.ambient_temperature_k,
        )  # fmt: skip
        for place, column in enumerate(columns):
            if column is not None:
                traces._values[place, at] = column
        if breaks.size:
            traces._time[rows[breaks]] = readings.at_s[breaks]
        traces._gaps = rows[breaks].tolist()
        traces._forwards = not bool((step_s < 0).any())
        traces._segment = int(readings.segment[-1]) if count else 0
        return traces, rows

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
            room = int(self._used * GROWTH)
            time = np.empty(room, np.float64)
            time[: self._used] = self._time
            table = np.empty((4, room), np.float32)
            table[:, : self._used] = self._values
            self._time, self._values = time, table
        self._time[self._used] = at_s
        self._values[:, self._used] = [np.nan if value is None else value for value in values]
        self._used += 1

    def gaps(self) -> npt.NDArray[np.int64]:
        """Return the rows that are gaps."""
        return np.asarray(self._gaps, np.int64)

    def saturation_pa(self, rows: int | None = None) -> npt.NDArray[np.float32]:
        """Return the saturation pressures [Pa] of the line temperatures; NaN where none is."""
        if self._saturated < self._used:
            if self._saturation.size < self._used:
                room = np.empty(self._time.size, np.float32)
                room[: self._saturated] = self._saturation[: self._saturated]
                self._saturation = room
            new = slice(self._saturated, self._used)
            self._saturation[new] = saturation_pressure_pa_array(
                self._values[1, new].astype(np.float64)
            )
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
        self.pyramids[name].extend(column())
        time = self._time[:rows]
        first, last = 0, rows
        if self._forwards:
            first = max(0, int(np.searchsorted(time, span_s[0])) - 1)
            last = min(rows, int(np.searchsorted(time, span_s[1], side="right")) + 1)
        return reduced(time, column(rows), self.pyramids[name], self.gaps(), (first, last), most)

    def count_until(self, at_s: float) -> int:
        """Return how many rows are not later than `at_s`."""
        return int(np.searchsorted(self._time[: self._used], at_s, side="right"))

    def at_s(self, rows: int | None = None) -> Column:
        """Return the times [s] of the first `rows` rows (all by default), without a copy."""
        return self._time[: self._used if rows is None else rows]

    def pressure_pa(self, rows: int | None = None) -> npt.NDArray[np.float32]:
        """Return the absolute pressures [Pa]; NaN is a gap."""
        return self._values[0, : self._used if rows is None else rows]

    def line_temperature_k(self, rows: int | None = None) -> npt.NDArray[np.float32]:
        """Return the line temperatures [K]; NaN where not measured."""
        return self._values[1, : self._used if rows is None else rows]

    def upper_temperature_k(self, rows: int | None = None) -> npt.NDArray[np.float32]:
        """Return the temperatures [K] of the second clamp; NaN where not measured."""
        return self._values[2, : self._used if rows is None else rows]

    def ambient_temperature_k(self, rows: int | None = None) -> npt.NDArray[np.float32]:
        """Return the ambient temperatures [K]; NaN where not measured."""
        return self._values[3, : self._used if rows is None else rows]
