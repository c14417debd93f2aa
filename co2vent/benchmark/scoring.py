"""One vent's truth against what was said: plain records, counted later."""

from dataclasses import asdict, dataclass
from typing import Final

import numpy as np

from co2vent.benchmark.observing import Assessor, Observed
from co2vent.benchmark.vents import TrueHold, TrueVent
from co2vent.co2 import TRIPLE_PRESSURE_PA, liquid_density_kg_m3, saturation_temperature_k
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment, LeakBy
from co2vent.readings.reading import Reading
from co2vent.sentence import Sentence
from co2vent.units import PSI_PA

RULE_RISE_PA: Final = PSI_PA  # the trade's rule of thumb: no rise over 1 psi in the hold
RULE_LONG_S: Final = 300.0
SHELF_BAND_PA: Final = 0.1e5
SHELF_SOLID_KG: Final = 1e-3
SHELF_RECOGNISED_WITHIN_S: Final = 180.0
TWO_PRESSURES_PA: Final = 1.5e5  # holds that differ by less are holds at one pressure


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldScore:
    """A hold: truth, what was said of it, what the rule of thumb says of it."""

    number: int
    duration_s: float
    wet: bool
    dry_throughout: bool
    liquid_kg: float
    solid_kg: float
    allowable_kg: float
    metal_margin_k: float
    leak_by_kg_per_s: float
    found: bool  # the hold was seen as one
    charge: str | None = None
    leak_by: str | None = None
    cleared_while_wet_s: float | None = None  # first moment of it, s into the record
    liquid_lower_kg: float | None = None
    liquid_estimate_kg: float | None = None
    liquid_upper_kg: float | None = None
    liquid_stated: float | None = None  # confidence of the bounds; None: no bounds in kg
    liquid_share: float  # of the volume, at the saturation density of the hold's last pressure
    share_lower: float | None = None
    share_upper: float | None = None
    share_stated: float | None = None
    reason: str = ""
    reason_form: str = ""  # the same without its numbers
    rise_pa: float  # shown
    rule_says_empty: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class VentScore:
    """A vent: its holds and what only shows over the whole record."""

    model: str
    seed: int
    volume_known: bool
    clamp: bool
    told_bare: bool
    leaks: bool
    holds: tuple[HoldScore, ...]
    two_pressures: bool
    dry_two_pressures: bool  # the same of holds without liquid or dry ice
    leak_suspected: bool
    dry_from_s: float | None  # not before the first hold after a vent; None: never, or a leak
    cleared_after_s: float | None  # from then; None: not in this record
    rule_after_s: float | None
    left_s: float  # record left after dry_from_s
    shelf: bool  # a shelf of 3 min or more
    shelf_recognised: bool
    solid_ever: bool
    dry_ice_said: bool

    def plain(self) -> dict[str, object]:
        """Return it as JSON-ready values."""
        return asdict(self)


def score_vent(vent: TrueVent, assess: Assessor) -> VentScore:
    """Assess one vent and compare."""
    seen = assess(vent.setup, vent.readings)
    holds = tuple(_score_hold(vent, hold, seen) for hold in vent.holds)
    leaks = any(hold.leak_by_kg_per_s > 0.0 for hold in vent.holds)
    dry_from_s, cleared_after_s, rule_after_s = _times(vent, holds, seen, leaks)
    shelf, recognised = _shelf(vent, seen)
    levels = [
        (_mean_shown(vent, hold), score.dry_throughout)
        for hold, score in zip(vent.holds, holds, strict=True)
        if hold.number > 0
    ]
    suspected = any(hold.leak_by is LeakBy.SUSPECTED for hold in seen.holds)
    return VentScore(
        model=vent.model,
        seed=vent.seed,
        volume_known=vent.setup.section_volume_m3 is not None,
        clamp=any(r.line_temperature_k is not None for r in vent.readings),
        told_bare=vent.setup.insulated is False,
        leaks=leaks,
        holds=holds,
        two_pressures=_apart([level for level, _dry in levels]),
        dry_two_pressures=_apart([level for level, dry in levels if dry]),
        leak_suspected=suspected,
        dry_from_s=dry_from_s,
        cleared_after_s=cleared_after_s,
        rule_after_s=rule_after_s,
        left_s=0.0 if dry_from_s is None else float(vent.at_s[-1]) - dry_from_s,
        shelf=shelf,
        shelf_recognised=recognised,
        solid_ever=bool(vent.solid_kg.max() > SHELF_SOLID_KG),
        dry_ice_said=bool(seen.dry_ice)
        or any(hold.charge is Charge.SOLID_PRESENT for hold in seen.holds),
    )


def _apart(levels_pa: list[float]) -> bool:
    return bool(levels_pa) and max(levels_pa) - min(levels_pa) >= TWO_PRESSURES_PA


def matching(hold: TrueHold, assessed: tuple[HoldAssessment, ...]) -> HoldAssessment | None:
    """Return the assessed hold that shares most time with `hold`, at least half of either."""
    best, most_s = None, 0.0
    for candidate in assessed:
        shared_s = min(hold.end_s, candidate.end_s) - max(hold.start_s, candidate.start_s)
        shorter_s = min(hold.end_s - hold.start_s, candidate.end_s - candidate.start_s)
        if shared_s > most_s and shared_s >= 0.5 * shorter_s:
            best, most_s = candidate, shared_s
    return best


def _shown(vent: TrueVent, hold: TrueHold) -> list[Reading]:
    return [r for r in vent.readings if hold.start_s <= r.at_s <= hold.end_s]


