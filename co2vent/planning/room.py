"""What the vented CO2 does in a room: mixed, as a floor layer, with ventilation, and clearing."""

from math import exp, log
from typing import Final

from co2vent.co2 import vapor_density_kg_m3
from co2vent.planning.exposure import AMBIENT_AIR_PPM

ROOM_TEMPERATURE_K: Final = 293.15
# A floor layer: cold CO2 is up to 2.3 times as heavy as air and pools. Depth 0.3 to 1 m and a
# ceiling at 3 m: proposals, no source.
FLOOR_LAYER_M: Final = 0.5
CEILING_M: Final = 3.0
# Poorly mixed rooms clear 3 to 10 times slower than their air changes say (from memory).
POOR_MIXING_FACTOR: Final = 3.0
_WHOLE_PPM: Final = 1e6


def gas_volume_m3(mass_kg: float, ambient_pressure_pa: float) -> float:
    """Return the volume of CO2 at 20 degC and ambient pressure [m3]: 0.544 m3/kg at sea level."""
    return mass_kg / vapor_density_kg_m3(ambient_pressure_pa, ROOM_TEMPERATURE_K)


def mixed_rise_ppm(mass_kg: float, room_m3: float, ambient_pressure_pa: float) -> float:
    """Return the rise over ambient air when all of it mixes evenly, no ventilation [ppm]."""
    return min(_WHOLE_PPM, 1e6 * gas_volume_m3(mass_kg, ambient_pressure_pa) / room_m3)


def floor_layer_rise_ppm(mass_kg: float, room_m3: float, ambient_pressure_pa: float) -> float:
    """Return the rise when all of it stays in the lowest 0.5 m of a 3 m high room [ppm]."""
    layer = room_m3 * FLOOR_LAYER_M / CEILING_M
    return mixed_rise_ppm(mass_kg, layer, ambient_pressure_pa)


def ventilated_rise_ppm(
    mass_kg: float,
    duration_s: float,
    room_m3: float,
    air_changes_per_hour: float,
    ambient_pressure_pa: float,
) -> float:
    """Return the highest rise while `mass_kg` is vented evenly over `duration_s` [ppm]."""
    turned_over = air_changes_per_hour * duration_s / 3600.0
    still = mixed_rise_ppm(mass_kg, room_m3, ambient_pressure_pa)
    if turned_over < 1e-9:
        return still
    rise = 1e6 * gas_volume_m3(mass_kg, ambient_pressure_pa) / room_m3
    return min(_WHOLE_PPM, rise * (1.0 - exp(-turned_over)) / turned_over)


def ventilation_m3_per_h(flow_kg_s: float, limit_ppm: float, ambient_pressure_pa: float) -> float:
    """Return the fresh air that keeps a steady vent at `limit_ppm` [m3/h], evenly mixed."""
    gas = gas_volume_m3(flow_kg_s * 3600.0, ambient_pressure_pa)
    return 1e6 * gas / (limit_ppm - AMBIENT_AIR_PPM)


def clearing_time_s(
    rise_ppm: float, limit_ppm: float, air_changes_per_hour: float, mixing_factor: float = 1.0
) -> float | None:
    """Return how long until the room is at `limit_ppm` again [s]; None without air changes."""
    allowed = limit_ppm - AMBIENT_AIR_PPM
    if rise_ppm <= allowed:
        return 0.0
    if air_changes_per_hour <= 0.0:
        return None
    return 3600.0 * mixing_factor * log(rise_ppm / allowed) / air_changes_per_hour
