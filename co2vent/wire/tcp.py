"""Text from a TCP server: one reading a line.

A plain socket, not pyserial's `socket://`: that one throws away what the server sends at connect,
and the header is sent then.
"""

import select
import socket
from typing import Final

from co2vent.sentence import Sentence
from co2vent.wire.source import lost, unavailable

CONNECT_TIMEOUT_S: Final = 2.0  # a server in the same plant answers in milliseconds
_CHUNK_BYTES: Final = 65536
# A cable that is cut sends no goodbye: the other end is asked after two seconds of silence, each
# second, and given up after three that were not answered.
_KEEP_ALIVE: Final = (("TCP_KEEPIDLE", 2), ("TCP_KEEPINTVL", 1), ("TCP_KEEPCNT", 3))


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
            _keep_alive(self._socket)
        except OSError as error:
            advice = "check the address and that the gauge's server runs"
            raise unavailable(self.label, error, advice) from error

    def read(self, timeout_s: float) -> bytes:
        """Return what has arrived; waits at most `timeout_s`."""
        if self._socket is None:
            raise lost(self.label, Sentence("not connected"))
        try:
            ready, _, _ = select.select([self._socket], [], [], timeout_s)
            if not ready:
                return b""
            data = self._socket.recv(_CHUNK_BYTES)
        except (OSError, ValueError) as error:
            raise lost(self.label, error) from error
        if not data:
            raise lost(self.label, Sentence("the server closed the connection"))
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


def _keep_alive(connection: socket.socket) -> None:
    """Have the system notice within seconds that the other end has gone, where it can."""
    connection.setsockopt(socket.SOL_SOCKET, socket.SO_KEEPALIVE, 1)
    for name, value in _KEEP_ALIVE:
        option = getattr(socket, name, None)  # macOS calls the first one TCP_KEEPALIVE
        if option is None and name == "TCP_KEEPIDLE":
            option = getattr(socket, "TCP_KEEPALIVE", None)
        if option is not None:
            connection.setsockopt(socket.IPPROTO_TCP, option, value)
