"""Fault injection: hundreds of seeded vents through the live monitor while everything fails.

Each run takes a simulated section whose contents are known, sends its gauge's rows through the
program's own link, decoder, core and recorder in a time that is wound by hand, and lets one to
three things go wrong at random moments. Every tenth run is killed in a process of its own.

Counted as wrong: a fault of the program; a `vapor_only` on a section that holds more than the
allowable amount; a number that no gauge sent; a screen that is not stale when the readings are;
a row that went out whole and is not in the log; a log that does not end on a whole line.
"""

import argparse
import logging
import mmap
import os
import random
import signal
import struct
import tempfile
import time
import warnings
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Final

from co2vent.benchmark.fault_vents import Vent, draw_faults, simulated_vent
from co2vent.benchmark.fault_wire import Fault, FaultyWire, World
from co2vent.guidance.session import View
from co2vent.inference.outcome import Charge, Instruction
from co2vent.live.clock import LiveClock
from co2vent.live.live_vent import TICK_S
from co2vent.live.monitor import Monitor
from co2vent.live.status import SourceState
from co2vent.readings.log_file import read_log
from co2vent.readings.reading import Reading
from co2vent.store.recorder import Recorder
from co2vent.store.recovery import mended_copy
from co2vent.store.rows import torn_bytes
from co2vent.units import PRESSURE_UNITS

KILL_EVERY: Final = 10
CASES: Final = 125  # different vents; each is used with several faults
AFTER_END_S: Final = 4.0  # the wire is listened to after the last row: it must turn stale
# one step of the wire and one look at the clock beyond the age limit
STALE_GRACE_S: Final = 0.25 + TICK_S + 0.05
KILL_WINDOW_S: Final = 0.05  # rows handed over so long before a kill must be on disk


@dataclass(slots=True)
class Tally:
    """What the runs came to."""

    runs: int = 0
    faults: Counter[str] = field(default_factory=Counter)
    readings: int = 0
    claims: int = 0  # runs in which `vapor_only` was said of a section that was clear
    wrong: dict[str, list[int]] = field(default_factory=dict)  # what went wrong: seeds

    def blame(self, seed: int, what: str) -> None:
        """Note that something went wrong in the run of `seed`."""
        seeds = self.wrong.setdefault(what, [])
        if seed not in seeds:
            seeds.append(seed)


class BadDisk:
    """A disk that fills up: first a short write without an error, then errors."""

    def __init__(self, room_bytes: int) -> None:
        """Have room for so many bytes."""
        self.room_bytes = room_bytes

    def write(self, descriptor: int, data: bytes) -> int:
        """Write what fits."""
        if self.room_bytes <= 0:
            raise OSError(28, "No space left on device")
        part = data[: self.room_bytes]
        self.room_bytes -= len(part)
        return os.write(descriptor, part)


def run_one(seed: int, vent: Vent, folder: Path, tally: Tally) -> None:
    """Run one vent with its faults and judge what the program did."""
    rng = random.Random(seed)
    faults, disk = draw_faults(rng, vent.rows[-1].due_s)
    run = _Run(seed, vent, folder, rng, faults, disk)
    tally.runs += 1
    tally.faults.update(fault.kind for fault in faults)
    if disk:
        tally.faults[disk] += 1
    run.drive(lambda what: tally.blame(seed, what))
    tally.readings += run.accepted
    tally.claims += run.claimed_rightly
    run.judge_log(lambda what: tally.blame(seed, what))


