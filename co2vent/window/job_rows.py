"""Which rows a step of the job has, and those that are left when every step has ended."""

from co2vent.guidance.job import Job
from co2vent.guidance.procedure import VENTING_CONFIRMATIONS, Step, StepKind
from co2vent.window.job_gate_rows import GateRow, TestRow
from co2vent.window.job_parts import ConfirmRow, EntryRow, Row, ValveRow, WordsRow
from co2vent.window.words import translate

TESTS_OF = {StepKind.STANDING_TEST: "standing", StepKind.VACUUM_TEST: "vacuum"}


def asks_anew(step: Step | None, job: Job) -> bool:
    """Say whether a step that vents waits for points that were confirmed in a step before it."""
    return step is not None and step.kind is StepKind.VENT and bool(job.venting_lacks)


def rows_of(step: Step, job: Job) -> list[Row]:
    """Return the rows of a step that runs."""
    rows: list[Row] = [WordsRow(translate("Job", "Do"), step.do, caution=False)]
    if step.cautions:
        rows.append(WordsRow(translate("Job", "Caution"), step.cautions, caution=True))
    if asks_anew(step, job):  # else nothing on the page could answer what is missing
        own = {one.id for one in step.confirmations}
        points = {one.id: one for each in job.procedure.steps for one in each.confirmations}
        rows += [ConfirmRow(points[one]) for one in VENTING_CONFIRMATIONS if one not in own]
    rows += [ConfirmRow(one) for one in step.confirmations]
    rows += [GateRow(one) for one in step.gates]
    rows += [EntryRow(one) for one in step.entries]
    if step.kind is StepKind.ISOLATE:
        rows.insert(2, ValveRow())
    if step.kind is StepKind.RETURN:
        rows.insert(2, ValveRow("open"))
    if step.kind in TESTS_OF:
        rows.append(TestRow(TESTS_OF[step.kind]))
    if step.goes_wrong:
        title = translate("Job", "What goes wrong here")
        rows.append(WordsRow(title, step.goes_wrong, caution=False))
    return rows


def rows_at_end(job: Job) -> list[Row]:
    """Say what is left to do when every step has ended."""
    sign = translate("Job", "Sign: the one who did the work, and the supervisor.")
    if job.simulated:
        sign = translate("Job", "This was practice: it is reported as it is and never signed.")
    left = (
        translate("Job", "Report: writes the record as PDF into the job's folder. Read it."),
        translate("Job", "Note: adds what is missing. Step back: opens the last step again."),
        sign,
        translate("Job", "Put away: closes the job. “Open a job” brings it back."),
    )
    return [WordsRow(translate("Job", "What is left to do"), left, caution=False)]
