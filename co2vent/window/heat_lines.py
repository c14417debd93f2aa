"""The lines that stand in a log p-h diagram: heat content [J/kg] over lg of pressure [Pa abs]."""

from typing import Final

import numpy as np
import numpy.typing as npt

from co2vent.co2 import (
    CRITICAL_TEMPERATURE_K,
    TRIPLE_TEMPERATURE_K,
    equilibrium_temperature_k_array,
    liquid_enthalpy_j_kg_array,
    saturation_pressure_pa_array,
    solid_enthalpy_j_kg_array,
    sublimation_pressure_pa_array,
    vapor_enthalpy_j_kg_array,
    vapor_enthalpy_saturated_j_kg_array,
)

Column = npt.NDArray[np.float64]
Line = tuple[Column, Column]

COLDEST_ICE_K: Final = 165.0
NEAR_K: Final = 1e-6  # the triple point itself belongs to the liquid
HIGHEST_DRY_PA: Final = 65e5  # to which vapour is described


def dome() -> Line:
    """Return boiling liquid from the triple point up, over the critical point, vapour down."""
    temperature_k = np.linspace(TRIPLE_TEMPERATURE_K, CRITICAL_TEMPERATURE_K - 1.0, 200)
    near = CRITICAL_TEMPERATURE_K - np.geomspace(0.9, 1e-4, 40)  # there the dome is flat
    temperature_k = np.concatenate((temperature_k, near, [CRITICAL_TEMPERATURE_K]))
    up = np.log10(saturation_pressure_pa_array(temperature_k))
    liquid = liquid_enthalpy_j_kg_array(temperature_k)
    vapour = vapor_enthalpy_saturated_j_kg_array(temperature_k)
    return np.concatenate((liquid, vapour[::-1])), np.concatenate((up, up[::-1]))


def frost() -> Line:
    """Return dry ice and, after a NaN, the vapour over it, both up to the triple point."""
    temperature_k = np.linspace(COLDEST_ICE_K, TRIPLE_TEMPERATURE_K - NEAR_K, 100)
    up = np.append(np.log10(sublimation_pressure_pa_array(temperature_k)), np.nan)
    ice = np.append(solid_enthalpy_j_kg_array(temperature_k), np.nan)
    return np.concatenate(
        (ice, vapor_enthalpy_saturated_j_kg_array(temperature_k))
    ), np.concatenate((up, up[:-1]))


def isotherm(temperature_k: float, lowest_pa: float) -> Line:
    """Return vapour of one temperature from `lowest_pa` up to where it condenses; NaN after it."""
    pressure = np.append(np.geomspace(lowest_pa, HIGHEST_DRY_PA, 120), np.nan)
    dry = equilibrium_temperature_k_array(pressure) < temperature_k
    heat = np.where(dry, vapor_enthalpy_j_kg_array(pressure, temperature_k), np.nan)
    return heat, np.log10(pressure)


def ends_across(pressure_pa: float) -> Column:
    """Return the heat contents of what is condensed and of the vapour over it at a pressure."""
    boiling_k = equilibrium_temperature_k_array([pressure_pa])
    wet = bool(boiling_k[0] >= TRIPLE_TEMPERATURE_K)
    condensed = liquid_enthalpy_j_kg_array if wet else solid_enthalpy_j_kg_array
    return np.append(condensed(boiling_k), vapor_enthalpy_saturated_j_kg_array(boiling_k))
