"""The job's folder: kept as it goes, chained, reopened where it stopped, never overwritten."""

import json
from collections.abc import Mapping
from datetime import UTC, datetime, timedelta
from pathlib import Path
from random import Random

import pytest

from co2vent.errors import RefusedInputError, StoreError
from co2vent.guidance import job_items as items
from co2vent.guidance.job import GaugeRecord, JobHead, Observed, Person
from co2vent.guidance.procedure import VENTING_CONFIRMATIONS
from co2vent.guidance.procedure_text import default_procedure_text
from co2vent.store.chain import decode
from co2vent.store.job_file import JobFile
from co2vent.store.job_record import JOB_FILE, folder_name, plain_name, read_job

BEGAN = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
HEAD = JobHead(
    site="Cold store",
    section="Strainer 4 <north>",
    people=(Person(name="Ada", role="technician"),),
    gauges=(GaugeRecord(name="P1", accuracy="0.5 %"),),
)


def later(seconds: float) -> datetime:
    return BEGAN + timedelta(seconds=seconds)


def begun(tmp_path: Path, head: JobHead = HEAD) -> JobFile:
    return JobFile.create(tmp_path / "job", head, default_procedure_text(), BEGAN)


def script() -> list[items.JobItem | Observed]:
    """Return a job up to the vent, as a technician would do it."""
    return [
        items.WriteDown(1, "warm_parts", "defrost fuse F12 out", "Ada"),
        items.Done(2, "Ada"),
        items.Isolate(3, "V-101", "shut", "7", "7", "Ada"),
        items.Confirm(4, "isolation_list_complete", "Ada"),
        items.Confirm(5, "relief_path_open", "Ada"),
        items.Done(6, "Ada"),
        items.Skip(7, "proved on the morning round", "Ada"),
        *(items.Confirm(8, one, "Bo") for one in VENTING_CONFIRMATIONS),
        Observed(9, False, {"room_co2": 450.0}),
        Observed(60, False, {"room_co2": 450.0}),
        items.Done(61, "Ada"),
        items.Skip(62, "gauge is fixed to the section", "Ada"),
        Observed(70, False, {"pressure_above_stop": 1e5}),
        items.Done(71, "Ada"),
        items.Note(72, "frost at the low point", "Bo"),
    ]


def test_a_kill_after_any_step_opens_again_where_it_stopped(tmp_path: Path) -> None:
    for stop in range(len(script()) + 1):
        job_file = JobFile.create(tmp_path / f"job{stop}", HEAD, default_procedure_text(), BEGAN)
        for item in script()[:stop]:
            job_file.advance(item, later(item.at_s))
        before = job_file.job
        again = JobFile.open(
            tmp_path / f"job{stop}", "Ada", later(100)
        )  # the first was never closed
        assert again.job.current == before.current
        assert again.job.steps == before.steps
        assert again.job.confirmed == before.confirmed
        assert again.job.notes == before.notes
        # what readings met in the running step must be read anew, what ended steps had stays
        for identity, record in before.gates.items():
            running = before.step is not None and identity in [g.id for g in before.step.gates]
            if not running:
                assert again.job.gates[identity].met_s == record.met_s


def test_a_kill_inside_a_write_loses_only_the_torn_line_and_says_so(tmp_path: Path) -> None:
    job_file = begun(tmp_path)
    for item in script():
        job_file.advance(item, later(item.at_s))
    whole = (tmp_path / "job" / JOB_FILE).read_bytes()
    last = whole.rstrip(b"\n").rfind(b"\n") + 1
    for length in (last + 1, last + 20, len(whole) - 1):
        folder = tmp_path / f"cut{length}"
        folder.mkdir()
        (folder / "steps.toml").write_bytes((tmp_path / "job" / "steps.toml").read_bytes())
        (folder / JOB_FILE).write_bytes(whole[:length])
        record = read_job(folder)
        assert record.chain.torn == whole[last:length]
        again = JobFile.open(folder, "Ada", later(100))
        assert again.job.notes == ()
        assert again.job.current == job_file.job.current
        kinds = [entry.kind for entry in read_job(folder).chain.entries]
        assert kinds[-2:] == ["recovered", "reopened"]
        aside = list(folder.glob("torn-*.bin"))
        assert [path.read_bytes() for path in aside] == [whole[last:length]]


def test_a_changed_entry_is_found_reported_and_not_continued(tmp_path: Path) -> None:
    job_file = begun(tmp_path)
    for item in script():
        job_file.advance(item, later(item.at_s))
    path = tmp_path / "job" / JOB_FILE
    path.write_bytes(path.read_bytes().replace(b"fuse F12", b"fuse F13"))
    record = read_job(tmp_path / "job")
    assert record.problem == "entry 2 was changed after it was written"
    with pytest.raises(StoreError, match="can be reported but not continued"):
        JobFile.open(path, "Ada", later(100))


