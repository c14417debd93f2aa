"""A recording that was cut off or damaged: what is wrong with it, and a whole copy of it.

The recording itself is never changed: it may be all the evidence there is of a vent.
"""

import contextlib
import os
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any, BinaryIO, Final

from co2vent.errors import RefusedInputError, StoreError
from co2vent.store.lock import lock_exclusively
from co2vent.store.new_log import make_log, name_beside
from co2vent.store.rows import (
    HEAD_BYTES,
    checked_event,
    is_intact,
    is_intact_unended,
    is_recording,
    unpadded,
)
from co2vent.store.whole_file import sync_folder, words

MAX_LINE_BYTES: Final = 8192  # as the log's reader: a row is under 200 bytes
_WRITE_BYTES: Final = 1 << 20


@dataclass(frozen=True, slots=True)
class Damage:
    """What a recording has lost."""

    lines_kept: int = 0
    damaged_lines: int = 0  # whole lines, check not passed
    torn_bytes: int = 0  # of a last line that is not whole, and padding after it

    @property
    def any(self) -> bool:
        """Whether anything was lost."""
        return bool(self.damaged_lines or self.torn_bytes)

    @property
    def text(self) -> str:
        """What was lost, in words."""
        torn = f"the last row was cut off ({self.torn_bytes} bytes)" if self.torn_bytes else ""
        rows = "row" if self.damaged_lines == 1 else "rows"
        failed = f"{self.damaged_lines} {rows} with a failed check sum"
        return "; ".join(part for part in (torn, failed if self.damaged_lines else "") if part)


def mended_copy(path: Path, copy: Path, usable: Callable[[Path], Any] = lambda _: None) -> Damage:
    """Write the whole lines of the recording `path` to the new file `copy`; return what was lost.

    The copy of a whole recording is the same byte for byte; that of another ends in an event that
    says what is left out. A row that lacks its line end only, and passes its check, is whole.

    Args:
        path: the recording; it is only read.
        copy: a file that is not there yet.
        usable: is given the copy and raises `RefusedInputError` where it is of no use; it is then
            taken away again.

    Raises:
        StoreError: a program is recording to the file, or the copy exists or can't be written.
        RefusedInputError: the file is not a recording of this program.
    """
    try:
        with path.open("rb") as file:
            if not lock_exclusively(file.fileno()):
                raise StoreError(f"{path}: a program is recording to it; wait for its end")
            if not is_recording(file.read(HEAD_BYTES)):
                raise RefusedInputError(
                    f"{path}: not a recording with row checks, so nothing tells whole rows from "
                    "damaged ones; assess reads it as it is"
                )
            if copy.exists() and copy.samefile(path):
                raise StoreError(f"{copy}: the copy needs a name of its own")
            file.seek(0)
            descriptor = make_log(copy)
            try:
                damage = _copy_whole_lines(file, descriptor, path.name)
                usable(copy)
            except (OSError, RefusedInputError):
                with contextlib.suppress(OSError):
                    copy.unlink()
                raise
            finally:
                os.close(descriptor)
    except OSError as error:
        raise StoreError(f"{path} to {copy}: {words(error)}; check both names") from error
    sync_folder(copy.parent)
    return damage


def mended_name(path: Path) -> Path:
    """Return the first free name for a copy of `path`."""
    name = path.with_name(f"{path.stem}-mended{path.suffix}")
    return name_beside(name) if name.exists() else name


def _copy_whole_lines(file: BinaryIO, descriptor: int, name: str) -> Damage:
    kept = damaged = torn = 0
    waiting = bytearray()
    for line, length, ended in _lines(file):
        if is_intact(line) if ended else is_intact_unended(line):
            kept += 1
            waiting += line + b"\n"
        elif ended:
            damaged += bool(line)
        else:
            torn = length
        if len(waiting) > _WRITE_BYTES:
            _write_all(descriptor, waiting)
            waiting.clear()
    damage = Damage(kept, damaged, torn)
    if damage.any:
        shown = "".join(c if c.isprintable() else "?" for c in name)
        waiting += checked_event(f"mended copy of {shown}: {damage.text}; the whole rows are here")
    _write_all(descriptor, waiting)
    os.fsync(descriptor)
    return damage


def _lines(file: BinaryIO) -> Iterator[tuple[bytes, int, bool]]:
    """Yield lines without padding and line end, how long they were, and whether they ended."""
    while line := file.readline(MAX_LINE_BYTES):
        length, end = len(line), line[-1:]
        while end != b"\n" and (more := file.readline(MAX_LINE_BYTES)):
            length, end = length + len(more), more[-1:]
            if unpadded(more):
                line = b"too long for a row"
        *before, line = line.removesuffix(b"\n").split(b"\r")  # a line end too, as for the reader
        for part in before:
            length -= len(part) + 1
            yield unpadded(part), len(part), True
        yield unpadded(line), length, end == b"\n"


def _write_all(descriptor: int, data: bytes | bytearray) -> None:
    view = memoryview(bytes(data))
    while view:
        view = view[os.write(descriptor, view) :]
