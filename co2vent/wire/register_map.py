"""Maps that say what an instrument's registers or fields mean: TOML in, cells of a log row out.

    [[channel]]
    column = "pressure_bar_g"   # as in the readings log
    table = "holding"           # or "input"
    register = 0                # zero-based address
    type = "float32"            # int16 uint16 int32 uint32 float32
    word_order = "big"          # or "little"; required for two-register types
    scale = 1.0                 # value = raw * scale + offset
    offset = 0.0
    invalid = [32767]           # raw values that mean "no reading"; NaN always does
    valid_min = 0               # raw limits
    valid_max = 65000

What the log would say in `# key: value` lines may stand in a table before them:

    [metadata]
    gauge_full_scale = "60 bar_g"

A live-zero signal adds `signal = "4-20mA"` (or `"0.5-4.5V"`) and `range = [0, 60]`: raw * scale +
offset is then the current [mA] or voltage [V], and `range` what 4 and 20 mA stand for.
"""

import struct
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

from co2vent.errors import RefusedInputError
from co2vent.readings.log_writer import metadata_lines
from co2vent.wire.map_file import (
    SCALING_KEYS,
    Scaling,
    channel_tables,
    check_columns,
    metadata_in,
    no_other_keys,
    one_of,
    read_small_text,
    scaling_from,
    toml_table,
)

MAX_REGISTERS_IN_ONE_READ: Final = 125  # Modbus Application Protocol V1.1b3, 6.3

# type: (registers, struct code)
TYPES: Final[dict[str, tuple[int, str]]] = {
    "int16": (1, ">h"),
    "uint16": (1, ">H"),
    "int32": (2, ">i"),
    "uint32": (2, ">I"),
    "float32": (2, ">f"),
}
TABLES: Final = ("holding", "input")
# No gauge resolves this much in any unit; words in the wrong order give such floats. (own choice)
LEAST_FLOAT: Final = 1e-9
_REGISTER_KEYS: Final = SCALING_KEYS | {"table", "register", "type", "word_order"}


@dataclass(frozen=True, slots=True, kw_only=True)
class RegisterChannel:
    """One value in a Modbus device."""

    scaling: Scaling
    table: str
    register: int
    type: str
    word_order: str = "big"

    @property
    def registers(self) -> int:
        """How many registers the value takes."""
        return TYPES[self.type][0]

    def raw(self, words: list[int]) -> float:
        """Return the raw number in `words`, which are this channel's registers."""
        ordered = words if self.word_order == "big" else words[::-1]
        packed = struct.pack(f">{len(ordered)}H", *ordered)
        return float(struct.unpack(TYPES[self.type][1], packed)[0])

    def cell(self, words: list[int]) -> str:
        """Return the cell of a log row for `words`."""
        raw = self.raw(words)
        if self.type == "float32" and 0.0 < abs(raw) < LEAST_FLOAT:
            return self.scaling.fault()
        return self.scaling.cell(raw)


@dataclass(frozen=True, slots=True)
class RegisterBlock:
    """Registers that one request reads: the channels in it touch, no unknown one is between."""

    table: str
    start: int
    count: int
    channels: tuple[RegisterChannel, ...]


@dataclass(frozen=True, slots=True)
class RegisterMap:
    """What an instrument's registers mean, and what is known of its gauges."""

    channels: tuple[RegisterChannel, ...]
    metadata: dict[str, str]

    @property
    def preamble(self) -> tuple[str, ...]:
        """The lines that a log of this instrument begins with."""
        columns = ",".join(channel.scaling.column for channel in self.channels)
        return (*metadata_lines(self.metadata), columns)


def load_register_map(path: Path) -> RegisterMap:
    """Return what a register map file says.

    Raises:
        RefusedInputError: the file, a key or a value whose meaning is not certain.
    """
    return parse_register_map(read_small_text(path), str(path))


def parse_register_map(text: str, name: str) -> RegisterMap:
    """Return what a register map says; `name` stands in the errors."""
    document = toml_table(text, name)
    tables = channel_tables(document, name, frozenset(("channel", "metadata")))
    channels = tuple(_register_channel(table, where) for table, where in tables)
    check_columns([channel.scaling.column for channel in channels], name)
    return RegisterMap(channels, metadata_in(document, name))


def blocks(channels: tuple[RegisterChannel, ...]) -> tuple[RegisterBlock, ...]:
    """Return the fewest requests that read `channels` and no register besides."""
    found: list[RegisterBlock] = []
    for channel in sorted(channels, key=lambda c: (c.table, c.register, c.registers)):
        end = channel.register + channel.registers
        last = found[-1] if found else None
        if (
            last is not None
            and last.table == channel.table
            and channel.register <= last.start + last.count
            and end - last.start <= MAX_REGISTERS_IN_ONE_READ
        ):
            count = max(last.count, end - last.start)
            found[-1] = RegisterBlock(last.table, last.start, count, (*last.channels, channel))
        else:
            found.append(
                RegisterBlock(channel.table, channel.register, channel.registers, (channel,))
            )
    return tuple(found)


def _register_channel(table: dict[str, Any], where: str) -> RegisterChannel:
    no_other_keys(table, _REGISTER_KEYS, where)
    scaling = scaling_from(table, where)
    where = f"{where} ({scaling.column})"
    kind = one_of(table, "type", tuple(TYPES), where)
    registers = TYPES[kind][0]
    register = table.get("register")
    if type(register) is not int or not 0 <= register <= 65_536 - registers:
        raise RefusedInputError(f"{where}: register must be a whole number from 0 to 65535")
    if registers > 1 and "word_order" not in table:
        raise RefusedInputError(f'{where}: {kind} needs word_order = "big" or "little"')
    order = (
        one_of(table, "word_order", ("big", "little"), where) if "word_order" in table else "big"
    )
    return RegisterChannel(
        scaling=scaling,
        table=one_of(table, "table", TABLES, where),
        register=register,
        type=kind,
        word_order=order,
    )
