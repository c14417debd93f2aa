"""Notes on a replay with real events: written, seen, jumped to, changed, removed, never lost."""

import csv
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import Qt

from co2vent.errors import StoreError
from co2vent.readings.log_file import read_log
from co2vent.store import notes as notes_module
from co2vent.store.notes import NotesFile, note, notes_path, read_notes
from co2vent.window.languages import install
from co2vent.window.main_window import MainWindow
from co2vent.window.replay_page import ReplayPage
from co2vent.window.sizes import TARGET_MM, pixels
from tests.window.conftest import vent_log
from tests.window.test_sizes import _cut_off

NOW = datetime(2026, 3, 2, 8, 0, 5, tzinfo=UTC)
AT_S = 500.0


@pytest.fixture
def path(tmp_path: Path) -> Path:
    file = tmp_path / "logs" / "vent.csv"
    file.parent.mkdir()
    file.write_bytes(vent_log())
    return file


@pytest.fixture
def replayed(qtbot, look, path):
    """Return the window and the page of a log that stands at a moment."""

    def show() -> tuple[MainWindow, ReplayPage]:
        window = MainWindow(look)
        qtbot.addWidget(window)
        window.resize(1024, 600)
        window.show()
        page = window.replay(read_log(path), path.name, path=path)
        qtbot.waitUntil(lambda: page.replay.index.done and page._plots is not None, timeout=20_000)
        page.replay.playing = False
        page._go(lambda: page.replay.seek(AT_S))
        qtbot.waitUntil(lambda: page.replay.position_s == AT_S, timeout=5000)
        return window, page

    return show


def write(qtbot, page: ReplayPage, words: str) -> None:
    qtbot.keyClick(page, "w")
    qtbot.waitUntil(page.notes.entry.isVisible, timeout=3000)
    qtbot.keyClicks(page.notes.entry.line, words)
    qtbot.keyClick(page.notes.entry.line, Qt.Key.Key_Return)


def listed(page: ReplayPage) -> list[str]:
    assert page._plots is not None
    page._plots.turn_to(2)
    page.redraw()
    page.tick()
    events = page._plots.events
    return [events.item(at).text() for at in range(events.count())]


def marks(page: ReplayPage) -> list[float]:
    assert page._plots is not None
    page._plots.turn_to(0)
    page.redraw()
    page.tick()
    return [line.value() for line in page._plots.trace._note_marks.lines]


def test_a_note_is_kept_beside_the_log_and_seen_on_trace_and_list(qtbot, replayed, path) -> None:
    before = path.read_bytes()
    _window, page = replayed()
    page.replay.playing = True
    page.notes.ask()
    assert not page.replay.playing, "the moment stays while one writes"
    page.notes.entry.put_away()
    page._go(lambda: page.replay.seek(AT_S))
    write(qtbot, page, "Pump 2 was still running, p and n")  # letters that are keys elsewhere
    assert not page.notes.entry.isVisible()
    assert page.replay.position_s == AT_S
    ((one,), problem) = read_notes(path)
    assert problem == ""
    assert (one.at_s, one.text) == (AT_S, "Pump 2 was still running, p and n")
    assert abs((datetime.now(UTC) - one.written).total_seconds()) < 60
    assert path.read_bytes() == before
    assert sorted(p.name for p in path.parent.iterdir()) == ["vent.csv", "vent.notes.csv"]
    assert marks(page) == [AT_S]
    assert "8:20  Note 1: Pump 2 was still running, p and n" in listed(page)
    assert "vent.notes.csv" in page.message.text()


