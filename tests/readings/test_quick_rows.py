"""The quick rows of a log agree with the checked ones, but for what only a check can tell."""

import zlib

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent.errors import RefusedInputError
from co2vent.readings.log_file import decode_log
from co2vent.readings.log_writer import LogLayout, metadata_from_setup, metadata_lines
from co2vent.readings.quick_rows import HEAD_BYTES, PAD, QuickBlock, quick_form
from co2vent.readings.reading import Reading, Setup


def _quick(data: bytes, columns: list[str] | None = None) -> QuickBlock | None:
    form = quick_form(data[:HEAD_BYTES], columns)
    if form is None:
        return None
    end = data.rfind(b"\n") + 1
    buffer = np.frombuffer(bytes(PAD) + data[form.start : end], np.uint8).copy()
    return form.read(buffer, len(buffer))


def _recorded(readings: list[Reading], setup: Setup, **layout: object) -> bytes:
    form = LogLayout(setup, row_check=True, **layout)
    lines = [*metadata_lines(metadata_from_setup(setup)), form.header(), *map(form.row, readings)]
    return ("\n".join(lines) + "\n").encode()


def _row(text: str) -> bytes:
    return f"{text},{zlib.crc32(text.encode()):08x}\n".encode()


HEAD = b"# altitude_m: 120\nelapsed_s,pressure_bar_g,line_temperature_degC,vent_valve,row_check\n"


def _log(*rows: bytes, count: int = 400) -> bytes:
    """A recording of `count` plain rows with `rows` in its middle."""
    plain = [
        _row(f"{i / 10:.3f},{9.9 + i / 1000:.4f},{i / 100 - 2:.2f},open") for i in range(count)
    ]
    half = count // 2
    return HEAD + b"".join([*plain[:half], *rows, *plain[half:]])


def _agree(data: bytes) -> None:
    quick, checked = _quick(data), decode_log(data).readings
    assert quick is not None
    np.testing.assert_array_equal(quick.at_s, checked.at_s)
    np.testing.assert_array_equal(quick.pressure_pa, checked.pressure_pa.astype(np.float32))
    for name in ("line_temperature_k", "upper_temperature_k"):
        one, other = getattr(quick, name), getattr(checked, name)
        other = np.full(len(checked), np.nan) if other is None else other
        if one is None:
            assert np.isnan(other).all()
        else:
            np.testing.assert_array_equal(one, other.astype(np.float32))


@settings(deadline=None, max_examples=60)
@given(st.data())
def test_a_clean_recording_reads_the_same_both_ways(data: st.DataObject) -> None:
    setup = Setup(
        altitude_m=0.0,
        pressure_unit=data.draw(st.sampled_from(["bar_g", "psig", "kPa_a", "MPa_g"])),
        temperature_unit=data.draw(st.sampled_from(["degC", "degF", "K"])),
    )
    rows = data.draw(st.integers(1, 40))
    rng = np.random.default_rng(data.draw(st.integers(0, 2**31)))
    start_s = data.draw(st.sampled_from([0.0, 9.9, 99_999.5, 9_999_990.0]))
    step_s = data.draw(st.floats(0.001, 3.0))
    blank = data.draw(st.booleans())
    readings = [
        Reading(
            at_s=start_s + at * step_s,
            pressure_pa=float(rng.uniform(8e4, 1.2e7)),
            line_temperature_k=None if blank and rng.random() < 0.3 else rng.uniform(170, 320),
            upper_temperature_k=float(rng.uniform(170, 320)),
            vent_open=bool(rng.random() < 0.5),
            note="a word, or two" if rng.random() < 0.1 else None,
        )
        for at in range(rows)
    ]
    _agree(
        _recorded(
            readings, setup,
            quantities=("line_temperature_k", "upper_temperature_k", "vent_open", "note"),
        )
    )  # fmt: skip


