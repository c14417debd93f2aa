"""Where an open vent's pressure goes: the foreseen fall with its band, to the stop pressure."""

from typing import Final

import numpy as np
import pyqtgraph as pg
from PySide6.QtGui import QColor, QFont

from co2vent.guidance.session import View
from co2vent.window.plot_style import DOT, LINE_PX, Scale, pen
from co2vent.window.shown import fall_words
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette

FALL_LEAST_PA_PER_S: Final = 50.0  # a slower fall gives no time to the stop pressure worth a line
POINTS: Final = 30
BAND_ALPHA: Final = 48  # of 255: a grey that prints, under which grid and lines still show


class FallBand:
    """The likely fall as a dotted line, earliest and latest as the edges of a band, and in words.

    Without bounds (the fall is too short, too slow or too far from the stop pressure) only the
    straight line of the present rate is drawn.
    """

    def __init__(self, plot: pg.PlotItem) -> None:
        self._plot = plot
        self.line = pg.PlotCurveItem()
        self.early = pg.PlotCurveItem()
        self.late = pg.PlotCurveItem()
        self._fill = pg.FillBetweenItem(self.early, self.late)
        self.words = pg.TextItem(anchor=(1, 0))
        self.words.setZValue(20)
        self._fill.setZValue(-10)
        for item in (self._fill, self.early, self.late, self.line, self.words):
            plot.addItem(item, ignoreBounds=True)
        self._hide_band()

    def set_theme(self, palette: Palette, font: QFont, sizes: Sizes | None = None) -> None:
        """Paint in the colours of `palette`."""
        self.line.setPen(pen(palette.trace, LINE_PX, DOT, sizes))
        for edge in (self.early, self.late):
            edge.setPen(pen(palette.faint, 1, sizes=sizes))
        shade = QColor(palette.trace)
        shade.setAlpha(BAND_ALPHA)
        self._fill.setBrush(shade)
        self.words.setColor(QColor(palette.ink))
        self.words.setFont(font)

    def _hide_band(self) -> None:
        for edge in (self.early, self.late):
            edge.setData([], [])
        self._fill.setVisible(False)
        self.words.setVisible(False)

    @staticmethod
    def falling(view: View) -> bool:
        """Whether a fall is drawn: an open vent above the stop, fresh readings, not too slow."""
        rate = view.rate_pa_per_s
        falls = rate is not None and rate < -FALL_LEAST_PA_PER_S
        if view.latest is None or view.latest.pressure_pa <= view.stop_pressure_pa:
            return False  # there is no way down to it
        return falls and view.vent_open is not False and not view.stale

    def show(self, view: View, scale: Scale) -> None:
        """Draw the fall from the newest reading of `view`; nothing while the vent is closed."""
        latest, rate, bounds = view.latest, view.rate_pa_per_s, view.stop_in_s
        if latest is None or rate is None or not self.falling(view):
            self.line.setData([], [])
            self._hide_band()
            return
        start_pa, stop_pa = latest.pressure_pa, view.stop_pressure_pa
        if bounds is None or bounds.estimate is None or bounds.lower is None or not bounds.upper:
            seconds = max(0.0, (stop_pa - start_pa) / rate)
            ends = scale.up(np.array([start_pa, stop_pa]))
            self.line.setData(np.array([latest.at_s, latest.at_s + seconds]), ends)
            self._hide_band()
            return
        share = np.linspace(0.0, 1.0, POINTS)
        fall = scale.up(start_pa * (stop_pa / start_pa) ** share)  # equal shares in equal times
        for item, seconds in (
            (self.line, bounds.estimate),
            (self.early, bounds.lower),
            (self.late, bounds.upper),
        ):
            item.setData(latest.at_s + share * seconds, fall)
        self._fill.setVisible(True)
        self.words.setText(fall_words(bounds.lower, bounds.upper, bounds.confidence))
        self.words.setVisible(True)  # whoever knows what else is drawn says where

    def lines(self) -> tuple[pg.PlotCurveItem, ...]:
        """Return what is drawn of the fall."""
        return self.line, self.early, self.late
