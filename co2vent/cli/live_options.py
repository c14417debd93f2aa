"""What `watch` and `record` share: the source, the log and the monitor between them."""

import argparse
from pathlib import Path

from co2vent.cli.metadata_options import add_metadata_options, column_names, metadata_overrides
from co2vent.live.monitor import Monitor
from co2vent.store.recorder import Recorder
from co2vent.wire.parse import SOURCE_FORMS, parse_source


def add_live_options(parser: argparse.ArgumentParser, *, log_required: bool) -> None:
    """Add `--source`, `--log`, the metadata options and `--columns`."""
    parser.add_argument("--source", required=True, help=SOURCE_FORMS.replace("%", "%%"))
    parser.add_argument(
        "--log",
        required=log_required,
        metavar="FILE",
        help="the recording, a new file; nothing is written over",
    )
    add_metadata_options(parser)


def monitor_from(args: argparse.Namespace, *, queue_readings: bool = True) -> Monitor:
    """Return the monitor that the options ask for; nothing is opened yet.

    `queue_readings`: somebody takes the readings one by one.

    Raises:
        RefusedInputError: an option whose meaning is not certain.
    """
    return Monitor(
        parse_source(args.source),
        columns=column_names(args),
        overrides=metadata_overrides(args),
        recorder=Recorder(Path(args.log)) if args.log else None,
        queue_readings=queue_readings,
    )
