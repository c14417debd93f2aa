"""A key: a large button with a drawing, a word and the key of the keyboard that does the same."""

from collections.abc import Callable, Sequence

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QFontMetrics, QKeyEvent, QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QToolButton, QWidget

from co2vent.window.icons import icon
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette
from co2vent.window.words import anew, translate

SMALLEST_PX = 8
LINE_LEAST_PX = 11  # smaller letters in one line are worse to read than two lines
DRAWING = 0.45  # of the key's height
DRAWING_OVER_TWO = 0.3  # lines of words
EDGES_PX = 18  # border and padding of both sides, as in the style sheet


def keyboard_words(shortcut: str) -> str:
    """Return a key of the keyboard as it is called on the keyboards of the screen's language."""
    if shortcut == "Space":
        return translate("Keyboard", "Space")
    shortcut = shortcut.replace("Return", "↵")  # as it stands on the key
    return shortcut.replace("Ctrl+", translate("Keyboard", "Ctrl") + "+")


class Key(QToolButton):
    """One action, by touch and by keyboard."""

    def __init__(
        self,
        drawing: str,
        words: str,
        shortcut: str,
        action: Callable[[], object],
        parent: QWidget | None = None,
        *,
        listens: bool = True,
    ) -> None:
        """Make a key; one that does not listen only shows its key of the keyboard."""
        super().__init__(parent)
        self._drawing = drawing
        self._words = words
        self._keys = shortcut
        self._ink: str | None = None
        self.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextUnderIcon)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)  # a touch leaves the space key where it was
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self._font_px = 13
        self._target_px = 48
        self._painted: tuple[str, str] | None = None
        self._show_words()
        if shortcut and listens:
            # Not the button's own shortcut: that animates a press, which takes a tenth of a second
            # and loses a second stroke.
            keys = QShortcut(QKeySequence(shortcut), self)
            keys.setAutoRepeat(False)
            keys.activated.connect(self.click)
        self.clicked.connect(action)

    def set_words(self, words: str, drawing: str | None = None) -> None:
        """Change word and drawing, as for play and pause."""
        if words != self._words:
            self._words = words
            self._show_words()
        if drawing is not None and drawing != self._drawing:
            self._drawing = drawing
            self._paint_drawing()

    def _show_words(self) -> None:
        self.setAccessibleName(self._words)
        self._fit()

    def _paint_drawing(self) -> None:
        if self._ink is not None and self._painted != (self._drawing, self._ink):
            self._painted = (self._drawing, self._ink)
            self.setIcon(icon(self._drawing, self._ink))

    def set_theme(self, palette: Palette) -> None:
        """Paint the drawing in the ink of the theme."""
        self._ink = palette.key_ink
        self._paint_drawing()

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self.setFixedHeight(sizes.target_px)
        self.setMinimumWidth(sizes.target_px)
        self._target_px = sizes.target_px
        self._font_px = max(11, round(sizes.small_px * 0.92))
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        """Speak the new language of the screen at once: a page may stay open for a whole vent."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.LanguageChange:
            self._words = anew(self._words)
            self._show_words()

    def event(self, event: QEvent) -> bool:
        """Let space press the key that has the focus, whatever else space is a shortcut for."""
        override = event.type() == QEvent.Type.ShortcutOverride
        if override and isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_Space:
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter presses the key that has the focus, as space does."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
        else:
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The words follow the width."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Take the largest font in which the words fit; a long key stands under its word."""
        keys = keyboard_words(self._keys)
        lines = [self._words, f"({keys})"] if keys else [self._words]
        words, font = " ".join(lines), self.font()
        for size in range(self._font_px, SMALLEST_PX - 1, -1):
            if size < LINE_LEAST_PX:
                words = "\n".join(lines)
            font.setPixelSize(size)
            metrics, room = QFontMetrics(font), self.width() - EDGES_PX
            if all(metrics.horizontalAdvance(line) <= room for line in words.split("\n")):
                break
        if words != self.text():
            self.setText(words)
        side = round(self._target_px * (DRAWING_OVER_TWO if "\n" in words else DRAWING))
        self.setIconSize(QSize(side, side))
        if font.pixelSize() != self.font().pixelSize():
            self.setFont(font)


class KeyRows(QGridLayout):
    """The keys of a page in one row of equal widths or, where the window is narrow, in two."""

    def __init__(self) -> None:
        super().__init__()
        self.setContentsMargins(4, 0, 4, 4)
        self.setSpacing(4)

    def lay_out(self, keys: Sequence[Key], *, two_rows: bool) -> None:
        """Place the keys."""
        while self.count():
            self.takeAt(0)
        columns = (len(keys) + 1) // 2 if two_rows else len(keys)
        for at in range(len(keys)):
            self.setColumnStretch(at, int(at < columns))
        for place, key in enumerate(keys):
            self.addWidget(key, place // columns, place % columns)
