"""The page on which a vent is watched: the panel, the pictures and a row of keys."""

import time
from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Final, Protocol, runtime_checkable

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QKeySequence,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QShortcut,
)
from PySide6.QtWidgets import QVBoxLayout, QWidget

from co2vent.window import drawing_library
from co2vent.window.alarms import Alarm, AlarmBook, conditions
from co2vent.window.blind import help_words
from co2vent.window.commands import Command
from co2vent.window.export import save_log
from co2vent.window.fit_label import FitLabel
from co2vent.window.frame import Feed, Frame, Mode
from co2vent.window.keys import Key, KeyRows
from co2vent.window.look import Look
from co2vent.window.more_panel import MorePanel
from co2vent.window.saving import save_as
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette
from co2vent.window.vent_panel import VentPanel
from co2vent.window.words import help_of, translate

if TYPE_CHECKING:
    from co2vent.window.plots_panel import PlotsPanel

TICK_MS: Final = 20  # a reading waits half of it on the mean; an unchanged moment costs nothing
STANDING_S: Final = 0.1  # how often age and clocks are painted while nothing new comes
HOLDS_VIEW: Final = 3  # the pictures' view of holds over each other
MESSAGE_S: Final = 8.0
EDGE_PX: Final = 8  # words do not touch the frame of the screen
PICTURES_LATEST_MS: Final = 1500  # where no reading comes, the empty pictures come after this
PICTURES_AFTER_MS: Final = 30  # after the first figures: time to paint them
PICTURES_EVERY_S: Final = (
    0.2  # the figures are painted at each tick, the traces five times a second
)


@runtime_checkable
class Dressed(Protocol):
    """A part that takes theme and sizes."""

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""