def _mean_shown(vent: TrueVent, hold: TrueHold) -> float:
    shown = _shown(vent, hold)
    return float(np.mean([r.pressure_pa for r in shown])) if shown else 0.0


def _score_hold(vent: TrueVent, hold: TrueHold, seen: Observed) -> HoldScore:
    shown = _shown(vent, hold)
    rise_pa = max(r.pressure_pa for r in shown) - shown[0].pressure_pa if shown else 0.0
    rows = (vent.at_s >= hold.start_s) & (vent.at_s <= hold.end_s)
    found = matching(hold, seen.holds)
    bounds = Bounds(None, None, None)
    stated = None
    if found is not None and found.liquid_kg is not None:
        bounds, stated = found.liquid_kg, found.liquid_kg.confidence
    part, share_stated = Bounds(None, None, None), None
    if found is not None and found.liquid_volume_fraction is not None:
        part, share_stated = found.liquid_volume_fraction, found.liquid_volume_fraction.confidence
    last_pa = float(vent.pressure_pa[rows][-1])
    return HoldScore(
        number=hold.number,
        duration_s=hold.end_s - hold.start_s,
        wet=bool(hold.liquid_kg + hold.solid_kg > vent.allowable_kg),
        dry_throughout=bool((vent.condensed_kg[rows] <= vent.allowable_kg).all()),
        liquid_kg=hold.liquid_kg,
        solid_kg=hold.solid_kg,
        allowable_kg=vent.allowable_kg,
        metal_margin_k=hold.metal_margin_k,
        leak_by_kg_per_s=hold.leak_by_kg_per_s,
        found=found is not None,
        charge=None if found is None else found.charge.value,
        leak_by=None if found is None else found.leak_by.value,
        cleared_while_wet_s=_cleared_while_wet(vent, hold, seen),
        liquid_lower_kg=bounds.lower,
        liquid_estimate_kg=bounds.estimate,
        liquid_upper_kg=bounds.upper,
        liquid_stated=stated,
        liquid_share=hold.liquid_kg / (_liquid_density_kg_m3(last_pa) * vent.volume_m3),
        share_lower=part.lower,
        share_upper=part.upper,
        share_stated=share_stated,
        reason="" if found is None else found.reason,
        reason_form="" if found is None else form_of(found.reason),
        rise_pa=rise_pa,
        rule_says_empty=bool(shown and rise_pa <= RULE_RISE_PA),
    )


def form_of(reason: str) -> str:
    """Return a reason without its numbers and without the step that follows it."""
    pair = Sentence("{first} {second}", first="", second="").template
    while isinstance(reason, Sentence) and reason.template == pair:
        reason = reason.values["first"]
    return reason.template if isinstance(reason, Sentence) else reason


def _liquid_density_kg_m3(pressure_pa: float) -> float:
    pressure_pa = min(max(pressure_pa, TRIPLE_PRESSURE_PA), 7.2e6)
    return liquid_density_kg_m3(saturation_temperature_k(pressure_pa))


def _cleared_while_wet(vent: TrueVent, hold: TrueHold, seen: Observed) -> float | None:
    """Return the first reading in the hold at which vapour only stood over a wet section."""
    for start, stop in seen.cleared:
        inside = (vent.at_s >= max(start, hold.start_s)) & (vent.at_s <= min(stop, hold.end_s))
        wrong = np.flatnonzero(inside & (vent.condensed_kg > vent.allowable_kg))
        if len(wrong):
            return float(vent.at_s[wrong[0]])
    return None


def _times(
    vent: TrueVent, holds: tuple[HoldScore, ...], seen: Observed, leaks: bool
) -> tuple[float | None, float | None, float | None]:
    """Return when it was dry, and how long after the project and the rule said so."""
    dry_s = vent.dry_from_s
    vented = [hold for hold in vent.holds if hold.number > 0]
    if leaks or dry_s is None or not vented or dry_s >= vent.holds[-1].end_s:
        return None, None, None
    dry_s = max(dry_s, vented[0].start_s)
    cleared = [max(start, dry_s) - dry_s for start, stop in seen.cleared if stop >= dry_s]
    rule = [
        hold.end_s - dry_s
        for hold, score in zip(vent.holds, holds, strict=True)
        if hold.number > 0 and hold.end_s >= dry_s and score.rule_says_empty
    ]
    return dry_s, min(cleared, default=None), min(rule, default=None)


def _shelf(vent: TrueVent, seen: Observed) -> tuple[bool, bool]:
    """Return whether there was a shelf of 3 min, and whether all such were recognised in time."""
    near = np.abs(vent.pressure_pa - TRIPLE_PRESSURE_PA) < SHELF_BAND_PA
    on_shelf = near & (vent.solid_kg > SHELF_SOLID_KG)
    edges = np.flatnonzero(np.diff(np.concatenate(([0], on_shelf.astype(int), [0]))))
    shelf, recognised = False, True
    for start, stop in edges.reshape(-1, 2).tolist():
        from_s, to_s = float(vent.at_s[start]), float(vent.at_s[stop - 1])
        if to_s - from_s < SHELF_RECOGNISED_WITHIN_S:
            continue
        shelf = True
        due_s = from_s + SHELF_RECOGNISED_WITHIN_S
        in_time = any(a <= due_s and b >= from_s for a, b in seen.dry_ice)
        recognised = recognised and in_time
    return shelf, shelf and recognised
