"""The verdict on one hold: what is inside, how sure, and what would decide it.

A closed section gains pressure from gas warming on metal (fast, fading), from metal warming (slow,
fading), from liquid boiling or dry ice subliming (lasting while it lasts), and from flow past a
valve (straight). "Vapour only" needs the hold to have had power: the slope at the end, at its
99.9 % upper bound over all shapes a section allows, must lie under the least slope that liquid
above the allowable amount would keep up. Everything else is "liquid shows", or "not known yet" with
the step that would decide.
"""

from dataclasses import dataclass, replace
from math import isfinite, nan

import numpy as np

from co2vent.co2 import (
    CRITICAL_TEMPERATURE_K,
    PLATEAU_SOLID_FRACTION,
    TRIPLE_PRESSURE_PA,
    TRIPLE_TEMPERATURE_K,
    liquid_density_kg_m3,
    saturation_pressure_pa,
)
from co2vent.inference.amounts import VOLUME_ERROR, Amounts, allowable_kg, amounts
from co2vent.inference.criteria import CRITERIA, Criteria
from co2vent.inference.envelope import Envelope, envelope, room_to_vent_pa
from co2vent.inference.lines import saturated_k, snow_k
from co2vent.inference.outcome import Bounds, Charge, Curve, HoldAssessment, Instruction, LeakBy
from co2vent.inference.power import power
from co2vent.inference.shelf import shelf_in
from co2vent.inference.trace import HoldArrays, HoldTrace
from co2vent.inference.trend import Trend, fit_trend
from co2vent.inference.wording import (
    difference_text,
    duration_text,
    pressure_text,
    slope_text,
    temperature_text,
)
from co2vent.readings.reading import Gas, Setup
from co2vent.sentence import Sentence, joined


@dataclass(frozen=True, slots=True, kw_only=True)
class EarlierHold:
    """What an ended hold left for the next ones. Pa, Pa/s, s."""

    number: int
    start_pa: float
    end_pa: float
    duration_s: float
    trend: Trend
    charge: Charge
    drive_k: float = nan  # clamp above saturation at the end
    line_k: float = nan
    falling: bool = False  # it lost pressure: an outward leak can hide boiling from then on


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldContext:
    """What a hold's own readings do not tell. SI, absolute."""

    setup: Setup
    number: int
    noise_pa: float
    step_pa: float
    stop_pa: float
    vented: bool
    first_pa: float | None  # highest pressure of the record so far
    lowest_pa: float
    cleared: bool  # "vapour only" stood when the hold began
    cleared_limit_kg: float | None
    solid_seen: bool
    valve_known: bool
    ambient_k: float | None
    earlier: tuple[EarlierHold, ...]
    faults: tuple[str, ...]
    fall_pa_per_s: float = 0.0  # how fast the last vent fell near its end


@dataclass(frozen=True, slots=True)
class _Hold:
    """One hold under judgement."""

    trace: HoldTrace
    blocks: HoldArrays
    trend: Trend | None
    context: HoldContext
    line_k: float  # line temperature now, NaN without a clamp
    line_slope: float  # K/s
    criteria: Criteria

    @property
    def end_pa(self) -> float:
        # a block mean, not one noisy reading, says where the hold stands
        return float(self.blocks.p[-1]) if self.blocks.p.size else self.trace.last_pa

    @property
    def rise_pa(self) -> float:
        return self.end_pa - self.trace.first_pa


def judge(
    trace: HoldTrace, context: HoldContext, criteria: Criteria = CRITERIA
) -> tuple[HoldAssessment, EarlierHold | None]:
    """Judge a hold as far as it has gone; also return what later holds need of it."""
    blocks = trace.arrays()
    trend = fit_trend(blocks, context.noise_pa, context.step_pa)
    line_k, line_slope = _line(blocks)
    hold = _Hold(trace, blocks, trend, context, line_k, line_slope, criteria)
    verdict = _verdict(hold)
    earlier = None
    if trend is not None:
        earlier = EarlierHold(
            number=context.number,
            start_pa=trace.first_pa,
            end_pa=hold.end_pa,
            duration_s=trace.duration_s,
            trend=trend,
            charge=verdict.charge,
            drive_k=power(context.setup, hold.end_pa, line_k, line_slope, criteria).drive_k,
            line_k=line_k,
            falling=context.number >= 1 and trend.slope_upper < -criteria.falling_pa_per_s,
        )
    return verdict, earlier


