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


@pytest.mark.parametrize("word", ["Transmitter", "Transducer", "Gauge"])
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
