"""Notes beside a log: kept whole, read back as written, odd files refused and left alone."""

import csv
import os
import sys
from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from co2vent.errors import RefusedInputError, StoreError
from co2vent.store import notes as notes_module
from co2vent.store.notes import (
    COLUMNS,
    HEAD,
    MAX_BYTES,
    MAX_NOTES,
    NotesFile,
    decode_notes,
    encode_notes,
    note,
    notes_path,
    read_notes,
)

NOW = datetime(2026, 3, 2, 8, 0, 5, tzinfo=UTC)


def test_notes_come_back_in_the_order_of_their_moments(tmp_path: Path) -> None:
    log = tmp_path / "vent.csv"
    log.write_bytes(b"the log itself")
    kept = NotesFile(notes_path(log))
    later = note(300.0, "frost, at the low point", "Ada", NOW)
    sooner = note(12.25, 'he said "shut"', "", NOW)
    kept.keep([later, sooner])
    assert notes_path(log).name == "vent.notes.csv"
    assert read_notes(log) == ((sooner, later), "")
    assert log.read_bytes() == b"the log itself"
    rows = list(csv.reader(notes_path(log).read_text(encoding="utf-8").splitlines()[1:]))
    assert rows[0] == COLUMNS == ["data_time_s", "written_utc", "author", "text"]
    assert rows[1] == ["12.25", "2026-03-02T08:00:05Z", "", 'he said "shut"']


@given(st.text(max_size=600), st.text(max_size=100), st.floats(-1e6, 1e9))
def test_any_text_comes_back_as_one_line_and_never_runs_as_a_formula(text, author, at_s) -> None:
    one = note(at_s, text, author, NOW)
    if not one.text:
        return
    data = encode_notes([one])
    (back,) = decode_notes(data, "n")
    assert (back.text, back.author, back.written) == (one.text, one.author, NOW)
    assert back.at_s == one.at_s, "the very reading is found again"
    (cells,) = csv.reader(data.decode().splitlines()[2:])
    for cell in cells[2:]:
        # first characters of https://owasp.org/www-community/attacks/CSV_Injection
        assert not cell.lstrip().startswith(("=", "+", "-", "@", "\t", "\r"))


def test_a_formula_is_kept_as_the_words_it_is() -> None:
    for words in ("=1+1", "-5 bar", "'=x", "' +1", "@home", "+ok", "it's"):
        one = note(1.0, words, "=HYPERLINK(1)", NOW)
        (back,) = decode_notes(encode_notes([one]), "n")
        assert (back.text, back.author) == (words, "=HYPERLINK(1)")


ROW = "5.0,2026-03-02T08:00:05Z,,"
TOP = f"{HEAD}\n{','.join(COLUMNS)}\n"
ODD = {
    "columns": (f"{HEAD}\ntime,text\n1,x\n", "not a file of notes"),
    "log": ("elapsed_s,pressure_bar_g\n0,5\n", "not a file of notes"),
    "empty": ("", "not a file of notes"),
    "formula": (f"{TOP}{ROW}\"=cmd|'/c calc'!A0\"\n", "line 3: a formula"),
    "control": (f"{TOP}{ROW}a\x1b[2Jb\n", "line 3: control characters"),
    "turned": (f"{TOP}{ROW}a\u202eb\n", "line 3: control characters"),
    "quote": (f'{TOP}{ROW}"never closed\n', "line 3: quotes"),
    "wide": (f"{TOP}{ROW}ok\n{ROW}a,b\n", "line 4: 5 columns"),
    "nan": (f"{TOP}nan,2026-03-02T08:00:05Z,,x\n", "line 3: no time"),
    "stamp": (f"{TOP}1,yesterday,,x\n", "line 3: no time"),
    "long": (f"{TOP}{ROW}{'x' * 5000}\n", "5000 characters"),
    "many": (TOP + f"{ROW}x\n" * (MAX_NOTES + 1), "more than 2000"),
    "huge": ("x" * (MAX_BYTES + 1), "too large"),
}


@pytest.mark.parametrize("case", ODD)
def test_an_odd_file_is_told_in_a_sentence_and_left_as_it_is(tmp_path: Path, case: str) -> None:
    content, sentence = ODD[case]
    path = tmp_path / "vent.notes.csv"
    path.write_bytes(content.encode())
    kept = NotesFile(path)
    assert kept.notes == ()
    assert sentence in kept.problem
    assert "vent.notes.csv" in kept.problem
    assert "\n" not in kept.problem
    with pytest.raises(StoreError, match=r"vent\.notes\.csv"):
        kept.keep([note(1.0, "mine", "", NOW)])
    assert path.read_bytes() == content.encode()


def test_bytes_that_are_no_text_are_refused() -> None:
    with pytest.raises(RefusedInputError, match="UTF-8"):
        decode_notes(b"\xff\xfe\x00", "n")


@pytest.mark.skipif(sys.platform == "win32", reason="no named pipes in folders")
def test_a_pipe_is_not_waited_for(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "vent.notes.csv")
    assert "not a file" in NotesFile(tmp_path / "vent.notes.csv").problem


def test_what_another_program_wrote_in_the_meantime_is_not_lost(tmp_path: Path) -> None:
    path = tmp_path / "vent.notes.csv"
    here, there = NotesFile(path), NotesFile(path)
    there.keep([note(1.0, "there", "", NOW)])
    before = path.read_bytes()
    with pytest.raises(StoreError, match="changed by another program"):
        here.keep([note(2.0, "here", "", NOW)])
    assert path.read_bytes() == before


def test_a_write_that_fails_leaves_the_old_notes(tmp_path: Path, monkeypatch) -> None:
    path = tmp_path / "vent.notes.csv"
    kept = NotesFile(path)
    first = note(1.0, "first", "", NOW)
    kept.keep([first])
    before = path.read_bytes()

    def full(*_args: object) -> None:
        raise StoreError("no space left")

    monkeypatch.setattr(notes_module, "atomic_write", full)
    with pytest.raises(StoreError):
        kept.keep([first, note(2.0, "second", "", NOW)])
    assert kept.notes == (first,)
    assert path.read_bytes() == before


def test_too_many_notes_are_refused(tmp_path: Path) -> None:
    kept = NotesFile(tmp_path / "vent.notes.csv")
    with pytest.raises(StoreError, match="at most"):
        kept.keep([note(1.0, "x", "", NOW)] * (MAX_NOTES + 1))
    assert not kept.path.exists()
