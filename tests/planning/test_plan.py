"""The whole plan: figures from outside, and what a careful colleague would point out."""

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given as examples
from hypothesis import settings
from hypothesis import strategies as st

from co2vent import co2
from co2vent.errors import RefusedInputError
from co2vent.planning import Country, PlanInput, PlanResult, plan_vent
from co2vent.readings.reading import Setup
from co2vent.units import STANDARD_ATMOSPHERE_PA

PLAIN = PlanInput(volume_m3=0.0145, temperature_k=253.15, liquid_fraction=0.5)


def gauge(full_scale_bar: float, percent: float, **more: Any) -> Setup:
    span = full_scale_bar * 1e5
    return Setup(
        gauge_span_pa=span,
        gauge_full_scale_pa=span + STANDARD_ATMOSPHERE_PA,
        gauge_accuracy_fraction=percent / 100,
        **more,
    )


def warned(plan: PlanResult, words: str) -> bool:
    return any(words in sentence for sentence in plan.warnings)


def test_charge_is_that_of_the_saturation_table() -> None:
    # CoolProp, -20 degC: 1031.66 and 51.700 kg/m3, 19.6963 bar
    plan = plan_vent(PLAIN)
    assert plan.saturation_pressure_pa == pytest.approx(19.6963e5, rel=1e-4)
    assert plan.liquid_kg == pytest.approx(0.00725 * 1031.66, rel=1e-3)
    assert plan.charge_kg == pytest.approx(0.00725 * (1031.66 + 51.700), rel=1e-3)
    assert plan.co2e_kg == plan.charge_kg  # GWP 1
    assert plan.triple_point_pa_gauge == pytest.approx(4.166e5, abs=100)
    assert plan.stop_pressure_pa_gauge == pytest.approx(5.196e5, abs=100)


def test_pressure_gives_the_same_plan_as_its_temperature() -> None:
    from_pressure = plan_vent(
        replace(PLAIN, temperature_k=None, pressure_pa_gauge=19.69626e5 - 101_325.0)
    )
    assert from_pressure.charge_temperature_k == pytest.approx(253.15, abs=0.001)
    assert from_pressure.charge_kg == pytest.approx(plan_vent(PLAIN).charge_kg, rel=1e-5)
    assert from_pressure.charge_pressure_pa_gauge == pytest.approx(19.69626e5 - 101_325.0)


def test_liquid_left_and_dry_ice_of_a_liquid_full_section() -> None:
    # rigid adiabatic vessel from -10 degC liquid-full: 0.735 of the charge is liquid at the
    # triple point, 0.466 dry ice on the shelf (CoolProp integration)
    plan = plan_vent(replace(PLAIN, temperature_k=263.15, liquid_fraction=1.0))
    assert plan.charge_kg is not None
    ice = plan.dry_ice_kg_if_vented_straight_down
    assert ice == pytest.approx(0.466 * plan.charge_kg, rel=0.005)
    left = plan.liquid_left_at_stop_kg
    assert left is not None
    assert 0.735 < left / plan.charge_kg < 0.78  # the stop is 4.3 K above the triple point
    # heat of vaporisation at 6.21 bar, -52.3 degC: 343.4 kJ/kg (CoolProp)
    assert plan.boil_off_energy_j == pytest.approx(left * 343.4e3, rel=0.002)


# CoolProp isochores: warming from liquid-full to 60 and 120 bar absolute
@pytest.mark.parametrize(
    ("celsius", "bar", "kelvin", "slope"),
    [(-10, 60, 3.74, 8.94), (-10, 120, 10.4, 8.94), (-40, 60, 3.57, 14.02), (0, 90, 7.44, 7.34)],
)
def test_trapped_liquid(celsius: int, bar: int, kelvin: float, slope: float) -> None:
    plan = plan_vent(
        replace(
            PLAIN, temperature_k=celsius + 273.15, relief_pa_gauge=bar * 1e5 - 101_325.0,
            liquid_fraction=1.0,
        )
    )  # fmt: skip
    assert plan.trapped_liquid_bar_per_k == pytest.approx(slope, rel=0.01)
    assert plan.kelvin_to_relief == pytest.approx(kelvin, rel=0.01)
    assert plan.kelvin_to_relief_of_this_charge == pytest.approx(kelvin, rel=0.02)
    assert warned(plan, "Liquid-full")


# filled at -20 degC to this share, liquid-full at (CoolProp densities)
@pytest.mark.parametrize(("filled", "celsius"), [(0.80, 13.3), (0.90, -1.0), (0.95, -9.9)])
def test_a_filled_section_becomes_liquid_full(filled: float, celsius: float) -> None:
    plan = plan_vent(replace(PLAIN, liquid_fraction=filled))
    assert plan.liquid_full_at_k == pytest.approx(celsius + 273.15, abs=0.1)
    assert warned(plan, "swells")


