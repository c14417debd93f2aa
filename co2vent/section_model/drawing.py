"""Random sections, charges and gauges of the population (`population.py` says the ranges)."""

from math import exp, log

import numpy as np
from numpy.random import Generator

from co2vent.co2 import kernels
from co2vent.section_model.parameters import (
    COPPER,
    STAINLESS,
    STEEL,
    Contents,
    Gauge,
    Pocket,
    Section,
    Sorbent,
)
from co2vent.units import PSI_PA, STANDARD_ATMOSPHERE_PA


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
