"""The job on the screen: the step that is on, what it waits for, and the way to the next.

One frozen job in (`show_job`), items out (`acted`, with time 0 and the person's name). The page
keeps nothing but what is being typed, and that until the job has taken it.
"""

from dataclasses import replace

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import (
    QBoxLayout,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from co2vent.guidance import job_items as items
from co2vent.guidance.job import Job, JobEventKind
from co2vent.guidance.procedure import Step
from co2vent.window.job_foot import FootLine
from co2vent.window.job_gate_rows import TestRow
from co2vent.window.job_offer import JobOffer
from co2vent.window.job_parts import ConfirmRow, Row, WrapLabel
from co2vent.window.job_rows import rows_at_end, rows_of
from co2vent.window.job_step_list import StepList
from co2vent.window.job_vent_strip import VentStrip
from co2vent.window.keys import Key
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
        self._rows: list[Row] = []
        self.banner = WrapLabel("", self)
        self.vent = VentStrip(self)
        self.offer = JobOffer(self)
        self.title = WrapLabel("", self)
        self.person = QLineEdit(self)
        self.person.setMaxLength(200)
        self.content = QWidget()
        self.content.setObjectName("content")
        self._column = QVBoxLayout(self.content)
        self._column.setSpacing(8)
        self.scroller = QScrollArea(self)
        self.scroller.setWidgetResizable(True)
        self.scroller.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.scroller.setWidget(self.content)
        self.steps = StepList(self)
        self.answer = WrapLabel("", self)  # to the last thing done; readings don't wipe it away
        self.answer.hide()
        self.lacks = WrapLabel("", self)
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
        self.keys = {
            name: Key(drawing, words, shortcut, action, self, listens=name != "done")
            for name, drawing, words, shortcut, action in (
                ("leave", "back", translate("Job", "Leave"), "Esc", self._leave),
                ("close", "open_log", translate("Job", "Put away"), "", self.put_away.emit),
                ("note", "note", translate("Job", "Note"), "", lambda: self._ask("note")),
                ("back", "previous", translate("Job", "Step back"), "", lambda: self._ask("back")),
                ("skip", "next", translate("Job", "Skip"), "", lambda: self._ask("skip")),
                ("report", "export", translate("Job", "Report"), "", self.report_asked.emit),
                ("sign", "sign", translate("Job", "Sign"), "", lambda: self._ask("sign")),
                ("done", "acknowledge", translate("Job", "Step done"), "Ctrl+↵", self._done),
            )
        }
        for stroke in ("Ctrl+Return", "Ctrl+Enter"):  # Enter alone keeps what is typed
            done = QShortcut(QKeySequence(stroke), self)
            done.setAutoRepeat(False)
            done.activated.connect(self.keys["done"].click)
        head = QHBoxLayout()
        head.addWidget(self.title, 1)
        head.addWidget(self.person)
        self._body = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._body.addWidget(self.scroller, 7)
        self._body.addWidget(self.steps, 3)
        self._key_grid = QGridLayout()
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 6, 8, 6)
        column.addWidget(self.banner)
        column.addWidget(self.vent)
        column.addWidget(self.offer)
        column.addLayout(head)
        column.addLayout(self._body, 1)
        column.addWidget(self.answer)
        column.addWidget(self.lacks)
        column.addWidget(self.line)
        column.addLayout(self._key_grid)

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
        if shown != self._step_shown:
            self._step_shown = shown
            self._show_step(step, job)
        for row in self._rows:
            row.show_job(job)
        self.steps.show_job(job)
        lacks = job.lacks()
        self.keys["done"].setEnabled(step is not None and not lacks)
        self.keys["skip"].setEnabled(step is not None and step.skippable)
        self.keys["back"].setEnabled(job.current > 0)
        self.keys["sign"].setEnabled(not job.simulated)
        waits = translate("Job", "Waits for: ") + "; ".join(map(spoken, lacks))
        self.lacks.setText(waits if lacks else "")

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
        return bool(self.line.typed) or any(row.typed for row in self._rows)

    def focus_step(self) -> None:
        """Give the keyboard to the step: arrows scroll it, Tab goes to its first row."""
        if self.person.text().strip():
            self.scroller.setFocus()
        else:
            self.person.setFocus()

    def _show_step(self, step: Step | None, job: Job) -> None:
        self._rows = rows_at_end(job) if step is None else rows_of(step)
        while (item := self._column.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        for row in self._rows:
            row.acted.connect(lambda item, row=row: self._keep_row(item, row))
            row.said.connect(self.say)
            if isinstance(row, ConfirmRow):
                row.withdraw_asked.connect(lambda identity: self._ask(f"withdraw {identity}"))
            if isinstance(row, TestRow):
                row.judge_asked.connect(self.judge_asked)
            self._column.addWidget(row)
        self._column.addStretch(1)
        self.scroller.verticalScrollBar().setValue(0)
        before: QWidget = self.scroller
        for row in self._rows:
            for part in row.findChildren(QWidget):
                if part.focusPolicy() & Qt.FocusPolicy.TabFocus:
                    self.setTabOrder(before, part)
                    before = part
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
        typed = [[field.text() for field in row.fields()] for row in self._rows]
        place = self.scroller.verticalScrollBar().value()
        self._step_shown = ""
        self.show_job(self._job)
        for row, texts in zip(self._rows, typed, strict=True):
            for field, text in zip(row.fields(), texts, strict=True):
                field.setText(text)
        self.scroller.verticalScrollBar().setValue(place)

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
        left = next((row.typed for row in self._rows if row.typed), "")
        if left:
            words = translate("Job", "Typed and not kept yet: “{words}”. Keep it, or clear it.")
            self.say(words.format(words=left))
        return not left

    def _done(self) -> None:
        if self._all_kept():
            self._stamp(items.Done(0.0, ""))

    def _leave(self) -> None:
        """Put the line at the foot away; with nothing there, leave the page."""
        if self.line.isVisible():
            self.line.put_away()
            self.scroller.setFocus()
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
        plain: tuple[QLabel | QLineEdit, ...] = (self.answer, self.lacks, self.person, self.line)
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
        self.content.setStyleSheet(
            f"QWidget#content, QLabel {{ background: {palette.page}; color: {palette.ink}; }}"
        )
        self.steps.set_look(palette, sizes)
        self.scroller.setStyleSheet(
            f"QScrollBar:vertical {{ width: {round(sizes.target_px * 0.6)}px; }}"
        )
        self.vent.set_look(palette, sizes)
        self.offer.set_look(palette, sizes)
        for row in self._rows:
            row.set_look(palette, sizes)
        # in one row the last key, the way on, has two places: its words are the longest
        columns = 4 if sizes.portrait else len(self.keys) + 1
        for place, (name, key) in enumerate(self.keys.items()):
            span = 2 if name == "done" and not sizes.portrait else 1
            self._key_grid.addWidget(key, place // columns, place % columns, 1, span)
            self._key_grid.setColumnStretch(place, int(place < columns))
            key.set_theme(palette)
            key.set_sizes(sizes)
        self._key_grid.setColumnStretch(len(self.keys), int(not sizes.portrait))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()
