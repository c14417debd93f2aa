"""A key: a large button with a drawing, a word and the key of the keyboard that does the same."""

from collections.abc import Callable

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QFontMetrics, QKeySequence, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QToolButton, QWidget

from co2vent.window.icons import icon
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette

SMALLEST_PX = 8
EDGES_PX = 18  # border and padding of both sides, as in the style sheet


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
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self._font_px = 13
        self.set_words(words)
        if shortcut and listens:
            self.setShortcut(QKeySequence(shortcut))
        self.clicked.connect(action)

    def set_words(self, words: str, drawing: str | None = None) -> None:
        """Change word and drawing, as for play and pause."""
        self._words = words
        if drawing is not None and drawing != self._drawing:
            self._drawing = drawing
            if self._ink is not None:
                self.setIcon(icon(self._drawing, self._ink))
        shortcut = self.shortcut()
        self.setText(f"{words} ({self._keys})" if self._keys else words)
        self.setShortcut(shortcut)  # setText takes the shortcut away
        self.setAccessibleName(words)
        self._fit()

    def set_theme(self, palette: Palette) -> None:
        """Paint the drawing in the ink of the theme."""
        self._ink = palette.key_ink
        self.setIcon(icon(self._drawing, self._ink))

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self.setFixedHeight(sizes.target_px)
        self.setMinimumWidth(sizes.target_px)
        side = round(sizes.target_px * 0.45)
        self.setIconSize(QSize(side, side))
        self._font_px = max(11, round(sizes.small_px * 0.92))
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The words follow the width."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Take the largest font in which the words fit."""
        font = self.font()
        for size in range(self._font_px, SMALLEST_PX - 1, -1):
            font.setPixelSize(size)
            if QFontMetrics(font).horizontalAdvance(self.text()) <= self.width() - EDGES_PX:
                break
        if font.pixelSize() != self.font().pixelSize():
            self.setFont(font)
