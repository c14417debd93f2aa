"""Units at the edge. Inside everything is SI and absolute: pascal, kelvin, kilogram, second.

Sources: the pound per square inch, 6894.757293168 Pa, from the international pound, inch and
standard gravity (exact by definition); micron of mercury 133.322387415e-3 Pa (NIST SP 811).
"""

from dataclasses import dataclass
from typing import Final

STANDARD_ATMOSPHERE_PA: Final = 101_325.0  # ISO 2533
PSI_PA: Final = 6894.757293168
MICRON_PA: Final = 0.133322387415
ZERO_CELSIUS_K: Final = 273.15


@dataclass(frozen=True, slots=True)
class PressureUnit:
    """A pressure unit with its datum: name, pascals per unit, gauge or absolute."""

    name: str
    pascals: float
    gauge: bool

    def to_absolute_pa(self, value: float, ambient_pressure_pa: float) -> float:
        """Return the absolute pressure [Pa] of `value` in this unit."""
        return value * self.pascals + (ambient_pressure_pa if self.gauge else 0.0)

    def from_absolute_pa(self, pressure_pa: float, ambient_pressure_pa: float) -> float:
        """Return `pressure_pa` [Pa, absolute] in this unit."""
        return (pressure_pa - (ambient_pressure_pa if self.gauge else 0.0)) / self.pascals


PRESSURE_UNITS: Final[dict[str, PressureUnit]] = {
    unit.name: unit
    for unit in (
        PressureUnit("bar_g", 1e5, True),
        PressureUnit("bar_a", 1e5, False),
        PressureUnit("psig", PSI_PA, True),
        PressureUnit("psia", PSI_PA, False),
        PressureUnit("kPa_g", 1e3, True),
        PressureUnit("kPa_a", 1e3, False),
        PressureUnit("MPa_g", 1e6, True),
        PressureUnit("MPa_a", 1e6, False),
    )
}

VACUUM_UNITS_PA: Final[dict[str, float]] = {"micron": MICRON_PA, "Pa_a": 1.0, "mbar_a": 100.0}

TEMPERATURE_UNITS: Final = ("degC", "degF", "K")


def temperature_to_k(value: float, unit: str) -> float:
    """Return the temperature [K] of `value` in degC, degF or K.

    >>> temperature_to_k(-40.0, "degF")
    233.15
    """
    if unit == "degC":
        return value + ZERO_CELSIUS_K
    if unit == "degF":
        return (value - 32.0) / 1.8 + ZERO_CELSIUS_K
    if unit == "K":
        return value
    raise ValueError(f"temperature unit {unit!r}: use one of {', '.join(TEMPERATURE_UNITS)}")


def temperature_from_k(temperature_k: float, unit: str) -> float:
    """Return `temperature_k` [K] in degC, degF or K."""
    if unit == "degC":
        return temperature_k - ZERO_CELSIUS_K
    if unit == "degF":
        return (temperature_k - ZERO_CELSIUS_K) * 1.8 + 32.0
    if unit == "K":
        return temperature_k
    raise ValueError(f"temperature unit {unit!r}: use one of {', '.join(TEMPERATURE_UNITS)}")
