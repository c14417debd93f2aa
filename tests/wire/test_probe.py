"""A source tried before the job shows each raw line and what it is taken for."""

import socket
import threading

from co2vent.wire.probe import probe
from co2vent.wire.tcp import TcpSource


def test_each_line_comes_with_what_it_says(server: socket.socket) -> None:
    def serve() -> None:
        client, _ = server.accept()
        client.sendall(
            b"# altitude_m: 120\npressure_bar_g,vent_valve\n19.02,closed\nOL,closed\nhello\n"
            b"pressure_bar_g,vent_valve\n"
        )
        threading.Event().wait(0.5)
        client.close()

    threading.Thread(target=serve, daemon=True).start()
    lines = list(probe(TcpSource("127.0.0.1", server.getsockname()[1]), 0.4))
    assert [line.says for line in lines] == [
        "about the section",
        "header",
        "reading",
        "the gauge shows no value: 'OL'",
        "1 cells where the header has 2",
        "header again",
    ]
    assert lines[2].raw == "19.02,closed"
    assert lines[2].reading is not None
