"""`record` and `watch` on sources without an emulator: words of a person, options, streams."""

import contextlib
import itertools
import signal
import socket
import subprocess
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from tests.contract.command import HEADER, assess, assess_all, refused, run, wait_until

Start = Callable[..., subprocess.Popen[str]]
# every metadata key as an option
OPTIONS = {
    "section_volume_l": "14.5", "gauge_full_scale": "40 bar_g", "gauge_accuracy_percent": "1.6",
    "zero_reading": "-0.05 bar_g", "relief_pressure": "52 bar_g", "section_max_pressure":
    "60 bar_g", "metal_minimum_temperature": "-29 degC", "vent_bore_mm": "8", "gas": "nitrogen",
    "insulated": "yes", "section_name": "strainer 3", "simulated": "yes",
}  # fmt: skip
ROWS = "".join(f"{n},{19 + n % 3 / 100:.2f},-20\n" for n in range(30))
NAMES = "elapsed_s,pressure_bar_g,line_temperature_degC"


def words_of(options: dict[str, str]) -> list[str]:
    # with `=`, as a value may begin with a minus
    return [f"--{key.replace('_', '-')}={value}" for key, value in options.items()]


def cells(path: Path, column: str) -> list[str]:
    """One column of a recording."""
    lines = [line for line in path.read_text().splitlines() if not line.startswith("#")]
    place = lines[0].split(",").index(column)
    return [line.split(",")[place] for line in lines[1:]]


@pytest.fixture
def gauge() -> Iterator[socket.socket]:
    """A gauge server; a test speaks for it."""
    with socket.create_server(("127.0.0.1", 0)) as server:
        server.settimeout(20)
        yield server


def test_open_closed_and_notes_on_standard_input_go_into_the_record(
    gauge: socket.socket, start: Start, tmp_path: Path
) -> None:
    source = f"socket://127.0.0.1:{gauge.getsockname()[1]}"
    recorder = start("record", "--source", source, "--log", "new.csv")
    client, _ = gauge.accept()
    log = tmp_path / "new.csv"
    with client:
        client.sendall(b"# section_volume_l: 14.5\npressure_bar_g\n")
        assert recorder.stdin is not None
        for said, pressure, seen in (
            ("open", "18.91", ",open,"), ("note frost, low point", "18.52", "frost, low point"),
            # "opened" is not a word of the list: said, never taken for `open`
            ("opened\nclosed", "18.53", ",closed,"),
        ):  # fmt: skip
            recorder.stdin.write(f"{said}\n")
            recorder.stdin.flush()

            def is_in(pressure: str = pressure, seen: str = seen) -> bool:
                # no telling when the word is heard: rows come until it shows
                client.sendall(f"{pressure}\n".encode())
                return log.exists() and seen in log.read_text()

            wait_until(is_in, 20, f"{said} is not in the record")
        recorder.terminate()
        out, err = recorder.communicate(timeout=10)
    assert recorder.returncode == 0
    assert "keep_holding" in out
    assert "not understood: 'opened'" in err
    valve = [word for word in cells(log, "vent_valve") if word]
    assert valve == sorted(valve, reverse=True)  # open, then closed
    assert set(valve) == {"open", "closed"}
    stamps = [float(at) for at in cells(log, "elapsed_s")]
    assert stamps == sorted(stamps), "rows without a time are stamped on arrival"
    seen = assess(tmp_path, "new.csv")
    assert [hold["number"] for hold in seen["holds"]][-1] == 1
    assert any(event["kind"] == "note" for event in seen["events"])


def test_words_are_rows_where_standard_input_is_the_source(tmp_path: Path) -> None:
    text = f"# altitude_m: 700\n{NAMES}\n0,19,-20\n1,19,-20\nopen\n2,18.9,-20\nnote x\n3,18.9,-20\n"
    done = run("record", "--source", "-", "--log", "new.csv", cwd=tmp_path, stdin=text)
    assert done.returncode == 0, done.stderr
    assert not any(cells(tmp_path / "new.csv", "vent_valve"))
    assert not any(cells(tmp_path / "new.csv", "note"))
    seen = assess(tmp_path, "new.csv")
    assert seen["readings"] == 4
    assert seen["ambient_pressure_assumed"] is False
    assert "rejected" in (tmp_path / "new.csv").read_text()


