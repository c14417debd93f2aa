"""The third section: its accounts close, and its physics agrees with what is known from outside."""

from itertools import pairwise

import numpy as np
import pytest

from co2vent.benchmark import plain_section as plain
from co2vent.benchmark.plain_drawing import plain_model_vent
from co2vent.benchmark.plain_flows import nozzle_kg_s
from co2vent.benchmark.plain_section import PlainSection, condensed_m3, step
from co2vent.co2 import (
    equilibrium_temperature_k,
    liquid_density_kg_m3,
    liquid_enthalpy_j_kg,
    solid_enthalpy_j_kg,
    vapor_density_kg_m3,
    vapor_internal_energy_j_kg,
)

TRIPLE_PA = 517_950.0  # Span & Wagner 1996

SECTION = PlainSection(
    volume=0.010, low_share=0.2, area=0.4, low_capacity=2_000.0, rest_capacity=9_000.0,
    between_w_k=1.0, outside_low_w_k=0.6, outside_rest_w_k=2.4, ambient_k=285.0,
    ambient_pa=100_000.0, quiet_w_m2_k=300.0, boil_w_m2_k2=100.0, film_k=30.0, film_w_m2_k=150.0,
    snow_w_m2_k=60.0, condense_w_m2_k=800.0, gas_w_m2_k=8.0, vent_area=3e-6, leak_by_kg_s=0.0,
    leak_liquid=0, supply_k=270.0, leak_out_area=0.0,
)  # fmt: skip


def start(p: PlainSection, pressure_pa: float, liquid_kg: float, solid_kg: float = 0.0):
    state = np.zeros(plain.STATE)
    boundary_k = equilibrium_temperature_k(pressure_pa)
    room = p.volume - condensed_m3(liquid_kg, solid_kg, boundary_k)
    state[plain.GAS_K] = boundary_k + 0.3
    state[plain.GAS_KG] = vapor_density_kg_m3(pressure_pa, boundary_k + 0.3) * room
    state[plain.LIQUID_KG], state[plain.SOLID_KG] = liquid_kg, solid_kg
    state[plain.PRESSURE] = pressure_pa
    state[plain.LOW_K] = state[plain.REST_K] = boundary_k
    return state


def mass(state) -> float:
    inside = state[plain.GAS_KG] + state[plain.LIQUID_KG] + state[plain.SOLID_KG]
    return float(inside - state[plain.IN_KG] + state[plain.OUT_KG])


def energy(p: PlainSection, state) -> float:
    """Internal energy of all that is inside and of the metal [J]."""
    pressure = state[plain.PRESSURE]
    boundary_k = equilibrium_temperature_k(pressure)
    used = condensed_m3(state[plain.LIQUID_KG], state[plain.SOLID_KG], boundary_k)
    density = state[plain.GAS_KG] / (p.volume - used)
    total = state[plain.GAS_KG] * vapor_internal_energy_j_kg(density, state[plain.GAS_K])
    total -= pressure * used  # from the enthalpy of liquid and dry ice
    if state[plain.LIQUID_KG] > 0:
        total += state[plain.LIQUID_KG] * liquid_enthalpy_j_kg(boundary_k)
    if state[plain.SOLID_KG] > 0:
        total += state[plain.SOLID_KG] * solid_enthalpy_j_kg(min(boundary_k, 216.59))
    total += p.low_capacity * state[plain.LOW_K] + p.rest_capacity * state[plain.REST_K]
    return float(total)


def outside_w(p: PlainSection, state) -> float:
    low = p.outside_low_w_k * (p.ambient_k - state[plain.LOW_K])
    return float(low + p.outside_rest_w_k * (p.ambient_k - state[plain.REST_K]))


@pytest.mark.parametrize("liquid_kg", [0.0, 0.02, 3.0])
@pytest.mark.parametrize("leak", [0.0, 1e-4])
def test_mass_closes(liquid_kg: float, leak: float) -> None:
    p = SECTION._replace(leak_by_kg_s=leak, leak_liquid=1, leak_out_area=1e-8)
    state = start(p, 12e5, liquid_kg)
    before = mass(state)
    for n in range(6_000):
        step(p, state, 0.5 if 1_000 < n < 2_500 else 0.0, 0.1)
    assert mass(state) == pytest.approx(before, rel=1e-9)


@pytest.mark.parametrize(("liquid_kg", "pressure_pa"), [(0.0, 7e5), (0.05, 7e5), (4.0, 12e5)])
def test_a_closed_section_gains_the_energy_that_comes_in(liquid_kg, pressure_pa) -> None:
    p = SECTION
    state = start(p, pressure_pa, liquid_kg)
    before, heat = energy(p, state), 0.0
    for _ in range(5_000):
        heat += outside_w(p, state) * 0.2
        step(p, state, 0.0, 0.2)
    assert energy(p, state) - before == pytest.approx(heat, rel=0.01)


