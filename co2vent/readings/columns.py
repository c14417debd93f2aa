"""Header row -> which cell is what, in which unit. Canonical names first, then certain meanings.

A header whose meaning is not certain is left alone and listed in `Columns.ignored`; a log without
a certain pressure and time column is refused.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from co2vent.errors import RefusedInputError
from co2vent.readings.unit_words import Words, take_apart
from co2vent.units import PRESSURE_UNITS, TEMPERATURE_UNITS, VACUUM_UNITS_PA, PressureUnit

HOW_TO_NAME: Final = "name the columns with --columns, e.g. --columns elapsed_s,pressure_bar_g"


def _words(text: str) -> frozenset[str]:
    return frozenset(text.split())


class Role(StrEnum):
    """What a column holds."""

    ELAPSED = "elapsed_s"
    TIME = "time"
    DATE = "date"
    PRESSURE = "pressure"
    PRESSURE_2 = "pressure_2"
    LINE_TEMPERATURE = "line_temperature"
    UPPER_TEMPERATURE = "upper_temperature"
    AMBIENT_TEMPERATURE = "ambient_temperature"
    VENT_VALVE = "vent_valve"
    VACUUM = "vacuum"
    ROOM_CO2 = "room_co2_ppm"
    NOTE = "note"
    ROW_CHECK = "row_check"  # CRC-32 of the line before it, as hexadecimal


PRESSURE_ROLES: Final = (Role.PRESSURE, Role.PRESSURE_2)
TEMPERATURE_ROLES: Final = (
    Role.LINE_TEMPERATURE, Role.UPPER_TEMPERATURE, Role.AMBIENT_TEMPERATURE,
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Column:
    """One column: its place from 0, what it holds, and how a number in it becomes SI."""

    index: int
    name: str
    role: Role
    pressure_unit: PressureUnit | None = None
    temperature_unit: str | None = None
    scale: float = 1.0  # SI value = number * scale, for time and vacuum
    canonical: bool = True


@dataclass(frozen=True, slots=True)
class Columns:
    """The columns that have a meaning, by role, and the names of those that don't."""

    by_role: dict[Role, Column]
    count: int
    names: tuple[str, ...]
    ignored: tuple[str, ...] = ()

    @property
    def pressure(self) -> Column:
        """The pressure column."""
        return self.by_role[Role.PRESSURE]

    @property
    def has_time(self) -> bool:
        """Whether the rows say when they were taken."""
        return Role.ELAPSED in self.by_role or Role.TIME in self.by_role


_PLAIN_ROLES: Final = {
    role.value: role
    for role in (Role.ELAPSED, Role.TIME, Role.VENT_VALVE, Role.ROOM_CO2, Role.NOTE, Role.ROW_CHECK)
}
_TIME_WORDS: Final = _words("time zeit timestamp datetime zeitstempel uhrzeit heure hora tid czas")
_DATE_WORDS: Final = _words("date datum fecha data dato")
_ELAPSED_SCALES: Final = {
    "s": 1.0, "sec": 1.0, "secs": 1.0, "second": 1.0, "seconds": 1.0, "sek": 1.0, "sekunden": 1.0,
    "ms": 1e-3, "min": 60.0, "mins": 60.0, "minutes": 60.0,
}  # fmt: skip
_CLOCK_PATTERN: Final = ("hh", "mm", "ss")
# mm:ss, not hh:mm:ss: read as a clock it makes every rise 60 times slower.
_MINUTES_FIRST: Final = re.compile(r"(?<![:a-z])(?:mm?|min):ss?(?![a-z])", re.IGNORECASE)
_ELAPSED_WORDS: Final = _words("elapsed time zeit t since start run runtime")
_PRESSURE_WORDS: Final = _words(
    "p pressure press druck pression presión presion pressione tryk ciśnienie"
)
_TEMPERATURE_WORDS: Final = _words("t temp temperature temperatur température temperatura")
# Words that leave the meaning as it is.
_NEUTRAL_WORDS: Final = _words(
    "line section channel ch sensor reading value measured actual gauge transducer transmitter "
    "probe port pipe"
)
_ELECTRONICS: Final = _words("gauge transducer transmitter logger")
_PLACE_WORDS: Final = {
    Role.LINE_TEMPERATURE: _words("line pipe clamp surface low lower bottom rohr"),
    Role.UPPER_TEMPERATURE: _words("upper top oben"),
    Role.AMBIENT_TEMPERATURE: _words("ambient air umgebung ambiente ambiante"),
}
_ALL_PLACES: Final = frozenset().union(*_PLACE_WORDS.values())