def _line(blocks: HoldArrays) -> tuple[float, float]:
    """Line temperature now [K] and its slope [K/s]; NaN without a clamp."""
    known = np.isfinite(blocks.line_k)
    if known.sum() < 2:
        return (float(blocks.line_k[known][-1]), nan) if known.any() else (nan, nan)
    t, k = blocks.t[known], blocks.line_k[known]
    late = t >= 0.5 * t[-1]
    if late.sum() < 3:
        late = np.ones_like(t, dtype=bool)
    slope = (
        float(np.polyfit(t[late], k[late], 1)[0])
        if late.sum() >= 2 and np.ptp(t[late]) > 0
        else nan
    )
    return float(k[-1]), slope


def _verdict(hold: _Hold) -> HoldAssessment:
    """Ask the questions in the order of their danger."""
    context = hold.context
    base = _base(hold)
    if context.setup.gas is Gas.NITROGEN:
        return _say(
            base,
            Charge.UNDETERMINED,
            Instruction.WAIT,
            Sentence(
                "Nitrogen: a standing-pressure test, judged as one (see the job or report); "
                "nothing here tells of CO2."
            ),
        )
    if context.faults:
        return _say(
            base,
            Charge.UNDETERMINED,
            Instruction.CHECK_GAUGE,
            Sentence("Not known: {fault}, so the hold proves nothing.", fault=context.faults[0]),
        )
    full = _liquid_full(hold)
    if full is not None:
        said = _say(base, Charge.SUBCOOLED_LIQUID, Instruction.VENT_NOW, full)
        volume = context.setup.section_volume_m3
        # a bubble that the rise has just closed leaves no trace of its size
        share = Bounds(1.0, 0.6, 1.0)
        if volume is None:
            return _with(said, liquid_volume_fraction=share)
        boiling_k = hold.line_k if isfinite(hold.line_k) else saturated_k(hold.trace.first_pa)
        mass = volume * liquid_density_kg_m3(min(max(boiling_k, TRIPLE_TEMPERATURE_K), 300.0))
        return _with(
            said,
            liquid_kg=Bounds(mass, mass * 0.6, mass * (1.0 + VOLUME_ERROR)),
            liquid_volume_fraction=share,
            dry_ice_kg=Bounds(0.0, 0.0, 0.0),
        )
    shelf = shelf_in(
        hold.trace, hold.blocks, context.setup.gauge_error_pa, context.step_pa, hold.criteria
    )
    if shelf is not None:
        volume = context.setup.section_volume_m3
        ice = Bounds(None, allowable_kg(volume, hold.criteria), None) if volume else None
        said = _say(
            base,
            Charge.SOLID_PRESENT,
            Instruction.HOLD_FOR_DRY_ICE,
            Sentence(
                "Dry ice: the pressure climbed to the triple point and stands there ({shelf}). "
                "Keep the vented side open, warm gently, keep clear; no time alone ends it.",
                shelf=shelf,
            ),
        )
        return _with(said, dry_ice_kg=ice, liquid_kg=Bounds(None, 0.0, None) if volume else None)
    if not context.vented:
        return _before_vent(hold, base)
    near_pa = TRIPLE_PRESSURE_PA + context.setup.gauge_error_pa + hold.criteria.near_triple_pa
    trace_began_below = hold.trace.first_pa < TRIPLE_PRESSURE_PA
    came_from_below = trace_began_below or context.solid_seen
    if hold.end_pa < TRIPLE_PRESSURE_PA or (came_from_below and hold.end_pa < near_pa):
        return _low_hold(hold, base)
    return _hold_above(hold, base)


def _base(hold: _Hold) -> HoldAssessment:
    trace, context = hold.trace, hold.context
    saturation: float | None = None
    if TRIPLE_TEMPERATURE_K <= hold.line_k < CRITICAL_TEMPERATURE_K:
        saturation = saturation_pressure_pa(hold.line_k)
    slope = None
    if hold.trend is not None:
        slope = Bounds(hold.trend.slope, hold.trend.slope_lower, hold.trend.slope_upper, 0.999)
    volume = context.setup.section_volume_m3
    unknown = Bounds(None, 0.0, None)  # the hold had no power to say more
    return HoldAssessment(
        liquid_kg=unknown if volume else None,
        dry_ice_kg=unknown if volume else None,
        liquid_volume_fraction=unknown,
        number=context.number,
        start_s=trace.start_s,
        end_s=trace.last_s,
        start_pressure_pa=trace.first_pa,
        end_pressure_pa=trace.last_pa,
        saturation_pressure_pa=saturation,
        slope_pa_per_s=slope,
    )


def _with(assessment: HoldAssessment, **changes: object) -> HoldAssessment:
    return replace(assessment, **changes)  # type: ignore[arg-type]