def test_a_closed_section_with_dry_ice_gains_the_energy_that_comes_in() -> None:
    p = SECTION._replace(outside_low_w_k=3.0, outside_rest_w_k=6.0)
    state = start(p, 2.5e5, 0.0, 0.3)
    before, heat = energy(p, state), 0.0
    for _ in range(12_000):
        heat += outside_w(p, state) * 0.2
        step(p, state, 0.0, 0.2)
    assert state[plain.PRESSURE] > TRIPLE_PA  # through the shelf
    assert energy(p, state) - before == pytest.approx(heat, rel=0.02)


def test_slow_adiabatic_venting_leaves_what_an_energy_balance_leaves() -> None:
    """Liquid alone, 250 to 222 K, d ln m = ds T / h_fg (CoolProp)."""
    CoolProp = pytest.importorskip("CoolProp.CoolProp")
    share = 1.0
    for a, b in pairwise(np.linspace(250.0, 222.0, 400)):
        s = [CoolProp.PropsSI("S", "T", t, "Q", 0, "CO2") for t in (a, b)]
        h = [CoolProp.PropsSI("H", "T", (a + b) / 2, "Q", q, "CO2") for q in (0, 1)]
        share *= np.exp(-(s[0] - s[1]) * (a + b) / 2 / (h[1] - h[0]))
    p = SECTION._replace(
        outside_low_w_k=0.0, outside_rest_w_k=0.0, low_capacity=1e-3, rest_capacity=1e-3,
        between_w_k=0.0, quiet_w_m2_k=0.0, boil_w_m2_k2=0.0, condense_w_m2_k=0.0, gas_w_m2_k=0.0,
    )  # fmt: skip
    saturated_pa = CoolProp.PropsSI("P", "T", 250.0, "Q", 0, "CO2")
    liquid_kg = 0.5 * p.volume * liquid_density_kg_m3(250.0)
    state = start(p, saturated_pa, liquid_kg)
    stop_pa = CoolProp.PropsSI("P", "T", 222.0, "Q", 0, "CO2")
    for _ in range(200_000):
        if state[plain.PRESSURE] <= stop_pa:
            break
        step(p, state, 0.3, 0.1)
    # vapour that fills the emptied space took its heat along: 4 to 6 % of the charge
    assert state[plain.LIQUID_KG] / liquid_kg == pytest.approx(share, abs=0.03)


def test_three_phases_stand_at_the_triple_pressure() -> None:
    """The phase rule, venting down through it and warming up again."""
    p = SECTION
    state = start(p, 8e5, 1.0)
    frozen_at = []
    for _ in range(60_000):
        step(p, state, 0.5, 0.1)
        if state[plain.SOLID_KG] > 0.0 and state[plain.LIQUID_KG] > 0.0:
            frozen_at.append(state[plain.PRESSURE])
        if state[plain.PRESSURE] < 2e5:
            break
    assert len(frozen_at) > 100
    assert np.ptp(frozen_at) < 1.0
    assert frozen_at[0] == pytest.approx(TRIPLE_PA, rel=1e-3)
    assert state[plain.LIQUID_KG] == 0.0
    assert state[plain.SOLID_KG] > 0.1
    melting = 0
    for _ in range(40_000):
        step(p, state, 0.0, 0.2)
        melting += state[plain.SOLID_KG] > 0.0 and state[plain.LIQUID_KG] > 0.0
    assert melting > 500


def test_a_closed_section_with_a_pool_stands_on_the_saturation_line() -> None:
    CoolProp = pytest.importorskip("CoolProp.CoolProp")
    p = SECTION._replace(ambient_k=245.0)
    state = start(p, 8e5, 3.0)
    for _ in range(100_000):
        step(p, state, 0.0, 0.5)
    expected = CoolProp.PropsSI("P", "T", 245.0, "Q", 0, "CO2")
    assert state[plain.PRESSURE] == pytest.approx(expected, rel=0.01)


def test_choked_flow_is_that_of_the_textbook() -> None:
    """Ideal gas with k = 1.30: 0.6673 p / sqrt(R T), the C of API 520-1 in SI."""
    r, t, p = 188.92, 260.0, 10e5
    flux = nozzle_kg_s(1.0, p, p / (r * t), 1e5)
    assert flux == pytest.approx(0.6673 * p / np.sqrt(r * t), rel=1e-3)
    assert nozzle_kg_s(1.0, p, p / (r * t), p) == 0.0


def test_the_population_covers_what_it_says_and_a_seed_gives_the_same_vent() -> None:
    vents = [plain_model_vent(seed) for seed in range(60)]
    holds = [hold for vent in vents for hold in vent.holds]
    wet = [hold.liquid_kg + hold.solid_kg > 0.01 for hold in holds]
    assert 0.1 < np.mean(wet) < 0.7
    assert {vent.setup.section_volume_m3 is None for vent in vents} == {True, False}
    assert {vent.readings[0].vent_open is None for vent in vents} == {True, False}
    assert {vent.readings[0].line_temperature_k is None for vent in vents} == {True, False}
    assert all(np.isfinite(vent.pressure_pa).all() for vent in vents)
    np.testing.assert_array_equal(plain_model_vent(7).pressure_pa, vents[7].pressure_pa)
