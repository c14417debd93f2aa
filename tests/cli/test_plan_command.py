"""`co2vent plan` as a person and as another program see it."""

import json
from collections.abc import Sequence
from pathlib import Path

import pytest

from co2vent.cli.main import main

PLAIN = ["plan", "--volume-l", "14.5", "--temperature-c", "-20", "--liquid-fraction", "0.3"]

KEYS = [
    "ambient_pressure_pa",
    "triple_point_pa_gauge",
    "stop_pressure_pa_gauge",
    "saturation_pressure_pa",
    "charge_kg",
    "liquid_kg",
    "liquid_left_at_stop_kg",
    "dry_ice_kg_if_vented_straight_down",
    "vent_to_stop_s",
    "boil_off_energy_j",
    "trapped_liquid_bar_per_k",
    "kelvin_to_relief",
    "room_ppm_all_vented",
    "co2e_kg",
    "warnings",
]


def test_json_has_every_promised_key(capsys: pytest.CaptureFixture[str]) -> None:
    more = ["--relief-bar-g", "52", "--room-m3", "300", "--air-changes-per-hour", "4", "--json"]
    assert main([*PLAIN, *more]) == 0
    plan = json.loads(capsys.readouterr().out)
    assert [key for key in KEYS if plan[key] is None] == []
    assert plan["charge_kg"] == pytest.approx(14.5e-3 * (0.3 * 1031.66 + 0.7 * 51.70), rel=1e-3)
    assert all(isinstance(sentence, str) for sentence in plan["warnings"])


def test_what_was_not_given_is_null_or_said(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["plan", "--volume-l", "14.5", "--temperature-c", "-20", "--json"]) == 0
    plan = json.loads(capsys.readouterr().out)
    assert plan["kelvin_to_relief"] is None
    assert plan["room_ppm_all_vented"] is None
    for word in ("Altitude", "Liquid fraction", "Gauge range", "Gauge accuracy", "Vent bore"):
        assert any(word in sentence for sentence in plan["assumptions"]), word


def test_text_is_readable_in_both_units_and_never_says_safe(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert main(PLAIN) == 0
    text = capsys.readouterr().out
    assert "4.17 bar g (60.4 psig)" in text
    assert "5.20 bar g (75.4 psig)" in text
    assert "-52.3 degC (-62.1 degF)" in text
    assert "safe" not in text.casefold()
    assert max(map(len, text.splitlines())) <= 100


def test_a_section_is_built_from_pipes_and_parts(capsys: pytest.CaptureFixture[str]) -> None:
    assert (
        main(
            [
                "plan", "--pipe", "ASME B36.10M, NPS 2, sch 40=3.5", "--part", "Y-strainer DN50=2",
                "--pressure-bar-g", "25", "--json",
            ]
        )
        == 0
    )  # fmt: skip
    plan = json.loads(capsys.readouterr().out)
    assert plan["volume_m3"] == pytest.approx(0.01083, rel=2e-3)
    assert plan["volume_uncertainty_m3"] > 0.001
    assert plan["volume_notes"]


def test_a_section_is_measured_with_a_bottle(capsys: pytest.CaptureFixture[str]) -> None:
    # thin gas, Boyle: 2 l 2 bar above ambient, let into 10 l at ambient: 0.3333 bar above it
    bottle = "2,2.0,0,0.33333,20"
    gauge = ["--gauge-full-scale-bar", "4", "--gauge-accuracy-percent", "0.25"]
    arguments = ["plan", "--bottle", bottle, *gauge, "--temperature-c", "-20", "--json"]
    assert main(arguments) == 0
    plan = json.loads(capsys.readouterr().out)
    assert plan["volume_m3"] == pytest.approx(0.010, rel=0.003)
    assert plan["volume_uncertainty_m3"] > 0.0001
    assert any("expansion" in note for note in plan["volume_notes"])


def test_sizes_are_listed_with_their_sources(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["plan", "--list-sizes"]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert len(lines) > 168
    assert any("from memory" in line for line in lines)


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (["--volume-l", "5"], "neither was given"),
        (["--volume-l", "5", "--temperature-c", "1", "--pressure-bar-g", "9"], "both were given"),
        (["--temperature-c", "1"], "--volume-l"),
        (["--volume-l", "5", "--pipe", "x=1", "--temperature-c", "1"], "--volume-l"),
        (["--pipe", "NPS 2, sch 40", "--temperature-c", "1"], "SIZE=METRES"),
        (["--pipe", "NPS 99=1", "--temperature-c", "1"], "no pipe size"),
        (["--bottle", "5,40,0", "--temperature-c", "1"], "as in 5,40,0"),
        (["--bottle", "5,40,0,50,15", "--temperature-c", "1"], "common pressure must lie between"),
        (["--volume-l", "5", "--bottle", "5,40,0,12,15", "--temperature-c", "1"], "give one of"),
        (["--part", "teapot", "--temperature-c", "1"], "no part"),
        (["--part", "pump casing=x", "--temperature-c", "1"], "whole number"),
        (["--volume-l", "0", "--temperature-c", "1"], "volume"),
        (["--volume-l", "5", "--temperature-c", "1", "--liquid-fraction", "2"], "from 0 to 1,"),
        (["--volume-l", "5", "--temperature-c", "-200"], "temperature"),
        (["--volume-l", "5", "--pressure-bar-g", "-5"], "pressure"),
        (["--volume-l", "5", "--temperature-c", "1", "--altitude-m", "99999"], "altitude"),
        (["--volume-l", "5", "--temperature-c", "1", "--gauge-full-scale-bar", "0"], "gauge"),
    ],
)
def test_a_mistake_is_one_line_and_status_2(
    arguments: Sequence[str], words: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["plan", *arguments]) == 2
    captured = capsys.readouterr()
    assert captured.out == ""
    assert captured.err.count("\n") == 1
    assert words in captured.err


@pytest.mark.parametrize("value", ["nan", "inf", "warm", ""])
def test_a_value_that_is_no_number_is_refused(
    value: str, capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SystemExit) as stopped:
        main(["plan", "--volume-l", "5", "--temperature-c", value])
    assert stopped.value.code == 2
    assert capsys.readouterr().err.count("\n") == 1


@pytest.mark.parametrize("minimum", ["500", "-500", "-273.2"])
@pytest.mark.parametrize("command", [PLAIN, ["simulate", "--for", "1"]])
def test_a_metal_that_there_is_not_is_refused(
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    command: Sequence[str],
    minimum: str,
) -> None:
    log = tmp_path / "log.csv"
    more = ["--log", str(log)] if command[0] == "simulate" else []
    with pytest.raises(SystemExit) as ended:
        main([*command, *more, f"--metal-minimum-c={minimum}"])
    assert ended.value.code == 2
    error = capsys.readouterr().err
    assert minimum in error
    assert "-200 to 100 degC" in error
    assert error.count("\n") == 1
    assert not log.exists()


@pytest.mark.parametrize(
    ("altitude_m", "bar"),
    [("0", "1.013 bar absolute (14.70 psia)"), ("2000", "0.795 bar absolute")],
)
def test_the_air_pressure_that_was_used_is_printed(
    capsys: pytest.CaptureFixture[str], altitude_m: str, bar: str
) -> None:
    # ISO 2533: 1013.25 hPa at 0 m, 794.95 hPa at 2000 m
    assert main([*PLAIN, "--altitude-m", altitude_m]) == 0
    assert bar in capsys.readouterr().out
