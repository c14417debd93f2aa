"""The vacuum-rise test: pump shut off, the curve tells leak, moisture and outgassing apart.

A leak from the air rises straight: the pressure behind it does not change. Moisture rises and
levels at the water vapour pressure of the coldest metal. Outgassing rises at first and levels
anywhere lower. The model is all three, p = p0 + A (1 - exp(-t / tau)) + q t, and what decides is
the bounded slope at the end against the slope at the beginning.

Hot-wire gauges are made for air: they show CO2 about 10 % and water vapour up to twice too high
(true pressure = 0.9 and 0.5 of the reading; public vacuum-gauge tables).
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from math import ceil
from typing import Final

import numpy as np
from numpy.typing import NDArray

from co2vent.inference.held import (
    NOISE_FACTOR,
    STEP_FACTOR,
    Slope,
    block_means,
    fit_slope,
    reading_noise,
    smallest_step,
    steadied,
)
from co2vent.inference.outcome import Bounds
from co2vent.inference.water import water_vapour_pressure_pa
from co2vent.readings.reading import Reading
from co2vent.sentence import Sentence
from co2vent.units import MICRON_PA, ZERO_CELSIUS_K

Floats = NDArray[np.float64]

#: Reading over true pressure in the band where moisture is looked for: from a capacitance gauge on
#: metal that is a little colder than the clamp to a hot-wire gauge that shows twice too much.
WATER_READING: Final = (0.7, 2.2)
#: A leak is called from the straight part of the rise when it would use up this share of the
#: allowed rise. This program's choice.
LEAK_SHARE: Final = 0.2
#: Late slope over early slope: above it the rise is straight, below the other it has levelled.
STRAIGHT_RATIO: Final = 0.6
LEVEL_RATIO: Final = 0.25
#: Levels of several hundred Pa on metal this cold are not water: ice there gives 38 Pa (-30 degC).
COLD_METAL_K: Final = 243.15
LONGEST_GAP_S: Final = 60.0
#: A volume that is shut off gains at least this in ten minutes, of what its walls give off [Pa]; a
#: running pump holds its pressure to less. Judgement.
LEAST_RISE_PA: Final = 5.0 * MICRON_PA
#: A rise is also more than so many standard deviations of single readings, compared as means of
#: `RISE_BLOCKS` parts of the hold. Judgement.
RISE_NOISE_FACTOR: Final = 3.0
RISE_BLOCKS: Final = 20
#: A fall by this share of the pressure, after a rise by as much, is the pump switched on again and
#: not the gauge's wander. Judgement.
FALL_SHARE: Final = 0.05
#: A bending rise by more than this share of its beginning may be ice that has reached its vapour
#: pressure on metal colder than the clamp: at -30, -25, -20 degC ice has 38, 63, 103 Pa, all below
#: the limit. The share is judgement: walls that are dry gain less once the pump has run long.
BEND_SHARE: Final = 0.3


class VacuumVerdict(StrEnum):
    """The verdict of a vacuum-rise test."""

    TIGHT_AND_DRY = "tight_and_dry"
    LEAK = "leak"
    MOISTURE = "moisture"
    OUTGASSING = "outgassing"
    NOT_KNOWN_YET = "not_known_yet"


@dataclass(frozen=True, slots=True, kw_only=True)
class VacuumLimits:
    """What a site asks for. Defaults: vacuum to 500 micron; not above 1500 micron in 10 minutes.

    Source: an appliance-safety text of the IEC/UL 60335-2-40 kind, written for split systems;
    R-744 racks are outside its scope, and no better text was found. EN 378-2 asks 270 Pa (2025
    micron) before charging (from memory).
    """

    begin_pa: float = 500.0 * MICRON_PA
    end_pa: float = 1500.0 * MICRON_PA
    least_s: float = 600.0


@dataclass(frozen=True, slots=True, kw_only=True)
class VacuumResult:
    """A vacuum-rise test. Pressures as the gauge shows them, absolute [Pa]."""

    verdict: VacuumVerdict
    reason: str
    next_step: str = ""
    begin_s: float
    end_s: float
    begin_pa: float | None = None
    end_pa: float | None = None
    limit_kept: bool | None = None  # the pressure limit alone; None: not long enough to say
    early_pa_per_s: Bounds | None = None
    late_pa_per_s: Bounds | None = None
    leak_pa_m3_per_s: Bounds | None = None  # None: volume not known
    level_pa: float | None = None  # where the curve levels, by the fit
    water_pa: float | None = None  # of the coldest metal


def vacuum_rise_test(
    readings: Sequence[Reading],
    limits: VacuumLimits | None = None,
    *,
    begin_s: float | None = None,
    coldest_metal_k: float | None = None,
    volume_m3: float | None = None,
) -> VacuumResult:
    """Judge the rise after the pump was shut off.

    `begin_s`: when that was; else where the record first came near its lowest pressure.
    `coldest_metal_k`: where clamps can't show it; else the lowest clamp reading, which is not taken
    for the coldest metal where the rise bends as over ice.
    """
    limits = limits or VacuumLimits()
    rows = _unbroken(readings)
    whole = np.array([reading.vacuum_pa for reading in rows], dtype=np.float64)
    at_s = np.array([reading.at_s for reading in rows], dtype=np.float64)
    begin = _begin(at_s, whole, begin_s)
    held_s, held_pa = at_s[begin:], whole[begin:]
    if len(held_s) < 20 or held_s[-1] <= held_s[0]:
        return VacuumResult(
            verdict=VacuumVerdict.NOT_KNOWN_YET,
            reason=Sentence(
                "Not known: fewer than 20 vacuum readings since the pump was shut off."
            ),
            next_step=Sentence("Record the vacuum gauge for the whole test."),
            begin_s=float(held_s[0]) if len(held_s) else 0.0,
            end_s=float(held_s[-1]) if len(held_s) else 0.0,
        )
    clamps = [
        clamp
        for reading in rows[begin:]
        for clamp in (reading.line_temperature_k, reading.upper_temperature_k)
        if clamp is not None
    ]
    coldest_k = min(
        [*clamps, *([] if coldest_metal_k is None else [coldest_metal_k])], default=None
    )
    # a rise from test vacuum that was pumped away again counts, or the last low hides a leak; with
    # a beginning that a person gave, what was before it is that person's matter
    first = begin if begin_s is not None else min(begin, _first_below(whole, limits.begin_pa))
    curve = _Curve(
        held_s, held_pa, moved=bool(np.ptp(whole) > 0.0), pumped=_pumped_again(whole[first:])
    )
    return _judge(curve, limits, coldest_k, volume_m3, told=coldest_metal_k is not None)


class _Curve:
    """The rise as columns, its slopes at both ends and the level that the fit gives."""

    def __init__(
        self,
        at_s: Floats,
        pressure_pa: Floats,
        moved: bool,
        pumped: tuple[float, float] | None,
    ) -> None:
        step = smallest_step(pressure_pa)
        self.moved = moved
        self.pumped = pumped  # highest and lowest of a rise that was pumped away again [Pa]
        (parts_pa,) = block_means(pressure_pa, most=RISE_BLOCKS)
        least_pa = max(LEAST_RISE_PA, RISE_NOISE_FACTOR * reading_noise(pressure_pa), step)
        self.rose = bool(parts_pa[-1] - parts_pa.min() >= least_pa)
        self.at_s, self.pressure_pa = block_means(at_s, pressure_pa)
        self.span_s = float(self.at_s[-1] - self.at_s[0])
        count = len(self.at_s)
        tenth, third = max(4, count // 10), max(4, count // 3)
        self.early = fit_slope(self.at_s[:tenth], self.pressure_pa[:tenth], step)
        self.late = fit_slope(self.at_s[-third:], self.pressure_pa[-third:], step)
        edge = max(1, count // 50)
        self.begin_pa = float(self.pressure_pa[:edge].mean())
        self.end_pa = float(self.pressure_pa[-edge:].max())
        self.straight_pa_per_s, self.level_pa = self._fit()

    @property
    def rise_pa(self) -> float:
        return self.end_pa - self.begin_pa

    def _fit(self) -> tuple[float, float]:
        """Return the straight part [Pa/s] and the level that the rest goes to [Pa].

        Least squares over a grid of tau with A and q not negative: pressure does not fall into a
        section that is shut off.
        """
        t = self.at_s - self.at_s[0]
        best = (np.inf, 0.0, self.end_pa)
        for tau in np.geomspace(max(self.span_s / 60.0, 1.0), 2.0 * self.span_s, 25):
            shape = 1.0 - np.exp(-t / tau)
            for columns in ((True, True), (True, False), (False, True)):
                parts = [np.ones_like(t)]
                parts += [shape] if columns[0] else []
                parts += [t] if columns[1] else []
                matrix = np.stack(parts, axis=1)
                factors = np.linalg.lstsq(matrix, self.pressure_pa, rcond=None)[0]
                if np.any(factors[1:] < 0.0):
                    continue
                left = self.pressure_pa - matrix @ factors
                error = float(left @ left)
                if error < best[0]:
                    bend = float(factors[1]) if columns[0] else 0.0
                    straight = float(factors[-1]) if columns[1] else 0.0
                    best = (error, straight, float(factors[0]) + bend)
        return best[1], best[2]


def _judge(
    curve: _Curve,
    limits: VacuumLimits,
    coldest_k: float | None,
    volume_m3: float | None,
    *,
    told: bool,
) -> VacuumResult:
    water_pa = None if coldest_k is None else water_vapour_pressure_pa(max(coldest_k, 110.0))
    kept: bool | None = None
    if curve.end_pa > limits.end_pa or curve.begin_pa > limits.begin_pa:
        kept = False
    elif curve.span_s >= limits.least_s:
        kept = True
    verdict, reason, next_step = _verdict(curve, limits, coldest_k, water_pa, kept, told)
    return VacuumResult(
        verdict=verdict,
        reason=reason,
        next_step=next_step,
        begin_s=float(curve.at_s[0]),
        end_s=float(curve.at_s[-1]),
        begin_pa=curve.begin_pa,
        end_pa=curve.end_pa,
        limit_kept=kept,
        early_pa_per_s=_bounds(curve.early),
        late_pa_per_s=_bounds(curve.late),
        leak_pa_m3_per_s=None if volume_m3 is None else _bounds(curve.late, volume_m3),
        level_pa=curve.level_pa,
        water_pa=water_pa,
    )


def _verdict(
    curve: _Curve,
    limits: VacuumLimits,
    coldest_k: float | None,
    water_pa: float | None,
    kept: bool | None,
    told: bool,
) -> tuple[VacuumVerdict, str, str]:
    """Return verdict, reason and next step. The order is that of the risk: leak and water first.

    `told`: a person gave the temperature of the coldest metal.
    """
    unknown = VacuumVerdict.NOT_KNOWN_YET
    early, late = curve.early, curve.late
    course = Sentence(
        "{begin} to {end} in {time}",
        begin=_vacuum(curve.begin_pa),
        end=_vacuum(curve.end_pa),
        time=f"{curve.span_s / 60:.0f} min",
    )
    limit, rate = _vacuum(limits.end_pa), _rate(late)
    if curve.pumped is not None:
        high_pa, low_pa = curve.pumped
        return (
            unknown,
            Sentence(
                "The vacuum rose to {high} and fell back to {low}: the pump was on again, or gauge "
                "or metal cooled.",
                high=_vacuum(high_pa),
                low=_vacuum(low_pa),
            ),
            Sentence("Shut the valve to the pump once and hold; give the time when it was shut."),
        )
    if curve.moved and not curve.rose:
        return (
            unknown,
            Sentence(
                "The vacuum has not risen at all: {course}; with the pump still on it stands so "
                "too.",
                course=course,
            ),
            Sentence("Shut the valve to the pump, see the vacuum rise a little, and hold on."),
        )
    if not curve.moved:
        return (
            unknown,
            Sentence(
                "The gauge never moved: {course}; a gauge that is shut off looks the same.",
                course=course,
            ),
            Sentence("Let the gauge see the pump once, then hold again."),
        )
    if late.lower is None or late.upper is None:
        few = Sentence("Too few independent readings to judge: {course}.", course=course)
        return unknown, few, Sentence("Hold longer.")
    if late.upper < 0.0 or curve.rise_pa < -0.1 * curve.begin_pa:
        return (
            unknown,
            Sentence(
                "The pressure falls: {course}. The pump is not shut off, or gauge or metal cools.",
                course=course,
            ),
            Sentence("Shut the valve to the pump and begin again."),
        )
    noticeable = LEAK_SHARE * (limits.end_pa - limits.begin_pa) / limits.least_s
    levelled = late.upper <= max(LEVEL_RATIO * early.estimate, 0.0)
    quiet = late.upper <= noticeable
    straight = (
        late.lower > noticeable
        and late.estimate >= STRAIGHT_RATIO * early.estimate
        and curve.straight_pa_per_s >= STRAIGHT_RATIO * late.estimate
    )
    wet = (
        (levelled or quiet)
        and water_pa is not None
        and curve.rise_pa > 0.1 * curve.begin_pa
        and WATER_READING[0] * water_pa <= curve.end_pa <= WATER_READING[1] * water_pa
    )
    if wet and water_pa is not None and coldest_k is not None:
        return (
            VacuumVerdict.MOISTURE,
            Sentence(
                "Moisture: {course}, levels near the water vapour pressure of the coldest metal, "
                "{water} at {coldest} (a hot-wire gauge shows up to twice as much).",
                course=course,
                water=_vacuum(water_pa),
                coldest=f"{coldest_k - ZERO_CELSIUS_K:.0f} °C",
            ),
            Sentence("Warm the metal, sweep with dry nitrogen, evacuate again."),
        )
    if straight:
        return (
            VacuumVerdict.LEAK,
            Sentence("Leak: {course}, straight at {rate} and no bend.", course=course, rate=rate),
            Sentence("Find it with nitrogen pressure; look at hoses and the pump valve first."),
        )
    if levelled and kept is False and curve.end_pa > limits.end_pa:
        cold = coldest_k is not None and coldest_k < COLD_METAL_K
        what = (
            Sentence("on metal this cold that is dry ice or CO2 out of oil or sieve, not water")
            if cold
            else Sentence("not the water vapour pressure of the metal: outgassing, oil or CO2 left")
        )
        if water_pa is None:
            what = Sentence("without the metal's temperature moisture can't be ruled out")
        return (
            VacuumVerdict.OUTGASSING,
            Sentence("Levels too high: {course}; {what}.", course=course, what=what),
            Sentence("Evacuate again; a smaller rise the second time confirms outgassing."),
        )
    if kept is False and curve.begin_pa > limits.begin_pa:
        return (
            unknown,
            Sentence(
                "The rise began at {begin}, above {limit}.",
                begin=_vacuum(curve.begin_pa),
                limit=_vacuum(limits.begin_pa),
            ),
            Sentence("Evacuate further, then shut the pump off."),
        )
    if kept is None:
        left_min = ceil((limits.least_s - curve.span_s) / 60)
        more = Sentence("Hold {time} more.", time=f"{left_min} min")
        return unknown, Sentence("So far {course}.", course=course), more
    if kept is False:
        return (
            unknown,
            Sentence(
                "Above {limit}: {course}, and the curve is still bending.",
                limit=limit,
                course=course,
            ),
            Sentence("Hold longer: straight on is a leak, levelling is moisture or outgassing."),
        )
    if not (levelled or quiet):
        return (
            unknown,
            Sentence(
                "Below {limit}, but still rising at {rate}: {course}.",
                limit=limit,
                rate=rate,
                course=course,
            ),
            Sentence("Hold longer: straight on is a leak, levelling is outgassing."),
        )
    if water_pa is None or coldest_k is None:
        return (
            unknown,
            Sentence(
                "The limit is kept ({course}), but without the metal's temperature dry is not "
                "shown.",
                course=course,
            ),
            Sentence("Put a clamp on the coldest metal or give its temperature."),
        )
    if curve.end_pa >= 0.5 * water_pa:
        return (
            unknown,
            Sentence(
                "The limit is kept ({course}), but ice on metal at {coldest} has only {water}: not "
                "shown dry.",
                course=course,
                coldest=f"{coldest_k - ZERO_CELSIUS_K:.0f} °C",
                water=_vacuum(water_pa),
            ),
            Sentence("Warm the metal and repeat."),
        )
    bends = levelled or late.estimate < STRAIGHT_RATIO * early.estimate
    if not told and bends and curve.rise_pa > BEND_SHARE * curve.begin_pa:
        return (
            unknown,
            Sentence(
                "The limit is kept ({course}), but the rise levels as it does over ice on metal "
                "colder than the clamp: not shown dry.",
                course=course,
            ),
            Sentence("Measure the coldest metal and give its temperature, or evacuate again."),
        )
    return (
        VacuumVerdict.TIGHT_AND_DRY,
        Sentence(
            "Limit kept: {course}, {limit} allowed; late rise {rate}; water on this metal would go "
            "to {water}.",
            course=course,
            limit=limit,
            rate=rate,
            water=_vacuum(water_pa),
        ),
        "",
    )


def _unbroken(readings: Sequence[Reading]) -> list[Reading]:
    """Return the newest vacuum readings without a gap or a time break between them."""
    rows: list[Reading] = []
    for reading in readings:
        if reading.vacuum_pa is None:
            continue
        if rows and (
            reading.segment != rows[-1].segment or reading.at_s - rows[-1].at_s > LONGEST_GAP_S
        ):
            rows = []
        rows.append(reading)
    return rows


def _begin(at_s: Floats, pressure_pa: Floats, begin_s: float | None) -> int:
    """Return the index where the hold begins: as told, or where the lowest pressure was reached."""
    if not len(at_s):
        return 0
    if begin_s is not None:
        return int(np.searchsorted(at_s, begin_s))
    low = float(pressure_pa.min())
    near = low + max(0.03 * low, 3.0 * smallest_step(pressure_pa))
    return int(np.argmax(pressure_pa <= near))


def _first_below(pressure_pa: Floats, limit_pa: float) -> int:
    """Return the index from which the section was at test vacuum; the end if it never was."""
    below = steadied(pressure_pa) <= limit_pa
    return int(np.argmax(below)) if below.any() else len(pressure_pa)


def _pumped_again(pressure_pa: Floats) -> tuple[float, float] | None:
    """Return the highest and the lowest of the largest rise that fell back; None: there is none.

    A section that is shut off has nothing to fall for: the pump ran, or the metal cooled.
    """
    level_pa = steadied(pressure_pa)
    rise_pa = level_pa - np.minimum.accumulate(level_pa)
    least_pa = np.maximum(
        max(
            LEAST_RISE_PA,
            NOISE_FACTOR * reading_noise(pressure_pa),
            STEP_FACTOR * smallest_step(pressure_pa),
        ),
        FALL_SHARE * level_pa,
    )
    risen = np.maximum.accumulate(np.where(rise_pa > least_pa, level_pa, -np.inf))
    fall_pa = np.where(np.isfinite(risen), risen - level_pa, 0.0)
    fell = fall_pa > np.maximum(least_pa, FALL_SHARE * np.where(np.isfinite(risen), risen, 0.0))
    if not fell.any():
        return None
    lowest = int(np.argmax(np.where(fell, fall_pa, 0.0)))
    return float(risen[lowest]), float(level_pa[lowest])


def _bounds(slope: Slope, factor: float = 1.0) -> Bounds:
    lower, upper = (
        None if value is None else value * factor for value in (slope.lower, slope.upper)
    )
    return Bounds(slope.estimate * factor, lower, upper)


def _vacuum(pressure_pa: float) -> str:
    pascals = f"{pressure_pa:.0f}" if pressure_pa >= 100.0 else f"{pressure_pa:.3g}"
    return Sentence(
        "{micron} micron ({pascal}, {millibar})",
        micron=f"{pressure_pa / MICRON_PA:.0f}",
        pascal=f"{pascals} Pa",
        millibar=f"{pressure_pa / 100.0:.3g} mbar",
    )


def _rate(slope: Slope) -> str:
    def shown(pa_per_s: float) -> str:
        per_minute = pa_per_s * 60.0 / MICRON_PA
        return f"{per_minute:.2g}" if abs(per_minute) < 10.0 else f"{per_minute:.0f}"

    if slope.lower is None or slope.upper is None:
        return Sentence("{rate} micron/min without bounds", rate=shown(slope.estimate))
    return Sentence(
        "{rate} micron/min ({lower} to {upper})",
        rate=shown(slope.estimate),
        lower=shown(slope.lower),
        upper=shown(slope.upper),
    )
