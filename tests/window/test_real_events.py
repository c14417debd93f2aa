"""The program under a real X server, worked with real key strokes; what it wrote is looked at.

Needs Xvfb and xdotool; marked slow. Each flow is a new process, as a person would start it.
"""

import os
import shutil
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtGui import QImage

from co2vent.readings.log_file import read_log
from co2vent.store.notes import read_notes
from co2vent.store.settings import save_settings
from tests.window.conftest import vent_log

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(
        not (shutil.which("Xvfb") and shutil.which("xdotool")), reason="no Xvfb or xdotool"
    ),
]
PATIENCE_S = 60.0


class Desk:
    """An X display, a folder for settings and files, and the keyboard."""

    def __init__(self, display: str, folder: Path) -> None:
        self.folder = folder
        self.environment = {
            **{
                k: v
                for k, v in os.environ.items()
                if k not in ("QT_QPA_PLATFORM", "WAYLAND_DISPLAY")
            },
            "DISPLAY": display,
            "CO2VENT_CONFIG_DIR": str(folder / "settings"),
            "LC_ALL": "C.UTF-8",
        }
        save_settings({"folder": str(folder)}, folder / "settings" / "settings.json")
        self.process: subprocess.Popen[bytes] | None = None

    def start(self, *arguments: str) -> None:
        """Start the program and wait for its window."""
        command = [sys.executable, "-m", "co2vent", *arguments]
        self.process = subprocess.Popen(command, env=self.environment)
        self.until(lambda: self._tool("search", "--onlyvisible", "--name", "^co2vent$").strip())
        window = self._tool("search", "--onlyvisible", "--name", "^co2vent$").split()[0]
        self._tool("windowfocus", window)
        time.sleep(1.0)

    def _tool(self, *arguments: str) -> str:
        done = subprocess.run(
            ["xdotool", *arguments], env=self.environment, capture_output=True, text=True,
            check=False, timeout=PATIENCE_S,
        )  # fmt: skip
        return done.stdout

    def keys(self, *names: str, pause_s: float = 0.4) -> None:
        """Press keys, one after the other."""
        for name in names:
            self._tool("key", name)
            time.sleep(pause_s)

    def type(self, words: str) -> None:
        """Type words."""
        self._tool("type", words)

    def until(self, condition, patience_s: float = PATIENCE_S):
        """Wait until `condition` is true; return what it returned."""
        end_s = time.monotonic() + patience_s
        while time.monotonic() < end_s:
            found = condition()
            if found:
                return found
            time.sleep(0.2)
        raise AssertionError("it did not happen in time")

    def files(self, pattern: str) -> list[Path]:
        """Return the files that the program wrote."""
        return [path for path in sorted(self.folder.glob(pattern)) if path.stat().st_size]

    def end(self, *, confirm: bool = False) -> int:
        """Quit by the keyboard, where it is asked for with a yes; return the exit status."""
        assert self.process is not None
        self.keys("ctrl+q")
        if confirm:
            self.keys("e")
        return self.process.wait(timeout=PATIENCE_S)


@pytest.fixture
def desk(tmp_path) -> Iterator[Desk]:
    read, write = os.pipe()
    server = subprocess.Popen(
        # without -noreset it starts anew each time its last client leaves, and refuses meanwhile
        [
            "Xvfb", "-displayfd", str(write), "-screen", "0", "1280x800x24",
            "-nolisten", "tcp", "-noreset",
        ],
        pass_fds=(write,), stderr=subprocess.DEVNULL,
    )  # fmt: skip
    os.close(write)
    with os.fdopen(read) as numbers:
        display = f":{numbers.readline().strip()}"
    desk = Desk(display, tmp_path)
    yield desk
    if desk.process is not None and desk.process.poll() is None:
        desk.process.kill()
        desk.process.wait()
    server.terminate()
    server.wait()


def test_replay_by_keyboard(desk: Desk, tmp_path: Path) -> None:
    log = tmp_path / "vent.csv"
    log.write_bytes(vent_log(600))
    desk.start("replay", str(log))
    desk.keys("space", "n", "n", "ctrl+p", "v", "v", "ctrl+p", "t", "b", "ctrl+p")
    pictures = desk.until(
        lambda: len(desk.files("replay-*.png")) >= 3 and desk.files("replay-*.png")
    )
    shown = [QImage(str(path)) for path in pictures]
    assert not any(picture.isNull() for picture in shown)
    assert shown[0] != shown[1] != shown[2]
    assert desk.end() == 0


