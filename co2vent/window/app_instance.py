"""The one QApplication of the process."""

import sys
from typing import Final

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication

from co2vent.window.garbage import GarbageTimer

# What the window waits for when another thread computes, each time it asks for the interpreter; a
# frame asks some ten times. Python's own 5 ms makes a frame of 10 ms one of 50 ms.
SWITCH_S: Final = 0.001


def application() -> QApplication:
    """Return the one QApplication, made at the first call."""
    present = QApplication.instance()
    if isinstance(present, QApplication):
        return present
    QGuiApplication.setHighDpiScaleFactorRoundingPolicy(
        Qt.HighDpiScaleFactorRoundingPolicy.PassThrough
    )
    sys.setswitchinterval(SWITCH_S)
    app = QApplication(["co2vent"])
    app.setApplicationName("co2vent")
    app.setDesktopFileName("co2vent")
    app.setStyle("Fusion")  # the same look and sizes on every desktop
    GarbageTimer(app).start_collecting()
    return app
