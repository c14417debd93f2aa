"""Options that every command with a window has."""

import argparse
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from co2vent.errors import RefusedInputError

if TYPE_CHECKING:
    from co2vent.window.main_window import MainWindow


def add_window_options(parser: argparse.ArgumentParser) -> None:
    """Add size, full screen and the saved picture."""
    group = parser.add_argument_group("window")
    group.add_argument("--size", metavar="WIDTHxHEIGHT", help="size of the window, e.g. 1024x600")
    group.add_argument("--language", metavar="CODE", help="en, de, es or nb")
    group.add_argument("--full-screen", action="store_true", help="fill the screen")
    group.add_argument("--screenshot", metavar="FILE.png", help="save a picture, then close")
    group.add_argument(
        "--at", type=float, default=3.0, metavar="SECONDS",
        help="when to save the picture, after the start (3)",
    )  # fmt: skip


def window_size(args: argparse.Namespace) -> tuple[int, int] | None:
    """Return the size asked for.

    Raises:
        RefusedInputError: not WIDTHxHEIGHT.
    """
    if not getattr(args, "size", None):
        return None
    width, _, height = args.size.lower().partition("x")
    if not (width.isdigit() and height.isdigit()):
        raise RefusedInputError(f"--size {args.size}: write it as 1024x600")
    return int(width), int(height)


def open_window(args: argparse.Namespace, first: "Callable[[MainWindow], None] | None") -> int:
    """Open the window with the options of `args`; `first` fills it."""
    from co2vent.window.app import run

    def fill(window: "MainWindow") -> None:
        if getattr(args, "full_screen", False):
            window.showFullScreen()
        if first is not None:
            first(window)
        if getattr(args, "screenshot", None):
            window.picture_after(Path(args.screenshot), args.at, then_close=True)

    language = getattr(args, "language", None) or ""
    return run(fill, size=window_size(args), language=language)
