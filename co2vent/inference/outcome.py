"""What the analysis says: the words and shapes shared by prompts, screens, files and reports."""

from dataclasses import dataclass, field
from enum import StrEnum


class Charge(StrEnum):
    """What is inside, as far as the readings show."""

    SUBCOOLED_LIQUID = "subcooled_liquid"
    TWO_PHASE = "two_phase"
    VAPOR_ONLY = "vapor_only"
    SOLID_PRESENT = "solid_present"
    UNDETERMINED = "undetermined"


class LeakBy(StrEnum):
    """Flow into the section past a closed isolation valve."""

    NONE = "none"
    SUSPECTED = "suspected"
    UNDETERMINED = "undetermined"


class Instruction(StrEnum):
    """What to do next."""

    VENT = "vent"
    CLOSE_AND_HOLD = "close_and_hold"
    KEEP_HOLDING = "keep_holding"
    VENT_AGAIN = "vent_again"
    VENT_TO_ZERO = "vent_to_zero"
    HOLD_FOR_DRY_ICE = "hold_for_dry_ice"
    OPEN_BLEEDS = "open_bleeds"
    VENT_NOW = "vent_now"
    CHECK_ISOLATION = "check_isolation"
    CHECK_VENT_LINE = "check_vent_line"
    CHECK_GAUGE = "check_gauge"
    NO_DATA = "no_data"
    WAIT = "wait"


@dataclass(frozen=True, slots=True)
class Bounds:
    """A value with its bounds; `None` where the readings could not give one."""

    estimate: float | None
    lower: float | None
    upper: float | None
    confidence: float = 0.95


@dataclass(frozen=True, slots=True)
class Curve:
    """A fitted curve over a hold, for drawing: what the gauge would show under `hypothesis`."""

    hypothesis: Charge
    at_s: tuple[float, ...]
    pressure_pa: tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldAssessment:
    """The verdict on one hold, up to the reading at `end_s`. SI, absolute."""

    number: int
    start_s: float
    end_s: float
    start_pressure_pa: float
    end_pressure_pa: float
    charge: Charge = Charge.UNDETERMINED
    leak_by: LeakBy = LeakBy.UNDETERMINED
    may_leak_by: bool = False  # what is said of liquid may as well be flow past a valve
    climbs: bool = False  # more than vapour alone does: no verdict from before stands
    liquid_kg: Bounds | None = None  # None: the section volume is not known
    dry_ice_kg: Bounds | None = None
    liquid_volume_fraction: Bounds | None = None
    detection_limit_kg: float | None = None
    dry_ice_kg_if_vented: float | None = None
    # of the estimate: half of the sections that rise alike are not boiled off before; never
    # "clear at"
    boil_off_s: float | None = None
    boil_off_warmed_s: float | None = None  # the same with `WARMING_W` of gentle warmth besides
    heat_w: float | None = None
    sublime_s: float | None = None  # of the dry ice if vented now, at the same heat; not before
    saturation_pressure_pa: float | None = None  # of the line temperature, where it has one
    slope_pa_per_s: Bounds | None = None  # late slope of the pressure
    time_left_s: float | None = None  # the earliest the hold could decide
    next_step: str = ""  # the cheap extra step that would decide, in words
    closed: bool = False  # the hold has ended
    instruction: Instruction = Instruction.KEEP_HOLDING
    reason: str = ""
    curves: tuple[Curve, ...] = field(default=(), repr=False)
