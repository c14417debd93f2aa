"""A line to write, change or remove a note on the present moment of a replay.

It takes the place of the page's keys while it is shown, and so needs no room of its own.
"""

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QGridLayout, QLineEdit, QWidget

from co2vent.store.notes import MAX_AUTHOR, MAX_TEXT
from co2vent.window.keys import Key
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette
from co2vent.window.words import translate


class NoteEntry(QWidget):
    """Hidden until asked for. Its texts stay until the page says that they are kept."""

    kept = Signal(str, str)  # text, author
    removed = Signal()
    opened = Signal(bool)  # False: it was put away

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.line = QLineEdit(self)
        self.line.setMaxLength(MAX_TEXT)
        self.author = QLineEdit(self)
        self.author.setMaxLength(MAX_AUTHOR)
        self.author.setPlaceholderText(translate("Note", "Your name"))
        self.author.setAccessibleName(translate("Spoken", "name of the writer, may be empty"))
        for field in (self.line, self.author):
            field.returnPressed.connect(self._keep)
        self.keep = Key("note", translate("Note", "Keep"), "Enter", self._keep, self, listens=False)
        self.remove = Key("remove", translate("Note", "Remove"), "", self.removed.emit, self)
        self.away = Key(
            "back", translate("Note", "Put away"), "Esc", self.put_away, self, listens=False
        )
        self._portrait = False
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(4, 0, 4, 4)
        self._grid.setSpacing(4)
        self.hide()

    def set_theme(self, palette: Palette) -> None:
        """Paint the keys in the ink of the theme."""
        for key in (self.keep, self.remove, self.away):
            key.set_theme(palette)

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        font = self.line.font()
        font.setPixelSize(sizes.text_px)
        for field in (self.line, self.author):
            field.setFont(font)
            field.setFixedHeight(sizes.target_px)
        for key in (self.keep, self.remove, self.away):
            key.set_sizes(sizes)
        parts = (self.line, self.author, self.keep, self.remove, self.away)
        # landscape in one row; portrait in two, the keys under the fields
        places = (0, 0), (0, 1), (0, 2), (0, 3), (0, 4)
        spans = (1, 1, 1, 1, 1)
        if sizes.portrait:
            places = (0, 0), (0, 2), (1, 0), (1, 1), (1, 2)
            spans = (2, 1, 1, 1, 1)
        for part, place, span in zip(parts, places, spans, strict=True):
            self._grid.addWidget(part, *place, 1, span)
        self._portrait = sizes.portrait
        self._stretch()

    def _stretch(self) -> None:
        removable = int(not self.remove.isHidden())
        stretches = (1, removable, 1, 0, 0) if self._portrait else (8, 2, 2, 2 * removable, 2)
        for column, stretch in enumerate(stretches):
            self._grid.setColumnStretch(column, stretch)

    def ask(self, moment: str, text: str, author: str, *, old: bool) -> None:
        """Show the line with what there is, to be changed; an old note can be removed."""
        words = translate("Note", "Note on the moment {time}").format(time=moment)
        self.line.setPlaceholderText(words)
        self.line.setAccessibleName(words)
        self.line.setText(text)
        self.author.setText(author)
        self.remove.setVisible(old)
        self._stretch()
        self.show()
        self.opened.emit(True)
        self.line.setFocus()

    def put_away(self) -> None:
        """Hide the line; its texts stay."""
        if not self.isHidden():
            self.hide()
            self.opened.emit(False)

    def _keep(self) -> None:
        self.kept.emit(self.line.text(), self.author.text())

    def event(self, event: QEvent) -> bool:
        """Esc belongs to this line while it has the focus: it puts the line away, no more."""
        override = event.type() == QEvent.Type.ShortcutOverride
        if override and isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_Escape:
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc puts the line away; its text comes back when it is asked for again."""
        if event.key() == Qt.Key.Key_Escape:
            self.put_away()
        else:
            super().keyPressEvent(event)
