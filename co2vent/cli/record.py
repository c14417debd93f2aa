"""`co2vent record`: a live source without a window; prompts as lines, readings to a log."""

import argparse
import math
import os
import queue
import signal
import sys
import threading
import time
from types import FrameType

from co2vent.cli.live_options import add_live_options, monitor_from
from co2vent.errors import RefusedInputError
from co2vent.guidance.events import Event, EventKind
from co2vent.live.monitor import Monitor
from co2vent.live.status import NoteSaid, SourceState, ValveSaid

LOOK_S = 0.1  # how soon a signal or the end of `--for` is noticed
_SHOWN = frozenset(
    (
        EventKind.PROMPT,
        EventKind.VERDICT,
        EventKind.GAUGE_FAULT,
        EventKind.TIME_BROKEN,
        EventKind.BELOW_TRIPLE_POINT,
        EventKind.NOTE,
    )
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options of `record`."""
    add_live_options(parser, log_required=True)
    parser.add_argument(
        "--for",
        dest="for_s",
        type=_seconds,
        metavar="SECONDS",
        help="end after so long; otherwise at the end of the source, Ctrl-C or a request to end",
    )
    parser.epilog = (
        "Type `open` or `closed` when the vent valve is moved and the source doesn't know, "
        "`note ...` to write something down. Each prompt is a line: seconds, what to do, why."
    )


def run(args: argparse.Namespace) -> int:
    """Record until the end; return 0."""
    monitor = monitor_from(args, queue_readings=False)
    stopping = threading.Event()
    _end_on_signals(stopping)
    monitor.start()
    try:
        if args.source.strip() != "-":
            _listen(monitor)
        end_s = math.inf if args.for_s is None else time.monotonic() + args.for_s
        while monitor.running and not stopping.is_set() and time.monotonic() < end_s:
            _show_next(monitor)
    finally:
        monitor.stop()
    _show_rest(monitor)
    _raise_refusal(monitor)
    return 0


def _show_next(monitor: Monitor) -> None:
    try:
        _show(monitor.events.get(timeout=LOOK_S))
    except queue.Empty:
        return


def _show_rest(monitor: Monitor) -> None:
    while not monitor.events.empty():
        _show(monitor.events.get())
    if monitor.status.not_recording and monitor.status.recorder is not None:
        waiting = monitor.status.recorder.waiting
        if waiting:
            _say(f"{monitor.status.not_recording}; {waiting} lines were not written")


def _show(event: Event) -> None:
    """Print an event that a person should see: a prompt as `time  instruction: what and why`."""
    if event.kind in _SHOWN:
        mark = "" if event.kind is EventKind.PROMPT else f"({event.kind.value}) "
        text = "".join(c if c.isprintable() else "?" for c in event.text)
        _say(f"{event.at_s:9.1f} s  {mark}{text}")


def _say(line: str) -> None:
    """Print a line; where nobody listens any more the recording goes on all the same."""
    try:
        print(line, flush=True)
    except OSError:
        # what is still buffered must not fail again at exit
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def _raise_refusal(monitor: Monitor) -> None:
    if monitor.refusal is not None:
        raise monitor.refusal
    if monitor.status.source is SourceState.ENDED and monitor.view.readings == 0:
        why = monitor.status.last_rejection
        raise RefusedInputError("no readings" + (f": {why}" if why else "; is it a readings log?"))


def _listen(monitor: Monitor) -> None:
    """Take `open`, `closed` and `note ...` from standard input, in a thread that ends with us."""
    if sys.stdin is None or sys.stdin.closed:
        return
    if hasattr(signal, "SIGTTIN"):
        # started in the background of a terminal: reading fails instead of stopping the program
        signal.signal(signal.SIGTTIN, signal.SIG_IGN)
    threading.Thread(target=_hear, args=(monitor,), name="person", daemon=True).start()


def _hear(monitor: Monitor) -> None:
    pending = b""
    while True:
        try:
            data = os.read(sys.stdin.fileno(), 4096)
        except (OSError, ValueError):
            return
        pending += data
        *lines, pending = pending.split(b"\n")
        if not data and pending:
            lines, pending = [pending], b""
        for line in lines:
            _take_word(monitor, line.decode("utf-8", "replace").strip())
        if not data:
            return


def _take_word(monitor: Monitor, line: str) -> None:
    word, _, rest = line.partition(" ")
    if word.lower() in ("open", "closed") and not rest:
        monitor.post(ValveSaid(word.lower() == "open"))
    elif word.lower() == "note" and rest.strip():
        monitor.post(NoteSaid(rest.strip()))
    elif line:
        print(f"not understood: {line[:60]!r}; write open, closed or note ...", file=sys.stderr)


def _end_on_signals(stopping: threading.Event) -> None:
    def end(number: int, frame: FrameType | None) -> None:
        stopping.set()

    signal.signal(signal.SIGINT, end)
    signal.signal(signal.SIGTERM, end)
    if hasattr(signal, "SIGHUP"):
        signal.signal(signal.SIGHUP, end)  # the terminal was closed


def _seconds(text: str) -> float:
    try:
        value = float(text)
    except ValueError:
        value = math.nan
    if not 0.0 < value < math.inf:
        raise argparse.ArgumentTypeError("give seconds above 0")
    return value
