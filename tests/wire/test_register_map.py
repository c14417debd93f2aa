"""Register maps: what is certain is taken, everything else is refused in one sentence."""

import contextlib
import math
import struct

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent.errors import RefusedInputError
from co2vent.wire.register_map import TYPES, blocks, parse_register_map
from co2vent.wire.signals import SIGNALS, Fault

CHANNEL = {
    "column": '"pressure_bar_g"',
    "table": '"holding"',
    "register": "0",
    "type": '"uint16"',
}


def channel(**keys: str) -> str:
    merged = {**CHANNEL, **keys}
    return "[[channel]]\n" + "".join(f"{key} = {value}\n" for key, value in merged.items() if value)


def cell(raw_words: list[int], **keys: str) -> str:
    (only,) = parse_register_map(channel(**keys), "map").channels
    return only.cell(raw_words)


# Hand-made from the two's complement and IEEE 754 definitions:
# 0x41980000 is 19.0 (sign 0, exponent 131, fraction 0.1875).
@pytest.mark.parametrize(
    ("kind", "order", "words", "value"),
    [
        ("int16", "", [0xFFFE], "-2"),
        ("uint16", "", [0xFFFE], "65534"),
        ("int32", '"big"', [0xFFFF, 0xFFFE], "-2"),
        ("int32", '"little"', [0xFFFE, 0xFFFF], "-2"),
        ("uint32", '"big"', [0x0001, 0x0000], "65536"),
        ("uint32", '"little"', [0x0000, 0x0001], "65536"),
        ("float32", '"big"', [0x4198, 0x0000], "19"),
        ("float32", '"little"', [0x0000, 0x4198], "19"),
    ],
)
def test_types_and_word_orders(kind: str, order: str, words: list[int], value: str) -> None:
    assert cell(words, type=f'"{kind}"', word_order=order) == value


def test_a_value_is_raw_times_scale_plus_offset() -> None:
    assert float(cell([1902], scale="0.01", offset="-1")) == pytest.approx(18.02)


@pytest.mark.parametrize(
    ("words", "keys", "said"),
    [
        ([32767], {"invalid": "[32767]"}, ""),
        ([66], {"valid_max": "65"}, Fault.OVER_RANGE),
        ([3], {"valid_min": "4"}, Fault.UNDER_RANGE),
        ([0x7FC0, 0], {"type": '"float32"', "word_order": '"big"'}, ""),  # NaN
        ([0x7F80, 0], {"type": '"float32"', "word_order": '"big"'}, Fault.OVER_RANGE),  # infinity
    ],
)
def test_what_is_no_reading_is_no_number(words: list[int], keys: dict[str, str], said: str) -> None:
    assert cell(words, **keys) == said


# NAMUR NE 43: measurement 3.8 to 20.5 mA; below 3.6 and from 21 mA a failure
@pytest.mark.parametrize(
    ("milliamperes", "said"),
    [
        (0.0, Fault.FAULT),
        (3.59, Fault.FAULT),
        (3.6, Fault.UNDER_RANGE),
        (3.79, Fault.UNDER_RANGE),
        (3.8, "-0.75"),
        (4.0, "0"),
        (12.0, "30"),
        (20.0, "60"),
        (20.5, "61.875"),
        (20.51, Fault.OVER_RANGE),
        (20.99, Fault.OVER_RANGE),
        (21.0, Fault.FAULT),
        (22.5, Fault.FAULT),
    ],
)
def test_a_live_zero_current_tells_faults_from_values(milliamperes: float, said: str) -> None:
    raw = round(milliamperes * 1000)
    keys = {"scale": "0.001", "signal": '"4-20mA"', "range": "[0, 60]"}
    got = cell([raw], **keys)
    assert got == said or float(got) == pytest.approx(float(said), abs=1e-9)


def test_a_ratiometric_voltage_is_scaled_between_its_live_zero_and_full() -> None:
    signal = SIGNALS["0.5-4.5V"]
    assert signal.fraction(0.5) == (0.0, Fault.NONE)
    assert signal.fraction(2.5) == (0.5, Fault.NONE)
    assert signal.fraction(4.5) == (1.0, Fault.NONE)
    for volts in (0.0, 0.24, 4.76, 5.0):
        assert signal.fraction(volts)[1] is Fault.FAULT


def test_touching_registers_are_read_at_once_and_unknown_ones_are_not() -> None:
    text = "".join(
        channel(column=f'"{column}"', register=str(register), type='"float32"', word_order='"big"')
        for column, register in (
            ("pressure_bar_g", 10),
            ("line_temperature_degC", 12),
            ("ambient_temperature_degC", 20),
        )
    )
    found = [(b.table, b.start, b.count) for b in blocks(parse_register_map(text, "map").channels)]
    assert found == [("holding", 10, 4), ("holding", 20, 2)]


