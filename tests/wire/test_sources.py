"""Serial, TCP, files and standard input against real far ends, with what goes wrong there."""

import os
import socket
import time
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest

from co2vent.errors import RefusedInputError, SourceLostError, SourceUnavailableError
from co2vent.wire import ports
from co2vent.wire.growing_file import GrowingFileSource
from co2vent.wire.link import Back, Ended, Link, Lost, Unreadable
from co2vent.wire.parse import parse_source
from co2vent.wire.serial_port import SerialSource
from co2vent.wire.standard_input import StandardInputSource
from co2vent.wire.tcp import TcpSource

HEADER = b"elapsed_s,pressure_bar_g\n"


def has(kind: type) -> Any:
    return lambda arrivals: any(isinstance(arrival, kind) for arrival in arrivals)


# --- serial -------------------------------------------------------------------------------


def test_a_serial_gauge_gives_its_lines(gauge: Any, gather: Any, text_of: Any) -> None:
    link = Link(parse_source(f"{gauge.device}?baud=19200"))
    link.open()
    gauge.say(HEADER + b"0.0,19.02\r\n0.1,19.0")
    assert text_of(gather(link, text_of)) == HEADER + b"0.0,19.02\n"
    link.close()


def test_an_unplugged_gauge_is_lost_within_a_second_and_said_once(gauge: Any, gather: Any) -> None:
    link = Link(SerialSource(gauge.device))
    link.open()
    gauge.say(HEADER)
    gather(link, bool)
    unplugged_s = time.monotonic()
    gauge.unplug()
    seen = gather(link, has(Lost))
    assert time.monotonic() - unplugged_s < 1.0
    assert sum(isinstance(arrival, Lost) for arrival in seen) == 1
    assert "disconnected" in seen[-1].reason
    link.close()


