"""`co2vent benchmark SUBJECT`: measured figures, one table of subjects."""

import argparse
from importlib import import_module

# name: (module with add_arguments(parser) and run(args), one line of help)
SUBJECTS: dict[str, tuple[str, str]] = {
    "verdict": ("co2vent.benchmark.verdict", "vents with known contents: what is said of them"),
    "crew": ("co2vent.benchmark.crew", "a crew that does what the program says: where it ends"),
    "core": ("co2vent.benchmark.core_speed", "properties, and readings and fits of a long vent"),
    "model": ("co2vent.benchmark.model_speed", "how fast the section model runs"),
    "faults": ("co2vent.benchmark.faults", "hundreds of vents while everything fails"),
    "window": ("co2vent.benchmark.window_speed", "first digits, painted prompts, long traces"),
    "soak": ("co2vent.benchmark.soak", "eight hours wound fast, and a flood: memory and delay"),
}


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the subjects with their options."""
    subjects = parser.add_subparsers(
        dest="subject", metavar="SUBJECT", required=True, parser_class=type(parser)
    )
    for name, (module, summary) in SUBJECTS.items():
        sub = subjects.add_parser(name, help=summary, description=summary[0].upper() + summary[1:])
        import_module(module).add_arguments(sub)


def run(args: argparse.Namespace) -> int:
    """Run the named subject."""
    return int(import_module(SUBJECTS[args.subject][0]).run(args))
