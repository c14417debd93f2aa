"""A section full of liquid, no vapour space: the pressure climbs several bar for each kelvin.

Isochores from saturation up to 200 bar, rigid walls (a real pipe stretches and takes a few per
cent off). Against the Span & Wagner equation: pressure within 0.6 bar, energy 1 kJ/kg.
"""

from co2vent.co2 import kernels, ranges
from co2vent.co2.ranges import Range, checked
from co2vent.errors import OutOfRangeError

liquid_full_pressure_slope_pa_per_k = checked(
    kernels.liquid_full_pressure_slope_pa_per_k,
    ranges.LIQUID_FULL,
    "Pressure rise per kelvin of liquid that has just filled its section [Pa/K].",
)

_DENSITY = Range(
    "density",
    kernels.liquid_density_kg_m3(ranges.HIGHEST_LIQUID_FULL_TEMPERATURE_K),
    kernels.liquid_density_kg_m3(kernels.TRIPLE_T),
    "kg/m3",
)
# the fitted inverse of the saturated density is good to this; used where a bound is compared
_TEMPERATURE_TOLERANCE_K = 0.005


def liquid_full_temperature_k(density_kg_m3: float) -> float:
    """Return the temperature [K] at which a section of this mean density is liquid-full."""
    _DENSITY.require(density_kg_m3, "liquid_full_temperature_k")
    return kernels.liquid_full_temperature_k(density_kg_m3)


def liquid_pressure_pa(density_kg_m3: float, temperature_k: float) -> float:
    """Return the pressure [Pa] of liquid that fills its section.

    Raises OutOfRangeError below the liquid-full temperature (there is vapour then) and past
    200 bar.
    """
    start = liquid_full_temperature_k(density_kg_m3)
    if not temperature_k >= start - _TEMPERATURE_TOLERANCE_K:
        raise OutOfRangeError(
            f"at {temperature_k:.8g} K a section with {density_kg_m3:.6g} kg/m3 is not "
            f"liquid-full; it fills at {start:.6g} K"
        )
    pressure = kernels.liquid_pressure_pa(density_kg_m3, temperature_k)
    if not pressure <= ranges.HIGHEST_LIQUID_FULL_PRESSURE_PA:
        raise OutOfRangeError(
            f"liquid of {density_kg_m3:.6g} kg/m3 at {temperature_k:.8g} K passes "
            f"{ranges.HIGHEST_LIQUID_FULL_PRESSURE_PA:.3g} Pa, the highest described"
        )
    return pressure


def liquid_internal_energy_j_kg(density_kg_m3: float, temperature_k: float) -> float:
    """Return the internal energy [J/kg] of liquid that fills its section; range as pressure."""
    liquid_pressure_pa(density_kg_m3, temperature_k)
    return kernels.liquid_internal_energy_j_kg(density_kg_m3, temperature_k)


def kelvin_to_pressure(temperature_k: float, pressure_pa: float) -> float:
    """Return the warming [K] from liquid-full at `temperature_k` until `pressure_pa` is reached.

    0 where the saturation pressure is already there. Rigid section without any vapour space.
    Raises OutOfRangeError outside 216.592 to 298.15 K and past 200 bar.
    """
    ranges.LIQUID_FULL.require(temperature_k, "kelvin_to_pressure")
    start = kernels.saturation_pressure_pa(temperature_k)
    Range("pressure", 0.0, ranges.HIGHEST_LIQUID_FULL_PRESSURE_PA, "Pa").require(
        pressure_pa, "kelvin_to_pressure"
    )
    if pressure_pa <= start:
        return 0.0
    density = kernels.liquid_density_kg_m3(temperature_k)
    base = kernels.liquid_full_temperature_k(density)
    low, high = 0.0, (pressure_pa - start) / 2e5  # no isochore is flatter than 2 bar/K
    while high - low > 1e-6:
        middle = 0.5 * (low + high)
        if kernels.liquid_pressure_pa(density, base + middle) < pressure_pa:
            low = middle
        else:
            high = middle
    return 0.5 * (low + high)
