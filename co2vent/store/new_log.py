"""Making a log file that is this program's alone, and saving one whose name is gone."""

import contextlib
import os
from pathlib import Path
from typing import Final

from co2vent.errors import StoreError
from co2vent.store.lock import lock_exclusively
from co2vent.store.rows import torn_bytes
from co2vent.store.whole_file import words

BINARY: Final = getattr(os, "O_BINARY", 0)  # Windows would turn LF into CR LF
CLOSE_ON_EXEC: Final = getattr(os, "O_CLOEXEC", 0)
_COPY_BYTES: Final = 1 << 20


def make_log(path: Path) -> int:
    """Return a new, locked file; an empty one that is there already will do."""
    flags = os.O_RDWR | os.O_APPEND | os.O_CREAT | BINARY | CLOSE_ON_EXEC
    try:
        try:
            descriptor = os.open(path, flags | os.O_EXCL, 0o666)
        except FileExistsError:
            descriptor = os.open(path, flags, 0o666)
    except OSError as error:
        raise StoreError(f"{path}: {words(error)}; choose another log file") from error
    if not lock_exclusively(descriptor):
        os.close(descriptor)
        raise StoreError(f"{path}: another program is recording to it; choose another log file")
    if os.fstat(descriptor).st_size:
        os.close(descriptor)
        torn = torn_bytes(path)
        cut_off = f" and was cut off ({torn} bytes of its last row); it stays as it is" * bool(torn)
        raise StoreError(
            f"{path}: exists already{cut_off}; choose a new log file, e.g. {name_beside(path)}, "
            "none is written over"
        )
    return descriptor


def name_beside(path: Path) -> Path:
    """Return the first name like `path` that is free: the vent goes on in a file beside it."""
    number = 2
    while (beside := path.with_name(f"{path.stem}-{number}{path.suffix}")).exists():
        number += 1
    return beside


def copy_start(source: int, target: int, size: int) -> int:
    """Copy the first `size` bytes of a file that has lost its name; return how many could be."""
    done = 0
    with contextlib.suppress(OSError):
        while done < size:
            os.lseek(source, done, os.SEEK_SET)
            data = os.read(source, min(_COPY_BYTES, size - done))
            if not data:
                break
            done += os.write(target, data)
    return done
