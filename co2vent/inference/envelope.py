"""Between the least slope that liquid keeps up and the most that dry metal gives while it warms."""

from dataclasses import dataclass
from math import inf, isfinite
from typing import TYPE_CHECKING

from co2vent.co2 import (
    TRIPLE_PRESSURE_PA,
    vapor_density_kg_m3,
    vapor_density_saturated_kg_m3,
    vapor_pressure_pa,
)
from co2vent.errors import OutOfRangeError
from co2vent.inference.criteria import Criteria
from co2vent.inference.leak import Leak, leak_by
from co2vent.inference.lines import saturated_k, snow_k
from co2vent.inference.outcome import Instruction, LeakBy
from co2vent.inference.power import Power, power
from co2vent.inference.trace import HoldArrays, HoldTrace
from co2vent.inference.trend import Trend
from co2vent.inference.wording import duration_text, pressure_text, slope_text
from co2vent.sentence import Sentence

if TYPE_CHECKING:
    from co2vent.inference.verdict import HoldContext


LEAST_GAS_BOUND_PA = 2.0e4  # under it a section is all but empty; no bound is needed


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


def envelope(
    trace: HoldTrace,
    blocks: HoldArrays,
    trend: Trend,
    context: "HoldContext",
    line: tuple[float, float],
    criteria: Criteria,
) -> Envelope:
    """Return what this hold's slopes allow, given all that is known besides."""
    setup = context.setup
    end_pa = float(blocks.p[-1])
    age_s = float(blocks.t[-1])
    line_k, line_slope = line
    strength = power(setup, end_pa, line_k, line_slope, criteria)
    # never more than two fifths of the rise: gas near the clamp's metal is not all the gas
    explained = min(strength.warming_slope, 0.4 * max(trend.slope_upper, 0.0))
    unexplained = trend.slope_upper - explained
    leak = leak_by(blocks, trend, strength, line_k, context, criteria)
    falling = is_falling(blocks, trend, context, criteria)
    dry_most = _dry_most(context, strength, age_s, end_pa, criteria)
    shortest_s = criteria.shortest_clear_s
    if not strength.drive_k >= criteria.clamp_power_k:
        before = any(
            hold.number >= 1 and hold.duration_s >= criteria.shortest_clear_s
            for hold in context.earlier
        )
        shortest_s = criteria.bare_again_s if before else criteria.bare_clear_s
    needed_s = max(shortest_s, criteria.clear_time_constants * trend.tau_s)
    settled = age_s >= needed_s
    away_pa = setup.gauge_error_pa + criteria.near_triple_pa
    away = end_pa >= TRIPLE_PRESSURE_PA + away_pa
    bound_pa = _gas_bound(trace.first_pa, line_k, context, criteria)
    over_bound = end_pa - setup.gauge_error_pa > bound_pa
    rising, at_most = slope_text(trend.slope, setup), slope_text(trend.slope_upper, setup)
    least = slope_text(strength.least_wet_slope, setup)

    # once below the triple point with liquid not excluded, ice may lie there; while it melts it
    # swallows the heat that would boil liquid, above the triple point too
    maybe_ice = context.lowest_pa < TRIPLE_PRESSURE_PA and not context.cleared

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
        settled
        and away
        and not falling
        and not (context.earlier and context.earlier[-1].falling)
        and not over_bound
        and trace.changes >= criteria.least_changes
        and trend.misfit <= criteria.worst_misfit
        and unexplained < strength.least_wet_slope
        and (not maybe_ice or _sure_over_ice(strength, unexplained, age_s, criteria))
        and trend.slope > -criteria.sinking_pa_per_s
        and trend.slope_lower > -strength.least_wet_slope
        and trend.warming_pa > -criteria.cooling_pa
        and not _may_be_liquid_yet(trace.first_pa, end_pa, context, criteria)
        and not _deficit(trend, strength, criteria)
        and (context.valve_known or _really_closed(trace, end_pa, strength, context, criteria))
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
    undecided, step, instruction = _undecided(
        trace, trend, context, strength, leak, settled, away, falling, criteria
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
        undecided=undecided,
        next_instruction=instruction,
        next_step=step,
        time_left_s=left if instruction is Instruction.KEEP_HOLDING else None,
    )


def _really_closed(
    trace: HoldTrace, end_pa: float, strength: Power, context: "HoldContext", criteria: Criteria
) -> bool:
    """Without a valve column: whether the pressure rose as behind a shut valve, on warm metal.

    An open vent that just carries off what boils stands as still as a quiet hold.
    """
    least = max(criteria.least_closed_rise_pa, 1.2 * context.step_pa, 5.0 * context.noise_pa)
    return end_pa - trace.first_pa >= least and strength.drive_k >= criteria.clamp_power_k


