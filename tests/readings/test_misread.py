"""What would be read with another meaning, and then reassure, is refused or left out."""

import pytest

from co2vent.errors import RefusedInputError
from co2vent.readings.log_file import decode_log
from co2vent.readings.metadata import build_setup


def log(header: str, *rows: str) -> bytes:
    return "\n".join((header, *rows, "")).encode()


def test_a_clock_of_two_fields_is_refused_and_says_what_to_write() -> None:
    """`05:30` as hours makes an elapsed time in minutes and seconds 60 times too long."""
    rows = [f"{s // 60:02d}:{s % 60:02d},6.2" for s in range(90)]
    with pytest.raises(RefusedInputError, match="hh:mm:ss"):
        decode_log(log("time,pressure_bar_g", *rows))


def test_a_clock_of_two_fields_after_a_date_is_a_clock() -> None:
    rows = [f"2026-01-31 05:{m:02d},6.2" for m in range(30)]
    assert decode_log(log("time,pressure_bar_g", *rows)).readings.at_s[-1] == 29 * 60.0


@pytest.mark.parametrize(
    "head",
    [
        "Time (mm:ss),Pressure (bar g)",
        "Time,Pressure\nmm:ss,bar g",
        "Time,Pressure\nmm:ss:ms,bar g",
        "Time,Pressure\nmm:ss:hh,bar g",
        "Time,Pressure\nmin:s,bar g",
    ],
)
def test_minutes_and_seconds_said_in_the_header_are_never_hours(head: str) -> None:
    """05:30:25 under mm:ss:hh is 5 min 30.25 s, not 5 h 30 min 25 s."""
    for cell in ("05:30", "05:30:25"):
        with pytest.raises(RefusedInputError, match="has no hours: write its times as hh:mm:ss"):
            decode_log(log(head, f"{cell},6.2", f"{cell},6.2"))


@pytest.mark.parametrize("head", ["Time,Pressure\nmm:ss,bar g", "Date,Time,Pressure\n,mm:ss,bar g"])
def test_minutes_and_seconds_are_not_hours_behind_a_date_either(head: str) -> None:
    dated = "2026-01-31," if head.startswith("Date") else "2026-01-31 "
    with pytest.raises(RefusedInputError):
        decode_log(log(head, f"{dated}05:30,6.2", f"{dated}05:31,6.2"))


@pytest.mark.parametrize(
    "head", ["Time (hh:mm:ss),Pressure (bar g)", "Time,Pressure\nhh:mm:ss,bar g"]
)
def test_hours_minutes_and_seconds_said_in_the_header_are_read(head: str) -> None:
    found = decode_log(log(head, "00:05:30,6.2", "00:05:31,6.2"))
    assert found.readings.at_s.tolist() == [0.0, 1.0]


@pytest.mark.parametrize("channel", ["(bar) A", "(bar) a", "[bar] G", "(bar)_A"])
def test_a_channel_letter_behind_the_unit_is_no_datum(channel: str) -> None:
    with pytest.raises(RefusedInputError, match="may not be the section's pressure"):
        decode_log(log(f"elapsed_s,Pressure {channel}", "0,6.2", "1,6.2"))


def test_a_sensor_on_the_line_is_a_clamp() -> None:
    found = decode_log(log("elapsed_s,Pressure (bar g),Line sensor temperature (degC)", "0,6,21"))
    assert next(iter(found.items())).line_temperature_k == pytest.approx(294.15)


@pytest.mark.parametrize("word", ["Transmitter", "Transducer", "Gauge", "Sensor"])
def test_a_temperature_of_the_electronics_is_no_clamp(word: str) -> None:
    found = decode_log(log(f"elapsed_s,Pressure (bar g),{word} temperature (degC)", "0,6.2,21.0"))
    assert next(iter(found.items())).line_temperature_k is None
    pipe = decode_log(log("elapsed_s,Pressure (bar g),Pipe temperature (degC)", "0,6.2,21.0"))
    assert next(iter(pipe.items())).line_temperature_k == pytest.approx(294.15)


def test_a_pressure_reduced_to_sea_level_contradicts_the_altitude() -> None:
    """Standard atmosphere (ISO 2533): 79.5 kPa at 2,000 m."""
    with pytest.raises(RefusedInputError, match=r"79\.5.*measured on site"):
        build_setup({"altitude_m": "2000", "ambient_pressure_kPa": "101.3"})
    assert build_setup({"altitude_m": "2000", "ambient_pressure_kPa": "78.0"}).altitude_m == 2000
