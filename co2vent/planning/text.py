"""The plan in words, for a technician: what to expect, in the order in which it happens."""

import textwrap
from collections.abc import Iterator, Sequence

from co2vent.planning.caution import celsius_words, pressure_words
from co2vent.planning.shapes import LimitCheck, PlanInput, PlanResult

_COLUMN = 29
_LINE = 96


def duration_words(seconds: float | None) -> str:
    """Return a duration a person can plan with."""
    if seconds is None:
        return "not known"
    if seconds < 90.0:
        return f"{seconds:.0f} s"
    if seconds < 90.0 * 60.0:
        return f"{seconds / 60.0:.0f} min"
    if seconds < 48.0 * 3600.0:
        return f"{seconds / 3600.0:.1f} h"
    return f"{seconds / 86400.0:.1f} days"


def mass_words(kilograms: float | None) -> str:
    """Return a mass in kg, or g below 100 g."""
    if kilograms is None:
        return "not known"
    if kilograms == 0.0:
        return "none"
    return f"{kilograms * 1e3:.3g} g" if kilograms < 0.1 else f"{kilograms:.3g} kg"


def _ppm_words(ppm: float | None) -> str:
    return "not known" if ppm is None else f"{ppm:,.0f} ppm"


def _line(name: str, value: str) -> str:
    return f"  {name:{_COLUMN}}{value}"


def _wrapped(line: str) -> str:
    """Break a long line at words, under its own text."""
    indent = len(line) - len(line.lstrip(" !-"))
    if line[2 : 2 + _COLUMN].rstrip() and line[_COLUMN : 2 + _COLUMN].strip() == "":
        indent = 2 + _COLUMN
    return textwrap.fill(line, _LINE, subsequent_indent=" " * indent, break_on_hyphens=False)


def plan_text(given: PlanInput, plan: PlanResult, volume_notes: Sequence[str] = ()) -> str:
    """Return the plan as lines of text."""
    lines = [
        *_section(given, plan),
        *(f"    {note}" for note in volume_notes),
        *_vent(given, plan),
        *_liquid(plan),
        *_shut(given, plan),
        *_room(given, plan),
    ]
    if plan.assumptions:
        lines += ["", "Assumed", *(f"  {sentence}" for sentence in plan.assumptions)]
    lines += ["", "Take care", *(f"  ! {sentence}" for sentence in plan.warnings)]
    lines += ["", "A plan advises. Only the gauge and the holds say what is left inside."]
    return "\n".join(_wrapped(line) for line in lines)


def _section(given: PlanInput, plan: PlanResult) -> Iterator[str]:
    yield "Section"
    litres = f"{plan.volume_m3 * 1e3:.3g} l"
    if plan.volume_uncertainty_m3:
        litres += f" +-{plan.volume_uncertainty_m3 * 1e3:.2g} l"
    yield _line("volume", litres)
    if plan.charge_temperature_k is not None:
        yield _line("temperature", celsius_words(plan.charge_temperature_k))
    if plan.charge_pressure_pa_gauge is not None:
        yield _line("pressure", pressure_words(plan.charge_pressure_pa_gauge))
    yield _line("CO2 in it", mass_words(plan.charge_kg))
    yield _line("  of it liquid", f"{mass_words(plan.liquid_kg)} ({given.filled:.0%} by volume)")
    if plan.dry_ice_kg:
        yield _line("  of it dry ice", mass_words(plan.dry_ice_kg))


def _vent(given: PlanInput, plan: PlanResult) -> Iterator[str]:
    yield ""
    yield "Vent"
    yield _line("triple point here", pressure_words(plan.triple_point_pa_gauge))
    yield _line("stop at", pressure_words(plan.stop_pressure_pa_gauge))
    yield _line("  boiling there at", celsius_words(plan.stop_temperature_k))
    yield _line("gauge", plan.gauge_fit.text)
    yield _line(
        "time to the stop pressure",
        f"{duration_words(plan.vent_to_stop_s)} through {given.vent_bore_m * 1e3:g} mm, "
        "fully open, at the least",
    )
    yield _line("  vented by then", mass_words(plan.vented_to_stop_kg))
    cold = [metal.name for metal in plan.metals if metal.below_minimum]
    yield _line("metal too cold there", ", ".join(cold) or "none of those compared")


