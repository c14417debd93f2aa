"""The notes of a replay: written, changed, removed, brought back. No Qt."""

from collections.abc import Sequence
from datetime import datetime
from importlib.resources import files
from pathlib import Path

from co2vent.errors import StoreError
from co2vent.guidance.events import Event, EventKind
from co2vent.store.notes import Note, NotesFile, note, notes_path
from co2vent.window.words import translate


class ReplayNotes:
    """Notes on one recording, kept at once; each change can be undone."""

    def __init__(self, file: NotesFile | None = None) -> None:
        """Take the file beside the log; None where the readings came from no file."""
        self._file = file
        self._before: list[tuple[Note, ...]] = []
        self.events: tuple[Event, ...] = ()
        self._told()

    @property
    def name(self) -> str:
        """The file's path; empty where there is none."""
        return "" if self._file is None else str(self._file.path)

    @property
    def problem(self) -> str:
        """Why the notes can't be read, or an empty text."""
        return "" if self._file is None else self._file.problem

    @property
    def notes(self) -> tuple[Note, ...]:
        """The notes in the order of their moments."""
        return () if self._file is None else self._file.notes

    def at(self, at_s: float) -> Note | None:
        """Return the newest note on the very moment `at_s` of the data."""
        return next((one for one in reversed(self.notes) if one.at_s == at_s), None)

    def write(self, at_s: float, text: str, author: str, now: datetime, old: Note | None) -> None:
        """Keep a note, in place of `old` where there is one.

        Raises:
            StoreError: nothing was changed.
        """
        others = [one for one in self.notes if one is not old]
        self._keep([*others, note(at_s, text, author, now)])

    def remove(self, old: Note) -> None:
        """Remove a note.

        Raises:
            StoreError: nothing was changed.
        """
        self._keep([one for one in self.notes if one is not old])

    def undo(self) -> bool:
        """Take back the last change; return whether there was one.

        Raises:
            StoreError: nothing was changed.
        """
        if not self._before:
            return False
        self._put(self._before[-1])
        self._before.pop()
        return True

    def _keep(self, notes: Sequence[Note]) -> None:
        before = self.notes
        self._put(notes)
        self._before.append(before)

    def _put(self, notes: Sequence[Note]) -> None:
        if self._file is None:
            raise StoreError(translate("Note", "This replay has no file beside which to keep it"))
        self._file.keep(notes)
        self._told()

    def _told(self) -> None:
        self.events = tuple(
            Event(one.at_s, EventKind.NOTE, _words(number, one))
            for number, one in enumerate(self.notes, start=1)
        )


def _words(number: int, one: Note) -> str:
    words = f"{one.text} ({one.author})" if one.author else one.text
    return translate("Note", "Note {number}: {words}").format(number=number, words=words)


def notes_beside(log: Path | None, own_folder: Path) -> ReplayNotes:
    """Return the notes beside `log`; those on a shipped vent are in the person's own folder."""
    if log is None:
        return ReplayNotes()
    shipped = log.resolve().parent == Path(str(files("co2vent.sample_logs"))).resolve()
    return ReplayNotes(NotesFile(notes_path(own_folder / log.name if shipped else log)))
