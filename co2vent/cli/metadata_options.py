"""Every metadata key of the log format as a command-line option, and `--columns`."""

import argparse
from collections.abc import Sequence

from co2vent.errors import RefusedInputError
from co2vent.readings.metadata import METADATA_KEYS, check_values


def option_name(key: str) -> str:
    """Return the option for a metadata key: `altitude_m` -> `--altitude-m`."""
    return "--" + key.lower().replace("_", "-")


def add_metadata_options(parser: argparse.ArgumentParser) -> None:
    """Add the metadata options and `--columns`; an option wins over the log's own line."""
    group = parser.add_argument_group("what is known of the section", "wins over the log's lines")
    for key in METADATA_KEYS.values():
        names = [option_name(key.name)]
        exact = "--" + key.name.replace("_", "-")
        if exact != names[0]:
            names.append(exact)
        group.add_argument(
            *names, dest=f"metadata_{key.name}", metavar="VALUE",
            help=f"{key.help}, e.g. {key.example}".replace("%", "%%"),
        )  # fmt: skip
    group.add_argument(
        "--columns", metavar="NAME,NAME,...",
        help="names of the columns, for a log or line stream without a header or with another one",
    )  # fmt: skip


def metadata_overrides(args: argparse.Namespace) -> dict[str, str]:
    """Return the metadata given as options.

    Raises:
        RefusedInputError: a value that can't be read.
    """
    overrides = {
        key: value.strip()
        for key in METADATA_KEYS
        if (value := getattr(args, f"metadata_{key}", None)) is not None
    }
    for key, value in overrides.items():
        try:
            check_values({key: value})
        except RefusedInputError as error:
            raise RefusedInputError(f"{option_name(key)}: {error}") from None
    return overrides


def column_names(args: argparse.Namespace) -> Sequence[str] | None:
    """Return the names given with `--columns`, `None` where there are none."""
    text: str | None = getattr(args, "columns", None)
    return None if text is None else [name.strip() for name in text.split(",")]
