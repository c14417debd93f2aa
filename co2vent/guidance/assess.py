"""A whole record at once: the same core, and the JSON form that other programs read."""

from collections.abc import Iterable
from dataclasses import dataclass

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.guidance.event_log import in_order_of_time
from co2vent.guidance.session import Item, View, begin, finish, view
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment
from co2vent.readings.reading import Setup
from co2vent.sentence import Sentence

FORMAT = "co2vent assessment 1"


def assess_readings(setup: Setup, items: Iterable[Item]) -> View:
    """Run the core over `items` to the end of the record."""
    session = begin(setup)
    take = session.take
    for item in items:
        take(item)
    session, _ = finish(session)
    return view(session)


@dataclass(frozen=True, slots=True)
class Final:
    """The last word of a record."""

    charge: Charge
    instruction: str
    reason: str
    vapor_only_since_s: float | None


def final_of(seen: View) -> Final:
    """What stands at the end: a standing verdict, else the last hold's."""
    last = seen.holds[-1] if seen.holds else None
    charge = last.charge if last is not None else Charge.UNDETERMINED
    reason = (
        last.reason
        if last is not None
        else Sentence("No hold in the record: nothing shows what is inside.")
    )
    standing = seen.vapor_only_since_s is not None
    if standing and charge is Charge.UNDETERMINED:
        charge = Charge.VAPOR_ONLY
        cleared = next((h for h in reversed(seen.holds) if h.charge is Charge.VAPOR_ONLY), None)
        if cleared is not None:
            reason = cleared.reason
    if not standing and charge is Charge.VAPOR_ONLY:
        charge = Charge.UNDETERMINED
        reason = Sentence(
            "Vapour only was shown, but no longer stands: {reason}", reason=seen.prompt.reason
        )
    if seen.stale and charge is Charge.VAPOR_ONLY:
        charge = Charge.UNDETERMINED
    return Final(charge, seen.prompt.instruction.value, reason, seen.vapor_only_since_s)


def _bounds(bounds: Bounds | None) -> dict[str, float | None] | None:
    if bounds is None:
        return None
    return {
        "estimate": bounds.estimate,
        "lower": bounds.lower,
        "upper": bounds.upper,
        "confidence": bounds.confidence,
    }


def _hold(hold: HoldAssessment) -> dict[str, object]:
    return {
        "number": hold.number,
        "start_s": hold.start_s,
        "end_s": hold.end_s,
        "start_pressure_pa": hold.start_pressure_pa,
        "end_pressure_pa": hold.end_pressure_pa,
        "charge": hold.charge.value,
        "leak_by": hold.leak_by.value,
        "liquid_kg": _bounds(hold.liquid_kg),
        "dry_ice_kg": _bounds(hold.dry_ice_kg),
        "liquid_volume_fraction": _bounds(hold.liquid_volume_fraction),
        "detection_limit_kg": hold.detection_limit_kg,
        "dry_ice_kg_if_vented": hold.dry_ice_kg_if_vented,
        "boil_off_s": hold.boil_off_s,
        "boil_off_warmed_s": hold.boil_off_warmed_s,
        "heat_w": hold.heat_w,
        "sublime_s": hold.sublime_s,
        "saturation_pressure_pa": hold.saturation_pressure_pa,
        "slope_pa_per_s": _bounds(hold.slope_pa_per_s),
        "next_step": hold.next_step,
        "instruction": hold.instruction.value,
        "reason": hold.reason,
    }


def assessment_json(
    seen: View, file: str, rejected: Iterable[tuple[int, str]] = ()
) -> dict[str, object]:
    """Return the assessment as JSON-ready values: SI, absolute, `None` where not known."""
    setup = seen.setup
    ambient = setup.ambient_pressure_pa
    final = final_of(seen)
    mass = seen.mass_vented_kg
    return {
        "format": FORMAT,
        "file": file,
        "readings": seen.readings,
        "rejected": [{"line": line, "reason": reason} for line, reason in rejected],
        "section_name": setup.section_name,
        "simulated": setup.simulated,
        "ambient_pressure_pa": ambient,
        "ambient_pressure_assumed": setup.ambient_pressure_assumed,
        "triple_point_pa_gauge": TRIPLE_PRESSURE_PA - ambient,
        "stop_pressure_pa_gauge": seen.stop_pressure_pa - ambient,
        "holds": [_hold(hold) for hold in seen.holds],
        "final": {
            "charge": final.charge.value,
            "instruction": final.instruction,
            "reason": final.reason,
            "vapor_only_since_s": final.vapor_only_since_s,
        },
        "mass_vented_kg": None
        if mass is None
        else {"estimate": mass.estimate, "lower": mass.lower, "upper": mass.upper},
        "section_volume_by_bore_m3": _bounds(seen.volume_by_bore_m3),
        "metal_below_minimum_share": _bounds(seen.metal_below_minimum),
        "minimum_pressure_pa_gauge": None
        if seen.minimum_pressure_pa is None
        else seen.minimum_pressure_pa - ambient,
        "seconds_below_triple_point": seen.seconds_below_triple_point,
        "seconds_below_triple_point_before_vapor_only": (
            seen.seconds_below_triple_point_before_vapor_only
        ),
        "events": [
            {"at_s": e.at_s, "kind": e.kind.value, "text": e.text}
            for e in in_order_of_time(seen.events)
        ],
    }
