"""A job in the window: keeps its folder, shows it, and lets live readings decide its gates.

For the window that holds it: `observe(view)` with each new view of the vent, `attach_log(path)`
when a recording ends, `back` when the person leaves, `would_lose` and `ask_before` before it ends.
"""

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QFileDialog, QStackedWidget, QWidget

from co2vent.errors import Co2ventError, RefusedInputError
from co2vent.guidance.job import JobEvent, JobEventKind, JobHead
from co2vent.guidance.job_items import JobItem
from co2vent.guidance.job_readings import observe
from co2vent.guidance.job_tests import TestOptions, judge_test, refuse_simulated
from co2vent.guidance.procedure_rules import cautions
from co2vent.guidance.procedure_text import MAX_BYTES, default_procedure_text
from co2vent.guidance.session import View
from co2vent.readings.log_file import read_log
from co2vent.store.job_file import JobFile
from co2vent.store.job_record import STEPS_FILE, folder_name
from co2vent.window.confirm_panel import ConfirmPanel
from co2vent.window.job_page import JobPage
from co2vent.window.job_start import JobStart
from co2vent.window.look import Look
from co2vent.window.words import translate

REOPENED_BY = "the window"  # nobody has said a name yet
LOOK_S = 1.0  # gates are looked at once a second; a view comes with every reading


def utc_now() -> datetime:
    """Return the time of the wall clock with the zone of this place."""
    return datetime.now(UTC).astimezone()


