"""CO2 property equations as plain functions of floats: no checks, no classes, no allocation.

Callers keep the arguments inside the ranges that `co2vent.co2` states; outside them the results
mean nothing. Written so that numba compiles this file unchanged (`co2vent.co2.compiled`).
T [K], p [Pa absolute], rho [kg/m3], h, u [J/kg], s [J/kgK]; datum h' = 200 kJ/kg, s' = 1 kJ/kgK
at 0 degC (IIR).

Sources: sublimation and melting pressure, saturated densities: Span & Wagner,
J. Phys. Chem. Ref. Data 25 (1996) 1509, auxiliary equations. Everything from `coefficients`: short
fits to that paper's equation of state and to the dry-ice equation of Jaeger & Span,
J. Chem. Eng. Data 57 (2012) 590.
"""

from collections.abc import Callable
from math import exp, log, nan, sqrt
from typing import Final

from co2vent.co2 import coefficients as fitted

Row = tuple[float, ...]

TRIPLE_T: Final = 216.592
TRIPLE_P: Final = 517_950.0
CRITICAL_T: Final = 304.1282
CRITICAL_P: Final = 7_377_300.0
CRITICAL_RHO: Final = 467.6
GAS_CONSTANT: Final = 8.31451 / 0.0440098  # Span & Wagner's molar gas constant and molar mass


def _weighted(factor: Callable[[int, int], float]) -> tuple[Row, ...]:
    """Return the residual Helmholtz table with each delta^i tau^j term times factor(i, j)."""
    return tuple(
        tuple(value * factor(i, j) for j, value in enumerate(row))
        for i, row in enumerate(fitted.RESIDUAL, start=1)
    )


# derivatives of the residual Helmholtz energy, each again a table of delta^i tau^j
_OF_P = _weighted(lambda i, j: float(i))
_OF_P_BY_RHO = _weighted(lambda i, j: float(i * (i + 1)))
_OF_P_BY_T = _weighted(lambda i, j: float(i * (1 - j)))
_OF_U = _weighted(lambda i, j: float(j))
_OF_CV = _weighted(lambda i, j: float(j * (1 - j)))
_OF_S = _weighted(lambda i, j: float(j - 1))

_CV = fitted.IDEAL_CV
_U_ZERO: Final = fitted.IDEAL_ZERO[0]
_S_ZERO: Final = fitted.IDEAL_ZERO[1]
_HL: Final = fitted.LIQUID_ENTHALPY
_HV: Final = fitted.VAPOR_ENTHALPY
_SL: Final = fitted.LIQUID_ENTROPY
_SV: Final = fitted.VAPOR_ENTROPY
_P_BOIL: Final = fitted.SATURATION_PRESSURE
_T_BOIL: Final = fitted.SATURATION_TEMPERATURE
_T_FROST: Final = fitted.SUBLIMATION_TEMPERATURE
_H_SOLID: Final = fitted.SOLID_ENTHALPY
_S_SOLID: Final = fitted.SOLID_ENTROPY
_RHO_SOLID: Final = fitted.SOLID_DENSITY
_LN_RHO_FROST: Final = fitted.FROST_VAPOR_LOG_DENSITY
_H_FROST: Final = fitted.FROST_VAPOR_ENTHALPY
_S_FROST: Final = fitted.FROST_VAPOR_ENTROPY
_T_FULL: Final = fitted.LIQUID_FULL_TEMPERATURE
_SLOPE_FULL: Final = fitted.LIQUID_FULL_SLOPE
_CV_FULL: Final = fitted.LIQUID_FULL_CV


def quintic(c: Row, x: float) -> float:
    """Return the polynomial of degree 5 with coefficients `c`, lowest power first."""
    return c[0] + x * (c[1] + x * (c[2] + x * (c[3] + x * (c[4] + x * c[5]))))


def sextic(c: Row, x: float) -> float:
    """Return the polynomial of degree 6 with coefficients `c`, lowest power first."""
    return c[0] + x * (c[1] + x * (c[2] + x * (c[3] + x * (c[4] + x * (c[5] + x * c[6])))))


# --- the lines between the phases -------------------------------------------------------------


