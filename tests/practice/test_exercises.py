"""Every exercise, run headless as a demonstrator shows it: the trace shows what it should."""

import pytest

from co2vent.errors import RefusedInputError
from co2vent.practice.exercises import (
    Exercise,
    exercise,
    exercises,
    holds,
    observe,
    random_scenario,
    scenario_named,
)


@pytest.mark.parametrize("one", exercises(), ids=lambda one: one.key)
def test_the_exercise_shows_what_it_should(one: Exercise) -> None:
    # expected observations: simulated ones of trade practice for 10 l sections from 5.2 bar g
    # (warm bare metal), with room for the sections' own shapes
    rows = one.run()
    scenario = one.scenario()
    for check in one.checks:
        found = observe(scenario, rows, check)
        assert check.low <= found <= check.high, f"{check}: found {found}"


def test_there_are_at_least_thirteen_and_each_has_all_its_texts() -> None:
    assert len(exercises()) >= 13
    for one in exercises():
        texts = (one.title, one.story, one.look_for, one.expected, one.wrong, one.debrief)
        assert all(texts)
        assert one.second_test
        assert one.change
        assert one.checks
        for name in one.change:  # every named variable can be changed
            group, key = name.split(".")
            value = one.tables.get(group, {}).get(key)
            one.scenario({} if value is None else {name: value})


def test_one_change_changes_the_trace_and_nothing_else_does() -> None:
    one = exercise("leak-by")
    first, again = one.run(), one.run()
    assert (first == again).all()
    tight = one.run({"leaks.leak_by_g_per_s": 0.0})
    leaking, quiet = holds(first)[2], holds(tight)[2]
    assert leaking[-1, 2] - leaking[0, 2] > 3.0 * (quiet[-1, 2] - quiet[0, 2])


def test_an_unknown_exercise_or_change_is_refused_with_the_names() -> None:
    with pytest.raises(RefusedInputError, match="vapour-only"):
        exercise("no-such")
    with pytest.raises(RefusedInputError, match="nothing called"):
        exercise("leak-by").scenario({"leaks.colour": 1.0})


def test_random_exercises_follow_their_seed() -> None:
    assert random_scenario(4) == random_scenario(4)
    assert random_scenario(4) != random_scenario(5)
    scenario, seed = scenario_named("random:7")
    assert seed == 7
    assert scenario.setup.simulated
    assert scenario_named("shelf")[0] == exercise("shelf").scenario()
