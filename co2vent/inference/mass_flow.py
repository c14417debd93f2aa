"""The mass flow behind a rise: the same flow raises the pressure of a denser gas less."""

from math import isfinite

from co2vent.co2 import vapor_density_kg_m3, vapor_pressure_pa
from co2vent.errors import OutOfRangeError
from co2vent.inference.lines import saturated_k

GAS_K = 248.15  # gas of a closed cold section without a clamp; 20 K change a ratio by under 2 %
HOTTEST_K = 310.0


def mass_slope(pressure_pa: float, slope: float, line_k: float) -> float | None:
    """Return the flow per volume [kg/s/m3] behind a slope [Pa/s]; `None` out of range."""
    try:
        warm = saturated_k(pressure_pa) + 4.0
        gas_k = min(max(line_k if isfinite(line_k) else GAS_K, warm), HOTTEST_K)
        density = vapor_density_kg_m3(pressure_pa, gas_k)
        steeper = vapor_pressure_pa(density * 1.01, gas_k) - vapor_pressure_pa(
            density * 0.99, gas_k
        )
    except OutOfRangeError:
        return None
    return slope * 0.02 * density / steeper
