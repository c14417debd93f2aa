"""The plan in words, for a technician: what to expect, in the order in which it happens."""

import textwrap
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from co2vent.planning.caution import (
    absolute_words,
    celsius_words,
    figure,
    pressure_words,
    warming_words,
)
from co2vent.planning.quantity import Kind, Quantity, mass_quantity
from co2vent.planning.shapes import LimitCheck, PlanInput, PlanResult
from co2vent.sentence import Sentence, comma_listed

_COLUMN: Final = 29  # of the names, where none is longer
LINE: Final = 96


@dataclass(frozen=True, slots=True)
class _Row:
    """A line: a sentence behind `before`, or a value under its name."""

    text: str
    name: str = ""
    before: str = ""


def duration_words(seconds: float | None) -> str:
    """Return a duration a person can plan with."""
    if seconds is None:
        return Sentence("not known")
    if seconds < 90.0:
        return figure(f"{seconds:.0f} s")
    if seconds < 90.0 * 60.0:
        return figure(f"{seconds / 60.0:.0f} min")
    if seconds < 48.0 * 3600.0:
        return figure(f"{seconds / 3600.0:.1f} h")
    return Sentence("{days} days", days=f"{seconds / 86400.0:.1f}")


def mass_words(kilograms: float | None) -> str:
    """Return a mass in kg, or g below 100 g."""
    if kilograms is None:
        return Sentence("not known")
    if kilograms == 0.0:
        return Sentence("none")
    return mass_quantity(kilograms)


def _ppm_words(ppm: float | None) -> str:
    return Sentence("not known") if ppm is None else figure(f"{ppm:,.0f} ppm")


def _under(name: str, value: str) -> _Row:
    """Return a value that is a part of the one above it."""
    return _Row(value, name, before="  ")


