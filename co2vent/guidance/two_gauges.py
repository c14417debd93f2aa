"""Two gauges on one closed section show the same pressure; where they don't, one of them lies."""

from typing import Final

from co2vent.inference.wording import difference_text
from co2vent.readings.reading import Reading, Setup
from co2vent.sentence import Sentence

APART_S: Final = 10.0  # so long apart before it is said: hoses and lags settle in seconds
# Beside both gauges' errors: zero errors and a column of liquid between the ports; 2 m of liquid
# CO2 are 0.2 bar. Where no accuracy is known, that of two 1 % gauges of 15 bar. (own choice)
ALLOWANCE_PA: Final = 2.0e4
UNKNOWN_ERROR_PA: Final = 1.5e4
# what one gains more than the other while the vent is shut: two steps of a coarse gauge, and the
# settling of its hose (own choice)
PARTING_PA: Final = 1.5e4


class TwoGauges:
    """Follows how far apart the gauges are while the vent is closed."""

    def __init__(self) -> None:
        """Know nothing yet."""
        self._apart_from_s: float | None = None
        self._began: tuple[float, float] | None = None  # what they showed when the vent was shut

    def fault(self, reading: Reading, setup: Setup, *, closed: bool) -> str | None:
        """Return what is wrong with the gauges; `None` while they agree, or there is one.

        With the vent open the flow makes the pressures at two ports differ.
        """
        if not closed:
            self._apart_from_s = self._began = None
            return None
        if reading.pressure_2_pa is None:
            return None  # a blank cell is no agreement
        if self._began is None:
            self._began = reading.pressure_pa, reading.pressure_2_pa
        apart_pa = abs(reading.pressure_pa - reading.pressure_2_pa)
        # what both have gained since is free of their zeros
        gained_pa = reading.pressure_pa - self._began[0]
        gained_2_pa = reading.pressure_2_pa - self._began[1]
        parting_pa = abs(gained_pa - gained_2_pa)
        agree = apart_pa <= 2.0 * (setup.gauge_error_pa or UNKNOWN_ERROR_PA) + ALLOWANCE_PA
        if agree and parting_pa <= PARTING_PA:
            self._apart_from_s = None
            return None
        apart_pa = max(apart_pa, parting_pa)
        if self._apart_from_s is None or reading.at_s < self._apart_from_s:
            self._apart_from_s = reading.at_s
        if reading.at_s - self._apart_from_s < APART_S:
            return None
        difference = difference_text(apart_pa, setup)
        return Sentence("the two gauges differ by {difference}", difference=difference)
