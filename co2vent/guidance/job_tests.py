"""A test's log judged for the job: the verdict and the numbers that the record keeps."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from co2vent.errors import RefusedInputError
from co2vent.guidance.job import Job
from co2vent.guidance.job_items import TestResult
from co2vent.inference.outcome import Bounds
from co2vent.inference.standing_test import standing_test
from co2vent.inference.vacuum_rise import vacuum_rise_test
from co2vent.readings.reading import Reading, Setup
from co2vent.sentence import Sentence, joined

Numbers = dict[str, float | str | None]


@dataclass(frozen=True, slots=True, kw_only=True)
class TestOptions:
    """What a person knows of a test beside its readings."""

    __test__ = False  # not a test case, whatever its name says to a test collector

    begin_s: float | None = None
    gauge_seen_moving: bool = False
    coldest_metal_k: float | None = None


def refuse_simulated(job: Job, setup: Setup) -> None:
    """Keep a simulated log, chosen by mistake, out of a real job.

    It would make the job practice, which is never signed, and nothing takes that back.

    Raises:
        RefusedInputError: the log is simulated and the job is not.
    """
    if setup.simulated and not job.simulated:
        raise RefusedInputError(
            Sentence(
                "this log is simulated and the job is not: it would become practice that can't "
                "be signed; choose the real log"
            )
        )


def judge_test(
    test: str,
    readings: Sequence[Reading],
    setup: Setup,
    options: TestOptions,
    *,
    at_s: float,
    by: str,
    log: str,
) -> TestResult:
    """Return the verdict of a `standing` or `vacuum` test as an item of the job.

    Raises:
        RefusedInputError: a rise test without vacuum readings.
    """
    if test == "standing":
        verdict, reason, numbers = _standing(readings, setup, options)
    else:
        verdict, reason, numbers = _vacuum(readings, setup, options)
    return TestResult(at_s, test, verdict, reason, by, log, numbers)


def _standing(
    readings: Sequence[Reading], setup: Setup, options: TestOptions
) -> tuple[str, str, Numbers]:
    found = standing_test(
        readings, setup, begin_s=options.begin_s, gauge_seen_moving=options.gauge_seen_moving
    )
    numbers: Numbers = {
        "gas": setup.gas.value,
        "pressure_bar_a": found.pressure_pa / 1e5,
        "minutes": (found.end_s - found.begin_s) / 60.0,
        "temperature_change_K": found.temperature_change_k,
        **_bounds("loss_mbar_per_h", found.loss_pa_per_s, 36.0),
        **_bounds("loss_g_per_h", found.loss_kg_per_s, 3.6e6),
        "allowed_mbar_per_h": found.allowed_pa_per_s * 36.0,
    }
    return found.verdict.value, joined(found.reason, found.next_step), numbers


def _vacuum(
    readings: Sequence[Reading], setup: Setup, options: TestOptions
) -> tuple[str, str, Numbers]:
    if all(reading.vacuum_pa is None for reading in readings):
        raise RefusedInputError("no vacuum column in this log; a rise test needs one")
    found = vacuum_rise_test(
        readings,
        begin_s=options.begin_s,
        coldest_metal_k=options.coldest_metal_k,
        volume_m3=setup.section_volume_m3,
    )
    numbers: Numbers = {
        "begin_Pa": found.begin_pa,
        "end_Pa": found.end_pa,
        "minutes": (found.end_s - found.begin_s) / 60.0,
        **_bounds("late_rise_Pa_per_min", found.late_pa_per_s, 60.0),
        "water_Pa": found.water_pa,
    }
    return found.verdict.value, joined(found.reason, found.next_step), numbers


def _bounds(name: str, bounds: Bounds | None, factor: float) -> Mapping[str, float | None]:
    if bounds is None:
        return {}
    return {
        f"{name}{ending}": None if value is None else value * factor
        for ending, value in (
            ("", bounds.estimate),
            ("_lower", bounds.lower),
            ("_upper", bounds.upper),
        )
    }
