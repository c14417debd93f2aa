"""What the second section exchanges: heat and mass between gas, walls, pools, oil and outside."""

from collections.abc import Callable
from math import exp, pi, sin, sqrt

from co2vent.benchmark.compiling import fast
from co2vent.benchmark.other_section import (
    BODY_T,
    CORE_T,
    DISSOLVED,
    DISSOLVED_J_KG,
    ENERGY_NET,
    LAYERS,
    MASS_IN,
    MASS_OUT,
    THIN_FILM_KG_M2,
    WALLS,
    Floats,
    SectionParameters,
    boiling_w_m2_k,
    churchill_chu_w_m2_k,
    exchanged_j,
    nozzle_kg_s,
)
from co2vent.co2 import compiled
from co2vent.co2.kernels import GAS_CONSTANT, TRIPLE_T

_co2 = compiled()
_co2_psat: Callable[[float], float] = _co2.equilibrium_pressure_pa
_teq: Callable[[float], float] = _co2.equilibrium_temperature_k
_h_vap: Callable[[float], float] = _co2.vapor_enthalpy_saturated_j_kg
_h_liq: Callable[[float], float] = _co2.liquid_enthalpy_j_kg
_h_sol: Callable[[float], float] = _co2.solid_enthalpy_j_kg

# thin CO2 near 240 K, textbook values: viscosity [Pa s], conductivity [W/mK], Prandtl number
_VISCOSITY, _CONDUCTIVITY, _PRANDTL = 1.2e-5, 0.0125, 0.78
# the same of air near 280 K, and Stefan-Boltzmann with two thirds emissivity at 280 K: 3.3 W/m2K
_AIR_RAYLEIGH_PER_M3_K, _AIR_CONDUCTIVITY, _RADIATION_W_M2_K = 1.3e8, 0.0247, 3.3
_CONDENSED_C = 2000.0  # J/kgK, for the relaxation only
_TINY_KG = 1e-9
_DRY_ICE_KG_M3 = 1500.0
# still gas over a cold pool (stable layering) and beside a cold lump (estimates)
_GAS_TO_POOL_W_M2_K, _GAS_TO_LUMP_W_M2_K = 4.0, 8.0


@fast
def boundary_k(p_co2: float) -> float:
    """Equilibrium temperature at a partial pressure, kept inside the lines."""
    return _teq(min(max(p_co2, 2000.0), 7.2e6))


@fast
def condensate_j_kg(t: float) -> float:
    """Enthalpy of what condenses at the equilibrium temperature `t`."""
    return _h_liq(t) if t >= TRIPLE_T else _h_sol(t)


@fast
def gas_wall(
    p: SectionParameters, gas: Floats, gas_t: Floats, cond: Floats, metal: Floats,
    i: int, w: int, area: float, p_co2: float, p_all: float, volume: float, dt: float,
) -> None:  # fmt: skip
    """Heat between a layer and a piece of wall, and condensation where the wall is cold."""
    rho = (gas[i, 0] + gas[i, 1]) / volume
    delta = abs(metal[w, 0] - gas_t[i]) + 0.05
    per_m3 = 9.81 * delta / gas_t[i] * (rho / _VISCOSITY) ** 2 * _PRANDTL
    h = churchill_chu_w_m2_k(per_m3, p.size, _CONDUCTIVITY)
    c_gas = 700.0 * (gas[i, 0] + gas[i, 1])
    heat = exchanged_j(h * area, p.inner_capacity[w], c_gas, metal[w, 0], gas_t[i], dt)
    metal[w, 0] -= heat / p.inner_capacity[w]
    gas[i, 2] += heat
    dew_k = boundary_k(p_co2)
    if metal[w, 0] < dew_k:
        h_cond = condensate_j_kg(dew_k)
        h_gas = (gas[i, 2] + p_all * volume) / (gas[i, 0] + gas[i, 1])
        drop = max(h_gas - h_cond, 5e4)
        take = p.inner_capacity[w] * (dew_k - metal[w, 0])
        take *= 1.0 - exp(-p.condense_w_m2_k * area * dt / p.inner_capacity[w])
        mass = min(take / drop, 0.02 * gas[i, 0])
        gas[i, 0] -= mass
        gas[i, 2] -= mass * h_gas
        cond[p.drain, 0] += mass
        cond[p.drain, 1] += mass * h_cond
        metal[w, 0] += mass * (h_gas - h_cond) / p.inner_capacity[w]


@fast
def wet_wall(
    p: SectionParameters, cond: Floats, cond_t: Floats, solid: Floats, metal: Floats,
    r: int, w: int, area: float, dt: float,
) -> None:  # fmt: skip
    """Heat between a piece of wall and the condensed CO2 on it."""
    if cond[r, 0] <= _TINY_KG or area <= 0.0:
        return
    liquid = 1.0 - solid[r] / cond[r, 0]  # slush wets the wall by its share of liquid
    h = p.snow_w_m2_k + liquid * boiling_w_m2_k(p, metal[w, 0] - cond_t[r])
    capacity = _CONDENSED_C * cond[r, 0]
    heat = exchanged_j(h * area, p.inner_capacity[w], capacity, metal[w, 0], cond_t[r], dt)
    metal[w, 0] -= heat / p.inner_capacity[w]
    cond[r, 1] += heat


