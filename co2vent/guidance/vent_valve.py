"""The vent valve: as a column or a person tells it, else as it is found from the pressure."""

from math import inf

from co2vent.guidance.valve import ValveChange, ValveFinder
from co2vent.inference.trace import GaugeWatch
from co2vent.readings.reading import Reading

# A section that is said to be shut and falls by so much of its pressure to near the stop pressure
# is vented, by whatever way: cold metal that condenses its gas does not get it there (judgement)
REFUTED_FALL = 0.3
REFUTED_OVER_STOP_PA = 1.0e5


class VentValve:
    """Where the vent valve is. Feed `see` with every reading, in order.

    `stop_pa`: the stop pressure [Pa]. What is told is believed until the pressure refutes it.
    """

    __slots__ = (
        "_finder",
        "_highest_pa",
        "_stop_pa",
        "_told",
        "moved_s",
        "open",
        "refuted",
        "told_of",
        "vented",
    )

    def __init__(self, stop_pa: float = 0.0) -> None:
        self._finder = ValveFinder()
        self._stop_pa = stop_pa
        self._highest_pa = -inf  # since it was told to be shut
        self.refuted = False  # it was said to be shut while the section was vented
        self._told = False
        self.told_of = False  # by a column or a person; once told, it is not looked for any more
        self.open: bool | None = None  # None: no reading yet
        self.vented = False  # the first vent has begun
        self.moved_s = 0.0

    @property
    def opened_s(self) -> float | None:
        """When it was opened; `None` while it is shut."""
        return self.moved_s if self.open else None

    def forget_before(self) -> None:
        """A gap, or a broken time base: a fall across it is no fall."""
        self._finder.reset()

    def see(self, reading: Reading, gauge: GaugeWatch, interval_s: float) -> ValveChange | None:
        """Take a reading; return the move it tells or reveals. The first tells where it stands."""
        change: ValveChange | None = None
        if reading.vent_open is not None and not self.refuted:
            self.told_of = True
            self._told = reading.vent_open
        if self.told_of:
            self._see_told(reading.pressure_pa)
        if self.told_of:
            if self._told != self.open:
                change = ValveChange(self._told, reading.at_s)
        else:
            change = self._finder.see(
                reading.at_s, reading.pressure_pa, gauge.noise_pa, gauge.step_pa, interval_s
            )
            if self.open is None:
                change = ValveChange(False, reading.at_s)
        if change is not None:
            self.open, self.moved_s = change.open, change.at_s
            self.vented = self.vented or change.open
        return change

    def _see_told(self, pressure_pa: float) -> None:
        """Whether the section is vented while the valve is told to be shut."""
        if self._told:
            self._highest_pa = -inf
        elif pressure_pa > self._highest_pa:
            self._highest_pa = pressure_pa
        elif (
            pressure_pa < self._stop_pa + REFUTED_OVER_STOP_PA
            and pressure_pa < (1.0 - REFUTED_FALL) * self._highest_pa
        ):
            self.refuted, self.told_of, self.vented = True, False, True
            self._finder.reset()