def saturation_pressure_pa(temperature_k: float) -> float:
    """Vapour pressure of the liquid, triple to critical temperature."""
    u = 1.0 - temperature_k / CRITICAL_T
    r = sqrt(u)
    a, b, c, d, e, f = _P_BOIL
    s = u * (a + r * (b + r * (c + r * (d + r * (e + u * f)))))
    return CRITICAL_P * exp(s / (1.0 - u))


def saturation_temperature_k(pressure_pa: float) -> float:
    """Boiling temperature, triple to critical pressure."""
    q = sqrt(log(CRITICAL_P / pressure_pa))
    a, b, c, d, e, f, g = _T_BOIL
    y = q * q * (a + q * (b + q * (c + q * (d + q * (e + q * (f + q * g))))))
    # the boiling line starts 14 Pa above the published triple pressure
    return max(TRIPLE_T, CRITICAL_T / (1.0 + y))


def saturation_slope_pa_per_k(temperature_k: float) -> float:
    """Slope of the saturation line, triple to critical temperature."""
    u = 1.0 - temperature_k / CRITICAL_T
    r = sqrt(u)
    c = _P_BOIL
    s = u * (c[0] + r * (c[1] + r * (c[2] + r * (c[3] + r * (c[4] + u * c[5])))))
    tail = 2.5 * c[3] + r * (3.0 * c[4] + u * 4.0 * c[5])
    ds = c[0] + r * (1.5 * c[1] + r * (2.0 * c[2] + r * tail))
    tau = CRITICAL_T / temperature_k
    return -CRITICAL_P * exp(tau * s) * (ds + tau * s) / temperature_k


def sublimation_pressure_pa(temperature_k: float) -> float:
    """Vapour pressure of dry ice, up to the triple temperature (Span & Wagner eq. 3.12)."""
    u = 1.0 - temperature_k / TRIPLE_T
    s = -14.740846 * u + 2.4327015 * u**1.9 - 5.3061778 * u**2.9
    return TRIPLE_P * exp(s / (1.0 - u))


def sublimation_temperature_k(pressure_pa: float) -> float:
    """Temperature of dry ice under its own vapour, up to the triple pressure."""
    q = sqrt(log(TRIPLE_P / pressure_pa))
    c = _T_FROST
    y = c[3] + q * (c[4] + q * (c[5] + q * (c[6] + q * (c[7] + q * c[8]))))
    return TRIPLE_T / (1.0 + q * q * (c[0] + q * (c[1] + q * (c[2] + q * y))))


def sublimation_slope_pa_per_k(temperature_k: float) -> float:
    """Slope of the sublimation line, up to the triple temperature."""
    u = 1.0 - temperature_k / TRIPLE_T
    s = -14.740846 * u + 2.4327015 * u**1.9 - 5.3061778 * u**2.9
    ds = -14.740846 + 1.9 * 2.4327015 * u**0.9 - 2.9 * 5.3061778 * u**1.9
    tau = TRIPLE_T / temperature_k
    slope: float = -TRIPLE_P * exp(tau * s) * (ds + tau * s) / temperature_k
    return slope


def equilibrium_pressure_pa(temperature_k: float) -> float:
    """Pressure of vapour over its liquid, or over dry ice below the triple temperature."""
    if temperature_k < TRIPLE_T:
        return sublimation_pressure_pa(temperature_k)
    return saturation_pressure_pa(temperature_k)


def equilibrium_temperature_k(pressure_pa: float) -> float:
    """Temperature of vapour over its liquid, or over dry ice below the triple pressure."""
    if pressure_pa < TRIPLE_P:
        return sublimation_temperature_k(pressure_pa)
    return saturation_temperature_k(pressure_pa)


def melting_pressure_pa(temperature_k: float) -> float:
    """Pressure at which liquid freezes, from the triple temperature up."""
    u = temperature_k / TRIPLE_T - 1.0
    return TRIPLE_P * (1.0 + u * (1955.5390 + 2055.4593 * u))


# --- liquid, saturated vapour, dry ice on those lines -----------------------------------------


def liquid_density_kg_m3(temperature_k: float) -> float:
    """Density of saturated liquid."""
    u = 1.0 - temperature_k / CRITICAL_T
    s = 1.9245108 * u**0.34 - 0.62385555 * sqrt(u)
    s += -0.32731127 * u ** (10.0 / 6.0) + 0.39245142 * u ** (11.0 / 6.0)
    return CRITICAL_RHO * exp(s)


