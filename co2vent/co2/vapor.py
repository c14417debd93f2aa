"""Real-gas vapour: one fitted Helmholtz energy gives p, u, h, s, cv and cp, so they agree.

Valid from 154 to 318.15 K and to 65 bar absolute, including cold gas over dry ice, and vapour
supercooled to 12 % more than its saturated density (about 2.5 K at -50 degC, 1 K at +20 degC).
Against the Span & Wagner equation: pressure 5e-5, energy 20 J/kg.
"""

from collections.abc import Callable
from typing import Final

from co2vent.co2 import kernels, ranges
from co2vent.errors import OutOfRangeError

SUPERCOOLED_DENSITY_FACTOR: Final = 1.12  # how far past saturation the fit was made
# near and above the critical temperature the 65 bar limit is reached below this density
_NEAR_CRITICAL_K: Final = 297.5
_HIGHEST_DENSITY_KG_M3: Final = 260.0


def highest_vapor_density_kg_m3(temperature_k: float) -> float:
    """Return the density [kg/m3] up to which vapour at `temperature_k` is described."""
    if temperature_k >= _NEAR_CRITICAL_K:
        return _HIGHEST_DENSITY_KG_M3
    return SUPERCOOLED_DENSITY_FACTOR * kernels.vapor_density_saturated_kg_m3(temperature_k)


def vapor_density_kg_m3(pressure_pa: float, temperature_k: float) -> float:
    """Return the density [kg/m3] of vapour at `pressure_pa` and `temperature_k`.

    Raises OutOfRangeError outside the module's range and where the vapour would have condensed.
    """
    ranges.VAPOR_TEMPERATURE.require(temperature_k, "vapor_density_kg_m3")
    ranges.VAPOR_PRESSURE.require(pressure_pa, "vapor_density_kg_m3")
    if pressure_pa == 0.0:
        return 0.0
    density = kernels.vapor_density_kg_m3(pressure_pa, temperature_k)
    if not density <= highest_vapor_density_kg_m3(temperature_k):
        equilibrium = kernels.equilibrium_pressure_pa(min(temperature_k, kernels.CRITICAL_T))
        raise OutOfRangeError(
            f"vapour at {temperature_k:.8g} K condenses at {equilibrium:.8g} Pa; "
            f"a pressure of {pressure_pa:.8g} Pa is not vapour"
        )
    return density


def _checked(kernel: Callable[[float, float], float], doc: str) -> Callable[[float, float], float]:
    name = kernel.__name__

    def guarded(density_kg_m3: float, temperature_k: float) -> float:
        ranges.VAPOR_TEMPERATURE.require(temperature_k, name)
        highest = highest_vapor_density_kg_m3(temperature_k)
        if not 0.0 < density_kg_m3 <= highest:
            raise OutOfRangeError(
                f"{name} at {temperature_k:.8g} K needs a density above 0 and up to "
                f"{highest:.6g} kg/m3, not {density_kg_m3:.6g}"
            )
        ranges.VAPOR_PRESSURE.require(kernels.vapor_pressure_pa(density_kg_m3, temperature_k), name)
        return kernel(density_kg_m3, temperature_k)

    guarded.__name__ = guarded.__qualname__ = name
    guarded.__doc__ = f"{doc} Of density [kg/m3] and temperature [K]; OutOfRangeError outside."
    return guarded


vapor_pressure_pa = _checked(kernels.vapor_pressure_pa, "Pressure of vapour [Pa].")
vapor_enthalpy_j_kg = _checked(kernels.vapor_enthalpy_j_kg, "Enthalpy of vapour [J/kg].")
vapor_internal_energy_j_kg = _checked(
    kernels.vapor_internal_energy_j_kg, "Internal energy of vapour [J/kg]."
)
vapor_entropy_j_kg_k = _checked(kernels.vapor_entropy_j_kg_k, "Entropy of vapour [J/kgK].")
vapor_cv_j_kg_k = _checked(kernels.vapor_cv_j_kg_k, "Heat capacity at constant volume [J/kgK].")
vapor_cp_j_kg_k = _checked(kernels.vapor_cp_j_kg_k, "Heat capacity at constant pressure [J/kgK].")
vapor_pressure_slope_pa_per_k = _checked(
    kernels.vapor_pressure_by_temperature, "Pressure rise per kelvin in a closed volume [Pa/K]."
)


def compressibility(pressure_pa: float, temperature_k: float) -> float:
    """Return p/(rho R T) of vapour; OutOfRangeError as `vapor_density_kg_m3`."""
    density = vapor_density_kg_m3(pressure_pa, temperature_k)
    if density == 0.0:
        return 1.0
    return pressure_pa / (density * kernels.GAS_CONSTANT * temperature_k)
