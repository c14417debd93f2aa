"""Logs of other makers: read where the meaning is certain, refused where it isn't."""

from pathlib import Path

import pytest

from co2vent.errors import RefusedInputError
from co2vent.readings.log_decoder import LogDecoder
from co2vent.readings.log_file import LogFile, decode_log, read_log
from co2vent.readings.reading import Reading, Rejection

FOREIGN = Path(__file__).parents[1] / "data" / "foreign"
# NIST SP 811: 1 psi = 6894.757 Pa; ISO 2533: 101 325 Pa at sea level, 84 556 Pa at 1500 m.
PSI = 6894.757
SEA = 101_325.0


def the_log(name: str) -> LogFile:
    return read_log(FOREIGN / name)


def pressures_pa(log: LogFile) -> list[float]:
    return log.readings.pressure_pa.tolist()


def test_a_windows_1252_log_with_semicolons_and_decimal_commas_is_read() -> None:
    log = the_log("cp1252_semicolon_comma.csv")
    assert pressures_pa(log) == pytest.approx([19.02e5 + SEA, 19.01e5 + SEA])
    assert log.readings.at_s.tolist() == [0.0, 1.0]
    assert log.readings.line_temperature_k is not None
    assert log.readings.line_temperature_k[0] == pytest.approx(253.35)
    assert [r.over_range for r in log.rejections] == [True]
    assert log.rejections[0].line == 6


def test_a_byte_order_mark_and_crlf_don_t_disturb() -> None:
    log = the_log("bom_crlf_psig.csv")
    assert pressures_pa(log) == pytest.approx([275.9 * PSI + SEA, 276.0 * PSI + SEA], rel=1e-7)
    assert log.setup.pressure_unit == "psig"
    assert log.setup.temperature_unit == "degF"


def test_utf_16_with_tabs_is_read() -> None:
    log = the_log("utf16_tab.txt")
    assert pressures_pa(log) == pytest.approx([5.20e5 + SEA, 5.21e5 + SEA])
    assert log.readings.ambient_temperature_k is not None
    assert log.readings.at_s.tolist() == [0.0, 0.5]


def test_units_in_a_second_header_row_count() -> None:
    log = the_log("units_in_second_row.csv")
    assert pressures_pa(log) == pytest.approx([621.3e3, 621.9e3])
    assert log.readings.at_s.tolist() == [0.0, 1.0]


def test_date_and_time_in_two_columns_are_one_time() -> None:
    log = the_log("quoted_date_and_time.csv")
    assert pressures_pa(log) == pytest.approx([621.3e3, 621.4e3])
    assert log.readings.at_s.tolist() == [0.0, 0.5]


def test_a_repeated_header_is_skipped_and_time_running_back_starts_a_segment() -> None:
    log = the_log("restart_and_nul_tail.csv")
    assert log.readings.segment.tolist() == [0, 0, 1, 1]
    assert log.readings.notes == {2: "restarted"}
    assert log.rejections == ()


def test_zones_sentinels_and_the_zero_reading() -> None:
    log = the_log("zones_and_sentinels.csv")
    # 02:59:59+02:00 is 00:59:59 UTC; 02:00:00+01:00 is 01:00:00 UTC: one second later.
    assert log.readings.at_s.tolist() == [0.0, 1.0, 4.0]
    assert pressures_pa(log)[0] == pytest.approx((90 - 1) * PSI + 84_556, rel=1e-5)
    assert [(r.line, r.over_range) for r in log.rejections] == [(6, True), (7, True)]
    assert log.bad_cells == {"line_temperature_degF": 1}
    assert log.columns.ignored == ("battery",)


@pytest.mark.parametrize("path", sorted(FOREIGN.glob("*.[ct]*")), ids=lambda path: path.name)
def test_line_by_line_gives_what_the_whole_file_gives(path: Path) -> None:
    decoder = LogDecoder()
    items = []
    for byte in path.read_bytes():
        items += decoder.feed_bytes(bytes([byte]))
    items += decoder.finish()
    assert items == list(read_log(path).items())


