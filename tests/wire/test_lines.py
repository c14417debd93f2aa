"""Whole lines only, whatever is cut, lost or unreadable."""

from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent.readings.log_decoder import LogDecoder
from co2vent.readings.reading import Reading
from co2vent.wire.lines import LONGEST_LINE_BYTES, LineAssembler

ROWS = [f"{n}.0,{19 - n / 100:.2f},closed".encode() for n in range(40)]
STREAM = b"# altitude_m: 0\nelapsed_s,pressure_bar_g,vent_valve\n" + b"\n".join(ROWS) + b"\n"


def readings(lines: bytes, columns: list[str] | None = None) -> list[Reading]:
    times = iter(range(100_000))
    decoder = LogDecoder(columns, None, lambda: float(next(times)))
    return [item for item in decoder.feed_bytes(lines) if isinstance(item, Reading)]


@given(st.lists(st.integers(0, len(STREAM)), max_size=8), st.sampled_from([b"\n", b"\r\n", b"\r"]))
def test_any_cutting_and_any_line_end_give_the_same_lines(cuts: list[int], end: bytes) -> None:
    stream = STREAM.replace(b"\n", end)
    assembler = LineAssembler()
    edges = [0, *sorted(min(cut, len(stream)) for cut in cuts), len(stream)]
    lines = b"".join(assembler.feed(stream[a:b]) for a, b in pairwise(edges))
    assert lines == STREAM


def test_a_connection_cut_at_any_byte_never_makes_a_number_of_a_part() -> None:
    sent = {(reading.at_s, reading.pressure_pa) for reading in readings(STREAM)}
    for cut in range(len(STREAM)):
        assembler = LineAssembler(skip_first=True)
        lines = assembler.feed(STREAM[:cut])
        assembler.cut()
        lines += assembler.feed(STREAM[cut:])  # joined midway: the tail of a row comes first
        got = readings(lines, ["elapsed_s", "pressure_bar_g", "vent_valve"])
        assert {(reading.at_s, reading.pressure_pa) for reading in got} <= sent
        assert len(got) >= len(ROWS) - 2  # the cut row, and nothing else that was sent whole


def test_a_stream_of_bare_numbers_joined_midway_drops_its_first_line() -> None:
    stream = b"".join(f"{19.02 + n:.2f}\n".encode() for n in range(10))
    sent = {reading.pressure_pa for reading in readings(stream, ["pressure_bar_g"])}
    for cut in range(1, 40):
        lines = LineAssembler(skip_first=True).feed(stream[cut:])
        assert {r.pressure_pa for r in readings(lines, ["pressure_bar_g"])} <= sent


def test_a_header_at_the_start_is_not_taken_for_a_tail() -> None:
    assert LineAssembler(skip_first=True).feed(b"elapsed_s,pressure_bar_g\n0,1\n").count(b"\n") == 2


def test_a_header_without_time_is_believed_when_the_row_after_it_has_as_many_cells() -> None:
    assembler = LineAssembler(skip_first=True)
    stream = b"pressure_bar_g,vent_valve\n# altitude_m: 120\n19.02,closed\n"
    assert assembler.feed(stream) == (
        b"# altitude_m: 120\npressure_bar_g,vent_valve\n19.02,closed\n"
    )


def test_the_tail_of_a_header_does_not_make_the_time_a_pressure() -> None:
    # joined after "elapsed_s,": the rows have one cell more, here a blank one
    lines = LineAssembler(skip_first=True).feed(b"pressure_bar_g,vent_valve\n5.0,19.02,\n")
    assert lines == b"5.0,19.02,\n"
    assert readings(lines) == []


@given(st.binary(max_size=3000))
@settings(max_examples=300)
def test_random_bytes_never_crash_and_the_buffer_stays_small(data: bytes) -> None:
    assembler = LineAssembler()
    for start in range(0, len(data), 100):
        assembler.feed(data[start : start + 100])
    assert len(assembler._pending) <= LONGEST_LINE_BYTES


def test_a_megabyte_without_a_line_end_is_one_rejected_line() -> None:
    assembler = LineAssembler()
    for _ in range(1000):
        assert assembler.feed(b"1" * 1000) == b""
        assert len(assembler._pending) <= LONGEST_LINE_BYTES
    assert assembler.feed(b"\n").startswith(b"no reading: line longer")
    assert assembler.feed(b"19.02\n").startswith(b"no reading")  # follows on an unreadable one
    assert assembler.feed(b"19.03\n") == b"19.03\n"


def garbled(text: bytes, seed: int) -> bytes:
    """Return what a UART at twice the baud rate makes of 8N1 text: each bit is sampled twice."""
    bits: list[int] = []
    for byte in text:
        frame = [0] + [byte >> n & 1 for n in range(8)] + [1]
        bits += [bit for bit in frame for _ in range(2)]
        bits += [1] * (seed % 3)  # idle time between characters
    out = bytearray()
    at = 0
    while at + 10 <= len(bits):
        if bits[at] == 1:  # idle
            at += 1
            continue
        out.append(sum(bits[at + 1 + n] << n for n in range(8)))
        at += 10
    return bytes(out)


@pytest.mark.parametrize("seed", range(6))
def test_a_stream_at_the_wrong_baud_rate_is_unreadable_and_gives_no_number(seed: int) -> None:
    # bits sampled as in a UART's 8N1 frame: start bit 0, eight data bits LSB first, stop bit 1
    text = b"".join(f"{19.0 - n * 0.013 * (seed + 1):.3f}\r\n".encode() for n in range(200))
    assembler = LineAssembler(skip_first=True)
    noise = garbled(text, seed)
    lines = b"".join(assembler.feed(noise[n : n + 16]) for n in range(0, len(noise), 16))
    assert assembler.unreadable
    assert readings(lines, ["pressure_bar_g"]) == []


def test_an_unreadable_stream_is_believed_again_after_three_clean_lines() -> None:
    assembler = LineAssembler()
    assembler.feed(b"\xf8\x81\x06" * 100 + b"\n")
    assert assembler.unreadable
    out = b"".join(assembler.feed(f"19.0{n}\n".encode()) for n in range(5))
    assert out.splitlines()[2:] == [b"19.02", b"19.03", b"19.04"]
    assert out.splitlines()[0].startswith(b"no reading")
    assert not assembler.unreadable


def test_a_degree_sign_in_utf_8_or_an_8_bit_code_page_is_text() -> None:
    for sign in ("°".encode(), b"\xb0"):
        assert LineAssembler().feed(b"P [bar g];T [" + sign + b"C]\n").startswith(b"P [bar g]")
