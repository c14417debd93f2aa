"""Reads a large log in a thread, so that the window stays alive meanwhile."""

from pathlib import Path
from threading import Thread
from typing import Final

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from co2vent.errors import Co2ventError
from co2vent.readings.log_file import LogFile, read_log
from co2vent.window.fit_label import FitLabel
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.words import translate

LARGE_BYTES: Final = 5_000_000  # about a tenth of a second to read


class LoadingPage(QWidget):
    """Says what is being read; a log that can't be read is said in a sentence."""

    back = Signal()
    loaded = Signal(object)  # a LogFile
    refused = Signal(str)

    def __init__(self, path: Path, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self._path = path
        self._log: LogFile | None = None
        self._failure = ""
        self._given_up = False
        self.words = FitLabel(self, bold=True)
        size = path.stat().st_size / 1e6
        self.words.say(
            translate("Loading", "Reading {name}, {size} MB…").format(
                name=path.name, size=round(size)
            )
        )
        self.back_key = Key("back", translate("Key", "Back"), "Esc", self._give_up, self)
        column = QVBoxLayout(self)
        column.addWidget(self.words, 1)
        column.addWidget(self.back_key)
        self._thread = Thread(target=self._read, name="loading", daemon=True)
        self._poll = QTimer(self)
        self._poll.setInterval(50)
        self._poll.timeout.connect(self._look_at_thread)

    def start(self) -> None:
        """Begin to read."""
        self._thread.start()
        self._poll.start()

    def _read(self) -> None:
        try:
            self._log = read_log(self._path)
        except Co2ventError as error:
            self._failure = str(error)

    def _look_at_thread(self) -> None:
        if self._thread.is_alive():
            return
        self._poll.stop()
        if self._given_up:
            return
        if self._log is None:
            self.refused.emit(self._failure)
        else:
            self.loaded.emit(self._log)

    def _give_up(self) -> None:
        self._given_up = True
        self.back.emit()

    def close_feed(self) -> None:
        """Stop looking; the thread ends by itself and its log is dropped."""
        self._given_up = True
        self._poll.stop()

    def apply_look(self) -> None:
        """Take theme and sizes."""
        sizes = self._look.sizes(self)
        self.words.set_ink(self._look.palette.ink)
        self.words.set_max_px(round(sizes.text_px * 1.6))
        self.back_key.set_theme(self._look.palette)
        self.back_key.set_sizes(sizes)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the page."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._look.palette.page))
        painter.end()
