"""How fast the window is: first digits, reading to painted prompt, long traces, memory.

Ratios come from one run on one machine; times depend on the machine and its load, which is printed.
"""

import argparse
import os
import queue
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from importlib.resources import as_file, files
from pathlib import Path
from statistics import median, quantiles
from tempfile import TemporaryDirectory
from typing import TYPE_CHECKING, Final

import numpy as np

from co2vent.readings.arrays import ReadingArrays
from co2vent.wire.source import ReadOnlySource

if TYPE_CHECKING:
    from co2vent.window.traces import Traces

FIRST_DIGITS_MOST_S: Final = 1.0
PAINTED_MOST_S: Final = 0.050  # 99 % of the readings
FRAME_MOST_S: Final = 0.016
BARE_MOST_RATIO: Final = 1.10
BYTES_MOST: Final = 60.0
PAINTED_ROWS: Final = 100_000
EIGHT_HOURS_ROWS: Final = 288_000  # at ten a second
WARM_UP: Final = 40  # readings, until the plotting library is loaded
HEAVY: Final = ("CoolProp", "scipy", "pandas", "pyqtgraph", "numba")

FIRST_DIGITS: Final = """
import sys, time
from pathlib import Path
from co2vent.window.app_instance import application
from co2vent.window.look import Look
from co2vent.window.main_window import MainWindow
from co2vent.readings.log_file import read_log
app = application()
window = MainWindow(Look(path=Path(sys.argv[2]) / "settings.json"))
window.resize(1280, 800)
window.show()
page = window.replay(read_log(Path(sys.argv[1])), "sample")
loaded = [name for name in sys.argv[3].split(",") if name in sys.modules]
while not page.panel.pressure.painted_digit_px or page.panel.shown.stale:
    app.processEvents()
    page.tick()
    page.panel.pressure.repaint()
print(time.monotonic(), ",".join(loaded) or "none")
page.close_feed()
"""


@dataclass(frozen=True, slots=True)
class Figure:
    """One measured figure and its limit."""

    name: str
    value: float
    limit: float
    unit: str
    note: str = ""

    def line(self) -> str:
        """Return the figure as a line of the table."""
        verdict = "ok" if self.value <= self.limit else "OVER"
        return (
            f"{self.name:52} {self.value:9.3g} {self.unit:5} limit {self.limit:g} {verdict}"
            f"{'  ' + self.note if self.note else ''}"
        )


class QueueSource(ReadOnlySource):
    """A source in this process, fed by the benchmark."""

    label = "benchmark"

    def __init__(self) -> None:
        self.lines: queue.SimpleQueue[bytes] = queue.SimpleQueue()

    def open(self) -> None:
        """Nothing to open."""

    def read(self, timeout_s: float) -> bytes | None:
        """Return the bytes that wait, or nothing within `timeout_s`."""
        try:
            found = [self.lines.get(timeout=timeout_s)]
            while not self.lines.empty():
                found.append(self.lines.get())
        except queue.Empty:
            return b""
        return b"".join(found)

    def close(self) -> None:
        """Nothing to close."""


def first_digits(times: int) -> Iterator[Figure]:
    """Measure from the start of the process to painted digits of a sample."""
    seconds: list[float] = []
    loaded = ""
    sample = files("co2vent.sample_logs").joinpath("liquid-left-bare.csv")
    with TemporaryDirectory() as folder, as_file(sample) as path:
        command = [sys.executable, "-c", FIRST_DIGITS, str(path), folder, ",".join(HEAVY)]
        for _ in range(times):
            began_s = time.monotonic()
            done = subprocess.run(command, capture_output=True, text=True, check=True)
            painted, loaded = done.stdout.split()
            seconds.append(float(painted) - began_s)
    yield Figure(
        "start of the process to first digits, median", median(seconds), FIRST_DIGITS_MOST_S, "s",
        f"heavy libraries loaded by then: {loaded}",
    )  # fmt: skip


