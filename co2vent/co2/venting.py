"""Vapour leaving through an opening."""

from co2vent.co2 import kernels, ranges
from co2vent.co2.vapor import vapor_density_kg_m3


def vapor_mass_flux_kg_s_m2(
    pressure_pa: float, temperature_k: float, back_pressure_pa: float
) -> float:
    """Return the mass flux [kg/s m2] of vapour through an ideal nozzle; multiply by Cd and area.

    Choked or subcritical perfect-gas nozzle with the thin gas's heat-capacity ratio and the real
    inlet density (the sizing form of API 520); within 1 % of real-gas isentropic flow, while
    condensation in the throat can take another 5 to 11 % off. 0 when the back pressure is not
    lower. Raises OutOfRangeError as `vapor_density_kg_m3`.
    """
    ranges.VAPOR_PRESSURE.require(back_pressure_pa, "vapor_mass_flux_kg_s_m2")
    vapor_density_kg_m3(pressure_pa, temperature_k)
    return kernels.vapor_mass_flux_kg_s_m2(pressure_pa, temperature_k, back_pressure_pa)
