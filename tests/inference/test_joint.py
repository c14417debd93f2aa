"""Several holds together: the statistics, and a coarse gauge end to end."""

from dataclasses import replace
from math import sqrt

import numpy as np
import pytest

from co2vent.guidance.assess import assess_readings
from co2vent.inference.criteria import CRITERIA
from co2vent.inference.joint import Shown, joint_share, shown
from co2vent.inference.outcome import Charge
from co2vent.readings.reading import Setup
from tests.guidance.vents import boiling, vent, warming

WARM_K = 263.0


def _share(shares: np.ndarray, error: float) -> float:
    now, *earlier = (Shown(float(share), error) for share in shares)
    return joint_share(now, tuple(earlier), CRITERIA)


def test_the_mean_is_weighted_by_the_inverse_of_the_variance():
    """The combination of independent results (JCGM 100:2008, and any handbook; from memory)."""
    errors = np.array([0.2, 0.4, 0.8])
    shares = np.array([0.1, 0.3, 0.2])
    weights = errors**-2.0
    expected = (weights * shares).sum() / weights.sum() + 3.0902 / sqrt(weights.sum())
    ones = [Shown(float(s), float(e)) for s, e in zip(shares, errors, strict=True)]
    assert joint_share(ones[0], tuple(ones[1:]), CRITERIA) == pytest.approx(expected, rel=1e-4)


@pytest.mark.parametrize("holds", [2, 3, 5])
def test_liquid_at_its_least_slope_is_cleared_in_one_of_a_thousand_at_most(holds):
    """The confidence that is stated, with normal noise; 40,000 draws, 3 standard errors."""
    random = np.random.default_rng(holds)
    draws = 40_000
    cleared = sum(
        _share(1.0 + 0.6 * random.standard_normal(holds), 0.6) < 1.0 for _ in range(draws)
    )
    assert cleared <= draws * 1e-3 + 3.0 * sqrt(draws * 1e-3)


def test_five_holds_find_a_dry_section_that_one_can_not():
    random = np.random.default_rng(7)
    dry = [0.1 + 0.4 * random.standard_normal(5) for _ in range(2_000)]
    alone = np.mean([max(one[0], 0.0) + 3.0902 * 0.4 < 1.0 for one in dry])
    together = np.mean([_share(one, 0.4) < 1.0 for one in dry])
    assert alone < 0.05
    assert together > 0.6


def test_quiet_holds_before_do_not_outvote_the_hold_at_hand():
    """Liquid that came in since then shows in this hold alone."""
    before = tuple(Shown(0.0, 0.1) for _ in range(6))
    assert joint_share(Shown(0.8, 0.3), before, CRITERIA) >= 1.0


def test_a_fall_is_not_counted_against_a_rise():
    before = (Shown(-3.0, 0.4),)
    assert joint_share(Shown(0.3, 0.4), before, CRITERIA) == joint_share(
        Shown(0.3, 0.4), (Shown(0.0, 0.4),), CRITERIA
    )


def test_no_power_shows_nothing():
    assert shown(0.0, 1.0, 0.0) is None


def _noisy(rises, seed: int, noise_pa: float = 2_600.0, grain_pa: float = 5_000.0, **changes):
    """Readings of a coarse gauge whose noise is about half its step."""
    random = np.random.default_rng(seed)
    values = {"hold_s": 330.0, "line_k": WARM_K, "step_pa": 1.0, "interval_s": 2.0} | changes
    for reading in vent(rises, **values):
        pressure_pa = reading.pressure_pa + noise_pa * random.standard_normal()
        yield replace(reading, pressure_pa=round(pressure_pa / grain_pa) * grain_pa)


SETUP = Setup(section_volume_m3=0.012, ambient_pressure_assumed=False, insulated=True)


def test_a_coarse_gauge_clears_a_dry_section_in_the_third_hold_and_not_in_the_first():
    first, later = 0, 0
    for seed in range(12):
        dry = [warming(7e4), warming(3e4), warming(2e4), warming(2e4)]
        holds = [h for h in assess_readings(SETUP, _noisy(dry, seed)).holds if h.number > 0]
        assert len(holds) == 4
        first += holds[0].charge is Charge.VAPOR_ONLY
        later += any(hold.charge is Charge.VAPOR_ONLY for hold in holds[2:])
    assert first <= 2
    assert later >= 9


@pytest.mark.parametrize("seed", range(6))
def test_a_coarse_gauge_does_not_clear_what_rises_as_liquid_would(seed):
    """At the least slope of liquid in this section, 1.3 Pa/s/K x 40 K / 12 ** (1/3)."""
    slope = CRITERIA.clamp_insulated_per_k * 40.0 * 12.0 ** (-1.0 / 3.0)
    wet = [boiling(slope, 3e4)] * 5
    seen = assess_readings(SETUP, _noisy(wet, seed))
    assert all(hold.charge is not Charge.VAPOR_ONLY for hold in seen.holds)


LOW = {"noise_pa": 1_100.0, "grain_pa": 2_000.0, "stop_pa": 2.6e5, "hold_s": 400.0}


def test_below_the_triple_point_a_coarse_gauge_clears_in_a_later_hold():
    first, later = 0, 0
    for seed in range(12):
        dry = [warming(2e4), warming(1e4), warming(6e3), warming(6e3), warming(6e3)]
        holds = [h for h in assess_readings(SETUP, _noisy(dry, seed, **LOW)).holds if h.number > 0]
        first += holds[0].charge is Charge.VAPOR_ONLY
        later += any(hold.charge is Charge.VAPOR_ONLY for hold in holds[2:])
    assert first <= 3
    assert later >= 7


@pytest.mark.parametrize("seed", range(6))
def test_below_the_triple_point_a_rise_such_as_snow_gives_is_not_cleared(seed):
    slope = CRITERIA.ice_slope * 12.0 ** (-1.0 / 3.0)
    snow = [boiling(slope, 1e4)] * 5
    seen = assess_readings(SETUP, _noisy(snow, seed, **LOW))
    assert all(hold.charge is not Charge.VAPOR_ONLY for hold in seen.holds)
