"""Vents of a tight section with liquid fall faster and faster; with an inflow they fall alike.

The sections here are CoolProp's: one energy balance for liquid, vapour and a constant heat, or gas
at one temperature with a constant flow into it. Choked outflow as in ISO 9300.
"""

from collections.abc import Iterator

import CoolProp.CoolProp as CP
import pytest

from co2vent.guidance.session import advance, begin, finish, view
from co2vent.inference.outcome import LeakBy
from co2vent.inference.vent_fall import BOILED_PER_K, VentFalls, same_fall, sooner
from co2vent.readings.reading import Reading, Setup

AREA_M2 = 1e-6
STOP_PA = 6.3e5
PERIOD_S = 2.0

Row = tuple[float, float, bool]  # s, Pa, vent open


def choked_flow(pressure_pa: float, density: float) -> float:
    """Choked flow of a gas of cp/cv 1.3 with its real inlet density (ISO 9300 and API 520 form)."""
    return AREA_M2 * (1.3 * pressure_pa * density * (2.0 / 2.3) ** (2.3 / 0.3)) ** 0.5


def boiling(liquid_kg: float, heat_w: float, volume_m3: float, vents: int) -> Iterator[Row]:
    """Liquid and vapour at one temperature, heated, vented to the stop pressure again and again."""
    state = CP.AbstractState("HEOS", "CO2")
    state.update(CP.PQ_INPUTS, 9e5, 0.0)
    energy, mass = state.umass() * liquid_kg, liquid_kg
    room = volume_m3 - liquid_kg / state.rhomass()
    state.update(CP.PQ_INPUTS, 9e5, 1.0)
    energy, mass = energy + room * state.rhomass() * state.umass(), mass + room * state.rhomass()
    at_s, pressure_pa, is_open, shut_s = 0.0, 9e5, False, 60.0
    while True:
        yield at_s, pressure_pa, is_open
        energy += heat_w * PERIOD_S
        if is_open:
            state.update(CP.PQ_INPUTS, pressure_pa, 1.0)
            left = choked_flow(pressure_pa, state.rhomass()) * PERIOD_S
            energy, mass = energy - left * state.hmass(), mass - left
        state.update(CP.DmassUmass_INPUTS, mass / volume_m3, energy / mass)
        pressure_pa, at_s = state.p(), at_s + PERIOD_S
        shut_s += 0.0 if is_open else PERIOD_S
        if is_open and pressure_pa <= STOP_PA:
            is_open, shut_s = False, 0.0
        elif not is_open and shut_s > 400.0:
            if not vents:
                return
            is_open, vents = True, vents - 1


def leaking(leak_kg_s: float, gas_k: float, volume_m3: float, vents: int) -> Iterator[Row]:
    """Gas at one temperature with a flow into it, vented again and again."""
    density = CP.PropsSI("D", "P", 9e5, "T", gas_k, "CO2")
    at_s, pressure_pa, is_open, shut_s = 0.0, 9e5, False, 60.0
    while True:
        yield at_s, pressure_pa, is_open
        density += leak_kg_s * PERIOD_S / volume_m3
        if is_open:
            density -= choked_flow(pressure_pa, density) * PERIOD_S / volume_m3
        pressure_pa = CP.PropsSI("P", "D", density, "T", gas_k, "CO2")
        at_s += PERIOD_S
        shut_s += 0.0 if is_open else PERIOD_S
        if is_open and pressure_pa <= STOP_PA:
            is_open, shut_s = False, 0.0
        elif not is_open and shut_s > 400.0:
            if not vents:
                return
            is_open, vents = True, vents - 1


def falls_of(rows: list[Row]) -> VentFalls:
    falls, hold, was_open = VentFalls(), 0, False
    for at_s, pressure_pa, is_open in rows:
        if is_open:
            falls.see(at_s, pressure_pa)
        elif was_open:
            hold += 1
            falls.shut(hold)
        was_open = is_open
    return falls


def said_of(rows: list[Row], *, opened: float = 1.0) -> tuple[LeakBy, str]:
    """What is said at the end; `opened`: time stretches so much from vent to vent (the hand)."""
    session = begin(Setup(section_volume_m3=None))
    for at_s, pressure_pa, is_open in rows:
        session, _ = advance(session, Reading(at_s, pressure_pa, vent_open=is_open))
    session, _ = finish(session)
    last = view(session).holds[-1]
    return last.leak_by, last.reason


@pytest.mark.parametrize("liquid_kg", [0.4, 2.0, 8.0])
def test_a_tight_section_with_liquid_falls_faster_by_the_share_that_boiled_off(liquid_kg):
    falls = falls_of(list(boiling(liquid_kg, 60.0 * liquid_kg**0.5, 0.0145, 4))).every
    assert [fall.hold for fall in falls] == [1, 2, 3, 4]
    for index in (1, 2):
        fall = same_fall(falls[index], falls[index + 1 :], 5e3)
        assert fall is not None
        assert fall.boiled > 0.015
        assert sooner(fall) > 0.9 * fall.boiled


def test_gas_with_an_inflow_falls_alike():
    falls = falls_of(list(leaking(2e-4, 260.0, 0.0145, 5))).every
    fall = same_fall(falls[1], falls[2:], 5e3)
    assert fall is not None
    assert fall.boiled > 0.08
    assert abs(sooner(fall)) < 0.02


def test_no_saturated_liquid_boils_off_less_for_each_kelvin():
    """cp/h of saturated liquid (Span-Wagner)."""
    for gas_k in range(217, 300, 4):
        top, low = (CP.PropsSI("H", "T", gas_k, "Q", quality, "CO2") for quality in (1, 0))
        assert CP.PropsSI("C", "T", gas_k, "Q", 0, "CO2") / (top - low) > BOILED_PER_K


def test_what_is_replaced_in_every_hold_comes_past_a_valve():
    leak, reason = said_of(list(leaking(2e-4, 260.0, 0.0145, 5)))
    assert leak is LeakBy.SUSPECTED
    assert "fell alike" in reason


@pytest.mark.parametrize("liquid_kg", [0.4, 2.0, 8.0])
def test_liquid_that_boils_alike_is_no_flow_past_a_valve(liquid_kg):
    leak, reason = said_of(list(boiling(liquid_kg, 60.0 * liquid_kg**0.5, 0.0145, 5)))
    assert leak is not LeakBy.SUSPECTED, reason


def test_a_gap_ends_the_comparison():
    rows = [row for row in leaking(2e-4, 260.0, 0.0145, 5) if not 1700.0 < row[0] < 1760.0]
    leak, reason = said_of(rows)
    assert "fell alike" not in reason
    assert leak is not None
