"""Figures of `plan --json` against CoolProp's states and sums done by hand here."""

import math
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest

from tests.contract.command import Json, call, refused, run, strict

TRIPLE_PA = 517_950.0  # Span and Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509
SHELF_SPLIT_J_KG = 9_020.0 / 0.044_0095  # heat of fusion, 9.02 kJ/mol; CRC handbook, from memory
VOLUME_M3 = 0.0145
KEYS = {
    "ambient_pressure_pa", "triple_point_pa_gauge", "stop_pressure_pa_gauge",
    "saturation_pressure_pa", "charge_kg", "liquid_kg", "liquid_left_at_stop_kg",
    "dry_ice_kg_if_vented_straight_down", "vent_to_stop_s", "boil_off_energy_j",
    "trapped_liquid_bar_per_k", "kelvin_to_relief", "room_ppm_all_vented", "co2e_kg", "warnings",
}  # fmt: skip
PLAIN = ("--volume-l", 14.5, "--liquid-fraction", 0.3, "--altitude-m", 0)
WORDS = (*PLAIN, "--temperature-c", -20, "--relief-bar-g", 52, "--room-m3", 200)


def state(output: str, *given: Any) -> float:
    """One figure of saturated or single-phase CO2, by CoolProp."""
    from CoolProp.CoolProp import PropsSI

    return float(PropsSI(output, *given, "CO2"))


def saturated(output: str, pressure_pa: float, vapour_share: int) -> float:
    return state(output, "P", pressure_pa, "Q", vapour_share)


def plan(cwd: Path, *words: object) -> Json:
    done = call("plan", "--json", *words, cwd=cwd)
    assert done.returncode == 0, done.stderr
    assert not done.stderr
    return strict(done.stdout)


@pytest.fixture(scope="module")
def usual(tmp_path_factory: pytest.TempPathFactory) -> Json:
    cwd = tmp_path_factory.mktemp("plan")
    done = run("plan", "--json", *WORDS, cwd=cwd)
    assert strict(done.stdout) == plan(cwd, *WORDS)
    return strict(done.stdout)


def liquid_after_slow_vapour_venting(start_pa: float, end_pa: float, share: float) -> float:
    """Liquid left [kg] of an adiabatic rigid section: dU = h_vapour dm, small steps of pressure."""
    liquid = share * VOLUME_M3 * saturated("D", start_pa, 0)
    vapour = (1 - share) * VOLUME_M3 * saturated("D", start_pa, 1)
    steps = [start_pa + (end_pa - start_pa) * n / 400 for n in range(401)]
    for before_pa, after_pa in pairwise(steps):
        energy = liquid * saturated("U", before_pa, 0) + vapour * saturated("U", before_pa, 1)
        h_out = 0.5 * (saturated("H", before_pa, 1) + saturated("H", after_pa, 1))
        mass = liquid + vapour
        # mass and energy after the step, both linear in liquid and vapour left, at full volume
        v_l, v_v = 1 / saturated("D", after_pa, 0), 1 / saturated("D", after_pa, 1)
        u_l, u_v = saturated("U", after_pa, 0), saturated("U", after_pa, 1)
        # m_l v_l + m_v v_v = V;  m_l (u_l - h) + m_v (u_v - h) = U - h m
        right = energy - h_out * mass
        determinant = v_l * (u_v - h_out) - v_v * (u_l - h_out)
        liquid = (VOLUME_M3 * (u_v - h_out) - v_v * right) / determinant
        vapour = (v_l * right - VOLUME_M3 * (u_l - h_out)) / determinant
    return liquid


def test_every_key_is_there_and_warnings_are_sentences(usual: Json) -> None:
    assert set(usual) >= KEYS
    assert all(usual[key] is not None for key in KEYS)
    assert usual["warnings"]
    for line in usual["warnings"]:
        assert line.strip().endswith((".", "!")), line
        assert "safe to open" not in line.lower()


def test_a_charge_above_31_degc_has_no_saturation_pressure_and_no_made_up_figure(
    tmp_path: Path,
) -> None:
    # critical point of CO2: 304.13 K, Span and Wagner 1996
    hot = plan(tmp_path, *PLAIN, "--temperature-c", 35)
    for key in ("saturation_pressure_pa", "charge_kg", "liquid_kg", "vent_to_stop_s"):
        assert hot[key] is None, key
    assert hot["stop_pressure_pa_gauge"] == pytest.approx(519_625, abs=20)
    assert hot["warnings"]


