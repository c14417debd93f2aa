"""Before the vent: type what is known, read what to expect."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFontDatabase,
    QFontMetricsF,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import (
    QBoxLayout,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from co2vent.errors import Co2ventError
from co2vent.planning.plan import plan_vent
from co2vent.planning.text import LINE, plan_text
from co2vent.window.commands import Command
from co2vent.window.fit_label import FitLabel
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.plan_fields import (
    FIELDS,
    converted,
    example_words,
    plan_field_words,
    plan_input_from,
)
from co2vent.window.plan_words import headline_words, said_in
from co2vent.window.text import UnitChoice
from co2vent.window.words import translate

LEAST_COLUMNS = 40  # characters of a line of the plan, however large they are
FIELD_LETTERS = 5  # that a field has room for


class PlanText(QPlainTextEdit):
    """The plan in letters of one width, which lines it up; says when its room has changed."""

    resized = Signal()

    @property
    def columns(self) -> int:
        """How many letters a line has, beside the bar that scrolls it."""
        edges = 2.0 * (self.document().documentMargin() + self.frameWidth())
        bar = self.verticalScrollBar().sizeHint().width()
        letter = QFontMetricsF(self.font()).horizontalAdvance("0")
        return int((self.width() - bar - edges) / letter) - 1

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The lines follow the width."""
        super().resizeEvent(event)
        self.resized.emit()


class PlanPage(QWidget):
    """A form on one side, the plan on the other; reckoned again after each change."""

    back = Signal()

    def __init__(
        self, look: Look, units: Command | None = None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._look = look
        # what a person typed and in which unit: turned to and fro, no digit gets lost
        self._typed: dict[str, tuple[str, str]] = {}
        self._unit = look.units.pressure
        self.fields: dict[str, QLineEdit] = {}
        self._labels: list[QLabel] = []
        form = QWidget(self)
        self._form = QGridLayout(form)
        kept = look.kept.get("plan")
        for row, name in enumerate(FIELDS):
            line = QLineEdit(form)
            if isinstance(kept, dict):
                unit = str(kept.get("unit", UnitChoice.BAR))
                self._typed[name] = (str(kept.get(name, "")), unit)
            line.textChanged.connect(lambda words, name=name: self._keep(name, words))
            label = QLabel(form)
            label.setBuddy(line)
            self._form.addWidget(label, row, 0, Qt.AlignmentFlag.AlignRight)
            self._form.addWidget(line, row, 1)
            self.fields[name] = line
            self._labels.append(label)
        self._scroll = QScrollArea(self)
        self._scroll.setWidgetResizable(True)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setWidget(form)
        self.figures = FitLabel(self, bold=True)
        self.figures.setAccessibleName(translate("Spoken", "plan"))
        self.text = PlanText(self)
        self.text.resized.connect(self.reckon)
        self.text.setReadOnly(True)
        self.text.setTabChangesFocus(True)
        self.text.setAccessibleName(translate("Spoken", "plan in full"))
        self.back_key = Key("back", translate("Key", "Back"), "Esc", self._leave, self)
        self.keys = [self.back_key]
        if units is not None:  # its key of the keyboard is the window's
            words, stroke = units.words, units.shortcut
            self.keys.append(Key(units.drawing, words, stroke, units.action, self, listens=False))
        side = QVBoxLayout()
        side.addWidget(self.figures)
        side.addWidget(self.text, 1)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._row.addWidget(self._scroll, 2)
        self._row.addLayout(side, 4)
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 8, 10, 8)
        column.addLayout(self._row, 1)
        keys = QHBoxLayout()
        for key in self.keys:
            keys.addWidget(key)
        column.addLayout(keys)
        self._show_fields()
        self.reckon()

    def typed(self) -> dict[str, str]:
        """Return what stands in the fields."""
        return {name: line.text() for name, line in self.fields.items()}

    def reckon(self) -> None:
        """Make the plan again; what is missing or can't be is said instead."""
        units = self._look.units
        try:
            given = plan_input_from(self.typed(), self._look.units)
            plan = plan_vent(given)
        except Co2ventError as error:
            self.figures.say(said_in(error.text, units))
            self.text.setPlainText("")
            return
        self.figures.say(headline_words(plan, units))
        line = min(LINE, max(LEAST_COLUMNS, self.text.columns))
        words = plan_text(given, plan, say=lambda one: said_in(one, units), line=line)
        if words != self.text.toPlainText():
            self.text.setPlainText(words)

    def _keep(self, name: str, words: str) -> None:
        self._typed[name] = (words, self._unit)
        self.reckon()

    def _show_fields(self) -> None:
        """Put labels, examples and what was typed into the chosen units."""
        units = self._look.units
        self._unit = units.pressure
        for label, (name, line) in zip(self._labels, self.fields.items(), strict=True):
            label.setText(plan_field_words(name, units))
            line.setAccessibleName(label.text())
            line.setPlaceholderText(example_words(name, units))
            typed, unit = self._typed.get(name, ("", self._unit))
            before = line.blockSignals(True)  # not typed: what was stays as it was typed
            line.setText(converted(name, typed, unit, self._unit))
            line.blockSignals(before)

    def _leave(self) -> None:
        self._look.kept["plan"] = {**self.typed(), "unit": self._unit}
        self._look.save()
        self.back.emit()

    def apply_look(self) -> None:
        """Take theme and sizes."""
        sizes = self._look.sizes(self)
        palette = self._look.palette
        self._row.setDirection(
            QBoxLayout.Direction.TopToBottom if sizes.portrait else QBoxLayout.Direction.LeftToRight
        )
        self.figures.set_ink(palette.ink)
        self.figures.set_max_px(round(sizes.text_px * 1.35))
        self.figures.setFixedHeight(round(sizes.text_px * 5.6))
        mono = QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont)
        mono.setPixelSize(sizes.text_px)
        self.text.setFont(mono)
        for label, line in zip(self._labels, self.fields.values(), strict=True):
            font = line.font()
            font.setPixelSize(sizes.text_px)
            line.setFont(font)
            label.setFont(font)
            line.setMinimumHeight(sizes.target_px)
            line.setMinimumWidth(round(sizes.text_px * 0.62 * FIELD_LETTERS) + 20)
        for key in self.keys:
            key.set_theme(palette)
            key.set_sizes(sizes)
        self._scroll.setStyleSheet(
            f"QScrollArea{{border:0}} QScrollArea>QWidget>QWidget{{background:{palette.page}}}"
        )
        if self._unit != self._look.units.pressure:
            self._show_fields()
        form = self._scroll.widget()
        if form is not None:
            wide = form.minimumSizeHint().width() + sizes.target_px + 2 * self._scroll.frameWidth()
            self._scroll.setMinimumWidth(wide)
        self.reckon()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the page."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._look.palette.page))
        painter.end()
