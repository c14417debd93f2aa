"""What a tried source is said to be: each finding, from batches with times wound by hand."""

from collections.abc import Callable
from pathlib import Path

import pytest

from co2vent.wire.growing_file import GrowingFileSource
from co2vent.wire.link import Lines
from co2vent.wire.modbus import ModbusSource
from co2vent.wire.polled import PolledAsciiSource
from co2vent.wire.probe import Batch, LineKind, ProbedLine, probe_batches
from co2vent.wire.serial_port import SerialSource
from co2vent.wire.source import Source
from co2vent.wire.source_check import Finding, Heard, SourceCheck
from tests.wire.conftest import Gauge, ModbusDevice


def _heard(source: Source, seconds: float, columns: list[str] | None = None) -> list[ProbedLine]:
    return [line for batch in probe_batches(source, seconds, columns) for line in batch.lines]


def _check(*steps: tuple[float, list[tuple[LineKind, str]]], from_file: bool = False) -> Heard:
    """Let lines arrive at the given times."""
    check = SourceCheck(from_file=from_file)
    check.take(Batch(), 0.0)
    count = 0
    for at_s, lines in steps:
        count += sum(len(raw) + 1 for _, raw in lines)
        made = tuple(ProbedLine(raw, None, f"about {raw}", kind) for kind, raw in lines)
        check.take(Batch(made, bytes_heard=count), at_s)
    return check.heard()


ROW = (LineKind.READING, "12.3")
BAD = (LineKind.REJECTED, "OL")


def test_nothing_is_said_before_the_source_is_open() -> None:
    assert Heard().finding(100.0) is Finding.OPENING


def test_silence_becomes_a_finding_by_itself_within_two_seconds() -> None:
    heard = _check()
    assert heard.finding(0.5) is Finding.WAITING
    assert heard.finding(2.0) is Finding.SILENT


def test_rate_is_that_of_the_last_seconds() -> None:
    slow = [(float(at), [ROW]) for at in range(10)]
    fast = [(10.0 + at / 10, [ROW]) for at in range(60)]
    heard = _check(*slow, *fast)
    assert heard.interval_s == pytest.approx(0.1, rel=0.02)
    assert heard.finding(16.0) is Finding.ARRIVING


def test_readings_older_than_two_seconds_have_stopped() -> None:
    heard = _check(*[(at / 10, [ROW]) for at in range(20)])
    assert heard.finding(1.9 + 1.9) is Finding.ARRIVING
    assert heard.finding(1.9 + 2.1) is Finding.STOPPED


def test_a_slow_instrument_is_slow_and_not_by_turns_stopped() -> None:
    heard = _check(*[(3.0 * at, [ROW]) for at in range(5)])
    assert {heard.finding(12.0 + age) for age in (0.1, 1.0, 2.5, 3.5)} == {Finding.TOO_SLOW}
    assert heard.finding(12.0 + 5.0) is Finding.STOPPED


def test_a_line_that_is_none_is_spoken_of_for_a_while() -> None:
    heard = _check((1.0, [ROW]), (1.1, [BAD]), *[(1.2 + at / 10, [ROW]) for at in range(60)])
    assert (heard.lines, heard.readings, heard.rejected) == (62, 61, 1)
    assert heard.finding(5.0) is Finding.PARTLY
    assert heard.finding(7.2) is Finding.ARRIVING


def test_what_lay_in_a_file_has_no_age_and_no_rate() -> None:
    check = SourceCheck(from_file=True)
    check.take(Batch(), 0.0)
    row = ProbedLine("1,12.3", None, "reading", LineKind.READING)
    for at in range(5):
        check.take(Batch((row,) * 100, lay_there=True, bytes_heard=100), at / 100)
    assert check.heard().finding(0.1) is Finding.FILE_BEING_READ
    check.take(Batch((), lay_there=False, bytes_heard=100), 0.2)
    assert check.heard().finding(0.3) is Finding.FILE_STANDS
    assert check.heard().age_s(0.3) is None
    assert check.heard().interval_s is None
    check.take(Batch((row,), lay_there=False, bytes_heard=110), 0.4)
    assert check.heard().finding(0.5) is Finding.ARRIVING


@pytest.mark.parametrize(
    ("kind", "finding"),
    [
        (LineKind.NO_HEADER, Finding.NO_COLUMNS),
        (LineKind.REFUSED, Finding.REFUSED),
        (LineKind.REJECTED, Finding.NO_READING),
        (LineKind.HEADER, Finding.NO_ROWS),
        (LineKind.LOST, Finding.LOST),
        (LineKind.UNREADABLE, Finding.UNREADABLE),
        (LineKind.ENDED, Finding.ENDED),
    ],
)
def test_each_kind_of_trouble_has_its_finding(kind: LineKind, finding: Finding) -> None:
    assert _check((1.0, [(kind, "x")])).finding(3.0) is finding