def boiling_vapor_density_kg_m3(temperature_k: float) -> float:
    """Density of vapour over liquid."""
    u = 1.0 - temperature_k / CRITICAL_T
    v = u ** (7.0 / 3.0)
    s = -1.7074879 * u**0.34 - 0.82274670 * sqrt(u) - 4.6008549 * u
    return CRITICAL_RHO * exp(s - v * (10.111178 + 29.742252 * v))


def frost_vapor_density_kg_m3(temperature_k: float) -> float:
    """Density of vapour over dry ice."""
    return exp(quintic(_LN_RHO_FROST, (temperature_k - TRIPLE_T) / 100.0))


def vapor_density_saturated_kg_m3(temperature_k: float) -> float:
    """Density of vapour over liquid, or over dry ice below the triple temperature."""
    if temperature_k < TRIPLE_T:
        return frost_vapor_density_kg_m3(temperature_k)
    return boiling_vapor_density_kg_m3(temperature_k)


def solid_density_kg_m3(temperature_k: float) -> float:
    """Density of dry ice under its own vapour."""
    return quintic(_RHO_SOLID, (temperature_k - TRIPLE_T) / 100.0)


def liquid_enthalpy_j_kg(temperature_k: float) -> float:
    """Enthalpy of saturated liquid."""
    return sextic(_HL, (1.0 - temperature_k / CRITICAL_T) ** (1.0 / 3.0))


def boiling_vapor_enthalpy_j_kg(temperature_k: float) -> float:
    """Enthalpy of vapour over liquid."""
    return sextic(_HV, (1.0 - temperature_k / CRITICAL_T) ** (1.0 / 3.0))


def frost_vapor_enthalpy_j_kg(temperature_k: float) -> float:
    """Enthalpy of vapour over dry ice."""
    return quintic(_H_FROST, (temperature_k - TRIPLE_T) / 100.0)


def vapor_enthalpy_saturated_j_kg(temperature_k: float) -> float:
    """Enthalpy of vapour over liquid, or over dry ice below the triple temperature."""
    if temperature_k < TRIPLE_T:
        return frost_vapor_enthalpy_j_kg(temperature_k)
    return boiling_vapor_enthalpy_j_kg(temperature_k)


def solid_enthalpy_j_kg(temperature_k: float) -> float:
    """Enthalpy of dry ice under its own vapour."""
    return quintic(_H_SOLID, (temperature_k - TRIPLE_T) / 100.0)


def liquid_entropy_j_kg_k(temperature_k: float) -> float:
    """Entropy of saturated liquid."""
    return sextic(_SL, (1.0 - temperature_k / CRITICAL_T) ** (1.0 / 3.0))


def vapor_entropy_saturated_j_kg_k(temperature_k: float) -> float:
    """Entropy of vapour over liquid, or over dry ice below the triple temperature."""
    if temperature_k < TRIPLE_T:
        return quintic(_S_FROST, (temperature_k - TRIPLE_T) / 100.0)
    return sextic(_SV, (1.0 - temperature_k / CRITICAL_T) ** (1.0 / 3.0))


def solid_entropy_j_kg_k(temperature_k: float) -> float:
    """Entropy of dry ice under its own vapour."""
    return quintic(_S_SOLID, (temperature_k - TRIPLE_T) / 100.0)


def latent_heat_j_kg(temperature_k: float) -> float:
    """Heat of vaporisation."""
    x = (1.0 - temperature_k / CRITICAL_T) ** (1.0 / 3.0)
    return sextic(_HV, x) - sextic(_HL, x)


def sublimation_heat_j_kg(temperature_k: float) -> float:
    """Heat of sublimation."""
    d = (temperature_k - TRIPLE_T) / 100.0
    return quintic(_H_FROST, d) - quintic(_H_SOLID, d)


def liquid_heat_capacity_j_kg_k(temperature_k: float) -> float:
    """Heat capacity of liquid along the saturation line, T ds/dT."""
    x = (1.0 - temperature_k / CRITICAL_T) ** (1.0 / 3.0)
    c = _SL
    slope = c[1] + x * (2.0 * c[2] + x * (3.0 * c[3] + x * (4.0 * c[4] + x * 5.0 * c[5])))
    slope += 6.0 * c[6] * x**5
    heat_capacity: float = -temperature_k * slope / (3.0 * CRITICAL_T * x * x)
    return heat_capacity


