"""The rows of a job's step: confirmations, gates, entries and valves, each large enough to touch.

Rows know no file and no clock: they emit items with time 0, whoever keeps the job stamps them.
"""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from co2vent.guidance import job_items as items
from co2vent.guidance.job import Job
from co2vent.guidance.procedure import Confirmation, Entry, Gate
from co2vent.window.sentences import spoken
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette
from co2vent.window.words import translate

MET, OPEN = "✓", "○"  # told apart by shape, not by colour


class WrapLabel(QLabel):
    """Plain text that wraps; what people typed is never taken for markup."""

    def __init__(self, text: str = "", parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setWordWrap(True)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)


class Row(QWidget):
    """A row of a step. `acted` carries a job item with time 0."""

    acted = Signal(object)

    def show_job(self, job: Job) -> None:
        """Show what the job knows of this row."""

    def set_look(self, palette: Palette, sizes: Sizes) -> None:
        """Take theme and sizes: everything to touch is at least a target high."""
        for part in self.findChildren(QWidget):
            if isinstance(part, QPushButton | QLineEdit):
                part.setMinimumHeight(sizes.target_px)
            font = part.font()
            font.setPixelSize(sizes.text_px)
            part.setFont(font)
        del palette


class WordsRow(Row):
    """What to do, a caution, or what goes wrong there."""

    def __init__(self, title: str, texts: tuple[str, ...], caution: bool) -> None:
        super().__init__()
        self._caution = caution
        self.words = WrapLabel("\n".join([title, *(f"• {spoken(text)}" for text in texts)]), self)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.words)

    def set_look(self, palette: Palette, sizes: Sizes) -> None:
        """Cautions stand on the ground of a caution."""
        super().set_look(palette, sizes)
        if self._caution:
            band = palette.caution
            self.words.setStyleSheet(f"background: {band.ground}; color: {band.ink}; padding: 6px;")


class ConfirmRow(Row):
    """One key over the whole width: touch to confirm, touch again to take it back with a reason."""

    withdraw_asked = Signal(str)

    def __init__(self, confirmation: Confirmation) -> None:
        super().__init__()
        self.confirmation = confirmation
        self._given = False
        self._palette: Palette | None = None
        self.key = QPushButton(self)
        self.text = spoken(confirmation.text)
        self.key.setAccessibleName(self.text)
        self.words = WrapLabel(self.text, self.key)
        self.words.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        inner = QHBoxLayout(self.key)
        inner.addWidget(self.words)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.key)
        self.key.clicked.connect(self._touch)

    def _touch(self) -> None:
        if self._given:
            self.withdraw_asked.emit(self.confirmation.id)
        else:
            self.acted.emit(items.Confirm(0.0, self.confirmation.id, ""))

    def show_job(self, job: Job) -> None:
        """Show whether and by whom it is confirmed."""
        given = job.confirmed.get(self.confirmation.id)
        mark = f"{OPEN}  " if given is None else f"{MET}  "
        who = "" if given is None else f"  ({given[1]})"
        self.words.setText(f"{mark}{self.text}{who}")
        self._given = given is not None
        self._paint()

    def _paint(self) -> None:
        """A confirmed key is the inverse of the page."""
        if self._palette is None:
            return
        calm, do = self._palette.key, self._palette.do
        ground = do.ground if self._given else calm
        ink = do.ink if self._given else self._palette.key_ink
        self.key.setStyleSheet(f"QPushButton {{ background: {ground}; text-align: left; }}")
        self.words.setStyleSheet(f"background: transparent; color: {ink};")

    def set_look(self, palette: Palette, sizes: Sizes) -> None:
        """Two lines fit into the key."""
        super().set_look(palette, sizes)
        self._palette = palette
        self._paint()
        lines = 1 + len(self.text) // 60
        self.key.setMinimumHeight(max(sizes.target_px, round(sizes.text_px * (1.6 * lines + 0.8))))


