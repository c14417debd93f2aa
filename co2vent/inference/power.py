"""What gives a hold the power to show liquid: metal warmer than saturation, or bare to the air.

Liquid boils as fast as heat reaches it. Where every piece of metal near it is at saturation and
insulated, kilograms of it raise the pressure by a few mbar a minute, as slowly as dry metal does
that warms a little: such a hold proves nothing. Power comes from

- a clamp at the lowest point that reads well above saturation: liquid there would boil hard;
- metal known to be bare: the ambient heats it whatever its state.
"""

from dataclasses import dataclass
from math import isfinite, nan

from co2vent.inference.criteria import Criteria
from co2vent.inference.lines import saturated_k
from co2vent.readings.reading import Setup


@dataclass(frozen=True, slots=True)
class Power:
    """The least late slope [Pa/s] that liquid above the allowable amount would keep up."""

    least_wet_slope: float
    drive_k: float  # clamp above saturation, as read; NaN without a clamp
    source: str  # what gives the power, in words; empty: nothing does


def power(setup: Setup, end_pa: float, line_k: float, criteria: Criteria) -> Power:
    """Return the power of a hold that ends at `end_pa` with the clamp at `line_k` (NaN: none)."""
    drive = nan
    if isfinite(line_k):
        drive = line_k - saturated_k(end_pa)
    least, source = criteria.unpowered_slope, ""
    if setup.insulated is False and not drive < criteria.clamp_wet_k:
        least, source = criteria.bare_slope, "the metal is bare"
    if drive >= criteria.clamp_power_k:
        by_clamp = criteria.slope_per_drive * (drive - criteria.clamp_slack_k)
        by_clamp = min(by_clamp, criteria.clamp_slope_most)
        if by_clamp > least:
            least, source = by_clamp, f"the lowest metal is {drive:.0f} K above saturation"
    return Power(least, drive, source)
