"""How much has left, by an opening that the last vent of vapour measures: against CoolProp."""

import CoolProp.CoolProp as CP
import pytest

from co2vent.inference.outflow import OutflowWatch
from co2vent.inference.vented import mass_vented
from co2vent.readings.reading import Reading, Setup

AMBIENT_PA = 101_325.0
VOLUME_M3 = 0.0145
PERIOD_S = 0.5


def choked_flow(pressure_pa: float, density: float, area_m2: float) -> float:
    """Choked flow of a gas of cp/cv 1.3 with its real inlet density (ISO 9300 and API 520 form)."""
    return area_m2 * (1.3 * pressure_pa * density * (2.0 / 2.3) ** (2.3 / 0.3)) ** 0.5


class Section:
    """Saturated CO2 from which vapour leaves without heat from outside, then dry warm gas."""

    def __init__(self, watch: OutflowWatch) -> None:
        self.watch, self.at_s, self.left_kg = watch, 0.0, 0.0

    def boil_down(self, liquid_kg: float, area_m2: float) -> None:
        """From 20 bar to 6 bar: enthalpy of what is left falls by what the vapour takes along."""
        state = CP.AbstractState("HEOS", "CO2")
        state.update(CP.PQ_INPUTS, 20e5, 0.0)
        energy, liquid = state.umass() * liquid_kg, liquid_kg
        state.update(CP.PQ_INPUTS, 20e5, 1.0)
        vapor = (VOLUME_M3 - liquid / CP.PropsSI("D", "P", 20e5, "Q", 0, "CO2")) * state.rhomass()
        energy, mass, pressure_pa = energy + vapor * state.umass(), liquid + vapor, 20e5
        while pressure_pa > 6e5:
            self.watch.see(self.at_s, pressure_pa, AMBIENT_PA, vapor_only=False)
            state.update(CP.PQ_INPUTS, pressure_pa, 1.0)
            left = choked_flow(pressure_pa, state.rhomass(), area_m2) * PERIOD_S
            energy, mass = energy - left * state.hmass(), mass - left
            state.update(CP.DmassUmass_INPUTS, mass / VOLUME_M3, energy / mass)
            pressure_pa = state.p()
            self.at_s, self.left_kg = self.at_s + PERIOD_S, self.left_kg + left
        self.watch.shut()

    def blow_down(self, area_m2: float, gas_k: float, *, isentropic: bool) -> None:
        """Vapour alone from 7 bar to 2 bar, at one temperature or cooling as it expands."""
        pressure_pa, entropy = 7e5, CP.PropsSI("S", "P", 7e5, "T", gas_k, "CO2")
        density = CP.PropsSI("D", "P", pressure_pa, "T", gas_k, "CO2")
        while pressure_pa > 2e5:
            self.watch.see(self.at_s, pressure_pa, AMBIENT_PA, vapor_only=True)
            left = choked_flow(pressure_pa, density, area_m2) * PERIOD_S
            density -= left / VOLUME_M3
            if isentropic:
                sound = CP.PropsSI("A", "P", pressure_pa, "S", entropy, "CO2")
                pressure_pa -= sound**2 * left / VOLUME_M3
            else:
                pressure_pa = CP.PropsSI("P", "D", density, "T", gas_k, "CO2")
            self.at_s, self.left_kg = self.at_s + PERIOD_S, self.left_kg + left
        self.watch.shut()


@pytest.mark.parametrize(("gas_k", "isentropic"), [(240.0, False), (300.0, True), (290.0, False)])
@pytest.mark.parametrize("liquid_kg", [0.2, 4.0])
def test_what_left_before_is_known_once_vapour_alone_has_left(liquid_kg, gas_k, isentropic):
    watch = OutflowWatch()
    section = Section(watch)
    section.boil_down(liquid_kg, 6e-6)
    assert watch.estimate_kg(VOLUME_M3) is None  # only vapour alone shows how far the vent is open
    section.blow_down(6e-6, gas_k, isentropic=isentropic)
    # gas of a known volume between the two ways of expanding: 1.2 of 1.0 to 1.4
    assert watch.estimate_kg(VOLUME_M3) == pytest.approx(section.left_kg, rel=0.25)


def test_a_short_fall_or_a_vent_read_in_part_gives_no_estimate():
    watch = OutflowWatch()
    for at_s, pressure_pa in enumerate((7.0e5, 6.8e5, 6.7e5)):
        watch.see(float(at_s), pressure_pa, AMBIENT_PA, vapor_only=True)
    assert watch.estimate_kg(VOLUME_M3) is None
    for at_s, pressure_pa in ((3.0, 6.0e5), (4.0, 5.0e5)):
        watch.see(at_s, pressure_pa, AMBIENT_PA, vapor_only=True)
    assert watch.estimate_kg(VOLUME_M3) is not None
    watch.see(12.0, 4.0e5, AMBIENT_PA, vapor_only=True)
    assert watch.estimate_kg(VOLUME_M3) is None


def test_the_estimate_keeps_within_what_is_certain():
    setup = Setup(section_volume_m3=VOLUME_M3)
    bounds = mass_vented(setup, 20e5, Reading(9.0, 2e5), True, (), 1e-9)
    assert bounds is not None
    assert bounds.lower is not None
    assert bounds.estimate == bounds.lower > 0.0
    assert mass_vented(setup, 20e5, Reading(9.0, 2e5), True, ()).estimate is None
