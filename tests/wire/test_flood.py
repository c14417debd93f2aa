"""A flood is thinned, a burst is not."""

from co2vent.wire.flood import MOST_ROWS_AT_ONCE, ROWS_PER_S, FloodGuard, newest_rows


def test_a_burst_is_no_flood() -> None:
    guard = FloodGuard(0.0)
    assert not guard.flooded(50_000, 0.5)  # a backlog, all at once
    assert not guard.flooded(10, 1.5)
    assert not guard.flooded(10, 2.6)
    assert not guard.flooded(10, 3.7)


def test_rows_that_come_too_fast_for_seconds_are_a_flood_until_they_do_not() -> None:
    guard = FloodGuard(0.0)
    seen = [guard.flooded(ROWS_PER_S // 5, n / 10) for n in range(1, 40)]
    assert not any(seen[:15])
    assert all(seen[25:])
    assert not [guard.flooded(1, 4.0 + n / 10) for n in range(40)][-1]


def test_of_a_flood_the_newest_rows_and_every_header_are_kept() -> None:
    rows = [f"{n}.0,19.02\n".encode() for n in range(1000)]
    text = b"# altitude_m: 120\nelapsed_s,pressure_bar_g\n" + b"".join(rows)
    kept, left_out = newest_rows(text)
    lines = kept.splitlines(keepends=True)
    assert lines[:2] == [b"# altitude_m: 120\n", b"elapsed_s,pressure_bar_g\n"]
    assert lines[2:] == rows[-MOST_ROWS_AT_ONCE:]
    assert left_out == 1000 - MOST_ROWS_AT_ONCE
    assert newest_rows(kept[:50]) == (kept[:50], 0)
