"""The lines of a recording and their check: what a power cut or a full disk tore is found again.

A data row ends in a column `row_check`: the CRC-32 of the row's text before that last comma, as
eight hexadecimal digits. An event is a line `# event: TEXT` with its check at the end, which the
readings log's reader passes over.
"""

import os
import re
import zlib
from pathlib import Path
from typing import Final

CHECK_COLUMN: Final = "row_check"
EVENT_PREFIX: Final = "# event: "
HEAD_BYTES: Final = 65_536  # metadata and header are well under this
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


def is_intact_unended(line: bytes) -> bool:
    """Return whether a line without its line end is whole all the same: its check alone tells."""
    unchecked = line.startswith(b"#") and not line.startswith(EVENT_PREFIX.encode())
    return is_intact(line) and not unchecked and not line.endswith(CHECK_COLUMN.encode())


def is_recording(data: bytes) -> bool:
    """Return whether a log was written by this program: its header ends in the check column."""
    lines = data[:HEAD_BYTES].splitlines()
    return any(line.endswith(f",{CHECK_COLUMN}".encode()) for line in lines)


def unpadded(line: bytes) -> bytes:
    """Return a line without what is no part of it: line end, NULs that a power cut left, BOM."""
    return line.removeprefix(b"\xef\xbb\xbf").strip(b"\0\r\n")


def torn_bytes(path: Path) -> int:
    """Return how many bytes a recording's cut-off last line has; 0 for any other file."""
    try:
        with path.open("rb") as file:
            if not is_recording(file.read(HEAD_BYTES)):
                return 0
            size = file.seek(0, os.SEEK_END)
            file.seek(max(0, size - HEAD_BYTES))
            tail = file.read()
            if b"\n" not in tail:  # padding that a power cut left can be long
                file.seek(0)
                tail = file.read()
    except OSError:
        return 0
    last = tail[max(tail.rfind(b"\n"), tail.rfind(b"\r")) + 1 :]
    return 0 if is_intact_unended(unpadded(last)) else len(last)


def _check(data: bytes | str) -> str:
    return f"{zlib.crc32(data if isinstance(data, bytes) else data.encode()):08x}"
