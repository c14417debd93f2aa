"""What gives a hold the power to show liquid: metal warmer than saturation, or bare to the air.

Liquid boils as fast as heat reaches it. Where every piece of metal near it is at saturation and
insulated, kilograms of it raise the pressure by a few mbar a minute, as slowly as dry metal does
that warms a little: such a hold proves nothing. Power comes from

- a clamp at the lowest point that reads well above saturation: liquid there would boil hard;
- metal known to be bare: the ambient heats it whatever its state.
"""

from dataclasses import dataclass
from math import inf, isfinite, nan

from co2vent.co2 import vapor_density_kg_m3, vapor_pressure_pa
from co2vent.errors import OutOfRangeError
from co2vent.inference.criteria import Criteria
from co2vent.inference.lines import saturated_k
from co2vent.inference.trend import Trend
from co2vent.inference.wording import kelvin_text
from co2vent.readings.reading import Setup
from co2vent.sentence import Sentence


@dataclass(frozen=True, slots=True)
class Power:
    """The least late slope [Pa/s] that liquid above the allowable amount would keep up."""

    least_wet_slope: float
    drive_k: float  # clamp above saturation, as read; NaN without a clamp
    source: str  # what gives the power, in words; empty: nothing does
    warming_slope: float  # part of the rise that the metal's own warming explains, Pa/s
    warming_most: float  # share of the whole rise that it can explain at most
    metal_slope: float  # what gas that warms as fast as the clamp would gain, Pa/s


def power(
    setup: Setup,
    end_pa: float,
    line_k: float,
    line_slope: float,
    criteria: Criteria,
    age_s: float = inf,
    upper_k: float = nan,
    ambient_k: float | None = None,
) -> Power:
    """Return the power of a hold.

    Args:
        setup: what is known of the section.
        end_pa: pressure at the end of the hold [Pa].
        line_k: clamp at the lowest point [K]; NaN without one.
        line_slope: its late slope [K/s]; NaN without one.
        criteria: the thresholds.
        age_s: how long the hold has lasted [s].
        upper_k: a second clamp [K]; NaN without one.
        ambient_k: the air around [K]; `None` where it is not measured.
    """
    drive = nan
    if isfinite(line_k):
        drive = line_k - saturated_k(end_pa)
    least, warming, most = criteria.unpowered_slope, 0.0, 0.0
    source: str = ""
    metal = _warming_slope(end_pa, line_k, line_slope) if isfinite(drive) else 0.0
    # liquid may lie wherever metal is at saturation
    cold_above = isfinite(upper_k) and upper_k - saturated_k(end_pa) < criteria.clamp_wet_k
    may_boil = line_slope < -criteria.clamp_cooling or cold_above
    # one reading of a clamp makes no trend
    if drive >= criteria.clamp_power_k and isfinite(line_slope) and not may_boil:
        source = Sentence("the lowest metal is {drive} above saturation", drive=kelvin_text(drive))
        # what is not told may be insulated
        per_k, warming = criteria.clamp_insulated_per_k, criteria.compensated_insulated * metal
        most = criteria.compensated_insulated_most
        if setup.insulated is False:
            per_k, warming = criteria.clamp_bare_per_k, criteria.compensated_bare * metal
            most = criteria.compensated_bare_most
        if _is_heated(line_k, line_slope, ambient_k, criteria):
            warming = 0.0  # a spot that is heated warms, and the gas does not follow
        at_one_litre = per_k * min(drive, criteria.clamp_most_k)
        age_s = max(age_s, criteria.clamp_age_least_s)
        younger = max(criteria.clamp_age_s / age_s, 1.0) ** 0.5
        least = at_one_litre * younger * spread(setup.section_volume_m3, criteria)
    elif setup.insulated is False and not drive < criteria.clamp_wet_k and not may_boil:
        least = criteria.bare_slope * spread(setup.section_volume_m3, criteria)
        source = Sentence("the metal is bare")
    return Power(least, drive, source, warming, most, metal)


def _is_heated(
    line_k: float, line_slope: float, ambient_k: float | None, criteria: Criteria
) -> bool:
    """Whether the metal under the clamp warms faster than the air and the metal around it make."""
    if ambient_k is None:
        return line_slope > criteria.warmed_by_hand
    if line_k > ambient_k + criteria.warmer_than_air_k:
        return line_slope > 0.0
    cold = line_k < ambient_k - criteria.warmed_in_air_k
    return line_slope > (criteria.warmed_in_air if cold else criteria.warmed_by_hand)


def explained_slope(trend: Trend, strength: Power) -> float:
    """The part of the rise [Pa/s] that the metal's own warming explains."""
    return min(strength.warming_slope, strength.warming_most * max(trend.slope_upper, 0.0))


def spread(volume_m3: float | None, criteria: Criteria) -> float:
    """What is left of a slope at one litre in a section of this volume [m3]; see the criteria."""
    volume = criteria.largest_volume_m3 if volume_m3 is None else volume_m3
    return float((volume / 1e-3) ** criteria.volume_power)


def _warming_slope(end_pa: float, line_k: float, line_slope: float) -> float:
    """What gas that warms as fast as the clamp gains in pressure [Pa/s]: real gas, same density."""
    if not line_slope > 0.0:
        return 0.0
    gas_k = max(line_k, saturated_k(end_pa) + 3.0)
    try:
        density = vapor_density_kg_m3(end_pa, gas_k)
        per_kelvin = vapor_pressure_pa(density, gas_k + 0.5) - vapor_pressure_pa(
            density, gas_k - 0.5
        )
    except OutOfRangeError:
        return 0.0
    return per_kelvin * line_slope
