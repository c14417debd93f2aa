"""A large log: its trace at once, UNCHECKED; nothing judged or saved before it has been checked."""

import os
import re
import subprocess
import sys
import threading
import zlib

import numpy as np
import pytest
from PySide6.QtGui import QShortcut
from PySide6.QtWidgets import QWidget

from co2vent.guidance.events import Severity
from co2vent.inference.outcome import Instruction
from co2vent.readings.log_file import LARGE_BYTES, decode_log
from co2vent.window import opening as opening_module
from co2vent.window.alarm_strip import AlarmStrip
from co2vent.window.fit_label import FitLabel
from co2vent.window.headroom import Headroom
from co2vent.window.languages import install
from co2vent.window.loading_page import LoadingPage
from co2vent.window.main_window import MainWindow
from co2vent.window.opening import Opening
from co2vent.window.prompt_band import PromptBand
from co2vent.window.replay_page import ReplayPage
from co2vent.window.section_drawing import SectionDrawing
from co2vent.window.start_page import StartPage
from co2vent.window.theme import PALETTES, contrast
from co2vent.window.vent_panel import VentPanel
from co2vent.window.words import headline_of
from tests.window.conftest import vent_log
from tests.window.test_sizes import _cut_off

CONCLUDES = (PromptBand, VentPanel, Headroom, SectionDrawing, AlarmStrip)


def recording(rows: int = 900, *extra: bytes) -> bytes:
    """The simulated vent as the recorder writes it, `extra` lines in its middle."""
    lines = vent_log(rows).decode().splitlines()
    head = [line for line in lines if line.startswith("#")]
    table = [_fixed(line) for line in lines[len(head) + 1 :]]
    half = len(table) // 2
    header = f"{lines[len(head)]},row_check"
    start = "\n".join([*head, header]) + "\n"
    return start.encode() + b"".join(
        [*map(checked, table[:half]), *extra, *map(checked, table[half:])]
    )


def _fixed(line: str) -> str:
    at_s, pressure, line_c, valve = line.split(",")
    return f"{float(at_s):.3f},{float(pressure):.4f},{float(line_c):.2f},{valve}"


def checked(text: str) -> bytes:
    return f"{text},{zlib.crc32(text.encode()):08x}\n".encode()


@pytest.fixture
def held(monkeypatch):
    """Keeps every check waiting until the test lets it go."""
    gate = threading.Event()
    read_log = opening_module.read_log

    def held_read(path, columns, overrides, watch):
        while not gate.wait(0.01):
            watch(0)
        return read_log(path, columns, overrides, watch)

    monkeypatch.setattr(opening_module, "read_log", held_read)
    yield gate
    gate.set()


@pytest.fixture
def window(qtbot, look, monkeypatch):
    monkeypatch.setattr("co2vent.window.main_window.LARGE_BYTES", 1000)
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    window.show()
    yield window
    window.go_to_start()
    qtbot.waitUntil(
        lambda: "opening" not in {thread.name for thread in threading.enumerate()}, timeout=20_000
    )


def open_unchecked(qtbot, window, path) -> LoadingPage:
    window.open_log(path)
    page = window.page
    assert isinstance(page, LoadingPage)
    qtbot.waitUntil(page.band.isVisible, timeout=20_000)
    qtbot.waitUntil(page.plot.isVisible, timeout=5_000)
    return page


def words_on(page: QWidget) -> str:
    return " ".join(label.text() for label in page.findChildren(FitLabel) if label.isVisible())


def test_the_trace_is_there_before_the_check_and_says_so(qtbot, window, tmp_path, held) -> None:
    path = tmp_path / "large.csv"
    path.write_bytes(recording())
    page = open_unchecked(qtbot, window, path)
    assert page.band.word.text().startswith("UNCHECKED")
    assert page.band.accessibleName().startswith("UNCHECKED")
    assert "UNCHECKED" in page.plot.pressure.titleLabel.text
    assert "SIMULATED" in page.banner.words
    time, _value = page.plot._curves["pressure"].getData()
    assert time.size > 100
    held.set()
    qtbot.waitUntil(lambda: isinstance(window.page, ReplayPage), timeout=20_000)
    replay = window.page
    qtbot.waitUntil(lambda: replay.replay.index.done, timeout=20_000)
    assert "UNCHECKED" not in words_on(replay)
    window.go_to_start()


