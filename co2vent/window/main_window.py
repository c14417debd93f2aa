"""The window: one page at a time, and the choices that hold for all of them."""

import time
from importlib.resources import as_file, files
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QFileDialog

from co2vent.errors import Co2ventError
from co2vent.readings.log_file import LARGE_BYTES, LogFile, read_log
from co2vent.store.rows import torn_bytes
from co2vent.window.app_instance import application
from co2vent.window.commands import Command
from co2vent.window.icons import icon
from co2vent.window.languages import ENGLISH, available, install
from co2vent.window.loading_page import LoadingPage
from co2vent.window.look import Look
from co2vent.window.opening import Opening
from co2vent.window.page_stack import PageStack
from co2vent.window.replay_feed import ReplayFeed
from co2vent.window.replay_index import ReplayIndex
from co2vent.window.replay_notes import notes_beside
from co2vent.window.replay_page import ReplayPage
from co2vent.window.start_choices import start_choices
from co2vent.window.start_page import StartPage
from co2vent.window.style import style_sheet
from co2vent.window.words import translate
from co2vent.window.wrong_file import why_not

if TYPE_CHECKING:
    from co2vent.live.monitor import Monitor
    from co2vent.window.class_page import ClassPage
    from co2vent.window.class_run import ClassRun
    from co2vent.window.live_page import LivePage

SMALLEST = (600, 600)


