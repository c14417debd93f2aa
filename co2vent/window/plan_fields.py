"""What is typed into the plan page, as an input of the planner. Pure."""

from collections.abc import Mapping
from typing import Final

from PySide6.QtCore import QLocale

from co2vent.errors import RefusedInputError
from co2vent.planning.shapes import PlanInput
from co2vent.readings.metadata import build_setup
from co2vent.units import ZERO_CELSIUS_K
from co2vent.window.words import translate

FIELDS: Final = (
    "volume_l",
    "temperature_c",
    "pressure_bar_g",
    "liquid_percent",
    "altitude_m",
    "gauge_full_scale_bar",
    "gauge_accuracy_percent",
    "vent_bore_mm",
    "ambient_c",
    "relief_bar_g",
    "room_m3",
    "air_changes_per_hour",
)
EXAMPLES: Final = {
    "volume_l": "14.5",
    "temperature_c": "-20",
    "liquid_percent": "30",
    "altitude_m": "120",
    "gauge_full_scale_bar": "60",
    "gauge_accuracy_percent": "0.5",
    "vent_bore_mm": "6",
    "ambient_c": "20",
}


def plan_field_words(name: str) -> str:
    """Return the label of a field."""
    return {
        "volume_l": translate("Plan", "Volume, litres"),
        "temperature_c": translate("Plan", "Charge, °C"),
        "pressure_bar_g": translate("Plan", "or charge, bar g"),
        "liquid_percent": translate("Plan", "Liquid, % of volume"),
        "altitude_m": translate("Plan", "Altitude, m"),
        "gauge_full_scale_bar": translate("Plan", "Gauge range, bar g"),
        "gauge_accuracy_percent": translate("Plan", "Gauge accuracy, %"),
        "vent_bore_mm": translate("Plan", "Vent bore, mm"),
        "ambient_c": translate("Plan", "Surroundings, °C"),
        "relief_bar_g": translate("Plan", "Relief setting, bar g"),
        "room_m3": translate("Plan", "Room, m³"),
        "air_changes_per_hour": translate("Plan", "Air changes an hour"),
    }[name]


def example_words(name: str) -> str:
    """Return what may stand in a field, as it is written here; empty where there is no example."""
    return EXAMPLES.get(name, "").replace(".", QLocale().decimalPoint())


def plan_input_from(typed: Mapping[str, str]) -> PlanInput:
    """Return the planner's input.

    Raises:
        RefusedInputError: something that is no number, or no volume.
    """
    values = {name: _number(name, words) for name, words in typed.items() if words.strip()}
    if "volume_l" not in values:
        raise RefusedInputError(
            translate("Plan", "Give the volume of the section, and the charge's °C or bar g.")
        )
    full_scale = values.get("gauge_full_scale_bar", 60.0)
    metadata = {
        "gauge_full_scale": f"{full_scale!r} bar_g",
        "gauge_accuracy_percent": repr(values.get("gauge_accuracy_percent", 0.5)),
    }
    if "altitude_m" in values:
        metadata["altitude_m"] = repr(values["altitude_m"])
    return PlanInput(
        volume_m3=values["volume_l"] / 1e3,
        temperature_k=_kelvin(values.get("temperature_c")),
        pressure_pa_gauge=_times(values.get("pressure_bar_g"), 1e5),
        liquid_fraction=_times(values.get("liquid_percent"), 0.01),
        setup=build_setup(metadata),
        vent_bore_m=values.get("vent_bore_mm", 6.0) / 1e3,
        ambient_k=values.get("ambient_c", 20.0) + ZERO_CELSIUS_K,
        relief_pa_gauge=_times(values.get("relief_bar_g"), 1e5),
        room_m3=values.get("room_m3"),
        air_changes_per_hour=values.get("air_changes_per_hour"),
        assumed=tuple(
            translate("Plan", "{field} not given: {value} is assumed.").format(
                field=plan_field_words(name), value=example_words(name)
            )
            for name in ("gauge_full_scale_bar", "gauge_accuracy_percent", "vent_bore_mm")
            if name not in values
        ),
    )


def _number(name: str, words: str) -> float:
    try:
        value = float(words.strip().replace("−", "-").replace(",", "."))
    except ValueError:
        value = float("nan")
    if not abs(value) < 1e9:
        raise RefusedInputError(
            translate("Plan", "{field}: {words} is not a number.").format(
                field=plan_field_words(name), words=words.strip()
            )
        )
    return value


def _kelvin(celsius: float | None) -> float | None:
    return None if celsius is None else celsius + ZERO_CELSIUS_K


def _times(value: float | None, factor: float) -> float | None:
    return None if value is None else value * factor
