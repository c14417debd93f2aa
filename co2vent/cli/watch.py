"""`co2vent watch`: the window on a live gauge set, recording."""

import argparse
from typing import TYPE_CHECKING

from co2vent.cli.live_options import add_live_options, monitor_from
from co2vent.cli.window_options import add_window_options, open_window

if TYPE_CHECKING:
    from co2vent.window.main_window import MainWindow


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options of `watch`."""
    add_live_options(parser, log_required=False)
    add_window_options(parser)


def run(args: argparse.Namespace) -> int:
    """Watch the source in the window until it is closed; return the exit status.

    Raises:
        Co2ventError: the source, the log or an option can't be used, or there is no display.
    """
    monitor = monitor_from(args)
    from co2vent.window.app import check_display, note_requests_to_end

    check_display()
    note_requests_to_end()
    monitor.start()

    def first(window: "MainWindow") -> None:
        window.watch(monitor, recording=bool(args.log))

    try:
        status = open_window(args, first)
    finally:
        monitor.stop()
    if monitor.refusal is not None:
        raise monitor.refusal
    return status
