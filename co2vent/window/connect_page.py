"""Connect a gauge: the source and its test, what is known of the section, where readings go."""

import threading
from dataclasses import replace
from datetime import datetime
from pathlib import Path
from typing import Final

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QColor, QHideEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QHBoxLayout,
    QLineEdit,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from co2vent.errors import Co2ventError
from co2vent.guidance.events import Severity
from co2vent.live.monitor import Monitor
from co2vent.readings.metadata import check_values
from co2vent.store.recorder import Recorder
from co2vent.window.connect_form import ConnectForm, FieldGrid
from co2vent.window.fit_label import FitLabel
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.source_box import SourceBox
from co2vent.window.source_panel import SourcePanel
from co2vent.window.source_test import LONGEST_CLOSE_S, SourceTest
from co2vent.window.source_trial import SourceTrial
from co2vent.window.words import translate
from co2vent.wire.parse import parse_source
from co2vent.wire.source import Source

READ_BY: Final = ("altitude_m", "zero_reading", "gauge_full_scale")  # change what a row is read as
# A read in progress ends within 0.3 s; only a server that does not answer takes longer, and
# nothing waits for its port.
LEAVE_WAIT_S: Final = 0.5


def new_log_path(folder: Path, section: str, now: datetime) -> Path:
    """Return a name for a new recording: time and section, nothing that a disk would refuse."""
    plain = "".join(c if c.isalnum() or c in "-_" else "-" for c in section).strip("-")
    stamp = now.strftime("%Y-%m-%d-%H%M%S")
    return folder / (f"{stamp}-{plain}.csv" if plain else f"{stamp}.csv")