@settings(deadline=None, max_examples=150)
@given(st.data())
def test_damage_of_any_kind_breaks_nothing(data: st.DataObject) -> None:
    damaged = bytearray(_log(count=60))
    for _ in range(data.draw(st.integers(1, 12))):
        place = data.draw(st.integers(len(HEAD) + 80, len(damaged) - 1))
        damaged[place : place + data.draw(st.integers(0, 30))] = data.draw(st.binary(max_size=20))
    quick = _quick(bytes(damaged))
    assert quick is None or len(quick.at_s) == len(quick.pressure_pa)


def test_event_lines_between_the_rows_are_passed_over() -> None:
    _agree(_log(b"# event: 2026-01-01T00:00:00Z 20.000 s note: a, b [00000000]\n", b"\n"))


def test_windows_line_ends_read_the_same() -> None:
    head = b"elapsed_s,pressure_bar_g,line_temperature_degC\r\n"
    rows = [f"{i / 10:.1f},{5 + i / 100:.2f},{-i / 10:.1f}\r\n".encode() for i in range(300)]
    _agree(head + b"".join(rows))


@pytest.mark.parametrize("word", ["OL", "nan", "inf", "--", "", "over_range", "1e5x", "1..5"])
def test_a_row_without_a_number_is_no_point_either_way(word: str) -> None:
    _agree(_log(_row(f"20.050,{word},1.00,open")))


def test_numbers_with_other_decimals_or_signs_are_read_one_by_one() -> None:
    _agree(_log(_row("19.95,7,+1.5,open"), _row("19.96,7.123456,-.5,open")))


def test_a_torn_last_line_is_no_point() -> None:
    whole = _log()
    torn = whole + b"40.000,1.2"
    quick = _quick(torn)
    assert quick is not None
    assert len(quick.at_s) == len(decode_log(torn).readings) == 400


def test_a_damaged_row_is_there_until_it_has_been_checked() -> None:
    damaged = _log(b"20.000,8.8888,1.00,open,00000000\n")
    quick = _quick(damaged)
    assert quick is not None
    assert len(quick.at_s) == 401
    assert len(decode_log(damaged).readings) == 400


def test_time_set_back_and_values_out_of_range_are_there_until_checked() -> None:
    data = _log(_row("5.000,7.0000,1.00,open"), _row("19.950,99999.0000,1.00,open"))
    quick, checked = _quick(data), decode_log(data).readings
    assert quick is not None
    assert len(quick.at_s) == len(checked) + 1 == 402
    assert (np.diff(quick.at_s) < 0).sum() == 1


@pytest.mark.parametrize(
    "data",
    [
        b"time,pressure_bar_g\n2026-01-01T00:00:00Z,5.0\n",  # clock times
        b"elapsed_s;pressure_bar_g\n0,0;5,0\n",  # decimal commas
        b"elapsed_s,note,pressure_bar_g\n0.0,\"a, b\",5.0\n",  # text before the pressure
        b"elapsed_s,pressure_bar_g\r0.0,5.0\r",  # a lone CR
        "elapsed_s,pressure_bar_g\n0.0,5.0\n".encode("utf-16"),
        b"no log at all\n" * 50,
        b"",
    ],
)  # fmt: skip
def test_another_form_is_left_to_the_checked_reader(data: bytes) -> None:
    assert _quick(data) is None


def test_decimals_that_change_all_the_time_are_left_to_the_checked_reader() -> None:
    rows = "".join(f"{i},{5 + i % 7 / 7:.{i % 5}f}\n" for i in range(500))
    assert _quick(b"elapsed_s,pressure_bar_g\n" + rows.encode()) is None


def test_other_columns_from_the_middle_on_are_left_to_the_checked_reader() -> None:
    assert _quick(_log(b"elapsed_s,line_temperature_degC,pressure_bar_g,row_check\n")) is None


def test_a_refused_log_is_refused_by_the_checked_reader_alone() -> None:
    data = b"elapsed_s,pressure_bar\n0.0,5.0\n"
    assert _quick(data) is None
    with pytest.raises(RefusedInputError):
        decode_log(data)