def solid_heat_capacity_j_kg_k(temperature_k: float) -> float:
    """Heat capacity of dry ice along the sublimation line, T ds/dT."""
    d = (temperature_k - TRIPLE_T) / 100.0
    c = _S_SOLID
    slope = c[1] + d * (2.0 * c[2] + d * (3.0 * c[3] + d * (4.0 * c[4] + d * 5.0 * c[5])))
    return temperature_k * slope / 100.0


# --- real-gas vapour: one Helmholtz energy gives p, u, s and their slopes -----------------------


def _series(table: tuple[Row, ...], density_kg_m3: float, temperature_k: float) -> float:
    """Sum of a residual table's terms delta^i tau^j."""
    d = density_kg_m3 / CRITICAL_RHO
    t = CRITICAL_T / temperature_k
    tail = quintic(table[3], t) + d * (quintic(table[4], t) + d * quintic(table[5], t))
    return d * (
        quintic(table[0], t) + d * (quintic(table[1], t) + d * (quintic(table[2], t) + d * tail))
    )


def vapor_pressure_pa(density_kg_m3: float, temperature_k: float) -> float:
    """Pressure of vapour."""
    z = 1.0 + _series(_OF_P, density_kg_m3, temperature_k)
    return density_kg_m3 * GAS_CONSTANT * temperature_k * z


def vapor_pressure_by_density(density_kg_m3: float, temperature_k: float) -> float:
    """Slope of the vapour's pressure with density at constant temperature [Pa m3/kg]."""
    z = 1.0 + _series(_OF_P_BY_RHO, density_kg_m3, temperature_k)
    return GAS_CONSTANT * temperature_k * z


def vapor_pressure_by_temperature(density_kg_m3: float, temperature_k: float) -> float:
    """Slope of the vapour's pressure with temperature at constant density [Pa/K]."""
    z = 1.0 + _series(_OF_P_BY_T, density_kg_m3, temperature_k)
    return density_kg_m3 * GAS_CONSTANT * z


def ideal_cv_j_kg_k(temperature_k: float) -> float:
    """Heat capacity at constant volume of the thin gas."""
    c, x = _CV, temperature_k / 200.0
    return c[0] + x * (c[1] + x * (c[2] + x * (c[3] + x * c[4])))


def vapor_internal_energy_j_kg(density_kg_m3: float, temperature_k: float) -> float:
    """Internal energy of vapour."""
    c, x = _CV, temperature_k / 200.0
    tail = c[2] / 3.0 + x * (c[3] / 4.0 + x * c[4] / 5.0)
    ideal = _U_ZERO + temperature_k * (c[0] + x * (c[1] / 2.0 + x * tail))
    return ideal + GAS_CONSTANT * temperature_k * _series(_OF_U, density_kg_m3, temperature_k)


def vapor_enthalpy_j_kg(density_kg_m3: float, temperature_k: float) -> float:
    """Enthalpy of vapour."""
    u = vapor_internal_energy_j_kg(density_kg_m3, temperature_k)
    z = 1.0 + _series(_OF_P, density_kg_m3, temperature_k)
    return u + GAS_CONSTANT * temperature_k * z


def vapor_entropy_j_kg_k(density_kg_m3: float, temperature_k: float) -> float:
    """Entropy of vapour."""
    c, x = _CV, temperature_k / 200.0
    over_t = c[0] * log(x) + x * (c[1] + x * (c[2] / 2.0 + x * (c[3] / 3.0 + x * c[4] / 4.0)))
    residual = _series(_OF_S, density_kg_m3, temperature_k)
    return _S_ZERO + over_t + GAS_CONSTANT * (residual - log(density_kg_m3))


def vapor_cv_j_kg_k(density_kg_m3: float, temperature_k: float) -> float:
    """Heat capacity of vapour at constant volume."""
    residual = GAS_CONSTANT * _series(_OF_CV, density_kg_m3, temperature_k)
    return ideal_cv_j_kg_k(temperature_k) + residual


