"""Facts about the instrument itself: age of the data, valve, recording, source, sound."""

from typing import Final

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from co2vent.guidance.events import Severity
from co2vent.window.fit_label import FitLabel
from co2vent.window.sizes import Sizes
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.words import translate

STALE_SHARE: Final = 0.8  # of the size of the words: it has to leave them room


def named(name: str, words: str) -> str:
    """Return `words` under their name, which is not said twice."""
    return words if words.casefold().startswith(name.casefold()) else f"{name}: {words}"


class _Words(FitLabel):
    """Words that can be struck through."""

    _struck = False

    def strike(self, *, struck: bool) -> None:
        """Strike the words through, or no longer."""
        if struck is not self._struck:
            self._struck = struck
            self._fitted = None
            self.update()

    def _font_of(self, pixel_size: int) -> QFont:
        font = super()._font_of(pixel_size)
        font.setStrikeOut(self._struck)
        return font


class Cell(QWidget):
    """A few words that turn into a band of their own when they are bad news.

    Old words are struck through, as the large digits are, and STALE stands before them.
    """

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._bad: Severity | None = None
        self._name = name
        self._old = False
        self.label = _Words(self, align=Qt.AlignmentFlag.AlignHCenter)
        self.stale = FitLabel(self, bold=True, wrap=False)
        self.stale.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Preferred)
        self.stale.hide()
        row = QHBoxLayout(self)
        row.setContentsMargins(6, 1, 6, 1)
        row.setSpacing(4)
        row.addWidget(self.stale)
        row.addWidget(self.label, 1)

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        ink = palette.ink if self._bad is None else palette.band(self._bad).ink
        self.label.set_ink(palette.faint if self._old else ink)
        self.stale.set_ink(ink)
        self.update()

    def set_max_px(self, max_px: int) -> None:
        """Set the largest font size [logical pixels]."""
        self.label.set_max_px(max_px)
        self.stale.set_max_px(round(max_px * STALE_SHARE))
        self.stale.setFixedWidth(self.stale.sizeHint().width() + 2)

    def say(self, words: str, bad: Severity | None = None, *, old: bool = False) -> None:
        """Show words, on the ground of `bad` where they are bad news, struck where they are old."""
        if (words, old) != (self.label.text(), self._old):
            self.label.say(words)
            self.label.strike(struck=old)
            stale = translate("Text", "STALE")
            self.stale.say(stale)
            self.stale.setVisible(old)
            self.stale.setFixedWidth(self.stale.sizeHint().width() + 2)
            self.setVisible(bool(words))  # an empty cell leaves its room to the others
            name = named(self._name, words)
            self.setAccessibleName(f"{stale}: {name}" if old else name)
        if (bad, old) != (self._bad, self._old):
            self._bad, self._old = bad, old
            self.set_theme(self._palette)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the ground, if it has one of its own."""
        if self._bad is not None:
            painter = QPainter(self)
            painter.fillRect(self.rect(), QColor(self._palette.band(self._bad).ground))
            painter.end()


class StatusRow(QWidget):
    """Age, valve, temperature, recording, source."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.age = Cell(translate("Spoken", "age of the newest reading"), self)
        self.valve = Cell("", self)  # its words name it
        self.temperature = Cell(translate("Spoken", "temperature"), self)
        self.recording = Cell(translate("Spoken", "recording"), self)
        self.sound = Cell(translate("Spoken", "sound"), self)
        self.source = Cell(translate("Spoken", "source"), self)
        self._first, self._second = QHBoxLayout(), QHBoxLayout()
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 0, 4, 0)
        column.setSpacing(2)
        for row in (self._first, self._second):
            row.setSpacing(4)
            column.addLayout(row)
        self.recording.hide()
        self._stretches = (
            (self.age, 4),
            (self.valve, 4),
            (self.temperature, 4),
            (self.recording, 4),
            (self.sound, 2),
            (self.source, 4),
        )
        self._lay_out(two_rows=False)
        self.sound.hide()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def _lay_out(self, *, two_rows: bool) -> None:
        for place, (cell, stretch) in enumerate(self._stretches):
            row = self._second if two_rows and place >= len(self._stretches) // 2 else self._first
            row.addWidget(cell, stretch)  # takes it out of the row where it was

    @property
    def cells(self) -> tuple[Cell, ...]:
        """All cells."""
        return (
            self.age, self.valve, self.temperature, self.recording, self.sound, self.source,
        )  # fmt: skip

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        for cell in self.cells:
            cell.set_theme(palette)

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self._lay_out(two_rows=sizes.portrait)
        self.setFixedHeight(round(sizes.text_px * (3.2 if sizes.portrait else 1.6)))
        for cell in self.cells:
            cell.set_max_px(sizes.text_px)

    def show_sound(self, *, works: bool) -> None:
        """Show NO SOUND while no sound can be made."""
        self.sound.say("" if works else translate("Status", "NO SOUND"), Severity.CAUTION)

    def show_recording(self, recording: bool | None, words: str) -> None:
        """Show whether readings are being kept; NOT RECORDING stays until they are."""
        if recording is None:
            self.recording.say(words)
        elif recording:
            self.recording.say(words or translate("Status", "recording"))
        else:
            self.recording.say(translate("Status", "NOT RECORDING"), Severity.CAUTION)
