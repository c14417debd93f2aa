"""A recording that was torn is read for what it is, without being changed."""

from pathlib import Path

import pytest

from co2vent.errors import StoreError
from co2vent.readings.log_file import read_log
from co2vent.readings.reading import Reading
from co2vent.store.new_log import make_log
from co2vent.store.rows import checked_event, checked_row

HEAD = b"# altitude_m: 0\n# simulated: yes\nelapsed_s,pressure_bar_g,note,row_check\n"
ROWS = [checked_row(f"{n}.0,{19 - n / 100:.4f},") for n in range(4)]


def pressures(data: bytes, path: Path) -> list[float]:
    path.write_bytes(data)
    items = read_log(path).items()
    return [round(item.pressure_pa, 3) for item in items if isinstance(item, Reading)]


def test_a_log_torn_at_any_byte_is_read_up_to_its_last_whole_row(tmp_path: Path) -> None:
    path = tmp_path / "log.csv"
    body = ROWS[0] + checked_event("0.0 s prompt: vent") + ROWS[1] + ROWS[2] + ROWS[3]
    every = pressures(HEAD + body, path)
    assert len(every) == 4
    for cut in range(len(ROWS[0]), len(body)):
        for tail in (b"", b"\0" * 512):
            got = pressures(HEAD + body[:cut] + tail, path)
            whole = sum(
                body[:cut].find(row.rstrip(b"\n")) >= 0 for row in ROWS
            )  # a row that lacks only its line end passes its check
            assert got == every[:whole]


def test_a_row_with_one_bit_flipped_is_rejected_and_named(tmp_path: Path) -> None:
    path = tmp_path / "log.csv"
    body = b"".join(ROWS)
    start = len(ROWS[0]) + len(ROWS[1])
    for at in range(start, start + len(ROWS[2]) - 1):
        broken = bytearray(body)
        broken[at] ^= 0x01
        path.write_bytes(HEAD + bytes(broken))
        log = read_log(path)
        readings = [item for item in log.items() if isinstance(item, Reading)]
        assert len(readings) == 3, bytes(broken)
        assert [rejection.line for rejection in log.rejections] == [6]


def test_recording_to_a_torn_recording_names_a_free_file_beside_it(tmp_path: Path) -> None:
    path = tmp_path / "vent.csv"
    torn = HEAD + ROWS[0] + ROWS[1][:-4]
    path.write_bytes(torn)
    (tmp_path / "vent-2.csv").write_bytes(b"taken")
    with pytest.raises(StoreError, match=r"vent-3\.csv"):
        make_log(path)
    assert path.read_bytes() == torn
