"""`co2vent plan`: what to expect of a vent, before it starts."""

import argparse
import json
from dataclasses import asdict

from co2vent.cli.plan_options import add_plan_options, plan_input
from co2vent.planning.pipes import pipe_sizes
from co2vent.planning.plan import plan_vent
from co2vent.planning.text import plan_text
from co2vent.planning.volume import parts


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options of `plan`."""
    add_plan_options(parser)
    parser.add_argument("--json", action="store_true", help="one JSON object, SI units")
    parser.add_argument(
        "--list-sizes", action="store_true", help="print the sizes and parts, with their sources"
    )
    parser.epilog = (
        "Example: co2vent plan --volume-l 14.5 --temperature-c -20 --liquid-fraction 0.3"
    )


def run(args: argparse.Namespace) -> int:
    """Print the plan."""
    if args.list_sizes:
        _print_sizes()
        return 0
    given, notes = plan_input(args)
    plan = plan_vent(given)
    if args.json:
        print(json.dumps({"format": "co2vent plan 1", **asdict(plan), "volume_notes": notes}))
        return 0
    print(plan_text(given, plan, notes))
    return 0


def _print_sizes() -> None:
    """Print the tables, one size a line."""
    for size in pipe_sizes():
        print(
            f"{size.key:50} {size.bore_m * 1e3:7.2f} mm bore "
            f"{size.volume_m3_per_m * 1e3:9.5f} l/m  {size.confidence}: {size.source}"
        )
    for part in parts():
        low, high = part.lowest_m3 * 1e3, part.highest_m3 * 1e3
        print(f"part: {part.name:44} {low:g} to {high:g} l  {part.source}")