def test_a_gauge_that_comes_back_under_another_name_is_found(
    gauges: Any, gather: Any, text_of: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    first, second = gauges(), gauges()
    plugged = [first]

    def comports() -> list[object]:
        # the adapter keeps vendor, product and serial number whatever the system calls its port
        return [
            SimpleNamespace(
                device=g.device, vid=0x403, pid=0x6001, serial_number="A1", interface=None
            )
            for g in plugged
        ]

    monkeypatch.setattr(ports, "_comports", comports)
    link = Link(SerialSource(first.device))
    link.open()
    first.say(HEADER + b"0.0,19.02\n")
    gather(link, text_of)
    plugged[:] = []
    first.say(b"0.1,19")  # the row in progress when the plug is pulled
    first.unplug()
    gather(link, has(Lost))
    plugged[:] = [second]
    (back,) = [a for a in gather(link, has(Back)) if isinstance(a, Back)]
    assert back.label == second.device
    second.say(b".01\n0.2,19.00\n")  # the tail of a row comes first
    assert text_of(gather(link, text_of)) == b"0.2,19.00\n"
    link.close()


def test_two_adapters_that_cannot_be_told_apart_are_not_mixed_up(
    gauges: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    twins = [
        SimpleNamespace(device=f"/dev/x{n}", vid=1, pid=2, serial_number=None, interface=None)
        for n in range(2)
    ]
    monkeypatch.setattr(ports, "_comports", lambda: twins)
    assert ports.device_with(ports.UsbIdentity(1, 2, None, None)) is None


def test_a_second_reader_of_a_port_is_refused_in_plain_words(gauge: Any) -> None:
    first = SerialSource(gauge.device)
    first.open()
    with pytest.raises(SourceUnavailableError, match="in use by another program") as caught:
        SerialSource(gauge.device).open()
    assert "Errno" not in str(caught.value)
    first.close()
    again = SerialSource(gauge.device)
    again.open()
    again.close()


@pytest.mark.parametrize("name", ["/dev/ttyNOSUCH0", "COM77"])
def test_a_port_that_is_not_there_is_refused_in_plain_words(name: str) -> None:
    with pytest.raises(SourceUnavailableError, match="no such device") as caught:
        parse_source(name).open()
    assert "\n" not in str(caught.value)


def test_noise_on_the_wire_is_called_unreadable(gauge: Any, gather: Any, text_of: Any) -> None:
    link = Link(SerialSource(gauge.device))
    link.open()
    gauge.say(b"\n" + b"\xf8\x86\xe6\x00\x1e\n" * 60)
    seen = gather(link, has(Unreadable))
    assert "check baud" in next(a.reason for a in seen if isinstance(a, Unreadable))
    assert all(b"no reading" in line for line in text_of(seen).splitlines())
    link.close()


def test_a_flood_of_a_megabyte_is_read_as_fast_as_it_comes(gauge: Any) -> None:
    import threading

    source = SerialSource(gauge.device)
    source.open()
    row = b"0.0,19.02\n" * 100
    count = 1000  # 1 MB

    def pour() -> None:
        for _ in range(count):
            sent = 0
            while sent < len(row):
                sent += os.write(gauge.master, row[sent:])

    threading.Thread(target=pour, daemon=True).start()
    started_s, received = time.monotonic(), 0
    while received < count * len(row):
        received += len(source.read(1.0))
        assert time.monotonic() - started_s < 20.0
    assert received / (time.monotonic() - started_s) > 1e6  # bytes a second
    source.close()


# --- TCP ----------------------------------------------------------------------------------


def tcp(server: socket.socket) -> TcpSource:
    return TcpSource("127.0.0.1", server.getsockname()[1])


def test_what_a_server_sends_at_connect_is_not_thrown_away(
    server: socket.socket, gather: Any, text_of: Any
) -> None:
    link = Link(tcp(server))
    link.open()
    client, _ = server.accept()
    client.sendall(HEADER + b"0.0,19.02\n")
    assert text_of(gather(link, text_of)) == HEADER + b"0.0,19.02\n"
    client.close()
    assert "closed" in next(a.reason for a in gather(link, has(Lost)) if isinstance(a, Lost))
    link.close()


def test_a_server_that_comes_back_is_joined_without_half_a_row(
    server: socket.socket, gather: Any, text_of: Any
) -> None:
    link = Link(tcp(server))
    link.open()
    client, _ = server.accept()
    client.sendall(HEADER + b"0.0,19.02\n0.1,19")
    gather(link, text_of)
    client.close()
    gather(link, has(Back))
    client, _ = server.accept()
    client.sendall(b".50\n0.2,19.00\n")
    assert text_of(gather(link, text_of)) == b"0.2,19.00\n"
    client.close()
    link.close()


def test_a_server_that_is_not_there_is_refused_in_plain_words(server: socket.socket) -> None:
    port = server.getsockname()[1]
    server.close()
    with pytest.raises(SourceUnavailableError, match="connection refused; check the address"):
        parse_source(f"socket://127.0.0.1:{port}").open()


# --- files --------------------------------------------------------------------------------


def test_a_file_is_followed_from_its_first_row_as_it_grows(
    tmp_path: Path, gather: Any, text_of: Any
) -> None:
    path = tmp_path / "log.csv"
    path.write_bytes(HEADER + b"0.0,19.02\n")
    link = Link(parse_source(str(path)))
    link.open()
    assert text_of(gather(link, text_of)) == HEADER + b"0.0,19.02\n"
    with path.open("ab") as file:
        file.write(b"0.1,19.01\n")
    assert text_of(gather(link, text_of)) == b"0.1,19.01\n"
    link.close()


@pytest.mark.parametrize("how", ["cut", "replaced", "removed"])
def test_a_file_that_is_cut_or_replaced_is_read_anew(
    how: str, tmp_path: Path, gather: Any, text_of: Any
) -> None:
    from co2vent.readings.log_decoder import LogDecoder
    from co2vent.readings.reading import Reading

    path = tmp_path / "log.csv"
    path.write_bytes(HEADER + b"5.0,19.02\n5.1,19.0")  # a row in progress
    link = Link(GrowingFileSource(path))
    link.open()
    text = text_of(gather(link, text_of))
    if how == "cut":
        path.write_bytes(HEADER)
    else:
        path.unlink()
    seen = gather(link, has(Lost))
    path.write_bytes(HEADER + b"0.0,18.00\n")
    seen += gather(link, has(Back)) + gather(link, lambda arrivals: b"18.00" in text_of(arrivals))
    decoder = LogDecoder()
    items = decoder.feed_bytes(text + text_of(seen))
    readings = [(item.at_s, item.segment) for item in items if isinstance(item, Reading)]
    assert readings == [(5.0, 0), (0.0, 1)]  # never 5.1 with half a number
    link.close()


def test_what_was_written_before_a_rotation_is_read(
    tmp_path: Path, gather: Any, text_of: Any
) -> None:
    path = tmp_path / "log.csv"
    path.write_bytes(HEADER + b"0.0,19.02\n")
    link = Link(GrowingFileSource(path))
    link.open()
    gather(link, text_of)
    with path.open("ab") as file:
        path.rename(tmp_path / "log.1.csv")
        file.write(b"0.1,19.01\n")
    path.write_bytes(HEADER + b"0.2,19.00\n")
    seen = gather(link, lambda arrivals: b"19.00" in text_of(arrivals))
    assert b"0.1,19.01\n" in text_of(seen)
    link.close()


@pytest.mark.parametrize("text", ["/no/such/log.csv", "."])
def test_a_file_that_is_not_there_or_a_folder_is_refused(text: str) -> None:
    with pytest.raises(SourceUnavailableError, match="give the log"):
        parse_source(text).open()


# --- standard input -----------------------------------------------------------------------


def test_standard_input_gives_its_lines_and_its_end(gather: Any, text_of: Any) -> None:
    near, far = os.pipe()
    link = Link(StandardInputSource(near))
    link.open()
    os.write(far, HEADER + b"0.0,19.02\n0.1,19.01")
    os.close(far)
    seen = gather(link, has(Ended))
    assert text_of(seen) == HEADER + b"0.0,19.02\n0.1,19.01\n"
    os.close(near)


# --- the text of a SOURCE -----------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "give a source"),
        ("/dev/ttyUSB0?bauds=9600", "unknown option 'bauds'"),
        ("/dev/ttyUSB0?baud=fast", "baud must be a whole number"),
        ("/dev/ttyUSB0?baud", "not key=value|baud must be"),
        ("/dev/ttyUSB0?parity=X", "parity must be one of"),
        ("socket://gauge", "HOST:PORT, e.g. 192.168.0.20:4001"),
        ("socket://gauge:99999", "99999 is no port: 1 to 65535"),
        ("modbus-tcp://gauge:99999", "99999 is no port: 1 to 65535"),
        ("modbus-tcp://gauge", "192.168.0.20:502"),
        ("modbus-tcp://gauge:502", "add map=FILE.toml"),
        ("modbus-tcp://gauge:502?map=/no/such.toml", "give the map's path"),
        ("modbus-rtu:?map=x", "name the device"),
        ("polled:/dev/ttyUSB0", "add map=FILE.toml"),
    ],
)
def test_a_source_whose_meaning_is_not_certain_is_refused(text: str, said: str) -> None:
    with pytest.raises(RefusedInputError, match=said):
        parse_source(text)