class MainWindow(PageStack):
    """Start page, vent pages, class and plan."""

    def __init__(self, look: Look) -> None:
        super().__init__(look)
        self.setWindowTitle("co2vent")
        self.setWindowIcon(icon("program"))
        self.setMinimumSize(*SMALLEST)
        self.start_page = self._new_start_page()
        self.pages.addWidget(self.start_page)
        self._add_actions()
        self.apply_look()

    def commands(self) -> list[Command]:
        """Return the commands that every page has."""
        return [
            Command("theme", translate("Command", "Theme"), "T", self.next_theme),
            Command("units", translate("Command", "Units"), "U", self.next_units),
            Command("text_size", translate("Command", "Text size"), "X", self.next_text_size),
            Command(
                "full_screen", translate("Command", "Full screen"), "F11", self.toggle_full_screen
            ),
            Command("language", translate("Command", "Language"), "L", self.next_language),
            Command("job", translate("Command", "Job"), "Ctrl+J", self.open_job),
            Command("leave", translate("Command", "Quit"), "Ctrl+Q", self.close),
        ]

    def _add_actions(self) -> None:
        for command in self.commands():
            action = QAction(command.words, self)
            action.setShortcut(QKeySequence(command.shortcut))
            action.triggered.connect(command.action)
            self.addAction(action)

    def _new_start_page(self) -> StartPage:
        size = Command("ruler", translate("Command", "Screen size"), "K", self.open_calibration)
        commands = [c for c in self.commands() if c.action != self.open_job]
        shown = [*commands[:-1], size, commands[-1]]
        return StartPage(start_choices(self), shown, self.look, self, own=[size])

    # --- pages -------------------------------------------------------------------------------

    def open_connect(self) -> None:
        """Ask for a source."""
        from co2vent.window.connect_page import ConnectPage

        page = ConnectPage(self.look, self)
        page.back.connect(self.go_to_start)
        page.connected.connect(self._connected)
        self.show_page(page)
        page.apply_look()

    def open_plan(self) -> None:
        """Plan a vent."""
        from co2vent.window.plan_page import PlanPage

        units = next(c for c in self.commands() if c.drawing == "units")
        page = PlanPage(self.look, units, self)
        page.back.connect(self.go_to_start)
        self.show_page(page)
        page.apply_look()

    def open_class(self) -> None:
        """Choose an exercise."""
        self._choose_exercise(None)

    def _choose_exercise(self, first: "ClassRun | None") -> None:
        from co2vent.window.class_start import ClassStart

        self.go_to_start()
        page = ClassStart(self.look, first, self)
        page.back.connect(self.go_to_start)
        page.ready.connect(self.run_class)
        self.show_page(page)
        page.apply_look()

    def run_class(self, run: "ClassRun", first: "ClassRun | None" = None) -> "ClassPage":
        """Show a simulated section, beside an earlier run where there is one."""
        from co2vent.window.class_page import ClassPage

        self.go_to_start()
        self._follow_units(run.scenario.setup.pressure_unit)
        page = ClassPage(run, self.look, guided=first is None, parent=self)
        page.set_commands(self.commands())
        page.back.connect(self.go_to_start)
        page.again.connect(self._choose_exercise)
        self.show_page(page)
        page.start()
        if first is not None:
            page.run_beside(first)
        return page

    def open_job(self) -> None:
        """Show the job; a live vent goes on behind it."""
        self.job.open()

    def _connected(self, monitor: object) -> None:
        from co2vent.live.monitor import Monitor

        assert isinstance(monitor, Monitor)
        self.go_to_start()
        self.watch(monitor, recording=True)

    def watch(self, monitor: "Monitor", *, recording: bool) -> "LivePage":
        """Show a monitor that has been started."""
        from co2vent.window.live_feed import LiveFeed
        from co2vent.window.live_page import LivePage
        from co2vent.window.sound import Sounder

        page = LivePage(LiveFeed(monitor, recording=recording), self.look, Sounder(), self)
        page.back.connect(self.go_to_start)
        page.observed.connect(lambda view: self.look.follow(view.setup.pressure_unit))
        page.observed.connect(self.job.observed)
        page.recorded.connect(self.job.recorded)
        page.urgent.connect(self.show_live)
        page.ticked.connect(self._live_ticked)
        page.set_commands(self.commands())
        self.show_page(page)
        page.start()
        return page

    def _live_ticked(self) -> None:
        live = self.live_page()
        if live is not None:
            self.show_strip(live)

    def choose_log(self) -> None:
        """Let the person choose a log, and replay it."""
        name, _filter = QFileDialog.getOpenFileName(
            self, translate("Start", "Open a recorded vent"), "", "CSV (*.csv *.txt *.log);;* (*)"
        )
        if name:
            self.open_log(Path(name))

    def open_samples(self) -> None:
        """Show the vents that ship with the program."""
        from co2vent.window.samples_page import SamplesPage

        page = SamplesPage(self.look, self.open_sample, self)
        page.back.connect(self.go_to_start)
        self.show_page(page)
        page.apply_look()

    def open_sample(self, name: str) -> None:
        """Replay one of the shipped vents."""
        self.go_to_start()
        with as_file(files("co2vent.sample_logs").joinpath(name)) as path:
            self.open_log(path, speed=10.0)
        if isinstance(self.page, ReplayPage) and not self.look.kept.get("toured"):
            self.page.next_of_tour()

    def open_log(self, path: Path, speed: float = 1.0) -> None:
        """Replay the log at `path`; a log that can't be read is said in a sentence."""
        try:
            if path.stat().st_size > LARGE_BYTES:
                self.load(Opening(path), path, speed)
                return
            log = read_log(path)
        except (Co2ventError, OSError) as error:
            self.complain(why_not(path, error))
            return
        self.replay(log, path.name, speed, path)

    def load(self, opening: Opening, path: Path, speed: float, start_s: float = 0.0) -> None:
        """Show a large log while it is read, UNCHECKED, and replay it when it has been checked."""

        def opened(index: ReplayIndex) -> None:
            self.go_to_start()
            self._replay(index, path.name, speed, path).begin_at(start_s)

        def refused(sentence: str) -> None:
            self.go_to_start()
            self.complain(sentence)

        self.go_to_start()
        page = LoadingPage(path, opening, self.look, self)
        page.back.connect(self.go_to_start)
        page.loaded.connect(opened)
        page.refused.connect(refused)
        self.show_page(page)
        page.apply_look()
        page.start()

    def replay(
        self, log: LogFile, name: str, speed: float = 1.0, path: Path | None = None
    ) -> ReplayPage:
        """Show the replay of a log that has been read and checked; notes go beside its `path`."""
        return self._replay(ReplayIndex(log), name, speed, path)

    def _replay(self, index: ReplayIndex, name: str, speed: float, path: Path | None) -> ReplayPage:
        self._follow_units(index.setup.pressure_unit)
        notes = notes_beside(path, self.look.folder())
        torn = path is not None and torn_bytes(path) > 0
        feed = ReplayFeed(index, name, time.monotonic, speed, notes, torn)
        page = ReplayPage(feed, self.look, self)
        page.back.connect(self.go_to_start)
        page.set_commands(self.commands())
        self.show_page(page)
        feed.playing = True
        index.start()  # not earlier: its thread would slow down the making of the page
        page.start()
        return page

    # --- looks -------------------------------------------------------------------------------

    def _follow_units(self, pressure_unit: str) -> None:
        """Speak a log's own units, but for a live vent that stands behind: its figures stay."""
        if self.live_page() is None:
            self.look.follow(pressure_unit)

    def apply_look(self) -> None:
        """Take theme, sizes and units from the look on every page."""
        self.setStyleSheet(style_sheet(self.look.palette, self.look.sizes(self).target_px))
        for place in range(self.pages.count()):
            page = self.pages.widget(place)
            apply = getattr(page, "apply_look", None)
            if apply is not None:
                apply()

    def _changed(self) -> None:
        self.apply_look()
        self.look.save()

    def next_theme(self) -> None:
        """Turn to the other theme."""
        self.look.next_palette()
        self._changed()

    def next_units(self) -> None:
        """Turn to the next choice of units."""
        self.look.next_units()
        self._changed()

    def next_text_size(self) -> None:
        """Turn to the next text size."""
        self.look.next_text_scale()
        self._changed()

    def next_language(self) -> None:
        """Turn to the next language; a page that is open keeps some words until it is left."""
        names = available()
        present = self.look.language if self.look.language in names else ENGLISH
        self.look.language = names[(names.index(present) + 1) % len(names)]
        install(application(), self.look.language)
        old = self.start_page
        self.start_page = self._new_start_page()
        self.pages.insertWidget(0, self.start_page)
        if self.page is old:
            self.pages.setCurrentWidget(self.start_page)
        self.pages.removeWidget(old)
        old.deleteLater()
        self._changed()

    def open_calibration(self) -> None:
        """Let the person say how large the screen is."""
        from co2vent.window.calibrate_page import CalibratePage

        page = CalibratePage(self.look, self)
        page.back.connect(self.go_to_start)
        self.show_page(page)
        page.apply_look()

    def toggle_full_screen(self) -> None:
        """Fill the screen, or not."""
        if self.isFullScreen():
            self.showNormal()
        else:
            self.showFullScreen()

    def save_picture(self, path: Path) -> bool:
        """Write what the window shows as a PNG file; return whether it was written."""
        return self.grab().save(str(path), "PNG")

    def picture_after(self, path: Path, seconds: float, *, then_close: bool) -> None:
        """Save a picture `seconds` from now."""

        def save() -> None:
            self.save_picture(path)
            if then_close:
                self.close_now()

        QTimer.singleShot(round(seconds * 1000), self, save)