def _may_be_liquid_yet(
    first_pa: float, end_pa: float, context: "HoldContext", criteria: Criteria
) -> bool:
    """Whether a large rise may have slowed for another reason than gas that has warmed.

    Gas rises less in its next hold from the same pressure; liquid, boiling badly or in balance
    with an outward leak, rises as much again.
    """
    rise = end_pa / first_pa - 1.0
    volume = context.setup.section_volume_m3
    large = volume is not None and volume > criteria.balance_volume_m3
    if rise <= (criteria.most_first_rise if large else criteria.most_first_rise_small):
        return False
    return not any(
        hold.number >= 1
        and abs(hold.start_pa / first_pa - 1.0) < criteria.most_first_rise
        and hold.end_pa / hold.start_pa - 1.0 > criteria.less_than_before * rise
        for hold in context.earlier
    )


def _deficit(trend: Trend, strength: Power, criteria: Criteria) -> bool:
    """Whether the gas gains less than its metal's warming gives: a loss may hide boiling."""
    warming = strength.metal_slope
    return (
        warming >= criteria.deficit_least_slope
        and trend.slope_upper < criteria.deficit_share * warming
    )


def _sure_over_ice(strength: Power, unexplained: float, age_s: float, criteria: Criteria) -> bool:
    """Whether a hold clears a section that may hold melting ice: warm lowest metal, and quieter."""
    return (
        strength.drive_k >= criteria.ice_drive_k
        and unexplained < criteria.ice_quieter * strength.least_wet_slope
        and age_s >= criteria.ice_hold_s
    )


def room_to_vent_pa(context: "HoldContext", criteria: Criteria) -> float:
    """How far above the stop pressure a vent must begin so that a hand can still stop it there."""
    by_rate = min(context.fall_pa_per_s * criteria.revent_hand_s, criteria.revent_most_pa)
    return max(criteria.revent_above_stop_pa, by_rate)


def is_falling(
    blocks: HoldArrays, trend: Trend, context: "HoldContext", criteria: Criteria
) -> bool:
    """Whether the closed section loses pressure: an outward leak can hide boiling."""
    if trend.slope_upper < -criteria.falling_pa_per_s:
        return True
    # a loss that the gas warming still hides counts: the steady part says it
    hidden = trend.steady_upper < -criteria.falling_pa_per_s
    if hidden and trend.slope < -criteria.slope_floor_pa_per_s:
        return True
    lost = float(blocks.p.max()) - float(blocks.p[-1])
    return lost > max(1.5 * context.step_pa, 5.0 * trend.sigma_pa, 2_000.0)


def _dry_most(
    context: "HoldContext", strength: Power, age_s: float, end_pa: float, criteria: Criteria
) -> float:
    """The most that metal warming gives [Pa/s]."""
    if strength.drive_k < criteria.clamp_wet_k:
        return criteria.dry_slope_cold_clamp
    most = criteria.dry_slope_insulated if context.setup.insulated else criteria.dry_slope_bare
    # the same warming of denser gas gives more: the limits were set near the stop pressure
    most *= max(end_pa / criteria.dry_slope_at_pa, 1.0)
    if age_s < criteria.dry_settled_s:
        most *= criteria.dry_slope_early_factor
    # never less than what a powered hold would let pass as dry
    return max(most, 1.3 * strength.least_wet_slope)


def _gas_bound(first_pa: float, line_k: float, context: "HoldContext", criteria: Criteria) -> float:
    """The highest pressure [Pa] that the gas shut in can reach by warming alone.

    The coldest gas at `first_pa` is saturated; at constant density it can get as warm as the
    warmest metal, which is no warmer than the ambient or the charge was.
    """
    hottest = criteria.hottest_k
    if context.ambient_k is not None:
        known = [context.ambient_k]
        if context.first_pa is not None:
            known.append(saturated_k(context.first_pa))
        if isfinite(line_k):
            known.append(line_k)
        hottest = min(max(known) + 5.0, criteria.hottest_k)
    if first_pa < TRIPLE_PRESSURE_PA:
        least_pa = max(first_pa, LEAST_GAS_BOUND_PA)
        density = vapor_density_kg_m3(0.999 * least_pa, snow_k(least_pa))
    else:
        density = vapor_density_saturated_kg_m3(saturated_k(min(first_pa, 5.9e6)))
    try:
        return vapor_pressure_pa(density, hottest)
    except OutOfRangeError:
        return inf  # near the critical pressure the vapour's range ends: no bound


