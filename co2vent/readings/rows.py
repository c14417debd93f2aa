"""The cells of one row -> a reading in SI, or the reason why it is none."""

from collections.abc import Callable
from typing import Final

from co2vent.readings.cells import (
    decimal_mark,
    is_blank,
    is_over_range,
    is_short_clock,
    to_number,
    to_time_ns,
    valve_open,
)
from co2vent.readings.columns import Column, Columns, Role
from co2vent.readings.reading import Reading, Rejection, Setup
from co2vent.sentence import Sentence
from co2vent.units import temperature_to_k

# No gauge on a CO2 section shows more (ranges end at 160 bar); "9999" and "65535" do.
MAX_PRESSURE_PA: Final = 6e7
# A 4-20 mA channel is valid to 20.5 mA, 103 % of its span (NAMUR NE 43); 110 % is no pressure.
MAX_OVER_FULL_SCALE: Final = 0.10
# What a clamp on a pipe can show: below, no refrigerant plant gets; above, a broken Pt100.
TEMPERATURE_RANGE_K: Final = (50.0, 500.0)
MAX_VACUUM_PA: Final = 2e5
MAX_PPM: Final = 1e6
MAX_TIME_S: Final = 1e12


class RowReader:
    """Turns rows into readings under one header; remembers the time of the row before."""

    def __init__(
        self,
        columns: Columns,
        setup: Setup,
        comma_allowed: bool,
        stamp: Callable[[], float] | None,
    ) -> None:
        """Read rows with `columns` under `setup`; a decimal comma only where it is allowed."""
        self.setup = setup
        self.bad_cells: dict[str, int] = {}
        self._comma_allowed = comma_allowed
        self._stamp = stamp
        self._mark: str | None = None  # the decimal mark of the first number that had one
        self._other_marks: list[str] = []  # numbers of this row with another one
        self._told_valve: bool | None = None  # by a row that was no reading
        self.origin_ns: int | None = None
        self.time_kind: tuple[bool, bool] | None = None  # (zone given, date given)
        self.last_s: float | None = None
        self.segment = 0
        self._max_pa = MAX_PRESSURE_PA
        if setup.gauge_full_scale_pa is not None and setup.gauge_span_pa is not None:
            self._max_pa = min(
                MAX_PRESSURE_PA,
                setup.gauge_full_scale_pa + MAX_OVER_FULL_SCALE * setup.gauge_span_pa,
            )
        self._use(columns)

    @property
    def valve_waits(self) -> bool:
        """Whether a row that was no reading has told of the valve: the next reading will say it."""
        return self._told_valve is not None

    @property
    def max_pressure_pa(self) -> float:
        """The highest pressure [Pa, absolute] that can be a reading of this gauge."""
        return self._max_pa

    def _use(self, columns: Columns) -> None:
        self.columns = columns
        roles = columns.by_role
        self._pressure = roles[Role.PRESSURE]
        self._elapsed = roles.get(Role.ELAPSED)
        self._time = roles.get(Role.TIME)
        self._date = roles.get(Role.DATE)
        self._note = roles.get(Role.NOTE)
        self._valve = roles.get(Role.VENT_VALVE)
        may_lack = {self._note.index} if self._note is not None else set()
        used = {column.index for column in roles.values()}
        may_lack |= set(range(columns.count)) - used
        self._fewest = columns.count
        while self._fewest - 1 in may_lack:
            self._fewest -= 1

    def with_columns(self, columns: Columns) -> "RowReader":
        """Go on under another header of the same log: time and segment stay."""
        self._use(columns)
        return self

    def read(self, line: int, cells: list[str]) -> Reading | Rejection:
        """Return the row as a reading, or why it is none."""
        cells = self._fit(cells)
        if len(cells) > self.columns.count or len(cells) < self._fewest:
            return Rejection(line, f"{len(cells)} cells where the header has {self.columns.count}")
        before = self._mark, self.origin_ns, self.time_kind
        self._other_marks.clear()
        self._told_valve = self._valve_of(cells, self._told_valve)
        pressure_pa = self._pressure_pa(cells[self._pressure.index])
        # a live row that is no reading is not stamped: a tick tells the time meanwhile
        stamped = self._stamp is not None and isinstance(pressure_pa, tuple)
        at_s = "no time" if stamped else self._time_s(cells)
        if isinstance(at_s, str) or isinstance(pressure_pa, tuple):
            self._mark, self.origin_ns, self.time_kind = before  # a rejected row leaves no trace
            why = pressure_pa if isinstance(pressure_pa, tuple) else (str(at_s), False)
            forwards = isinstance(at_s, float) and self.last_s is not None and at_s >= self.last_s
            return Rejection(line, *why, at_s=float(at_s) if forwards else None)
        note = None
        if self._note is not None and len(cells) > self._note.index:
            note = cells[self._note.index] or None
        segment = self.segment + (self.last_s is not None and at_s < self.last_s)
        reading = Reading(
            at_s,
            pressure_pa,
            self._temperature_k(Role.LINE_TEMPERATURE, cells),
            self._temperature_k(Role.UPPER_TEMPERATURE, cells),
            self._temperature_k(Role.AMBIENT_TEMPERATURE, cells),
            self._told_valve,
            self._pressure_2_pa(cells),
            self._scaled(Role.VACUUM, cells, MAX_VACUUM_PA),
            self._scaled(Role.ROOM_CO2, cells, MAX_PPM),
            note,
            segment,
        )
        if self._other_marks:
            # 1,902 beside -19.8: the comma may part thousands
            self._mark, self.origin_ns, self.time_kind = before
            return Rejection(
                line, f"two decimal marks in one log: {_shown(self._other_marks[0])} has the other"
            )
        self.last_s, self.segment, self._told_valve = at_s, segment, None
        return reading

    def _valve_of(self, cells: list[str], before: bool | None) -> bool | None:
        """Where the vent valve is said to be: it moves in a row without a pressure too.

        `before`: what rows that were no reading have said; `None` where nothing is said.
        """
        if self._valve is None or is_blank(cells[self._valve.index]):
            return before
        told = valve_open(cells[self._valve.index])
        if told is None:
            self._count_bad(self._valve)
        return before if told is None else told

    def _fit(self, cells: list[str]) -> list[str]:
        """Drop blank cells behind the last column; join a note that holds the delimiter."""
        count = self.columns.count
        if len(cells) <= count:
            return cells
        if not any(cells[count:]):
            return cells[:count]
        if self._note is not None and self._note.index == count - 1:
            return [*cells[: count - 1], ", ".join(cells[count - 1 :])]
        return cells

    def _number(self, cell: str) -> float | None:
        """Return the number in a cell; the first decimal mark seen in the log holds for all."""
        value = to_number(cell)
        mark = decimal_mark(cell)
        if value is None or mark is None:
            return value
        if mark == "," and not self._comma_allowed:
            return None
        if (self._mark or mark) != mark:
            self._other_marks.append(cell)
            return None
        self._mark = mark
        return value

    def _time_s(self, cells: list[str]) -> float | str:
        """Return the row's time [s], or why it has none."""
        if self._elapsed is not None:
            number = self._number(cells[self._elapsed.index])
            if number is None or abs(number) > MAX_TIME_S:
                return f"no time: {_shown(cells[self._elapsed.index])}"
            return number * self._elapsed.scale
        if self._time is None:
            return self._stamp() if self._stamp is not None else "no time"
        cell = cells[self._time.index]
        if self._date is not None:
            cell = f"{cells[self._date.index]} {cell}"
        parsed = to_time_ns(cell)
        if parsed is None and is_short_clock(cell):
            return (
                f"{_shown(cell)} may be hours and minutes or minutes and seconds: write hh:mm:ss, "
                "or the date before it"
            )
        if parsed is None:
            return f"no ISO 8601 time: {_shown(cell)}"
        nanoseconds, zoned = parsed
        kind = (zoned, nanoseconds > 10**18)  # with a date or not
        if self.time_kind is None or self.origin_ns is None:
            self.time_kind, self.origin_ns = kind, nanoseconds
        if kind != self.time_kind:
            return f"time in another form than before: {_shown(cell)}"
        return (nanoseconds - self.origin_ns) / 1e9

    def _pressure_pa(self, cell: str) -> float | tuple[str, bool]:
        """Return the absolute pressure [Pa], or (reason, over range)."""
        number = self._number(cell)
        if number is None:
            if is_blank(cell):
                return "no pressure", False
            if is_over_range(cell):
                return Sentence("the gauge shows no value: {cell}", cell=_shown(cell)), True
            return f"pressure is not a number: {_shown(cell)}", False
        unit = self._pressure.pressure_unit
        assert unit is not None
        ambient_pa = self.setup.ambient_pressure_pa
        pressure_pa = unit.to_absolute_pa(number, ambient_pa) - self.setup.zero_offset_pa
        if pressure_pa < 0.0:
            return f"pressure below a perfect vacuum: {_shown(cell)}", False
        if pressure_pa > self._max_pa:
            return f"pressure above what the gauge can show: {_shown(cell)}", True
        return pressure_pa

    def _pressure_2_pa(self, cells: list[str]) -> float | None:
        column = self.columns.by_role.get(Role.PRESSURE_2)
        if column is None or is_blank(cells[column.index]):
            return None
        number = self._number(cells[column.index])
        if number is not None and column.pressure_unit is not None:
            # The zero reading belongs to the first gauge.
            pressure_pa = column.pressure_unit.to_absolute_pa(
                number, self.setup.ambient_pressure_pa
            )
            if 0.0 <= pressure_pa <= MAX_PRESSURE_PA:
                return pressure_pa
        self._count_bad(column)
        return None

    def _temperature_k(self, role: Role, cells: list[str]) -> float | None:
        column = self.columns.by_role.get(role)
        if column is None or is_blank(cells[column.index]):
            return None
        number = self._number(cells[column.index])
        if number is not None and column.temperature_unit is not None:
            temperature_k = temperature_to_k(number, column.temperature_unit)
            if TEMPERATURE_RANGE_K[0] <= temperature_k <= TEMPERATURE_RANGE_K[1]:
                return temperature_k
        self._count_bad(column)
        return None

    def _scaled(self, role: Role, cells: list[str], most: float) -> float | None:
        column = self.columns.by_role.get(role)
        if column is None or is_blank(cells[column.index]):
            return None
        number = self._number(cells[column.index])
        if number is not None and 0.0 <= number * column.scale <= most:
            return number * column.scale
        self._count_bad(column)
        return None

    def _count_bad(self, column: Column) -> None:
        self.bad_cells[column.name] = self.bad_cells.get(column.name, 0) + 1


def _shown(cell: str) -> str:
    """Return a cell for a message: short, and without control characters."""
    text = "".join(character if character.isprintable() else "?" for character in cell)
    return repr(text if len(text) <= 40 else text[:37] + "...")
