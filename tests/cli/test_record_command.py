"""`co2vent record` and `co2vent emulate` as a person runs them, in processes of their own."""

import json
import math
import os
import random
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

COMMAND = [sys.executable, "-m", "co2vent"]


def write_vent(path: Path) -> None:
    """A closed section, a vent, a hold: numbers with a gauge's noise."""
    noise = random.Random(1)
    lines = ["# section_volume_l: 14.5", "# altitude_m: 120", "# simulated: yes"]
    lines.append("elapsed_s,pressure_bar_g,line_temperature_degC,vent_valve")
    pressure = 19.0
    for n in range(160):
        at_s = n * 0.5
        is_open = 20 <= at_s <= 50
        pressure += -0.15 if is_open else 0.004 * math.exp(-at_s / 40)
        valve = "open" if is_open else "closed"
        lines.append(f"{at_s:.1f},{pressure + noise.gauss(0, 0.002):.3f},-20.05,{valve}")
    path.write_text("\n".join(lines) + "\n")


@pytest.fixture
def start() -> Iterator[Callable[..., subprocess.Popen[str]]]:
    started: list[subprocess.Popen[str]] = []

    def run(*words: str, stdin: int = subprocess.PIPE) -> subprocess.Popen[str]:
        process = subprocess.Popen(
            [*COMMAND, *words],
            stdin=stdin,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
            bufsize=1,
        )
        started.append(process)
        return process

    yield run
    for process in started:
        if process.poll() is None:
            process.kill()
        process.wait()
        for stream in (process.stdin, process.stdout, process.stderr):
            if stream is not None:
                stream.close()


def assessed(path: Path) -> dict[str, object]:
    done = subprocess.run(
        [*COMMAND, "assess", str(path), "--json"], capture_output=True, text=True, check=True
    )
    found = json.loads(done.stdout)
    assert isinstance(found, dict)
    del found["file"]
    return found


@pytest.mark.parametrize("to", ["pty", "tcp:0"])
def test_a_recording_of_an_emulated_vent_assesses_the_same_as_the_vent(
    to: str, tmp_path: Path, start: Callable[..., subprocess.Popen[str]]
) -> None:
    write_vent(tmp_path / "vent.csv")
    emulated = start("emulate", str(tmp_path / "vent.csv"), "--to", to, "--speed", "40")
    assert emulated.stdout is not None
    source = emulated.stdout.readline().strip()
    log = tmp_path / "log.csv"
    recorded = start("record", "--source", source, "--log", str(log))
    assert emulated.wait(20) == 0
    time.sleep(0.3)
    recorded.send_signal(signal.SIGINT)
    out, err = recorded.communicate(timeout=10)
    assert recorded.returncode == 0, err
    assert " vent: " in out
    assert " keep_holding: " in out
    assert assessed(log) == assessed(tmp_path / "vent.csv")
    assert "# simulated: yes" in log.read_text()


def test_an_emulated_modbus_instrument_is_recorded_with_its_own_time(
    tmp_path: Path, start: Callable[..., subprocess.Popen[str]]
) -> None:
    write_vent(tmp_path / "vent.csv")
    emulated = start("emulate", str(tmp_path / "vent.csv"), "--to", "modbus-tcp:0", "--speed", "20")
    assert emulated.stdout is not None
    source = emulated.stdout.readline().strip()
    assert Path(source.partition("map=")[2].partition("&")[0]).exists()
    log = tmp_path / "log.csv"
    recorded = start("record", "--source", source, "--log", str(log))
    assert emulated.wait(30) == 0
    recorded.send_signal(signal.SIGTERM)
    assert recorded.wait(10) == 0
    got, sent = assessed(log), assessed(tmp_path / "vent.csv")
    assert isinstance(got["readings"], int)
    assert isinstance(sent["readings"], int)
    assert got["readings"] >= 0.95 * sent["readings"]  # the first rows may pass before a poll
    holds, expected = got["holds"], sent["holds"]
    assert isinstance(holds, list)
    assert isinstance(expected, list)
    assert [h["charge"] for h in holds] == [h["charge"] for h in expected]


