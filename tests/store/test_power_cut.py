"""What is left after the power goes: the disk as it is at that moment, mounted anew."""

import os
import shutil
import subprocess
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from co2vent.store.recorder import Recorder
from co2vent.store.recovery import mended_copy
from co2vent.store.rows import is_intact

PROMISE_S = 1.5  # rows of the last second are synced each second; half a second of grace


def succeeds(*command: str) -> bool:
    return subprocess.run(command, capture_output=True, check=False).returncode == 0


@pytest.fixture
def disk(tmp_path: Path) -> Iterator[tuple[Path, Path]]:
    """An ext4 file system in a file: (mounted folder, the file behind it)."""
    image, folder = tmp_path / "disk.img", tmp_path / "disk"
    folder.mkdir()
    with image.open("wb") as file:
        file.truncate(32 << 20)
    if (
        os.geteuid() != 0
        or shutil.which("mkfs.ext4") is None
        or not succeeds("mkfs.ext4", "-q", str(image))
        or not succeeds("mount", "-o", "loop", str(image), str(folder))
    ):
        pytest.skip("a disk in a file needs mkfs.ext4 and the right to mount")
    yield folder, image
    succeeds("umount", "-l", str(folder))


@pytest.mark.slow
def test_a_power_cut_costs_a_second_and_a_half_at_most(
    disk: tuple[Path, Path], tmp_path: Path
) -> None:
    folder, image = disk
    recorder = Recorder(folder / "log.csv")
    recorder.open()
    recorder.preamble("elapsed_s,pressure_bar_g,row_check")
    started_s = time.monotonic()
    n = 0
    while time.monotonic() - started_s < 4.6:
        recorder.row(f"{time.monotonic() - started_s:.3f},19.02")
        n += 1
        time.sleep(0.01)
    cut_s = time.monotonic() - started_s
    shutil.copyfile(image, tmp_path / "cut.img")  # what had reached the disk
    recorder.close()
    after = tmp_path / "after"
    after.mkdir()
    assert succeeds("mount", "-o", "loop", str(tmp_path / "cut.img"), str(after))
    try:
        damage = mended_copy(after / "log.csv", tmp_path / "mended.csv")
        lines = (tmp_path / "mended.csv").read_bytes().splitlines()
        assert all(is_intact(line) for line in lines)
        assert damage.damaged_lines == 0
        last_s = float([line for line in lines if line[:1].isdigit()][-1].partition(b",")[0])
        print(f"lost {cut_s - last_s:.2f} s of {cut_s:.1f} s, {len(lines)} lines of {n} kept")
        assert cut_s - last_s <= PROMISE_S
    finally:
        succeeds("umount", "-l", str(after))
