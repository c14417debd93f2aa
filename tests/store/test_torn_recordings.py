"""A recording that was torn is read for what it is, without being changed."""

import subprocess
import sys
from itertools import count
from pathlib import Path

import pytest

from co2vent.errors import RefusedInputError, StoreError
from co2vent.readings.log_file import read_log
from co2vent.readings.reading import Reading
from co2vent.store.new_log import make_log
from co2vent.store.recovery import MAX_LINE_BYTES, mended_copy, mended_name
from co2vent.store.rows import checked_event, checked_row, is_intact, torn_bytes

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
    with pytest.raises(StoreError, match=r"cut off \(\d+ bytes of its last row\).*vent-3\.csv"):
        make_log(path)
    assert path.read_bytes() == torn


NUMBERS = count()


def mended(data: bytes, folder: Path) -> tuple[bytes, int, int]:
    """Return the copy of a recording, the damaged lines and the torn bytes; check what holds."""
    number = next(NUMBERS)
    path, copy, again = (folder / f"{name}{number}.csv" for name in ("torn", "copy", "again"))
    path.write_bytes(data)
    damage = mended_copy(path, copy)
    made = copy.read_bytes()
    assert path.read_bytes() == data  # the recording itself is never changed
    assert made.endswith(b"\n")
    assert all(is_intact(line) for line in made.splitlines())
    assert damage.torn_bytes == torn_bytes(path)
    assert not mended_copy(copy, again).any  # mending what is mended changes nothing
    assert again.read_bytes() == made
    whole = [item for item in read_log(path).items() if isinstance(item, Reading)]
    copied = [item for item in read_log(copy).items() if isinstance(item, Reading)]
    # the reader gives up a last row that more than a line's length of zeros follows; the copy not
    assert copied[: len(whole)] == whole
    assert len(copied) - len(whole) <= (b"\0" * MAX_LINE_BYTES in data)
    for each in (path, copy, again):
        each.unlink()
    return made, damage.damaged_lines, damage.torn_bytes


BODY = ROWS[0] + ROWS[1] + checked_event("1.0 s prompt: vent") + ROWS[2] + ROWS[3]


@pytest.mark.parametrize("tail", [b"", b"\0" * 4096, b"\0" * 100_000, b"\xff\xfe", b"9.0,"])
@pytest.mark.parametrize("line_end", [b"\n", b"\r\n"])
def test_a_copy_of_a_log_torn_at_any_byte_has_every_whole_row_and_nothing_else(
    line_end: bytes, tail: bytes, tmp_path: Path
) -> None:
    sent = [line + b"\n" for line in (HEAD + BODY).splitlines()]
    whole = (HEAD + BODY).replace(b"\n", line_end)
    start = len((HEAD + ROWS[0]).replace(b"\n", line_end))
    for cut in range(start, len(whole) + 1):
        made, damaged, torn = mended(whole[:cut] + tail, tmp_path)
        lines = made.splitlines(keepends=True)
        said = [line for line in lines if b"mended copy of" in line]
        kept = [line for line in lines if line not in said]
        assert kept == sent[: len(kept)]
        ended = whole[:cut].count(b"\n")
        # a row that lacks its line end only is whole, unless something else stands after it
        whole_row = whole[cut:].startswith((line_end, b"\n")) and not tail.strip(b"\0")
        assert ended + whole_row <= len(kept) <= ended + 1
        assert len(said) == bool(damaged or torn)
        assert damaged == 0


def test_a_copy_leaves_out_a_row_with_any_byte_changed_and_says_so(tmp_path: Path) -> None:
    at_row = len(HEAD) + len(ROWS[0])
    for at in range(at_row, at_row + len(ROWS[1]) - 1):
        for byte in (0x00, 0x2C, 0x38, 0xFF):
            data = bytearray(HEAD + BODY)
            if data[at] == byte:
                continue
            data[at] = byte
            made, damaged, torn = mended(bytes(data), tmp_path)
            assert (damaged, torn) == (1, 0)
            assert ROWS[1] not in made
            assert made.startswith(HEAD + ROWS[0])
            assert b"1 row with a failed check sum" in made.splitlines()[-1]


