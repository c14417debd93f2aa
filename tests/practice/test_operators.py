"""Whoever works the valve in a simulation is told only what the gauge shows."""

import pytest

from co2vent.errors import RefusedInputError
from co2vent.practice.exercises import holds
from co2vent.practice.operators import PlanOperator, PromptOperator, RuleOperator
from co2vent.practice.plans import plan_from, usual_plan
from co2vent.practice.scenario import scenario_from
from co2vent.practice.vents import run_vent
from co2vent.readings.limits import stop_pressure_pa_gauge
from co2vent.section_model.layout import COLUMN

WET = {"charge": {"liquid_fraction": 0.15}}


def test_the_rule_of_thumb_stops_at_the_stop_pressure_and_vents_again_while_it_rises() -> None:
    scenario = scenario_from(WET)
    rows = run_vent(scenario, RuleOperator(scenario.setup), seed=1)
    found = holds(rows)
    stop = stop_pressure_pa_gauge(scenario.setup)
    assert len(found) > 3
    rises = [h[-1, COLUMN["gauge_pa"]] - h[0, COLUMN["gauge_pa"]] for h in found[1:]]
    assert rises[0] > 6895.0  # 1 psi: so it vents again
    assert all(h[0, COLUMN["gauge_pa"]] < stop + 0.3e5 for h in found[1:])
    last = [rise for h, rise in zip(found[1:], rises, strict=True) if h[-1, 0] - h[0, 0] > 100.0]
    assert last[-1] <= 6895.0 * 1.5  # no rise over 1 psi, and on to zero
    assert rows[-1, COLUMN["pressure_pa"]] < scenario.ambient_pa + 0.1e5


def test_the_rule_of_thumb_is_fooled_where_no_metal_is_warm() -> None:
    scenario = scenario_from(
        {
            "section": {"volume_l": 32.0, "insulated": True, "outside_w_per_m2k": 0.3},
            "charge": {
                "temperature_c": -51.5,
                "liquid_fraction": 0.1,
                "dry_metal_c": -52.5,
                "wet_metal_c": -53.0,
            },
            "surroundings": {"ambient_c": -5.0},
        }
    )
    rows = run_vent(scenario, RuleOperator(scenario.setup), seed=1, longest_s=3600.0)
    assert rows[-1, COLUMN["solid_kg"]] > 0.5  # dry ice left behind at zero on the gauge


def test_the_usual_plan_holds_as_long_as_it_says() -> None:
    scenario = scenario_from(WET)
    operator = PlanOperator(usual_plan(scenario.setup), scenario.setup.ambient_pressure_pa)
    rows = run_vent(scenario, operator, seed=1)
    lengths = [h[-1, 0] - h[0, 0] for h in holds(rows)]
    assert lengths[0] == pytest.approx(90.0, abs=2.0)
    assert lengths[1] == pytest.approx(600.0, abs=2.0)


def test_a_plan_step_that_neither_holds_nor_vents_is_refused() -> None:
    setup = scenario_from({}).setup
    with pytest.raises(RefusedInputError, match="step 1"):
        plan_from([{"opening": 0.5}], setup)
    with pytest.raises(RefusedInputError, match="step 2"):
        plan_from([{"hold_min": 1}, {"hold_min": 1, "vent_to_bar_g": 5}], setup)
    with pytest.raises(RefusedInputError, match="no number"):
        plan_from([{"vent_to_bar_g": "low"}], setup)


def test_who_follows_the_prompts_keeps_the_stop_pressure_with_liquid_inside() -> None:
    scenario = scenario_from(WET)
    operator = PromptOperator(scenario.setup)
    rows = run_vent(scenario, operator, seed=1, longest_s=1800.0)
    wet = rows[rows[:, COLUMN["liquid_kg"]] > 1e-3]
    # the stop pressure is 6.21 bar abs; the hand at the valve is two seconds behind the prompt
    assert wet[:, COLUMN["pressure_pa"]].min() > 6.15e5
    assert rows[:, COLUMN["solid_kg"]].max() == 0.0
    assert rows[-1, COLUMN["vented_kg"]] > 1.0


@pytest.mark.parametrize(
    ("tables", "words"),
    [
        ({"sektion": {}}, "unknown table"),
        ({"section": {"volume": 3.0}}, "no key 'volume'"),
        ({"section": {"volume_l": "big"}}, "must be a number"),
        ({"section": {"volume_l": -2.0}}, "between"),
        ({"section": {"volume_l": 900.0, "diameter_mm": 10.0}}, "larger diameter_mm"),
        ({"leaks": {"leak_by_g_per_s": 50.0}}, "open valve"),
        ({"charge": {"oil_kg": 30.0}}, "oil_kg"),
        ({"section": {"metal": "lead"}}, "metal"),
        ({"section": {"insulated": 1}}, "true or false"),
        ({"charge": {"liquid_fraction": 1.5}}, "0 to 1"),
        ({"charge": {"temperature_c": -60.0, "liquid_fraction": 0.2}}, "not colder"),
        ({"charge": {"temperature_c": -10.0, "pressure_bar_g": 5.0, "solid_kg": 0.2}}, "not both"),
        ({"charge": {"temperature_c": -70.0, "solid_kg": 500.0}}, "holds no more"),
        ({"charge": {"dry_metal_c": -400.0}}, "dry_metal_c must lie"),
        ({"charge": {"nitrogen_bar": -20.0}}, "nitrogen_bar must lie"),
        ({"vent": {"discharge_coefficient": -3.0}}, "discharge_coefficient must lie"),
        ({"gauge": {"noise": -1.0}}, "noise must lie"),
        ({"gauge": {"unit": "bar_a"}}, "unit"),
        ({"gauge": {"period_s": 0.0}}, "period_s"),
        ({"leaks": {"supply_c": 40.0}}, "supply_c"),
        ({"log": {"gas": "argon"}}, "gas"),
    ],
)  # fmt: skip
def test_a_scenario_that_cannot_be_is_refused_in_one_sentence(tables: dict, words: str) -> None:
    with pytest.raises(RefusedInputError, match=words):
        scenario_from(tables)