def vapor_cp_j_kg_k(density_kg_m3: float, temperature_k: float) -> float:
    """Heat capacity of vapour at constant pressure."""
    by_t = vapor_pressure_by_temperature(density_kg_m3, temperature_k)
    by_rho = vapor_pressure_by_density(density_kg_m3, temperature_k)
    extra = temperature_k * by_t * by_t / (density_kg_m3 * density_kg_m3 * by_rho)
    return vapor_cv_j_kg_k(density_kg_m3, temperature_k) + extra


def vapor_density_kg_m3(pressure_pa: float, temperature_k: float) -> float:
    """Density of vapour; nan where the pressure is beyond any (even supercooled) vapour.

    Newton from the ideal gas: along an isotherm the pressure is concave in the density, so the
    steps rise to the root and cannot pass it.
    """
    rho = pressure_pa / (GAS_CONSTANT * temperature_k)
    for _ in range(40):
        slope = vapor_pressure_by_density(rho, temperature_k)
        if slope <= 0.0:
            return nan
        step = (pressure_pa - vapor_pressure_pa(rho, temperature_k)) / slope
        rho += step
        if abs(step) <= 1e-12 * rho:
            return rho
    return nan


# --- liquid with no vapour space left -----------------------------------------------------------


def liquid_full_temperature_k(density_kg_m3: float) -> float:
    """Temperature at which a vessel holding `density_kg_m3` becomes liquid-full."""
    return sextic(_T_FULL, density_kg_m3 / 1000.0)


def liquid_pressure_pa(density_kg_m3: float, temperature_k: float) -> float:
    """Pressure of liquid that fills its vessel, at or above its liquid-full temperature."""
    start = liquid_full_temperature_k(density_kg_m3)
    rise = temperature_k - start
    r, d = density_kg_m3 / 1000.0, rise / 10.0
    slope = quintic(_SLOPE_FULL[0], r) + d * (
        quintic(_SLOPE_FULL[1], r) + d * quintic(_SLOPE_FULL[2], r)
    )
    return saturation_pressure_pa(start) + rise * slope


def liquid_full_pressure_slope_pa_per_k(temperature_k: float) -> float:
    """Pressure rise per kelvin of liquid that has just filled its vessel."""
    return quintic(_SLOPE_FULL[0], liquid_density_kg_m3(temperature_k) / 1000.0)


def liquid_internal_energy_j_kg(density_kg_m3: float, temperature_k: float) -> float:
    """Internal energy of liquid that fills its vessel."""
    start = liquid_full_temperature_k(density_kg_m3)
    rise = temperature_k - start
    r = density_kg_m3 / 1000.0
    cv = quintic(_CV_FULL[0], r) + rise / 10.0 * quintic(_CV_FULL[1], r)
    saturated = liquid_enthalpy_j_kg(start) - saturation_pressure_pa(start) / density_kg_m3
    return saturated + rise * cv


# --- vapour leaving through a hole --------------------------------------------------------------


def nozzle_flux_kg_s_m2(
    pressure_pa: float, density_kg_m3: float, temperature_k: float, back_pressure_pa: float
) -> float:
    """Mass flux of vapour of known density through an ideal nozzle; 0 if none flows.

    Perfect-gas nozzle with the thin gas's heat-capacity ratio and the real inlet density, the
    sizing form of API 520; within 1 % of real-gas isentropic flow from 5 to 60 bar (against the
    equation of state). The real cp/cv must not be used here: up to +47 % at 60 bar.
    """
    if back_pressure_pa >= pressure_pa:
        return 0.0
    k = 1.0 + GAS_CONSTANT / ideal_cv_j_kg_k(temperature_k)
    ratio = back_pressure_pa / pressure_pa
    critical = (2.0 / (k + 1.0)) ** (k / (k - 1.0))
    if ratio < critical:
        ratio = critical
    work = k / (k - 1.0) * (1.0 - ratio ** ((k - 1.0) / k))
    flux: float = sqrt(2.0 * pressure_pa * density_kg_m3 * work) * ratio ** (1.0 / k)
    return flux


def vapor_mass_flux_kg_s_m2(
    pressure_pa: float, temperature_k: float, back_pressure_pa: float
) -> float:
    """Mass flux of vapour through an ideal nozzle (discharge coefficient 1); 0 if none flows."""
    rho = vapor_density_kg_m3(pressure_pa, temperature_k)
    return nozzle_flux_kg_s_m2(pressure_pa, rho, temperature_k, back_pressure_pa)
