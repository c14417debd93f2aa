"""What several holds show together that none shows alone.

Nothing flows in while the isolation is tight, so liquid that is there in a hold was there in every
hold before it, and there was more of it. Each of those holds has its own least slope that liquid
would have kept up. A coarse gauge bounds one hold's slope badly; its noise is new in each hold, so
the slopes, each over its own hold's limit, are averaged: liquid makes that mean one or more.

Only a hold that would have cleared the section by itself but for its error counts (`envelope.py`),
and only an unbroken run of such holds up to the present one: liquid, an inflow, a gap or a gauge in
doubt between two holds ends the run.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import hypot, sqrt

from co2vent.inference.criteria import Criteria
from co2vent.inference.trend import Z_999


@dataclass(frozen=True, slots=True)
class Shown:
    """A hold's slope as a share of the least slope that liquid would keep up in it."""

    share: float  # best
    error: float  # one standard error


def run_of(earlier: Sequence[Shown | None]) -> list[Shown]:
    """Return the unbroken run of holds, newest first; `earlier` in order of time."""
    run: list[Shown] = []
    for one in reversed(earlier):
        if one is None:
            break
        run.append(one)
    return run


def joint_share(now: Shown, earlier: list[Shown], criteria: Criteria) -> float:
    """Return the 99.9 % upper bound of the share that all holds together leave for liquid.

    At or over one: liquid is not excluded. A fall counts as no rise, because a loss would hide
    boiling; and where all together do not exclude as great a fall, nothing is excluded. The hold at
    hand must speak for itself too, with `joint_own_errors`: what it shows is the newest. An error
    that all holds share (the shapes of a fit are alike) is not averaged away.
    """
    if not earlier or now.share + criteria.joint_own_errors * now.error >= 1.0:
        return 1.0
    every = [now, *earlier]
    weights = [1.0 / max(one.error, criteria.joint_shared_error) ** 2 for one in every]
    total = sum(weights)
    rise = sum(w * max(one.share, 0.0) for w, one in zip(weights, every, strict=True)) / total
    mean = sum(w * one.share for w, one in zip(weights, every, strict=True)) / total
    width = Z_999 * hypot(1.0 / sqrt(total), criteria.joint_shared_error)
    return rise + width if mean - width > -1.0 else 1.0
