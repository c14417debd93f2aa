"""The fluid as tables that the compiled stepper can read in nanoseconds.

The tables are made once a process from the property equations of `co2vent.co2`, so the model holds
no property data of its own. A gas without condensed phases (nitrogen, for a check of the model
against a measured blowdown) is made with `gas_only`.

Interpolation error with the steps below, against the equations they were made from: pressure and
temperature under 1e-5, energies under 5 J/kg (`tests/section_model/test_fluid.py`).
"""

from collections.abc import Callable
from functools import cache
from typing import Final, NamedTuple

import numpy as np
from numpy.typing import NDArray

from co2vent.co2 import kernels

Array = NDArray[np.float64]
Property = Callable[[float, float], float]

LOWEST_K: Final = 154.0  # dry ice at 2 kPa; nothing a vent or a vacuum pump leaves is colder
HIGHEST_K: Final = 303.9  # just under the critical temperature: the end of "liquid and vapour"
GAS_LOWEST_K: Final = 140.0
GAS_HIGHEST_K: Final = 400.0
GAS_STEP_K: Final = 1.0
VAPOUR_FIT_K: Final = (185.0, 340.0)  # where the vapour equation holds
FULL_RISE_K: Final = 10.0  # over which the curvature of the liquid-full isochore is taken
LINE_POINTS: Final = 4001
VIRIAL_TERMS: Final = 6
DENSEST: Final = 1 + 2 * VIRIAL_TERMS  # column of the gas table: density up to which it holds

# columns of the tables of a condensed phase
P, RHO, U, H_VAPOUR, CP, DP_DT, FULL_SLOPE, FULL_CURVE = range(8)


class FluidTables(NamedTuple):
    """Property tables. SI; T [K], p [Pa], rho [kg/m3], u, h [J/kg].

    `liquid` and `solid`: rows of equal steps in temperature from `..._t0`, columns P, RHO, U,
    H_VAPOUR (saturated vapour above the phase), CP (du/dT), DP_DT, FULL_SLOPE (pressure per kelvin
    at constant volume) and FULL_CURVE (its change per kelvin). `..._t_of_u`: temperature at equal
    steps of u. `..._t_of_lnp`: saturation temperature at equal steps of ln p. `liquid_t_of_rho`:
    saturated temperature at equal steps of density. `gas`: rows of GAS_STEP_K from GAS_LOWEST_K;
    u of the ideal gas, then the factors of rho^k in p/(rho R T) - 1, then those in u - u_ideal,
    then the density up to which they hold (above it p/(rho R T) and u stay: no runaway).
    """

    condensable: bool
    gas_constant: float
    triple_t: float
    triple_p: float
    liquid: Array
    liquid_t0: float
    liquid_dt: float
    liquid_t_of_u: Array
    liquid_t_of_lnp: Array
    liquid_t_of_rho: Array
    solid: Array
    solid_t0: float
    solid_dt: float
    solid_t_of_u: Array
    solid_t_of_lnp: Array
    gas: Array
    conductivity_273: float  # W/mK of the dilute gas at 273.15 K
    conductivity_power: float  # its power law in T
    viscosity_273: float  # Pa s
    viscosity_power: float


def gas_table(
    pressure_pa: Property,
    energy_j_per_kg: Property,
    gas_constant: float,
    highest_density: Callable[[float], float],
    temperatures_k: Array,
) -> Array:
    """Return the gas table: along each isotherm the best polynomials in density.

    `pressure_pa(rho, T)` and `energy_j_per_kg(rho, T)` are the equation of state;
    `highest_density(T)` says how dense the gas gets at T.
    """
    table = np.empty((len(temperatures_k), 2 + 2 * VIRIAL_TERMS))
    # Chebyshev points keep the polynomials from swinging between the points
    points = 0.5 - 0.5 * np.cos(np.pi * (np.arange(14) + 0.5) / 14)
    powers = np.arange(1, VIRIAL_TERMS + 1)
    scaled = points[:, None] ** powers
    for row, temperature in enumerate(temperatures_k):
        top = highest_density(float(temperature))
        rho = points * top
        z_less_one = [
            pressure_pa(float(r), float(temperature)) / (r * gas_constant * temperature) - 1.0
            for r in rho
        ]
        ideal = energy_j_per_kg(1e-6, float(temperature))
        residual = [energy_j_per_kg(float(r), float(temperature)) - ideal for r in rho]
        table[row, 0] = ideal
        table[row, DENSEST] = top
        for first, values in ((1, z_less_one), (1 + VIRIAL_TERMS, residual)):
            factors = np.linalg.lstsq(scaled, np.asarray(values), rcond=None)[0]
            table[row, first : first + VIRIAL_TERMS] = factors / top**powers
    return table


