r"""ASCII instruments that answer a query: query string and pattern with named fields, in TOML.

    query = "READ?\r\n"
    end = "\n"                                     # of an answer; a line feed by default
    pattern = 'P=(?P<p>[-+.\d]+) BAR T=(?P<t>\S+)'

    [[channel]]
    field = "p"                                    # of the pattern
    column = "pressure_bar_g"

A channel takes the scaling keys of a register map: scale, offset, invalid, valid_min, valid_max,
signal, range.
"""

import re
import time
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

from co2vent.errors import RefusedInputError
from co2vent.readings.cells import is_over_range, to_number
from co2vent.readings.log_writer import metadata_lines
from co2vent.sentence import Sentence
from co2vent.wire.map_file import (
    SCALING_KEYS,
    Scaling,
    channel_tables,
    check_columns,
    metadata_in,
    no_other_keys,
    read_small_text,
    scaling_from,
    toml_table,
)
from co2vent.wire.polling import DEFAULT_PERIOD_S, REPLY_TIMEOUT_S, PolledSource
from co2vent.wire.serial_port import DEFAULT_BAUD, SerialSource
from co2vent.wire.signals import Fault
from co2vent.wire.source import NO_READING, lost

LONGEST_ANSWER_BYTES: Final = 512  # also bounds what a pattern can be slow on
_CHANNEL_KEYS: Final = SCALING_KEYS | {"field"}


@dataclass(frozen=True, slots=True)
class Dialogue:
    """What to ask, how an answer looks and what its fields mean."""

    query: bytes
    end: bytes
    pattern: re.Pattern[str]
    channels: tuple[tuple[str, Scaling], ...]
    metadata: dict[str, str]

    @property
    def preamble(self) -> tuple[str, ...]:
        """The lines that a log of this instrument begins with."""
        columns = ",".join(scaling.column for _, scaling in self.channels)
        return (*metadata_lines(self.metadata), columns)

    def cells(self, answer: bytes) -> list[str] | None:
        """Return the cells of a row; `None` where the answer is not as the pattern says."""
        try:
            text = answer.decode("ascii").strip()
        except UnicodeDecodeError:
            return None
        match = self.pattern.fullmatch(text)
        if match is None:
            return None
        return [_cell(match[field], scaling) for field, scaling in self.channels]


def load_dialogue(path: Path) -> Dialogue:
    """Return the dialogue in a TOML file; raises `RefusedInputError`."""
    return parse_dialogue(read_small_text(path), str(path))


def parse_dialogue(text: str, name: str) -> Dialogue:
    """Return the dialogue in TOML `text`; `name` stands in the errors."""
    document = toml_table(text, name)
    known = frozenset(("channel", "metadata", "query", "end", "pattern"))
    tables = channel_tables(document, name, known)
    query = _ascii(document, "query", name)
    end = _ascii(document, "end", name, "\n")
    pattern = document.get("pattern")
    if not isinstance(pattern, str):
        raise RefusedInputError(f"{name}: pattern is missing")
    try:
        compiled = re.compile(pattern)
    except (re.error, RecursionError, OverflowError) as error:
        raise RefusedInputError(f"{name}: pattern: {error}") from error
    channels = []
    for table, where in tables:
        no_other_keys(table, _CHANNEL_KEYS, where)
        field = table.get("field")
        if not isinstance(field, str) or field not in compiled.groupindex:
            fields = ", ".join(compiled.groupindex) or "none"
            raise RefusedInputError(f"{where}: field must be one of the pattern's ({fields})")
        channels.append((field, scaling_from(table, where)))
    check_columns([scaling.column for _, scaling in channels], name)
    return Dialogue(query, end, compiled, tuple(channels), metadata_in(document, name))


class PolledAsciiSource(PolledSource):
    """An instrument that answers a query string with a line."""

    def __init__(
        self,
        device: str,
        map_path: Path,
        *,
        baud: int = DEFAULT_BAUD,
        period_s: float = DEFAULT_PERIOD_S,
    ) -> None:
        """Read the dialogue; nothing is opened yet."""
        self._dialogue = load_dialogue(map_path)
        self._line = SerialSource(device, baud)
        super().__init__(f"polled:{device}", self._dialogue.preamble, period_s)

    def open(self) -> None:
        """Open the device."""
        self._line.open()
        self.started()

    def close(self) -> None:
        """Close the device."""
        self._line.close()

    def _ask(self) -> str:
        self._line.clear_input()  # a late answer to the last query must not pass for this one
        self._line.write(self._dialogue.query)
        answer, self.reply = b"", ""
        give_up_at = time.monotonic() + REPLY_TIMEOUT_S
        while self._dialogue.end not in answer:
            left_s = give_up_at - time.monotonic()
            if left_s <= 0.0 or len(answer) > LONGEST_ANSWER_BYTES:
                if self.failed():
                    raise lost(self.label, Sentence("no answer"))
                return f"{NO_READING}: no whole answer in time\n"
            answer += self._line.read(left_s)
            self.reply = repr(answer)[2:-1]
        cells = self._dialogue.cells(answer.partition(self._dialogue.end)[0])
        if cells is None:
            return f"{NO_READING}: the answer is not as the pattern says\n"
        return self.row(cells)


def _cell(text: str | None, scaling: Scaling) -> str:
    """Return the cell for one field: scaled where it is a number, else a word that is none."""
    if not text:
        return ""
    number = to_number(text)
    if number is not None:
        return scaling.cell(number)
    return Fault.OVER_RANGE.value if is_over_range(text) else Fault.FAULT.value


def _ascii(document: dict[str, Any], key: str, name: str, default: str | None = None) -> bytes:
    value = document.get(key, default)
    if not isinstance(value, str) or not value or not value.isascii() or len(value) > 256:
        raise RefusedInputError(f"{name}: {key} must be ASCII text of 1 to 256 characters")
    return value.encode("ascii")
