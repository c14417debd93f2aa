"""The recording: what a kill, a full disk, a pulled stick and a second program do to it."""

import errno
import os
import shutil
import signal
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from co2vent.errors import StoreError
from co2vent.store import recorder as recorder_module
from co2vent.store.recorder import Recorder
from co2vent.store.recovery import mended_copy
from co2vent.store.rows import checked_event, checked_row, is_intact

HEADER = "elapsed_s,pressure_bar_g,row_check"


def started(path: Path) -> Recorder:
    recorder = Recorder(path)
    recorder.open()
    recorder.preamble("# altitude_m: 0")
    recorder.preamble(HEADER)
    return recorder


def until(condition: Callable[[], bool], within_s: float = 4.0) -> None:
    give_up_s = time.monotonic() + within_s
    while not condition():
        assert time.monotonic() < give_up_s
        time.sleep(0.01)


def rows_in(path: Path) -> list[str]:
    data = path.read_bytes()
    assert data.endswith(b"\n")
    assert all(is_intact(line) for line in data.splitlines())
    return [line.decode() for line in data.splitlines() if line[:1].isdigit()]


def test_every_line_is_there_in_order_with_its_check(tmp_path: Path) -> None:
    recorder = started(tmp_path / "log.csv")
    for n in range(1000):
        recorder.row(f"{n}.0,19.02")
    recorder.event("0.0 s prompt: vent")
    recorder.close()
    rows = rows_in(tmp_path / "log.csv")
    assert [row.partition(",")[0] for row in rows] == [f"{n}.0" for n in range(1000)]
    assert recorder.state.lines == 1003


def test_the_row_check_is_crc_32() -> None:
    # the check value of CRC-32/ISO-HDLC: "123456789" gives CBF43926 (catalogue of CRC algorithms)
    assert checked_row("123456789") == b"123456789,cbf43926\n"


def test_a_row_with_any_bit_changed_is_not_intact() -> None:
    for line in (checked_row("0.0,19.02,closed")[:-1], checked_event("0.0 s prompt: vent")[:-1]):
        for at in range(2, len(line)):
            for bit in range(8):
                broken = bytearray(line)
                broken[at] ^= 1 << bit
                # upper and lower case of the check's own letters say the same number, but are not
                # what was written
                assert not is_intact(bytes(broken)) or (line.startswith(b"#") and at < 9)


def test_an_existing_log_is_never_written_over(tmp_path: Path) -> None:
    path = tmp_path / "log.csv"
    path.write_text("0.0,19.02\n")
    with pytest.raises(StoreError, match="exists already"):
        Recorder(path).open()
    assert path.read_text() == "0.0,19.02\n"


def test_an_empty_file_that_is_there_will_do(tmp_path: Path) -> None:
    path = tmp_path / "log.csv"
    path.touch()
    started(path).close()
    assert path.stat().st_size


@pytest.mark.parametrize("where", ["missing/log.csv", "."])
def test_a_log_that_cannot_be_made_is_refused_at_the_start(where: str, tmp_path: Path) -> None:
    with pytest.raises(StoreError, match="choose another log file"):
        Recorder(tmp_path / where).open()


def test_two_programs_never_write_one_log(tmp_path: Path) -> None:
    path = tmp_path / "log.csv"
    first = Recorder(path)
    first.open()
    code = """
import sys
from pathlib import Path
from co2vent.store.recorder import Recorder
Recorder(Path(sys.argv[1])).open()
"""
    second = subprocess.run(
        [sys.executable, "-c", code, str(path)], capture_output=True, text=True, check=False
    )
    assert "another program is recording to it" in second.stderr
    first.preamble(HEADER)
    until(lambda: path.stat().st_size > 0)
    with pytest.raises(StoreError, match="a program is recording to it"):
        mended_copy(path, tmp_path / "copy.csv")
    first.close()
    assert not mended_copy(path, tmp_path / "copy.csv").any


WRITER = """
import sys, time
from pathlib import Path
from co2vent.store.recorder import Recorder
recorder = Recorder(Path(sys.argv[1]))
recorder.open()
recorder.preamble("elapsed_s,pressure_bar_g,row_check")
n = 0
while True:
    recorder.row(f"{n}.0,19.02")
    n += 1
    if n % 10 == 0:
        time.sleep(0.001)
        print(n, flush=True)
"""


