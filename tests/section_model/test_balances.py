"""Mass and energy close; the step does not matter; the same seed gives the same run."""

from dataclasses import replace

import numpy as np
import pytest

from co2vent.section_model.layout import COLUMN
from co2vent.section_model.parameters import (
    Contents,
    Gauge,
    Leaks,
    Pocket,
    Section,
    Setting,
    Sorbent,
)
from co2vent.section_model.population import draw_case, run_case
from co2vent.section_model.simulation import SectionRun


def closes(run: SectionRun, kg_start: float, joule_start: float) -> None:
    """Assert that nothing was made or lost, to 1e-6 of what there is and what has passed."""
    now = run.balance()
    kg = abs(now.kg_in) + kg_start
    # against the heat of vaporising the charge, not against the metal's whole energy
    joule = abs(now.joule_in) + kg_start * 350e3
    assert now.kg - now.kg_in == pytest.approx(kg_start, abs=1e-6 * kg)
    assert now.joule - now.joule_in == pytest.approx(joule_start, abs=1e-6 * joule)


@pytest.mark.parametrize("seed", range(40))
def test_mass_and_energy_close_over_any_vent(seed: int) -> None:
    case = draw_case(seed)
    run = SectionRun(case.setting, seed=seed)
    start = run.balance()
    for action in case.actions:
        readings = max(2, round(min(action.seconds, 300.0) / case.setting.gauge.period_s))
        below = action.until_pa if action.vent else -1e9
        run.step(action.opening if action.vent else 0.0, readings, below_pa=below)
        closes(run, start.kg, start.joule)


def test_mass_and_energy_close_with_everything_at_once_and_down_to_vacuum() -> None:
    sorbent = Sorbent(oil_kg=0.2, desiccant_kg=0.2)
    section = Section(pockets=(Pocket(volume_share=0.3, sorbent=sorbent), Pocket(volume_share=0.7)))
    setting = Setting(
        section=section,
        contents=Contents(liquid_fraction=0.3, nitrogen_pa=1e5, water_kg=0.005),
        leaks=Leaks(
            leak_by_kg_per_s=5e-5, leak_out_area_m2=1e-9, relief_pa=40e5, pump_m3_per_s=2e-3
        ),
    )
    run = SectionRun(setting)
    start = run.balance()
    for valve, seconds in ((0.0, 200), (1.0, 900), (0.0, 300)):
        run.step(valve, seconds)
        closes(run, start.kg, start.joule)
    run.set_pump(True)
    run.step(0.0, 600)
    closes(run, start.kg, start.joule)


@pytest.mark.parametrize("fill", [0.0, 0.003, 0.3])
def test_the_step_does_not_matter(fill: float) -> None:
    contents = Contents(temperature_k=253.15, liquid_fraction=fill, pressure_pa=18e5)
    gauge = Gauge(step_pa=0.0, noise_pa=0.0)
    ends = []
    for longest in (Setting().longest_step_s, 0.01):
        run = SectionRun(Setting(contents=contents, gauge=gauge, longest_step_s=longest))
        # the same seconds of venting for both
        rows = np.concatenate([run.step(0.5, 25, period_s=1.0), run.step(0.0, 600)])
        ends.append(rows[:, COLUMN["pressure_pa"]])
    vent, hold = np.abs(ends[0] - ends[1])[:25], np.abs(ends[0] - ends[1])[25:]
    assert vent.max() < 0.01 * ends[1][:25].min()
    assert hold[60:].max() < 1000.0  # 0.01 bar


def test_a_run_is_the_same_for_its_seed_however_it_is_cut() -> None:
    setting = Setting(contents=Contents(liquid_fraction=0.1))
    whole = SectionRun(setting, seed=5).step(0.3, 60)
    run = SectionRun(setting, seed=5)
    pieces = np.concatenate([run.step(0.3, n) for n in (1, 19, 40)])
    np.testing.assert_array_equal(whole, pieces)
    other = SectionRun(setting, seed=6).step(0.3, 60)
    assert not np.array_equal(whole[:, COLUMN["gauge_pa"]], other[:, COLUMN["gauge_pa"]])


def test_a_case_is_the_same_for_its_seed_and_its_holds_tell_the_truth() -> None:
    case = draw_case(12)
    assert case == draw_case(12)
    first, second = run_case(case), run_case(case)
    np.testing.assert_array_equal(first.rows, second.rows)
    assert first.holds == second.holds
    for hold in first.holds:
        rows = first.rows[hold.first_row : hold.last_row + 1]
        assert np.all(rows[1:, COLUMN["valve"]] == 0.0)
        assert rows[-1, COLUMN["liquid_kg"]] == hold.liquid_kg
        assert hold.wet == (hold.liquid_kg + hold.solid_kg > case.allowable_kg)


def test_the_population_has_every_kind_of_vent() -> None:
    cases = [draw_case(seed) for seed in range(300)]
    leaking = sum(case.setting.leaks.leak_by_kg_per_s > 0 for case in cases)
    assert 0.08 < leaking / len(cases) < 0.17  # 1 in 8
    litres = [case.setting.section.volume_m3 * 1e3 for case in cases]
    assert min(litres) > 1.0
    assert max(litres) < 50.0
    assert any(case.setting.contents.nitrogen_pa > 0 for case in cases)
    assert any(case.setting.section.pockets[0].sorbent.oil_kg > 0 for case in cases)
    assert any(case.setup.section_volume_m3 is None for case in cases)
    assert {case.valve_logged for case in cases} == {True, False}
    assert {case.clamp_logged for case in cases} == {True, False}
    runs = [run_case(case) for case in cases[:60]]
    assert any(hold.solid_kg > 0.01 for run in runs for hold in run.holds)
    assert all(np.isfinite(run.rows[:, 3:]).all() for run in runs)


def test_stuck_and_over_range_gauges() -> None:
    contents = Contents(temperature_k=263.15, liquid_fraction=0.2)
    gauge = Gauge(stuck_from_s=20.0, noise_pa=2000.0, full_scale_pa=60e5)
    rows = SectionRun(Setting(contents=contents, gauge=gauge)).step(1.0, 60)
    stuck = rows[rows[:, 0] > 21.0]
    assert len(set(stuck[:, COLUMN["gauge_pa"]])) == 1
    assert stuck[-1, COLUMN["pressure_pa"]] < 0.8 * stuck[0, COLUMN["pressure_pa"]]
    small = replace(gauge, full_scale_pa=16e5, stuck_from_s=float("inf"))
    rows = SectionRun(Setting(contents=contents, gauge=small)).step(1.0, 120)
    over = np.isnan(rows[:, COLUMN["gauge_pa"]])
    assert over[0]
    assert not over[-1]
