"""A live vent offered to the job that is open: it takes no vent that nobody gave it."""

from PySide6.QtCore import QEvent, Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from co2vent.window.job_parts import WrapLabel
from co2vent.window.keys import Key
from co2vent.window.sizes import Sizes
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.words import translate


class JobOffer(QWidget):
    """Asks whether the readings of the live vent belong to this job. Hidden while nothing asks."""

    taken = Signal()
    left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._simulated = False
        self.words = WrapLabel("", self)
        self.take_key = Key("connect", translate("Job", "Take it"), "F8", self.taken.emit, self)
        self.leave_key = Key(
            "back", translate("Job", "Not this job's"), "F10", self.left.emit, self
        )
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.words, 6)
        row.addWidget(self.take_key, 2)
        row.addWidget(self.leave_key, 2)
        self.hide()

    def ask(self, *, simulated: bool) -> None:
        """Ask, and say what would become of the job."""
        if not self.isHidden() and simulated == self._simulated:
            return
        self._simulated = simulated
        self._say()
        self._paint()
        self.show()

    def _say(self) -> None:
        self.words.setText(
            translate(
                "Job",
                "SIMULATED readings come. Take them into this job? It is practice from then on and "
                "can't be signed.",
            )
            if self._simulated
            else translate("Job", "A vent is live. Is it this job's: take its readings?")
        )

    def changeEvent(self, event: QEvent) -> None:
        """Ask in the new language of the screen."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.LanguageChange:
            self._say()

    def set_look(self, palette: Palette, sizes: Sizes) -> None:
        """Take theme and sizes."""
        self._palette = palette
        font = self.words.font()
        font.setPixelSize(sizes.text_px)
        font.setBold(True)
        self.words.setFont(font)
        for key in (self.take_key, self.leave_key):
            key.set_theme(palette)
            key.set_sizes(sizes)
        self._paint()

    def _paint(self) -> None:
        band = self._palette.caution if self._simulated else self._palette.do
        self.words.setStyleSheet(f"background: {band.ground}; color: {band.ink}; padding: 4px;")