def test_by_touch_alone(qtbot, replayed, path) -> None:
    _window, page = replayed()
    key = next(key for key in page.keys if key.accessibleName() == "Note")
    qtbot.mouseClick(key, Qt.MouseButton.LeftButton)
    entry = page.notes.entry
    assert not entry.remove.isVisible()
    entry.line.setText("typed on a screen keyboard")
    entry.author.setText("Ada")
    qtbot.mouseClick(entry.keep, Qt.MouseButton.LeftButton)
    assert read_notes(path)[0][0].author == "Ada"
    qtbot.mouseClick(key, Qt.MouseButton.LeftButton)
    qtbot.mouseClick(entry.remove, Qt.MouseButton.LeftButton)
    assert read_notes(path)[0] == ()
    for part in (key, entry.keep, entry.away, entry.line):
        assert part.height() >= pixels(TARGET_MM, 96.0) - 1


def test_a_note_is_jumped_to_changed_removed_and_brought_back(qtbot, replayed, path) -> None:
    NotesFile(notes_path(path)).keep(
        [note(200.5, "early", "", NOW), note(700.0, "late, -5 bar", "Bo", NOW)]
    )
    _window, page = replayed()
    assert marks(page) == [200.5, 700.0]
    rows = listed(page)
    place = next(at for at, words in enumerate(rows) if "late, -5 bar (Bo)" in words)
    events = page._plots.events
    item = events.item(place)
    events.scrollToItem(item)
    at = events.visualItemRect(item).center()
    qtbot.mouseClick(events.viewport(), Qt.MouseButton.LeftButton, pos=at)
    assert page.replay.position_s == 700.0
    page._plots.turn_to(0)
    for _ in range(30):
        if page.replay.position_s <= 201.0:
            break
        page._previous()
    else:
        pytest.fail("P never came to the early note")
    page._go(lambda: page.replay.seek(700.0))
    write(qtbot, page, " or less")
    assert [one.text for one in read_notes(path)[0]] == ["early", "late, -5 bar or less"]
    qtbot.keyClick(page, "w")
    assert page.notes.entry.remove.isVisible()
    qtbot.mouseClick(page.notes.entry.remove, Qt.MouseButton.LeftButton)
    assert [one.text for one in read_notes(path)[0]] == ["early"]
    assert "Ctrl+Z" in page.message.text()
    assert marks(page) == [200.5]
    qtbot.keyClick(page, "z", Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: len(read_notes(path)[0]) == 2, timeout=3000)
    assert marks(page) == [200.5, 700.0]
    qtbot.keyClick(page, "z", Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: read_notes(path)[0][1].text == "late, -5 bar", timeout=3000)
    qtbot.keyClick(page, "z", Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: "No change" in page.message.text(), timeout=3000)


def test_escape_puts_the_line_away_and_keeps_the_words(qtbot, replayed) -> None:
    window, page = replayed()
    qtbot.keyClick(page, "w")
    qtbot.keyClicks(page.notes.entry.line, "half a ")
    qtbot.keyClick(page.notes.entry.line, Qt.Key.Key_Escape)
    assert not page.notes.entry.isVisible()
    assert window.page is page, "Esc did not leave the replay"
    qtbot.keyClick(page, "w")
    assert page.notes.entry.line.text() == "half a "


def test_what_cannot_be_written_is_said_and_nothing_typed_is_lost(
    qtbot, replayed, path, monkeypatch
) -> None:
    def read_only(target: Path, _data: bytes) -> None:
        raise StoreError(f"{target}: read-only file system; choose another folder")

    with monkeypatch.context() as patched:
        patched.setattr(notes_module, "atomic_write", read_only)
        window, page = replayed()
        write(qtbot, page, "frost at the low point")
        assert "read-only file system; make the folder writable" in page.message.text()
        assert "Your words stay in the line" in page.message.text()
        assert page.notes.entry.isVisible()
        assert page.notes.entry.line.text() == "frost at the low point"
        assert not notes_path(path).exists()
        window.go_to_start()
    _window, page = replayed()  # opened anew, the words are there
    qtbot.keyClick(page, "w")
    assert page.notes.entry.line.text() == "frost at the low point"
    qtbot.keyClick(page.notes.entry.line, Qt.Key.Key_Return)
    assert read_notes(path)[0][0].text == "frost at the low point"
    page._go(lambda: page.replay.seek(600.0))
    qtbot.keyClick(page, "w")
    assert page.notes.entry.line.text() == ""


