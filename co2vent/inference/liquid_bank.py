"""How much liquid behaves like this: simulated wet holds, weighted by likeness.

The rate of a rise tells little of the amount: one and ten per cent of liquid rise alike. What it
does tell is in which simulated sections a hold looks like this one; the spread of their liquid is
the honest bound. The bank is made by `co2vent benchmark bank` from random wet sections of the
project's own model, and its coverage is measured on a second model (`co2vent benchmark verdict`).
"""

from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from io import BytesIO
from math import exp, isfinite, log

import numpy as np

from co2vent.inference.trace import Floats, HoldArrays
from co2vent.inference.trend import Trend

NEIGHBOURS = 100
# quantiles a little outside 95 %, because the nearest sections are not the section itself
LOW_QUANTILE, HIGH_QUANTILE = 0.006, 0.99
WIDER = 0.18  # of the natural logarithm, on each side: the model is not the world
# scales that make features comparable: natural logarithms, K, share
SCALES = np.array([0.8, 1.0, 1.2, 4.0, 0.5])
FEATURES = ("ln slope", "ln warming", "ln rise", "drive", "insulated")


def features(trend: Trend, blocks: HoldArrays, drive_k: float, insulated: bool | None) -> Floats:
    """Return what likeness is judged by; the drive is NaN without a clamp."""
    rise = float(blocks.p[-1] - blocks.p[0])
    told = 0.5 if insulated is None else float(insulated)
    return np.array(
        [
            log(max(trend.slope, 0.5)),
            log(max(trend.warming_pa, 1_000.0)),
            log(max(rise, 1_000.0)),
            drive_k,
            told,
        ]
    )


@dataclass(frozen=True, slots=True)
class LiquidShare:
    """Liquid per section volume [kg/m3]: median of the likely sections, and 95 % bounds."""

    estimate: float
    lower: float
    upper: float


@cache
def _bank() -> tuple[Floats, Floats]:
    """Return features (n, 5) and the natural logarithm of kg/m3 (n,)."""
    data = files("co2vent.inference").joinpath("liquid_bank.npz").read_bytes()
    with np.load(BytesIO(data)) as bank:
        return bank["features"].astype(np.float64), bank["ln_kg_per_m3"].astype(np.float64)


def likely_liquid(
    trend: Trend, blocks: HoldArrays, drive_k: float, insulated: bool | None
) -> LiquidShare:
    """Return the liquid of the simulated wet sections whose hold looked like this one."""
    known, liquid = _bank()
    here = features(trend, blocks, drive_k, insulated)
    scales = SCALES
    if not isfinite(here[3]):
        known, here, scales = known[:, [0, 1, 2, 4]], here[[0, 1, 2, 4]], SCALES[[0, 1, 2, 4]]
    distance = (((known - here) / scales) ** 2).sum(axis=1)
    nearest = np.argpartition(distance, min(NEIGHBOURS, len(distance) - 1))[:NEIGHBOURS]
    values = np.sort(liquid[nearest])
    low, middle, high = np.quantile(values, [LOW_QUANTILE, 0.5, HIGH_QUANTILE])
    return LiquidShare(exp(middle), exp(low - WIDER), exp(high + WIDER))
