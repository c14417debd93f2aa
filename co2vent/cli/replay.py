"""`co2vent replay`: the window on a recorded vent."""

import argparse
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from co2vent.cli.files import log_path
from co2vent.cli.metadata_options import add_metadata_options, column_names, metadata_overrides
from co2vent.cli.window_options import add_window_options, open_window
from co2vent.errors import RefusedInputError
from co2vent.readings.log_file import LARGE_BYTES, decode_log, named_log
from co2vent.readings.quick_rows import HEAD_BYTES

if TYPE_CHECKING:
    from co2vent.window.main_window import MainWindow


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options of `replay`."""
    parser.add_argument("file", metavar="FILE", help="a readings log (CSV), or sample:NAME")
    parser.add_argument(
        "--speed", type=float, default=1.0, metavar="N", help="times the speed of life (1)"
    )
    parser.add_argument(
        "--from", dest="start_s", type=float, default=0.0, metavar="SECONDS",
        help="where in the recording to begin",
    )  # fmt: skip
    add_metadata_options(parser)
    add_window_options(parser)


def run(args: argparse.Namespace) -> int:
    """Replay the log in the window; return the exit status.

    Raises:
        Co2ventError: the log or an option can't be used, or there is no display.
    """
    if not 0.01 <= args.speed <= 10_000:
        raise RefusedInputError("--speed: give a number from 0.01 to 10000")
    path = log_path(args.file)
    columns, overrides = column_names(args), metadata_overrides(args)
    if path.is_file() and path.stat().st_size > LARGE_BYTES and _begins_well(path, args):
        return _replay_large(args, path, columns, overrides)
    log = named_log(path, columns, overrides)
    from co2vent.window.app import check_display

    check_display()

    def first(window: "MainWindow") -> None:
        page = window.replay(log, path.name, args.speed, path)
        if args.start_s > 0:
            page.begin_at(args.start_s)

    return open_window(args, first)


def _begins_well(path: Path, args: argparse.Namespace) -> bool:
    """Return whether the head of a large log can be read; where not, reading it all says why."""
    try:
        with path.open("rb") as file:
            decode_log(file.read(HEAD_BYTES), column_names(args), metadata_overrides(args))
    except (RefusedInputError, OSError):
        return False
    return True


def _replay_large(
    args: argparse.Namespace, path: Path, columns: Sequence[str] | None, overrides: dict[str, str]
) -> int:
    """Open the window at once; it reads the log, and says what it can't read."""
    from co2vent.window.app import check_display
    from co2vent.window.opening import Opening

    check_display()
    opening = Opening(path, columns, overrides)
    return open_window(args, lambda window: window.load(opening, path, args.speed, args.start_s))
