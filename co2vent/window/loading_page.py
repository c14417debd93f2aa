"""A large log while it is read and checked: its trace as soon as it can be drawn, UNCHECKED.

This page has no prompt, verdict, figures or export at all, so nothing on it can pass for checked.
"""

from pathlib import Path
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from co2vent.guidance.session import View, begin, view
from co2vent.readings.reading import Setup
from co2vent.window import drawing_library
from co2vent.window.banner import Banner
from co2vent.window.fit_label import FitLabel
from co2vent.window.frame import Mode
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.opening import Opening
from co2vent.window.traces import Traces
from co2vent.window.unchecked_band import UncheckedBand
from co2vent.window.words import translate

if TYPE_CHECKING:
    from co2vent.window.trace_plot import TracePlot

POLL_MS: Final = 50
SOON_MS: Final = 1


class LoadingPage(QWidget):
    """Says what is being read and shows it; a log that can't be read is said in a sentence."""

    back = Signal()
    loaded = Signal(object)  # a ReplayIndex that has not begun to run
    refused = Signal(str)

    def __init__(
        self, path: Path, opening: Opening, look: Look, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._look = look
        self._name = path.name
        self.opening = opening
        self.plot: TracePlot | None = None
        self._drawn: tuple[Traces, View] | None = None
        self.banner = Banner(self)
        self.band = UncheckedBand(self)
        self.band.hide()
        self.words = FitLabel(self, bold=True)
        self._say_reading()
        self.back_key = Key("back", translate("Key", "Back"), "Esc", self._give_up, self)
        self.zoom_key = Key("zoom", translate("Key", "Zoom"), "Z", self.show_whole, self)
        self.zoom_key.hide()
        self._column = QVBoxLayout(self)
        self._column.addWidget(self.banner)
        self._column.addWidget(self.band)
        self._column.addWidget(self.words, 1)
        keys = QHBoxLayout()
        keys.addWidget(self.back_key)
        keys.addWidget(self.zoom_key)
        self._column.addLayout(keys)
        self._poll = QTimer(self)
        self._poll.setInterval(POLL_MS)
        self._poll.timeout.connect(self._look_at_opening)

    @property
    def shows_trace(self) -> bool:
        """Whether the unchecked trace is on the screen."""
        return self._drawn is not None and self.plot is not None and self.plot.isVisible()

    def start(self) -> None:
        """Begin to read."""
        self.opening.start()
        self._poll.start()

    def _say_reading(self) -> None:
        size = round(self.opening.size / 1e6)
        if self.opening.looked:
            words = translate(
                "Loading", "Reading {name} row by row: {percent} % of {size} MB checked…"
            ).format(name=self._name, size=size, percent=int(100 * self.opening.share))
        else:
            words = translate("Loading", "Reading {name}, {size} MB…").format(
                name=self._name, size=size
            )
        self.words.say(words)

    def _look_at_opening(self) -> None:
        opening = self.opening
        if opening.checked is not None:
            self._poll.stop()
            self.loaded.emit(opening.checked)
        elif opening.failure:
            self._poll.stop()
            self.refused.emit(opening.failure)
        elif self._drawn is not None:
            self.band.show_share(opening.share)
        elif opening.unchecked is None or not drawing_library.loaded():
            self._say_reading()
        elif self.plot is None:
            self._make_plot()
        else:
            self._show_unchecked(*opening.unchecked)

    def _make_plot(self) -> None:
        """Make the empty plot; it is filled at the next turn, so that neither is a long wait."""
        self._poll.stop()  # where this fails, it fails once
        from co2vent.window.trace_plot import TracePlot  # loaded by the opening already

        self.plot = TracePlot(self)
        self.plot.hide()
        self._column.insertWidget(2, self.plot, 1)
        self._poll.start(SOON_MS)

    def _show_unchecked(self, traces: Traces, setup: Setup) -> None:
        assert self.plot is not None
        self._drawn = (traces, view(begin(setup)))  # a session that has seen no reading
        self.words.hide()
        self.plot.show()
        self.band.show_share(self.opening.share)
        self.band.show()
        self.banner.show_mode(Mode.REPLAY, simulated=setup.simulated)
        self.zoom_key.show()
        self.apply_look()
        self._poll.start(POLL_MS)
        self.plot.pressure.getViewBox().sigXRangeChanged.connect(self.opening.stand_back)
        QTimer.singleShot(POLL_MS, self, self.opening.trace_is_shown)

    def _draw(self) -> None:
        if self.plot is not None and self._drawn is not None:
            traces, seen = self._drawn
            self.plot.show_trace(traces, len(traces), seen)
            ink, size = self._look.palette.ink, self._look.sizes(self).text_px
            word = translate("Loading", "UNCHECKED")
            self.plot.pressure.setTitle(word, bold=True, color=ink, size=f"{size}px")

    def show_whole(self) -> None:
        """Show the whole trace again."""
        if self.plot is not None:
            self.plot.range.start_anew()
            self._draw()

    def _give_up(self) -> None:
        self.close_feed()
        self.back.emit()

    def close_feed(self) -> None:
        """Stop looking and reading; what was read is dropped."""
        self._poll.stop()
        self.opening.give_up()

    def apply_look(self) -> None:
        """Take theme, sizes and units."""
        sizes, palette = self._look.sizes(self), self._look.palette.practice()
        self.words.set_ink(palette.ink)
        self.words.set_max_px(round(sizes.text_px * 1.6))
        for part in (self.banner, self.band):
            part.set_theme(palette)
            part.set_sizes(sizes)
        for key in (self.back_key, self.zoom_key):
            key.set_theme(palette)
            key.set_sizes(sizes)
        if self.plot is not None:
            self.plot.set_theme(palette)
            self.plot.set_sizes(sizes)
            self.plot.set_units(self._look.units)
            self._draw()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the page."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._look.palette.practice().page))
        painter.end()
