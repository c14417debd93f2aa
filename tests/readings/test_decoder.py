"""The decoder's promises: any cutting, no crash, and no word that becomes a number."""

import math
import re
import zlib
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent.errors import RefusedInputError
from co2vent.readings.cells import to_number, to_time_ns
from co2vent.readings.lines import MAX_LINE_BYTES, LineAssembler
from co2vent.readings.log_decoder import Decoded, LogDecoder
from co2vent.readings.log_file import decode_log
from co2vent.readings.reading import Reading, Rejection

CANONICAL = b"""# altitude_m: 120
# section_volume_l: 14.5
# gauge_full_scale: 60 bar_g
elapsed_s,pressure_bar_g,line_temperature_degC,ambient_temperature_degC,vent_valve,note
0.0,19.02,-19.8,11.5,closed,
0.5,19.00,-19.8,11.5,open,"cracked, slowly"
1.0,18.10,,11.5,open,
1.5,OL,-19.8,11.5,open,
2.0,17.55,-20.1,11.5,open,
"""
HEADER = b"elapsed_s,pressure_bar_g,line_temperature_degC,vent_valve\n"


def decoded(data: bytes, cuts: list[int] | None = None) -> list[Decoded] | str:
    """Return the items of `data` fed in pieces, or the refusal."""
    decoder = LogDecoder()
    places = sorted({0, len(data), *(cut % (len(data) + 1) for cut in cuts or [])})
    items: list[Decoded] = []
    try:
        for start, stop in pairwise(places):
            items += decoder.feed_bytes(data[start:stop])
        return items + decoder.finish()
    except RefusedInputError as error:
        return str(error)


def mutated(data: bytes, edits: list[tuple[int, int, bytes]]) -> bytes:
    for place, drop, insert in edits:
        at = place % (len(data) + 1)
        data = data[:at] + insert + data[at + drop :]
    return data


EDITS = st.lists(
    st.tuples(
        st.integers(0, 10_000),
        st.integers(0, 12),
        st.one_of(
            st.binary(max_size=6),
            st.sampled_from(
                [b"\r\n", b"\r", b"\n", b"\0", b'"', b",", b";", b"\t", b"#", b"nan", b"1e999",
                 b"1_000", b"0x1F", b"OL", b"-", b"elapsed_s,pressure_psig\n", b"\xff\xfe", b" "]
            ),
        ),
    ),
    max_size=4,
)  # fmt: skip


@settings(deadline=None, max_examples=150)
@given(EDITS, st.lists(st.integers(0, 10_000), max_size=12))
def test_any_cutting_of_the_stream_gives_the_same_items(
    edits: list[tuple[int, int, bytes]], cuts: list[int]
) -> None:
    data = mutated(CANONICAL, edits)
    assert decoded(data, cuts) == decoded(data)


