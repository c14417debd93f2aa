"""The plan's figures in the words, units and numbers of the screen. Pure."""

from co2vent.planning.quantity import Kind, Quantity
from co2vent.planning.shapes import PlanResult
from co2vent.sentence import Sentence
from co2vent.units import PSI_PA, temperature_from_k
from co2vent.window import text
from co2vent.window.sentences import spoken
from co2vent.window.text import OUNCE_KG, POUND_KG, UnitChoice, temperature_of
from co2vent.window.words import translate

MINUTES_FROM_S = 90.0
HOURS_FROM_S = 90.0 * 60.0
DAYS_FROM_S = 48.0 * 3600.0


def headline_words(plan: PlanResult, units: UnitChoice) -> str:
    """Return the figures to take along to the valve."""
    ambient = plan.ambient_pressure_pa
    stop = text.both(units, plan.stop_pressure_pa_gauge + ambient, ambient)
    triple = text.both(units, plan.triple_point_pa_gauge + ambient, ambient)
    return "\n".join(
        (
            translate("Plan", "Stop at {stop} (triple point {triple})").format(
                stop=stop, triple=triple
            ),
            translate("Plan", "Dry ice if vented straight down: {mass}").format(
                mass=mass_words(plan.dry_ice_kg_if_vented_straight_down, units)
            ),
            translate("Plan", "Stop pressure not before {time}, fully open").format(
                time=duration_words(plan.vent_to_stop_s)
            ),
        )
    )


def said_in(sentence: str, units: UnitChoice) -> str:
    """Return a sentence of the plan in the language of the screen and the chosen units."""
    inside = _in_units(sentence, units)
    if isinstance(inside, Sentence):
        return spoken(inside)
    return spoken(Sentence("{figure}", figure=inside)) if inside is not sentence else sentence


def _in_units(words: str, units: UnitChoice) -> str:
    """Put every quantity of a sentence, and of those inside it, into the chosen units."""
    if isinstance(words, Quantity):
        return _quantity_words(words, units)
    if not isinstance(words, Sentence):
        return words
    values = {name: _in_units(value, units) for name, value in words.values.items()}
    return type(words)(words.template, **values)  # the template is collected where it was made


def _quantity_words(quantity: Quantity, units: UnitChoice) -> str:
    """Return the quantity in the chosen unit and, where two are chosen, the other beside it."""
    first = _in_unit(quantity, units.pressure)
    if units.second_pressure is None or quantity.kind not in (Kind.PRESSURE, Kind.TEMPERATURE):
        return first
    return Sentence("{a} / {b}", a=first, b=_in_unit(quantity, units.second_pressure))


def _in_unit(quantity: Quantity, pressure_unit: str) -> str:
    """Return the quantity with the decimal point of files: whoever says it puts in the screen's."""
    if not pressure_unit.startswith("psi"):
        return str(quantity).partition(" (")[0]  # the planner's own, without its second unit
    si = quantity.si
    match quantity.kind:
        case Kind.PRESSURE:
            return f"{si / PSI_PA:.1f} psig"
        case Kind.ABSOLUTE:
            return f"{si / PSI_PA:.1f} psia"
        case Kind.DIFFERENCE:
            psi = si / PSI_PA
            return f"{psi:.0f} psi" if psi >= 10.0 else f"{psi:.1f} psi"
        case Kind.DIFFERENCE_DIGITS:
            return f"{si / PSI_PA:.0f}"
        case Kind.PRESSURE_PER_KELVIN:
            return f"{si / PSI_PA / 1.8:.1f} psi/°F"
        case Kind.TEMPERATURE:
            return f"{temperature_from_k(si, temperature_of(pressure_unit)):.1f} degF"
        case Kind.WARMING:
            return f"{si * 1.8:.1f} °F"
        case Kind.MASS:
            ounces = si < 0.1 * POUND_KG  # as the figures beside it are said
            return f"{si / OUNCE_KG:.2g} oz" if ounces else f"{si / POUND_KG:.3g} lb"
        case Kind.MASS_UNIT:
            return "lb"
        case Kind.VOLUME_PER_MASS:
            return f"{si * POUND_KG:.0f} m3"


def mass_words(mass_kg: float | None, units: UnitChoice) -> str:
    """Return a mass of the plan; one that is nought, or not known, is said so."""
    if mass_kg is None:
        return translate("Plan", "not known")
    if mass_kg == 0.0:
        return translate("Plan", "none")
    return text.mass(mass_kg, pounds=units.pressure.startswith("psi"))


def duration_words(seconds: float | None) -> str:
    """Return a duration that a person can plan with."""
    if seconds is None:
        return translate("Plan", "not known")
    if seconds < MINUTES_FROM_S:
        return f"{text.number(seconds, 0)} s"
    if seconds < HOURS_FROM_S:
        return f"{text.number(seconds / 60.0, 0)} min"
    if seconds < DAYS_FROM_S:
        return f"{text.number(seconds / 3600.0, 1)} h"
    return translate("Plan", "{days} days").format(days=text.number(seconds / 86400.0, 1))
