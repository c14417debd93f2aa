"""Pressure against time, with the lines that matter and the holds; temperature beneath."""

from pathlib import Path
from typing import Any, Final

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QKeyEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from co2vent.guidance.events import Event, EventKind
from co2vent.guidance.session import View
from co2vent.window import text
from co2vent.window.drawing_file import save_svg
from co2vent.window.fall_band import FallBand
from co2vent.window.hold_marks import HoldMarks
from co2vent.window.level_names import LevelNames
from co2vent.window.name_places import as_points
from co2vent.window.note_marks import NoteMarks
from co2vent.window.number_axes import NumberAxis
from co2vent.window.plot_style import (
    DASH,
    DOT,
    LINE_PX,
    SOLID,
    ClockAxis,
    Scale,
    dress,
    pen,
    plain_font,
)
from co2vent.window.sizes import Sizes
from co2vent.window.text import UnitChoice
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.trace_cursor import TraceCursor
from co2vent.window.trace_range import TraceRange
from co2vent.window.traces import Traces
from co2vent.window.words import translate

MARKED_EVENTS: Final = {
    EventKind.VENT_STARTED,
    EventKind.VENT_CLOSED,
    EventKind.VERDICT,
    EventKind.BELOW_TRIPLE_POINT,
    EventKind.SHELF,
    EventKind.DATA_STALE,
    EventKind.DATA_GAP,
    EventKind.TIME_BROKEN,
    EventKind.GAUGE_FAULT,
    EventKind.PRESSURE_HIGH,
    EventKind.NOTE,
    EventKind.HOLD_VOIDED,
}


LEVEL_Z = 12  # over the curves of the holds: the words of a level stand on the page's colour


