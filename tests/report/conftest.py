"""A vent with two holds and a job around it, made by hand: the report is checked, not the core."""

import math
import os
import sys
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

import pytest

from co2vent.guidance import job_items as items
from co2vent.guidance.events import Event, EventKind, Prompt, Severity
from co2vent.guidance.job import GaugeRecord, JobHead, Person
from co2vent.guidance.procedure import VENTING_CONFIRMATIONS
from co2vent.guidance.procedure_text import default_procedure_text
from co2vent.guidance.session import View
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment, Instruction, LeakBy
from co2vent.readings.reading import Reading, Rejection, Setup
from co2vent.report.facts import LogFacts, ReportFacts, thin_runs
from co2vent.store.job_file import JobFile
from co2vent.store.job_record import JobRecord, read_job

if sys.platform.startswith("linux"):
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

AMBIENT_PA = 99_891.0  # 120 m, ISO 2533
TRIPLE_PA = 517_950.0  # Span and Wagner 1996
BEGAN = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)


def pressure_at(at_s: float) -> float:
    """Return an invented vent: 19 bar g, down to 5.3, a hold of 15 min, down, a hold of 5."""
    if at_s < 100:
        return 19.0e5
    if at_s < 560:
        return 19.0e5 - (at_s - 100) * 2978.0
    if at_s < 1460:
        return 5.3e5 + 0.9e5 * (1 - math.exp(-(at_s - 560) / 60))
    if at_s < 1700:
        return 6.2e5 - (at_s - 1460) * 2125.0
    return 1.1e5 + 0.3e5 * (1 - math.exp(-(at_s - 1700) / 60))


def make_readings() -> tuple[Reading, ...]:
    return tuple(
        Reading(
            float(at_s),
            pressure_at(at_s) + AMBIENT_PA,
            line_temperature_k=255.0 - 20 * math.sin(at_s / 700),
            upper_temperature_k=268.0,
            ambient_temperature_k=284.0,
            vent_open=100 <= at_s < 560 or 1460 <= at_s < 1700,
        )
        for at_s in range(2000)
    )


def make_hold(number: int, begin_s: float, end_s: float, charge: Charge) -> HoldAssessment:
    return HoldAssessment(
        number=number,
        start_s=begin_s,
        end_s=end_s,
        start_pressure_pa=pressure_at(begin_s) + AMBIENT_PA,
        end_pressure_pa=pressure_at(end_s) + AMBIENT_PA,
        charge=charge,
        leak_by=LeakBy.NONE,
        liquid_kg=Bounds(0.0, 0.0, 0.0071),
        dry_ice_kg=Bounds(0.0, 0.0, None),
        detection_limit_kg=0.004,
        slope_pa_per_s=Bounds(1.2, 0.3, 2.2),
        closed=number == 1,
        instruction=Instruction.VENT_TO_ZERO,
        reason=f"Reason of hold {number} <&> with 12 mbar/min.",
    )


def make_view(simulated: bool = False) -> View:
    readings = make_readings()
    holds = (
        make_hold(1, 560.0, 1460.0, Charge.VAPOR_ONLY),
        make_hold(2, 1700.0, 1999.0, Charge.UNDETERMINED),
    )
    return View(
        setup=Setup(
            ambient_pressure_pa=AMBIENT_PA,
            ambient_pressure_assumed=False,
            altitude_m=120.0,
            section_name="Strainer 4 <north> & south",
            section_volume_m3=0.0145,
            gauge_full_scale_pa=60e5 + AMBIENT_PA,
            gauge_span_pa=60e5,
            gauge_accuracy_fraction=0.005,
            zero_offset_pa=2000.0,
            simulated=simulated,
        ),
        latest=readings[-1],
        prompt=Prompt(Instruction.HOLD_FOR_DRY_ICE, "Hold", "because", Severity.DO, 1700.0),
        stale=False,
        age_limit_s=2.0,
        vent_open=False,
        triple_point_pa=TRIPLE_PA,
        stop_pressure_pa=TRIPLE_PA + 1.03e5,
        margin_pa=None,
        rate_pa_per_s=None,
        seconds_to_stop=None,
        holds=holds,
        running_hold=holds[-1],
        vapor_only_since_s=900.0,
        mass_vented_kg=Bounds(4.1, 3.2, 5.0),
        minimum_pressure_pa=1.1e5 + AMBIENT_PA,
        seconds_below_triple_point=320.0,
        seconds_below_triple_point_before_vapor_only=0.0,
        events=(
            Event(560.0, EventKind.HOLD_STARTED, "hold 1 starts"),
            Event(1640.0, EventKind.BELOW_TRIPLE_POINT, "below the local triple point"),
        ),
        readings=len(readings),
        rejections=1,
    )


