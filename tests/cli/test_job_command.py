"""`co2vent job` where it must keep a job from harm, as a person at a terminal sees it."""

from pathlib import Path

import pytest

from co2vent.cli.main import main
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
