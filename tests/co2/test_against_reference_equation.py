"""The fits against the equation of state they stand for (CoolProp's Span & Wagner)."""

from typing import Any

import numpy as np
import pytest

from co2vent import co2

TEMPERATURES = np.linspace(216.592, 303.15, 120)


@pytest.fixture(scope="module")
def saturated() -> Any:
    import CoolProp

    return CoolProp.AbstractState("HEOS", "CO2")


@pytest.fixture(scope="module")
def gas() -> Any:
    import CoolProp

    state = CoolProp.AbstractState("HEOS", "CO2")
    state.specify_phase(CoolProp.iphase_gas)
    return state


def test_liquid_side_of_the_boiling_line(saturated: Any) -> None:
    import CoolProp

    for t in map(float, TEMPERATURES):
        saturated.update(CoolProp.QT_INPUTS, 0, t)
        assert co2.saturation_pressure_pa(t) == pytest.approx(saturated.p(), rel=5e-5)
        assert co2.liquid_density_kg_m3(t) == pytest.approx(saturated.rhomass(), rel=1e-3)
        assert co2.liquid_enthalpy_j_kg(t) == pytest.approx(saturated.hmass(), abs=50)
        assert co2.liquid_entropy_j_kg_k(t) == pytest.approx(saturated.smass(), abs=0.2)


def test_vapour_side_of_the_boiling_line(saturated: Any) -> None:
    import CoolProp

    for t in map(float, TEMPERATURES):
        saturated.update(CoolProp.QT_INPUTS, 1, t)
        density = saturated.rhomass()
        assert co2.vapor_density_saturated_kg_m3(t) == pytest.approx(density, rel=1e-3)
        assert co2.vapor_enthalpy_saturated_j_kg(t) == pytest.approx(saturated.hmass(), abs=50)
        assert co2.vapor_entropy_saturated_j_kg_k(t) == pytest.approx(saturated.smass(), abs=0.3)


def test_enthalpy_of_vapour_by_pressure_and_temperature(gas: Any) -> None:
    import CoolProp

    pressure_pa = np.array([1.0e5, 5.2e5, 6.0e5, 20e5, 34e5, 60e5])
    temperature_k = np.array([200.0, 230.0, 300.0, 255.0, 290.0, 313.15])
    got = co2.vapor_enthalpy_j_kg_array(pressure_pa, temperature_k)
    for h, p, t in zip(got, pressure_pa.tolist(), temperature_k.tolist(), strict=True):
        if t < co2.TRIPLE_TEMPERATURE_K:
            gas.update(CoolProp.DmassT_INPUTS, co2.vapor_density_kg_m3(p, t), t)
        else:
            gas.update(CoolProp.PT_INPUTS, p, t)
        assert h == pytest.approx(gas.hmass(), abs=50)
    liquid = co2.vapor_enthalpy_j_kg_array(60e5, [280.0, np.nan])
    assert np.isnan(liquid).all()


def test_boiling_temperature_is_within_two_millikelvin(saturated: Any) -> None:
    import CoolProp

    for p in np.linspace(517_970, 7.2e6, 100):
        saturated.update(CoolProp.PQ_INPUTS, p, 0)
        assert co2.saturation_temperature_k(float(p)) == pytest.approx(saturated.T(), abs=0.002)


def test_liquid_heat_capacity_along_saturation(saturated: Any) -> None:
    import CoolProp

    for t in map(float, np.linspace(217.0, 298.0, 40)):
        entropies = []
        for shift in (-0.05, 0.05):
            saturated.update(CoolProp.QT_INPUTS, 0, t + shift)
            entropies.append(saturated.smass())
        expected = t * (entropies[1] - entropies[0]) / 0.1
        assert co2.liquid_heat_capacity_j_kg_k(t) == pytest.approx(expected, rel=0.005)


def vapor_grid() -> list[tuple[float, float]]:
    """Pressure and temperature, 0 to 60 bar and -78 to +40 degC, dry and just supercooled."""
    grid = []
    for t in np.linspace(195.15, 313.15, 30):
        highest = 60e5
        if t < co2.CRITICAL_TEMPERATURE_K:
            highest = min(highest, 1.03 * co2.equilibrium_pressure_pa(float(t)))
        grid += [(float(f * highest), float(t)) for f in (1e-4, 0.1, 0.3, 0.6, 0.8, 0.95, 1.0)]
    return grid


