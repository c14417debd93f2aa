"""The simulated vents that ship with the program, to look at and to learn from."""

from collections.abc import Callable
from importlib.resources import files
from itertools import zip_longest
from typing import Final

from PySide6.QtCore import Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QGridLayout, QVBoxLayout, QWidget

from co2vent.window.fit_label import FitLabel
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.words import QT_TRANSLATE_NOOP, translate

DIGITS: Final = "1234567890"  # the strokes of the first ten
# What each shows, in the order in which to look at them.
TITLES = {
    "liquid-left-bare.csv": QT_TRANSLATE_NOOP("Samples", "Liquid left, bare steel"),
    "vapour-only.csv": QT_TRANSLATE_NOOP("Samples", "Vapour only"),
    "liquid-left-insulated.csv": QT_TRANSLATE_NOOP("Samples", "Liquid left, insulated"),
    "no-power.csv": QT_TRANSLATE_NOOP("Samples", "Liquid left, quiet pressure"),
    "leak-by.csv": QT_TRANSLATE_NOOP("Samples", "A valve leaks by"),
    "dry-ice.csv": QT_TRANSLATE_NOOP("Samples", "Dry ice"),
    "liquid-full.csv": QT_TRANSLATE_NOOP("Samples", "Shut in full of liquid"),
    "altitude-psig.csv": QT_TRANSLATE_NOOP("Samples", "At 1600 m, gauge in psig"),
    "no-valve-column.csv": QT_TRANSLATE_NOOP("Samples", "Valve not recorded"),
    "foreign-logger.csv": QT_TRANSLATE_NOOP("Samples", "From another logger"),
}


def sample_names() -> list[str]:
    """Return the file names of the shipped logs, in the order of `TITLES`."""
    names = sorted(
        entry.name
        for entry in files("co2vent.sample_logs").iterdir()
        if entry.name.endswith(".csv") and not entry.name.endswith(".truth.csv")
    )
    order = list(TITLES)
    return sorted(names, key=lambda name: order.index(name) if name in order else len(order))


class SamplesPage(QWidget):
    """One key a sample."""

    back = Signal()

    def __init__(
        self, look: Look, open_sample: Callable[[str], object], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._look = look
        self.title = FitLabel(self, bold=True)
        self.title.say(
            translate("Samples", "Simulated vents: invented readings, replayed at ten times speed")
        )
        self.keys = [
            Key("play", self._words(name), digit, self._opener(open_sample, name), self)
            for name, digit in zip_longest(sample_names(), DIGITS, fillvalue="")
            if name
        ]
        self.back_key = Key("back", translate("Key", "Back"), "Esc", self.back.emit, self)
        self._grid = QGridLayout()
        self._grid.setSpacing(8)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 12, 20, 12)
        column.addWidget(self.title)
        column.addLayout(self._grid, 1)
        column.addWidget(self.back_key)

    @staticmethod
    def _words(name: str) -> str:
        title = TITLES.get(name)
        plain = name.removesuffix(".csv").replace("-", " ")
        return plain if title is None else translate("Samples", title)

    @staticmethod
    def _opener(open_sample: Callable[[str], object], name: str) -> Callable[[], object]:
        return lambda: open_sample(name)

    def apply_look(self) -> None:
        """Take theme and sizes."""
        sizes = self._look.sizes(self)
        self.title.set_ink(self._look.palette.ink)
        self.title.set_max_px(round(sizes.text_px * 1.4))
        self.title.setFixedHeight(round(sizes.text_px * 3.6))
        columns = 2 if sizes.portrait else 3
        for at in range(columns):
            self._grid.setColumnStretch(at, 1)
        for place, key in enumerate([*self.keys, self.back_key]):
            key.set_theme(self._look.palette)
            key.set_sizes(sizes)
            if key is not self.back_key:
                self._grid.addWidget(key, place // columns, place % columns)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the page."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._look.palette.page))
        painter.end()
