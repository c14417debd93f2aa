"""Vapour through the vent valve, against real-gas nozzle flow."""

from dataclasses import replace

import CoolProp
import numpy as np
import pytest
from CoolProp.CoolProp import PropsSI

from co2vent.section_model.parameters import Contents, Gauge, Leaks, Setting, Surroundings, VentPath
from co2vent.section_model.simulation import SectionRun


def critical_flow(pressure_pa: float, temperature_k: float) -> float:
    """Return kg/s per m2 by the critical flow function of ISO 9300, from Span & Wagner.

    C* = G sqrt(R T0) / p0, G the largest rho * sqrt(2 (h0 - h)) along the isentrope of the gas
    (metastable where it would condense).
    """
    gas = CoolProp.AbstractState("HEOS", "CO2")
    gas.specify_phase(CoolProp.iphase_gas)
    gas.update(CoolProp.PT_INPUTS, pressure_pa, temperature_k)
    h0, s0 = gas.hmass(), gas.smass()
    best = 0.0
    t = temperature_k
    for p in np.linspace(pressure_pa * 0.75, pressure_pa * 0.45, 120):
        for _ in range(30):
            gas.update(CoolProp.PT_INPUTS, p, t)
            t -= (gas.smass() - s0) * t / gas.cpmass()
        gas.update(CoolProp.PT_INPUTS, p, t)
        best = max(best, gas.rhomass() * np.sqrt(max(0.0, 2.0 * (h0 - gas.hmass()))))
    return best


def vent_setting(pressure_pa: float, temperature_k: float, ambient_pa: float) -> Setting:
    return Setting(
        contents=Contents(temperature_k=temperature_k, pressure_pa=pressure_pa),
        surroundings=Surroundings(pressure_pa=ambient_pa),
        vent=VentPath(bore_m=1e-4, discharge_coefficient=1.0, hose_bore_m=0.02),
    )


@pytest.mark.parametrize(
    ("pressure_pa", "temperature_k"),
    [
        (6e5, 293.15),
        (10e5, 273.15),
        (5.3e5, 218.0),
        (20e5, 254.2),
        (34.8e5, 273.15),
        (20e5, 293.15),
    ],
)
def test_choked_vapour_flow_is_that_of_the_critical_flow_function(
    pressure_pa: float, temperature_k: float
) -> None:
    run = SectionRun(vent_setting(pressure_pa, temperature_k, 101_325.0))
    run.step(1.0, 1, period_s=0.01)
    area = np.pi / 4 * 1e-8
    flux = float(run.records.state[0]["vent_now_kg_per_s"]) / area
    assert flux == pytest.approx(critical_flow(pressure_pa, temperature_k), rel=0.01)


def test_subcritical_flow_falls_to_nothing_at_equal_pressures_and_never_runs_backwards() -> None:
    def flux(ambient_pa: float) -> float:
        run = SectionRun(vent_setting(3e5, 273.15, ambient_pa))
        run.step(1.0, 1, period_s=0.01)
        return float(run.records.state[0]["vent_now_kg_per_s"]) / (np.pi / 4 * 1e-8)

    # incompressible limit: G = sqrt(2 rho dp) (Bernoulli)
    rho = PropsSI("D", "P", 3e5, "T", 273.15, "CO2")
    assert flux(2.99e5) == pytest.approx(np.sqrt(2 * rho * 1e3), rel=0.01)
    assert flux(3.0e5) == 0.0
    assert flux(3.5e5) == 0.0


def test_the_relief_valve_opens_at_its_setting_and_keeps_the_section_below_it() -> None:
    contents = Contents(
        temperature_k=253.15, liquid_fraction=0.999, dry_metal_k=293.15, wet_metal_k=293.15
    )
    setting = Setting(contents=contents, leaks=Leaks(relief_pa=61e5))
    run = SectionRun(setting)
    rows = run.step(0.0, 900, period_s=0.2)
    assert run.truth().relieved_kg > 0.05
    assert rows[:, 5].max() < 63e5
    assert rows[:, 5].max() > 60e5


def test_liquid_through_a_hose_that_holds_snow_plugs_it() -> None:
    contents = Contents(temperature_k=253.15, liquid_fraction=0.8)
    vent = VentPath(bore_m=0.004, hose_bore_m=0.006, low_point=True, snow_capacity_kg=0.01)
    run = SectionRun(Setting(contents=contents, vent=vent))
    rows = run.step(1.0, 120)
    flow = np.diff(rows[:, 15])
    assert flow[0] > 0.1  # kg/s of liquid
    assert flow[-1] < 0.05 * flow[0]
    assert rows[-1, 5] > 15e5  # still under pressure behind the plug
    free = SectionRun(Setting(contents=contents, vent=replace(vent, snow_capacity_kg=0.0)))
    assert free.step(1.0, 120)[-1, 15] > 2.0 * rows[-1, 15]


def test_a_top_vent_of_a_nearly_full_section_carries_liquid_over() -> None:
    def condensed(fill: float, bore: float) -> float:
        contents = Contents(temperature_k=253.15, liquid_fraction=fill)
        run = SectionRun(Setting(contents=contents, vent=VentPath(bore_m=bore, hose_bore_m=0.03)))
        run.step(1.0, 5)
        return float(run.records.state[0]["vented_condensed_kg"])

    assert condensed(0.95, 0.006) > 0.05
    assert condensed(0.5, 0.003) == 0.0


def test_leak_by_is_straight_while_choked_and_stops_at_the_supply_pressure() -> None:
    contents = Contents(temperature_k=263.15, pressure_pa=6e5)
    leak = Leaks(leak_by_kg_per_s=1e-4, supply_pa=20e5)
    run = SectionRun(Setting(contents=contents, leaks=leak, gauge=Gauge(period_s=10.0)))
    rows = run.step(0.0, 2000)
    choked = rows[rows[:, 5] < 0.53 * 20e5]
    assert choked[:, 9] == pytest.approx(1e-4)
    # choked below 0.546 of the supply (k = 1.3, ISO 9300 form)
    assert rows[rows[:, 5] > 0.56 * 20e5][:, 9].max() < 1e-4
    assert rows[-1, 5] == pytest.approx(20e5, rel=0.01)
