"""The tables against the equation of state that they stand for."""

import CoolProp
import numpy as np
import pytest
from CoolProp.CoolProp import PropsSI

from co2vent.section_model.fluid import (
    H_VAPOUR,
    RHO,
    P,
    U,
    co2_tables,
    gas_density,
    gas_value,
    phase_value,
)


@pytest.mark.parametrize("temperature_k", [217.3, 225.0, 240.0, 260.0, 280.0, 295.0])
def test_saturated_liquid_is_that_of_span_and_wagner(temperature_k: float) -> None:
    fluid = co2_tables()

    def expected(name: str, quality: int) -> float:
        return float(PropsSI(name, "T", temperature_k, "Q", quality, "CO2"))

    assert phase_value(fluid, temperature_k, P) == pytest.approx(expected("P", 0), rel=1e-4)
    assert phase_value(fluid, temperature_k, RHO) == pytest.approx(expected("D", 0), rel=1e-3)
    assert phase_value(fluid, temperature_k, U) == pytest.approx(expected("U", 0), abs=200.0)
    assert phase_value(fluid, temperature_k, H_VAPOUR) == pytest.approx(expected("H", 1), abs=200.0)


def test_gas_is_that_of_span_and_wagner_also_between_the_points_of_the_table() -> None:
    fluid = co2_tables()
    gas = CoolProp.AbstractState("HEOS", "CO2")
    gas.specify_phase(CoolProp.iphase_gas)
    for temperature in np.linspace(216.3, 320.7, 9):
        for share in (0.1, 0.5, 0.95):
            pressure = share * (
                PropsSI("P", "T", temperature, "Q", 1, "CO2") if temperature < 300.0 else 60e5
            )
            gas.update(CoolProp.PT_INPUTS, pressure, temperature)
            rho = gas_density(fluid, pressure, temperature)
            assert rho == pytest.approx(gas.rhomass(), rel=1e-3)
            found_pa, energy = gas_value(fluid, gas.rhomass(), temperature)
            assert found_pa == pytest.approx(pressure, rel=2e-4)
            assert energy == pytest.approx(gas.umass(), abs=100.0)


def test_dry_ice_is_that_of_jaeger_and_span() -> None:
    # J. Chem. Eng. Data 57 (2012) 590 with Span & Wagner's sublimation line, at 194.7 K:
    # 101 325 Pa, 1571.3 kg/m3, h -150.31 kJ/kg; vapour 422.60 kJ/kg
    fluid = co2_tables()
    assert phase_value(fluid, 194.685, P) == pytest.approx(101_325.0, rel=1e-3)
    assert phase_value(fluid, 194.685, RHO) == pytest.approx(1571.3, rel=1e-3)
    enthalpy = phase_value(fluid, 194.685, U) + 101_325.0 / 1571.3
    assert enthalpy == pytest.approx(-150_310.0, abs=200.0)
    assert phase_value(fluid, 194.685, H_VAPOUR) == pytest.approx(422_600.0, abs=200.0)