def gas_temperatures_k() -> Array:
    """Return the temperatures [K] of the rows of a gas table."""
    return np.arange(GAS_LOWEST_K, GAS_HIGHEST_K + GAS_STEP_K / 2, GAS_STEP_K)


def gas_only(
    pressure_pa: Property,
    energy_j_per_kg: Property,
    gas_constant: float,
    highest_density: Callable[[float], float],
    *,
    conductivity_273: float,
    conductivity_power: float,
    viscosity_273: float,
    viscosity_power: float,
) -> FluidTables:
    """Return the tables of a gas that does not condense."""
    none = np.zeros(2)
    lines = np.zeros((2, 8))
    return FluidTables(
        condensable=False,
        gas_constant=gas_constant,
        triple_t=0.0,
        triple_p=0.0,
        liquid=lines,
        liquid_t0=0.0,
        liquid_dt=1.0,
        liquid_t_of_u=none,
        liquid_t_of_lnp=none,
        liquid_t_of_rho=none,
        solid=lines,
        solid_t0=0.0,
        solid_dt=1.0,
        solid_t_of_u=none,
        solid_t_of_lnp=none,
        gas=gas_table(
            pressure_pa, energy_j_per_kg, gas_constant, highest_density, gas_temperatures_k()
        ),
        conductivity_273=conductivity_273,
        conductivity_power=conductivity_power,
        viscosity_273=viscosity_273,
        viscosity_power=viscosity_power,
    )


def phase_value(fluid: FluidTables, temperature_k: float, column: int) -> float:
    """Return a column of the liquid's table above the triple point, else of the solid's."""
    liquid = temperature_k > fluid.triple_t
    table = fluid.liquid if liquid else fluid.solid
    t0, dt = (fluid.liquid_t0, fluid.liquid_dt) if liquid else (fluid.solid_t0, fluid.solid_dt)
    at = (temperature_k - t0) / dt
    return float(np.interp(at, np.arange(len(table)), table[:, column]))


def gas_value(
    fluid: FluidTables, density_kg_m3: float, temperature_k: float
) -> tuple[float, float]:
    """Return (pressure [Pa], internal energy [J/kg]) of the gas."""
    at = (temperature_k - GAS_LOWEST_K) / GAS_STEP_K
    row = min(max(int(at), 0), len(fluid.gas) - 2)
    factors = fluid.gas[row] + (at - row) * (fluid.gas[row + 1] - fluid.gas[row])
    powers = min(density_kg_m3, float(factors[DENSEST])) ** np.arange(1, VIRIAL_TERMS + 1)
    z = 1.0 + float(factors[1 : 1 + VIRIAL_TERMS] @ powers)
    energy = float(factors[0] + factors[1 + VIRIAL_TERMS : DENSEST] @ powers)
    return density_kg_m3 * fluid.gas_constant * temperature_k * z, energy


def gas_density(fluid: FluidTables, pressure_pa: float, temperature_k: float) -> float:
    """Return the density [kg/m3] of the gas at a pressure, from the dilute side."""
    rho = pressure_pa / (fluid.gas_constant * temperature_k)
    for _ in range(200):
        new = rho * pressure_pa / gas_value(fluid, rho, temperature_k)[0]
        if abs(new - rho) < 1e-12 * rho:
            break
        rho = 0.5 * (rho + new)
    return rho


def inverse(values: Array, temperatures_k: Array) -> Array:
    """Return temperatures at equal steps of `values`, which rise or fall along the line."""
    order = np.argsort(values)
    grid = np.linspace(values.min(), values.max(), LINE_POINTS)
    return np.interp(grid, values[order], temperatures_k[order])


