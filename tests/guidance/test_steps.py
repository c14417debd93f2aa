"""The job's steps: order, gates, the five confirmations, skipping, going back."""

import re
from dataclasses import replace
from pathlib import Path
from random import Random

import pytest

from co2vent.guidance import job_items as items
from co2vent.guidance.job import Job, JobEventKind, JobHead, Observed, StepState
from co2vent.guidance.procedure import VENTING_CONFIRMATIONS, StepKind
from co2vent.guidance.procedure_text import default_procedure_text, read_procedure
from co2vent.guidance.steps import advance_job, begin_job

PROCEDURE = read_procedure(default_procedure_text())


def feed(job: Job, *steps: items.JobItem | Observed) -> Job:
    for item in steps:
        job, events = advance_job(job, item)
        assert all(event.kind is not JobEventKind.REFUSED for event in events), events
    return job


def refused(job: Job, item: items.JobItem) -> str:
    after, events = advance_job(job, item)
    assert [event.kind for event in events] == [JobEventKind.REFUSED]
    assert (after.steps, after.gates, after.confirmed) == (job.steps, job.gates, job.confirmed)
    return events[0].text


def at_protect() -> Job:
    """Return a job that stands at the five points."""
    return feed(
        begin_job(PROCEDURE, JobHead(section="Strainer 4")),
        items.WriteDown(1, "warm_parts", "defrost fuse F12 out", "Ada"),
        items.Done(2, "Ada"),
        items.Isolate(3, "V-101", "shut", "lock 7", "tag 7", "Ada"),
        items.Confirm(4, "isolation_list_complete", "Ada"),
        items.Confirm(5, "relief_path_open", "Ada"),
        items.Done(6, "Ada"),
        items.Skip(7, "proved on the morning round", "Ada"),
    )


def at_vent() -> Job:
    job = feed(at_protect(), *(items.Confirm(8, one, "Bo") for one in VENTING_CONFIRMATIONS))
    return feed(
        job,
        items.Typed(9, "room_air", 600.0, "Bo"),
        items.Done(10, "Ada"),
        items.Skip(11, "gauge is fixed to the section", "Ada"),
    )


@pytest.mark.parametrize("lacking", VENTING_CONFIRMATIONS)
def test_venting_waits_for_each_of_the_five(lacking: str) -> None:
    given = [one for one in VENTING_CONFIRMATIONS if one != lacking]
    job = feed(
        at_protect(),
        *(items.Confirm(8, one, "Bo") for one in given),
        items.Typed(9, "room_air", 600.0, "Bo"),
    )
    assert "not yet" in refused(job, items.Done(10, "Ada"))
    assert "can't be skipped" in refused(job, items.Skip(10, "no time for it", "Ada"))


def test_taking_one_of_the_five_back_while_venting_says_close_the_vent() -> None:
    _, events = advance_job(at_vent(), items.Withdraw(20, "second_person", "Bo", "called away"))
    assert [event.kind for event in events] == [JobEventKind.ACCEPTED, JobEventKind.CAUTION]
    assert "Close the vent" in events[1].text


def test_with_one_of_the_five_gone_the_vent_step_does_not_end() -> None:
    job = feed(
        at_vent(),
        items.Withdraw(20, "second_person", "Bo", "called away"),
        Observed(21, False, {"pressure_above_stop": 1e5}),
    )
    assert "Second person" in refused(job, items.Done(22, "Ada"))


def test_a_skip_needs_a_reason_and_keeps_it() -> None:
    job = begin_job(PROCEDURE, JobHead())
    assert refused(job, items.Skip(1, " x", "Ada")) == "give a reason"
    job = feed(job, items.Skip(1, "done by the day shift", "Ada"))
    assert job.steps[0].state is StepState.SKIPPED
    assert job.steps[0].reason == "done by the day shift"