def _say(
    base: HoldAssessment,
    charge: Charge,
    instruction: Instruction,
    reason: str,
    *,
    leak_by: LeakBy = LeakBy.UNDETERMINED,
) -> HoldAssessment:
    return _with(base, charge=charge, instruction=instruction, reason=reason, leak_by=leak_by)


def _liquid_full(hold: _Hold) -> Sentence | None:
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
    steep = trend.slope_lower > criteria.liquid_full_slope_pa_per_s
    if not (
        steep
        or (above > criteria.liquid_full_rise_pa and not per_kelvin < criteria.liquid_full_pa_per_k)
    ):
        return None
    detail = slope_text(trend.slope, setup)
    if isfinite(per_kelvin):
        steepness = difference_text(per_kelvin, setup)
        detail = Sentence("{slope}, {steepness} per kelvin", slope=detail, steepness=steepness)
    return Sentence(
        "Liquid-full: the closed section rises {detail}, far faster than liquid with vapour above "
        "it can; open the vent path at once.",
        detail=detail,
    )


def _before_vent(hold: _Hold, base: HoldAssessment) -> HoldAssessment:
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
    return _say(base, Charge.UNDETERMINED, Instruction.WAIT, reason, leak_by=leak)


def _low_hold(hold: _Hold, base: HoldAssessment) -> HoldAssessment:
    """At or below the triple point: is there dry ice?"""
    context, trend, criteria = hold.context, hold.trend, hold.criteria
    setup = context.setup
    volume = setup.section_volume_m3
    age_s = hold.trace.duration_s
    near_pa = setup.gauge_error_pa + criteria.near_triple_pa
    if hold.end_pa < TRIPLE_PRESSURE_PA - near_pa:
        # no liquid lasts under the triple point; on the shelf itself it does
        none = Bounds(0.0, 0.0, 0.0)
        base = _with(base, liquid_kg=none if volume else None, liquid_volume_fraction=none)
    sublimation_k = snow_k(hold.end_pa)
    here = pressure_text(hold.end_pa, setup)
    if trend is None or age_s < criteria.shortest_clear_s:
        left = max(criteria.shortest_clear_s - age_s, 0.0)
        said = _say(
            base,
            Charge.UNDETERMINED,
            Instruction.HOLD_FOR_DRY_ICE,
            Sentence(
                "Not known yet: {time} below the triple point; dry ice would climb towards "
                "{triple} and stand there.",
                time=duration_text(age_s),
                triple=pressure_text(TRIPLE_PRESSURE_PA, setup),
            ),
        )
        return _with(said, time_left_s=left)
    limits = envelope(
        hold.trace, hold.blocks, trend, context, (hold.line_k, hold.line_slope), criteria
    )
    away_pa = setup.gauge_error_pa + criteria.near_triple_pa
    over_triple_k = hold.line_k - TRIPLE_TEMPERATURE_K
    warm = over_triple_k >= criteria.ice_drive_k
    at_ambient = hold.end_pa < setup.ambient_pressure_pa + criteria.near_ambient_pa
    slope_upper = trend.slope_upper
    if context.cleared:
        least, powered = criteria.ice_slope_cleared, True
    elif setup.insulated is False and warm:
        least, powered = criteria.ice_slope_bare, True
        slope_upper = limits.unexplained_slope
    elif setup.insulated is False and not isfinite(hold.line_k) and not at_ambient:
        least, powered = criteria.ice_slope_bare_unseen, True
    else:
        least, powered = criteria.ice_slope, warm
    quiet = (
        slope_upper < least
        and hold.end_pa < TRIPLE_PRESSURE_PA - away_pa
        and not limits.falling
        and trend.slope > -criteria.sinking_pa_per_s
        and (context.cleared or trend.slope_lower > -least)
        and trend.misfit <= criteria.worst_misfit
        and hold.trace.changes >= criteria.least_changes
        and (context.valve_known or not at_ambient)
    )
    # below the triple point without a verdict before: the evidence must stand by itself
    enough = context.cleared or (age_s >= criteria.ice_hold_s and powered)
    if quiet and enough:
        limit = allowable_kg(volume, criteria) if volume else None
        if limit is not None and context.cleared and context.cleared_limit_kg is not None:
            limit = min(limit, PLATEAU_SOLID_FRACTION * context.cleared_limit_kg)
        given = ""
        if warm:
            given = Sentence(
                ", with metal {drive} above the triple point", drive=f"{over_triple_k:.0f} K"
            )
        said = _say(
            base,
            Charge.VAPOR_ONLY,
            Instruction.VENT_TO_ZERO,
            Sentence(
                "No dry ice shows: {time} at {pressure}{given}, rising at most {most}; dry ice "
                "would give {least} or more.",
                time=duration_text(age_s),
                pressure=here,
                given=given,
                most=slope_text(trend.slope_upper, setup),
                least=slope_text(least, setup),
            ),
            leak_by=LeakBy.NONE,
        )
        return _with(
            said,
            dry_ice_kg=Bounds(0.0, 0.0, limit) if volume else None,
            detection_limit_kg=limit,
            dry_ice_kg_if_vented=0.0 if volume else None,
        )
    if context.solid_seen:
        said = _say(
            base,
            Charge.SOLID_PRESENT,
            Instruction.HOLD_FOR_DRY_ICE,
            Sentence(
                "Dry ice was seen and nothing shows it gone: {pressure}, rising {slope} (snow "
                "there is at {snow}).",
                pressure=here,
                slope=slope_text(trend.slope, setup),
                snow=temperature_text(sublimation_k, setup),
            ),
        )
        return _with(said, dry_ice_kg=Bounds(None, 0.0, None) if volume else None)
    cold = over_triple_k < criteria.ice_drive_k
    if limits.leak.by is LeakBy.SUSPECTED and not cold:
        said = _say(
            base,
            Charge.UNDETERMINED,
            Instruction.CHECK_ISOLATION,
            limits.leak.reason,
            leak_by=LeakBy.SUSPECTED,
        )
        return _with(said, dry_ice_kg=Bounds(None, 0.0, None) if volume else None)
    if trend.slope_lower > limits.dry_most_slope and not context.cleared:
        # flow past a valve climbs too: only metal as cold as snow tells the two apart
        words = Sentence("Dry ice") if cold else Sentence("Dry ice, or flow past a closed valve")
        said = _say(
            base,
            Charge.SOLID_PRESENT if cold else Charge.UNDETERMINED,
            Instruction.HOLD_FOR_DRY_ICE,
            Sentence(
                "{found}: below the triple point at {pressure} and still climbing {slope} after "
                "{time}; metal warming gives at most {most} (snow there is at {snow}).",
                found=words,
                pressure=here,
                slope=slope_text(trend.slope, setup),
                time=duration_text(age_s),
                most=slope_text(limits.dry_most_slope, setup),
                snow=temperature_text(sublimation_k, setup),
            ),
        )
        least_ice = allowable_kg(volume, criteria) if volume and cold else 0.0
        return _with(said, dry_ice_kg=Bounds(None, least_ice, None) if volume else None)
    return _say(
        base,
        Charge.UNDETERMINED,
        Instruction.HOLD_FOR_DRY_ICE,
        Sentence(
            "Not known yet: rising between {least} and {most} at {pressure}; dry ice would go on "
            "climbing to the triple point.",
            least=slope_text(trend.slope_lower, setup),
            most=slope_text(trend.slope_upper, setup),
            pressure=here,
        ),
    )


