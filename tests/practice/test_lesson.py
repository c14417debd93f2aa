"""A class session: pause and predict, reveal, change one thing and run again beside the first."""

import pytest

from co2vent.errors import RefusedInputError
from co2vent.inference.outcome import Charge
from co2vent.practice.exercises import exercise, exercises, random_scenario
from co2vent.practice.lesson import Lesson, Stage, handout_lines


def test_the_trace_waits_while_the_class_predicts() -> None:
    lesson = Lesson.of(exercise("more-liquid"))
    lesson.step_to(60.0)
    lesson.predict(Charge.VAPOR_ONLY, "it rose less than the last one")
    assert lesson.stage is Stage.PREDICTING
    assert lesson.step_to(120.0) == []
    lesson.set_valve(1.0)
    assert lesson.section.valve == 0.0
    lesson.resume()
    assert len(lesson.step_to(120.0)) == 60


def test_the_reveal_sets_prediction_program_and_truth_side_by_side() -> None:
    lesson = Lesson.of(exercise("more-liquid"))
    lesson.step_to(60.0)
    lesson.predict(Charge.VAPOR_ONLY)
    lesson.resume()
    lesson.step_to(480.0)
    lesson.predict(Charge.TWO_PHASE)
    shown = lesson.reveal(Charge.TWO_PHASE)
    assert [one.right for one in shown.predictions] == [False, True]
    assert shown.true_charge is Charge.TWO_PHASE
    assert shown.score.right
    assert shown.truth.liquid_kg > 0.5
    assert shown.program.readings == len(shown.rows)
    assert shown.program.setup.simulated
    assert lesson.step_to(600.0) == []


def test_one_change_is_run_beside_the_first() -> None:
    first = Lesson.of(exercise("more-liquid"))
    first.step_to(300.0)
    second = first.again({"section.insulated": True})
    second.step_to(300.0)
    assert len(second.earlier) == 1
    assert second.earlier[0][-1, 0] == 300.0
    assert second.section.rows[-1, 5] < first.section.rows[-1, 5]
    with pytest.raises(RefusedInputError, match="to change"):
        first.again({"section.colour": 1.0})


def test_a_random_section_can_be_taught_with_too() -> None:
    lesson = Lesson(random_scenario(9), seed=9)
    lesson.step_to(30.0)
    assert lesson.reveal().true_charge in set(Charge)


def test_every_handout_says_that_it_is_practice_and_has_its_question() -> None:
    for one in exercises():
        lines = handout_lines(one)
        assert lines[0].startswith("SIMULATED PRACTICE")
        assert any(one.debrief in line for line in lines)