class GateRow(Row):
    """A condition with its number, what is read now, and a field where a person may read it off."""

    def __init__(self, gate: Gate) -> None:
        super().__init__()
        self.gate = gate
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

    def _touch(self) -> None:
        try:
            value = float(self.field.text().strip().replace(",", "."))
        except ValueError:
            self.field.setFocus()
            return
        self.acted.emit(items.Typed(0.0, self.gate.id, value, ""))

    def show_job(self, job: Job) -> None:
        """Show whether it is met, and the value behind it."""
        record = job.gates.get(self.gate.id)
        met = job.gate_met(self.gate)
        unit = f" {self.gate.unit_words}".rstrip()
        now = translate("Job", "no fresh reading")
        doubted = record is not None and record.false_since_s is not None
        if record is not None and record.value is not None and not doubted:
            now = f"{record.value:.4g}{unit}"
        if record is not None and record.typed_by:
            now += f" ({record.typed_by})"
        late = ""
        if record is not None and record.timed_out and not met:
            late = f"\n{spoken(self.gate.on_timeout)}"
        self.state.setText(f"{MET if met else OPEN}  {self.condition}: {now}{late}")


class EntryRow(Row):
    """Something to write down."""

    def __init__(self, entry: Entry) -> None:
        super().__init__()
        self.entry = entry
        self.text = spoken(entry.text)
        self.label = WrapLabel(self.text, self)
        self.field = QLineEdit(self)
        self.field.setMaxLength(items.MAX_NOTE)
        self.field.setAccessibleName(self.text)
        self.key = QPushButton(translate("Job", "Keep"), self)
        line = QHBoxLayout()
        line.addWidget(self.field, 1)
        line.addWidget(self.key)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.label)
        column.addLayout(line)
        self.key.clicked.connect(self._touch)
        self.field.returnPressed.connect(self._touch)

    def _touch(self) -> None:
        if self.field.text().strip():
            self.acted.emit(items.WriteDown(0.0, self.entry.id, self.field.text().strip(), ""))
            self.field.clear()

    def show_job(self, job: Job) -> None:
        """Show the newest value; a further one amends it."""
        written = job.written.get(self.entry.id, ())
        mark = f"{MET}  " if written else f"{OPEN}  "
        needed = "" if self.entry.required else translate("Job", " (if there is any)")
        value = f": {written[-1].value}" if written else ""
        self.label.setText(f"{mark}{self.text}{needed}{value}")


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
        line = QHBoxLayout()
        line.addWidget(self.moved)
        line.addWidget(self.key)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(line)
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


class ValveRow(Row):
    """The isolation list: valve, lock and tag, and what is on the list already."""

    def __init__(self, position: str = "shut") -> None:
        super().__init__()
        self._position = position
        self.valve, self.lock, self.tag = (QLineEdit(self) for _ in range(3))
        for field, words in (
            (self.valve, translate("Job", "Valve")),
            (self.lock, translate("Job", "Lock")),
            (self.tag, translate("Job", "Tag")),
        ):
            field.setPlaceholderText(words)
            field.setAccessibleName(words)
        self.key = QPushButton(
            translate("Job", "Shut, locked, tagged")
            if position == "shut"
            else translate("Job", "Open again"),
            self,
        )
        self.listed = WrapLabel("", self)
        line = QHBoxLayout()
        line.addWidget(self.valve, 3)
        line.addWidget(self.lock, 1)
        line.addWidget(self.tag, 1)
        line.addWidget(self.key)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(line)
        column.addWidget(self.listed)
        self.key.clicked.connect(self._touch)

    def _touch(self) -> None:
        fields = (self.valve, self.lock, self.tag)
        valve, lock, tag = (field.text().strip() for field in fields)
        if not valve:
            self.valve.setFocus()
            return
        self.acted.emit(items.Isolate(0.0, valve, self._position, lock, tag, ""))
        for field in fields:
            field.clear()

    def show_job(self, job: Job) -> None:
        """List the valves."""
        positions = {"shut": translate("Job", "shut"), "open": translate("Job", "open")}
        lines = [
            f"{MET}  {one.valve}: {positions.get(one.position, one.position)}"
            + (translate("Job", ", lock {name}").format(name=one.lock) if one.lock else "")
            + (translate("Job", ", tag {name}").format(name=one.tag) if one.tag else "")
            for one in job.isolation
        ]
        self.listed.setText("\n".join(lines))
