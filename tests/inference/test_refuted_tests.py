"""Hold tests that look tight and are not: running pump, ice, shut gauge, gas topped up.

Traces are made here from textbook curves and CoolProp's figures, not with the code under test.
"""

from collections.abc import Callable

import numpy as np
import pytest

from co2vent.inference.standing_test import StandingResult, Tightness, standing_test
from co2vent.inference.vacuum_rise import VacuumResult, VacuumVerdict, vacuum_rise_test
from co2vent.readings.reading import Gas, Reading, Setup
from co2vent.units import MICRON_PA

Course = Callable[[float], float]

# -- vacuum-rise test -------------------------------------------------------------------------


def risen(
    micron: Course,
    seconds: float = 660.0,
    noise: float = 1.0,
    celsius: float = 10.0,
    begin_s: float | None = None,
    coldest_metal_k: float | None = None,
    seed: int = 2,
) -> VacuumResult:
    """Judge a gauge that shows whole microns once a second."""
    rng = np.random.default_rng(seed)
    rows = [
        Reading(
            float(at_s),
            1e5,
            celsius + 273.15,
            vacuum_pa=max(0, round(micron(at_s) + rng.normal(0.0, noise))) * MICRON_PA,
        )
        for at_s in np.arange(0.0, seconds)
    ]
    return vacuum_rise_test(rows, begin_s=begin_s, coldest_metal_k=coldest_metal_k)


def pump_down(at_s: float) -> float:
    return 400.0 + 3000.0 * float(np.exp(-at_s / 60.0))


@pytest.mark.parametrize("noise", [1.0, 3.0, 10.0])
@pytest.mark.parametrize("seed", range(8))
def test_a_pump_that_holds_its_pressure_is_no_hold(noise: float, seed: int) -> None:
    for course in (lambda at_s: 400.0, pump_down):
        found = risen(course, 1200.0, noise, seed=seed)
        assert found.verdict is VacuumVerdict.NOT_KNOWN_YET
        assert "not risen" in found.reason


@pytest.mark.parametrize(
    "course",
    [
        lambda at_s: 0.0 if at_s > 200 else 2000.0 - 10.0 * at_s,
        lambda at_s: max(400.0, pump_down(at_s) - 300.0),
        lambda at_s: pump_down(at_s) if at_s < 300 else 420.0,
    ],
)
def test_a_gauge_at_its_lower_end_or_cut_off_is_no_hold(course: Course) -> None:
    assert risen(course, 1200.0, 0.0).verdict is VacuumVerdict.NOT_KNOWN_YET


@pytest.mark.parametrize(
    "course",
    [
        lambda at_s: 300.0 + (at_s if at_s < 600 else 0.0) + 0.01 * at_s,
        lambda at_s: 310.0 + at_s / 2 if at_s < 200 else 290.0 + 0.04 * (at_s - 200),
        lambda at_s: 300.0 + 2.0 * (at_s % 20),
        lambda at_s: 300.0 + (at_s % 60) + 0.02 * at_s,
    ],
)
def test_a_rise_that_was_pumped_away_again_is_not_known_yet(course: Course) -> None:
    found = risen(course, 1500.0)
    assert found.verdict is VacuumVerdict.NOT_KNOWN_YET
    assert "fell back" in found.reason


def test_a_beginning_that_a_person_gave_leaves_out_the_evacuation_before() -> None:
    def course(at_s: float) -> float:
        return 310.0 + at_s / 2 if at_s < 200 else 290.0 + 0.04 * (at_s - 200)

    assert risen(course, 1500.0, begin_s=201.0).verdict is VacuumVerdict.TIGHT_AND_DRY


@pytest.mark.parametrize("noise", [0.0, 1.0, 3.0])
@pytest.mark.parametrize("seed", range(8))
def test_a_real_hold_stays_tight_and_dry(noise: float, seed: int) -> None:
    found = risen(
        lambda at_s: pump_down(at_s) + 0.08 * max(at_s - 400, 0), 1400.0, noise, seed=seed
    )
    assert found.verdict is VacuumVerdict.TIGHT_AND_DRY


@pytest.mark.parametrize("level", [773.0, 475.0, 285.0])
@pytest.mark.parametrize("tau_s", [20.0, 100.0, 200.0])
def test_a_rise_that_levels_like_ice_is_not_dry_by_a_warm_clamp(level: float, tau_s: float) -> None:
    """Ice at -20, -25, -30 degC: 103, 63, 38 Pa (IAPWS R14-08(2011)) = 773, 475, 285 micron."""

    def course(at_s: float) -> float:
        return level * (1.0 - 0.6 * float(np.exp(-at_s / tau_s)))

    for celsius in (5.0, 20.0):
        found = risen(course, 700.0, celsius=celsius)
        assert found.verdict is VacuumVerdict.NOT_KNOWN_YET
        assert "ice" in found.reason
        told = risen(course, 700.0, celsius=celsius, coldest_metal_k=celsius + 273.15)
        assert told.verdict is VacuumVerdict.TIGHT_AND_DRY


