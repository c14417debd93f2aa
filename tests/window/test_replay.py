"""Replay: the view of a moment is the one the core had then; play, pause, seek, jump."""

from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import Qt

from co2vent.guidance.session import advance, begin, finish, view
from co2vent.inference.outcome import Charge
from co2vent.readings.log_file import decode_log
from co2vent.readings.reading import Rejection
from co2vent.window import text
from co2vent.window.languages import install
from co2vent.window.main_window import MainWindow
from co2vent.window.replay_feed import ReplayFeed
from co2vent.window.replay_index import ReplayIndex
from co2vent.window.replay_page import ReplayPage
from co2vent.window.samples_page import sample_names
from co2vent.window.shown import shown
from co2vent.window.text import UnitChoice
from co2vent.window.tour import tour_steps
from co2vent.window.traces import Traces
from tests.window.conftest import replayed, vent_log

LEAST_WORDS_PX = 11  # as for the longest reasons


@pytest.fixture
def index(log):
    index = ReplayIndex(log)
    index.start()
    assert index.wait(20.0)
    assert index.failure is None
    yield index
    index.close()


def test_last_view_is_what_the_core_says_of_the_whole_record(index, log) -> None:
    session = begin(log.setup)
    for item in log.items():
        session, _ = advance(session, item)
    session, _ = finish(session)
    assert index.moments[-1].view == view(session)


def test_a_moment_is_the_view_after_that_reading(index, log) -> None:
    session = begin(log.setup)
    for at, item in enumerate(log.items()):
        session, _ = advance(session, item)
        if at == 250:
            break
    assert index.at(250.4).view == view(session)
    assert index.at(250.4).rows == 251


def test_seek_backwards_forgets_what_was_not_known_then(index, clock) -> None:
    feed = ReplayFeed(index, "vent.csv", clock)
    feed.seek(1e9)
    late = feed.frame().view
    feed.seek(10.0)
    early = feed.frame().view
    assert len(early.events) < len(late.events)
    assert early.latest.at_s == 10.0
    assert all(event.at_s <= 10.0 for event in early.events)


def test_time_runs_with_the_speed_and_stops_at_the_end(index, clock) -> None:
    feed = ReplayFeed(index, "vent.csv", clock, speed=10.0)
    feed.toggle()
    feed.frame()
    clock.advance(2.0)
    assert feed.frame().view.latest.at_s == 20.0
    clock.advance(1e4)
    frame = feed.frame()
    assert frame.view.latest.at_s == 899.0
    assert not feed.playing
    feed.toggle()  # from the end it starts again
    assert feed.position_s == 0.0


def test_jumps_go_to_what_happened(index, clock) -> None:
    feed = ReplayFeed(index, "vent.csv", clock)
    feed.next_mark()
    here = feed.position_s
    assert here == 30.0  # the vent opens
    feed.next_mark()
    assert feed.position_s > here
    feed.previous_mark()
    assert feed.position_s == here


def test_in_a_gap_of_the_record_the_screen_turns_stale(clock) -> None:
    lines = vent_log(100).decode().splitlines()
    rows = lines[:-60] + lines[-20:]  # 40 s are missing
    index = ReplayIndex(decode_log("\n".join(rows).encode()))
    index.start()
    index.wait(10.0)
    feed = ReplayFeed(index, "vent.csv", clock)
    feed.seek(45.0)
    frame = feed.frame()
    assert frame.age_s > frame.view.age_limit_s
    index.close()


def test_traces_of_a_record_break_at_gaps(log) -> None:
    lines = vent_log(100).decode().splitlines()
    readings = decode_log("\n".join(lines[:-60] + lines[-20:]).encode()).readings
    traces, breaks = Traces.of(readings)
    one_by_one = Traces()
    for reading in readings.readings():
        one_by_one.append(reading)
    assert len(traces) == len(readings) + 1 == len(one_by_one)
    assert breaks.tolist() == [39]
    np.testing.assert_array_equal(traces.pressure_pa(), one_by_one.pressure_pa())
    np.testing.assert_array_equal(traces.at_s(), one_by_one.at_s())
    np.testing.assert_array_equal(traces.gaps(), one_by_one.gaps())
    assert traces.nbytes / len(Traces.of(log.readings)[0]) < 60


def test_live_traces_take_less_than_60_bytes_a_reading() -> None:
    from co2vent.readings.reading import Reading

    traces = Traces()
    for at in range(50_000):
        traces.append(Reading(float(at), 6e5))
    assert traces.nbytes / len(traces) < 60


