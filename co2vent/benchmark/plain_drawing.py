"""Random vents on the third section, and what was inside at the end of every hold.

The ranges are those of the other models: 1 to 50 L, bare and insulated, from nothing to 95 %
liquid, -35 to +10 degC, ambient -8 to +38 degC, 0 to 2300 m, gauges of 0.01 bar to 1 psi steps with
0.25 % of full scale, with and without clamp, valve column and volume, readings every 0.2 to 2 s,
holds of 2 to 10 min, 1 in 8 with leak-by; some with an outward leak, cold metal, or vented through
the triple point.
"""

from math import exp, log

import numpy as np
from numpy.random import Generator

from co2vent.benchmark import plain_section as plain
from co2vent.benchmark.other_population import allowable_kg
from co2vent.benchmark.plain_flows import Seen
from co2vent.benchmark.plain_section import ROW, PlainSection, run
from co2vent.benchmark.vents import TrueHold, TrueVent, closed_spans
from co2vent.co2 import ambient_pressure_pa, kernels
from co2vent.readings.limits import stop_pressure_pa
from co2vent.readings.reading import Reading, Setup
from co2vent.units import PSI_PA


def _log(rng: Generator, low: float, high: float) -> float:
    return exp(rng.uniform(log(low), log(high)))


def plain_model_vent(seed: int) -> TrueVent:
    """Return the vent of `seed` on the third model."""
    rng = np.random.default_rng([3, seed, 0x71])
    altitude_m = rng.uniform(0.0, 2300.0)
    ambient_pa = ambient_pressure_pa(altitude_m) + rng.normal(0.0, 600.0)
    insulated = bool(rng.random() < 0.45)
    p = _section(rng, insulated, ambient_pa)
    state = _state(rng, p)
    seen = _instruments(rng)
    setup = Setup(
        ambient_pressure_pa=ambient_pressure_pa(altitude_m),
        ambient_pressure_assumed=False,
        altitude_m=altitude_m,
        section_volume_m3=p.volume * rng.normal(1.0, 0.05) if rng.random() < 0.8 else None,
        gauge_full_scale_pa=seen.full_scale_pa + ambient_pa,
        gauge_span_pa=seen.full_scale_pa,
        gauge_accuracy_fraction=0.0025,
        insulated=insulated if rng.random() < 0.7 else None,
        simulated=True,
    )
    sample_s = float(rng.choice([0.2, 0.5, 1.0, 2.0]))
    rows = run(
        p, seen, state, rng.uniform(30.0, 240.0), _script(rng, setup), rng.uniform(0.3, 3.0),
        sample_s, seed % (1 << 32),
    )  # fmt: skip
    valve, clamp = bool(rng.random() < 0.75), bool(rng.random() < 0.75)
    return TrueVent(
        model="third",
        seed=seed,
        setup=setup,
        readings=_readings(setup, rows, valve=valve, clamp=clamp),
        holds=_holds(rows, p.leak_by_kg_s),
        volume_m3=p.volume,
        allowable_kg=allowable_kg(p.volume),
        at_s=rows[:, ROW["elapsed_s"]],
        pressure_pa=rows[:, ROW["pressure_pa"]],
        condensed_kg=rows[:, ROW["liquid_kg"]] + rows[:, ROW["solid_kg"]],
        solid_kg=rows[:, ROW["solid_kg"]],
    )


def _section(rng: Generator, insulated: bool, ambient_pa: float) -> PlainSection:
    litres = _log(rng, 1.0, 50.0)
    volume = litres * 1e-3
    area = rng.uniform(0.055, 0.12) * litres**0.72
    capacity = rng.uniform(0.8, 4.0) * litres**0.9 * 460.0
    low_share = rng.uniform(0.06, 0.4)
    low_metal = low_share * rng.uniform(0.6, 1.8)
    outside = _log(rng, 0.3, 2.0) if insulated else rng.uniform(5.0, 28.0)
    supply_k = rng.uniform(245.0, 283.0)
    leaks = rng.random() < 1 / 8
    return PlainSection(
        volume=volume,
        low_share=low_share,
        area=area,
        low_capacity=capacity * low_metal,
        rest_capacity=capacity * max(1.0 - low_metal, 0.2),
        between_w_k=_log(rng, 0.05, 3.0) * litres**0.33,
        outside_low_w_k=outside * area * 1.15 * low_share,
        outside_rest_w_k=outside * area * 1.15 * (1.0 - low_share),
        ambient_k=rng.uniform(265.15, 311.15),
        ambient_pa=ambient_pa,
        quiet_w_m2_k=_log(rng, 100.0, 600.0),
        boil_w_m2_k2=_log(rng, 20.0, 300.0),
        film_k=rng.uniform(15.0, 45.0),
        film_w_m2_k=_log(rng, 80.0, 300.0),
        snow_w_m2_k=_log(rng, 15.0, 150.0),
        condense_w_m2_k=_log(rng, 300.0, 2000.0),
        gas_w_m2_k=_log(rng, 3.0, 15.0),
        # from 20 bar to the stop in 20 s to 4 min where there is only vapour
        vent_area=0.8 * volume / (_log(rng, 20.0, 240.0) * 130.0),
        leak_by_kg_s=_log(rng, 5e-6, 3e-4) if leaks else 0.0,
        leak_liquid=int(rng.random() < 0.4),
        supply_k=supply_k,
        leak_out_area=_log(rng, 2e-10, 3e-8) if rng.random() < 0.06 else 0.0,
    )