# -- standing-pressure test -------------------------------------------------------------------

SETUP = Setup(
    gas=Gas.NITROGEN,
    section_volume_m3=0.01,
    gauge_span_pa=60e5,
    gauge_accuracy_fraction=0.0025,
)
PER_K = 0.199  # bar/K of nitrogen at 50 bar absolute and 10 degC (CoolProp)


def stood(
    bar: Course,
    seconds: float = 3600.0,
    noise: float = 100.0,
    warming_k_per_h: float = 0.0,
    second_bar: Course | None = None,
    kept: Callable[[float], bool] = lambda at_s: True,
    seen: bool = False,
) -> StandingResult:
    """Judge 1 mbar steps once a second; a tight section moves with its temperature."""
    rng = np.random.default_rng(2)
    rows = []
    for at_s in np.arange(0.0, seconds):
        warmer_k = warming_k_per_h * at_s / 3600.0
        shown = (bar(at_s) + PER_K * warmer_k) * 1e5 + rng.normal(0.0, noise)
        second = None if second_bar is None else second_bar(at_s) * 1e5
        clamp = 283.15 + warmer_k + rng.normal(0.0, 0.02)
        if kept(at_s):
            rows.append(Reading(float(at_s), round(shown, -2), float(clamp), pressure_2_pa=second))
    return standing_test(rows, SETUP, gauge_seen_moving=seen)


def test_noise_alone_is_no_movement_of_the_gauge() -> None:
    found = stood(lambda at_s: 50.0)
    assert found.verdict is Tightness.NOT_KNOWN_YET
    assert "never moved" in found.reason
    assert stood(lambda at_s: 50.0, seen=True).verdict is Tightness.TIGHT
    assert stood(lambda at_s: 50.0, warming_k_per_h=0.3).verdict is Tightness.TIGHT


def test_a_flicker_is_no_movement_of_the_gauge() -> None:
    found = stood(lambda at_s: 50.001 if at_s == 1500 else 50.0, noise=0.0)
    assert found.verdict is Tightness.NOT_KNOWN_YET
    assert "never moved" in found.reason


def test_a_gauge_that_stands_in_warming_metal_still_shows_a_leak() -> None:
    found = stood(lambda at_s: 50.0 - PER_K * 2.0 * at_s / 3600.0, warming_k_per_h=2.0)
    assert found.verdict is Tightness.LEAKING


def test_a_second_gauge_that_falls_takes_tight_back() -> None:
    found = stood(lambda at_s: 50.0, second_bar=lambda at_s: 50.0 - at_s / 1200.0, seen=True)
    assert found.verdict is Tightness.NOT_KNOWN_YET
    assert "two gauges" in found.reason
    alike = stood(lambda at_s: 50.0, second_bar=lambda at_s: 50.2, seen=True)
    assert alike.verdict is Tightness.TIGHT


@pytest.mark.parametrize(("bar_per_h", "every_s"), [(0.3, 900), (0.15, 600), (1.0, 120)])
def test_gas_topped_up_hides_no_leak(bar_per_h: float, every_s: int) -> None:
    found = stood(lambda at_s: 50.0 - bar_per_h * (at_s % every_s) / 3600.0, 7200.0, seen=True)
    assert found.verdict is Tightness.NOT_KNOWN_YET
    assert "jumps up" in found.reason


def test_gas_topped_up_in_a_gap_hides_no_leak() -> None:
    for every_s, shown_s in ((120, 88), (900, 610)):
        found = stood(
            lambda at_s, every_s=every_s: 50.0 - 1.0 * (at_s % every_s) / 3600.0,  # type: ignore[misc]
            7200.0,
            kept=lambda at_s, every_s=every_s, shown_s=shown_s: at_s % every_s < shown_s,  # type: ignore[misc]
            seen=True,
        )
        assert found.verdict is not Tightness.TIGHT


def test_warming_in_the_sun_is_not_gas_let_in() -> None:
    """1 K within three minutes, followed by gauge and clamp alike, then steady."""
    rng = np.random.default_rng(4)
    rows = []
    for at_s in np.arange(0.0, 7200.0):
        warmer_k = float(np.clip((at_s - 3000.0) / 180.0, 0.0, 1.0))
        shown = (50.0 + PER_K * warmer_k) * 1e5 + rng.normal(0.0, 100.0)
        rows.append(Reading(float(at_s), round(shown, -2), 283.15 + warmer_k))
    assert "jumps up" not in standing_test(rows, SETUP, gauge_seen_moving=True).reason
