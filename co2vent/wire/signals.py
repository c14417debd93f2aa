"""Analogue signals with a live zero: from milliamperes or volts to a value, a fault or over range.

A live zero tells "nothing to measure" from "broken wire": the first has a current, the second none.
"""

from dataclasses import dataclass
from enum import StrEnum
from typing import Final


class Fault(StrEnum):
    """Why a channel has no value. The words are those that the log's decoder knows."""

    NONE = ""
    OVER_RANGE = "over_range"  # the true value is above what can be shown
    UNDER_RANGE = "underrange"
    FAULT = "fault"  # broken wire, short circuit, sensor failure


@dataclass(frozen=True, slots=True)
class Signal:
    """A live-zero signal: its span and the levels that are no measurement."""

    name: str
    zero: float
    full: float
    fault_below: float
    under_below: float
    over_above: float
    fault_above: float  # at or above this: fault

    def fraction(self, value: float) -> tuple[float, Fault]:
        """Return the share of the span, 0 to 1 and a little beyond, and what is wrong with it."""
        share = (value - self.zero) / (self.full - self.zero)
        if not self.fault_below <= value < self.fault_above:
            return share, Fault.FAULT
        if value < self.under_below:
            return share, Fault.UNDER_RANGE
        if value > self.over_above:
            return share, Fault.OVER_RANGE
        return share, Fault.NONE


SIGNALS: Final[dict[str, Signal]] = {
    signal.name: signal
    for signal in (
        # NAMUR NE 43: measurement 3.8 to 20.5 mA; below 3.6 and from 21 mA a fault
        Signal("4-20mA", 4.0, 20.0, 3.6, 3.8, 20.5, 21.0),
        # Ratiometric at 5 V. Faults below 0.25 and above 4.75 V: common practice, no source. The
        # levels between are those of NE 43 as shares of the span (own choice).
        Signal("0.5-4.5V", 0.5, 4.5, 0.25, 0.45, 4.625, 4.75),
    )
}
