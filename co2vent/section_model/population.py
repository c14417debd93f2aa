"""Random sections, vented as crews vent them, with what was inside at the end of every hold.

For calibrating and benchmarking a verdict:

    case = draw_case(seed)              # pure: the same seed gives the same case
    run = run_case(case)                # milliseconds; arrays, no files
    run.rows[:, COLUMN["gauge_pa"]]     # one row a reading, columns as `layout.OUTPUT`
    for hold in run.holds: hold.wet, hold.liquid_kg, hold.start_s, hold.end_s, ...
    readings = as_readings(case, run.rows)      # the same as `Reading` objects
    case.setup                          # what the person knows: volume or None, gauge, altitude

What the person sees is in `case.setup`, `case.valve_logged` and the columns elapsed_s, valve,
gauge_pa (NaN: over range), clamp_k (if `case.clamp_logged`); all other columns are the truth.
Hold 0 is the closed time before the first vent.

Ranges: 1 to 50 L; pipes and shells; copper, steel, stainless of 1.5 to 12 mm; bare and insulated;
a third dry, the rest from traces to 95 % liquid; CO2 at -35 to +10 degC; ambient -8 to +38 degC;
0 to 2300 m; gauges of 0.01 bar to 1 psi steps with errors up to 0.25 % of full scale; readings
every 0.2 to 2 s; 1 in 8 with leak-by of 5 mg/s to 0.3 g/s; holds of 2 to 10 min; some with metal
colder than saturation after an earlier, deeper vent, with oil, nitrogen, an outward leak, or
vented through the triple point.
"""

from dataclasses import dataclass, replace
from typing import Final

import numpy as np
from numpy.random import Generator
from numpy.typing import NDArray

from co2vent.co2 import kernels
from co2vent.readings.reading import Reading, Setup
from co2vent.section_model.drawing import (
    ambient_pressure_pa,
    draw_contents,
    draw_gauge,
    draw_section,
    log_uniform,
)
from co2vent.section_model.layout import COLUMN
from co2vent.section_model.parameters import (
    Gauge,
    Leaks,
    Setting,
    Surroundings,
    VentPath,
)
from co2vent.section_model.simulation import SectionRun
from co2vent.units import PSI_PA

ALLOWABLE_KG: Final = 2e-3  # of liquid and dry ice left, or
ALLOWABLE_KG_PER_M3: Final = 0.5  # of section volume, whichever is larger
LONGEST_VENT_S: Final = 1800.0


@dataclass(frozen=True, slots=True)
class Action:
    """A step of the crew: hold for `seconds`, or vent until the gauge shows `until_pa`."""

    vent: bool
    seconds: float  # of the hold; longest time of the vent
    opening: float = 0.0
    until_pa: float = 0.0  # gauge pressure


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """One random vent: the truth (`setting`, `actions`) and what the person knows (`setup`)."""

    seed: int
    setting: Setting
    actions: tuple[Action, ...]
    setup: Setup
    valve_logged: bool
    clamp_logged: bool

    @property
    def allowable_kg(self) -> float:
        """Liquid and dry ice [kg] that may be left; by the true volume."""
        return max(ALLOWABLE_KG, ALLOWABLE_KG_PER_M3 * self.setting.section.volume_m3)


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldTruth:
    """What was really inside at the end of a hold. SI, absolute."""

    number: int
    first_row: int  # of the hold: the first reading with the valve closed
    last_row: int
    start_s: float
    end_s: float
    start_pressure_pa: float
    end_pressure_pa: float
    liquid_kg: float
    solid_kg: float
    wet: bool  # liquid and dry ice above the allowable amount
    coldest_metal_above_saturation_k: float
    warmest_metal_above_saturation_k: float
    leak_by_kg_per_s: float  # at the end of the hold
    bound_kg: float  # CO2 in oil or desiccant


@dataclass(frozen=True, slots=True)
class CaseRun:
    """The rows of a case (columns as `layout.OUTPUT`) and its holds."""

    rows: NDArray[np.float64]
    holds: tuple[HoldTruth, ...]


def draw_actions(rng: Generator, stop_pa: float, gauge: Gauge) -> tuple[Action, ...]:
    """Return what the crew does: close time, vent to the stop pressure, holds, vents between."""
    opening = log_uniform(rng, 0.15, 1.0)
    actions = [Action(False, rng.uniform(20.0, 240.0))]
    deep = rng.random() < 0.14  # through the triple point
    target = stop_pa + rng.uniform(0.0, 0.6e5)
    if deep:
        target = rng.uniform(0.1e5, 3.9e5)
    second = rng.random() < 0.35  # a hold at a second pressure
    for number in range(int(rng.integers(2, 6))):
        until = target
        if second and number % 2 == 1:
            until = target + rng.uniform(1.5e5, 5e5)
        actions.append(Action(True, LONGEST_VENT_S, opening, until + 0.5 * gauge.step_pa))
        actions.append(Action(False, rng.uniform(120.0, 600.0)))
    return tuple(actions)


