"""Not known, for what the record shows besides its late slope: age, gauge, ice, losses, shape."""

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.doubts import has_moved
from co2vent.inference.losses import deficit, lost_before
from co2vent.inference.outcome import Instruction
from co2vent.inference.undecided_case import Case, Undecided, crack_the_vent, not_moved
from co2vent.inference.wording import duration_text, kelvin_text, pressure_text, slope_text
from co2vent.sentence import Sentence

KEEP = Instruction.KEEP_HOLDING


def young(case: Case) -> Undecided | None:
    """The first rise is gas warming in every case; behind a leak it takes longer to tell."""
    criteria, age_s = case.hold.criteria, case.age_s
    if case.found.settled:
        return None
    if case.found.carried > 0.0 and age_s >= criteria.shortest_clear_s:
        return Undecided(
            Sentence(
                "Not known yet: {time} into the hold; one before fell or gained too little, and "
                "before {needed} boiling in balance with a leak can't be told from quiet.",
                time=duration_text(age_s),
                needed=duration_text(criteria.leaky_hold_s),
            ),
            Sentence("Keep holding."),
            KEEP,
        )
    return Undecided(
        Sentence(
            "Not known yet: {time} into the hold; the first rise is gas warming in every case.",
            time=duration_text(age_s),
        ),
        Sentence("Keep holding."),
        KEEP,
    )


def still(case: Case) -> Undecided | None:
    """A reading that has not moved is no measurement."""
    if has_moved(case.hold):
        return None
    old = case.age_s > 2.0 * case.hold.criteria.shortest_clear_s
    return Undecided(not_moved(), crack_the_vent(), Instruction.CHECK_GAUGE if old else KEEP)


def near_triple_point(case: Case) -> Undecided | None:
    """Melting dry ice stands as quietly there."""
    if case.found.away:
        return None
    return Undecided(
        Sentence(
            "Not known: {pressure} is too near the triple point to tell a quiet gas from "
            "melting dry ice.",
            pressure=pressure_text(case.hold.end_pa, case.hold.context.setup),
        ),
        Sentence("Keep holding: dry ice that has melted lets the pressure climb on."),
        KEEP,
    )


def melting(case: Case) -> Undecided | None:
    """Ice that was formed below the triple point swallows the heat that would show liquid."""
    context = case.hold.context
    if not case.found.quiet or context.cleared or context.lowest_pa >= TRIPLE_PRESSURE_PA:
        return None
    return Undecided(
        Sentence(
            "Not known: {between}, but the section has been below the triple point, and dry "
            "ice that melts swallows the heat that would show liquid.",
            between=case.between,
        ),
        Sentence(
            "Warm the lowest point {drive} above saturation and hold 5 min.",
            drive=kelvin_text(15.0),
        ),
        KEEP,
    )


def gains_too_little(case: Case) -> Undecided | None:
    """An outward leak may hide boiling: less is gained than the metal's warming gives."""
    hold, trend = case.hold, case.trend
    context, strength = hold.context, hold.power
    setup = context.setup
    if not case.found.quiet or not deficit(
        trend,
        strength,
        setup,
        hold.trace.first_pa,
        hold.end_pa,
        hold.criteria,
        shown=context.shown_now,
    ):
        return None
    return Undecided(
        Sentence(
            "Not known: rising about {slope}, less than the {gain} that the metal's warming "
            "gives shut-in gas by itself: an outward leak may hide boiling.",
            slope=slope_text(trend.slope, setup),
            gain=slope_text(strength.metal_slope, setup),
        ),
        Sentence("Prove the vent and the joints tight, and hold again."),
        KEEP,
        waits=False,
    )


def lost_in_the_last(case: Case) -> Undecided | None:
    """The hold before lost pressure, or gained all but nothing."""
    if not case.found.quiet or not lost_before(case.hold.context, case.hold.criteria):
        return None
    return Undecided(
        Sentence(
            "Not known: {between}, but the hold before lost pressure, or gained less than its "
            "metal's warming gives: an outward leak may hide boiling.",
            between=case.between,
        ),
        Sentence("Prove the vent and the joints tight, and hold again."),
        KEEP,
        waits=False,
    )


def gathers_pace(case: Case) -> Undecided | None:
    """What warms dry gas fades."""
    if not case.found.gathers_pace or case.trend.slope_upper <= 0.0:
        return None
    return Undecided(
        Sentence(
            "Not known: rising at most {most}, but faster now than before; what warms dry gas "
            "fades, and only boiling gathers pace.",
            most=slope_text(case.trend.slope_upper, case.hold.context.setup),
        ),
        Sentence("Hold on: boiling that gathers pace will show."),
        KEEP,
    )


def odd_shape(case: Case) -> Undecided | None:
    """The curve is not that of a closed section."""
    if case.trend.misfit <= case.hold.criteria.worst_misfit:
        return None
    return Undecided(
        Sentence(
            "Not known yet: {between}, but the curve is not that of a closed section left alone.",
            between=case.between,
        ),
        Sentence("Leave the section still and hold again."),
        KEEP,
    )


def leaves_too_much(case: Case) -> Undecided | None:
    """Quiet by itself, but not with what a hold before showed to leave."""
    found, least = case.found, case.hold.power.least_wet_slope
    if found.carried <= 0.0 or found.quiet or case.trend.slope_upper >= least:
        return None
    return Undecided(
        Sentence(
            "Not known: {between}, but a hold before showed that {lost} or more leaves the "
            "section; with that added, the {least} of liquid is not excluded.",
            between=case.between,
            lost=slope_text(found.carried, case.hold.context.setup),
            least=case.least,
        ),
        Sentence("Prove the vent and the joints tight, and hold again."),
        case.vent_if_long,
        waits=False,
    )
