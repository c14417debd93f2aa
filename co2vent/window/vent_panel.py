"""Everything a vent shows: prompt, figures, what is inside, and the pictures.

Used alike by the live page, the replay and the class.
"""

from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QVBoxLayout, QWidget

from co2vent.guidance.events import Severity
from co2vent.inference.outcome import Charge, HoldAssessment
from co2vent.window.alarm_strip import AlarmStrip
from co2vent.window.alarms import AlarmBook
from co2vent.window.banner import Banner
from co2vent.window.figures import Figure
from co2vent.window.fit_label import FitLabel
from co2vent.window.frame import Frame, Mode
from co2vent.window.headroom import Headroom
from co2vent.window.liquid_share import liquid_share
from co2vent.window.prompt_band import PromptBand
from co2vent.window.section_drawing import SectionDrawing
from co2vent.window.shown import Below, Shown, latest_hold, shown, waiting
from co2vent.window.sizes import Sizes
from co2vent.window.status_row import StatusRow
from co2vent.window.text import UnitChoice
from co2vent.window.theme import OUTDOOR, Band, Palette
from co2vent.window.words import translate

ROOMY_SCALE = 1.1  # a screen below it has no room for anything that can yield
NO_LIMIT = 16_777_215  # Qt's largest widget size


def _ice_unbounded(hold: HoldAssessment) -> bool:
    """Return whether dry ice is possible without bound: then no drawing may look empty."""
    return hold.dry_ice_kg is not None and hold.dry_ice_kg.upper is None


