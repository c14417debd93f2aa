"""The liquid of a hold as a share of the section's volume, for drawing. Pure."""

from co2vent.co2 import TRIPLE_PRESSURE_PA, liquid_density_kg_m3, saturation_temperature_k
from co2vent.errors import OutOfRangeError
from co2vent.inference.outcome import Bounds, HoldAssessment
from co2vent.readings.reading import Setup


def liquid_share(hold: HoldAssessment | None, setup: Setup) -> Bounds | None:
    """Return the liquid's volume share with its bounds, or None where it cannot be known.

    The mass is turned into a volume with the density of boiling liquid at the hold's end pressure.
    """
    if hold is None:
        return None
    if hold.liquid_volume_fraction is not None:
        return hold.liquid_volume_fraction
    mass = hold.liquid_kg
    if mass is None or not setup.section_volume_m3:
        return None
    try:
        temperature_k = saturation_temperature_k(max(hold.end_pressure_pa, TRIPLE_PRESSURE_PA))
        full_kg = setup.section_volume_m3 * liquid_density_kg_m3(temperature_k)
    except OutOfRangeError:
        return None

    def share(value_kg: float | None) -> float | None:
        return None if value_kg is None else min(1.0, value_kg / full_kg)

    return Bounds(share(mass.estimate), share(mass.lower), share(mass.upper), mass.confidence)
