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
from math import exp, log
from typing import Final

import numpy as np
from numpy.random import Generator
from numpy.typing import NDArray

from co2vent.co2 import kernels
from co2vent.readings.reading import Reading, Setup
from co2vent.section_model.layout import COLUMN
from co2vent.section_model.parameters import (
    COPPER,
    STAINLESS,
    STEEL,
    Contents,
    Gauge,
    Leaks,
    Pocket,
    Section,
    Setting,
    Sorbent,
    Surroundings,
    VentPath,
)
from co2vent.section_model.simulation import SectionRun
from co2vent.units import PSI_PA, STANDARD_ATMOSPHERE_PA

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


def log_uniform(rng: Generator, low: float, high: float) -> float:
    """Return a number between `low` and `high`, even in its logarithm."""
    return exp(rng.uniform(log(low), log(high)))


def ambient_pressure_pa(altitude_m: float) -> float:
    """Return the standard pressure [Pa] at an altitude (ISO 2533)."""
    return float(STANDARD_ATMOSPHERE_PA * (1.0 - 0.0065 * altitude_m / 288.15) ** 5.25588)


def draw_section(rng: Generator, volume_l: tuple[float, float] = (1.0, 50.0)) -> Section:
    """Return a random section: pipe or shell, bare or insulated, of one to three pockets."""
    volume = log_uniform(rng, *volume_l) * 1e-3
    shell = volume > 3e-3 and rng.random() < 0.35
    diameter = log_uniform(rng, 0.12, 0.3) if shell else log_uniform(rng, 0.018, 0.11)
    metal = STEEL if shell else (COPPER, STEEL, STAINLESS)[rng.integers(3)]
    thinnest, thickest = (0.003, 0.012) if metal is STEEL else (0.0015, 0.005)
    wall = log_uniform(rng, thinnest, min(thickest, 0.12 * diameter + thinnest))
    insulated = rng.random() < 0.45
    outside = log_uniform(rng, 0.3, 1.0) if insulated else rng.uniform(8.0, 15.0)
    pockets = int(rng.choice([1, 1, 1, 2, 3]))
    shares = rng.dirichlet(np.full(pockets, 4.0))
    boil = log_uniform(rng, 150.0, 1500.0)
    oil = rng.random() < 0.08
    core = rng.random() < 0.05
    sorbent = Sorbent(
        oil_kg=log_uniform(rng, 2e-3, 20e-3) * volume * 1e3 / 5.0 if oil else 0.0,
        desiccant_kg=log_uniform(rng, 0.01, 0.04) * volume * 1e3 if core else 0.0,
        time_constant_s=log_uniform(rng, 150.0, 1200.0),
    )
    return Section(
        volume_m3=volume,
        diameter_m=diameter,
        wall_m=wall,
        metal=metal,
        extra_metal_share=log_uniform(rng, 0.03, 0.4),
        outside_w_per_m2k=outside,
        gas_factor=rng.uniform(0.09, 0.17),
        interface_w_per_m2k=log_uniform(rng, 2.0, 20.0),
        surface_condensation_w_per_m2k=log_uniform(rng, 60.0, 600.0),
        film_condensation_w_per_m2k=log_uniform(rng, 100.0, 1000.0),
        mist_s=log_uniform(rng, 0.3, 3.0),
        pockets=tuple(
            Pocket(
                volume_share=float(share),
                wet_share=rng.uniform(0.15, 0.6),
                boil_w_per_m2k=boil * log_uniform(rng, 0.7, 1.4),
                snow_contact_w_per_m2k=log_uniform(rng, 40.0, 250.0),
                boil_s=log_uniform(rng, 0.1, 1.5),
                snow_s=log_uniform(rng, 2.0, 20.0),
                sorbent=sorbent if i == 0 else Sorbent(),
            )
            for i, share in enumerate(shares)
        ),
    )


