"""A section file, whole, mutated or made up: a section, or one sentence that says what is wrong."""

import contextlib
import time
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent.errors import Co2ventError, RefusedInputError
from co2vent.practice.scenario import scenario_from
from co2vent.practice.scenario_file import KEYS, MAX_FILE_BYTES, read_tables

CORPUS = b"""[section]
volume_l = 14.5
name = "Strainer 4"
insulated = true
[charge]
temperature_c = -20.0
liquid_fraction = 0.4
[surroundings]
ambient_c = 12
altitude_m = 120
[vent]
bore_mm = 4.0
low_point = false
[gauge]
unit = "bar_g"
full_scale = 60
accuracy_percent = 0.5
[log]
gas = "co2"
"""
EDITS = st.lists(
    st.tuples(
        st.integers(0, len(CORPUS)), st.integers(0, 40),
        st.binary(max_size=12)
        | st.sampled_from([b"[", b"{a=", b"nan", b"-inf", b"9" * 400, b"1e308"]),
    ),
    max_size=4,
)  # fmt: skip


def test_the_corpus_itself_is_a_section(tmp_path: Path) -> None:
    (tmp_path / "section.toml").write_bytes(CORPUS)
    assert scenario_from(read_tables(tmp_path / "section.toml")) is not None


@settings(max_examples=200, deadline=None)
@given(EDITS)
def test_a_mutated_section_file_is_a_section_or_refused(
    tmp_path_factory: pytest.TempPathFactory, edits: list[tuple[int, int, bytes]]
) -> None:
    data = CORPUS
    for at, length, new in edits:
        data = data[:at] + new + data[at + length :]
    path = tmp_path_factory.getbasetemp() / "section.toml"
    path.write_bytes(data)
    with contextlib.suppress(Co2ventError):
        scenario_from(read_tables(path))


PLAIN = (
    st.none() | st.booleans() | st.integers(-(10**400), 10**400) | st.floats()
    | st.text(max_size=12)
    | st.lists(st.integers(), max_size=2)
)  # fmt: skip


@settings(max_examples=300, deadline=None)
@given(st.data())
def test_any_value_of_any_key_is_taken_or_refused(data: st.DataObject) -> None:
    tables: dict[str, object] = {}
    for group in data.draw(st.lists(st.sampled_from(sorted(KEYS)), max_size=3, unique=True)):
        keys = data.draw(st.lists(st.sampled_from(sorted(KEYS[group])), max_size=4, unique=True))
        tables[group] = {key: data.draw(PLAIN) for key in keys}
    with contextlib.suppress(Co2ventError):
        scenario_from(tables)


@pytest.mark.parametrize(
    "data",
    [
        b'[section]\nname = "' + b"x" * MAX_FILE_BYTES + b'"',
        b"a = " + b"[" * 60_000,
        b"a = " + b"{a=" * 20_000,
        b"a" + b".a" * 30_000 + b" = 1",
        b"[section]\nvolume_l = " + b"9" * 60_000,
        b"\xff\xfe[\0s\0",
        b"\0" * 4096,
    ],
    ids=["long", "lists", "tables", "dots", "digits", "utf-16", "zeros"],
)
def test_size_and_depth_are_bounded_and_soon_refused(data: bytes, tmp_path: Path) -> None:
    path = tmp_path / "section.toml"
    path.write_bytes(data)
    began_s = time.monotonic()
    with pytest.raises(RefusedInputError) as caught:
        scenario_from(read_tables(path))
    assert time.monotonic() - began_s < 2.0
    assert len(str(caught.value)) < 1000
