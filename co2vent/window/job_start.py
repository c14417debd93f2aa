"""Begin a job, or open one again where it stopped."""

from pathlib import Path

from PySide6.QtCore import QEvent, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from co2vent.guidance.job import GaugeRecord, JobHead, Person
from co2vent.window.job_parts import WrapLabel
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.words import anew, translate


class JobStart(QWidget):
    """A form for the job's head. Everything may stay empty but the section and a name."""

    begun = Signal(object, str, str)  # JobHead, folder to put it in, steps file or empty
    opened = Signal(str)  # folder of a job
    back = Signal()

    def __init__(self, look: Look, folder: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self._heading = translate("Job", "A job: plan, vent, prove, work, test, record")
        self.title = WrapLabel(self._heading, self)
        self._names = {
            "section": translate("Job", "Section"),
            "site": translate("Job", "Site"),
            "unit": translate("Job", "Unit or room"),
            "drawing": translate("Job", "Drawing and revision"),
            "order": translate("Job", "Work to be done"),
            "technician": translate("Job", "Technician"),
            "certificate": translate("Job", "Technician's certificate"),
            "second": translate("Job", "Second person"),
            "supervisor": translate("Job", "Supervisor"),
            "gauge": translate("Job", "Gauge: name, serial number"),
            "gauge_class": translate("Job", "Gauge: class and range"),
            "calibrated": translate("Job", "Gauge: calibrated on"),
            "folder": translate("Job", "Put the job's folder in"),
            "steps": translate("Job", "Your site's steps (TOML), empty for the usual"),
        }
        form_box = QWidget()
        self._form = QFormLayout(form_box)
        self._form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        self.fields: dict[str, QLineEdit] = {}
        for name, words in self._names.items():
            field = QLineEdit(form_box)
            field.setMaxLength(300)
            field.setAccessibleName(words)
            self._form.addRow(words, field)
            self.fields[name] = field
        self.fields["folder"].setText(str(folder))
        self.scroller = QScrollArea(self)
        self.scroller.setWidgetResizable(True)
        self.scroller.setWidget(form_box)
        self.message = WrapLabel("", self)
        self.keys = (
            Key("back", translate("Job", "Leave"), "Esc", self.back.emit, self),
            Key("open_log", translate("Job", "Open a job"), "Ctrl+O", self._choose, self),
            Key("next", translate("Job", "Begin"), "Ctrl+Return", self._begin, self),
        )
        keys = QHBoxLayout()
        for key in self.keys:
            keys.addWidget(key)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 8)
        column.addWidget(self.title)
        column.addWidget(self.scroller, 1)
        column.addWidget(self.message)
        column.addLayout(keys)

    def changeEvent(self, event: QEvent) -> None:
        """Name the fields in the new language of the screen."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.LanguageChange:
            self.title.setText(anew(self._heading))
            for name, words in self._names.items():
                field = self.fields[name]
                field.setAccessibleName(anew(words))
                label = self._form.labelForField(field)
                if isinstance(label, QLabel):
                    label.setText(anew(words))

    def head(self) -> JobHead:
        """Return what was filled in."""
        text = {name: field.text().strip() for name, field in self.fields.items()}
        people = (
            Person(name=text["technician"], role="technician", certificate=text["certificate"]),
            Person(name=text["second"], role="second person"),
            Person(name=text["supervisor"], role="supervisor"),
        )
        name, _, serial = text["gauge"].partition(",")
        gauge = GaugeRecord(
            name=name.strip(),
            serial=serial.strip(),
            accuracy=text["gauge_class"],
            calibrated=text["calibrated"],
        )
        return JobHead(
            site=text["site"],
            unit=text["unit"],
            section=text["section"],
            drawing=text["drawing"],
            order=text["order"],
            people=tuple(person for person in people if person.name),
            gauges=(gauge,) if gauge.name else (),
        )

    def _begin(self) -> None:
        head = self.head()
        if not head.section or not head.people:
            self.say(translate("Job", "Give the section and at least one name."))
            return
        self.begun.emit(
            head, self.fields["folder"].text().strip(), self.fields["steps"].text().strip()
        )

    def _choose(self) -> None:
        folder = QFileDialog.getExistingDirectory(
            self, translate("Job", "A job's folder"), self.fields["folder"].text()
        )
        if folder:
            self.opened.emit(folder)

    def say(self, words: str) -> None:
        """Show a sentence above the keys."""
        self.message.setText(words)

    def apply_look(self) -> None:
        """Take theme and sizes."""
        sizes, palette = self._look.sizes(self), self._look.palette
        band = palette.do
        self.title.setStyleSheet(f"background: {band.ground}; color: {band.ink}; padding: 6px;")
        for part in (self.title, self.message, *self.findChildren(QLineEdit)):
            font = part.font()
            font.setPixelSize(sizes.text_px)
            part.setFont(font)
            if isinstance(part, QLineEdit):
                part.setMinimumHeight(sizes.target_px)
                label = self._form.labelForField(part)
                if label is not None:  # beside its field it stands in the middle
                    label.setMinimumHeight(0 if sizes.portrait else sizes.target_px)
        form_box = self.scroller.widget()
        if form_box is not None:
            form_box.setStyleSheet(
                f"QWidget {{ background: {palette.page}; color: {palette.ink}; "
                f"font-size: {sizes.text_px}px; }}"
            )
        self.scroller.setStyleSheet(
            f"QScrollBar:vertical {{ width: {round(sizes.target_px * 0.6)}px; }}"
        )
        for key in self.keys:
            key.set_theme(palette)
            key.set_sizes(sizes)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()
