"""Heat: dry ice, boiling, gas on metal, oil and water, against balances and tables."""

import numpy as np
import pytest
from CoolProp.CoolProp import PropsSI

from co2vent.co2 import kernels
from co2vent.section_model.layout import COLUMN
from co2vent.section_model.parameters import (
    Contents,
    Gauge,
    Leaks,
    Pocket,
    Section,
    Setting,
    Sorbent,
    Surroundings,
    VentPath,
)
from co2vent.section_model.simulation import SectionRun


def test_open_dry_ice_sublimes_at_the_rate_of_the_heat_that_reaches_it() -> None:
    # 572.9 kJ/kg at 1 atm (Jaeger & Span 2012 with Span & Wagner 1996; Giauque & Egan 1937 measured
    # 25.23 kJ/mol = 573.3): 100 W clears 0.63 kg/h
    cold = kernels.sublimation_temperature_k(101_325.0)
    section = Section(
        outside_w_per_m2k=1.0,
        gas_factor=0.0,
        interface_w_per_m2k=0.0,
        pockets=(Pocket(wet_share=0.999, snow_contact_w_per_m2k=2000.0),),
    )
    contents = Contents(temperature_k=cold, solid_kg=18.0)
    setting = Setting(
        section=section,
        contents=contents,
        surroundings=Surroundings(temperature_k=293.15),
        vent=VentPath(bore_m=0.03, hose_bore_m=0.1),
    )
    run = SectionRun(setting)
    run.step(1.0, 1800)
    before, heat_before = run.truth(), float(run.records.state[0]["heat_in_j"])
    run.step(1.0, 3600)
    after, heat_after = run.truth(), float(run.records.state[0]["heat_in_j"])
    heat = heat_after - heat_before
    assert heat / 3600.0 > 20.0  # W
    assert (before.solid_kg - after.solid_kg) * 572_900.0 == pytest.approx(heat, rel=0.01)


def test_venting_with_heat_keeps_the_energy_that_the_equation_of_state_says() -> None:
    # first law with Span & Wagner energies (CoolProp): heat from metal = change of internal energy
    # of the CO2 + enthalpy of what left as saturated vapour
    t = kernels.saturation_temperature_k(9e5)
    setting = Setting(
        section=Section(gas_factor=0.0, interface_w_per_m2k=0.0),
        contents=Contents(
            temperature_k=t, liquid_fraction=0.5, wet_metal_k=t + 5, dry_metal_k=t + 5
        ),
        vent=VentPath(bore_m=0.0015),
    )
    run = SectionRun(setting)
    volume = setting.section.volume_m3

    def inside() -> tuple[float, float, float]:
        """Return (kg, J of the CO2 by CoolProp, J of the metal)."""
        truth, r = run.truth(), run.records
        kg = truth.liquid_kg + truth.vapor_kg
        metal = float(r.state[0]["dry_metal_k"] * r.section[0]["dry_metal_j_per_k"])
        metal += float(r.pocket_state[0]["metal_k"] * r.pockets[0]["metal_j_per_k"])
        liquid = PropsSI("U", "P", truth.pressure_pa, "Q", 0, "CO2")
        vapour = PropsSI("U", "P", truth.pressure_pa, "Q", 1, "CO2")
        specific = volume / kg
        v_l = 1.0 / PropsSI("D", "P", truth.pressure_pa, "Q", 0, "CO2")
        v_v = 1.0 / PropsSI("D", "P", truth.pressure_pa, "Q", 1, "CO2")
        quality = (specific - v_l) / (v_v - v_l)
        return kg, kg * (liquid + quality * (vapour - liquid)), metal

    run.step(0.5, 60)
    total_heat = total_change = 0.0
    for _ in range(20):
        kg, energy, metal = inside()
        heat_in = float(run.records.state[0]["heat_in_j"])
        enthalpy = PropsSI("H", "P", run.truth().pressure_pa, "Q", 1, "CO2")
        run.step(0.5, 30)
        kg_after, energy_after, metal_after = inside()
        enthalpy += PropsSI("H", "P", run.truth().pressure_pa, "Q", 1, "CO2")
        total_heat += float(run.records.state[0]["heat_in_j"]) - heat_in + metal - metal_after
        total_change += energy_after - energy + (kg - kg_after) * enthalpy / 2.0
    assert total_heat > 1e5
    assert total_change == pytest.approx(total_heat, rel=0.02)


# An independent two-metal-node integration with the Span & Wagner equation of state, evaporation
# in equilibrium: rise [bar] from 5.2 bar g at 1, 2, 5, 10 min; 10 L, 2.5 kg steel a litre, L/D 8,
# bare, ambient 20 degC, from -20 degC; dry metal -28, wetted -48, gas -42 degC.
REBOUND = {0.01: (0.81, 1.26, 2.47, 4.21), 0.1: (0.66, 1.02, 1.96, 3.46)}


