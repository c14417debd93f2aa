"""The class: a trainee works the valve of a simulated section; the truth waits for the reveal."""

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QMarginsF, QSizeF, Signal
from PySide6.QtGui import QHideEvent, QPageSize, QPdfWriter, QTextDocument
from PySide6.QtWidgets import QWidget

from co2vent.guidance.session import View
from co2vent.inference.outcome import Charge
from co2vent.store.whole_file import atomic_write
from co2vent.window import text
from co2vent.window.class_guide import hint
from co2vent.window.class_predict import ClassPredict
from co2vent.window.class_reveal import ClassReveal
from co2vent.window.class_run import ClassRun
from co2vent.window.class_words import prediction_words, sheet_html
from co2vent.window.commands import Command
from co2vent.window.confirm_panel import ConfirmPanel
from co2vent.window.fit_label import FitLabel
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.saving import save_as
from co2vent.window.traces import Traces
from co2vent.window.vent_page import EDGE_PX, HOLDS_VIEW, VentPage
from co2vent.window.words import translate

VALVE_STEP = 0.25  # of the valve's travel for one touch


class ClassPage(VentPage):
    """The vent page of a simulated section. It raises no alarm of a live vent and writes no job."""

    again = Signal(object)  # the run that has ended, to be run again with a change

    def __init__(
        self, run: ClassRun, look: Look, *, guided: bool = False, parent: QWidget | None = None
    ) -> None:
        super().__init__(run, look, parent=parent)
        self.run = run
        self._guided = guided
        self.guide = FitLabel(self, bold=True)
        self.guide.setContentsMargins(EDGE_PX, 0, EDGE_PX, 0)
        self.guide.setVisible(guided)
        self.under.addWidget(self.guide)
        self._first: tuple[Traces, View, str] | None = None
        self.predict = ClassPredict(self)
        self.predict.answered.connect(self._answered)
        self.reveal = ClassReveal(self)
        question = translate("Class", "Leave the class? This run and its score are lost.")
        self.confirm = ConfirmPanel(self._stay, question, "N", self)
        self._paused_before = True
        for cover in (self.predict, self.reveal, self.confirm):
            self.add_cover(cover)
        self.pause_key = Key("play", translate("Key", "Start"), "Space", self.toggle, self)
        self.set_keys(
            [
                Key("back", translate("Key", "Leave"), "Esc", self.uncover_or_leave, self),
                Key("valve_open", translate("Key", "Open"), "O", self.open_valve, self),
                Key("valve_closed", translate("Key", "Close"), "C", self.close_valve, self),
                self.pause_key,
                Key("slower", translate("Key", "Slower"), "-", self._slower, self),
                Key("faster", translate("Key", "Faster"), "+", self._faster, self),
                Key("help", translate("Key", "Predict"), "G", self.ask, self),
                Key("views", translate("Key", "View"), "V", self.next_view, self),
                Key("acknowledge", translate("Key", "Reveal"), "R", self.toggle_reveal, self),
                Key("more", translate("Key", "More"), "M", self.toggle_more, self),
            ]
        )

    def page_commands(self) -> list[Command]:
        """Return the further commands of a class."""
        return [
            Command("play", translate("Command", "Run again"), "Ctrl+R", self._again),
            Command("help", translate("Command", "Show prompts"), "B", self.toggle_blind),
            Command("zoom", translate("Key", "Zoom"), "Z", self.toggle_zoom),
            Command("help", translate("Key", "Why?"), "F1", self.toggle_help),
            Command("plan", translate("Command", "Score sheet"), "Ctrl+S", self.save_sheet),
            *super().page_commands(),
        ]

    # --- the trainee -------------------------------------------------------------------------

    def open_valve(self) -> None:
        """Open the vent valve by a quarter."""
        self.run.move_valve(self.run.opening + VALVE_STEP)
        self.tick()

    def close_valve(self) -> None:
        """Close the vent valve."""
        self.run.move_valve(0.0)
        self.tick()

    def toggle(self) -> None:
        """Let time go on, or stop it."""
        self.run.paused = not self.run.paused
        if not self.run.paused:
            self.lay_over(None)
        self.tick()

    def leave(self) -> None:
        """Leave a run that has not begun; ask before one is lost."""
        if self.would_lose:
            self.ask_before(self.back.emit)
        else:
            super().leave()

    @property
    def would_lose(self) -> bool:
        """Whether a run would be lost with the page."""
        return self.run.now_s > 0.0

    def ask_before(self, action: Callable[[], object]) -> None:
        """Stop time and ask whether to end the run; do `action` if so."""
        if not self.confirm.isVisibleTo(self):
            self._paused_before = self.run.paused
        self.run.paused = True
        self.confirm.ask(action)
        self.lay_over(self.confirm)
        self.tick()

    def _stay(self) -> None:
        """Go on as before the question; the stroke that follows starts or stops time again."""
        self.run.paused = self._paused_before
        self.lay_over(None)
        self.pause_key.setFocus()
        self.tick()

    def uncover_or_leave(self) -> None:
        """Put away what lies over the pictures; with nothing there, leave the page."""
        if self.confirm.isVisibleTo(self):
            self._stay()
        else:
            super().uncover_or_leave()

    def _slower(self) -> None:
        self.run.slower()
        self.tick()

    def _faster(self) -> None:
        self.run.faster()
        self.tick()

    def ask(self) -> None:
        """Stop time and ask the class to commit itself, unless it has seen the truth."""
        if self.run.revealed:
            self._refuse_prediction()
            return
        self.run.paused = True
        self.predict.show_chosen(self.run.predictions)
        self.lay_over(self.predict)
        self.tick()

    def _answered(self, charge: Charge | None) -> None:
        made = self.run.predict(charge)
        self.lay_over(None)
        if made is None:
            self._refuse_prediction()
            return
        said = prediction_words(made)
        self.say(translate("Class", "Committed {said}. Space goes on.").format(said=said))
        self.tick()

    def _refuse_prediction(self) -> None:
        self.say(
            translate("Class", "The truth has been shown: a prediction doesn't count any more.")
        )

    def toggle_blind(self) -> None:
        """Show the program's prompts during the exercise, or hide them until the reveal."""
        self.run.blind = not self.run.blind
        self.redraw()
        self.tick()

    def hideEvent(self, event: QHideEvent) -> None:
        """Stop time while another page is in front; a window that is put away runs on."""
        super().hideEvent(event)
        if not event.spontaneous():
            self.run.paused = True

    # --- the reveal --------------------------------------------------------------------------

    def toggle_reveal(self) -> None:
        """Show what was really inside; hide the drawing again."""
        if self.reveal.isVisibleTo(self):
            self.lay_over(None)
            return
        self.run.paused = True
        self.run.revealed = True
        self.reveal.show_run(self.run, self.look.units)
        self.lay_over(self.reveal, wide=True)
        self.tick()

    def run_beside(self, first: ClassRun) -> None:
        """Show an earlier run beside this one: its trace under, its holds over the present."""
        name = translate("Class", "first run")
        self._first = (first.traces, first.view, name)
        self._lay_first()

    def pictures_loaded(self) -> None:
        """The pictures are there: put the first run into them."""
        self._lay_first()

    def _lay_first(self) -> None:
        if self._first is None or self._plots is None:
            return
        traces, view, name = self._first
        self._plots.trace.lay_under(traces)
        self._plots.holds.compare_with(traces, view.holds, name)

    def show_comparison(self) -> None:
        """Turn to the holds over each other."""
        if self._plots is not None:
            self._plots.turn_to(HOLDS_VIEW)
            self.redraw()

    def _again(self) -> None:
        self.run.paused = True
        self.again.emit(self.run)

    # --- words and files ---------------------------------------------------------------------

    def tick(self) -> None:
        """Show the present moment."""
        super().tick()
        run = self.run
        self.pause_key.set_words(
            translate("Key", "Go on") if run.paused else translate("Key", "Pause"),
            "play" if run.paused else "pause",
        )
        if self._guided:
            self.guide.say(hint(run))
        percent = text.number(100.0 * run.opening, 0)
        self.panel.status.valve.say(
            translate("Class", "vent valve {percent} % open").format(percent=percent)
            if run.opening > 0
            else translate("Class", "vent valve CLOSED")
        )
        state = translate("Class", "paused") if run.paused else f"×{run.speed:g}"
        self.panel.status.recording.say(f"{text.duration(run.now_s)} · {state}")

    def apply_look(self) -> None:
        """Take theme, sizes and units from the look."""
        super().apply_look()
        sizes = self.look.sizes(self)
        self.guide.set_ink(self.look.palette.ink)
        self.guide.set_max_px(round(sizes.text_px * 1.1))
        self.guide.setFixedHeight(round(sizes.text_px * 1.7))

    def save_sheet(self) -> None:
        """Save score sheet and handout as PDF."""
        self.run.paused = True
        self.run.revealed = True
        html = sheet_html(self.run, self.look.units)
        save_as(self, "pdf", lambda path: write_pdf(path, html))

    def save_readings(self) -> None:
        """Save the run as a readings log that says it is simulated."""
        data = self.run.log_text().encode()
        save_as(self, "csv", lambda path: atomic_write(path, data))


def write_pdf(path: Path, html: str) -> bool:
    """Write HTML as PDF; return whether it was written (Qt itself says nothing)."""
    document = QTextDocument()
    document.setHtml(html)
    writer = QPdfWriter(str(path))
    writer.setPageSize(QPageSize(QPageSize.PageSizeId.A4))
    writer.setPageMargins(QMarginsF(18, 18, 18, 18))
    document.setPageSize(QSizeF(writer.width(), writer.height()))
    document.print_(writer)
    del writer
    return path.exists() and path.read_bytes()[:4] == b"%PDF"
