"""Which part of the trace is shown: the running hold, the whole vent, or what a person chose."""

from enum import Enum
from typing import Any

import numpy as np

from co2vent.guidance.session import View
from co2vent.window.plot_style import Scale
from co2vent.window.traces import Traces

WORDS_PX = 34.0  # a line of words and its margin

CLOSE_UP_LEAST_PA = 5_000.0  # a close-up of noise would look like a rise
CURVES_MOST = 2.5  # a close-up leaves room for the curves up to so many times the rise


class Extent(Enum):
    """How much of the vent is shown."""

    HOLD = "hold"  # the running hold, down to the triple point
    CLOSE = "close"  # the running hold alone, as large as it goes
    WHOLE = "whole"


class TraceRange:
    """The ranges of the pressure and temperature plots. A person's zoom survives new readings."""

    def __init__(self, pressure: Any, temperature: Any) -> None:
        self._pressure = pressure
        self._temperature = temperature
        self.following = True
        self._extent = Extent.HOLD
        self._ranges: tuple[float, float, float, float] | None = None
        pressure.getViewBox().sigRangeChangedManually.connect(self.taken_over)

    def taken_over(self, *_args: object) -> None:
        """A person has moved or zoomed the plot: leave it there."""
        self.following = False

    def forget(self) -> None:
        """Set the ranges anew at the next reading, as after a change of units."""
        self._ranges = None

    def start_anew(self) -> None:
        """Follow the newest reading, as before a new vent."""
        self.following = True
        self._ranges = None

    @property
    def whole(self) -> bool:
        """Whether the whole vent is shown."""
        return self._extent is Extent.WHOLE

    def next_extent(self) -> None:
        """Turn to hold, close-up of the hold, whole vent; follow the newest reading again."""
        if self.following:
            extents = list(Extent)
            self._extent = extents[(extents.index(self._extent) + 1) % len(extents)]
        self.start_anew()

    def fit(
        self, traces: Traces, rows_and_ahead: tuple[int, int], view: View, scale: Scale
    ) -> None:
        """Set the ranges: the running hold with its lead-in, else the whole vent.

        The axis is moved in steps of a fifth, so that it does not crawl with each reading.
        """
        if not self.following:
            return
        rows, ahead = rows_and_ahead
        at_s = traces.at_s(rows + ahead)
        start, newest = float(at_s[0]), float(at_s[-1])
        hold = view.running_hold
        in_hold = hold is not None and hold.number > 0 and not self.whole
        if hold is not None and in_hold:
            start = max(start, hold.start_s - max(20.0, 0.12 * (newest - hold.start_s)))
        span = max(60.0, newest - start)
        _time, values = traces.points("pressure", rows + ahead, (start, newest), 500)
        shown = scale.up(values)
        highest, floor = float(np.nanmax(shown)), float(np.nanmin(shown))
        if self._extent is Extent.CLOSE and in_hold and hold is not None:
            pressed = scale.up(traces.pressure_pa(rows)[np.searchsorted(at_s, hold.start_s) :])
            highest, floor = float(np.nanmax(pressed)), float(np.nanmin(pressed))
            least = float(scale.up(CLOSE_UP_LEAST_PA) - scale.up(0.0))
            highest = max(highest, floor + least)
            most = floor + CURVES_MOST * (highest - floor)
            for curve in hold.curves:  # what the hold is compared with, where it is not far off
                if curve.pressure_pa:
                    top = float(scale.up(max(curve.pressure_pa)))
                    highest = max(highest, min(top, most))
        else:
            highest = max(highest, float(scale.up(view.stop_pressure_pa)))
            floor = min(floor, float(scale.up(view.triple_point_pa)))
        kept = self._ranges
        if (
            kept is None
            or not kept[0] <= start <= kept[0] + 0.25 * span
            or not newest + 0.02 * span <= kept[1] <= newest + 0.35 * span
            or not (kept[2] <= floor and highest <= kept[3])
            or highest - floor < 0.5 * (kept[3] - kept[2])
        ):
            room = highest - floor
            words_share = WORDS_PX / max(self._pressure.getViewBox().height(), 3.0 * WORDS_PX)
            below = max(0.13, words_share) * room  # the name of the triple point stands there
            kept = (start, newest + 0.2 * span, floor - below, highest + 0.13 * room)
            self._ranges = kept
            self._pressure.setXRange(kept[0], kept[1], padding=0)
            self._pressure.setYRange(kept[2], kept[3], padding=0)
            self._fit_temperature(traces, rows, (start, newest), scale)

    def _fit_temperature(
        self, traces: Traces, rows: int, span_s: tuple[float, float], scale: Scale
    ) -> None:
        _time, line_k = traces.points("line", rows, span_s, 500)
        known = line_k[np.isfinite(line_k)]
        self._temperature.setVisible(known.size > 0)
        if known.size:
            low, high = (float(scale.warm(value)) for value in (known.min(), known.max()))
            margin = max(1.0, 0.1 * (high - low))
            self._temperature.setYRange(low - margin, high + margin, padding=0)
