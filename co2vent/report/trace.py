"""The trace of a log: pressure and temperatures over time, the two lines that matter, the holds.

Black and white: solid pressure, long dashes for the stop pressure, dash-dot for the triple point,
grey ground for holds. A gap in the readings is a gap in the line.
"""

import math
from collections.abc import Callable, Iterable

from co2vent.readings.reading import Gas, Reading
from co2vent.report.drawing import Box, Drawing, Label, Point, Stroke
from co2vent.report.facts import LogFacts
from co2vent.units import MICRON_PA, PSI_PA, ZERO_CELSIUS_K

LEFT, RIGHT, TOP, GAP, BOTTOM = 15.0, 13.0, 7.0, 5.0, 8.0
STOP_DASH = (3.0, 1.2)
TRIPLE_DASH = (4.0, 1.0, 0.6, 1.0)
UPPER_DASH = (1.2, 0.8)
AMBIENT_DASH = (0.4, 0.9)


def nice_step(span: float, most: int) -> float:
    """Return a step of 1, 2 or 5 times a power of ten that cuts `span` into `most` at the most."""
    rough = max(span, 1e-9) / most
    power = 10.0 ** math.floor(math.log10(rough))
    return next(factor * power for factor in (1.0, 2.0, 5.0, 10.0) if factor * power >= rough)


def time_step(span_s: float) -> float:
    """Return a step for a time axis [s] that a clock would use."""
    steps = (1, 2, 5, 10, 30, 60, 120, 300, 600, 1200, 1800, 3600, 7200, 21600, 43200, 86400)
    return float(next((step for step in steps if span_s / step <= 10), 7 * 86400))


def time_label(at_s: float, step_s: float) -> str:
    """Return a time of the log for its axis: h:mm, or m:ss where the steps are short."""
    sign, at_s = ("-", -at_s) if at_s < 0 else ("", at_s)
    if step_s < 60:
        return f"{sign}{int(at_s // 60)}:{int(at_s % 60):02d}"
    return f"{sign}{int(at_s // 3600)}:{int(at_s % 3600 // 60):02d}"


def draw_trace(log: LogFacts, width: float = 180.0, height: float = 78.0) -> Drawing:
    """Return the trace of `log` on `width` by `height` mm."""
    shown = "vacuum_pa" if log.measured("vacuum_pa") else "pressure_pa"
    if sum(bool(getattr(reading, shown)) for run in log.runs for reading in run) < 2:
        return Drawing(width, 12.0, labels=(Label(2, 7, "No trace: fewer than two readings."),))
    canvas = _Canvas(log, width, height)
    canvas.holds()
    canvas.axes()
    canvas.limits()
    canvas.curve(canvas.shown, canvas.pressure_y, 0.5, ())
    if canvas.temperatures:
        canvas.temperature_panel()
    canvas.legend()
    return Drawing(width, height, tuple(canvas.boxes), tuple(canvas.strokes), tuple(canvas.labels))


