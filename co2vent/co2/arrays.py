"""The same properties on numpy arrays. Out of range, and NaN, give NaN: never an extrapolation."""

from collections.abc import Callable
from typing import Any

import numpy as np
import numpy.typing as npt

from co2vent.co2 import kernels, ranges
from co2vent.co2.module_copies import vectorised
from co2vent.co2.ranges import Range
from co2vent.co2.vapor import highest_vapor_density_kg_m3

Array = npt.NDArray[np.float64]
_on_numpy = vectorised()


def _array_version(*pieces: tuple[Range, str], doc: str) -> Callable[[npt.ArrayLike], Array]:
    """Return an array function of kernels, each valid on its own range; the first one wins."""

    def evaluate(values: npt.ArrayLike) -> Array:
        x = np.asarray(values, dtype=np.float64)
        result = np.full(x.shape, np.nan)
        free = np.ones(x.shape, dtype=bool)
        for valid, name in pieces:
            inside = free & (x >= valid.low) & (x <= valid.high)
            result[inside] = getattr(_on_numpy, name)(x[inside])
            free &= ~inside
        return result

    evaluate.__doc__ = f"{doc} NaN outside the range."
    return evaluate


saturation_pressure_pa_array = _array_version(
    (ranges.BOILING, "saturation_pressure_pa"), doc="Vapour pressure of liquid [Pa] of T [K]."
)
saturation_temperature_k_array = _array_version(
    (ranges.BOILING_PRESSURE, "saturation_temperature_k"), doc="Boiling temperature [K] of p [Pa]."
)
sublimation_pressure_pa_array = _array_version(
    (ranges.FROST, "sublimation_pressure_pa"), doc="Vapour pressure of dry ice [Pa] of T [K]."
)
sublimation_temperature_k_array = _array_version(
    (ranges.FROST_PRESSURE, "sublimation_temperature_k"), doc="Dry-ice temperature [K] of p [Pa]."
)
equilibrium_pressure_pa_array = _array_version(
    (ranges.BOILING, "saturation_pressure_pa"),
    (ranges.FROST, "sublimation_pressure_pa"),
    doc="Vapour pressure of liquid, below the triple temperature of dry ice [Pa], of T [K].",
)
equilibrium_temperature_k_array = _array_version(
    (ranges.BOILING_PRESSURE, "saturation_temperature_k"),
    (ranges.FROST_PRESSURE, "sublimation_temperature_k"),
    doc="Temperature of boiling liquid, below the triple pressure of dry ice [K], of p [Pa].",
)
liquid_density_kg_m3_array = _array_version(
    (ranges.BOILING, "liquid_density_kg_m3"), doc="Saturated liquid density [kg/m3] of T [K]."
)
vapor_density_saturated_kg_m3_array = _array_version(
    (ranges.BOILING, "boiling_vapor_density_kg_m3"),
    (ranges.FROST, "frost_vapor_density_kg_m3"),
    doc="Density of vapour over liquid or dry ice [kg/m3] of T [K].",
)
solid_density_kg_m3_array = _array_version(
    (ranges.FROST, "solid_density_kg_m3"), doc="Density of dry ice [kg/m3] of T [K]."
)
liquid_enthalpy_j_kg_array = _array_version(
    (ranges.BOILING, "liquid_enthalpy_j_kg"), doc="Saturated liquid enthalpy [J/kg] of T [K]."
)
vapor_enthalpy_saturated_j_kg_array = _array_version(
    (ranges.BOILING, "boiling_vapor_enthalpy_j_kg"),
    (ranges.FROST, "frost_vapor_enthalpy_j_kg"),
    doc="Enthalpy of vapour over liquid or dry ice [J/kg] of T [K].",
)
solid_enthalpy_j_kg_array = _array_version(
    (ranges.FROST, "solid_enthalpy_j_kg"), doc="Enthalpy of dry ice [J/kg] of T [K]."
)


def vapor_enthalpy_j_kg_array(pressure_pa: npt.ArrayLike, temperature_k: npt.ArrayLike) -> Array:
    """Enthalpy of vapour [J/kg] of p [Pa] and T [K], broadcast; NaN outside the range."""
    density = vapor_density_kg_m3_array(pressure_pa, temperature_k)
    temperature = np.broadcast_to(np.asarray(temperature_k, dtype=np.float64), density.shape)
    result: Array = _on_numpy.vapor_enthalpy_j_kg(density, temperature)
    return result


def vapor_density_kg_m3_array(pressure_pa: npt.ArrayLike, temperature_k: npt.ArrayLike) -> Array:
    """Density of vapour [kg/m3] of p [Pa] and T [K], broadcast; NaN outside the range."""
    pressure, temperature = np.broadcast_arrays(
        np.asarray(pressure_pa, dtype=np.float64), np.asarray(temperature_k, dtype=np.float64)
    )
    result = np.full(pressure.shape, np.nan)
    inside = (
        (pressure > 0.0)
        & (pressure <= ranges.HIGHEST_VAPOR_PRESSURE_PA)
        & (temperature >= ranges.LOWEST_TEMPERATURE_K)
        & (temperature <= ranges.HIGHEST_VAPOR_TEMPERATURE_K)
    )
    p, t = pressure[inside], temperature[inside]
    rho: Any = p / (kernels.GAS_CONSTANT * t)
    with np.errstate(all="ignore"):  # beyond any vapour the steps run away; checked below
        for _ in range(16):
            rho = rho + (p - _on_numpy.vapor_pressure_pa(rho, t)) / (
                _on_numpy.vapor_pressure_by_density(rho, t)
            )
        reached = np.abs(_on_numpy.vapor_pressure_pa(rho, t) / p - 1.0) < 1e-9
    highest = np.fromiter(map(highest_vapor_density_kg_m3, t), np.float64, len(t))
    result[inside] = np.where(reached & (rho > 0.0) & (rho <= highest), rho, np.nan)
    result[pressure == 0.0] = 0.0
    return result