def test_modbus_options_are_checked(pressure_map: Path) -> None:
    for options, said in (
        ("unit=256", "unit must be"),
        ("period_s=0", "period_s must be from"),
        ("period_s=5", "period_s must be from"),
        ("period_s=x", "period_s must be a number"),
        ("parity=N", "unknown option 'parity'"),
    ):
        with pytest.raises(RefusedInputError, match=said):
            parse_source(f"modbus-tcp://gauge:502?map={pressure_map}&{options}")


def test_pyserial_urls_are_opened_by_pyserial() -> None:
    source = parse_source("loop://?baud=19200")
    source.open()
    source.send("0.0,19.02")
    assert source.read(0.2) == b"0.0,19.02\n"
    source.close()
    with pytest.raises(SourceUnavailableError, match="nosuch"):
        parse_source("nosuch://x").open()


@pytest.mark.filterwarnings("ignore:set(Daemon|Name):DeprecationWarning")  # pyserial 3.5's own
def test_a_serial_port_shared_over_the_network_is_read_and_set(
    server: socket.socket, gather: Any, text_of: Any
) -> None:
    """RFC 2217, against pyserial's own far end of it; a loop port has the modem lines it wants."""
    import threading

    import serial
    from serial.rfc2217 import PortManager

    port = serial.serial_for_url("loop://", timeout=0.05)
    ended = threading.Event()

    def share() -> None:
        client, _ = server.accept()
        client.settimeout(0.05)
        with client, client.makefile("wb", buffering=0) as out:
            manager = PortManager(port, out)
            while not ended.is_set():
                try:
                    port.write(b"".join(manager.filter(client.recv(1024))))
                except TimeoutError:
                    pass
                except OSError:
                    return
                client.sendall(b"".join(manager.escape(port.read(port.in_waiting))))

    thread = threading.Thread(target=share, daemon=True)
    thread.start()
    link = Link(parse_source(f"rfc2217://127.0.0.1:{server.getsockname()[1]}?baud=19200"))
    link.open()
    assert port.baudrate == 19200
    port.write(HEADER + b"0.0,19.02\n")
    assert b"0.0,19.02\n" in text_of(gather(link, lambda a: b"19.02" in text_of(a)))
    link.close()
    ended.set()
    thread.join(2.0)
    port.close()


def test_reading_what_is_closed_is_a_lost_source_not_a_crash(gauge: Any) -> None:
    source = SerialSource(gauge.device)
    source.open()
    source.close()
    with pytest.raises((SourceLostError, AttributeError)):
        source.read(0.1)


@pytest.mark.skipif(not Path("/dev/null").exists(), reason="no such file here")
@pytest.mark.parametrize("text", ["/dev/null", "/dev/zero"])
def test_a_file_that_is_no_port_is_refused_in_plain_words(text: str) -> None:
    with pytest.raises(SourceUnavailableError, match="this is no serial port") as refused:
        parse_source(text).open()
    assert "Could not" not in str(refused.value)
    assert "(25" not in str(refused.value)
