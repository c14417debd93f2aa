"""A cursor in the trace: put by a touch or the arrow keys, it says time, pressure, temperature."""

import numpy as np
import pyqtgraph as pg
from PySide6.QtGui import QColor, QFont

from co2vent.guidance.session import View
from co2vent.window import text
from co2vent.window.plot_style import LINE_PX, Scale, pen
from co2vent.window.theme import Palette
from co2vent.window.traces import Traces


class TraceCursor:
    """A vertical line with words at its top."""

    def __init__(self, plot: pg.PlotItem) -> None:
        self._plot = plot
        self.at_s: float | None = None
        self._line = pg.InfiniteLine(angle=90)
        self._words = pg.TextItem(anchor=(0, 0))
        for item in (self._line, self._words):
            item.setZValue(30)
            item.setVisible(False)
            plot.addItem(item, ignoreBounds=True)

    def set_theme(self, palette: Palette, font: QFont) -> None:
        """Paint in the colours of `palette`."""
        self._line.setPen(pen(palette.ink, LINE_PX))
        self._words.setColor(QColor(palette.ink))
        self._words.fill = pg.mkBrush(QColor(palette.page))
        self._words.setFont(font)

    def put(self, at_s: float | None) -> None:
        """Put the cursor at a time [s], or take it away."""
        self.at_s = at_s

    @property
    def words(self) -> str:
        """What the cursor says."""
        return str(self._words.toPlainText()) if self._words.isVisible() else ""

    def show(self, traces: Traces, rows: int, scale: Scale) -> None:
        """Say what was measured at the reading nearest before the cursor."""
        visible = self.at_s is not None and rows > 0
        self._line.setVisible(visible)
        self._words.setVisible(visible)
        if self.at_s is None or rows == 0:
            return
        time = traces.at_s(rows)
        row = max(0, int(np.searchsorted(time, self.at_s, side="right")) - 1)
        pressure_pa = float(traces.pressure_pa(rows)[row])
        line_k = float(traces.line_temperature_k(rows)[row])
        said = [text.duration(float(time[row]))]
        if np.isnan(pressure_pa):
            said.append(text.DASH)
        else:
            said.append(text.both(scale.units, pressure_pa, scale.ambient_pa))
        if not np.isnan(line_k):
            said.append(text.temperature(line_k, scale.units.temperature))
        self._line.setPos(self.at_s)
        (low, high), (_bottom, top) = self._plot.viewRange()
        right = self.at_s > (low + high) / 2.0
        self._words.setAnchor((1 if right else 0, 0))
        self._words.setPos(self.at_s, top)
        self._words.setText(" · ".join(said))

    def hold_under(self, view: View) -> int | None:
        """Return the number of the hold that the cursor stands in."""
        if self.at_s is None:
            return None
        for hold in view.holds:
            if hold.start_s <= self.at_s <= hold.end_s:
                return hold.number
        return None
