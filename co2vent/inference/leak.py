"""Flow past a closed valve: the same mass flow at two pressures.

A choked leak does not feel the section's pressure. Boiling does: its drive, metal above saturation,
shrinks as the pressure rises; or, in a full insulated section, the slope grows with the steepness
of the saturation line. Slopes are compared as mass flow per volume, because the same flow raises
the pressure of a denser gas less (real gas: 15 % between 6 and 14 bar abs). Before that what the
metal's own warming gives is taken off: it lifts a denser gas by more.
"""

from dataclasses import dataclass
from math import exp, isfinite

from co2vent.co2 import TRIPLE_PRESSURE_PA, vapor_density_kg_m3, vapor_pressure_pa
from co2vent.errors import OutOfRangeError
from co2vent.inference.criteria import Criteria
from co2vent.inference.hold_facts import Hold
from co2vent.inference.lines import saturated_k
from co2vent.inference.outcome import LeakBy
from co2vent.inference.trend import Trend
from co2vent.inference.vent_fall import same_fall, sooner
from co2vent.inference.wording import pressure_text, slope_text
from co2vent.sentence import Sentence

GAS_K = 248.15  # gas of a closed cold section without a clamp; 20 K change the ratio by under 2 %


@dataclass(frozen=True, slots=True)
class Leak:
    """Whether flow into the section is suspected, and the sentence that says why."""

    by: LeakBy
    reason: str


@dataclass(frozen=True, slots=True)
class _Point:
    pressure_pa: float
    steady: float  # the part of the slope that is not gas warming, Pa/s
    slope: float  # that less what the metal's warming gives
    mass_slope: float  # kg/s per m3 of section
    drive_k: float
    straight: bool
    hold: int
    within: bool = False  # the same hold's own middle


def _mass_slope(pressure_pa: float, slope: float, line_k: float) -> float | None:
    """The flow per volume [kg/s/m3] that gives `slope` at a pressure."""
    try:
        warm = saturated_k(pressure_pa) + 4.0
        gas_k = min(max(line_k if isfinite(line_k) else GAS_K, warm), 310.0)
        density = vapor_density_kg_m3(pressure_pa, gas_k)
        steeper = vapor_pressure_pa(density * 1.01, gas_k) - vapor_pressure_pa(
            density * 0.99, gas_k
        )
    except OutOfRangeError:
        return None
    return slope * 0.02 * density / steeper


def _points(hold: Hold, trend: Trend) -> list[_Point]:
    """This hold's end and middle, and the ends of earlier holds."""
    blocks, strength, criteria = hold.blocks, hold.power, hold.criteria
    bare = hold.context.setup.insulated is False
    share = criteria.compensated_bare if bare else criteria.compensated_insulated
    found: list[_Point] = []

    def add(
        number: int,
        pressure_pa: float,
        steady: float,
        straight: bool,
        drive_k: float,
        line_k: float,
        metal_slope: float,
        within: bool = False,
    ) -> None:
        # metal that warms lifts a denser gas by more, and would make one flow look like two
        slope = steady - min(share * metal_slope, criteria.leak_warming_most * max(steady, 0.0))
        flow = _mass_slope(pressure_pa, slope, line_k)
        if flow is not None:
            found.append(
                _Point(pressure_pa, steady, slope, flow, drive_k, straight, number, within)
            )

    end_pa, straight = float(blocks.p[-1]), _is_straight(trend, criteria)
    metal_slope = strength.metal_slope
    number = hold.context.number
    add(number, end_pa, trend.steady, straight, strength.drive_k, hold.line_k, metal_slope)
    for other in hold.context.earlier:
        if other.number >= 1 and other.duration_s >= criteria.shortest_clear_s:
            add(
                other.number,
                other.end_pa,
                other.trend.steady,
                _is_straight(other.trend, criteria),
                other.drive_k,
                other.line_k,
                other.metal_slope,
            )
    middle = int(0.4 * blocks.t.size)
    middle_s = float(blocks.t[middle])
    if middle_s > 2.0 * trend.tau_s and hold.age_s >= 2.0 * criteria.shortest_clear_s:
        earlier = trend.steady * exp((hold.age_s - middle_s) / trend.theta_s)
        middle_pa = float(blocks.p[middle])
        drive_k = float(blocks.line_k[middle]) - saturated_k(middle_pa)
        warming = metal_slope * middle_pa / end_pa
        add(number, middle_pa, earlier, straight, drive_k, hold.line_k, warming, within=True)
    return found


