"""Flow past a closed valve: straight in time, the same at two pressures.

A choked leak does not feel the section's pressure; boiling does, because its drive (metal above
saturation) shrinks as the pressure rises, or, in a full insulated section, because the saturation
line gets steeper and the slope grows.
"""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from co2vent.inference.criteria import Criteria
from co2vent.inference.outcome import LeakBy
from co2vent.inference.power import Power
from co2vent.inference.trend import Trend
from co2vent.inference.wording import pressure_text, slope_text

if TYPE_CHECKING:
    from co2vent.inference.verdict import HoldContext


@dataclass(frozen=True, slots=True)
class Leak:
    """Whether flow into the section is suspected, and the sentence that says why."""

    by: LeakBy
    reason: str


def leak_by(
    end_pa: float,
    age_s: float,
    trend: Trend,
    strength: Power,
    context: "HoldContext",
    criteria: Criteria,
) -> Leak:
    """Compare this hold with earlier ones at other pressures."""
    setup = context.setup
    for other in context.earlier:
        apart = abs(other.end_pa - end_pa)
        if other.number < 1 or apart < criteria.leak_apart_pa:
            continue
        if min(other.duration_s, age_s) < criteria.shortest_clear_s:
            continue
        low, high = (other.trend, trend) if other.end_pa < end_pa else (trend, other.trend)
        if min(low.steady_lower, high.steady_lower) < criteria.leak_least_slope:
            continue
        ratio = high.steady / low.steady
        if criteria.leak_ratio_least < ratio < criteria.leak_ratio_most:
            return Leak(
                LeakBy.SUSPECTED,
                f"Flow past a closed valve suspected: {slope_text(trend.slope, setup)} near "
                f"{pressure_text(end_pa, setup)} and {slope_text(other.trend.slope, setup)} near "
                f"{pressure_text(other.end_pa, setup)}, the same at two pressures; boiling would change.",
            )
    return Leak(LeakBy.UNDETERMINED, "")
