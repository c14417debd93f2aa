"""Before the vent: type what is known, read what to expect."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QColor, QFontDatabase, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QGridLayout,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from co2vent.errors import Co2ventError
from co2vent.planning.plan import plan_vent
from co2vent.planning.text import plan_text
from co2vent.window.fit_label import FitLabel
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.plan_fields import FIELDS, example_words, plan_field_words, plan_input_from
from co2vent.window.plan_words import headline_words
from co2vent.window.sentences import spoken
from co2vent.window.words import translate

PLAN_COLUMNS = 97  # characters of the longest line of the plan
MONO_ASPECT = 0.61  # width of a character over its size, in usual fixed fonts


class PlanPage(QWidget):
    """A form on one side, the plan on the other; reckoned again after each change."""

    back = Signal()

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.fields: dict[str, QLineEdit] = {}
        self._labels: list[QLabel] = []
        form = QWidget(self)
        self._form = QGridLayout(form)
        kept = look.kept.get("plan")
        for row, name in enumerate(FIELDS):
            line = QLineEdit(form)
            line.setAccessibleName(plan_field_words(name))
            line.setPlaceholderText(example_words(name))
            if isinstance(kept, dict):
                line.setText(str(kept.get(name, "")))
            line.textChanged.connect(self.reckon)
            label = QLabel(plan_field_words(name), form)
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
        self.text = QPlainTextEdit(self)
        self.text.setReadOnly(True)
        self.text.setTabChangesFocus(True)
        self.text.setAccessibleName(translate("Spoken", "plan in full"))
        self.back_key = Key("back", translate("Key", "Back"), "Esc", self._leave, self)
        side = QVBoxLayout()
        side.addWidget(self.figures)
        side.addWidget(self.text, 1)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._row.addWidget(self._scroll, 2)
        self._row.addLayout(side, 4)
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 8, 10, 8)
        column.addLayout(self._row, 1)
        column.addWidget(self.back_key)
        self.reckon()

    def typed(self) -> dict[str, str]:
        """Return what stands in the fields."""
        return {name: line.text() for name, line in self.fields.items()}

    def reckon(self) -> None:
        """Make the plan again; what is missing or can't be is said instead."""
        try:
            given = plan_input_from(self.typed())
            plan = plan_vent(given)
        except Co2ventError as error:
            self.figures.say(spoken(error.text))
            self.text.setPlainText("")
            return
        self.figures.say(headline_words(plan, self._look.units))
        self.text.setPlainText(plan_text(given, plan, say=spoken))

    def _leave(self) -> None:
        self._look.kept["plan"] = self.typed()
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
        share = 1.0 if sizes.portrait else 4.0 / 6.0
        fitting = (self.width() * share - 60.0) / (PLAN_COLUMNS * MONO_ASPECT)
        mono.setPixelSize(max(10, min(sizes.small_px, int(fitting))))
        self.text.setFont(mono)
        for label, line in zip(self._labels, self.fields.values(), strict=True):
            font = line.font()
            font.setPixelSize(sizes.text_px)
            line.setFont(font)
            label.setFont(font)
            line.setMinimumHeight(sizes.target_px)
        self.back_key.set_theme(palette)
        self.back_key.set_sizes(sizes)
        self._scroll.setStyleSheet(
            f"QScrollArea{{border:0}} QScrollArea>QWidget>QWidget{{background:{palette.page}}}"
        )
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
