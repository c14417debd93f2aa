"""A job's folder with damaged, mutated and made-up entries, and names that try to leave it."""

import contextlib
import json
import time
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent.errors import Co2ventError, RefusedInputError, StoreError
from co2vent.guidance.procedure_text import default_procedure_text
from co2vent.store.chain import FIRST_DIGEST, MAX_LINE, decode, encode, next_entry
from co2vent.store.job_file import JobFile
from co2vent.store.job_record import JOB_FILE, folder_name, plain_name, read_job
from tests.store.test_job_file import HEAD, later, script

BEGAN = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
PIECES = st.binary(max_size=20) | st.sampled_from(
    [b"\n", b"{", b"[" * 500, b"\0" * 64, b'"n": 1e999', b"9" * 5000, b"\xff\xfe", b"null"]
)


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("fuzz") / "job"
    job_file = JobFile.create(path, HEAD, default_procedure_text(), BEGAN)
    for item in script():
        job_file.advance(item, later(item.at_s))
    (path / "whole").write_bytes((path / JOB_FILE).read_bytes())
    return path


@settings(max_examples=150)
@given(st.data())
def test_mutated_entries_are_never_taken_for_what_was_written(
    folder: Path, data: st.DataObject
) -> None:
    whole = (folder / "whole").read_bytes()
    changed = whole
    for _ in range(data.draw(st.integers(1, 4))):
        at = data.draw(st.integers(0, len(changed)))
        changed = changed[:at] + data.draw(PIECES) + changed[at + data.draw(st.integers(0, 60)) :]
    written = decode(whole).entries
    found = decode(changed)
    assert found.entries == written[: len(found.entries)]
    assert len(found.entries) == len(written) or found.problem or found.torn
    (folder / JOB_FILE).write_bytes(changed)
    with contextlib.suppress(RefusedInputError):
        read_job(folder)


PLAIN: st.SearchStrategy[Any] = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats(allow_nan=False, allow_infinity=False)
    | st.text(max_size=12),
    lambda inner: st.lists(inner, max_size=3)
    | st.dictionaries(st.text(max_size=8), inner, max_size=3),
    max_leaves=8,
)  # fmt: skip
KINDS = st.sampled_from(
    ["job", "done", "confirm", "note", "log_added", "gate_met", "signature", "amendment", "plan",
     "recovered", "isolate", "x"]
)  # fmt: skip


@settings(max_examples=200)
@given(
    st.lists(st.tuples(KINDS, st.dictionaries(st.text(max_size=8), PLAIN, max_size=4)), max_size=4)
)
def test_entries_whose_digests_are_right_and_whose_contents_are_not_are_told_or_refused(
    folder: Path, entries: list[tuple[str, dict[str, Any]]]
) -> None:
    """The chain is no secret: anybody can write entries that hold together and make no sense."""
    first = (folder / "whole").read_bytes().splitlines(keepends=True)[0]
    lines, digest = [first], json.loads(first)["digest"]
    for number, (kind, body) in enumerate(entries, 2):
        with contextlib.suppress(UnicodeEncodeError):
            entry = next_entry(digest, number, BEGAN.isoformat(), kind, body)
            lines.append(encode(entry))
            digest = entry.digest
    (folder / JOB_FILE).write_bytes(b"".join(lines))
    with contextlib.suppress(Co2ventError):
        record = read_job(folder)
        record.log_paths()


@settings(max_examples=100)
@given(st.dictionaries(st.sampled_from(["format", "head", "steps_sha256", "x"]), PLAIN))
def test_a_made_up_first_entry_is_refused(folder: Path, body: dict[str, Any]) -> None:
    with contextlib.suppress(UnicodeEncodeError):
        (folder / JOB_FILE).write_bytes(encode(next_entry(FIRST_DIGEST, 1, "now", "job", body)))
        with pytest.raises(RefusedInputError):
            read_job(folder)


@pytest.mark.parametrize(
    "data",
    [
        b"[" * 900_000 + b"\n",
        b"9" * 900_000 + b"\n",
        b"x" * (MAX_LINE + 1) + b"\n",
        b"\n" * 500_000,
    ],
    ids=["depth", "digits", "line", "lines"],
)
def test_depth_and_size_are_bounded_and_soon_refused(data: bytes, folder: Path) -> None:
    (folder / JOB_FILE).write_bytes(data)
    began_s = time.monotonic()
    with pytest.raises(RefusedInputError):
        read_job(folder)
    assert time.monotonic() - began_s < 2.0


@settings(max_examples=400)
@given(st.text(max_size=130) | st.text(alphabet="./\\:~ aC\0", max_size=12))
def test_no_name_leads_out_of_the_jobs_folder(name: str) -> None:
    with contextlib.suppress(StoreError):
        path = Path("/jobs/one") / plain_name(name)
        assert path.parent == Path("/jobs/one")
        assert ".." not in path.parts
    made = folder_name(name, BEGAN)
    assert plain_name(made) == made
    assert made.isascii()