@fast
def evaporate(
    p: SectionParameters, gas: Floats, gas_t: Floats, cond: Floats, cond_t: Floats, solid: Floats,
    r: int, p_co2: float, p_all: float, volume: float, dt: float,
) -> None:  # fmt: skip
    """Mass through the surface of a pool or of dry ice, either way."""
    mass = cond[r, 0]
    if mass <= 0.0:
        return
    if mass < _TINY_KG:
        gas[0, 0] += mass
        gas[0, 2] += cond[r, 1]
        cond[r, 0] = 0.0
        cond[r, 1] = 0.0
        return
    area = min(p.surface_area[r], mass / THIN_FILM_KG_M2)
    edge_k = boundary_k(p_co2)
    over = cond_t[r] - edge_k
    h, bubbles = p.quiet_w_m2_k, 1.0
    if over > 0.3:
        # Boiling makes its own surface: superheated liquid can't last, however small the pool.
        bubbles += over * over
        h = min(h + p.boil_w_m2_k3 * (over - 0.3) ** 2 * 20.0, 2e4 * bubbles)
    # Dry ice is open to its vapour and cannot superheat: what limits it is the heat from the wall,
    # not the way to a surface. Slush boils where it can.
    inside = 10.0 * p.snow_w_m2_k
    h = inside + (h - inside) * (1.0 - solid[r] / mass)
    h_vapor = _h_vap(edge_k)
    latent = h_vapor - condensate_j_kg(edge_k)
    slope = latent * p_co2 / (0.85 * GAS_CONSTANT * edge_k * edge_k)  # Clausius and Clapeyron
    kinetic = 2.0 * p.accommodation / (2.0 - p.accommodation) / sqrt(2 * pi * GAS_CONSTANT * edge_k)
    h = 1.0 / (1.0 / h + 1.0 / (kinetic * bubbles * latent * slope))
    # gas warms the surface as well: into the bulk's account, from where it evaporates
    c_gas = 700.0 * (gas[0, 0] + gas[0, 1])
    # a lump of dry ice stands in the gas with half the surface of a cube of its volume
    lump = 3.0 * (solid[r] / _DRY_ICE_KG_M3) ** (2.0 / 3.0)
    to_gas = _GAS_TO_POOL_W_M2_K * area + _GAS_TO_LUMP_W_M2_K * lump
    heat = exchanged_j(to_gas, c_gas, _CONDENSED_C * mass, gas_t[0], cond_t[r], dt)
    gas[0, 2] -= heat
    cond[r, 1] += heat
    by_mass = 1.3 * GAS_CONSTANT * gas_t[0] / (LAYERS * volume)
    damped = 1.0 + dt * h * area / latent * by_mass / slope
    capacity = _CONDENSED_C * mass
    slushy = 0.0 < solid[r] < mass
    relaxed = h * area * dt if slushy else capacity * (1.0 - exp(-h * area * dt / capacity))
    flow = over * relaxed / latent / damped
    if flow >= 0.0:
        flow = min(flow, mass)
        gas[0, 0] += flow
        gas[0, 2] += flow * h_vapor
        cond[r, 0] -= flow
        cond[r, 1] -= flow * h_vapor
    else:
        flow = min(-flow, 0.05 * gas[0, 0])
        h_gas = (gas[0, 2] + p_all * volume) / (gas[0, 0] + gas[0, 1])
        gas[0, 0] -= flow
        gas[0, 2] -= flow * h_gas
        cond[r, 0] += flow
        cond[r, 1] += flow * h_gas


@fast
def rain(
    p: SectionParameters, gas: Floats, gas_t: Floats, cond: Floats, p_co2: Floats, dt: float
) -> None:
    """Let fog in gas that expansion has cooled below saturation fall out."""
    for i in range(LAYERS):
        dew_k = boundary_k(p_co2[i])
        if gas_t[i] < dew_k:
            mass = gas[i, 0] * min(0.004 * (dew_k - gas_t[i]) * dt / 0.5, 0.02)
            h_cond = condensate_j_kg(dew_k)
            gas[i, 0] -= mass
            gas[i, 2] -= mass * h_cond
            cond[p.drain, 0] += mass
            cond[p.drain, 1] += mass * h_cond


@fast
def leave(
    gas: Floats, i: int, area: float, p_all: float, volume: float, extra: Floats, back: float,
    dt: float,
) -> None:  # fmt: skip
    """Gas leaves a layer through an opening."""
    inside = gas[i, 0] + gas[i, 1]
    mass = min(nozzle_kg_s(area, p_all, inside / volume, back) * dt, 0.1 * inside)
    share = mass / inside
    enthalpy = (gas[i, 2] + p_all * volume) * share
    gas[i, 0] -= gas[i, 0] * share
    gas[i, 1] -= gas[i, 1] * share
    gas[i, 2] -= enthalpy
    extra[MASS_OUT] += mass
    extra[ENERGY_NET] -= enthalpy