def test_a_gate_is_met_only_after_its_steady_time_of_fresh_readings() -> None:
    job = feed(at_protect(), *(items.Confirm(8, one, "Bo") for one in VENTING_CONFIRMATIONS))
    good = {"room_co2": 450.0}
    job = feed(job, Observed(10, False, good), Observed(39, False, good))
    assert "CO2 in the air" in refused(job, items.Done(39, "Ada"))
    job = feed(job, Observed(39.5, True, good), Observed(41, False, good))
    assert "CO2 in the air" in refused(job, items.Done(41, "Ada")), "a stale moment starts it again"
    job = feed(job, Observed(71.5, False, good), items.Done(72, "Ada"))
    assert job.steps[3].state is StepState.DONE


@pytest.mark.parametrize("bad", [Observed(60, True, {}), Observed(60, False, {"room_co2": 9e3})])
def test_stale_or_contrary_readings_lose_a_gate(bad: Observed) -> None:
    good = {"room_co2": 450.0}
    job = feed(at_protect(), *(items.Confirm(8, one, "Bo") for one in VENTING_CONFIRMATIONS))
    job = feed(job, Observed(10, False, good), Observed(45, False, good), bad)
    assert "CO2 in the air" in refused(job, items.Done(61, "Ada"))


def test_time_alone_passes_no_gate_it_warns_once() -> None:
    job = at_protect()
    job, first = advance_job(job, Observed(1900, False, {"room_co2": 9e3}))
    job, second = advance_job(job, Observed(9e5, False, {"room_co2": 9e3}))
    assert [event.kind for event in first] == [JobEventKind.ACCEPTED, JobEventKind.CAUTION]
    assert not second
    assert "CO2 in the air" in refused(job, items.Done(9e5, "Ada"))


def test_a_value_that_is_no_number_meets_nothing() -> None:
    gate = next(gate for step in PROCEDURE.steps for gate in step.gates if gate.id == "room_air")
    assert not gate.allows(float("nan"))
    with pytest.raises(Exception, match="wrong value"):
        items.item_from_plain(
            "typed", {"at_s": 1, "id": "room_air", "value": float("nan"), "by": "A"}
        )


def test_pressure_can_not_be_typed_where_readings_must_decide() -> None:
    assert "must come from readings" in refused(
        at_vent(), items.Typed(20, "above_stop", 1.0, "Ada")
    )


def test_going_back_voids_what_was_shown_later_and_keeps_the_history() -> None:
    job = feed(at_vent(), Observed(20, False, {"pressure_above_stop": 1e5}), items.Done(21, "Ada"))
    assert job.step is not None
    assert job.step.id == "hold_test"
    job = feed(job, items.GoBack(30, "vent", "supply valve passed", "Ada"))
    assert job.step is not None
    assert job.step.id == "vent"
    assert "pressure above the stop" in refused(job, items.Done(31, "Ada"))
    assert any("supply valve passed" in event.text for event in job.history)


def test_a_standing_test_verdict_meets_its_gate_and_a_later_one_takes_it_away() -> None:
    index = next(i for i, s in enumerate(PROCEDURE.steps) if s.kind is StepKind.STANDING_TEST)
    job = at_vent()
    records = list(job.steps)
    records[index] = records[job.current]
    job = Job(job.head, PROCEDURE, tuple(records), index)
    result = items.TestResult(40, "standing", "tight", "0 to 3 mbar/h", "Ada")
    job = feed(job, items.WriteDown(39, "test_pressure", "52 bar g nitrogen", "Ada"), result)
    assert job.lacks() == ()
    job = feed(job, Observed(41, True, {}))
    assert job.lacks() == (), "the verdict outlives the logger"
    job = feed(job, items.TestResult(50, "standing", "leaking", "9 to 12 mbar/h", "Ada"))
    assert job.lacks() != ()


def test_a_job_with_simulated_readings_is_simulated_for_good() -> None:
    job = feed(at_vent(), items.LogAdded(20, "a.csv", "0" * 64, 5, True))
    assert job.simulated
    assert feed(job, items.LogAdded(21, "b.csv", "0" * 64, 5, False)).simulated


def test_simulated_readings_at_the_gates_make_the_job_practice_without_any_log() -> None:
    job, events = advance_job(at_vent(), Observed(20, False, {}, simulated=True))
    assert job.simulated
    kept = [event.item for event in events if event.item is not None]
    assert feed(at_vent(), *kept).simulated, "and it stays so after reopening"


