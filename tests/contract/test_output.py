"""Where the output goes: full disks and closed pipes are said, devices are not replaced."""

import os
import stat
import subprocess
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.contract.command import COMMAND, refused, run, strict, write_log


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no device that is always full")
@pytest.mark.parametrize("words", [("assess", "log.csv", "--json"), ("plan", "--list-sizes")])
def test_output_that_cannot_be_written_is_one_line_and_status_2(
    words: tuple[str, ...], tmp_path: Path
) -> None:
    write_log(tmp_path / "log.csv")
    with Path("/dev/full").open("w") as full:
        done = subprocess.run(
            [*COMMAND, *words], cwd=tmp_path, stdout=full, stderr=subprocess.PIPE, text=True,
            timeout=30, check=False,
        )  # fmt: skip
    assert done.returncode == 2
    assert done.stderr.splitlines() == [
        "co2vent: the output can't be written: no space left on device; make room or choose "
        "another place"
    ]


def test_letters_that_the_terminal_lacks_are_escaped(tmp_path: Path) -> None:
    write_log(tmp_path / "ü.csv", section_name="Kühlraum 2, Ω")
    env = {"PYTHONIOENCODING": "ascii"}
    done = run("assess", "ü.csv", cwd=tmp_path, env=env)
    assert done.returncode == 0, done.stderr
    assert "\\xfc" in done.stdout
    seen = strict(run("assess", "ü.csv", "--json", cwd=tmp_path, env=env).stdout)
    assert seen["file"] == "ü.csv"
    refused(run("assess", "nö.csv", cwd=tmp_path, env=env))


def test_a_reader_that_goes_away_is_no_traceback(
    start: Callable[..., subprocess.Popen[str]], tmp_path: Path
) -> None:
    write_log(tmp_path / "log.csv")
    process = start("assess", *["log.csv"] * 3, "--json")
    assert process.stdout is not None
    assert process.stderr is not None
    process.stdout.close()
    assert process.wait(30) in (0, 1)
    assert process.stderr.read() == ""


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no named pipes")
def test_a_pipe_is_written_to_and_not_replaced(
    start: Callable[..., subprocess.Popen[str]], tmp_path: Path
) -> None:
    pipe = tmp_path / "truth"
    os.mkfifo(pipe)
    reader = os.open(pipe, os.O_RDONLY | os.O_NONBLOCK)
    try:
        process = start("simulate", "--for", 1, "--log", "log.csv", "--truth", "truth")
        assert process.wait(60) == 0
        text = os.read(reader, 65_536).decode()  # one minute: 4 kB
    finally:
        os.close(reader)
    assert text.startswith("elapsed_s,pressure_bar_a,liquid_kg,")
    assert stat.S_ISFIFO(pipe.stat().st_mode)