def test_the_end_of_the_time_and_of_the_stream_are_clean(
    tmp_path: Path, start: Callable[..., subprocess.Popen[str]]
) -> None:
    process = start("record", "--source", "-", "--log", str(tmp_path / "a.csv"))
    out, err = process.communicate("elapsed_s,pressure_bar_g\n0,19\n1,19\n", timeout=10)
    assert (process.returncode, err) == (0, "")
    assert out
    with socket.create_server(("127.0.0.1", 0)) as server:
        port = server.getsockname()[1]
        words = ("--log", str(tmp_path / "b.csv"), "--for", "0.5")
        process = start("record", "--source", f"socket://127.0.0.1:{port}", *words)
        started_s = time.monotonic()
        assert process.wait(10) == 0
        assert time.monotonic() - started_s < 5.0


def test_open_closed_and_notes_are_taken_from_standard_input(
    tmp_path: Path, start: Callable[..., subprocess.Popen[str]]
) -> None:
    log = tmp_path / "log.csv"
    with socket.create_server(("127.0.0.1", 0)) as server:
        port = server.getsockname()[1]
        process = start("record", "--source", f"socket://127.0.0.1:{port}", "--log", str(log))
        client, _ = server.accept()
        client.sendall(b"pressure_bar_g\n19.00\n")
        assert process.stdout is not None
        assert process.stdin is not None
        assert "wait" in process.stdout.readline()
        for said, row in (
            ("open", "18.90"),
            ("closed", "18.80"),
            ("note frost, low point", "18.8"),
        ):
            process.stdin.write(f"{said}\n")
            process.stdin.flush()
            time.sleep(0.3)
            client.sendall(f"{row}\n".encode())
            time.sleep(0.2)
        process.send_signal(signal.SIGTERM)
        assert process.wait(10) == 0
        client.close()
    rows = [line.split(",", 2)[2] for line in log.read_text().splitlines() if line[:1].isdigit()]
    words = [row.rpartition(",")[0] for row in rows]
    assert words == [",", "open,", "closed,", 'closed,"frost, low point"']


def test_a_reader_of_the_prompts_that_goes_away_does_not_end_the_recording(
    tmp_path: Path, start: Callable[..., subprocess.Popen[str]]
) -> None:
    log = tmp_path / "log.csv"
    with socket.create_server(("127.0.0.1", 0)) as server:
        port = server.getsockname()[1]
        process = start("record", "--source", f"socket://127.0.0.1:{port}", "--log", str(log))
        client, _ = server.accept()
        assert process.stdout is not None
        client.sendall(b"elapsed_s,pressure_bar_g,vent_valve\n0,19.0,closed\n")
        process.stdout.readline()
        process.stdout.close()
        for n in range(1, 6):
            client.sendall(f"{n},19.0,{'open' if n % 2 else 'closed'}\n".encode())
            time.sleep(0.1)
        process.send_signal(signal.SIGTERM)
        assert process.wait(10) == 0
        client.close()
    assert assessed(log)["readings"] == 6