class TracePlot(QWidget):
    """The pressure trace with its lines, and the temperature trace."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._scale = Scale(UnitChoice.BAR, 101_325.0)
        self._sizes: Sizes | None = None
        self._marks: list[Any] = []
        self.notes: tuple[Event, ...] = ()  # on the recording; drawn with the next trace
        self._note_marks = NoteMarks()
        self._drawn: tuple[Traces, int, View, int] | None = None
        self.setAccessibleName(translate("Spoken", "pressure and temperature against time"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        self.layout_widget = pg.GraphicsLayoutWidget()
        self.layout_widget.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.layout_widget.ci.layout.setSpacing(2)
        self.layout_widget.ci.layout.setContentsMargins(0, 2, 6, 0)
        column.addWidget(self.layout_widget)
        self.pressure = self._add_plot(0)
        self.temperature = self._add_plot(1)
        self.layout_widget.ci.layout.setRowStretchFactor(0, 3)
        self.layout_widget.ci.layout.setRowStretchFactor(1, 1)
        self.temperature.setXLink(self.pressure)
        self.range = TraceRange(self.pressure, self.temperature)
        self._curves = {
            "pressure": self._add_curve(self.pressure),
            "saturation": self._add_curve(self.pressure),
            "line": self._add_curve(self.temperature),
            "upper": self._add_curve(self.temperature),
        }
        self._ahead = self._add_curve(self.pressure)
        self._under = self._add_curve(self.pressure)
        self._other: Traces | None = None
        self._triple = self._level()
        self._stop = self._level()
        self._names = LevelNames(self.pressure, self._stop, self._triple)
        self.holds = HoldMarks(self.pressure)
        self.fall = FallBand(self.pressure)
        self.cursor_line = TraceCursor(self.pressure)
        box = self.pressure.getViewBox()
        box.sigXRangeChanged.connect(self._range_changed)
        self.layout_widget.scene().sigMouseClicked.connect(self._clicked)

    def _add_plot(self, row: int) -> Any:
        axes = {"left": NumberAxis("left"), "bottom": ClockAxis("bottom")}
        plot = self.layout_widget.addPlot(row=row, col=0, axisItems=axes)
        plot.hideButtons()
        plot.setMenuEnabled(False)
        plot.disableAutoRange()
        return plot

    def _add_curve(self, plot: Any) -> Any:
        item = pg.PlotCurveItem(connect="finite")  # points come reduced to what is seen
        plot.addItem(item, ignoreBounds=True)
        return item

    def _level(self) -> Any:
        """Return a level whose words stand at its right end, below it."""
        line = pg.InfiniteLine(
            angle=0, label="", labelOpts={"position": 0.995, "anchors": [(1, 0), (1, 0)]}
        )
        line.setZValue(LEVEL_Z)
        self.pressure.addItem(line, ignoreBounds=True)
        return line

    # --- looks -------------------------------------------------------------------------------

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        self.layout_widget.setBackground(QColor(palette.page))
        for plot in (self.pressure, self.temperature):
            dress(plot, palette, self._sizes)
        sizes = self._sizes
        self._curves["pressure"].setPen(pen(palette.trace, LINE_PX, sizes=sizes))
        self._curves["line"].setPen(pen(palette.temperature, LINE_PX, sizes=sizes))
        self._curves["upper"].setPen(pen(palette.temperature, 1, DASH, sizes))
        self._curves["saturation"].setPen(pen(palette.saturation, 1, DOT, sizes))
        self._under.setPen(pen(palette.liquid_curve, LINE_PX, DASH, sizes))
        self._ahead.setPen(pen(palette.rule, 1, sizes=sizes))
        self._triple.setPen(pen(palette.triple_point, 3, sizes=sizes))
        self._stop.setPen(pen(palette.stop, LINE_PX, DASH, sizes))
        font = plain_font(self._sizes)
        for line, colour in ((self._triple, palette.triple_point), (self._stop, palette.stop)):
            line.label.setColor(QColor(colour))
            line.label.setFont(font)
            line.label.fill = pg.mkBrush(QColor(palette.page))
        self.holds.set_theme(palette, font, sizes)
        self.fall.set_theme(palette, font, sizes)
        self.cursor_line.set_theme(palette, font)
        self._note_marks.set_theme(palette, font, sizes)

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self._sizes = sizes
        self.set_theme(self._palette)

    def set_units(self, units: UnitChoice) -> None:
        """Speak other units; the trace is drawn again at the next reading."""
        if units is not self._scale.units:
            self._scale = Scale(units, self._scale.ambient_pa)
            self.range.forget()

    # --- data --------------------------------------------------------------------------------

    def clear(self) -> None:
        """Forget holds and marks, as before a new vent."""
        self.holds.clear()
        self._show_events(())
        self.notes = ()
        self._drawn = None
        self.range.start_anew()

    def show_trace(self, traces: Traces, rows: int, view: View, ahead: int = 0) -> None:
        """Draw the first `rows` rows and what the view says of them.

        The `ahead` rows after them, of a record, are drawn faintly when the whole is shown.
        """
        self._scale = Scale(self._scale.units, view.setup.ambient_pressure_pa)
        self._drawn = (traces, rows, view, ahead if self.range.whole else 0)
        unit = self._scale.units.pressure
        self._set_level(self._triple, view.triple_point_pa, translate("Plot", "triple point"))
        self._set_level(self._stop, view.stop_pressure_pa, translate("Plot", "stop"))
        self.pressure.setLabel("left", text.unit_words(unit))
        self.temperature.setLabel("left", text.unit_words(self._scale.units.temperature))
        if rows:
            self.range.fit(traces, (rows, self._drawn[3]), view, self._scale)
        self._draw_curves()
        self.cursor_line.show(traces, rows, self._scale)
        self.fall.show(view, self._scale)
        box = self.pressure.getViewBox()
        seen = as_points(box, self._trace_lines())
        self._names.place(seen)
        seen = np.vstack([seen, as_points(box, self._level_lines())])
        self._names.place_words(self.fall.words, seen)
        self.holds.show(
            view, self._scale, self.cursor_line.hold_under(view), seen, self._level_names()
        )
        self._show_events(view.events)
        self._note_marks.show(self.pressure, self.notes)

    def _trace_lines(self) -> list[tuple[Any, Any]]:
        """Return the lines that say where the pressure is and goes: trace, saturation and fall."""
        items = [self._curves["pressure"], self._curves["saturation"], *self.fall.lines()]
        found = [item.getData() for item in items]
        return [(time, value) for time, value in found if time is not None]

    def _level_lines(self) -> list[tuple[Any, Any]]:
        low_s, high_s = self.pressure.viewRange()[0]
        return [([low_s, high_s], [line.value()] * 2) for line in (self._stop, self._triple)]

    def _level_names(self) -> list[QRectF]:
        """Return where the names of the levels, and of the fall, stand in the scene."""
        names = [self._stop.label, self._triple.label]
        names += [self.fall.words] if self.fall.words.isVisible() else []
        return [name.mapRectToScene(name.boundingRect()) for name in names]

    def _draw_curves(self) -> None:
        if self._drawn is None:
            return
        traces, rows, _view, ahead = self._drawn
        low, high = self.pressure.viewRange()[0]
        most = max(200, int(self.pressure.getViewBox().width()))
        for name, curve in self._curves.items():
            time, value = traces.points(name, rows, (low, high), most)
            warm = name in ("line", "upper")
            curve.setData(time, self._scale.warm(value) if warm else self._scale.up(value))
        if self._other is not None:
            time, value = self._other.points("pressure", len(self._other), (low, high), most)
            self._under.setData(time, self._scale.up(value))
        if ahead:
            span = (max(low, float(traces.at_s()[rows - 1])), high)
            time, value = traces.points("pressure", rows + ahead, span, most)
            self._ahead.setData(time, self._scale.up(value))
        else:
            self._ahead.setData([], [])

    def lay_under(self, traces: Traces) -> None:
        """Draw another vent under this one, on the same time."""
        self._other = traces

    def _set_level(self, line: Any, pressure_pa: float, words: str) -> None:
        line.setPos(float(self._scale.up(pressure_pa)))
        shown = text.pressure(pressure_pa, self._scale.ambient_pa, self._scale.units.pressure)
        line.label.setFormat(f"{words} {shown}")

    def _show_events(self, events: tuple[Event, ...]) -> None:
        marked = [event for event in events if event.kind in MARKED_EVENTS]
        for mark in self._marks[len(marked) :]:  # after a seek backwards
            self.pressure.removeItem(mark)
        del self._marks[len(marked) :]
        for event in marked[len(self._marks) :]:
            style = SOLID if event.kind is EventKind.NOTE else DOT
            mark = pg.InfiniteLine(event.at_s, angle=90, pen=pen(self._palette.rule, 1, style))
            mark.setZValue(-5)
            self.pressure.addItem(mark, ignoreBounds=True)
            self._marks.append(mark)

    def save_svg(self, path: Path, words: str) -> bool:
        """Write the picture as SVG, `words` of the banner in it; return whether it was written."""
        return save_svg(path, self.layout_widget, self.pressure, self._palette.page, words)

    # --- cursor ------------------------------------------------------------------------------

    def _clicked(self, event: Any) -> None:
        if self._drawn is None or not self.pressure.sceneBoundingRect().contains(event.scenePos()):
            return
        at = self.pressure.getViewBox().mapSceneToView(event.scenePos())
        self._put_cursor(float(at.x()))

    def _put_cursor(self, at_s: float | None) -> None:
        self.cursor_line.put(at_s)
        if self._drawn is not None:
            self.show_trace(*self._drawn)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Left and right move the cursor, Esc takes it away."""
        step = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(event.key()))
        if step is not None and self._drawn is not None:
            low, high = self.pressure.viewRange()[0]
            at_s = self.cursor_line.at_s
            start_s = (low + high) / 2.0 if at_s is None else at_s
            self._put_cursor(start_s + step * (high - low) / 200.0)
        elif event.key() == Qt.Key.Key_Escape and self.cursor_line.at_s is not None:
            self._put_cursor(None)
        else:
            super().keyPressEvent(event)

    # --- range -------------------------------------------------------------------------------

    def _range_changed(self, *_args: object) -> None:
        if not self.range.following:
            self._draw_curves()

    def next_extent(self) -> None:
        """Turn to hold, close-up of the hold, whole vent; follow the newest reading again."""
        self.range.next_extent()
