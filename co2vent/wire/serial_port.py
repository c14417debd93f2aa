"""Text from a serial device, a COM port or any URL that pyserial opens."""

from errno import EIO, ENOTTY
from typing import Any, Final

from co2vent.sentence import Sentence
from co2vent.wire.ports import UsbIdentity, device_with, identity_of
from co2vent.wire.source import lost, unavailable

DEFAULT_BAUD: Final = 9600
_NO_PORT_WORDS: Final = (f"({ENOTTY},", "inappropriate ioctl")
_BUSY_WORDS: Final = ("lock port", "busy", "access is denied", "permissionerror", "exclusively")


def port_errors() -> tuple[type[Exception], ...]:
    """Return what a port raises when it has gone.

    `TypeError`: closed during a read. `termios.error` is neither an OSError nor a SerialException.
    """
    try:
        import termios
    except ImportError:  # Windows
        return (OSError, TypeError, ValueError, NotImplementedError)
    return (OSError, TypeError, ValueError, NotImplementedError, termios.error)


class SerialSource:
    """A serial device that sends one reading a line. Opened exclusively: readers steal bytes."""

    joins_midway = True
    stamped_on_arrival = True

    def __init__(
        self,
        device: str,
        baud: int = DEFAULT_BAUD,
        byte_bits: int = 8,
        parity: str = "N",
        stop_bits: float = 1,
    ) -> None:
        """Name the device; nothing is opened yet."""
        self.label = device
        self._device = device
        self._settings = {
            "baudrate": baud,
            "bytesize": byte_bits,
            "parity": parity,
            "stopbits": stop_bits,
        }
        self._identity: UsbIdentity | None = None
        self._port: Any = None

    def open(self) -> None:
        """Open the device, under another name where the same USB adapter has moved."""
        import serial

        device = self._device
        if self._identity is not None:
            device = device_with(self._identity) or device
        # a pyserial URL takes no lock of its own; a device must have one
        # and RFC 2217 knows no write timeout
        extra = {} if "://" in device else {"exclusive": True, "write_timeout": 0.5}
        try:
            port = serial.serial_for_url(device, timeout=0.1, do_not_open=True, **extra)
            for name, value in self._settings.items():
                setattr(port, name, value)
            port.open()
        except port_errors() as error:
            raise unavailable(device, *_what_to_do(error)) from error
        self._port = port
        self.label = device
        self._identity = identity_of(device) or self._identity

    def read(self, timeout_s: float) -> bytes:
        """Return what has arrived; waits for the first byte at most `timeout_s`."""
        port = self._port
        data = b""
        try:
            if port.timeout != timeout_s:
                port.timeout = timeout_s
            # one read of what is there: reading by line is some 500 times slower and falls behind
            data = port.read(1)
            waiting = port.in_waiting if data else 0
            return bytes(data + port.read(waiting)) if waiting else bytes(data)
        except port_errors() as error:
            if data:
                return bytes(data)  # the next read finds the port gone
            raise lost(self.label, _unplugged(error)) from error

    def send(self, text: str) -> None:
        """Send a line to a simulated gauge set."""
        self.write(f"{text}\n".encode())

    def write(self, data: bytes) -> None:
        """Send bytes: the query of a polled instrument."""
        try:
            self._port.write(data)
        except port_errors() as error:
            raise lost(self.label, _unplugged(error)) from error

    def clear_input(self) -> None:
        """Forget what has arrived and was not read."""
        try:
            self._port.reset_input_buffer()
        except port_errors() as error:
            raise lost(self.label, _unplugged(error)) from error

    def close(self) -> None:
        """Close the device."""
        port, self._port = self._port, None
        if port is not None:
            try:
                port.close()
            except port_errors():
                return


def _what_to_do(error: Exception) -> tuple[str, str]:
    """Return what is wrong with a port that did not open, and the way out, in plain words."""
    words = str(error).lower()
    number = getattr(error, "errno", None)
    if number in (11, 16) or any(word in words for word in _BUSY_WORDS):
        advice = "close that program: two readers steal data from each other"
        return "in use by another program", advice
    if number == 2 or "filenotfound" in words or "no such file" in words:
        return "no such device", "plug the gauge in and give the port's name"
    if number == ENOTTY or any(word in words for word in _NO_PORT_WORDS):
        return "this is no serial port", "choose a port from the list, or give a log's file name"
    if number == EIO or f"({EIO}," in words:
        return "nothing is at this port", "plug the gauge in, or choose another port"
    if number == 13 or "permission" in words:
        return "no permission", "allow this user to use serial ports (on Linux: group dialout)"
    return " ".join(str(error).split()) or "cannot be opened", "check the name and the cable"


def _unplugged(error: Exception) -> str:
    """Return pyserial's many ways of saying so as one."""
    if isinstance(error, OSError):
        return Sentence("disconnected")
    return Sentence("disconnected ({error})", error=str(error))
