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