def test_room_is_the_rise_over_ambient_mixed_at_20_degrees() -> None:
    plan = plan_vent(replace(PLAIN, room_m3=100.0, air_changes_per_hour=4.0))
    assert plan.charge_kg is not None
    assert plan.room_ppm_all_vented == pytest.approx(plan.charge_kg * 5440, rel=0.003)
    assert plan.room_ppm_floor_layer == pytest.approx(6 * plan.charge_kg * 5440, rel=0.003)
    assert warned(plan, "IDLH")
    assert warned(plan, "oxygen meter is not")
    assert [limit.passed_if_mixed for limit in plan.exposure_limits] == [True, True, True]


def test_countries_bring_their_own_limits() -> None:
    plan = plan_vent(replace(PLAIN, country=Country.UK, room_m3=300.0))
    assert [limit.ppm for limit in plan.exposure_limits] == [5000, 15_000, 40_000]
    assert [limit.passed_if_mixed for limit in plan.exposure_limits] == [True, False, False]
    assert [limit.passed_in_floor_layer for limit in plan.exposure_limits] == [True, True, True]
    assert warned(plan, "lies on the floor")


# gauge class: error in bar, kelvin at the triple point (0.2252 bar/K), verdict
@pytest.mark.parametrize(
    ("full_scale", "percent", "bar", "kelvin", "verdict"),
    [
        (16.0, 0.25, 0.04, 0.18, "out of range"),  # the charge is at 18.7 bar g
        (25.0, 1.0, 0.25, 1.1, "good"),
        (60.0, 0.5, 0.30, 1.3, "good"),
        (60.0, 1.0, 0.60, 2.7, "coarse"),
        (60.0, 1.6, 0.96, 4.3, "too coarse"),
        (160.0, 1.6, 2.56, 11.4, "too coarse"),
        (4.0, 1.0, 0.04, 0.18, "out of range"),  # can't show the stop pressure
    ],
)
def test_gauge_fit(
    full_scale: float, percent: float, bar: float, kelvin: float, verdict: str
) -> None:
    plan = plan_vent(replace(PLAIN, setup=gauge(full_scale, percent)))
    fit = plan.gauge_fit
    assert fit.error_pa == pytest.approx(bar * 1e5)
    assert fit.error_kelvin_at_triple_point == pytest.approx(kelvin, abs=0.05)
    assert fit.verdict == verdict
    assert (fit.text in plan.warnings) == (verdict != "good")


def test_a_class_1_6_gauge_to_160_bar_stops_no_lower_than_6_8_bar() -> None:
    # triple 4.17 + class 2.56 bar: the reading alone must be at least 6.7 bar g
    plan = plan_vent(replace(PLAIN, setup=gauge(160.0, 1.6)))
    assert plan.stop_pressure_pa_gauge >= 6.72e5


def test_boiling_liquid_is_colder_than_the_rated_steels() -> None:
    # -52.3 degC at 5.2 bar g; A106 -29, A333 grade 6 -46 degC (ASME B31.3)
    plan = plan_vent(PLAIN)
    assert plan.stop_temperature_k - 273.15 == pytest.approx(-52.3, abs=0.05)
    assert [metal.below_minimum for metal in plan.metals] == [True, True, False, False]
    own = plan_vent(replace(PLAIN, metal_minimum_k=213.15))
    assert [metal.below_minimum for metal in own.metals] == [False]


def test_altitude_moves_the_gauge_figures_and_the_room() -> None:
    at_1600 = Setup(ambient_pressure_pa=83_524.0, ambient_pressure_assumed=False)
    plan = plan_vent(replace(PLAIN, setup=at_1600))
    assert plan.triple_point_pa_gauge == pytest.approx(4.344e5, abs=100)
    # dry ice at 83.5 kPa: 192.36 K (Span & Wagner eq. 3.12)
    assert plan.dry_ice_temperature_k == pytest.approx(192.36, abs=0.02)
    assert not any("Altitude" in sentence for sentence in plan.assumptions)
    assert any("Altitude" in sentence for sentence in plan_vent(PLAIN).assumptions)


def test_above_the_critical_point_nothing_is_made_up() -> None:
    for hot in (
        replace(PLAIN, temperature_k=305.0),
        replace(PLAIN, temperature_k=None, pressure_pa_gauge=75e5),
    ):
        plan = plan_vent(hot)
        assert plan.charge_kg is None
        assert plan.liquid_left_at_stop_kg is None
        assert plan.dry_ice_kg_if_vented_straight_down is None
        assert plan.vent_to_stop_s is None
        assert plan.room_ppm_all_vented is None
        assert warned(plan, "critical")
        assert plan.stop_pressure_pa_gauge == pytest.approx(5.196e5, abs=100)


def test_below_the_triple_point_it_is_dry_ice_and_never_liquid() -> None:
    plan = plan_vent(replace(PLAIN, temperature_k=None, pressure_pa_gauge=2e5))
    assert plan.liquid_kg == 0.0
    assert plan.dry_ice_kg is not None
    assert plan.dry_ice_kg > 10.0  # half of 14.5 l of 1.55 kg/l
    assert warned(plan, "dry ice")
    assert warned(plan, "Do not shut it in")