def _state(rng: Generator, p: PlainSection) -> np.ndarray:
    charge_k = rng.uniform(238.15, 283.15)
    pressure = kernels.saturation_pressure_pa(charge_k)
    kind = rng.choice(3, p=[0.33, 0.34, 0.33])
    share = 0.0
    if kind > 0:
        share = _log(rng, 1e-4, 1e-2) if kind == 1 else _log(rng, 1e-2, 0.95)
    gas_k = charge_k + 0.2
    if kind == 0:
        pressure *= rng.uniform(0.4, 0.95)
        gas_k += rng.uniform(0.5, 5.0)
    state = np.zeros(plain.STATE)
    state[plain.GAS_KG] = kernels.vapor_density_kg_m3(pressure, gas_k) * p.volume * (1.0 - share)
    state[plain.GAS_K] = gas_k
    state[plain.LIQUID_KG] = share * p.volume * kernels.liquid_density_kg_m3(charge_k)
    state[plain.PRESSURE] = pressure
    cold = -rng.uniform(2.0, 15.0) if rng.random() < 0.12 else 0.0
    state[plain.LOW_K] = charge_k + cold
    towards = rng.uniform(0.0, 0.6) if rng.random() < 0.5 else 0.0
    state[plain.REST_K] = charge_k + cold + towards * max(p.ambient_k - charge_k, 0.0)
    return state


def _instruments(rng: Generator) -> Seen:
    step_pa = float(rng.choice([1e2, 1e3, 1e3, 2e3, 5e3, 0.1 * PSI_PA, PSI_PA]))
    full_scale_pa = float(rng.choice([40e5, 60e5, 60e5, 100e5]))
    error = 0.0025 * full_scale_pa
    return Seen(
        zero_pa=error * rng.uniform(-0.7, 0.7),
        gain=1.0 + 0.0025 * rng.uniform(-0.3, 0.3),
        lag_s=_log(rng, 0.05, 1.5),
        step_pa=step_pa,
        noise_pa=min(rng.uniform(0.1, 0.7) * step_pa, 2.5e3),
        full_scale_pa=full_scale_pa,
        clamp_error_k=rng.normal(0.0, 1.0),
        clamp_lag_s=_log(rng, 8.0, 90.0),
        clamp_ambient_share=rng.uniform(0.0, 0.1),
        clamp_step_k=0.1,
    )


def _script(rng: Generator, setup: Setup) -> np.ndarray:
    """What the crew does: to the stop and a hold, some times; some at two pressures, some past."""
    stop = stop_pressure_pa(setup) - setup.ambient_pressure_pa
    target = stop + rng.uniform(0.0, 0.4e5)
    if rng.random() < 0.14:
        target = rng.uniform(0.1e5, 3.9e5)
    second, opening = rng.random() < 0.35, _log(rng, 0.2, 1.0)
    rows = []
    for number in range(int(rng.integers(2, 6))):
        until = target + (rng.uniform(1.5e5, 6e5) if second and number % 2 == 0 else 0.0)
        rows.append((until, opening, 1500.0, rng.uniform(120.0, 600.0)))
    return np.array(rows)


def _readings(setup: Setup, rows: np.ndarray, *, valve: bool, clamp: bool) -> list[Reading]:
    return [
        Reading(
            row[0],
            row[2] + setup.ambient_pressure_pa,
            line_temperature_k=row[3] if clamp else None,
            vent_open=row[1] > 0.5 if valve else None,
        )
        for row in rows[:, :4].tolist()
        if row[2] == row[2]
    ]


def _holds(rows: np.ndarray, leak_by_kg_s: float) -> tuple[TrueHold, ...]:
    holds: list[TrueHold] = []
    for start, stop in closed_spans(rows[:, ROW["valve_is_open"]] > 0.5):
        last = rows[stop - 1]
        holds.append(
            TrueHold(
                number=len(holds),
                start_s=float(rows[start, 0]),
                end_s=float(last[0]),
                liquid_kg=float(last[ROW["liquid_kg"]]),
                solid_kg=float(last[ROW["solid_kg"]]),
                metal_margin_k=float(last[ROW["metal_margin_k"]]),
                leak_by_kg_per_s=leak_by_kg_s,
            )
        )
    return tuple(holds)