def test_no_flipped_byte_is_taken_for_the_truth(tmp_path: Path) -> None:
    """500 seeded single-byte changes: what is still read is what was written, or a problem."""
    job_file = begun(tmp_path)
    for item in script():
        job_file.advance(item, later(item.at_s))
    data = (tmp_path / "job" / JOB_FILE).read_bytes()
    written = decode(data).entries
    chance = Random(5)
    for _ in range(500):
        at = chance.randrange(len(data))
        changed = data[:at] + bytes([data[at] ^ chance.randrange(1, 256)]) + data[at + 1 :]
        chain = decode(changed)
        assert chain.entries == written[: len(chain.entries)]
        assert len(chain.entries) == len(written) or chain.problem or chain.torn


@pytest.mark.parametrize("victim", [1, 5])
def test_a_lost_or_doubled_line_is_found(tmp_path: Path, victim: int) -> None:
    job_file = begun(tmp_path)
    for item in script():
        job_file.advance(item, later(item.at_s))
    path = tmp_path / "job" / JOB_FILE
    lines = path.read_bytes().splitlines(keepends=True)
    path.write_bytes(b"".join(lines[:victim] + lines[victim + 1 :]))
    assert read_job(path).problem
    path.write_bytes(b"".join(lines[: victim + 1] + lines[victim:]))
    assert read_job(path).problem


def test_changed_steps_are_found(tmp_path: Path) -> None:
    begun(tmp_path)
    steps = tmp_path / "job" / "steps.toml"
    steps.write_text(steps.read_text(encoding="utf-8") + "\n# later\n", encoding="utf-8")
    assert "steps file was changed" in read_job(tmp_path / "job").problem


def test_the_digest_is_sha256_over_the_one_before_and_the_entry(tmp_path: Path) -> None:
    """Recomputed here with nothing but hashlib and json, as anybody could."""
    import hashlib

    job_file = begun(tmp_path)
    job_file.advance(items.Note(1, "ä \u2028 note", "Ada"), later(1))
    digest = hashlib.sha256(b"co2vent job 1").hexdigest()
    for line in (tmp_path / "job" / JOB_FILE).read_text(encoding="ascii").splitlines():
        raw = json.loads(line)
        stated = raw.pop("digest")
        text = json.dumps(raw, sort_keys=True, separators=(",", ":"))
        digest = hashlib.sha256(f"{digest}\n{text}".encode()).hexdigest()
        assert digest == stated
    assert job_file.digest == digest


def test_an_amendment_is_added_and_the_entry_stays(tmp_path: Path) -> None:
    job_file = begun(tmp_path)
    job_file.advance(items.Note(1, "valve V-102 shut", "Ada"), later(1))
    before = (tmp_path / "job" / JOB_FILE).read_bytes()
    job_file.amend(2, "it was V-103", "Ada", later(5))
    assert (tmp_path / "job" / JOB_FILE).read_bytes().startswith(before)
    record = read_job(tmp_path / "job")
    assert [(one.entry, one.text) for one in record.amendments] == [(2, "it was V-103")]
    assert record.job.notes[0].text == "valve V-102 shut"
    with pytest.raises(RefusedInputError, match="1 to 3"):
        job_file.amend(99, "nothing", "Ada", later(6))


def test_a_signature_names_what_it_covers(tmp_path: Path) -> None:
    job_file = begun(tmp_path)
    over = job_file.digest
    signature = job_file.sign("Ada", "technician", later(9))
    assert (signature.over, signature.entry) == (over, 2)
    assert read_job(tmp_path / "job").signatures == (signature,)
    with pytest.raises(RefusedInputError):
        job_file.sign("  ", "technician", later(9))


def test_practice_is_never_signed(tmp_path: Path) -> None:
    simulated = JobHead(section="Strainer 4", simulated=True)
    with pytest.raises(RefusedInputError, match="practice"):
        begun(tmp_path, simulated).sign("Ada", "technician", later(9))


def test_a_simulated_log_makes_the_job_unsignable_also_after_reopening(tmp_path: Path) -> None:
    log = tmp_path / "vent.csv"
    log.write_text("# simulated: yes\nelapsed_s,pressure_bar_g\n0,5\n", encoding="utf-8")
    begun(tmp_path).attach_log(log, 1, True, later(3))
    again = JobFile.open(tmp_path / "job", "Ada", later(4))
    with pytest.raises(RefusedInputError, match="practice"):
        again.sign("Ada", "technician", later(9))


def test_a_log_is_copied_into_the_folder_with_its_digest(tmp_path: Path) -> None:
    import hashlib

    log = tmp_path / "vent one;.csv"
    log.write_bytes(b"elapsed_s,pressure_bar_g\n0,5\n")
    job_file = begun(tmp_path)
    job_file.attach_log(log, 1, False, later(3))
    (kept,) = read_job(tmp_path / "job").log_paths()
    assert kept.parent == tmp_path / "job"
    assert kept.read_bytes() == log.read_bytes()
    assert job_file.job.logs[0].sha256 == hashlib.sha256(log.read_bytes()).hexdigest()
    log.write_bytes(b"another\n")
    job_file.attach_log(log, 1, False, later(4))
    first, second = read_job(tmp_path / "job").log_paths()
    assert first.read_bytes() != second.read_bytes() == b"another\n"


