"""Between the least slope that liquid keeps up and the most that metal warming gives."""

from dataclasses import dataclass
from math import isfinite
from typing import TYPE_CHECKING

from co2vent.co2 import saturation_temperature_k
from co2vent.inference.criteria import Criteria
from co2vent.inference.outcome import Charge, Instruction, LeakBy
from co2vent.inference.trace import HoldArrays, HoldTrace
from co2vent.inference.trend import Trend
from co2vent.inference.wording import duration_text, pressure_text, slope_text

if TYPE_CHECKING:
    from co2vent.inference.verdict import HoldContext

MBAR_PER_MIN = 100.0 / 60.0  # Pa/s


@dataclass(frozen=True, slots=True, kw_only=True)
class Envelope:
    """What the slopes allow. Slopes in Pa/s; texts are `None` where the case does not hold."""

    dry_slope: float
    wet_least_slope: float
    ice_least_slope: float
    falling: bool
    leak: str | None
    leak_charge: Charge
    leak_by: LeakBy
    wet: str | None
    clear: str | None
    undecided: str
    next_instruction: Instruction
    next_step: str
    time_left_s: float | None


def envelope(
    trace: HoldTrace,
    blocks: HoldArrays,
    trend: Trend,
    context: "HoldContext",
    line_k: float,
    criteria: Criteria,
) -> Envelope:
    """Return what this hold's slopes allow, given all that is known besides."""
    setup = context.setup
    end_pa = float(blocks.p[-1])
    age_s = float(blocks.t[-1])
    drive_k = line_k - criteria.clamp_error_k - saturation_temperature_k(max(end_pa, 518_000.0))
    warm_line = isfinite(drive_k) and drive_k >= criteria.drive_k
    if setup.insulated is False:
        wet = 25.0 * MBAR_PER_MIN
    else:
        wet = 5.0 * MBAR_PER_MIN
    if warm_line:
        wet = max(wet, 30.0 * MBAR_PER_MIN)
    dry = 45.0 * MBAR_PER_MIN * (1.0 if age_s > 180.0 else 2.0)
    rising = slope_text(trend.slope, setup)
    highest_pa = float(blocks.p.max())
    falling = trend.slope_upper < -3.0 * criteria.slope_floor_pa_per_s or (
        highest_pa - end_pa > max(1.5 * context.step_pa, 5.0 * trend.sigma_pa, 2_000.0)
    )
    leak: str | None = None
    leak_by = LeakBy.UNDETERMINED
    for other in context.earlier:
        if (
            other.number < 1
            or abs(other.end_pa - end_pa) < 0.8e5
            or other.duration_s < 60.0
            or age_s < 60.0
        ):
            continue
        theirs, ours = other.trend, trend
        if min(theirs.slope_lower, ours.slope_lower) < 10.0 * MBAR_PER_MIN:
            continue
        ratio = ours.slope / theirs.slope if end_pa > other.end_pa else theirs.slope / ours.slope
        if ratio > 0.93:
            leak = (
                f"Flow past a closed valve suspected: the same slope at two pressures ({rising} near "
                f"{pressure_text(end_pa, setup)}, {slope_text(theirs.slope, setup)} near "
                f"{pressure_text(other.end_pa, setup)}); liquid would slow as the pressure rises."
            )
            leak_by = LeakBy.SUSPECTED
    moved = trace.changes >= criteria.least_changes
    settled = age_s >= max(criteria.shortest_clear_s, criteria.clear_time_constants * trend.tau_s)
    clear: str | None = None
    wet_text: str | None = None
    if settled and moved and trend.slope_upper < wet:
        clear = (
            f"Vapour only: after {duration_text(age_s)} the pressure rises at most "
            f"{slope_text(trend.slope_upper, setup)}; liquid above the allowable amount would keep up "
            f"{slope_text(wet, setup)} or more."
        )
        leak_by = LeakBy.NONE
    elif settled and trend.slope_lower > dry:
        wet_text = (
            f"Liquid: after {duration_text(age_s)} the pressure still rises {rising}; metal warming "
            f"alone gives at most {slope_text(dry, setup)}."
        )
    left = max(criteria.shortest_clear_s - age_s, 0.0)
    if settled:
        left = max(0.5 * age_s, 30.0)
    undecided = (
        f"Not known yet: rising {rising} (between {slope_text(trend.slope_lower, setup)} and "
        f"{slope_text(trend.slope_upper, setup)}); liquid would keep up {slope_text(wet, setup)} or more."
    )
    return Envelope(
        dry_slope=max(min(trend.slope, wet), 0.0),
        wet_least_slope=wet,
        ice_least_slope=wet,
        falling=falling,
        leak=leak,
        leak_charge=Charge.UNDETERMINED,
        leak_by=leak_by,
        wet=wet_text,
        clear=clear,
        undecided=undecided,
        next_instruction=Instruction.KEEP_HOLDING if age_s < 900.0 else Instruction.VENT_AGAIN,
        next_step="",
        time_left_s=left,
    )
