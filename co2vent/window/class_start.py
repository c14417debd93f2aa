"""Choose an exercise, read its story, change one thing, begin."""

import time
from collections.abc import Mapping
from threading import Thread
from typing import Any

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QComboBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QVBoxLayout,
    QWidget,
)

from co2vent.errors import Co2ventError, RefusedInputError
from co2vent.practice.exercises import Exercise, exercises
from co2vent.practice.scenario_file import KEYS
from co2vent.window.class_run import Change, ClassRun, Task
from co2vent.window.class_words import variable_words
from co2vent.window.fit_label import FitLabel
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.sentences import spoken
from co2vent.window.words import translate


def present_value(exercise: Exercise, name: str) -> Any:
    """Return the exercise's own value of a variable such as `charge.liquid_fraction`."""
    group, _, key = name.partition(".")
    return exercise.tables.get(group, {}).get(key, KEYS[group][key])


def changed_value(exercise: Exercise, name: str, words: str) -> Change:
    """Return what was typed as the kind of value that the variable has.

    Raises:
        RefusedInputError: it is no such value.
    """
    now = present_value(exercise, name)
    words = words.strip()
    if isinstance(now, bool):
        if words.lower() in ("yes", "true", "1"):
            return True
        if words.lower() in ("no", "false", "0"):
            return False
        raise RefusedInputError(translate("Class", "{words}: write yes or no").format(words=words))
    if isinstance(now, str):
        return words
    try:
        return float(words.replace(",", "."))
    except ValueError:
        refused = translate("Class", "{words}: write a number").format(words=words)
        raise RefusedInputError(refused) from None


