"""A refusal of a log names the file: whoever called from a script gave many."""

from pathlib import Path

import pytest

from co2vent.cli.main import main

FOREIGN = "a,b\n1,2\n"


@pytest.mark.parametrize("command", ["report", "replay"])
@pytest.mark.parametrize(
    ("content", "why"), [(FOREIGN, "no pressure column"), ("", ""), ("time,x\n", "")]
)
def test_a_log_that_is_refused_is_named(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], command: str, content: str, why: str
) -> None:
    log = tmp_path / "north strainer.csv"
    log.write_text(content)
    options = ["--out", str(tmp_path / "r.html")] if command == "report" else []
    assert main([command, str(log), *options]) == 2
    error = capsys.readouterr().err
    assert error.startswith(f"co2vent: {log}: ")
    assert error.count(str(log)) == 1
    assert error.count("\n") == 1
    assert why in error


def test_a_log_that_a_job_refuses_is_named(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder, log = tmp_path / "job", tmp_path / "foreign.csv"
    log.write_text(FOREIGN)
    assert main(["job", "begin", "--folder", str(folder), "--section", "S4"]) == 0
    assert main(["job", "read", str(folder), str(log), "--by", "Ada"]) == 2
    assert f"{log}: no pressure column" in capsys.readouterr().err
