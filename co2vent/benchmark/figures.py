"""Scores -> the benchmark's figures: counts, limits, medians. Pure."""

from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from math import exp, inf, lgamma, log, log1p
from statistics import median
from typing import Final

from co2vent.benchmark.scoring import RULE_LONG_S, HoldScore, VentScore
from co2vent.inference.outcome import Charge, LeakBy

LEAK_KG_PER_S: Final = 0.02e-3  # the smallest leak-by that must be found
METAL_WARM_K: Final = 5.0
TIGHT_RATIO: Final = 4.0


@dataclass(frozen=True, slots=True)
class Share:
    """So many of so many."""

    count: int
    of: int

    @property
    def value(self) -> float | None:
        """The share, `None` of nothing."""
        return self.count / self.of if self.of else None

    def upper(self, confidence: float = 0.95) -> float | None:
        """One-sided upper limit of the true share (Clopper & Pearson, Biometrika 26 (1934) 404)."""
        return upper_limit(self.count, self.of, confidence) if self.of else None

    def text(self) -> str:
        """Return `3 of 250 (1.2 %)`."""
        value = self.value
        return f"{self.count} of {self.of}" + ("" if value is None else f" ({100 * value:.3g} %)")


def upper_limit(count: int, of: int, confidence: float = 0.95) -> float:
    """Return the share at which `count` or fewer of `of` has the probability 1 - confidence."""
    if count >= of:
        return 1.0
    low, high = count / of, 1.0
    for _ in range(60):
        middle = 0.5 * (low + high)
        if _at_most(count, of, middle) > 1.0 - confidence:
            low = middle
        else:
            high = middle
    return high


def _at_most(count: int, of: int, share: float) -> float:
    """Probability of `count` or fewer in `of` draws."""
    if share <= 0.0:
        return 1.0
    if share >= 1.0:
        return 0.0
    total = 0.0
    for k in range(count + 1):
        ways = lgamma(of + 1) - lgamma(k + 1) - lgamma(of - k + 1)
        total += exp(ways + k * log(share) + (of - k) * log1p(-share))
    return min(total, 1.0)


def share(items: Iterable[HoldScore | VentScore], test: Callable[..., bool]) -> Share:
    """Count the items that pass."""
    results = [bool(test(item)) for item in items]
    return Share(sum(results), len(results))


def _vapor_only(hold: HoldScore) -> bool:
    return hold.charge == Charge.VAPOR_ONLY.value


def _wrongly_cleared(hold: HoldScore) -> bool:
    """Tell whether the hold's verdict, or one that stood during it, was wrong."""
    return hold.cleared_while_wet_s is not None or (hold.wet and _vapor_only(hold))


def _middle(values: Sequence[float]) -> float | None:
    found = median(values) if values else None
    return None if found is None or found == inf else found


@dataclass(frozen=True, slots=True, kw_only=True)
class Figures:
    """The table's numbers for one model (or both together)."""

    vents: int
    holds: int
    holds_found: Share
    wet_cleared: Share
    wet_cleared_by_rule: Share
    wet_cleared_by_long_rule: Share
    dry_cleared: Share
    dry_cleared_warm: Share
    dry_cleared_by_rule: Share
    dry_cleared_by_long_rule: Share
    dry_cleared_clamp: Share
    dry_cleared_blind: Share  # neither a clamp nor metal told to be bare
    leak_found: Share
    leak_found_dry: Share  # no liquid at either pressure
    leak_found_dry_clamp: Share
    leak_found_any: Share
    leak_false: Share
    leak_false_holds: Share
    liquid_tight: Share
    liquid_factor: float | None  # median, where upper/lower is 4 or less
    liquid_unbounded: Share
    covered: Share
    below: Share
    above: Share
    share_covered: Share  # volume not known: the bounds of the volume share
    share_unbounded: Share  # of the wet ones among them
    width_wet: float | None  # median of upper/lower over wet holds
    width_dry_allowables: float | None
    minutes_to_clear: float | None  # median, never counted as such
    minutes_by_rule: float | None
    mean_minutes_both: tuple[float, float] | None  # over vents cleared by both
    shelf_recognised: Share
    shelf_false: Share


