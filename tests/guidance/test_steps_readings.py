"""What gates read from the session's view: right numbers, nothing where nothing is measured."""

from dataclasses import replace

import pytest

from co2vent.guidance import job_items as items
from co2vent.guidance.events import Prompt, Severity
from co2vent.guidance.job import Job, JobHead, StepRecord, StepState
from co2vent.guidance.job_readings import observe
from co2vent.guidance.procedure import Procedure
from co2vent.guidance.procedure_text import default_procedure_text, read_procedure
from co2vent.guidance.session import View
from co2vent.guidance.steps import advance_job, begin_job
from co2vent.inference.outcome import Charge, HoldAssessment, Instruction
from co2vent.readings.reading import Reading, Setup

PROCEDURE = read_procedure(default_procedure_text())
AMBIENT_PA = 101_325.0
TRIPLE_PA = 517_950.0  # Span and Wagner 1996


def hold(
    number: int, charge: Charge, start_pa: float = 6.2e5, closed: bool = True
) -> HoldAssessment:
    return HoldAssessment(
        number=number,
        start_s=100.0 * number,
        end_s=100.0 * number + 90.0,
        start_pressure_pa=start_pa,
        end_pressure_pa=start_pa + 1e4,
        charge=charge,
        closed=closed,
    )


def view(*holds: HoldAssessment, latest: Reading | None = None, **changes: object) -> View:
    base = View(
        setup=Setup(ambient_pressure_pa=AMBIENT_PA),
        latest=latest,
        prompt=Prompt(Instruction.WAIT, "", "", Severity.CALM, 0.0),
        stale=False,
        age_limit_s=2.0,
        vent_open=False,
        triple_point_pa=TRIPLE_PA,
        stop_pressure_pa=TRIPLE_PA + 1.03e5,
        margin_pa=None if latest is None else latest.pressure_pa - TRIPLE_PA,
        rate_pa_per_s=None,
        seconds_to_stop=None,
        holds=holds,
        running_hold=holds[-1] if holds and not holds[-1].closed else None,
        vapor_only_since_s=50.0,
        mass_vented_kg=None,
        minimum_pressure_pa=None,
        seconds_below_triple_point=0.0,
        seconds_below_triple_point_before_vapor_only=0.0,
        events=(),
        readings=1,
        rejections=0,
    )
    return replace(base, **changes)  # type: ignore[arg-type]


READING = Reading(500.0, 8.0e5, line_temperature_k=240.0, room_co2_ppm=600.0)


def test_measured_quantities_are_there_and_others_are_absent() -> None:
    values = observe(view(latest=READING), 7.0).values
    assert values["pressure"] == pytest.approx(8.0e5 - AMBIENT_PA)
    assert values["pressure_above_triple_point"] == pytest.approx(8.0e5 - TRIPLE_PA)
    assert values["pressure_above_stop"] == pytest.approx(8.0e5 - TRIPLE_PA - 1.03e5)
    assert values["room_co2"] == 600.0
    for absent in ("upper_temperature", "vacuum", "metal_above_minimum", "zero_offset"):
        assert absent not in values, "no reading is never a zero"


def test_the_clamp_is_compared_with_saturation_at_the_reading() -> None:
    """CoolProp: CO2 saturates at 227.1 K at 8 bar."""
    from CoolProp.CoolProp import PropsSI

    expected = 240.0 - PropsSI("T", "P", 8.0e5, "Q", 0, "CO2")
    above = observe(view(latest=READING), 7.0).values["line_above_saturation"]
    assert above == pytest.approx(expected, abs=0.1)


def test_above_the_critical_pressure_there_is_no_saturation_and_no_failure() -> None:
    for pressure_pa in (90e5, 73.8e5, 0.0, -5e3):
        odd = READING._replace(pressure_pa=pressure_pa)
        assert "line_above_saturation" not in observe(view(latest=odd), 7.0).values


def test_without_a_reading_or_with_a_stale_one_it_is_stale() -> None:
    assert observe(view(), 7.0).stale
    assert observe(view(latest=READING, stale=True), 7.0).stale


VAPOR, BOTH, UNKNOWN = Charge.VAPOR_ONLY, Charge.TWO_PHASE, Charge.UNDETERMINED


