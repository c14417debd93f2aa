"""The log format, written: one writer for recordings, simulated vents and emulated gauges."""

import zlib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Final

from co2vent.readings.reading import Reading, Setup
from co2vent.units import (
    PRESSURE_UNITS,
    VACUUM_UNITS_PA,
    PressureUnit,
    temperature_from_k,
)

ROW_CHECK: Final = "row_check"
# OWASP, CSV Injection (owasp.org/www-community/attacks/CSV_Injection); the full-width ones too
FORMULA_STARTS: Final = ("=", "+", "-", "@", "\uff1d", "\uff0b", "\uff0d", "\uff20")
# Decimals that keep what a gauge resolves: 0.1 mbar in every pressure unit.
_PRESSURE_DECIMALS: Final = {"bar": 4, "psi": 3, "kPa": 2, "MPa": 5}
_TEMPERATURE_DECIMALS: Final = 2


def metadata_from_setup(setup: Setup) -> dict[str, str]:
    """Return the metadata that give `setup` again when read.

    The zero offset and the gauge's full scale come back in the setup's own pressure unit.
    """
    unit = PRESSURE_UNITS[setup.pressure_unit]
    gauge = unit if unit.gauge else PRESSURE_UNITS["bar_g"]
    ambient_pa = setup.ambient_pressure_pa
    values: dict[str, str] = {}
    if setup.section_name:
        values["section_name"] = one_line(setup.section_name)
    if setup.altitude_m is not None:
        values["altitude_m"] = f"{setup.altitude_m:.10g}"
    elif not setup.ambient_pressure_assumed:
        values["ambient_pressure_kPa"] = f"{ambient_pa / 1e3:.10g}"
    if setup.section_volume_m3 is not None:
        values["section_volume_l"] = f"{setup.section_volume_m3 * 1e3:.10g}"
    if setup.gauge_span_pa is not None and setup.gauge_full_scale_pa is not None:
        full_pa = setup.gauge_full_scale_pa + setup.zero_offset_pa
        is_gauge = abs(full_pa - setup.gauge_span_pa) > 1.0
        scale = PRESSURE_UNITS["bar_g" if is_gauge else "bar_a"] if unit.gauge != is_gauge else unit
        values["gauge_full_scale"] = f"{setup.gauge_span_pa / scale.pascals:.10g} {scale.name}"
    if setup.gauge_accuracy_fraction is not None:
        values["gauge_accuracy_percent"] = f"{setup.gauge_accuracy_fraction * 100:.10g}"
    if setup.zero_was_read or setup.zero_offset_pa:
        values["zero_reading"] = f"{setup.zero_offset_pa / gauge.pascals:.10g} {gauge.name}"
    for key, pressure_pa in (
        ("relief_pressure", setup.relief_pressure_pa),
        ("section_max_pressure", setup.section_max_pressure_pa),
    ):
        if pressure_pa is not None:
            values[key] = f"{unit.from_absolute_pa(pressure_pa, ambient_pa):.10g} {unit.name}"
    if setup.metal_minimum_temperature_k is not None:
        values["metal_minimum_temperature"] = f"{setup.metal_minimum_temperature_k:.10g} K"
    if setup.vent_bore_m is not None:
        values["vent_bore_mm"] = f"{setup.vent_bore_m * 1e3:.10g}"
    values["gas"] = setup.gas.value
    if setup.insulated is not None:
        values["insulated"] = "yes" if setup.insulated else "no"
    if setup.simulated:
        values["simulated"] = "yes"
    return values


def metadata_lines(values: Mapping[str, str]) -> list[str]:
    """Return `# key: value` lines, without line ends."""
    return [f"# {key}: {one_line(value)}" for key, value in values.items()]


def one_line(text: str) -> str:
    """Return `text` on one line without control characters or quotes."""
    cleaned = "".join(c if c.isprintable() and c != '"' else " " for c in text)
    return " ".join(cleaned.split())


@dataclass(frozen=True, slots=True)
class LogLayout:
    """Which columns a log has and in which units; turns readings into its rows.

    `setup` gives the pressure and temperature units, the ambient pressure and the zero offset,
    which is put back: the log holds what the gauge showed. `extra` names further columns whose
    text the caller gives with each row; `row_check` adds the CRC-32 of each row.
    """

    setup: Setup
    quantities: tuple[str, ...] = ("line_temperature_k", "ambient_temperature_k", "vent_open")
    time_column: str = "elapsed_s"
    vacuum_unit: str = "micron"
    extra: tuple[str, ...] = ()
    row_check: bool = False

    @property
    def _unit(self) -> PressureUnit:
        return PRESSURE_UNITS[self.setup.pressure_unit]

    def header(self) -> str:
        """Return the header row, without line end."""
        unit, degrees = self._unit.name, self.setup.temperature_unit
        names = {
            "line_temperature_k": f"line_temperature_{degrees}",
            "upper_temperature_k": f"upper_temperature_{degrees}",
            "ambient_temperature_k": f"ambient_temperature_{degrees}",
            "vent_open": "vent_valve",
            "pressure_2_pa": f"pressure_2_{unit}",
            "vacuum_pa": f"vacuum_{self.vacuum_unit}",
            "room_co2_ppm": "room_co2_ppm",
            "note": "note",
        }
        columns = [self.time_column, f"pressure_{unit}", *(names[q] for q in self.quantities)]
        return ",".join([*columns, *self.extra, *([ROW_CHECK] if self.row_check else [])])

    def row(self, reading: Reading, extra: Sequence[str] = (), time_text: str | None = None) -> str:
        """Return one row, without line end; `time_text` replaces the elapsed seconds."""
        cells = [f"{reading.at_s:.3f}" if time_text is None else time_text]
        cells.append(self._pressure(reading.pressure_pa + self.setup.zero_offset_pa))
        cells += [self._cell(quantity, reading) for quantity in self.quantities]
        cells += [quoted(text) for text in extra]
        line = ",".join(cells)
        return f"{line},{zlib.crc32(line.encode('utf-8')):08x}" if self.row_check else line

    def _pressure(self, pressure_pa: float) -> str:
        decimals = _PRESSURE_DECIMALS[self._unit.name[:3]]
        shown = self._unit.from_absolute_pa(pressure_pa, self.setup.ambient_pressure_pa)
        return f"{shown:.{decimals}f}"

    def _cell(self, quantity: str, reading: Reading) -> str:
        if quantity == "vent_open":
            return "" if reading.vent_open is None else "open" if reading.vent_open else "closed"
        if quantity == "note":
            return quoted(reading.note or "")
        value: float | None = getattr(reading, quantity)
        if value is None:
            return ""
        if quantity == "pressure_2_pa":
            return self._pressure(value)
        if quantity == "vacuum_pa":
            return f"{value / VACUUM_UNITS_PA[self.vacuum_unit]:.6g}"
        if quantity == "room_co2_ppm":
            return f"{value:.0f}"
        degrees = temperature_from_k(value, self.setup.temperature_unit)
        return f"{degrees:.{_TEMPERATURE_DECIMALS}f}"


def quoted(text: str) -> str:
    """Return a text cell: one line, in quotes where it holds a comma.

    A text that a spreadsheet would run as a formula gets an apostrophe in front.
    """
    cell = one_line(text)
    if cell.startswith(FORMULA_STARTS):
        cell = "'" + cell
    return f'"{cell}"' if "," in cell or ";" in cell else cell