def resolve_columns(names: Sequence[str], *, needs_time: bool = True) -> Columns:
    """Return the columns that `names` certainly mean.

    Raises:
        RefusedInputError: no pressure column, no unit, gauge or absolute not said, two pressure
            columns of equal standing, or no time (unless the readings are stamped on arrival).
    """
    cleaned = [name.strip().strip('"').strip("\ufeff\xa0 \t") for name in names]
    canonical = [c for i, name in enumerate(cleaned) if (c := _canonical(i, name)) is not None]
    taken = {column.index for column in canonical}
    doubtful = _Doubts([], [])
    foreign = [
        column
        for i, name in enumerate(cleaned)
        if i not in taken and (column := _foreign(i, name, doubtful)) is not None
    ]
    by_role: dict[Role, Column] = {}
    ignored = []
    for group in (canonical, foreign):
        for role in Role:
            same = [column for column in group if column.role is role]
            if role in by_role or not same:
                continue
            if len(same) == 1:
                by_role[role] = same[0]
            elif role in (Role.PRESSURE, Role.PRESSURE_2, Role.ELAPSED, Role.TIME):
                listed = " and ".join(repr(column.name) for column in same)
                raise RefusedInputError(
                    f"two {role.value} columns, {listed}: which one is it? {HOW_TO_NAME}"
                )
    used = {column.index for column in by_role.values()}
    ignored = [name for i, name in enumerate(cleaned) if i not in used and name]
    chosen = by_role.get(Role.PRESSURE)
    if doubtful.unit_missing and (chosen is None or not chosen.canonical):
        raise RefusedInputError(doubtful.unit_missing[0])
    if chosen is None:
        raise RefusedInputError(
            doubtful.other_pressure[0]
            if doubtful.other_pressure
            else f"no pressure column: {HOW_TO_NAME}"
        )
    _settle_time(by_role, needs_time, cleaned)
    return Columns(by_role, len(cleaned), tuple(cleaned), tuple(ignored))


def looks_like_header(names: Sequence[str]) -> bool:
    """Tell whether the names are those of a table: a pressure, or two columns with a meaning."""
    doubtful = _Doubts([], [])
    found = [
        column
        for i, name in enumerate(names)
        if (column := _canonical(i, name) or _foreign(i, name, doubtful)) is not None
    ]
    if any(column.role in PRESSURE_ROLES for column in found):
        return True
    doubts = len(doubtful.unit_missing) + len(doubtful.other_pressure)
    return len(names) > 1 and (bool(doubtful.unit_missing) or len(found) + doubts > 1)


def _settle_time(by_role: dict[Role, Column], needs_time: bool, names: Sequence[str]) -> None:
    if Role.ELAPSED in by_role:
        by_role.pop(Role.TIME, None)
    if Role.TIME not in by_role:
        date = by_role.pop(Role.DATE, None)
        if date is not None and Role.ELAPSED not in by_role:
            by_role[Role.TIME] = Column(date.index, date.name, Role.TIME, canonical=False)
    if needs_time and Role.ELAPSED not in by_role and Role.TIME not in by_role:
        for name in names:
            if _MINUTES_FIRST.search(name):
                raise RefusedInputError(
                    f"column {name!r} has no hours: write its times as hh:mm:ss, or the seconds "
                    "under elapsed_s"
                )
        raise RefusedInputError(f"no time column (elapsed_s, or time in ISO 8601): {HOW_TO_NAME}")