def test_the_charge_is_that_of_saturated_states(usual: Json) -> None:
    at_pa = state("P", "T", 253.15, "Q", 0)
    assert usual["saturation_pressure_pa"] == pytest.approx(at_pa, rel=2e-4)
    liquid = 0.3 * VOLUME_M3 * saturated("D", at_pa, 0)
    vapour = 0.7 * VOLUME_M3 * saturated("D", at_pa, 1)
    assert usual["liquid_kg"] == pytest.approx(liquid, rel=1e-3)
    assert usual["charge_kg"] == pytest.approx(liquid + vapour, rel=1e-3)
    assert usual["co2e_kg"] == usual["charge_kg"]  # GWP 1 by definition
    assert usual["triple_point_pa_gauge"] == pytest.approx(TRIPLE_PA - 101_325, abs=20)
    assert usual["stop_pressure_pa_gauge"] - usual["triple_point_pa_gauge"] == pytest.approx(
        103_000, abs=1
    )


def test_the_liquid_left_is_that_of_slow_adiabatic_vapour_venting(usual: Json) -> None:
    start_pa = usual["saturation_pressure_pa"]
    stop_pa = usual["stop_pressure_pa_gauge"] + usual["ambient_pressure_pa"]
    left = liquid_after_slow_vapour_venting(start_pa, stop_pa, 0.3)
    assert usual["liquid_left_at_stop_kg"] == pytest.approx(left, rel=2e-3)
    heat = saturated("H", stop_pa, 1) - saturated("H", stop_pa, 0)
    assert usual["boil_off_energy_j"] == pytest.approx(left * heat, rel=5e-3)


def test_the_dry_ice_is_what_freezes_on_the_shelf(usual: Json) -> None:
    left = liquid_after_slow_vapour_venting(usual["saturation_pressure_pa"], TRIPLE_PA + 60, 0.3)
    # on the shelf the vapour that leaves takes its heat from what freezes:
    # ice * fusion = vapour * vaporisation, ice + vapour = liquid
    boil = saturated("H", TRIPLE_PA + 60, 1) - saturated("H", TRIPLE_PA + 60, 0)
    ice = left * boil / (boil + SHELF_SPLIT_J_KG)
    # the vapour that fills the room of the liquid moves the share by less than 2 %
    assert usual["dry_ice_kg_if_vented_straight_down"] == pytest.approx(ice, rel=0.02)


def test_trapped_liquid_follows_the_isochore_to_the_relief_setting(usual: Json) -> None:
    density = state("D", "T", 253.15, "Q", 0)
    relief_pa = 52e5 + 101_325
    start_pa = state("P", "T", 253.15, "Q", 0)
    relief_k = state("T", "P", relief_pa, "D", density)
    assert usual["kelvin_to_relief"] == pytest.approx(relief_k - 253.15, rel=5e-3)
    slope = (relief_pa - start_pa) / 1e5 / (relief_k - 253.15)
    assert usual["trapped_liquid_bar_per_k"] == pytest.approx(slope, rel=0.03)


def test_the_room_is_mixed_at_20_degc_without_ventilation(usual: Json) -> None:
    litre_per_kg = 1000.0 / state("D", "T", 293.15, "P", 101_325)
    rise = usual["charge_kg"] * litre_per_kg / 1000.0 / 200.0
    # as a share of the air that was there, or of air and CO2 together: 1.4 % apart here
    assert rise / (1 + rise) * 0.999 <= usual["room_ppm_all_vented"] / 1e6 <= rise * 1.001


