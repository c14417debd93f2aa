"""Every emulated gauge set is read by the source it names, and its valve moved from there."""

import threading
import time
from collections.abc import Callable, Iterator
from typing import Any

import pytest

from co2vent.readings.reading import Reading, Setup
from co2vent.wire.emulator import Outlet, play
from co2vent.wire.emulator_feed import FeedRow
from co2vent.wire.emulator_modbus import ModbusOutlet
from co2vent.wire.emulator_polled import PolledOutlet
from co2vent.wire.emulator_pty import PtyOutlet
from co2vent.wire.emulator_tcp import TcpOutlet
from co2vent.wire.link import Lines, Link
from co2vent.wire.parse import parse_source


class Ramp:
    """A pressure that rises by a centibar every tenth of a second, from 19.00 bar g."""

    preamble = ("# simulated: yes", "elapsed_s,pressure_bar_g,line_temperature_degC,vent_valve")
    setup = Setup(simulated=True)
    interval_s = 0.1

    def __init__(self, seconds: float = 6.0) -> None:
        self.ended = False
        self.valve_words: list[bool] = []
        self._sent = 0
        self._count = int(seconds * 10)

    def rows_until(self, elapsed_s: float) -> list[FeedRow]:
        rows = []
        while self._sent < self._count and self._sent / 10 <= elapsed_s:
            at_s, bar = self._sent / 10, 19.0 + self._sent / 100
            reading = Reading(at_s, bar * 1e5 + 101_325.0, 253.15, vent_open=False)
            rows.append(FeedRow(at_s, f"{at_s:.1f},{bar:.2f},-20.00,closed", reading))
            self._sent += 1
        self.ended = self._sent == self._count
        return rows

    def set_valve(self, is_open: bool) -> None:
        self.valve_words.append(is_open)


OUTLETS: dict[str, Callable[[Ramp], Outlet]] = {
    "pty": lambda feed: PtyOutlet(),
    "tcp": lambda feed: TcpOutlet(0),
    "modbus-tcp": lambda feed: ModbusOutlet(0, feed),
    "modbus-rtu": lambda feed: ModbusOutlet(None, feed),
    "polled": PolledOutlet,
}


@pytest.fixture(params=OUTLETS)
def playing(request: pytest.FixtureRequest) -> Iterator[tuple[str, Ramp, Outlet]]:
    feed = Ramp()
    outlet = OUTLETS[request.param](feed)
    stopping = threading.Event()
    player = threading.Thread(target=play, args=(feed, outlet), kwargs={"stopping": stopping})
    player.start()
    yield request.param, feed, outlet
    stopping.set()
    player.join()
    outlet.close()


def test_a_source_reads_what_its_emulated_gauge_set_shows(
    playing: tuple[str, Ramp, Outlet], gather: Any, text_of: Any
) -> None:
    kind, feed, outlet = playing
    link = Link(parse_source(outlet.source))
    link.open()
    seen = gather(link, lambda arrivals: text_of(arrivals).count(b"\n") > 14, 6.0)
    lines = text_of(seen).decode().splitlines()
    assert "# simulated: yes" in lines
    rows = [line.split(",") for line in lines if line[:1].isdigit()]
    assert len(rows) >= 5
    for at_s, pressure, *_ in rows:
        assert float(pressure) == pytest.approx(19.0 + float(at_s) / 10, abs=1e-5)
    assert kind == "polled" or rows[-1][-1] == "closed"
    times = [float(row[0]) for row in rows]
    assert times == sorted(set(times))  # no row twice
    if kind != "polled":  # an instrument that answers a query has nothing to move
        link.send("open")
        gather(link, lambda arrivals: feed.valve_words, 3.0)
        assert feed.valve_words == [True]
    link.close()


def test_registers_hold_the_first_row_before_anybody_asks() -> None:
    feed = Ramp()
    outlet = ModbusOutlet(0, feed)
    stopping = threading.Event()
    player = threading.Thread(target=play, args=(feed, outlet), kwargs={"stopping": stopping})
    player.start()
    try:
        time.sleep(0.3)  # nobody asks yet
        link = Link(parse_source(outlet.source))
        link.open()
        rows: list[bytes] = []
        while len(rows) < 2:  # the header, then a row
            for arrival in link.read(0.1):
                if isinstance(arrival, Lines):
                    lines = arrival.text.splitlines()
                    rows += [line for line in lines if not line.startswith(b"#")]
        link.close()
        assert rows[1].startswith(b"0,19,")
    finally:
        stopping.set()
        player.join()
        outlet.close()
