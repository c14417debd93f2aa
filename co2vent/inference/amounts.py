"""How much liquid is left, with bounds, and what follows from it."""

from dataclasses import dataclass

from co2vent.co2 import (
    PLATEAU_SOLID_FRACTION,
    latent_heat_j_kg,
    liquid_density_kg_m3,
    liquid_heat_capacity_j_kg_k,
    saturation_slope_pa_per_k,
    sublimation_heat_j_kg,
    vapor_density_saturated_kg_m3,
)
from co2vent.inference.criteria import Criteria
from co2vent.inference.envelope import Envelope
from co2vent.inference.hold_facts import HoldContext
from co2vent.inference.lines import saturated_k
from co2vent.inference.liquid_bank import likely_liquid
from co2vent.inference.outcome import Bounds
from co2vent.inference.trace import HoldArrays
from co2vent.inference.trend import Trend

# metal of a section, per volume: 2.5 kg of steel a litre at 450 J/kg/K (common pipework)
METAL_J_PER_M3_K = 1.1e6
VOLUME_ERROR = 0.15
# gentle warmth on the low point: warm water or a heat mat (common practice, no source)
WARMING_W = 300.0
SNOW_K = 194.69  # dry ice in open air (ITS-90 secondary point)
# a hold is calibrated against the allowable amount; far less than that it can't claim to see
LEAST_LIMIT_SHARE = 0.3


@dataclass(frozen=True, slots=True, kw_only=True)
class Amounts:
    """Masses [kg], share of the volume, heat [W], time [s]; `None` where not known."""

    detection_limit_kg: float | None
    limit_fraction: float
    heat_w: float | None
    liquid_kg: Bounds | None
    liquid_fraction: Bounds | None
    dry_ice_if_vented_kg: float | None
    boil_off_s: float | None
    boil_off_warmed_s: float | None
    sublime_s: float | None


def allowable_kg(volume_m3: float, criteria: Criteria) -> float:
    """The remainder below which a section counts as vapour only [kg]."""
    return max(criteria.allowable_kg, criteria.allowable_kg_per_m3 * volume_m3)


def amounts(
    blocks: HoldArrays,
    trend: Trend,
    context: HoldContext,
    limits: Envelope,
    criteria: Criteria,
) -> Amounts:
    """Bound the liquid left at the end of the hold."""
    setup = context.setup
    volume = setup.section_volume_m3
    boiling_k = saturated_k(float(blocks.p[-1]))
    density = liquid_density_kg_m3(boiling_k)
    least = limits.power.least_wet_slope
    share = max(limits.liquid_share, LEAST_LIMIT_SHARE)
    # without power a hold can't claim to see any amount
    limit = None
    if volume is not None and least > 0.0:
        limit = allowable_kg(volume, criteria) * share

    estimate: float | None = None
    # a full section is no bound worth the name: without power nothing bounds what is inside
    lower, upper = 0.0, None
    likely = None
    if limits.wet or limits.power.source:
        likely = likely_liquid(trend, blocks, limits.power.drive_k, setup.insulated)
        upper = min(likely.upper, density)
    if limits.wet and likely is not None:
        if limits.power.drive_k < criteria.clamp_wet_k:
            # warm metal leaves traces boiling; only metal at saturation goes with much liquid
            lower = max(likely.lower, criteria.allowable_kg_per_m3)
        # else flow past a closed valve would climb as well: nothing of it need be liquid
        upper = min(max(likely.upper, 2.0 * criteria.allowable_kg_per_m3), density)
        estimate = min(max(likely.estimate, lower), upper)
    liquid, ice_if_vented, boil_off, warmed, sublime = None, None, None, None, None
    heat = _heat_w(trend, blocks, boiling_k, volume, estimate)
    if volume is not None:
        # a volume from drawings is 15 % uncertain (common practice, no source)
        liquid = Bounds(
            None if estimate is None else estimate * volume,
            lower * volume * (1.0 - VOLUME_ERROR),
            None if upper is None else upper * volume * (1.0 + VOLUME_ERROR),
        )
        if estimate is not None:
            ice_if_vented = PLATEAU_SOLID_FRACTION * estimate * volume
            needed_j = estimate * volume * latent_heat_j_kg(boiling_k)
            warmed = needed_j / (WARMING_W + (heat or 0.0))
            if heat:
                boil_off = needed_j / heat
                sublime = ice_if_vented * sublimation_heat_j_kg(SNOW_K) / heat
    fraction = Bounds(
        None if estimate is None else estimate / density,
        lower / density,
        None if upper is None else upper / density,
    )
    return Amounts(
        detection_limit_kg=limit,
        limit_fraction=criteria.allowable_volume_fraction * share,
        heat_w=heat,
        liquid_kg=liquid,
        liquid_fraction=fraction,
        dry_ice_if_vented_kg=ice_if_vented,
        boil_off_s=boil_off,
        boil_off_warmed_s=warmed,
        sublime_s=sublime,
    )


def _heat_w(
    trend: Trend,
    blocks: HoldArrays,
    boiling_k: float,
    volume_m3: float | None,
    liquid_kg_per_m3: float | None,
) -> float | None:
    """The heat that enters [W]: what boils, and what warms liquid and metal along saturation."""
    if volume_m3 is None or liquid_kg_per_m3 is None or trend.slope <= 0.0:
        return None
    end_pa = float(blocks.p[-1])
    gas = vapor_density_saturated_kg_m3(boiling_k)
    boiled = latent_heat_j_kg(boiling_k) * gas / end_pa * trend.slope
    capacity = liquid_kg_per_m3 * liquid_heat_capacity_j_kg_k(boiling_k) + METAL_J_PER_M3_K
    warmed = capacity * trend.slope / saturation_slope_pa_per_k(boiling_k)
    return volume_m3 * (boiled + warmed)
