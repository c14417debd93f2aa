"""`plan --json` and `simulate`: keys, files, and verdicts against what was really inside."""

import math
from pathlib import Path

import pytest

from tests.contract.command import assess_all, refused, run, strict

PLAN_KEYS = {
    "ambient_pressure_pa", "triple_point_pa_gauge", "stop_pressure_pa_gauge",
    "saturation_pressure_pa", "charge_kg", "liquid_kg", "liquid_left_at_stop_kg",
    "dry_ice_kg_if_vented_straight_down", "vent_to_stop_s", "boil_off_energy_j",
    "trapped_liquid_bar_per_k", "kelvin_to_relief", "room_ppm_all_vented", "co2e_kg", "warnings",
}  # fmt: skip
TRUTH_HEADER = "elapsed_s,pressure_bar_a,liquid_kg,solid_kg,vapor_kg,leak_by_kg_per_s"


def test_the_plan_has_its_keys_in_si(tmp_path: Path) -> None:
    done = run("plan", "--json", "--volume-l", 14.5, "--temperature-c", -20, "--liquid-fraction",
               0.3, "--altitude-m", 0, "--room-m3", 200, "--relief-bar-g", 52,
               cwd=tmp_path)  # fmt: skip
    assert done.returncode == 0
    assert not done.stderr
    plan = strict(done.stdout)
    assert set(plan) >= PLAN_KEYS
    assert plan["ambient_pressure_pa"] == 101_325.0
    assert plan["stop_pressure_pa_gauge"] == pytest.approx(519_625, abs=1)
    # CO2 saturated at 253.15 K, 1.9696 MPa, liquid 1031.7 kg/m3;
    # Span and Wagner 1996, from memory
    assert plan["saturation_pressure_pa"] == pytest.approx(1.9696e6, rel=1e-3)
    assert plan["liquid_kg"] == pytest.approx(1031.7 * 0.0145 * 0.3, rel=2e-3)
    # Molar volume at 20 degC and 1 atm: 24.06 l/mol ideal, molar mass 44.01 g/mol
    ppm = plan["charge_kg"] / 0.04401 * 0.02406 / 200 * 1e6
    assert plan["room_ppm_all_vented"] == pytest.approx(ppm, rel=0.05)
    assert plan["co2e_kg"] == pytest.approx(plan["charge_kg"])  # the GWP of CO2 is 1 by definition
    assert all(isinstance(line, str) and line for line in plan["warnings"])
    refused(run("plan", "--json", "--volume-l", 14.5, cwd=tmp_path))
    refused(run("plan", "--volume-l", 14.5, "--temperature-c", -20, "--liquid-fraction", 1.5,
                cwd=tmp_path))  # fmt: skip


def truth_at(path: Path, at_s: float) -> float:
    """Liquid and dry ice [kg] really there at a time."""
    rows = path.read_text().splitlines()
    assert rows[0] == TRUTH_HEADER
    best = min(rows[1:], key=lambda row: abs(float(row.split(",")[0]) - at_s))
    cells = [float(cell) for cell in best.split(",")]
    assert all(math.isfinite(cell) for cell in cells)
    return cells[2] + cells[3]


def test_a_seed_decides_all_and_vapor_only_is_never_said_over_liquid(tmp_path: Path) -> None:
    cases = {
        "again-1": ("--seed", 3, "--for", 15),
        "again-2": ("--seed", 3, "--for", 15),
        "other": ("--seed", 4, "--for", 15),
        "rule": ("--operator", "rule", "--liquid-fraction", 0.1, "--for", 60),
        "plan": ("--operator", "plan", "--liquid-fraction", 0.02, "--insulated", "--for", 60),
        "leak": ("--leak-by-g-per-s", 0.3, "--liquid-fraction", 0.0, "--for", 60),
        "gas": ("--liquid-fraction", 0.0, "--for", 60),
    }
    for name, words in cases.items():
        done = run("simulate", "--log", f"{name}.csv", "--truth", f"{name}.truth.csv", *words,
                   cwd=tmp_path)  # fmt: skip
        assert done.returncode == 0, done.stderr

    def content(name: str) -> bytes:
        return (tmp_path / f"{name}.csv").read_bytes()

    assert content("again-1") == content("again-2") != content("other")
    for seen in assess_all(tmp_path, *(f"{name}.csv" for name in cases)):
        assert seen["simulated"] is True
        truth = tmp_path / seen["file"].replace(".csv", ".truth.csv")
        for hold in seen["holds"]:
            if hold["charge"] == "vapor_only":
                # the allowable amount: the larger of 2 g and 0.5 g per litre of 14.5 l
                assert truth_at(truth, hold["end_s"]) <= 0.00725, seen["file"]
