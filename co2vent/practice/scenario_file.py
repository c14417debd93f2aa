"""The tables of a scenario: which keys there are, their defaults, and reading them from TOML.

    [section]       volume_l, diameter_mm, wall_mm, metal, insulated or outside_w_per_m2k,
                    metal_minimum_c, name
    [charge]        temperature_c or pressure_bar_g (gas alone: or both), liquid_fraction,
                    solid_kg, superheat_k, dry_metal_c, wet_metal_c, nitrogen_bar, oil_kg,
                    desiccant_kg, water_kg
    [surroundings]  ambient_c, altitude_m, room_m3 (the vent ends in a room), air_changes_per_hour
    [vent]          bore_mm, low_point, plugs (the hose plugs when liquid passes)
    [leaks]         leak_by_g_per_s, supply_c, supply_liquid, leak_out_bore_mm, relief_bar_g
    [gauge]         unit, full_scale, accuracy_percent, step, noise, zero, lag_s, period_s, clamp,
                    clamp_error_k, stuck_from_s, stuck_until_s (pressures in `unit`)
    [vacuum]        pump_l_per_min, ultimate_pa
    [log]           valve, volume, altitude (whether the person knows and logs them), vacuum (a
                    vacuum gauge is on), gas (co2 or nitrogen)

Every key has a default; an unknown key is refused.
"""

from collections.abc import Mapping
from pathlib import Path
from typing import Any, Final

from co2vent.errors import RefusedInputError
from co2vent.readings.bounded_toml import read_toml

MAX_FILE_BYTES: Final = 65_536  # every key at its longest is under 4 kB
MOST_MAGNITUDE: Final = 1e12  # no length, pressure, mass or time of a section comes near

Table = Mapping[str, Any]
# group: key: default (its type is the type asked for; None: a number or not given)
KEYS: Final[dict[str, dict[str, Any]]] = {
    "section": {
        "volume_l": 14.5,
        "diameter_mm": 80.0,
        "wall_mm": 4.0,
        "metal": "steel",
        "insulated": False,
        "outside_w_per_m2k": None,
        "metal_minimum_c": None,
        "name": "strainer section S-3",
    },
    "charge": {
        "temperature_c": None,
        "pressure_bar_g": None,
        "liquid_fraction": 0.0,
        "solid_kg": 0.0,
        "superheat_k": 0.0,
        "dry_metal_c": None,
        "wet_metal_c": None,
        "nitrogen_bar": 0.0,
        "oil_kg": 0.0,
        "desiccant_kg": 0.0,
        "water_kg": 0.0,
    },
    "surroundings": {
        "ambient_c": 12.0,
        "altitude_m": 120.0,
        "room_m3": None,
        "air_changes_per_hour": 0.0,
    },
    "vent": {"bore_mm": 3.0, "low_point": False, "plugs": False, "discharge_coefficient": 0.85},
    "leaks": {
        "leak_by_g_per_s": 0.0,
        "supply_c": -10.0,
        "supply_liquid": False,
        "leak_out_bore_mm": 0.0,
        "relief_bar_g": None,
    },
    "gauge": {
        "unit": "bar_g",
        "full_scale": 60.0,
        "accuracy_percent": 0.5,
        "step": 0.01,
        "noise": 0.003,
        "zero": 0.0,
        "lag_s": 0.2,
        "period_s": 1.0,
        "clamp": True,
        "clamp_error_k": 0.5,
        "stuck_from_s": float("inf"),
        "stuck_until_s": float("inf"),
    },
    "vacuum": {"pump_l_per_min": 0.0, "ultimate_pa": 5.0},
    "log": {"valve": True, "volume": True, "altitude": True, "vacuum": False, "gas": "co2"},
}
PLAIN_KEYS: Final = ("title", "plan")  # read by others


def read_tables(path: Path) -> dict[str, Any]:
    """Return the tables of a section file (TOML).

    Raises:
        RefusedInputError: the file can't be read or is no TOML.
    """
    try:
        with path.open("rb") as file:
            data = file.read(MAX_FILE_BYTES + 1)
    except OSError as error:
        raise RefusedInputError(f"{path}: {error.strerror}; give a section file") from error
    if len(data) > MAX_FILE_BYTES:
        raise RefusedInputError(f"{path}: more than {MAX_FILE_BYTES} bytes is no section file")
    try:
        return read_toml(data.decode("utf-8-sig"))
    except ValueError as error:  # of TOML and of UTF-8 as well
        raise RefusedInputError(f"{path}: not a TOML file: {error}") from error


def checked(tables: Table) -> dict[str, dict[str, Any]]:
    """Return all groups with their defaults filled in.

    Raises:
        RefusedInputError: an unknown group or key, or a value of the wrong kind.
    """
    unknown = set(tables) - set(KEYS) - set(PLAIN_KEYS)
    if unknown:
        raise RefusedInputError(
            f"unknown table [{sorted(unknown)[0]}]: use {', '.join(f'[{name}]' for name in KEYS)}"
        )
    filled: dict[str, dict[str, Any]] = {}
    for group, defaults in KEYS.items():
        given = tables.get(group, {})
        if not isinstance(given, Mapping):
            raise RefusedInputError(f"[{group}] must be a table of key = value lines")
        wrong = set(given) - set(defaults)
        if wrong:
            raise RefusedInputError(
                f"[{group}] has no key {sorted(wrong)[0]!r}: use {', '.join(defaults)}"
            )
        filled[group] = {
            key: _value(group, key, given[key], default) if key in given else default
            for key, default in defaults.items()
        }
    return filled


def _value(group: str, key: str, value: Any, default: Any) -> Any:
    if isinstance(default, (bool, str)):
        if not isinstance(value, type(default)):
            kind = "true or false" if isinstance(default, bool) else "a text in quotes"
            raise RefusedInputError(f"[{group}] {key} must be {kind}")
        return value
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        raise RefusedInputError(f"[{group}] {key} must be a number")
    # TOML has nan, inf and integers of any length
    if not abs(value) < MOST_MAGNITUDE:
        raise RefusedInputError(f"[{group}] {key} must be a number that can be measured")
    return float(value)
