"""Along the lines between the phases: pressure, temperature, densities, heats. SI, absolute.

Accuracy against the Span & Wagner equation of state, 216.592 to 303 K: pressure 5e-5, densities
1e-3 (3e-4 seen), enthalpies 0.2 kJ/kg (0.03 seen). Enthalpy and entropy, of dry ice and vapour too,
count from the reference state of the International Institute of Refrigeration: saturated liquid at
0 degC has 200 kJ/kg and 1 kJ/kgK. The triple point itself belongs to the liquid: `equilibrium_*`
takes the sublimation line only below it.
"""

from typing import Final

from co2vent.co2 import kernels, ranges
from co2vent.co2.ranges import checked

saturation_pressure_pa = checked(
    kernels.saturation_pressure_pa, ranges.BOILING, "Vapour pressure of the liquid [Pa]."
)
saturation_temperature_k = checked(
    kernels.saturation_temperature_k, ranges.BOILING_PRESSURE, "Boiling temperature [K]."
)
saturation_slope_pa_per_k = checked(
    kernels.saturation_slope_pa_per_k, ranges.BOILING, "Slope of the saturation line [Pa/K]."
)
sublimation_pressure_pa = checked(
    kernels.sublimation_pressure_pa, ranges.FROST, "Vapour pressure of dry ice [Pa]."
)
sublimation_temperature_k = checked(
    kernels.sublimation_temperature_k, ranges.FROST_PRESSURE, "Temperature of dry ice [K]."
)
sublimation_slope_pa_per_k = checked(
    kernels.sublimation_slope_pa_per_k, ranges.FROST, "Slope of the sublimation line [Pa/K]."
)
equilibrium_pressure_pa = checked(
    kernels.equilibrium_pressure_pa,
    ranges.EQUILIBRIUM,
    "Vapour pressure of liquid, or of dry ice below the triple temperature [Pa].",
)
equilibrium_temperature_k = checked(
    kernels.equilibrium_temperature_k,
    ranges.EQUILIBRIUM_PRESSURE,
    "Temperature of boiling liquid, or of dry ice below the triple pressure [K].",
)
melting_pressure_pa = checked(
    kernels.melting_pressure_pa, ranges.MELTING, "Pressure at which liquid freezes [Pa]."
)

liquid_density_kg_m3 = checked(
    kernels.liquid_density_kg_m3, ranges.BOILING, "Density of saturated liquid [kg/m3]."
)
vapor_density_saturated_kg_m3 = checked(
    kernels.vapor_density_saturated_kg_m3,
    ranges.EQUILIBRIUM,
    "Density of vapour over liquid, or over dry ice below the triple temperature [kg/m3].",
)
solid_density_kg_m3 = checked(
    kernels.solid_density_kg_m3, ranges.FROST, "Density of dry ice, without pores [kg/m3]."
)
liquid_enthalpy_j_kg = checked(
    kernels.liquid_enthalpy_j_kg, ranges.BOILING, "Enthalpy of saturated liquid [J/kg]."
)
vapor_enthalpy_saturated_j_kg = checked(
    kernels.vapor_enthalpy_saturated_j_kg,
    ranges.EQUILIBRIUM,
    "Enthalpy of vapour over liquid, or over dry ice below the triple temperature [J/kg].",
)
solid_enthalpy_j_kg = checked(
    kernels.solid_enthalpy_j_kg, ranges.FROST, "Enthalpy of dry ice [J/kg]."
)
liquid_entropy_j_kg_k = checked(
    kernels.liquid_entropy_j_kg_k, ranges.BOILING, "Entropy of saturated liquid [J/kgK]."
)
vapor_entropy_saturated_j_kg_k = checked(
    kernels.vapor_entropy_saturated_j_kg_k,
    ranges.EQUILIBRIUM,
    "Entropy of vapour over liquid, or over dry ice below the triple temperature [J/kgK].",
)
solid_entropy_j_kg_k = checked(
    kernels.solid_entropy_j_kg_k, ranges.FROST, "Entropy of dry ice [J/kgK]."
)
latent_heat_j_kg = checked(
    kernels.latent_heat_j_kg, ranges.BOILING, "Heat of vaporisation of the liquid [J/kg]."
)
sublimation_heat_j_kg = checked(
    kernels.sublimation_heat_j_kg, ranges.FROST, "Heat of sublimation of dry ice [J/kg]."
)
liquid_heat_capacity_j_kg_k = checked(
    kernels.liquid_heat_capacity_j_kg_k,
    ranges.LIQUID_HEAT_CAPACITY,
    "Heat capacity of liquid along the saturation line, T ds/dT [J/kgK].",
)
solid_heat_capacity_j_kg_k = checked(
    kernels.solid_heat_capacity_j_kg_k,
    ranges.FROST,
    "Heat capacity of dry ice along the sublimation line, T ds/dT [J/kgK].",
)

# 201.66 kJ/kg: 8875 J/mol, the anchor of Jaeger & Span 2012; handbooks spread +-1.6 %
FUSION_HEAT_J_KG: Final = kernels.liquid_enthalpy_j_kg(
    kernels.TRIPLE_T
) - kernels.solid_enthalpy_j_kg(kernels.TRIPLE_T)