def test_kill_9_loses_no_row_that_was_handed_over_a_moment_before(tmp_path: Path) -> None:
    """Kills while rows come as fast as they can; the lock of the dead is not in the way."""
    lost = []
    for n in range(50 if os.environ.get("CO2VENT_LONG_TESTS") else 6):
        path = tmp_path / f"log{n}.csv"
        writer = subprocess.Popen([sys.executable, "-c", WRITER, str(path)], stdout=subprocess.PIPE)
        assert writer.stdout is not None
        sure = 0
        while sure < 300 + 97 * n:
            sure = int(writer.stdout.readline())
        time.sleep(0.1)  # on a busy machine the writing thread has to wait for its turn
        writer.send_signal(signal.SIGKILL)
        handed_over = int((writer.stdout.read().splitlines() or [b"%d" % sure])[-1])
        writer.wait()
        writer.stdout.close()
        copy = tmp_path / f"copy{n}.csv"
        mended_copy(path, copy)
        rows = [row for row in rows_in(copy) if not row.startswith("#")]
        assert [int(float(row.partition(",")[0])) for row in rows] == list(range(len(rows)))
        assert len(rows) >= sure
        lost.append(max(0, handed_over - len(rows)))
        assert not mended_copy(copy, tmp_path / f"again{n}.csv").any
    print(f"{len(lost)} kills at some 5000 rows/s: at most {max(lost)} of the newest rows lost")


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Path]:
    folder = tmp_path / "stick"
    folder.mkdir()
    mounted = (
        shutil.which("mount")
        and os.geteuid() == 0
        and (
            subprocess.run(
                ["mount", "-t", "tmpfs", "-o", "size=256k", "tmpfs", str(folder)],
                capture_output=True,
                check=False,
            ).returncode
            == 0
        )
    )
    if not mounted:
        pytest.skip("a small file system needs the right to mount one")
    yield folder
    subprocess.run(["umount", "-l", str(folder)], check=True)


def test_a_full_disk_ends_on_a_whole_line_and_loses_nothing_that_fits_later(
    small_disk: Path,
) -> None:
    ballast = small_disk / "ballast"
    ballast.write_bytes(b"\0" * 150_000)
    path = small_disk / "log.csv"
    recorder = started(path)
    count = 6000
    for n in range(count):
        recorder.row(f"{n}.0,19.02,{'x' * 20}")
    until(lambda: not recorder.state.recording)
    assert "disk is full" in recorder.state.reason or "no space" in recorder.state.reason
    rows_in(path)  # asserts the whole last line
    ballast.unlink()
    for _ in range(3):  # not even now is there room for all; some more is written
        time.sleep(0.2)
    (small_disk / "more").write_bytes(b"")
    until(lambda: recorder.state.lines > 3000)
    subprocess.run(["mount", "-o", "remount,size=4m", str(small_disk)], check=True)
    until(lambda: recorder.state.recording)
    recorder.row("6000.0,19.02")
    recorder.close()
    numbers = [int(float(row.partition(",")[0])) for row in rows_in(path)]
    assert numbers == list(range(count + 1))
    assert b"recording resumed" in path.read_bytes()


def test_a_full_disk_without_a_mount(tmp_path: Path) -> None:
    """The same with the limit on a file's size: a short write, then an error (Linux, macOS)."""
    code = """
import resource, signal, sys, time
from pathlib import Path
from co2vent.store.recorder import Recorder
signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
resource.setrlimit(resource.RLIMIT_FSIZE, (20_000, resource.RLIM_INFINITY))
recorder = Recorder(Path(sys.argv[1]))
recorder.open()
recorder.preamble("elapsed_s,pressure_bar_g,row_check")
for n in range(2000):
    recorder.row(f"{n}.0,19.02")
while recorder.state.recording:
    time.sleep(0.01)
size = Path(sys.argv[1]).stat().st_size
print(recorder.state.reason, size <= 20_000, Path(sys.argv[1]).read_bytes().endswith(b"\\n"))
resource.setrlimit(resource.RLIMIT_FSIZE, (resource.RLIM_INFINITY, resource.RLIM_INFINITY))
while not recorder.state.recording:
    time.sleep(0.01)
recorder.close()
"""
    path = tmp_path / "log.csv"
    done = subprocess.run(
        [sys.executable, "-c", code, str(path)],
        capture_output=True,
        text=True,
        check=False,
        timeout=20,
    )
    assert done.stdout.strip().endswith("True True"), done
    numbers = [int(float(row.partition(",")[0])) for row in rows_in(path)]
    assert numbers == list(range(2000))


def test_a_log_that_is_removed_is_made_again_with_all_its_rows(tmp_path: Path) -> None:
    folder = tmp_path / "logs"
    folder.mkdir()
    path = folder / "log.csv"
    recorder = started(path)
    for n in range(50):
        recorder.row(f"{n}.0,19.02")
    until(lambda: recorder.state.lines == 52)
    shutil.rmtree(folder)
    until(lambda: not recorder.state.recording)
    assert recorder.state.reason
    for n in range(50, 100):
        recorder.row(f"{n}.0,19.02")
    folder.mkdir()
    until(lambda: recorder.state.recording)
    recorder.close()
    numbers = [int(float(row.partition(",")[0])) for row in rows_in(path)]
    assert numbers == list(range(100))


