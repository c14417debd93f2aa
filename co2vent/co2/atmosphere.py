"""Ambient pressure from altitude: ISO 2533 standard atmosphere, the layer below 11 km."""

from typing import Final

from co2vent.co2.ranges import Range
from co2vent.units import STANDARD_ATMOSPHERE_PA

ALTITUDE: Final = Range("altitude", -2000.0, 11_000.0, "m")  # the layer with the constant gradient
_SEA_LEVEL_TEMPERATURE_K: Final = 288.15
_GRADIENT_K_PER_M: Final = 0.0065
_EXPONENT: Final = 5.25588  # g / (R gradient), ISO 2533


def ambient_pressure_pa(altitude_m: float) -> float:
    """Return the standard ambient pressure [Pa] at `altitude_m` (-2000 to 11 000 m).

    Weather moves the real one by some +-3 kPa. OutOfRangeError outside the range and for NaN.
    """
    ALTITUDE.require(altitude_m, "ambient_pressure_pa")
    ratio = 1.0 - _GRADIENT_K_PER_M * altitude_m / _SEA_LEVEL_TEMPERATURE_K
    return float(STANDARD_ATMOSPHERE_PA * ratio**_EXPONENT)
