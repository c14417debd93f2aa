"""`co2vent emulate`: a gauge set that isn't there, as a device to connect to."""

import argparse
import math
import signal
import threading
from types import FrameType

from co2vent.cli.files import SAMPLE_PREFIX, log_path
from co2vent.cli.metadata_options import column_names
from co2vent.errors import RefusedInputError
from co2vent.practice.exercises import is_exercise, scenario_named
from co2vent.practice.scenario import scenario_from
from co2vent.practice.scenario_file import read_tables
from co2vent.wire.emulator import Outlet, play
from co2vent.wire.emulator_feed import Feed, LogFeed


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options of `emulate`."""
    parser.add_argument(
        "what", metavar="FILE or SCENARIO",
        help="a readings log, a sample, a section file (TOML), an exercise (such as leak-by), or "
        "random:SEED",
    )  # fmt: skip
    parser.add_argument(
        "--to",
        default="pty",
        help="pty (default), tcp:PORT, modbus-tcp:PORT (port 0 is any free), modbus-rtu or polled",
    )
    parser.add_argument(
        "--speed", type=_speed, default=1.0, metavar="N", help="so many times faster than life"
    )
    parser.add_argument(
        "--columns", metavar="NAME,NAME,...", help="columns of a log without header"
    )
    parser.epilog = (
        "The first line on stdout is the SOURCE for `co2vent watch`. The rows start when somebody "
        "connects and keep their own time. A line `open` or `closed` from the other end, or coil "
        "0, moves the vent valve of an exercise."
    )


def run(args: argparse.Namespace) -> int:
    """Emulate until the log or exercise ends; return 0."""
    names = column_names(args)
    feed = _feed(args.what, list(names) if names else None)
    outlet = _outlet(args.to, feed, args.speed)
    stopping = threading.Event()

    def end(number: int, frame: FrameType | None) -> None:
        stopping.set()

    signal.signal(signal.SIGINT, end)
    signal.signal(signal.SIGTERM, end)
    try:
        print(outlet.source, flush=True)
        play(feed, outlet, speed=args.speed, stopping=stopping)
    finally:
        outlet.close()
    return 0


def _feed(what: str, columns: list[str] | None) -> Feed:
    if is_exercise(what):
        from co2vent.wire.section_feed import SectionFeed

        return SectionFeed(*scenario_named(what))
    path = log_path(what)
    if path.suffix == ".toml":
        from co2vent.wire.section_feed import SectionFeed

        return SectionFeed(scenario_from(read_tables(path)))
    if not path.exists() and not path.suffix and not what.startswith(SAMPLE_PREFIX):
        scenario_named(what)  # no file and no exercise: says which exercises there are
    return LogFeed(path, columns)


def _outlet(to: str, feed: Feed, speed: float) -> Outlet:
    kind, _, port = to.partition(":")
    if kind == "pty" and not port:
        from co2vent.wire.emulator_pty import PtyOutlet

        return PtyOutlet()
    if kind == "polled" and not port:
        from co2vent.wire.emulator_polled import PolledOutlet

        return PolledOutlet(feed, speed)
    if kind == "modbus-rtu" and not port:
        from co2vent.wire.emulator_modbus import ModbusOutlet

        return ModbusOutlet(None, feed, speed)
    if kind == "tcp" and port:
        from co2vent.wire.emulator_tcp import TcpOutlet

        return TcpOutlet(_port(port))
    if kind == "modbus-tcp" and port:
        from co2vent.wire.emulator_modbus import ModbusOutlet

        return ModbusOutlet(_port(port), feed, speed)
    raise RefusedInputError(
        f"--to {to!r}: use pty, tcp:PORT, modbus-tcp:PORT, modbus-rtu or polled"
    )


def _port(text: str) -> int:
    if not text.isascii() or not text.isdigit() or int(text) > 65_535:
        raise RefusedInputError(f"port {text!r}: give a number from 0 to 65535")
    return int(text)


def _speed(text: str) -> float:
    try:
        value = float(text)
    except ValueError:
        value = math.nan
    if not 1.0 <= value <= 1000.0:
        raise argparse.ArgumentTypeError("give a speed from 1 to 1000")
    return value