def test_going_back_before_the_five_points_asks_for_them_again() -> None:
    job = feed(at_vent(), items.GoBack(30, "isolate", "wrong valve locked", "Ada"))
    assert len(job.venting_lacks) == 5
    job = feed(at_vent(), items.GoBack(30, "connect_zero", "hose changed", "Ada"))
    assert job.venting_lacks == ()


def test_refeeding_the_accepted_items_gives_the_same_job() -> None:
    job = feed(at_vent(), Observed(20, False, {"pressure_above_stop": 1e5}), items.Done(21, "Ada"))
    again = begin_job(PROCEDURE, JobHead(section="Strainer 4"))
    for event in job.history:
        if event.item is not None:
            kind, plain = items.item_to_plain(event.item)
            again = feed(again, items.item_from_plain(kind, plain))
    assert again.steps == job.steps
    assert again.confirmed == job.confirmed
    assert {k: v.met_s for k, v in again.gates.items()} == {
        k: v.met_s for k, v in job.gates.items()
    }


def test_the_program_never_says_safe_to_open() -> None:
    """Also in the code that words the job; the loader's own refusal is the one exception."""
    package = Path(items.__file__).parent
    for path in [*package.glob("job*.py"), package / "steps.py", package / "job_steps.toml"]:
        assert not re.search(r"safe\s+to\s+open", path.read_text(encoding="utf-8"), re.IGNORECASE)


# What a section's job must warn of at the least: words to look for in the cautions and the points.
CAUTIONS = {
    "breathing zone": "CO2 meter at the breathing zone",
    "low spots": "and at low spots",
    "oxygen alarm is not": "an oxygen alarm is not a CO2 alarm",
    "second person": "second person",
    "tied down": "hose restrained",
    "bonded": "hose bonded",
    "air intakes, pits, doors": "outlet away from intakes, pits and doors",
    "face, hand and ear": "protection",
    "out of line with plug": "out of line with plug or cover",
    "no flame": "no flame",
    "never strike a plug": "never strike a plug",
    "never shut a section on snow": "never shut a section on snow",
    "no repressurising of steel": "cold steel",
    "check-valve pockets": "cavities that the gauge can't see",
    "relief path must not be isolated": "relief path",
    "nitrogen asphyxiation": "nitrogen",
    "springs under covers": "stored force of springs",
}


@pytest.mark.parametrize("words", CAUTIONS)
def test_every_caution_is_in_the_steps(words: str) -> None:
    said = " | ".join(
        text.lower()
        for step in PROCEDURE.steps
        for text in (*step.cautions, *(item.text for item in step.confirmations))
    )
    assert words in said, CAUTIONS[words]


def test_every_gate_has_a_number_a_unit_a_timeout_and_a_source() -> None:
    gates = [gate for step in PROCEDURE.steps for gate in step.gates]
    assert len(gates) >= 15
    for gate in gates:
        assert (gate.at_least is None) != (gate.at_most is None)
        assert gate.unit
        assert gate.timeout_s > 0
        assert gate.source
        assert gate.on_timeout


def standing_at(kind: StepKind) -> Job:
    """Return a job whose running step is the first of `kind`, all before it done."""
    job = at_vent()
    index = next(i for i, s in enumerate(PROCEDURE.steps) if s.kind is kind)
    done = replace(job.steps[0], state=StepState.DONE)
    records = [done] * index + [job.steps[job.current]] + list(job.steps[index + 1 :])
    return replace(job, steps=tuple(records), current=index)


def test_a_valve_still_shut_keeps_the_section_out_of_service() -> None:
    job = feed(
        standing_at(StepKind.RETURN),
        items.Confirm(90, "locks_off", "Ada"),
        items.Confirm(91, "relief_reopened", "Ada"),
    )
    assert "still shut on the isolation list: V-101" in refused(job, items.Done(92, "Ada"))
    job = feed(job, items.Isolate(93, "V-101", "open", "", "", "Ada"), items.Done(94, "Ada"))
    assert job.valves_shut == ()