def draw_case(seed: int) -> Case:
    """Return the case of a seed."""
    rng = np.random.default_rng([20_531, seed])
    altitude = rng.uniform(0.0, 2300.0)
    pressure = ambient_pressure_pa(altitude) + rng.normal(0.0, 600.0)  # the day's weather
    surroundings = Surroundings(temperature_k=rng.uniform(265.15, 311.15), pressure_pa=pressure)
    section = draw_section(rng)
    contents = draw_contents(rng, section, surroundings.temperature_k)
    gauge = draw_gauge(rng)
    leak = log_uniform(rng, 5e-6, 3e-4) if rng.random() < 0.125 else 0.0
    supply_k = rng.uniform(238.15, 283.15)
    leaks = Leaks(
        leak_by_kg_per_s=leak,
        supply_pa=kernels.saturation_pressure_pa(supply_k),
        supply_h_j_per_kg=(
            kernels.vapor_enthalpy_saturated_j_kg(supply_k)
            if rng.random() < 0.6
            else kernels.liquid_enthalpy_j_kg(supply_k)
        ),
        leak_out_area_m2=log_uniform(rng, 1e-10, 3e-9) if rng.random() < 0.04 else 0.0,
        relief_pa=pressure + float(rng.choice([60e5, 90e5, 120e5])),
    )
    # bore so that a vapour-filled section comes down in minutes, not seconds
    bore = 1.7e-3 * (section.volume_m3 / 0.01) ** 0.4 * log_uniform(rng, 0.6, 2.0)
    vent = VentPath(bore_m=bore, hose_bore_m=2.5 * bore)
    error = gauge.accuracy_percent / 100.0 * gauge.full_scale_pa
    stop = kernels.TRIPLE_P - pressure + max(1.03e5, error + 0.3e5)
    setup = Setup(
        ambient_pressure_pa=ambient_pressure_pa(altitude),
        ambient_pressure_assumed=False,
        altitude_m=altitude,
        section_volume_m3=None if rng.random() < 0.2 else section.volume_m3 * rng.normal(1, 0.05),
        gauge_full_scale_pa=gauge.full_scale_pa + ambient_pressure_pa(altitude),
        gauge_accuracy_fraction=gauge.accuracy_percent / 100.0,
        gauge_span_pa=gauge.full_scale_pa,
        relief_pressure_pa=leaks.relief_pa,
        insulated=section.outside_w_per_m2k < 2.0 if rng.random() < 0.7 else None,
        simulated=True,
        pressure_unit="psig" if gauge.step_pa in (PSI_PA, 0.1 * PSI_PA) else "bar_g",
    )
    return Case(
        seed=seed,
        setting=Setting(
            section=section,
            contents=contents,
            surroundings=surroundings,
            vent=vent,
            leaks=leaks,
            gauge=replace(gauge, clamp=True),
        ),
        actions=draw_actions(rng, stop, gauge),
        setup=setup,
        valve_logged=bool(rng.random() < 0.75),
        clamp_logged=bool(rng.random() < 0.75),
    )


def run_case(case: Case) -> CaseRun:
    """Vent the case as its actions say; return its rows and holds."""
    run = SectionRun(case.setting, seed=case.seed)
    period = case.setting.gauge.period_s
    blocks = [run.first_row()[None, :]]
    spans: list[tuple[int, int]] = []
    count = 1
    for action in case.actions:
        readings = max(2, round(action.seconds / period))
        if action.vent:
            shown = blocks[-1][-1, COLUMN["gauge_pa"]]
            # already there: a short puff tells one hold from the next
            puff = shown - 0.15e5 <= action.until_pa
            until = shown - 0.15e5 if puff else action.until_pa
            readings = max(2, round((6.0 if puff else action.seconds) / period))
            rows = run.step(action.opening, readings, below_pa=until)
        else:
            rows = run.step(0.0, readings)
            spans.append((0 if not spans else count, count + len(rows) - 1))
        blocks.append(rows)
        count += len(rows)
    rows = np.concatenate(blocks)
    return CaseRun(rows, tuple(hold_truth(case, rows, n, *span) for n, span in enumerate(spans)))


def hold_truth(
    case: Case, rows: NDArray[np.float64], number: int, first: int, last: int
) -> HoldTruth:
    """Return the truth at the end of the hold between two rows."""
    end = rows[last]
    liquid, solid = float(end[COLUMN["liquid_kg"]]), float(end[COLUMN["solid_kg"]])
    saturation = float(end[COLUMN["saturation_k"]])
    return HoldTruth(
        number=number,
        first_row=first,
        last_row=last,
        start_s=float(rows[first, 0]),
        end_s=float(end[0]),
        start_pressure_pa=float(rows[first, COLUMN["pressure_pa"]]),
        end_pressure_pa=float(end[COLUMN["pressure_pa"]]),
        liquid_kg=liquid,
        solid_kg=solid,
        wet=liquid + solid > case.allowable_kg,
        coldest_metal_above_saturation_k=float(end[COLUMN["coldest_metal_k"]]) - saturation,
        warmest_metal_above_saturation_k=float(end[COLUMN["warmest_metal_k"]]) - saturation,
        leak_by_kg_per_s=float(end[COLUMN["leak_by_kg_per_s"]]),
        bound_kg=float(end[COLUMN["bound_kg"]]),
    )


def as_readings(case: Case, rows: NDArray[np.float64]) -> list[Reading]:
    """Return what the gauge set showed, as readings; over-range rows are left out."""
    ambient = case.setup.ambient_pressure_pa
    step = case.setting.gauge.clamp_step_k
    readings = []
    for at_s, valve, gauge_pa, clamp_k in rows[:, :4].tolist():
        if gauge_pa != gauge_pa:
            continue
        readings.append(
            Reading(
                at_s,
                gauge_pa + ambient,
                line_temperature_k=round(clamp_k / step) * step if case.clamp_logged else None,
                vent_open=valve > 0.0 if case.valve_logged else None,
            )
        )
    return readings
