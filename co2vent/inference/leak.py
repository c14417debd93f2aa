"""Flow past a closed valve: the same mass flow at two pressures.

A choked leak does not feel the section's pressure. Boiling does: its drive, metal above saturation,
shrinks as the pressure rises; or, in a full insulated section, the slope grows with the steepness
of the saturation line. Slopes are compared as mass flow per volume, because the same flow raises
the pressure of a denser gas less (real gas: 15 % between 6 and 14 bar abs). Before that what the
metal's own warming gives is taken off: it lifts a denser gas by more.
"""

from dataclasses import dataclass
from math import exp, isfinite

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.criteria import Criteria
from co2vent.inference.hold_facts import Hold
from co2vent.inference.lines import saturated_k
from co2vent.inference.mass_flow import mass_slope
from co2vent.inference.outcome import LeakBy
from co2vent.inference.outrun import outruns, parts_of
from co2vent.inference.trend import Trend
from co2vent.inference.wording import kelvin_text, pressure_text, slope_text
from co2vent.sentence import Sentence


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
    within: bool = False  # the same hold's own middle


def _points(hold: Hold, trend: Trend) -> list[_Point]:
    """This hold's end and middle, and the ends of earlier holds."""
    blocks, strength, criteria = hold.blocks, hold.power, hold.criteria
    bare = hold.context.setup.insulated is False
    share = criteria.compensated_bare if bare else criteria.compensated_insulated
    found: list[_Point] = []

    def add(
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
        flow = mass_slope(pressure_pa, slope, line_k)
        if flow is not None:
            found.append(_Point(pressure_pa, steady, slope, flow, drive_k, straight, within))

    end_pa, straight = float(blocks.p[-1]), _is_straight(trend, criteria)
    metal_slope = strength.metal_slope
    add(end_pa, trend.steady, straight, strength.drive_k, hold.line_k, metal_slope)
    for other in hold.context.earlier:
        if other.number >= 1 and other.duration_s >= criteria.shortest_clear_s:
            add(
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
        add(middle_pa, earlier, straight, drive_k, hold.line_k, warming, within=True)
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
    parts = parts_of(hold.blocks, hold.context.noise_pa, hold.context.step_pa)
    if parts is not None and hold.end_pa > TRIPLE_PRESSURE_PA:
        early, late = parts
        if outruns(early, late, criteria):
            return Leak(
                LeakBy.SUSPECTED,
                Sentence(
                    "Flow past a closed valve suspected: it rises {late_slope} near {late}, as "
                    "{early_slope} near {early} before, though the lowest metal is only "
                    "{late_drive} above saturation now and was {early_drive}; boiling would fade.",
                    late_slope=slope_text(late.slope, setup),
                    late=pressure_text(late.pressure_pa, setup),
                    early_slope=slope_text(early.slope, setup),
                    early=pressure_text(early.pressure_pa, setup),
                    late_drive=kelvin_text(late.drive_k),
                    early_drive=kelvin_text(early.drive_k),
                ),
            )
    here, *others = _points(hold, trend)
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
                    "would change, unless the liquid takes in little heat.",
                    here_slope=slope_text(here.slope, setup),
                    here=pressure_text(here.pressure_pa, setup),
                    there_slope=slope_text(other.slope, setup),
                    there=pressure_text(other.pressure_pa, setup),
                ),
            )
    return none


def holds_alike(hold: Hold, trend: Trend) -> int:
    """How many holds in a row, this one counted, rose by the same mass flow at their end.

    What boils dwindles, what comes past a valve does not; but kilograms dwindle slowly, and a flow
    that stays the same proves nothing. It is worth a look at the valves before one more vent.
    """
    criteria = hold.criteria
    here = mass_slope(hold.end_pa, trend.slope, hold.line_k)
    count = 1
    for one in reversed(hold.context.earlier):
        before = mass_slope(one.end_pa, one.trend.slope, one.line_k)
        if one.number < 1 or here is None or before is None or here <= 0.0 or before <= 0.0:
            break
        if abs(before / here - 1.0) > criteria.alike_within:
            break
        count += 1
    return count
