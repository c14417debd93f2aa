"""`co2vent`: the window on its start page."""

import argparse

from co2vent.cli.window_options import open_window


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The start page takes no options."""
    del parser


def run(args: argparse.Namespace) -> int:
    """Open the window; return the exit status."""
    return open_window(args, None)
