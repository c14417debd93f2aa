"""What is in the section before the vent: masses and volumes at equilibrium."""

from dataclasses import dataclass
from enum import StrEnum

from co2vent import co2


class Condensed(StrEnum):
    """What shares the section with the vapour."""

    LIQUID = "liquid"
    DRY_ICE = "dry_ice"


@dataclass(frozen=True, slots=True)
class ChargeState:
    """Vapour over liquid, or over dry ice below the triple point. SI, absolute."""

    volume_m3: float
    temperature_k: float
    pressure_pa: float
    condensed: Condensed
    condensed_kg: float
    vapor_kg: float

    @property
    def total_kg(self) -> float:
        """Everything in the section [kg]."""
        return self.condensed_kg + self.vapor_kg

    @property
    def liquid_kg(self) -> float:
        """Liquid [kg]; 0 below the triple point."""
        return self.condensed_kg if self.condensed is Condensed.LIQUID else 0.0

    @property
    def solid_kg(self) -> float:
        """Dry ice [kg]; 0 from the triple point up."""
        return self.condensed_kg if self.condensed is Condensed.DRY_ICE else 0.0


def charge_at(volume_m3: float, temperature_k: float, condensed_fraction: float) -> ChargeState:
    """Return the equilibrium charge of a section.

    `condensed_fraction`: share of the volume, 0 to 1, that is liquid (dry ice below the triple
    temperature). Raises OutOfRangeError outside 154 to 304.1282 K.
    """
    pressure = co2.equilibrium_pressure_pa(temperature_k)
    liquid = temperature_k >= co2.TRIPLE_TEMPERATURE_K
    density = (
        co2.liquid_density_kg_m3(temperature_k)
        if liquid
        else co2.solid_density_kg_m3(temperature_k)
    )
    vapor = co2.vapor_density_saturated_kg_m3(temperature_k)
    return ChargeState(
        volume_m3=volume_m3,
        temperature_k=temperature_k,
        pressure_pa=pressure,
        condensed=Condensed.LIQUID if liquid else Condensed.DRY_ICE,
        condensed_kg=volume_m3 * condensed_fraction * density,
        vapor_kg=volume_m3 * (1.0 - condensed_fraction) * vapor,
    )
