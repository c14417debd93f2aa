"""Phase lines for any reading a gauge can give: held at the ends of their range, never refused."""

from co2vent.co2 import (
    TRIPLE_PRESSURE_PA,
    TRIPLE_TEMPERATURE_K,
    saturation_temperature_k,
    sublimation_temperature_k,
)

MOST_PA = 7.3e6  # just under the critical point
LEAST_SUBLIMATION_PA = 1.0e4


def saturated_k(pressure_pa: float) -> float:
    """Return the saturation temperature [K], at the triple and near the critical point held."""
    if pressure_pa <= TRIPLE_PRESSURE_PA:
        return TRIPLE_TEMPERATURE_K
    return saturation_temperature_k(min(pressure_pa, MOST_PA))


def snow_k(pressure_pa: float) -> float:
    """Return the temperature [K] of dry ice under its own vapour at `pressure_pa`."""
    return sublimation_temperature_k(
        min(max(pressure_pa, LEAST_SUBLIMATION_PA), TRIPLE_PRESSURE_PA)
    )
