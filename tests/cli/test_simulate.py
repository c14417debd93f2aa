"""`co2vent simulate`, as it is called."""

from pathlib import Path

import pytest

from co2vent.cli.main import main
from co2vent.practice.log_lines import TRUTH_HEADER
from co2vent.readings.log_file import read_log

SECTION = """
[section]
volume_l = 6.0
[charge]
temperature_c = -20.0
liquid_fraction = 0.1
[gauge]
unit = "psig"
full_scale = 800.0
step = 1.0
[[plan]]
hold_min = 1.0
[[plan]]
vent_to_bar_g = "stop"
[[plan]]
hold_min = 3.0
"""


def test_the_log_and_the_truth_have_the_columns_of_their_formats(tmp_path: Path) -> None:
    log, truth = tmp_path / "a.csv", tmp_path / "a.truth.csv"
    options = ["--operator", "plan", "--for", "5", "--volume-l", "8", "--altitude-m", "500"]
    assert main(["simulate", "--log", str(log), "--truth", str(truth), *options]) == 0
    read = read_log(log)
    assert read.setup.simulated
    assert read.setup.altitude_m == 500.0
    assert read.setup.section_volume_m3 == pytest.approx(8e-3)
    lines = truth.read_text().splitlines()
    assert lines[0] == TRUTH_HEADER
    rows = [line for line in log.read_text().splitlines() if not line.startswith("#")]
    assert len(lines) == len(rows) == 302


def test_a_seed_gives_the_same_file_again_and_another_seed_another(tmp_path: Path) -> None:
    def made(seed: str) -> bytes:
        path = tmp_path / "b.csv"
        args = ["simulate", "--log", str(path), "--operator", "rule", "--for", "6", "--seed", seed]
        assert main(args) == 0
        return path.read_bytes()

    first = made("3")
    assert made("3") == first
    assert made("4") != first


def test_a_section_file_is_used_and_options_win_over_it(tmp_path: Path) -> None:
    file, log = tmp_path / "s.toml", tmp_path / "c.csv"
    file.write_text(SECTION)
    common = ["simulate", "--section", str(file), "--log", str(log), "--operator", "plan"]
    assert main(common) == 0
    text = log.read_text()
    assert "pressure_psig" in text
    assert read_log(log).setup.section_volume_m3 == pytest.approx(6e-3)
    assert main([*common, "--volume-l", "9", "--insulated"]) == 0
    assert read_log(log).setup.section_volume_m3 == pytest.approx(9e-3)
    assert read_log(log).setup.insulated is True


def test_leak_by_shows_in_the_truth(tmp_path: Path) -> None:
    log, truth = tmp_path / "d.csv", tmp_path / "d.truth.csv"
    args = ["--leak-by-g-per-s", "0.2", "--liquid-fraction", "0", "--temperature-c", "-20"]
    args += ["--operator", "plan", "--for", "4"]
    assert main(["simulate", "--log", str(log), "--truth", str(truth), *args]) == 0
    last = truth.read_text().splitlines()[-1].split(",")
    assert float(last[-1]) == pytest.approx(2e-4)


@pytest.mark.parametrize(
    ("options", "words"),
    [
        (["--temperature-c", "-60", "--liquid-fraction", "0.5"], "not colder"),
        (["--temperature-c", "-10", "--pressure-bar-g", "20"], "not both"),
        (["--section", "nowhere.toml"], "nowhere.toml"),
        (["--seed", "-1"], "--seed"),
        (["--volume-l", "0"], "volume_l"),
    ],
)
def test_what_cannot_be_is_refused_in_one_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], options: list[str], words: str
) -> None:
    assert main(["simulate", "--log", str(tmp_path / "e.csv"), *options]) == 2
    error = capsys.readouterr().err
    assert words in error
    assert error.count("\n") == 1


SHORT = ["--operator", "plan", "--for", "1"]
REAL = "# section_name: strainer 3\nelapsed_s,pressure_bar_g\n0,19.0\n1,18.9\n"


@pytest.mark.parametrize("which", ["--log", "--truth"])
@pytest.mark.parametrize(
    "content",
    [
        REAL,
        "# simulated: no\n" + REAL,
        REAL + "# simulated: yes\n",
        "elapsed_s,pressure_bar_g\n0,5\n",
        "notes",
    ],
)
def test_what_no_simulation_made_is_not_written_over(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], which: str, content: str
) -> None:
    files = {"--log": tmp_path / "log.csv", "--truth": tmp_path / "truth.csv"}
    files[which].write_text(content)
    words = [part for option, path in files.items() for part in (option, str(path))]
    assert main(["simulate", *words, *SHORT]) == 2
    error = capsys.readouterr().err
    assert error.count("\n") == 1
    assert f"{files[which]}: exists and was not simulated" in error
    assert files[which].read_text() == content
    assert len(list(tmp_path.iterdir())) == 1, "nothing was begun"
    assert main(["simulate", *words, *SHORT, "--replace"]) == 0
    assert read_log(files["--log"]).setup.simulated


def test_a_simulated_pair_is_made_again_under_its_names(tmp_path: Path) -> None:
    log, truth = tmp_path / "log.csv", tmp_path / "truth.csv"
    truth.touch()  # empty, as from a tool that makes a name
    for seed in ("1", "2"):
        words = ["simulate", "--log", str(log), "--truth", str(truth), *SHORT, "--seed", seed]
        assert main(words) == 0
    assert truth.read_text().startswith(TRUTH_HEADER)
