"""`co2vent mend FILE`: a whole copy of a recording that was cut off or damaged."""

import argparse
from pathlib import Path

from co2vent.store.recovery import mended_copy, mended_name


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options of `mend`."""
    parser.add_argument("file", metavar="FILE", help="a recording; it is only read, never changed")
    parser.add_argument(
        "--log", metavar="FILE", help="the copy, a new file (FILE-mended beside the recording)"
    )
    parser.epilog = (
        "The copy holds every whole row and event; what is left out is said in it and here. "
        "A recording needs no mending to be assessed or replayed: its whole rows are read."
    )


def run(args: argparse.Namespace) -> int:
    """Write the copy and say what was left out.

    Raises:
        Co2ventError: not a recording, still being recorded, no reading in it, or no place for it.
    """
    from co2vent.readings.log_file import LogFile, read_log

    logs: list[LogFile] = []
    path = Path(args.file)
    copy = Path(args.log) if args.log else mended_name(path)
    damage = mended_copy(path, copy, lambda made: logs.append(read_log(made)))
    print(f"{copy}: {len(logs[0].readings)} readings; {damage.text or 'nothing was damaged'}")
    return 0
