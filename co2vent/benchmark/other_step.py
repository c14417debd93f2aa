"""One time step of the second section; the equations are in `other_section`."""

from collections.abc import Callable

import numpy as np

from co2vent.benchmark.compiling import fast
from co2vent.benchmark.other_exchange import (
    evaporate,
    gas_wall,
    leak_by,
    leave,
    metal_step,
    oil,
    rain,
    wet_wall,
)
from co2vent.benchmark.other_section import (
    GAS_VOLUME,
    LAYERS,
    NITROGEN_R,
    PLACES,
    Floats,
    SectionParameters,
    condensed_state,
    condensed_volume,
    gas_temperature,
)
from co2vent.co2 import compiled

_co2 = compiled()
_p_gas: Callable[[float, float], float] = _co2.vapor_pressure_pa


@fast
def settle_volumes(
    p: SectionParameters, gas: Floats, cond: Floats, cond_t: Floats, solid: Floats,
    cond_v: Floats, extra: Floats, pressure: float,
) -> float:  # fmt: skip
    """Find what the condensed CO2 is, let the gas fill the rest; return the layers' volume."""
    used = 0.0
    for r in range(PLACES):
        volume = 0.0
        if cond[r, 0] > 0.0:
            cond_t[r], solid[r] = condensed_state(cond[r, 0], cond[r, 1], cond_t[r])
            volume = condensed_volume(cond[r, 0], solid[r], cond_t[r])
        else:
            solid[r] = 0.0
        cond[r, 1] += pressure * (cond_v[r] - volume)
        cond_v[r] = volume
        used += volume
    gas_volume = max(p.volume - used, 1e-3 * p.volume)
    work = pressure * (gas_volume - extra[GAS_VOLUME]) / LAYERS
    for i in range(LAYERS):
        gas[i, 2] -= work
    extra[GAS_VOLUME] = gas_volume
    return gas_volume / LAYERS


@fast
def layer_pressures(
    gas: Floats, gas_t: Floats, volume: float, p_co2: Floats, p_all: Floats
) -> None:
    """Temperatures and pressures of the layers from their masses and energies."""
    for i in range(LAYERS):
        gas_t[i] = gas_temperature(gas[i, 0], gas[i, 1], gas[i, 2], volume, gas_t[i])
        p_co2[i] = _p_gas(gas[i, 0] / volume, gas_t[i])
        p_all[i] = p_co2[i] + gas[i, 1] * NITROGEN_R * gas_t[i] / volume


@fast
def move(gas: Floats, donor: int, taker: int, mass: float, pressure: float, volume: float) -> None:
    """Move gas between layers with the donor's enthalpy and composition."""
    all_mass = gas[donor, 0] + gas[donor, 1]
    share = mass / all_mass
    enthalpy = (gas[donor, 2] + pressure * volume) * share
    for k in range(2):
        part = gas[donor, k] * share
        gas[donor, k] -= part
        gas[taker, k] += part
    gas[donor, 2] -= enthalpy
    gas[taker, 2] += enthalpy


@fast
def level_layers(gas: Floats, p_all: Floats, volume: float) -> None:
    """Let gas flow between neighbours until the pressures agree, to first order."""
    a0 = 1.3 * p_all[0] / (gas[0, 0] + gas[0, 1])  # rise of pressure per mass that flows in
    a1 = 1.3 * p_all[1] / (gas[1, 0] + gas[1, 1])
    a2 = 1.3 * p_all[2] / (gas[2, 0] + gas[2, 1])
    d01, d12 = p_all[0] - p_all[1], p_all[1] - p_all[2]
    det = (a0 + a1) * (a1 + a2) - a1 * a1
    f01 = (d01 * (a1 + a2) + a1 * d12) / det
    f12 = (d12 * (a0 + a1) + a1 * d01) / det
    for lower, flow in ((0, f01), (1, f12)):
        donor, taker = (lower, lower + 1) if flow > 0.0 else (lower + 1, lower)
        most = 0.4 * (gas[donor, 0] + gas[donor, 1])
        move(gas, donor, taker, min(abs(flow), most), p_all[donor], volume)


