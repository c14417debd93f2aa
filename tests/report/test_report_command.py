"""`co2vent report` and `co2vent job` as a person would use them."""

import json
from pathlib import Path

import pytest

from co2vent.cli.main import main
from co2vent.report.from_files import log_facts


@pytest.fixture
def log(tmp_path: Path) -> Path:
    """Return a short log of a closed section, warming: enough for a report, not for a verdict."""
    path = tmp_path / "vent.csv"
    rows = [f"{at_s},{6.0 + 0.0005 * at_s:.3f},-20.0,closed" for at_s in range(0, 240, 2)]
    path.write_text(
        "# section_name: =Strainer\n# altitude_m: 120\n"
        "elapsed_s,pressure_bar_g,line_temperature_degC,vent_valve\n" + "\n".join(rows) + "\n",
        encoding="utf-8",
    )
    return path


@pytest.mark.parametrize("name", ["r.pdf", "r.html", "R.PDF"])
def test_a_log_becomes_a_report(log: Path, tmp_path: Path, name: str) -> None:
    out = tmp_path / name
    holds = tmp_path / "holds.csv"
    assert main(["report", str(log), "--out", str(out), "--holds-csv", str(holds)]) == 0
    data = out.read_bytes()
    assert data.startswith(b"%PDF-" if name.lower().endswith("pdf") else b"<!DOCTYPE html>")
    assert holds.read_text(encoding="utf-8").startswith("log,simulated,number")


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (["--out", "r.doc"], "ends in .pdf or .html"),
        (["--out", "nowhere/r.pdf"], "folder that exists"),
        (["--out", "."], "ends in .pdf or .html"),
        (["--out", "r.pdf", "--gauge-full-scale", "60"], "gauge-full-scale"),
    ],
)
def test_a_mistake_is_one_line_and_status_2(
    log: Path,
    tmp_path: Path,
    arguments: list[str],
    said: str,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.chdir(tmp_path)
    assert main(["report", str(log), *arguments]) == 2
    captured = capsys.readouterr()
    assert said in captured.err
    assert captured.err.count("\n") == 1


def test_what_is_no_log_is_refused_and_nothing_is_written(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    bad = tmp_path / "bad.csv"
    bad.write_text("elapsed_s,pressure\n0,5\n", encoding="utf-8")
    out = tmp_path / "r.pdf"
    assert main(["report", str(bad), "--out", str(out)]) == 2
    assert main(["report", str(tmp_path / "none.csv"), "--out", str(out)]) == 2
    assert not out.exists()
    assert capsys.readouterr().err.count("\n") == 2


def test_the_report_says_when_and_from_what_the_log_was_recorded(log: Path, tmp_path: Path) -> None:
    head = "# recorded_utc: 2026-03-02T08:00:00Z\n# recorded_from: /dev/ttyUSB0\n"
    log.write_text(head + log.read_text(encoding="utf-8"), encoding="utf-8")
    out = tmp_path / "r.html"
    assert main(["report", str(log), "--out", str(out)]) == 0
    assert "2026-03-02T08:00:00Z, /dev/ttyUSB0" in out.read_text(encoding="utf-8")


def test_the_coldest_clamp_and_the_worst_air_are_those_of_the_log(tmp_path: Path) -> None:
    log = tmp_path / "vent.csv"
    rows = [
        f"{at_s},8.0,{-20 - (at_s == 7)},{-10 - 20 * (at_s == 3)},{500 + 400 * (at_s == 5)}"
        for at_s in range(20)
    ]
    head = "elapsed_s,pressure_bar_g,line_temperature_degC,upper_temperature_degC,room_co2_ppm"
    log.write_text("\n".join([head, *rows]) + "\n", encoding="utf-8")
    facts = log_facts(log)
    assert facts.coldest_clamp_k == pytest.approx(243.15)
    assert facts.most_room_co2_ppm == 900.0


def job(*arguments: str) -> int:
    return main(["job", *arguments])


def test_a_job_from_the_command_line_to_its_report(
    log: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder = str(tmp_path / "job")
    plan = tmp_path / "plan.json"
    plan.write_text(json.dumps({"charge_kg": 4.2, "warnings": ["a <warning>"]}), encoding="utf-8")
    people = ("--person", "Ada Berg,technician,R744-1", "--gauge", "P1,SN-1")
    begun = ("begin", "--folder", folder, "--section", "Strainer 4", *people)
    assert job(*begun, "--plan", str(plan)) == 0
    assert job("done", folder, "--by", "Ada") == 2
    assert "write down" in capsys.readouterr().err
    assert job("write", folder, "warm_parts", "fuse out", "--by", "Ada") == 0
    assert job("done", folder, "--by", "Ada") == 0
    assert job("valve", folder, "V-1", "shut", "--lock", "7", "--by", "Ada") == 0
    assert job("confirm", folder, "isolation_list_complete", "relief_path_open") == 0
    assert job("done", folder, "--by", "Ada") == 0
    assert job("read", folder, str(log), "--by", "Ada") == 0
    assert "Met: hold running" in capsys.readouterr().out
    assert job("done", folder, "--by", "Ada") == 0
    assert job("skip", folder, "--reason", "x", "--by", "Ada") == 2
    assert job("note", folder, "frost at the low point", "--by", "Bo") == 0
    assert job("amend", folder, "3", "two fuses", "--by", "Ada") == 0
    assert job("sign", folder, "--role", "technician", "--by", "Ada Berg") == 0
    assert job("show", folder) == 0
    assert "running  People, air and hose" in capsys.readouterr().out
    out = tmp_path / "job.html"
    assert main(["report", folder, "--out", str(out)]) == 0
    html = out.read_text(encoding="utf-8")
    for expected in ("frost at the low point", "two fuses", "a &lt;warning&gt;", "4.2", "vent.csv"):
        assert expected in html


def test_a_test_log_is_judged_in_the_job(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder = str(tmp_path / "job")
    job("begin", "--folder", folder, "--section", "S", "--person", "Ada")
    vacuum = tmp_path / "vac.csv"
    rows = [f"{at_s},0.001,{400 + at_s // 15 + at_s % 3},15.0" for at_s in range(0, 900, 2)]
    vacuum.write_text(
        "elapsed_s,pressure_bar_a,vacuum_micron,line_temperature_degC\n" + "\n".join(rows) + "\n",
        encoding="utf-8",
    )
    assert job("test", folder, "vacuum", str(vacuum), "--by", "Ada") == 0
    assert "Vacuum test: tight and dry" in capsys.readouterr().out
    log = tmp_path / "n2.csv"
    log.write_text("elapsed_s,pressure_bar_a\n" + "\n".join(f"{t},53.0" for t in range(0, 90, 5)))
    assert job("test", folder, "vacuum", str(log), "--by", "Ada") == 2
    assert job("test", folder, "standing", str(log), "--by", "Ada") == 0
    assert "not known yet" in capsys.readouterr().out


def test_a_sites_steps_are_written_checked_and_used(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    steps = tmp_path / "steps.toml"
    assert job("steps", str(steps)) == 0
    assert job("steps", str(steps)) == 2, "an existing file is left alone"
    assert job("check-steps", str(steps)) == 0
    text = steps.read_text(encoding="utf-8")
    steps.write_text(text.replace("Plan and brief", "Talk it over"), encoding="utf-8")
    folder = str(tmp_path / "job")
    assert job("begin", "--folder", folder, "--person", "Ada", "--steps", str(steps)) == 0
    assert job("show", folder) == 0
    assert "Talk it over" in capsys.readouterr().out
    steps.write_text(text.replace('kind = "vent"', 'kind = "went"', 1), encoding="utf-8")
    assert job("check-steps", str(steps)) == 2
    assert "kind must be one of" in capsys.readouterr().err


def test_simulated_readings_make_a_job_that_is_not_signed(
    log: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    log.write_text("# simulated: yes\n" + log.read_text(encoding="utf-8"), encoding="utf-8")
    folder = str(tmp_path / "job")
    job("begin", "--folder", folder, "--person", "Ada", "--simulated")
    assert job("read", folder, str(log), "--by", "Ada") == 0
    assert job("sign", folder, "--by", "Ada") == 2
    assert "practice" in capsys.readouterr().err
    real = str(tmp_path / "real")
    job("begin", "--folder", real, "--person", "Ada")
    assert job("read", real, str(log), "--by", "Ada") == 2  # it would make the job practice
