"""What warming does to a section that is left shut: rigid walls, nothing leaves."""

from dataclasses import dataclass

from co2vent import co2
from co2vent.co2.ranges import HIGHEST_LIQUID_FULL_TEMPERATURE_K, HIGHEST_VAPOR_TEMPERATURE_K
from co2vent.errors import OutOfRangeError
from co2vent.planning.charge import ChargeState


@dataclass(frozen=True, slots=True)
class Trapped:
    """Slope if liquid-full, and the warming until a relief setting; None where not known."""

    bar_per_k: float | None = None
    kelvin_to_relief: float | None = None  # as if liquid-full from the start
    full_at_k: float | None = None  # where this charge fills the section with liquid
    kelvin_of_this_charge: float | None = None


def trapped(charge: ChargeState | None, relief_pa: float | None) -> Trapped:
    """Return what happens when `charge` warms; `relief_pa` [Pa absolute] if there is a setting."""
    if charge is None or charge.temperature_k < co2.TRIPLE_TEMPERATURE_K:
        return Trapped()
    start = charge.temperature_k
    full_at = _full_at(charge)
    slope = to_relief = own = None
    if start <= HIGHEST_LIQUID_FULL_TEMPERATURE_K:
        slope = co2.liquid_full_pressure_slope_pa_per_k(start) / 1e5
        if relief_pa is not None:
            to_relief = _climb(start, relief_pa)
    if relief_pa is not None:
        own = _warming_to(charge, full_at, relief_pa)
    return Trapped(slope, to_relief, full_at, own)


def _full_at(charge: ChargeState) -> float | None:
    """Return the temperature [K] at which the liquid has swollen to the whole section."""
    if charge.vapor_kg == 0.0:
        return charge.temperature_k
    try:
        return co2.liquid_full_temperature_k(charge.total_kg / charge.volume_m3)
    except OutOfRangeError:
        return None


def _climb(temperature_k: float, pressure_pa: float) -> float | None:
    """Return the warming [K] of a liquid-full section; None where not described."""
    try:
        return co2.kelvin_to_pressure(temperature_k, pressure_pa)
    except OutOfRangeError:
        return None


def _warming_to(charge: ChargeState, full_at: float | None, relief_pa: float) -> float | None:
    """Return the warming [K] until `relief_pa`: along the boiling line, then liquid or vapour."""
    if charge.pressure_pa >= relief_pa:
        return 0.0
    density = charge.total_kg / charge.volume_m3
    if relief_pa <= co2.CRITICAL_PRESSURE_PA:
        boiling = co2.saturation_temperature_k(relief_pa)
        still_vapor = density >= co2.vapor_density_saturated_kg_m3(boiling)
        if still_vapor and (full_at is None or full_at >= boiling):
            # two phases all the way, unless it fills where that is not described
            still_free = density <= co2.liquid_density_kg_m3(boiling)
            return boiling - charge.temperature_k if still_free else None
    if full_at is not None:
        climb = _climb(full_at, relief_pa)
        return None if climb is None else full_at - charge.temperature_k + climb
    return _dry_warming_to(charge, density, relief_pa)


def _dry_warming_to(charge: ChargeState, density: float, relief_pa: float) -> float | None:
    """Return the warming [K] of a charge that is all vapour by then; None beyond 45 degC."""

    def pressure(t: float) -> float:
        try:
            return co2.vapor_pressure_pa(density, t)
        except OutOfRangeError:
            return co2.saturation_pressure_pa(min(t, co2.CRITICAL_TEMPERATURE_K))

    low, high = charge.temperature_k, HIGHEST_VAPOR_TEMPERATURE_K
    try:
        if co2.vapor_pressure_pa(density, high) < relief_pa:
            return None
    except OutOfRangeError:
        return None
    while high - low > 1e-4:
        middle = 0.5 * (low + high)
        low, high = (middle, high) if pressure(middle) < relief_pa else (low, middle)
    return low - charge.temperature_k
