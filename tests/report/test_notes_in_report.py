"""The report lists what was noted on a recording, escaped, and says when it could not be read."""

from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest

from co2vent.cli.main import main
from co2vent.report.facts import ReportFacts
from co2vent.report.html import report_html
from co2vent.store.notes import NotesFile, note, notes_path

NOW = datetime(2026, 3, 2, 8, 0, 5, tzinfo=UTC)


@pytest.fixture
def log(tmp_path: Path) -> Path:
    path = tmp_path / "vent.csv"
    rows = "".join(f"{at},{19 - at * 0.01:.2f}\n" for at in range(200))
    path.write_text(f"elapsed_s,pressure_bar_g\n{rows}", encoding="utf-8")
    return path


def _report(log: Path) -> str:
    out = log.with_name("out.html")
    assert main(["report", str(log), "--out", str(out)]) == 0
    return out.read_text(encoding="utf-8")


def test_notes_are_listed_with_time_author_and_words(log: Path) -> None:
    assert "Notes on" not in _report(log)
    NotesFile(notes_path(log)).keep([note(75.0, "<b>frost</b> & noise", "Ada", NOW)])
    html = _report(log)
    assert "Notes on vent.csv" in html
    assert "&lt;b&gt;frost&lt;/b&gt; &amp; noise" in html
    assert "Ada" in html
    assert "2026-03-02 08:00:05+00:00" in html
    assert "1:15" in html
    assert "the digest of the readings does not cover them" in html


def test_notes_that_cannot_be_read_are_said_and_the_report_is_made(log: Path) -> None:
    notes_path(log).write_text("=1+1\n", encoding="utf-8")
    html = _report(log)
    assert "Not read: vent.notes.csv: not a file of notes" in html
    assert "=1+1" not in html
    assert notes_path(log).read_text(encoding="utf-8") == "=1+1\n"


def test_every_log_of_a_report_has_its_own_notes(facts: ReportFacts) -> None:
    (first,) = facts.logs
    noted = replace(first, notes=(note(10.0, "valve stiff", "", NOW),))
    other = replace(first, name="second.csv")
    html = report_html(replace(facts, logs=(noted, other)))
    assert html.count("Notes on") == 1
    assert "valve stiff" in html
