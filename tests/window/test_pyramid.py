"""The reduced trace shows every extreme and every gap, whatever the length."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent.readings.reading import Reading
from co2vent.window.pyramid import Pyramid, reduced
from co2vent.window.traces import Traces

NO_GAPS = np.empty(0, np.int64)


def _pyramid(column: np.ndarray) -> Pyramid:
    pyramid = Pyramid()
    pyramid.extend(column)
    return pyramid


@settings(deadline=None, max_examples=60)
@given(
    st.integers(1, 60_000), st.integers(0, 2**31), st.integers(50, 2000),
    st.floats(0.0, 1.0), st.floats(0.0, 1.0),
)  # fmt: skip
def test_extremes_in_the_window_are_kept(rows, seed, most, one, other) -> None:
    rng = np.random.default_rng(seed)
    column = rng.normal(size=rows).cumsum().astype(np.float32)
    first, last = sorted((int(one * rows), int(other * rows)))
    at_s = np.arange(rows, dtype=float)
    time, value = reduced(at_s, column, _pyramid(column), NO_GAPS, (first, last), most)
    part = column[first:last]
    if part.size:
        assert value.max() >= part.max()
        assert value.min() <= part.min()
        assert (np.diff(time) >= 0).all()
        assert time.size <= 8 * most + 64


def test_nothing_later_than_the_last_row_is_shown() -> None:
    column = np.zeros(100_000, np.float32)
    column[50_000:] = 1e6  # the future
    at_s = np.arange(column.size, dtype=float)
    _time, value = reduced(at_s, column, _pyramid(column), NO_GAPS, (0, 50_000), 300)
    assert value.max() == 0.0


def test_rows_that_come_later_give_the_same_levels() -> None:
    column = np.random.default_rng(3).normal(size=50_000).astype(np.float32)
    once, bit_by_bit = _pyramid(column), Pyramid()
    for end in range(777, column.size, 777):
        bit_by_bit.extend(column[:end])
    bit_by_bit.extend(column)
    for size in (100, 400, 1000):
        a, b = once.bins(0, 49_000, size), bit_by_bit.bins(0, 49_000, size)
        assert a is not None
        assert b is not None
        assert a[0] == b[0]
        np.testing.assert_array_equal(a[1], b[1])
        np.testing.assert_array_equal(a[2], b[2])


def test_a_gap_stays_a_gap_at_every_zoom() -> None:
    traces = Traces()
    for at in range(20_000):
        traces.append(Reading(float(at if at < 10_000 else at + 600), 6e5))
    for most in (100, 500, 50_000):
        time, value = traces.points("pressure", len(traces), (0.0, 30_000.0), most)
        inside = np.isnan(value)
        assert inside.any(), most
        assert 9_900 <= time[inside][0] <= 10_700


@pytest.mark.parametrize("rows", [0, 1, 2])
def test_hardly_any_rows(rows: int) -> None:
    traces = Traces()
    for at in range(rows):
        traces.append(Reading(float(at), 6e5))
    time, _value = traces.points("pressure", rows, (-10.0, 10.0), 300)
    assert time.size == rows


def test_a_record_whose_time_goes_back_is_drawn_whole() -> None:
    traces = Traces()
    for at in range(100):
        traces.append(Reading(float(at), 6e5))
    for at in range(50):
        traces.append(Reading(float(at), 7e5, segment=1))
    _time, value = traces.points("pressure", len(traces), (0.0, 200.0), 300)
    assert np.isfinite(value).sum() == 150