@settings(deadline=None, max_examples=150)
@given(EDITS)
def test_a_whole_file_gives_what_the_stream_gives(edits: list[tuple[int, int, bytes]]) -> None:
    rows = b"".join(b"%d.%d,%d.%02d,-19.8,closed\n" % (i // 10, i % 10, 19 - i // 30, i % 60)
                    for i in range(90))  # fmt: skip
    data = mutated(HEADER + rows, edits)
    expected = decoded(data)
    try:
        found: list[Decoded] | str = list(decode_log(data).items())
    except RefusedInputError as error:
        found = str(error)
    if isinstance(expected, list) and not any(isinstance(item, Reading) for item in expected):
        assert isinstance(found, str)
        assert found.startswith("no readings")
    else:
        assert found == expected


@pytest.mark.parametrize("piece_bytes", [200, 700])
@settings(deadline=None, max_examples=60)
@given(data=st.data())
def test_clean_blocks_beside_unusual_ones_keep_lines_and_segments(
    piece_bytes: int, data: st.DataObject
) -> None:
    number = st.decimals(-30, 30, places=2).map(str)
    row = st.tuples(
        st.decimals(0, 50, places=1).map(str), number, st.one_of(number, st.just("")),
        st.sampled_from(["open", "closed", "", "Open", "ajar"]),
    )  # fmt: skip
    rows = data.draw(st.lists(row, min_size=30, max_size=60))
    times = sorted(float(r[0]) for r in rows)
    lines = [f"{t},{p},{k},{v}" for t, (_, p, k, v) in zip(times, rows, strict=True)]
    text = HEADER + "\n".join(lines).encode() + b"\n"
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("co2vent.readings.log_file.PIECE_BYTES", piece_bytes)
        patch.setattr("co2vent.readings.log_file.SMALL_PIECE_BYTES", 100)
        try:
            found = list(decode_log(text).items())
        except RefusedInputError:
            return
    assert found == decoded(text)


@settings(deadline=None, max_examples=200)
@given(st.binary(max_size=400))
def test_random_bytes_never_crash_and_never_become_a_reading_by_chance(data: bytes) -> None:
    items = decoded(HEADER + data)
    assert isinstance(items, list)
    for item in items:
        if isinstance(item, Reading):
            assert math.isfinite(item.pressure_pa)
            assert 0 <= item.pressure_pa < 6.1e7
            assert math.isfinite(item.at_s)


@settings(deadline=None)
@given(st.text(max_size=30))
def test_a_number_is_what_the_plain_grammar_says_and_nothing_else(text: str) -> None:
    value = to_number(text)
    # An independent statement of the grammar, ASCII digits only.
    plain = re.fullmatch(r"[-+]?(\d+[.,]?\d*|[.,]\d+)([eE][-+]?\d+)?", text, re.ASCII)
    assert value is None or (plain is not None and math.isfinite(value))


@pytest.mark.parametrize(
    "word",
    ["nan", "NaN", "inf", "-inf", "1_000", "0x1F", "1e999", "٣", "1 000", "1.2.3", "--1", "", ".",
     "1e", "True", "9.91E37", "+", "1,2,3", "12a", "½"],
)  # fmt: skip
def test_words_that_other_readers_take_are_no_numbers(word: str) -> None:
    assert to_number(word) is None


@pytest.mark.parametrize(
    "word", ["OL", "----", "Err", "over", "9.91E37", "NaN", "9.9e37", "inf", "-----"]
)
def test_over_range_words_are_said_to_be_so(word: str) -> None:
    items = decoded(HEADER + f"0,{word},-10,open\n".encode())
    assert [(item.line, item.over_range) for item in items if isinstance(item, Rejection)] == [
        (2, True)
    ]


@pytest.mark.parametrize(
    ("row", "why"),
    [
        ("1,-1.5,,", "vacuum"),
        ("1,9999,,", "above what the gauge"),
        ("1,,,", "no pressure"),
        ("x,5.2,,", "no time"),
        ("1,5.2", "2 cells where the header has 4"),
        ("1,5.2,1,open,9", "5 cells where the header has 4"),
        ('1,"5.2,,', "quote"),
        ("1,5.2x,,", "not a number"),
    ],
)
def test_a_row_that_can_t_be_a_reading_is_rejected_with_line_and_reason(row: str, why: str) -> None:
    items = decoded(HEADER + b"0,5.2,,\n" + row.encode() + b"\n")
    assert isinstance(items, list)
    rejection = items[1]
    assert isinstance(rejection, Rejection)
    assert rejection.line == 3
    assert why in rejection.reason


def test_a_line_without_end_is_dropped_with_bounded_memory() -> None:
    assembler = LineAssembler()
    for _ in range(1000):
        assert assembler.feed(b"7" * 1000) == []
        assert len(assembler._line) <= MAX_LINE_BYTES
    lines = assembler.feed(b"\n1,2\n")
    assert [(line.number, line.text) for line in lines] == [(1, None), (2, "1,2")]


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r"])
def test_line_numbers_count_every_kind_of_line_end(end: str) -> None:
    text = end.join(["a", "", "b", "c", ""])
    lines = LineAssembler().feed(text.encode())
    assert [(line.number, line.text) for line in lines] == [
        (1, "a"), (2, ""), (3, "b"), (4, "c"),
    ]  # fmt: skip


def with_check(row: str) -> str:
    return f"{row},{zlib.crc32(row.encode()):08x}\n"


def test_a_row_whose_check_sum_fails_is_rejected_at_any_damage() -> None:
    header = "elapsed_s,pressure_bar_g,prompt,row_check\n"
    good = with_check("0.0,5.21,keep holding") + with_check("0.1,5.22,keep holding")
    log = decode_log((header + good).encode())
    assert len(log.readings) == 2
    assert log.rejections == ()
    last = with_check("0.2,5.23,keep holding").encode()
    for length in range(1, len(last) - 1):
        torn = decode_log((header + good).encode() + last[:length])
        assert len(torn.readings) == 2
        assert len(torn.rejections) == 1
    for place in range(len(last) - 1):
        for bit in range(8):
            damaged = last[:place] + bytes([last[place] ^ (1 << bit)]) + last[place + 1 :]
            hurt = decode_log((header + good).encode() + damaged)
            # A letter-case flip in the check sum itself changes nothing.
            shown = hurt.readings.pressure_pa[2:].tolist()
            assert shown == [] or damaged.lower() == last.lower()


def test_a_number_cut_short_at_the_end_of_a_file_is_no_reading() -> None:
    text = b"elapsed_s,pressure_bar_g\n0.0,19.02\n0.1,19.03\n"
    whole = decode_log(text)
    for length in range(len(text) - 6, len(text) - 1):
        cut = decode_log(text[:length]).readings.pressure_pa.tolist()
        assert cut == whole.readings.pressure_pa.tolist()[: len(cut)]
    assert len(decode_log(text[:-1]).readings) == 2


def test_metadata_after_the_first_reading_are_not_used_and_said() -> None:
    items = decoded(HEADER + b"0,5.2,,\n# altitude_m: 2000\n# mood: fine\n1,5.2,,\n")
    assert isinstance(items, list)
    assert [type(item) for item in items] == [Reading, Rejection, Reading]
    first, _, last = items
    assert isinstance(first, Reading)
    assert isinstance(last, Reading)
    assert first.pressure_pa == last.pressure_pa


# ISO 8601-1:2019 forms; seconds apart by hand.
@pytest.mark.parametrize(
    ("first", "second", "apart_s"),
    [
        ("2026-01-02T10:00:00Z", "2026-01-02T10:00:00.25Z", 0.25),
        ("2026-01-02T10:00:00+01:00", "2026-01-02T09:00:01Z", 1.0),
        ("2026-01-02T10:00:00-0530", "2026-01-02T15:30:00+00", 0.0),
        ("20260102T100000Z", "2026-01-02 10:00:05Z", 5.0),
        ("2026-02-28T23:59:59", "2026-03-01T00:00:00", 1.0),
        ("2026-01-02T10:00:00,5", "2026-01-02T10:00:01,0", 0.5),
    ],
)
def test_times_are_read_with_and_without_zone(first: str, second: str, apart_s: float) -> None:
    a, b = to_time_ns(first), to_time_ns(second)
    assert a is not None
    assert b is not None
    assert (b[0] - a[0]) / 1e9 == apart_s


@pytest.mark.parametrize("text", ["01/02/2026 10:00:00", "2026-13-01T10:00:00", "10", "", "noon"])
def test_times_that_could_mean_two_days_or_none_are_refused(text: str) -> None:
    assert to_time_ns(text) is None
