"""`co2vent assess` in plain lines: what of a log was passed over."""

from pathlib import Path

import pytest

from co2vent.cli.main import main


def test_a_misspelt_key_and_cells_without_a_value_are_said(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """An altitude that is not read would leave the triple point at sea level's."""
    log = tmp_path / "log.csv"
    log.write_text(
        "# altitude: 1500\n# operator: somebody\n"
        "elapsed_s,pressure_bar_g,line_temperature_degC\n0,19.0,-19\n1,19.0,9999\n2,19.0,x\n"
    )
    assert main(["assess", str(log)]) == 0
    said = capsys.readouterr().out
    assert "'altitude' is not read: write altitude_m" in said
    assert "operator" not in said
    assert "line_temperature_degC: 2 cells" in said


def test_what_was_computed_stays_so_whatever_an_option_says(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    log = tmp_path / "log.csv"
    log.write_text("# simulated: yes\nelapsed_s,pressure_bar_g\n0,19\n1,19\n2,19\n")
    assert main(["assess", str(log), "--simulated", "no"]) == 0
    assert "SIMULATED" in capsys.readouterr().out
