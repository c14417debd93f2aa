"""Modbus against pymodbus's own server; every reply that is no reading gives no number."""

import struct
import time
from pathlib import Path
from typing import Any

import pytest

from co2vent.errors import SourceUnavailableError
from co2vent.wire.link import Back, Lines, Link, Lost
from co2vent.wire.parse import parse_source

PERIOD_S = 0.05


def words(value: float) -> list[int]:
    return list(struct.unpack(">HH", struct.pack(">f", value)))


def opened(port: int, map_path: Path, unit: int = 1) -> Link:
    text = f"modbus-tcp://127.0.0.1:{port}?unit={unit}&map={map_path}&period_s={PERIOD_S}"
    link = Link(parse_source(text))
    link.open()
    return link


def rows(link: Link, seconds: float) -> list[bytes]:
    end_s = time.monotonic() + seconds
    text = b""
    while time.monotonic() < end_s:
        text += b"".join(a.text for a in link.read(0.05) if isinstance(a, Lines))
    return text.splitlines()


def test_registers_become_rows_of_a_log(modbus: Any, pressure_map: Path) -> None:
    device = modbus(words(19.25))
    link = opened(device.port, pressure_map)
    got = rows(link, 0.5)
    assert got[0] == b"pressure_bar_g"
    assert set(got[1:]) == {b"19.25"}
    assert 7 <= len(got[1:]) <= 12  # one each 0.05 s
    assert {request[1:] for request in device.requests} == {(0, 2)}
    link.close()


def test_an_illegal_register_is_said_and_gives_no_number(modbus: Any, tmp_path: Path) -> None:
    path = tmp_path / "map.toml"
    path.write_text(
        '[[channel]]\ncolumn = "pressure_bar_g"\ntable = "holding"\n'
        'register = 900\ntype = "int16"\n'
    )
    link = opened(modbus(words(19.25)).port, path)
    got = rows(link, 0.3)
    assert set(got[1:]) == {b"no reading: Modbus exception 2 (illegal register)"}
    link.close()


def test_a_silent_device_gives_no_number_and_is_lost_within_two_seconds(
    modbus: Any, pressure_map: Path, gather: Any
) -> None:
    device = modbus(words(19.25))
    link = opened(device.port, pressure_map)
    assert rows(link, 0.2)
    device.silent = True
    silent_s = time.monotonic()
    seen = gather(link, lambda arrivals: any(isinstance(a, Lost) for a in arrivals))
    print(f"lost after {time.monotonic() - silent_s:.2f} s")
    assert time.monotonic() - silent_s < 2.0
    text = b"".join(a.text for a in seen if isinstance(a, Lines))
    # a reply that was under way may still come
    assert {line for line in text.splitlines() if line != b"19.25"} == {
        b"no reading: no reply in time"
    }
    device.silent = False
    gather(link, lambda arrivals: any(isinstance(a, Back) for a in arrivals))
    assert b"19.25" in rows(link, 0.3)
    link.close()


def test_a_unit_that_does_not_exist_gives_no_number(modbus: Any, pressure_map: Path) -> None:
    link = opened(modbus(words(19.25)).port, pressure_map, unit=9)
    assert b"19.25" not in rows(link, 0.5)
    link.close()


def test_words_in_the_wrong_order_give_no_number(
    modbus: Any, tmp_path: Path, pressure_map: Path
) -> None:
    """19.25 is 0x419A 0x0000, swapped 2.4e-41; 19.27 is 0x419A 0x28F6, swapped 2.7e-14."""
    text = pressure_map.read_text().replace('"big"', '"little"')
    (tmp_path / "swapped.toml").write_text(text)
    for pressure in (19.25, 19.27):
        link = opened(modbus(words(pressure)).port, tmp_path / "swapped.toml")
        assert set(rows(link, 0.2)[1:]) == {b"fault"}
        link.close()


def test_no_server_is_refused_in_plain_words(server: Any, pressure_map: Path) -> None:
    port = server.getsockname()[1]
    server.close()
    with pytest.raises(SourceUnavailableError, match="check address, cable and power"):
        opened(port, pressure_map)


def test_a_two_gauge_map_with_a_4_20_ma_channel(modbus: Any, tmp_path: Path) -> None:
    path = tmp_path / "map.toml"
    path.write_text(
        '[[channel]]\ncolumn = "pressure_bar_g"\ntable = "input"\nregister = 0\ntype = "uint16"\n'
        'scale = 0.001\nsignal = "4-20mA"\nrange = [0, 60]\n'
        '[[channel]]\ncolumn = "pressure_2_bar_g"\ntable = "input"\nregister = 1\ntype = "int16"\n'
        "scale = 0.01\n"
    )
    device = modbus([12_000, 3002])
    link = opened(device.port, path)
    assert rows(link, 0.2)[:2] == [b"pressure_bar_g,pressure_2_bar_g", b"30,30.02"]
    device.registers = [2_000, 3002]  # the wire of the first is broken
    assert rows(link, 0.2)[-1] == b"fault,30.02"
    link.close()


def frame(pdu: bytes, unit: int = 1) -> bytes:
    """Return an RTU frame; its CRC as in Modbus over Serial Line V1.02, 6.2.2, low byte first."""
    crc = 0xFFFF
    for byte in bytes([unit]) + pdu:
        crc ^= byte
        for _ in range(8):
            crc = crc >> 1 ^ 0xA001 if crc & 1 else crc >> 1
    return bytes([unit]) + pdu + crc.to_bytes(2, "little")


@pytest.mark.parametrize(
    ("answer", "row"),
    [
        (frame(bytes([3, 4]) + struct.pack(">f", 19.25)), b"19.25"),
        (frame(bytes([3, 4]) + struct.pack(">f", 19.25))[:-1] + b"\x00", None),  # CRC broken
        (frame(bytes([3, 4]) + struct.pack(">f", 19.25))[:5], None),  # cut
        (frame(bytes([3, 2, 0x41, 0x9A])), None),  # one register where two were asked for
        (frame(bytes([0x83, 2])), None),  # exception
        (frame(bytes([3, 4]) + struct.pack(">f", 19.25), unit=7), None),  # another unit's answer
        (b"\xff" * 30, None),
        (b"", None),  # silence
    ],
)
def test_a_recorded_rtu_dialogue(
    answer: bytes, row: bytes | None, gauge: Any, pressure_map: Path
) -> None:
    import threading

    link = Link(parse_source(f"modbus-rtu:{gauge.device}?unit=1&map={pressure_map}&period_s=0.3"))
    link.open()
    asked: list[bytes] = []

    def device() -> None:
        try:
            while True:
                asked.append(gauge.hears())
                gauge.say(answer)
        except OSError:
            return

    threading.Thread(target=device, daemon=True).start()
    got = rows(link, 0.8)[1:]
    link.close()
    assert asked[0] == frame(bytes([3, 0, 0, 0, 2]))  # read holding registers, from 0, two
    assert all(line == row or line.startswith(b"no reading") for line in got)
    assert (row in got) == (row is not None)
