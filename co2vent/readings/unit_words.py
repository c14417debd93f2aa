"""Unit words as people and loggers write them; nothing is guessed that isn't written.

`Pressure (psig)`, `P [bar g]`, `p_abs/kPa`, `Temp °C`, `60 bar_g`: a pressure unit counts only
when gauge or absolute is said with it.
"""

import re
from dataclasses import dataclass
from typing import Final

from co2vent.errors import RefusedInputError
from co2vent.readings.cells import to_number
from co2vent.units import PRESSURE_UNITS, TEMPERATURE_UNITS, PressureUnit, temperature_to_k

_WORD: Final = re.compile(r"[°º]?[^\W_\d]+|\d+")
_BEHIND_BRACKET: Final = re.compile(r"[)\]}][\s_]*([ag])(?![^\W_\d])", re.IGNORECASE)

_PRESSURE_BASES: Final = {"bar": "bar", "bars": "bar", "psi": "psi", "kpa": "kPa", "mpa": "MPa"}
# Letters and words that say gauge or absolute right behind the unit.
_DATUM_BEHIND: Final = {
    "g": True, "ga": True, "gauge": True, "ü": True, "ue": True,
    "a": False,
}  # fmt: skip
# Words that say it anywhere in the header. Not "gauge" alone, which may name the instrument.
_DATUM_ANYWHERE: Final = {
    "rel": True, "relative": True, "relativ": True, "überdruck": True, "ueberdruck": True,
    "abs": False, "absolute": False, "absolut": False, "absolutdruck": False,
}  # fmt: skip
_TEMPERATURE_WORDS: Final = {
    "°c": "degC", "ºc": "degC", "degc": "degC", "celsius": "degC",
    "°f": "degF", "ºf": "degF", "degf": "degF", "fahrenheit": "degF",
    "kelvin": "K",
}  # fmt: skip
_TEMPERATURE_LETTERS: Final = {"c": "degC", "f": "degF", "k": "K"}
_PLAIN_UNITS: Final = {
    "bar", "psi", "kpa", "mpa", "mbar", "pa", "hpa", "micron", "microns", "ppm", "torr", "atm",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Words:
    """A header taken apart: its pressure or temperature unit, and the words that are not units."""

    rest: tuple[str, ...]
    pressure_base: str | None = None  # bar, psi, kPa, MPa
    gauge: bool | None = None  # None: not said
    temperature_unit: str | None = None

    @property
    def pressure_unit(self) -> PressureUnit | None:
        """The pressure unit, `None` unless the unit and gauge or absolute are both said."""
        if self.pressure_base is None or self.gauge is None:
            return None
        if self.pressure_base == "psi":
            return PRESSURE_UNITS["psig" if self.gauge else "psia"]
        return PRESSURE_UNITS[f"{self.pressure_base}_{'g' if self.gauge else 'a'}"]


def split_words(text: str) -> tuple[str, ...]:
    """Return the lower-case words and numbers of a header; `deg C` and `° C` become one word."""
    lowered = re.sub(r"(?:\bdeg\.?|[°º])\s*([cf])\b", r"°\1", text.lower())
    return tuple(_WORD.findall(lowered))


def take_apart(text: str) -> Words:
    """Return the units and the remaining words of a header or of the unit part of a value.

    Raises:
        RefusedInputError: gauge and absolute are both said, or two different units are.
    """
    # `Pressure (bar) A` is channel A, not bar absolute: a letter there is no part of the unit.
    apart = [letter.lower() for letter in _BEHIND_BRACKET.findall(text)]
    words = split_words(_BEHIND_BRACKET.sub(") ", text))
    rest: list[str] = apart
    bases: set[str] = set()
    datums: set[bool] = set()
    temperatures: set[str] = set()
    behind_unit = False
    for i, word in enumerate(words):
        base, letter = _pressure_word(word)
        after_unit, behind_unit = behind_unit, base is not None
        if base is not None:
            bases.add(base)
            if letter is not None:
                datums.add(letter)
        elif after_unit and word in _DATUM_BEHIND:
            datums.add(_DATUM_BEHIND[word])
        elif word in _DATUM_ANYWHERE:
            datums.add(_DATUM_ANYWHERE[word])
        elif word == "gauge" and words[i + 1 : i + 2] == ("pressure",):
            datums.add(True)
        elif word in _TEMPERATURE_WORDS:
            temperatures.add(_TEMPERATURE_WORDS[word])
        elif word in _TEMPERATURE_LETTERS and i == len(words) - 1:
            temperatures.add(_TEMPERATURE_LETTERS[word])
        else:
            rest.append(word)
    if len(datums) > 1:
        raise RefusedInputError(f"{text.strip()!r} says both gauge and absolute; name one")
    if len(bases) > 1 or len(temperatures) > 1:
        raise RefusedInputError(f"{text.strip()!r} names two units; name one")
    return Words(
        rest=tuple(rest),
        pressure_base=next(iter(bases), None),
        gauge=next(iter(datums), None),
        temperature_unit=next(iter(temperatures), None),
    )


def is_unit_text(text: str) -> bool:
    """Tell whether a cell holds nothing but a unit, as in a second header row."""
    words = split_words(text)
    if not words:
        return not text.strip(" []()-")
    known = (
        _PLAIN_UNITS
        | set(_TEMPERATURE_WORDS)
        | set(_TEMPERATURE_LETTERS)
        | {"s", "sec", "min", "ms", "h"}
    )
    known |= {"hh", "mm", "ss", "yyyy", "dd"} | set(_DATUM_BEHIND) | set(_DATUM_ANYWHERE)
    return all(word in known or _pressure_word(word)[0] is not None for word in words)


def _pressure_word(word: str) -> tuple[str | None, bool | None]:
    """Return the unit and, where its last letter says so, gauge or absolute."""
    if word in _PRESSURE_BASES:
        return _PRESSURE_BASES[word], None
    for ending, gauge in (("g", True), ("a", False), ("ü", True)):
        stem = word.removesuffix(ending)
        if stem != word and stem in _PRESSURE_BASES and stem != "bars":
            return _PRESSURE_BASES[stem], gauge
    return None, None


def pressure_value(text: str, what: str) -> tuple[float, PressureUnit]:
    """Return number and unit of `60 bar_g`; `what` names the value in the error.

    Raises:
        RefusedInputError: no number, no unit, or gauge or absolute not said.
    """
    number, unit_text = _number_and_rest(text, what, "60 bar_g")
    unit = PRESSURE_UNITS.get(unit_text)
    if unit is None:
        words = take_apart(unit_text)
        unit = words.pressure_unit if not words.rest else None
    if unit is None:
        raise RefusedInputError(
            f"{what} {text.strip()!r}: give its unit as one of {', '.join(PRESSURE_UNITS)}"
        )
    return number, unit


def temperature_value_k(text: str, what: str) -> float:
    """Return `-29 degC` in kelvin; `what` names the value in the error.

    Raises:
        RefusedInputError: no number or no unit.
    """
    number, unit_text = _number_and_rest(text, what, "-29 degC")
    unit = unit_text if unit_text in TEMPERATURE_UNITS else None
    if unit is None:
        words = take_apart(unit_text)
        unit = words.temperature_unit if not words.rest else None
    if unit is None:
        raise RefusedInputError(
            f"{what} {text.strip()!r}: give its unit as one of {', '.join(TEMPERATURE_UNITS)}"
        )
    return temperature_to_k(number, unit)


def _number_and_rest(text: str, what: str, example: str) -> tuple[float, str]:
    match = re.fullmatch(r"\s*([+-]?[0-9.]+(?:[eE][+-]?[0-9]+)?)\s*(.*?)\s*", text)
    number = None if match is None else to_number(match.group(1))
    if match is None or number is None:
        raise RefusedInputError(f"{what} {text.strip()!r}: write a number and a unit, as {example}")
    return number, match.group(2)