def draw_contents(rng: Generator, section: Section, ambient_k: float) -> Contents:
    """Return a random charge: a third vapour only, the rest from traces to nearly full."""
    temperature = rng.uniform(238.15, 283.15)
    insulated = section.outside_w_per_m2k < 2.0
    # metal away from the liquid has drifted towards the ambient since the isolation
    drift = rng.uniform(0.0, 0.3 if insulated else 0.8)
    dry_metal = temperature + drift * (ambient_k - temperature) * (ambient_k > temperature)
    nitrogen = log_uniform(rng, 0.02e5, 1.0e5) if rng.random() < 0.06 else 0.0
    draw = rng.random()
    if draw < 0.36:
        saturated = kernels.saturation_pressure_pa(temperature)
        pressure = saturated * rng.uniform(0.55, 0.999)
        metal = max(dry_metal, temperature)
        return Contents(
            temperature_k=temperature,
            pressure_pa=pressure,
            dry_metal_k=metal,
            wet_metal_k=temperature + rng.uniform(0.0, 1.0) * (metal - temperature),
            nitrogen_pa=nitrogen,
        )
    if draw < 0.56:
        fraction = log_uniform(rng, 3e-4, 0.02)
    else:
        fraction = rng.uniform(0.02, 0.95)
    # room to warm without becoming liquid-full at once, except now and then
    weights = rng.dirichlet(np.full(len(section.pockets), 0.8))
    room = [fraction * w / p.volume_share for w, p in zip(weights, section.pockets, strict=True)]
    by_volume = max(room) > 0.97
    wet_metal = temperature + rng.uniform(-0.5, 0.5)
    cold = rng.random()
    if cold < 0.10:
        # cold from an earlier, deeper vent: colder than saturation at the coming stop pressure
        wet_metal = rng.uniform(213.15, 223.15)
        dry_metal = min(dry_metal, rng.uniform(218.15, 245.15))
        temperature = rng.uniform(222.15, 232.15)
    elif cold < 0.22:
        # cold from a long vent: little liquid and metal hardly warmer than it, so little to see
        temperature = rng.uniform(222.15, 232.15)
        wet_metal = temperature + rng.uniform(-1.0, 6.0)
        dry_metal = wet_metal + rng.uniform(0.0, 10.0)
        fraction = log_uniform(rng, 4e-4, 0.08)
    return Contents(
        temperature_k=temperature,
        liquid_fraction=fraction,
        pocket_liquid=None if by_volume else tuple(float(w) + 1e-6 for w in weights),
        dry_metal_k=dry_metal,
        wet_metal_k=wet_metal,
        nitrogen_pa=nitrogen,
    )


def draw_gauge(rng: Generator) -> Gauge:
    """Return a random gauge set: steps of 0.01 bar to 1 psi, error within 0.25 % of full scale."""
    full_scale = float(rng.choice([60e5, 60e5, 100e5, 160e5]))
    step = float(rng.choice([100.0, 1e3, 1e3, 2e3, 5e3, 0.1 * PSI_PA, PSI_PA]))
    error = 0.0025 * full_scale
    zero = rng.uniform(-0.7, 0.7) * error
    return Gauge(
        full_scale_pa=full_scale,
        step_pa=step,
        noise_pa=max(90.0, step * log_uniform(rng, 0.1, 0.6)),
        lag_s=log_uniform(rng, 0.05, 1.0),
        zero_pa=zero,
        # the rest of the error grows with the pressure, over the lower half of the scale
        span_error=rng.uniform(-0.3, 0.3) * error / (0.5 * full_scale),
        drift_pa_per_s=rng.normal(0.0, 0.02),
        clamp_error_k=rng.normal(0.0, 1.5),
        clamp_lag_s=log_uniform(rng, 5.0, 60.0),
        clamp_noise_k=log_uniform(rng, 0.02, 0.2),
        period_s=float(rng.choice([0.2, 0.5, 1.0, 1.0, 2.0])),
    )


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
