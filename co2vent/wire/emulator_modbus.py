"""An emulated Modbus instrument: pymodbus's own server with the newest row in its registers."""

import asyncio
import contextlib
import json
import logging
import re
import struct
import tempfile
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

from co2vent.errors import SourceUnavailableError
from co2vent.readings.log_writer import metadata_from_setup, one_line
from co2vent.readings.reading import Reading, Setup
from co2vent.units import PRESSURE_UNITS, temperature_from_k
from co2vent.wire.emulator_feed import Feed
from co2vent.wire.modbus import VALVE_COIL
from co2vent.wire.polling import DEFAULT_PERIOD_S, SHORTEST_PERIOD_S
from co2vent.wire.pty_bridge import PtyBridge

READER_GONE_S: Final = 2.0  # without a request for so long, nobody is connected
LAST_ROW_S: Final = 1.0  # how long the last row stays readable
UNIT: Final = 1
BAUD: Final = 19_200  # what RTU devices come with; a pseudo-terminal does not care
# Long enough for the busiest machine: a server that cannot listen says so at once. (own choice)
_STARTED_S: Final = 30.0
_STOPPED_S: Final = 5.0
_NO_VALVE: Final = 0xFFFF


@dataclass(frozen=True, slots=True)
class _Cell:
    """One column in the registers."""

    column: str
    kind: str  # of the register map
    value: Callable[[Reading], float | None]
    extra: str = ""

    @property
    def registers(self) -> int:
        return 1 if self.kind == "uint16" else 2

    def words(self, reading: Reading | None) -> list[int]:
        value = None if reading is None else self.value(reading)
        if self.kind == "uint16":
            return [_NO_VALVE if value is None else int(value)]
        if self.kind == "uint32":
            number = round((value or 0.0) * 1000.0) & 0xFFFFFFFF
            return [number >> 16, number & 0xFFFF]
        packed = struct.pack(">f", float("nan") if value is None else value)
        return list(struct.unpack(">HH", packed))


class ModbusOutlet:
    """A Modbus server on this machine, unit 1; coil 0 is the vent valve."""

    def __init__(self, port: int | None, feed: Feed, speed: float = 1.0) -> None:
        """Serve on TCP `port`, 0 for any free one, or as RTU on a serial device where it is `None`.

        The registers speak the units of `feed`.
        """
        logging.getLogger("pymodbus").addHandler(logging.NullHandler())
        self._cells = _cells(feed.setup)
        # before the first row: no number, no valve, no pressure
        self._registers = [word for cell in self._cells for word in cell.words(None)]
        self._asked_s: float | None = None
        self._commands: list[str] = []
        self._put_s = 0.0
        self._folder = tempfile.TemporaryDirectory(prefix="co2vent-emulate-")
        map_path = Path(self._folder.name) / "registers.toml"
        map_path.write_text(_map_text(self._cells, feed), encoding="utf-8")
        self._bridge = PtyBridge() if port is None else None
        self._loop = asyncio.new_event_loop()
        self._server: Any = None
        self._error: Exception | None = None
        self._ready = threading.Event()
        self._thread = threading.Thread(
            target=self._serve, args=(port,), name="modbus", daemon=True
        )
        self._thread.start()
        self._ready.wait(_STARTED_S)
        if not self._is_up():
            self._folder.cleanup()
            raise SourceUnavailableError(
                f"modbus-tcp:{port}: cannot listen; use another port, or modbus-tcp:0"
            ) from self._error
        # each row is there for an interval: asking twice in it misses none
        period_s = max(SHORTEST_PERIOD_S, min(DEFAULT_PERIOD_S, 0.4 * feed.interval_s / speed))
        options = f"unit={UNIT}&map={_in_options(map_path)}&period_s={period_s:.3g}"
        if self._bridge is not None:
            self.source = f"modbus-rtu:{self._bridge.far}?baud={BAUD}&{options}"
        else:
            server: Any = self._server
            bound = server.transport.sockets[0].getsockname()[1]
            self.source = f"modbus-tcp://127.0.0.1:{bound}?{options}"

    def _is_up(self) -> bool:
        return self._error is None and self._server is not None

    def wait_for_reader(self, timeout_s: float) -> bool:
        """Return whether somebody has asked of late."""
        if self._asked_s is None:
            time.sleep(timeout_s)
        asked_s = self._asked_s
        return asked_s is not None and time.monotonic() - asked_s < READER_GONE_S

    def put(self, texts: list[str], newest: Reading | None) -> None:
        """Show `newest` in the registers."""
        if newest is not None:
            self._put_s = time.monotonic()
            # one assignment: no request sees half a row
            self._registers = [word for cell in self._cells for word in cell.words(newest)]

    def take_commands(self) -> list[str]:
        """Return `open` or `closed` for each write to the coil."""
        words, self._commands = self._commands, []
        return words

    def drained(self) -> bool:
        """Return whether the last row has been there long enough to be read."""
        return time.monotonic() - self._put_s > LAST_ROW_S

    def close(self) -> None:
        """Stop serving."""
        with contextlib.suppress(RuntimeError):
            asyncio.run_coroutine_threadsafe(self._server.shutdown(), self._loop)
        self._thread.join(_STOPPED_S)
        if self._bridge is not None:
            self._bridge.close()
        self._folder.cleanup()

    def _serve(self, port: int | None) -> None:
        try:
            self._loop.run_until_complete(self._serve_until_shut(port))
        except (OSError, RuntimeError, OverflowError) as error:
            self._error = error
        finally:
            self._ready.set()
            self._loop.close()

    async def _serve_until_shut(self, port: int | None) -> None:
        from pymodbus.server import ModbusSerialServer, ModbusTcpServer
        from pymodbus.simulator import DataType, SimData, SimDevice

        async def show(
            function_code: int,
            start_address: int,
            address: int,
            count: int,
            current: list[int],
            values: list[int] | list[bool] | None,
        ) -> None:
            self._asked_s = time.monotonic()
            if function_code in (5, 15) and values:
                self._commands.append("open" if values[0] else "closed")
            elif function_code in (3, 4):
                current[: len(self._registers)] = self._registers

        registers = [SimData(0, values=list(self._registers), datatype=DataType.REGISTERS)]
        coils = [SimData(VALVE_COIL, values=[False] * 16, datatype=DataType.BITS)]
        device = SimDevice(
            id=UNIT,
            simdata=(coils, list(coils), registers, list(registers)),
            action=show,
        )
        if self._bridge is not None:
            self._server = ModbusSerialServer(device, port=self._bridge.near, baudrate=BAUD)
        else:
            self._server = ModbusTcpServer(device, address=("127.0.0.1", port or 0))
        await self._server.serve_forever(background=True)
        self._ready.set()
        await self._server.serving


