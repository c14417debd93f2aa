"""The plan's figures in the words and numbers of the screen. Pure."""

from co2vent.planning.shapes import PlanResult
from co2vent.window import text
from co2vent.window.text import UnitChoice
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