class VentPanel(QWidget):
    """The words and figures of a vent; the pictures are put into `pictures` when they are ready."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self.units = UnitChoice.BAR
        self.shown: Shown = waiting()
        self.banner = Banner(self)
        self.status = StatusRow(self)
        self.alarms = AlarmStrip(self)
        self.prompt = PromptBand(self)
        self.headroom = Headroom(self)
        self.margin = Figure(translate("Spoken", "margin"), self)
        self.pressure = Figure(translate("Spoken", "pressure"), self)
        self.motion = FitLabel(self, bold=True)
        self.inside = FitLabel(self)
        self.power = FitLabel(self)
        self.drawing = SectionDrawing(self)
        self.pictures = QVBoxLayout()
        self.under_pictures = QVBoxLayout()  # takes room from the pictures alone
        self._labels = (self.motion, self.inside, self.power)
        self._build()

    def _build(self) -> None:
        numbers = QVBoxLayout()
        numbers.setSpacing(0)
        numbers.addWidget(self.margin, 5)
        numbers.addWidget(self.pressure, 5)
        top = QHBoxLayout()
        top.setSpacing(10)
        top.addWidget(self.headroom)
        top.addLayout(numbers, 1)
        self.side = QWidget(self)
        left = QVBoxLayout(self.side)
        left.setContentsMargins(8, 2, 4, 2)
        left.setSpacing(2)
        self._words = words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.inside, 5)
        words.addWidget(self.power, 2)
        self._contents = contents = QHBoxLayout()
        contents.addLayout(words, 6)
        contents.addWidget(self.drawing, 5)
        left.addLayout(top, 0)
        left.addWidget(self.motion, 0)
        left.addLayout(contents, 1)
        self._body = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._body.setSpacing(6)
        self._body.addWidget(self.side, 38)
        self.under_pictures.addStretch()  # down to the foot while there are no pictures yet
        beside = QVBoxLayout()
        beside.addLayout(self.pictures, 1)
        beside.addLayout(self.under_pictures)
        self._body.addLayout(beside, 62)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        column.addWidget(self.banner)
        column.addWidget(self.status)
        column.addWidget(self.prompt)
        column.addWidget(self.alarms)
        column.addLayout(self._body, 1)

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self._palette = palette
        for part in (
            self.banner, self.status, self.alarms, self.prompt, self.headroom, self.margin,
            self.pressure, self.drawing,
        ):  # fmt: skip
            part.set_theme(palette)
        for label in self._labels:
            label.set_ink(palette.ink)
        self.update()

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        for part in (
            self.banner, self.status, self.alarms, self.prompt, self.headroom, self.margin,
            self.pressure, self.drawing,
        ):  # fmt: skip
            part.set_sizes(sizes)
        for label in self._labels:
            label.set_max_px(sizes.text_px)
        self.motion.set_max_px(round(sizes.text_px * 1.2))
        self.power.set_max_px(sizes.small_px)
        self.motion.setFixedHeight(
            round(sizes.text_px * (2.3 if sizes.scale < ROOMY_SCALE else 3.0))
        )
        tight = not sizes.portrait and sizes.scale < ROOMY_SCALE
        for layout, stretches in (
            (self._words, (3, 2) if tight else (5, 2)),
            (self._contents, (8, 5) if tight else (6, 5)),  # words need the room more
        ):
            for place, stretch in enumerate(stretches):
                layout.setStretch(place, stretch)
        self.drawing.setMaximumHeight(round(sizes.digit_px * 2.4))
        self.prompt.setFixedHeight(round(sizes.digit_px * 2.2))
        if sizes.portrait:
            self._body.setDirection(QBoxLayout.Direction.TopToBottom)
            self.side.setFixedHeight(round(sizes.digit_px * 2.3 + sizes.text_px * 12.0))
            self._body.setStretch(0, 0)
        else:
            self._body.setDirection(QBoxLayout.Direction.LeftToRight)
            self.side.setMinimumHeight(0)
            self.side.setMaximumHeight(NO_LIMIT)
            self._body.setStretch(0, 38)

    def set_units(self, units: UnitChoice) -> None:
        """Speak other units from the next frame on."""
        self.units = units

    def show_frame(self, frame: Frame, mode: Mode, book: AlarmBook, now_s: float) -> Shown:
        """Show one moment; return what is said."""
        view = frame.view
        if view is None or view.latest is None:
            said = waiting(frame.age_s, frame.trouble)
        else:
            hold = latest_hold(view)
            said = shown(view, frame.age_s, self.units, liquid_share(hold, view.setup))
        self.shown = said
        self.banner.show_mode(mode, simulated=view is not None and view.setup.simulated)
        self.prompt.show_prompt(said, flashing=bool(book.unacknowledged))
        self.alarms.show_alarms(book, now_s)
        old = said.stale and not said.unread
        self.margin.show_figure(
            said.margin,
            said.margin_unit,
            said.margin_caption,
            stale=old,
            band=self._band_below(said.below),
        )
        self.pressure.show_figure(
            said.pressure,
            said.pressure_unit,
            said.stop,
            said.pressure_second,
            stale=old,
        )
        self.headroom.show_margin(said.margin_pa, said.stop_margin_pa, stale=said.stale)
        motion = (said.hold_clock, said.rate, said.close_in, frame.trouble)
        self.motion.say(" · ".join(words for words in motion if words))
        hidden = translate("Text", "Inside: hidden")
        self.inside.say(hidden if frame.blind else said.inside)
        self.power.say("" if frame.blind else said.power)
        charge = Charge.UNDETERMINED if said.hold is None else said.hold.charge
        known = said.hold is not None and not _ice_unbounded(said.hold)
        self.drawing.show_liquid(said.liquid_share, charge, known=known)
        self._show_status(said, frame)
        return said

    def _band_below(self, below: Below) -> Band | None:
        """Return ground and ink of the margin: an alarm, or inverted where below was meant."""
        palette = self._palette
        return {
            Below.NO: None,
            Below.EXPECTED: Band(palette.ink, palette.page),
            Below.ALARM: palette.danger,
        }[below]

    def _show_status(self, said: Shown, frame: Frame) -> None:
        old = said.stale and not said.unread
        age = f"{translate('Text', 'STALE')}: {said.age}" if old else said.age
        self.status.age.say(age, Severity.DANGER if said.stale else None)
        self.status.valve.say(said.vent, old=old)
        self.status.temperature.say(said.temperature, old=old)
        self.status.show_recording(frame.recording, frame.recording_words)
        self.status.source.say(frame.source, Severity.CAUTION if frame.trouble else None)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the page."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._palette.page))
        painter.end()
