"""The heat content of the vapour of a vent, as far as gauge and clamp tell it.

The gauge gives the pressure. The clamp gives the temperature of the metal, not of the CO2. Where it
reads clearly above boiling, the vapour is taken to be as warm as the metal; where it does not, or
where there is none, all that can be said is that vapour over liquid or dry ice is saturated.
"""

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from co2vent.co2 import (
    equilibrium_temperature_k_array,
    vapor_enthalpy_j_kg_array,
    vapor_enthalpy_saturated_j_kg_array,
)
from co2vent.inference.criteria import CRITERIA

Column = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class VapourPath:
    """States of the vapour. NaN where the readings give none."""

    pressure_pa: Column  # measured
    enthalpy_j_kg: Column  # worked out
    by_clamp: npt.NDArray[np.bool_]  # True: as warm as the clamp; False: saturated is assumed


def vapour_path(pressure_pa: npt.ArrayLike, line_temperature_k: npt.ArrayLike) -> VapourPath:
    """Return the states of the vapour at absolute pressures [Pa] and clamp temperatures [K].

    A clamp within its own error of boiling says nothing of superheat.
    """
    pressure = np.asarray(pressure_pa, np.float64)
    clamp_k = np.asarray(line_temperature_k, np.float64)
    boiling_k = equilibrium_temperature_k_array(pressure)
    with np.errstate(invalid="ignore"):
        warm = clamp_k > boiling_k + CRITERIA.clamp_error_k
    enthalpy = vapor_enthalpy_saturated_j_kg_array(boiling_k)
    enthalpy[warm] = vapor_enthalpy_j_kg_array(pressure[warm], clamp_k[warm])
    return VapourPath(pressure, enthalpy, warm)
