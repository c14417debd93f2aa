"""A source tried before the job: its raw lines, and how each is read."""

import time
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from co2vent.errors import RefusedInputError
from co2vent.readings.log_decoder import LogDecoder
from co2vent.readings.reading import Reading, Rejection
from co2vent.wire.link import Back, Ended, Lines, Link, Lost, Readable, Unreadable
from co2vent.wire.source import Source


@dataclass(frozen=True, slots=True)
class ProbedLine:
    """A line as it came, and what it says: a reading, or words on what it is or why it is none."""

    raw: str
    reading: Reading | None
    says: str


def probe(
    source: Source,
    seconds: float,
    columns: Sequence[str] | None = None,
    overrides: Mapping[str, str] | None = None,
) -> Iterator[ProbedLine]:
    """Yield the lines of `source` for so many seconds, as they come; then close it.

    Raises:
        SourceUnavailableError: it cannot be opened.
        RefusedInputError: `columns` or `overrides` are not certain.
    """
    started_s = time.monotonic()
    decoder = LogDecoder(columns, overrides, lambda: time.monotonic() - started_s)
    link = Link(source)
    link.open()
    try:
        while time.monotonic() - started_s < seconds:
            for arrival in link.read(0.1):
                match arrival:
                    case Lines(text):
                        for line in text.splitlines():
                            yield _read(decoder, line)
                    case Lost(reason) | Unreadable(reason):
                        yield ProbedLine("", None, reason)
                    case Back(label):
                        yield ProbedLine("", None, f"open again: {label}")
                    case Readable():
                        yield ProbedLine("", None, "readable again")
                    case Ended():
                        return
    finally:
        link.close()


def _read(decoder: LogDecoder, line: bytes) -> ProbedLine:
    raw = line.decode("utf-8", "backslashreplace")
    had_columns = decoder.columns is not None
    try:
        items = decoder.feed_bytes(line + b"\n")
    except RefusedInputError as error:
        return ProbedLine(raw, None, str(error))
    for item in items:
        if isinstance(item, Rejection):
            return ProbedLine(raw, None, item.reason)
        return ProbedLine(raw, item, "reading")
    if raw.startswith("#"):
        return ProbedLine(raw, None, "about the section")
    if decoder.columns is None:
        return ProbedLine(raw, None, "no header yet: name the columns, or wait for one")
    return ProbedLine(raw, None, "header again" if had_columns else "header")
