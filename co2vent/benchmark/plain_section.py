"""A third section, as plain as a textbook: one gas, one pool, two pieces of metal.

It shares only the CO2 properties with the other two, and stands for what somebody else would write
down first:

- gas: one well-mixed node with its own temperature; real CO2;
- liquid or dry ice: in equilibrium with the pressure at every moment (saturation above the triple
  point, sublimation below it, all three phases on it), no superheat, no delay;
- metal: the low part, where liquid gathers, and the rest, each at one temperature, joined by
  conduction; the outside gives heat by one conductance each;
- heat to the pool: a conductance that grows with the superheat until a film covers the wall; to dry
  ice a smaller one; vapour condenses on metal colder than saturation;
- vent and leaks: a nozzle of a gas with constant exponent, choked or with the square root of ISO
  6358 (from memory); a leak-by is one mass flow of vapour or of liquid that flashes.

Integration: explicit in the metals, implicit in the pressure: the step's pressure is where the gas
that has boiled off and the gas law agree. Mass closes to rounding, energy to the explicit step.
"""

from typing import Final, NamedTuple

import numpy as np

from co2vent.benchmark.compiling import fast
from co2vent.benchmark.plain_flows import Seen, nozzle_kg_s, show
from co2vent.co2 import compiled
from co2vent.co2.kernels import TRIPLE_P, TRIPLE_T

_co2 = compiled()
_pressure = _co2.vapor_pressure_pa
_energy = _co2.vapor_internal_energy_j_kg
_cv = _co2.vapor_cv_j_kg_k
_h_saturated = _co2.vapor_enthalpy_saturated_j_kg
_h_liquid = _co2.liquid_enthalpy_j_kg
_saturation_pa = _co2.saturation_pressure_pa
_equilibrium_k = _co2.equilibrium_temperature_k
_latent = _co2.latent_heat_j_kg
_sublimation = _co2.sublimation_heat_j_kg
_rho_liquid = _co2.liquid_density_kg_m3
_rho_solid = _co2.solid_density_kg_m3
_c_liquid = _co2.liquid_heat_capacity_j_kg_k
_c_solid = _co2.solid_heat_capacity_j_kg_k

FUSION_J_KG: Final = 196_650.0  # at the triple point (8.65 kJ/mol, handbook value)
FULL: Final = 0.93  # of the volume; liquid-full is the first model's matter
VENT_STEP_S: Final = 0.05
HOLD_STEP_S: Final = 0.2
WARMEST_SATURATION_K: Final = 303.5
# the places of `state`
GAS_KG, GAS_K, LIQUID_KG, SOLID_KG, PRESSURE, LOW_K, REST_K, IN_KG, OUT_KG = range(9)
STATE: Final = 9
ROW: Final = {
    name: i
    for i, name in enumerate(
        (
            "elapsed_s", "valve", "shown_pa_gauge", "clamp_k",  # what a person sees
            "pressure_pa", "liquid_kg", "solid_kg", "metal_margin_k", "valve_is_open",
        )
    )
}  # fmt: skip

COLUMNS: Final = len(ROW)


class PlainSection(NamedTuple):
    """What a section is made of. SI."""

    volume: float
    low_share: float  # of volume and surface
    area: float  # inner surface
    low_capacity: float  # J/K
    rest_capacity: float
    between_w_k: float
    outside_low_w_k: float
    outside_rest_w_k: float
    ambient_k: float
    ambient_pa: float
    quiet_w_m2_k: float  # metal to pool without superheat
    boil_w_m2_k2: float  # and what a kelvin of it adds
    film_k: float  # superheat at which a film covers the wall
    film_w_m2_k: float
    snow_w_m2_k: float
    condense_w_m2_k: float
    gas_w_m2_k: float  # metal to gas at 15 kg/m3
    vent_area: float  # discharge coefficient included
    leak_by_kg_s: float
    leak_liquid: int
    supply_k: float
    leak_out_area: float


@fast
def condensed_m3(liquid_kg: float, solid_kg: float, boundary_k: float) -> float:
    """Return the volume of liquid and dry ice."""
    volume = 0.0
    if liquid_kg > 0.0:
        volume += liquid_kg / _rho_liquid(max(boundary_k, TRIPLE_T))
    if solid_kg > 0.0:
        volume += solid_kg / _rho_solid(min(boundary_k, TRIPLE_T))
    return volume