def test_a_charge_already_near_the_triple_point_is_not_to_be_vented() -> None:
    plan = plan_vent(replace(PLAIN, temperature_k=None, pressure_pa_gauge=4.6e5))
    assert plan.vent_to_stop_s == 0.0
    assert plan.liquid_left_at_stop_kg == plan.liquid_kg
    assert warned(plan, "already at or below the stop pressure")


def test_without_liquid_none_is_left_and_the_holds_still_have_to_show_it() -> None:
    plan = plan_vent(replace(PLAIN, liquid_fraction=0.0))
    assert plan.liquid_left_at_stop_kg == 0.0
    assert plan.dry_ice_kg_if_vented_straight_down == 0.0
    assert plan.ways_to_remove_liquid == ()
    assert warned(plan, "holds must still show it")


def test_relief_and_cold_surroundings_are_pointed_out() -> None:
    plan = plan_vent(replace(PLAIN, relief_pa_gauge=18e5))
    assert plan.kelvin_to_relief == 0.0
    assert warned(plan, "expect it to lift")
    cold = plan_vent(replace(PLAIN, ambient_k=218.15))
    assert cold.boil_off_bare_not_before_s is None
    assert warned(cold, "nothing boils it out")


def test_ways_out_come_with_their_hazards() -> None:
    plan = plan_vent(PLAIN)
    assert len(plan.ways_to_remove_liquid) == 4
    assert all(way.hazards for way in plan.ways_to_remove_liquid)
    bare, insulated = plan.boil_off_bare_not_before_s, plan.boil_off_insulated_not_before_s
    assert bare is not None
    assert insulated is not None
    assert 0 < bare < insulated


@pytest.mark.parametrize(
    "change",
    [
        {"pressure_pa_gauge": 10e5},
        {"temperature_k": None},
        {"volume_m3": 0.0},
        {"volume_m3": float("nan")},
        {"liquid_fraction": 1.01},
        {"liquid_fraction": -0.01},
        {"liquid_fraction": float("nan")},
        {"vent_bore_m": 0.0},
        {"discharge_coefficient": 1.5},
        {"room_m3": 0.0},
        {"air_changes_per_hour": -1.0},
        {"temperature_k": float("inf")},
        {"temperature_k": 100.0},
        {"temperature_k": None, "pressure_pa_gauge": -1.1e5},
        {"relief_pa_gauge": -1.0},
        {"ambient_k": 0.0},
    ],
)
def test_what_cannot_be_meant_is_refused(change: dict[str, Any]) -> None:
    with pytest.raises(RefusedInputError):
        plan_vent(replace(PLAIN, **change))


@settings(deadline=None)
@examples(
    st.floats(155.0, 310.0),
    st.floats(0.0, 1.0),
    st.floats(60_000.0, 105_000.0),
    st.floats(1e-4, 1.0),
)
def test_any_charge_gives_a_plan_that_adds_up(
    t: float, filled: float, ambient: float, volume: float
) -> None:
    plan = plan_vent(
        PlanInput(
            volume_m3=volume,
            temperature_k=t,
            liquid_fraction=filled,
            setup=Setup(ambient_pressure_pa=ambient, ambient_pressure_assumed=False),
            room_m3=50.0,
            air_changes_per_hour=2.0,
            relief_pa_gauge=45e5,
        )
    )
    assert plan.stop_pressure_pa_gauge - plan.triple_point_pa_gauge >= 1.03e5 - 1e-6
    if plan.charge_kg is None:
        assert t > co2.CRITICAL_TEMPERATURE_K
        return
    assert plan.liquid_kg is not None
    assert plan.vapor_kg is not None
    assert plan.dry_ice_kg is not None
    assert plan.charge_kg == pytest.approx(plan.liquid_kg + plan.vapor_kg + plan.dry_ice_kg)
    assert plan.liquid_left_at_stop_kg is not None
    assert plan.dry_ice_kg_if_vented_straight_down is not None
    assert 0 <= plan.liquid_left_at_stop_kg <= plan.liquid_kg + 1e-9
    assert plan.dry_ice_kg_if_vented_straight_down <= plan.charge_kg
    assert plan.vent_to_stop_s is not None
    assert plan.vent_to_stop_s >= 0
    assert plan.room_ppm_all_vented is not None
    assert plan.room_ppm_all_vented <= 1e6


def test_a_warming_that_is_not_known_is_warned_of() -> None:
    """CoolProp: 709 kg/m3 is at 135.6 bar at 45 degC, past a relief valve set to 90 bar g."""
    given = PlanInput(
        setup=gauge(60, 0.5),
        temperature_k=263.15,
        volume_m3=0.01,
        liquid_fraction=0.7,
        ambient_k=318.15,
        relief_pa_gauge=90e5,
    )
    plan = plan_vent(given)
    assert plan.kelvin_to_relief_of_this_charge is None
    assert warned(plan, "not known here: take it that it does")


@pytest.mark.parametrize("minimum_k", [773.15, 0.0, -226.85])
def test_a_rating_that_no_metal_has_is_refused(minimum_k: float) -> None:
    with pytest.raises(RefusedInputError, match="lowest rated temperature"):
        plan_vent(replace(PLAIN, metal_minimum_k=minimum_k))
