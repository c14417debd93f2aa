"""A second section, built to disagree with the first: only the CO2 properties are shared.

State. Three gas layers of equal volume (bottom, middle, top), each with its mass of CO2 and of
nitrogen and its energy; three places that hold condensed CO2 (0 the run itself, 1 a pocket such as
a filter core, 2 a dead leg), each with mass and energy; five pieces of wall (three rings by height,
the walls of the two pockets), each with an inner and an outer node; valve bodies, the core's
solids, CO2 dissolved in oil.

Equations.
- Gas: per layer dU = sum(h dm) + Q - p dV with real CO2 plus ideal nitrogen at their own
  densities (Dalton). The layers stay at one pressure by flows between neighbours that carry the
  donor's enthalpy; a lower layer warmer than the one above overturns, otherwise they mix slowly.
- Condensed CO2: energy per mass gives liquid, slush at the triple point or dry ice (the enthalpy
  method). Its shrinking volume is work of the gas: E gains p dV.
- Interface: heat from the bulk to the surface (h_s, growing with superheat once it boils) in
  series with the kinetic resistance of Hertz and Knudsen in Schrage's form,
  G = 2a/(2-a) (2 pi R T)^-1/2 (p_s - p), small accommodation a (Marek & Straub, Int. J. Heat Mass
  Transfer 44 (2001) 39). Vapour condenses on any wall colder than saturation and on a cold pool.
- Wall to liquid: natural convection below 1 K, boiling as the square of the superheat above, a
  vapour film beyond some 25 K. Wall to gas: Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975)
  1323. Outside: Churchill & Chu, wind and radiation for bare metal, one conductance if insulated.
- Oil: equilibrium by Raoult's law up to a share, approached exponentially.
- Vent and leaks: isentropic nozzle of a gas with constant exponent 1.30, coefficient drawn.
  A liquid leak-by flashes at the section's pressure.

Integration: operator splitting at a fixed step; pairs that exchange heat relax exponentially, the
evaporation is damped by its own effect on the pressure. Every exchange takes from one account what
it gives to another, so mass and energy close to rounding.
"""

from collections.abc import Callable
from math import exp, sqrt
from typing import Final, NamedTuple

import numpy as np
from numpy.typing import NDArray

from co2vent.benchmark.compiling import fast
from co2vent.co2 import compiled
from co2vent.co2.kernels import TRIPLE_T

Floats = NDArray[np.float64]

LAYERS: Final = 3
PLACES: Final = 3
WALLS: Final = 5
NITROGEN_R: Final = 296.8  # J/kgK
NITROGEN_CV: Final = 742.0  # J/kgK, 200 to 300 K (textbook value)
DISSOLVED_J_KG: Final = 100_000.0  # energy of CO2 in oil; near that of cold liquid
THIN_FILM_KG_M2: Final = 0.3  # a residue wets no more area than this allows (0.26 mm)
# the places of `extra`
BODY_T, CORE_T, DISSOLVED, MASS_IN, MASS_OUT, ENERGY_NET, GAS_VOLUME = range(7)

_co2 = compiled()
_u_gas: Callable[[float, float], float] = _co2.vapor_internal_energy_j_kg
_cv_gas: Callable[[float, float], float] = _co2.vapor_cv_j_kg_k
_h_liq: Callable[[float], float] = _co2.liquid_enthalpy_j_kg
_h_sol: Callable[[float], float] = _co2.solid_enthalpy_j_kg
_rho_liq: Callable[[float], float] = _co2.liquid_density_kg_m3
_rho_sol: Callable[[float], float] = _co2.solid_density_kg_m3
_p_boil: Callable[[float], float] = _co2.saturation_pressure_pa
_p_frost: Callable[[float], float] = _co2.sublimation_pressure_pa


class SectionParameters(NamedTuple):
    """What a drawn section is made of. SI; areas and heat capacities per wall piece."""

    volume: float
    pocket_volume: Floats  # of places 1 and 2, [m3]
    wall_area: Floats  # inner, five pieces
    outer_factor: float  # outer over inner area
    inner_capacity: Floats  # J/K
    outer_capacity: Floats
    through_w_k: Floats  # inner to outer node
    along_w_k: float  # between neighbouring pieces
    body_capacity: float
    body_w_k: float
    core_capacity: float
    core_w_k: float
    surface_area: Floats  # of the pools when well filled
    size: float  # length for natural convection [m]
    ambient_k: float
    ambient_pa: float
    insulation_w_m2_k: float  # 0: bare
    wind_w_m2_k: float
    gust: float  # share by which the wind swings
    quiet_w_m2_k: float  # bulk to surface, liquid
    snow_w_m2_k: float  # wall to dry ice, through the gas between them; ten times that inside it
    accommodation: float
    boil_w_m2_k3: float
    film_k: float
    condense_w_m2_k: float
    mixing_kg_s: float
    drain: int  # the place where condensate runs
    oil_kg: float
    oil_factor: float
    oil_s: float
    vent_area: float  # times its coefficient
    leak_in_kg_s: float  # at the supply's full pressure difference
    leak_liquid: int
    supply_pa: float
    supply_k: float
    leak_out_area: float