def test_replay_in_the_window(qtbot, look, log) -> None:
    window, page = replayed(qtbot, look, log)
    assert "REPLAY" in page.panel.banner.words
    assert "SIMULATED" in page.panel.banner.words
    page.replay.playing = False
    page._go(lambda: page.replay.seek(500.0))
    digits = text.pressure(
        float(log.readings.pressure_pa[500]), log.setup.ambient_pressure_pa, "bar_g"
    )
    assert page.panel.pressure.accessibleName().startswith(f"pressure: {digits}")
    qtbot.keyClick(page, "+")
    qtbot.waitUntil(lambda: page.replay.speed == 2.0, timeout=2000)
    assert page.book.standing == ()  # a recording raises no alarm
    page.back.emit()
    assert window.page is window.start_page


def test_blind_replay_hides_every_conclusion(index, clock) -> None:
    feed = ReplayFeed(index, "vent.csv", clock)
    feed.seek(1e9)
    seeing = feed.frame().view
    feed.blind = True
    hidden = feed.frame()
    said = shown(hidden.view, 0.1, UnitChoice.BAR)
    assert hidden.blind
    assert said.pressure == shown(seeing, 0.1, UnitChoice.BAR).pressure
    words = " ".join([said.headline, said.reason, said.inside, said.power])
    assert seeing.prompt.reason not in words
    assert all(hold.charge is Charge.UNDETERMINED for hold in hidden.view.holds)
    assert not any(hold.curves or hold.reason for hold in hidden.view.holds)
    for event in hidden.view.events:
        assert "liquid" not in event.text.lower()
        assert "vapor" not in event.text


def test_blind_replay_by_one_key_and_back(qtbot, look, log) -> None:
    _window, page = replayed(qtbot, look, log)
    page.replay.playing = False
    page._go(lambda: page.replay.seek(850.0))
    open_words = page.panel.prompt.headline.text()
    qtbot.keyClick(page, "b")
    qtbot.waitUntil(lambda: "What would" in page.panel.prompt.headline.text(), timeout=2000)
    assert page.panel.inside.text() == "Inside: hidden"
    qtbot.keyClick(page, "b")
    qtbot.waitUntil(lambda: page.panel.prompt.headline.text() == open_words, timeout=2000)


def test_two_vents_are_laid_over_each_other(qtbot, look, log, tmp_path) -> None:
    other = tmp_path / "second.csv"
    other.write_bytes(vent_log(700))
    _window, page = replayed(qtbot, look, log)
    page.compare(other)
    qtbot.waitUntil(page._plots.holds.isVisible, timeout=10_000)
    assert page._plots.holds._other[2] == "second"
    page.compare(tmp_path / "none.csv")
    assert "none.csv" in page.message.text()


def test_space_plays_and_pauses_once_wherever_the_focus_is(qtbot, look, log) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    window.show()
    window.activateWindow()
    page = window.replay(log, "vent.csv")
    qtbot.waitUntil(lambda: page.replay.index.done, timeout=20_000)
    for focused in (page.slider, page.play_key, page):
        focused.setFocus()
        for wanted in (False, True):
            qtbot.keyClick(focused, " ")
            assert page.replay.playing is wanted, focused
    page.keys[3].setFocus()  # a key that has the focus is pressed by space and by Enter
    page.replay.playing = False
    page.replay.seek(0.0)
    qtbot.keyClick(page.keys[3], " ")
    assert page.replay.position_s == 30.0
    qtbot.keyClick(page.keys[3], "\r")
    assert page.replay.position_s > 30.0
    assert not page.replay.playing
    for _ in range(3):  # quick strokes are not lost
        qtbot.keyClick(page, "p")
    assert page.replay.position_s == 0.0


def test_a_large_log_is_read_while_the_window_lives(qtbot, look, tmp_path, monkeypatch) -> None:
    monkeypatch.setattr("co2vent.window.main_window.LARGE_BYTES", 1000)
    path = tmp_path / "large.csv"
    path.write_bytes(vent_log(300))
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.show()
    window.open_log(path)
    assert "large.csv" in window.page.words.text()
    qtbot.waitUntil(lambda: isinstance(window.page, ReplayPage), timeout=10_000)
    window.go_to_start()
    path.write_text("no log at all\n" * 200)
    said = []
    monkeypatch.setattr(window, "complain", said.append)
    window.open_log(path)
    qtbot.waitUntil(lambda: bool(said), timeout=10_000)
    assert window.page is window.start_page
    window.open_log(tmp_path / "none.csv")
    assert len(said) == 2


