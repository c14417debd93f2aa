"""The start page: what one can do here, in large keys."""

from collections.abc import Callable, Collection
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QSizePolicy,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from co2vent.window.commands import Command
from co2vent.window.fit_label import FitLabel
from co2vent.window.icons import icon
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.words import translate


@dataclass(frozen=True, slots=True)
class Choice:
    """One thing to do: drawing, words, what it means, key and action."""

    drawing: str
    words: str
    meaning: str
    shortcut: str
    action: Callable[[], object]


class ChoiceCard(QWidget):
    """A large key with its meaning beside it."""

    def __init__(self, choice: Choice, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._choice = choice
        self.key = QToolButton(self)
        self.key.setText(f"  {choice.words} ({choice.shortcut})")  # apart from the drawing
        self.key.setShortcut(choice.shortcut)
        self.key.setAccessibleName(choice.words)
        self.key.setAccessibleDescription(choice.meaning)
        self.key.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self.key.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.key.clicked.connect(choice.action)
        self.meaning = FitLabel(self)
        self.meaning.say(choice.meaning)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        column.addWidget(self.key, 4)
        column.addWidget(self.meaning, 1)

    def apply_look(self, look: Look, page: QWidget) -> None:
        """Take theme and sizes."""
        sizes = look.sizes(page)
        self.meaning.set_ink(look.palette.ink)
        self.meaning.set_max_px(sizes.text_px)
        font = self.key.font()
        font.setPixelSize(round(sizes.text_px * 1.2))
        font.setBold(True)
        self.key.setFont(font)
        self.key.setMinimumHeight(sizes.target_px)
        self.key.setIcon(icon(self._choice.drawing, look.palette.key_ink))
        side = round(sizes.target_px * 0.6)
        self.key.setIconSize(
            self.key.iconSize().scaled(side, side, Qt.AspectRatioMode.KeepAspectRatio)
        )


class StartPage(QWidget):
    """Name, purpose, choices, and what the program is not."""

    def __init__(
        self,
        choices: list[Choice],
        commands: list[Command],
        look: Look,
        parent: QWidget | None = None,
        own: Collection[Command] = (),
    ) -> None:
        """Show the choices and further commands; those that are its `own` nobody else hears."""
        super().__init__(parent)
        self._look = look
        self.title = FitLabel(self, max_px=40, bold=True)
        self.title.say("co2vent")
        self.purpose = FitLabel(self)
        self.purpose.say(
            translate(
                "Start",
                "Beside you while a trapped CO2 section is vented: what is left inside, how sure, "
                "and what to do next.",
            )
        )
        self.limits = FitLabel(self)
        self.limits.say(
            translate(
                "Start",
                "It advises from gauge readings. It never says that a section is safe to open: "
                "your procedure, your permit and the mechanical gauge decide.",
            )
        )
        self.cards = [ChoiceCard(choice, self) for choice in choices]
        self._grid = QGridLayout()
        self._grid.setSpacing(14)
        head = QHBoxLayout()
        head.addWidget(self.title, 1)
        head.addWidget(self.purpose, 3)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 14, 20, 14)
        column.setSpacing(10)
        column.addLayout(head, 2)
        column.addLayout(self._grid, 10)
        column.addWidget(self.limits, 2)
        self.keys = [
            Key(c.drawing, c.words, c.shortcut, c.action, self, listens=c in own) for c in commands
        ]
        self._key_grid = QGridLayout()
        column.addLayout(self._key_grid)

    def apply_look(self) -> None:
        """Take theme and sizes."""
        sizes = self._look.sizes(self)
        for label in (self.title, self.purpose, self.limits):
            label.set_ink(self._look.palette.ink)
            label.set_max_px(round(sizes.text_px * 1.15))
        self.title.set_max_px(round(sizes.text_px * 2.4))
        while self._grid.count():
            self._grid.takeAt(0)
        columns = 1 if sizes.portrait else 2
        for place, card in enumerate(self.cards):
            card.apply_look(self._look, self)
            self._grid.addWidget(card, place // columns, place % columns)
        while self._key_grid.count():
            self._key_grid.takeAt(0)
        columns = 4 if sizes.portrait else len(self.keys)
        for at in range(len(self.keys)):
            self._key_grid.setColumnStretch(at, int(at < columns))
        for place, key in enumerate(self.keys):
            key.set_theme(self._look.palette)
            key.set_sizes(sizes)
            self._key_grid.addWidget(key, place // columns, place % columns)
        self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the page."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._look.palette.page))
        painter.end()
