"""Numbers in sentences: pressures, slopes and masses in the units that the source speaks."""

from typing import Final

from co2vent.readings.reading import Setup
from co2vent.sentence import Figure
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


#: A fall from this on [Pa/min] is said in bar: thousands of mbar are no figure.
BAR_FROM_PA: Final = 1e5


def pressure_text(pressure_pa: float, setup: Setup) -> Figure:
    """Return an absolute pressure in the source's unit, unit and datum said."""
    return _figure("pressure", pressure_pa, setup)


def difference_text(difference_pa: float, setup: Setup) -> Figure:
    """Return a pressure difference: psi where the source speaks psi, else bar."""
    return _figure("difference", difference_pa, setup)


def slope_text(slope_pa_per_s: float, setup: Setup) -> Figure:
    """Return a slope as psi/min or mbar/min."""
    return _figure("slope", slope_pa_per_s, setup)


def fall_text(fall_pa_per_s: float, setup: Setup) -> Figure:
    """Return how fast a pressure falls, as a slope; bars a minute from one on."""
    per_minute = 60.0 * fall_pa_per_s
    if setup.pressure_unit.startswith("psi") or per_minute < BAR_FROM_PA:
        return slope_text(fall_pa_per_s, setup)
    return Figure(f"{per_minute / 1e5:.2f} bar/min", "slope", fall_pa_per_s)


def change_text(change_pa: float, setup: Setup) -> Figure:
    """Return a small change of pressure with its sign: psi or mbar."""
    return _figure("change", change_pa, setup)


def loss_text(loss_pa_per_s: float, setup: Setup) -> Figure:
    """Return a slow loss of pressure: psi/h or mbar/h."""
    return _figure("loss", loss_pa_per_s, setup)


def temperature_text(temperature_k: float, setup: Setup) -> Figure:
    """Return a temperature in the source's unit."""
    return _figure("temperature", temperature_k, setup)


def kelvin_text(difference_k: float) -> Figure:
    """Return a temperature difference in whole kelvins, whatever the source's unit."""
    return Figure(f"{difference_k:.0f} K", "kelvin", difference_k)


def warming_text(change_k: float) -> Figure:
    """Return a small change of temperature with its sign, in kelvin."""
    return Figure(f"{change_k:+.1f} K", "warming", change_k)


def duration_text(seconds: float) -> str:
    """Return a duration as s, min or h."""
    if seconds < 100:
        return f"{seconds:.0f} s"
    if seconds < 5400:
        return f"{seconds / 60:.0f} min"
    return f"{seconds / 3600:.1f} h"


def _figure(kind: str, si: float, setup: Setup) -> Figure:
    ambient_pa = setup.ambient_pressure_pa
    text = _text(kind, si, ambient_pa, setup.pressure_unit, setup.temperature_unit)
    return Figure(text, kind, si, ambient_pa)


def in_units(figure: Figure, pressure_unit: str, temperature_unit: str) -> str:
    """Say a figure in other units than its source's."""
    return _text(figure.kind, figure.si, figure.ambient_pa, pressure_unit, temperature_unit)


def _text(
    kind: str, si: float, ambient_pa: float, pressure_unit: str, temperature_unit: str
) -> str:
    psi = pressure_unit.startswith("psi")
    if kind == "pressure":
        unit = PRESSURE_UNITS[pressure_unit]
        value = unit.from_absolute_pa(si, ambient_pa)
        return f"{value:z.{DECIMALS[unit.name]}f} {LABELS[unit.name]}"
    if kind == "difference":
        return f"{si / PSI_PA:z.1f} psi" if psi else f"{si / 1e5:z.2f} bar"
    if kind == "slope":
        return f"{si * 60.0 / PSI_PA:z.2f} psi/min" if psi else f"{si * 0.6:z.0f} mbar/min"
    if kind == "change":
        return f"{si / PSI_PA:+z.2f} psi" if psi else f"{si / 100.0:+z.0f} mbar"
    if kind == "loss":
        hourly = si * 3600.0
        return f"{hourly / PSI_PA:z.2f} psi/h" if psi else f"{hourly / 100.0:z.0f} mbar/h"
    if kind in ("kelvin", "warming"):
        shown = "+z.1f" if kind == "warming" else "z.0f"
        fahrenheit = temperature_unit == "degF"
        return f"{si * 1.8:{shown}} degF" if fahrenheit else f"{si:{shown}} K"
    unit_k = "degF" if temperature_unit == "degF" else "degC"
    return f"{temperature_from_k(si, unit_k):z.0f} {unit_k}"
