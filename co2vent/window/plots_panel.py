"""The pictures beside the figures: trace, P-T diagram and events, as many as there is room for.

The log p-h diagram is for those who want it: it comes last when the views are turned, never beside.
"""

from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QWidget

from co2vent.guidance.session import View
from co2vent.window.events_list import EventsList
from co2vent.window.frame import Frame
from co2vent.window.heat_plot import HeatPlot
from co2vent.window.holds_plot import HoldsPlot
from co2vent.window.line_plot import LinePlot
from co2vent.window.sizes import Sizes
from co2vent.window.text import UnitChoice
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.trace_plot import TracePlot
from co2vent.window.traces import Traces

VIEWS = 5  # trace, diagram, events, holds over each other, log p-h
HEAT_VIEW = 4
WIDE_PX = 800  # from this width on two pictures stand side by side


class PlotsPanel(QWidget):
    """Views in turn: trace (with the diagram where it fits), diagram, events, holds, log p-h."""

    event_chosen = Signal(float)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.trace = TracePlot(self)
        self.line = LinePlot(self)
        self.events = EventsList(self)
        self.holds = HoldsPlot(self)
        self._heat: HeatPlot | None = None
        self._look: tuple[Palette, Sizes | None, UnitChoice] = (OUTDOOR, None, UnitChoice.BAR)
        self.events.chosen.connect(self.event_chosen)
        self._beside = QWidget(self)
        self._side = QBoxLayout(QBoxLayout.Direction.TopToBottom, self._beside)
        self._side.setContentsMargins(0, 0, 0, 0)
        self._side.setSpacing(4)
        self._side.addWidget(self.line, 3)
        self._side.addWidget(self.events, 2)
        self._side.addWidget(self.holds, 3)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(4)
        self._row.addWidget(self.trace, 3)
        self._row.addWidget(self._beside, 2)
        self._view = 0

    @property
    def heat(self) -> HeatPlot:
        """The log p-h diagram, made when it is first wanted."""
        if self._heat is None:
            palette, sizes, units = self._look
            self._heat = HeatPlot(self)
            self._heat.setVisible(False)
            self._side.addWidget(self._heat, 3)
            self._heat.set_theme(palette)
            if sizes is not None:
                self._heat.set_sizes(sizes)
            self._heat.set_units(units)
        return self._heat

    def _parts(self) -> list[TracePlot | LinePlot | EventsList | HoldsPlot | HeatPlot]:
        made = [] if self._heat is None else [self._heat]
        return [self.trace, self.line, self.events, self.holds, *made]

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._look = (palette, *self._look[1:])
        for part in self._parts():
            part.set_theme(palette)

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self._look = (self._look[0], sizes, self._look[2])
        for part in self._parts():
            part.set_sizes(sizes)
        self._arrange()

    def set_units(self, units: UnitChoice) -> None:
        """Speak other units."""
        self.trace.set_units(units)
        self.line.set_units(units)
        self.holds.set_units(units)
        self._look = (*self._look[:2], units)
        if self._heat is not None:
            self._heat.set_units(units)

    @property
    def shows_heat(self) -> bool:
        """Whether the log p-h diagram is the view."""
        return self._view == HEAT_VIEW

    def save_svg(self, path: Path, words: str) -> bool:
        """Write the drawing in view as SVG, else the trace; return whether it was written."""
        return (self.heat if self.shows_heat else self.trace).save_svg(path, words)

    def next_view(self) -> None:
        """Turn to the next view."""
        self.turn_to((self._view + 1) % VIEWS)

    def turn_to(self, view: int) -> None:
        """Turn to a view by its number."""
        self._view = view
        self._arrange()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Show as many pictures as fit."""
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        wide, tall = self.width() >= WIDE_PX, self.height() >= WIDE_PX * 0.62
        self._row.setDirection(
            QBoxLayout.Direction.LeftToRight if wide else QBoxLayout.Direction.TopToBottom
        )
        self._side.setDirection(
            QBoxLayout.Direction.TopToBottom if wide else QBoxLayout.Direction.LeftToRight
        )
        room = wide or tall
        self.trace.setVisible(self._view == 0)
        self._beside.setVisible(self._view != 0 or room)
        self.line.setVisible(self._view == 1 or (self._view == 0 and room))
        self.holds.setVisible(self._view == 3)
        if self.shows_heat or self._heat is not None:
            self.heat.setVisible(self.shows_heat)
        self.events.setVisible(self._view == 2 or (self._view == 0 and room))

    def show_view(self, traces: Traces, frame: Frame, view: View) -> None:
        """Draw this moment; hidden pictures wait."""
        rows = frame.rows
        self.trace.notes = frame.notes
        if self.trace.isVisible():
            self.trace.show_trace(traces, rows, view, frame.rows_ahead)
        if self.line.isVisible():
            self.line.show_path(traces, rows, view)
        if self.holds.isVisible():
            self.holds.show_holds(traces, rows, view)
        if self.shows_heat and self.heat.isVisible():
            self.heat.show_path(traces, rows, view)
        if self.events.isVisible():
            self.events.show_events(view.events if frame.events is None else frame.events)

    def clear(self) -> None:
        """Forget holds and marks."""
        self.trace.clear()