class ClassStart(QWidget):
    """The list of exercises, the story of the chosen one and the one change."""

    back = Signal()
    ready = Signal(object, object)  # the new ClassRun, and the first one or None

    def __init__(
        self, look: Look, first: ClassRun | None = None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._look = look
        self._first = first
        self._worker: Thread | None = None
        self._made: ClassRun | None = None
        self._failure = ""
        self.title = FitLabel(self, bold=True)
        self.title.say(
            translate("Class", "Practise: simulated sections")
            if first is None
            else translate("Class", "Run again beside the first: change one thing")
        )
        self.list = QListWidget(self)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setAccessibleName(translate("Class", "exercises"))
        for number, exercise in enumerate(exercises(), 1):
            self.list.addItem(f"{number}  {spoken(exercise.title)}")
        self.list.addItem(translate("Class", "Random section"))
        self.story = FitLabel(self)
        self.change = QComboBox(self)
        self.change.setAccessibleName(translate("Class", "what to change"))
        self.what = QLabel(translate("Class", "Change one thing:"), self)
        self.what.setBuddy(self.change)
        self.value = QLineEdit(self)
        self.value.setAccessibleName(translate("Class", "its value, or the seed"))
        self.value.returnPressed.connect(self.begin)
        self.message = FitLabel(self, bold=True)
        self.back_key = Key("back", translate("Key", "Back"), "Esc", self.back.emit, self)
        self.go_key = Key("play", translate("Key", "Begin"), "Ctrl+Return", self.begin, self)
        self._build()
        self.list.currentRowChanged.connect(self._chosen)
        self.list.itemActivated.connect(lambda _item: self._to_change())
        self.change.currentIndexChanged.connect(self._change_chosen)
        self.list.setCurrentRow(self._row_of(first))
        self._poll = QTimer(self)
        self._poll.setInterval(50)
        self._poll.timeout.connect(self._look_at_worker)

    def _build(self) -> None:
        changes = QHBoxLayout()
        changes.addWidget(self.what)
        changes.addWidget(self.change, 3)
        changes.addWidget(self.value, 2)
        right = QVBoxLayout()
        right.addWidget(self.story, 1)
        right.addLayout(changes)
        right.addWidget(self.message)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._row.addWidget(self.list, 5)
        self._row.addLayout(right, 6)
        keys = QHBoxLayout()
        keys.addWidget(self.back_key)
        keys.addWidget(self.go_key)
        column = QVBoxLayout(self)
        column.setContentsMargins(14, 8, 14, 8)
        column.addWidget(self.title)
        column.addLayout(self._row, 1)
        column.addLayout(keys)

    @staticmethod
    def _row_of(first: ClassRun | None) -> int:
        if first is None:
            return 0
        if first.task.exercise is None:
            return len(exercises())
        return exercises().index(first.task.exercise)

    # --- choice ------------------------------------------------------------------------------

    @property
    def chosen(self) -> Exercise | None:
        """The chosen exercise; None for a random section."""
        row = self.list.currentRow()
        return exercises()[row] if 0 <= row < len(exercises()) else None

    def _chosen(self, _row: int) -> None:
        exercise = self.chosen
        self.change.clear()
        if exercise is None:
            self.story.say(
                translate(
                    "Class",
                    "A section drawn at random; the same seed gives the same section again.",
                )
            )
            self.change.addItem(translate("Class", "seed"))
            self.what.hide()  # the box says it: the seed
            self.value.setText("1")
            self.value.show()
            return
        watch = translate("Class", "Watch: {what}").format(what=spoken(exercise.look_for))
        self.story.say(f"{spoken(exercise.story)}\n\n{watch}")
        self.change.addItem(translate("Class", "nothing: as it is"))
        for name in exercise.change:
            self.change.addItem(variable_words(name), name)
        self._change_chosen(0)

    def _to_change(self) -> None:
        (self.change if self.value.isHidden() else self.value).setFocus()

    def _change_chosen(self, _index: int) -> None:
        exercise, name = self.chosen, self.change.currentData()
        if exercise is None:
            return
        self.what.show()
        self.value.setVisible(name is not None)  # an empty box would ask for something
        value = "" if name is None else present_value(exercise, str(name))
        if isinstance(value, bool):
            value = "yes" if value else "no"
        self.value.setText("" if value is None else str(value))

    def task(self) -> Task:
        """Return what is to be run.

        Raises:
            RefusedInputError: a value that cannot be.
        """
        exercise, name = self.chosen, self.change.currentData()
        if exercise is None:
            if not self.value.text().strip().isdecimal():
                raise RefusedInputError(translate("Class", "The seed is a whole number."))
            return Task(exercise=None, seed=int(self.value.text()), changes={})
        changes: Mapping[str, Change] = {}
        if name is not None:
            changes = {str(name): changed_value(exercise, str(name), self.value.text())}
        return Task(exercise=exercise, seed=exercise.seed, changes=changes)

    # --- begin -------------------------------------------------------------------------------

    def begin(self) -> None:
        """Prepare the section in a thread: the first one takes a while to compile."""
        if self._worker is not None:
            return
        try:
            task = self.task()
            task.scenario()
        except Co2ventError as error:
            self.message.say(str(error))
            return
        self.message.say(
            translate("Class", "Preparing the section… the first time takes up to a minute.")
        )
        self._made, self._failure = None, ""
        self._worker = Thread(target=self._prepare, args=(task,), daemon=True)
        self._worker.start()
        self._poll.start()

    def _prepare(self, task: Task) -> None:
        try:
            self._made = ClassRun(task, time.monotonic)
        except Co2ventError as error:
            self._failure = str(error)

    def _look_at_worker(self) -> None:
        if self._worker is None or self._worker.is_alive():
            return
        self._poll.stop()
        self._worker = None
        if self._made is None:
            self.message.say(self._failure)
        else:
            self.ready.emit(self._made, self._first)

    def close_feed(self) -> None:
        """Wait for a section that is being prepared."""
        self._poll.stop()
        if self._worker is not None:
            self._worker.join(timeout=30.0)
            self._worker = None

    # --- looks -------------------------------------------------------------------------------

    def apply_look(self) -> None:
        """Take theme and sizes."""
        sizes = self._look.sizes(self)
        ink = self._look.palette.ink
        for label in (self.title, self.story, self.message):
            label.set_ink(ink)
            label.set_max_px(round(sizes.text_px * 1.15))
        self.title.set_max_px(round(sizes.text_px * 1.6))
        self.title.setFixedHeight(round(sizes.text_px * 2.2))
        self.message.setFixedHeight(round(sizes.text_px * 1.8))
        font = self.list.font()
        font.setPixelSize(round(sizes.text_px * 1.05))
        for part in (self.list, self.what, self.change, self.value):
            part.setFont(font)
        for part in (self.change, self.value):
            part.setMinimumHeight(sizes.target_px)
        self._row.setDirection(
            QBoxLayout.Direction.TopToBottom if sizes.portrait else QBoxLayout.Direction.LeftToRight
        )
        self.list.setStyleSheet(
            f"QListWidget::item{{min-height:{sizes.target_px}px;padding:0 {sizes.gap_px}px}}"
        )
        for key in (self.back_key, self.go_key):
            key.set_theme(self._look.palette)
            key.set_sizes(sizes)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the page."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._look.palette.page))
        painter.end()