def figures(vents: Sequence[VentScore]) -> Figures:
    """Count everything over `vents`."""
    holds = [hold for vent in vents for hold in vent.holds]
    late = [hold for hold in holds if hold.number > 0]
    wet_late = [hold for hold in late if hold.wet]
    tight = [v for v in vents if not v.leaks]
    dry = _dry_holds(tight)
    warm = [
        h for h in dry
        if h.number > 1 and h.duration_s >= RULE_LONG_S and h.metal_margin_k >= METAL_WARM_K
    ]  # fmt: skip
    leaking = [
        v for v in vents if v.holds and v.holds[-1].leak_by_kg_per_s >= LEAK_KG_PER_S
    ]  # fmt: skip
    dry_leaking = [v for v in leaking if v.dry_two_pressures]
    bounded = [h for h in holds if h.liquid_stated is not None]
    parts = [h for h in holds if h.share_stated is not None and h.liquid_stated is None]
    wet_known = [h for h in bounded if h.wet and h.liquid_kg > h.allowable_kg]
    narrow = [h for h in wet_known if _ratio(h) <= TIGHT_RATIO]
    both = [
        (v.cleared_after_s / 60, v.rule_after_s / 60)
        for v in vents
        if v.cleared_after_s is not None and v.rule_after_s is not None
    ]
    dried = [v for v in vents if v.dry_from_s is not None]
    return Figures(
        vents=len(vents),
        holds=len(holds),
        holds_found=share(holds, lambda h: h.found),
        wet_cleared=share([h for h in holds if h.wet or _wrongly_cleared(h)], _wrongly_cleared),
        wet_cleared_by_rule=share(wet_late, lambda h: h.rule_says_empty),
        wet_cleared_by_long_rule=share(
            wet_late, lambda h: h.rule_says_empty and h.duration_s >= RULE_LONG_S
        ),
        dry_cleared=share(dry, _vapor_only),
        dry_cleared_warm=share(warm, _vapor_only),
        dry_cleared_by_rule=share(dry, lambda h: h.rule_says_empty),
        dry_cleared_by_long_rule=share(
            dry, lambda h: h.rule_says_empty and h.duration_s >= RULE_LONG_S
        ),
        dry_cleared_clamp=share(_dry_holds(v for v in tight if v.clamp), _vapor_only),
        dry_cleared_blind=share(
            _dry_holds(v for v in tight if not v.clamp and not v.told_bare), _vapor_only
        ),
        leak_found=share([v for v in leaking if v.two_pressures], lambda v: v.leak_suspected),
        leak_found_dry=share(dry_leaking, lambda v: v.leak_suspected),
        leak_found_dry_clamp=share([v for v in dry_leaking if v.clamp], lambda v: v.leak_suspected),
        leak_found_any=share(leaking, lambda v: v.leak_suspected),
        leak_false=share(tight, lambda v: v.leak_suspected),
        leak_false_holds=share(
            [h for v in tight for h in v.holds], lambda h: h.leak_by == LeakBy.SUSPECTED.value
        ),
        liquid_tight=Share(len(narrow), len(wet_known)),
        liquid_factor=_middle([_factor_off(h) for h in narrow]),
        liquid_unbounded=share(wet_known, lambda h: h.liquid_upper_kg is None),
        covered=share(bounded, lambda h: not _is_below(h) and not _is_above(h)),
        below=share(bounded, _is_below),
        above=share(bounded, _is_above),
        share_covered=share(parts, _share_held),
        share_unbounded=share([h for h in parts if h.wet], lambda h: h.share_upper is None),
        width_wet=_middle([_ratio(h) for h in wet_known]),
        width_dry_allowables=_middle([_width_g(h) for h in bounded if not h.wet]),
        minutes_to_clear=_minutes([v.cleared_after_s for v in dried]),
        minutes_by_rule=_minutes([v.rule_after_s for v in dried]),
        mean_minutes_both=(
            (sum(a for a, _ in both) / len(both), sum(b for _, b in both) / len(both))
            if both
            else None
        ),
        shelf_recognised=share([v for v in vents if v.shelf], lambda v: v.shelf_recognised),
        shelf_false=share([v for v in vents if not v.solid_ever], lambda v: v.dry_ice_said),
    )


def _dry_holds(vents: Iterable[VentScore]) -> list[HoldScore]:
    """Return the holds after a vent that were dry all the time."""
    return [h for v in vents for h in v.holds if h.number > 0 and h.dry_throughout]


def _minutes(seconds: Sequence[float | None]) -> float | None:
    return _middle([inf if value is None else value / 60.0 for value in seconds])