def long_traces(rows: int) -> "Traces":
    """Return a trace of so many readings at ten a second."""
    from co2vent.window.traces import Traces

    at_s = np.arange(rows, dtype=np.float64) * 0.1
    pressure_pa = 6.0e5 + 1e5 * np.sin(at_s / 900.0) + 200.0 * np.sin(at_s * 7.3)
    readings = ReadingArrays(
        at_s=at_s,
        pressure_pa=pressure_pa,
        line_temperature_k=220.0 + pressure_pa / 1e5,
        segment=np.zeros(rows, np.int32),
        line=np.arange(rows, dtype=np.int64),
    )
    return Traces.of(readings)[0]


def painted_prompts(readings: int) -> Iterator[Figure]:
    """Measure from the line of a reading to its painted digits, eight hours on the screen."""
    from co2vent.live.monitor import Monitor
    from co2vent.window.app_instance import application
    from co2vent.window.look import Look
    from co2vent.window.main_window import MainWindow

    app = application()
    source = QueueSource()
    source.lines.put(b"# simulated: yes\nelapsed_s,pressure_bar_g,line_temperature_degC\n")
    monitor = Monitor(source)
    monitor.start()
    with TemporaryDirectory() as folder:
        window = MainWindow(Look(path=Path(folder) / "settings.json"))
        window.resize(1280, 800)
        window.show()
        page = window.watch(monitor, recording=False)
        page.live.traces = page.feed.traces = long_traces(EIGHT_HOURS_ROWS)
        waits_s, longest_gap_s = _feed_and_wait(
            app.processEvents, page.panel.pressure, source, readings
        )
        window.close()
    yield Figure(
        "reading to painted digits, 99 %, 8 h of trace on screen",
        quantiles(waits_s, n=100)[98] * 1e3, PAINTED_MOST_S * 1e3, "ms",
        f"median {median(waits_s) * 1e3:.3g} ms, {len(waits_s)} of {readings} painted, "
        f"longest pause of the screen {longest_gap_s * 1e3:.3g} ms",
    )  # fmt: skip


def _feed_and_wait(
    process_events: object, figure: object, source: QueueSource, readings: int
) -> tuple[list[float], float]:
    assert callable(process_events)
    waits_s: list[float] = []
    start_s = EIGHT_HOURS_ROWS * 0.1 + 10.0 + (WARM_UP * 0.1 if readings != WARM_UP else 0.0)
    longest_gap_s, last_s = 0.0, time.perf_counter()
    for number in range(readings):
        value = 6.0 + (number % 400) / 100.0
        digits = f"pressure: {value:.2f} "
        source.lines.put(f"{start_s + number * 0.1:.1f},{value:.2f},-50.0\n".encode())
        sent_s = time.perf_counter()
        painted = False
        while time.perf_counter() - sent_s < 0.1:
            process_events()
            now_s = time.perf_counter()
            longest_gap_s, last_s = max(longest_gap_s, now_s - last_s), now_s
            if not painted and str(figure.accessibleName()).startswith(digits):  # type: ignore[attr-defined]
                process_events()  # the repaint that the change has asked for
                waits_s.append(time.perf_counter() - sent_s)
                painted = True
            time.sleep(0.0005)
    return waits_s, longest_gap_s


def drawing(rows: int) -> Iterator[Figure]:
    """Measure panning and zooming through a long trace, and 1e5 points against a bare plot."""
    from co2vent.guidance.session import begin, view
    from co2vent.readings.reading import Setup
    from co2vent.window.app_instance import application
    from co2vent.window.theme import OUTDOOR
    from co2vent.window.trace_plot import TracePlot

    app = application()
    traces = long_traces(rows)
    began_s = time.perf_counter()
    traces.prepare()
    first_s = time.perf_counter() - began_s
    yield Figure(f"first levels of {rows:.0e} rows", first_s, 3.0, "s")
    yield Figure("memory of the traces, with levels", traces.nbytes / rows, BYTES_MOST, "B/row")
    plot = TracePlot()
    plot.set_theme(OUTDOOR)
    plot.resize(1000, 600)
    plot.show()
    plot.show_trace(traces, rows, view(begin(Setup())))
    plot.range.taken_over()
    app.processEvents()

    def paint(at: int) -> None:
        width_s = rows * 0.1 * 0.9 ** (at % 60)
        low_s = (rows * 0.1 - width_s) * (0.618 * at % 1.0)
        plot.pressure.setXRange(low_s, low_s + width_s, padding=0)  # all curves are drawn anew
        plot.layout_widget.viewport().repaint()

    busy_s = time.thread_time()
    frames_s = _times(paint, 200)
    computed_ms = (time.thread_time() - busy_s) / len(frames_s) * 1e3
    yield Figure(
        f"a frame while panning and zooming {rows:.0e} rows, 99 %",
        quantiles(frames_s, n=100)[98] * 1e3, FRAME_MOST_S * 1e3, "ms",
        f"median {median(frames_s) * 1e3:.3g} ms; computing, mean {computed_ms:.3g} ms",
    )  # fmt: skip
    plot.close()
    yield _beside_a_bare_plot()


