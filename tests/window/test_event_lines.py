"""The list of events: one line for a run of lost rows, and nothing is called hold nought."""

from co2vent.guidance.events import Event, EventKind
from co2vent.readings.log_file import decode_log
from co2vent.sentence import Sentence
from co2vent.window.event_lines import grouped, line_words
from co2vent.window.events_list import EventsList
from co2vent.window.replay_index import ReplayIndex


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