def _in_options(path: Path) -> str:
    """Return `path` as it stands in a SOURCE, where some characters mean something else."""
    return re.sub("[%&+]", lambda found: f"%{ord(found[0]):02X}", str(path))


def _cells(setup: Setup) -> list[_Cell]:
    unit = PRESSURE_UNITS[setup.pressure_unit]
    degrees = setup.temperature_unit

    def pressure(value_pa: float | None) -> float | None:
        if value_pa is None:
            return None
        return unit.from_absolute_pa(value_pa, setup.ambient_pressure_pa)

    def temperature(value_k: float | None) -> float | None:
        return None if value_k is None else temperature_from_k(value_k, degrees)

    return [
        _Cell("elapsed_s", "uint32", lambda r: r.at_s, "scale = 0.001\n"),
        _Cell(
            f"pressure_{unit.name}",
            "float32",
            lambda r: pressure(r.pressure_pa + setup.zero_offset_pa),
        ),
        _Cell(
            f"line_temperature_{degrees}", "float32", lambda r: temperature(r.line_temperature_k)
        ),
        _Cell(
            f"upper_temperature_{degrees}", "float32", lambda r: temperature(r.upper_temperature_k)
        ),
        _Cell(
            f"ambient_temperature_{degrees}",
            "float32",
            lambda r: temperature(r.ambient_temperature_k),
        ),
        _Cell(f"pressure_2_{unit.name}", "float32", lambda r: pressure(r.pressure_2_pa)),
        _Cell("vent_valve", "uint16", lambda r: r.vent_open, f"invalid = [{_NO_VALVE}]\n"),
    ]


def _map_text(cells: list[_Cell], feed: Feed) -> str:
    values = {**metadata_from_setup(feed.setup), "simulated": "yes"}
    lines = [f"{key} = {json.dumps(one_line(value))}\n" for key, value in values.items()]
    parts = ["[metadata]\n" + "".join(lines)]
    register = 0
    for cell in cells:
        order = 'word_order = "big"\n' if cell.registers == 2 else ""
        parts.append(
            f'[[channel]]\ncolumn = "{cell.column}"\ntable = "holding"\nregister = {register}\n'
            f'type = "{cell.kind}"\n{order}{cell.extra}'
        )
        register += cell.registers
    return "\n".join(parts)
