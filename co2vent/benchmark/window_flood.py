"""The window in a flood: a megabyte of rows a second, and how long the screen stands still."""

import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Final

from co2vent.benchmark.window_speed import Figure
from co2vent.live.monitor import Monitor
from co2vent.wire.tcp import TcpSource

PAUSE_MOST_S: Final = 0.100
WARM_UP_S: Final = 5.0  # the plotting library is loaded, the first burst is taken


def flood(seconds: float) -> Iterator[Figure]:
    """Measure the longest pause of the screen while another process pours rows into a socket."""
    code = "from co2vent.benchmark.soak import pour; pour()"
    with subprocess.Popen(
        [sys.executable, "-c", code], stdout=subprocess.PIPE, text=True
    ) as pourer:
        assert pourer.stdout is not None
        monitor = Monitor(TcpSource("127.0.0.1", int(pourer.stdout.readline())))
        monitor.start()
        figure = _watch(monitor, seconds)
        pourer.kill()
    yield figure


def _watch(monitor: Monitor, seconds: float) -> Figure:
    from co2vent.window.app_instance import application
    from co2vent.window.look import Look
    from co2vent.window.main_window import MainWindow

    app = application()
    with TemporaryDirectory() as folder:
        window = MainWindow(Look(path=Path(folder) / "settings.json"))
        window.resize(1280, 800)
        window.show()
        page = window.watch(monitor, recording=False)
        longest_s, oldest_s = 0.0, 0.0
        began_s = last_s = time.monotonic()
        while last_s - began_s < WARM_UP_S + seconds:
            app.processEvents()
            now_s = time.monotonic()
            latest = monitor.view.latest
            if last_s - began_s > WARM_UP_S and latest is not None:
                longest_s = max(longest_s, now_s - last_s)
                oldest_s = max(oldest_s, now_s - latest.at_s)  # the rows carry this clock
            last_s = now_s
            time.sleep(0.001)
        rows = len(page.live.traces)
        window.close()
    return Figure(
        "longest pause of the screen in a flood of 1 MB/s", longest_s * 1e3, PAUSE_MOST_S * 1e3,
        "ms", f"{rows} rows on screen, newest at most {oldest_s * 1e3:.0f} ms old",
    )  # fmt: skip
