"""`emulate`, `record`, `report` and the windows as other programs start them."""

import signal
import subprocess
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.contract.command import HEADER, assess_all, refused, run, wait_until, write_log

Start = Callable[..., subprocess.Popen[str]]


@pytest.mark.parametrize("number", [signal.SIGINT, signal.SIGTERM])
def test_a_signal_ends_a_recording_with_whole_lines(
    number: int, start: Start, tmp_path: Path
) -> None:
    growing = tmp_path / "growing.csv"
    growing.write_text(f"{HEADER}\n0.0,19.0,-20,closed\n1.0,19.01,-20,closed\n")
    recorder = start("record", "--source", "growing.csv", "--log", "new.csv")
    new = tmp_path / "new.csv"
    wait_until(lambda: new.exists() and "19.01" in new.read_text(), 10, "nothing recorded")
    assert recorder.stdin is not None
    recorder.stdin.write("note hose moved\n")
    recorder.stdin.flush()
    with growing.open("a") as file:
        file.write("2.0,19.02,-20,closed\n")
    wait_until(lambda: "hose moved" in new.read_text(), 10, "no note")
    recorder.send_signal(number)
    assert recorder.wait(10) == 0
    assert new.read_text().endswith("\n")


def test_standard_input_is_a_source(tmp_path: Path) -> None:
    rows = "".join(f"{n}.0,{19 + n / 100:.2f},-20,closed\n" for n in range(30))
    done = run("record", "--source", "-", "--log", "new.csv", cwd=tmp_path,
               stdin=f"# altitude_m: 0\n{HEADER}\n{rows}")  # fmt: skip
    assert done.returncode == 0, done.stderr
    assert assess_all(tmp_path, "new.csv")[0]["readings"] == 30
    # nothing is written over, and a source without a header and without names is refused
    refused(run("record", "--source", "-", "--log", "new.csv", cwd=tmp_path, stdin=rows))
    refused(run("record", "--source", "-", "--log", "bare.csv", cwd=tmp_path, stdin=rows))
