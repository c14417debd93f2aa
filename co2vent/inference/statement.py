"""What is said of a hold: the common part of every assessment."""

from dataclasses import replace

from co2vent.co2 import (
    CRITICAL_TEMPERATURE_K,
    TRIPLE_TEMPERATURE_K,
    saturation_pressure_pa,
)
from co2vent.inference.hold_facts import Hold
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment, Instruction, LeakBy


def base_of(hold: Hold) -> HoldAssessment:
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


def changed(assessment: HoldAssessment, **changes: object) -> HoldAssessment:
    return replace(assessment, **changes)  # type: ignore[arg-type]


def say(
    base: HoldAssessment,
    charge: Charge,
    instruction: Instruction,
    reason: str,
    *,
    leak_by: LeakBy = LeakBy.UNDETERMINED,
) -> HoldAssessment:
    return changed(base, charge=charge, instruction=instruction, reason=reason, leak_by=leak_by)
