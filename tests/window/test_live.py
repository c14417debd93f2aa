"""A live vent in the window: from a source to the painted prompt, alarms, sound, notes."""

import os
import sys
import threading
import wave
from io import BytesIO

import pytest
from PySide6.QtCore import Qt

from co2vent.guidance.events import Severity
from co2vent.guidance.job import JobHead, Person
from co2vent.inference.outcome import Instruction
from co2vent.live.monitor import Monitor
from co2vent.store.recorder import Recorder
from co2vent.window.app import watch_for_faults
from co2vent.window.connect_page import ConnectPage, new_log_path
from co2vent.window.fault_page import FaultPage
from co2vent.window.job_desk import JobDesk
from co2vent.window.keys import Key
from co2vent.window.main_window import MainWindow
from co2vent.window.sound import PULSES, RATE_HZ, Sounder, pulses_wav
from co2vent.wire.parse import parse_source
from tests.window.conftest import a_prompt, a_view, vent_log


class SilentSounder(Sounder):
    """Keeps what it was asked to sound."""

    def __init__(self) -> None:
        super().__init__(players=())
        self.sounded: list[Severity] = []

    def play(self, severity: Severity) -> None:
        self.sounded.append(severity)


@pytest.fixture
def live(qtbot, look, tmp_path):
    """A window on a growing file, recording."""
    source = tmp_path / "gauge.csv"
    source.write_bytes(vent_log(40))
    monitor = Monitor(parse_source(str(source)), recorder=Recorder(tmp_path / "vent.csv"))
    monitor.start()
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    window.show()
    page = window.watch(monitor, recording=True)
    page.sounder = SilentSounder()
    yield window, page, source, tmp_path / "vent.csv"
    if window.page is page:
        window.go_to_start()


def _append(path, rows: bytes) -> None:
    with path.open("ab") as file:
        file.write(rows)
        file.flush()
        os.fsync(file.fileno())


def test_readings_reach_the_figures_and_the_record(qtbot, live) -> None:
    window, page, source, record = live
    qtbot.waitUntil(lambda: len(page.live.traces) >= 40, timeout=10_000)
    _append(source, b"40,17.123,-22.0,open\n")
    qtbot.waitUntil(
        lambda: page.panel.pressure.accessibleName().startswith("pressure: 17.12 bar g"),
        timeout=10_000,
    )
    assert "SIMULATED" in page.panel.banner.words
    assert "recording" in page.panel.status.recording.label.text()
    window.go_to_start()
    assert b"17.123" in record.read_bytes()


def test_a_source_that_goes_quiet_is_stale_within_its_limit(qtbot, live) -> None:
    _window, page, _source, _record = live
    qtbot.waitUntil(lambda: len(page.live.traces) >= 40, timeout=10_000)
    limit_s = page.live.frame().view.age_limit_s
    assert limit_s <= 5.0
    qtbot.waitUntil(lambda: page.panel.shown.stale, timeout=round(1000 * (limit_s + 1.5)))
    assert page.panel.prompt.severity is Severity.DANGER
    qtbot.waitUntil(lambda: Severity.DANGER in page.sounder.sounded, timeout=3000)
    assert [alarm.kind.value for alarm in page.book.unacknowledged] == ["no_data"]
    assert page.panel.prompt.flash_hz == pytest.approx(2.0)
    qtbot.keyClick(page, Qt.Key.Key_A)
    qtbot.waitUntil(lambda: page.book.unacknowledged == (), timeout=2000)
    assert page.book.standing != ()  # seen, not gone
    qtbot.waitUntil(lambda: page.panel.prompt.flash_hz == 0.0, timeout=2000)


