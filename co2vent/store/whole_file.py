"""Files written whole or not at all: settings, jobs, reports."""

import contextlib
import os
import tempfile
from pathlib import Path

from co2vent.errors import StoreError


def atomic_write(path: Path, data: bytes) -> None:
    """Put `data` under `path`; after any failure the old content, if any, is untouched.

    A device or a pipe is written to as it is: putting a file in its place would break it.

    Raises:
        StoreError: it could not be written.
    """
    temporary = ""
    try:
        if path.exists() and not path.is_file() and not path.is_dir():
            path.write_bytes(data)
            return
        descriptor, temporary = tempfile.mkstemp(prefix=f".{path.name[:100]}.", dir=path.parent)
        with os.fdopen(descriptor, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        _keep_mode(path, temporary)
        Path(temporary).replace(path)
        sync_folder(path.parent)
    except (OSError, ValueError) as error:
        if temporary:
            with contextlib.suppress(OSError):
                Path(temporary).unlink()
        raise StoreError(f"{path}: {words(error)}; choose another folder") from error


def sync_folder(folder: Path) -> None:
    """Make a new or renamed file's name survive a power cut, where the system can."""
    with contextlib.suppress(OSError, AttributeError):  # Windows opens no folders
        descriptor = os.open(folder, os.O_RDONLY | os.O_DIRECTORY)
        try:
            os.fsync(descriptor)
        finally:
            os.close(descriptor)


def words(error: Exception) -> str:
    """Return what the system says of `error`, without number and file name."""
    return (getattr(error, "strerror", None) or str(error)).lower()


def _keep_mode(path: Path, temporary: str) -> None:
    """Give the new file the old one's permissions, or the usual ones."""
    try:
        mode = path.stat().st_mode & 0o777
    except OSError:
        mask = os.umask(0)
        os.umask(mask)
        mode = 0o666 & ~mask
    with contextlib.suppress(OSError):
        Path(temporary).chmod(mode)
