"""What the project says of a vent, reading by reading, as a live watcher would see it."""

from collections.abc import Callable
from dataclasses import dataclass, field

from co2vent.guidance.session import advance, begin, finish, view
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment
from co2vent.readings.reading import Reading, Setup


@dataclass(slots=True)
class Observed:
    """Holds as assessed at their end, and when the reassuring and the alarming words stood."""

    holds: tuple[HoldAssessment, ...] = ()
    # from, to: a running hold was called vapour only, or that verdict stood from before
    cleared: list[tuple[float, float]] = field(default_factory=list)
    # from, to: dry ice was said to be inside
    dry_ice: list[tuple[float, float]] = field(default_factory=list)
    mass_vented_kg: Bounds | None = None


Assessor = Callable[[Setup, list[Reading]], Observed]


def observe(setup: Setup, readings: list[Reading]) -> Observed:
    """Run the core over the readings."""
    seen = Observed()
    session = begin(setup)
    cleared_from: float | None = None
    ice_from: float | None = None
    at_s = 0.0
    for reading in readings:
        session, _ = advance(session, reading)
        at_s = reading.at_s
        running = session.holds.running
        cleared = session.standing.cleared or (
            running is not None and running.charge is Charge.VAPOR_ONLY
        )
        cleared_from = _follow(seen.cleared, cleared_from, cleared, at_s)
        ice_from = _follow(seen.dry_ice, ice_from, session.standing.solid_seen, at_s)
    session, _ = finish(session)
    _follow(seen.cleared, cleared_from, False, at_s)
    _follow(seen.dry_ice, ice_from, False, at_s)
    at_end = view(session)
    seen.holds, seen.mass_vented_kg = at_end.holds, at_end.mass_vented_kg
    if any(hold.charge is Charge.VAPOR_ONLY for hold in seen.holds[-1:]):
        seen.cleared.append((at_s, at_s))  # said when the record ended
    return seen


def _follow(
    spans: list[tuple[float, float]], since: float | None, stands: bool, at_s: float
) -> float | None:
    """Close or open a span; return since when it stands."""
    if stands:
        return at_s if since is None else since
    if since is not None:
        spans.append((since, at_s))
    return None
