"""Vents for the fault benchmark: what the gauge shows, what is inside, and what goes wrong when."""

import random
from dataclasses import dataclass
from typing import Final

from co2vent.benchmark.fault_wire import Fault, WireRow
from co2vent.units import PRESSURE_UNITS, ZERO_CELSIUS_K

WIRE_FAULTS: Final = (
    "unplug", "garbage", "cut lines", "freeze", "stuck", "silence", "lag", "jump", "over range",
    "wall ahead", "wall back", "sleep", "clock back", "clock ahead",
)  # fmt: skip
DISK_FAULTS: Final = ("disk full", "disk stays full", "log removed")
LONGEST_VENT_S: Final = 1500.0


@dataclass(frozen=True, slots=True)
class Vent:
    """A simulated vent: what the gauge shows, and until when it was wet inside."""

    rows: tuple[WireRow, ...]
    header: str
    metadata: str
    wet: tuple[bool, ...]  # at each row: more inside than is allowed
    interval_s: float

    def wet_at(self, at_s: float) -> bool:
        """Return whether liquid or dry ice above the allowable amount was inside."""
        index = min(int(at_s / self.interval_s + 0.5), len(self.wet) - 1)
        return self.wet[max(index, 0)]


def simulated_vent(seed: int) -> Vent:
    """Return the vent of a seed."""
    from co2vent.section_model.layout import COLUMN
    from co2vent.section_model.population import as_readings, draw_case, run_case

    case = draw_case(seed)
    rows = run_case(case).rows
    period_s = case.setting.gauge.period_s
    rows = rows[: int(LONGEST_VENT_S / period_s)]
    setup = case.setup
    unit = PRESSURE_UNITS[setup.pressure_unit]
    wire_rows = []
    for reading in as_readings(case, rows):
        shown = unit.from_absolute_pa(reading.pressure_pa, setup.ambient_pressure_pa)
        rest = (
            ""
            if reading.line_temperature_k is None
            else (f",{reading.line_temperature_k - ZERO_CELSIUS_K:.2f}")
        )
        if reading.vent_open is not None:
            rest += ",open" if reading.vent_open else ",closed"
        wire_rows.append(WireRow(reading.at_s, f"{shown:.3f}", rest))
    header = f"pressure_{unit.name}"
    header += ",line_temperature_degC" if case.clamp_logged else ""
    header += ",vent_valve" if case.valve_logged else ""
    metadata = f"# altitude_m: {setup.altitude_m:.1f}\n# simulated: yes\n"
    if setup.section_volume_m3 is not None:
        metadata += f"# section_volume_l: {setup.section_volume_m3 * 1e3:.3f}\n"
    if setup.gauge_span_pa is not None and setup.gauge_accuracy_fraction is not None:
        metadata += f"# gauge_full_scale: {setup.gauge_span_pa / 1e5:.1f} bar_g\n"
        metadata += f"# gauge_accuracy_percent: {setup.gauge_accuracy_fraction * 100:.3f}\n"
    inside = rows[:, COLUMN["liquid_kg"]] + rows[:, COLUMN["solid_kg"]]
    return Vent(
        tuple(wire_rows),
        header,
        metadata,
        tuple((inside > case.allowable_kg).tolist()),
        period_s,
    )


def draw_faults(rng: random.Random, length_s: float) -> tuple[list[Fault], str | None]:
    """Return one to three faults of the wire at random moments, and perhaps one of the disk."""
    faults = []
    for _ in range(rng.randint(1, 3)):
        start_s = rng.uniform(0.0, length_s)
        lasts_s = rng.choice((1.0, 4.0, 15.0, 60.0, 300.0)) * rng.uniform(0.5, 1.5)
        faults.append(Fault(rng.choice(WIRE_FAULTS), start_s, start_s + lasts_s))
    return faults, rng.choice(DISK_FAULTS) if rng.random() < 0.25 else None
