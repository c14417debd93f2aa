"""`co2vent`: one table of commands; each command's module is imported only when it runs.

A command module has `add_arguments(parser)` and `run(args) -> int`.
"""

import argparse
import contextlib
import io
import os
import sys
from collections.abc import Sequence
from importlib import import_module
from typing import NoReturn

from co2vent import __version__
from co2vent.errors import Co2ventError

# name: (module, one line of help)
COMMANDS: dict[str, tuple[str, str]] = {
    "watch": ("co2vent.cli.watch", "the window on a live gauge set, recording"),
    "record": (
        "co2vent.cli.record",
        "the same without a window: prompts on stdout, readings to a log",
    ),
    "replay": ("co2vent.cli.replay", "the window on a recorded vent"),
    "assess": ("co2vent.cli.assess", "the verdict on recorded vents"),
    "plan": ("co2vent.cli.plan", "before the vent: charge, stop pressure, room, time"),
    "simulate": ("co2vent.cli.simulate", "a simulated vent as a readings log, and what was inside"),
    "emulate": ("co2vent.cli.emulate", "a gauge set that isn't there, as a device to connect to"),
    "job": ("co2vent.cli.job", "the whole job, step by step, kept in a folder"),
    "report": ("co2vent.cli.report", "the job record as PDF or HTML"),
    "mend": ("co2vent.cli.mend", "a whole copy of a recording that was cut off or damaged"),
    "benchmark": ("co2vent.cli.benchmark", "measured figures: verdict, speed, faults"),
}


class OneLineParser(argparse.ArgumentParser):
    """An argument parser whose errors are one line on stderr, exit status 2."""

    def error(self, message: str) -> NoReturn:
        """Print `message` and how to get help in one line; exit 2."""
        self.exit(2, f"{self.prog}: {message}; see {self.prog} --help\n")


def build_parser(command: str | None) -> OneLineParser:
    """Return the parser; only the named command's own options are loaded."""
    parser = OneLineParser(
        prog="co2vent",
        description="Beside the technician while a trapped CO2 section is vented. "
        "Without a command: the window on its start page. The program advises; it never says "
        "that a section is safe to open.",
    )
    parser.add_argument("--version", action="version", version=f"co2vent {__version__}")
    commands = parser.add_subparsers(dest="command", metavar="COMMAND", parser_class=OneLineParser)
    for name, (module, summary) in COMMANDS.items():
        sub = commands.add_parser(name, help=summary, description=summary[0].upper() + summary[1:])
        if name == command:
            import_module(module).add_arguments(sub)
    return parser


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command; return its exit status (2 for anything a user can mend)."""
    arguments = list(sys.argv[1:] if argv is None else argv)
    command = next((word for word in arguments if word in COMMANDS), None)
    if isinstance(sys.stdout, io.TextIOWrapper):
        # a name in letters that the terminal lacks is shown escaped
        sys.stdout.reconfigure(errors="backslashreplace")
    try:
        args = build_parser(command).parse_args(arguments)
        module = "co2vent.cli.start" if args.command is None else COMMANDS[args.command][0]
        status = int(import_module(module).run(args))
        if sys.stdout is not None:
            sys.stdout.flush()  # what can't be written must fail here, not at exit
        return status
    except Co2ventError as error:
        print(f"co2vent: {' '.join(str(error).split())}", file=sys.stderr)
        return 2
    except BrokenPipeError:
        _drop_output()
        return 1
    except OSError as error:
        _drop_output()
        where = f"{error.filename}: " if error.filename else "the output can't be written: "
        why = " ".join((error.strerror or str(error)).lower().split())
        print(f"co2vent: {where}{why}; make room or choose another place", file=sys.stderr)
        return 2
    except KeyboardInterrupt:
        return 130


def _drop_output() -> None:
    """Let what is still buffered go nowhere: it must not fail again at exit."""
    with contextlib.suppress(OSError, ValueError, AttributeError):
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
