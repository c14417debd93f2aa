"""A rise that goes on while the metal loses its lead over saturation is no boiling.

What boils is heated by metal warmer than saturation. As the pressure rises saturation comes nearer
to the metal, and the heat falls with what is left of the lead, or faster. The liquid that warms
with saturation takes its share of the heat; as the vapour gets denser each kelvin takes more of it,
so of a large pool more goes into vapour than before, but by no more than the vapour's own density
grows faster. Both together bound what boiling can still give off, whatever the pool and the metal;
a flow from outside does not care (pool and vapour at saturation: dm/dt = q / h * A / (A + C), A the
heat that a kelvin puts into vapour, C what it puts into liquid and metal).
"""

from dataclasses import dataclass

from co2vent.co2 import CRITICAL_TEMPERATURE_K, vapor_density_saturated_kg_m3
from co2vent.inference.criteria import Criteria
from co2vent.inference.lines import saturated_k
from co2vent.inference.mass_flow import mass_slope
from co2vent.inference.trace import HoldArrays
from co2vent.inference.trend import block_sigma_pa, straight_slope

EARLY = (0.25, 0.45)  # parts of a hold: the gas has warmed, the pressure is still low
LATE = (0.8, 1.0)
LEAST_BLOCKS = 4


@dataclass(frozen=True, slots=True)
class Part:
    """The mean of a part of a hold, and its slope."""

    pressure_pa: float
    line_k: float  # NaN without a clamp
    slope: float  # Pa/s
    error: float  # one standard error

    @property
    def drive_k(self) -> float:
        """The metal above saturation."""
        return self.line_k - saturated_k(self.pressure_pa)


def parts_of(blocks: HoldArrays, noise_pa: float, step_pa: float) -> tuple[Part, Part] | None:
    """Return the early and the late part of a hold; `None` if either is too short."""
    end_s = float(blocks.t[-1])
    sigma = block_sigma_pa(blocks, noise_pa, step_pa)
    found: list[Part] = []
    for start, stop in (EARLY, LATE):
        part = (blocks.t >= start * end_s) & (blocks.t <= stop * end_s)
        if part.sum() < LEAST_BLOCKS:
            return None
        slope, error = straight_slope(blocks.t[part], blocks.p[part], sigma[part])
        found.append(
            Part(float(blocks.p[part].mean()), float(blocks.line_k[part].mean()), slope, error)
        )
    return found[0], found[1]


def outruns(early: Part, late: Part, criteria: Criteria) -> bool:
    """Whether no boiling at the clamp keeps up such a rise.

    Needs a clamp that had a lead over saturation and lost much of it.
    """
    if not early.drive_k >= criteria.outrun_drive_k or early.slope <= 0.0:
        return False
    error_k = criteria.clamp_error_k
    left = (max(late.drive_k, 0.0) + error_k) / (early.drive_k + error_k)
    boiling = left * _density_per_k(late.pressure_pa) / _density_per_k(early.pressure_pa)
    before = mass_slope(early.pressure_pa, early.slope + 2.0 * early.error, early.line_k)
    now = mass_slope(late.pressure_pa, late.slope - 2.0 * late.error, late.line_k)
    if before is None or now is None:
        return False
    # a rise that gathers pace is no steady flow
    steady = criteria.outrun_kept < now / before < 1.0 / criteria.outrun_kept
    return steady and now / before >= boiling + criteria.outrun_over


def _density_per_k(pressure_pa: float) -> float:
    """How much denser saturated vapour gets for each kelvin [kg/m3/K]."""
    middle_k = min(saturated_k(pressure_pa), CRITICAL_TEMPERATURE_K - 2.0)
    return vapor_density_saturated_kg_m3(middle_k + 0.5) - vapor_density_saturated_kg_m3(
        middle_k - 0.5
    )
