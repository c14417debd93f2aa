"""A simulated section as a gauge set: rows on time, and a valve that can be moved."""

import pytest

from co2vent.cli.emulate import _feed
from co2vent.errors import RefusedInputError
from co2vent.practice.exercises import exercise
from co2vent.readings.log_decoder import LogDecoder
from co2vent.readings.reading import Reading
from co2vent.wire.section_feed import SectionFeed


def test_the_rows_come_when_due_and_read_back_as_readings() -> None:
    one = exercise("more-liquid")
    feed = SectionFeed(one.scenario(), one.seed)
    assert "# simulated: yes" in feed.preamble
    rows = [*feed.rows_until(0.0), *feed.rows_until(4.5), *feed.rows_until(10.0)]
    assert len(rows) == 11
    decoder = LogDecoder()
    decoder.feed_text("".join(f"{line}\n" for line in feed.preamble))
    read = [item for row in rows for item in decoder.feed_text(f"{row.text}\n")]
    assert [item.at_s for item in read if isinstance(item, Reading)] == list(range(11))
    assert decoder.setup.simulated


def test_the_other_end_moves_the_valve() -> None:
    feed = SectionFeed(exercise("leak-by").scenario())
    closed = feed.rows_until(5.0)[-1].reading
    feed.set_valve(True)
    opened = feed.rows_until(15.0)[-1].reading
    assert closed is not None
    assert opened is not None
    assert opened.vent_open
    assert opened.pressure_pa < closed.pressure_pa - 1e5


def test_it_ends_when_the_exercise_is_over() -> None:
    feed = SectionFeed(exercise("leak-by").scenario(), longest_s=20.0)
    feed.rows_until(10.0)
    assert not feed.ended
    feed.rows_until(100.0)
    assert feed.ended


def test_emulate_takes_an_exercise_or_a_seed_and_names_them_when_it_does_not() -> None:
    assert isinstance(_feed("shelf", None), SectionFeed)
    assert isinstance(_feed("random:3", None), SectionFeed)
    with pytest.raises(RefusedInputError, match="leak-by"):
        _feed("no-such-exercise", None)
