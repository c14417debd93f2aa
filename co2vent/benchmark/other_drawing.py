"""Random vents on the second section: `draw_other_case(seed)` is what `run_other_case` takes.

Ranges: 1 to 50 L, bare and insulated, from nothing to 95 % liquid, -35 to +10 degC, ambient -8 to
+38 degC, 0 to 2300 m, gauges of 0.01 bar to 1 psi steps with 0.25 % of full scale, with and without
clamp, valve column and volume, readings every 0.2 to 2 s, holds of 2 to 10 min, 1 in 8 with
leak-by; some with oil, nitrogen, an outward leak, cold metal, or vented through the triple point.
"""

from math import exp, log, pi

import numpy as np
from numpy.random import Generator

from co2vent.benchmark.other_population import OtherCase
from co2vent.benchmark.other_run import Instruments
from co2vent.benchmark.other_section import (
    LAYERS,
    NITROGEN_CV,
    NITROGEN_R,
    PLACES,
    Floats,
    SectionParameters,
    liquid_energy,
    solid_energy,
)
from co2vent.co2 import TRIPLE_PRESSURE_PA, TRIPLE_TEMPERATURE_K, ambient_pressure_pa, kernels
from co2vent.readings.reading import Setup
from co2vent.units import PSI_PA, STANDARD_ATMOSPHERE_PA


def draw_other_case(seed: int) -> OtherCase:
    """Return the vent of this seed; the same seed gives the same vent."""
    rng = np.random.default_rng([seed, 0x0C02])
    volume = exp(rng.uniform(log(1e-3), log(50e-3)))
    altitude_m = float(rng.uniform(0, 2300)) if rng.random() < 0.7 else float(rng.uniform(0, 200))
    ambient_pa = ambient_pressure_pa(altitude_m) + rng.normal(0.0, 700.0)
    ambient_k = rng.uniform(265.15, 311.15)
    # one record in five begins when the section has already been vented down once, some of them
    # too far
    earlier = rng.choice(3, p=[0.79, 0.16, 0.05])
    charge_k = float(rng.uniform(*[(238.15, 283.15), (219.5, 238.0), (198.0, 216.0)][earlier]))
    insulated = bool(rng.random() < 0.45)
    section = _section(rng, volume, ambient_k, ambient_pa, insulated)
    gas, gas_t, cond, cond_t, kind = _contents(rng, section, charge_k)
    metal, extra = _metal(rng, section, charge_k, earlier == 1)
    instruments, accuracy = _instruments(rng)
    setup = _setup(rng, volume, altitude_m, ambient_pa, insulated, instruments, accuracy)
    sample_s = float(rng.choice([0.2, 0.5, 1.0, 2.0], p=[0.1, 0.35, 0.4, 0.15]))
    names = ["line_temperature_k", "line_temperature_k", "upper_temperature_k"]
    return OtherCase(
        seed=seed,
        setup=setup,
        section=section,
        instruments=instruments,
        gas=gas,
        gas_t=gas_t,
        cond=cond,
        cond_t=cond_t,
        metal=metal,
        extra=extra,
        first_hold_s=float(rng.uniform(120, 600) if earlier == 2 else rng.uniform(30, 240)),
        script=_script(rng, setup, kind in (1, 2), section.leak_in_kg_s > 0.0),
        reaction_s=float(rng.uniform(0.3, 3.0)),
        sample_s=sample_s,
        valve_logged=bool(rng.random() < 0.75),
        clamp_logged=bool(rng.random() < 0.7),
        clamp_name=names[0] if instruments.clamp_wall in (0, 4) else names[2],
    )


