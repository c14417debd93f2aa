"""Connect a gauge: the source, what is known of the section, and where readings are kept."""

import threading
from datetime import datetime
from pathlib import Path
from typing import Final

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QComboBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from co2vent.errors import Co2ventError
from co2vent.live.monitor import Monitor
from co2vent.readings.metadata import METADATA_KEYS, build_setup
from co2vent.store.recorder import Recorder
from co2vent.window.fit_label import FitLabel
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.words import translate
from co2vent.wire.parse import parse_source
from co2vent.wire.ports import list_ports

ASKED: Final = (
    "section_name",
    "section_volume_l",
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
        "altitude_m": translate("Connect", "Altitude, m"),
        "gauge_full_scale": translate("Connect", "Gauge full scale, with unit"),
        "gauge_accuracy_percent": translate("Connect", "Gauge accuracy, % of full scale"),
        "zero_reading": translate("Connect", "Gauge reads open to air, with unit"),
        "relief_pressure": translate("Connect", "Relief setting, with unit"),
        "section_max_pressure": translate("Connect", "Highest allowed pressure, with unit"),
    }[key]


def new_log_path(folder: Path, section: str, now: datetime) -> Path:
    """Return a name for a new recording: time and section, nothing that a disk would refuse."""
    plain = "".join(c if c.isalnum() or c in "-_" else "-" for c in section).strip("-")
    stamp = now.strftime("%Y-%m-%d-%H%M%S")
    return folder / (f"{stamp}-{plain}.csv" if plain else f"{stamp}.csv")


class ConnectPage(QWidget):
    """Asks for the source; everything else may stay empty."""

    back = Signal()
    connected = Signal(object)  # a running Monitor

    def __init__(self, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._look = look
        self.title = FitLabel(self, bold=True)
        self.title.say(translate("Connect", "Connect a gauge"))
        self.source = QComboBox(self)
        self.source.setEditable(True)
        self.source.setAccessibleName(translate("Connect", "Source"))
        if look.source:
            self.source.addItem(look.source)
        self.source.addItems([port.device for port in list_ports() if port.device != look.source])
        self.source.setPlaceholderText("/dev/ttyUSB0   COM3   tcp://host:port   modbus-tcp://…")
        self.fields = {key: QLineEdit(self) for key in ASKED}
        self.folder = QLineEdit(str(look.folder()), self)
        self.message = FitLabel(self, bold=True)
        self._monitor: Monitor | None = None
        self._failure: str | None = None
        self._opening: threading.Thread | None = None
        self._poll = QTimer(self)
        self._poll.setInterval(100)
        self._poll.timeout.connect(self._look_at_opening)
        self._build()

    def _build(self) -> None:
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(14)
        self._rows: list[tuple[QLabel, QWidget]] = []
        self._row(translate("Connect", "Source"), self.source)
        for key, line in self.fields.items():
            line.setPlaceholderText(METADATA_KEYS[key].example)
            self._row(field_words(key), line)
        self._row(translate("Connect", "Folder for recordings"), self.folder)
        self.back_key = Key("back", translate("Key", "Back"), "Esc", self.back.emit, self)
        self.go_key = Key("connect", translate("Key", "Connect"), "Ctrl+Return", self.go, self)
        keys = QHBoxLayout()
        keys.addWidget(self.back_key)
        keys.addWidget(self.go_key)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 10, 20, 10)
        column.addWidget(self.title)
        column.addLayout(self._grid, 1)
        column.addWidget(self.message)
        column.addLayout(keys)

    def _row(self, words: str, part: QWidget) -> None:
        label = QLabel(words, self)
        label.setBuddy(part)
        part.setAccessibleName(words)
        self._rows.append((label, part))

    def apply_look(self) -> None:
        """Take theme and sizes."""
        sizes = self._look.sizes(self)
        ink = self._look.palette.ink
        self.title.set_ink(ink)
        self.title.set_max_px(round(sizes.text_px * 1.6))
        self.title.setFixedHeight(round(sizes.text_px * 2.2))
        self.message.set_ink(ink)
        self.message.set_max_px(sizes.text_px)
        self.message.setFixedHeight(round(sizes.text_px * 2.8))
        while self._grid.count():
            self._grid.takeAt(0)
        columns = 1 if sizes.portrait else 2
        for at in range(4):
            self._grid.setColumnStretch(at, at % 2 if at < 2 * columns else 0)
        for place, (label, part) in enumerate(self._rows):
            font = part.font()
            font.setPixelSize(sizes.text_px)
            part.setFont(font)
            label.setFont(font)
            part.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
            part.setMinimumWidth(40)
            part.setMinimumHeight(min(sizes.target_px, round(sizes.text_px * 2.4)))
            at = (place % columns) * 2
            self._grid.addWidget(label, place // columns, at, Qt.AlignmentFlag.AlignRight)
            self._grid.addWidget(part, place // columns, at + 1)
        for key in (self.back_key, self.go_key):
            key.set_theme(self._look.palette)
            key.set_sizes(sizes)

    # --- connect -----------------------------------------------------------------------------

    def metadata(self) -> dict[str, str]:
        """Return what was filled in."""
        return {
            key: line.text().strip() for key, line in self.fields.items() if line.text().strip()
        }

    def go(self) -> None:
        """Open the source in a thread: a port that does not answer must not hold the screen up."""
        if self._opening is not None:
            return
        try:
            monitor = self._make_monitor()
        except (Co2ventError, OSError) as error:
            self.message.say(str(error))
            return
        self._monitor, self._failure = monitor, None
        self.message.say(translate("Connect", "Opening…"))
        self._opening = threading.Thread(target=self._open, args=(monitor,), daemon=True)
        self._opening.start()
        self._poll.start()

    def _make_monitor(self) -> Monitor:
        metadata = self.metadata()
        build_setup({"altitude_m": "0", **metadata})
        source = parse_source(self.source.currentText())
        folder = Path(self.folder.text().strip() or self._look.folder())
        folder.mkdir(parents=True, exist_ok=True)
        path = new_log_path(folder, metadata.get("section_name", ""), datetime.now().astimezone())
        self._look.source = self.source.currentText().strip()
        self._look.kept["folder"] = str(folder)
        self._look.save()
        return Monitor(source, overrides=metadata, recorder=Recorder(path))

    def _open(self, monitor: Monitor) -> None:
        try:
            monitor.start()
        except Co2ventError as error:
            self._failure = str(error)

    def _look_at_opening(self) -> None:
        if self._opening is None or self._opening.is_alive():
            return
        self._poll.stop()
        self._opening = None
        if self._failure is not None:
            self.message.say(self._failure)
        elif self._monitor is not None:
            self.connected.emit(self._monitor)

    def close_feed(self) -> None:
        """Let go of a monitor that is still opening."""
        self._poll.stop()
        if self._opening is not None:
            self._opening.join(timeout=5.0)
            if self._monitor is not None:
                self._monitor.stop()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Sizes follow the window."""
        super().resizeEvent(event)
        self.apply_look()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the page."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._look.palette.page))
        painter.end()
