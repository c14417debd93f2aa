"""What is known of the section before the job, and the folder for the recording."""

from pathlib import Path
from typing import Final

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QLineEdit, QSizePolicy, QWidget

from co2vent.readings.metadata import METADATA_KEYS
from co2vent.window.sizes import Sizes
from co2vent.window.words import translate

ASKED: Final = (
    "section_name",
    "section_volume_l",
    "insulated",
    "altitude_m",
    "gauge_full_scale",
    "gauge_accuracy_percent",
    "zero_reading",
    "relief_pressure",
    "section_max_pressure",
)


def field_words(key: str) -> str:
    """Return the label of a metadata field."""
    return {
        "section_name": translate("Connect", "Section"),
        "section_volume_l": translate("Connect", "Volume of the section, litres"),
        "insulated": translate("Connect", "Insulated: yes, or no for bare metal"),
        "altitude_m": translate("Connect", "Altitude, m"),
        "gauge_full_scale": translate("Connect", "Gauge full scale, with unit"),
        "gauge_accuracy_percent": translate("Connect", "Gauge accuracy, % of full scale"),
        "zero_reading": translate("Connect", "Gauge reads open to air, with unit"),
        "relief_pressure": translate("Connect", "Relief setting, with unit"),
        "section_max_pressure": translate("Connect", "Highest allowed pressure, with unit"),
    }[key]


def optional_words(words: str) -> str:
    """Return the label of a field that may stay empty."""
    return translate("Connect", "{field} (optional)").format(field=words)


def example_words(key: str) -> str:
    """Return an example of a field, as it is to be written."""
    return translate("Connect", "e.g. {example}").format(example=METADATA_KEYS[key].example)


class FieldGrid(QGridLayout):
    """Labelled fields in one or two columns."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Start with no field."""
        super().__init__()
        if parent is not None:
            parent.setLayout(self)
        self.setContentsMargins(0, 0, 0, 0)
        self.setHorizontalSpacing(14)
        self._rows: list[tuple[QLabel, QWidget]] = []

    def add(self, words: str, part: QWidget) -> None:
        """Add a field; it is placed by `lay_out`."""
        label = QLabel(words, part.parentWidget())
        label.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        label.setBuddy(part)
        part.setAccessibleName(words.replace("\n", ""))
        self._rows.append((label, part))

    def lay_out(self, columns: int, sizes: Sizes, *, least_px: int | None = None) -> None:
        """Place the fields, 15 mm high where there is room for that, else down to `least_px`."""
        while self.count():
            self.takeAt(0)
        for at in range(4):
            self.setColumnStretch(at, at % 2 if at < 2 * columns else 0)
        for place, (label, part) in enumerate(self._rows):
            font = part.font()
            font.setPixelSize(sizes.text_px)
            label.setFont(font)
            part.setFont(font)
            part.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
            part.setMinimumWidth(40)
            part.setMinimumHeight(sizes.target_px if least_px is None else least_px)
            part.setMaximumHeight(sizes.target_px)
            at = (place % columns) * 2
            right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            self.addWidget(label, place // columns, at, right)
            self.addWidget(part, place // columns, at + 1)


class ConnectForm(QWidget):
    """Everything on it may stay empty."""

    def __init__(self, folder: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grid = FieldGrid(self)
        self.fields = {key: QLineEdit(self) for key in ASKED}
        for key, line in self.fields.items():
            line.setPlaceholderText(example_words(key))
            self._grid.add(optional_words(f"{field_words(key)}\n"), line)  # fields stay wide
        self.folder = QLineEdit(str(folder), self)
        self._grid.add(translate("Connect", "Folder for recordings"), self.folder)

    def metadata(self) -> dict[str, str]:
        """Return what was filled in."""
        return {
            key: line.text().strip() for key, line in self.fields.items() if line.text().strip()
        }

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        least_px = round(sizes.text_px * 2.2)
        self._grid.lay_out(1 if sizes.portrait else 2, sizes, least_px=least_px)
