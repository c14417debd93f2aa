"""The third section's nozzle, and its gauge and clamp."""

from math import sqrt
from typing import Final, NamedTuple

import numpy as np

from co2vent.benchmark.compiling import fast

EXPONENT: Final = 1.30  # of expanding cold CO2 vapour (textbook value)
CHOKED_RATIO: Final = (2.0 / (EXPONENT + 1.0)) ** (EXPONENT / (EXPONENT - 1.0))
CHOKED: Final = sqrt(EXPONENT * (2.0 / (EXPONENT + 1.0)) ** ((EXPONENT + 1.0) / (EXPONENT - 1.0)))


class Seen(NamedTuple):
    """What gauge and clamp do to the truth."""

    zero_pa: float
    gain: float
    lag_s: float
    step_pa: float
    noise_pa: float
    full_scale_pa: float
    clamp_error_k: float
    clamp_lag_s: float
    clamp_ambient_share: float
    clamp_step_k: float


@fast
def nozzle_kg_s(area: float, pressure_pa: float, density: float, outside_pa: float) -> float:
    """Return the mass flow through a nozzle: choked, or less near the outside's pressure."""
    ratio = outside_pa / pressure_pa
    if area <= 0.0 or ratio >= 1.0:
        return 0.0
    flow: float = CHOKED * area * sqrt(pressure_pa * density)
    if ratio > CHOKED_RATIO:
        flow *= sqrt(1.0 - ((ratio - CHOKED_RATIO) / (1.0 - CHOKED_RATIO)) ** 2)
    return flow


@fast
def show(seen: Seen, gauge_pa: float, clamp_k: float) -> tuple[float, float]:
    """Return what gauge (NaN: over range) and clamp show."""
    value = gauge_pa * seen.gain + seen.zero_pa + np.random.normal() * seen.noise_pa  # noqa: NPY002
    shown = np.round(value / seen.step_pa) * seen.step_pa
    clamp = np.round((clamp_k + seen.clamp_error_k) / seen.clamp_step_k) * seen.clamp_step_k
    return (shown if shown <= seen.full_scale_pa else np.nan), clamp
