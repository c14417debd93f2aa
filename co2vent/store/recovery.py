"""A recording that was not closed: its torn end is cut, and what was done is said."""

import os
from dataclasses import dataclass
from pathlib import Path

from co2vent.errors import StoreError
from co2vent.store.lock import lock_exclusively
from co2vent.store.rows import is_recording, whole_bytes
from co2vent.store.whole_file import words


@dataclass(frozen=True, slots=True)
class Recovery:
    """What was found at the end of a recording that was not closed."""

    bytes_removed: int
    text: str = ""


def recover(path: Path) -> Recovery:
    """Cut the torn end of a recording, so that it ends on a whole line; doing it twice is harmless.

    Raises:
        StoreError: another program writes the log, or the file cannot be written.
    """
    try:
        with path.open("r+b") as file:
            if not lock_exclusively(file.fileno()):
                raise StoreError(f"{path}: another program is recording to it; wait for its end")
            data = file.read()
            # only this program's own recordings are mended
            keep = whole_bytes(data) if is_recording(data) else len(data)
            if keep == len(data):
                return Recovery(0)
            file.truncate(keep)
            os.fsync(file.fileno())
    except OSError as error:
        raise StoreError(f"{path}: {words(error)}; copy the log and open the copy") from error
    removed = len(data) - keep
    return Recovery(removed, f"{path.name}: {removed} bytes of a torn last line were removed")