def phase_table(
    temperatures_k: Array,
    pressure: Callable[[float], float],
    density: Callable[[float], float],
    enthalpy: Callable[[float], float],
    vapour_enthalpy: Callable[[float], float],
) -> Array:
    """Return the rows of a condensed phase's table from functions of temperature [K]."""
    table = np.zeros((len(temperatures_k), 8))
    for row, t in enumerate(temperatures_k.tolist()):
        p, rho = pressure(t), density(t)
        table[row, : H_VAPOUR + 1] = p, rho, enthalpy(t) - p / rho, vapour_enthalpy(t)
    table[:, CP] = np.gradient(table[:, U], temperatures_k)
    table[:, DP_DT] = np.gradient(table[:, P], temperatures_k)
    return table


@cache
def co2_tables() -> FluidTables:
    """Return the tables of CO2; made once a process, in about a tenth of a second."""
    liquid_t = np.linspace(kernels.TRIPLE_T, HIGHEST_K, LINE_POINTS)
    liquid = phase_table(
        liquid_t,
        kernels.saturation_pressure_pa,
        kernels.liquid_density_kg_m3,
        kernels.liquid_enthalpy_j_kg,
        kernels.vapor_enthalpy_saturated_j_kg,
    )
    for row, t in enumerate(liquid_t.tolist()):
        slope = kernels.liquid_full_pressure_slope_pa_per_k(t)
        warmed = kernels.liquid_pressure_pa(float(liquid[row, RHO]), t + FULL_RISE_K)
        mean = (warmed - float(liquid[row, P])) / FULL_RISE_K
        liquid[row, FULL_SLOPE] = slope
        liquid[row, FULL_CURVE] = (mean - slope) / FULL_RISE_K
    solid_t = np.linspace(LOWEST_K, kernels.TRIPLE_T - 1e-9, LINE_POINTS)
    solid = phase_table(
        solid_t,
        kernels.sublimation_pressure_pa,
        kernels.solid_density_kg_m3,
        kernels.solid_enthalpy_j_kg,
        kernels.vapor_enthalpy_saturated_j_kg,
    )

    def within(temperature_k: float) -> float:
        return min(max(temperature_k, VAPOUR_FIT_K[0]), VAPOUR_FIT_K[1])

    def pressure(rho: float, temperature_k: float) -> float:
        # beyond the fitted range the compressibility is held, so the gas stays well behaved
        t = within(temperature_k)
        return kernels.vapor_pressure_pa(rho, t) * temperature_k / t

    def energy(rho: float, temperature_k: float) -> float:
        t = within(temperature_k)
        beyond = kernels.ideal_cv_j_kg_k(t) * (temperature_k - t)
        return kernels.vapor_internal_energy_j_kg(rho, t) + beyond

    def densest(temperature_k: float) -> float:
        if temperature_k >= 290.0:
            return 200.0
        rho = kernels.vapor_density_saturated_kg_m3(max(temperature_k, 200.0))
        return min(200.0, 1.3 * rho)

    return FluidTables(
        condensable=True,
        gas_constant=kernels.GAS_CONSTANT,
        triple_t=kernels.TRIPLE_T,
        triple_p=kernels.TRIPLE_P,
        liquid=liquid,
        liquid_t0=float(liquid_t[0]),
        liquid_dt=float(liquid_t[1] - liquid_t[0]),
        liquid_t_of_u=inverse(liquid[:, U], liquid_t),
        liquid_t_of_lnp=inverse(np.log(liquid[:, P]), liquid_t),
        liquid_t_of_rho=inverse(liquid[:, RHO], liquid_t),
        solid=solid,
        solid_t0=float(solid_t[0]),
        solid_dt=float(solid_t[1] - solid_t[0]),
        solid_t_of_u=inverse(solid[:, U], solid_t),
        solid_t_of_lnp=inverse(np.log(solid[:, P]), solid_t),
        gas=gas_table(pressure, energy, kernels.GAS_CONSTANT, densest, gas_temperatures_k()),
        # dilute CO2, power laws through the values at 220 and 300 K (from memory: 10.9 and
        # 16.8 mW/mK, 11.1 and 15.0 uPa s; free convection takes their product at the power 1/3)
        conductivity_273=14.7e-3,
        conductivity_power=1.39,
        viscosity_273=13.7e-6,
        viscosity_power=0.97,
    )
