"""Loads the plotting library in a thread of its own: 0.3 s of computing in which figures go on."""

import sys
from importlib import import_module
from threading import Thread
from typing import Final

MODULE: Final = "co2vent.window.plots_panel"
LAST_NAME: Final = "PlotsPanel"  # defined when the module has been run to its end

_threads: list[Thread] = []


def load_behind() -> None:
    """Begin to load, where nobody has yet."""
    if not _threads and not loaded():
        thread = Thread(target=import_module, args=(MODULE,), name="drawing library", daemon=True)
        _threads.append(thread)
        thread.start()


def loaded() -> bool:
    """Return whether the pictures can be imported without a wait.

    Also where loading has failed: then the import says why to whoever asks for it.
    """
    if _threads and not _threads[0].is_alive():
        return True
    return hasattr(sys.modules.get(MODULE), LAST_NAME)