def _canonical(index: int, name: str) -> Column | None:
    """Return the column that a name of the log format means, whatever its letter case."""
    lowered = name.lower()
    if lowered in _PLAIN_ROLES:
        return Column(index, name, _PLAIN_ROLES[lowered])
    for role in (Role.PRESSURE_2, Role.PRESSURE):  # the longer name first
        if lowered.startswith(role.value + "_"):
            for unit in PRESSURE_UNITS.values():
                if lowered == f"{role.value}_{unit.name}".lower():
                    return Column(index, name, role, pressure_unit=unit)
    for role in TEMPERATURE_ROLES:
        for temperature_unit in TEMPERATURE_UNITS:
            if lowered == f"{role.value}_{temperature_unit}".lower():
                return Column(index, name, role, temperature_unit=temperature_unit)
    for vacuum_unit, scale in VACUUM_UNITS_PA.items():
        if lowered == f"vacuum_{vacuum_unit}".lower():
            return Column(index, name, Role.VACUUM, scale=scale)
    return None


@dataclass(frozen=True, slots=True)
class _Doubts:
    """What kept a column from being the pressure, in words for the user."""

    unit_missing: list[str]
    other_pressure: list[str]


def _foreign(index: int, name: str, doubtful: _Doubts) -> Column | None:
    """Return the column another logger's header certainly means; say in `doubtful` what lacks."""
    try:
        words = take_apart(name)
    except RefusedInputError as error:
        doubtful.unit_missing.append(str(error))
        return None
    rest = set(words.rest)
    time = _foreign_time(index, name, words)
    if time is not None:
        return time
    looks_like_pressure = bool(rest & _PRESSURE_WORDS) or words.pressure_base is not None
    if looks_like_pressure and words.temperature_unit is None:
        return _foreign_pressure(index, name, words, doubtful)
    if words.temperature_unit is not None and rest & _TEMPERATURE_WORDS:
        return _foreign_temperature(index, name, words)
    return None


def _foreign_pressure(index: int, name: str, words: Words, doubtful: _Doubts) -> Column | None:
    rest = {word for word in words.rest if not word.isdigit()}
    if rest - _PRESSURE_WORDS - _NEUTRAL_WORDS:
        doubtful.other_pressure.append(
            f"column {name!r} may not be the section's pressure (unknown words): {HOW_TO_NAME}"
        )
        return None
    if words.pressure_base is None:
        doubtful.unit_missing.append(
            f"column {name!r} has no unit; use one of {', '.join(PRESSURE_UNITS)}, or {HOW_TO_NAME}"
        )
        return None
    unit = words.pressure_unit
    if unit is None:
        doubtful.unit_missing.append(
            f"column {name!r} doesn't say gauge or absolute: {HOW_TO_NAME}"
        )
        return None
    if name.lower().startswith("pressure_2_"):
        return Column(index, name, Role.PRESSURE_2, pressure_unit=unit, canonical=False)
    return Column(index, name, Role.PRESSURE, pressure_unit=unit, canonical=False)


def _foreign_temperature(index: int, name: str, words: Words) -> Column | None:
    rest = {word for word in words.rest if not word.isdigit()} - _TEMPERATURE_WORDS
    if rest & _ELECTRONICS or ("sensor" in rest and not rest & _ALL_PLACES):
        return None  # it warms itself: as a clamp it would show cold metal warm
    for role, places in _PLACE_WORDS.items():
        if rest <= places | (
            _NEUTRAL_WORDS if role is Role.LINE_TEMPERATURE else {"sensor", "probe"}
        ):
            if not rest & places and role is not Role.LINE_TEMPERATURE:
                continue
            return Column(
                index, name, role, temperature_unit=words.temperature_unit, canonical=False
            )
    return None


def _foreign_time(index: int, name: str, words: Words) -> Column | None:
    rest = words.rest
    if not rest or words.pressure_base is not None or words.temperature_unit is not None:
        return None
    known = set(rest[:-3] if rest[-3:] == _CLOCK_PATTERN else rest)
    if known <= _TIME_WORDS | _DATE_WORDS | {"utc", "iso", "local"}:
        if known & _TIME_WORDS:
            return Column(index, name, Role.TIME, canonical=False)
        return Column(index, name, Role.DATE, canonical=False) if known & _DATE_WORDS else None
    scale = _ELAPSED_SCALES.get(rest[-1])
    if (
        scale is not None
        and set(rest[:-1]) <= _ELAPSED_WORDS
        and (len(rest) > 1 or len(rest[0]) > 2)
    ):
        return Column(index, name, Role.ELAPSED, scale=scale, canonical=False)
    return None
