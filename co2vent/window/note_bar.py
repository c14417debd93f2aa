"""A line to write a note into the recording; empty means a plain mark."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QPushButton, QWidget

from co2vent.window.sizes import Sizes
from co2vent.window.words import translate


class NoteBar(QWidget):
    """Hidden until asked for; Enter keeps the note, Esc puts it away."""

    written = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.line = QLineEdit(self)
        self.line.setPlaceholderText(translate("Note", "Note for the record (empty: a mark)"))
        self.line.setAccessibleName(translate("Spoken", "note"))
        self.line.returnPressed.connect(self._keep)
        self.keep = QPushButton(translate("Note", "Keep (Enter)"), self)
        self.keep.clicked.connect(self._keep)
        row = QHBoxLayout(self)
        row.setContentsMargins(4, 0, 4, 0)
        row.addWidget(self.line, 1)
        row.addWidget(self.keep)
        self.hide()

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        font = self.line.font()
        font.setPixelSize(sizes.text_px)
        for part in (self.line, self.keep):
            part.setFont(font)
            part.setFixedHeight(sizes.target_px)

    def ask(self) -> None:
        """Show the line and wait for a note."""
        self.line.clear()
        self.show()
        self.line.setFocus()

    def _keep(self) -> None:
        words = " ".join(self.line.text().split()) or "mark"
        self.hide()
        self.written.emit(words)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc puts the line away."""
        if event.key() == Qt.Key.Key_Escape:
            self.hide()
        else:
            super().keyPressEvent(event)
