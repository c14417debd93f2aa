"""The core's English sentences in the language of the screen.

The template is looked up in the catalogue and its values are filled in again: sentences inside
sentences are said too, states get the screen's words, numbers the decimal sign of the locale.
Whatever has no template (a person's note, a source's words) is shown as it is. Files and logs never
come through here.
"""

import re
from typing import Final

from PySide6.QtCore import QLocale

from co2vent.inference.outcome import Charge
from co2vent.inference.wording import BAR_FROM_PA, in_units
from co2vent.sentence import Figure, Sentence
from co2vent.units import PSI_PA
from co2vent.window.words import charge_words, translate

#: Contexts of the catalogue that hold the core's texts; a text is looked up in each.
CONTEXTS: Final = ("Core", "Prompt", "Steps", "Exercises")

_FIGURE: Final = re.compile(
    r"([+-]?(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?(?:e[+-]\d+)?)( \D.*)?", re.DOTALL
)
_UNITS: Final = {
    " degC": " °C",
    " degF": " °F",
    " bar a": " bar abs",
    " bar absolute": " bar abs",
    " m3": " m³",
    " m3/h": " m³/h",
}
# Between thousands where the comma is the decimal sign; no line ends there.
_APART: Final = "\u00a0"


_units: list[str] = []  # pressure and temperature; empty: each figure in its source's


def speak_units(pressure_unit: str, temperature_unit: str) -> None:
    """Say figures in these units from now on, as numbers are said in the default `QLocale`."""
    _units[:] = [pressure_unit, temperature_unit]


def manner() -> tuple[str, ...]:
    """Return what decides how a sentence is said: the language and the units.

    What keeps sentences it has said says them again when this changes.
    """
    return (QLocale().name(), *_units)


def spoken(text: str) -> str:
    """Return `text` in the language of the screen, as far as it is the core's."""
    if not isinstance(text, Sentence):
        return text
    template = next(
        (
            said
            for context in CONTEXTS
            if (said := translate(context, text.template)) != text.template
        ),
        text.template,
    )
    if not text.values:
        return template
    return template.format_map({name: _filled(value) for name, value in text.values.items()})


def _in_units(figure: Figure) -> str:
    per_minute = 60.0 * figure.si
    if figure.kind == "slope":
        psi = _units[0].startswith("psi")
        if psi and abs(per_minute) >= PSI_PA:
            return f"{per_minute / PSI_PA:.1f} psi/min"
        if not psi and abs(per_minute) >= BAR_FROM_PA:
            return f"{per_minute / 1e5:.2f} bar/min"
    return in_units(figure, *_units)


def _filled(value: str) -> str:
    if isinstance(value, Charge):
        return charge_words(value)
    if isinstance(value, Figure) and _units:
        value = _in_units(value)
    if not isinstance(value, Sentence) and (found := _FIGURE.fullmatch(value)):
        digits, unit = found.group(1), found.group(2) or ""
        if (point := QLocale().decimalPoint()) != ".":
            digits = digits.replace(",", _APART).replace(".", point)
        digits = digits.replace("-", "−")
        return digits + _UNITS.get(unit, unit)
    return spoken(value)