class _Run:
    """One vent through a monitor that is driven by hand."""

    def __init__(
        self,
        seed: int,
        vent: Vent,
        folder: Path,
        rng: random.Random,
        faults: list[Fault],
        disk: str | None,
    ) -> None:
        self.path = folder / f"run{seed}.csv"
        self.vent = vent
        self.world = World()
        self.disk = disk
        self.accepted = 0
        self.claimed_rightly = False
        timed = rng.random() < 0.5
        preamble = vent.metadata + ("elapsed_s," if timed else "") + vent.header + "\n"
        self.wire = FaultyWire(self.world, preamble, vent.rows, faults, rng, timed=timed)
        self.bad_disk = BadDisk(rng.randrange(20_000) if disk and "full" in disk else 1 << 60)
        self.remove_at_s = rng.uniform(0.0, vent.rows[-1].due_s) if disk == "log removed" else None
        self.monitor = Monitor(
            self.wire,
            recorder=Recorder(self.path, self.bad_disk.write),
            clock=LiveClock(self.world.steady, self.world.wall, self.world.sleep),
        )
        self.readings: list[Reading] = []

    def drive(self, blame: Callable[[str], None]) -> None:
        """Go through the vent, watching the screen at every step."""
        recorder = self.monitor.recorder
        assert recorder is not None
        recorder.open()
        while not _opens(self.monitor):
            self.world.sleep(1.0)
        end_s = self.vent.rows[-1].due_s + AFTER_END_S
        while self.world.now_s < end_s and self.monitor.step():
            self._watch(self.monitor.view, blame)
            if self.remove_at_s is not None and self.world.now_s > self.remove_at_s:
                self.remove_at_s = None
                self.path.unlink(missing_ok=True)
        if self.disk == "disk full":
            self.bad_disk.room_bytes = 1 << 60
        self.monitor.finish()
        self._watch(self.monitor.view, blame, ended=True)
        if self.monitor.status.source in (SourceState.FAILED, SourceState.REFUSED):
            blame(f"{self.monitor.status.source}: {self.monitor.status.detail}")
        while not self.monitor.events.empty():
            text = self.monitor.events.get().text
            if "fault in this program" in text:
                blame(text)
        unit = PRESSURE_UNITS[self.monitor.view.setup.pressure_unit]
        ambient_pa = self.monitor.view.setup.ambient_pressure_pa
        while not self.monitor.readings.empty():
            self.readings.append(self.monitor.readings.get())
        self.accepted = len(self.readings)
        for reading in self.readings:
            shown = f"{unit.from_absolute_pa(reading.pressure_pa, ambient_pa):.3f}"
            if shown not in self.wire.sent.pressures and shown != "-0.000":
                blame("a number that was never sent")
        if self.accepted < self.wire.sent.clean:
            blame("a whole row that was not taken")

    def _watch(self, view: View, blame: Callable[[str], None], *, ended: bool = False) -> None:
        wet = self.vent.wet_at(self.world.now_s)
        hold = view.running_hold
        says_clear = view.vapor_only_since_s is not None
        if hold is not None and hold.charge is Charge.VAPOR_ONLY and not hold.closed:
            says_clear = True
        if says_clear and wet:
            blame("vapor_only on a wet section")
        if says_clear and not wet:
            self.claimed_rightly = True
        silent_s = self.world.now_s - self.wire.sent.last_fresh_s
        if not ended and view.latest is not None and silent_s > view.age_limit_s + STALE_GRACE_S:
            if not view.stale:
                blame("old readings not called stale")
            if view.prompt.instruction is not Instruction.NO_DATA:
                blame("a prompt on old readings")
        if view.stale and says_clear:
            blame("a reassuring verdict on stale readings")

    def judge_log(self, blame: Callable[[str], None]) -> None:
        """Compare the log with what was taken."""
        data = self.path.read_bytes() if self.path.exists() else b""
        if data and not data.endswith(b"\n"):
            blame("a log that ends in half a line")
        if self.disk == "disk stays full":
            if not self.monitor.status.not_recording and self.accepted:
                blame("not recording, and not said")
            return
        if self.accepted == 0:
            return
        log = read_log(self.path)
        found = [item for item in log.items() if isinstance(item, Reading)]
        if found != self.readings:
            blame("the log differs from what was taken")
        if not log.setup.simulated:
            blame("simulated was lost")
        if torn_bytes(self.path):
            blame("a closed log had a torn end")


def _opens(monitor: Monitor) -> bool:
    from co2vent.errors import SourceUnavailableError

    try:
        monitor.open()
    except SourceUnavailableError:
        return False
    return True


