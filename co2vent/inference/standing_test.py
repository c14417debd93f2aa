"""The standing-pressure test: gas held in a section, its temperature taken out, the rest bounded.

Nothing is called tight that the readings could not have shown to leak: no clamp, no movement of
the gauge or too short a record is `not_known_yet`.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from typing import Final

import numpy as np
from numpy.typing import NDArray

from co2vent.errors import OutOfRangeError
from co2vent.inference.closed_gas import gas_density_kg_m3, pressure_slopes
from co2vent.inference.held import (
    NOISE_FACTOR,
    STEADIED_READINGS,
    STEP_FACTOR,
    Slope,
    block_means,
    fit_slope,
    reading_noise,
    smallest_step,
    steadied,
)
from co2vent.inference.outcome import Bounds
from co2vent.inference.wording import change_text, loss_text, warming_text
from co2vent.readings.reading import Reading, Setup
from co2vent.sentence import Sentence

Floats = NDArray[np.float64]

#: The gas lags the metal and the clamp lags both; share of the temperature's own change that the
#: correction may miss. Common practice, no source.
CLAMP_SHARE: Final = 0.2
#: How far a clamp's reading may wander over a test with the metal still [K]. Common practice, no
#: source; IEC 60751 class B itself allows 0.3 K at 0 degC, most of which stays constant.
CLAMP_DRIFT_K: Final = 0.1
#: How far a gauge may wander over a test, as a share of its accuracy. Common practice, no source.
GAUGE_DRIFT_SHARE: Final = 0.1
#: Time constants with which the heat of filling may fade [s]. Trade habit waits 15 to 30 min
#: (common practice, no source); a leak is called only beyond what such a fading could be.
FILLING_FADES_S: Final = (300.0, 900.0, 1800.0)
#: Less than this above the air tests nothing [Pa]. This program's choice.
LEAST_TEST_PA: Final = 0.5e5
#: A gap in the readings longer than this [s], or than so many usual intervals of a slow logger,
#: hides what was done meanwhile: the test begins after it. Topping up takes half a minute
#: (judgement). No interval makes a gap of more than `WIDEST_GAP_S` one hold.
LONGEST_GAP_S: Final = 30.0
LONGEST_GAP_INTERVALS: Final = 4.0
WIDEST_GAP_S: Final = 300.0
#: A gauge behind its own shut valve wanders by less than this [Pa] (judgement); with a known
#: accuracy its drift counts as well.
LEAST_MOVEMENT_PA: Final = 1000.0
#: Gas that is let in shows within this time [s] (judgement): a bottle valve is opened and shut.
TOPPED_UP_S: Final = 60.0
#: A rise within that time below what is allowed to be lost in this time [s] hides no leak that
#: matters (judgement).
TOPPED_UP_WORTH_S: Final = 300.0
#: Two gauges of one section that part by less than this [Pa] say nothing (judgement); with a known
#: accuracy, by less than the error of both.
LEAST_PARTING_PA: Final = 0.1e5
#: Beginnings tried, as shares of the record: filling and the heat of compression are left out.
BEGINNINGS: Final = (0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7)


class Tightness(StrEnum):
    """The verdict of a standing-pressure test."""

    TIGHT = "tight"
    LEAKING = "leaking"
    NOT_KNOWN_YET = "not_known_yet"


@dataclass(frozen=True, slots=True, kw_only=True)
class StandingLimits:
    """What a site allows. Both defaults are this program's choice, not a trade rule.

    Trade texts ask for no loss beyond the gauge's and the clamp's uncertainty in 30 to 60 min; an
    appliance-safety text (IEC/UL 60335-2-40 kind) for 1 h without a decrease.
    """

    loss_share_per_h: float = 1e-3  # of the absolute test pressure
    least_s: float = 1800.0


@dataclass(frozen=True, slots=True, kw_only=True)
class StandingResult:
    """A standing-pressure test. The loss is positive, at constant temperature, SI, absolute."""

    verdict: Tightness
    reason: str
    next_step: str = ""
    begin_s: float
    end_s: float
    pressure_pa: float  # mean over the part that was judged
    temperature_k: float | None = None
    temperature_change_k: float | None = None  # end minus beginning, by the fitted line
    temperature_effect_pa: float | None = None  # what that change does to a tight section
    loss_pa_per_s: Bounds | None = None
    loss_kg_per_s: Bounds | None = None  # None: the section volume is not known
    allowed_pa_per_s: float = 0.0


def standing_test(
    readings: Sequence[Reading],
    setup: Setup,
    limits: StandingLimits | None = None,
    *,
    begin_s: float | None = None,
    gauge_seen_moving: bool = False,
) -> StandingResult:
    """Judge a standing-pressure test with `setup.gas`, over the whole record.

    `begin_s`: when the test began; else the readings after the last long gap, time break or open
    vent. `gauge_seen_moving`: somebody saw the gauge follow the pressure on this connection; a
    trace that never moves beyond its noise proves nothing without that.
    """
    limits = limits or StandingLimits()
    held = _held(readings, begin_s)
    if len(held) < 10:
        return _unknown(
            held, limits, Sentence("fewer than 10 readings"), Sentence("Record pressure and clamp.")
        )
    clamps = [_metal_k(reading) for reading in held]
    if any(clamp is None for clamp in clamps):
        return _unknown(
            held,
            limits,
            Sentence(
                "no clamp reading beside every pressure: the temperature can't be told from a leak"
            ),
            Sentence("Put a clamp on the section, in the shade, and hold again."),
        )
    at_s = np.array([reading.at_s for reading in held])
    pressure_pa = np.array([reading.pressure_pa for reading in held])
    metal_k = np.array([clamp for clamp in clamps if clamp is not None])
    step_pa = smallest_step(pressure_pa)
    late_pa = float(pressure_pa[len(pressure_pa) // 2 :].mean())
    if late_pa < setup.ambient_pressure_pa + LEAST_TEST_PA:
        return _unknown(
            held,
            limits,
            Sentence("no test pressure, or it is gone: less than 0.5 bar above the air"),
            Sentence("Raise the pressure and hold again."),
        )
    try:
        trial = _Standing(at_s, pressure_pa, metal_k, step_pa, setup)
        if step_pa == 0.0 and not gauge_seen_moving:
            return _unknown(
                held,
                limits,
                Sentence(
                    "the pressure never moved: such a trace is also what a shut gauge valve gives"
                ),
                Sentence("Bleed a little, see the gauge follow, and hold again."),
            )
        found = _judge_standing(trial, setup, limits)
        if found.verdict is not Tightness.TIGHT:
            return found
        if not gauge_seen_moving and not _moved(_held(readings, None), setup):
            return _taken_back(
                found,
                Sentence(
                    "The pressure never moved beyond its noise: such a trace is also what a shut "
                    "gauge valve gives."
                ),
                Sentence("Bleed a little, see the gauge follow, and hold again."),
            )
        return _refuted(found, held, setup)
    except OutOfRangeError as error:
        return _unknown(held, limits, str(error), Sentence("Test within that range."))


class _Standing:
    """A held record as columns, and the loss seen from any beginning."""

    def __init__(
        self, at_s: Floats, pressure_pa: Floats, metal_k: Floats, step_pa: float, setup: Setup
    ) -> None:
        self.at_s, self.pressure_pa, self.metal_k = block_means(at_s, pressure_pa, metal_k)
        self.step_pa = step_pa
        self.drift_pa = GAUGE_DRIFT_SHARE * setup.gauge_error_pa
        self.density = gas_density_kg_m3(setup.gas, self.pressure_pa, self.metal_k)
        late = len(self.at_s) // 2  # filling is over by then
        self.mean_pa = float(self.pressure_pa[late:].mean())
        self.mean_k = float(self.metal_k[late:].mean())
        self.pa_per_k, self.pa_per_density = pressure_slopes(setup.gas, self.mean_pa, self.mean_k)

    def loss(self, begin: int, end: int) -> Slope:
        """Return the loss of pressure at constant temperature [Pa/s] between two blocks."""
        at_s = self.at_s[begin:end]
        lost_pa = -(self.density[begin:end]) * self.pa_per_density
        slope = fit_slope(at_s, lost_pa, self.step_pa)
        if len(at_s) < 2:
            return slope
        span_s = float(at_s[-1] - at_s[0])
        changed_k = abs(self.temperature_change_k(begin, end))
        systematic_pa = self.pa_per_k * (CLAMP_SHARE * changed_k + CLAMP_DRIFT_K) + self.drift_pa
        lower, upper = slope.lower, slope.upper
        for fading_s in FILLING_FADES_S:  # looks like a loss, never like a gain
            faded = fit_slope(at_s, lost_pa, self.step_pa, fading_s)
            if lower is None or faded.lower is None:
                lower = None
                break
            lower = min(lower, faded.lower)
        bounded = Slope(slope.estimate, lower, upper, slope.independent)
        return bounded.widened(systematic_pa / span_s)

    def temperature_change_k(self, begin: int, end: int) -> float:
        at_s = self.at_s[begin:end]
        return fit_slope(at_s, self.metal_k[begin:end]).estimate * float(at_s[-1] - at_s[0])

    def steady_begin(self) -> tuple[int, bool]:
        """Return the earliest beginning from which both halves agree, and whether there is one.

        Filling and the heat of compression fade; a leak does not.
        """
        count = len(self.at_s)
        for share in BEGINNINGS:
            begin = int(share * count)
            middle = (begin + count) // 2
            first, second = (
                self.loss_statistical(begin, middle),
                self.loss_statistical(middle, count),
            )
            if first.lower is not None and second.lower is not None and first.agrees_with(second):
                return begin, True
        return int(BEGINNINGS[-1] * count), False

    def loss_statistical(self, begin: int, end: int) -> Slope:
        """Return the loss with the wander of a clamp that follows slowly, but without drifts."""
        at_s = self.at_s[begin:end]
        slope = fit_slope(at_s, -(self.density[begin:end]) * self.pa_per_density, self.step_pa)
        if len(at_s) < 2:
            return slope
        missed_pa = self.pa_per_k * CLAMP_SHARE * abs(self.temperature_change_k(begin, end))
        return slope.widened(missed_pa / float(at_s[-1] - at_s[0]))


def _judge_standing(trial: _Standing, setup: Setup, limits: StandingLimits) -> StandingResult:
    begin, steady = trial.steady_begin()
    count = len(trial.at_s)
    loss = trial.loss(begin, count)
    begin_s, end_s = float(trial.at_s[begin]), float(trial.at_s[-1])
    span_s = end_s - begin_s
    allowed = limits.loss_share_per_h * trial.mean_pa / 3600.0
    change_k = trial.temperature_change_k(begin, count)
    effect_pa = trial.pa_per_k * change_k

    def result(verdict: Tightness, reason: str, next_step: str = "") -> StandingResult:
        bounds = Bounds(loss.estimate, loss.lower, loss.upper)
        kilograms = None
        if setup.section_volume_m3 is not None:
            factor = setup.section_volume_m3 / trial.pa_per_density
            kilograms = _scaled(bounds, factor)
        return StandingResult(
            verdict=verdict,
            reason=reason,
            next_step=next_step,
            begin_s=begin_s,
            end_s=end_s,
            pressure_pa=trial.mean_pa,
            temperature_k=trial.mean_k,
            temperature_change_k=change_k,
            temperature_effect_pa=effect_pa,
            loss_pa_per_s=bounds,
            loss_kg_per_s=kilograms,
            allowed_pa_per_s=allowed,
        )

    span = f"{span_s / 60:.0f} min"
    seen = Sentence(
        "temperature {change} explains {effect}; loss {loss} over {time}",
        change=warming_text(change_k),
        effect=change_text(effect_pa, setup),
        loss=_per_hour(loss, setup),
        time=span,
    )
    limit = loss_text(allowed, setup)
    if loss.lower is None or loss.upper is None:
        return result(
            Tightness.NOT_KNOWN_YET,
            Sentence("The pressure wanders too slowly to bound a loss in {time}.", time=span),
            Sentence("Hold longer."),
        )
    settling = not steady or (begin > 0 and span_s < limits.least_s and loss.lower > 0.0)
    if settling:
        return result(
            Tightness.NOT_KNOWN_YET,
            Sentence("Still settling: the loss is not the same in both halves; {seen}.", seen=seen),
            Sentence("Wait until the heat of filling has gone and the sun is off the pipe."),
        )
    if loss.upper < 0.0:
        return result(
            Tightness.NOT_KNOWN_YET,
            Sentence(
                "The pressure rises more than the temperature explains: {seen}. Gas flows in past "
                "a valve, or the clamp does not show the gas; an inflow hides a leak.",
                seen=seen,
            ),
            Sentence("Shut off the supply or double block, move the clamp, hold again."),
        )
    if loss.lower > 0.0 and loss.upper > allowed:
        return result(
            Tightness.LEAKING,
            Sentence("Leaking: {seen}, {limit} allowed.", seen=seen, limit=limit),
            Sentence("Find the leak, mend, repeat."),
        )
    if loss.upper <= allowed:
        if span_s < limits.least_s:
            left_min = (limits.least_s - span_s) / 60
            return result(
                Tightness.NOT_KNOWN_YET,
                Sentence("So far no loss above what is allowed, but only for {time}.", time=span),
                Sentence("Hold at least {time} more.", time=f"{left_min:.0f} min"),
            )
        return result(
            Tightness.TIGHT,
            Sentence("Tight within the limit: {seen}, {limit} allowed.", seen=seen, limit=limit),
        )
    return result(
        Tightness.NOT_KNOWN_YET,
        Sentence("Can't tell yet: {seen}, {limit} allowed.", seen=seen, limit=limit),
        Sentence("Hold longer: the bound narrows with time; steadier temperature helps."),
    )


def _moved(unbroken: Sequence[Reading], setup: Setup) -> bool:
    """Say whether the gauge followed anything (filling, temperature), beyond noise and drift."""
    pressure_pa = np.array([reading.pressure_pa for reading in unbroken])
    least_pa = max(
        LEAST_MOVEMENT_PA,
        GAUGE_DRIFT_SHARE * setup.gauge_error_pa,
        NOISE_FACTOR * reading_noise(pressure_pa),
        STEP_FACTOR * smallest_step(pressure_pa),
    )
    return bool(np.ptp(steadied(pressure_pa)) > least_pa)


def _refuted(found: StandingResult, held: Sequence[Reading], setup: Setup) -> StandingResult:
    """Take a `tight` back where its readings show gas let in or two gauges that disagree."""
    judged = [reading for reading in held if reading.at_s >= found.begin_s]
    topped_pa = _topped_up_pa(judged, found, setup)
    if topped_pa is not None:
        return _taken_back(
            found,
            Sentence(
                "The pressure jumps up by {jump} within a minute: gas let in hides a leak.",
                jump=change_text(topped_pa, setup),
            ),
            Sentence("Shut off and take off the supply, then hold again."),
        )
    parted_pa = _parted_pa(judged, setup)
    if parted_pa is not None:
        return _taken_back(
            found,
            Sentence(
                "The two gauges part by {change} during the test: one does not show this section.",
                change=change_text(parted_pa, setup),
            ),
            Sentence("Check both gauges and their valves, then hold again."),
        )
    return found


def _taken_back(found: StandingResult, reason: str, next_step: str) -> StandingResult:
    """Return a `tight` as not known: its figures stay, what they prove does not."""
    return replace(found, verdict=Tightness.NOT_KNOWN_YET, reason=reason, next_step=next_step)


def _topped_up_pa(judged: Sequence[Reading], found: StandingResult, setup: Setup) -> float | None:
    """Return the largest sudden rise [Pa] at constant temperature, if it is more than noise."""
    at_s = np.array([reading.at_s for reading in judged])
    pressure_pa = np.array([reading.pressure_pa for reading in judged])
    metal_k = np.array([_metal_k(reading) for reading in judged], dtype=np.float64)
    mean_k = float(metal_k.mean())
    pa_per_k, _ = pressure_slopes(setup.gas, found.pressure_pa, mean_k)
    # medians of both first: the clamp's own flicker is not to hide a jump of the pressure
    level_pa = steadied(pressure_pa) - pa_per_k * (steadied(metal_k) - mean_k)
    # beyond the medians' own width, else a jump in the middle of it is seen in part only
    later = np.maximum(
        np.searchsorted(at_s, at_s + TOPPED_UP_S, side="right") - 1,
        np.arange(len(at_s)) + STEADIED_READINGS,
    )
    kept = later < len(at_s)
    if not kept.any():
        return None
    rise_pa = level_pa[later[kept]] - level_pa[kept]
    rise_pa = rise_pa - np.median(rise_pa)  # a steady trend is the slope's matter
    # the gas follows the metal late, or the clamp does: what a warming explains is no gas let in
    warmed_k = np.abs(steadied(metal_k)[later[kept]] - steadied(metal_k)[kept])
    least_pa = max(
        NOISE_FACTOR * (reading_noise(pressure_pa) + pa_per_k * reading_noise(metal_k)),
        STEP_FACTOR * smallest_step(pressure_pa),
        TOPPED_UP_WORTH_S * found.allowed_pa_per_s,
    )
    excess_pa = rise_pa - CLAMP_SHARE * pa_per_k * warmed_k
    largest_pa = float(excess_pa.max())
    return largest_pa if largest_pa > least_pa else None


def _parted_pa(judged: Sequence[Reading], setup: Setup) -> float | None:
    """Return by how much two gauges of the section parted [Pa], if by more than their errors."""
    apart_pa = np.array(
        [
            reading.pressure_pa - reading.pressure_2_pa
            for reading in judged
            if reading.pressure_2_pa is not None
        ]
    )
    if len(apart_pa) < 2 * STEADIED_READINGS:
        return None
    change_pa = float(np.ptp(steadied(apart_pa)))
    least_pa = max(
        LEAST_PARTING_PA,
        2.0 * setup.gauge_error_pa,
        NOISE_FACTOR * reading_noise(apart_pa),
        STEP_FACTOR * smallest_step(apart_pa),
    )
    return change_pa if change_pa > least_pa else None


def _scaled(bounds: Bounds, factor: float) -> Bounds:
    estimate, lower, upper = (
        None if value is None else value * factor
        for value in (bounds.estimate, bounds.lower, bounds.upper)
    )
    return Bounds(estimate, lower, upper, bounds.confidence)


def _held(readings: Sequence[Reading], begin_s: float | None) -> list[Reading]:
    """Return the newest readings that belong to one unbroken hold."""
    held: list[Reading] = []
    intervals = np.diff(np.array([reading.at_s for reading in readings]))
    usual_s = float(np.median(intervals)) if len(intervals) else 0.0
    longest_s = min(max(LONGEST_GAP_S, LONGEST_GAP_INTERVALS * usual_s), WIDEST_GAP_S)
    for reading in readings:
        if held and (
            reading.segment != held[-1].segment or reading.at_s - held[-1].at_s > longest_s
        ):
            held = []
        if reading.vent_open:
            held = []
            continue
        if begin_s is None or reading.at_s >= begin_s:
            held.append(reading)
    return held


def _metal_k(reading: Reading) -> float | None:
    clamps = [
        clamp
        for clamp in (reading.line_temperature_k, reading.upper_temperature_k)
        if clamp is not None
    ]
    return sum(clamps) / len(clamps) if clamps else None


def _unknown(
    held: Sequence[Reading], limits: StandingLimits, why: str, next_step: str
) -> StandingResult:
    mean_pa = sum(reading.pressure_pa for reading in held) / len(held) if held else 0.0
    return StandingResult(
        verdict=Tightness.NOT_KNOWN_YET,
        reason=Sentence("Not known: {why}.", why=why),
        next_step=next_step,
        begin_s=held[0].at_s if held else 0.0,
        end_s=held[-1].at_s if held else 0.0,
        pressure_pa=mean_pa,
        allowed_pa_per_s=limits.loss_share_per_h * mean_pa / 3600.0,
    )


def _per_hour(loss: Slope, setup: Setup) -> str:
    if loss.lower is None or loss.upper is None:
        return Sentence("{loss} without bounds", loss=loss_text(loss.estimate, setup))
    return Sentence(
        "{loss} ({lower} to {upper}, 95 %)",
        loss=loss_text(loss.estimate, setup),
        lower=loss_text(loss.lower, setup),
        upper=loss_text(loss.upper, setup),
    )
