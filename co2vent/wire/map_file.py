"""What instrument maps have in common: small TOML files, channels with columns and scalings."""

import math
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

from co2vent.errors import RefusedInputError
from co2vent.readings.bounded_toml import read_toml
from co2vent.readings.columns import Role, resolve_columns
from co2vent.readings.metadata import METADATA_KEYS, check_values
from co2vent.wire.signals import SIGNALS, Fault, Signal

MAX_FILE_BYTES: Final = 65_536  # a map of 64 channels is under 16 kB
MAX_CHANNELS: Final = 64
_NO_NUMBERS: Final = frozenset((Role.TIME.value, Role.NOTE.value, Role.ROW_CHECK.value))
SCALING_KEYS: Final = frozenset(
    ("column", "scale", "offset", "invalid", "valid_min", "valid_max", "signal", "range")
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Scaling:
    """How a raw number becomes a cell of a log row."""

    column: str
    scale: float = 1.0
    offset: float = 0.0
    invalid: tuple[float, ...] = ()
    valid_min: float | None = None
    valid_max: float | None = None
    signal: Signal | None = None
    span: tuple[float, float] = (0.0, 1.0)

    def cell(self, raw: float) -> str:
        """Return the cell for `raw`: a number, a fault word, or blank where it means no reading."""
        if math.isnan(raw) or raw in self.invalid:
            return self._nothing(Fault.NONE)
        if math.isinf(raw):
            return self._nothing(Fault.OVER_RANGE if raw > 0 else Fault.UNDER_RANGE)
        if self.valid_max is not None and raw > self.valid_max:
            return self._nothing(Fault.OVER_RANGE)
        if self.valid_min is not None and raw < self.valid_min:
            return self._nothing(Fault.UNDER_RANGE)
        value = raw * self.scale + self.offset
        if self.signal is not None:
            share, fault = self.signal.fraction(value)
            if fault is not Fault.NONE:
                return self._nothing(fault)
            value = self.span[0] + share * (self.span[1] - self.span[0])
        if self.column == Role.VENT_VALVE.value:
            return {0.0: "closed", 1.0: "open"}.get(value, "")
        # ten digits: a float32 or a 32-bit count has no more, and repr would show rounding as data
        return f"{value:.10g}" if abs(value) < 1e15 else Fault.OVER_RANGE.value

    def fault(self) -> str:
        """Return the cell of a channel that is broken."""
        return self._nothing(Fault.FAULT)

    def _nothing(self, fault: Fault) -> str:
        """Return the fault word; in a column of words, blank."""
        return "" if self.column == Role.VENT_VALVE.value else fault.value


def read_small_text(path: Path) -> str:
    """Return the text of a settings-like file, bounded in size."""
    try:
        with path.open("rb") as file:
            data = file.read(MAX_FILE_BYTES + 1)
    except OSError as error:
        reason = (error.strerror or str(error)).lower()
        raise RefusedInputError(f"{path}: {reason}; give the map's path") from error
    if len(data) > MAX_FILE_BYTES:
        raise RefusedInputError(f"{path}: more than {MAX_FILE_BYTES} bytes is no map")
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise RefusedInputError(f"{path}: not UTF-8 text") from error


def toml_table(text: str, name: str) -> dict[str, Any]:
    """Return `text` as TOML, or refuse it in one sentence."""
    try:
        return read_toml(text)
    except ValueError as error:
        raise RefusedInputError(f"{name}: not TOML: {error}") from error


def metadata_in(document: dict[str, Any], name: str) -> dict[str, str]:
    """Return the `[metadata]` table: keys of the readings log with values written as there."""
    table = document.get("metadata", {})
    if not isinstance(table, dict):
        raise RefusedInputError(f"{name}: metadata is not a table")
    no_other_keys(table, frozenset(METADATA_KEYS), f"{name}: metadata")
    for key, value in table.items():
        if not isinstance(value, str):
            raise RefusedInputError(f"{name}: metadata: write {key} in quotes, as in a log")
    try:
        check_values(table)
    except RefusedInputError as error:
        raise RefusedInputError(f"{name}: metadata: {error}") from error
    return dict(table)


def channel_tables(
    document: dict[str, Any], name: str, top_keys: frozenset[str]
) -> list[tuple[dict[str, Any], str]]:
    """Return each `[[channel]]` with the words that name it in an error."""
    no_other_keys(document, top_keys, name)
    tables = document.get("channel")
    if not isinstance(tables, list) or not tables:
        raise RefusedInputError(f"{name}: no [[channel]]; add one for the pressure")
    if len(tables) > MAX_CHANNELS:
        raise RefusedInputError(f"{name}: more than {MAX_CHANNELS} channels")
    named = []
    for number, table in enumerate(tables, start=1):
        if not isinstance(table, dict):
            raise RefusedInputError(f"{name}: channel {number} is not a table")
        named.append((table, f"{name}: channel {number}"))
    return named


def scaling_from(table: dict[str, Any], where: str) -> Scaling:
    """Return the scaling in a channel's table."""
    column = table.get("column")
    if not isinstance(column, str) or not column:
        raise RefusedInputError(f'{where}: column is missing, e.g. column = "pressure_bar_g"')
    where = f"{where} ({column})"
    scale = number_in(table, "scale", where, 1.0)
    if scale == 0.0:
        raise RefusedInputError(f"{where}: scale 0 would make every reading the same")
    valid_min = number_in(table, "valid_min", where, None)
    valid_max = number_in(table, "valid_max", where, None)
    if valid_min is not None and valid_max is not None and valid_min >= valid_max:
        raise RefusedInputError(f"{where}: valid_min must be below valid_max")
    signal, span = _signal(table, where)
    return Scaling(
        column=column,
        scale=scale or 1.0,
        offset=number_in(table, "offset", where, 0.0) or 0.0,
        invalid=_numbers(table.get("invalid", []), f"{where}: invalid"),
        valid_min=valid_min,
        valid_max=valid_max,
        signal=signal,
        span=span,
    )


def number_in(table: dict[str, Any], key: str, where: str, default: float | None) -> float | None:
    """Return the finite number under `key`."""
    value = table.get(key, default)
    if value is None:
        return None
    return _number(value, f"{where}: {key}")


def check_columns(names: list[str], name: str) -> None:
    """Refuse columns that the readings log does not know, and one named twice."""
    for column in names:
        if column.lower() in _NO_NUMBERS:
            raise RefusedInputError(f"{name}: column {column} holds no number")
    twice = {column for column in names if names.count(column) > 1}
    if twice:
        raise RefusedInputError(f"{name}: column {min(twice)} is named twice")
    try:
        columns = resolve_columns(names, needs_time=False)
    except RefusedInputError as error:
        raise RefusedInputError(f"{name}: {error}") from error
    if columns.ignored:
        raise RefusedInputError(f"{name}: column {columns.ignored[0]} is none of the readings log")
    foreign = [column.name for column in columns.by_role.values() if not column.canonical]
    if foreign:
        raise RefusedInputError(f"{name}: column {foreign[0]} is none of the readings log")


def _signal(table: dict[str, Any], where: str) -> tuple[Signal | None, tuple[float, float]]:
    if "signal" not in table:
        if "range" in table:
            raise RefusedInputError(f"{where}: range needs a signal beside it")
        return None, (0.0, 1.0)
    signal = SIGNALS[one_of(table, "signal", tuple(SIGNALS), where)]
    span = _numbers(table.get("range"), f"{where}: range")
    if len(span) != 2 or span[0] == span[1]:
        raise RefusedInputError(f"{where}: range must be two different numbers, e.g. [0, 60]")
    return signal, (span[0], span[1])


def one_of(table: dict[str, Any], key: str, words: tuple[str, ...], where: str) -> str:
    """Return the word under `key`, which must be one of `words`."""
    value = table.get(key)
    if not isinstance(value, str) or value not in words:
        raise RefusedInputError(f"{where}: {key} must be one of {', '.join(words)}")
    return value


def no_other_keys(table: dict[str, Any], known: frozenset[str], where: str) -> None:
    other = sorted(set(table) - known)
    if other:
        raise RefusedInputError(
            f"{where}: unknown key {other[0]!r}; known are {', '.join(sorted(known))}"
        )


def _numbers(values: object, what: str) -> tuple[float, ...]:
    if not isinstance(values, list) or len(values) > MAX_CHANNELS:
        raise RefusedInputError(f"{what} must be a list of numbers")
    return tuple(_number(value, what) for value in values)


def _number(value: object, what: str) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise RefusedInputError(f"{what} must be a number")
    try:
        number = float(value)
    except OverflowError:
        number = math.inf
    if not math.isfinite(number):
        raise RefusedInputError(f"{what} must be a finite number")
    return number
