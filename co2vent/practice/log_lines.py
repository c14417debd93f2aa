"""Rows of the model as readings and as the lines of a readings log and a truth file."""

from collections.abc import Iterator
from typing import Final

import numpy as np
from numpy.typing import NDArray

from co2vent.practice.scenario import Scenario
from co2vent.readings.log_writer import LogLayout, metadata_from_setup, metadata_lines
from co2vent.readings.reading import Reading
from co2vent.section_model.layout import COLUMN

TRUTH_HEADER: Final = "elapsed_s,pressure_bar_a,liquid_kg,solid_kg,vapor_kg,leak_by_kg_per_s"
OVER_RANGE_WORD: Final = "OL"
VACUUM_GAUGE_TOP_PA: Final = 2666.0  # 20 000 micron
Rows = NDArray[np.float64]


def log_layout(scenario: Scenario) -> LogLayout:
    """Return which columns the scenario's log has."""
    quantities = ["ambient_temperature_k"]
    if scenario.log_clamp:
        quantities.insert(0, "line_temperature_k")
    if scenario.log_valve:
        quantities.append("vent_open")
    if scenario.log_vacuum:
        quantities.append("vacuum_pa")
    if scenario.room_m3 is not None:
        quantities.append("room_co2_ppm")
    return LogLayout(scenario.setup, quantities=tuple(quantities))


def to_reading(scenario: Scenario, row: Rows, room_ppm: float | None = None) -> Reading | None:
    """Return what the gauge set showed at a row; `None` when the gauge was over its range."""
    shown_pa = float(row[COLUMN["gauge_pa"]])
    if shown_pa != shown_pa:
        return None
    step = scenario.setting.gauge.clamp_step_k
    clamp_k = round(float(row[COLUMN["clamp_k"]]) / step) * step if scenario.log_clamp else None
    return Reading(
        float(row[0]),
        shown_pa + scenario.setup.ambient_pressure_pa - scenario.setup.zero_offset_pa,
        line_temperature_k=clamp_k,
        ambient_temperature_k=scenario.setting.surroundings.temperature_k,
        vent_open=bool(row[COLUMN["valve"]] > 0.0) if scenario.log_valve else None,
        vacuum_pa=_vacuum_pa(float(row[COLUMN["pressure_pa"]])) if scenario.log_vacuum else None,
        room_co2_ppm=room_ppm,
    )


def _vacuum_pa(pressure_pa: float) -> float | None:
    """Return what a vacuum gauge shows: three digits, nothing above 26 mbar (20 000 micron)."""
    return float(f"{pressure_pa:.3g}") if pressure_pa < VACUUM_GAUGE_TOP_PA else None


def header_lines(scenario: Scenario) -> list[str]:
    """Return the metadata lines, `# simulated: yes` among them, and the header row."""
    return [*metadata_lines(metadata_from_setup(scenario.setup)), log_layout(scenario).header()]


def row_line(layout: LogLayout, reading: Reading | None, at_s: float) -> str:
    """Return one row of the readings log; without a reading the gauge was over its range."""
    if reading is None:
        return f"{at_s:.3f},{OVER_RANGE_WORD}{',' * len(layout.quantities)}"
    return layout.row(reading)


def truth_lines(rows: Rows) -> Iterator[str]:
    """Yield the lines of the truth file: what was really inside at each reading."""
    yield TRUTH_HEADER
    columns = [COLUMN[n] for n in ("pressure_pa", "liquid_kg", "solid_kg", "vapor_kg")]
    for row in rows:
        pressure, liquid, solid, vapour = (float(row[c]) for c in columns)
        leak = float(row[COLUMN["leak_by_kg_per_s"]])
        yield f"{row[0]:.3f},{pressure / 1e5:.4f},{liquid:.5f},{solid:.5f},{vapour:.5f},{leak:.6g}"