def test_a_pulled_stick_that_comes_back_goes_on_with_the_same_log(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The file's handle is dead for good; the file under its name has what was synced."""
    path = tmp_path / "log.csv"
    pulled = [False]
    real_write, real_stat = os.write, os.stat

    def write(descriptor: int, data: bytes) -> int:
        if pulled[0] and data[:1].isdigit():
            raise OSError(errno.EIO, "Input/output error")
        return real_write(descriptor, data)

    def stat(name: object, *args: object, **more: object) -> os.stat_result:
        if pulled[0] and name == path:
            raise FileNotFoundError(errno.ENOENT, "No such file or directory")
        return real_stat(name, *args, **more)  # type: ignore[arg-type]

    recorder = Recorder(path, write)
    recorder.open()
    recorder.preamble(HEADER)
    for n in range(50):
        recorder.row(f"{n}.0,19.02")
    until(lambda: recorder.state.lines == 51)
    pulled[0] = True
    monkeypatch.setattr(recorder_module.os, "stat", stat)
    for n in range(50, 80):
        recorder.row(f"{n}.0,19.02")
    until(lambda: not recorder.state.recording)
    assert "error" in recorder.state.reason
    # the stick comes back as another device: what was not synced may be gone
    copy = path.read_bytes()
    path.unlink()
    path.write_bytes(copy)
    pulled[0] = False
    until(lambda: recorder.state.recording)
    recorder.close()
    numbers = [int(float(row.partition(",")[0])) for row in rows_in(path)]
    assert numbers == list(range(80))


def test_a_stranger_under_the_logs_name_is_not_touched(tmp_path: Path) -> None:
    path = tmp_path / "log.csv"
    recorder = started(path)
    recorder.row("0.0,19.02")
    until(lambda: recorder.state.lines == 3)
    path.unlink()
    path.write_text(
        "somebody else's file, longer than what was recorded so far, by a good deal\n" * 5
    )
    before = path.read_text()
    until(lambda: not recorder.state.recording)
    time.sleep(1.2)
    recorder.row("1.0,19.02")
    recorder.close()
    assert path.read_text() == before
    assert recorder.state.waiting


def test_memory_stays_bounded_while_nothing_can_be_written(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(recorder_module, "MOST_WAITING_LINES", 100)
    folder = tmp_path / "logs"
    folder.mkdir()
    recorder = started(folder / "log.csv")
    until(lambda: recorder.state.lines == 2)
    shutil.rmtree(folder)
    until(lambda: not recorder.state.recording)
    for n in range(1000):
        recorder.row(f"{n}.0,19.02")
    until(lambda: recorder.state.given_up >= 900)
    assert recorder.state.waiting <= 100
    folder.mkdir()
    until(lambda: recorder.state.recording)
    recorder.close()
    text = (folder / "log.csv").read_text()
    assert f"{recorder.state.given_up} were lost" in text


def test_rows_are_on_disk_long_before_the_log_is_closed(tmp_path: Path) -> None:
    recorder = started(tmp_path / "log.csv")
    recorder.row("0.0,19.02")
    handed_over_s = time.monotonic()
    until(lambda: (tmp_path / "log.csv").read_bytes().count(b"\n") == 3)
    assert time.monotonic() - handed_over_s < 0.1
    recorder.close()


def test_a_read_only_disk_is_refused_at_the_start(small_disk: Path) -> None:
    subprocess.run(["mount", "-o", "remount,ro", str(small_disk)], check=True)
    with pytest.raises(StoreError, match="read-only file system; choose another log file"):
        Recorder(small_disk / "log.csv").open()


def test_a_disk_that_turns_read_only_is_said_and_recording_goes_on_when_it_can(
    tmp_path: Path,
) -> None:
    """As a file system does that finds itself damaged; told by the error of each write."""
    broken = False

    def write(descriptor: int, data: bytes) -> int:
        if broken:
            raise OSError(errno.EROFS, os.strerror(errno.EROFS))
        return os.write(descriptor, data)

    recorder = Recorder(tmp_path / "log.csv", write)
    recorder.open()
    recorder.preamble(HEADER)
    recorder.row("0.0,19.02")
    until(lambda: recorder.state.lines == 2)
    broken = True
    recorder.row("0.1,19.01")
    until(lambda: recorder.state.reason == "read-only file system")
    assert not recorder.state.recording
    broken = False
    until(lambda: recorder.state.recording)
    recorder.close()
    assert [row[:3] for row in rows_in(tmp_path / "log.csv")] == ["0.0", "0.1"]