class VentPage(QWidget):
    """Shows a feed. Live, replay and class add their own keys."""

    back = Signal()

    def __init__(
        self, feed: Feed, look: Look, clock: Callable[[], float] = time.monotonic,
        parent: QWidget | None = None,
    ) -> None:  # fmt: skip
        super().__init__(parent)
        self.feed = feed
        self.look = look
        self._clock = clock
        self.book = AlarmBook()
        self.panel = VentPanel(self)
        self._plots: PlotsPanel | None = None
        self._drawn: tuple[object, int] | None = None
        self._drawn_s = -1e9
        self._let_go = False
        self._simulated = False
        self._blind = False
        self._pictures_due = False
        self._newest: object = None
        self._shown_s = -1e9
        self._help = FitLabel(self)
        self._help.hide()
        self._more: MorePanel | None = None
        self.message = FitLabel(self, bold=True)
        self.message.setContentsMargins(EDGE_PX, 0, EDGE_PX, 0)
        self.message.hide()
        self._message_until_s = 0.0
        self._key_rows = KeyRows()
        self.under = QVBoxLayout()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(3)
        self._column.addWidget(self.panel, 1)
        self._covers: list[QWidget] = []
        self.add_cover(self._help)
        self._column.addWidget(self.message)
        self._column.addLayout(self.under)
        self._column.addLayout(self._key_rows)
        self.keys: list[Key] = []
        self._timer = QTimer(self)
        self._timer.setInterval(TICK_MS)
        self._timer.timeout.connect(self._pulse)

    # --- keys --------------------------------------------------------------------------------

    def common_keys(self) -> list[Key]:
        """Return the keys that every vent page has."""
        return [
            Key("views", translate("Key", "View"), "V", self.next_view, self),
            Key("zoom", translate("Key", "Zoom"), "Z", self.toggle_zoom, self),
            Key("help", translate("Key", "Why?"), "F1", self.toggle_help, self),
            Key("more", translate("Key", "More"), "M", self.toggle_more, self),
        ]

    def set_commands(self, commands: Sequence[Command]) -> None:
        """Take the commands of the window for the page of further keys; add those of this page."""
        own = self.page_commands()
        for command in own:
            action = QShortcut(QKeySequence(command.shortcut), self)
            action.activated.connect(command.action)
        self._more = MorePanel([*own, *commands], self.toggle_more, self)
        self.add_cover(self._more)

    def page_commands(self) -> list[Command]:
        """Return the further commands of this page."""
        return [
            Command("export", translate("Command", "Save picture"), "Ctrl+P", self.save_picture),
            Command("export", translate("Command", "Save drawing"), "Ctrl+D", self.save_drawing),
            Command("export", translate("Command", "Save readings"), "Ctrl+E", self.save_readings),
        ]

    def set_keys(self, keys: Sequence[Key]) -> None:
        """Lay out the keys, in one row or, where the window is narrow, in two."""
        self.keys = list(keys)
        self._key_rows.lay_out(self.keys, two_rows=False)

    # --- run ---------------------------------------------------------------------------------

    def start(self) -> None:
        """Begin to show the feed; the pictures come after the first figures are painted."""
        self.apply_look()
        self.tick()
        self._timer.start()
        QTimer.singleShot(PICTURES_LATEST_MS, self, self._load_pictures)

    def close_feed(self) -> None:
        """Stop showing and let go of the feed."""
        self._let_go = True
        self._timer.stop()
        self.feed.close()

    def stand_still(self) -> None:
        """Stop showing; the feed goes on."""
        self._timer.stop()

    def go_on(self) -> None:
        """Show the feed again."""
        self._timer.start()

    def _load_pictures(self) -> None:
        if self._plots is not None or self._let_go:
            return
        if not drawing_library.loaded():
            drawing_library.load_behind()
            QTimer.singleShot(PICTURES_AFTER_MS, self, self._load_pictures)
            return
        from co2vent.window.plots_panel import PlotsPanel

        plots = PlotsPanel(self)
        plots.event_chosen.connect(self.go_to_event)
        self._plots = plots
        self.panel.pictures.addWidget(plots)
        self.pictures_loaded()
        self.apply_look()
        self._drawn = None
        self._drawn_s = -1e9
        self.tick()

    def _pulse(self) -> None:
        """Show the present moment where it is a new one, or age and clocks have gone on."""
        view = self.feed.frame().view
        newest = None if view is None else view.latest
        if newest is not self._newest or self._clock() - self._shown_s >= STANDING_S:
            self._newest = newest
            self.tick()

    def pictures_loaded(self) -> None:
        """The pictures are there; a page may put something into them."""

    def tick(self) -> None:
        """Show the present moment."""
        frame = self.feed.frame()
        now_s = self._clock()
        self._shown_s = now_s
        self._blind = frame.blind
        self.watch(frame, now_s)
        self.panel.show_frame(frame, self.feed.mode, self.book, now_s)
        simulated = frame.view is not None and frame.view.setup.simulated
        if simulated is not self._simulated:
            self._simulated = simulated
            self.apply_look()
        self._draw(frame, now_s)
        if self._plots is None and not self._pictures_due and not self.panel.shown.stale:
            self._pictures_due = True
            QTimer.singleShot(PICTURES_AFTER_MS, self, self._load_pictures)
        if self._help.isVisible():
            self._show_help()
        if self.message.isVisible() and now_s > self._message_until_s:
            self.message.hide()

    def watch(self, frame: Frame, now_s: float) -> None:
        """Raise alarms where this page is on a live vent; a recording raises none."""

    def _draw(self, frame: Frame, now_s: float) -> None:
        if self._plots is None or frame.view is None or not frame.rows:
            return
        state = (frame.view, frame.rows)
        same = self._drawn is not None and self._drawn[0] is state[0] and self._drawn[1] == state[1]
        if same or now_s - self._drawn_s < PICTURES_EVERY_S:
            return
        if not self._plots.isVisible():
            return
        self._plots.show_view(self.feed.traces, frame, frame.view)
        self._drawn, self._drawn_s = state, now_s

    def redraw(self) -> None:
        """Draw the pictures again at the next tick."""
        self._drawn, self._drawn_s = None, -1e9

    def standing_conditions(self, frame: Frame) -> tuple[Alarm, ...]:
        """Take the alarm conditions of this moment; return the alarms that are new."""
        view, age_s = frame.view, frame.age_s
        stale = view is not None and (view.stale or age_s is None or age_s > view.age_limit_s)
        standing = conditions(view, stale=stale, not_recording=frame.recording is False)
        return self.book.update(standing, self._clock())

    # --- actions -----------------------------------------------------------------------------

    def next_view(self) -> None:
        """Turn to the next view of the pictures."""
        if self._plots is not None:
            self._plots.next_view()
            self.redraw()

    def toggle_zoom(self) -> None:
        """Turn the trace to the running hold, its close-up, or the whole vent."""
        if self._plots is not None:
            self._plots.trace.next_extent()
            self.redraw()

    def go_to_event(self, at_s: float) -> None:
        """A person chose an event; a replay goes there."""

    def toggle_help(self) -> None:
        """Show or hide the help behind the present prompt, over the pictures."""
        self.lay_over(None if self._help.isVisibleTo(self) else self._help)
        self._show_help()

    def toggle_more(self) -> None:
        """Show or hide the further keys, over the pictures."""
        more = self._more
        self.lay_over(None if more is None or more.isVisibleTo(self) else more)

    def add_cover(self, cover: QWidget) -> None:
        """Take a widget that can be laid over the pictures."""
        cover.hide()
        self._covers.append(cover)
        self.panel.pictures.addWidget(cover)

    def lay_over(self, widget: QWidget | None, *, wide: bool = False) -> None:
        """Lay a cover over the pictures, or uncover them; a wide one hides the figures too."""
        for cover in self._covers:
            cover.setVisible(cover is widget)
        self.panel.side.setVisible(not (wide and widget is not None))
        if self._plots is not None:
            self._plots.setVisible(widget is None)
        first = None if widget is None else widget.focusProxy()
        if first is not None:
            first.setFocus()  # the next stroke belongs to what was asked
        self.redraw()

    def uncover_or_leave(self) -> None:
        """Put away what lies over the pictures; with nothing there, leave the page."""
        if any(cover.isVisibleTo(self) for cover in self._covers):
            self.lay_over(None)
        else:
            self.leave()

    def leave(self) -> None:
        """Leave the page."""
        self.back.emit()

    def say(self, words: str) -> None:
        """Show a message for some seconds."""
        self.message.say(words)
        self.message.show()
        self._message_until_s = self._clock() + MESSAGE_S

    # --- saving ------------------------------------------------------------------------------

    def save_picture(self) -> None:
        """Save what the window shows, banner and all, as PNG."""
        save_as(self, "png", lambda path: self.grab().save(str(path), "PNG"))

    def save_drawing(self) -> None:
        """Save the drawing in view (trace or log p-h) as SVG, the words of the banner in it."""
        plots = self._plots
        if plots is not None:
            save_as(self, "svg", lambda path: plots.save_svg(path, self.panel.banner.words))

    def save_readings(self) -> None:
        """Save the readings so far as a readings log."""
        frame = self.feed.frame()
        view = frame.view
        if view is not None:
            traces, rows, mode = self.feed.traces, frame.rows, self.feed.mode
            heat = self._plots is not None and self._plots.shows_heat
            save_as(self, "csv", lambda path: save_log(path, traces, rows, view, mode, heat=heat))

    def _show_help(self) -> None:
        self._help.say(help_words() if self._blind else help_of(self.panel.shown.instruction))

    # --- looks -------------------------------------------------------------------------------

    def palette_now(self) -> Palette:
        """Return the colours: a live vent on a real gauge has the page to itself."""
        palette = self.look.palette
        return (
            palette if self.feed.mode is Mode.LIVE and not self._simulated else palette.practice()
        )

    def apply_look(self) -> None:
        """Take theme, sizes and units from the look."""
        sizes = self.look.sizes(self)
        palette = self.palette_now()
        self.panel.set_theme(palette)
        self.panel.set_sizes(sizes)
        self.panel.set_units(self.look.units)
        self._help.set_ink(palette.ink)
        self._help.set_max_px(round(sizes.text_px * 1.5))
        self.message.set_ink(palette.ink)
        self.message.set_max_px(sizes.text_px)
        self.message.setFixedHeight(round(sizes.text_px * 1.6))
        for cover in self._covers:
            if isinstance(cover, Dressed):
                cover.set_theme(palette)
                cover.set_sizes(sizes)
        for key in self.keys:
            key.set_theme(palette)
            key.set_sizes(sizes)
        if self._plots is not None:
            self._plots.set_theme(palette)
            self._plots.set_sizes(sizes)
            self._plots.set_units(self.look.units)
            self.redraw()
        self._key_rows.lay_out(self.keys, two_rows=sizes.portrait)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the page between its parts."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self.palette_now().page))
        painter.end()
