"""`# key: value` lines -> what is known of the section and its gauges (`Setup`).

Values given as command-line options override the log's own. Unknown keys are kept, not read.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from typing import Final, TypeVar

from co2vent.co2.atmosphere import ambient_pressure_pa
from co2vent.errors import RefusedInputError
from co2vent.readings.cells import to_number
from co2vent.readings.reading import Gas, Setup
from co2vent.readings.unit_words import pressure_value, temperature_value_k
from co2vent.units import STANDARD_ATMOSPHERE_PA

# A gauge that shows more than this open to air isn't near zero: another unit, or not open to air.
# Trade habit changes the gauge above 0.1 bar (common practice, no source).
MAX_ZERO_OFFSET_PA: Final = 1.0e5
# The pressure of the air anywhere people work: 5,500 m to the deepest mines, with weather.
AMBIENT_RANGE_PA: Final = (45e3, 125e3)
ALTITUDE_RANGE_M: Final = (-500.0, 6000.0)


@dataclass(frozen=True, slots=True)
class MetadataKey:
    """One key of the log format: how a value looks, and one line of help."""

    name: str
    example: str
    help: str


METADATA_KEYS: Final[dict[str, MetadataKey]] = {
    key.name: key
    for key in (
        MetadataKey("altitude_m", "120", "height of the site above sea level"),
        MetadataKey(
            "ambient_pressure_kPa", "99.8", "pressure of the air on site, instead of the altitude"
        ),
        MetadataKey("section_volume_l", "14.5", "inner volume of the section"),
        MetadataKey("gauge_full_scale", "60 bar_g", "end of the gauge's scale"),
        MetadataKey(
            "gauge_accuracy_percent", "0.5", "accuracy of the gauge in percent of full scale"
        ),
        MetadataKey(
            "zero_reading", "0.05 bar_g", "what the gauge shows open to air, with its sign"
        ),
        MetadataKey("relief_pressure", "52 bar_g", "setting of the relief valve"),
        MetadataKey(
            "section_max_pressure", "60 bar_g", "maximum allowable pressure of the section"
        ),
        MetadataKey(
            "metal_minimum_temperature", "-29 degC", "lowest rated temperature of the metal"
        ),
        MetadataKey("vent_bore_mm", "8", "narrowest bore of the vent path"),
        MetadataKey("gas", "co2", "co2, or nitrogen for a standing-pressure test"),
        MetadataKey("insulated", "yes", "yes or no"),
        MetadataKey("section_name", "strainer 3", "name of the section"),
        MetadataKey("simulated", "yes", "yes for a trace that no real gauge made"),
    )
}
T = TypeVar("T")
_LOWERED: Final = {name.lower(): name for name in METADATA_KEYS}


def split_metadata_line(line: str) -> tuple[str, str] | None:
    """Return key and value of `# key: value`, `None` for another comment."""
    key, colon, value = line.lstrip("#").partition(":")
    key = key.strip()
    if not colon or not key or any(character.isspace() for character in key):
        return None
    return _LOWERED.get(key.lower(), key), value.strip().strip('"').rstrip(",;\t ")


def merge_metadata(log: Mapping[str, str], overrides: Mapping[str, str]) -> dict[str, str]:
    """Return the log's values with the options laid over them.

    An altitude given as an option also replaces the log's ambient pressure, and the other way
    round: they say the same thing. What a log says was computed stays so, whatever an option says.
    """
    merged = dict(log)
    if _read(merged, "simulated", _yes_or_no):
        overrides = {**overrides, "simulated": merged["simulated"]}
    for mine, other in (
        ("altitude_m", "ambient_pressure_kPa"), ("ambient_pressure_kPa", "altitude_m"),
    ):  # fmt: skip
        if mine in overrides and other not in overrides:
            merged.pop(other, None)
    merged.update(overrides)
    return merged


# what a recording says of itself, besides
_OF_RECORDINGS: Final = {"recorded_utc", "recorded_by", "recorded_from", "event"}


def unknown_keys(values: Mapping[str, str]) -> tuple[str, ...]:
    """Return the keys that the log format doesn't know."""
    return tuple(key for key in values if key not in METADATA_KEYS and key not in _OF_RECORDINGS)


def meant_key(unknown: str) -> str | None:
    """Return the key that somebody who wrote `unknown` may have meant.

    >>> meant_key("altitude"), meant_key("operator")
    ('altitude_m', None)
    """
    near = get_close_matches(unknown, METADATA_KEYS, 1, 0.75)
    return near[0] if near else None


def check_values(values: Mapping[str, str]) -> None:
    """Refuse values that can't be, each by itself; what they need besides may still come.

    Raises:
        RefusedInputError: as `build_setup` does.
    """
    where = {} if "ambient_pressure_kPa" in values else {"altitude_m": "0"}
    build_setup({**where, **values})


# Weather moves the air pressure of a site by 3 to 4 kPa (judgement); one that is reduced to sea
# level, as weather reports give it, is 10 kPa off at 850 m
_WEATHER_PA: Final = 5e3


def _agree(altitude_m: float, ambient_pa: float) -> None:
    standard_pa = ambient_pressure_pa(altitude_m)
    if abs(ambient_pa - standard_pa) > _WEATHER_PA:
        raise RefusedInputError(
            f"ambient_pressure_kPa {ambient_pa / 1e3:.1f} is not the air pressure at altitude_m "
            f"{altitude_m:g} (about {standard_pa / 1e3:.1f}): give the pressure measured on site, "
            "not reduced to sea level, or only one of the two"
        )


