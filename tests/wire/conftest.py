"""Real far ends for the tests: pseudo-terminals, TCP servers, pymodbus's own server."""

import asyncio
import os
import pty
import socket
import threading
import time
import tty
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from co2vent.wire.link import Arrival, Lines, Link


class Gauge:
    """A serial gauge set: the far end of a pseudo-terminal."""

    def __init__(self) -> None:
        self.master, self._far = pty.openpty()
        tty.setraw(self.master)
        self.device = os.ttyname(self._far)

    def say(self, data: bytes) -> None:
        os.write(self.master, data)

    def hears(self, count: int = 4096) -> bytes:
        return os.read(self.master, count)

    def unplug(self) -> None:
        for descriptor in (self._far, self.master):
            os.close(descriptor)
        self.master = self._far = -1

    def away(self) -> bool:
        return self.master < 0


@pytest.fixture
def gauges() -> Iterator[Callable[[], Gauge]]:
    made: list[Gauge] = []

    def make() -> Gauge:
        made.append(Gauge())
        return made[-1]

    yield make
    for gauge in made:
        if not gauge.away():
            gauge.unplug()


@pytest.fixture
def gauge(gauges: Callable[[], Gauge]) -> Gauge:
    return gauges()


def _gather(
    link: Link, until: Callable[[list[Arrival]], bool], within_s: float = 3.0
) -> list[Arrival]:
    """Read until `until` holds of all that arrived; fail when it does not in time."""
    seen: list[Arrival] = []
    give_up_s = time.monotonic() + within_s
    while not until(seen):
        assert time.monotonic() < give_up_s, f"only {seen}"
        seen += link.read(0.05)
    return seen


def _text(arrivals: list[Arrival]) -> bytes:
    return b"".join(arrival.text for arrival in arrivals if isinstance(arrival, Lines))


@pytest.fixture
def gather() -> Callable[..., list[Arrival]]:
    return _gather


@pytest.fixture
def text_of() -> Callable[[list[Arrival]], bytes]:
    return _text


class ModbusDevice:
    """pymodbus's own server on a TCP port, with registers that a test can set."""

    def __init__(self, registers: list[int]) -> None:
        from pymodbus.server import ModbusTcpServer
        from pymodbus.simulator import DataType, SimData, SimDevice

        self.registers = registers
        self.silent = False
        self.requests: list[tuple[int, int, int]] = []
        self._ready = threading.Event()
        self._loop = asyncio.new_event_loop()

        async def show(
            function_code: int, start: int, address: int, count: int, current: list[int], new: Any
        ) -> None:
            self.requests.append((function_code, address, count))
            current[: len(self.registers)] = self.registers
            while self.silent:
                await asyncio.sleep(0.01)

        async def serve() -> None:
            words = [SimData(0, values=list(registers), datatype=DataType.REGISTERS)]
            bits = [SimData(0, values=[False] * 16, datatype=DataType.BITS)]
            device = SimDevice(id=1, simdata=(bits, bits, words, words), action=show)
            self._server = ModbusTcpServer(device, address=("127.0.0.1", 0))
            await self._server.serve_forever(background=True)
            self.port = self._server.transport.sockets[0].getsockname()[1]
            self._ready.set()
            await self._server.serving

        def run() -> None:
            self._loop.run_until_complete(serve())
            for task in asyncio.all_tasks(self._loop):
                task.cancel()
            self._loop.run_until_complete(asyncio.sleep(0))
            self._loop.close()

        self._thread = threading.Thread(target=run, daemon=True)
        self._thread.start()
        assert self._ready.wait(5)

    def stop(self) -> None:
        self.silent = False
        asyncio.run_coroutine_threadsafe(self._server.shutdown(), self._loop).result(5)
        self._thread.join(5)


@pytest.fixture
def modbus() -> Iterator[Callable[[list[int]], ModbusDevice]]:
    made: list[ModbusDevice] = []

    def make(registers: list[int]) -> ModbusDevice:
        made.append(ModbusDevice(registers))
        return made[-1]

    yield make
    for device in made:
        device.stop()


PRESSURE_MAP = """
[[channel]]
column = "pressure_bar_g"
table = "holding"
register = 0
type = "float32"
word_order = "big"
"""


@pytest.fixture
def pressure_map(tmp_path: Path) -> Path:
    path = tmp_path / "map.toml"
    path.write_text(PRESSURE_MAP)
    return path


@pytest.fixture
def server() -> Iterator[socket.socket]:
    with socket.create_server(("127.0.0.1", 0)) as listening:
        yield listening