@pytest.mark.parametrize("air", [("altitude_m", "120"), ("ambient_pressure_kPa", "99.5")])
def test_record_takes_every_metadata_key_as_an_option_and_as_a_line(
    air: tuple[str, str], tmp_path: Path
) -> None:
    options = {**OPTIONS, air[0]: air[1]}
    lines = "".join(f"# {key}: {value}\n" for key, value in options.items())
    for name, words, text in (
        ("option.csv", words_of(options), f"{NAMES}\n{ROWS}"),
        ("line.csv", [], f"{lines}{NAMES}\n{ROWS}"),
        ("both.csv", words_of(options), f"# insulated: no\n# gas: co2\n{NAMES}\n{ROWS}"),
    ):
        done = run("record", "--source", "-", "--log", name, *words, cwd=tmp_path, stdin=text)
        assert done.returncode == 0, done.stderr
    (tmp_path / "plain.csv").write_text(f"{NAMES}\n{ROWS}")
    expected = assess(tmp_path, "plain.csv", *words_of(options))
    for seen in assess_all(tmp_path, "option.csv", "line.csv", "both.csv"):
        for key in ("holds", "stop_pressure_pa_gauge", "ambient_pressure_pa", "simulated", "final"):
            assert seen[key] == expected[key], (seen["file"], key)
        text = (tmp_path / seen["file"]).read_text()
        for key in options:
            assert f"# {key}: " in text, (seen["file"], key)


def test_watch_takes_the_same_options_and_records(start: Start, tmp_path: Path) -> None:
    (tmp_path / "growing.csv").write_text(f"{NAMES}\n{ROWS}")
    words = words_of({**OPTIONS, "altitude_m": "120"})
    window = start(
        "watch", "--source", "growing.csv", "--log", "new.csv", *words,
        env={"QT_QPA_PLATFORM": "offscreen"},
    )  # fmt: skip
    log = tmp_path / "new.csv"
    wait_until(lambda: log.exists() and "\n29" in log.read_text(), 30, "nothing recorded")
    with (tmp_path / "growing.csv").open("a") as file:
        file.write("30,19.05,-20\n")
    wait_until(lambda: "19.05" in log.read_text(), 10, "the file grew, the record did not")
    window.terminate()
    assert window.wait(15) == 0
    text = log.read_text()
    assert text.endswith("\n")
    for key in OPTIONS:
        assert f"# {key}: " in text, key
    assert assess(tmp_path, "new.csv")["readings"] == 31


def test_columns_name_a_stream_without_a_header_or_with_another(tmp_path: Path) -> None:
    for n, text in enumerate((f"# altitude_m: 0\n{ROWS}", f"t,p,T\n{ROWS}")):
        done = run("record", "--source", "-", "--log", f"{n}.csv", "--columns", NAMES,
                   cwd=tmp_path, stdin=text)  # fmt: skip
        assert done.returncode == 0, done.stderr
        assert assess(tmp_path, f"{n}.csv")["readings"] == 30


def test_record_says_each_prompt_as_a_line(tmp_path: Path) -> None:
    rows = "".join(f"{n},{19 - max(0, n - 60) / 10:.1f},{'closed' if n < 60 else 'open'}\n"
                   for n in range(200))  # fmt: skip
    done = run("record", "--source", "-", "--log", "new.csv", cwd=tmp_path,
               stdin=f"elapsed_s,pressure_bar_g,vent_valve\n{rows}")  # fmt: skip
    assert done.returncode == 0
    for instruction in ("wait: ", "vent: ", "close_and_hold: "):
        assert instruction in done.stdout, done.stdout
    prompt = next(line for line in done.stdout.splitlines() if "close_and_hold" in line)
    # 19 bar g falls by 0.1 a second from 60 s on: at 4.17 + 1.03 bar g after 198 s
    assert float(prompt.split()[0]) < 198


REFUSED_STREAMS = {
    "no unit": "elapsed_s,pressure\n0,19\n1,19\n",
    "gauge or absolute": "elapsed_s,pressure_bar\n0,19\n",
    "no readings": "elapsed_s,pressure_bar_g\n",
}


