"""Notes on a recorded vent, in a small CSV beside its log: `vent.csv` has `vent.notes.csv`.

The log is never touched. The file is written whole or not at all, and never over one that could
not be read to its end or that another program has changed in the meantime.
"""

import csv
import io
import stat
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from math import isfinite
from pathlib import Path
from typing import Final

from co2vent.errors import RefusedInputError, StoreError
from co2vent.store.whole_file import atomic_write, words

HEAD: Final = "# co2vent notes 1"
COLUMNS: Final = ["data_time_s", "written_utc", "author", "text"]
MAX_BYTES: Final = 1 << 20
MAX_NOTES: Final = 2000
MAX_TEXT: Final = 500  # characters: a note is a sentence or two
MAX_AUTHOR: Final = 80
_MEND_FOLDER: Final = "make the folder writable, or open a copy of the log"
# https://owasp.org/www-community/attacks/CSV_Injection names these first characters
_FORMULA: Final = ("=", "+", "-", "@", "\t", "\r")


@dataclass(frozen=True, slots=True)
class Note:
    """What somebody wrote on the moment `at_s` [s, as in the log's data] of a recording."""

    at_s: float
    written: datetime  # in UTC
    author: str  # empty: not given
    text: str


def note(at_s: float, text: str, author: str, now: datetime) -> Note:
    """Return a note with its texts on one line each, cut at their longest."""
    written = now.astimezone(UTC).replace(microsecond=0)
    return Note(at_s, written, _line(author)[:MAX_AUTHOR], _line(text)[:MAX_TEXT])


def notes_path(log: Path) -> Path:
    """Return where the notes of `log` are kept."""
    return log.with_name(f"{log.stem}.notes.csv")


class NotesFile:
    """The notes of one log. `problem` says why they can't be read; then nothing is written."""

    def __init__(self, path: Path) -> None:
        self.path = path
        self.notes: tuple[Note, ...] = ()
        self.problem = ""
        self._known: bytes | None = None  # the file as it was read or written last
        try:
            self._known = _bytes_of(path)
            if self._known is not None:
                self.notes = decode_notes(self._known, path.name)
        except RefusedInputError as error:
            self.problem = str(error)

    def keep(self, notes: Sequence[Note]) -> None:
        """Put `notes`, in the order of their moments, in place of those that are kept.

        Raises:
            StoreError: nothing was written; the old notes are untouched.
        """
        if self.problem:
            raise StoreError(self.problem)
        if len(notes) > MAX_NOTES:
            raise StoreError(f"{self.path.name}: {MAX_NOTES} notes at most; remove some first")
        ordered = tuple(sorted(notes, key=lambda one: (one.at_s, one.written)))
        data = encode_notes(ordered)
        if len(data) > MAX_BYTES:
            raise StoreError(f"{self.path.name}: 1 MB of notes at most; remove some first")
        try:
            present = _bytes_of(self.path)
        except RefusedInputError as error:
            raise StoreError(str(error)) from None
        if present != self._known:
            raise StoreError(
                f"{self.path.name} was changed by another program: open the log again to see it"
            )
        try:
            self.path.parent.mkdir(parents=True, exist_ok=True)
            atomic_write(self.path, data)
        except OSError as error:
            raise StoreError(f"{self.path.parent}: {words(error)}; {_MEND_FOLDER}") from error
        except StoreError as error:
            reason = str(error).removeprefix(f"{self.path}: ")
            reason = reason.removesuffix("; choose another folder")
            raise StoreError(f"{self.path.name}: {reason}; {_MEND_FOLDER}") from error
        self.notes, self._known = ordered, data


def read_notes(log: Path) -> tuple[tuple[Note, ...], str]:
    """Return the notes of `log`, and why they can't be read where that is so."""
    kept = NotesFile(notes_path(log))
    return kept.notes, kept.problem


def encode_notes(notes: Sequence[Note]) -> bytes:
    """Return the file; no text of it can run as a formula."""
    out = io.StringIO()
    out.write(f"{HEAD}\r\n")
    rows = csv.writer(out, lineterminator="\r\n")
    rows.writerow(COLUMNS)
    for one in notes:
        stamp = one.written.strftime("%Y-%m-%dT%H:%M:%SZ")
        rows.writerow([repr(one.at_s), stamp, _guarded(one.author), _guarded(one.text)])
    return out.getvalue().encode()


def decode_notes(data: bytes, name: str) -> tuple[Note, ...]:
    """Return the notes of a file's bytes.

    Raises:
        RefusedInputError: the file is not wholly one of notes; the sentence names the line.
    """
    mend = "mend it or move it away"
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise RefusedInputError(f"{name}: not UTF-8 text; {mend}") from None
    lines = text.replace("\r\n", "\n").removesuffix("\n").split("\n")
    if lines[:1] != [HEAD] or lines[1:2] != [",".join(COLUMNS)]:
        raise RefusedInputError(f"{name}: not a file of notes ({HEAD!r}, columns); {mend}")
    if len(lines) - 2 > MAX_NOTES:
        raise RefusedInputError(f"{name}: more than {MAX_NOTES} notes; {mend}")
    notes = []
    for number, line in enumerate(lines[2:], start=3):
        found = _note_of(line)
        if isinstance(found, str):
            raise RefusedInputError(f"{name}, line {number}: {found}; {mend}")
        notes.append(found)
    return tuple(sorted(notes, key=lambda one: (one.at_s, one.written)))


def _note_of(line: str) -> Note | str:
    """Return the note of a line, or what is wrong with it."""
    if not line.isprintable():
        return "control characters"
    try:
        cells = next(csv.reader([line], strict=True), [])
    except csv.Error:
        return "quotes that do not close"
    if len(cells) != len(COLUMNS):
        return f"{len(cells)} columns, not {len(COLUMNS)}"
    at_cell, stamp, author, text = cells
    if author.lstrip().startswith(_FORMULA) or text.lstrip().startswith(_FORMULA):
        return "a formula"
    author, text = _plain(author), _plain(text)
    if len(text) > MAX_TEXT or len(author) > MAX_AUTHOR or not text.strip():
        return f"a text of {len(text)} characters (1 to {MAX_TEXT})"
    try:
        at_s = float(at_cell)
        written = datetime.strptime(stamp, "%Y-%m-%dT%H:%M:%SZ").replace(tzinfo=UTC)
    except ValueError:
        return "no time"
    if not isfinite(at_s):
        return "no time"
    return Note(at_s, written, author, text)


def _line(text: str) -> str:
    """Return `text` on one line, without control characters or marks that turn text round."""
    return " ".join("".join(c if c.isprintable() else " " for c in text).split())


def _guarded(text: str) -> str:
    """Return `text` with an apostrophe in front where a spreadsheet would run it."""
    return f"'{text}" if text.lstrip("' ").startswith(_FORMULA) else text


def _plain(cell: str) -> str:
    """Return the text that was guarded."""
    risky = cell.startswith("'") and cell.lstrip("' ").startswith(_FORMULA)
    return cell[1:] if risky else cell


def _bytes_of(path: Path) -> bytes | None:
    """Return the file's bytes; None where there is none. A pipe or device is not waited for."""
    try:
        found = path.stat()
        if not stat.S_ISREG(found.st_mode):
            raise RefusedInputError(f"{path.name}: not a file; move it away")
        if found.st_size > MAX_BYTES:
            raise RefusedInputError(f"{path.name}: over 1 MB, too large for notes; move it away")
        return path.read_bytes()
    except FileNotFoundError:
        return None
    except (OSError, ValueError) as error:
        raise RefusedInputError(f"{path.name}: {words(error)}; mend it or move it away") from None
