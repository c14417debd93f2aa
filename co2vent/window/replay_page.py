"""A recorded vent: play, pause, speed, seek, jump."""

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QSlider, QWidget

from co2vent.errors import Co2ventError
from co2vent.readings.log_file import read_log
from co2vent.window import text
from co2vent.window.commands import Command
from co2vent.window.fit_label import FitLabel
from co2vent.window.frame import Frame
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.note_desk import NoteDesk
from co2vent.window.replay_feed import ReplayFeed
from co2vent.window.replay_index import ReplayIndex
from co2vent.window.tour import tour_steps
from co2vent.window.vent_page import HOLDS_VIEW, VentPage
from co2vent.window.words import translate
from co2vent.window.wrong_file import why_not

SLIDER_STEPS_PER_S = 4


class ReplayPage(VentPage):
    """The vent page of a recording. It raises no alarm and writes no log."""

    def __init__(self, feed: ReplayFeed, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(feed, look, parent=parent)
        self.replay = feed
        self._moving = False
        self._other: tuple[ReplayIndex, str] | None = None
        self.slider = QSlider(Qt.Orientation.Horizontal, self)
        self.slider.setAccessibleName(translate("Spoken", "place in the recording"))
        self.slider.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.slider.valueChanged.connect(self._slid)
        self.clock_label = FitLabel(self)
        row = QHBoxLayout()
        row.setContentsMargins(8, 0, 8, 0)
        row.addWidget(self.slider, 5)
        row.addWidget(self.clock_label, 2)
        self.notes = NoteDesk(self)
        self.under.addWidget(self.notes.entry)
        self._tour: int | None = None
        self.tour_label = FitLabel(self, bold=True)
        self.tour_key = Key(
            "next", translate("Key", "Next"), "I", self.next_of_tour, self, listens=False
        )
        self.tour_end_key = Key(
            "leave", translate("Key", "End tour"), "Esc", self.end_tour, self, listens=False
        )
        for key in (self.tour_key, self.tour_end_key):
            key.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # they have keys; space stays with play
        tour = QHBoxLayout()
        tour.setContentsMargins(8, 0, 8, 0)
        tour.addWidget(self.tour_label, 5)
        tour.addWidget(self.tour_key, 1)
        tour.addWidget(self.tour_end_key, 1)
        for part in (self.tour_label, self.tour_key, self.tour_end_key):
            part.hide()
        self.panel.under_pictures.addLayout(tour)  # the pictures yield, the words do not
        self.under.addLayout(row)
        self.play_key = Key("play", translate("Key", "Play"), "Space", self._toggle, self)
        self.set_keys(
            [
                Key("back", translate("Key", "Back"), "Esc", self.uncover_or_leave, self),
                Key("previous", translate("Key", "Previous"), "P", self._previous, self),
                self.play_key,
                Key("next", translate("Key", "Next"), "N", self._next, self),
                Key("note", translate("Key", "Note"), "W", self.notes.ask, self),
                Key("slower", translate("Key", "Slower"), "-", self._slower, self),
                Key("faster", translate("Key", "Faster"), "+", self._faster, self),
                *self.common_keys(),
            ]
        )

    def page_commands(self) -> list[Command]:
        """Return the further commands of a replay."""
        return [
            Command("help", translate("Command", "Tour"), "I", self.next_of_tour),
            Command("help", translate("Command", "Blind replay"), "B", self.toggle_blind),
            Command("note", translate("Command", "Undo note"), "Ctrl+Z", self.notes.undo),
            Command("compare", translate("Command", "Compare a vent"), "Ctrl+O", self.choose_other),
            *super().page_commands(),
        ]

    def next_of_tour(self) -> None:
        """Begin the tour, show its next sentence, or end it."""
        steps = tour_steps()
        self._tour = 0 if self._tour is None else self._tour + 1
        if self._tour >= len(steps):
            self.end_tour()
            return
        self.tour_label.say(f"{self._tour + 1}/{len(steps)}  {steps[self._tour]}")
        for part in (self.tour_label, self.tour_key, self.tour_end_key):
            part.show()

    def end_tour(self) -> None:
        """Leave the tour wherever it is; it is not given unasked again."""
        self._tour = None
        self.look.kept["toured"] = True
        self.look.save()
        for part in (self.tour_label, self.tour_key, self.tour_end_key):
            part.hide()

    def uncover_or_leave(self) -> None:
        """Put away what lies over the pictures, then the tour; with neither, leave the page."""
        if self._tour is None or any(cover.isVisibleTo(self) for cover in self._covers):
            super().uncover_or_leave()
        else:
            self.end_tour()

    def toggle_blind(self) -> None:
        """Hide prompt, verdict and notes, or show them."""
        self.notes.entry.put_away()
        self.replay.blind = not self.replay.blind
        self._go(lambda: None)

    def choose_other(self) -> None:
        """Let the person choose a second vent to lay over this one."""
        name, _filter = QFileDialog.getOpenFileName(
            self, translate("Command", "Compare a vent"), "", "CSV (*.csv *.txt *.log);;* (*)"
        )
        if name:
            self.compare(Path(name))

    def compare(self, path: Path) -> None:
        """Run a second vent and lay its holds over those of this one."""
        try:
            log = read_log(path)
        except Co2ventError as error:
            self.say(why_not(path, error))
            return
        if self._other is not None:
            self._other[0].close()
        self._other = (ReplayIndex(log), path.stem)
        self._other[0].start()

    def _take_other(self) -> None:
        """Show the second vent when it has run."""
        if self._other is None or not self._other[0].done or self._plots is None:
            return
        index, name = self._other
        self._other = None
        if index.failure is not None or not index.moments:
            self.say(index.failure or translate("Command", "Nothing to compare"))
            return
        if not self._plots.holds.compare_with(index.traces, index.moments[-1].view.holds, name):
            self.say(
                translate("Command", "{name} has no hold to compare; nothing was changed.").format(
                    name=name
                )
            )
            return
        self._plots.turn_to(HOLDS_VIEW)
        self.redraw()

    def start(self) -> None:
        """Begin to show the recording; notes that can't be read are said."""
        super().start()
        if self.replay.notes.problem:
            self.say(self.replay.notes.problem)

    def close_feed(self) -> None:
        """Stop showing and both records."""
        super().close_feed()
        self.notes.close()
        if self._other is not None:
            self._other[0].close()

    def tick(self) -> None:
        """Show the present moment and where it lies."""
        super().tick()
        self._take_other()
        index = self.replay.index
        self._moving = True
        self.slider.setMaximum(max(1, round(index.length_s * SLIDER_STEPS_PER_S)))
        if not self.slider.isSliderDown():
            self.slider.setValue(round(self.replay.position_s * SLIDER_STEPS_PER_S))
        self._moving = False
        self.play_key.set_words(
            translate("Key", "Pause") if self.replay.playing else translate("Key", "Play"),
            "pause" if self.replay.playing else "play",
        )
        self.clock_label.say(
            f"{text.duration(self.replay.position_s)} / {text.duration(index.length_s)}"
            f"  ×{self.replay.speed:g}"
        )

    def watch(self, frame: Frame, now_s: float) -> None:
        """A recording raises no alarm."""

    def apply_look(self) -> None:
        """Take theme, sizes and units from the look."""
        super().apply_look()
        palette, sizes = self.palette_now(), self.look.sizes(self)
        self.tour_label.set_ink(palette.ink)
        self.tour_label.set_max_px(sizes.text_px)
        self.tour_label.setFixedHeight(sizes.target_px)
        for key in (self.tour_key, self.tour_end_key):
            key.set_theme(palette)
            key.set_sizes(sizes)
        self.notes.entry.set_theme(palette)
        self.notes.entry.set_sizes(sizes)
        self.clock_label.set_ink(palette.ink)
        self.clock_label.set_max_px(sizes.text_px)
        height = round(sizes.target_px * 0.62)
        self.slider.setFixedHeight(height)
        self.slider.setStyleSheet(
            f"QSlider::groove:horizontal{{height:{height // 3}px;background:{palette.key}}}"
            f"QSlider::sub-page:horizontal{{background:{palette.rule}}}"
            f"QSlider::handle:horizontal{{width:{height}px;margin:-{height // 3}px 0;"
            f"background:{palette.ink}}}"
            f"QSlider:focus{{border:2px solid {palette.ink}}}"
        )

    def begin_at(self, position_s: float) -> None:
        """Go to `position_s` as soon as the record has run so far."""
        self.replay.wanted_s = position_s

    def go_to_event(self, at_s: float) -> None:
        """Go to an event that was chosen in the list."""
        self._go(lambda: self.replay.seek(self.replay.index.play_time(at_s)))

    def _go(self, move: object) -> None:
        assert callable(move)
        move()
        self.redraw()
        self.tick()

    def _slid(self, value: int) -> None:
        if not self._moving:
            self._go(lambda: self.replay.seek(value / SLIDER_STEPS_PER_S))

    def _toggle(self) -> None:
        self._go(self.replay.toggle)

    def _next(self) -> None:
        self._go(self.replay.next_mark)

    def _previous(self) -> None:
        self._go(self.replay.previous_mark)

    def _faster(self) -> None:
        self._go(self.replay.faster)

    def _slower(self) -> None:
        self._go(self.replay.slower)
