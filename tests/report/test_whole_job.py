"""A whole job, step by step to its report, killed and reopened after every single thing done."""

from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from co2vent.guidance import job_items as items
from co2vent.guidance.job import Job, JobEventKind, JobHead, Observed, Person, StepState
from co2vent.guidance.procedure import Gate, Step, StepKind
from co2vent.guidance.procedure_text import default_procedure_text
from co2vent.report.from_files import report_facts
from co2vent.report.html import report_html
from co2vent.store.job_file import JobFile
from co2vent.store.job_record import read_job

BEGAN = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)


class Worker:
    """Does a job thing by thing; after each the program is killed and the folder opened again."""

    def __init__(self, folder: Path, simulated: bool) -> None:
        self.folder = folder
        self.now = BEGAN
        head = JobHead(section="Strainer 4", people=(Person(name="Ada Berg"),), simulated=simulated)
        self.file = JobFile.create(folder, head, default_procedure_text(), BEGAN)
        self.kills = 0

    @property
    def job(self) -> Job:
        return self.file.job

    def do(self, *things: items.JobItem | Observed) -> None:
        for thing in things:
            events = self.file.advance(thing, self.now)
            assert all(event.kind is not JobEventKind.REFUSED for event in events), events

    def at_s(self) -> float:
        self.now += timedelta(seconds=1)
        return self.file.at_s(self.now)

    def killed(self) -> None:
        """Nothing is closed; another process opens the folder."""
        before = self.job
        self.file = JobFile.open(self.folder, "Ada Berg", self.now)
        self.kills += 1
        assert self.job.steps == before.steps
        assert self.job.confirmed == before.confirmed
        assert self.job.isolation == before.isolation
        assert self.job.written == before.written
        assert self.job.tests == before.tests

    def step(self) -> None:
        step = self.job.step
        assert step is not None
        by = "Ada Berg"
        if step.kind is StepKind.ISOLATE:
            for valve in ("V-101", "V-102"):
                self.do(items.Isolate(self.at_s(), valve, "shut", "7", "7", by))
                self.killed()
        if step.kind is StepKind.RETURN:
            for valve in ("V-102", "V-101"):
                self.do(items.Isolate(self.at_s(), valve, "open", "", "", by))
        for confirmation in step.confirmations:
            self.do(items.Confirm(self.at_s(), confirmation.id, by))
            self.killed()
        for entry in step.entries:
            self.do(items.WriteDown(self.at_s(), entry.id, "as it was", by))
            self.killed()
        for test, kind, verdict in (
            ("standing", StepKind.STANDING_TEST, "tight"),
            ("vacuum", StepKind.VACUUM_TEST, "tight_and_dry"),
        ):
            if step.kind is kind:
                self.do(items.TestResult(self.at_s(), test, verdict, "as judged", by))
                self.killed()
        self.read(step)
        self.do(items.Done(self.at_s(), by))
        self.killed()

    def read(self, step: Step) -> None:
        """Let readings meet all gates of the step, as they must after the last kill."""
        wanted = {
            gate.quantity: gate.to_si(_good(gate))
            for gate in step.gates
            if not gate.quantity.endswith(("tight", "passed"))
        }
        longest = max((gate.steady_s for gate in step.gates), default=0.0)
        self.do(Observed(self.at_s(), False, wanted))
        self.now += timedelta(seconds=longest)
        self.do(Observed(self.at_s(), False, wanted))


def _good(gate: Gate) -> float:
    return gate.at_least if gate.at_least is not None else gate.at_most or 0.0


def test_a_bad_value_read_off_is_in_the_report(tmp_path: Path) -> None:
    worker = Worker(tmp_path / "job", simulated=False)
    while worker.job.step is not None and worker.job.step.id != "protect":
        worker.step()
    worker.do(*(items.Typed(worker.at_s(), "room_air", value, "Bo") for value in (400.0, 4e4)))
    html = report_html(report_facts(tmp_path / "job", worker.now))
    assert "Read off by Bo: 40000 ppm (does not meet: CO2 in the air at most 5000 ppm" in html


@pytest.mark.parametrize("simulated", [False, True])
def test_a_whole_job_survives_a_kill_after_everything_and_is_reported(
    tmp_path: Path, simulated: bool
) -> None:
    worker = Worker(tmp_path / "job", simulated)
    while worker.job.step is not None:
        worker.step()
    assert worker.kills > 40
    assert {record.state for record in worker.job.steps} == {StepState.DONE}
    if not simulated:
        worker.file.sign("Ada Berg", "technician", worker.now)
    record = read_job(tmp_path / "job")
    assert record.problem == ""
    html = report_html(report_facts(tmp_path / "job", worker.now))
    assert "21 of 21 ended, 0 of them left out" in html
    assert record.chain.digest in html
    assert ("SIMULATED PRACTICE" in html) is simulated
    assert ("never signed" in html) is simulated
    assert "NOT CONFIRMED" not in html
