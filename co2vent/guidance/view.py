"""What goes into the core and what can be seen of it."""

from dataclasses import dataclass

from co2vent.guidance.events import Event, Prompt
from co2vent.inference.outcome import Bounds, HoldAssessment
from co2vent.readings.reading import Reading, Rejection, Setup


@dataclass(frozen=True, slots=True)
class Tick:
    """Time has passed without a reading: live sources send one so that staleness shows."""

    at_s: float


Item = Reading | Rejection | Tick


@dataclass(frozen=True, slots=True, kw_only=True)
class View:
    """All that a screen or a report needs of the session after its newest item. SI, absolute."""

    setup: Setup
    latest: Reading | None
    prompt: Prompt
    stale: bool
    age_limit_s: float
    vent_open: bool | None  # as told or as found from the pressure
    triple_point_pa: float
    stop_pressure_pa: float
    margin_pa: float | None  # newest pressure above the local triple point
    rate_pa_per_s: float | None  # over the last seconds, negative while falling
    seconds_to_stop: float | None  # at the present rate of fall
    holds: tuple[HoldAssessment, ...]  # ended holds, then the running one last
    running_hold: HoldAssessment | None
    vapor_only_since_s: float | None
    mass_vented_kg: Bounds | None
    minimum_pressure_pa: float | None
    seconds_below_triple_point: float
    seconds_below_triple_point_before_vapor_only: float
    events: tuple[Event, ...]
    readings: int
    rejections: int
    valve_told: bool = False  # by a column or a person, not found from the pressure
    volume_by_bore_m3: Bounds | None = None  # the section, by how vapour left through the bore told
    metal_below_minimum: Bounds | None = None  # share of the metal below its rated minimum
    stop_in_s: Bounds | None = None  # earliest and latest, vent left as it is; None: not foreseen