def test_nothing_is_concluded_or_saved_while_unchecked(qtbot, window, tmp_path, held) -> None:
    path = tmp_path / "large.csv"
    path.write_bytes(recording())
    page = open_unchecked(qtbot, window, path)
    qtbot.wait(300)
    for kind in CONCLUDES:
        assert window.page.findChildren(kind) == [], kind
    said = words_on(page).lower()
    for instruction in Instruction:
        assert not re.search(rf"\b{re.escape(headline_of(instruction).lower())}\b", said)
    for word in ("vapour", "liquid", "inside", "hold ", "kg"):
        assert word not in said
    assert not page.plot.holds._shades
    assert page.plot._marks == []
    before = set(tmp_path.iterdir())
    for keys in ("Ctrl+P", "Ctrl+D", "Ctrl+E"):
        qtbot.keySequence(page, keys)
    assert _shortcuts(page) == {"Esc", "Z"}
    assert set(tmp_path.iterdir()) == before
    window.go_to_start()


def _shortcuts(page: QWidget) -> set[str]:
    return {shortcut.key().toString() for shortcut in page.findChildren(QShortcut)}


def test_nothing_is_worked_out_from_unchecked_rows(tmp_path) -> None:
    path = tmp_path / "large.csv"
    path.write_bytes(recording())
    opening = Opening(path)
    opening.start()
    opening._thread.join(20.0)
    traces, _setup = opening.unchecked
    assert np.isnan(traces.saturation_pa()).all()
    assert np.isfinite(opening.checked.traces.saturation_pa()).all()


def test_quick_and_checked_trace_of_a_clean_log_are_the_same(tmp_path) -> None:
    path = tmp_path / "large.csv"
    path.write_bytes(recording(3000))
    opening = Opening(path)
    opening.start()
    opening._thread.join(20.0)
    quick, checked_traces = opening.unchecked[0], opening.checked.traces
    np.testing.assert_array_equal(quick.at_s(), checked_traces.at_s())
    np.testing.assert_array_equal(quick.pressure_pa(), checked_traces.pressure_pa())
    np.testing.assert_array_equal(quick.line_temperature_k(), checked_traces.line_temperature_k())
    assert checked_traces.nbytes / len(checked_traces) < 60


def test_rows_that_fail_their_check_are_gone_from_the_checked_trace(tmp_path) -> None:
    bad = [
        b"450.100,19.9999,-20.00,closed,00000000\n",  # damaged
        checked("450.200,99999.0000,-20.00,closed"),  # more than a gauge shows
        checked("450.300,OL,-20.00,closed"),
        checked("450.400,nan,-20.00,closed"),
        checked("10.000,6.5000,-40.00,closed"),  # time set back
        b"# event: 450.500 s note: a mark [00000000]\n",
    ]
    path = tmp_path / "large.csv"
    path.write_bytes(recording(900, *bad) + b"900.000,6.1")
    opening = Opening(path)
    opening.start()
    opening._thread.join(20.0)
    log = decode_log(path.read_bytes())
    quick, index = opening.unchecked[0], opening.checked
    assert np.isfinite(quick.pressure_pa()).sum() == 903
    assert np.nanmax(quick.pressure_pa()) > 1e9
    pressure_pa = index.traces.pressure_pa()
    assert np.isfinite(pressure_pa).sum() == len(log.readings) == 901
    assert np.nanmax(pressure_pa) < 2.1e6
    assert len(quick.gaps()) == 2  # where the time went back, and where it went on


def test_windows_line_ends_are_looked_at_too(tmp_path) -> None:
    path = tmp_path / "large.csv"
    path.write_bytes(recording().replace(b"\n", b"\r\n"))
    opening = Opening(path)
    opening.start()
    opening._thread.join(20.0)
    assert opening.failure == ""
    assert len(opening.unchecked[0]) == len(opening.checked.traces) == 900


def test_a_form_that_is_not_known_is_read_as_before_and_says_how_far(
    qtbot, window, tmp_path, held
) -> None:
    path = tmp_path / "other.csv"
    table = vent_log(400).decode().replace(",", ";").replace(".", ",")
    path.write_text(table.replace("14,5", "14.5"))
    window.open_log(path)
    page = window.page
    qtbot.waitUntil(lambda: "row by row" in page.words.text(), timeout=10_000)
    assert "0 %" in page.words.text()
    assert not page.band.isVisible()
    held.set()
    qtbot.waitUntil(lambda: isinstance(window.page, ReplayPage), timeout=20_000)
    window.go_to_start()