def _undecided(
    trace: HoldTrace,
    trend: Trend,
    context: "HoldContext",
    strength: Power,
    leak: Leak,
    settled: bool,
    away: bool,
    falling: bool,
    criteria: Criteria,
) -> tuple[str, str, Instruction]:
    """Why nothing is known yet, the cheapest step that would decide, and the prompt for it."""
    setup, age_s = context.setup, trace.duration_s
    keep = Instruction.KEEP_HOLDING
    least = slope_text(strength.least_wet_slope, setup)
    between = Sentence(
        "rising between {least} and {most}",
        least=slope_text(trend.slope_lower, setup),
        most=slope_text(trend.slope_upper, setup),
    )
    if not settled:
        return (
            Sentence(
                "Not known yet: {time} into the hold; the first rise is gas warming in every case.",
                time=duration_text(age_s),
            ),
            Sentence("Keep holding."),
            keep,
        )
    if trace.changes < criteria.least_changes:
        return (
            Sentence(
                "Not known: the reading has not moved since the vent closed; a gauge that is cut "
                "off looks the same. Crack the vent and see it answer."
            ),
            Sentence("Crack the vent and see the gauge answer."),
            Instruction.CHECK_GAUGE if age_s > 2.0 * criteria.shortest_clear_s else keep,
        )
    if not away:
        return (
            Sentence(
                "Not known: {pressure} is too near the triple point to tell a quiet gas from "
                "melting dry ice.",
                pressure=pressure_text(float(trace.last_pa), setup),
            ),
            Sentence("Keep holding: dry ice that has melted lets the pressure climb on."),
            keep,
        )
    quiet = trend.slope_upper < strength.least_wet_slope
    if quiet and context.lowest_pa < TRIPLE_PRESSURE_PA and not context.cleared:
        return (
            Sentence(
                "Not known: {between}, but the section has been below the triple point, and dry "
                "ice that melts swallows the heat that would show liquid.",
                between=between,
            ),
            Sentence("Warm the lowest point 15 K above saturation and hold 5 min."),
            keep,
        )
    if quiet and _deficit(trend, strength, criteria):
        return (
            Sentence(
                "Not known: {between}, less than the {gain} that the metal's warming gives "
                "shut-in gas: an outward leak may hide boiling.",
                between=between,
                gain=slope_text(strength.metal_slope, setup),
            ),
            Sentence("Prove the vent and the joints tight, and hold again."),
            keep,
        )
    if trend.misfit > criteria.worst_misfit:
        return (
            Sentence(
                "Not known yet: {between}, but the curve is not that of a closed section left "
                "alone.",
                between=between,
            ),
            Sentence("Leave the section still and hold again."),
            keep,
        )
    room = float(trace.last_pa) > context.stop_pa + room_to_vent_pa(context, criteria)
    long = age_s > criteria.long_hold_s and room
    if quiet and _may_be_liquid_yet(trace.first_pa, float(trace.last_pa), context, criteria):
        return (
            Sentence(
                "Not known: {between}, but it rose to {pressure} first; gas rises less from the "
                "same pressure the next time, liquid as much again.",
                between=between,
                pressure=pressure_text(float(trace.last_pa), setup),
            ),
            Sentence("Vent to the stop pressure and hold again: the rise must be smaller."),
            Instruction.VENT_AGAIN if room else keep,
        )
    if not strength.source and trend.slope_upper < criteria.dry_slope_bare:
        if strength.drive_k >= criteria.clamp_power_k:
            return (
                Sentence(
                    "Not known: {between}, and the clamp cools though the vent is shut: what is "
                    "near it may boil.",
                    between=between,
                ),
                Sentence("Hold on until the clamp stands or warms."),
                Instruction.VENT_AGAIN if long else keep,
            )
        if isfinite(strength.drive_k):
            step = Sentence(
                "The clamp is {drive} above saturation: warm the lowest point to {wanted} above "
                "it and hold again.",
                drive=f"{strength.drive_k:.0f} K",
                wanted=f"{criteria.clamp_power_k + 4:.0f} K",
            )
        else:
            step = Sentence("Put a clamp on the lowest point, or say that the metal is bare.")
        return (
            Sentence(
                "Not known: {between}, and with no metal shown warm this hold has no power; "
                "insulated liquid can rise as slowly as {least}.",
                between=between,
                least=least,
            ),
            step,
            Instruction.VENT_AGAIN if long else keep,
        )
    return (
        Sentence(
            "Not known yet: {between}; liquid would keep up {least} or more{given}.",
            between=between,
            least=least,
            given=Sentence(" ({source})", source=strength.source) if strength.source else "",
        ),
        Sentence("Hold on; if it does not settle, vent to the stop pressure and hold again."),
        Instruction.VENT_AGAIN if long else keep,
    )
