"""Gauge sets that aren't there: what `emulate` prints, sends and repeats; read by `record`."""

import re
import subprocess
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.contract.command import (
    assess_all,
    call,
    refused,
    vent_rows,
    wait_until,
    write_log,
)

Start = Callable[..., subprocess.Popen[str]]
HEADER_AGAIN_S = 5.0  # the longest wait of a reader that joins late
STARTED_S = 2.0  # a process starts within this, on a busy machine too


def source_of(emulator: subprocess.Popen[str]) -> str:
    """The first line that an emulator prints: the SOURCE."""
    assert emulator.stdout is not None
    line = emulator.stdout.readline().strip()
    assert line, "no SOURCE on the first line"
    return line


def readings_in(path: Path) -> int:
    """Rows of readings that a recording holds up to now."""
    if not path.exists():
        return 0
    return sum(line[:1].isdigit() for line in path.read_text().splitlines())


def test_the_record_of_an_emulated_log_has_the_holds_of_the_log(
    start: Start, tmp_path: Path
) -> None:
    rows = vent_rows(step_s=3.0, hold_s=120)
    log = write_log(tmp_path / "log.csv", rows, altitude_m="120", section_volume_l="14.5")
    outlets = {"pty": "pty", "tcp": "tcp:0", "modbus": "modbus-tcp:0", "rtu": "modbus-rtu"}
    # all are there before the first is read: a reader waits for its port to come back, and one
    # whose emulator has ended would take the next one's pty of the same number
    emulators = {
        name: start("emulate", log.name, "--to", outlet, "--speed", 90)
        for name, outlet in outlets.items()
    }
    sources = {name: source_of(emulator) for name, emulator in emulators.items()}
    recorders, maps = {}, []
    for name, source in sources.items():
        if name == "tcp":
            assert 0 < int(source.rpartition(":")[2]) < 65_536
        if name in ("modbus", "rtu"):
            assert source.startswith("modbus-tcp://" if name == "modbus" else "modbus-rtu:/dev/")
            maps.append(Path(source.partition("map=")[2].partition("&")[0]))
            assert maps[-1].is_file()
            # a map of its own, for any other program too
            (tmp_path / f"{name}.toml").write_bytes(maps[-1].read_bytes())
            source = source.replace(str(maps[-1]), f"{name}.toml")
        recorders[name] = start("record", "--source", source, "--log", f"{name}.csv")
    for name, emulator in emulators.items():
        # the log has ended, and the readers had time to read it
        assert emulator.wait(60) == 0, name
    for name, recorder in recorders.items():
        recorder.terminate()
        out, err = recorder.communicate(timeout=30)
        assert recorder.returncode == 0, (name, err)
        assert " vent: " in out, name
        assert (tmp_path / f"{name}.csv").read_text().endswith("\n")
    *seen, old = assess_all(tmp_path, *(f"{name}.csv" for name in recorders), log.name)
    for new in seen:
        assert new["simulated"] is True, new["file"]  # a gauge that isn't there is never a real one
        assert new["ambient_pressure_assumed"] is False, new["file"]
        polled = new["file"] in (
            "modbus.csv",
            "rtu.csv",
        )  # in its own time: a row may be missed, none is made
        assert new["readings"] == old["readings"] or (
            polled and 0.8 * old["readings"] <= new["readings"] <= old["readings"]
        ), new["file"]
        assert [hold["number"] for hold in new["holds"]] == [h["number"] for h in old["holds"]]
        for one, other in zip(new["holds"], old["holds"], strict=True):
            assert one["charge"] == other["charge"]
            assert one["start_s"] == pytest.approx(other["start_s"], abs=5 if polled else 0.01)
            assert one["start_pressure_pa"] == pytest.approx(
                other["start_pressure_pa"], abs=5e4 if polled else 50
            )


