"""A hold under judgement: its readings, what is known besides, and what it leaves for the next."""

from dataclasses import dataclass
from math import nan

import numpy as np

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.criteria import Criteria
from co2vent.inference.joint import Shown
from co2vent.inference.outcome import Charge
from co2vent.inference.power import Power
from co2vent.inference.trace import HoldArrays, HoldTrace
from co2vent.inference.trend import Trend
from co2vent.readings.limits import shown_too_high_pa
from co2vent.readings.reading import Setup

LINE_SILENT_S = 10.0  # a clamp that has said nothing for longer is gone
HOTTEST_LINE_K = 343.15  # 70 degC: no metal beside CO2 at these pressures, warmed by hand or not


@dataclass(frozen=True, slots=True, kw_only=True)
class EarlierHold:
    """What an ended hold left for the next ones. Pa, Pa/s, s."""

    number: int
    start_pa: float
    end_pa: float
    duration_s: float
    trend: Trend
    charge: Charge
    drive_k: float = nan  # clamp above saturation at the end
    line_k: float = nan
    metal_slope: float = 0.0  # what gas that warmed as fast as the clamp would have gained
    falling: bool = False  # it lost, or gained too little: an outward leak can hide boiling
    fell: float = 0.0  # what left at least
    lacked: float = 0.0  # what it gained too little for bare metal that warmed so
    shown: Shown | None = None  # what it says of liquid; None: it can't count with others


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldContext:
    """What a hold's own readings do not tell. SI, absolute."""

    setup: Setup
    number: int
    noise_pa: float
    step_pa: float
    stop_pa: float
    vented: bool
    first_pa: float | None  # highest pressure of the record so far
    lowest_pa: float
    cleared: bool  # "vapour only" stood when the hold began
    cleared_limit_kg: float | None
    solid_seen: bool
    valve_known: bool
    ambient_k: float | None
    earlier: tuple[EarlierHold, ...]
    faults: tuple[str, ...]
    ice_possible: bool = False  # it was seen, and no hold has excluded it since
    clamp_frozen: bool = False  # its value never changed, or has stopped to
    clamp_doubted: bool = False  # it has jumped: a loose contact, or it hangs in the air
    begun_pa: float | None = None  # where the hold began, before evidence that was voided
    shown_now: bool = False  # this very hold was "vapour only" at its last fit
    fall_pa_per_s: float = 0.0  # how fast the last vent fell near its end


@dataclass(frozen=True, slots=True)
class Hold:
    """One hold under judgement."""

    trace: HoldTrace
    blocks: HoldArrays
    trend: Trend | None
    context: HoldContext
    line_k: float  # line temperature now, NaN without a clamp
    line_slope: float  # K/s
    age_s: float  # to the end of its last block
    end_pa: float  # a block mean, not one noisy reading, says where the hold stands
    power: Power
    criteria: Criteria

    @property
    def near_triple_pa(self) -> float:
        """So near the triple point a reading can't be told from it [Pa]."""
        setup = self.context.setup
        return setup.gauge_error_pa + self.criteria.near_triple_pa + shown_too_high_pa(setup)

    @property
    def may_hold_ice(self) -> bool:
        """Whether dry ice may lie there: seen, or a pressure where it forms without a verdict."""
        context = self.context
        lowest_pa = context.lowest_pa - shown_too_high_pa(context.setup)
        return context.ice_possible or (lowest_pa < TRIPLE_PRESSURE_PA and not context.cleared)

    @property
    def rise_pa(self) -> float:
        return self.end_pa - self.trace.first_pa


def line_of(blocks: HoldArrays) -> tuple[float, float]:
    """Line temperature now [K] and its slope [K/s]; NaN without a clamp.

    A clamp that has gone silent says nothing of now, nor one that shows less than half of the time,
    nor one hotter than any metal here.
    """
    known = np.isfinite(blocks.line_k)
    if known.any():
        end_s = float(blocks.t[-1])
        silent_s = end_s - float(blocks.t[known][-1])
        half = blocks.t >= 0.5 * end_s
        seldom = known[half].mean() < 0.5
        if silent_s > max(LINE_SILENT_S, 0.05 * end_s) or seldom:
            return nan, nan
        if float(blocks.line_k[known][-1]) > HOTTEST_LINE_K:
            return nan, nan
    if known.sum() < 2:
        return (float(blocks.line_k[known][-1]), nan) if known.any() else (nan, nan)
    t, k = blocks.t[known], blocks.line_k[known]
    late = t >= 0.5 * t[-1]
    if late.sum() < 3:
        late = np.ones_like(t, dtype=bool)
    slope = (
        float(np.polyfit(t[late], k[late], 1)[0])
        if late.sum() >= 2 and np.ptp(t[late]) > 0
        else nan
    )
    return float(k[-1]), slope


def upper_of(blocks: HoldArrays) -> float:
    """The second clamp now [K]; NaN without one."""
    known = blocks.upper_k[np.isfinite(blocks.upper_k)]
    return float(known[-1]) if known.size else nan
