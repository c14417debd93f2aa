"""The section's volume measured: a bottle of known volume is let into it."""

from collections.abc import Callable
from dataclasses import dataclass
from math import isfinite
from typing import Final

from co2vent.co2 import vapor_density_kg_m3
from co2vent.errors import RefusedInputError
from co2vent.readings.reading import Gas

_MOLAR_GAS_CONSTANT: Final = 8.314462618  # J/mol K, SI
_NITROGEN_KG_PER_MOL: Final = 0.0280134
_LOWEST_K: Final = 233.15
_HIGHEST_K: Final = 323.15
_HIGHEST_NITROGEN_PA: Final = 100e5


@dataclass(frozen=True, slots=True)
class MeasuredVolume:
    """The volume and the bound on its error [m3], from gauge and bottle."""

    volume_m3: float
    uncertainty_m3: float


def nitrogen_density_kg_m3(pressure_pa: float, temperature_k: float) -> float:
    """Return the density of nitrogen, -40 to 50 degC, up to 100 bar, within 0.05 %.

    Virial form Z = 1 + B n + C n^2; B and C fitted to the reference equation (Span et al.,
    J. Phys. Chem. Ref. Data 29 (2000) 1361, as CoolProp evaluates it).
    """
    if not _LOWEST_K <= temperature_k <= _HIGHEST_K:
        raise RefusedInputError(
            f"nitrogen is described from -40 to 50 degC, not at {temperature_k - 273.15:.4g} degC"
        )
    if not 0.0 <= pressure_pa <= _HIGHEST_NITROGEN_PA:
        raise RefusedInputError(
            f"nitrogen is described up to 100 bar absolute, not at {pressure_pa / 1e5:.4g} bar"
        )
    x = 100.0 / temperature_k
    b = (45.1369 + x * (-124.701 - x * 74.2543)) * 1e-6  # m3/mol
    c = (651.426 + x * 2526.72) * 1e-12  # m6/mol2
    ideal = pressure_pa / (_MOLAR_GAS_CONSTANT * temperature_k)
    n = ideal
    for _ in range(30):
        n = ideal / (1.0 + n * (b + n * c))
    return n * _NITROGEN_KG_PER_MOL


_DENSITY: Final[dict[Gas, Callable[[float, float], float]]] = {
    Gas.CO2: vapor_density_kg_m3,
    Gas.NITROGEN: nitrogen_density_kg_m3,
}


def volume_by_expansion(
    *,
    bottle_volume_m3: float,
    bottle_pressure_pa: float,
    section_pressure_pa: float,
    common_pressure_pa: float,
    temperature_k: float,
    gas: Gas = Gas.NITROGEN,
    gauge_error_pa: float = 0.0,
    bottle_uncertainty_m3: float = 0.0,
) -> MeasuredVolume:
    """Return the section's volume from one expansion; pressures absolute, real gas.

    The bottle, at `bottle_pressure_pa`, is opened to the section, at `section_pressure_pa`; both
    end at `common_pressure_pa`. All at `temperature_k`: wait until both are back at it. The same
    gas must have been in the section before (CO2 there must be vapour).

    Raises:
        RefusedInputError: the pressures are not in order, or a value can't be.
        OutOfRangeError: CO2 at a pressure where it is not vapour.
    """
    values = (bottle_volume_m3, bottle_pressure_pa, section_pressure_pa, common_pressure_pa)
    if not all(isfinite(v) and v >= 0.0 for v in (*values, gauge_error_pa, bottle_uncertainty_m3)):
        raise RefusedInputError("volumes and pressures of the expansion must be numbers from 0 up")
    if not section_pressure_pa < common_pressure_pa < bottle_pressure_pa:
        raise RefusedInputError(
            "the common pressure must lie between the section's and the bottle's: "
            f"{section_pressure_pa / 1e5:.4g}, {common_pressure_pa / 1e5:.4g}, "
            f"{bottle_pressure_pa / 1e5:.4g} bar absolute were given"
        )
    density = _DENSITY[gas]

    def volume(bottle_pa: float, section_pa: float, common_pa: float) -> float:
        common = density(common_pa, temperature_k)
        given = density(bottle_pa, temperature_k) - common
        return bottle_volume_m3 * given / (common - density(section_pa, temperature_k))

    middle = volume(bottle_pressure_pa, section_pressure_pa, common_pressure_pa)
    step = 1e-4 * (common_pressure_pa - section_pressure_pa)
    # one gauge reads all three: the part of its error that is the same each time, and the rest,
    # are both bounded by adding the three sensitivities
    by_bottle = volume(bottle_pressure_pa + step, section_pressure_pa, common_pressure_pa)
    by_common = volume(bottle_pressure_pa, section_pressure_pa, common_pressure_pa + step)
    by_section = volume(bottle_pressure_pa, section_pressure_pa + step, common_pressure_pa)
    slope = sum(abs(moved - middle) for moved in (by_bottle, by_common, by_section)) / step
    bottle_share = bottle_uncertainty_m3 / bottle_volume_m3
    return MeasuredVolume(middle, slope * gauge_error_pa + middle * bottle_share)
