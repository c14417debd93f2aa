"""What happens with a note of a replay, from the key to the file; a text is never lost."""

from collections.abc import Callable
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from co2vent.errors import Co2ventError
from co2vent.store.notes import Note
from co2vent.window.note_entry import NoteEntry
from co2vent.window.text import duration
from co2vent.window.words import translate

if TYPE_CHECKING:
    from co2vent.window.replay_page import ReplayPage

DRAFT = "note_draft"  # in the kept choices: log, text, author of a note that was not kept


class NoteDesk:
    """Asks for a note on the present moment and keeps it."""

    def __init__(self, page: "ReplayPage") -> None:
        self._page = page
        self._at_s = 0.0
        self._old: Note | None = None
        self.entry = NoteEntry(page)
        self.entry.kept.connect(self._keep)
        self.entry.removed.connect(self._remove)
        self.entry.opened.connect(self._take_the_keys_place)

    def ask(self) -> None:
        """Ask for a note on this moment, or for a change of the one that is there; time stands."""
        page, notes = self._page, self._page.replay.notes
        if not self.entry.isHidden():
            self.entry.line.setFocus()
            return
        view = page.replay.frame().view
        if view is None or view.latest is None:
            return
        page.replay.playing = False
        if notes.problem:
            page.say(notes.problem)
            return
        draft, self._at_s = self._draft(), view.latest.at_s
        self._old = None if page.replay.blind else notes.at(self._at_s)
        moment = duration(self._at_s)
        if self._old is not None:
            self.entry.ask(moment, self._old.text, self._old.author, old=True)
        else:
            author = str(page.look.kept.get("note_author", ""))
            self.entry.ask(moment, draft, author, old=False)
        page.tick()

    def _take_the_keys_place(self, opened: bool) -> None:
        for key in self._page.keys:
            key.setVisible(not opened)

    def undo(self) -> None:
        """Take back the last change of the notes."""

        def act() -> str:
            done = self._page.replay.notes.undo()
            return (
                translate("Note", "The last change of the notes is undone")
                if done
                else translate("Note", "No change of the notes to undo")
            )

        self._do(act)

    def close(self) -> None:
        """Keep the text of a note that was begun for the next time."""
        text, kept = self.entry.line.text().strip(), self._page.look.kept
        unkept = self._old is None or (not self.entry.isHidden() and text != self._old.text)
        if text and unkept:
            kept[DRAFT] = {"log": self._page.replay.notes.name, "text": text}
            self._page.look.save()

    def _draft(self) -> str:
        """Return the text that was begun and not kept: on this page, or before."""
        if self._old is None and self.entry.line.text():
            return self.entry.line.text()
        kept = self._page.look.kept.get(DRAFT)
        if isinstance(kept, dict) and kept.get("log") == self._page.replay.notes.name:
            return str(kept.get("text", ""))
        return ""

    def _keep(self, text: str, author: str) -> None:
        notes, look = self._page.replay.notes, self._page.look

        def act() -> str:
            notes.write(self._at_s, text, author, datetime.now(UTC), self._old)
            look.kept["note_author"] = author
            look.kept.pop(DRAFT, None)
            look.save()
            self._put_away()
            if self._page.replay.blind:
                return translate("Note", "Kept; it shows when the replay is no longer blind")
            return translate("Note", "Note kept: {path}").format(path=notes.name)

        if text.strip():
            self._do(act)
        else:
            self._page.say(translate("Note", "Write a few words first"))

    def _remove(self) -> None:
        old = self._old

        def act() -> str:
            if old is not None:
                self._page.replay.notes.remove(old)
            self._put_away()
            return translate("Note", "Note removed. Ctrl+Z brings it back")

        self._do(act)

    def _put_away(self) -> None:
        self._old = None
        self.entry.line.clear()
        self.entry.put_away()

    def _do(self, act: Callable[[], str]) -> None:
        """Do what changes the notes; where it fails say why: the text stays in its line."""
        try:
            words = act()
        except Co2ventError as error:
            words = str(error)
            if not self.entry.isHidden():
                words += ". " + translate("Note", "Your words stay in the line")
        self._page.redraw()
        self._page.tick()
        self._page.say(words)
