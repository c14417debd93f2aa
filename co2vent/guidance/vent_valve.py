"""The vent valve: as a column or a person tells it, else as it is found from the pressure."""

from co2vent.guidance.valve import ValveChange, ValveFinder
from co2vent.inference.trace import GaugeWatch
from co2vent.readings.reading import Reading


class VentValve:
    """Where the vent valve is. Feed `see` with every reading, in order."""

    __slots__ = ("_finder", "_told", "moved_s", "open", "told_of", "vented")

    def __init__(self) -> None:
        self._finder = ValveFinder()
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
        if reading.vent_open is not None:
            self.told_of = True
            self._told = reading.vent_open
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