def test_two_programs_do_not_write_over_each_other(tmp_path: Path) -> None:
    first = begun(tmp_path)
    second = JobFile.open(tmp_path / "job", "Bo", later(1))
    second.advance(items.Note(2, "mine", "Bo"), later(2))
    with pytest.raises(StoreError, match="another program"):
        first.advance(items.Note(3, "also mine", "Ada"), later(3))
    assert read_job(tmp_path / "job").problem == ""


def test_an_existing_folder_is_left_alone(tmp_path: Path) -> None:
    begun(tmp_path)
    with pytest.raises(StoreError, match="choose another folder"):
        begun(tmp_path)


@pytest.mark.parametrize(
    "name", ["../x.csv", "a/b", "a\\b", ".hidden", "", "CON.txt", "lpt1", "x\0y", "a:b", "n" * 200]
)
def test_a_name_that_leaves_the_folder_is_refused(name: str) -> None:
    with pytest.raises(StoreError):
        plain_name(name)


def test_a_folder_name_keeps_only_what_is_harmless() -> None:
    name = folder_name("../Kühl/Strainer №4: ..\\x", BEGAN)
    assert name == "2026-03-02_080000_kuhl-strainer-no4-x"
    assert folder_name("///", BEGAN).endswith("_section")


def test_a_log_named_outside_the_folder_in_a_forged_file_is_not_followed(tmp_path: Path) -> None:
    job_file = begun(tmp_path)
    forged = items.LogAdded(1, "../../etc/passwd", "0" * 64, 1, False)
    job_file.advance(forged, later(1))
    with pytest.raises(StoreError, match="plain file name"):
        read_job(tmp_path / "job").log_paths()


@pytest.mark.parametrize(
    "data",
    [b"", b"\n", b"{}\n", b"[" * 100_000 + b"\n", b"\x00" * 500, b'{"n":1e400}\n', b"\xff\xfe\n"],
)
def test_rubbish_is_refused_in_one_line(tmp_path: Path, data: bytes) -> None:
    begun(tmp_path)
    (tmp_path / "job" / JOB_FILE).write_bytes(data)
    with pytest.raises(RefusedInputError) as caught:
        read_job(tmp_path / "job")
    assert "\n" not in str(caught.value)


def test_an_entry_of_unknown_kind_is_told_not_guessed(tmp_path: Path) -> None:
    job_file = begun(tmp_path)
    job_file._append("levitate", {"at_s": 1}, later(1))
    assert "levitate" in read_job(tmp_path / "job").problem


def test_a_job_of_an_older_version_reads_as_it_was_done(tmp_path: Path) -> None:
    """Then the joint could be left out and any number below the limit met a gate."""
    import hashlib

    from co2vent.guidance.job import StepState
    from co2vent.store.chain import Chain, encode, next_entry

    head, tail = default_procedure_text().split('id = "open"')
    steps = head + 'id = "open"' + tail.replace("skippable = false", "skippable = true", 1)
    folder = tmp_path / "old"
    folder.mkdir()
    (folder / "steps.toml").write_text(steps, encoding="utf-8")
    done = [item for item in script()[:12] if not isinstance(item, Observed)]
    done += [items.Typed(60, "room_air", -50.0, "Bo"), items.Done(61, "Ada")]
    first: dict[str, object] = {"format": "co2vent job 1", "head": {"people": [], "gauges": []}}
    first["steps_sha256"] = hashlib.sha256(steps.encode()).hexdigest()
    entries: list[tuple[str, Mapping[str, object]]] = [("job", first)]
    entries += [items.item_to_plain(item) for item in done]
    lines, digest = b"", Chain((), b"", "").digest
    for number, (kind, body) in enumerate(entries, 1):
        entry = next_entry(digest, number, BEGAN.isoformat(), kind, body)
        lines, digest = lines + encode(entry), entry.digest
    (folder / JOB_FILE).write_bytes(lines)
    job = read_job(folder).job
    assert job.steps[3].state is StepState.DONE
    assert job.gates["room_air"].value == -50.0
    assert JobFile.open(folder, "Ada", later(100)).job.current == 4


def test_a_bad_value_read_off_is_in_the_file_and_holds_after_reopening(tmp_path: Path) -> None:
    job_file = begun(tmp_path)
    for item in script()[:7]:
        job_file.advance(item, later(item.at_s))
    for value in (400.0, 40_000.0):
        job_file.advance(items.Typed(9, "room_air", value, "Bo"), later(9))
    again = JobFile.open(tmp_path / "job", "Ada", later(100))
    record = again.job.gates["room_air"]
    assert (record.met_s, record.value, record.typed_by) == (None, 40_000.0, "Bo")
