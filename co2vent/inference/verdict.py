"""The verdict on one hold: what is inside, how sure, and what would decide it.

A closed section gains pressure from gas warming on metal (fast, fading), from metal warming (slow,
fading), from liquid boiling or dry ice subliming (lasting while it lasts), and from flow past a
valve (straight). "Vapour only" needs the hold to have had power: the slope at the end, at its
99.9 % upper bound over all shapes a section allows, must lie under the least slope that liquid
above the allowable amount would keep up. Everything else is "liquid shows", or "not known yet" with
the step that would decide.
"""

from math import isfinite, nan

from co2vent.co2 import (
    TRIPLE_PRESSURE_PA,
    TRIPLE_TEMPERATURE_K,
    liquid_density_kg_m3,
)
from co2vent.inference.amounts import VOLUME_ERROR, allowable_kg
from co2vent.inference.criteria import CRITERIA, Criteria
from co2vent.inference.envelope import shown_by
from co2vent.inference.high_hold import hold_above
from co2vent.inference.hold_facts import EarlierHold, Hold, HoldContext, line_of, upper_of
from co2vent.inference.lines import saturated_k
from co2vent.inference.liquid_full import liquid_full
from co2vent.inference.losses import fell_by, lacks, loses
from co2vent.inference.low_hold import low_hold
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment, Instruction, LeakBy
from co2vent.inference.power import power
from co2vent.inference.shelf import shelf_in, standing_open
from co2vent.inference.statement import base_of, changed, say
from co2vent.inference.trace import HoldTrace
from co2vent.inference.trend import fit_trend
from co2vent.inference.wording import slope_text
from co2vent.readings.reading import Gas
from co2vent.sentence import Sentence


def judge(
    trace: HoldTrace,
    context: HoldContext,
    criteria: Criteria = CRITERIA,
    *,
    closed: bool = False,
) -> tuple[HoldAssessment, EarlierHold | None]:
    """Judge a hold as far as it has gone; if it has `closed`, also what later holds need of it."""
    blocks = trace.arrays()
    trend = fit_trend(blocks, context.noise_pa, context.step_pa)
    line_k, line_slope = (nan, nan) if context.clamp_doubted else line_of(blocks)
    age_s, end_pa = 0.0, trace.last_pa
    if blocks.p.size:
        age_s, end_pa = float(blocks.t[-1]), float(blocks.p[-1])
    # cold metal still counts against a verdict
    if context.clamp_frozen and line_k - saturated_k(end_pa) >= criteria.clamp_wet_k:
        line_k, line_slope = nan, nan
    strength = power(
        context.setup,
        end_pa,
        line_k,
        line_slope,
        criteria,
        age_s,
        upper_of(blocks),
        context.ambient_k,
    )
    hold = Hold(
        trace, blocks, trend, context, line_k, line_slope, age_s, end_pa, strength, criteria
    )
    verdict = _verdict(hold)
    earlier = None
    if closed and trend is not None:
        counts = context.number >= 1  # before the first vent nothing is judged
        earlier = EarlierHold(
            number=context.number,
            start_pa=trace.first_pa,
            end_pa=end_pa,
            duration_s=trace.duration_s,
            trend=trend,
            charge=verdict.charge,
            drive_k=strength.drive_k,
            line_k=line_k,
            metal_slope=strength.metal_slope,
            shown=shown_by(hold),
            falling=counts and loses(hold, trend),
            fell=fell_by(hold, trend) if counts else 0.0,
            lacked=lacks(hold, trend) if counts else 0.0,
        )
    return verdict, earlier


def _verdict(hold: Hold) -> HoldAssessment:
    """Ask the questions in the order of their danger."""
    context = hold.context
    base = base_of(hold)
    if context.setup.gas is Gas.NITROGEN:
        return say(
            base,
            Charge.UNDETERMINED,
            Instruction.WAIT,
            Sentence(
                "Nitrogen: a standing-pressure test, judged as one (see the job or report); "
                "nothing here tells of CO2."
            ),
        )
    if context.faults:
        return say(
            base,
            Charge.UNDETERMINED,
            Instruction.CHECK_GAUGE,
            Sentence("Not known: {fault}, so the hold proves nothing.", fault=context.faults[0]),
        )
    full = liquid_full(hold)
    if full is not None:
        said = say(base, Charge.SUBCOOLED_LIQUID, Instruction.VENT_NOW, full.reason)
        volume = context.setup.section_volume_m3
        # a bubble that the rise has just closed leaves no trace of its size
        share = Bounds(1.0, 0.6, 1.0) if full.proved else Bounds(None, 0.0, 1.0)
        if volume is None:
            return changed(said, liquid_volume_fraction=share)
        boiling_k = hold.line_k if isfinite(hold.line_k) else saturated_k(hold.trace.first_pa)
        mass = volume * liquid_density_kg_m3(min(max(boiling_k, TRIPLE_TEMPERATURE_K), 300.0))
        return changed(
            said,
            liquid_kg=Bounds(
                mass if full.proved else None,
                mass * 0.6 if full.proved else 0.0,
                mass * (1.0 + VOLUME_ERROR),
            ),
            liquid_volume_fraction=share,
            dry_ice_kg=Bounds(0.0, 0.0, 0.0),
        )
    shelf = shelf_in(hold.trace, hold.blocks, context.setup, context.step_pa, hold.criteria)
    words: Sentence | None = None
    if shelf is not None:
        words = Sentence(
            "Dry ice: the pressure climbed to the triple point and stands there ({shelf}). "
            "Keep the vented side open, warm gently, keep clear; no time alone ends it.",
            shelf=shelf,
        )
    elif context.vented and not context.valve_known:
        freezing = standing_open(
            hold.trace, hold.blocks, context.setup, context.step_pa, hold.criteria
        )
        if freezing is not None:
            words = Sentence(
                "Dry ice: the pressure came down to the triple point and stands there "
                "({freezing}): the vent is open, and liquid freezes. Keep it open, warm gently, "
                "keep clear; no time alone ends it.",
                freezing=freezing,
            )
    if words is not None:
        volume = context.setup.section_volume_m3
        ice = Bounds(None, allowable_kg(volume, hold.criteria), None) if volume else None
        said = say(base, Charge.SOLID_PRESENT, Instruction.HOLD_FOR_DRY_ICE, words)
        return changed(said, dry_ice_kg=ice, liquid_kg=Bounds(None, 0.0, None) if volume else None)
    if not context.vented:
        return _before_vent(hold, base)
    trace_began_below = hold.trace.first_pa < TRIPLE_PRESSURE_PA
    came_from_below = trace_began_below or context.solid_seen
    if hold.end_pa < TRIPLE_PRESSURE_PA or (
        came_from_below and hold.end_pa < TRIPLE_PRESSURE_PA + hold.near_triple_pa
    ):
        return low_hold(hold, base)
    return hold_above(hold, base)


def _before_vent(hold: Hold, base: HoldAssessment) -> HoldAssessment:
    """Hold 0: what is inside is not judged, only whether it may stay closed."""
    context, trend = hold.context, hold.trend
    setup = context.setup
    leak = LeakBy.UNDETERMINED
    reason = Sentence(
        "Not vented yet: a closed charge at saturation says nothing of how much liquid there is."
    )
    if trend is not None and trend.slope_lower > 0:
        reason = Sentence(
            "Not vented yet; rising {slope}: heat, or flow past a valve.",
            slope=slope_text(trend.slope, setup),
        )
    return say(base, Charge.UNDETERMINED, Instruction.WAIT, reason, leak_by=leak)
