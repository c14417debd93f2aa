"""The user's settings: a small JSON file, with the one before it as a spare."""

import json
import os
import sys
from pathlib import Path
from typing import Final

from co2vent.errors import StoreError
from co2vent.store.whole_file import atomic_write

MAX_BYTES: Final = 262_144
FILE_NAME: Final = "settings.json"
_NOT_SETTINGS: Final = (OSError, ValueError, RecursionError)


def settings_folder() -> Path:
    """Return the folder of the user's settings; `CO2VENT_CONFIG_DIR` names another."""
    own = os.environ.get("CO2VENT_CONFIG_DIR")
    if own:
        return Path(own)
    if sys.platform == "win32":
        return Path(os.environ.get("APPDATA") or Path.home() / "AppData" / "Roaming") / "co2vent"
    if sys.platform == "darwin":
        return Path.home() / "Library" / "Application Support" / "co2vent"
    # the XDG base directory specification ignores a relative path here
    configured = Path(os.environ.get("XDG_CONFIG_HOME", ""))
    return (configured if configured.is_absolute() else Path.home() / ".config") / "co2vent"


def load_settings(path: Path | None = None) -> dict[str, object]:
    """Return the settings; the spare where the file is broken, nothing where there is neither."""
    path = path or settings_folder() / FILE_NAME
    for candidate in (path, _spare(path)):
        try:
            return _read(candidate)
        except _NOT_SETTINGS:
            continue
    return {}


def save_settings(settings: dict[str, object], path: Path | None = None) -> None:
    """Write the settings whole or not at all; the ones before stay as the spare.

    Raises:
        StoreError: they could not be written.
    """
    path = path or settings_folder() / FILE_NAME
    data = (json.dumps(settings, indent=1, sort_keys=True, allow_nan=False) + "\n").encode()
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise StoreError(f"{path.parent}: cannot be made; settings are not kept") from error
    try:
        old = path.read_bytes()
        _read(path)
    except _NOT_SETTINGS:
        old = b""  # a broken file must not replace a good spare
    if old:
        atomic_write(_spare(path), old)
    atomic_write(path, data)


def _spare(path: Path) -> Path:
    return path.with_name(path.name + ".before")


def _read(path: Path) -> dict[str, object]:
    if path.stat().st_size > MAX_BYTES:
        raise ValueError("too large to be settings")
    document = json.loads(path.read_bytes())
    if not isinstance(document, dict):
        raise ValueError("settings are not an object")
    return document
