"""Saving from a page: a new file in the person's folder, and a message that says where it is."""

from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from co2vent.errors import Co2ventError
from co2vent.window.export import free_path
from co2vent.window.words import translate

if TYPE_CHECKING:
    from co2vent.window.vent_page import VentPage


def save_as(page: "VentPage", ending: str, write: Callable[[Path], object]) -> None:
    """Write a new file with `write`, which returns False where it could not; say how it went."""
    folder = page.look.folder()
    stem = f"{page.feed.mode.value}-{datetime.now().astimezone():%Y-%m-%d-%H%M%S}"
    try:
        folder.mkdir(parents=True, exist_ok=True)
        path = free_path(folder, stem, ending)
        written = write(path) is not False
    except (OSError, Co2ventError) as error:
        page.say(str(error))
        return
    if written:
        page.say(translate("Command", "Saved: {path}").format(path=path))
    else:
        page.say(translate("Command", "Could not be written: {path}").format(path=path))
