"""`co2vent job` where it must keep a job from harm, as a person at a terminal sees it."""

from pathlib import Path

import pytest

from co2vent.cli.main import main
from co2vent.guidance.procedure_text import default_procedure_text
from co2vent.store.job_record import read_job

ROWS = [f"{at_s},0.001,{400 + 8 * (at_s % 3)},15.0" for at_s in range(0, 900, 2)]


@pytest.fixture
def log(tmp_path: Path) -> Path:
    """A simulated vacuum-rise log."""
    path = tmp_path / "practice.csv"
    head = ["# simulated: yes", "elapsed_s,pressure_bar_a,vacuum_micron,line_temperature_degC"]
    path.write_text("\n".join([*head, *ROWS]) + "\n", encoding="utf-8")
    return path


@pytest.mark.parametrize("words", [("read",), ("test", "vacuum")])
def test_a_simulated_log_is_kept_out_of_a_real_job(
    words: tuple[str, ...], log: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    action, *more = words
    folder = tmp_path / "real"
    assert main(["job", "begin", "--folder", str(folder), "--section", "S4"]) == 0
    assert main(["job", action, str(folder), *more, str(log), "--by", "Ada"]) == 2
    assert "this log is simulated and the job is not" in capsys.readouterr().err
    job = read_job(folder).job
    assert (job.simulated, job.logs, job.tests) == (False, (), ())
    practice = tmp_path / "practice"
    assert main(["job", "begin", "--folder", str(practice), "--section", "S", "--simulated"]) == 0
    assert main(["job", action, str(practice), *more, str(log), "--by", "Ada"]) == 0
    assert len(read_job(practice).job.logs) == 1


def real(tmp_path: Path, name: str, rows: list[str], section: str = "S4") -> Path:
    path = tmp_path / name
    columns = "elapsed_s,pressure_bar_g,line_temperature_degC,vent_valve"
    head = [f"# section_name: {section}", columns]
    path.write_text("\n".join([*head, *rows, ""]), encoding="utf-8")
    return path


def begun(tmp_path: Path) -> Path:
    folder = tmp_path / "job"
    assert main(["job", "begin", "--folder", str(folder), "--section", "S4"]) == 0
    return folder


def test_a_log_that_names_another_section_is_said_and_written_down(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder = begun(tmp_path)
    mine = real(tmp_path, "mine.csv", ["0,8,-20,closed", "1,8,-20,closed"], "strainer section S4")
    assert main(["job", "read", str(folder), str(mine), "--by", "Ada"]) == 0
    assert "another section" not in capsys.readouterr().out
    other = real(tmp_path, "other.csv", ["0,8,-20,closed", "1,8,-21,closed"], "Z-9")
    assert main(["job", "read", str(folder), str(other), "--by", "Ada"]) == 0
    assert "CAUTION: this log names another section, 'Z-9'" in capsys.readouterr().out
    assert any("Z-9" in note.text for note in read_job(folder).job.notes)


def test_a_log_from_before_the_job_went_back_proves_nothing_again(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder = begun(tmp_path)
    log = real(tmp_path, "old.csv", ["0,8,-20,closed", "1,8,-20,closed"])
    by = ["--by", "Ada"]
    assert main(["job", "write", str(folder), "warm_parts", "fuse out", *by]) == 0
    assert main(["job", "done", str(folder), *by]) == 0
    assert main(["job", "read", str(folder), str(log), *by]) == 0
    assert main(["job", "back", str(folder), "brief", "--reason", "hiss", *by]) == 0
    assert main(["job", "read", str(folder), str(log), *by]) == 2
    assert "add a new log" in capsys.readouterr().err


def site_steps(tmp_path: Path, old: str, new: str) -> Path:
    path = tmp_path / "ours.toml"
    text = default_procedure_text()
    assert old in text
    path.write_text(text.replace(old, new), encoding="utf-8")
    return path


def test_steps_that_drop_a_protection_are_refused_by_their_files_name(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    steps = site_steps(tmp_path, "at_most = 5000", "at_most = 90000")
    folder = tmp_path / "job"
    for words in (
        ["check-steps", str(steps)],
        ["begin", "--folder", str(folder), "--steps", str(steps)],
    ):
        assert main(["job", *words]) == 2
        error = capsys.readouterr().err
        assert f"{steps}: step 4 (protect), line " in error
        assert "no limit lets people stay in more than 30000 ppm" in error
        assert error.count("\n") == 1
    assert not folder.exists()


def test_what_a_sites_steps_ask_less_of_is_said_and_stands_in_the_record(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    steps = site_steps(tmp_path, "at_most = 5000", "at_most = 15000")
    folder = tmp_path / "job"
    said = "the air may hold 15000 ppm of CO2"
    assert main(["job", "check-steps", str(steps)]) == 0
    out = capsys.readouterr().out
    assert said in out
    assert "nothing wrong" not in out
    assert main(["job", "begin", "--folder", str(folder), "--steps", str(steps)]) == 0
    assert said in capsys.readouterr().err
    assert main(["job", "show", str(folder)]) == 0
    assert said in capsys.readouterr().out
    record = tmp_path / "record.html"
    assert main(["report", str(folder), "--out", str(record)]) == 0
    words = record.read_text(encoding="utf-8")
    assert "THE STEPS OF THIS SITE ASK LESS" in words
    assert said in words
