"""A blind replay or class shows what the gauge shows, and nothing that gives the answer away."""

from collections.abc import Iterator
from importlib.resources import files

import pytest

from co2vent.guidance.events import Event, EventKind, Severity
from co2vent.inference.outcome import Bounds, Instruction
from co2vent.readings.log_file import decode_log
from co2vent.window.blind import blinded
from co2vent.window.frame import Frame, Mode
from co2vent.window.replay_feed import ReplayFeed
from co2vent.window.replay_index import ReplayIndex
from co2vent.window.samples_page import sample_names
from co2vent.window.shown import shown
from co2vent.window.text import UnitChoice
from co2vent.window.vent_page import VentPage
from co2vent.window.words import help_of
from tests.window.conftest import StandingFeed, a_hold, a_prompt, a_view

TELLING = (
    EventKind.PROMPT,
    EventKind.VERDICT,
    EventKind.HOLD_ENDED,
    EventKind.HOLD_VOIDED,
    EventKind.SHELF,
    EventKind.BELOW_TRIPLE_POINT,
    EventKind.PRESSURE_HIGH,
    EventKind.GAUGE_FAULT,
    EventKind.METAL_COLD,
    EventKind.NOTE,
)


def _straight_down() -> bytes:
    """A log of a vent that goes through the triple point without a hold."""
    lines = ["# simulated: yes", "elapsed_s,pressure_bar_g,line_temperature_degC,vent_valve"]
    pressure = 12.0
    for at_s in range(300):
        valve = "closed" if at_s < 30 or pressure < 3.0 else "open"
        pressure -= 0.05 if valve == "open" else 0.0
        lines.append(f"{at_s},{pressure:.3f},-40.0,{valve}")
    return ("\n".join(lines) + "\n").encode()


@pytest.fixture
def feed(clock) -> Iterator[ReplayFeed]:
    index = ReplayIndex(decode_log(_straight_down()))
    index.start()
    assert index.wait(20.0)
    yield ReplayFeed(index, "vent.csv", clock)
    index.close()


def test_no_event_of_a_conclusion_is_listed() -> None:
    events = tuple(Event(float(at), kind, kind.value) for at, kind in enumerate(EventKind))
    left = {event.kind for event in blinded(a_view(events=events)).events}
    assert left == set(EventKind) - set(TELLING)


def test_the_alarm_below_the_triple_point_is_hidden_while_blind(feed) -> None:
    feed.seek(1e9)
    assert any("ALARM" in event.text for event in feed.frame().view.events)
    feed.blind = True
    seen = feed.frame().view.events
    assert not [event for event in seen if "ALARM" in event.text or "vapour only" in event.text]
    assert {EventKind.VENT_STARTED, EventKind.VENT_CLOSED} <= {event.kind for event in seen}


def test_the_keys_stop_only_at_what_may_be_seen(feed) -> None:
    def stops() -> list[float]:
        feed.seek(0.0)
        found = []
        while feed.position_s < feed.index.known_until_s:
            feed.next_mark()
            found.append(feed.position_s)
        back = []
        while feed.position_s > 0.0:
            feed.previous_mark()
            back.append(feed.position_s)
        assert set(back) - {0.0} <= set(found)
        return found

    every = stops()
    feed.blind = True
    few = stops()
    moments = feed.index.moments
    for at_s in few[:-1]:  # the last is the end of the record
        before = feed.index.at(at_s - 0.5).view.events
        new = feed.index.at(at_s).view.events[len(before) :]
        assert any(event.kind not in TELLING for event in new), at_s
    told = [event.kind for event in moments[-1].view.events]
    assert EventKind.BELOW_TRIPLE_POINT in told
    assert len(few) < len(every)


def test_help_is_hidden_with_the_prompt(qtbot, look, clock) -> None:
    class BlindFeed(StandingFeed):
        blind = True

        def frame(self) -> Frame:
            view = blinded(self.view) if self.blind else self.view
            return Frame(view=view, rows=len(self.traces), age_s=0.1, blind=self.blind)

    prompt = a_prompt(Instruction.VENT_AGAIN, Severity.DO)
    feed = BlindFeed(a_view(prompt=prompt), Mode.REPLAY)
    page = VentPage(feed, look, clock)
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    page.tick()
    page.toggle_help()
    words = page._help.text()
    assert "hidden" in words
    assert words not in [help_of(instruction) for instruction in Instruction]
    feed.blind = False
    page.tick()
    assert page._help.text() == help_of(Instruction.VENT_AGAIN)


def test_the_rate_is_the_same_with_and_without_the_verdict() -> None:
    slope = Bounds(14.0 * 100 / 60, 13.0 * 100 / 60, 15.0 * 100 / 60)  # Pa/s
    hold = a_hold(slope_pa_per_s=slope)
    view = a_view(holds=(hold,), running_hold=hold, rate_pa_per_s=100.0 * 100 / 60)
    assert shown(view, 0.1, UnitChoice.BAR).rate == "rising 14 mbar/min"
    assert shown(blinded(view), 0.1, UnitChoice.BAR).rate == "rising 14 mbar/min"


def test_every_shipped_log_keeps_its_answer_while_blind() -> None:
    for name in sample_names()[:4]:
        log = files("co2vent.sample_logs").joinpath(name).read_bytes()
        index = ReplayIndex(decode_log(log))
        index.start()
        assert index.wait(60.0)
        for event in blinded(index.moments[-1].view).events:
            said = event.text.lower()
            assert not [word for word in ("alarm", "liquid", "vapour only") if word in said], said
        index.close()


def test_the_name_of_the_log_is_hidden_with_the_verdict(feed) -> None:
    feed.blind = True
    assert "vent.csv" not in feed.frame().source
    feed.blind = False
    assert feed.frame().source == "vent.csv"