def test_a_stream_that_a_log_would_be_refused_for_is_refused_too(tmp_path: Path) -> None:
    for n, (why, text) in enumerate(REFUSED_STREAMS.items()):
        done = run("record", "--source", "-", "--log", f"{n}.csv", cwd=tmp_path, stdin=text)
        assert refused(done), why


def test_metadata_of_a_stream_that_mean_nothing_are_said_and_not_used(tmp_path: Path) -> None:
    # a live gauge is not refused for a line that may have been garbled on the wire
    text = f"# section_volume_l: much\n# altitude_m: 300\n{NAMES}\n{ROWS}# gas: nitrogen\n"
    done = run("record", "--source", "-", "--log", "new.csv", cwd=tmp_path, stdin=text)
    assert done.returncode == 0, done.stderr
    log = (tmp_path / "new.csv").read_text()
    assert "rejected: line 1: section_volume_l 'much' is not a number" in log
    seen = assess(tmp_path, "new.csv")
    assert seen["readings"] == 30
    assert seen["holds"][-1]["liquid_kg"] is None
    assert seen["ambient_pressure_assumed"] is False


def test_a_source_or_option_that_cannot_be_is_one_line_and_status_2(tmp_path: Path) -> None:
    for source in ("/dev/ttyNOSUCH", "missing.csv",
                   "modbus-tcp://127.0.0.1:1?unit=1&map=missing.toml",
                   "/dev/ttyUSB0?speed=3"):  # fmt: skip
        refused(run("record", "--source", source, "--log", "x.csv", "--for", 2, cwd=tmp_path))
    for key, value in (("gauge_full_scale", "60 bar"),):
        words = words_of({key: value})
        refused(run("record", "--source", "-", "--log", "x.csv", *words, cwd=tmp_path, stdin=ROWS))
        refused(run("watch", "--source", "-", *words, cwd=tmp_path, stdin=ROWS,
                    env={"QT_QPA_PLATFORM": "offscreen"}))  # fmt: skip


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
    seconds = itertools.count(2)

    def noted() -> bool:
        """A note goes with the next reading, and which of the two comes first is chance."""
        with growing.open("a") as file:
            file.write(f"{next(seconds)}.0,19.02,-20,closed\n")
        time.sleep(0.1)
        return "hose moved" in new.read_text()

    wait_until(noted, 10, "no note")
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


def test_a_stream_with_iso_times_keeps_their_intervals(tmp_path: Path) -> None:
    rows = "".join(f"2026-02-03T10:{n // 6:02}:{n % 6}0+01:00,19.0,closed\n" for n in range(60))
    done = run("record", "--source", "-", "--log", "new.csv", cwd=tmp_path,
               stdin=f"time,pressure_bar_g,vent_valve\n{rows}")  # fmt: skip
    assert done.returncode == 0, done.stderr
    (hold,) = assess(tmp_path, "new.csv")["holds"]
    assert hold["end_s"] - hold["start_s"] == pytest.approx(590, abs=0.01)


def test_silence_is_said_after_2_s_or_two_and_a_half_intervals(
    start: Start, tmp_path: Path
) -> None:
    # one gauge sends ten rows a second, the other one
    with contextlib.ExitStack() as open_things:
        clients, recorders = [], []
        for n in range(2):
            server = open_things.enter_context(socket.create_server(("127.0.0.1", 0)))
            source = f"socket://127.0.0.1:{server.getsockname()[1]}"
            recorders.append(start("record", "--source", source, "--log", f"{n}.csv"))
            clients.append(open_things.enter_context(server.accept()[0]))
            clients[n].sendall(b"elapsed_s,pressure_bar_g\n")
        for n in range(21):
            clients[0].sendall(f"{n / 10:.1f},19.0{n % 7}\n".encode())
            if n % 10 == 0:
                clients[1].sendall(f"{n // 10},19.0{n // 10}\n".encode())
            time.sleep(0.1)
        for n, stale_s in enumerate((2.0, 2.5)):
            log = tmp_path / f"{n}.csv"
            wait_until(lambda log=log: "data_stale" in log.read_text(), 8, "silence was not said")
            line = next(line for line in log.read_text().splitlines() if "data_stale" in line)
            assert f"no reading for {stale_s:.1f} s" in line, line
            recorders[n].terminate()
            assert recorders[n].wait(10) == 0
