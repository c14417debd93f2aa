"""The rows of a job's step that a number or a test decides: gates, and closed tests."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QPushButton, QVBoxLayout

from co2vent.guidance import job_items as items
from co2vent.guidance.job import GateRecord, Job
from co2vent.guidance.job_gates import TESTED, TESTS
from co2vent.guidance.procedure import Gate
from co2vent.readings.cells import to_number
from co2vent.window.job_parts import MET, OPEN, Row, WrapLabel
from co2vent.window.sentences import spoken
from co2vent.window.words import translate


class GateRow(Row):
    """A condition with its number, what is read now, and a field where a person may read it off."""

    def __init__(self, gate: Gate) -> None:
        super().__init__()
        self.gate = gate
        self.wants = gate.condition
        self.condition = spoken(gate.condition)
        self.state = WrapLabel(self.condition, self)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.state, 1)
        self.field = QLineEdit(self)
        self.key = QPushButton(translate("Job", "Read off"), self)
        self.field.setPlaceholderText(gate.unit_words)
        self.field.setAccessibleName(self.condition)
        self.field.setMaximumWidth(160)
        row.addWidget(self.field)
        row.addWidget(self.key)
        for part in (self.field, self.key):
            part.setVisible(gate.by_hand)
        self.key.clicked.connect(self._touch)
        self.field.returnPressed.connect(self._touch)

    def fields(self) -> tuple[QLineEdit, ...]:
        """Return the field of the value."""
        return (self.field,)

    def asks(self, job: Job, lack: str) -> str:
        """Say the condition with what is read now: a number tells how far it still is."""
        del lack
        return f"{self.condition}: {self._now(job, job.gates.get(self.gate.id))}"

    def _touch(self) -> None:
        value = to_number(self.typed)
        if value is None:
            self.said.emit(translate("Job", "Write a plain number, such as 450 or 0.05."))
            self.field.setFocus()
            return
        self.acted.emit(items.Typed(0.0, self.gate.id, value, ""))

    def show_job(self, job: Job) -> None:
        """Show whether it is met, and the value behind it."""
        record = job.gates.get(self.gate.id)
        met = job.gate_met(self.gate)
        late = ""
        if record is not None and record.timed_out and not met:
            late = f"\n{spoken(self.gate.on_timeout)}"
        now = self._now(job, record)
        self.state.setText(f"{MET if met else OPEN}  {self.condition}: {now}{late}")

    def _now(self, job: Job, record: GateRecord | None) -> str:
        """Return what is known of it now, in words."""
        if self.gate.quantity in TESTED:
            # a verdict, and no reading: one before the last step back says nothing any more
            tests = {quantity: test for test, (quantity, _) in TESTS.items()}
            verdicts = [one.verdict for one in job.tests if one.test == tests[self.gate.quantity]]
            if record is None or not verdicts:
                return translate("Job", "not judged yet")
            return verdict_words(verdicts[-1])
        now: str = translate("Job", "no fresh reading")
        if record is None:
            return now
        if record.value is not None and record.false_since_s is None:
            unit = f" {self.gate.unit_words}".rstrip()
            now = f"{record.value:.7g}{unit}" if record.typed_by else f"{record.value:.4g}{unit}"
        return f"{now} ({record.typed_by})" if record.typed_by else now


class TestRow(Row):
    """A test of a closed section: choose its log, see the verdict."""

    __test__ = False  # not a test case, whatever its name says to a test collector
    judge_asked = Signal(str, bool)

    def __init__(self, test: str) -> None:
        super().__init__()
        self.test = test
        self.moved = QPushButton(translate("Job", "I saw the gauge move"), self)
        self.moved.setCheckable(True)
        self.key = QPushButton(translate("Job", "Judge a log of this test"), self)
        self.verdict = WrapLabel("", self)
        column = QVBoxLayout(self)  # side by side the keys' words have no room in some languages
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.moved)
        column.addWidget(self.key)
        column.addWidget(self.verdict)
        self.key.clicked.connect(self._touch)

    def _touch(self) -> None:
        self.judge_asked.emit(self.test, self.moved.isChecked())

    def show_job(self, job: Job) -> None:
        """Show the newest verdict of this test."""
        results = [one for one in job.tests if one.test == self.test]
        if results:
            words = verdict_words(results[-1].verdict)
            self.verdict.setText(f"{words}. {spoken(results[-1].reason)}")


def verdict_words(verdict: str) -> str:
    """Return the verdict of a test of a closed section in words."""
    words = {
        "tight": translate("Job", "Tight"),
        "leaking": translate("Job", "Leaking"),
        "not_known_yet": translate("Job", "Not known yet"),
        "tight_and_dry": translate("Job", "Tight and dry"),
        "leak": translate("Job", "Leak"),
        "moisture": translate("Job", "Moisture"),
        "outgassing": translate("Job", "Outgassing"),
    }
    return words.get(verdict, verdict.replace("_", " ").capitalize())