def test_a_reader_that_joins_late_gets_header_and_metadata_within_5_s(
    start: Start, tmp_path: Path
) -> None:
    write_log(tmp_path / "log.csv", altitude_m="120", section_volume_l="14.5", insulated="no")
    words = ("--speed", 5, "--to")
    pty, tcp = (source_of(start("emulate", "log.csv", *words, to)) for to in ("pty", "tcp:0"))
    first = [
        start("record", "--source", source, "--log", f"first-{n}.csv")
        for n, source in enumerate((pty, tcp))
    ]
    for n in range(2):
        path = tmp_path / f"first-{n}.csv"
        wait_until(lambda path=path: readings_in(path) > 5, 20, "nothing recorded")
    first[0].terminate()  # one reader at a time on a serial line, any number on a socket
    assert first[0].wait(10) == 0
    late = [
        start("record", "--source", source, "--log", f"late-{n}.csv")
        for n, source in enumerate((f"{pty}?baud=9600", tcp))
    ]
    for n, recorder in enumerate(late):
        path = tmp_path / f"late-{n}.csv"
        wait_until(lambda path=path: readings_in(path) > 3, STARTED_S + HEADER_AGAIN_S, "no header")
        recorder.terminate()
        assert recorder.wait(10) == 0, recorder.communicate()
    assert first[1].poll() is None
    for seen in assess_all(tmp_path, "late-0.csv", "late-1.csv"):
        assert seen["readings"] > 3, seen["file"]
        assert seen["simulated"] is True, seen["file"]
        assert seen["ambient_pressure_assumed"] is False, seen["file"]
        assert seen["holds"][0]["start_s"] > 5, "the rows keep their own time"
        text = (tmp_path / seen["file"]).read_text()
        for line in ("# altitude_m: 120", "# section_volume_l: 14.5", "# insulated: no"):
            assert line in text, seen["file"]


SECTION = """
[section]
volume_l = 8.0
name = "strainer 4"
[charge]
temperature_c = -20.0
liquid_fraction = 0.2
[leaks]
leak_by_g_per_s = 0.1
[gauge]
unit = "psig"
full_scale = 870.0
"""


def test_scenarios_are_emulated_by_name_by_file_and_at_random(start: Start, tmp_path: Path) -> None:
    (tmp_path / "section.toml").write_text(SECTION)
    names = ("leak-by", "section.toml", "random:7")
    emulators = [start("emulate", name, "--to", "tcp:0", "--speed", 20) for name in names]
    recorders = []
    for n, emulator in enumerate(emulators):
        source = source_of(emulator)
        assert re.fullmatch(r"socket://127\.0\.0\.1:\d+", source)
        recorders.append(start("record", "--source", source, "--log", f"{n}.csv"))
    # a person's `open` there moves the valve of the section here
    for n, recorder in enumerate(recorders):
        path = tmp_path / f"{n}.csv"
        wait_until(lambda path=path: readings_in(path) > 20, 60, "nothing recorded")
        assert recorder.stdin is not None
        recorder.stdin.write("open\n")
        recorder.stdin.flush()
        wait_until(lambda path=path: ",open," in path.read_text(), 10, "the valve was not moved")
        recorder.terminate()
        assert recorder.wait(10) == 0
    logs = [f"{n}.csv" for n in range(len(names))]
    for seen in assess_all(tmp_path, *logs):
        assert seen["simulated"] is True
        assert seen["rejected"] == []
    assert "pressure_psig" in (tmp_path / "1.csv").read_text()
    assert "# section_name: strainer 4" in (tmp_path / "1.csv").read_text()


def test_the_map_is_found_wherever_temporary_files_are(start: Start, tmp_path: Path) -> None:
    odd = tmp_path / "a b+c&d %41"
    odd.mkdir()
    write_log(tmp_path / "log.csv")
    emulator = start("emulate", "log.csv", "--to", "modbus-tcp:0", env={"TMPDIR": str(odd)})
    source = source_of(emulator)
    recorder = start("record", "--source", source, "--log", "new.csv")
    # how long the first reading takes is the machine's affair
    wait_until(lambda: readings_in(tmp_path / "new.csv") > 0, 60, "nothing recorded")
    recorder.terminate()
    assert recorder.wait(10) == 0


def test_what_cannot_be_emulated_is_one_line_and_status_2(tmp_path: Path) -> None:
    write_log(tmp_path / "log.csv")
    (tmp_path / "bad.toml").write_text('[section]\nvolume = "much"\n')
    for words in (
        ("missing.csv",), ("no-such-exercise",), ("bad.toml",),
        ("log.csv", "--to", "tcp"), ("log.csv", "--to", "tcp:70000"), ("log.csv", "--speed", 0),
    ):  # fmt: skip
        refused(call("emulate", *words, cwd=tmp_path))
