"""Text from a TCP server: one reading a line.

A plain socket, not pyserial's `socket://`: that one throws away what the server sends at connect,
and the header is sent then.
"""

import select
import socket
from typing import Final

from co2vent.wire.source import lost, unavailable

CONNECT_TIMEOUT_S: Final = 2.0  # a server in the same plant answers in milliseconds
_CHUNK_BYTES: Final = 65536


class TcpSource:
    """A TCP server that sends log text."""

    joins_midway = True
    stamped_on_arrival = True

    def __init__(self, host: str, port: int) -> None:
        """Name the server; nothing is opened yet."""
        self.label = f"socket://{host}:{port}"
        self._address = (host, port)
        self._socket: socket.socket | None = None

    def open(self) -> None:
        """Connect."""
        try:
            self._socket = socket.create_connection(self._address, CONNECT_TIMEOUT_S)
            self._socket.setsockopt(socket.SOL_SOCKET, socket.SO_KEEPALIVE, 1)
        except OSError as error:
            advice = "check the address and that the gauge's server runs"
            raise unavailable(self.label, error, advice) from error

    def read(self, timeout_s: float) -> bytes:
        """Return what has arrived; waits at most `timeout_s`."""
        if self._socket is None:
            raise lost(self.label, "not connected")
        try:
            ready, _, _ = select.select([self._socket], [], [], timeout_s)
            if not ready:
                return b""
            data = self._socket.recv(_CHUNK_BYTES)
        except (OSError, ValueError) as error:
            raise lost(self.label, error) from error
        if not data:
            raise lost(self.label, "the server closed the connection")
        return data

    def send(self, text: str) -> None:
        """Send a line to a simulated gauge set."""
        if self._socket is None:
            return
        try:
            self._socket.sendall(f"{text}\n".encode())
        except OSError as error:
            raise lost(self.label, error) from error

    def close(self) -> None:
        """Disconnect."""
        if self._socket is not None:
            self._socket.close()
            self._socket = None
