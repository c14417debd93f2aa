"""Alarms latch, do not chatter, and cannot be put aside (ideas of IEC 62682, from memory)."""

import random

from co2vent.guidance.events import Severity
from co2vent.inference.outcome import Charge, Instruction
from co2vent.window.alarms import SILENCE_S, AlarmBook, AlarmKind, conditions
from tests.window.conftest import TRIPLE_PA, a_hold, a_prompt, a_view

DRY_ICE = {AlarmKind.DRY_ICE}


def raised(book: AlarmBook, standing: set[AlarmKind], start_s: float, seconds: float) -> int:
    count = 0
    for step in range(int(seconds * 10)):
        count += len(book.update(standing, start_s + step / 10.0))
    return count


def test_there_are_at_most_ten() -> None:
    assert len(AlarmKind) <= 10


def test_an_alarm_stays_until_acknowledged_and_gone() -> None:
    book = AlarmBook()
    assert raised(book, DRY_ICE, 0.0, 2.0) == 1
    raised(book, set(), 2.0, 60.0)
    assert [alarm.kind for alarm in book.standing] == [AlarmKind.DRY_ICE]
    assert not book.standing[0].present
    book.acknowledge()
    assert book.standing == ()


def test_acknowledging_does_not_clear_a_condition_that_lasts() -> None:
    book = AlarmBook()
    raised(book, DRY_ICE, 0.0, 2.0)
    assert book.acknowledge() == (AlarmKind.DRY_ICE,)
    raised(book, DRY_ICE, 2.0, 5.0)
    assert book.standing[0].present
    assert book.unacknowledged == ()
    raised(book, set(), 7.0, 10.0)
    assert book.standing == ()


def test_an_alarm_that_returns_must_be_acknowledged_again() -> None:
    book = AlarmBook()
    raised(book, DRY_ICE, 0.0, 2.0)
    raised(book, set(), 2.0, 10.0)
    assert raised(book, DRY_ICE, 12.0, 2.0) == 1
    assert len(book.unacknowledged) == 1


def test_silence_runs_out_and_a_new_alarm_ends_it() -> None:
    book = AlarmBook()
    raised(book, DRY_ICE, 0.0, 2.0)
    book.silence(10.0)
    assert 0 < SILENCE_S <= 120.0
    assert book.silent_left_s(10.0) == SILENCE_S
    assert book.silent_left_s(10.0 + SILENCE_S) == 0.0
    book.silence(20.0)
    raised(book, DRY_ICE | {AlarmKind.NO_DATA}, 21.0, 2.0)
    assert book.silent_left_s(23.0) == 0.0


def test_nothing_can_be_shelved() -> None:
    assert not [name for name in dir(AlarmBook) if "shelv" in name or "suppress" in name]


def test_noise_at_a_limit_gives_at_most_one_alarm_a_minute() -> None:
    book, noise = AlarmBook(), random.Random(5)
    count = 0
    for step in range(600):
        standing = DRY_ICE if noise.gauss(0.0, 1.0) > 0 else set()
        count += len(book.update(standing, step / 10.0))
    assert count <= 1


def test_a_single_reading_raises_nothing() -> None:
    book = AlarmBook()
    book.update(DRY_ICE, 0.0)
    book.update(set(), 0.1)
    assert raised(book, set(), 0.2, 5.0) == 0


def test_conditions_from_the_view() -> None:
    below = a_view(TRIPLE_PA - 10_000.0)
    assert AlarmKind.BELOW_TRIPLE_POINT in conditions(below, stale=False)
    cleared = a_view(TRIPLE_PA - 10_000.0, vapor_only_since_s=100.0)
    assert AlarmKind.BELOW_TRIPLE_POINT not in conditions(cleared, stale=False)
    ice = a_hold(charge=Charge.SOLID_PRESENT)
    assert AlarmKind.DRY_ICE in conditions(a_view(holds=(ice,), running_hold=ice), stale=False)
    high = a_view(prompt=a_prompt(Instruction.VENT_NOW, Severity.DANGER))
    assert conditions(high, stale=False) == {AlarmKind.PRESSURE_HIGH}
    assert conditions(high, stale=True) == {AlarmKind.NO_DATA}
    assert AlarmKind.NOT_RECORDING in conditions(a_view(), stale=False, not_recording=True)
    assert conditions(a_view(), stale=False) == set()