@pytest.mark.parametrize(
    ("charges", "running", "count"),
    [
        ((VAPOR, VAPOR), False, 2),
        ((VAPOR, BOTH, VAPOR), False, 1),
        ((VAPOR, VAPOR, BOTH), False, 0),
        ((VAPOR, VAPOR, UNKNOWN), True, 2),  # a hold that has just begun says nothing yet
        ((VAPOR, VAPOR, UNKNOWN), False, 0),  # one that ended without showing it does
        ((VAPOR, VAPOR, BOTH), True, 0),
        ((), False, 0),
    ],
)
def test_vapour_only_holds_in_a_row(charges: tuple[Charge, ...], running: bool, count: int) -> None:
    holds = [hold(number, charge) for number, charge in enumerate(charges)]
    if running:
        holds[-1] = replace(holds[-1], closed=False)
    assert observe(view(*holds, latest=READING), 7.0).values["vapor_only_holds"] == count


@pytest.mark.parametrize(
    ("start_pa", "charge", "since_s", "cleared"),
    [
        (2.0e5, VAPOR, 50.0, 1.0),
        (6.2e5, VAPOR, 50.0, 0.0),  # above the triple point there is no dry ice to rule out
        (2.0e5, Charge.SOLID_PRESENT, 50.0, 0.0),
        (2.0e5, UNKNOWN, 50.0, 0.0),
        (2.0e5, VAPOR, None, 0.0),
    ],
)
def test_dry_ice_is_ruled_out_only_by_a_low_hold_that_stands(
    start_pa: float, charge: Charge, since_s: float | None, cleared: float
) -> None:
    seen = view(hold(3, charge, start_pa), latest=READING, vapor_only_since_s=since_s)
    assert observe(seen, 7.0).values["dry_ice_cleared"] == cleared


def test_no_hold_counts_once_the_verdict_was_taken_back() -> None:
    """A section that was filled again, or whose metal was found at saturation."""
    holds = (hold(1, VAPOR), hold(2, VAPOR))
    values = observe(view(*holds, latest=READING, vapor_only_since_s=None), 7.0).values
    assert values["vapor_only_holds"] == 0.0


@pytest.mark.parametrize(
    "changes",
    [
        {"end_s": 700.0},  # more than five minutes without showing it
        {"instruction": Instruction.CHECK_ISOLATION},
        {"instruction": Instruction.CHECK_GAUGE},
    ],
)
def test_a_running_hold_that_is_old_or_suspicious_speaks_against_those_before(
    changes: dict[str, object],
) -> None:
    running = replace(hold(3, UNKNOWN, closed=False), **changes)  # type: ignore[arg-type]
    seen = view(hold(1, VAPOR), hold(2, VAPOR), running, latest=READING)
    assert observe(seen, 7.0).values["vapor_only_holds"] == 0.0


def test_going_back_leaves_out_the_holds_from_before() -> None:
    """After a hiss at the cover the low hold that was held before proves nothing."""
    job = at(PROCEDURE, "open")
    job, _events = advance_job(job, items.GoBack(600.0, "dry_ice_hold", "a hiss", "Ada"))
    low = hold(3, VAPOR, 2.0e5)  # ended at 390 s of the log, 110 s before its newest reading

    def met(newest_end_s: float) -> bool:
        seen = view(replace(low, end_s=newest_end_s), latest=READING)
        after, _ = advance_job(job, observe(seen, 601.0))
        after, _ = advance_job(after, observe(seen, 605.0))
        assert after.step is not None
        return after.gate_met(next(g for g in after.step.gates if g.id == "dry_ice_bound"))

    assert not met(390.0)
    assert met(500.0)  # a hold that runs on now


def at(procedure: Procedure, step: str) -> Job:
    """A job whose earlier steps are done."""
    job = begin_job(procedure, JobHead())
    index = [one.id for one in procedure.steps].index(step)
    done = [StepRecord(StepState.DONE, 0.0, 0.0, "Ada")] * index
    waiting = [StepRecord()] * (len(procedure.steps) - index - 1)
    records = (*done, StepRecord(StepState.RUNNING, 100.0), *waiting)
    return replace(job, steps=records, current=index)


@pytest.mark.parametrize(
    ("gauge_bar", "line_k", "is_open", "told"),
    [
        (0.01, 280.0, False, True),
        (0.01, 280.0, None, True),
        (0.01, None, False, True),
        (0.01, 280.0, True, False),  # an open vent shows no rise
        (0.01, 195.2, False, False),  # snow at one atmosphere is at 194.7 K (ITS-90)
        (-0.95, 280.0, False, False),  # a dead transmitter
    ],
)
def test_zero_counts_only_with_the_vent_shut_and_no_metal_as_cold_as_snow(
    gauge_bar, line_k, is_open, told
):
    latest = Reading(10.0, AMBIENT_PA + gauge_bar * 1e5, line_k, vent_open=is_open)
    values = observe(view(latest=latest), 10.0).values
    assert ("pressure_shut" in values) == told
    assert "pressure" in values