def test_an_odd_file_of_notes_is_said_and_left_alone(qtbot, replayed, path) -> None:
    notes_path(path).write_text("time,what\n1,=cmd()\n", encoding="utf-8")
    _window, page = replayed()
    assert "not a file of notes" in page.message.text()
    page.message.hide()
    qtbot.keyClick(page, "w")
    qtbot.waitUntil(page.message.isVisible, timeout=3000)
    assert not page.notes.entry.isVisible()
    assert marks(page) == []
    assert notes_path(path).read_text(encoding="utf-8") == "time,what\n1,=cmd()\n"


def test_a_blind_replay_shows_no_note(qtbot, replayed, path) -> None:
    NotesFile(notes_path(path)).keep([note(AT_S, "verdict was liquid", "", NOW)])
    _window, page = replayed()
    assert marks(page) == [AT_S]
    page.toggle_blind()
    assert marks(page) == []
    assert not any("Note" in words for words in listed(page))
    assert page.replay.index.play_time(AT_S) not in page.replay._marks()
    write(qtbot, page, "I say vapour")  # a new one, not the old one's words
    assert [one.text for one in read_notes(path)[0]] == ["verdict was liquid", "I say vapour"]
    assert "I say" not in page.message.text()
    assert marks(page) == []
    page.toggle_blind()
    assert marks(page) == [AT_S, AT_S]


def test_a_note_in_the_log_itself_is_hidden_from_a_blind_replay(qtbot, look, tmp_path) -> None:
    path = tmp_path / "noted.csv"
    lines = vent_log(300).decode().splitlines()
    lines[3] += ",note"
    lines[4:] = [
        f"{row},liquid it was" if at == 90 else f"{row}," for at, row in enumerate(lines[4:])
    ]
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.show()
    page = window.replay(read_log(path), path.name, path=path)
    qtbot.waitUntil(lambda: page.replay.index.done, timeout=20_000)
    page.replay.seek(200.0)
    assert any("liquid it was" in event.text for event in page.replay.frame().view.events)
    page.replay.blind = True
    assert not any("liquid it was" in event.text for event in page.replay.frame().view.events)


def test_notes_on_a_shipped_vent_go_to_the_persons_own_folder(qtbot, look, tmp_path) -> None:
    look.kept.update(folder=str(tmp_path / "mine"), toured=True)
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.show()
    window.open_sample("dry-ice.csv")
    page = window.page
    assert isinstance(page, ReplayPage)
    qtbot.waitUntil(lambda: page._plots is not None, timeout=20_000)
    write(qtbot, page, "look here")
    assert (tmp_path / "mine" / "dry-ice.notes.csv").is_file()


def test_a_formula_typed_as_a_note_does_not_run_elsewhere(qtbot, replayed, path) -> None:
    _window, page = replayed()
    write(qtbot, page, "=1+1")
    rows = list(csv.reader(notes_path(path).read_text(encoding="utf-8").splitlines()))
    assert rows[-1][3] == "'=1+1"
    assert read_notes(path)[0][0].text == "=1+1"


@pytest.mark.parametrize("screen", [(1024, 600), (600, 1024)], ids=lambda s: f"{s[0]}x{s[1]}")
@pytest.mark.parametrize("language", ["en", "de", "es", "nb"])
def test_the_page_fits_while_a_note_is_written(qtbot, qapp, replayed, screen, language) -> None:
    install(qapp, language)
    try:
        window, page = replayed()
        window.resize(*screen)
        page.apply_look()
        page.layout().activate()
        assert _cut_off(page) == []
        page.notes.entry.ask("8:20", "a note", "Ada", old=True)
        page.tick()
        page.layout().activate()
        assert _cut_off(page) == []
    finally:
        install(qapp, "en")