class _Canvas:
    """Collects boxes, strokes and labels; knows the scales."""

    def __init__(self, log: LogFacts, width: float, height: float) -> None:
        self.log = log
        self.ambient_pa = log.view.setup.ambient_pressure_pa
        self.boxes: list[Box] = []
        self.strokes: list[Stroke] = []
        self.labels: list[Label] = []
        self.left, self.right = LEFT, width - RIGHT
        self.readings = [reading for run in log.runs for reading in run]
        self.begin_s = min(reading.at_s for reading in self.readings)
        self.end_s = max(*(reading.at_s for reading in self.readings), self.begin_s + 1.0)
        self.temperatures = [
            (name, read, dash)
            for name, read, dash in _TEMPERATURES
            if any(read(reading) is not None for reading in self.readings)
        ]
        self.bottom = height - BOTTOM
        usable = self.bottom - TOP
        self.split = TOP + usable * (0.66 if self.temperatures else 1.0)
        self.vacuum = log.measured("vacuum_pa")
        values = [value for reading in self.readings if (value := self.shown(reading)) is not None]
        lines = self.limit_values()
        near = [value for _, value, _ in lines if value < 2.0 * max(values) + 2.0]
        self.low = min(values) - 0.1 if self.vacuum else min(0.0, *values)
        self.high = max(max([*values, *near]) * 1.08, self.low + 0.5)

    def gauge_bar(self, pressure_pa: float) -> float:
        return (pressure_pa - self.ambient_pa) / 1e5

    def shown(self, reading: Reading) -> float | None:
        """Return what the upper panel shows: bar g, or the decimal logarithm of microns."""
        if not self.vacuum:
            return self.gauge_bar(reading.pressure_pa)
        if reading.vacuum_pa is None or reading.vacuum_pa <= 0.0:
            return None
        return math.log10(reading.vacuum_pa / MICRON_PA)

    def limit_values(self) -> list[tuple[str, float, tuple[float, ...]]]:
        if self.vacuum or self.log.view.setup.gas is not Gas.CO2:
            return []
        view = self.log.view
        return [
            ("stop", self.gauge_bar(view.stop_pressure_pa), STOP_DASH),
            ("triple point", self.gauge_bar(view.triple_point_pa), TRIPLE_DASH),
        ]

    def x(self, at_s: float) -> float:
        share = (at_s - self.begin_s) / (self.end_s - self.begin_s)
        return self.left + share * (self.right - self.left)

    def pressure_y(self, value_bar: float) -> float:
        share = (value_bar - self.low) / (self.high - self.low)
        return self.split - share * (self.split - TOP)

    def holds(self) -> None:
        if not any(hold.number > 0 for hold in self.log.view.holds):
            return  # never vented: no hold test, the whole record is one closed time
        for hold in self.log.view.holds:
            left, right = self.x(hold.start_s), self.x(hold.end_s)
            self.boxes.append(Box(left, TOP, max(right - left, 0.3), self.split - TOP, 0.88))
            if right - left > 2.5:
                middle = (left + right) / 2
                self.labels.append(
                    Label(middle, TOP + 3.0, f"{hold.number}", 2.8, "middle", bold=True)
                )

    def axes(self) -> None:
        frame = (
            (self.left, TOP),
            (self.right, TOP),
            (self.right, self.split),
            (self.left, self.split),
            (self.left, TOP),
        )
        self.strokes.append(Stroke(frame, 0.2))
        if self.vacuum:
            self.vacuum_axis()
        else:
            self.pressure_axes()
        step_s = time_step(self.end_s - self.begin_s)
        for at_s in _ticks(self.begin_s, self.end_s, step_s):
            x = self.x(at_s)
            self.strokes.append(Stroke(((x, self.bottom), (x, self.bottom + 1)), 0.15))
            self.strokes.append(Stroke(((x, TOP), (x, self.bottom)), 0.1, grey=0.8))
            self.labels.append(
                Label(x, self.bottom + 3.8, time_label(at_s, step_s), anchor="middle")
            )
        unit = "min:s" if step_s < 60 else "h:min"
        self.labels.append(
            Label(
                (self.left + self.right) / 2,
                self.bottom + 7.2,
                f"time of the log, {unit}",
                anchor="middle",
            )
        )

    def pressure_axes(self) -> None:
        step = nice_step(self.high - self.low, 6)
        for value in _ticks(self.low, self.high, step):
            self.level(value, f"{value:g}")
        psi_low, psi_high = self.low * 1e5 / PSI_PA, self.high * 1e5 / PSI_PA
        for value in _ticks(psi_low, psi_high, nice_step(psi_high - psi_low, 6)):
            y = self.pressure_y(value * PSI_PA / 1e5)
            self.strokes.append(Stroke(((self.right, y), (self.right + 1, y)), 0.15))
            self.labels.append(Label(self.right + 1.6, y + 0.9, f"{value:g}"))
        self.units("bar g", "psig")

    def vacuum_axis(self) -> None:
        for decade in range(math.floor(self.low), math.ceil(self.high) + 1):
            for factor in (1.0, 2.0, 5.0):
                value = decade + math.log10(factor)
                if self.low <= value <= self.high:
                    micron = factor * 10.0**decade
                    self.level(value, f"{micron:g}")
                    y = self.pressure_y(value)
                    pascals = f"{micron * MICRON_PA:.3g}"
                    self.labels.append(Label(self.right + 1.6, y + 0.9, pascals))
        self.units("micron", "Pa")

    def level(self, value: float, words: str) -> None:
        y = self.pressure_y(value)
        self.strokes.append(Stroke(((self.left, y), (self.right, y)), 0.1, grey=0.75))
        self.labels.append(Label(self.left - 1, y + 0.9, words, anchor="end"))

    def units(self, left: str, right: str) -> None:
        self.labels.append(Label(self.left, TOP - 3.0, left, bold=True, anchor="end"))
        self.labels.append(Label(self.right, TOP - 3.0, right, bold=True))

    def limits(self) -> None:
        for _, value, dash in self.limit_values():
            if self.low <= value <= self.high:
                y = self.pressure_y(value)
                self.strokes.append(Stroke(((self.left, y), (self.right, y)), 0.35, dash))

    def curve(
        self,
        value_of: Callable[[Reading], float | None],
        to_y: Callable[[float], float],
        width: float,
        dash: tuple[float, ...],
    ) -> None:
        for run in self.log.runs:
            points: list[Point] = []
            for reading in run:
                value = value_of(reading)
                if value is None:
                    self._stroke(points, width, dash)
                    points = []
                else:
                    points.append((self.x(reading.at_s), to_y(value)))
            self._stroke(points, width, dash)

    def _stroke(self, points: list[Point], width: float, dash: tuple[float, ...]) -> None:
        if len(points) == 1:  # a lone reading still shows
            points = [points[0], (points[0][0] + 0.3, points[0][1])]
        if points:
            self.strokes.append(Stroke(tuple(points), width, dash))

    def temperature_panel(self) -> None:
        top, bottom = self.split + GAP, self.bottom
        values = [
            value - ZERO_CELSIUS_K
            for _, read, _ in self.temperatures
            for reading in self.readings
            if (value := read(reading)) is not None
        ]
        low, high = min(values) - 2.0, max(values) + 2.0

        def to_y(celsius: float) -> float:
            return bottom - (celsius - low) / (high - low) * (bottom - top)

        frame = (
            (self.left, top),
            (self.right, top),
            (self.right, bottom),
            (self.left, bottom),
            (self.left, top),
        )
        self.strokes.append(Stroke(frame, 0.2))
        for value in _ticks(low, high, nice_step(high - low, 4)):
            y = to_y(value)
            self.strokes.append(Stroke(((self.left, y), (self.right, y)), 0.1, grey=0.75))
            self.labels.append(Label(self.left - 1, y + 0.9, f"{value:g}", anchor="end"))
            self.labels.append(Label(self.right + 1.6, y + 0.9, f"{value * 1.8 + 32:g}"))
        self.labels.append(Label(self.left - 8.5, top - 0.8, "°C", bold=True))
        self.labels.append(Label(self.right + 8.2, top - 0.8, "°F", bold=True))
        for _, read, dash in self.temperatures:
            self.curve(_celsius(read), to_y, 0.35, dash)

    def legend(self) -> None:
        name = "vacuum" if self.vacuum else "pressure"
        entries: list[tuple[str, float, tuple[float, ...]]] = [(name, 0.5, ())]
        entries += [
            (f"{name} {value:.2f} bar g", 0.35, dash) for name, value, dash in self.limit_values()
        ]
        self._legend_row(entries, TOP - 2.2)
        if self.temperatures:
            rows = [(name, 0.35, dash) for name, _, dash in self.temperatures]
            self._legend_row(rows, self.split + GAP - 1.6)

    def _legend_row(self, entries: list[tuple[str, float, tuple[float, ...]]], y: float) -> None:
        x = self.left + 8.0
        for text, width, dash in entries:
            self.strokes.append(Stroke(((x, y), (x + 9, y)), width, dash))
            self.labels.append(Label(x + 10, y + 0.8, text, 2.4))
            x += 14.0 + 1.4 * len(text)


def _line(reading: Reading) -> float | None:
    return reading.line_temperature_k


def _upper(reading: Reading) -> float | None:
    return reading.upper_temperature_k


def _ambient(reading: Reading) -> float | None:
    return reading.ambient_temperature_k


_TEMPERATURES: tuple[tuple[str, Callable[[Reading], float | None], tuple[float, ...]], ...] = (
    ("line", _line, ()),
    ("upper", _upper, UPPER_DASH),
    ("ambient", _ambient, AMBIENT_DASH),
)


def _celsius(read: Callable[[Reading], float | None]) -> Callable[[Reading], float | None]:
    def value(reading: Reading) -> float | None:
        kelvin = read(reading)
        return None if kelvin is None else kelvin - ZERO_CELSIUS_K

    return value


def _ticks(low: float, high: float, step: float) -> Iterable[float]:
    first, last = math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9)
    return (round(index * step, 9) for index in range(first, last + 1))