@pytest.mark.parametrize(
    ("keys", "said"),
    [
        ({"column": '"pressure_bar"'}, "gauge or absolute"),
        ({"column": '"humidity"'}, "no pressure column"),
        ({"column": '"note"'}, "holds no number"),
        ({"column": ""}, "column is missing"),
        ({"type": '"float64"'}, "type must be one of"),
        ({"type": '"float32"'}, "needs word_order"),
        ({"table": '"coil"'}, "table must be one of"),
        ({"register": "-1"}, "from 0 to 65535"),
        ({"register": "65536"}, "from 0 to 65535"),
        ({"register": "1.5"}, "from 0 to 65535"),
        ({"register": "true"}, "from 0 to 65535"),
        ({"scale": "0"}, "scale 0"),
        ({"scale": "inf"}, "finite"),
        ({"offset": '"1"'}, "must be a number"),
        ({"valid_min": "5", "valid_max": "5"}, "valid_min must be below"),
        ({"invalid": "5"}, "list of numbers"),
        ({"wordorder": '"big"'}, "unknown key 'wordorder'"),
        ({"signal": '"0-20mA"'}, "signal must be one of"),
        ({"signal": '"4-20mA"'}, "range must be"),
        ({"range": "[0, 60]"}, "range needs a signal"),
    ],
)
def test_what_is_not_certain_is_refused_by_channel_and_key(keys: dict[str, str], said: str) -> None:
    with pytest.raises(RefusedInputError, match=said.replace("(", r"\(")) as caught:
        parse_register_map(channel(**keys), "gauges.toml")
    assert "gauges.toml" in str(caught.value)
    assert "\n" not in str(caught.value)


@pytest.mark.parametrize("text", ["", "x = 1", "[[channel]", "channel = 3", "[channel]\na = 1"])
def test_a_map_without_channels_is_refused(text: str) -> None:
    with pytest.raises(RefusedInputError):
        parse_register_map(text, "map")


def test_a_column_named_twice_is_refused() -> None:
    with pytest.raises(RefusedInputError, match="named twice"):
        parse_register_map(channel() + channel(register="1"), "map")


def test_metadata_of_the_gauges_stand_before_the_columns() -> None:
    text = '[metadata]\ngauge_full_scale = "60 bar_g"\n' + channel()
    preamble = parse_register_map(text, "map").preamble
    assert preamble == ("# gauge_full_scale: 60 bar_g", "pressure_bar_g")
    with pytest.raises(RefusedInputError, match="unknown key 'colour'"):
        parse_register_map('[metadata]\ncolour = "red"\n' + channel(), "map")


plain = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=12),
    lambda inner: st.lists(inner, max_size=3),
    max_leaves=4,
)


def toml_value(value: object) -> str:
    if value is None:
        return '""'
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, float):
        return "nan" if math.isnan(value) else repr(value)
    if isinstance(value, list):
        return "[" + ", ".join(toml_value(each) for each in value) + "]"
    if isinstance(value, str):
        return (
            '"' + "".join(f"\\U{ord(c):08X}" for c in value if not 0xD800 <= ord(c) < 0xE000) + '"'
        )
    return str(value)


@given(
    st.dictionaries(
        st.sampled_from([*CHANNEL, "word_order", "scale", "offset", "invalid", "valid_min",
                         "valid_max", "signal", "range", "other"]),
        plain,
        max_size=4,
    )
)  # fmt: skip
@settings(max_examples=300)
def test_any_toml_is_a_map_or_refused(keys: dict[str, object]) -> None:
    text = channel(**{key: toml_value(value) for key, value in keys.items()})
    with contextlib.suppress(RefusedInputError):
        assert len(parse_register_map(text, "map").channels) == 1


@given(st.text(max_size=200))
def test_any_text_is_a_map_or_refused(text: str) -> None:
    with pytest.raises(RefusedInputError):
        parse_register_map(text, "map")


@given(
    st.sampled_from(sorted(TYPES)),
    st.lists(st.integers(0, 0xFFFF), min_size=2, max_size=2),
    st.sampled_from(["", "[0, 65535]"]),
)
def test_any_registers_give_a_finite_number_or_a_word(
    kind: str, words: list[int], invalid: str
) -> None:
    count = TYPES[kind][0]
    got = cell(
        words[:count],
        type=f'"{kind}"',
        word_order='"big"' if count == 2 else "",
        scale="1e300",
        invalid=invalid,
    )
    assert got in {"", *Fault} or math.isfinite(float(got))
    assert struct.calcsize(TYPES[kind][1]) == 2 * count
