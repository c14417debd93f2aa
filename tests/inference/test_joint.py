"""Several holds together: the statistics, and a coarse gauge end to end."""

from math import exp, sqrt

import numpy as np
import pytest

from co2vent.guidance.assess import assess_readings
from co2vent.inference.criteria import CRITERIA
from co2vent.inference.joint import Shown, joint_share, run_of
from co2vent.inference.outcome import Charge
from co2vent.readings.reading import Setup
from tests.guidance.vents import boiling, vent, warming

WARM_K = 263.0


def _share(shares: np.ndarray, error: float) -> float:
    now, *earlier = (Shown(float(share), error) for share in shares)
    return joint_share(now, earlier, CRITERIA)


def test_the_mean_is_weighted_by_the_inverse_of_the_variance():
    """The combination of independent results (JCGM 100:2008, and any handbook; from memory)."""
    errors = np.array([0.2, 0.4, 0.8])
    shares = np.array([0.1, 0.3, 0.2])
    weights = errors**-2.0
    error = sqrt(1.0 / weights.sum() + CRITERIA.joint_shared_error**2)
    expected = (weights * shares).sum() / weights.sum() + 3.0902 * error
    ones = [Shown(float(s), float(e)) for s, e in zip(shares, errors, strict=True)]
    assert joint_share(ones[0], ones[1:], CRITERIA) == pytest.approx(expected, rel=1e-4)


@pytest.mark.parametrize("holds", [2, 3, 5, 20])
def test_liquid_at_its_least_slope_is_cleared_in_one_of_a_thousand_at_most(holds):
    """The confidence that is stated; normal noise and an error that all holds share."""
    random = np.random.default_rng(holds)
    draws = 40_000
    shared = CRITERIA.joint_shared_error * random.standard_normal(draws)
    cleared = sum(
        _share(1.0 + one + 0.6 * random.standard_normal(holds), 0.6) < 1.0 for one in shared
    )
    assert cleared <= draws * 1e-3 + 3.0 * sqrt(draws * 1e-3)


def test_five_holds_find_a_dry_section_that_one_can_not():
    random = np.random.default_rng(7)
    dry = [0.1 + 0.35 * random.standard_normal(5) for _ in range(2_000)]
    alone = np.mean([max(one[0], 0.0) + 3.0902 * 0.35 < 1.0 for one in dry])
    together = np.mean([_share(one, 0.35) < 1.0 for one in dry])
    assert alone < 0.05
    assert together > 0.6


def test_quiet_holds_before_do_not_outvote_the_hold_at_hand():
    """Liquid that came in since then shows in this hold alone."""
    before = [Shown(0.0, 0.1) for _ in range(6)]
    assert joint_share(Shown(0.8, 0.3), before, CRITERIA) >= 1.0


def test_a_fall_is_not_counted_against_a_rise():
    fell = joint_share(Shown(0.3, 0.3), [Shown(-0.2, 0.3)], CRITERIA)
    assert fell == joint_share(Shown(0.3, 0.3), [Shown(0.0, 0.3)], CRITERIA) < 1.0


def test_holds_that_do_not_exclude_as_great_a_fall_exclude_nothing():
    """An outward leak as great would hide boiling."""
    assert joint_share(Shown(0.0, 0.3), [Shown(-2.0, 0.3)], CRITERIA) >= 1.0


def test_only_an_unbroken_run_of_holds_counts():
    one, two, three = Shown(0.1, 0.2), Shown(0.2, 0.2), Shown(0.3, 0.2)
    assert run_of([one, None, two, three]) == [three, two]
    assert run_of([one, two, None]) == []


def _noisy(rises, seed: int, noise_pa: float = 2_600.0, grain_pa: float = 5_000.0, **changes):
    """Readings of a coarse gauge whose noise is about half its step."""
    random = np.random.default_rng(seed)
    values = {"hold_s": 330.0, "line_k": WARM_K, "step_pa": 1.0, "interval_s": 2.0} | changes
    for reading in vent(rises, **values):
        pressure_pa = reading.pressure_pa + noise_pa * random.standard_normal()
        yield reading._replace(pressure_pa=round(pressure_pa / grain_pa) * grain_pa)


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
    assert later >= 7


@pytest.mark.parametrize("seed", range(6))
def test_a_coarse_gauge_does_not_clear_what_rises_as_liquid_would(seed):
    """At the least slope of liquid in this section, 1.3 Pa/s/K x 40 K / 12 ** (1/3)."""
    slope = CRITERIA.clamp_insulated_per_k * 40.0 * 12.0 ** (-1.0 / 3.0)
    wet = [boiling(slope, 3e4)] * 5
    seen = assess_readings(SETUP, _noisy(wet, seed))
    assert all(hold.charge is not Charge.VAPOR_ONLY for hold in seen.holds)


def _least(age_s: float) -> float:
    """How much liquid at its least slope has raised the pressure at an age of the hold [Pa]."""
    slope = CRITERIA.clamp_insulated_per_k * 40.0 * 12.0 ** (-1.0 / 3.0)
    young = max(0.0, min(age_s, 350.0) - 60.0)
    gained = slope * (350.0 / 60.0) ** 0.5 * min(age_s, 60.0)
    gained += 2.0 * slope * 350.0**0.5 * ((60.0 + young) ** 0.5 - 60.0**0.5)
    return gained + slope * max(0.0, age_s - 350.0) + 2e4 * (1.0 - exp(-age_s / 30.0))


def _broken(how: str, seed: int):
    """Six dry holds; then a break, and a vent of what has come in meanwhile."""
    last_s = 0.0
    for reading in _noisy([warming(2e4)] * 6, 1):
        last_s = reading.at_s
        yield reading
    for reading in _noisy([_least], seed, hold_s=430.0):
        if how == "clock":
            yield reading._replace(segment=1)
        elif how == "gap":
            yield reading._replace(at_s=reading.at_s + last_s + 3_600.0)
        else:
            yield reading._replace(at_s=reading.at_s + last_s + 2.0)


@pytest.mark.parametrize("how", ["clock", "gap", "filled"])
def test_what_was_shown_before_a_break_or_an_inflow_does_not_count(how):
    """With the holds before it every third such hold was cleared; alone none of 34 and of 43."""
    for seed in range(100, 112):
        seen = assess_readings(SETUP, _broken(how, seed))
        late = [event.text for event in seen.events if event.text.startswith("hold 7: vapor")]
        assert late == []


@pytest.mark.parametrize("slope", [-6.0, -10.0])
def test_holds_that_all_sink_are_not_cleared_together(slope):
    """Boiling behind a larger outward leak: 28 and 14 of 40 were, before the fall was bounded."""
    cleared = 0
    for seed in range(10):
        falling = [lambda s: 3e4 * (1.0 - exp(-s / 30.0)) + slope * s] * 5
        seen = assess_readings(SETUP, _noisy(falling, seed))
        cleared += any(hold.charge is Charge.VAPOR_ONLY for hold in seen.holds)
    assert cleared <= 2


@pytest.mark.parametrize("rate", [600.0, 1_200.0])
def test_without_a_valve_column_the_start_of_the_next_vent_clears_nothing(rate):
    """Three of 8 were, when the fall counted as the hold's end."""
    for seed in range(6):
        items = _noisy([_least] * 4, seed, hold_s=400.0, fall_pa_per_s=rate, valve=False)
        seen = assess_readings(SETUP, items)
        assert all("vapor_only" not in event.text for event in seen.events)
