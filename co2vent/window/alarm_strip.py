"""The latched alarms and how much silence is left. Hidden while there is none."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from co2vent.guidance.events import Severity
from co2vent.window import text
from co2vent.window.alarms import Alarm, AlarmBook, alarm_words
from co2vent.window.fit_label import FitLabel
from co2vent.window.sizes import Sizes
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.words import translate


def alarm_line(alarm: Alarm) -> str:
    """Return one alarm in words: its name, whether it lasts and whether it was acknowledged."""
    lasting = translate("Alarm", "now") if alarm.present else translate("Alarm", "earlier")
    seen = "" if alarm.acknowledged else " · " + translate("Alarm", "not seen yet (A)")
    return f"{alarm_words(alarm.kind)} ({lasting}{seen})"


class AlarmStrip(QWidget):
    """All latched alarms in one line, worst first."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self._severity = Severity.CALM
        self._label = FitLabel(self, bold=True, align=Qt.AlignmentFlag.AlignLeft)
        self._label.setAccessibleName(translate("Spoken", "alarms"))
        row = QHBoxLayout(self)
        row.setContentsMargins(12, 2, 12, 2)
        row.addWidget(self._label)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.hide()

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        self._label.set_ink(palette.band(self._severity).ink)
        self.update()

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        self._label.set_max_px(sizes.text_px)
        self.setFixedHeight(round(sizes.text_px * 1.7))

    @property
    def words(self) -> str:
        """The words on the strip."""
        return self._label.text()

    def show_alarms(self, book: AlarmBook, now_s: float) -> None:
        """Show what is latched."""
        standing = book.standing
        self.setVisible(bool(standing))
        if not standing:
            return
        words = (
            translate("Alarm", "ALARM:") + " " + " | ".join(alarm_line(alarm) for alarm in standing)
        )
        left = book.silent_left_s(now_s)
        if left > 0:
            words += " — " + translate("Alarm", "silent for {time}").format(
                time=text.duration(left)
            )
        self._label.say(words)
        if standing[0].severity is not self._severity:
            self._severity = standing[0].severity
            self.set_theme(self._palette)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the ground of the worst alarm."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._palette.band(self._severity).ground))
        painter.end()
