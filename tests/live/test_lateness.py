"""Late readings are told from slow clocks."""

import pytest

from co2vent.live.lateness import LATE_S, Lateness


def test_readings_on_time_are_not_late_whatever_their_clock_shows() -> None:
    lateness = Lateness()
    for n in range(600):
        assert lateness.late_s(1e6 + n, 5.0 + n + 0.01 * (n % 3)) < 0.05


def test_a_backlog_is_late_until_it_has_caught_up() -> None:
    lateness = Lateness()
    for n in range(10):
        lateness.late_s(float(n), float(n))
    assert lateness.late_s(10.0, 20.0) == pytest.approx(10.0)
    assert lateness.late_s(19.5, 20.0) == pytest.approx(0.5)


@pytest.mark.parametrize("slow", [0.0001, 0.01])
def test_an_instrument_whose_clock_is_slow_is_not_late(slow: float) -> None:
    """A logger that counts rounds of one second and needs ten milliseconds more is 1 % slow."""
    lateness = Lateness()
    assert max(lateness.late_s(n * (1.0 - slow), float(n)) for n in range(3600)) < LATE_S


def test_an_accelerated_stream_is_not_late() -> None:
    lateness = Lateness()
    assert max(lateness.late_s(n * 1.0, n * 0.1) for n in range(3600)) == 0.0


def test_a_clock_that_was_set_starts_anew() -> None:
    lateness = Lateness()
    lateness.late_s(1000.0, 0.0)
    lateness.forget()
    assert lateness.late_s(0.0, 1.0) == 0.0
