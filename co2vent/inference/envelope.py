"""Between the least slope that liquid keeps up and the most that dry metal gives while it warms."""

from dataclasses import dataclass

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.criteria import Criteria
from co2vent.inference.doubts import (
    gathers_pace,
    has_moved,
    may_be_liquid_yet,
    really_closed,
    rose_beyond_clamp,
    sure_over_ice,
)
from co2vent.inference.dry_limits import dry_most_slope, gas_bound_pa
from co2vent.inference.hold_facts import Hold
from co2vent.inference.joint import Shown, joint_share, run_of
from co2vent.inference.leak import Leak, leak_by
from co2vent.inference.losses import carried_off, deficit, is_falling, lost_before
from co2vent.inference.outcome import Instruction, LeakBy
from co2vent.inference.power import Power, explained_slope
from co2vent.inference.trend import Z_999, Trend, is_grainy
from co2vent.inference.undecided import undecided
from co2vent.inference.undecided_case import Doubts, Undecided
from co2vent.inference.wording import duration_text, kelvin_text, pressure_text, slope_text
from co2vent.sentence import Sentence


@dataclass(frozen=True, slots=True, kw_only=True)
class Envelope:
    """What a hold's slopes allow. Slopes in Pa/s; texts are `None` where the case does not hold."""

    power: Power
    unexplained_slope: float  # upper bound less what the metal's warming explains
    liquid_share: float  # of the least slope of liquid: what is not excluded, 1 or less
    shown: Shown | None  # what this hold can add to later ones
    dry_most_slope: float
    falling: bool
    leak: Leak
    wet: str | None
    clear: str | None
    undecided: Undecided
    time_left_s: float | None


def shown_by(hold: Hold) -> Shown | None:
    """What an ended hold adds to later ones: only one that would have cleared but for its error."""
    if hold.trend is None or hold.context.faults or not hold.context.vented:
        return None
    return envelope(hold, hold.trend).shown


def may_leak_by(hold: Hold) -> bool:
    """Whether a rise like liquid's may as well be flow past a valve: no metal at saturation."""
    return not hold.power.drive_k < hold.criteria.clamp_wet_k


def needed_s(trend: Trend, strength: Power, criteria: Criteria) -> float:
    """How old a hold must be before its end says something [s]."""
    shortest_s = criteria.shortest_clear_s
    if not strength.drive_k >= criteria.clamp_power_k:
        shortest_s = criteria.bare_clear_s
    return max(shortest_s, criteria.clear_time_constants * trend.tau_s)


def envelope(hold: Hold, trend: Trend) -> Envelope:
    """Return what this hold's slopes allow, given all that is known besides."""
    trace, blocks, context, criteria = hold.trace, hold.blocks, hold.context, hold.criteria
    setup, strength = context.setup, hold.power
    end_pa, line_k, age_s = hold.end_pa, hold.line_k, hold.age_s
    explained = explained_slope(trend, strength)
    carried = carried_off(context, end_pa, criteria)
    # what leaves hides as much of what boils
    unexplained = trend.slope_upper - explained + carried
    leak = leak_by(hold, trend)
    falling = is_falling(blocks, trend, context, criteria)
    dry_most = dry_most_slope(context, strength, age_s, end_pa, criteria)
    needed = needed_s(trend, strength, criteria)
    if carried > 0.0:
        needed = max(needed, criteria.leaky_hold_s)
    settled = age_s >= needed
    away = end_pa >= TRIPLE_PRESSURE_PA + hold.near_triple_pa
    bound_pa = gas_bound_pa(trace.first_pa, line_k, context, criteria)
    over_bound = end_pa - setup.gauge_error_pa > bound_pa
    wet = _liquid(hold, trend, dry_most, bound_pa if over_bound else None)

    # once below the triple point with liquid not excluded, ice may lie there; while it melts it
    # swallows the heat that would boil liquid, above the triple point too
    maybe_ice = hold.may_hold_ice

    least_wet = strength.least_wet_slope
    shut = context.valve_known or really_closed(trace, end_pa, strength, context, criteria)
    sinking = trend.slope <= -criteria.sinking_pa_per_s
    short = deficit(
        trend, strength, setup, trace.first_pa, end_pa, criteria, shown=context.shown_now
    )
    # what speaks against a quiet hold's being vapour only; how quiet it is comes after
    unopposed = (
        wet is None
        and away
        and not falling
        and not lost_before(context, criteria)
        and not over_bound
        and trend.misfit <= criteria.worst_misfit
        and (not maybe_ice or sure_over_ice(strength, unexplained, age_s, criteria))
        and not sinking
        and trend.warming_pa > -criteria.cooling_pa
        and not may_be_liquid_yet(trace.first_pa, end_pa, strength, context, criteria)
        and not rose_beyond_clamp(hold)
        and not short
        and leak.by is not LeakBy.SUSPECTED
        and shut
    )
    sound = unopposed and settled and has_moved(hold)
    share = max(unexplained, 0.0) / least_wet if least_wet > 0.0 else 1.0
    # a bound so far below nothing may as well hide a loss
    loses = trend.slope_lower <= -least_wet
    averaged = sound and not maybe_ice and not context.solid_seen
    mine = _shown(hold, trend, explained - carried) if averaged else None
    together = False
    if mine is not None and (share >= 1.0 or loses):
        run = run_of([one.shown for one in context.earlier])
        joint = joint_share(mine, run, criteria)
        together = joint < 1.0
        if together:
            share, loses = joint, False
    share = min(share, 1.0)
    under = settled and share < 1.0
    asked = under or mine is not None or context.shown_now
    pace = asked and gathers_pace(blocks, strength, context, criteria)
    if pace:
        mine = None
    clear: str | None = None
    if sound and under and not loses and not pace:
        clear = _vapor_only_words(hold, trend, explained, share if together else None)
    elif (
        context.shown_now
        and unopposed
        and not pace
        and still_stands(hold, trend, explained - carried)
    ):
        clear = _still_words(hold, trend)
    if clear is not None:
        leak = Leak(LeakBy.NONE, "")
    why_not = undecided(
        hold,
        trend,
        Doubts(
            settled=settled,
            away=away,
            quiet=share < 1.0,
            gathers_pace=pace and under,
            shut=shut,
            may_lose=loses or sinking,
            carried=carried,
        ),
    )
    left_s = max(0.3 * age_s, 30.0) if settled else needed - age_s
    waits = why_not.waits and why_not.instruction is Instruction.KEEP_HOLDING
    return Envelope(
        power=strength,
        unexplained_slope=unexplained,
        liquid_share=share,
        shown=mine,
        dry_most_slope=dry_most,
        falling=falling,
        leak=leak,
        wet=wet,
        clear=clear,
        undecided=why_not,
        time_left_s=left_s if waits else None,
    )


