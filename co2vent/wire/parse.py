"""SOURCE text -> source. A new kind is one file and one row in `KINDS`."""

import re
import stat
from collections.abc import Callable
from pathlib import Path
from typing import Final
from urllib.parse import parse_qsl, unquote

from co2vent.errors import RefusedInputError
from co2vent.wire.source import Source

SOURCE_FORMS: Final = (
    "a serial device or COM port (/dev/ttyUSB0?baud=9600, COM3), socket://HOST:PORT, any pyserial "
    "URL, modbus-tcp://HOST:PORT?map=FILE.toml, modbus-rtu:DEVICE?map=FILE.toml, "
    "polled:DEVICE?map=FILE.toml, a growing CSV file, or - for standard input"
)
_PARITIES: Final = ("N", "E", "O", "M", "S")
_BAUDS: Final = (50, 4_000_000)


class Options:
    """The `?key=value&…` part of a SOURCE; what is not taken is refused."""

    def __init__(self, query: str, source: str) -> None:
        """Split `query`; `source` stands in the errors."""
        self._source = source
        try:
            self._values = dict(parse_qsl(query, keep_blank_values=True, strict_parsing=True))
        except ValueError:
            if query:
                raise self.refused(f"options {query!r} are not key=value") from None
            self._values = {}

    def refused(self, what: str) -> RefusedInputError:
        """Return the error for this SOURCE."""
        return RefusedInputError(f"source {self._source}: {what}")

    def whole(self, key: str, default: int, limits: tuple[int, int]) -> int:
        """Take a whole number."""
        text = self._values.pop(key, str(default))
        if not re.fullmatch(r"[0-9]{1,9}", text) or not limits[0] <= int(text) <= limits[1]:
            raise self.refused(f"{key} must be a whole number from {limits[0]} to {limits[1]}")
        return int(text)

    def number(self, key: str, default: float) -> float:
        """Take a decimal number."""
        text = self._values.pop(key, str(default))
        if not re.fullmatch(r"[0-9]{0,6}\.?[0-9]{0,6}", text) or not text.strip("."):
            raise self.refused(f"{key} must be a number")
        return float(text)

    def word(self, key: str, default: str, words: tuple[str, ...]) -> str:
        """Take one of `words`."""
        text = self._values.pop(key, default).upper()
        if text not in words:
            raise self.refused(f"{key} must be one of {', '.join(words)}")
        return text

    def path(self, key: str) -> Path:
        """Take the path of a file, which must be given."""
        text = self._values.pop(key, "")
        if not text:
            raise self.refused(f"add {key}=FILE.toml, which says what the values mean")
        return Path(text)

    def done(self) -> None:
        """Refuse what has not been taken."""
        if self._values:
            raise self.refused(f"unknown option {min(self._values)!r}")

    def rest(self) -> str:
        """Return what has not been taken, for pyserial to judge."""
        return "&".join(f"{key}={value}" if value else key for key, value in self._values.items())


def parse_source(text: str) -> Source:
    """Return the source that `text` names; nothing is opened yet.

    Raises:
        RefusedInputError: no such kind of source, or options whose meaning is not certain.
    """
    text = text.strip()
    if not text:
        raise RefusedInputError(f"give a source: {SOURCE_FORMS}")
    if text == "-":
        from co2vent.wire.standard_input import StandardInputSource

        return StandardInputSource()
    for prefix, make in KINDS.items():
        if text.lower().startswith(prefix):
            body, _, query = text[len(prefix) :].partition("?")
            return make(body, Options(query, text))
    scheme, separator, _ = text.partition("://")
    if separator and re.fullmatch(r"[a-z][a-z0-9+.]*", scheme, re.IGNORECASE):
        return _pyserial_url(text)
    device, _, query = text.partition("?")
    if _is_serial_device(device):
        return _serial(device, Options(query, text))
    from co2vent.wire.growing_file import GrowingFileSource

    return GrowingFileSource(Path(text))


