"""Marks of the notes on the trace: firm lines with the numbers that stand in the list of events."""

from collections.abc import Sequence
from typing import Any

import pyqtgraph as pg
from PySide6.QtGui import QColor, QFont

from co2vent.guidance.events import Event
from co2vent.window.plot_style import SOLID, pen
from co2vent.window.sizes import Sizes
from co2vent.window.theme import OUTDOOR, Palette

HEIGHT = 0.05  # of the numbers, as a share of the plot from below: the trace seldom goes there


class NoteMarks:
    """The marks of the notes last shown; they come, change and go anywhere."""

    def __init__(self) -> None:
        self._shown: tuple[Event, ...] = ()
        self.lines: list[Any] = []
        self._palette: Palette = OUTDOOR
        self._font = QFont()
        self._sizes: Sizes | None = None

    def set_theme(self, palette: Palette, font: QFont, sizes: Sizes | None) -> None:
        """Paint in the colours of `palette`."""
        self._palette, self._font, self._sizes = palette, font, sizes
        for line in self.lines:
            self._dress(line)

    def show(self, plot: Any, notes: Sequence[Event]) -> None:
        """Mark the notes, numbered in their order."""
        if tuple(notes) == self._shown:
            return
        for line in self.lines:
            plot.removeItem(line)
        self.lines = [self._line(note.at_s, number) for number, note in enumerate(notes, start=1)]
        for line in self.lines:
            plot.addItem(line, ignoreBounds=True)
        self._shown = tuple(notes)

    def _line(self, at_s: float, number: int) -> Any:
        line = pg.InfiniteLine(at_s, angle=90, label=str(number), labelOpts={"position": HEIGHT})
        line.setZValue(6)
        self._dress(line)
        return line

    def _dress(self, line: Any) -> None:
        line.setPen(pen(self._palette.ink, 1, SOLID, self._sizes))
        line.label.fill = pg.mkBrush(QColor(self._palette.ink))
        line.label.setColor(QColor(self._palette.page))
        line.label.setFont(self._font)