@fast
def _to_pool(p: PlainSection, superheat: float, frozen: bool) -> float:
    """Return the conductance from metal to pool [W/m2K]."""
    if frozen:
        return p.snow_w_m2_k
    if superheat <= 0.0:
        return p.quiet_w_m2_k
    if superheat > p.film_k:
        return p.film_w_m2_k
    return p.quiet_w_m2_k + p.boil_w_m2_k2 * superheat


@fast
def _gas_after(
    p: PlainSection,
    state: np.ndarray,
    boiled: float,
    boundary_k: float,
    came: float,
    came_h: float,
    went: float,
    heat: float,
) -> tuple[float, float, float]:
    """Return mass, temperature and pressure of the gas after a step. Heat in J, masses in kg."""
    mass, gas_k, pressure = state[GAS_KG], state[GAS_K], state[PRESSURE]
    before = condensed_m3(state[LIQUID_KG], state[SOLID_KG], boundary_k)
    solid = max(min(boiled, state[SOLID_KG]), 0.0) if state[LIQUID_KG] <= 0.0 else 0.0
    after = condensed_m3(
        max(state[LIQUID_KG] - (boiled - solid), 0.0), state[SOLID_KG] - solid, boundary_k
    )
    room = p.volume - after
    density = mass / (p.volume - before)
    own = _energy(density, gas_k)
    flow_work = pressure / density
    new = max(mass + boiled + came - went, 0.02 * mass)
    gained = heat + came * (came_h - own) - went * flow_work - pressure * (before - after)
    if boiled > 0.0:
        gained += boiled * (_h_saturated(min(boundary_k, WARMEST_SATURATION_K)) - own)
    else:
        gained += boiled * flow_work
    new_k = gas_k + gained / (new * _cv(density, gas_k))
    new_k = min(max(new_k, 150.0), 330.0)
    return new, new_k, _pressure(new / room, new_k)


@fast
def _boiled_at(
    pressure: float, boundary_k: float, heat: float, capacity: float, latent: float, left: float
) -> float:
    """Return what boils while the pool follows the pressure. Heat in J, capacity in J/K."""
    boiled: float = (heat - capacity * (_equilibrium_k(pressure) - boundary_k)) / latent
    return boiled if boiled < left else left