def _hold_above(hold: _Hold, base: HoldAssessment) -> HoldAssessment:
    """Above the triple point: vapour only, liquid, flow past a valve, or not known yet."""
    context, trend, criteria = hold.context, hold.trend, hold.criteria
    setup = context.setup
    volume = setup.section_volume_m3
    if trend is None:
        said = _say(
            base,
            Charge.UNDETERMINED,
            Instruction.KEEP_HOLDING,
            Sentence(
                "Not known yet: the hold has just begun; the first rise is gas warming in every "
                "case."
            ),
        )
        return _with(said, time_left_s=criteria.shortest_clear_s)
    limits = envelope(
        hold.trace, hold.blocks, trend, context, (hold.line_k, hold.line_slope), criteria
    )
    found: Amounts = amounts(hold.blocks, trend, context, limits, criteria)
    base = _with(
        base,
        detection_limit_kg=found.detection_limit_kg,
        heat_w=found.heat_w,
        curves=_curves(hold, limits),
    )
    rising = slope_text(trend.slope, setup)
    if limits.falling:
        return _say(
            base,
            Charge.UNDETERMINED,
            Instruction.CHECK_GAUGE,
            Sentence(
                "Not known: the closed section loses pressure ({slope}); an outward leak or a "
                "vent not shut can hide boiling. Prove the vent shut and hold again.",
                slope=rising,
            ),
        )
    if limits.leak.by is LeakBy.SUSPECTED:
        said = _say(
            base,
            Charge.UNDETERMINED,
            Instruction.CHECK_ISOLATION,
            limits.leak.reason,
            leak_by=LeakBy.SUSPECTED,
        )
        return _with(
            said,
            liquid_kg=Bounds(None, 0.0, None) if volume else None,
            dry_ice_kg=Bounds(0.0, 0.0, 0.0) if volume else None,
        )
    if limits.wet:
        instruction, step = _after_liquid(hold, limits)
        reason = joined(limits.wet, step) if step else limits.wet
        said = _say(base, Charge.TWO_PHASE, instruction, reason, leak_by=limits.leak.by)
        return _with(
            said,
            next_step=step,
            liquid_kg=found.liquid_kg if volume else None,
            liquid_volume_fraction=found.liquid_fraction,
            dry_ice_kg=Bounds(0.0, 0.0, 0.0) if volume else None,
            dry_ice_kg_if_vented=found.dry_ice_if_vented_kg,
            boil_off_s=found.boil_off_s,
            boil_off_warmed_s=found.boil_off_warmed_s,
            sublime_s=found.sublime_s,
        )
    if limits.clear and not context.solid_seen:
        limit = found.detection_limit_kg
        said = _say(
            base, Charge.VAPOR_ONLY, Instruction.VENT_TO_ZERO, limits.clear, leak_by=LeakBy.NONE
        )
        return _with(
            said,
            liquid_kg=Bounds(0.0, 0.0, limit) if volume else None,
            liquid_volume_fraction=Bounds(0.0, 0.0, found.limit_fraction),
            dry_ice_kg=Bounds(0.0, 0.0, 0.0) if volume else None,
            dry_ice_kg_if_vented=0.0 if volume else None,
        )
    instruction, reason = limits.next_instruction, limits.undecided
    said = _say(base, Charge.UNDETERMINED, instruction, reason, leak_by=limits.leak.by)
    return _with(
        said,
        liquid_kg=found.liquid_kg if volume else None,
        liquid_volume_fraction=found.liquid_fraction,
        dry_ice_kg=Bounds(0.0, 0.0, 0.0) if volume and not context.solid_seen else None,
        dry_ice_kg_if_vented=found.dry_ice_if_vented_kg,
        time_left_s=limits.time_left_s,
        next_step=limits.next_step,
    )


