"""Carbon dioxide in SI and absolute pressure: lines between the phases, vapour, liquid, dry ice.

Scalar functions raise OutOfRangeError outside their stated range; `*_array` functions give NaN
there. `compiled()` holds the unchecked equations compiled for simulation.
"""

from typing import Final

from co2vent.co2 import kernels
from co2vent.co2.arrays import (
    equilibrium_pressure_pa_array,
    equilibrium_temperature_k_array,
    liquid_density_kg_m3_array,
    liquid_enthalpy_j_kg_array,
    saturation_pressure_pa_array,
    saturation_temperature_k_array,
    solid_density_kg_m3_array,
    solid_enthalpy_j_kg_array,
    sublimation_pressure_pa_array,
    sublimation_temperature_k_array,
    vapor_density_kg_m3_array,
    vapor_density_saturated_kg_m3_array,
    vapor_enthalpy_j_kg_array,
    vapor_enthalpy_saturated_j_kg_array,
)
from co2vent.co2.atmosphere import ambient_pressure_pa
from co2vent.co2.dry_ice import PLATEAU_SOLID_FRACTION, solid_share_after_cooling
from co2vent.co2.lines import (
    FUSION_HEAT_J_KG,
    equilibrium_pressure_pa,
    equilibrium_temperature_k,
    latent_heat_j_kg,
    liquid_density_kg_m3,
    liquid_enthalpy_j_kg,
    liquid_entropy_j_kg_k,
    liquid_heat_capacity_j_kg_k,
    melting_pressure_pa,
    saturation_pressure_pa,
    saturation_slope_pa_per_k,
    saturation_temperature_k,
    solid_density_kg_m3,
    solid_enthalpy_j_kg,
    solid_entropy_j_kg_k,
    solid_heat_capacity_j_kg_k,
    sublimation_heat_j_kg,
    sublimation_pressure_pa,
    sublimation_slope_pa_per_k,
    sublimation_temperature_k,
    vapor_density_saturated_kg_m3,
    vapor_enthalpy_saturated_j_kg,
    vapor_entropy_saturated_j_kg_k,
)
from co2vent.co2.liquid_full import (
    kelvin_to_pressure,
    liquid_full_pressure_slope_pa_per_k,
    liquid_full_temperature_k,
    liquid_internal_energy_j_kg,
    liquid_pressure_pa,
)
from co2vent.co2.module_copies import compiled
from co2vent.co2.vapor import (
    compressibility,
    vapor_cp_j_kg_k,
    vapor_cv_j_kg_k,
    vapor_density_kg_m3,
    vapor_enthalpy_j_kg,
    vapor_entropy_j_kg_k,
    vapor_internal_energy_j_kg,
    vapor_pressure_pa,
    vapor_pressure_slope_pa_per_k,
)
from co2vent.co2.venting import vapor_mass_flux_kg_s_m2

# Span & Wagner 1996; the triple pressure is the published one, used everywhere
TRIPLE_TEMPERATURE_K: Final = kernels.TRIPLE_T
TRIPLE_PRESSURE_PA: Final = kernels.TRIPLE_P
CRITICAL_TEMPERATURE_K: Final = kernels.CRITICAL_T
CRITICAL_PRESSURE_PA: Final = kernels.CRITICAL_P
GAS_CONSTANT_J_PER_KG_K: Final = kernels.GAS_CONSTANT
MOLAR_MASS_KG_PER_MOL: Final = 0.0440098

__all__ = [
    "CRITICAL_PRESSURE_PA",
    "CRITICAL_TEMPERATURE_K",
    "FUSION_HEAT_J_KG",
    "GAS_CONSTANT_J_PER_KG_K",
    "MOLAR_MASS_KG_PER_MOL",
    "PLATEAU_SOLID_FRACTION",
    "TRIPLE_PRESSURE_PA",
    "TRIPLE_TEMPERATURE_K",
    "ambient_pressure_pa",
    "compiled",
    "compressibility",
    "equilibrium_pressure_pa",
    "equilibrium_pressure_pa_array",
    "equilibrium_temperature_k",
    "equilibrium_temperature_k_array",
    "kelvin_to_pressure",
    "latent_heat_j_kg",
    "liquid_density_kg_m3",
    "liquid_density_kg_m3_array",
    "liquid_enthalpy_j_kg",
    "liquid_enthalpy_j_kg_array",
    "liquid_entropy_j_kg_k",
    "liquid_full_pressure_slope_pa_per_k",
    "liquid_full_temperature_k",
    "liquid_heat_capacity_j_kg_k",
    "liquid_internal_energy_j_kg",
    "liquid_pressure_pa",
    "melting_pressure_pa",
    "saturation_pressure_pa",
    "saturation_pressure_pa_array",
    "saturation_slope_pa_per_k",
    "saturation_temperature_k",
    "saturation_temperature_k_array",
    "solid_density_kg_m3",
    "solid_density_kg_m3_array",
    "solid_enthalpy_j_kg",
    "solid_enthalpy_j_kg_array",
    "solid_entropy_j_kg_k",
    "solid_heat_capacity_j_kg_k",
    "solid_share_after_cooling",
    "sublimation_heat_j_kg",
    "sublimation_pressure_pa",
    "sublimation_pressure_pa_array",
    "sublimation_slope_pa_per_k",
    "sublimation_temperature_k",
    "sublimation_temperature_k_array",
    "vapor_cp_j_kg_k",
    "vapor_cv_j_kg_k",
    "vapor_density_kg_m3",
    "vapor_density_kg_m3_array",
    "vapor_density_saturated_kg_m3",
    "vapor_density_saturated_kg_m3_array",
    "vapor_enthalpy_j_kg",
    "vapor_enthalpy_j_kg_array",
    "vapor_enthalpy_saturated_j_kg",
    "vapor_enthalpy_saturated_j_kg_array",
    "vapor_entropy_j_kg_k",
    "vapor_entropy_saturated_j_kg_k",
    "vapor_internal_energy_j_kg",
    "vapor_mass_flux_kg_s_m2",
    "vapor_pressure_pa",
    "vapor_pressure_slope_pa_per_k",
]