@fast
def step(p: PlainSection, state: np.ndarray, opening: float, dt: float) -> None:
    """Advance `state` by `dt` seconds."""
    pressure, gas_k = state[PRESSURE], state[GAS_K]
    low_k, rest_k = state[LOW_K], state[REST_K]
    liquid, solid = state[LIQUID_KG], state[SOLID_KG]
    boundary_k = min(_equilibrium_k(pressure), WARMEST_SATURATION_K)
    frozen = solid > liquid
    pool = liquid + solid

    # surfaces: the pool wets the low part first, then the rest
    filled = condensed_m3(liquid, solid, boundary_k) / p.volume
    low_wet = p.area * p.low_share * min(1.0, (filled / p.low_share) ** 0.667)
    rest_area = p.area * (1.0 - p.low_share)
    rest_wet = rest_area * max(0.0, (filled - p.low_share) / (1.0 - p.low_share))
    low_dry, rest_dry = p.area * p.low_share - low_wet, rest_area - rest_wet

    density = state[GAS_KG] / (p.volume * (1.0 - filled))
    gas_h = p.gas_w_m2_k * (density / 15.0) ** 0.5
    to_low = _to_pool(p, low_k - boundary_k, frozen) * low_wet * (low_k - boundary_k)
    to_rest = _to_pool(p, rest_k - boundary_k, frozen) * rest_wet * (rest_k - boundary_k)
    if low_k < boundary_k:
        to_low += p.condense_w_m2_k * low_dry * (low_k - boundary_k)
    if rest_k < boundary_k:
        to_rest += p.condense_w_m2_k * rest_dry * (rest_k - boundary_k)
    gas_low, gas_rest = gas_h * low_dry * (low_k - gas_k), gas_h * rest_dry * (rest_k - gas_k)
    surface = p.area * 0.3 * min(1.0, (filled / 0.05) ** 0.667)
    from_gas = gas_h * surface * (gas_k - boundary_k)
    outside_low = p.outside_low_w_k * (p.ambient_k - low_k)
    outside_rest = p.outside_rest_w_k * (p.ambient_k - rest_k)
    between = p.between_w_k * (rest_k - low_k)
    state[LOW_K] += dt * (outside_low + between - to_low - gas_low) / p.low_capacity
    state[REST_K] += dt * (outside_rest - between - to_rest - gas_rest) / p.rest_capacity

    # flows
    went = nozzle_kg_s(p.leak_out_area, pressure, density, p.ambient_pa)
    went += opening * nozzle_kg_s(p.vent_area, pressure, density, p.ambient_pa)
    went = min(went * dt, 0.2 * state[GAS_KG])
    came, came_h, flash = 0.0, 0.0, 0.0
    # choked while the supply is far above; a section that fills up to it takes no more
    if p.leak_by_kg_s > 0.0 and pressure < _saturation_pa(p.supply_k) and filled < FULL:
        came = p.leak_by_kg_s * dt
        came_h = _h_saturated(p.supply_k)
        if p.leak_liquid == 1:
            saturated = _h_saturated(boundary_k)
            heat = _latent(boundary_k) if pressure >= TRIPLE_P else _sublimation(boundary_k)
            flash = (saturated - _h_liquid(p.supply_k)) / heat
            flash = came * min(max(flash, 0.0), 1.0)  # what stays liquid, or turns to dry ice
            came -= flash
            came_h = saturated
    state[IN_KG] += came + flash
    state[OUT_KG] += went
    gas_heat = dt * (gas_low + gas_rest - from_gas)
    pool_heat = dt * (to_low + to_rest + from_gas)

    if pool <= 0.0 and pool_heat >= 0.0:
        mass, gas_k, pressure = _gas_after(
            p, state, 0.0, boundary_k, came, came_h, went, gas_heat + pool_heat
        )
        state[GAS_KG], state[GAS_K], state[PRESSURE] = mass, gas_k, pressure
    else:
        _with_pool(p, state, boundary_k, came, came_h, went, gas_heat, pool_heat)
    if flash > 0.0:
        if state[PRESSURE] >= TRIPLE_P:
            state[LIQUID_KG] += flash
        else:
            state[SOLID_KG] += flash


@fast
def _with_pool(
    p: PlainSection,
    state: np.ndarray,
    boundary_k: float,
    came: float,
    came_h: float,
    went: float,
    gas_heat: float,
    pool_heat: float,
) -> None:
    """Find the pressure at which boiling and gas law agree, and take the step there."""
    liquid, solid = state[LIQUID_KG], state[SOLID_KG]
    pressure = state[PRESSURE]
    # no step boils more; far beyond it the gas law leaves its range
    most = min(liquid + solid, 2.0 * state[GAS_KG])
    capacity = liquid * _c_liquid(max(boundary_k, TRIPLE_T))
    capacity += solid * _c_solid(min(boundary_k, TRIPLE_T))
    on_liquid = liquid > 0.0 or (solid <= 0.0 and pressure > TRIPLE_P)
    latent = _latent(max(boundary_k, TRIPLE_T)) if on_liquid else _sublimation(boundary_k)
    low, high = 0.7 * pressure, min(1.35 * pressure, 7.1e6)
    for _ in range(40):
        middle = 0.5 * (low + high)
        boiled = _boiled_at(middle, boundary_k, pool_heat, capacity, latent, most)
        _, _, found = _gas_after(p, state, boiled, boundary_k, came, came_h, went, gas_heat)
        if found > middle:
            low = middle
        else:
            high = middle
        if high - low < 0.05:
            break
    new = 0.5 * (low + high)
    both = liquid > 0.0 and solid > 0.0
    frozen, melted = 0.0, 0.0
    if both or (liquid > 0.0 and new < TRIPLE_P) or (solid > 0.0 and new > TRIPLE_P):
        # three phases: the pressure stands, and what heat is short or over freezes or melts
        new = TRIPLE_P
        low_b, high_b = -0.5 * state[GAS_KG], most
        for _ in range(50):
            boiled = 0.5 * (low_b + high_b)
            _, _, found = _gas_after(p, state, boiled, boundary_k, came, came_h, went, gas_heat)
            if found < TRIPLE_P:
                low_b = boiled
            else:
                high_b = boiled
        over = pool_heat - capacity * (TRIPLE_T - boundary_k) - latent * boiled
        if over < 0.0:
            frozen = min(-over / FUSION_J_KG, max(liquid - max(boiled, 0.0), 0.0))
        else:
            melted = min(over / FUSION_J_KG, solid)
    else:
        boiled = _boiled_at(new, boundary_k, pool_heat, capacity, latent, most)
    mass, gas_k, found = _gas_after(p, state, boiled, boundary_k, came, came_h, went, gas_heat)
    from_solid = max(min(boiled, solid), 0.0) if liquid <= 0.0 else 0.0
    if boiled < 0.0 and not on_liquid:
        from_solid = boiled
    liquid += melted - frozen - (boiled - from_solid)
    solid += frozen - melted - from_solid
    if liquid < 0.0:  # the last of it boils, the rest of the step comes from the ice
        solid += liquid
        liquid = 0.0
    state[LIQUID_KG], state[SOLID_KG] = liquid, max(solid, 0.0)
    if state[LIQUID_KG] + state[SOLID_KG] < 1e-9:
        mass += state[LIQUID_KG] + state[SOLID_KG]
        state[LIQUID_KG], state[SOLID_KG] = 0.0, 0.0
        new = found
    state[GAS_KG], state[GAS_K], state[PRESSURE] = mass, gas_k, new


