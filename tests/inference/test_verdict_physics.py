"""The physics that the verdict leans on, against CoolProp (Span-Wagner) and the phase rule."""

import numpy as np
import pytest

from co2vent.guidance.assess import assess_readings
from co2vent.inference.criteria import CRITERIA
from co2vent.inference.dry_limits import gas_bound_pa, gas_warmed_pa
from co2vent.inference.hold_facts import HoldContext
from co2vent.inference.mass_flow import mass_slope
from co2vent.inference.outcome import Charge
from co2vent.inference.power import power
from co2vent.inference.trace import GaugeWatch, HoldTrace
from co2vent.inference.trend import fit_trend
from co2vent.readings.reading import Reading, Setup
from tests.guidance.vents import boiling, vent, warming

CP = pytest.importorskip("CoolProp.CoolProp")


def context(**changes):
    values = {
        "setup": Setup(),
        "number": 1,
        "noise_pa": 300.0,
        "step_pa": 1_000.0,
        "stop_pa": 6.2e5,
        "vented": True,
        "first_pa": 20e5,
        "lowest_pa": 6.2e5,
        "cleared": False,
        "cleared_limit_kg": None,
        "solid_seen": False,
        "valve_known": True,
        "ambient_k": None,
        "earlier": (),
        "faults": (),
    }
    return HoldContext(**{**values, **changes})


@pytest.mark.parametrize("first_pa", [5.5e5, 6.213e5, 8e5, 12e5])
def test_gas_shut_in_can_warm_to_no_more_than_its_constant_density_pressure(first_pa):
    density = CP.PropsSI("D", "P", first_pa, "Q", 1, "CO2")
    hottest = CP.PropsSI("P", "D", density, "T", CRITERIA.hottest_k, "CO2")
    assert gas_bound_pa(first_pa, float("nan"), context(), CRITERIA) == pytest.approx(
        hottest, rel=2e-3
    )


@pytest.mark.parametrize(("first_pa", "gas_k"), [(6.2e5, 259.0), (9e5, 280.0)])
def test_gas_that_warms_to_the_clamp_reaches_what_span_wagner_says(first_pa, gas_k):
    density = CP.PropsSI("D", "P", first_pa, "Q", 1, "CO2")
    wanted = CP.PropsSI("P", "D", density, "T", gas_k, "CO2")
    assert gas_warmed_pa(first_pa, gas_k) == pytest.approx(wanted, rel=2e-3)


@pytest.mark.parametrize("pressure_pa", [5.5e5, 7e5, 10e5])
def test_metal_warming_is_compensated_with_the_real_gas_slope(pressure_pa):
    """(dp/dT) at constant density; an ideal gas would give 5 to 25 % less (co2 table, own sums)."""
    gas_k, k_per_s = 250.0, 0.01
    density = CP.PropsSI("D", "P", pressure_pa, "T", gas_k, "CO2")
    slope = CP.PropsSI("d(P)/d(T)|D", "D", density, "T", gas_k, "CO2") * k_per_s
    found = power(Setup(insulated=False), pressure_pa, gas_k, k_per_s, CRITERIA).warming_slope
    assert found == pytest.approx(CRITERIA.compensated_bare * slope, rel=5e-3)


@pytest.mark.parametrize("pressure_pa", [6e5, 9e5, 14e5])
def test_one_mass_flow_is_seen_as_one_mass_flow_at_any_pressure(pressure_pa):
    gas_k = 263.15
    density = CP.PropsSI("D", "P", pressure_pa, "T", gas_k, "CO2")
    per_density = CP.PropsSI("d(P)/d(D)|T", "D", density, "T", gas_k, "CO2")
    flow = mass_slope(pressure_pa, 0.01 * per_density, gas_k)
    assert flow == pytest.approx(0.01, rel=5e-3)