def _serial(device: str, options: Options) -> Source:
    from co2vent.wire.serial_port import DEFAULT_BAUD, SerialSource

    source = SerialSource(
        device,
        baud=options.whole("baud", DEFAULT_BAUD, _BAUDS),
        byte_bits=options.whole("bytes", 8, (5, 8)),
        parity=options.word("parity", "N", _PARITIES),
        stop_bits=options.whole("stop", 1, (1, 2)),
    )
    options.done()
    return source


def _pyserial_url(text: str) -> Source:
    from co2vent.wire.serial_port import DEFAULT_BAUD, SerialSource

    body, _, query = text.partition("?")
    options = Options(query, text) if "=" in query else Options("", text)
    if "=" not in query:
        return SerialSource(text)
    baud = options.whole("baud", DEFAULT_BAUD, _BAUDS)
    rest = options.rest()
    return SerialSource(f"{body}?{rest}" if rest else body, baud=baud)


def _tcp(body: str, options: Options) -> Source:
    from co2vent.wire.tcp import TcpSource

    host, port = _host_and_port(body, options, example="192.168.0.20:4001")
    options.done()
    return TcpSource(host, port)


def _modbus_tcp(body: str, options: Options) -> Source:
    from co2vent.wire.modbus import ModbusSource
    from co2vent.wire.polling import DEFAULT_PERIOD_S

    source = ModbusSource(
        tcp=_host_and_port(body, options, example="192.168.0.20:502"),
        unit=options.whole("unit", 1, (0, 255)),
        map_path=options.path("map"),
        period_s=options.number("period_s", DEFAULT_PERIOD_S),
    )
    options.done()
    return source


def _modbus_rtu(body: str, options: Options) -> Source:
    from co2vent.wire.modbus import ModbusSource
    from co2vent.wire.polling import DEFAULT_PERIOD_S

    source = ModbusSource(
        device=_device(body, options),
        baud=options.whole("baud", 19_200, _BAUDS),
        parity=options.word("parity", "N", _PARITIES),
        stop_bits=options.whole("stop", 1, (1, 2)),
        unit=options.whole("unit", 1, (0, 255)),
        map_path=options.path("map"),
        period_s=options.number("period_s", DEFAULT_PERIOD_S),
    )
    options.done()
    return source


def _polled(body: str, options: Options) -> Source:
    from co2vent.wire.polled import PolledAsciiSource
    from co2vent.wire.polling import DEFAULT_PERIOD_S
    from co2vent.wire.serial_port import DEFAULT_BAUD

    source = PolledAsciiSource(
        _device(body, options),
        options.path("map"),
        baud=options.whole("baud", DEFAULT_BAUD, _BAUDS),
        period_s=options.number("period_s", DEFAULT_PERIOD_S),
    )
    options.done()
    return source


# how a SOURCE begins -> what makes it; the modules are loaded only when chosen
KINDS: Final[dict[str, Callable[[str, Options], Source]]] = {
    "socket://": _tcp,
    "tcp://": _tcp,
    "modbus-tcp://": _modbus_tcp,
    "modbus-rtu:": _modbus_rtu,
    "polled:": _polled,
}


def _device(body: str, options: Options) -> str:
    if not body:
        raise options.refused("name the device, e.g. /dev/ttyUSB0 or COM3")
    return unquote(body)


def _host_and_port(body: str, options: Options, *, example: str) -> tuple[str, int]:
    match = re.fullmatch(r"(\[[0-9A-Fa-f:.]+\]|[^:/\[\]\s]+):([0-9]{1,9})/?", body)
    if match is None:
        raise options.refused(f"write HOST:PORT, e.g. {example}")
    if not 1 <= int(match[2]) <= 65_535:
        raise options.refused(f"{match[2]} is no port: 1 to 65535")
    return match[1].strip("[]"), int(match[2])


def _is_serial_device(name: str) -> bool:
    if re.fullmatch(r"(\\\\\.\\)?COM[0-9]{1,3}", name, re.IGNORECASE):
        return True
    if name.startswith("/dev/") and not name.startswith("/dev/shm/"):
        return True
    try:
        return stat.S_ISCHR(Path(name).stat().st_mode)
    except (OSError, ValueError):
        return False
