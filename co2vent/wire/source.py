"""What every source of readings is to the rest: bytes of log text, or nothing yet, or the end.

Registers and queries are turned into log text too (`modbus.py`, `polled.py`), so that one decoder
reads every gauge and a raw line can be shown for each.
"""

from typing import Protocol

from co2vent.errors import SourceLostError, SourceUnavailableError
from co2vent.sentence import Sentence

# Marks a line that the wire itself put in place of data that must not be read. The decoder
# rejects and counts it like any row that is no reading.
NO_READING = "no reading"


class Source(Protocol):
    """A stream of log text. The thread that opens it also reads and closes it."""

    label: str  # as shown to the person
    joins_midway: bool  # the first bytes after opening may be the tail of a line
    stamped_on_arrival: bool  # rows without time get the arrival's; a file's rows do not

    def open(self) -> None:
        """Open it, or raise `SourceUnavailableError` with one sentence on what to do."""

    def read(self, timeout_s: float) -> bytes | None:
        """Return bytes that arrived within `timeout_s`; b"" for none; `None` at the end for good.

        Raises `SourceLostError` when the source has gone and opening it again may help.
        """

    def close(self) -> None:
        """Close it; never raises."""

    def send(self, text: str) -> None:
        """Send a line to a simulated gauge set; a source that cannot be written ignores it."""


class ReadOnlySource:
    """The part of `Source` that is the same for whatever cannot be written."""

    joins_midway = False
    stamped_on_arrival = True

    def send(self, text: str) -> None:
        """Ignore `text`: there is nobody to read it."""


def unavailable(label: str, error: object, advice: str) -> SourceUnavailableError:
    """Return the error for a source that could not be opened."""
    return SourceUnavailableError(f"{label}: {words_of(error)}; {advice}")


def lost(label: str, error: object) -> SourceLostError:
    """Return the error for a source that was open and has gone."""
    return SourceLostError(
        Sentence(
            "{label}: {what}; check the cable, the program keeps trying",
            label=label,
            what=words_of(error),
        )
    )


def words_of(error: object) -> str:
    """Return the words of an operating-system error without its number and file name."""
    if isinstance(error, Sentence):
        return error
    if isinstance(error, OSError) and error.strerror:
        return error.strerror.lower()
    return " ".join(str(error).split())
