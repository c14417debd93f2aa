"""A section in a trainee's hands, and the score of it."""

import numpy as np
import pytest

from co2vent.inference.outcome import Charge
from co2vent.practice.exercises import exercise, exercises
from co2vent.practice.live_section import LiveSection
from co2vent.practice.score import score, true_charge
from co2vent.readings.log_decoder import LogDecoder
from co2vent.readings.reading import Reading, Rejection
from co2vent.section_model.layout import COLUMN


def live(key: str, **changes: float) -> LiveSection:
    one = exercise(key)
    return LiveSection(
        one.scenario({name.replace("__", "."): value for name, value in changes.items()}), one.seed
    )


def test_readings_come_with_the_time_and_the_valve_moves_the_pressure() -> None:
    section = live("more-liquid")
    first = section.step_to(0.0)
    assert [item.at_s for item in first if isinstance(item, Reading)] == [0.0]
    closed = section.step_to(30.0)
    assert len(closed) == 30
    assert section.step_to(20.0) == []
    before = section.truth().pressure_pa
    section.set_valve(1.0)
    opened = section.step_to(60.0)
    assert all(isinstance(item, Reading) and item.vent_open for item in opened)
    assert section.truth().pressure_pa < before
    assert section.truth().vented_kg > 0.0


def test_the_speed_of_the_class_does_not_change_what_happens() -> None:
    slow, fast = live("leak-by"), live("leak-by")
    for second in range(0, 121):
        slow.step_to(float(second))
    fast.step_to(120.0)
    np.testing.assert_array_equal(slow.rows, fast.rows)


def test_the_log_says_that_it_is_simulated_and_reads_back_as_it_was() -> None:
    section = live("altitude")
    items = section.step_to(40.0)
    assert "# simulated: yes" in section.log_header_lines()
    decoder = LogDecoder()
    text = "\n".join([*section.log_header_lines(), *section.log_lines(), ""])
    read = decoder.feed_text(text)
    assert decoder.setup.simulated
    assert len(read) == len(items)
    for back, item in zip(read, items, strict=True):
        assert isinstance(back, Reading)
        assert isinstance(item, Reading)
        assert back.pressure_pa == pytest.approx(item.pressure_pa, abs=10.0)
        assert back.vent_open == item.vent_open


def test_a_gauge_over_its_range_gives_no_number() -> None:
    section = live("little-liquid", gauge__full_scale=5.0)
    items = section.step_to(5.0)
    assert all(isinstance(item, Rejection) and item.over_range for item in items)
    assert all(",OL" in line for line in section.log_lines())


def test_a_patient_vent_scores_well_and_a_hurried_one_is_dangerous() -> None:
    # patient: the vapour-only exercise, called vapour only at its end
    one = exercise("vapour-only")
    patient = score(one.scenario(), one.run(), Charge.VAPOR_ONLY)
    assert patient.stop_kept
    assert patient.right
    assert not patient.dangerous
    # hurried: straight through the triple point with liquid inside, called empty
    section = live("shelf")
    section.step_to(60.0)
    section.set_valve(1.0)
    section.step_to(420.0)
    hurried = score(section.scenario, section.rows, Charge.VAPOR_ONLY)
    assert not hurried.stop_kept
    assert hurried.seconds_below_triple_with_liquid > 5.0
    assert hurried.most_dry_ice_kg > 0.5
    assert hurried.right is False
    assert hurried.dangerous
    assert "DANGEROUS" in hurried.lines()[-1]
    assert hurried.vented_kg == pytest.approx(section.truth().vented_kg)


def test_the_true_charge_of_every_exercise_is_named() -> None:
    ends = {}
    for one in exercises():
        rows = one.run()
        volume = one.scenario().setting.section.volume_m3
        ends[one.key] = true_charge(rows, max(2e-3, 0.5 * volume))
    assert ends["vapour-only"] is Charge.VAPOR_ONLY
    assert ends["oil"] is Charge.VAPOR_ONLY  # no liquid left: yet not clear, CO2 is in the oil
    assert ends["more-liquid"] is Charge.TWO_PHASE
    assert ends["shelf"] is Charge.SOLID_PRESENT
    assert ends["snow-at-zero"] is Charge.SOLID_PRESENT
    full = exercise("liquid-full").run()
    closed = full[full[:, COLUMN["valve"]] == 0.0]
    assert true_charge(closed[:60], 5e-3) is Charge.SUBCOOLED_LIQUID