def test_a_note_on_a_replay_by_keyboard(desk: Desk, tmp_path: Path) -> None:
    log = tmp_path / "vent.csv"
    log.write_bytes(vent_log(600))
    desk.start("replay", str(log))
    desk.keys("space", "n", "w")
    desk.type("pump still warm, n and b")
    desk.keys("Escape", "w", "Return")  # put away, asked for again, kept
    desk.until(lambda: read_notes(log)[0])
    ((note,), problem) = read_notes(log)
    assert (note.text, problem) == ("pump still warm, n and b", "")
    desk.keys("w")
    desk.type(" I think")
    desk.keys("Return")
    desk.until(lambda: read_notes(log)[0][0].text.endswith("I think"))
    desk.keys("ctrl+z")
    desk.until(lambda: read_notes(log)[0] == (note,))
    assert desk.end() == 0


def test_class_by_keyboard(desk: Desk) -> None:
    desk.start()
    desk.keys("e")
    time.sleep(1.5)
    desk.keys("ctrl+Return")
    # the section may have to be compiled first: the score sheet can be saved when it is there
    desk.until(lambda: desk.keys("ctrl+s") or desk.files("class-*.pdf"), patience_s=120.0)
    desk.keys("space", "o", pause_s=1.0)
    desk.keys("c", "g", "1", "r", "ctrl+e")
    saved = desk.until(lambda: desk.files("class-*.csv"))
    record = read_log(saved[0])
    assert record.setup.simulated
    assert record.readings.vent_open is not None
    assert record.readings.vent_open.max() == 1  # the valve was opened
    assert desk.end(confirm=True) == 0  # the run is lost with the window


def test_live_by_keyboard(desk: Desk, tmp_path: Path) -> None:
    with socket.create_server(("127.0.0.1", 0)) as server:
        record = tmp_path / "record.csv"
        source = f"socket://127.0.0.1:{server.getsockname()[1]}"
        command = [
            sys.executable,
            "-m",
            "co2vent",
            "watch",
            "--source",
            source,
            "--log",
            str(record),
        ]
        desk.process = subprocess.Popen(command, env=desk.environment)
        client, _address = server.accept()
        with client:
            head = "# simulated: yes\nelapsed_s,pressure_bar_g,line_temperature_degC\n"
            client.sendall(head.encode())
            desk.until(lambda: desk._tool("search", "--onlyvisible", "--name", "^co2vent$").strip())
            window = desk._tool("search", "--onlyvisible", "--name", "^co2vent$").split()[0]
            desk._tool("windowfocus", window)
            began_s = time.monotonic()

            def send(seconds: float) -> None:
                end_s = time.monotonic() + seconds
                while time.monotonic() < end_s:
                    at_s = time.monotonic() - began_s
                    client.sendall(f"{at_s:.2f},{19.0 - 0.05 * at_s:.3f},-20.0\n".encode())
                    time.sleep(0.1)

            send(2.0)
            desk.keys("o", "n")
            desk.type("frost at the low point")
            desk.keys("Return")
            send(1.0)
            desk.keys("c")
            send(1.0)
            time.sleep(4.0)  # the gauge falls silent: an alarm
            desk.keys("a")
            send(1.0)
            desk.keys("ctrl+q", "e")
            status = desk.process.wait(timeout=PATIENCE_S)
    text = record.read_text(encoding="utf-8")
    assert status == 0
    assert "frost at the low point" in text
    assert "alarm seen: no data" in text
    assert ",open" in text
    assert ",closed" in text


def test_a_request_to_end_closes_the_record_whole(desk: Desk, tmp_path: Path) -> None:
    source = tmp_path / "gauge.csv"
    source.write_bytes(vent_log(50))
    record = tmp_path / "record.csv"
    desk.start("watch", "--source", str(source), "--log", str(record))
    assert desk.process is not None
    desk.process.send_signal(signal.SIGTERM)
    assert desk.process.wait(timeout=PATIENCE_S) == 0
    assert len(read_log(record).readings) == 50


def test_a_source_is_tried_and_then_connected_by_keyboard(desk: Desk) -> None:
    with socket.create_server(("127.0.0.1", 0)) as server:
        server.settimeout(PATIENCE_S)
        desk.start()
        desk.keys("c")
        desk.keys("ctrl+a")
        desk.type(f"tcp://127.0.0.1:{server.getsockname()[1]}")
        desk.keys("Return")
        tried, _address = server.accept()
        with tried:
            tried.sendall(b"# simulated: yes\npressure_bar_g\n12.3\n12.4\n")
            time.sleep(1.0)
            desk.keys("ctrl+Return")
            tried.settimeout(PATIENCE_S)
            assert tried.recv(1) == b""  # the test is closed before the job's own source opens
            connected, _address = server.accept()
        with connected:
            connected.sendall(b"# simulated: yes\npressure_bar_g\n")
            for row in range(10):
                connected.sendall(f"12.{row}\n".encode())
                time.sleep(0.1)
            record = desk.until(lambda: desk.files("*.csv"))[0]
            desk.until(lambda: "12.9" in record.read_text(encoding="utf-8"))
            desk.keys("ctrl+q", "e")
            assert desk.process is not None
            assert desk.process.wait(timeout=PATIENCE_S) == 0
    assert len(read_log(record).readings) == 10
