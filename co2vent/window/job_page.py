"""The job on the screen: the step that is on, what it waits for, and the way to the next.

One frozen job in (`show_job`), items out (`acted`, with time 0 and the person's name). The page
keeps nothing but what is being typed.
"""

from dataclasses import replace

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
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
from co2vent.guidance.job import Job, StepState
from co2vent.guidance.procedure import Step, StepKind
from co2vent.window.job_parts import (
    MET,
    OPEN,
    ConfirmRow,
    EntryRow,
    GateRow,
    Row,
    TestRow,
    ValveRow,
    WordsRow,
    WrapLabel,
)
from co2vent.window.job_vent_strip import VentStrip
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.sentences import spoken
from co2vent.window.words import translate

TESTS_OF = {StepKind.STANDING_TEST: "standing", StepKind.VACUUM_TEST: "vacuum"}
STATE_MARKS = {
    StepState.WAITING: OPEN,
    StepState.RUNNING: "▶",
    StepState.DONE: MET,
    StepState.SKIPPED: "✗",
}


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
        self._step_shown: str | None = None
        self._rows: list[Row] = []
        self._withdrawn = ""
        self._asking = ""  # what the line at the foot is for: skip, back, note, withdraw or sign
        self.banner = WrapLabel(translate("Job", "SIMULATED PRACTICE: never signed"), self)
        self.vent = VentStrip(self)
        self.title = WrapLabel("", self)
        self.person = QLineEdit(self)
        self.person.setMaxLength(200)
        self.person.setPlaceholderText(translate("Job", "Your name"))
        self.person.setAccessibleName(translate("Job", "Your name"))
        self.content = QWidget()
        self.content.setObjectName("content")
        self._column = QVBoxLayout(self.content)
        self._column.setSpacing(8)
        self.scroller = QScrollArea(self)
        self.scroller.setWidgetResizable(True)
        self.scroller.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.scroller.setWidget(self.content)
        self.steps = WrapLabel("", self)
        self.steps.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.steps_scroll = QScrollArea(self)
        self.steps_scroll.setWidgetResizable(True)
        self.steps_scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.steps_scroll.setWidget(self.steps)
        self.lacks = WrapLabel("", self)
        self.line = QLineEdit(self)
        self.line.setMaxLength(items.MAX_NOTE)
        self.line.returnPressed.connect(self._keep_line)
        self.line.hide()
        self._build()

    def _build(self) -> None:
        self.keys = {
            name: Key(drawing, words, "", action, self)
            for name, drawing, words, action in (
                ("leave", "back", translate("Job", "Leave"), self.back.emit),
                ("close", "open_log", translate("Job", "Put away"), self.put_away.emit),
                ("note", "note", translate("Job", "Note"), lambda: self._ask("note")),
                ("back", "previous", translate("Job", "Step back"), lambda: self._ask("back")),
                ("skip", "next", translate("Job", "Skip"), lambda: self._ask("skip")),
                ("report", "export", translate("Job", "Report"), self.report_asked.emit),
                ("sign", "sign", translate("Job", "Sign"), lambda: self._ask("sign")),
                ("done", "acknowledge", translate("Job", "Step done"), self._done),
            )
        }
        head = QHBoxLayout()
        head.addWidget(self.title, 1)
        head.addWidget(self.person)
        self._body = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._body.addWidget(self.scroller, 7)
        self._body.addWidget(self.steps_scroll, 3)
        self._key_grid = QGridLayout()
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 6, 8, 6)
        column.addWidget(self.banner)
        column.addWidget(self.vent)
        column.addLayout(head)
        column.addLayout(self._body, 1)
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
        shown = None if step is None else f"{step.id} {job.steps[job.current].begun_s}"
        if shown != self._step_shown:
            self._step_shown = shown
            self._show_step(step)
        for row in self._rows:
            row.show_job(job)
        self.steps.setText(
            "\n".join(
                f"{STATE_MARKS[state.state]} {place}. {spoken(one.title)}"
                + (f" ({state.reason})" if state.reason else "")
                for place, (one, state) in enumerate(
                    zip(job.procedure.steps, job.steps, strict=True), 1
                )
            )
        )
        lacks = job.lacks()
        self.keys["done"].setEnabled(step is not None and not lacks)
        self.keys["skip"].setEnabled(step is not None and step.skippable)
        self.keys["back"].setEnabled(job.current > 0)
        self.keys["sign"].setEnabled(not job.simulated)
        self.say(translate("Job", "Waits for: ") + "; ".join(map(spoken, lacks)) if lacks else "")

    def say(self, words: str) -> None:
        """Show a sentence above the keys: what is missing, or why something was refused."""
        self.lacks.setText(words)

    def _show_step(self, step: Step | None) -> None:
        self._rows = [] if step is None else _rows_of(step)
        while (item := self._column.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        for row in self._rows:
            row.acted.connect(self._stamp)
            if isinstance(row, ConfirmRow):
                row.withdraw_asked.connect(self._ask_withdraw)
            if isinstance(row, TestRow):
                row.judge_asked.connect(self.judge_asked)
            self._column.addWidget(row)
        self._column.addStretch(1)
        self.scroller.verticalScrollBar().setValue(0)
        self.apply_look()

    # --- what people do --------------------------------------------------------------------

    def _stamp(self, item: items.JobItem) -> None:
        """Put the person's name on an item and pass it on."""
        name = self.person.text().strip()
        if not name:
            self.say(translate("Job", "Write your name first (top right)."))
            self.person.setFocus()
            return
        if isinstance(
            item,
            items.Confirm
            | items.Withdraw
            | items.WriteDown
            | items.Isolate
            | items.Typed
            | items.Done
            | items.Skip
            | items.GoBack
            | items.Note,
        ):
            self.acted.emit(replace(item, by=name))

    def _done(self) -> None:
        self._stamp(items.Done(0.0, ""))

    def _ask_withdraw(self, identity: str) -> None:
        self._withdrawn = identity
        self._ask("withdraw")

    def _ask(self, purpose: str) -> None:
        """Show the line at the foot for a reason, a note or a role; asking again puts it away."""
        if self._asking == purpose and self.line.isVisible():
            self.line.hide()
            self._asking = ""
            return
        self._asking = purpose
        self.line.clear()
        self.line.setPlaceholderText(
            {
                "skip": translate("Job", "Why is this step left out? Enter keeps it"),
                "back": translate("Job", "Why one step back? Enter keeps it"),
                "withdraw": translate("Job", "Why is it taken back? Enter keeps it"),
                "note": translate("Job", "Note for the record. Enter keeps it"),
                "sign": translate("Job", "Your role, such as technician. Enter signs"),
            }[purpose]
        )
        self.line.setAccessibleName(self.line.placeholderText())
        self.line.show()
        self.line.setFocus()

    def _keep_line(self) -> None:
        words, purpose = self.line.text().strip(), self._asking
        job = self._job
        if job is None or not words:
            return
        self.line.hide()
        self._asking = ""
        if purpose == "note":
            self._stamp(items.Note(0.0, words, ""))
        elif purpose == "withdraw":
            self._stamp(items.Withdraw(0.0, self._withdrawn, "", words))
        elif purpose == "skip":
            self._stamp(items.Skip(0.0, words, ""))
        elif purpose == "back" and job.current > 0:
            earlier = job.procedure.steps[job.current - 1].id
            self._stamp(items.GoBack(0.0, earlier, words, ""))
        elif purpose == "sign":
            name = self.person.text().strip()
            if name:
                self.sign_asked.emit(name, words)
            else:
                self.say(translate("Job", "Write your name first (top right)."))

    # --- look ------------------------------------------------------------------------------

    def apply_look(self) -> None:
        """Take theme and sizes; on a tall screen the list of steps goes below."""
        sizes, palette = self._look.sizes(self), self._look.palette
        self._body.setDirection(
            QBoxLayout.Direction.TopToBottom if sizes.portrait else QBoxLayout.Direction.LeftToRight
        )
        plain: tuple[QLabel | QLineEdit, ...] = (self.steps, self.lacks, self.person, self.line)
        for part in plain:
            font = part.font()
            font.setPixelSize(sizes.text_px if part is not self.steps else sizes.small_px)
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
        self.steps.setStyleSheet(f"background: {palette.page}; color: {palette.ink};")
        bar = f"QScrollBar:vertical {{ width: {round(sizes.target_px * 0.6)}px; }}"
        for area in (self.scroller, self.steps_scroll):
            area.setStyleSheet(bar)
        self.vent.set_look(palette, sizes)
        for row in self._rows:
            row.set_look(palette, sizes)
        columns = 4 if sizes.portrait else len(self.keys)
        for place, key in enumerate(self.keys.values()):
            self._key_grid.addWidget(key, place // columns, place % columns)
            key.set_theme(palette)
            key.set_sizes(sizes)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()


def _rows_of(step: Step) -> list[Row]:
    rows: list[Row] = [WordsRow(translate("Job", "Do"), step.do, caution=False)]
    if step.cautions:
        rows.append(WordsRow(translate("Job", "Caution"), step.cautions, caution=True))
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