def run_and_kill(seed: int, vent: Vent, folder: Path, tally: Tally) -> None:
    """Run a vent in a process of its own and kill it with signal 9 at a random moment."""
    rng = random.Random(seed)
    shared = mmap.mmap(-1, 8)
    path = folder / f"run{seed}.csv"
    tally.runs += 1
    tally.faults["kill"] += 1
    with warnings.catch_warnings():
        # Python 3.12 warns of threads that are not copied; the child starts all it needs
        warnings.simplefilter("ignore", DeprecationWarning)
        child = os.fork()
    if child == 0:  # pragma: no cover - ends by the signal
        _record_until_killed(seed, vent, path, shared)
        os._exit(0)
    deadline_s = time.monotonic() + 10.0
    while struct.unpack("q", shared[:8])[0] < 3 and time.monotonic() < deadline_s:
        time.sleep(0.001)
    time.sleep(rng.uniform(0.0, 0.25))
    (handed_over,) = struct.unpack("q", shared[:8])
    time.sleep(KILL_WINDOW_S)
    os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    copy, again = folder / f"mended{seed}.csv", folder / f"again{seed}.csv"
    mended_copy(path, copy)
    if mended_copy(copy, again).any or again.read_bytes() != copy.read_bytes():
        tally.blame(seed, "mending that is not done at once")
    found = [item for item in read_log(path).items() if isinstance(item, Reading)]
    if found != [item for item in read_log(copy).items() if isinstance(item, Reading)]:
        tally.blame(seed, "a mended copy that differs")
    copy.unlink()
    again.unlink()
    readings = len(found)
    tally.readings += readings
    if readings < handed_over:
        tally.blame(seed, "a row lost to a kill")


def _record_until_killed(seed: int, vent: Vent, path: Path, shared: mmap.mmap) -> None:
    world = World()
    wire = FaultyWire(
        world, f"{vent.metadata}elapsed_s,{vent.header}\n", vent.rows, (), random.Random(seed),
        timed=True,
    )  # fmt: skip
    recorder = Recorder(path)
    monitor = Monitor(
        wire, recorder=recorder, clock=LiveClock(world.steady, world.wall, world.sleep)
    )
    recorder.open()
    monitor.open()
    while monitor.step():
        struct.pack_into("q", shared, 0, monitor.view.readings)
        time.sleep(0.002)  # some hundred times life: the writer has its turn as in life
        if wire.ended:
            time.sleep(10.0)


def run_faults(runs: int, first_seed: int = 0, progress: bool = False) -> Tally:
    """Run so many seeded vents; return what they came to."""
    logging.getLogger("co2vent.live").setLevel(logging.CRITICAL)  # counted instead
    tally = Tally()
    vents: dict[int, Vent] = {}
    with tempfile.TemporaryDirectory(prefix="co2vent-faults-") as name:
        folder = Path(name)
        for seed in _seeds(runs, first_seed):
            case = seed % CASES
            if case not in vents:
                vents[case] = simulated_vent(case)
            if hasattr(os, "fork") and seed % KILL_EVERY == KILL_EVERY - 1:
                run_and_kill(seed, vents[case], folder, tally)
            else:
                run_one(seed, vents[case], folder, tally)
            (folder / f"run{seed}.csv").unlink(missing_ok=True)
            if progress and tally.runs % 25 == 0:
                print(f"{tally.runs} of {runs} runs", flush=True)
    return tally


def _seeds(runs: int, first: int) -> Iterator[int]:
    return iter(range(first, first + runs))


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options of `benchmark faults`."""
    parser.add_argument("--runs", type=int, default=500, help="how many vents (500)")
    parser.add_argument("--seed", type=int, default=0, help="the first one's seed (0)")


def run(args: argparse.Namespace) -> int:
    """Run the faults and print what they came to; 1 where anything went wrong."""
    started_s = time.monotonic()
    tally = run_faults(args.runs, args.seed, progress=True)
    kinds = ", ".join(f"{kind} {count}" for kind, count in sorted(tally.faults.items()))
    print(f"{tally.runs} runs, {tally.readings} readings, {time.monotonic() - started_s:.0f} s")
    print(f"faults: {kinds}")
    print(f"vapor_only said rightly in {tally.claims} runs")
    for what, seeds in sorted(tally.wrong.items()):
        print(f"WRONG in {len(seeds)} runs: {what} (seeds {', '.join(map(str, seeds[:12]))})")
    if not tally.wrong:
        print("nothing wrong: no crash, no wrong vapor_only, no lost row, no stale screen")
    return 1 if tally.wrong else 0
