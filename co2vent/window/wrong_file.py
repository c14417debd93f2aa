"""What the window says of a log that can't be used: the file's name, what is wrong, what to do."""

from pathlib import Path
from typing import Final

from co2vent.errors import Co2ventError
from co2vent.readings.columns import HOW_TO_NAME
from co2vent.window.sentences import spoken
from co2vent.window.words import translate

HEAD_BYTES: Final = 4096
EXAMPLE: Final = "elapsed_s,pressure_bar_g"


def why_not(path: Path, error: Co2ventError | OSError) -> str:
    """Return why the log at `path` can't be shown, for a person who has no command line."""
    name = path.name
    cause = error if isinstance(error, OSError) else error.__cause__
    if isinstance(cause, OSError):
        return translate("WrongFile", "{name} can't be opened: {why}.").format(
            name=name, why=_access_words(cause)
        )
    head = _head(path)
    if not head.strip():
        return translate("WrongFile", "{name} is empty: there is nothing to show.").format(
            name=name
        )
    if _is_binary(head):
        return translate(
            "WrongFile", "{name} is not a readings log: it holds no text. Choose a CSV file."
        ).format(name=name)
    said = str(error) if isinstance(error, OSError) else spoken(error.text)
    if HOW_TO_NAME in said:
        what = said.replace(HOW_TO_NAME, "").rstrip(" :,").removesuffix(", or").rstrip(" .?")
        return translate(
            "WrongFile",
            "{name}: {what}. The row above the readings must name each column with its unit, for "
            "instance {example}.",
        ).format(name=name, what=_column_words(what), example=EXAMPLE)
    return said if name in said else f"{name}: {said}"


def _access_words(error: OSError) -> str:
    if isinstance(error, FileNotFoundError):
        return translate("WrongFile", "there is no such file")
    if isinstance(error, PermissionError):
        return translate("WrongFile", "no permission to read it")
    if isinstance(error, IsADirectoryError):
        return translate("WrongFile", "it is a folder")
    return error.strerror or type(error).__name__


def _column_words(what: str) -> str:
    """Return the usual complaints about columns in the language of the screen."""
    if "no pressure column" in what or "no header row" in what:
        return translate("WrongFile", "no column is known as the pressure")
    if "no time column" in what:
        return translate("WrongFile", "no column is known as the time")
    return what


def _head(path: Path) -> bytes:
    try:
        with path.open("rb") as file:
            return file.read(HEAD_BYTES)
    except OSError:
        return b"?"  # it was read a moment ago: neither empty nor known


def _is_binary(head: bytes) -> bool:
    """Return whether the bytes are no text: NULs that are not those of UTF-16, or control bytes."""
    if head.startswith((b"\xff\xfe", b"\xfe\xff")):
        return False
    control = sum(byte < 32 and byte not in b"\t\n\r\f\x1a" for byte in head)
    return control > 0.02 * len(head)
