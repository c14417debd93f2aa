"""While the vent is open: a pressure that stands still is a plug, the shelf, or a shut gauge."""

from enum import StrEnum

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.guidance.events import EventKind
from co2vent.inference.trace import GaugeWatch
from co2vent.readings.reading import Reading, Setup
from co2vent.sentence import Sentence

STILL_S = 20.0  # valve open and no fall for so long (common practice, no source)
FALL_PA = 1_500.0  # less than this is no fall
ABOVE_AMBIENT_PA = 30_000.0  # under it the section is all but vented
SHELF_BAND_PA = 10_000.0  # around the triple point, besides the gauge's error


class Plateau(StrEnum):
    """Why the pressure may stand still."""

    SHELF = "shelf"
    PLUG = "plug"

    @property
    def kind(self) -> EventKind:
        """The kind of event to record."""
        return EventKind.SHELF if self is Plateau.SHELF else EventKind.GAUGE_FAULT

    @property
    def text(self) -> str:
        """The event in words."""
        if self is Plateau.SHELF:
            return Sentence(
                "the pressure stands at the triple point with the vent open: liquid is freezing"
            )
        return Sentence(
            "the vent is open and the pressure does not fall: a plug, a gauge cut off, or liquid "
            "that boils as fast as it leaves"
        )


class VentWatch:
    """Finds a standstill while the vent is open. Feed `see` in order of time."""

    __slots__ = ("_from", "answered", "plateau")

    def __init__(self) -> None:
        self.plateau: Plateau | None = None
        self.answered = False  # the gauge has shown the vent: it fell since the valve opened
        self._from: tuple[float, float] | None = None

    def reset(self) -> None:
        """The valve moved, or the readings had a gap."""
        self._stand()
        self.answered = False

    def _stand(self) -> None:
        self.plateau = None
        self._from = None

    def see(self, reading: Reading, setup: Setup, gauge: GaugeWatch) -> Plateau | None:
        """Take one reading with the vent open; return the standstill it is in, if any."""
        pressure_pa, at_s = reading.pressure_pa, reading.at_s
        if pressure_pa - setup.ambient_pressure_pa < ABOVE_AMBIENT_PA:
            self._stand()
            return None
        fall = max(FALL_PA, 1.1 * gauge.step_pa, 4.0 * gauge.noise_pa)
        if self._from is None or pressure_pa <= self._from[1] - fall:
            self.answered = self.answered or self._from is not None
            self._from = (at_s, pressure_pa)
            self.plateau = None
        elif at_s - self._from[0] >= STILL_S:
            at_triple = (
                abs(pressure_pa - TRIPLE_PRESSURE_PA) <= SHELF_BAND_PA + setup.gauge_error_pa
            )
            self.plateau = Plateau.SHELF if at_triple else Plateau.PLUG
        return self.plateau
