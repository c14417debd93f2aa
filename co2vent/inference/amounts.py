"""How much liquid is left, with bounds, and what follows from it."""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from co2vent.co2 import (
    PLATEAU_SOLID_FRACTION,
    latent_heat_j_kg,
    liquid_density_kg_m3,
    vapor_density_saturated_kg_m3,
)
from co2vent.inference.criteria import Criteria
from co2vent.inference.envelope import Envelope
from co2vent.inference.lines import saturated_k
from co2vent.inference.outcome import Bounds
from co2vent.inference.trace import HoldArrays
from co2vent.inference.trend import Trend

if TYPE_CHECKING:
    from co2vent.inference.verdict import HoldContext


@dataclass(frozen=True, slots=True, kw_only=True)
class Amounts:
    """Masses [kg], share of the volume, heat [W], time [s]; `None` where not known."""

    detection_limit_kg: float | None
    limit_fraction: float
    heat_w: float | None
    liquid_kg: Bounds | None
    liquid_fraction: Bounds | None
    dry_ice_kg: Bounds | None
    dry_ice_if_vented_kg: float | None
    boil_off_s: float | None


def allowable_kg(volume_m3: float, criteria: Criteria) -> float:
    """The remainder below which a section counts as vapour only [kg]."""
    return max(criteria.allowable_kg, criteria.allowable_kg_per_m3 * volume_m3)


def amounts(
    blocks: HoldArrays,
    trend: Trend,
    context: "HoldContext",
    limits: Envelope,
    line_k: float,
    criteria: Criteria,
) -> Amounts:
    """Bound the liquid left at the end of the hold."""
    volume = context.setup.section_volume_m3
    end_pa = float(blocks.p[-1])
    boiling_k = saturated_k(end_pa)
    density = liquid_density_kg_m3(boiling_k)
    least = limits.power.least_wet_slope
    share = min(max(trend.slope_upper, 0.0) / least, 1.0) if least > 0.0 else 1.0
    allowed_fraction = criteria.allowable_volume_fraction
    limit = None
    if volume is not None:
        limit = allowable_kg(volume, criteria) * share
    lower = 0.0
    if limits.wet:
        lower = allowed_fraction
    upper_fraction = 0.95
    fraction = Bounds(None, lower, upper_fraction)
    liquid = (
        Bounds(None, lower * density * volume, upper_fraction * density * volume)
        if volume
        else None
    )
    heat = None
    if volume is not None and trend.slope > 0:
        gas = vapor_density_saturated_kg_m3(boiling_k)
        heat = latent_heat_j_kg(boiling_k) * volume * gas / end_pa * trend.slope
    ice = (
        liquid.estimate * PLATEAU_SOLID_FRACTION if liquid and liquid.estimate is not None else None
    )
    return Amounts(
        detection_limit_kg=limit,
        limit_fraction=allowed_fraction * share,
        heat_w=heat,
        liquid_kg=liquid,
        liquid_fraction=fraction,
        dry_ice_kg=Bounds(0.0, 0.0, 0.0),
        dry_ice_if_vented_kg=ice,
        boil_off_s=None,
    )