def plan_text(
    given: PlanInput,
    plan: PlanResult,
    volume_notes: Sequence[str] = (),
    say: Callable[[str], str] = str,
    line: int = LINE,
) -> str:
    """Return the plan as lines of text; `say` puts each sentence into another language or units.

    Where lines are short, a long name stands above its value.
    """
    rows = [
        *_section(given, plan),
        *(_Row(note, before="    ") for note in volume_notes),
        *_vent(given, plan),
        *_liquid(plan),
        *_shut(given, plan),
        *_room(given, plan),
    ]
    if plan.assumptions:
        rows += [_Row(""), _Row(Sentence("Assumed"))]
        rows += [_Row(sentence, before="  ") for sentence in plan.assumptions]
    rows += [_Row(""), _Row(Sentence("Take care"))]
    rows += [_Row(sentence, before="  ! ") for sentence in plan.warnings]
    advises = Sentence("A plan advises. Only the gauge and the holds say what is left inside.")
    rows += [_Row(""), _Row(advises)]
    names = [row.before + say(row.name) for row in rows if row.name]
    column = max([_COLUMN, *(len(name) + 1 for name in names)])
    if line < LINE:
        column = min(column, line * 2 // 5)
    return "\n".join(_wrapped(row, say, column, line) for row in rows)


def _wrapped(row: _Row, say: Callable[[str], str], column: int, line: int) -> str:
    """Break a long line at words, under its own text."""
    first = row.before
    above = ""
    if row.name:
        first = f"  {row.before + say(row.name):{column}}"
        if not first.endswith(" "):
            above, first = f"{first}\n", " " * (column + 2)
    return above + textwrap.fill(
        say(row.text),
        line,
        initial_indent=first,
        subsequent_indent=" " * len(first),
        break_on_hyphens=False,
    )


def _section(given: PlanInput, plan: PlanResult) -> Iterator[_Row]:
    yield _Row(Sentence("Section"))
    litres = figure(f"{plan.volume_m3 * 1e3:.3g} l")
    if plan.volume_uncertainty_m3:
        error = f"{plan.volume_uncertainty_m3 * 1e3:.2g} l"
        litres = Sentence("{volume} +-{error}", volume=litres, error=error)
    yield _Row(litres, Sentence("volume"))
    if plan.charge_temperature_k is not None:
        yield _Row(celsius_words(plan.charge_temperature_k), Sentence("temperature"))
    if plan.charge_pressure_pa_gauge is not None:
        yield _Row(pressure_words(plan.charge_pressure_pa_gauge), Sentence("pressure"))
    yield _Row(mass_words(plan.charge_kg), Sentence("CO2 in it"))
    liquid = Sentence(
        "{mass} ({share} by volume)",
        mass=mass_words(plan.liquid_kg),
        share=f"{100.0 * given.filled:.0f} %",
    )
    yield _under(Sentence("of it liquid"), liquid)
    if plan.dry_ice_kg:
        yield _under(Sentence("of it dry ice"), mass_words(plan.dry_ice_kg))


def _vent(given: PlanInput, plan: PlanResult) -> Iterator[_Row]:
    yield _Row("")
    yield _Row(Sentence("Vent"))
    yield _Row(absolute_words(plan.ambient_pressure_pa), Sentence("air pressure here"))
    yield _Row(pressure_words(plan.triple_point_pa_gauge), Sentence("triple point here"))
    yield _Row(pressure_words(plan.stop_pressure_pa_gauge), Sentence("stop at"))
    yield _under(Sentence("boiling there at"), celsius_words(plan.stop_temperature_k))
    yield _Row(plan.gauge_fit.text, Sentence("gauge"))
    time = Sentence(
        "{time} through {bore}, fully open, at the least",
        time=duration_words(plan.vent_to_stop_s),
        bore=f"{given.vent_bore_m * 1e3:g} mm",
    )
    yield _Row(time, Sentence("time to the stop pressure"))
    yield _under(Sentence("vented by then"), mass_words(plan.vented_to_stop_kg))
    cold = [metal.name for metal in plan.metals if metal.below_minimum]
    words = comma_listed(cold) if cold else Sentence("none of those compared")
    yield _Row(words, Sentence("metal too cold there"))


def _liquid(plan: PlanResult) -> Iterator[_Row]:
    yield _Row("")
    yield _Row(Sentence("What is left"))
    yield _Row(mass_words(plan.liquid_left_at_stop_kg), Sentence("liquid at the stop pressure"))
    ice = mass_words(plan.dry_ice_kg_if_vented_straight_down)
    if plan.dry_ice_kg_if_vented_straight_down:
        ice = Sentence(
            "{mass}, at {temperature}",
            mass=ice,
            temperature=celsius_words(plan.dry_ice_temperature_k),
        )
    yield _Row(ice, Sentence("dry ice if straight down"))
    if plan.boil_off_energy_j:
        heat = figure(f"{plan.boil_off_energy_j / 1e3:,.0f} kJ")
        yield _Row(heat, Sentence("heat to boil it out"))
    for way in plan.ways_to_remove_liquid:
        words = way.way
        if way.not_before_s is not None:
            time = duration_words(way.not_before_s)
            words = Sentence("{way}, not before {time}", way=way.way, time=time)
        yield _Row(words, before="  - ")
        yield _Row(way.hazards, before="      ")


def _shut(given: PlanInput, plan: PlanResult) -> Iterator[_Row]:
    yield _Row("")
    yield _Row(Sentence("If it is left shut"))
    slope = plan.trapped_liquid_bar_per_k
    steep: str = Sentence("pressure per kelvin not known at this temperature")
    if slope is not None:
        steep = Quantity(f"{slope:.1f} bar/K", Kind.PRESSURE_PER_KELVIN, slope * 1e5)
    yield _Row(steep, Sentence("liquid-full"))
    if plan.liquid_full_at_k is not None and given.filled < 1.0:
        yield _Row(celsius_words(plan.liquid_full_at_k), Sentence("this charge fills it at"))
    if given.relief_pa_gauge is not None:
        yield _Row(pressure_words(given.relief_pa_gauge), Sentence("relief setting"))
        for name, kelvin in (
            (Sentence("liquid-full, after"), plan.kelvin_to_relief),
            (Sentence("this charge, after"), plan.kelvin_to_relief_of_this_charge),
        ):
            warming = (
                Sentence("not known")
                if kelvin is None
                else Sentence("{kelvin} of warming", kelvin=warming_words(kelvin))
            )
            yield _under(name, warming)


def _room(given: PlanInput, plan: PlanResult) -> Iterator[_Row]:
    yield _Row("")
    yield _Row(Sentence("Air"))
    yield _Row(mass_words(plan.co2e_kg), Sentence("CO2 equivalent"))
    per_kg = plan.fresh_air_m3_per_kg
    volume = Quantity(f"{per_kg:.0f} m3", Kind.VOLUME_PER_MASS, per_kg)
    kg = Quantity("kg", Kind.MASS_UNIT, 1.0)
    fresh = Sentence("{volume} for each {kg} vented", volume=volume, kg=kg)
    if plan.ventilation_needed_m3_per_h is not None:
        fresh = Sentence(
            "{volume} for each {kg} vented; {flow} with the vent fully open",
            volume=volume,
            kg=kg,
            flow=f"{plan.ventilation_needed_m3_per_h:,.0f} m3/h",
        )
    yield _Row(fresh, Sentence("fresh air, if vented indoors"))
    if given.room_m3 is not None:
        room = f"{given.room_m3:g} m3"
        yield _Row(_ppm_words(plan.room_ppm_all_vented), Sentence("all of it in {room}", room=room))
        yield _under(Sentence("unmixed, lowest 0.5 m"), _ppm_words(plan.room_ppm_floor_layer))
        if plan.room_ppm_while_ventilated is not None:
            ppm = _ppm_words(plan.room_ppm_while_ventilated)
            yield _under(Sentence("while vented, ventilated"), ppm)
        if plan.clearing_time_s is not None:
            clear = Sentence("it stays below that when mixed")
            if plan.clearing_time_s != 0.0:
                clear = Sentence(
                    "{time}; poorly mixed {poor}",
                    time=duration_words(plan.clearing_time_s),
                    poor=duration_words(plan.clearing_time_poorly_mixed_s),
                )
            limit = f"{plan.exposure_limits[0].ppm:,.0f} ppm"
            yield _Row(clear, Sentence("clear to {limit} in", limit=limit))
    for check in plan.exposure_limits:
        limit = f"{check.ppm:,.0f} ppm"
        yield _Row(_limit_words(check), Sentence("limit {limit}", limit=limit))


def _limit_words(check: LimitCheck) -> str:
    limit = Sentence(
        "{name}, {averaged} ({source})",
        name=check.name,
        averaged=check.averaged,
        source=check.source,
    )
    if check.passed_if_mixed is None:
        return limit
    if check.passed_if_mixed:
        return Sentence("exceeded; {limit}", limit=limit)
    if check.passed_in_floor_layer:
        return Sentence("exceeded on the floor; {limit}", limit=limit)
    return Sentence("kept; {limit}", limit=limit)
