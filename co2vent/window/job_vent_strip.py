"""The vent that runs beside the job, in one line: what to do now, pressure, room to the limit."""

from PySide6.QtCore import QEvent, QTimer
from PySide6.QtWidgets import QWidget

from co2vent.guidance.events import Severity
from co2vent.guidance.session import View
from co2vent.window.job_parts import WrapLabel
from co2vent.window.sizes import Sizes
from co2vent.window.text import UnitChoice, difference, pressure
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.words import headline_of, translate

SILENT_MS = 5_000  # the longest age that a reading may have while venting


class VentStrip(WrapLabel):
    """Hidden until a vent is shown; says so when its readings stop coming."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._palette: Palette = OUTDOOR
        self._severity = Severity.CALM
        self._shown: tuple[View, UnitChoice] | None = None
        self._silence = QTimer(self)
        self._silence.setSingleShot(True)
        self._silence.setInterval(SILENT_MS)
        self._silence.timeout.connect(self._fell_silent)
        self.hide()

    def show_view(self, view: View, units: UnitChoice) -> None:
        """Show the newest state of the vent."""
        self._silence.start()
        self._shown = (view, units)
        self._say(view, units)
        self._paint()
        self.show()

    def _say(self, view: View, units: UnitChoice) -> None:
        ambient_pa, unit = view.setup.ambient_pressure_pa, units.pressure
        parts = [headline_of(view.prompt.instruction)]
        if view.stale or view.latest is None:
            parts.append(translate("Job", "no fresh reading"))
        else:
            parts.append(pressure(view.latest.pressure_pa, ambient_pa, unit))
            if view.margin_pa is not None:
                room = difference(view.margin_pa, unit, sign=True)
                parts.append(translate("Job", "triple point ") + room)
        self._severity = view.prompt.severity
        self.setText("   ·   ".join(parts))

    def changeEvent(self, event: QEvent) -> None:
        """Speak the new language of the screen at once."""
        super().changeEvent(event)
        if event.type() != QEvent.Type.LanguageChange or self._shown is None:
            return
        if self._silence.isActive():
            self._say(*self._shown)
        else:
            self._fell_silent()

    def _fell_silent(self) -> None:
        self._severity = Severity.CAUTION
        self.setText(translate("Job", "No readings come: look at the mechanical gauge."))
        self._paint()

    def set_look(self, palette: Palette, sizes: Sizes) -> None:
        """Take theme and sizes."""
        self._palette = palette
        font = self.font()
        font.setPixelSize(round(sizes.text_px * 1.25))
        font.setBold(True)
        self.setFont(font)
        self._paint()

    def _paint(self) -> None:
        band = self._palette.band(self._severity)
        self.setStyleSheet(
            f"background: {band.ground}; color: {band.ink}; padding: 6px; "
            f"border: 2px solid {self._palette.rule};"
        )
