"""The languages of the screen. Files are never translated."""

from importlib.resources import as_file, files
from typing import Final

from PySide6.QtCore import QLocale, QTranslator
from PySide6.QtWidgets import QApplication

ENGLISH: Final = "en"
PREFIX: Final = "co2vent_"
NAMES: Final = {"en": "English", "de": "Deutsch", "es": "Español", "nb": "Norsk"}

_installed: list[QTranslator] = []  # the application does not keep them alive


def available() -> list[str]:
    """Return the languages there are, English first."""
    found = {
        entry.name.removeprefix(PREFIX).removesuffix(".qm")
        for entry in files("co2vent.window").iterdir()
        if entry.name.startswith(PREFIX) and entry.name.endswith(".qm")
    }
    return [ENGLISH, *sorted(found)]


def choose(wanted: str) -> str:
    """Return `wanted` where there is such a language, else that of the system, else English."""
    for name in (wanted, QLocale.system().name().partition("_")[0]):
        language = "nb" if name in ("no", "nn") else name
        if language in available():
            return language
    return ENGLISH


def install(app: QApplication, language: str) -> None:
    """Make `language` the language of the screen, and its numbers those of the screen."""
    for old in _installed:
        app.removeTranslator(old)
    _installed.clear()
    if language == ENGLISH:
        QLocale.setDefault(QLocale(QLocale.Language.English, QLocale.Country.UnitedKingdom))
        return
    QLocale.setDefault(QLocale(language))
    translator = QTranslator(app)
    with as_file(files("co2vent.window").joinpath(f"{PREFIX}{language}.qm")) as path:
        if translator.load(str(path)):
            app.installTranslator(translator)
            _installed.append(translator)
