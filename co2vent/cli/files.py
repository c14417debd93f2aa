"""File arguments: a path, or `sample:NAME` for a log that ships with the program."""

from importlib.resources import files
from pathlib import Path

from co2vent.errors import RefusedInputError

SAMPLE_PREFIX = "sample:"


def sample_names() -> list[str]:
    """Return the names of the shipped logs."""
    return sorted(
        entry.name.removesuffix(".csv")
        for entry in files("co2vent.sample_logs").iterdir()
        if entry.name.endswith(".csv") and not entry.name.endswith(".truth.csv")
    )


def log_path(text: str) -> Path:
    """Return the path that a FILE argument names.

    Raises:
        RefusedInputError: an unknown sample name; the message lists the names.
    """
    if not text.startswith(SAMPLE_PREFIX):
        return Path(text)
    name = text.removeprefix(SAMPLE_PREFIX)
    names = sample_names()
    if name not in names:
        raise RefusedInputError(f"no sample {name!r}: use one of {', '.join(names)}")
    return Path(str(files("co2vent.sample_logs").joinpath(f"{name}.csv")))
