"""One drawn vent on the second section: run it, and what was inside at the end of each hold.

run = run_other_case(draw_other_case(seed))     # `other_drawing` draws
"""

from dataclasses import dataclass
from typing import Final

import numpy as np

from co2vent.benchmark.other_run import ROW, Instruments, run
from co2vent.benchmark.other_section import (
    Floats,
    SectionParameters,
)
from co2vent.benchmark.vents import closed_spans
from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.readings.reading import Reading, Setup

SHELF_BAND_PA: Final = 0.1e5  # around the triple pressure, with dry ice inside
SHELF_SOLID_KG: Final = 1e-3


@dataclass(frozen=True, slots=True)
class OtherCase:
    """One drawn vent: the section and its start, the hands, the instruments, what is told."""

    seed: int
    setup: Setup
    section: SectionParameters
    instruments: Instruments
    gas: Floats
    gas_t: Floats
    cond: Floats
    cond_t: Floats
    metal: Floats
    extra: Floats
    first_hold_s: float
    script: Floats
    reaction_s: float
    sample_s: float
    valve_logged: bool
    clamp_logged: bool
    clamp_name: str


@dataclass(frozen=True, slots=True)
class OtherHold:
    """What was inside at the end of a hold, and how it went."""

    number: int
    start_s: float
    end_s: float
    start_pressure_pa: float
    end_pressure_pa: float
    liquid_kg: float
    solid_kg: float
    wet: bool
    metal_margin_k: float  # coldest metal above saturation at the hold's end
    leak_by_kg_per_s: float
    shelf_s: float  # time at the triple pressure with dry ice inside, within the hold


@dataclass(frozen=True, slots=True)
class OtherRun:
    """Rows (columns as `ROW`) and holds of one vent."""

    rows: Floats
    holds: tuple[OtherHold, ...]


def allowable_kg(volume_m3: float) -> float:
    """Return the mass that may be left: the larger of 2 g and 0.5 g per litre."""
    return max(2e-3, 0.5 * volume_m3)


def run_other_case(case: OtherCase) -> OtherRun:
    """Run the vent: milliseconds once compiled."""
    rows = run(
        case.section, case.instruments, case.gas.copy(), case.gas_t.copy(), case.cond.copy(),
        case.cond_t.copy(), case.metal.copy(), case.extra.copy(), case.first_hold_s, case.script,
        case.reaction_s, case.sample_s, case.seed % (1 << 32),
    )  # fmt: skip
    return OtherRun(rows, _holds(rows, case.section.volume))


def _holds(rows: Floats, volume: float) -> tuple[OtherHold, ...]:
    holds: list[OtherHold] = []
    for start, stop in closed_spans(rows[:, ROW["valve_is_open"]] > 0.5):
        part, last = rows[start:stop], rows[stop - 1]
        at_shelf = (np.abs(part[:, ROW["pressure_pa"]] - TRIPLE_PRESSURE_PA) < SHELF_BAND_PA) & (
            part[:, ROW["solid_kg"]] > SHELF_SOLID_KG
        )
        holds.append(
            OtherHold(
                number=len(holds),
                start_s=float(part[0, 0]),
                end_s=float(last[0]),
                start_pressure_pa=float(part[0, ROW["pressure_pa"]]),
                end_pressure_pa=float(last[ROW["pressure_pa"]]),
                liquid_kg=float(last[ROW["liquid_kg"]]),
                solid_kg=float(last[ROW["solid_kg"]]),
                wet=bool(last[ROW["liquid_kg"]] + last[ROW["solid_kg"]] > allowable_kg(volume)),
                metal_margin_k=float(last[ROW["metal_margin_k"]]),
                leak_by_kg_per_s=float(last[ROW["leak_by_kg_per_s"]]),
                shelf_s=float(at_shelf.sum() * (part[1, 0] - part[0, 0])),
            )
        )
    return tuple(holds)


def as_readings(case: OtherCase, rows: Floats) -> list[Reading]:
    """Return the rows as the person's log would give them; over-range rows are left out."""
    offset_pa = case.setup.ambient_pressure_pa - case.setup.zero_offset_pa
    readings = []
    for row in rows.tolist():
        shown = row[ROW["shown_pa_gauge"]]
        if shown != shown:
            continue
        temperatures = {case.clamp_name: row[ROW["clamp_k"]]} if case.clamp_logged else {}
        readings.append(
            Reading(
                row[0],
                shown + offset_pa,
                vent_open=row[ROW["valve"]] > 0.5 if case.valve_logged else None,
                **temperatures,
            )
        )
    return readings
