"""The one QApplication of the process."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication


def application() -> QApplication:
    """Return the one QApplication, made at the first call."""
    present = QApplication.instance()
    if isinstance(present, QApplication):
        return present
    QGuiApplication.setHighDpiScaleFactorRoundingPolicy(
        Qt.HighDpiScaleFactorRoundingPolicy.PassThrough
    )
    app = QApplication(["co2vent"])
    app.setApplicationName("co2vent")
    app.setDesktopFileName("co2vent")
    app.setStyle("Fusion")  # the same look and sizes on every desktop
    return app
