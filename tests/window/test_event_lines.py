"""The list of events: one line for a run of lost rows, and nothing is called hold nought."""

import pytest
from PySide6.QtWidgets import QAbstractSlider

from co2vent.guidance.events import Event, EventKind
from co2vent.inference.wording import pressure_text
from co2vent.readings.log_file import decode_log
from co2vent.readings.reading import Setup
from co2vent.sentence import Sentence
from co2vent.window.event_lines import grouped, line_words
from co2vent.window.events_list import EventsList
from co2vent.window.languages import install
from co2vent.window.replay_index import ReplayIndex
from co2vent.window.sentences import speak_units


def _lost(line: int, at_s: float = 30.0) -> Event:
    text = Sentence("line {line}: {reason}", line=str(line), reason="pressure 'OL' is over range")
    return Event(at_s, EventKind.ROW_REJECTED, text)


def _voided(number: int, at_s: float = 30.0) -> Event:
    why = Sentence("the gauge was out of range")
    text = Sentence("hold {number}: {why}; its evidence starts anew", number=str(number), why=why)
    return Event(at_s, EventKind.HOLD_VOIDED, text)


START = Event(0.0, EventKind.HOLD_STARTED, "closed, before the first vent")
OPEN = Event(40.0, EventKind.VENT_STARTED, "vent open")


def _run(first: int, last: int) -> list[Event]:
    return [event for line in range(first, last + 1) for event in (_lost(line), _voided(0))]


def test_a_run_of_lost_rows_is_one_line() -> None:
    groups = grouped([START, *_run(104, 115), OPEN])
    assert len(groups) == 3
    assert line_words(groups[1]) == (
        "12 rows lost, lines 104 to 115: pressure 'OL' is over range; "
        "the evidence of the hold starts anew"
    )


def test_one_lost_row_and_another_event_keep_their_lines() -> None:
    events = [START, _lost(104), _voided(0), OPEN, _lost(110), _lost(111)]
    groups = grouped(events)
    assert [event for group in groups for event in group] == events
    assert [len(group) for group in groups] == [1, 1, 1, 1, 2]
    assert line_words(groups[1]).startswith("Line 104")
    assert line_words(groups[2]) == (
        "Before the vent: the gauge was out of range; the evidence starts anew"
    )
    assert line_words(grouped([_voided(2)])[0]).startswith("Hold 2: ")


def test_the_line_grows_while_rows_are_lost_and_shrinks_after_a_seek(qtbot) -> None:
    shown = EventsList()
    qtbot.addWidget(shown)
    for last in (104, 105, 115):
        shown.show_events((START, *_run(104, last)))
    assert shown.count() == 2
    assert "lines 104 to 115" in shown.item(1).text()
    shown.show_events((START, *_run(104, 115), OPEN))
    assert [shown.item(row).data(256) for row in range(shown.count())] == [0.0, 30.0, 40.0]
    shown.show_events((START, *_run(104, 110)))
    assert "lines 104 to 110" in shown.item(1).text()
    shown.show_events((START,))
    assert shown.count() == 1


def test_a_list_that_stands_is_said_again_in_other_units_and_another_language(qtbot, qapp) -> None:
    stop = Event(
        50.0, EventKind.PROMPT, Sentence("stop at {stop}", stop=pressure_text(620_000.0, Setup()))
    )
    shown = EventsList()
    qtbot.addWidget(shown)
    events = (START, Event(40.0, EventKind.VENT_STARTED, Sentence("vent open")), stop)
    shown.show_events(events)
    assert "5.19 bar g" in shown.item(2).text()
    speak_units("psig", "degF")
    shown.show_events(events)
    assert "75.2 psig" in shown.item(2).text()
    english = shown.item(1).text()
    install(qapp, "de")
    try:
        shown.show_events(events)
        assert "75,2 psig" in shown.item(2).text()
        assert shown.item(1).text() != english
    finally:
        install(qapp, "en")


def _newest_in_view(shown: EventsList) -> bool:
    box = shown.visualItemRect(shown.item(shown.count() - 1))
    return bool(box.top() < shown.viewport().height() and box.bottom() > 0)


@pytest.fixture
def full_list(qtbot):
    shown = EventsList()
    qtbot.addWidget(shown)
    shown.resize(500, 160)
    long = "vent open, and as many words after it as a reason has that wraps over several lines"
    shown.show_events(tuple(Event(float(at), EventKind.PROMPT, long) for at in range(40)))
    return shown


def test_the_newest_event_is_in_view_when_the_list_is_opened_or_resized(qtbot, full_list) -> None:
    full_list.show()
    qtbot.waitUntil(lambda: _newest_in_view(full_list))
    full_list.resize(180, 90)
    qtbot.wait(250)  # the lines wrap anew a moment after
    assert _newest_in_view(full_list)
    full_list.hide()
    full_list.resize(300, 300)
    full_list.show()
    qtbot.wait(250)
    assert _newest_in_view(full_list)


def test_a_list_that_was_scrolled_up_by_hand_stays_there(qtbot, full_list) -> None:
    full_list.show()
    qtbot.waitUntil(lambda: _newest_in_view(full_list))
    bar = full_list.verticalScrollBar()
    bar.triggerAction(QAbstractSlider.SliderAction.SliderToMinimum)
    full_list.resize(480, 150)
    qtbot.wait(250)
    assert bar.value() == 0
    full_list.show_events((*full_list._shown, OPEN))  # something new happened
    assert _newest_in_view(full_list)


def test_a_log_with_many_lost_rows_stays_readable() -> None:
    rows = ["elapsed_s,pressure_bar_g"]
    rows += [f"{at},{'OL' if 30 <= at < 60 else 19.0}" for at in range(90)]
    index = ReplayIndex(decode_log(("\n".join(rows) + "\n").encode()))
    index.start()
    assert index.wait(20.0)
    events = index.moments[-1].view.events
    index.close()
    lost = [event for event in events if event.kind is EventKind.ROW_REJECTED]
    assert len(lost) == 30
    words = [line_words(group) for group in grouped(events)]
    assert len([line for line in words if "rows lost" in line]) <= 2  # a prompt may lie between
    assert len(words) < 10
    assert not [line for line in words if "hold 0" in line.lower()]
