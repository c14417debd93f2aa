"""Closed liquid without vapour above it: bars per kelvin, and a pressure that leaves saturation."""

from dataclasses import dataclass
from math import isfinite, nan

from co2vent.co2 import (
    CRITICAL_TEMPERATURE_K,
    TRIPLE_TEMPERATURE_K,
    saturation_pressure_pa,
)
from co2vent.inference.hold_facts import Hold
from co2vent.inference.wording import (
    difference_text,
    slope_text,
)
from co2vent.sentence import Sentence


@dataclass(frozen=True, slots=True)
class LiquidFull:
    """Why a closed section is taken for liquid-full, and whether more than a steep rise says so."""

    reason: Sentence
    proved: bool  # else an inflow or fast heat may be behind it, and nothing bounds the liquid


def liquid_full(hold: Hold) -> LiquidFull | None:
    """Closed liquid has no cushion: bars per kelvin, and a pressure that leaves saturation."""
    trend, criteria, context = hold.trend, hold.criteria, hold.context
    if trend is None or context.number != 0:
        return None
    setup = context.setup
    if (
        trend.slope_lower < 0.1 * criteria.liquid_full_slope_pa_per_s
        or hold.rise_pa < criteria.liquid_full_rise_pa
    ):
        return None
    per_kelvin = nan
    if isfinite(hold.line_slope) and hold.line_slope > 1e-4:
        per_kelvin = trend.slope / hold.line_slope
    above = nan
    if TRIPLE_TEMPERATURE_K <= hold.line_k + criteria.clamp_error_k < CRITICAL_TEMPERATURE_K - 1:
        above = hold.end_pa - saturation_pressure_pa(hold.line_k + criteria.clamp_error_k)
    left_saturation = above > criteria.liquid_full_rise_pa
    # the clamp follows, as it does with vapour above the liquid and not at 4 to 16 bar/K
    follows = hold.line_slope > criteria.warms_clearly and per_kelvin < criteria.two_phase_pa_per_k
    if follows and not left_saturation:
        return None
    steep = trend.slope_lower > criteria.liquid_full_slope_pa_per_s
    if not (steep or (left_saturation and not per_kelvin < criteria.liquid_full_pa_per_k)):
        return None
    detail: str = slope_text(trend.slope, setup)
    if isfinite(per_kelvin):
        steepness = difference_text(per_kelvin, setup)
        detail = Sentence("{slope}, {steepness} per kelvin", slope=detail, steepness=steepness)
    reason = Sentence(
        "Liquid-full: the closed section rises {detail}, far faster than liquid with vapour above "
        "it can; open the vent path at once.",
        detail=detail,
    )
    steep_per_kelvin = per_kelvin >= criteria.liquid_full_pa_per_k
    return LiquidFull(reason, steep_per_kelvin or (left_saturation and not isfinite(per_kelvin)))