@fast
def liquid_energy(t: float) -> float:
    """Internal energy of saturated liquid [J/kg]."""
    return _h_liq(t) - _p_boil(t) / _rho_liq(t)


@fast
def solid_energy(t: float) -> float:
    """Internal energy of dry ice [J/kg]."""
    return _h_sol(t) - _p_frost(t) / _rho_sol(t)


@fast
def condensed_state(mass: float, energy: float, guess_k: float) -> tuple[float, float]:
    """Return (temperature, solid mass) of condensed CO2 by the enthalpy method."""
    e = energy / mass
    at_triple, frozen = liquid_energy(TRIPLE_T), solid_energy(TRIPLE_T)
    if e >= at_triple:
        t = min(max(guess_k, TRIPLE_T), 302.0)
        for _ in range(4):
            step = (liquid_energy(t) - e) / (liquid_energy(t + 0.05) - liquid_energy(t)) * 0.05
            t = min(max(t - step, TRIPLE_T), 302.0)
            if abs(step) < 1e-7:
                break
        return t, 0.0
    if e <= frozen:
        t = max(min(guess_k, TRIPLE_T - 0.05), 155.0)
        for _ in range(4):
            step = (solid_energy(t) - e) / (solid_energy(t) - solid_energy(t - 0.05)) * 0.05
            t = max(min(t - step, TRIPLE_T), 155.0)
            if abs(step) < 1e-7:
                break
        return t, mass
    return TRIPLE_T, mass * (at_triple - e) / (at_triple - frozen)


@fast
def gas_temperature(co2: float, nitrogen: float, energy: float, volume: float, t: float) -> float:
    """Return the temperature of a layer from its energy."""
    rho = co2 / volume
    for _ in range(6):
        excess = co2 * _u_gas(rho, t) + nitrogen * NITROGEN_CV * t - energy
        step = excess / (co2 * _cv_gas(rho, t) + nitrogen * NITROGEN_CV)
        t = min(max(t - step, 120.0), 400.0)
        if abs(step) < 1e-7:
            break
    return t


@fast
def churchill_chu_w_m2_k(rayleigh_per_m3: float, size: float, conductivity: float) -> float:
    """Natural convection on a vertical surface, laminar to turbulent [W/m2K]."""
    root = (rayleigh_per_m3 * size**3) ** (1.0 / 6.0)
    nusselt = (0.825 + 0.387 * root / 1.193) ** 2
    coefficient: float = nusselt * conductivity / size
    return coefficient


@fast
def exchanged_j(g_w_k: float, c_1: float, c_2: float, t_1: float, t_2: float, dt: float) -> float:
    """Return the heat that flows from 1 to 2 in `dt`, exact for two capacities."""
    both = c_1 * c_2 / (c_1 + c_2)
    return (t_1 - t_2) * both * (1.0 - exp(-g_w_k * dt / both))


@fast
def nozzle_kg_s(area: float, p: float, rho: float, back: float) -> float:
    """Mass flow of a gas with exponent 1.30 through an ideal nozzle of `area`."""
    if p <= back:
        return 0.0
    k = 1.30
    ratio = max(back / p, (2.0 / (k + 1.0)) ** (k / (k - 1.0)))
    speed = 2.0 * k / (k - 1.0) * p * rho * (ratio ** (2.0 / k) - ratio ** ((k + 1.0) / k))
    return area * sqrt(max(speed, 0.0))


@fast
def boiling_w_m2_k(p: SectionParameters, superheat: float) -> float:
    """Wall to liquid CO2 [W/m2K]."""
    if superheat <= 1.0:
        return 120.0 + p.boil_w_m2_k3 * max(superheat, 0.0)
    nucleate = min(120.0 + p.boil_w_m2_k3 * superheat * superheat, 6000.0)
    beyond = max(superheat - p.film_k, 0.0)
    return nucleate / (1.0 + 0.3 * beyond) + 150.0


@fast
def condensed_volume(mass: float, solid: float, t: float) -> float:
    """Volume of condensed CO2 [m3]."""
    liquid = mass - solid
    volume = 0.0
    if liquid > 0.0:
        volume += liquid / _rho_liq(max(t, TRIPLE_T))
    if solid > 0.0:
        volume += solid / _rho_sol(min(t, TRIPLE_T))
    return volume


@fast
def total_energy(
    p: SectionParameters, gas: Floats, cond: Floats, metal: Floats, extra: Floats
) -> float:
    """All energy inside, less what came in and plus what went out: constant."""
    total = gas[:, 2].sum() + cond[:, 1].sum() + extra[DISSOLVED] * DISSOLVED_J_KG
    for w in range(WALLS):
        total += p.inner_capacity[w] * metal[w, 0] + p.outer_capacity[w] * metal[w, 1]
    total += p.body_capacity * extra[BODY_T] + p.core_capacity * extra[CORE_T]
    kept: float = total - extra[ENERGY_NET]
    return kept


@fast
def total_mass(gas: Floats, cond: Floats, extra: Floats) -> float:
    """All CO2 and nitrogen inside, less what came in and plus what went out: constant."""
    inside = gas[:, 0].sum() + gas[:, 1].sum() + cond[:, 0].sum() + extra[DISSOLVED]
    kept: float = inside - extra[MASS_IN] + extra[MASS_OUT]
    return kept