@pytest.mark.parametrize("step_pa", [100.0, 1_000.0, 6_894.757])
def test_the_slope_bound_holds_the_true_slope(step_pa):
    """99.9 % bounds on 60 seeded traces: no miss expected, one allowed (binomial, 1.7 % chance)."""
    misses = 0
    for seed in range(60):
        rng = np.random.default_rng(seed)
        slope, size, tau = rng.uniform(0.0, 100.0), rng.uniform(0.0, 9e4), rng.uniform(10.0, 50.0)
        trace, gauge = HoldTrace(0.0), GaugeWatch()
        for at_s in np.arange(0.0, 360.0, 1.0):
            true = 6.2e5 + size * (1.0 - np.exp(-at_s / tau)) + slope * at_s
            shown = np.round((true + rng.normal(0.0, 0.3 * step_pa)) / step_pa) * step_pa
            trace.add(float(at_s), float(shown), None, None)
            gauge.see(float(shown))
        trend = fit_trend(trace.arrays(), gauge.noise_pa, gauge.step_pa)
        assert trend is not None
        end = slope + size / tau * np.exp(-359.0 / tau)
        misses += not trend.slope_lower <= end <= trend.slope_upper
    assert misses <= 1


def shifted(items, **changes):
    """The same vent seen through worse instruments."""
    zero = changes.get("zero_pa", 0.0)
    clamp = changes.get("clamp_k", 0.0)
    out = []
    for index, item in enumerate(items):
        if changes.get("dropouts") and index % 97 < 9:
            continue
        at_s = item.at_s + (100.0 if changes.get("jump") and index > len(items) // 2 else 0.0)
        line = None if item.line_temperature_k is None else item.line_temperature_k + clamp
        if changes.get("no_clamp"):
            line = None
        out.append(
            item._replace(at_s=at_s, pressure_pa=item.pressure_pa + zero, line_temperature_k=line)
        )
    return out


@pytest.mark.parametrize(
    "changes",
    [
        {"zero_pa": 1.5e4},
        {"zero_pa": -1.5e4},
        {"clamp_k": 5.0},
        {"clamp_k": -5.0},
        {"no_clamp": True},
        {"dropouts": True},
        {"jump": True},
    ],
    ids=str,
)
@pytest.mark.parametrize("volume_m3", [None, 0.0145, 0.0145 * 1.2])
def test_worse_instruments_never_turn_liquid_into_vapour_only(changes, volume_m3):
    """Shifts as in the validation cases: zero 0.15 bar, clamp 5 K, volume 20 %, gaps."""
    items = list(vent([boiling(60.0), boiling(60.0)], line_k=223.5, hold_s=420.0))
    seen = assess_readings(Setup(section_volume_m3=volume_m3), shifted(items, **changes))
    assert all(hold.charge is not Charge.VAPOR_ONLY for hold in seen.holds)


def test_an_outward_leak_that_balances_boiling_is_not_quiet():
    """Rises while gas warms, then falls: at the turn the slope is nothing, and proves nothing."""
    seen = assess_readings(
        Setup(section_volume_m3=0.0145, insulated=False),
        vent([lambda s: 6e4 * (1.0 - np.exp(-s / 30.0)) - 25.0 * s], hold_s=500.0, line_k=255.0),
    )
    assert seen.holds[-1].charge is Charge.UNDETERMINED


def test_a_hold_that_ends_near_the_triple_point_is_not_called_vapour_only():
    """Phase rule: with ice melting the pressure stands there, as quiet as any gas."""
    items = list(
        vent([warming(1e4, slope_pa_per_s=0.0)], stop_pa=5.1e5, hold_s=500.0, line_k=255.0)
    )
    seen = assess_readings(Setup(section_volume_m3=0.0145), items)
    assert seen.holds[-1].charge is not Charge.VAPOR_ONLY


def test_random_wet_sections_are_never_called_vapour_only():
    """A small fixed sample of the verdict benchmark, which runs thousands on two models."""
    from co2vent.section_model.population import as_readings, draw_case, run_case

    wet = 0
    for seed in range(300_000, 300_024):
        case = draw_case(seed)
        run = run_case(case)
        seen = assess_readings(case.setup, as_readings(case, run.rows))
        for hold in run.holds:
            if not hold.wet:
                continue
            wet += 1
            for judged in seen.holds:
                if abs(judged.start_s - hold.start_s) < 5.0:
                    assert judged.charge is not Charge.VAPOR_ONLY, (seed, hold.number)
    assert wet > 15


def test_a_reading_of_any_size_never_breaks_the_core():
    for pressure_pa in (0.0, 50.0, 5e4, 5.1795e5, 7.3773e6, 2e7):
        items = [
            Reading(k * 1.0, pressure_pa + 700.0 * (k % 2), 250.0, vent_open=k < 3)
            for k in range(200)
        ]
        seen = assess_readings(Setup(section_volume_m3=0.01), items)
        assert seen.readings == 200


def test_a_hold_over_melting_ice_is_not_cleared_by_bare_metal_alone():
    """Second model, seed 50197: 2.7 kg of liquid with 0.4 kg of melting ice rose 30 mbar/min."""
    from co2vent.benchmark.other_drawing import draw_other_case
    from co2vent.benchmark.other_population import as_readings, run_other_case

    case = draw_other_case(50197)
    seen = assess_readings(case.setup, as_readings(case, run_other_case(case).rows))
    assert all(hold.charge is not Charge.VAPOR_ONLY for hold in seen.holds)


@pytest.mark.parametrize(
    "seed",
    [
        60350, 60590, 300039, 310671, 311165, 400071, 400791, 500480, 501284, 700378, 700638,
        801208, 910787, 1000169, 1003448, 1100691, 1200496, 1401228, 1500451,
        2400033, 2700350, 2750152,
    ],
)  # fmt: skip
def test_a_section_that_once_was_cleared_wrongly_stays_not_cleared(seed):
    """Second model: liquid boiled into a leak, or slowly, and the pressure rose as in a dry hold.

    The metal's own warming shows it in the first two; a clamp that cools, a clamp too near
    saturation, and a large rise in the next ones (400071 has no leak: its liquid boils badly);
    over snow, that a coarse gauge can't tell the pressure from a falling one. In 500480 to 700638
    no more than the limits: liquid in a pocket elsewhere than the clamp, and snow on warm bare
    metal. In the ten after them an outward leak takes what boils (a crest of a minute) or sublimes;
    in 1500451 the rise gathers pace, in 2400033 it was 8.5 % in 1.1 L. In 2700350, 1.2 kg in 7 L at
    the end of a first hold, no clamp showed the metal; in the last, 12 g in 1.2 L, the rises
    of four holds dwindled as gas's do, but slowly.
    """
    from co2vent.benchmark.other_drawing import draw_other_case
    from co2vent.benchmark.other_population import as_readings, run_other_case

    case = draw_other_case(seed)
    seen = assess_readings(case.setup, as_readings(case, run_other_case(case).rows))
    assert all("vapor_only" not in event.text for event in seen.events)


def test_snow_that_climbs_below_the_triple_point_refutes_a_verdict_from_before():
    """Second model, seed 1400401: 234 g in a dead leg stood as still as gas above it, 0.5 W."""
    from co2vent.benchmark.other_drawing import draw_other_case
    from co2vent.benchmark.other_population import as_readings, run_other_case

    case = draw_other_case(1400401)
    seen = assess_readings(case.setup, as_readings(case, run_other_case(case).rows))
    assert seen.holds[-1].charge is Charge.UNDETERMINED
    assert any("no longer stands" in event.text for event in seen.events)


def test_liquid_under_gas_that_has_warmed_stands_still_before_it_boils():
    """First model, seed 1001202: 4.6 kg, bare, no clamp; each of three holds stood 190 s first."""
    from co2vent.section_model.population import as_readings, draw_case, run_case

    case = draw_case(1001202)
    seen = assess_readings(case.setup, as_readings(case, run_case(case).rows))
    assert all("vapor_only" not in event.text for event in seen.events)


@pytest.mark.parametrize("insulated", [False, None])
def test_liquid_keeps_up_less_of_a_slope_in_a_larger_section(insulated):
    """Its surface goes with the volume to the power 2/3, and what boils spreads over the volume."""

    def least(volume_m3):
        setup = Setup(section_volume_m3=volume_m3, insulated=insulated)
        return power(setup, 7e5, 255.0, 0.0, CRITERIA).least_wet_slope

    assert least(0.008) == pytest.approx(least(0.001) / 2.0)
    assert least(None) == least(0.050)


def test_a_hold_without_power_bounds_nothing_and_claims_to_see_nothing():
    """Not even "no more than a full section": that would be no finding of the hold."""
    seen = assess_readings(Setup(section_volume_m3=0.014), vent([warming(2e4)], hold_s=300.0))
    hold = seen.holds[-1]
    assert hold.charge is Charge.UNDETERMINED
    assert hold.liquid_kg.upper is None
    assert hold.detection_limit_kg is None


def test_an_open_vent_that_balances_an_inflow_is_no_quiet_hold():
    """First model, seed 70378: no valve column, vent open, leak-by and outflow in balance."""
    from co2vent.section_model.population import as_readings, draw_case, run_case

    case = draw_case(70378)
    seen = assess_readings(case.setup, as_readings(case, run_case(case).rows))
    assert all("vapor_only" not in event.text for event in seen.events)


def test_without_a_clamp_a_balance_that_climbs_back_is_not_cleared():
    """A choked outflow goes with the pressure: boiling in balance brings the same one back."""
    bare = Setup(section_volume_m3=0.008, insulated=False)
    items = vent([warming(3e4), warming(2.8e4), warming(3e4)], stop_pa=9e5, hold_s=500.0)
    assert all(one.charge is Charge.UNDETERMINED for one in assess_readings(bare, items).holds[1:])


def test_in_a_small_section_a_large_rise_clears_only_when_the_next_one_is_smaller():
    """Gas of a closed section is near its metal's temperature by the second hold."""
    small = Setup(section_volume_m3=0.0012)
    items = vent([warming(8e4), warming(3e4)], hold_s=400.0, line_k=255.0)
    first, second = assess_readings(small, items).holds[-2:]
    assert first.charge is Charge.UNDETERMINED
    assert "smaller" in first.next_step
    assert second.charge is Charge.VAPOR_ONLY


def test_a_clamp_that_cools_in_a_closed_section_proves_nothing():
    """Heat leaves metal in a closed section only for something colder: what boils."""
    items = [
        item._replace(line_temperature_k=255.0 - 0.004 * item.at_s)
        for item in vent([warming(3e4, slope_pa_per_s=2.0)], hold_s=400.0, line_k=255.0)
    ]
    seen = assess_readings(Setup(section_volume_m3=0.0145), items)
    assert seen.holds[-1].charge is not Charge.VAPOR_ONLY
    assert "clamp cools" in seen.holds[-1].reason


@pytest.mark.parametrize("seed", [500385, 500828])
def test_a_vent_that_stands_at_the_triple_point_without_a_valve_column_is_dry_ice(seed):
    """Phase rule; first model: liquid froze with the vent open, which looked like a hold."""
    from co2vent.section_model.population import as_readings, draw_case, run_case

    case = draw_case(seed)
    seen = assess_readings(case.setup, as_readings(case, run_case(case).rows))
    assert any("without the rise" in event.text for event in seen.events)
    assert seen.holds[1].charge is Charge.SOLID_PRESENT


def test_a_shelf_met_without_a_knee_after_a_small_rise_is_dry_ice():
    """Phase rule; second model, 72 g: the pressure rose by 9 % and stood 15 mbar above it."""
    from co2vent.benchmark.other_drawing import draw_other_case
    from co2vent.benchmark.other_population import as_readings, run_other_case

    case = draw_other_case(1800572)
    seen = assess_readings(case.setup, as_readings(case, run_other_case(case).rows))
    assert seen.holds[-1].charge is Charge.SOLID_PRESENT


@pytest.mark.parametrize(
    ("seed", "follows"), [(2730176, True), (2730365, True), (2730197, False), (2730333, False)]
)
def test_a_steep_rise_alone_bounds_no_liquid(seed, follows):
    """First model: an inflow of 1.8 to 3.9 bar/min before the vent, at 0.4 to 0.64 bar/K.

    Isochoric liquid gains 4 to 16 bar/K (Span and Wagner, see the criteria). Where the clamp
    follows there is vapour above the liquid; up to 90 % less lay there than had been bounded.
    """
    from co2vent.section_model.population import as_readings, draw_case, run_case

    case = draw_case(seed)
    run = run_case(case)
    first = assess_readings(case.setup, as_readings(case, run.rows)).holds[0]
    assert (first.charge is not Charge.SUBCOOLED_LIQUID) == follows
    if first.liquid_kg is not None and first.liquid_kg.lower is not None:
        assert first.liquid_kg.lower <= run.holds[0].liquid_kg
