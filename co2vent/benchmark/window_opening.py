"""How soon a long log shows its trace, and what the window does while its rows are checked.

The log is written by the program's own writer; its file lies in the page cache when it is opened.
The lower bound beside it is the time in which the same process reads the bytes and does nothing.
"""

import os
import time
from collections.abc import Callable, Iterator
from math import exp, sin
from pathlib import Path
from statistics import median, quantiles
from tempfile import TemporaryDirectory
from typing import TYPE_CHECKING, Final

from co2vent.benchmark.window_speed import BYTES_MOST, FRAME_MOST_S, Figure
from co2vent.readings.log_writer import LogLayout, metadata_from_setup, metadata_lines
from co2vent.readings.reading import Reading, Setup
from co2vent.units import STANDARD_ATMOSPHERE_PA

if TYPE_CHECKING:
    from co2vent.window.loading_page import LoadingPage
    from co2vent.window.main_window import MainWindow

SHOWN_MOST_S: Final = 3.0
PAUSE_MOST_S: Final = 0.100
ROWS_A_SECOND: Final = 10.0
LINES_AT_ONCE: Final = 20_000
FRAMES: Final = 200
CHECK_MOST_S: Final = 600.0


def write_log(path: Path, rows: int) -> None:
    """Write an invented recording at ten rows a second: a vent and a hold every hour."""
    setup = Setup(altitude_m=120.0, simulated=True, section_name="benchmark")
    layout = LogLayout(setup, row_check=True)
    with path.open("w", encoding="utf-8", newline="\n") as file:
        head = [*metadata_lines(metadata_from_setup(setup)), layout.header()]
        file.write("\n".join(head) + "\n")
        for first in range(0, rows, LINES_AT_ONCE):
            part = range(first, min(first + LINES_AT_ONCE, rows))
            file.write("".join(f"{layout.row(_reading(number))}\n" for number in part))


def _reading(number: int) -> Reading:
    at_s = number / ROWS_A_SECOND
    in_hour_s = at_s % 3600.0
    venting = in_hour_s < 600.0
    above_pa = (
        19e5 - 13e5 * in_hour_s / 600.0
        if venting
        else 6e5 + 0.8e5 * (1.0 - exp(-(in_hour_s - 600.0) / 900.0))
    )
    pressure_pa = STANDARD_ATMOSPHERE_PA + above_pa + 300.0 * sin(7.3 * at_s)
    line_k = 220.0 + above_pa / 1e5
    return Reading(
        at_s=at_s, pressure_pa=pressure_pa, line_temperature_k=line_k, ambient_temperature_k=285.0,
        vent_open=venting,
    )  # fmt: skip


def _read_bytes_s(path: Path) -> float:
    began_s = time.perf_counter()
    buffer = bytearray(1 << 20)
    with path.open("rb", buffering=0) as file:
        while file.readinto(buffer):
            pass
    return time.perf_counter() - began_s


class _Pump:
    """Runs the window and keeps its longest pause, and the most that its thread computed in one."""

    def __init__(self, process_events: Callable[[], object]) -> None:
        self._process_events = process_events
        self.longest_s = 0.0
        self.computed_s = 0.0

    def until(self, done: Callable[[], bool], also: Callable[[], object] = lambda: None) -> None:
        began_s = last_s = time.perf_counter()
        busy_s = time.thread_time()
        while not done() and last_s - began_s < CHECK_MOST_S:
            self._process_events()
            also()
            now_s, now_busy_s = time.perf_counter(), time.thread_time()
            self.longest_s = max(self.longest_s, now_s - last_s)
            self.computed_s = max(self.computed_s, now_busy_s - busy_s)
            last_s, busy_s = now_s, now_busy_s
            time.sleep(0.0005)