def test_what_was_left_out_is_named_when_the_joint_is_next() -> None:
    job = standing_at(StepKind.OPEN)
    before = job.current - 1
    records = list(job.steps)
    records[before] = replace(records[before], state=StepState.RUNNING)
    records[6] = replace(records[6], state=StepState.SKIPPED, reason="no second hold done")
    job = replace(job, steps=tuple(records), current=before)
    _, events = advance_job(job, items.Skip(80, "warm already", "Ada"))
    assert [event.kind for event in events] == [JobEventKind.ACCEPTED, JobEventKind.CAUTION]
    assert "no second hold done" in events[1].text


def test_after_a_long_stop_the_five_points_are_asked_again() -> None:
    job = at_vent()
    assert feed(job, items.Reopened(600, "Ada")).venting_lacks == ()
    assert len(feed(job, items.Reopened(8 + 5 * 3600, "Ada")).venting_lacks) == 5


def test_no_order_of_doings_reaches_the_vent_without_the_five() -> None:
    """400 seeded random ways through the job: the vent begins only with all five confirmed."""
    good = {"room_co2": 450.0, "zero_offset": 1000.0}
    ids = [item.id for step in PROCEDURE.steps for item in step.confirmations]
    reached = 0
    for seed in range(400):
        chance = Random(seed)
        job = at_protect()
        for at_s in range(100):
            doings: list[tuple[int, items.JobItem | Observed]] = [
                (6, items.Done(at_s, "A")),
                (3, items.Skip(at_s, "because", "A")),
                (6, items.Confirm(at_s, chance.choice(VENTING_CONFIRMATIONS), "A")),
                (3, items.Confirm(at_s, chance.choice(ids), "A")),
                (2, items.Withdraw(at_s, chance.choice(ids), "A", "not so")),
                (3, Observed(at_s * 40.0, chance.random() < 0.1, good)),
                (3, items.Typed(at_s, chance.choice(["room_air", "zero"]), 0.05, "A")),
                (1, items.GoBack(at_s, "isolate", "once more", "A")),
                (1, items.Reopened(at_s * 200.0, "A")),
            ]
            weights, choices = zip(*doings, strict=True)
            before = job.current
            job, _ = advance_job(job, chance.choices(choices, weights)[0])
            if job.current > before and job.step is not None and job.step.kind is StepKind.VENT:
                assert job.venting_lacks == ()
                reached += 1
    assert reached > 20, "else the search has shown nothing"


def gate_of(job: Job, identity: str) -> tuple[bool, float | None]:
    gate = next(gate for step in PROCEDURE.steps for gate in step.gates if gate.id == identity)
    record = job.gates.get(identity)
    return job.gate_met(gate), None if record is None else record.value


def replayed(job: Job) -> Job:
    """Return the job that its accepted items give, as a file would keep them."""
    again = begin_job(PROCEDURE, job.head)
    for event in job.history:
        if event.item is not None:
            plain = items.item_to_plain(event.item)
            again, _ = advance_job(again, items.item_from_plain(*plain), stored=True)
    return again


def test_the_newest_value_read_off_counts_and_is_kept_good_or_bad() -> None:
    job = feed(at_protect(), *(items.Confirm(8, one, "Bo") for one in VENTING_CONFIRMATIONS))
    job = feed(job, items.Typed(9, "room_air", 400.0, "Bo"))
    assert gate_of(job, "room_air") == (True, 400.0)
    job, events = advance_job(job, items.Typed(10, "room_air", 40_000.0, "Bo"))
    assert [event.kind for event in events] == [JobEventKind.ACCEPTED, JobEventKind.CAUTION]
    assert "40000 ppm (does not meet" in events[0].text
    assert "40000 ppm does not meet" in events[1].text
    assert gate_of(job, "room_air") == (False, 40_000.0)
    assert "CO2 in the air" in refused(job, items.Done(11, "Ada"))
    assert gate_of(replayed(job), "room_air") == (False, 40_000.0)
    job = feed(job, items.Typed(12, "room_air", 500.0, "Bo"), items.Done(13, "Ada"))
    assert replayed(job).steps == job.steps


