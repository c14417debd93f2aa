"""Map files and dialogues, mutated piece by piece: a map, or one sentence that says what is wrong.

Size, depth and time are bounded for both.
"""

import contextlib
import time
from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent.errors import RefusedInputError
from co2vent.wire.map_file import MAX_FILE_BYTES, read_small_text
from co2vent.wire.polled import parse_dialogue
from co2vent.wire.register_map import parse_register_map

MAP = """
[metadata]
altitude_m = "120"
gauge_full_scale = "60 bar_g"

[[channel]]
column = "pressure_bar_g"
table = "holding"
register = 0
type = "float32"
word_order = "big"
scale = 1.0
offset = 0.0
invalid = [32767]

[[channel]]
column = "line_temperature_degC"
table = "input"
register = 12
type = "int16"
scale = 0.1
valid_min = -600
valid_max = 600
"""
DIALOGUE = r"""
query = "READ?\r\n"
end = "\n"
pattern = 'P=(?P<p>[-+.\d]+) BAR T=(?P<t>\S+)'

[[channel]]
field = "p"
column = "pressure_bar_g"

[[channel]]
field = "t"
column = "line_temperature_degC"
scale = 1.0
"""
PIECES = [
    "[",
    "]",
    "{a=",
    "nan",
    "-inf",
    "9" * 400,
    "1e308",
    "0x7fffffffffffffffff",
    "\0",
    "(?P<p>",
    "(",
    "*",
]
EDITS = st.lists(
    st.tuples(
        st.integers(0, 420), st.integers(0, 40), st.text(max_size=10) | st.sampled_from(PIECES)
    ),
    min_size=1,
    max_size=4,
)


def mutated(text: str, edits: list[tuple[int, int, str]]) -> str:
    for at, length, new in edits:
        text = text[:at] + new + text[at + length :]
    return text


def test_the_corpus_itself_is_understood() -> None:
    assert len(parse_register_map(MAP, "map").channels) == 2
    assert len(parse_dialogue(DIALOGUE, "dialogue").channels) == 2


@settings(max_examples=400)
@given(EDITS)
def test_a_mutated_map_is_a_map_or_refused(edits: list[tuple[int, int, str]]) -> None:
    with contextlib.suppress(RefusedInputError):
        parse_register_map(mutated(MAP, edits), "map")


@settings(max_examples=400)
@given(EDITS, st.binary(max_size=60))
def test_a_mutated_dialogue_is_a_dialogue_or_refused(
    edits: list[tuple[int, int, str]], answer: bytes
) -> None:
    with contextlib.suppress(RefusedInputError):
        dialogue = parse_dialogue(mutated(DIALOGUE, edits), "dialogue")
        cells = dialogue.cells(answer)
        assert cells is None or len(cells) == len(dialogue.channels)


DEEP = {
    "lists": "a = " + "[" * 60_000,
    "tables": "a = " + "{a=" * 20_000,
    "dots": "a" + ".a" * 30_000 + " = 1",
    "dots in a table": "a = {b" + ".b" * 30_000 + " = 1}",
    "header": "[a" + ".a" * 30_000 + "]",
    "digits": "[[channel]]\nregister = " + "9" * 60_000,
    "channels": "[[channel]]\n" * 5_000,
}


@pytest.mark.parametrize("parse", [parse_register_map, parse_dialogue])
@pytest.mark.parametrize("text", DEEP.values(), ids=DEEP.keys())
def test_depth_is_bounded_and_soon_refused(text: str, parse: Callable[[str, str], object]) -> None:
    assert len(text) <= MAX_FILE_BYTES
    began_s = time.monotonic()
    with pytest.raises(RefusedInputError) as caught:
        parse(text, "map")
    assert time.monotonic() - began_s < 2.0
    assert len(str(caught.value)) < 1000


def test_size_is_bounded(tmp_path: Path) -> None:
    (tmp_path / "map.toml").write_bytes(b"#" * (MAX_FILE_BYTES + 1))
    with pytest.raises(RefusedInputError, match="is no map"):
        read_small_text(tmp_path / "map.toml")
