"""Monitors on real wires, closed after each test."""

import socket
import threading
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from co2vent.live.monitor import Monitor
from co2vent.store.recorder import Recorder
from co2vent.wire.tcp import TcpSource


class Wire:
    """A gauge server with one client."""

    def __init__(self) -> None:
        self._server = socket.create_server(("127.0.0.1", 0))
        self.port = self._server.getsockname()[1]
        self._client: socket.socket | None = None

    def source(self) -> TcpSource:
        return TcpSource("127.0.0.1", self.port)

    def say(self, *lines: str) -> None:
        if self._client is None:
            self._client, _ = self._server.accept()
        self._client.sendall("".join(f"{line}\n" for line in lines).encode())

    def hear(self) -> bytes:
        assert self._client is not None
        self._client.settimeout(2.0)
        return self._client.recv(4096)

    def unplug(self) -> None:
        if self._client is not None:
            self._client.close()
            self._client = None

    def close(self) -> None:
        self.unplug()
        self._server.close()


@pytest.fixture
def wire() -> Iterator[Wire]:
    made = Wire()
    yield made
    made.close()


@pytest.fixture
def monitors(tmp_path: Path) -> Iterator[Callable[..., Monitor]]:
    """Start monitors; after the test they are stopped and no thread of theirs is left."""
    made: list[Monitor] = []

    def make(source: Any, *, log: str | None = None, **more: Any) -> Monitor:
        monitor = Monitor(source, recorder=Recorder(tmp_path / log) if log else None, **more)
        made.append(monitor)
        monitor.start()
        return monitor

    yield make
    for monitor in made:
        monitor.stop()
    left = [t.name for t in threading.enumerate() if t.name in ("monitor", "recorder")]
    assert left == []


@pytest.fixture
def until() -> Callable[..., None]:
    def wait(condition: Callable[[], Any], within_s: float = 4.0) -> None:
        give_up_s = time.monotonic() + within_s
        while not condition():
            assert time.monotonic() < give_up_s, "it did not happen in time"
            time.sleep(0.01)

    return wait