def test_a_bad_value_read_off_takes_a_gate_back_that_readings_had_met() -> None:
    good = {"room_co2": 450.0}
    job = feed(at_protect(), Observed(10, False, good), Observed(45, False, good))
    assert gate_of(job, "room_air") == (True, 450.0)
    job = feed(job, items.Typed(46, "room_air", 6000.0, "Bo"))
    assert gate_of(job, "room_air") == (False, 6000.0)
    job = feed(job, Observed(47, False, {}), Observed(48, False, good))
    assert gate_of(job, "room_air") == (False, 6000.0), "it stands and is shown"
    job = feed(job, Observed(70, False, good))
    assert gate_of(job, "room_air") == (False, 6000.0), "the steady time begins anew"
    assert gate_of(feed(job, Observed(78, False, good)), "room_air") == (True, 450.0)


def test_a_zero_that_was_told_before_does_not_answer_one_that_was_read_off() -> None:
    job = standing_at(StepKind.CONNECT)
    told = [Observed(at_s, False, {"zero_offset": 2000.0}) for at_s in (60.0, 70.0, 80.0)]
    job = feed(job, told[0])
    assert gate_of(job, "zero")[0]
    job = feed(job, items.Typed(61, "zero", 0.4, "Bo"), *told[1:])
    assert gate_of(job, "zero") == (False, 0.4)


@pytest.mark.parametrize(
    ("kind", "identity", "value", "unit"),
    [
        (None, "room_air", -50.0, "ppm"),
        (None, "room_air", 1.2e6, "ppm"),
        (None, "room_air", float("nan"), "ppm"),
        (None, "room_air", float("-inf"), "ppm"),
        (StepKind.CONNECT, "zero", -0.5, "bar"),
        ("warm", "metal_warm", 40_000.0, "°C"),
        ("warm", "metal_warm", -300.0, "°C"),
    ],
)
def test_what_no_instrument_shows_is_refused_in_words(
    kind: StepKind | str | None, identity: str, value: float, unit: str
) -> None:
    job = at_protect()
    if isinstance(kind, StepKind):
        job = standing_at(kind)
    elif kind:
        index = next(i for i, step in enumerate(PROCEDURE.steps) if step.id == kind)
        records = (*job.steps[:index], job.steps[job.current], *job.steps[index + 1 :])
        job = replace(job, steps=records, current=index)
    said = refused(job, items.Typed(60, identity, value, "Bo"))
    assert "is no reading of" in said
    assert said.count(unit) == 3, "the value and both ends"
    assert not gate_of(job, identity)[0]


def test_every_quantity_says_what_is_possible() -> None:
    from co2vent.guidance.procedure import POSSIBLE, QUANTITIES

    assert POSSIBLE.keys() == QUANTITIES.keys()
    for step in PROCEDURE.steps:
        for gate in step.gates:
            limit = gate.at_most if gate.at_most is not None else gate.at_least
            assert limit is not None
            assert gate.possible(limit), gate.id


def test_nobody_works_behind_a_joint_that_was_skipped() -> None:
    job = standing_at(StepKind.OPEN)
    skip = items.Skip(80, "it was open already", "Ada")
    assert "can't be skipped" in refused(job, skip)
    own = {step.id: replace(step, skippable=True) for step in PROCEDURE.steps}
    older = replace(job, procedure=replace(PROCEDURE, steps=tuple(own.values())))
    assert "can't be skipped" in refused(older, skip), "whatever a site's steps said"
    after, events = advance_job(older, skip, stored=True)
    assert events[0].kind is JobEventKind.ACCEPTED
    assert after.steps[job.current].state is StepState.SKIPPED, "what was done then is told"


def test_a_value_that_an_older_version_took_reads_as_it_was() -> None:
    job, events = advance_job(at_protect(), items.Typed(9, "room_air", -50.0, "Bo"), stored=True)
    assert events[0].kind is JobEventKind.ACCEPTED
    assert gate_of(job, "room_air") == (True, -50.0)