@fast
def leak_by_kg_s(p: SectionParameters, p_all: float) -> float:
    """Flow past the closed valve: constant until the section nears the supply's pressure."""
    if p.leak_in_kg_s <= 0.0:
        return 0.0
    ratio = p_all / p.supply_pa
    if ratio >= 1.0:
        return 0.0
    return p.leak_in_kg_s * sqrt(min((1.0 - ratio) / 0.45, 1.0))


@fast
def leak_by(
    p: SectionParameters, gas: Floats, cond: Floats, p_all: float, extra: Floats, dt: float
) -> None:
    """CO2 from the supply: vapour into the bottom layer, or liquid that flashes."""
    mass = leak_by_kg_s(p, p_all) * dt
    if mass <= 0.0:
        return
    h_in = _h_liq(p.supply_k) if p.leak_liquid else _h_vap(p.supply_k)
    extra[MASS_IN] += mass
    extra[ENERGY_NET] += mass * h_in
    if p.leak_liquid:
        edge_k = boundary_k(p_all)
        h_vapor, h_cond = _h_vap(edge_k), condensate_j_kg(edge_k)
        quality = min(max((h_in - h_cond) / (h_vapor - h_cond), 0.0), 1.0)
        gas[0, 0] += mass * quality
        gas[0, 2] += mass * quality * h_vapor
        cond[p.drain, 0] += mass * (1.0 - quality)
        cond[p.drain, 1] += mass * (h_in - quality * h_vapor)
    else:
        gas[0, 0] += mass
        gas[0, 2] += mass * h_in


@fast
def oil(
    p: SectionParameters, gas: Floats, metal: Floats, p_co2: float, extra: Floats, dt: float
) -> None:
    """CO2 leaves or enters the oil that lies in the first pocket, at its wall's temperature."""
    if p.oil_kg <= 0.0:
        return
    wall_k = metal[3, 0]
    share = min(p_co2 / _co2_psat(min(max(wall_k, 160.0), 303.0)), 0.7)
    equilibrium = p.oil_kg * p.oil_factor * share / (1.0 - share)
    mass = (extra[DISSOLVED] - equilibrium) * (1.0 - exp(-dt / p.oil_s))
    mass = max(mass, -0.02 * gas[0, 0])
    h_vapor = _h_vap(min(max(wall_k, 160.0), 303.0))
    extra[DISSOLVED] -= mass
    gas[0, 0] += mass
    gas[0, 2] += mass * h_vapor
    metal[3, 0] -= mass * (h_vapor - DISSOLVED_J_KG) / p.inner_capacity[3]


@fast
def metal_step(p: SectionParameters, metal: Floats, cond_t: Floats, cond: Floats, extra: Floats,
               at_s: float, dt: float) -> None:  # fmt: skip
    """Conduction through and along the walls, heat from outside, valve bodies, the core."""
    for w in range(WALLS):
        c_in, c_out = p.inner_capacity[w], p.outer_capacity[w]
        heat = exchanged_j(p.through_w_k[w], c_in, c_out, metal[w, 0], metal[w, 1], dt)
        metal[w, 0] -= heat / c_in
        metal[w, 1] += heat / c_out
        area = p.wall_area[w] * p.outer_factor
        g = p.insulation_w_m2_k * area
        if p.insulation_w_m2_k <= 0.0:
            delta = abs(p.ambient_k - metal[w, 1]) + 0.1
            h = churchill_chu_w_m2_k(_AIR_RAYLEIGH_PER_M3_K * delta, p.size, _AIR_CONDUCTIVITY)
            wind = p.wind_w_m2_k * (1.0 + p.gust * sin(at_s / 23.0))
            g = (sqrt(h * h + wind * wind) + _RADIATION_W_M2_K) * area
        heat = (p.ambient_k - metal[w, 1]) * c_out * (1.0 - exp(-g * dt / c_out))
        metal[w, 1] += heat / c_out
        extra[ENERGY_NET] += heat
    for a, b in ((0, 1), (1, 2), (0, 3), (0, 4)):
        c_a, c_b = p.inner_capacity[a], p.inner_capacity[b]
        heat = exchanged_j(p.along_w_k, c_a, c_b, metal[a, 0], metal[b, 0], dt)
        metal[a, 0] -= heat / c_a
        metal[b, 0] += heat / c_b
    heat = exchanged_j(
        p.body_w_k, p.body_capacity, p.outer_capacity[0], extra[BODY_T], metal[0, 1], dt
    )
    extra[BODY_T] -= heat / p.body_capacity
    metal[0, 1] += heat / p.outer_capacity[0]
    if cond[1, 0] > _TINY_KG:
        heat = exchanged_j(
            p.core_w_k, p.core_capacity, _CONDENSED_C * cond[1, 0], extra[CORE_T], cond_t[1], dt
        )
        extra[CORE_T] -= heat / p.core_capacity
        cond[1, 1] += heat
    else:
        heat = exchanged_j(
            0.1 * p.core_w_k, p.core_capacity, p.inner_capacity[3], extra[CORE_T], metal[3, 0], dt
        )
        extra[CORE_T] -= heat / p.core_capacity
        metal[3, 0] += heat / p.inner_capacity[3]