@fast
def run(
    p: PlainSection,
    seen: Seen,
    state: np.ndarray,
    first_hold_s: float,
    script: np.ndarray,  # per vent: stop at [Pa gauge, shown], opening, longest vent [s], hold [s]
    reaction_s: float,
    sample_s: float,
    seed: int,
) -> np.ndarray:
    """Run the script; return one row a sample, columns as `ROW`. `state` is used up."""
    np.random.seed(seed)  # noqa: NPY002 (the only generator compiled code has)
    total_s = first_hold_s + script[:, 2].sum() + script[:, 3].sum() + 10.0
    rows = np.empty((int(total_s / sample_s) + 2, COLUMNS))
    count, at_s, next_s = 0, 0.0, 0.0
    gauge_pa, clamp_k = state[PRESSURE], state[LOW_K]
    phase, since_s, is_open, due_s = -1, 0.0, False, -1.0
    while count < len(rows):
        if at_s >= next_s - 1e-6:
            shown, clamp = show(seen, gauge_pa - p.ambient_pa, clamp_k)
            row = rows[count]
            row[0], row[1], row[2], row[3] = at_s, is_open, shown, clamp
            row[4], row[5], row[6] = state[PRESSURE], state[LIQUID_KG], state[SOLID_KG]
            coldest = min(state[LOW_K], state[REST_K])
            row[7] = coldest - _equilibrium_k(min(state[PRESSURE], 7.2e6))
            row[8] = is_open
            count += 1
            next_s += sample_s
            if is_open:
                low = shown <= script[phase, 0] or at_s - since_s > script[phase, 2]
                if due_s < 0.0 and low:
                    due_s = at_s + reaction_s
            elif at_s - since_s >= (first_hold_s if phase < 0 else script[phase, 3]):
                phase += 1
                if phase >= len(script):
                    break
                is_open, since_s = True, at_s
        if is_open and due_s >= 0.0 and at_s >= due_s:
            is_open, since_s, due_s = False, at_s, -1.0
        dt = VENT_STEP_S if is_open else HOLD_STEP_S
        step(p, state, script[phase, 1] if is_open else 0.0, dt)
        gauge_pa += (state[PRESSURE] - gauge_pa) * (1.0 - np.exp(-dt / seen.lag_s))
        target = state[LOW_K] + seen.clamp_ambient_share * (p.ambient_k - state[LOW_K])
        clamp_k += (target - clamp_k) * (1.0 - np.exp(-dt / seen.clamp_lag_s))
        at_s += dt
    return rows[:count]
