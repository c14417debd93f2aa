"""A question with two large keys, laid over the pictures: no small box to hit with a glove."""

from collections.abc import Callable

from PySide6.QtWidgets import QVBoxLayout, QWidget

from co2vent.window.fit_label import FitLabel
from co2vent.window.keys import Key
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette
from co2vent.window.words import translate


class ConfirmPanel(QWidget):
    """Asks before a live vent or a class is left."""

    def __init__(
        self,
        refuse: Callable[[], object],
        question: str,
        stay: str = "G",
        parent: QWidget | None = None,
    ) -> None:
        """Ask `question`; `stay` is the keyboard's key for going on, free on the page below."""
        super().__init__(parent)
        self._then: Callable[[], object] | None = None
        self.question = FitLabel(self, bold=True)
        self.question.say(question)
        self.keys = [
            Key("leave", translate("Live", "End"), "E", self._confirm, self),
            Key("keep_holding", translate("Live", "Go on"), stay, refuse, self),
        ]
        self.setFocusProxy(self.keys[1])  # the stroke that does no harm
        column = QVBoxLayout(self)
        column.addStretch(1)
        column.addWidget(self.question)
        for key in self.keys:
            column.addWidget(key)
        column.addStretch(1)

    def ask(self, then: Callable[[], object]) -> None:
        """Do `then` if the person confirms."""
        self._then = then

    def _confirm(self) -> None:
        then, self._then = self._then, None
        if then is not None:
            then()

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self.question.set_ink(palette.ink)
        for key in self.keys:
            key.set_theme(palette)

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self.question.set_max_px(round(sizes.text_px * 1.6))
        self.question.setFixedHeight(round(sizes.text_px * 4))
        for key in self.keys:
            key.set_sizes(sizes)