def test_zeros_between_rows_and_an_endless_line_are_left_out(tmp_path: Path) -> None:
    made, damaged, torn = mended(HEAD + ROWS[0] + b"\0" * 50_000 + b"\n" + ROWS[1], tmp_path)
    assert (damaged, torn) == (0, 0)
    assert made == HEAD + ROWS[0] + ROWS[1]
    made, damaged, torn = mended(HEAD + ROWS[0] + b"7" * 50_000 + b"\n" + ROWS[1], tmp_path)
    assert (damaged, torn) == (1, 0)
    assert made.startswith(HEAD + ROWS[0] + ROWS[1])


def test_a_whole_recording_and_one_from_a_system_with_a_mark_at_the_start_copy_whole(
    tmp_path: Path,
) -> None:
    assert mended(HEAD + BODY, tmp_path) == (HEAD + BODY, 0, 0)
    assert mended(b"\xef\xbb\xbf" + HEAD + BODY, tmp_path) == (HEAD + BODY, 0, 0)


def test_what_is_no_recording_is_not_copied(tmp_path: Path) -> None:
    path = tmp_path / "foreign.csv"
    path.write_bytes(b"elapsed_s,pressure_bar_g\n0.0,19.02\n0.1,19.")
    with pytest.raises(RefusedInputError, match="not a recording"):
        mended_copy(path, tmp_path / "copy.csv")
    with pytest.raises(StoreError, match="check both names"):
        mended_copy(tmp_path / "none.csv", tmp_path / "copy.csv")
    assert not (tmp_path / "copy.csv").exists()


def test_a_copy_is_written_over_nothing_least_of_all_the_recording(tmp_path: Path) -> None:
    path = tmp_path / "vent.csv"
    path.write_bytes(HEAD + BODY[:-4])
    with pytest.raises(StoreError, match="a name of its own"):
        mended_copy(path, path)
    (tmp_path / "taken.csv").write_bytes(b"taken")
    with pytest.raises(StoreError, match=r"taken-2\.csv"):
        mended_copy(path, tmp_path / "taken.csv")
    assert (tmp_path / "taken.csv").read_bytes() == b"taken"
    assert path.read_bytes() == HEAD + BODY[:-4]
    assert mended_name(path) == tmp_path / "vent-mended.csv"


def command(*words: str, folder: Path) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "co2vent", *words],
        capture_output=True, text=True, cwd=folder, check=False, timeout=60,
    )  # fmt: skip


def test_the_commands_say_what_was_cut_off_and_copy_it(tmp_path: Path) -> None:
    damaged = bytearray(HEAD + BODY[:-4])
    damaged[len(HEAD) + 3] ^= 1
    (tmp_path / "vent.csv").write_bytes(damaged)
    said = f"the last row was cut off ({len(ROWS[3]) - 4} bytes); 1 row with a failed check sum"
    assessed = command("assess", "vent.csv", folder=tmp_path)
    assert assessed.returncode == 0
    assert said in assessed.stdout
    made = command("mend", "vent.csv", folder=tmp_path)
    assert (made.returncode, made.stderr) == (0, "")
    assert made.stdout == f"vent-mended.csv: 2 readings; {said}\n"
    again = command("assess", "vent-mended.csv", folder=tmp_path)
    assert "DAMAGED" not in again.stdout
    assert "2 readings, 0 rejected" in again.stdout


@pytest.mark.parametrize(
    ("name", "data", "said"),
    [
        ("foreign.csv", b"elapsed_s,pressure_bar_g\n0.0,19.02\n", "not a recording"),
        ("empty.csv", b"", "not a recording"),
        ("headless.csv", HEAD + ROWS[0][:5], "no readings"),
        ("none.csv", None, "no such file"),
    ],
)
def test_what_cannot_be_mended_is_one_line_and_leaves_nothing_behind(
    name: str, data: bytes | None, said: str, tmp_path: Path
) -> None:
    if data is not None:
        (tmp_path / name).write_bytes(data)
    before = sorted(tmp_path.iterdir())
    done = command("mend", name, folder=tmp_path)
    assert done.returncode == 2
    assert done.stdout == ""
    assert done.stderr.count("\n") == 1
    assert said in done.stderr
    assert sorted(tmp_path.iterdir()) == before
