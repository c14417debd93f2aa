"""Modbus RTU and TCP instruments, polled. pymodbus is loaded when one is opened."""

import logging
import struct
from pathlib import Path
from typing import Any

from co2vent.errors import RefusedInputError
from co2vent.sentence import Sentence
from co2vent.wire.polling import DEFAULT_PERIOD_S, REPLY_TIMEOUT_S, PolledSource
from co2vent.wire.ports import UsbIdentity, device_with, identity_of
from co2vent.wire.register_map import RegisterBlock, blocks, load_register_map
from co2vent.wire.serial_port import port_errors
from co2vent.wire.source import NO_READING, lost, unavailable

VALVE_COIL = 0  # of an emulated gauge set
REFUSED = "Modbus exception"  # the device is there and answers: the cable is right
# Modbus Application Protocol V1.1b3, section 7
_EXCEPTION_WORDS = {
    1: "illegal function",
    2: "illegal register",
    3: "illegal value",
    4: "device failure",
    6: "device busy",
    10: "gateway path unavailable",
    11: "gateway target failed to respond",
}


class ModbusSource(PolledSource):
    """A Modbus device behind a TCP port or a serial line; what its registers mean is in a map."""

    def __init__(
        self,
        *,
        map_path: Path,
        unit: int = 1,
        period_s: float = DEFAULT_PERIOD_S,
        tcp: tuple[str, int] | None = None,
        device: str = "",
        baud: int = 19_200,
        parity: str = "N",
        stop_bits: int = 1,
    ) -> None:
        """Read the map; nothing is opened yet. Give `tcp` or `device`.

        Raises:
            RefusedInputError: the map or the unit number is not certain.
        """
        if not 0 <= unit <= 255:
            raise RefusedInputError("unit must be from 0 to 255")
        register_map = load_register_map(map_path)
        self._blocks = blocks(register_map.channels)
        self._order = [channel.scaling.column for channel in register_map.channels]
        self._unit = unit
        self._simulated = register_map.metadata.get("simulated") == "yes"
        self._tcp = tcp
        self._device = device
        self._line: dict[str, Any] = {"baudrate": baud, "parity": parity, "stopbits": stop_bits}
        self._client: Any = None
        self._identity: UsbIdentity | None = None
        label = f"modbus-tcp://{tcp[0]}:{tcp[1]}" if tcp else f"modbus-rtu:{device}"
        super().__init__(label, register_map.preamble, period_s)

    def open(self) -> None:
        """Connect."""
        from pymodbus.client import ModbusSerialClient, ModbusTcpClient

        # its complaints are shown as rejected rows and lost sources, not printed
        logging.getLogger("pymodbus").addHandler(logging.NullHandler())
        common: dict[str, Any] = {"timeout": REPLY_TIMEOUT_S, "retries": 0}
        if self._tcp is not None:
            host, port = self._tcp
            self._client = ModbusTcpClient(host, port=port, **common)
        else:
            if self._identity is not None:
                self._device = device_with(self._identity) or self._device
            self._client = ModbusSerialClient(self._device, **self._line, **common)
        if not self._client.connect():
            self.close()
            raise unavailable(
                self.label,
                "no connection",
                "check address, cable and power, and that no other program uses the port",
            )
        if self._device:
            self.label = f"modbus-rtu:{self._device}"
            self._identity = identity_of(self._device) or self._identity
        self.started()

    def send(self, text: str) -> None:
        """Move the valve of a simulated gauge set, its coil 0; real ones are never written to."""
        from pymodbus.exceptions import ModbusException

        if not self._simulated or self._client is None:
            return
        try:
            self._client.write_coil(VALVE_COIL, text == "open", device_id=self._unit)
        except ModbusException as error:
            raise lost(self.label, Sentence("disconnected")) from error
        except port_errors() as error:
            raise lost(self.label, Sentence("disconnected")) from error

    def close(self) -> None:
        """Disconnect."""
        client, self._client = self._client, None
        if client is not None:
            try:
                client.close()
            except port_errors():
                return

    def _ask(self) -> str:
        cells: dict[str, str] = {}
        self.reply = ""
        for block in self._blocks:
            words, wrong = self._read_block(block)
            if words is None:
                if self.failed():
                    if wrong.startswith(REFUSED):
                        raise lost(
                            self.label, Sentence("it refuses to answer ({wrong})", wrong=wrong)
                        )
                    raise lost(self.label, Sentence("no answer ({wrong})", wrong=wrong))
                return f"{NO_READING}: {wrong}\n"
            for channel in block.channels:
                at = channel.register - block.start
                cells[channel.scaling.column] = channel.cell(words[at : at + channel.registers])
        return self.row([cells[column] for column in self._order])

    def _read_block(self, block: RegisterBlock) -> tuple[list[int] | None, str]:
        """Return the registers, or `None` and why there are none. Every reply is checked."""
        from pymodbus.exceptions import ConnectionException, ModbusException

        read = (
            self._client.read_holding_registers
            if block.table == "holding"
            else self._client.read_input_registers
        )
        try:
            reply = read(block.start, count=block.count, device_id=self._unit)
        except ConnectionException as error:
            raise lost(self.label, Sentence("disconnected")) from error
        except ModbusException:
            return None, "no reply in time"
        except (IndexError, struct.error):  # a frame that pymodbus did not expect
            return None, "a reply that makes no sense"
        except port_errors() as error:
            raise lost(self.label, Sentence("disconnected")) from error
        if reply.isError():
            code = getattr(reply, "exception_code", 0)
            return None, f"{REFUSED} {code} ({_EXCEPTION_WORDS.get(code, 'unknown')})"
        words = list(getattr(reply, "registers", ()))
        shown = " ".join(f"{word:04X}" for word in words)
        self.reply += f"{', ' if self.reply else ''}{block.table} {block.start}: {shown}"
        if len(words) != block.count:
            return None, f"{len(words)} registers where {block.count} were asked for"
        return words, ""