class JobDesk(QStackedWidget):
    """The form to begin or open a job, then the job's page."""

    back = Signal()

    def __init__(
        self,
        look: Look,
        folder: Path | None = None,
        parent: QWidget | None = None,
        clock: Callable[[], datetime] = utc_now,
    ) -> None:
        super().__init__(parent)
        self._look = look
        self._clock = clock
        self._looked_s = -LOOK_S
        self._said = ""
        self.shows_vent = True  # False where the window says above it what the vent does
        self.job_file: JobFile | None = None
        self.start = JobStart(look, folder or Path.home() / "co2vent-jobs", self)
        self.page = JobPage(look, self)
        question = translate("Job", "Typed words are not kept yet. End without them?")
        self.confirm = ConfirmPanel(self._stay, question, parent=self)
        QShortcut(QKeySequence("Esc"), self.confirm).activated.connect(self._stay)
        for part in (self.start, self.page, self.confirm):
            self.addWidget(part)
        self.start.back.connect(self.back)
        self.start.begun.connect(self.begin)
        self.start.opened.connect(self.open_job)
        self.page.back.connect(self.back)
        self.page.put_away.connect(self.put_away)
        self.page.acted.connect(self.act)
        self.page.report_asked.connect(self.write_report)
        self.page.sign_asked.connect(self.sign)
        self.page.judge_asked.connect(self.ask_judge)

    def begin(self, head: JobHead, parent: str, steps_file: str = "", plan: object = None) -> None:
        """Begin a job in a new folder in `parent`."""
        now = self._clock()
        try:
            steps = _steps_text(steps_file)
            folder = Path(parent or ".") / folder_name(head.section, now)
            known_plan = plan if isinstance(plan, dict) else None
            name = Path(steps_file).name or STEPS_FILE
            self._take(JobFile.create(folder, head, steps, now, known_plan, name), head)
        except Co2ventError as error:
            self.start.say(str(error))

    def open_job(self, folder: str) -> None:
        """Open a job again where it stopped."""
        try:
            job_file = JobFile.open(Path(folder), REOPENED_BY, self._clock())
            self._take(job_file, job_file.job.head)
        except Co2ventError as error:
            self.start.say(str(error))

    def _take(self, job_file: JobFile, head: JobHead) -> None:
        self.job_file = job_file
        self._looked_s = -LOOK_S  # this job's time begins anew, whatever another had reached
        self.page.forget()
        if head.people and not self.page.person.text():
            self.page.person.setText(head.people[0].name)
        self.page.show_job(job_file.job)
        if less := cautions(job_file.job.procedure):
            title = translate("Job", "The steps of this site ask less than those of the program.")
            self.page.say(title, *less)
        self.setCurrentWidget(self.page)
        self.page.apply_look()
        self.page.focus_step()

    @property
    def would_lose(self) -> bool:
        """Whether words were typed that the job does not have yet."""
        return self.job_file is not None and self.page.would_lose

    def ask_before(self, action: Callable[[], object]) -> None:
        """Ask whether typed words may be lost; do `action` if so."""
        self.confirm.ask(action)
        self.apply_look()
        self.setCurrentWidget(self.confirm)
        self.confirm.setFocus()

    def _stay(self) -> None:
        self.setCurrentWidget(self.page)

    def put_away(self) -> None:
        """Close the job, and show the form for another; ask where typed words would be lost."""
        if self.would_lose:
            self.ask_before(self._put_away)
        else:
            self._put_away()

    def _put_away(self) -> None:
        self.job_file = None
        self.page.offer.hide()
        self.page.forget()
        self.page.person.clear()
        self.start.say("")
        self.setCurrentWidget(self.start)

    def act(self, item: JobItem) -> None:
        """Stamp an item with the job's time, keep it, show what it did."""
        if self.job_file is None:
            return
        now = self._clock()
        stamped = replace(item, at_s=self.job_file.at_s(now))
        self._guarded(lambda job_file: job_file.advance(stamped, now))

    def observe(self, view: View) -> None:
        """Let the newest readings meet or lose the running step's gates, once a second."""
        if self.job_file is None:
            return
        if self.shows_vent:
            self.page.vent.show_view(view, self._look.units)
        now = self._clock()
        at_s = self.job_file.at_s(now)
        if at_s - self._looked_s < LOOK_S:
            return
        self._looked_s = at_s
        self._guarded(lambda job_file: job_file.advance(observe(view, at_s), now), asked=False)

    def attach_log(self, path: Path) -> None:
        """Add a recording that has ended to the job."""
        if self.job_file is None:
            return
        now = self._clock()

        def attach(job_file: JobFile) -> tuple[JobEvent, ...]:
            log = read_log(path)
            refuse_simulated(job_file.job, log.setup)
            return job_file.attach_log(path, len(log.readings), log.setup.simulated, now)

        self._guarded(attach, asked=False)

    def ask_judge(self, test: str, gauge_seen_moving: bool) -> None:
        """Ask for the log of a test and judge it."""
        name, _ = QFileDialog.getOpenFileName(
            self, translate("Job", "Log of the test"), "", translate("Job", "Readings (*.csv)")
        )
        if name:
            self.judge(test, Path(name), gauge_seen_moving)

    def judge(self, test: str, path: Path, gauge_seen_moving: bool = False) -> None:
        """Judge a log as a `standing` or `vacuum` test and keep verdict and log in the job."""
        now = self._clock()
        options = TestOptions(gauge_seen_moving=gauge_seen_moving)

        def judged(job_file: JobFile) -> tuple[JobEvent, ...]:
            log = read_log(path)
            refuse_simulated(job_file.job, log.setup)
            readings = list(log.readings.readings())
            by = self.page.person.text().strip() or "unnamed"
            at_s = job_file.at_s(now)
            result = judge_test(test, readings, log.setup, options, at_s=at_s, by=by, log=path.name)
            added = job_file.attach_log(path, len(log.readings), log.setup.simulated, now)
            return added + job_file.advance(result, now)

        self._guarded(judged)

    def sign(self, name: str, role: str) -> None:
        """Sign everything so far; practice is refused."""
        now = self._clock()

        def signed(job_file: JobFile) -> tuple[JobEvent, ...]:
            signature = job_file.sign(name, role, now)
            self._said = translate("Job", "Signed, digest ") + signature.over[:16]
            self.page.line_kept()
            return ()

        self._guarded(signed)

    def write_report(self) -> None:
        """Write the report as PDF into the job's folder, named by the digest it shows."""
        now = self._clock()

        def report(job_file: JobFile) -> tuple[JobEvent, ...]:
            from co2vent.report.from_files import report_facts
            from co2vent.report.pdf import write_pdf

            folder = job_file.record.folder
            path = folder / f"report-{job_file.digest[:12]}.pdf"
            write_pdf(report_facts(folder, now), path)
            self._said = translate("Job", "Report: ") + str(path)
            return ()

        self._guarded(report)

    def _guarded(
        self, action: Callable[[JobFile], tuple[JobEvent, ...]], *, asked: bool = True
    ) -> None:
        """Do `action`, show the job after it, and say what was refused or cautioned.

        `asked`: a person did this, so its answer takes the place of the one before, also where
        there is nothing to say. What comes by itself speaks only where it has something to say.
        """
        if self.job_file is None:
            return
        self._said = ""
        try:
            events = action(self.job_file)
        except Co2ventError as error:
            self.page.show_job(self.job_file.job)
            self.page.say(error.text)
            return
        self.page.show_job(self.job_file.job)
        loud = [event.text for event in events if event.kind is not JobEventKind.ACCEPTED]
        if asked or loud:
            self.page.say(*loud, self._said)

    def apply_look(self) -> None:
        """Take theme and sizes."""
        self.start.apply_look()
        self.page.apply_look()
        self.confirm.set_theme(self._look.palette)
        self.confirm.set_sizes(self._look.sizes(self))


def _steps_text(path: str) -> str:
    if not path:
        return default_procedure_text()
    try:
        with Path(path).open("rb") as file:
            return file.read(MAX_BYTES + 1).decode("utf-8")
    except OSError as error:
        raise RefusedInputError(f"{path}: {error.strerror}; check the name") from None
    except UnicodeDecodeError:
        raise RefusedInputError(f"{path}: not UTF-8 text; save it as UTF-8") from None