def _is_below(hold: HoldScore) -> bool:
    """The truth lies below the lower bound (by more than 0.1 mg)."""
    return hold.liquid_lower_kg is not None and hold.liquid_kg < hold.liquid_lower_kg - 1e-7


def _is_above(hold: HoldScore) -> bool:
    """The truth lies above the upper bound; no upper bound holds everything."""
    return hold.liquid_upper_kg is not None and hold.liquid_kg > hold.liquid_upper_kg + 1e-7


def _share_held(hold: HoldScore) -> bool:
    """The truth lies within the bounds of the volume share (to 1e-7)."""
    above_lower = hold.share_lower is None or hold.liquid_share >= hold.share_lower - 1e-7
    return above_lower and (
        hold.share_upper is None or hold.liquid_share <= hold.share_upper + 1e-7
    )


def _ratio(hold: HoldScore) -> float:
    if hold.liquid_upper_kg is None or not hold.liquid_lower_kg:
        return inf
    return hold.liquid_upper_kg / hold.liquid_lower_kg


def _width_g(hold: HoldScore) -> float:
    """Width of the bounds in gram per gram allowable: volume sets what matters."""
    if hold.liquid_upper_kg is None:
        return inf
    return (hold.liquid_upper_kg - (hold.liquid_lower_kg or 0.0)) / hold.allowable_kg


def _factor_off(hold: HoldScore) -> float:
    if not hold.liquid_estimate_kg or hold.liquid_kg <= 0.0:
        return inf
    ratio = hold.liquid_estimate_kg / hold.liquid_kg
    return max(ratio, 1.0 / ratio)


@dataclass(frozen=True, slots=True)
class Calibration:
    """Stated against found coverage in one group of holds."""

    group: str
    stated: float
    found: Share
    below: Share
    above: Share


def calibration(vents: Sequence[VentScore]) -> list[Calibration]:
    """Return stated and found coverage, by what could upset it."""
    groups: list[tuple[str, Callable[[VentScore, HoldScore], bool]]] = [
        ("all", lambda v, h: True),
        ("wet", lambda v, h: h.wet),
        ("trace (up to 5 x allowable)", lambda v, h: 0 < h.liquid_kg <= 5 * h.allowable_kg),
        ("dry", lambda v, h: not h.wet),
        ("hold 0", lambda v, h: h.number == 0),
        ("first hold", lambda v, h: h.number == 1),
        ("later holds", lambda v, h: h.number > 1),
        ("under 5 min", lambda v, h: h.duration_s < RULE_LONG_S),
        ("5 min or more", lambda v, h: h.duration_s >= RULE_LONG_S),
        ("leak-by", lambda v, h: v.leaks),
        ("metal under 5 K above saturation", lambda v, h: h.metal_margin_k < METAL_WARM_K),
    ]
    rows = []
    for name, test in groups:
        members = [h for v in vents for h in v.holds if h.liquid_stated is not None and test(v, h)]
        for stated in sorted({h.liquid_stated for h in members if h.liquid_stated is not None}):
            same = [h for h in members if h.liquid_stated == stated]
            rows.append(
                Calibration(
                    name,
                    stated,
                    share(same, lambda h: not _is_below(h) and not _is_above(h)),
                    share(same, _is_below),
                    share(same, _is_above),
                )
            )
    return rows


def left_open(vents: Sequence[VentScore]) -> list[tuple[str, int]]:
    """Return why dry holds after a vent, without a leak, were not cleared; commonest first."""
    dry = _dry_holds(v for v in vents if not v.leaks)
    forms = Counter(h.reason_form or "not seen as a hold" for h in dry if not _vapor_only(h))
    return forms.most_common()


def misses(vents: Sequence[VentScore]) -> list[dict[str, object]]:
    """Return every wet hold over which vapour only stood: where to look first."""
    return [
        {
            "model": vent.model,
            "seed": vent.seed,
            "hold": hold.number,
            "truth": f"{hold.liquid_kg * 1e3:.2f} g liquid, {hold.solid_kg * 1e3:.2f} g dry ice, "
            f"{hold.allowable_kg * 1e3:.2f} g allowable",
            "verdict": hold.charge,
            "cleared_while_wet_s": hold.cleared_while_wet_s,
            "reason": hold.reason,
        }
        for vent in vents
        for hold in vent.holds
        if _wrongly_cleared(hold)
    ]