class ConnectPage(QWidget):
    """Asks for the source and shows what it sends; everything else may stay empty."""

    back = Signal()
    connected = Signal(object)  # a running Monitor

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.title = FitLabel(self, bold=True)
        self.title.say(translate("Connect", "Connect a gauge"))
        self.source = SourceBox(look.source, self)
        self.columns = QLineEdit(str(look.kept.get("columns", "")), self)
        self.columns.setPlaceholderText("pressure_bar_g,line_temperature_degC")
        self.form = ConnectForm(look.folder(), self)
        self.message = FitLabel(self, bold=True)
        self.panel = SourcePanel(self)
        self.trial = SourceTrial(self.panel, look, self)
        self.trial.turned.connect(self._show_testing)
        self._monitor: Monitor | None = None
        self._failure: str | None = None
        self._opening: threading.Thread | None = None
        self._leaving = threading.Event()
        self._poll = QTimer(self)
        self._poll.setInterval(100)
        self._poll.timeout.connect(self._look_at_opening)
        self._build()

    def _build(self) -> None:
        self.test_key = Key(
            "check_gauge", translate("Connect", "Test the source"), "Ctrl+T", self.toggle_test, self
        )
        self._fields = FieldGrid()
        self._fields.add(translate("Connect", "Source"), self.source)
        self._fields.add(translate("Connect", "Columns, if it sends no names"), self.columns)
        self._top = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._top.addLayout(self._fields, 4)
        self._top.addWidget(self.test_key, 1)
        self._views = QStackedWidget(self)
        self._views.addWidget(self.form)
        self._views.addWidget(self.panel)
        self.back_key = Key("back", translate("Key", "Back"), "Esc", self.back.emit, self)
        self.view_key = Key("views", "", "Ctrl+D", self.turn_view, self)
        self.go_key = Key("connect", translate("Key", "Connect"), "Ctrl+Return", self.go, self)
        keys = QHBoxLayout()
        for part in (self.back_key, self.view_key, self.go_key):
            keys.addWidget(part)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 10, 20, 10)
        column.addWidget(self.title)
        column.addLayout(self._top)
        column.addWidget(self._views, 1)
        column.addWidget(self.message)
        column.addLayout(keys)
        self.source.entered.connect(self.start_test)
        self.columns.returnPressed.connect(self.start_test)
        self.source.editTextChanged.connect(self.trial.forget)
        for line in (self.columns, *(self.form.fields[key] for key in READ_BY)):
            line.textChanged.connect(self.trial.forget)
        self._show_view(self.form)

    def apply_look(self) -> None:
        """Take theme and sizes."""
        sizes = self._look.sizes(self)
        palette = self._look.palette
        self.title.set_ink(palette.ink)
        self.title.set_max_px(round(sizes.text_px * 1.6))
        self.title.setFixedHeight(round(sizes.text_px * 2.2))
        self.message.set_ink(palette.ink)
        self.message.set_max_px(sizes.text_px)
        self.message.setFixedHeight(round(sizes.text_px * (2.8 if self.message.text() else 0.5)))
        self.panel.set_look(palette, sizes)
        self._fields.lay_out(1, sizes)
        for key in (self.back_key, self.view_key, self.go_key, self.test_key):
            key.set_theme(palette)
            key.set_sizes(sizes)
        both_rows_px = 2 * sizes.target_px + self._fields.verticalSpacing()
        self.test_key.set_sizes(
            replace(
                sizes,
                target_px=sizes.target_px if sizes.portrait else both_rows_px,
                small_px=round(sizes.text_px * (1.0 if sizes.portrait else 1.2)),
            )
        )
        self.source.set_row_height(sizes.target_px)
        self.form.set_sizes(sizes)
        self._top.setDirection(
            QBoxLayout.Direction.TopToBottom if sizes.portrait else QBoxLayout.Direction.LeftToRight
        )

    # --- test --------------------------------------------------------------------------------

    def toggle_test(self) -> None:
        """Begin to try the source, or stop."""
        if self.trial.running:
            self.trial.stop()
        else:
            self.start_test()

    def start_test(self) -> None:
        """Try the source in a thread; what it sends is shown until the test is stopped."""
        if self.trial.running or self._opening is not None:
            return
        try:
            metadata = self.form.metadata()
            check_values(metadata)
            source, columns = self._parsed_source(), self.column_names()
        except Co2ventError as error:
            self._tell("")
            # where the eye is: a source that can't be tried is no test that says nothing
            self.panel.verdict.say(str(error), Severity.CAUTION)
            self._show_view(self.panel)
            return
        self._tell("")
        self._show_view(self.panel)
        self.trial.start(source, self.source.currentText().strip(), columns, metadata)

    def _show_testing(self, running: bool) -> None:
        if running:
            self.test_key.set_words(translate("Connect", "Stop the test"), "pause")
        else:
            self.test_key.set_words(translate("Connect", "Test the source"), "check_gauge")

    def turn_view(self) -> None:
        """Turn between what the source sends and what is known of the section."""
        at = 1 - self._views.currentIndex()
        self._show_view(self._views.widget(at))

    def _show_view(self, view: QWidget | None) -> None:
        if view is not None:
            self._views.setCurrentWidget(view)
        words = (
            translate("Connect", "The section")
            if self._views.currentWidget() is self.panel
            else translate("Connect", "The source")
        )
        self.view_key.set_words(words)

    def _tell(self, words: str) -> None:
        """Say what is wrong, or nothing: then its room is the others'."""
        self.message.say(words)
        self.apply_look()

    # --- connect -----------------------------------------------------------------------------

    def column_names(self) -> list[str] | None:
        """Return the names typed for a source that sends none; `None` where it sends its own."""
        typed = self.columns.text().strip()
        return [name.strip() for name in typed.split(",")] if typed else None

    def _parsed_source(self) -> Source:
        source = parse_source(self.source.currentText())
        self._look.source = self.source.currentText().strip()
        self._look.kept["columns"] = self.columns.text().strip()
        return source

    def go(self) -> None:
        """Open the source in a thread: a port that does not answer must not hold the screen up."""
        if self._opening is not None:
            return
        try:
            monitor = self._make_monitor()
        except (Co2ventError, OSError) as error:
            self._tell(str(error))
            return
        self._monitor, self._failure = monitor, None
        self.trial.stop(translate("Connect", "Opening…"))
        self._tell(translate("Connect", "Opening…"))
        self._leaving.clear()
        self._opening = threading.Thread(
            target=self._open, args=(monitor, self.trial.last), daemon=True
        )
        self._opening.start()
        self._poll.start()

    def _make_monitor(self) -> Monitor:
        metadata = self.form.metadata()
        check_values(metadata)
        source = self._parsed_source()
        folder = Path(self.form.folder.text().strip() or self._look.folder())
        folder.mkdir(parents=True, exist_ok=True)
        path = new_log_path(folder, metadata.get("section_name", ""), datetime.now().astimezone())
        self._look.kept["folder"] = str(folder)
        self._look.save()
        columns = self.column_names()
        return Monitor(source, columns=columns, overrides=metadata, recorder=Recorder(path))

    def _open(self, monitor: Monitor, test: SourceTest | None) -> None:
        """Open the source once the test has closed it: two readers steal each other's bytes."""
        if test is not None:
            test.wait(LONGEST_CLOSE_S)
        try:
            if not self._leaving.is_set():
                monitor.start()
        except Co2ventError as error:
            self._failure = str(error)
        if self._leaving.is_set():
            monitor.stop()

    def _look_at_opening(self) -> None:
        if self._opening is None or self._opening.is_alive():
            return
        self._poll.stop()
        self._opening = None
        if self._failure is not None:
            self._tell(self._failure)
        elif self._monitor is not None:
            self.connected.emit(self._monitor)

    def close_feed(self) -> None:
        """Let go of the source that is tried and of a monitor that is still opening."""
        self._poll.stop()
        self.trial.stop()
        if self.trial.last is not None:
            self.trial.last.wait(LEAVE_WAIT_S)
        opening, self._opening = self._opening, None
        if opening is not None:
            self._leaving.set()
            opening.join(LEAVE_WAIT_S)
            if not opening.is_alive() and self._monitor is not None:
                self._monitor.stop()

    def hideEvent(self, event: QHideEvent) -> None:
        """A test that nobody sees must not hold a port; a minimised window is still in use."""
        super().hideEvent(event)
        if not event.spontaneous():
            self.trial.stop()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the page."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._look.palette.page))
        painter.end()
