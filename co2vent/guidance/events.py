"""Events and prompts: what the core tells the person and the record."""

from dataclasses import dataclass
from enum import IntEnum, StrEnum

from co2vent.inference.outcome import Instruction


class EventKind(StrEnum):
    """Kinds of event, as written in logs and JSON."""

    HOLD_STARTED = "hold_started"
    HOLD_ENDED = "hold_ended"
    HOLD_VOIDED = "hold_voided"
    VENT_STARTED = "vent_started"
    VENT_CLOSED = "vent_closed"
    VERDICT = "verdict"
    PROMPT = "prompt"
    BELOW_TRIPLE_POINT = "below_triple_point"
    SHELF = "triple_point_shelf"
    DATA_STALE = "data_stale"
    DATA_BACK = "data_back"
    TIME_BROKEN = "time_broken"
    DATA_GAP = "data_gap"
    GAUGE_FAULT = "gauge_fault"
    PRESSURE_HIGH = "pressure_high"
    METAL_COLD = "metal_cold"
    ROW_REJECTED = "row_rejected"
    NOTE = "note"


@dataclass(frozen=True, slots=True)
class Event:
    """Something that happened at `at_s` of the data."""

    at_s: float
    kind: EventKind
    text: str


class Severity(IntEnum):
    """How a prompt is shown and sounded."""

    CALM = 0  # nothing to do now
    DO = 1  # a step to take
    CAUTION = 2
    DANGER = 3


@dataclass(frozen=True, slots=True)
class Prompt:
    """The one thing to do now. `headline` is a few words, `reason` one sentence with numbers."""

    instruction: Instruction
    headline: str
    reason: str
    severity: Severity
    since_s: float
