"""The lines of a recording and their check: what a power cut or a full disk tore is found again.

A data row ends in a column `row_check`: the CRC-32 of the row's text before that last comma, as
eight hexadecimal digits. An event is a line `# event: TEXT` with its check at the end, which the
readings log's reader passes over.
"""

import re
import zlib
from typing import Final

CHECK_COLUMN: Final = "row_check"
EVENT_PREFIX: Final = "# event: "
_HEAD_BYTES: Final = 65_536  # metadata and header are well under this
_CHECKED_EVENT: Final = re.compile(rb"(# event: .*) \[([0-9a-f]{8})\]")
_CHECKED_ROW: Final = re.compile(rb"(.*),([0-9a-f]{8})")


def checked_row(text: str) -> bytes:
    """Return the line of a data row: `text`, which has no line end, with its check.

    >>> checked_row("0.0,19.02,closed")
    b'0.0,19.02,closed,9b0ed5a8\\n'
    """
    return f"{text},{_check(text.encode())}\n".encode()


def checked_event(text: str) -> bytes:
    """Return the line of an event; line ends in `text` become spaces."""
    line = EVENT_PREFIX + " ".join(text.split())
    return f"{line} [{_check(line.encode())}]\n".encode()


def is_intact(line: bytes) -> bool:
    """Return whether a line without its line end is whole, as far as it has a check.

    Metadata and header have none: they are whole when they end in a line end.
    """
    if line.startswith(EVENT_PREFIX.encode()):
        match = _CHECKED_EVENT.fullmatch(line)
    elif line.startswith(b"#"):
        return b"\0" not in line
    else:
        if line.endswith(CHECK_COLUMN.encode()):
            return b"\0" not in line
        match = _CHECKED_ROW.fullmatch(line)
    return match is not None and _check(match[1]).encode() == match[2]


def is_recording(data: bytes) -> bool:
    """Return whether a log was written by this program: its header ends in the check column."""
    lines = data[:_HEAD_BYTES].splitlines()
    return any(line.endswith(f",{CHECK_COLUMN}".encode()) for line in lines)


def whole_bytes(data: bytes) -> int:
    """Return how many bytes of the end of a recording are to be kept.

    Cuts the torn line at the end, and lines before it that do not pass their check (padding that
    a power cut left behind), back to the last good one.
    """
    end = data.rfind(b"\n") + 1
    while end:
        start = data.rfind(b"\n", 0, end - 1) + 1
        if is_intact(data[start : end - 1]):
            return end
        end = start
    return 0


def _check(data: bytes | str) -> str:
    return f"{zlib.crc32(data if isinstance(data, bytes) else data.encode()):08x}"
