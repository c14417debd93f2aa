"""Between the least slope that liquid keeps up and the most that dry metal gives while it warms."""

from dataclasses import dataclass

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.doubts import (
    deficit,
    gathers_pace,
    is_falling,
    lost_before,
    may_be_liquid_yet,
    really_closed,
    sure_over_ice,
)
from co2vent.inference.dry_limits import dry_most_slope, gas_bound_pa
from co2vent.inference.hold_facts import Hold
from co2vent.inference.leak import Leak, leak_by
from co2vent.inference.outcome import Instruction, LeakBy
from co2vent.inference.power import Power
from co2vent.inference.trend import Trend
from co2vent.inference.undecided import undecided
from co2vent.inference.wording import duration_text, pressure_text, slope_text
from co2vent.sentence import Sentence


@dataclass(frozen=True, slots=True, kw_only=True)
class Envelope:
    """What a hold's slopes allow. Slopes in Pa/s; texts are `None` where the case does not hold."""

    power: Power
    unexplained_slope: float  # upper bound less what the metal's warming explains
    dry_most_slope: float
    falling: bool
    leak: Leak
    wet: str | None
    clear: str | None
    undecided: str
    next_instruction: Instruction
    next_step: str
    time_left_s: float | None


def envelope(hold: Hold, trend: Trend) -> Envelope:
    """Return what this hold's slopes allow, given all that is known besides."""
    trace, blocks, context, criteria = hold.trace, hold.blocks, hold.context, hold.criteria
    setup, strength = context.setup, hold.power
    end_pa, line_k = hold.end_pa, hold.line_k
    age_s = float(blocks.t[-1])
    explained = min(strength.warming_slope, strength.warming_most * max(trend.slope_upper, 0.0))
    unexplained = trend.slope_upper - explained
    leak = leak_by(blocks, trend, strength, line_k, context, criteria)
    falling = is_falling(blocks, trend, context, criteria)
    dry_most = dry_most_slope(context, strength, age_s, end_pa, criteria)
    shortest_s = criteria.shortest_clear_s
    if not strength.drive_k >= criteria.clamp_power_k:
        shortest_s = criteria.bare_clear_s
    needed_s = max(shortest_s, criteria.clear_time_constants * trend.tau_s)
    settled = age_s >= needed_s
    away_pa = setup.gauge_error_pa + criteria.near_triple_pa
    away = end_pa >= TRIPLE_PRESSURE_PA + away_pa
    bound_pa = gas_bound_pa(trace.first_pa, line_k, context, criteria)
    over_bound = end_pa - setup.gauge_error_pa > bound_pa
    rising, at_most = slope_text(trend.slope, setup), slope_text(trend.slope_upper, setup)
    least = slope_text(strength.least_wet_slope, setup)

    # once below the triple point with liquid not excluded, ice may lie there; while it melts it
    # swallows the heat that would boil liquid, above the triple point too
    maybe_ice = context.lowest_pa < TRIPLE_PRESSURE_PA and not context.cleared

    under = settled and unexplained < strength.least_wet_slope
    pace = under and gathers_pace(blocks, strength, context, criteria)
    clear: str | None = None
    wet: str | None = None
    warmed = age_s >= max(criteria.shortest_clear_s, 2.0 * trend.tau_s)
    if trend.slope_lower > dry_most and warmed:
        why = (
            Sentence("the clamp is only {drive} from saturation", drive=f"{strength.drive_k:.0f} K")
            if strength.drive_k < criteria.clamp_wet_k
            else Sentence(
                "dry metal that warms gives at most {most}", most=slope_text(dry_most, setup)
            )
        )
        wet = Sentence(
            "Liquid: after {time} the pressure still rises {slope} and {why}.",
            time=duration_text(age_s),
            slope=rising,
            why=why,
        )
    elif over_bound and trend.slope_lower > 0.0:
        wet = Sentence(
            "Liquid: {pressure} and rising {slope} is more than gas warming from {start} can "
            "reach ({bound}).",
            pressure=pressure_text(end_pa, setup),
            slope=rising,
            start=pressure_text(trace.first_pa, setup),
            bound=pressure_text(bound_pa, setup),
        )
    elif (
        under
        and away
        and not falling
        and not lost_before(context)
        and not over_bound
        and trace.changes >= criteria.least_changes
        and trend.misfit <= criteria.worst_misfit
        and (not maybe_ice or sure_over_ice(strength, unexplained, age_s, criteria))
        and trend.slope > -criteria.sinking_pa_per_s
        and trend.slope_lower > -strength.least_wet_slope
        and trend.warming_pa > -criteria.cooling_pa
        and not may_be_liquid_yet(trace.first_pa, end_pa, strength, context, criteria)
        and not deficit(trend, strength, setup, trace.first_pa, end_pa, criteria)
        and not pace
        and (context.valve_known or really_closed(trace, end_pa, strength, context, criteria))
        and leak.by is not LeakBy.SUSPECTED
    ):
        if explained > 0.1 * abs(trend.slope_upper):
            part = slope_text(explained, setup)
            at_most = Sentence("{most}, {part} of it the metal's warming", most=at_most, part=part)
        clear = Sentence(
            "Vapour only: after {time} the pressure rises at most {most}; liquid above the "
            "allowable amount would keep up {least} or more{given}.",
            time=duration_text(age_s),
            most=at_most,
            least=least,
            given=Sentence(" ({source})", source=strength.source) if strength.source else "",
        )
        leak = Leak(LeakBy.NONE, "")
    why_open, step, instruction = undecided(
        trace, trend, context, strength, leak, settled, away, falling, criteria
    )
    if pace and not falling and unexplained > 0.0:
        why_open = Sentence(
            "Not known: rising at most {most}, but faster now than before; what warms dry gas "
            "fades, and only boiling gathers pace.",
            most=slope_text(trend.slope_upper, setup),
        )
    if settled:
        left = max(0.3 * age_s, 30.0)
    else:
        left = needed_s - age_s
    return Envelope(
        power=strength,
        unexplained_slope=unexplained,
        dry_most_slope=dry_most,
        falling=falling,
        leak=leak,
        wet=wet,
        clear=clear,
        undecided=why_open,
        next_instruction=instruction,
        next_step=step,
        time_left_s=left if instruction is Instruction.KEEP_HOLDING else None,
    )