def build_setup(
    values: Mapping[str, str], *, pressure_unit: str = "bar_g", temperature_unit: str = "degC"
) -> Setup:
    """Return what the metadata say, in SI and absolute.

    Raises:
        RefusedInputError: a value that is no number, lacks its unit or can't be.
    """
    altitude_m = _read(values, "altitude_m", _in_range(*ALTITUDE_RANGE_M, 1.0, "m"))
    ambient_pa = _read(
        values, "ambient_pressure_kPa", _in_range(*AMBIENT_RANGE_PA, 1e3, "kPa, absolute")
    )
    if altitude_m is not None and ambient_pa is not None:
        _agree(altitude_m, ambient_pa)
    assumed = altitude_m is None and ambient_pa is None
    if ambient_pa is None:
        ambient_pa = (
            STANDARD_ATMOSPHERE_PA if altitude_m is None else ambient_pressure_pa(altitude_m)
        )
    zero_pa = _zero_offset_pa(values, ambient_pa, assumed)
    span_pa = full_scale_pa = None
    if values.get("gauge_full_scale"):
        number, unit = pressure_value(values["gauge_full_scale"], "gauge_full_scale")
        span_pa = number * unit.pascals
        if span_pa <= 0:
            raise RefusedInputError(
                f"gauge_full_scale {values['gauge_full_scale']!r} must be above zero"
            )
        # In the frame of the readings, from which the zero reading is already taken off.
        full_scale_pa = unit.to_absolute_pa(number, ambient_pa) - zero_pa

    def absolute_pa(text: str, key: str) -> float:
        number, unit = pressure_value(text, key)
        pressure_pa = unit.to_absolute_pa(number, ambient_pa)
        if not 0 < pressure_pa < 1e8:
            raise RefusedInputError(f"{key} {text!r} can't be")
        return pressure_pa

    volume_m3 = _read(values, "section_volume_l", _in_range(1e-6, 1e3, 1e-3, "l"))
    return Setup(
        ambient_pressure_pa=ambient_pa,
        ambient_pressure_assumed=assumed,
        altitude_m=altitude_m,
        section_name=values.get("section_name", ""),
        section_volume_m3=volume_m3,
        gauge_full_scale_pa=full_scale_pa,
        gauge_accuracy_fraction=_read(
            values, "gauge_accuracy_percent", _in_range(0.0, 0.25, 0.01, "percent")
        ),
        gauge_span_pa=span_pa,
        zero_offset_pa=zero_pa,
        zero_was_read=bool(values.get("zero_reading", "").strip()),
        relief_pressure_pa=_read(values, "relief_pressure", absolute_pa),
        section_max_pressure_pa=_read(values, "section_max_pressure", absolute_pa),
        metal_minimum_temperature_k=_read(values, "metal_minimum_temperature", temperature_value_k),
        vent_bore_m=_read(values, "vent_bore_mm", _in_range(1e-4, 0.5, 1e-3, "mm")),
        gas=_read(values, "gas", _gas) or Gas.CO2,
        insulated=_read(values, "insulated", _yes_or_no),
        simulated=_read(values, "simulated", _yes_or_no) or False,
        pressure_unit=pressure_unit,
        temperature_unit=temperature_unit,
    )


def _read(values: Mapping[str, str], key: str, parse: Callable[[str, str], T]) -> T | None:
    text = values.get(key, "").strip()
    return parse(text, key) if text else None


def _in_range(low: float, high: float, si: float, unit: str) -> Callable[[str, str], float]:
    """Return a parser of plain numbers; `low` and `high` are in SI, `si` SI per unit."""

    def parse(text: str, key: str) -> float:
        number = to_number(text) if "," not in text else None
        if number is None:
            raise RefusedInputError(f"{key} {text!r} is not a number ({unit})")
        if not low <= number * si <= high:
            raise RefusedInputError(f"{key} {text} is outside {low / si:g} to {high / si:g} {unit}")
        return number * si

    return parse


def _zero_offset_pa(values: Mapping[str, str], ambient_pa: float, assumed: bool) -> float:
    """Return what the gauge showed open to air, less what it should have shown."""
    text = values.get("zero_reading", "").strip()
    if not text:
        return 0.0
    number, unit = pressure_value(text, "zero_reading")
    if not unit.gauge and assumed:
        # An absolute gauge open to air shows the ambient pressure; against an assumed one, the
        # altitude would be taken for a gauge error.
        raise RefusedInputError(
            f"zero_reading {text!r} is absolute: give ambient_pressure_kPa or altitude_m with it"
        )
    offset_pa = unit.to_absolute_pa(number, ambient_pa) - ambient_pa
    if abs(offset_pa) > MAX_ZERO_OFFSET_PA:
        raise RefusedInputError(
            f"zero_reading {text!r} is more than 1 bar from the air's pressure: check its unit, or "
            "the gauge"
        )
    return offset_pa


def _gas(text: str, key: str) -> Gas:
    try:
        return Gas({"n2": "nitrogen"}.get(text.lower(), text.lower()))
    except ValueError:
        raise RefusedInputError(f"{key} {text!r}: write co2 or nitrogen") from None


def _yes_or_no(text: str, key: str) -> bool:
    words = {"yes": True, "true": True, "1": True, "no": False, "false": False, "0": False}
    answer = words.get(text.lower())
    if answer is None:
        raise RefusedInputError(f"{key} {text!r}: write yes or no")
    return answer