def _liquid(plan: PlanResult) -> Iterator[str]:
    yield ""
    yield "What is left"
    yield _line("liquid at the stop pressure", mass_words(plan.liquid_left_at_stop_kg))
    ice = mass_words(plan.dry_ice_kg_if_vented_straight_down)
    if plan.dry_ice_kg_if_vented_straight_down:
        ice += f", at {celsius_words(plan.dry_ice_temperature_k)}"
    yield _line("dry ice if straight down", ice)
    if plan.boil_off_energy_j:
        yield _line("heat to boil it out", f"{plan.boil_off_energy_j / 1e3:,.0f} kJ")
    for way in plan.ways_to_remove_liquid:
        time = (
            "" if way.not_before_s is None else f", not before {duration_words(way.not_before_s)}"
        )
        yield f"  - {way.way}{time}"
        yield f"      {way.hazards}"


def _shut(given: PlanInput, plan: PlanResult) -> Iterator[str]:
    yield ""
    yield "If it is left shut"
    slope = plan.trapped_liquid_bar_per_k
    if slope is None:
        yield _line("liquid-full", "pressure per kelvin not known at this temperature")
    else:
        yield _line("liquid-full", f"{slope:.1f} bar/K")
    if plan.liquid_full_at_k is not None and given.filled < 1.0:
        yield _line("this charge fills it at", celsius_words(plan.liquid_full_at_k))
    if given.relief_pa_gauge is not None:
        yield _line("relief setting", pressure_words(given.relief_pa_gauge))
        for name, kelvin in (
            ("  liquid-full, after", plan.kelvin_to_relief),
            ("  this charge, after", plan.kelvin_to_relief_of_this_charge),
        ):
            yield _line(name, "not known" if kelvin is None else f"{kelvin:.1f} K of warming")


def _room(given: PlanInput, plan: PlanResult) -> Iterator[str]:
    yield ""
    yield "Air"
    yield _line("CO2 equivalent", mass_words(plan.co2e_kg))
    fresh = f"{plan.fresh_air_m3_per_kg:.0f} m3 for each kg vented"
    if plan.ventilation_needed_m3_per_h is not None:
        fresh += f"; {plan.ventilation_needed_m3_per_h:,.0f} m3/h with the vent fully open"
    yield _line("fresh air, if vented indoors", fresh)
    if given.room_m3 is not None:
        yield _line(f"all of it in {given.room_m3:g} m3", _ppm_words(plan.room_ppm_all_vented))
        yield _line("  unmixed, lowest 0.5 m", _ppm_words(plan.room_ppm_floor_layer))
        if plan.room_ppm_while_ventilated is not None:
            yield _line("  while vented, ventilated", _ppm_words(plan.room_ppm_while_ventilated))
        if plan.clearing_time_s is not None:
            poor = duration_words(plan.clearing_time_poorly_mixed_s)
            clear = f"{duration_words(plan.clearing_time_s)}; poorly mixed {poor}"
            if plan.clearing_time_s == 0.0:
                clear = "it stays below that when mixed"
            yield _line(f"clear to {plan.exposure_limits[0].ppm:,.0f} ppm in", clear)
    for limit in plan.exposure_limits:
        yield _line(
            f"limit {limit.ppm:,.0f} ppm",
            f"{_kept_words(limit)}{limit.name}, {limit.averaged} ({limit.source})",
        )


def _kept_words(limit: LimitCheck) -> str:
    if limit.passed_if_mixed is None:
        return ""
    if limit.passed_if_mixed:
        return "exceeded; "
    return "exceeded on the floor; " if limit.passed_in_floor_layer else "kept; "
