"""The values that flow from a gauge set to the core, and what is known of the set itself."""

from dataclasses import dataclass
from enum import StrEnum
from typing import NamedTuple

from co2vent.units import STANDARD_ATMOSPHERE_PA


class Gas(StrEnum):
    """What is in the section: CO2 for a vent, nitrogen for a standing-pressure test."""

    CO2 = "co2"
    NITROGEN = "nitrogen"


@dataclass(frozen=True, slots=True, kw_only=True)
class Setup:
    """What is known of the section and its gauges before the first reading.

    Pressures are absolute [Pa] unless the name says otherwise; spans and offsets are differences.
    `None` means not known: nothing is guessed in its place except the ambient pressure, whose
    assumption is recorded in `ambient_pressure_assumed`.
    """

    ambient_pressure_pa: float = STANDARD_ATMOSPHERE_PA
    ambient_pressure_assumed: bool = True
    altitude_m: float | None = None
    section_name: str = ""
    section_volume_m3: float | None = None
    gauge_full_scale_pa: float | None = None  # the highest pressure the gauge can show, absolute
    gauge_accuracy_fraction: float | None = None  # of full scale (gauge span)
    gauge_span_pa: float | None = None  # full scale as a difference, for the accuracy
    zero_offset_pa: float = 0.0  # what the gauge showed open to air; already subtracted in readings
    zero_was_read: bool = False  # a zero reading was given, even if it was 0
    relief_pressure_pa: float | None = None
    section_max_pressure_pa: float | None = None
    metal_minimum_temperature_k: float | None = None
    vent_bore_m: float | None = None  # narrowest in the vent path
    gas: Gas = Gas.CO2
    insulated: bool | None = None
    simulated: bool = False
    pressure_unit: str = "bar_g"  # the unit the source speaks, for showing values back
    temperature_unit: str = "degC"

    @property
    def gauge_error_pa(self) -> float:
        """The gauge's accuracy as a pressure [Pa]; 0 when it was not given."""
        if self.gauge_span_pa is None or self.gauge_accuracy_fraction is None:
            return 0.0
        return self.gauge_span_pa * self.gauge_accuracy_fraction


class Reading(NamedTuple):
    """One row of a gauge set: SI, absolute, zero offset already taken off. `None`: not measured.

    `at_s` never decreases within a `segment`; time running backwards starts a new segment. A tuple,
    because long logs make millions of them: a frozen dataclass takes three times as long to make.
    """

    at_s: float
    pressure_pa: float
    line_temperature_k: float | None = None
    upper_temperature_k: float | None = None
    ambient_temperature_k: float | None = None
    vent_open: bool | None = None
    pressure_2_pa: float | None = None
    vacuum_pa: float | None = None
    room_co2_ppm: float | None = None
    note: str | None = None
    segment: int = 0


@dataclass(frozen=True, slots=True)
class Rejection:
    """A row that could not be a reading: its line number (from 1) and why."""

    line: int
    reason: str
    over_range: bool = False  # the gauge said it could not show the value
    at_s: float | None = None  # its time, where that could be read
