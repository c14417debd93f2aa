"""Readings to the text of the recording and back: the core sees exactly what the log holds.

A reading goes to the core only after it has been read back from its row. So a replay of the
recording gives the core the same numbers, to the last bit, and says the same.
"""

from dataclasses import replace
from typing import Final

from co2vent.readings.columns import Columns, Role
from co2vent.readings.log_decoder import Decoded, LogDecoder
from co2vent.readings.log_writer import LogLayout, metadata_from_setup, metadata_lines
from co2vent.readings.reading import Reading, Setup
from co2vent.store.rows import CHECK_COLUMN

_QUANTITIES: Final = {
    Role.LINE_TEMPERATURE: "line_temperature_k",
    Role.UPPER_TEMPERATURE: "upper_temperature_k",
    Role.AMBIENT_TEMPERATURE: "ambient_temperature_k",
    Role.PRESSURE_2: "pressure_2_pa",
    Role.VACUUM: "vacuum_pa",
    Role.ROOM_CO2: "room_co2_ppm",
}


class LogText:
    """The recording's text for one source, whose header may change."""

    def __init__(self, setup: Setup, columns: Columns, remarks: dict[str, str]) -> None:
        """Begin a recording; `remarks` are metadata of its own (when, by what, from where)."""
        self.preamble: list[str] = metadata_lines({**metadata_from_setup(setup), **remarks})
        self._source_setup = setup
        self._columns = columns
        self._reader = LogDecoder()
        self._reader.feed_text("".join(f"{line}\n" for line in self.preamble))
        self._layout = _layout(setup, columns)
        self.preamble.append(self._begin_columns())

    @property
    def setup(self) -> Setup:
        """What a reader of the recording knows of the section."""
        return self._reader.setup

    def use(self, columns: Columns) -> str | None:
        """Go on with other columns; return the header row to write, where they differ."""
        if columns is self._columns:
            return None
        self._columns = columns
        layout = _layout(self._source_setup, columns)
        if layout == self._layout:
            return None
        self._layout = layout
        return self._begin_columns()

    def row(self, reading: Reading) -> tuple[str, Decoded | None]:
        """Return the row of `reading`, and what it says when it is read."""
        return self._read_back(self._layout.row(reading))

    def over_range_row(self, at_s: float, word: str = "over_range") -> tuple[str, Decoded | None]:
        """Return a row that says that the gauge could not show the value, and how it is read."""
        cells = [f"{at_s:.3f}", word, *("" for _ in self._layout.quantities)]
        return self._read_back(",".join(cells))

    def _begin_columns(self) -> str:
        header = self._layout.header()
        self._reader.feed_text(f"{header}\n")
        return f"{header},{CHECK_COLUMN}"

    def _read_back(self, row: str) -> tuple[str, Decoded | None]:
        items = self._reader.feed_text(f"{row}\n")
        return row, items[0] if items else None


def _layout(setup: Setup, columns: Columns) -> LogLayout:
    present = tuple(name for role, name in _QUANTITIES.items() if role in columns.by_role)
    names = replace(setup, pressure_unit=_pressure_unit(setup, columns))
    return LogLayout(names, quantities=(*present, "vent_open", "note"))


def _pressure_unit(setup: Setup, columns: Columns) -> str:
    unit = columns.pressure.pressure_unit
    return setup.pressure_unit if unit is None else unit.name
