"""What the running step still waits for, in one place above the keys, and the way to its row.

A long step has its conditions below the fold; the first one missing stands here, whatever is
scrolled.
"""

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QHBoxLayout, QWidget

from co2vent.guidance.job import Job
from co2vent.window.fit_label import FitLabel
from co2vent.window.job_parts import Row
from co2vent.window.keys import Key
from co2vent.window.sentences import spoken
from co2vent.window.sizes import Sizes
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.words import translate


class JobWaits(QWidget):
    """How many things are missing and the first of them; a touch shows the row that it is about."""

    asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._missing = False
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.words = FitLabel(self, bold=True)
        self.key = Key("zoom", translate("Job", "Show it"), "F9", self.asked.emit, self)
        row = QHBoxLayout(self)
        row.setContentsMargins(8, 0, 0, 0)
        row.addWidget(self.words, 7)
        row.addWidget(self.key, 1)

    def show_job(self, job: Job, rows: Sequence[Row]) -> None:
        """Say what the step waits for now."""
        lacks = job.lacks()
        self._missing = bool(lacks)
        if lacks:
            row = row_of(lacks[0], rows, job)
            what = spoken(lacks[0]) if row is None else row.asks(job, lacks[0])
            form = translate("Job", "{count} missing. First: {what}")
            if len(lacks) == 1:
                form = translate("Job", "Missing: {what}")
            self.words.say(form.format(count=len(lacks), what=what))
        else:
            self.words.say(translate("Job", "Nothing is missing here: Step done ends this step."))
        self.key.setEnabled(self._missing)
        self.setVisible(job.step is not None)
        self._paint()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """The words are as good a target as the key."""
        event.accept()
        if self._missing:
            self.asked.emit()

    def set_look(self, palette: Palette, sizes: Sizes) -> None:
        """Take theme and sizes; the height stays, so that nothing jumps under a glove."""
        self._palette = palette
        lines = 3.0 if sizes.portrait else 2.0
        self.words.set_max_px(round(sizes.text_px * 1.25))
        self.setFixedHeight(max(sizes.target_px, round(sizes.text_px * 1.6 * lines)))
        self.key.set_theme(palette)
        self.key.set_sizes(sizes)
        self._paint()

    def _paint(self) -> None:
        band = self._palette.do if self._missing else self._palette.calm
        self.words.set_ink(band.ink)
        self.setStyleSheet(
            f"JobWaits {{ background: {band.ground}; border: 2px solid {self._palette.rule}; }}"
        )


def row_of(lack: str, rows: Sequence[Row], job: Job) -> Row | None:
    """Return the row in which `lack` is answered."""
    exact: Callable[[Row], bool] = lambda row: row.wants == lack  # noqa: E731
    waiting: Callable[[Row], bool] = lambda row: row.waits(job)  # noqa: E731
    for fits in (exact, waiting):
        found = next((row for row in rows if fits(row)), None)
        if found is not None:
            return found
    return None
