"""How much has left the section: what two pressures and a volume say for certain."""

from co2vent.co2 import (
    CRITICAL_TEMPERATURE_K,
    TRIPLE_TEMPERATURE_K,
    equilibrium_temperature_k,
    liquid_density_kg_m3,
    saturation_temperature_k,
    vapor_density_kg_m3,
    vapor_density_saturated_kg_m3,
)
from co2vent.errors import OutOfRangeError
from co2vent.inference.outcome import Bounds, HoldAssessment
from co2vent.readings.reading import Reading, Setup

WARMEST_K = 313.15  # no section of a cold plant is warmer (40 degC in the sun)
HIGHEST_PA = 7.3e6  # the saturation line ends there


def gas_density_bounds(pressure_pa: float, warmest_k: float = WARMEST_K) -> tuple[float, float]:
    """Return the least and greatest density [kg/m3] that vapour can have at a pressure [Pa]."""
    least = vapor_density_kg_m3(pressure_pa, warmest_k)
    coldest_k = equilibrium_temperature_k(pressure_pa)
    if coldest_k >= TRIPLE_TEMPERATURE_K:
        return least, vapor_density_saturated_kg_m3(min(coldest_k, CRITICAL_TEMPERATURE_K - 0.1))
    return least, vapor_density_kg_m3(pressure_pa, coldest_k)


def mass_vented(
    setup: Setup,
    first_pa: float | None,
    latest: Reading | None,
    vented: bool,
    holds: tuple[HoldAssessment, ...],
    estimate_kg: float | None = None,
) -> Bounds | None:
    """Bound the mass that has left [kg]; `None` without a volume or before the vent.

    Lower: the section held only vapour at its warmest. Upper: it was full of liquid. The estimate
    is the outflow's (`outflow.py`), kept within them; there is none where nothing tells the flow.
    """
    volume = setup.section_volume_m3
    if volume is None or first_pa is None or latest is None:
        return None
    if not vented:
        return Bounds(0.0, 0.0, 0.0)
    try:
        least_first, _ = gas_density_bounds(first_pa)
        saturated_k = saturation_temperature_k(min(first_pa, HIGHEST_PA))
        most_first = liquid_density_kg_m3(saturated_k)
        least_now, most_now = gas_density_bounds(latest.pressure_pa)
    except OutOfRangeError:
        return None
    last = next((hold for hold in reversed(holds) if hold.liquid_kg is not None), None)
    left_least = (last.liquid_kg.lower or 0.0) if last and last.liquid_kg else 0.0
    left_ice = (last.dry_ice_kg.lower or 0.0) if last and last.dry_ice_kg else 0.0
    lower = max(volume * (least_first - most_now), 0.0)
    upper = max(volume * (most_first - least_now) - left_least - left_ice, lower)
    if estimate_kg is not None:
        estimate_kg = min(max(estimate_kg, lower), upper)
    return Bounds(estimate_kg, lower, upper)
