"""The section's volume from vapour leaving through a known bore; metal below its minimum."""

import CoolProp.CoolProp as CP
import numpy as np
import pytest

from co2vent.inference.bore_volume import MOST_CP_CV, VolumeWatch
from co2vent.inference.cold_metal import cold_metal_share
from co2vent.inference.vented import WARMEST_K

AMBIENT_PA = 101_325.0


def choked_flux(pressure_pa: float, gas_k: float) -> float:
    """Choked flow of a gas of cp/cv 1.3 with its real inlet density (ISO 9300 and API 520 form)."""
    density = CP.PropsSI("D", "P", pressure_pa, "T", gas_k, "CO2")
    k = 1.3
    return (k * pressure_pa * density * (2.0 / (k + 1.0)) ** ((k + 1.0) / (k - 1.0))) ** 0.5


def vented(volume_m3: float, bore_m: float, coefficient: float, gas_k: float) -> VolumeWatch:
    """Vapour at one temperature leaves through a bore: CoolProp's density, choked flow."""
    watch, at_s, pressure_pa = VolumeWatch(), 0.0, 6.5e5
    density = CP.PropsSI("D", "P", pressure_pa, "T", gas_k, "CO2")
    while pressure_pa > 4.5e5:
        watch.see(at_s, pressure_pa, AMBIENT_PA, bore_m)
        flow = coefficient * np.pi / 4.0 * bore_m**2 * choked_flux(pressure_pa, gas_k)
        density -= flow * 0.5 / volume_m3
        pressure_pa = CP.PropsSI("P", "D", density, "T", gas_k, "CO2")
        at_s += 0.5
    return watch


@pytest.mark.parametrize("gas_k", [225.0, 250.0, 300.0])
@pytest.mark.parametrize("coefficient", [1.0, 0.8, 0.3])
def test_the_bound_holds_the_volume_however_far_the_valve_stands_open(gas_k, coefficient):
    found = vented(0.0145, 4e-3, coefficient, gas_k).at_most
    assert found is not None
    assert found.upper > 0.0145
    if coefficient == 0.8:
        # wide open: gas colder than the 250 K taken, or that does not cool at all, is 30 % off
        assert found.estimate == pytest.approx(0.0145, rel=0.35)
        assert found.upper < 3.0 * 0.0145


@pytest.mark.parametrize("pressure_pa", [1.2e5, 3e5, 6e5, 10e5])
def test_no_vapour_loses_less_density_than_the_least_one_taken(pressure_pa):
    """Isentropic d(rho)/dp = 1/a**2 (Span-Wagner) against the warmest gas at one temperature."""
    taken = 1.0 / (CP.PropsSI("d(P)/d(D)|T", "P", pressure_pa, "T", WARMEST_K, "CO2") * MOST_CP_CV)
    coldest = CP.PropsSI("T", "P", pressure_pa, "Q", 1, "CO2") if pressure_pa > 5.2e5 else 217.0
    for gas_k in np.linspace(coldest + 0.5, WARMEST_K, 12):
        assert 1.0 / CP.PropsSI("A", "P", pressure_pa, "T", gas_k, "CO2") ** 2 >= taken


def test_a_gap_or_a_short_fall_gives_no_volume():
    watch = VolumeWatch()
    for at_s, pressure_pa in ((0.0, 7.0e5), (1.0, 6.8e5), (30.0, 6.0e5), (31.0, 5.8e5)):
        watch.see(at_s, pressure_pa, AMBIENT_PA, 4e-3)
    assert watch.at_most is None


def test_metal_is_never_below_its_minimum_if_the_fluid_never_was():
    # saturation at 20 bar abs: -19.5 degC (Span-Wagner)
    assert cold_metal_share(244.15, 20e5, 20e5, 230.0, 280.0).upper == 0.0


def test_two_clamps_tell_about_how_much_metal_is_below_its_minimum():
    share = cold_metal_share(244.15, 6.2e5, 6.2e5, 224.15, 264.15)
    assert share.estimate == pytest.approx(0.5)
    assert 0.0 < share.lower < 0.5 < share.upper < 1.0


def test_one_clamp_tells_of_its_own_place_only():
    share = cold_metal_share(244.15, 6.2e5, 6.2e5, 224.15, None)
    assert share.estimate is None
    assert (share.lower, share.upper) == (0.0, 1.0)
    assert cold_metal_share(None, 6.2e5, 6.2e5, 224.15, None) is None