def test_a_source_that_is_lost_is_never_arriving_and_may_come_back() -> None:
    lost = _check((1.0, [ROW]), (1.1, [ROW]), (1.2, [(LineKind.LOST, "gone")]))
    assert lost.finding(1.3) is Finding.LOST
    back = _check((1.0, [(LineKind.LOST, "gone")]), (2.0, [(LineKind.BACK, "")]), (2.1, [ROW]))
    assert back.finding(2.2) is Finding.ARRIVING


def test_many_lines_at_once_do_not_divide_by_nothing() -> None:
    heard = _check((1.0, [ROW] * 1000), (1.0, [ROW] * 1000))
    assert heard.interval_s == 0.0
    assert heard.finding(1.1) is Finding.ARRIVING


# --- real far ends ---------------------------------------------------------------------------


def test_a_file_is_read_in_whole_lines_however_it_is_written(tmp_path: Path) -> None:
    log = tmp_path / "other.csv"
    log.write_bytes(b"elapsed_s,pressure_bar_g\n1,12.3")
    batches = probe_batches(GrowingFileSource(log), 5.0)
    seen: list[ProbedLine] = []
    while not seen or seen[-1].kind is not LineKind.HEADER:
        seen += next(batches).lines
    with log.open("ab") as file:
        file.write(b"4\n")
    while seen[-1].kind is not LineKind.READING:
        seen += next(batches).lines
    batches.close()
    assert [line.raw for line in seen] == ["elapsed_s,pressure_bar_g", "1,12.34"]


def test_a_file_without_time_is_refused_as_a_job_would(tmp_path: Path) -> None:
    log = tmp_path / "other.csv"
    log.write_bytes(b"pressure_bar_g\n12.3\n12.4\n")
    lines = _heard(GrowingFileSource(log), 0.3)
    assert lines[-1].kind is LineKind.REFUSED
    assert "no time column" in lines[-1].says


def test_a_file_that_is_closed_early_is_let_go(tmp_path: Path) -> None:
    log = tmp_path / "other.csv"
    log.write_bytes(b"")
    source = GrowingFileSource(log)
    batches = probe_batches(source, 60.0)
    next(batches)
    batches.close()
    assert source._file is None


def test_cells_stand_under_their_names_with_what_was_not_understood(gauge: Gauge) -> None:
    source = SerialSource(gauge.device)
    names = ["pressure_bar_g", "line_temperature_degC", "battery_V", "note"]
    batches = probe_batches(source, 5.0, names)
    next(batches)
    gauge.say(b'\n12.3,x,3.6,"a, b"\n')
    seen: list[ProbedLine] = []
    while not seen:
        seen += next(batches).lines
    batches.close()
    assert [(c.name, c.raw, c.understood) for c in seen[0].cells] == [
        ("pressure_bar_g", "12.3", True),
        ("line_temperature_degC", "x", False),
        ("battery_V", "3.6", True),
        ("note", "a, b", True),
    ]
    assert [c.role is None for c in seen[0].cells] == [False, False, True, False]


def test_registers_stand_beside_the_row_made_of_them(
    modbus: Callable[[list[int]], ModbusDevice], pressure_map: Path
) -> None:
    device = modbus([0x4148, 0x0000])  # IEEE 754: 12.5
    source = ModbusSource(tcp=("127.0.0.1", device.port), map_path=pressure_map)
    lines = _heard(source, 0.5)
    rows = [line for line in lines if line.kind is LineKind.READING]
    assert rows
    assert {(line.raw, line.reply) for line in rows} == {("12.5", "holding 0: 4148 0000")}


def test_an_answer_stands_beside_the_row_made_of_it(gauge: Gauge, tmp_path: Path) -> None:
    import threading

    path = tmp_path / "dialogue.toml"
    path.write_text(
        "query = \"READ?\\r\\n\"\npattern = 'P=(?P<p>[-+.\\d]+) BAR'\n"
        '[[channel]]\nfield = "p"\ncolumn = "pressure_bar_g"\n'
    )

    def answer() -> None:
        gauge.hears()
        gauge.say(b"P=+12.50 BAR\r\n")
        gauge.hears()
        gauge.say(b"E04\r\n")

    threading.Thread(target=answer, daemon=True).start()
    lines = _heard(PolledAsciiSource(gauge.device, path), 0.6)
    replies = [(line.kind, line.reply) for line in lines if line.reply]
    assert replies[:2] == [
        (LineKind.READING, "P=+12.50 BAR\\r\\n"),
        (LineKind.REJECTED, "E04\\r\\n"),
    ]


def test_lines_of_the_wire_itself_are_not_taken_for_the_instruments() -> None:
    from co2vent.readings.log_decoder import LogDecoder
    from co2vent.wire.probe import _lines

    decoder = LogDecoder(stamp=lambda: 0.0)
    (line,) = _lines(decoder, None, Lines(b"no reading: unreadable bytes\n"), "")
    assert (line.kind, line.says) == (LineKind.REJECTED, "unreadable bytes")
