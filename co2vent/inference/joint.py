"""What several holds show together that none shows alone.

Nothing flows in while the isolation is tight, so liquid that is there in a hold was there in every
hold before it, and there was more of it. Each of those holds has its own least slope that liquid
would have kept up. A coarse gauge bounds one hold's slope badly; its noise is new in each hold, so
the slopes, each over its own hold's limit, are averaged: liquid makes that mean one or more.
"""

from dataclasses import dataclass
from math import sqrt

from co2vent.inference.criteria import Criteria
from co2vent.inference.trend import Z_999


@dataclass(frozen=True, slots=True)
class Shown:
    """A hold's slope as a share of the least slope that liquid would keep up in it."""

    share: float  # best
    error: float  # one standard error


def shown(best_slope: float, upper_slope: float, least_wet_slope: float) -> Shown | None:
    """Return what a hold shows; `None` where it has no power. Slopes in Pa/s, bound 99.9 %."""
    if least_wet_slope <= 0.0:
        return None
    error = max(upper_slope - best_slope, 0.0) / Z_999
    return Shown(best_slope / least_wet_slope, error / least_wet_slope)


def joint_share(now: Shown, earlier: tuple[Shown, ...], criteria: Criteria) -> float:
    """Return the 99.9 % upper bound of the share that all holds together leave for liquid.

    At or over one: liquid is not excluded. A fall counts as no rise, because a loss would hide
    boiling. The hold at hand must speak for itself too, with `joint_own_errors`: what it shows is
    the newest, and errors that all holds share are not averaged away.
    """
    if now.share + criteria.joint_own_errors * now.error >= 1.0:
        return 1.0
    every = (now, *earlier)
    weights = [1.0 / max(one.error, criteria.joint_least_error) ** 2 for one in every]
    total = sum(weights)
    mean = sum(w * max(one.share, 0.0) for w, one in zip(weights, every, strict=True)) / total
    return mean + Z_999 / sqrt(total)
