"""Pause and predict: the class commits itself before the trace goes on."""

from collections.abc import Callable, Sequence

from PySide6.QtCore import Signal
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QVBoxLayout, QWidget

from co2vent.window.class_run import Prediction
from co2vent.window.class_words import ANSWERS, answer_words
from co2vent.window.fit_label import FitLabel
from co2vent.window.icons import icon
from co2vent.window.keys import Key
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette
from co2vent.window.words import translate


class AnswerKey(Key):
    """An answer; a tick stands on the one that was given last, and on no other."""

    def __init__(
        self, words: str, shortcut: str, action: Callable[[], object], parent: QWidget
    ) -> None:
        super().__init__("acknowledge", words, shortcut, action, parent)
        self.ticked = False
        self._palette: Palette | None = None

    def tick(self, *, on: bool) -> None:
        """Show whether this is the answer that stands."""
        self.ticked = on
        self.setAccessibleDescription(translate("Class", "chosen") if on else "")
        if self._palette is not None:
            self.set_theme(self._palette)

    def set_theme(self, palette: Palette) -> None:
        """Paint the tick in the ink of the theme."""
        self._palette = palette
        self.setIcon(icon("acknowledge", palette.key_ink) if self.ticked else QIcon())


class ClassPredict(QWidget):
    """One question and a key for each answer."""

    answered = Signal(object)  # a Charge, or None for "cannot be told yet"

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.question = FitLabel(self, bold=True)
        self.question.say(
            translate("Class", "What is inside now? Decide before the trace goes on.")
        )
        self.keys = [
            AnswerKey(answer_words(charge), str(place), self._answer(place - 1), self)
            for place, charge in enumerate(ANSWERS, 1)
        ]
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 0, 4, 0)
        column.setSpacing(3)
        column.addWidget(self.question, 1)
        for key in self.keys:
            column.addWidget(key)

    def show_chosen(self, predictions: Sequence[Prediction]) -> None:
        """Tick the answer that was given last."""
        for charge, key in zip(ANSWERS, self.keys, strict=True):
            key.tick(on=bool(predictions) and predictions[-1].charge is charge)

    def _answer(self, place: int) -> Callable[[], object]:
        return lambda: self.answered.emit(ANSWERS[place])

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self.question.set_ink(palette.ink)
        for key in self.keys:
            key.set_theme(palette)

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self.question.set_max_px(round(sizes.text_px * 1.3))
        self.question.setMinimumHeight(round(sizes.text_px * 1.8))
        for key in self.keys:
            key.set_sizes(sizes)
