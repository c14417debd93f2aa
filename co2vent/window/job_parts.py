"""The rows of a job's step: words, confirmations, entries, valves, each large enough to touch.

Rows know no file and no clock: they emit items with time 0, whoever keeps the job stamps them. What
is typed stays until the job has taken it: `kept` is called then, and only then.
"""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QBoxLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from co2vent.guidance import job_items as items
from co2vent.guidance.job import Job, entry_lack
from co2vent.guidance.procedure import Confirmation, Entry
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
    """A row of a step. `acted` carries a job item with time 0, `said` why there is none."""

    acted = Signal(object)
    said = Signal(str)
    wants = ""  # what the step lacks as long as this row is not answered, as the job says it

    def waits(self, job: Job) -> bool:
        """Say whether the step waits for this row, where `wants` alone does not tell."""
        del job
        return False

    def asks(self, job: Job, lack: str) -> str:
        """Return what is missing here, in the words of the screen."""
        del job
        return spoken(lack)

    @property
    def typed(self) -> str:
        """What is typed and not kept yet; empty: nothing is lost with this row."""
        return next((text for field in self.fields() if (text := field.text().strip())), "")

    def fields(self) -> tuple[QLineEdit, ...]:
        """Return the fields that a person types into."""
        return ()

    def kept(self) -> None:
        """Clear what was typed: the job has it."""
        for field in self.fields():
            field.clear()

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
        self.wants = confirmation.text
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


class EntryRow(Row):
    """Something to write down."""

    def __init__(self, entry: Entry) -> None:
        super().__init__()
        self.entry = entry
        self.wants = entry_lack(entry)
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

    def fields(self) -> tuple[QLineEdit, ...]:
        """Return the field of the entry."""
        return (self.field,)

    def _touch(self) -> None:
        if self.typed:
            self.acted.emit(items.WriteDown(0.0, self.entry.id, self.typed, ""))
        else:
            self.field.setFocus()

    def show_job(self, job: Job) -> None:
        """Show the newest value; a further one amends it."""
        written = job.written.get(self.entry.id, ())
        mark = f"{MET}  " if written else f"{OPEN}  "
        needed = "" if self.entry.required else translate("Job", " (if there is any)")
        value = f": {written[-1].value}" if written else ""
        self.label.setText(f"{mark}{self.text}{needed}{value}")


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
        fields = QHBoxLayout()
        fields.addWidget(self.valve, 3)
        fields.addWidget(self.lock, 1)
        fields.addWidget(self.tag, 1)
        self._line = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._line.addLayout(fields, 1)
        self._line.addWidget(self.key)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(self._line)
        column.addWidget(self.listed)
        self.key.clicked.connect(self._touch)

    def fields(self) -> tuple[QLineEdit, ...]:
        """Return the fields of one valve."""
        return self.valve, self.lock, self.tag

    def set_look(self, palette: Palette, sizes: Sizes) -> None:
        """On a tall screen the key stands under its fields."""
        super().set_look(palette, sizes)
        directions = QBoxLayout.Direction
        self._line.setDirection(
            directions.TopToBottom if sizes.portrait else directions.LeftToRight
        )

    def waits(self, job: Job) -> bool:
        """A list that is empty, or whose valves are still shut, is answered here."""
        return bool(job.valves_shut) if self._position == "open" else not job.isolation

    def _touch(self) -> None:
        valve, lock, tag = (field.text().strip() for field in self.fields())
        if not valve:
            self.valve.setFocus()
            return
        self.acted.emit(items.Isolate(0.0, valve, self._position, lock, tag, ""))

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
