"""The reveal: the cut-away section beside what was shown, said and scored."""

from PySide6.QtWidgets import QBoxLayout, QVBoxLayout, QWidget

from co2vent.window.class_run import ClassRun
from co2vent.window.class_words import said_words, teaching_words, truth_words
from co2vent.window.fit_label import FitLabel
from co2vent.window.plan_words import said_in
from co2vent.window.sizes import Sizes
from co2vent.window.text import UnitChoice
from co2vent.window.theme import Palette
from co2vent.window.truth_drawing import TruthDrawing

LINE_LETTERS = 70  # about so many stand in a line on the smallest screen


def _lines(text: str) -> int:
    return 1 + sum(1 + len(line) // LINE_LETTERS for line in text.splitlines())


class ClassReveal(QWidget):
    """Laid over the pictures when the truth is shown."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.drawing = TruthDrawing(self)
        self.truth = FitLabel(self, bold=True)
        self.said = FitLabel(self)
        self.score = FitLabel(self)
        self.teaching = FitLabel(self)
        self._labels = (self.truth, self.said, self.score, self.teaching)
        left = QVBoxLayout()
        left.addWidget(self.drawing, 5)
        left.addWidget(self.truth, 4)
        self._right = QVBoxLayout()
        for label in (self.said, self.score, self.teaching):
            self._right.addWidget(label, 1)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._row.setContentsMargins(6, 2, 6, 2)
        self._row.setSpacing(12)
        self._row.addLayout(left, 2)
        self._row.addLayout(self._right, 3)

    def show_run(self, run: ClassRun, units: UnitChoice) -> None:
        """Show the truth of a run as it stands."""
        truth = run.truth()
        self.drawing.show_truth(truth, run.scenario.setting.section.volume_m3)
        self.truth.say(truth_words(truth, units, run.scenario.ambient_pa))
        self.said.say(said_words(run, units))
        self.score.say("\n".join(said_in(line, units) for line in run.score().lines()))
        self.teaching.say(teaching_words(run))
        for place, label in enumerate((self.said, self.score, self.teaching)):
            # room by need: else the longest is in small letters beside empty space
            self._right.setStretch(place, _lines(label.text()))

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self.drawing.set_theme(palette)
        for label in self._labels:
            label.set_ink(palette.ink)

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self.drawing.set_sizes(sizes)
        for label in self._labels:
            label.set_max_px(sizes.text_px)
        self._row.setDirection(
            QBoxLayout.Direction.TopToBottom if sizes.portrait else QBoxLayout.Direction.LeftToRight
        )
