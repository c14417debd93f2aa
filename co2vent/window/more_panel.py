"""Further keys, laid over the pictures: everything that has no place in the row of keys."""

from collections.abc import Callable, Sequence

from PySide6.QtWidgets import QGridLayout, QWidget

from co2vent.window.commands import Command
from co2vent.window.keys import Key
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette


class MorePanel(QWidget):
    """A grid of keys. Their keyboard keys work always; here they are only shown."""

    def __init__(
        self,
        commands: Sequence[Command],
        close: Callable[[], object],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._close = close
        self.keys = [self._key(command) for command in commands]
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(4, 4, 4, 4)
        self._grid.setSpacing(6)

    def _key(self, command: Command) -> Key:
        def act() -> None:
            self._close()
            command.action()

        return Key(command.drawing, command.words, command.shortcut, act, self, listens=False)

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        for key in self.keys:
            key.set_theme(palette)

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        columns = 3 if sizes.portrait or len(self.keys) <= 12 else 4  # rows that stay 15 mm
        for at in range(columns):
            self._grid.setColumnStretch(at, 1)
        for place, key in enumerate(self.keys):
            key.set_sizes(sizes)
            self._grid.addWidget(key, place // columns, place % columns)