def test_going_back_or_to_another_file_stops_the_check(qtbot, window, tmp_path, held) -> None:
    first, second = tmp_path / "first.csv", tmp_path / "second.csv"
    first.write_bytes(recording(900))
    second.write_bytes(recording(500))
    page = open_unchecked(qtbot, window, first)
    window.open_log(second)
    qtbot.waitUntil(lambda: not page.opening.running, timeout=5_000)
    assert page.opening.checked is None
    assert window.page.opening is not page.opening
    other = window.page.opening
    qtbot.keyClick(window.page, "\x1b")
    qtbot.waitUntil(lambda: isinstance(window.page, StartPage), timeout=5_000)
    qtbot.waitUntil(lambda: not other.running, timeout=5_000)
    assert other.checked is None


def test_a_log_whose_rows_fail_their_check_loses_them(qtbot, window, tmp_path, held) -> None:
    path = tmp_path / "damaged.csv"
    whole = recording(600)
    end = whole.index(b"\n", whole.index(b"\n0.000,") + 1) + 1
    damaged = bytearray(whole)
    for place in range(end, len(damaged)):
        if damaged[place : place + 1] == b"\n":
            damaged[place - 8 : place] = b"00000000"
    path.write_bytes(damaged)
    page = open_unchecked(qtbot, window, path)
    assert len(page.opening.unchecked[0]) == 600
    held.set()
    qtbot.waitUntil(lambda: isinstance(window.page, ReplayPage), timeout=20_000)
    assert len(window.page.replay.index.traces) == 1


def test_a_log_that_can_no_longer_be_read_is_said(
    qtbot, window, tmp_path, held, monkeypatch
) -> None:
    said = []
    monkeypatch.setattr(window, "complain", said.append)
    path = tmp_path / "large.csv"
    path.write_bytes(recording(300))
    open_unchecked(qtbot, window, path)
    path.write_text("no log at all\n" * 20)
    held.set()
    qtbot.waitUntil(lambda: bool(said), timeout=20_000)
    assert isinstance(window.page, StartPage)


@pytest.mark.parametrize("language", ["en", "de", "es", "nb"])
def test_the_band_fits_in_every_language(
    qtbot, qapp, window, tmp_path, held, language: str
) -> None:
    install(qapp, language)
    try:
        path = tmp_path / "large.csv"
        path.write_bytes(recording(300))
        page = open_unchecked(qtbot, window, path)
        for size in ((1024, 600), (600, 1024)):
            window.resize(*size)
            qtbot.wait(60)
            assert _cut_off(page) == []
            assert page.band.word.fits
            assert page.band.why.fits
        assert page.band.word.text().isascii() or language == "de"
        assert ("UNCHECKED" in page.band.word.text()) is (language == "en")
        window.go_to_start()
    finally:
        install(qapp, "en")


def test_the_band_can_be_read_in_both_themes() -> None:
    for palette in PALETTES.values():
        band = palette.band(Severity.CAUTION)
        assert contrast(band.ground, band.ink) >= 7.0  # WCAG 2.2, 1.4.6


def _replay(path, *options: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "co2vent", "replay", str(path), *options]
    surroundings = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    return subprocess.run(
        command, capture_output=True, text=True, timeout=100, env=surroundings, check=False
    )


def test_the_command_opens_the_window_first_and_reads_then(tmp_path) -> None:
    path = tmp_path / "large.csv"
    path.write_bytes(recording(150_000))
    assert path.stat().st_size > LARGE_BYTES
    picture = tmp_path / "picture.png"
    done = _replay(path, "--screenshot", str(picture), "--at", "1")
    assert done.returncode == 0, done.stderr
    assert picture.stat().st_size > 1000


def test_the_command_refuses_a_large_log_that_begins_badly_as_a_small_one(tmp_path) -> None:
    path = tmp_path / "large.csv"
    path.write_bytes(b"elapsed_s,pressure_bar\n" + b"0.0,5.0\n" * 700_000)
    done = _replay(path)
    assert done.returncode == 2
    assert len(done.stderr.splitlines()) == 1
    assert "gauge or absolute" in done.stderr
