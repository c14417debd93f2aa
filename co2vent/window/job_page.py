"""The job on the screen: the step that is on, what it waits for, and the way to the next.

One frozen job in (`show_job`), items out (`acted`, with time 0 and the person's name). The page
keeps nothing but what is being typed, and that until the job has taken it.
"""

from dataclasses import replace

from PySide6.QtCore import QEvent, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import (
    QBoxLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from co2vent.guidance import job_items as items
from co2vent.guidance.job import Job, JobEventKind
from co2vent.guidance.procedure import VENTING_CONFIRMATIONS, Step
from co2vent.window.job_foot import FootLine
from co2vent.window.job_gate_rows import TestRow
from co2vent.window.job_keys import JobKeys
from co2vent.window.job_offer import JobOffer
from co2vent.window.job_parts import ConfirmRow, Row, WrapLabel
from co2vent.window.job_rows import asks_anew, rows_at_end, rows_of
from co2vent.window.job_step_list import StepList
from co2vent.window.job_step_view import StepView
from co2vent.window.job_vent_strip import VentStrip
from co2vent.window.job_waits import JobWaits, row_of
from co2vent.window.look import Look
from co2vent.window.sentences import spoken
from co2vent.window.words import anew, translate

Item = (
    items.Confirm
    | items.Withdraw
    | items.WriteDown
    | items.Isolate
    | items.Typed
    | items.Done
    | items.Skip
    | items.GoBack
    | items.Note
)


class JobPage(QWidget):
    """Guides one job. `acted` carries a job item whose time whoever keeps the job fills in."""

    acted = Signal(object)
    report_asked = Signal()
    judge_asked = Signal(str, bool)  # standing or vacuum; the gauge was seen to move
    sign_asked = Signal(str, str)  # name, role
    put_away = Signal()  # close this job; it can be opened again
    back = Signal()

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self._job: Job | None = None
        self._step_shown = ""
        self._said: tuple[str, ...] = ()
        self.banner = WrapLabel("", self)
        self.vent = VentStrip(self)
        self.offer = JobOffer(self)
        self.title = WrapLabel("", self)
        self.person = QLineEdit(self)
        self.person.setMaxLength(200)
        self.step_view = StepView(self)
        self.steps = StepList(self)
        self.answer = WrapLabel("", self)  # to the last thing done; readings don't wipe it away
        self.answer.hide()
        self.waits = JobWaits(self)
        self.waits.asked.connect(self.show_missing)
        self.line = FootLine(self)
        self.line.returnPressed.connect(self._keep_line)
        self._build()
        self._speak()

    def _speak(self) -> None:
        """Put what stays on the page into the language of the screen."""
        self.banner.setText(translate("Job", "SIMULATED PRACTICE: never signed"))
        self.person.setPlaceholderText(translate("Job", "Your name"))
        self.person.setAccessibleName(translate("Job", "Your name"))
        self.line.speak()
        self.say(*self._said)

    def _build(self) -> None:
        self._key_rows = JobKeys(
            {
                "leave": self._leave,
                "close": self.put_away.emit,
                "note": lambda: self._ask("note"),
                "back": lambda: self._ask("back"),
                "skip": lambda: self._ask("skip"),
                "report": self.report_asked.emit,
                "sign": lambda: self._ask("sign"),
                "done": self._done,
            },
            self,
        )
        self.keys = self._key_rows.keys
        for stroke in ("Ctrl+Return", "Ctrl+Enter"):  # Enter alone keeps what is typed
            done = QShortcut(QKeySequence(stroke), self)
            done.setAutoRepeat(False)
            done.activated.connect(self._done_or_missing)
        head = QHBoxLayout()
        head.addWidget(self.title, 1)
        head.addWidget(self.person)
        self._body = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._body.addWidget(self.step_view, 7)
        self._body.addWidget(self.steps, 3)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 6, 8, 6)
        column.addWidget(self.banner)
        column.addWidget(self.vent)
        column.addWidget(self.offer)
        column.addLayout(head)
        column.addLayout(self._body, 1)
        column.addWidget(self.answer)
        column.addWidget(self.waits)
        column.addWidget(self.line)
        column.addLayout(self._key_rows)

    # --- what is shown ---------------------------------------------------------------------

    def show_job(self, job: Job) -> None:
        """Show the job as it is now. What is being typed stays."""
        self._job = job
        self.banner.setVisible(job.simulated)
        step = job.step
        number = min(job.current + 1, len(job.steps))
        words = translate("Job", "Every step has ended") if step is None else spoken(step.title)
        self.title.setText(f"{number}/{len(job.steps)}  {words}")
        shown = f"{step.id} {job.steps[job.current].begun_s}" if step else f"ended {job.simulated}"
        rows = self.step_view.rows
        points = {row.confirmation.id for row in rows if isinstance(row, ConfirmRow)}
        asks = asks_anew(step, job) and not points.issuperset(VENTING_CONFIRMATIONS)
        if shown != self._step_shown or asks:
            self._step_shown = shown
            self._show_step(step, job)
        for row in self.step_view.rows:
            row.show_job(job)
        self.steps.show_job(job)
        self.waits.show_job(job, self.step_view.rows)
        self.keys["done"].setEnabled(step is not None and not job.lacks())
        self.keys["skip"].setEnabled(step is not None and step.skippable)
        self.keys["back"].setEnabled(job.current > 0)
        self.keys["sign"].setEnabled(not job.simulated)

    def show_missing(self) -> None:
        """Bring the row of what is missing first into sight, and the keyboard to it."""
        lacks = () if self._job is None else self._job.lacks()
        row = row_of(lacks[0], self.step_view.rows, self._job) if lacks and self._job else None
        if row is not None:
            self.step_view.bring(row)

    def say(self, *sentences: str) -> None:
        """Answer what was done, above what the step waits for; it stays until the next touch."""
        self._said = sentences
        words = " ".join(spoken(anew(sentence)) for sentence in sentences).strip()
        self.answer.setText(words)
        self.answer.setVisible(bool(words))

    def forget(self) -> None:
        """Forget what was typed and said: another job is shown next."""
        self.say("")
        self.line.forget()
        self._step_shown = ""

    @property
    def would_lose(self) -> bool:
        """Whether words were typed that the job does not have yet."""
        return bool(self.line.typed or self.step_view.typed)

    def focus_step(self) -> None:
        """Give the keyboard to the step: arrows scroll it, Tab goes to its first row."""
        if self.person.text().strip():
            self.step_view.setFocus()
        else:
            self.person.setFocus()

    def _show_step(self, step: Step | None, job: Job) -> None:
        rows = rows_at_end(job) if step is None else rows_of(step, job)
        for row in rows:
            row.acted.connect(lambda item, row=row: self._keep_row(item, row))
            row.said.connect(self.say)
            if isinstance(row, ConfirmRow):
                row.withdraw_asked.connect(lambda identity: self._ask(f"withdraw {identity}"))
            if isinstance(row, TestRow):
                row.judge_asked.connect(self.judge_asked)
        self.step_view.show_rows(rows)
        self.apply_look()
        if self.isVisible() and not self.person.hasFocus():
            self.focus_step()

    def changeEvent(self, event: QEvent) -> None:
        """Make the step's rows again in the new language: a job stays open for days."""
        super().changeEvent(event)
        if event.type() != QEvent.Type.LanguageChange:
            return
        self._speak()
        if self._job is None or not self._step_shown:
            return
        typed, bar = self.step_view.all_typed(), self.step_view.verticalScrollBar()
        place = bar.value()
        self._step_shown = ""
        self.show_job(self._job)
        self.step_view.put_back(typed)
        bar.setValue(place)

    # --- what people do --------------------------------------------------------------------

    def _stamp(self, item: Item) -> bool:
        """Put the person's name on an item and pass it on; say whether the job has taken it."""
        if not self._named():
            return False
        before = 0 if self._job is None else len(self._job.history)
        self.acted.emit(replace(item, by=self.person.text().strip()))
        after = () if self._job is None else self._job.history[before:]  # shown by now
        return any(
            event.kind is JobEventKind.ACCEPTED and isinstance(event.item, type(item))
            for event in after
        )

    def _named(self) -> bool:
        """Say whether there is a name to act in; ask for it where there is none."""
        named = bool(self.person.text().strip())
        self.say("" if named else translate("Job", "Write your name first (top right)."))
        if not named:
            self.person.setFocus()
        return named

    def _keep_row(self, item: Item, row: Row) -> None:
        if self._stamp(item):
            row.kept()

    def _all_kept(self) -> bool:
        """Say whether nothing is typed in the step that would go with it; name it otherwise."""
        left = self.step_view.typed
        if left:
            words = translate("Job", "Typed and not kept yet: “{words}”. Keep it, or clear it.")
            self.say(words.format(words=left))
        return not left

    def _done(self) -> None:
        if self._all_kept():
            self._stamp(items.Done(0.0, ""))

    def _done_or_missing(self) -> None:
        """End the step by keyboard; where it can't be ended yet, show what it waits for."""
        if self.keys["done"].isEnabled():
            self.keys["done"].click()
        else:
            self.show_missing()

    def _leave(self) -> None:
        """Put the line at the foot away; with nothing there, leave the page."""
        if self.line.isVisible():
            self.line.put_away()
            self.step_view.setFocus()
        else:
            self.back.emit()

    def _ask(self, purpose: str) -> None:
        """Show the line at the foot for a reason, a note or a role; asking again puts it away."""
        self.say("")
        self.line.ask(purpose)

    def _keep_line(self) -> None:
        words, job = self.line.text().strip(), self._job
        purpose, _, identity = self.line.purpose.partition(" ")
        if job is None or not words or not self._named():
            return
        if purpose == "sign":
            self.sign_asked.emit(self.person.text().strip(), words)
            return
        item: Item
        if purpose == "note":
            item = items.Note(0.0, words, "")
        elif purpose == "withdraw":
            item = items.Withdraw(0.0, identity, "", words)
        elif not self._all_kept():
            return
        elif purpose == "skip":
            item = items.Skip(0.0, words, "")
        else:
            item = items.GoBack(0.0, job.procedure.steps[max(job.current - 1, 0)].id, words, "")
        if self._stamp(item):
            self.line_kept()

    def line_kept(self) -> None:
        """Put the line at the foot away: the job has what was written there."""
        self.line.kept()
        self.focus_step()

    # --- look ------------------------------------------------------------------------------

    def apply_look(self) -> None:
        """Take theme and sizes; on a tall screen the list of steps goes below."""
        sizes, palette = self._look.sizes(self), self._look.palette
        self._body.setDirection(
            QBoxLayout.Direction.TopToBottom if sizes.portrait else QBoxLayout.Direction.LeftToRight
        )
        plain: tuple[QLabel | QLineEdit, ...] = (self.answer, self.person, self.line)
        for part in plain:
            font = part.font()
            font.setPixelSize(sizes.text_px)
            font.setBold(part is self.answer)
            part.setFont(font)
        for field in (self.person, self.line):
            field.setMinimumHeight(sizes.target_px)
        self.person.setMaximumWidth(round(sizes.text_px * 14))
        for label, band in ((self.banner, palette.banner), (self.title, palette.do)):
            font = label.font()
            font.setPixelSize(round(sizes.text_px * (1.4 if label is self.title else 1.1)))
            font.setBold(True)
            label.setFont(font)
            label.setStyleSheet(f"background: {band.ground}; color: {band.ink}; padding: 6px;")
        self.steps.set_look(palette, sizes)
        self.step_view.set_look(palette, sizes)
        self.vent.set_look(palette, sizes)
        self.offer.set_look(palette, sizes)
        self.waits.set_look(palette, sizes)
        self._key_rows.set_look(palette, sizes)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()
