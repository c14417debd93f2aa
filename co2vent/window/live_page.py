"""The page of a live vent: alarms, sound, valve keys, notes."""

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QWidget

from co2vent.guidance.events import Severity
from co2vent.window.alarms import alarm_words
from co2vent.window.commands import Command
from co2vent.window.confirm_panel import ConfirmPanel
from co2vent.window.frame import Frame
from co2vent.window.keys import Key
from co2vent.window.live_feed import LiveFeed
from co2vent.window.look import Look
from co2vent.window.note_bar import NoteBar
from co2vent.window.sound import REPEAT_S, Sounder
from co2vent.window.vent_page import VentPage
from co2vent.window.words import translate


class LivePage(VentPage):
    """Watches a live vent."""

    observed = Signal(object)  # the View of each tick, for a job that runs beside
    ticked = Signal()
    urgent = Signal()  # a new alarm while another page is in front
    recorded = Signal(object)  # the path of the recording, when it has ended

    def __init__(
        self, feed: LiveFeed, look: Look, sounder: Sounder, parent: QWidget | None = None
    ) -> None:
        super().__init__(feed, look, parent=parent)
        self.live = feed
        self.sounder = sounder
        self._sounded_s = -1e9
        self._last_note = ""
        self._told = False
        self.note = NoteBar(self)
        self.note.written.connect(self._write)
        self.under.addWidget(self.note)
        self.confirm = ConfirmPanel(
            self._go_on,
            translate("Live", "End the vent and its record?"),
            parent=self,
        )
        self.add_cover(self.confirm)
        # Space presses the key that has the focus: none has it until somebody moves it there, and
        # the way out has a stroke of its own
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        leave = Key("back", translate("Key", "Leave"), "Ctrl+W", self.leave, self)
        leave.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.set_keys(
            [
                leave,
                Key("valve_open", translate("Key", "Vent open"), "O", self._opened, self),
                Key("valve_closed", translate("Key", "Vent closed"), "C", self._closed, self),
                Key("note", translate("Key", "Note"), "N", self.note.ask, self),
                Key("acknowledge", translate("Key", "Seen"), "A", self.acknowledge, self),
                Key("silence", translate("Key", "Silence"), "S", self.silence, self),
                *self.common_keys(),
            ]
        )

    def tick(self) -> None:
        """Show the present moment, here and above a page in front of this one."""
        super().tick()
        self.ticked.emit()

    def page_commands(self) -> list[Command]:
        """Return the further commands of a live vent."""
        return [
            Command("sound", translate("Command", "Test sound"), "Ctrl+T", self.test_sound),
            Command("note", translate("Command", "Withdraw note"), "Ctrl+Z", self.withdraw_note),
            *super().page_commands(),
        ]

    def watch(self, frame: Frame, now_s: float) -> None:
        """Raise, show and sound the alarms of this moment."""
        raised = self.standing_conditions(frame)
        waiting = self.book.unacknowledged
        worst = max((alarm.severity for alarm in waiting), default=Severity.CALM)
        again = now_s - self._sounded_s >= REPEAT_S and self.book.silent_left_s(now_s) <= 0.0
        if worst >= Severity.CAUTION and (raised or again):
            self.sounder.play(worst)
            self._sounded_s = now_s
        if raised and not self.isVisible():
            self.urgent.emit()
        if frame.view is not None and frame.view.latest is not None:
            self.observed.emit(frame.view)
        self.panel.status.show_sound(works=self.sounder.check())

    def apply_look(self) -> None:
        """Take theme, sizes and units from the look."""
        super().apply_look()
        self.note.set_sizes(self.look.sizes(self))

    def close_feed(self) -> None:
        """Stop showing, sounding and reading."""
        super().close_feed()
        self.sounder.close()
        path = self.live.recording_path
        if path is not None and not self._told:
            self._told = True
            self.recorded.emit(path)

    def leave(self) -> None:
        """Ask, then leave: the record ends there."""
        self.ask_before(self.back.emit)

    @property
    def would_lose(self) -> bool:
        """Whether something would end with the page: a live vent always."""
        return True

    def _go_on(self) -> None:
        """Put the question away; no key is left with the focus."""
        self.lay_over(None)
        self.setFocus()

    def showEvent(self, event: QShowEvent) -> None:
        """Hold the focus on the page itself."""
        super().showEvent(event)
        self.setFocus()

    def ask_before(self, action: Callable[[], object]) -> None:
        """Ask whether to end the vent; do `action` if so."""
        self.confirm.ask(action)
        self.lay_over(self.confirm)

    def acknowledge(self) -> None:
        """Acknowledge all alarms; those whose cause has gone leave. Kept in the record."""
        done = self.book.acknowledge()
        if done:
            kinds = ", ".join(alarm_words(kind).lower() for kind in done)
            self.live.say_note(f"alarm seen: {kinds}")
        self.tick()

    def silence(self) -> None:
        """Stop the sound for two minutes; the display stays."""
        self.book.silence(self._clock())
        self.tick()

    def test_sound(self) -> None:
        """Sound the three pulses of a caution."""
        self.sounder.play(Severity.CAUTION)

    def withdraw_note(self) -> None:
        """Withdraw the last note: the record keeps both, nothing is erased."""
        if self._last_note:
            self.live.say_note(f"withdrawn: {self._last_note}")
            self._last_note = ""

    def _write(self, words: str) -> None:
        self._last_note = words
        self.live.say_note(words)

    def _opened(self) -> None:
        self.live.say_valve(is_open=True)

    def _closed(self) -> None:
        self.live.say_valve(is_open=False)
