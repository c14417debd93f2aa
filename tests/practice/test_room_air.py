"""The room that a practice vent ends in."""

import pytest

from co2vent.practice.live_section import LiveSection
from co2vent.practice.scenario import scenario_from
from co2vent.readings.reading import Reading

ROOM = {"surroundings": {"room_m3": 100.0}, "charge": {"liquid_fraction": 0.1}}


def test_the_air_of_the_room_holds_what_was_vented_into_it() -> None:
    # 1 kg of CO2 is 0.5466 m3 at 20 degC and 1 atm (ideal gas, 44.01 g/mol, 24.055 l/mol)
    section = LiveSection(scenario_from(ROOM))
    section.step_to(10.0)
    section.set_valve(1.0)
    last = section.step_to(60.0)[-1]
    assert isinstance(last, Reading)
    assert last.room_co2_ppm is not None
    vented = section.truth().vented_kg
    assert last.room_co2_ppm - 420.0 == pytest.approx(vented * 0.5466 / 100.0 * 1e6, rel=1e-3)
    assert section.log_header_lines()[-1].endswith(",room_co2_ppm")


def test_fresh_air_clears_it_and_outdoors_nothing_is_said() -> None:
    aired = {**ROOM, "surroundings": {"room_m3": 100.0, "air_changes_per_hour": 60.0}}
    section = LiveSection(scenario_from(aired))
    section.step_to(1.0)
    section.set_valve(1.0)
    dirty = section.step_to(40.0)[-1]
    section.set_valve(0.0)
    clean = section.step_to(400.0)[-1]
    assert isinstance(dirty, Reading)
    assert isinstance(clean, Reading)
    assert dirty.room_co2_ppm is not None
    assert clean.room_co2_ppm is not None
    # six minutes at one air change a minute: exp(-6)
    expected = (dirty.room_co2_ppm - 420.0) * 0.00248
    assert clean.room_co2_ppm - 420.0 == pytest.approx(expected, rel=0.05)
    outdoors = LiveSection(scenario_from({})).step_to(0.0)[-1]
    assert isinstance(outdoors, Reading)
    assert outdoors.room_co2_ppm is None