def _section(
    rng: Generator, volume: float, ambient_k: float, ambient_pa: float, insulated: bool
) -> SectionParameters:
    slender = exp(rng.uniform(log(3.0), log(60.0)))  # length over diameter
    diameter = (4.0 * volume / (pi * slender)) ** (1 / 3)
    area = pi * diameter * diameter * (slender + 0.5)
    wall = rng.uniform(1.5e-3, 9e-3)
    density, capacity, conductivity = [(7850, 460, 50), (7900, 480, 15), (8900, 385, 330)][
        int(rng.choice(3, p=[0.5, 0.35, 0.15]))
    ]
    pockets = np.array([rng.uniform(0.02, 0.25), rng.uniform(0.01, 0.12)])
    shares = np.array([*(np.full(3, (1.0 - pockets.sum()) / 3.0)), *pockets])
    shares *= rng.uniform(0.7, 1.3, 5)
    areas = area * shares / shares.sum()
    thickness = wall * rng.uniform(0.8, 2.5, 5)
    heat = areas * thickness * density * capacity
    body_kg = rng.uniform(0.3, 1.5) * (volume * 1e3) ** 0.7
    core_kg = rng.choice([0.0, 1.0]) * rng.uniform(0.1, 0.5) * pockets[0] * volume * 1e3
    surface = diameter * diameter * slender * rng.uniform(0.2, 0.8)
    supply_k = rng.uniform(250.0, 283.0)
    leaks = rng.random() < 1 / 8
    leak_out = rng.random() < 0.1
    return SectionParameters(
        volume=volume,
        pocket_volume=pockets * volume,
        wall_area=areas,
        outer_factor=1.0 + 2.0 * wall / diameter,
        inner_capacity=heat * 0.5,
        outer_capacity=heat * 0.5 + 50.0 * areas,
        through_w_k=conductivity / thickness * areas,
        along_w_k=conductivity * pi * diameter * wall / (0.35 * diameter * slender),
        body_capacity=body_kg * capacity,
        body_w_k=rng.uniform(0.3, 3.0) * (volume * 1e3) ** 0.4,
        core_capacity=max(core_kg, 0.01) * 900.0,
        core_w_k=exp(rng.uniform(log(0.5), log(10.0))) * max(core_kg, 0.01) / 0.1,
        surface_area=np.array([surface, 0.3 * surface * pockets[0], 0.3 * surface * pockets[1]]),
        size=diameter,
        ambient_k=ambient_k,
        ambient_pa=ambient_pa,
        insulation_w_m2_k=exp(rng.uniform(log(0.4), log(2.0))) if insulated else 0.0,
        wind_w_m2_k=float(rng.choice([0.0, 1.0])) * rng.uniform(2.0, 20.0),
        gust=rng.uniform(0.0, 0.6),
        quiet_w_m2_k=exp(rng.uniform(log(100.0), log(1500.0))),
        snow_w_m2_k=exp(rng.uniform(log(20.0), log(150.0))),
        accommodation=exp(rng.uniform(log(5e-4), log(0.1))),
        boil_w_m2_k3=exp(rng.uniform(log(10.0), log(150.0))),
        film_k=rng.uniform(15.0, 40.0),
        condense_w_m2_k=exp(rng.uniform(log(400.0), log(2500.0))),
        mixing_kg_s=exp(rng.uniform(log(1e-6), log(1e-3))) * volume * 1e3,
        drain=int(rng.choice([0, 1, 2], p=[0.6, 0.2, 0.2])),
        oil_kg=rng.uniform(0.01, 0.05) * volume * 1e3 * 0.3 if rng.random() < 0.12 else 0.0,
        oil_factor=rng.uniform(0.02, 0.073),  # Raoult with 600 g/mol is 0.073; real oils take less
        oil_s=exp(rng.uniform(log(120.0), log(3000.0))),
        vent_area=_vent_area(rng, volume),
        leak_in_kg_s=exp(rng.uniform(log(5e-6), log(3e-4))) if leaks else 0.0,
        leak_liquid=int(rng.random() < 0.5),
        supply_pa=kernels.saturation_pressure_pa(supply_k),
        supply_k=supply_k,
        leak_out_area=exp(rng.uniform(log(1e-9), log(1.5e-7))) if leak_out else 0.0,
    )


def _vent_area(rng: Generator, volume: float) -> float:
    """Return an opening that takes the vapour from 20 bar to the stop in 20 s to 4 min."""
    seconds = exp(rng.uniform(log(20.0), log(240.0)))
    return 0.7 * volume / (seconds * 130.0) * 1.2