def _is_straight(trend: Trend, criteria: Criteria) -> bool:
    return trend.theta_s >= criteria.leak_straight_s


def leak_by(hold: Hold, trend: Trend) -> Leak:
    """Compare this hold with other pressures: earlier holds, and its own middle."""
    setup, criteria = hold.context.setup, hold.criteria
    none = Leak(LeakBy.UNDETERMINED, "")
    if hold.age_s < criteria.shortest_clear_s:
        return none
    if trend.steady_lower < criteria.leak_least_slope:
        return none
    here, *others = _points(hold, trend)
    if replaced := _replaced(hold, here, others):
        return Leak(LeakBy.SUSPECTED, replaced)
    low_hold = here.pressure_pa < TRIPLE_PRESSURE_PA
    for other in others:
        # below the triple point only dry ice gives off gas, above it liquid: only a flow from
        # outside is the same in both
        if low_hold and other.pressure_pa < TRIPLE_PRESSURE_PA + criteria.leak_apart_pa:
            continue
        apart_pa = abs(other.pressure_pa - here.pressure_pa)
        if apart_pa < criteria.leak_apart_pa:
            continue
        if other.steady < criteria.leak_least_slope or other.mass_slope <= 0.0:
            continue
        low = min(here, other, key=lambda point: point.pressure_pa)
        high = max(here, other, key=lambda point: point.pressure_pa)
        width = criteria.leak_ratio_loose
        if other.within:
            width = criteria.leak_ratio_within
            if not low.drive_k >= criteria.leak_drive_within_k:
                continue
        elif isfinite(low.drive_k):
            if low.drive_k < criteria.clamp_power_k:
                continue  # metal at saturation: boiling explains it
        elif here.straight and other.straight and apart_pa >= criteria.leak_apart_unseen_pa:
            width = criteria.leak_ratio_tight
        else:
            continue
        if abs(high.mass_slope / low.mass_slope - 1.0) < width:
            return Leak(
                LeakBy.SUSPECTED,
                Sentence(
                    "Flow past a closed valve suspected: {here_slope} near {here} and "
                    "{there_slope} near {there} are one mass flow at two pressures; boiling "
                    "would change.",
                    here_slope=slope_text(here.slope, setup),
                    here=pressure_text(here.pressure_pa, setup),
                    there_slope=slope_text(other.slope, setup),
                    there=pressure_text(other.pressure_pa, setup),
                ),
            )
    return none


def _replaced(hold: Hold, here: _Point, others: list[_Point]) -> str | None:
    """Whether what left in vents and holds was replaced (see `vent_fall.py`); why, or `None`.

    Three vents or more must fall alike, which also shows that a hand opened the valve alike.
    """
    context, criteria = hold.context, hold.criteria
    setup, falls = context.setup, context.falls
    if not falls or falls[-1].hold != here.hold or here.pressure_pa < TRIPLE_PRESSURE_PA:
        return None
    error_pa = max(context.step_pa, 2.0 * context.noise_pa)
    rises = {point.hold: point.mass_slope for point in others if not point.within}
    alike = 0.0  # most that a fall since differs from the last one
    for index in range(len(falls) - 2, -1, -1):
        first = falls[index]
        margin_pa = max(error_pa, criteria.replaced_margin * first.pa[0])
        fall = same_fall(first, falls[index + 1 :], margin_pa)
        if fall is None or min(fall.before_s, fall.now_s) < criteria.replaced_fall_s:
            return None
        error = 2.0 * error_pa / (fall.high_pa - fall.low_pa)
        alike = max(alike, abs(sooner(fall)) + error)
        if index > len(falls) - 3 or fall.boiled < criteria.replaced_least:
            continue
        if alike >= criteria.replaced_most * fall.boiled:
            continue
        before = rises.get(first.hold, 0.0)
        if before <= 0.0 or abs(here.mass_slope / before - 1.0) > criteria.replaced_alike:
            continue
        return Sentence(
            "Flow past a closed valve suspected: the last {count} vents fell alike ({high} to "
            "{low} in {before}, now in {now}) and the pressure rises {slope} as it did then; "
            "liquid would be {share} less since, and let it fall faster.",
            count=str(len(falls) - index),
            high=pressure_text(fall.high_pa, setup),
            low=pressure_text(fall.low_pa, setup),
            before=f"{fall.before_s:.0f} s",
            now=f"{fall.now_s:.0f} s",
            slope=slope_text(here.slope, setup),
            share=f"{100.0 * fall.boiled:.0f} %",
        )
    return None
