"""Vapour through an opening, against published forms and a real-gas isentropic nozzle."""

import math
from typing import Any

import pytest

from co2vent import co2


def api_520_flux(p: float, t: float, z: float, k: float) -> float:
    """API 520 part I critical flow, metric: W kg/h of mm2 and kPa; constant 0.03948."""
    c = 0.03948 * math.sqrt(k * (2 / (k + 1)) ** ((k + 1) / (k - 1)))
    return c * 1e6 * (p / 1e3) * math.sqrt(44.0098 / (t * z)) / 3600


@pytest.mark.parametrize("t", [220.0, 233.15, 253.15, 273.15, 293.15])
def test_choked_flux_is_the_sizing_form_of_api_520(t: float) -> None:
    p = co2.saturation_pressure_pa(t)
    cp = thin_gas_cp(t)
    k = cp / (cp - 8.31451)
    expected = api_520_flux(p, t, co2.compressibility(p, t), k)
    assert co2.vapor_mass_flux_kg_s_m2(p, t, 101_325) == pytest.approx(expected, rel=1e-3)


def thin_gas_cp(t: float) -> float:
    """cp of the thin gas, J/molK (the WebBook's Shomate equation starts too warm, at 298 K)."""
    from CoolProp.CoolProp import PropsSI

    return float(PropsSI("CP0MOLAR", "T", t, "P", 1e5, "CO2"))


def isentropic_flux(p: float, t: float) -> float:
    """Largest rho w along the isentrope of the metastable gas: no choice of k enters."""
    import CoolProp

    gas: Any = CoolProp.AbstractState("HEOS", "CO2")
    gas.specify_phase(CoolProp.iphase_gas)
    gas.update(CoolProp.PT_INPUTS, p, t)
    h0, s0 = gas.hmass(), gas.smass()
    best, warm = 0.0, t
    for step in range(1, 60):
        throat = p * (1 - 0.01 * step)
        # close below the step before: far colder there is no gas at this pressure at all
        low, high = warm - 3.0, warm
        for _ in range(30):
            middle = 0.5 * (low + high)
            gas.update(CoolProp.PT_INPUTS, throat, middle)
            low, high = (middle, high) if gas.smass() < s0 else (low, middle)
        warm = high
        flux = gas.rhomass() * math.sqrt(max(0.0, 2 * (h0 - gas.hmass())))
        if flux < best:
            return best
        best = flux
    raise AssertionError("no throat found")


@pytest.mark.parametrize(
    ("p", "t"),
    [
        (5.45e5, 218.0), (19.6e5, 253.15), (34.8e5, 273.15),  # nearly saturated
        (6e5, 293.15), (20e5, 293.15), (40e5, 293.15),
    ],
)  # fmt: skip
def test_choked_flux_is_within_one_per_cent_of_real_gas_flow(p: float, t: float) -> None:
    flux = co2.vapor_mass_flux_kg_s_m2(p, t, 101_325)
    assert flux == pytest.approx(isentropic_flux(p, t), rel=0.01)


def test_flow_falls_to_nothing_when_the_back_pressure_rises() -> None:
    choked = co2.vapor_mass_flux_kg_s_m2(6e5, 250.0, 1e5)
    assert co2.vapor_mass_flux_kg_s_m2(6e5, 250.0, 3.0e5) == pytest.approx(choked)
    assert 0 < co2.vapor_mass_flux_kg_s_m2(6e5, 250.0, 5.0e5) < choked
    assert co2.vapor_mass_flux_kg_s_m2(6e5, 250.0, 6e5) == 0.0
    assert co2.vapor_mass_flux_kg_s_m2(6e5, 250.0, 7e5) == 0.0