def rebound_section(wet_share: float) -> Section:
    diameter = (0.01 / (np.pi / 4.0 * 8.0)) ** (1.0 / 3.0)
    wall = 0.0
    for _ in range(50):  # 25 kg of steel
        wall = 25.0 / (4.0 * 0.01 / diameter**2 * (diameter + wall) * 7850.0)
    return Section(
        volume_m3=0.01, diameter_m=diameter, wall_m=wall, extra_metal_share=0.0,
        outside_w_per_m2k=8.0, pockets=(Pocket(wet_share=wet_share),),
    )  # fmt: skip


@pytest.mark.parametrize("fill", list(REBOUND))
def test_the_rebound_is_that_of_an_independent_integration(fill: float) -> None:
    t = kernels.saturation_temperature_k(6.213e5)
    # there, the wetted node is the part of the circumference under the level
    section = rebound_section({0.01: 0.117, 0.1: 0.26}[fill])
    contents = Contents(
        temperature_k=t,
        liquid_fraction=fill,
        dry_metal_k=245.15,
        wet_metal_k=225.15,
        gas_k=231.15,
    )
    setting = Setting(
        section=section, contents=contents, surroundings=Surroundings(temperature_k=293.15)
    )
    rows = SectionRun(setting).step(0.0, 600)
    rise = [(rows[s - 1, COLUMN["pressure_pa"]] - 6.213e5) / 1e5 for s in (60, 120, 300, 600)]
    assert rise == pytest.approx(REBOUND[fill], rel=0.15)


def test_gas_alone_rises_less_than_its_warming_bound_and_less_when_repeated() -> None:
    # real-gas bound: rho R Z T at the warmest metal, constant density (isochore)
    contents = Contents(
        temperature_k=263.15, pressure_pa=20e5, dry_metal_k=263.15, wet_metal_k=263.15
    )
    run = SectionRun(Setting(contents=contents, gauge=Gauge(noise_pa=0.0, step_pa=0.0)))
    rises = []
    for _ in range(2):
        run.step(0.5, 1000, below_pa=5.2e5, period_s=0.2)
        start = run.truth()
        rho = start.vapor_kg / run.setting.section.volume_m3
        rows = run.step(0.0, 600)
        bound = kernels.vapor_pressure_pa(rho, float(rows[-1, COLUMN["warmest_metal_k"]]))
        assert rows[:, COLUMN["pressure_pa"]].max() <= bound * 1.0005
        rises.append(rows[-1, COLUMN["pressure_pa"]] - start.pressure_pa)
    assert rises[0] > 0.4e5
    assert rises[1] < 0.7 * rises[0]


def test_a_wall_colder_than_saturation_delays_the_rise() -> None:
    # as seen in a small real cell: next to nothing in the first minute, then bars
    t = kernels.saturation_temperature_k(6.2e5)
    contents = Contents(
        temperature_k=t, liquid_fraction=0.2, wet_metal_k=t - 7.0, dry_metal_k=t - 4.0
    )
    rows = SectionRun(
        Setting(
            section=Section(outside_w_per_m2k=15.0),
            contents=contents,
            surroundings=Surroundings(temperature_k=308.15),
        )
    ).step(0.0, 900)
    pressure = rows[:, COLUMN["pressure_pa"]] / 1e5
    assert pressure[59] - 6.2 < 0.08
    assert pressure[-1] - pressure[299] > 0.3


def test_oil_gives_up_the_co2_of_raoults_law_as_it_warms() -> None:
    # ideal estimate, oil of 600 g/mol at 6.2 bar abs: per 100 g of oil
    # 22 g CO2 at -45 degC, 5.6 g at -30, 1.6 g at 0
    def held(t: float) -> float:
        sorbent = Sorbent(oil_kg=0.1, time_constant_s=50.0)
        contents = Contents(temperature_k=t, pressure_pa=6.2e5)
        section = Section(pockets=(Pocket(sorbent=sorbent),))
        return SectionRun(Setting(section=section, contents=contents)).truth().pockets[0].bound_kg

    assert held(228.15) == pytest.approx(0.022, rel=0.05)
    assert held(243.15) == pytest.approx(0.0056, rel=0.05)
    assert held(273.15) == pytest.approx(0.0016, rel=0.05)


def test_water_holds_the_vacuum_at_its_saturation_pressure() -> None:
    # 611 Pa at 0 degC (triple point of water): the bend of a wet core under vacuum
    contents = Contents(temperature_k=273.15, pressure_pa=2e4, water_kg=0.02)
    leaks = Leaks(pump_m3_per_s=1e-3, pump_ultimate_pa=5.0)
    setting = Setting(
        contents=contents, leaks=leaks, surroundings=Surroundings(temperature_k=273.15)
    )
    run = SectionRun(setting)
    run.set_pump(True)
    rows = run.step(0.0, 400)
    assert 300.0 < rows[-1, COLUMN["pressure_pa"]] < 640.0
    run.set_pump(False)
    rows = run.step(0.0, 600)
    assert rows[-1, COLUMN["pressure_pa"]] == pytest.approx(611.0, rel=0.05)
