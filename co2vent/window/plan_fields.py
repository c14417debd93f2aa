"""What is typed into the plan page, in the chosen units, as an input of the planner. Pure."""

from collections.abc import Mapping
from typing import Final

from PySide6.QtCore import QLocale

from co2vent.errors import RefusedInputError
from co2vent.planning.shapes import PlanInput
from co2vent.readings.metadata import build_setup
from co2vent.units import PRESSURE_UNITS, ZERO_CELSIUS_K, temperature_from_k, temperature_to_k
from co2vent.window.text import UnitChoice, temperature_of, unit_words
from co2vent.window.words import translate

FIELDS: Final = (
    "volume_l",
    "temperature",
    "pressure",
    "liquid_percent",
    "altitude_m",
    "gauge_full_scale",
    "gauge_accuracy_percent",
    "vent_bore_mm",
    "ambient",
    "relief",
    "room_m3",
    "air_changes_per_hour",
)
PRESSURES: Final = ("pressure", "gauge_full_scale", "relief")  # gauge, in the chosen unit
TEMPERATURES: Final = ("temperature", "ambient")
EXAMPLES: Final = {  # in bar and degC
    "volume_l": "14.5",
    "temperature": "-20",
    "liquid_percent": "30",
    "altitude_m": "120",
    "gauge_full_scale": "60",
    "gauge_accuracy_percent": "0.5",
    "vent_bore_mm": "6",
    "ambient": "20",
}


def plan_field_words(name: str, units: UnitChoice) -> str:
    """Return the label of a field."""
    unit = unit_words(units.pressure if name in PRESSURES else units.temperature)
    return {
        "volume_l": translate("Plan", "Volume, litres"),
        "temperature": translate("Plan", "Charge, {unit}"),
        "pressure": translate("Plan", "or charge, {unit}"),
        "liquid_percent": translate("Plan", "Liquid, % of volume"),
        "altitude_m": translate("Plan", "Altitude, m"),
        "gauge_full_scale": translate("Plan", "Gauge range, {unit}"),
        "gauge_accuracy_percent": translate("Plan", "Gauge accuracy, %"),
        "vent_bore_mm": translate("Plan", "Vent bore, mm"),
        "ambient": translate("Plan", "Surroundings, {unit}"),
        "relief": translate("Plan", "Relief setting, {unit}"),
        "room_m3": translate("Plan", "Room, m³"),
        "air_changes_per_hour": translate("Plan", "Air changes an hour"),
    }[name].format(unit=unit)


def example_words(name: str, units: UnitChoice) -> str:
    """Return what may stand in a field, as it is written here; empty where there is no example."""
    words = EXAMPLES.get(name, "").replace(".", QLocale().decimalPoint())
    return converted(name, words, "bar_g", units.pressure)


def converted(name: str, words: str, before: str, after: str) -> str:
    """Return what is typed in a field in other units; what is no number stays as it is.

    `before` and `after` are pressure units: temperatures go with them.
    """
    if before == after or name not in PRESSURES + TEMPERATURES:
        return words
    try:
        value = _number(name, words, UnitChoice(before))
    except RefusedInputError:
        return words
    if name in PRESSURES:
        value *= PRESSURE_UNITS[before].pascals / PRESSURE_UNITS[after].pascals
    else:
        kelvin = temperature_to_k(value, temperature_of(before))
        value = temperature_from_k(kelvin, temperature_of(after))
    digits = f"{value:z.{2 if after == 'bar_g' else 1}f}".rstrip("0").rstrip(".")
    return digits.replace(".", QLocale().decimalPoint())


def plan_input_from(typed: Mapping[str, str], units: UnitChoice) -> PlanInput:
    """Return the planner's input, from what is typed in the chosen units.

    Raises:
        RefusedInputError: something that is no number, or no volume.
    """
    values = {name: _number(name, words, units) for name, words in typed.items() if words.strip()}
    if "volume_l" not in values:
        raise RefusedInputError(
            translate(
                "Plan", "Give the volume of the section, and the charge's {warmth} or {pressure}."
            ).format(warmth=unit_words(units.temperature), pressure=unit_words(units.pressure))
        )
    full_scale = "60 bar_g"
    if "gauge_full_scale" in values:
        full_scale = f"{values['gauge_full_scale']!r} {units.pressure}"
    pascals = PRESSURE_UNITS[units.pressure].pascals
    metadata = {
        "gauge_full_scale": full_scale,
        "gauge_accuracy_percent": repr(values.get("gauge_accuracy_percent", 0.5)),
    }
    if "altitude_m" in values:
        metadata["altitude_m"] = repr(values["altitude_m"])
    return PlanInput(
        volume_m3=values["volume_l"] / 1e3,
        temperature_k=_kelvin(values.get("temperature"), units),
        pressure_pa_gauge=_times(values.get("pressure"), pascals),
        liquid_fraction=_times(values.get("liquid_percent"), 0.01),
        setup=build_setup(metadata),
        vent_bore_m=values.get("vent_bore_mm", 6.0) / 1e3,
        ambient_k=_kelvin(values.get("ambient"), units) or ZERO_CELSIUS_K + 20.0,
        relief_pa_gauge=_times(values.get("relief"), pascals),
        room_m3=values.get("room_m3"),
        air_changes_per_hour=values.get("air_changes_per_hour"),
        assumed=tuple(
            translate("Plan", "{field} not given: {value} is assumed.").format(
                field=plan_field_words(name, units), value=example_words(name, units)
            )
            for name in ("gauge_full_scale", "gauge_accuracy_percent", "vent_bore_mm")
            if name not in values
        ),
    )


def _number(name: str, words: str, units: UnitChoice) -> float:
    try:
        value = float(words.strip().replace("−", "-").replace(",", "."))
    except ValueError:
        value = float("nan")
    if not abs(value) < 1e9:
        raise RefusedInputError(
            translate("Plan", "{field}: {words} is not a number.").format(
                field=plan_field_words(name, units), words=words.strip()
            )
        )
    return value


def _kelvin(value: float | None, units: UnitChoice) -> float | None:
    return None if value is None else temperature_to_k(value, units.temperature)


def _times(value: float | None, factor: float) -> float | None:
    return None if value is None else value * factor
