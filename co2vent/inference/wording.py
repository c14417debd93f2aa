"""Numbers in sentences: pressures, slopes and masses in the units that the source speaks."""

from co2vent.readings.reading import Setup
from co2vent.units import PRESSURE_UNITS, PSI_PA, temperature_from_k

LABELS = {
    "bar_g": "bar g",
    "bar_a": "bar a",
    "psig": "psig",
    "psia": "psia",
    "kPa_g": "kPa g",
    "kPa_a": "kPa a",
    "MPa_g": "MPa g",
    "MPa_a": "MPa a",
}
DECIMALS = {
    "bar_g": 2,
    "bar_a": 2,
    "psig": 1,
    "psia": 1,
    "kPa_g": 0,
    "kPa_a": 0,
    "MPa_g": 3,
    "MPa_a": 3,
}


def pressure_text(pressure_pa: float, setup: Setup) -> str:
    """Return an absolute pressure in the source's unit, unit and datum said."""
    unit = PRESSURE_UNITS[setup.pressure_unit]
    value = unit.from_absolute_pa(pressure_pa, setup.ambient_pressure_pa)
    return f"{value:z.{DECIMALS[unit.name]}f} {LABELS[unit.name]}"


def difference_text(difference_pa: float, setup: Setup) -> str:
    """Return a pressure difference: psi where the source speaks psi, else bar."""
    if setup.pressure_unit.startswith("psi"):
        return f"{difference_pa / PSI_PA:z.1f} psi"
    return f"{difference_pa / 1e5:z.2f} bar"


def slope_text(slope_pa_per_s: float, setup: Setup) -> str:
    """Return a slope as psi/min or mbar/min."""
    if setup.pressure_unit.startswith("psi"):
        return f"{slope_pa_per_s * 60.0 / PSI_PA:z.2f} psi/min"
    return f"{slope_pa_per_s * 0.6:z.0f} mbar/min"


def mass_text(mass_kg: float) -> str:
    """Return a mass in g or kg, two figures."""
    if mass_kg >= 1.0:
        return f"{mass_kg:.2g} kg"
    grams = mass_kg * 1e3
    return f"{grams:.2g} g" if grams < 100 else f"{grams:.0f} g"


def temperature_text(temperature_k: float, setup: Setup) -> str:
    """Return a temperature in the source's unit."""
    unit = "degF" if setup.temperature_unit == "degF" else "degC"
    return f"{temperature_from_k(temperature_k, unit):z.0f} {unit}"


def duration_text(seconds: float) -> str:
    """Return a duration as s, min or h."""
    if seconds < 100:
        return f"{seconds:.0f} s"
    if seconds < 5400:
        return f"{seconds / 60:.0f} min"
    return f"{seconds / 3600:.1f} h"