def _shown(hold: Hold, trend: Trend, explained: float) -> Shown | None:
    """The hold's slope over its limit; `None` without power, or if averaging is not allowed."""
    context, least = hold.context, hold.power.least_wet_slope
    # steps that the noise does not dither are the same error in every hold, and where the valve is
    # only guessed a hold's end may be the beginning of the next vent
    if least <= 0.0 or not context.valve_known or is_grainy(context.noise_pa, context.step_pa):
        return None
    error = max(trend.slope_upper - trend.slope, 0.0) / Z_999
    return Shown((trend.slope - explained) / least, error / least)


def still_stands(hold: Hold, trend: Trend, explained: float) -> bool:
    """Whether a verdict that this hold has given stands on: to take it back wants evidence.

    The limit falls with the hold's age, and a bound comes and goes about it: in one run of the
    third model 60 of 212 verdicts were lost again in the hold that gave them.
    """
    criteria, least = hold.criteria, hold.power.least_wet_slope
    return (
        trend.slope - explained < criteria.stands_best * least
        and trend.slope_upper - explained < criteria.stands_most * least
        and trend.slope_lower > -least
    )


def _still_words(hold: Hold, trend: Trend) -> Sentence:
    setup, strength = hold.context.setup, hold.power
    return Sentence(
        "Vapour only: this hold has shown it, and after {time} nothing speaks against it: rising "
        "about {slope}, and liquid above the allowable amount would keep up {least} or more "
        "({source}).",
        time=duration_text(hold.age_s),
        slope=slope_text(trend.slope, setup),
        least=slope_text(strength.least_wet_slope, setup),
        source=strength.source,
    )


def _vapor_only_words(
    hold: Hold, trend: Trend, explained: float, joint_share: float | None
) -> Sentence:
    """Why it is vapour only: by this hold alone, or with a share by all holds together."""
    setup, strength = hold.context.setup, hold.power
    least = slope_text(strength.least_wet_slope, setup)
    given = Sentence(" ({source})", source=strength.source) if strength.source else ""
    if joint_share is not None:
        return Sentence(
            "Vapour only: together with the holds before, at most {share} of the {least} that "
            "liquid above the allowable amount would keep up{given}; this hold, after {time}, "
            "shows {rising}.",
            share=f"{100.0 * joint_share:.0f} %",
            least=least,
            given=given,
            time=duration_text(hold.age_s),
            rising=slope_text(trend.slope, setup),
        )
    at_most: str = slope_text(trend.slope_upper, setup)
    if explained > 0.1 * abs(trend.slope_upper):
        part = slope_text(explained, setup)
        at_most = Sentence("{most}, {part} of it the metal's warming", most=at_most, part=part)
    return Sentence(
        "Vapour only: after {time} the pressure rises at most {most}; liquid above the "
        "allowable amount would keep up {least} or more{given}.",
        time=duration_text(hold.age_s),
        most=at_most,
        least=least,
        given=given,
    )


def _liquid(hold: Hold, trend: Trend, dry_most: float, passed_pa: float | None) -> str | None:
    """Why it must be liquid; `None` if it need not be. `passed_pa`: the bound of gas, if passed."""
    setup, criteria, drive_k = hold.context.setup, hold.criteria, hold.power.drive_k
    rising = slope_text(trend.slope, setup)
    inside = Sentence("Liquid or leak-by") if may_leak_by(hold) else Sentence("Liquid")
    warmed = hold.age_s >= max(criteria.shortest_clear_s, 2.0 * trend.tau_s)
    if trend.slope_lower > dry_most and warmed:
        why = (
            Sentence("the clamp is only {drive} from saturation", drive=kelvin_text(drive_k))
            if drive_k < criteria.clamp_wet_k
            else Sentence(
                "dry metal that warms gives at most {most}", most=slope_text(dry_most, setup)
            )
        )
        return Sentence(
            "{inside}: after {time} the pressure still rises {slope} and {why}.",
            inside=inside,
            time=duration_text(hold.age_s),
            slope=rising,
            why=why,
        )
    if passed_pa is not None and trend.slope_lower > 0.0:
        return Sentence(
            "{inside}: {pressure} and rising {slope} is more than gas warming from {start} can "
            "reach ({bound}).",
            inside=inside,
            pressure=pressure_text(hold.end_pa, setup),
            slope=rising,
            start=pressure_text(hold.trace.first_pa, setup),
            bound=pressure_text(passed_pa, setup),
        )
    return None
