"""Every finding of a tried source has its own words, and they fit, in every language."""

import pytest
from PySide6.QtWidgets import QApplication

from co2vent.readings.columns import Role
from co2vent.readings.reading import Reading, Setup
from co2vent.window.connect_page import ConnectPage
from co2vent.window.languages import available, install
from co2vent.window.source_words import printable, verdict
from co2vent.window.text import UnitChoice
from co2vent.wire.probe import LineKind, ProbedCell, ProbedLine
from co2vent.wire.source_check import Finding, Heard
from tests.window.test_sizes import _cut_off

REASON = "the header above it was not understood: 'Druck Abscheider 3 Niederdruck' has no unit"
ROW = ProbedLine(
    "1234.5,-31.5,hello,closed,3.61", Reading(1234.5, 5_300_000.0, 241.6), "reading",
    LineKind.READING, "holding 0: 4148 0000 4148 0000, input 40: 0001 0002",
    tuple(
        ProbedCell(role.value, "hello" if role is Role.UPPER_TEMPERATURE else "-31.5", role,
                   role is not Role.UPPER_TEMPERATURE)
        for role in Role
    ) + (ProbedCell("battery_voltage_of_the_logger_V", "3.61", None, True),),
    Setup(simulated=True, pressure_unit="MPa_g"),
)  # fmt: skip
BAD = ProbedLine("\x00\x1b[31m" + "x" * 400, None, REASON, LineKind.REJECTED)
OPEN = {"opened_s": 0.0, "bytes_heard": 9_000_000, "recent": (BAD, ROW)}
READ = OPEN | {
    "lines": 123_456, "readings": 123_400, "rejected": 56, "newest": ROW, "newest_s": 99.9,
    "interval_s": 0.0123, "passed_over": 1_234_567,
}  # fmt: skip
HEARD = {
    Finding.OPENING: Heard(),
    Finding.WAITING: Heard(opened_s=99.9),
    Finding.SILENT: Heard(opened_s=0.0),
    Finding.NO_LINE_END: Heard(opened_s=0.0, bytes_heard=9, tail=b"\xff" * 64),
    Finding.NO_ROWS: Heard(**OPEN),
    Finding.UNREADABLE: Heard(**OPEN, unreadable=True, tail=b"\xff" * 64),
    Finding.NO_COLUMNS: Heard(**OPEN, no_header=True),
    Finding.REFUSED: Heard(**OPEN, refused=REASON),
    Finding.NO_READING: Heard(**OPEN, lines=9, reason=REASON),
    Finding.ARRIVING: Heard(**READ),
    Finding.PARTLY: Heard(**READ, rejected_s=99.0, reason=REASON),
    Finding.TOO_SLOW: Heard(**(READ | {"interval_s": 12.3})),
    Finding.STOPPED: Heard(**(READ | {"newest_s": 1.0})),
    Finding.FILE_BEING_READ: Heard(**(READ | {"newest_s": None}), in_backlog=True),
    Finding.FILE_STANDS: Heard(**(READ | {"newest_s": None}), from_file=True),
    Finding.LOST: Heard(**READ, lost=REASON),
    Finding.ENDED: Heard(**READ, ended=True),
}


@pytest.fixture
def spoken(qapp: QApplication):
    yield lambda language: install(qapp, language)
    install(qapp, "en")


def test_each_finding_is_told_in_words_of_its_own() -> None:
    assert set(HEARD) == set(Finding)
    for finding, heard in HEARD.items():
        assert heard.finding(100.0) is finding
    words = {verdict(heard, 100.0, "COM3", UnitChoice.BAR) for heard in HEARD.values()}
    assert len(words) == len(Finding)


def test_only_a_source_that_is_as_it_must_be_is_said_to_be() -> None:
    told = {found: verdict(heard, 100.0, "COM3", UnitChoice.BAR) for found, heard in HEARD.items()}
    said = [found for found, words in told.items() if words.startswith("Readings arrive, ")]
    assert set(said) == {Finding.ARRIVING, Finding.PARTLY}


@pytest.mark.parametrize("text_scale", [1.0, 1.3])
@pytest.mark.parametrize("screen", [(1024, 600), (600, 1024)], ids=lambda s: f"{s[0]}x{s[1]}")
@pytest.mark.parametrize("language", ["en", "de", "es", "nb"])
def test_it_fits_in_every_language(qtbot, look, spoken, language, screen, text_scale) -> None:
    assert language in available()
    spoken(language)
    look.text_scale = text_scale
    look.units = UnitChoice.PSI
    page = ConnectPage(look)
    qtbot.addWidget(page)
    page.resize(*screen)
    page.show()
    page.apply_look()
    qtbot.wait(10)
    assert _cut_off(page) == []
    page.turn_view()
    for heard in HEARD.values():
        page.panel.show_heard(heard, 100.0, "COM3", look.units)
        qtbot.wait(5)
        assert (page.width(), page.height()) == screen
        assert _cut_off(page) == []
        shown = page.panel.lines.toPlainText()
        assert "\x1b" not in shown
        assert "\x00" not in shown


def test_raw_text_is_shown_without_what_a_screen_would_obey() -> None:
    assert printable("12.3\x1b[2J\t€") == "12.3\\x1b[2J\\t€"
    assert len(printable("x" * 5000)) < 200