def test_kill_9_leaves_a_log_that_can_be_read(
    tmp_path: Path, start: Callable[..., subprocess.Popen[str]]
) -> None:
    log = tmp_path / "log.csv"
    with socket.create_server(("127.0.0.1", 0)) as server:
        port = server.getsockname()[1]
        process = start("record", "--source", f"socket://127.0.0.1:{port}", "--log", str(log))
        client, _ = server.accept()
        client.sendall(b"elapsed_s,pressure_bar_g\n")
        for n in range(30):
            client.sendall(f"{n / 10:.1f},19.0{n % 5}\n".encode())
            time.sleep(0.02)
        time.sleep(0.1)
        process.kill()
        process.wait()
        client.close()
    assert assessed(log)["readings"] == 30


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["record", "--source", "/dev/ttyNOSUCH", "--log", "x.csv"], "no such device"),
        (["record", "--source", "nosuch.csv", "--log", "x.csv"], "no such file"),
        (["record", "--source", "-", "--log", "no/such/folder/x.csv"], "choose another log file"),
        (["record", "--source", "-", "--log", "here.csv"], "exists already"),
        (["record", "--source", "-", "--log", "x.csv", "--for", "-1"], "seconds above 0"),
        (["record", "--source", "-", "--log", "x.csv", "--altitude-m", "high"], "altitude"),
        (["record", "--source", "-", "--log", "x.csv", "--columns", "elapsed_s"], "pressure"),
        (["record", "--log", "x.csv"], "--source"),
        (["emulate", "nosuch.csv"], "nosuch.csv"),
        (["emulate", "here.csv"], "no pressure column"),
        (["emulate", "good.csv", "--to", "udp:1"], "use pty, tcp:PORT"),
        (["emulate", "good.csv", "--to", "tcp:99999"], "0 to 65535"),
        (["emulate", "good.csv", "--speed", "0"], "speed from 1"),
    ],
)
def test_what_cannot_be_done_is_one_line_and_status_2(
    words: list[str], said: str, tmp_path: Path
) -> None:
    (tmp_path / "here.csv").write_text("nothing\n")
    write_vent(tmp_path / "good.csv")
    done = subprocess.run(
        [*COMMAND, *words],
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=False,
        timeout=20,
        stdin=subprocess.DEVNULL,
    )
    assert done.returncode == 2
    assert said in done.stderr
    assert done.stderr.count("\n") == 1
    assert "Traceback" not in done.stderr


def test_a_stream_without_a_unit_or_readings_is_refused(tmp_path: Path) -> None:
    for text, said in (
        ("elapsed_s,pressure\n0,19\n1,19\n", "unit"),
        ("elapsed_s,pressure_bar\n0,19\n", "gauge or absolute"),
        ("elapsed_s,pressure_bar_g\n", "no readings"),
        ("", "no readings"),
    ):
        log = tmp_path / f"{abs(hash(text))}.csv"
        done = subprocess.run(
            [*COMMAND, "record", "--source", "-", "--log", str(log)],
            input=text,
            capture_output=True,
            text=True,
            check=False,
            timeout=20,
        )
        assert (done.returncode, done.stderr.count("\n")) == (2, 1), done
        assert said in done.stderr


def test_a_second_recording_of_one_port_is_refused(
    tmp_path: Path, start: Callable[..., subprocess.Popen[str]]
) -> None:
    write_vent(tmp_path / "vent.csv")
    emulated = start("emulate", str(tmp_path / "vent.csv"))
    assert emulated.stdout is not None
    source = emulated.stdout.readline().strip()
    first = start("record", "--source", source, "--log", str(tmp_path / "a.csv"))
    assert first.stdout is not None
    assert first.stdout.readline()
    second = start("record", "--source", source, "--log", str(tmp_path / "b.csv"))
    _, err = second.communicate(timeout=10)
    assert second.returncode == 2
    assert "in use by another program" in err
    os.kill(first.pid, signal.SIGTERM)
    assert first.wait(10) == 0


def test_the_header_comes_again_for_a_reader_that_joins_late(
    tmp_path: Path, start: Callable[..., subprocess.Popen[str]]
) -> None:
    write_vent(tmp_path / "vent.csv")
    emulated = start("emulate", str(tmp_path / "vent.csv"), "--to", "tcp:0")
    assert emulated.stdout is not None
    port = int(emulated.stdout.readline().rpartition(":")[2])
    with socket.create_connection(("127.0.0.1", port)) as first:
        first.recv(10)
        time.sleep(0.5)
        with socket.create_connection(("127.0.0.1", port)) as late:
            late.settimeout(6.0)
            started_s = time.monotonic()
            text = b""
            while b"elapsed_s,pressure_bar_g" not in text:
                text += late.recv(4096)
            assert time.monotonic() - started_s <= 5.0
            assert b"# simulated: yes" in text