def _contents(
    rng: Generator, p: SectionParameters, charge_k: float
) -> tuple[Floats, Floats, Floats, Floats, int]:
    """Return gas, its temperatures, condensed CO2, its temperatures, and 0 dry to 3 nearly full."""
    saturated_pa = kernels.equilibrium_pressure_pa(charge_k)
    frozen = charge_k < TRIPLE_TEMPERATURE_K
    cond, cond_t = np.zeros((PLACES, 2)), np.full(PLACES, charge_k)
    kind = int(rng.choice(4, p=[0.3, 0.35, 0.35, 0.0] if frozen else [0.32, 0.28, 0.28, 0.12]))
    if kind > 0:
        low, high = [(1e-4, 1e-2), (1e-2, 0.2), (0.2, 0.95)][kind - 1]
        liquid = exp(rng.uniform(log(low), log(high))) * p.volume
        room = np.array([p.volume - p.pocket_volume.sum(), *p.pocket_volume])
        weights = rng.dirichlet([0.7, 0.5, 0.5]) if kind < 3 else room / p.volume
        volumes = np.minimum(liquid * weights, 0.97 * room)
        density = kernels.solid_density_kg_m3 if frozen else kernels.liquid_density_kg_m3
        cond[:, 0] = volumes * density(charge_k)
        cond[:, 0][cond[:, 0] < 1e-6] = 0.0
        cond[:, 1] = cond[:, 0] * (solid_energy if frozen else liquid_energy)(charge_k)
        pressure_pa, superheat_k = saturated_pa, 0.3
    else:
        volumes = np.zeros(PLACES)
        pressure_pa = rng.uniform(0.4, 0.95) * saturated_pa
        superheat_k = rng.uniform(1.0, 6.0)
    nitrogen = rng.uniform(0.01, 0.1) if rng.random() < 0.1 else 0.0
    layer = (p.volume - volumes.sum()) / LAYERS
    gas, gas_t = np.zeros((LAYERS, 3)), np.zeros(LAYERS)
    for i in range(LAYERS):
        t = charge_k + superheat_k + i * rng.uniform(0.0, 1.0)
        rho = kernels.vapor_density_kg_m3(pressure_pa, t)
        gas_t[i] = t
        gas[i, 0] = rho * layer
        gas[i, 1] = nitrogen * pressure_pa * layer / (NITROGEN_R * t)
        gas[i, 2] = gas[i, 0] * kernels.vapor_internal_energy_j_kg(rho, t)
        gas[i, 2] += gas[i, 1] * NITROGEN_CV * t
    return gas, gas_t, cond, cond_t, kind


def _metal(
    rng: Generator, p: SectionParameters, charge_k: float, earlier: bool
) -> tuple[Floats, Floats]:
    metal = np.full((5, 2), charge_k) + rng.normal(0.0, 0.5, (5, 1))
    all_cold = earlier and rng.random() < 0.6  # boiling has taken the heat out of everything
    if all_cold:
        metal += rng.uniform(-8.0, 1.0)
    elif rng.random() < 0.12:  # an earlier, deeper vent: metal below saturation
        metal -= rng.uniform(3.0, 18.0)
    elif rng.random() < 0.5:  # the dry, upper metal is warmer
        metal[1:3] += (
            rng.uniform(0.0, 0.6) * max(p.ambient_k - charge_k, 0.0) * np.array([[0.5], [1.0]])
        )
    extra = np.zeros(7)
    extra[0] = charge_k + rng.uniform(0.0, 0.05 if all_cold else 0.7) * (p.ambient_k - charge_k)
    extra[1] = charge_k
    if p.oil_kg > 0.0:
        share = min(rng.uniform(0.3, 0.95), 0.7)
        extra[2] = p.oil_kg * p.oil_factor * share / (1.0 - share)
    return metal, extra