def test_tour_is_given_once(qtbot, look) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    window.show()
    window.open_sample(sample_names()[0])
    page = window.page
    assert page.tour_label.text().startswith("1/")
    for _ in tour_steps():
        assert page.tour_label.isVisible()
        assert page.tour_key.height() >= look.sizes(page).target_px
        qtbot.mouseClick(page.tour_key, Qt.MouseButton.LeftButton)
    assert not page.tour_label.isVisible()
    assert not page.tour_key.isVisible()
    window.go_to_start()
    window.open_sample(sample_names()[0])
    assert not window.page.tour_label.isVisible()
    window.go_to_start()


@pytest.mark.parametrize("by_key", [True, False])
def test_the_tour_is_left_at_once(qtbot, look, by_key: bool) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    window.show()
    window.open_sample(sample_names()[0])
    page = window.page
    page.next_of_tour()
    with qtbot.assertNotEmitted(page.back):
        if by_key:
            page.uncover_or_leave()
        else:
            assert page.tour_end_key.height() >= look.sizes(page).target_px
            qtbot.mouseClick(page.tour_end_key, Qt.MouseButton.LeftButton)
    for part in (page.tour_label, page.tour_key, page.tour_end_key):
        assert not part.isVisible()
    with qtbot.waitSignal(page.back):
        page.uncover_or_leave()
    window.open_sample(sample_names()[0])
    assert not window.page.tour_label.isVisible(), "who left it is not led again"
    window.go_to_start()


@pytest.mark.parametrize("language", ["en", "de", "es", "nb"])
def test_the_tour_takes_room_from_the_pictures_and_not_from_the_words(
    qtbot, qapp, look, log, language: str
) -> None:
    install(qapp, language)
    try:
        _window, page = replayed(qtbot, look, log)
        page.replay.seek(page.replay.index.length_s)
        page.tick()
        page.layout().activate()
        panel = page.panel
        before = (panel.inside.size(), panel.power.size(), page.slider.height())
        page.next_of_tour()
        qtbot.wait(50)
        assert page.tour_label.isVisible()
        assert page.tour_label.fits
        assert (panel.inside.size(), panel.power.size(), page.slider.height()) == before
        assert panel.inside.font_px >= LEAST_WORDS_PX
        assert panel.power.font_px >= LEAST_WORDS_PX
    finally:
        install(qapp, "en")


def test_escape_closes_what_lies_over_a_replay_before_it_leaves(qtbot, look, log) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    window.show()
    window.activateWindow()
    page = window.replay(log, "vent.csv")
    qtbot.waitUntil(page.slider.hasFocus)  # the window takes key strokes
    qtbot.keyClick(page, Qt.Key.Key_M)
    assert page._more.isVisible()
    qtbot.keyClick(page, Qt.Key.Key_Escape)
    assert window.page is page
    assert not page._more.isVisible()
    qtbot.keyClick(page, Qt.Key.Key_Escape)
    assert window.page is window.start_page


def test_leaving_before_the_pictures_are_there_does_no_harm(qtbot, look, log) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.show()
    for _ in range(3):
        window.replay(log, "vent.csv")
        window.go_to_start()
    qtbot.wait(1700)  # longer than the pictures are waited for
    assert window.page is window.start_page


def test_what_a_record_lost_stands_on_the_screen(log, clock) -> None:
    lost = replace(log, rejections=(Rejection(3, "no pressure"), Rejection(9, "no pressure")))
    index = ReplayIndex(lost)
    index.start()
    assert index.wait(20.0)
    try:
        words = ReplayFeed(index, "vent.csv", clock, torn=True).frame().recording_words
        assert words == "rows lost: 2 · cut off at the end"
    finally:
        index.close()


def test_a_whole_record_says_nothing_of_losses(index, clock) -> None:
    assert ReplayFeed(index, "vent.csv", clock).frame().recording_words == ""


def test_a_sample_is_opened_by_its_digit(qtbot, look) -> None:
    look.kept["toured"] = True
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.show()
    window.activateWindow()
    window.open_samples()
    qtbot.waitUntil(window.isActiveWindow)
    keys = window.page.keys
    assert [key.text()[-3:] for key in keys] == [f"({digit})" for digit in "1234567890"]
    qtbot.keyClick(window.page, Qt.Key.Key_2)
    assert isinstance(window.page, ReplayPage)
    assert window.page.replay.frame().source == sample_names()[1]
    window.go_to_start()
