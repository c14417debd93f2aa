"""Eight hours at ten readings a second, wound fast: memory stays flat and no step takes long.

Also a flood: how many rows a second the program takes from a socket, and how old they become.
"""

import argparse
import gc
import math
import random
import socket
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from co2vent.benchmark.fault_wire import FaultyWire, WireRow, World
from co2vent.live.clock import LiveClock
from co2vent.live.monitor import Monitor
from co2vent.store.recorder import Recorder
from co2vent.wire.tcp import TcpSource

MOST_GROWTH_BYTES: Final = 20e6
LONGEST_STEP_S: Final = 0.2
WARM_UP_SHARE: Final = 0.1  # of the rows, before memory is first measured
FLOOD_BYTES_PER_S: Final = 1e6


@dataclass(frozen=True, slots=True)
class Soak:
    """What a soak came to."""

    readings: int
    growth_bytes: float
    longest_step_s: float
    longest_step_cpu_s: float  # of it this program's own: the rest is a busy machine's
    took_s: float
    log_bytes: int


def resident_bytes() -> int:
    """Return the memory that this process holds (Linux; 0 elsewhere)."""
    try:
        pages = int(Path("/proc/self/statm").read_text(encoding="ascii").split()[1])
    except (OSError, IndexError, ValueError):
        return 0
    return pages * 4096


def soak_rows(count: int, period_s: float = 0.1) -> Iterator[WireRow]:
    """Yield the rows of vents, one every twenty minutes, with a gauge's noise."""
    noise = random.Random(1)
    for n in range(count):
        at_s = n * period_s
        phase_s = at_s % 1200.0
        is_open = 120.0 <= phase_s < 300.0
        level = 25.0 - 19.5 * min(max(phase_s - 120.0, 0.0), 180.0) / 180.0
        level += 0.05 * (1.0 - math.exp(-max(phase_s - 300.0, 0.0) / 60.0))
        valve = "open" if is_open else "closed"
        yield WireRow(at_s, f"{level + noise.gauss(0.0, 0.003):.3f}", f",-20.0,{valve}")


def soak(hours: float) -> Soak:
    """Run so many hours at 10 Hz through the monitor and a recorder."""
    rows = list(soak_rows(int(hours * 36_000)))
    world = World()
    preamble = (
        "# section_volume_l: 14.5\n# simulated: yes\n"
        "elapsed_s,pressure_bar_g,line_temperature_degC,vent_valve\n"
    )
    wire = FaultyWire(world, preamble, rows, (), random.Random(0), timed=True)
    with tempfile.TemporaryDirectory(prefix="co2vent-soak-") as folder:
        path = Path(folder) / "soak.csv"
        monitor = Monitor(
            wire,
            recorder=Recorder(path),
            clock=LiveClock(world.steady, world.wall, world.sleep),
            queue_readings=False,
        )
        recorder = monitor.recorder
        assert recorder is not None
        recorder.open()
        monitor.open()
        warm_up_s = rows[-1].due_s * WARM_UP_SHARE
        before = 0
        longest_s = longest_cpu_s = 0.0
        started_s = time.monotonic()
        while not wire.ended:
            step_s, cpu_s = time.monotonic(), time.thread_time()
            monitor.step()
            longest_s = max(longest_s, time.monotonic() - step_s)
            longest_cpu_s = max(longest_cpu_s, time.thread_time() - cpu_s)
            while not monitor.events.empty():
                monitor.events.get()
            if not before and world.now_s > warm_up_s:
                gc.collect()
                before = resident_bytes()
        gc.collect()
        growth = resident_bytes() - before
        took_s = time.monotonic() - started_s
        readings = monitor.view.readings
        monitor.finish()
        return Soak(readings, growth, longest_s, longest_cpu_s, took_s, path.stat().st_size)


@dataclass(frozen=True, slots=True)
class Flood:
    """What a flood came to."""

    rows_per_s: float
    longest_view_gap_s: float
    oldest_s: float  # age of the newest reading shown, at its worst
    growth_bytes: float


def flood(seconds: float) -> Flood:
    """Pour rows into a socket at 1 MB/s from another process and watch the view."""
    code = "from co2vent.benchmark.soak import pour; pour()"
    with subprocess.Popen(
        [sys.executable, "-c", code], stdout=subprocess.PIPE, text=True
    ) as pourer:
        assert pourer.stdout is not None
        monitor = Monitor(
            TcpSource("127.0.0.1", int(pourer.stdout.readline())), queue_readings=False
        )
        monitor.start()
        time.sleep(3.0)  # the beginning is taken whole, as a burst
        before, started_s = resident_bytes(), time.monotonic()
        first = monitor.view.readings
        last, changed_s, longest_s, oldest_s = monitor.view, started_s, 0.0, 0.0
        while (now_s := time.monotonic()) - started_s < seconds:
            if monitor.view is not last:
                longest_s, changed_s, last = max(longest_s, now_s - changed_s), now_s, monitor.view
            if last.latest is not None:
                oldest_s = max(oldest_s, now_s - last.latest.at_s)
            time.sleep(0.001)
        rows = monitor.view.readings - first
        growth = resident_bytes() - before
        monitor.stop()
        pourer.kill()
    return Flood(rows / seconds, longest_s, oldest_s, growth)


def pour() -> None:
    """Serve rows that carry the time of their sending at the rate of a flood, until killed."""
    with socket.create_server(("127.0.0.1", 0)) as server:
        print(server.getsockname()[1], flush=True)
        client, _ = server.accept()
    client.sendall(b"elapsed_s,pressure_bar_g,line_temperature_degC,vent_valve\n")
    sent, started_s = 0, time.monotonic()
    try:
        while True:
            at_s = time.monotonic()
            rows = [
                f"{at_s + k / 1e6:.6f},{19.0 + k % 7 / 1000:.3f},-20.00,closed\n"
                for k in range(100)
            ]
            data = "".join(rows).encode()
            client.sendall(data)
            sent += len(data)
            ahead_s = sent / FLOOD_BYTES_PER_S - (time.monotonic() - started_s)
            if ahead_s > 0.0:
                time.sleep(ahead_s)
    except OSError:
        return


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options of `benchmark soak`."""
    parser.add_argument("--hours", type=float, default=8.0, help="how long, at 10 Hz (8)")
    parser.add_argument("--flood-s", type=float, default=10.0, help="seconds of 1 MB/s (10)")


def run(args: argparse.Namespace) -> int:
    """Run soak and flood; print the figures; 1 where one is beyond its limit."""
    poured = flood(args.flood_s)
    print(
        f"flood: of 1 MB/s {poured.rows_per_s:.0f} rows/s taken, "
        f"longest time between views {poured.longest_view_gap_s * 1e3:.0f} ms, "
        f"oldest reading shown {poured.oldest_s * 1e3:.0f} ms, "
        f"memory {poured.growth_bytes / 1e6:+.1f} MB"
    )
    found = soak(args.hours)
    print(
        f"soak: {found.readings} readings ({args.hours:g} h at 10 Hz) in {found.took_s:.0f} s, "
        f"memory {found.growth_bytes / 1e6:+.1f} MB, longest step {found.longest_step_s * 1e3:.0f} "
        f"ms ({found.longest_step_cpu_s * 1e3:.0f} ms of processor time), "
        f"log {found.log_bytes / 1e6:.1f} MB"
    )
    good = found.growth_bytes < MOST_GROWTH_BYTES and found.longest_step_s < LONGEST_STEP_S
    return 0 if good else 1