def _instruments(rng: Generator) -> tuple[Instruments, float]:
    step_pa = float(rng.choice([1e3, 1e3, 2e3, 5e3, 0.1 * PSI_PA, PSI_PA]))
    full_scale_pa = float(rng.choice([25e5, 40e5, 60e5, 60e5, 100e5]))
    accuracy = 0.0025
    error_pa = full_scale_pa * accuracy
    split = rng.uniform(-1.0, 1.0)
    return (
        Instruments(
            zero_pa=error_pa * split * rng.uniform(0.0, 1.0),
            gain=1.0 + accuracy * (1.0 - abs(split)) * rng.uniform(-1.0, 1.0),
            lag_s=exp(rng.uniform(log(0.05), log(1.0))),
            step_pa=step_pa,
            noise_pa=rng.uniform(0.1, 0.8) * min(step_pa, 2e3),
            wander_pa=rng.uniform(0.0, 250.0),
            full_scale_pa=full_scale_pa,
            clamp_wall=int(rng.choice([0, 4, 1], p=[0.5, 0.3, 0.2])),
            clamp_error_k=rng.normal(0.0, 1.0),
            clamp_lag_s=exp(rng.uniform(log(8.0), log(90.0))),
            clamp_ambient_share=rng.uniform(0.0, 0.12),
            clamp_step_k=0.1,
            mark_delay_s=rng.uniform(0.0, 2.5),
        ),
        accuracy,
    )


def _setup(
    rng: Generator, volume: float, altitude_m: float, ambient_pa: float, insulated: bool,
    seen: Instruments, accuracy: float,
) -> Setup:  # fmt: skip
    told = rng.random()
    if told < 0.85:
        ambient = ambient_pressure_pa(altitude_m)
    elif told < 0.93:
        ambient = ambient_pa
    else:
        ambient = STANDARD_ATMOSPHERE_PA
    has_scale = rng.random() < 0.8
    zero_read = rng.random() < 0.5
    return Setup(
        ambient_pressure_pa=ambient,
        ambient_pressure_assumed=told >= 0.93,
        altitude_m=altitude_m if told < 0.85 else None,
        section_volume_m3=volume * float(np.clip(rng.normal(1.0, 0.06), 0.8, 1.2))
        if rng.random() < 0.8
        else None,
        gauge_full_scale_pa=seen.full_scale_pa + ambient if has_scale else None,
        gauge_span_pa=seen.full_scale_pa if has_scale else None,
        gauge_accuracy_fraction=accuracy if has_scale else None,
        zero_offset_pa=round(seen.zero_pa / seen.step_pa) * seen.step_pa if zero_read else 0.0,
        zero_was_read=zero_read,
        insulated=insulated if rng.random() < 0.7 else None,
        simulated=True,
    )


def _script(rng: Generator, setup: Setup, some_liquid: bool, leaks: bool) -> Floats:
    """Return what the crew does: down to the stop, hold, again; some go on past it.

    Hurry is drawn more often where there is liquid to freeze, a hold at a second pressure where
    there is a leak to find: else a run of thousands would hold too few of either.
    """
    stop = (
        TRIPLE_PRESSURE_PA - setup.ambient_pressure_pa + max(1.03e5, setup.gauge_error_pa + 0.4e5)
    )
    rows = []
    if rng.random() < (0.6 if leaks else 0.25):
        rows.append((stop + rng.uniform(2e5, 8e5), 600.0, rng.uniform(120, 400)))
    hold_s = rng.uniform(120, 600)
    rows += [
        (stop + rng.uniform(0.0, 0.15e5), 1200.0, hold_s * rng.uniform(0.8, 1.1))
        for _ in range(int(rng.integers(1, 5)))
    ]
    if rng.random() < (0.25 if some_liquid else 0.1):
        rows = rows[: int(rng.integers(0, 2))]  # in a hurry
        rows.append((rng.uniform(0.1e5, 3.8e5), 1500.0, rng.uniform(300, 600)))
    if rng.random() < 0.2:
        rows.append((rng.choice([0.2e5, 1.0e5, 2.0e5]), 900.0, rng.uniform(180, 600)))
    return np.array([(a, b, min(max(c, 120.0), 600.0)) for a, b, c in rows])