@pytest.mark.parametrize(("p", "t"), vapor_grid())
def test_vapour(gas: Any, p: float, t: float) -> None:
    import CoolProp

    gas.update(CoolProp.PT_INPUTS, p, t)
    rho = gas.rhomass()
    assert co2.vapor_density_kg_m3(p, t) == pytest.approx(rho, rel=3e-4)
    assert co2.vapor_pressure_pa(rho, t) == pytest.approx(p, rel=5e-5)
    assert co2.vapor_enthalpy_j_kg(rho, t) == pytest.approx(gas.hmass(), abs=50)
    assert co2.vapor_internal_energy_j_kg(rho, t) == pytest.approx(gas.umass(), abs=25)
    assert co2.vapor_entropy_j_kg_k(rho, t) == pytest.approx(gas.smass(), abs=0.15)
    assert co2.vapor_cv_j_kg_k(rho, t) == pytest.approx(gas.cvmass(), rel=0.02)
    assert co2.vapor_cp_j_kg_k(rho, t) == pytest.approx(gas.cpmass(), rel=0.02)


@pytest.mark.parametrize("t", [154.5, 165.0, 180.0, 194.7, 205.0, 216.0])
def test_gas_over_dry_ice(gas: Any, t: float) -> None:
    import CoolProp

    gas.update(CoolProp.PT_INPUTS, co2.sublimation_pressure_pa(t), t)
    assert co2.vapor_density_saturated_kg_m3(t) == pytest.approx(gas.rhomass(), rel=1e-3)
    assert co2.vapor_enthalpy_saturated_j_kg(t) == pytest.approx(gas.hmass(), abs=50)
    assert co2.vapor_entropy_saturated_j_kg_k(t) == pytest.approx(gas.smass(), abs=0.3)


@pytest.mark.parametrize("t", [217.0, 230.0, 250.0, 270.0, 290.0, 297.0])
def test_saturated_curves_and_the_vapour_equation_meet(t: float) -> None:
    p = co2.saturation_pressure_pa(t)
    rho = co2.vapor_density_kg_m3(p, t)
    assert co2.vapor_density_saturated_kg_m3(t) == pytest.approx(rho, rel=1e-3)
    saturated = co2.vapor_enthalpy_saturated_j_kg(t)
    assert co2.vapor_enthalpy_j_kg(rho, t) == pytest.approx(saturated, abs=200)


@pytest.mark.parametrize("start", [217.0, 223.15, 243.15, 263.15, 283.15, 298.0])
@pytest.mark.parametrize("share", [0.02, 0.3, 1.0])
def test_liquid_full_isochores(saturated: Any, start: float, share: float) -> None:
    import CoolProp

    saturated.update(CoolProp.QT_INPUTS, 0, start)
    rho, slope = (
        saturated.rhomass(),
        saturated.first_partial_deriv(CoolProp.iP, CoolProp.iT, CoolProp.iDmass),
    )
    liquid = CoolProp.AbstractState("HEOS", "CO2")
    liquid.specify_phase(CoolProp.iphase_liquid)
    rise = co2.kelvin_to_pressure(start, saturated.p() + share * (195e5 - saturated.p()))
    liquid.update(CoolProp.DmassT_INPUTS, rho, start + rise)
    ours = co2.liquid_pressure_pa(rho, start + rise)
    assert ours == pytest.approx(liquid.p(), abs=0.6e5)
    energy = co2.liquid_internal_energy_j_kg(rho, start + rise)
    assert energy == pytest.approx(liquid.umass(), abs=1000)
    assert co2.liquid_full_pressure_slope_pa_per_k(start) == pytest.approx(slope, rel=0.02)


def test_heats_stay_within_three_tenths_of_a_kilojoule_up_to_304_k(saturated: Any) -> None:
    import CoolProp

    for t in (303.5, 303.8, 304.0):
        saturated.update(CoolProp.QT_INPUTS, 0, t)
        assert co2.liquid_enthalpy_j_kg(t) == pytest.approx(saturated.hmass(), abs=300)
        saturated.update(CoolProp.QT_INPUTS, 1, t)
        assert co2.vapor_enthalpy_saturated_j_kg(t) == pytest.approx(saturated.hmass(), abs=300)