@pytest.mark.parametrize(
    ("header", "why"),
    [
        ("elapsed_s,temperature", "no pressure column"),
        ("elapsed_s,line_temperature_degC", "no pressure column"),
        ("elapsed_s,pressure", "no unit"),
        ("elapsed_s,P", "no unit"),
        ("elapsed_s,pressure_bar", "gauge or absolute"),
        ("elapsed_s,Pressure (bar)", "gauge or absolute"),
        ("elapsed_s,Pressure gauge (bar)", "gauge or absolute"),
        ("elapsed_s,pressure_psi", "gauge or absolute"),
        ("elapsed_s,pressure_bar_g,pressure_psig", "two pressure columns"),
        ("elapsed_s,P1 (psig),P2 (psig)", "two pressure columns"),
        ("elapsed_s,P (bar g abs)", "both gauge and absolute"),
        ("elapsed_s,Suction pressure (psig)", "may not be the section's"),
        ("pressure_bar_g,line_temperature_degC", "no time column"),
        ("elapsed_s,pressure_mbar_g", "may not be|no unit"),
    ],
)
def test_a_header_that_isn_t_certain_is_refused(header: str, why: str) -> None:
    rows = "".join(f"{i},{20 + i},21\n" for i in range(3))
    with pytest.raises(RefusedInputError, match=why):
        decode_log(f"{header}\n{rows}".encode())


def test_a_log_without_readings_is_refused() -> None:
    with pytest.raises(RefusedInputError, match="no readings"):
        decode_log(b"elapsed_s,pressure_bar_g\n")
    with pytest.raises(RefusedInputError, match="line 2"):
        decode_log(b"elapsed_s,pressure_bar_g\n0,nan\n")
    with pytest.raises(RefusedInputError, match="no pressure column"):
        decode_log(b"")


def test_a_log_without_a_header_is_read_with_columns_named() -> None:
    log = decode_log(b"0;5,2\n1;5,3\n", columns=["elapsed_s", "pressure_bar_g"])
    assert pressures_pa(log) == pytest.approx([5.2e5 + SEA, 5.3e5 + SEA])
    other = decode_log(b"Zeit;Druck\n0;5,2\n1;5,3\n", columns=["elapsed_s", "pressure_bar_g"])
    assert pressures_pa(other) == pressures_pa(log)
    with pytest.raises(RefusedInputError, match="gauge or absolute"):
        decode_log(b"0;5,2\n", columns=["elapsed_s", "pressure_bar"])


def test_a_later_header_that_isn_t_understood_stops_the_rows_below_it() -> None:
    log = decode_log(b"time,pressure_bar_g\n10:00:00,5.2\ntime,pressure\n10:00:01,75\n")
    assert len(log.readings) == 1
    assert [r.line for r in log.rejections] == [3, 4]


def test_a_later_header_with_another_unit_counts_from_there() -> None:
    log = decode_log(b"elapsed_s,pressure_bar_g\n0,5.2\nelapsed_s,pressure_psig\n1,75.0\n")
    assert pressures_pa(log) == pytest.approx([5.2e5 + SEA, 75 * PSI + SEA], rel=1e-7)


def test_decimal_marks_are_never_mixed() -> None:
    log = decode_log(b"elapsed_s;pressure_kPa_a\n0;612,5\n1;1.234\n2;613,0\n")
    assert pressures_pa(log) == pytest.approx([612.5e3, 613e3])
    assert [r.line for r in log.rejections] == [3]
    log = decode_log(b'elapsed_s,pressure_psig\n0,90.5\n1,"1,234"\n')
    assert [r.line for r in log.rejections] == [3]


def test_live_rows_without_time_are_stamped_on_arrival() -> None:
    clock = iter((10.0, 11.5))
    decoder = LogDecoder(["pressure_psig"], stamp=lambda: next(clock))
    items = decoder.feed_bytes(b"75.0\nOL\n74.0\n")
    assert [type(item) for item in items] == [Reading, Rejection, Reading]
    assert [item.at_s for item in items if isinstance(item, Reading)] == [10.0, 11.5]


def test_the_valve_moves_in_a_row_without_a_pressure():
    """A logger that writes each move of the valve as a row of its own."""
    rows = ["0,19.0,closed", "1,19.0,", "1.5,,open", "2,18.0,", "3,17.0,", "3.5,,closed", "4,17,"]
    text = "\n".join(["elapsed_s,pressure_bar_g,vent_valve", *rows, ""])
    log = decode_log(text.encode())
    told = [reading.vent_open for reading in log.readings.readings()]
    assert told == [False, None, True, None, False]


@pytest.mark.parametrize("mark", ["1,902\t-19.8", "1.902\t-19,8"])
def test_two_decimal_marks_in_one_row_are_no_reading(mark):
    """A comma may part thousands: 1,902 kPa read as 1.9 would be a hundredth of a bar."""
    rows = [f"{k}\t{mark}" for k in range(3)]
    with pytest.raises(RefusedInputError, match="decimal mark"):
        decode_log(
            "\n".join(["elapsed_s\tpressure_kPa_g\tline_temperature_degC", *rows, ""]).encode()
        )