def test_notes_and_valve_go_into_the_record_by_keyboard(qtbot, live) -> None:
    window, page, source, record = live
    qtbot.waitUntil(lambda: len(page.live.traces) >= 40, timeout=10_000)
    qtbot.keyClick(page, Qt.Key.Key_N)
    qtbot.waitUntil(page.note.isVisible, timeout=2000)
    qtbot.keyClicks(page.note.line, "frost at the low point")
    qtbot.keyClick(page.note.line, Qt.Key.Key_Return)
    _append(source, b"40,17.1,-22.0,open\n")
    qtbot.waitUntil(lambda: b"frost at the low point" in record.read_bytes(), timeout=10_000)
    qtbot.keyClick(page, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    _append(source, b"41,17.0,-22.0,open\n")
    window.go_to_start()
    assert b"withdrawn: frost at the low point" in record.read_bytes()


def test_silence_is_shown_with_its_time_left(qtbot, live) -> None:
    _window, page, _source, _record = live
    qtbot.waitUntil(lambda: bool(page.book.unacknowledged), timeout=15_000)
    qtbot.keyClick(page, Qt.Key.Key_S)
    qtbot.waitUntil(lambda: "silent for 1:5" in page.panel.alarms.words, timeout=2000)


def test_closing_the_window_stops_the_monitor(qtbot, live) -> None:
    window, page, _source, _record = live
    window.close()
    assert page.live.monitor.running  # asked first
    assert page.confirm.isVisible()
    qtbot.keyClick(page, Qt.Key.Key_G)
    assert not page.confirm.isVisible()
    window.close()
    qtbot.keyClick(page, Qt.Key.Key_E)
    assert not page.live.monitor.running
    assert not window.isVisible()


def test_leaving_a_live_vent_is_asked(qtbot, live) -> None:
    window, page, _source, _record = live
    qtbot.keyClick(page, Qt.Key.Key_W, Qt.KeyboardModifier.ControlModifier)
    assert page.confirm.isVisible()
    assert page.live.monitor.running
    assert page.confirm.keys[1] is window.focusWidget()  # Go on: the stroke that does no harm
    page.confirm.keys[0].click()
    assert window.page is window.start_page


def test_no_sound_is_shown(qtbot, live) -> None:
    _window, page, _source, _record = live
    page.sounder = Sounder(players=(["no-such-player"],))
    page.tick()
    assert page.panel.status.sound.isVisibleTo(page)
    assert page.panel.status.sound.label.text() == "NO SOUND"


def test_a_player_that_fails_is_no_sound(qtbot) -> None:
    sounder = Sounder(players=(["false"],))
    assert sounder.works
    sounder.play(Severity.CAUTION)
    qtbot.waitUntil(lambda: not sounder.check(), timeout=5000)
    sounder.close()


@pytest.mark.parametrize("severity", [Severity.CAUTION, Severity.DANGER])
def test_sound_is_told_apart_by_its_pulses(severity: Severity) -> None:
    # IEC 60601-1-8 idea (from memory): three pulses of medium, ten of high priority
    assert PULSES == {Severity.CAUTION: 3, Severity.DANGER: 10}
    with wave.open(BytesIO(pulses_wav(PULSES[severity]))) as file:
        frames = memoryview(file.readframes(file.getnframes())).cast("h")
    loud = [
        max(abs(x) for x in frames[at : at + RATE_HZ // 50]) > 1000
        for at in range(0, len(frames) - RATE_HZ // 50, RATE_HZ // 50)
    ]
    starts = sum(now and not before for before, now in zip([False, *loud], loud, strict=False))
    assert starts == PULSES[severity]


def test_not_recording_stays_on_the_screen(qtbot, look, clock) -> None:
    from co2vent.window.vent_page import VentPage
    from tests.window.conftest import StandingFeed

    feed = StandingFeed(a_view(prompt=a_prompt(Instruction.WAIT, Severity.CALM)))
    feed.recording = False
    page = VentPage(feed, look, clock)
    qtbot.addWidget(page)
    page.show()
    page.tick()
    assert page.panel.status.recording.label.text() == "NOT RECORDING"


def test_connect_page_says_what_is_wrong_and_stays(qtbot, look) -> None:
    page = ConnectPage(look)
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    page.source.setEditText("")
    page.go()
    assert "source" in page.message.text()
    page.source.setEditText("COM3")
    page.form.fields["gauge_full_scale"].setText("60")
    page.go()
    assert "gauge_full_scale" in page.message.text()
    page.close_feed()


def test_connect_page_opens_a_source(qtbot, look, tmp_path) -> None:
    source = tmp_path / "gauge.csv"
    source.write_bytes(vent_log(10))
    page = ConnectPage(look)
    qtbot.addWidget(page)
    page.show()
    page.form.folder.setText(str(tmp_path / "records"))
    page.source.setEditText(str(source))
    with qtbot.waitSignal(page.connected, timeout=10_000) as got:
        page.go()
    got.args[0].stop()
    assert len(list((tmp_path / "records").iterdir())) == 1
    page.close_feed()


def test_name_of_a_recording_is_one_any_disk_takes(tmp_path) -> None:
    from datetime import datetime

    path = new_log_path(tmp_path, "Strainer 3/4: LT", datetime(2026, 2, 3, 4, 5, 6))
    assert path.name == "2026-02-03-040506-Strainer-3-4--LT.csv"


def _with_job(window, tmp_path) -> JobDesk:
    """Open a job in front of the live vent."""
    window.open_job()
    desk = window.job.desk
    head = JobHead(section="Strainer 4", people=(Person(name="Ada", role="technician"),))
    desk.begin(head, str(tmp_path / "jobs"))
    return desk


def test_a_job_runs_beside_a_live_vent(qtbot, live, tmp_path) -> None:
    window, page, source, record = live
    qtbot.waitUntil(lambda: len(page.live.traces) >= 40, timeout=10_000)
    seen: list[object] = []
    desk = _with_job(window, tmp_path)
    desk.observe = seen.append
    attached: list[object] = []
    desk.attach_log = attached.append
    assert window.page is desk
    qtbot.waitUntil(window.strip.isVisible, timeout=3000)
    assert "bar g" in window.strip.words
    qtbot.waitUntil(desk.page.offer.isVisible, timeout=3000)
    desk.page.offer.take_key.click()
    assert not desk.page.offer.isVisible()
    _append(source, b"40,17.1,-22.0,open\n")
    qtbot.waitUntil(lambda: any(view.latest.at_s == 40.0 for view in seen), timeout=5000)
    assert not desk.page.vent.isVisible()  # the prompt stands on the window's strip already
    qtbot.keyClick(desk, Qt.Key.Key_L, Qt.KeyboardModifier.ControlModifier)
    assert window.page is page
    qtbot.waitUntil(lambda: not window.strip.isVisible(), timeout=3000)
    window.go_to_start()
    assert attached == [record]


def test_a_job_on_the_desk_takes_no_simulated_vent_unasked(qtbot, live, tmp_path) -> None:
    window, page, source, _record = live
    qtbot.waitUntil(lambda: len(page.live.traces) >= 40, timeout=10_000)
    desk = _with_job(window, tmp_path)
    qtbot.waitUntil(desk.page.offer.isVisible, timeout=3000)
    assert "SIMULATED" in desk.page.offer.words.text()
    _append(source, b"40,17.1,-22.0,open\n")
    qtbot.waitUntil(lambda: len(page.live.traces) >= 41, timeout=5000)
    assert not desk.job_file.job.simulated
    desk.page.offer.leave_key.click()
    qtbot.wait(300)
    assert not desk.page.offer.isVisible()  # answered: not asked again and again
    window.show_live()
    window.go_to_start()  # the vent ends, its log is not the job's
    assert not desk.job_file.job.simulated
    assert desk.job_file.job.logs == ()


def test_a_simulated_vent_that_is_taken_makes_the_job_practice(qtbot, live, tmp_path) -> None:
    window, page, _source, _record = live
    qtbot.waitUntil(lambda: len(page.live.traces) >= 40, timeout=10_000)
    desk = _with_job(window, tmp_path)
    qtbot.waitUntil(desk.page.offer.isVisible, timeout=3000)
    desk.page.offer.take_key.click()
    qtbot.waitUntil(lambda: desk.job_file.job.simulated, timeout=5000)
    assert not desk.page.keys["sign"].isEnabled()
    window.show_live()
    window.go_to_start()


def test_a_fault_of_the_screen_shows_no_guidance_and_loses_no_reading(qtbot, live) -> None:
    window, page, source, record = live
    qtbot.waitUntil(lambda: len(page.live.traces) >= 40, timeout=10_000)
    window.show_fault(ValueError("a fault of the screen"))
    assert isinstance(window.page, FaultPage)
    assert "close the vent" in window.page.headline.text()
    assert not page._timer.isActive()
    _append(source, b"40,17.123,-22.0,open\n")
    qtbot.waitUntil(lambda: b"17.123" in record.read_bytes(), timeout=10_000)
    window.page.keys[0].click()
    assert window.page is page
    qtbot.waitUntil(lambda: "17.12" in page.panel.pressure.accessibleName(), timeout=5000)


def test_an_exception_in_a_slot_leads_to_the_fault_page(qtbot, look, monkeypatch, capsys) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.show()
    before = sys.excepthook
    monkeypatch.setattr(threading, "excepthook", threading.excepthook)
    monkeypatch.setattr(sys, "excepthook", before)
    watch_for_faults(window)
    sys.excepthook(KeyError, KeyError("x"), None)
    assert isinstance(window.page, FaultPage)
    assert "KeyError" in capsys.readouterr().err
    window.page.keys[1].click()
    assert window.page is window.start_page


def test_an_alarm_brings_the_vent_in_front_of_the_job(qtbot, live) -> None:
    window, page, _source, _record = live
    qtbot.waitUntil(lambda: len(page.live.traces) >= 40, timeout=10_000)
    window.open_job()
    assert window.page is window.job.desk
    qtbot.waitUntil(lambda: window.page is page, timeout=10_000)  # the source has gone quiet
    assert page.panel.prompt.severity is Severity.DANGER


def test_space_presses_no_key_until_one_has_been_chosen(qtbot, live) -> None:
    window, page, _source, _record = live
    qtbot.waitUntil(lambda: len(page.live.traces) >= 40, timeout=10_000)
    window.activateWindow()
    leave = next(key for key in page.findChildren(Key) if key.accessibleName() == "Leave")
    for _ in range(2):
        assert not isinstance(window.focusWidget(), Key)
        qtbot.keyClick(window.focusWidget() or page, Qt.Key.Key_Space)
        assert not page.confirm.isVisible()
        page.leave()  # asked, and stayed
        page.confirm.keys[1].click()
    assert leave.focusPolicy() is Qt.FocusPolicy.NoFocus
