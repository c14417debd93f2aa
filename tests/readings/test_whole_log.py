"""Whole logs: the numpy path takes plain rows and gives exactly what the line decoder gives."""

import time
from datetime import datetime, timedelta

import pytest

from co2vent.readings import log_file
from co2vent.readings.log_decoder import LogDecoder
from co2vent.readings.log_file import decode_log
from co2vent.readings.log_writer import LogLayout
from co2vent.readings.reading import Reading, Setup


def a_log(rows: int, time_form: str, row_check: bool = False) -> bytes:
    layout = LogLayout(Setup(), time_column=time_form, extra=("prompt",), row_check=row_check)
    start = datetime(2026, 1, 2, 23, 59, 0)
    lines = [layout.header()]
    for i in range(rows):
        reading = Reading(i / 10, 6e5 + 37 * i, 230.0 + i % 7, None, 290.0, i % 40 < 20)
        moment = (start + timedelta(seconds=i / 10)).isoformat(timespec="milliseconds") + "+01:00"
        lines.append(layout.row(reading, ["hold"], moment if time_form == "time" else None))
    return ("\n".join(lines) + "\n").encode()


@pytest.mark.parametrize("time_form", ["elapsed_s", "time"])
@pytest.mark.parametrize("row_check", [True, False])
@pytest.mark.parametrize("line_end", [b"\n", b"\r\n"])
def test_plain_rows_go_the_fast_way_with_the_same_result(
    time_form: str, row_check: bool, line_end: bytes, monkeypatch: pytest.MonkeyPatch
) -> None:
    data = a_log(1500, time_form, row_check).replace(b"\n", line_end)
    monkeypatch.setattr(log_file, "PIECE_BYTES", 8000)
    taken = []
    real = log_file.read_clean_block

    def counting(*args: object) -> object:
        block = real(*args)  # type: ignore[arg-type]
        taken.append(block is not None)
        return block

    monkeypatch.setattr(log_file, "read_clean_block", counting)
    log = decode_log(data)
    decoder = LogDecoder()
    assert list(log.items()) == decoder.feed_bytes(data) + decoder.finish()
    assert len(log.readings) == 1500
    # Midnight passes in one block of the dated log; all others are plain.
    assert taken.count(False) <= (1 if time_form == "time" else 0)
    assert taken.count(True) > 5


def test_a_damaged_row_in_a_plain_log_is_found_by_its_check_sum() -> None:
    data = a_log(500, "elapsed_s", row_check=True)
    place = data.index(b"\n", 9000) + 3
    log = decode_log(data[:place] + bytes([data[place] ^ 1]) + data[place + 1 :])
    assert len(log.rejections) == 1
    assert len(log.readings) == 499


@pytest.mark.slow
def test_eight_hours_at_ten_hertz_are_read_in_well_under_a_second() -> None:
    data = a_log(288_000, "elapsed_s")
    start = time.perf_counter()
    log = decode_log(data)
    took_s = time.perf_counter() - start
    assert len(log.readings) == 288_000
    assert took_s < 1.5  # 0.2 to 0.3 s on one idle core of 2020s make; shared machines are slower
