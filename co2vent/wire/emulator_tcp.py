"""An emulated gauge server: log text over TCP, to everybody who connects."""

import contextlib
import select
import socket

from co2vent.errors import SourceUnavailableError
from co2vent.readings.reading import Reading

_SEND_TIMEOUT_S = 5.0  # a client that reads nothing for so long is gone


class TcpOutlet:
    """A TCP server on this machine."""

    def __init__(self, port: int) -> None:
        """Listen on `port`; 0 takes any free one."""
        try:
            self._server = socket.create_server(("127.0.0.1", port))
        except (OSError, OverflowError) as error:
            raise SourceUnavailableError(
                f"tcp:{port}: {getattr(error, 'strerror', error)}; use another port, or tcp:0"
            ) from error
        self._clients: dict[socket.socket, bytes] = {}
        self.source = f"socket://127.0.0.1:{self._server.getsockname()[1]}"

    def wait_for_reader(self, timeout_s: float) -> bool:
        """Take new clients; return whether there is one."""
        if select.select([self._server], [], [], 0.0 if self._clients else timeout_s)[0]:
            client, _ = self._server.accept()
            client.settimeout(_SEND_TIMEOUT_S)
            client.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
            self._clients[client] = b""
        return bool(self._clients)

    def put(self, texts: list[str], newest: Reading | None) -> None:
        """Send lines to everybody."""
        data = "".join(f"{text}\n" for text in texts).encode()
        for client in list(self._clients):
            try:
                client.sendall(data)
            except OSError:
                self._drop(client)

    def take_commands(self) -> list[str]:
        """Return the lines that clients wrote; take new clients."""
        self.wait_for_reader(0.0)
        words = []
        for client in select.select(list(self._clients), [], [], 0.0)[0] if self._clients else []:
            try:
                data = client.recv(4096)
            except OSError:
                data = b""
            if not data:
                self._drop(client)
                continue
            *lines, rest = (self._clients[client] + data).replace(b"\r", b"\n").split(b"\n")
            self._clients[client] = rest[-64:]
            words += [line.decode("ascii", "replace").strip().lower() for line in lines if line]
        return words

    def drained(self) -> bool:
        """Return `True`: the system delivers what was sent after the connection is shut."""
        return True

    def close(self) -> None:
        """Disconnect everybody, after what they have been sent."""
        for client in list(self._clients):
            with contextlib.suppress(OSError):
                client.shutdown(socket.SHUT_WR)
            self._drop(client)
        self._server.close()

    def _drop(self, client: socket.socket) -> None:
        self._clients.pop(client, None)
        client.close()
