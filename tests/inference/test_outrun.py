"""A rise that goes on while saturation comes up to the metal: no boiling keeps it up.

The sections are CoolProp's: liquid and vapour at saturation heated by metal at one temperature, or
gas at the metal's temperature with a constant flow into it.
"""

from collections.abc import Iterator

import CoolProp.CoolProp as CP
import pytest

from co2vent.guidance.session import advance, begin, finish, view
from co2vent.inference.criteria import CRITERIA
from co2vent.inference.mass_flow import mass_slope
from co2vent.inference.outcome import HoldAssessment, Instruction, LeakBy
from co2vent.inference.outrun import Part, outruns
from co2vent.readings.reading import Reading, Setup

METAL_K = 250.0
VOLUME_M3 = 2.5e-3
PERIOD_S = 2.0


def boiling(liquid_kg: float, w_per_k: float) -> Iterator[float]:
    """Pressures of a closed section whose liquid is heated by metal at METAL_K, from 6.3 bar."""
    state = CP.AbstractState("HEOS", "CO2")
    state.update(CP.PQ_INPUTS, 6.3e5, 0.0)
    room = VOLUME_M3 - liquid_kg / state.rhomass()
    energy, mass = liquid_kg * state.umass(), liquid_kg
    state.update(CP.PQ_INPUTS, 6.3e5, 1.0)
    energy, mass = energy + room * state.rhomass() * state.umass(), mass + room * state.rhomass()
    while True:
        state.update(CP.DmassUmass_INPUTS, mass / VOLUME_M3, energy / mass)
        yield state.p()
        energy += w_per_k * (METAL_K - state.T()) * PERIOD_S


def filling(kg_per_s: float) -> Iterator[float]:
    """Pressures of gas at METAL_K with a constant flow into it, from 6.3 bar."""
    density = CP.PropsSI("D", "P", 6.3e5, "T", METAL_K, "CO2")
    while True:
        yield CP.PropsSI("P", "D", density, "T", METAL_K, "CO2")
        density += kg_per_s * PERIOD_S / VOLUME_M3


def held(pressures: Iterator[float], seconds: float, *, clamp: bool = True) -> HoldAssessment:
    """The verdict on a hold with these pressures, after a vent from 20 bar."""
    session, at_s = begin(Setup(section_volume_m3=VOLUME_M3, insulated=True)), 0.0
    line_k = METAL_K if clamp else None

    def see(pressure_pa: float, *, is_open: bool) -> None:
        nonlocal session, at_s
        reading = Reading(at_s, pressure_pa, line_temperature_k=line_k, vent_open=is_open)
        session, _ = advance(session, reading)
        at_s += PERIOD_S

    for share in range(20):
        see(20e5 - share * 0.7e5, is_open=share > 3)
    begun_s = at_s
    while at_s < begun_s + seconds:
        see(next(pressures), is_open=False)
    session, _ = finish(session)
    return view(session).holds[-1]


@pytest.mark.parametrize("liquid_kg", [0.03, 0.2, 0.8, 2.0])
def test_no_boiling_outruns_itself_whatever_the_pool(liquid_kg):
    """Each pool is heated so that it takes the pressure up by several bar in the hold."""
    for w_per_k in (0.5 + liquid_kg, 3.0 + 6.0 * liquid_kg):
        hold = held(boiling(liquid_kg, w_per_k), 500.0)
        assert hold.end_pressure_pa > 7.5e5
        assert hold.leak_by is not LeakBy.SUSPECTED, (w_per_k, hold.reason)


def test_gas_that_fills_on_up_to_saturation_comes_past_a_valve():
    hold = held(filling(1.0e-4), 420.0)
    assert hold.leak_by is LeakBy.SUSPECTED
    assert hold.instruction is Instruction.CHECK_ISOLATION


@pytest.mark.parametrize("metal_k", [250.0, 260.0])
def test_the_bound_is_the_lead_that_is_left_times_how_much_faster_vapour_gets_denser(metal_k):
    """From 7 to 16 bar; the vapour's densities are CoolProp's."""

    def per_k(pressure_pa: float) -> float:
        low_k = CP.PropsSI("T", "P", pressure_pa, "Q", 1, "CO2") - 0.5
        return CP.PropsSI("D", "T", low_k + 1.0, "Q", 1, "CO2") - CP.PropsSI(
            "D", "T", low_k, "Q", 1, "CO2"
        )

    early, late = Part(7e5, metal_k, 1000.0, 0.0), Part(16e5, metal_k, 1000.0, 0.0)
    error_k = CRITERIA.clamp_error_k
    left = (late.drive_k + error_k) / (early.drive_k + error_k)
    bound = left * per_k(16e5) / per_k(7e5)
    before = mass_slope(early.pressure_pa, early.slope, metal_k)
    as_fast = mass_slope(late.pressure_pa, late.slope, metal_k)
    assert before is not None
    assert as_fast is not None
    for over, expected in ((-0.02, False), (0.02, True)):
        ratio = max(bound + CRITERIA.outrun_over, CRITERIA.outrun_kept) + over
        slope = late.slope * ratio * before / as_fast
        assert outruns(early, Part(16e5, metal_k, slope, 0.0), CRITERIA) is expected


def test_without_a_clamp_nothing_is_said_of_a_lead():
    hold = held(filling(1.0e-4), 420.0, clamp=False)
    assert hold.leak_by is not LeakBy.SUSPECTED
    assert hold.may_leak_by
    assert "leak-by" in hold.reason