def _after_liquid(hold: _Hold, limits: Envelope) -> tuple[Instruction, str]:
    """Vent again, or first let the pressure rise: near the stop a vent goes below it at once."""
    context, criteria = hold.context, hold.criteria
    setup = context.setup
    least_pa = context.stop_pa + room_to_vent_pa(context, criteria)
    if hold.end_pa < least_pa:
        return (
            Instruction.KEEP_HOLDING,
            Sentence(
                "Hold on to {pressure} before venting again; mild warmth on the low point speeds "
                "it.",
                pressure=pressure_text(least_pa, setup),
            ),
        )
    # metal at saturation shows liquid; anything else may be flow past a valve, which a longer rise
    # in the same hold tells apart at no cost
    shown = limits.power.drive_k < criteria.clamp_wet_k
    goal_pa = hold.trace.first_pa + 2.0 * criteria.leak_apart_pa
    if not shown and hold.end_pa < goal_pa and hold.trace.duration_s < criteria.two_pressure_s:
        return (
            Instruction.KEEP_HOLDING,
            Sentence(
                "Hold on to {pressure}: two pressures tell liquid from flow past a valve.",
                pressure=pressure_text(goal_pa, setup),
            ),
        )
    return Instruction.VENT_AGAIN, ""


def _curves(hold: _Hold, limits: Envelope) -> tuple[Curve, ...]:
    """Curves to see the verdict by: the gas warming alone, and the least that liquid would add.

    The second one is drawn only where something gives the hold power; else there is no such least.
    """
    trend, blocks = hold.trend, hold.blocks
    if trend is None:
        return ()
    t, since = blocks.t, blocks.t - blocks.t[0]
    tau = min(trend.tau_s, 60.0)
    fade = (1.0 + t / (3.0 * tau)) ** -3.0
    gas = fade[0] - fade  # since the first block: the curve starts where the trace is
    level = max(min(trend.slope, limits.dry_most_slope), 0.0)
    left_pa = float(blocks.p[-1] - blocks.p[0] - level * since[-1])
    size = max(min(trend.warming_pa, left_pa / max(float(gas[-1]), 1e-3)), 0.0)
    dry = float(blocks.p[0]) + size * gas + level * since
    at = tuple((hold.trace.start_s + t).tolist())
    curves = [Curve(Charge.VAPOR_ONLY, at, tuple(dry.tolist()))]
    if limits.power.source:
        more = max(limits.power.least_wet_slope + limits.power.warming_slope - level, 0.0)
        curves.append(Curve(Charge.TWO_PHASE, at, tuple((dry + more * since).tolist())))
    return tuple(curves)
