"""A slow vent of vapour against integrations and estimates made another way."""

from math import exp, pi
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent import co2
from co2vent.planning.boil_down import (
    dry_ice_on_the_shelf_kg,
    snow_share_of_drained_liquid,
    vent_vapor_to,
)
from co2vent.planning.charge import Condensed, charge_at

# Rigid adiabatic vessel, dU = h_v dm, integrated with CoolProp two-phase states; shares of the
# charge. degC: from liquid-full vented, liquid at the triple point, dry ice there; half full
# vented, liquid
ADIABATIC = {
    -30: (0.145, 0.852, 0.541, 0.159, 0.826),
    -20: (0.202, 0.794, 0.504, 0.224, 0.760),
    -10: (0.260, 0.735, 0.466, 0.291, 0.691),
    0: (0.322, 0.671, 0.426, 0.364, 0.616),
    10: (0.391, 0.601, 0.381, 0.445, 0.534),
}


@pytest.mark.parametrize("celsius", ADIABATIC)
def test_adiabatic_vent_to_the_triple_point(celsius: int) -> None:
    vented, left, ice, half_vented, half_left = ADIABATIC[celsius]
    full = charge_at(0.01, celsius + 273.15, 1.0)
    path = vent_vapor_to(full, co2.TRIPLE_PRESSURE_PA)
    assert path.vented_kg / full.total_kg == pytest.approx(vented, abs=0.002)
    assert path.liquid_kg / full.total_kg == pytest.approx(left, rel=0.003)
    solid = dry_ice_on_the_shelf_kg(path.liquid_kg) / full.total_kg
    assert solid == pytest.approx(ice, rel=0.003)
    half = charge_at(0.01, celsius + 273.15, 0.5)
    path = vent_vapor_to(half, co2.TRIPLE_PRESSURE_PA)
    assert path.vented_kg / half.total_kg == pytest.approx(half_vented, abs=0.002)
    assert path.liquid_kg / half.total_kg == pytest.approx(half_left, rel=0.003)


@pytest.mark.parametrize("celsius", [-40.0, -20.0, 0.0])
def test_open_boil_estimate_agrees_within_a_hundredth(celsius: float) -> None:
    # textbook: dm/m = c dT/h, by midpoint sums of CoolProp values; the freed volume is neglected
    import CoolProp

    state: Any = CoolProp.AbstractState("HEOS", "CO2")

    def at(t: float, quality: int) -> Any:
        state.update(CoolProp.QT_INPUTS, quality, t)
        return state

    start = celsius + 273.15
    width = (start - 217.0) / 100
    total = 0.0
    for step in range(100):
        t = 217.0 + (step + 0.5) * width
        rise = t * (at(t + 0.1, 0).smass() - at(t - 0.1, 0).smass()) / 0.2
        total += rise * width / (at(t, 1).hmass() - at(t, 0).hmass())
    full = charge_at(0.01, start, 1.0)
    path = vent_vapor_to(full, co2.saturation_pressure_pa(217.0))
    assert path.liquid_kg / full.total_kg == pytest.approx(exp(-total), abs=0.01)


def test_energy_and_mass_of_a_vent_are_conserved() -> None:
    # first law with CoolProp energies, the leaving vapour at its mean enthalpy of the range
    import CoolProp

    state: Any = CoolProp.AbstractState("HEOS", "CO2")
    start = charge_at(0.02, 253.15, 0.4)
    end = vent_vapor_to(start, 18e5)  # short enough for a mean enthalpy
    assert end.liquid_kg + end.vapor_kg + end.vented_kg == pytest.approx(start.total_kg)

    def energy(t: float, liquid: float, vapor: float) -> float:
        state.update(CoolProp.QT_INPUTS, 0, t)
        u_liquid = state.umass()
        state.update(CoolProp.QT_INPUTS, 1, t)
        return float(liquid * u_liquid + vapor * state.umass())

    mean = 0.5 * (
        co2.vapor_enthalpy_saturated_j_kg(253.15)
        + co2.vapor_enthalpy_saturated_j_kg(end.temperature_k)
    )
    lost = energy(253.15, start.liquid_kg, start.vapor_kg) - energy(
        end.temperature_k, end.liquid_kg, end.vapor_kg
    )
    assert lost == pytest.approx(end.vented_kg * mean, rel=2e-3)


@settings(deadline=None)
@given(st.floats(222.0, 300.0), st.floats(0.0, 1.0))
def test_a_vent_never_makes_liquid_and_a_lower_stop_leaves_less(t: float, filled: float) -> None:
    start = charge_at(0.01, t, filled)
    higher = vent_vapor_to(start, 6.2e5)
    lower = vent_vapor_to(start, 5.4e5)
    assert 0.0 <= lower.liquid_kg <= higher.liquid_kg + 1e-9 <= start.liquid_kg + 2e-9
    assert lower.vented_kg >= higher.vented_kg - 1e-9 >= -2e-9


def test_vent_time_lies_between_the_flows_at_both_ends_and_halves_with_twice_the_area() -> None:
    start = charge_at(0.0145, 253.15, 0.5)
    stop = 517_950.0 + 1.03e5
    slow = vent_vapor_to(start, stop, bore_m=0.004, discharge_coefficient=0.85)
    fast = vent_vapor_to(start, stop, bore_m=0.004 * 2**0.5, discharge_coefficient=0.85)
    assert slow.time_s is not None
    assert fast.time_s is not None
    assert fast.time_s == pytest.approx(slow.time_s / 2)
    area = 0.85 * pi / 4 * 0.004**2
    # kg/s m2 of real-gas flow from saturated vapour at 20 and 5.3 bar (CoolProp isentropes)
    assert slow.vented_kg / (area * 6861) < slow.time_s < slow.vented_kg / (area * 1838)


def test_flow_through_a_millimetre_is_the_tabulated_one() -> None:
    # 16.5 kg/h at 20 bar, -19.5 degC, 1 mm, Cd 0.85 (API 520 form, ideal k, real Z)
    start = charge_at(0.01, co2.saturation_temperature_k(20e5), 0.5)
    path = vent_vapor_to(start, 19.99e5, bore_m=0.001, discharge_coefficient=0.85)
    assert path.highest_flow_kg_s is not None
    assert path.highest_flow_kg_s * 3600 == pytest.approx(16.5, rel=0.01)


# Isenthalpic flash of saturated liquid to 1 atm, from dry-ice and gas enthalpies; degC: snow
SNOW = {-30: 0.505, -20: 0.468, -10: 0.430, 0: 0.389, 10: 0.344, 20: 0.291}


@pytest.mark.parametrize("celsius", SNOW)
def test_snow_of_drained_liquid(celsius: int) -> None:
    share = snow_share_of_drained_liquid(celsius + 273.15, 101_325.0)
    assert share == pytest.approx(SNOW[celsius], abs=0.002)


def test_below_the_triple_point_the_charge_is_dry_ice() -> None:
    cold = charge_at(0.01, 200.0, 0.25)
    assert cold.condensed is Condensed.DRY_ICE
    assert cold.liquid_kg == 0.0
    assert cold.solid_kg == pytest.approx(0.0025 * 1565.1, rel=1e-3)  # Jaeger & Span 2012
