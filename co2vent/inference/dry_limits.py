"""The most that a dry section gives: by metal that warms, and by the gas shut in."""

from math import inf, isfinite

from co2vent.co2 import (
    TRIPLE_PRESSURE_PA,
    vapor_density_kg_m3,
    vapor_density_saturated_kg_m3,
    vapor_pressure_pa,
)
from co2vent.errors import OutOfRangeError
from co2vent.inference.criteria import Criteria
from co2vent.inference.hold_facts import HoldContext
from co2vent.inference.lines import saturated_k, snow_k
from co2vent.inference.power import Power

LEAST_GAS_BOUND_PA = 2.0e4  # under it a section is all but empty; no bound is needed


def dry_most_slope(
    context: HoldContext, strength: Power, age_s: float, end_pa: float, criteria: Criteria
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


def gas_bound_pa(first_pa: float, line_k: float, context: HoldContext, criteria: Criteria) -> float:
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
    return gas_warmed_pa(first_pa, hottest)


def gas_warmed_pa(first_pa: float, hottest: float) -> float:
    """The pressure [Pa] that gas saturated at `first_pa` [Pa] reaches when shut in and warmed [K].

    Infinite near the critical pressure, where the vapour's range ends.
    """
    if first_pa < TRIPLE_PRESSURE_PA:
        least_pa = max(first_pa, LEAST_GAS_BOUND_PA)
        density = vapor_density_kg_m3(0.999 * least_pa, snow_k(least_pa))
    else:
        density = vapor_density_saturated_kg_m3(saturated_k(min(first_pa, 5.9e6)))
    try:
        return vapor_pressure_pa(density, hottest)
    except OutOfRangeError:
        return inf  # near the critical pressure the vapour's range ends: no bound