def _beside_a_bare_plot() -> Figure:
    """Measure a new reading drawn after 1e5, in turn: our whole picture, and a plot of one curve.

    Ours is all that the page draws: two curves, triple point and stop pressure, their words, grid.
    """
    import pyqtgraph as pg

    from co2vent.guidance.session import begin, view
    from co2vent.readings.reading import Setup
    from co2vent.window.app_instance import application
    from co2vent.window.theme import OUTDOOR
    from co2vent.window.trace_plot import TracePlot

    app = application()
    traces, seen = long_traces(PAINTED_ROWS), view(begin(Setup()))
    ours, bare = TracePlot(), pg.PlotWidget(background="w")
    ours.set_theme(OUTDOOR)
    curve = bare.plot(pen=pg.mkPen("k", width=1))
    for widget in (ours, bare):
        widget.resize(1000, 600)
        widget.show()
    app.processEvents()
    at_s, shown_bar = traces.at_s(), traces.pressure_pa().astype(float) / 1e5

    def paint_bare(at: int) -> None:
        curve.setData(at_s[: PAINTED_ROWS - 100 + at], shown_bar[: PAINTED_ROWS - 100 + at])
        bare.viewport().repaint()

    def paint_ours(at: int) -> None:
        ours.show_trace(traces, PAINTED_ROWS - 100 + at, seen)
        ours.layout_widget.viewport().repaint()

    theirs_s: list[float] = []
    ours_s: list[float] = []
    for at in range(60):  # in turn, so that whatever else runs slows both
        theirs_s.append(_time(paint_bare, at))
        ours_s.append(_time(paint_ours, at))
    ours.close()
    bare.close()
    one, other = median(ours_s[5:]), median(theirs_s[5:])
    return Figure(
        "a reading drawn after 1e5, over the same in a bare plot", one / other, BARE_MOST_RATIO, "",
        f"{one * 1e3:.3g} ms over {other * 1e3:.3g} ms",
    )  # fmt: skip


def _times(action: Callable[[int], object], count: int) -> list[float]:
    return [_time(action, at) for at in range(count + 3)][3:]


def _time(action: Callable[[int], object], at: int) -> float:
    began_s = time.perf_counter()
    action(at)
    return time.perf_counter() - began_s


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the sizes of the measurements."""
    parser.add_argument("--starts", type=int, default=5, help="starts of the program (5)")
    parser.add_argument("--readings", type=int, default=300, help="readings at 10 Hz (300)")
    parser.add_argument(
        "--flood-seconds", type=float, default=10.0, help="length of the flood (10)"
    )
    parser.add_argument("--rows", type=int, default=10_000_000, help="rows of the long trace")
    parser.add_argument(
        "--log-rows", type=int, nargs="*", default=[1_000_000], metavar="N",
        help="rows of the logs that are opened (1000000); 10000000 takes two minutes and 0.5 GB",
    )  # fmt: skip


def run(args: argparse.Namespace) -> int:
    """Measure and print the table; return 1 where a limit is passed."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from co2vent.benchmark.window_flood import flood
    from co2vent.benchmark.window_opening import load_words, opening

    passed = True
    for figures in (
        first_digits(args.starts), painted_prompts(args.readings), flood(args.flood_seconds),
        drawing(args.rows), *(opening(rows) for rows in args.log_rows),
    ):  # fmt: skip
        for figure in figures:
            print(figure.line(), flush=True)
            passed = passed and figure.value <= figure.limit
    print(load_words())
    return 0 if passed else 1