def opening(rows: int) -> Iterator[Figure]:
    """Open a log of so many rows in the window, pan and zoom it while it is checked."""
    from co2vent.window.app_instance import application
    from co2vent.window.look import Look
    from co2vent.window.main_window import MainWindow

    app = application()
    with TemporaryDirectory() as folder:
        path = Path(folder) / "long.csv"
        write_log(path, rows)
        _read_bytes_s(path)  # into the page cache
        bytes_s = _read_bytes_s(path)
        window = MainWindow(Look(path=Path(folder) / "settings.json"))
        window.resize(1280, 800)
        window.show()
        app.processEvents()
        yield from _opened(window, path, _Pump(app.processEvents), bytes_s)
        window.close_now()
        app.processEvents()


def _opened(window: "MainWindow", path: Path, pump: _Pump, bytes_s: float) -> Iterator[Figure]:
    from co2vent.window.loading_page import LoadingPage

    megabytes = path.stat().st_size / 1e6
    began_s, busy_s = time.perf_counter(), time.process_time()
    window.open_log(path)
    page = window.page
    assert isinstance(page, LoadingPage)
    pump.until(lambda: page.shows_trace)
    assert page.plot is not None
    page.plot.layout_widget.viewport().repaint()
    shown_s, busy_s = time.perf_counter() - began_s, time.process_time() - busy_s
    assert page.opening.unchecked is not None
    rows = len(page.opening.unchecked[0])
    yield Figure(
        f"a log of {rows:.0e} rows chosen to its trace, UNCHECKED", shown_s, SHOWN_MOST_S, "s",
        f"{megabytes:.0f} MB; {busy_s:.3g} s of computing; reading the bytes alone "
        f"{bytes_s:.2g} s, {shown_s / bytes_s:.3g} times that",
    )  # fmt: skip
    walls_s, computed_s = _pan_and_zoom(window, page, pump)
    yield Figure(
        "a frame while panning and zooming that, 99 %", quantiles(walls_s, n=100)[98] * 1e3,
        FRAME_MOST_S * 1e3, "ms",
        f"median {median(walls_s) * 1e3:.3g} ms, with the check beside it; computing alone, "
        f"median {median(computed_s) * 1e3:.3g}, 99 % {quantiles(computed_s, n=100)[98] * 1e3:.3g} "
        "ms",
    )  # fmt: skip
    pump.until(lambda: window.page is not page)
    checked_s = time.perf_counter() - began_s
    yield Figure(
        "longest pause of the screen until it was checked", pump.longest_s * 1e3,
        PAUSE_MOST_S * 1e3, "ms",
        f"in which at most {pump.computed_s * 1e3:.3g} ms were computed; rows checked after "
        f"{checked_s:.3g} s",
    )  # fmt: skip
    traces = window.page.replay.index.traces  # type: ignore[attr-defined]
    yield Figure(
        "memory of its checked traces, with levels", traces.nbytes / len(traces), BYTES_MOST,
        "B/row",
    )  # fmt: skip


def _pan_and_zoom(
    window: "MainWindow", page: "LoadingPage", pump: _Pump
) -> tuple[list[float], list[float]]:
    """Return the times of frames by the clock, and what the window's thread computed for each."""
    plot, unchecked = page.plot, page.opening.unchecked
    assert plot is not None
    assert unchecked is not None
    length_s = float(unchecked[0].at_s()[-1])
    plot.range.taken_over()
    walls_s: list[float] = []
    computed_s: list[float] = []

    def frame() -> None:
        width_s = length_s * 0.9 ** (len(walls_s) % 60)
        low_s = (length_s - width_s) * (0.618 * len(walls_s) % 1.0)
        wall_s, busy_s = time.perf_counter(), time.thread_time()
        plot.pressure.setXRange(low_s, low_s + width_s, padding=0)
        plot.layout_widget.viewport().repaint()
        walls_s.append(time.perf_counter() - wall_s)
        computed_s.append(time.thread_time() - busy_s)

    pump.until(lambda: window.page is not page or len(walls_s) >= FRAMES, frame)
    return walls_s, computed_s


def load_words() -> str:
    """Return how busy the machine is."""
    load = ", ".join(f"{value:.2f}" for value in os.getloadavg())
    return f"load of the machine over 1, 5 and 15 minutes: {load}; {os.cpu_count()} processors"