@fast
def mix_layers(p: SectionParameters, gas: Floats, gas_t: Floats, volume: float, dt: float) -> None:
    """Swap equal masses between neighbours: slowly when stable, fast when it overturns."""
    for i in range(LAYERS - 1):
        rate = p.mixing_kg_s
        if gas_t[i] > gas_t[i + 1] + 0.02:
            rate += 0.2 * (gas[i, 0] + gas[i + 1, 0])
        most = 0.2 * min(gas[i, 0] + gas[i, 1], gas[i + 1, 0] + gas[i + 1, 1])
        mass = min(rate * dt, most)
        up = mass / (gas[i, 0] + gas[i, 1])
        down = mass / (gas[i + 1, 0] + gas[i + 1, 1])
        for k in range(3):  # internal energy goes along: a swap does no work
            a, b = gas[i, k] * up, gas[i + 1, k] * down
            gas[i, k] += b - a
            gas[i + 1, k] += a - b


@fast
def overlap(a0: float, a1: float, b0: float, b1: float) -> float:
    """Length that two stretches share."""
    return max(min(a1, b1) - max(a0, b0), 0.0)


@fast
def step(
    p: SectionParameters, gas: Floats, gas_t: Floats, cond: Floats, cond_t: Floats, solid: Floats,
    cond_v: Floats, metal: Floats, extra: Floats, vent_open: bool, at_s: float, dt: float,
    pressure: float,
) -> float:  # fmt: skip
    """Move the section on by `dt`; return the new pressure [Pa]."""
    p_co2, p_all = np.empty(LAYERS), np.empty(LAYERS)
    volume = settle_volumes(p, gas, cond, cond_t, solid, cond_v, extra, pressure)
    layer_pressures(gas, gas_t, volume, p_co2, p_all)
    level_layers(gas, p_all, volume)
    mix_layers(p, gas, gas_t, volume, dt)
    mean = (p_all[0] + p_all[1] + p_all[2]) / LAYERS

    # how far up the run is wet: a shallow pool in a lying pipe touches more wall than its share
    run = max(p.volume - p.pocket_volume[0] - p.pocket_volume[1], 0.2 * p.volume)
    level = min(cond_v[0] / run, 1.0) ** 0.6
    for w in range(3):
        low, high = w / 3.0, (w + 1) / 3.0
        wet = overlap(0.0, level, low, high) * 3.0 * p.wall_area[w]
        wet_wall(p, cond, cond_t, solid, metal, 0, w, wet, dt)
        for i in range(LAYERS):
            from_, to = level + (1.0 - level) * i / 3.0, level + (1.0 - level) * (i + 1) / 3.0
            dry = overlap(from_, to, low, high) * 3.0 * p.wall_area[w]
            if dry > 0.0:
                gas_wall(p, gas, gas_t, cond, metal, i, w, dry, p_co2[i], mean, volume, dt)
    for r in (1, 2):
        w = r + 2
        share = min(cond_v[r] / p.pocket_volume[r - 1], 1.0) ** 0.6
        wet_wall(p, cond, cond_t, solid, metal, r, w, share * p.wall_area[w], dt)
        dry = (1.0 - share) * p.wall_area[w]
        if dry > 0.0:
            gas_wall(p, gas, gas_t, cond, metal, 0, w, dry, p_co2[0], mean, volume, dt)
    for r in range(PLACES):
        evaporate(p, gas, gas_t, cond, cond_t, solid, r, p_co2[0], mean, volume, dt)
    rain(p, gas, gas_t, cond, p_co2, dt)
    oil(p, gas, metal, p_co2[0], extra, dt)
    if vent_open:
        leave(gas, 2, p.vent_area, mean, volume, extra, p.ambient_pa, dt)
    if p.leak_out_area > 0.0:
        leave(gas, 1, p.leak_out_area, mean, volume, extra, p.ambient_pa, dt)
    leak_by(p, gas, cond, mean, extra, dt)
    metal_step(p, metal, cond_t, cond, extra, at_s, dt)
    mean_pa: float = mean
    return mean_pa
