"""A hold that decides nothing yet: what the rules of `undecided.py` look at, and what they say."""

from dataclasses import dataclass

from co2vent.inference.criteria import Criteria
from co2vent.inference.hold_facts import Hold, HoldContext
from co2vent.inference.outcome import Instruction
from co2vent.inference.trend import Trend
from co2vent.inference.wording import slope_text
from co2vent.sentence import Sentence


@dataclass(frozen=True, slots=True)
class Undecided:
    """Why nothing is known yet, the step that would decide, and the prompt for it."""

    reason: str
    step: str
    instruction: Instruction
    waits: bool = True  # time alone may decide it


@dataclass(frozen=True, slots=True, kw_only=True)
class Doubts:
    """What the comparison of slopes has found so far."""

    settled: bool  # the hold is old enough
    away: bool  # far enough above the triple point
    quiet: bool  # rises less than liquid would
    gathers_pace: bool
    shut: bool  # the vent is known to be shut
    may_lose: bool  # it sinks, or as steep a fall is not excluded
    carried: float = 0.0  # what leaves at least, by holds before, Pa/s


@dataclass(frozen=True, slots=True)
class Case:
    """The hold, its late slope and what was found of it."""

    hold: Hold
    trend: Trend
    found: Doubts

    @property
    def age_s(self) -> float:
        """To the newest reading."""
        return self.hold.trace.duration_s

    @property
    def least(self) -> str:
        """The least slope that liquid would keep up, in words."""
        return slope_text(self.hold.power.least_wet_slope, self.hold.context.setup)

    @property
    def between(self) -> Sentence:
        """The bounds of the slope, in words."""
        setup = self.hold.context.setup
        return Sentence(
            "rising between {least} and {most}",
            least=slope_text(self.trend.slope_lower, setup),
            most=slope_text(self.trend.slope_upper, setup),
        )

    @property
    def has_room(self) -> bool:
        """Whether a vent from here can still be stopped at the stop pressure."""
        context = self.hold.context
        room_pa = room_to_vent_pa(context, self.hold.criteria)
        return self.hold.end_pa > context.stop_pa + room_pa

    @property
    def vent_if_long(self) -> Instruction:
        """Another vent, if this hold has been waited for long enough; else to hold on."""
        long = self.age_s > self.hold.criteria.long_hold_s and self.has_room
        return Instruction.VENT_AGAIN if long else Instruction.KEEP_HOLDING


def room_to_vent_pa(context: HoldContext, criteria: Criteria) -> float:
    """How far above the stop pressure a vent must begin so that a hand can still stop it there."""
    return max(criteria.revent_above_stop_pa, room_by_rate_pa(context, criteria))


def room_by_rate_pa(context: HoldContext, criteria: Criteria) -> float:
    """How far the pressure falls while a hand opens, sees and closes, by the last vent's rate."""
    return min(context.fall_pa_per_s * criteria.revent_hand_s, criteria.revent_most_pa)


def not_moved() -> Sentence:
    """Why a reading that stands still proves nothing."""
    return Sentence(
        "Not known: the reading has not moved since the vent closed; a gauge that is cut "
        "off looks the same. Crack the vent and see it answer."
    )


def crack_the_vent() -> Sentence:
    """The step that shows whether the gauge lives."""
    return Sentence("Crack the vent and see the gauge answer.")