def make_log(simulated: bool = False) -> LogFacts:
    readings = make_readings()
    return LogFacts(
        name="vent-1.csv",
        sha256="ab" * 32,
        view=make_view(simulated),
        runs=thin_runs(readings, len(readings), 1.0),
        rejections=(Rejection(88, "pressure 'OL': over range", over_range=True),),
        zero_given=True,
        coldest_clamp_k=235.0,
        most_room_co2_ppm=812.0,
    )


def make_job(folder: Path, simulated: bool = False, signed: bool = True) -> JobRecord:
    """Return a job that stands in the hold tests, with every kind of entry."""
    head = JobHead(
        site="Fish store",
        unit="Evaporator room 2",
        section="Strainer 4 <north> & south",
        drawing="P-12 rev C",
        order="Change the strainer element",
        people=(Person(name="Ada Berg", role="technician", certificate="R744-118"),),
        gauges=(GaugeRecord(name="P1", serial="SN-4471", calibrated="2026-01-15"),),
        simulated=simulated,
    )
    job_file = JobFile.create(folder, head, default_procedure_text(), BEGAN)
    for item in (
        items.WriteDown(1, "warm_parts", "defrost fuse F12 out", "Ada Berg"),
        items.Done(2, "Ada Berg"),
        items.Isolate(3, "V-101 liquid feed", "shut", "7", "7", "Ada Berg"),
        items.Confirm(4, "isolation_list_complete", "Ada Berg"),
        items.Confirm(5, "relief_path_open", "Ada Berg"),
        items.Done(6, "Ada Berg"),
        items.Skip(7, "proved on the morning round", "Ada Berg"),
        *(items.Confirm(8, one, "Bo Lund") for one in VENTING_CONFIRMATIONS),
        items.Typed(9, "room_air", 520.0, "Bo Lund"),
        items.Done(10, "Ada Berg"),
        items.Typed(11, "zero", 0.02, "Ada Berg"),
        items.Confirm(12, "gauge_moves", "Ada Berg"),
        items.Done(13, "Ada Berg"),
        items.Note(14, "=HYPERLINK(1) <script>alert(1)</script>", "Bo Lund"),
        items.TestResult(
            15,
            "standing",
            "tight",
            "Tight within the limit.",
            "Ada Berg",
            "n2.csv",
            {
                "loss_mbar_per_h": 1.25,
                "loss_mbar_per_h_lower": -3.0,
                "loss_mbar_per_h_upper": 18.0,
                "gas": "nitrogen",
            },
        ),
    ):
        job_file.advance(item, BEGAN)
    job_file.amend(2, "fuse F13, not F12", "Ada Berg", BEGAN)
    if signed and not simulated:
        job_file.sign("Ada Berg", "technician", BEGAN)
    return read_job(folder)


@pytest.fixture(autouse=True)
def _application(qapp: object) -> None:
    """One Qt application for all tests: the report takes the one that runs."""
    del qapp


@pytest.fixture
def facts() -> ReportFacts:
    return ReportFacts(made_at="2026-03-02 10:00+01:00", version="9.9", logs=(make_log(),))


@pytest.fixture
def simulated_facts() -> ReportFacts:
    return ReportFacts(made_at="2026-03-02 10:00+01:00", version="9.9", logs=(make_log(True),))


@pytest.fixture
def job_facts(tmp_path: Path) -> ReportFacts:
    return ReportFacts(
        made_at="2026-03-02 10:00+01:00",
        version="9.9",
        logs=(make_log(),),
        record=make_job(tmp_path / "job"),
    )


@pytest.fixture
def job_maker() -> Callable[..., JobRecord]:
    return make_job
