"""A number of the plan with its unit, as text, that remembers what was reckoned.

Commands write it as it is. A screen whose person reads other units can say it in those.
"""

from enum import StrEnum
from typing import SupportsIndex


class Kind(StrEnum):
    """What a quantity is, and what its value is in."""

    PRESSURE = "pressure"  # Pa, gauge
    ABSOLUTE = "absolute"  # Pa, absolute
    DIFFERENCE = "difference"  # Pa
    DIFFERENCE_DIGITS = "difference digits"  # Pa; the unit stands elsewhere in the sentence
    PRESSURE_PER_KELVIN = "pressure per kelvin"  # Pa/K
    TEMPERATURE = "temperature"  # K
    WARMING = "warming"  # K
    MASS = "mass"  # kg
    MASS_UNIT = "mass unit"  # no number
    VOLUME_PER_MASS = "volume per mass"  # m3/kg


class Quantity(str):
    """The text of a quantity, with its kind and its value in SI."""

    __slots__ = ("kind", "si")
    kind: Kind
    si: float

    def __new__(cls, text: str, kind: Kind, si: float) -> "Quantity":
        """Give `text` what it says."""
        quantity = super().__new__(cls, text)
        quantity.kind = kind
        quantity.si = si
        return quantity

    def __reduce_ex__(self, _protocol: SupportsIndex) -> tuple[object, tuple[str, Kind, float]]:
        # a str would be built again from its text alone
        return Quantity, (str(self), self.kind, self.si)


def mass_quantity(kilograms: float, digits: int = 3) -> Quantity:
    """Return a mass in kg, or g below 100 g, in so many digits."""
    small = kilograms < 0.1
    text = f"{kilograms * 1e3:.{digits}g} g" if small else f"{kilograms:.{digits}g} kg"
    return Quantity(text, Kind.MASS, kilograms)