def test_the_time_to_the_stop_pressure_is_that_of_choked_flow(usual: Json, tmp_path: Path) -> None:
    bore = plan(tmp_path, *WORDS, "--vent-bore-mm", 3, "--discharge-coefficient", 0.5)
    start_pa = bore["saturation_pressure_pa"]
    stop_pa = bore["stop_pressure_pa_gauge"] + bore["ambient_pressure_pa"]
    vented = bore["charge_kg"] - (
        bore["liquid_left_at_stop_kg"]
        + (VOLUME_M3 - bore["liquid_left_at_stop_kg"] / saturated("D", stop_pa, 0))
        * saturated("D", stop_pa, 1)
    )
    area = math.pi / 4 * 0.003**2
    # ideal-gas critical flow of the saturated vapour, ISO 9300's form: Cd A psi sqrt(p rho),
    # psi 0.63 to 0.69 for isentropic exponents of 1.2 to 1.4
    fast, slow = (
        0.5 * area * psi * math.sqrt(p * saturated("D", p, 1))
        for psi, p in ((0.69, start_pa), (0.63, stop_pa))
    )
    assert vented / fast < bore["vent_to_stop_s"] < vented / slow
    # twice the bore is four times the area
    wide = plan(tmp_path, *WORDS, "--vent-bore-mm", 6, "--discharge-coefficient", 0.5)
    assert bore["vent_to_stop_s"] / wide["vent_to_stop_s"] == pytest.approx(4, rel=1e-3)


def test_each_option_moves_what_it_should(usual: Json, tmp_path: Path) -> None:
    # saturation at 253.15 K by pressure instead of temperature
    gauge_bar = (usual["saturation_pressure_pa"] - 101_325) / 1e5
    by_pressure = plan(tmp_path, *PLAIN, "--pressure-bar-g", gauge_bar)
    assert by_pressure["charge_kg"] == pytest.approx(usual["charge_kg"], rel=1e-4)
    # US Standard Atmosphere 1976, table I: 79 501 Pa at 2000 m, from memory
    high = plan(tmp_path, *WORDS, "--altitude-m", 2000)
    assert high["ambient_pressure_pa"] == pytest.approx(79_501, abs=15)
    assert high["triple_point_pa_gauge"] == pytest.approx(TRIPLE_PA - 79_501, abs=35)
    coarse = plan(tmp_path, *WORDS, "--gauge-full-scale-bar", 100, "--gauge-accuracy-percent", 2.5)
    margin = coarse["stop_pressure_pa_gauge"] - coarse["triple_point_pa_gauge"]
    assert margin >= 250_000 + 30_000 - 1  # 2.5 % of 100 bar, and 0.3 bar
    warm = plan(tmp_path, *WORDS, "--ambient-c", 30, "--air-changes-per-hour", 6)
    assert warm["room_ppm_all_vented"] == usual["room_ppm_all_vented"]  # no ventilation in it
    unknown = plan(tmp_path, *PLAIN, "--temperature-c", -20)
    assert unknown["kelvin_to_relief"] is None
    assert unknown["room_ppm_all_vented"] is None


@pytest.mark.parametrize(
    ("fraction", "temperature"), [(0.0, -20), (1.0, -20), (0.3, 30.9), (0.3, -56), (0.5, -40)]
)
def test_ends_of_the_range_are_planned_in_json(
    fraction: float, temperature: float, tmp_path: Path
) -> None:
    words = ("--volume-l", 14.5, "--liquid-fraction", fraction, "--temperature-c", temperature)
    seen = plan(tmp_path, *words)
    assert seen["liquid_kg"] == pytest.approx(
        fraction * VOLUME_M3 * state("D", "T", temperature + 273.15, "Q", 0), rel=0.01
    )
    assert 0 <= seen["liquid_left_at_stop_kg"] <= seen["liquid_kg"]
    assert (seen["dry_ice_kg_if_vented_straight_down"] > 0) == (seen["liquid_left_at_stop_kg"] > 0)


@pytest.mark.parametrize(
    "words",
    [
        ("--volume-l", 14.5),
        ("--temperature-c", -20),
        ("--volume-l", 14.5, "--temperature-c", -20, "--pressure-bar-g", 18),
        ("--volume-l", 0, "--temperature-c", -20),
        ("--volume-l", "nan", "--temperature-c", -20),
        ("--volume-l", 14.5, "--temperature-c", -20, "--liquid-fraction", -0.1),
        ("--volume-l", 14.5, "--temperature-c", -20, "--room-m3", 0),
        ("--volume-l", 14.5, "--temperature-c", -300),
        ("--volume-l", 14.5, "--temperature-c", -20, "--vent-bore-mm", 0),
        ("--volume-l", 14.5, "--temperature-c", -20, "--no-such-option"),
    ],
)
def test_what_cannot_be_is_one_line_and_status_2(words: tuple[object, ...], tmp_path: Path) -> None:
    refused(call("plan", "--json", *words, cwd=tmp_path))
