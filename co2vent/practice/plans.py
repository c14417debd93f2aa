"""Fixed vent plans: the usual one, and those written in a scenario's `[[plan]]` tables.

[[plan]]
hold_min = 2.0
[[plan]]
vent_to_bar_g = 5.2      # or "stop": the stop pressure of the scenario
opening = 0.5
"""

from collections.abc import Mapping, Sequence
from typing import Any, Final

from co2vent.errors import RefusedInputError
from co2vent.practice.operators import PlanStep
from co2vent.readings.limits import stop_pressure_pa_gauge
from co2vent.readings.reading import Setup

LOW_HOLD_PA: Final = 1.0e5  # gauge: where a last hold looks for dry ice
ZERO_PA: Final = 0.02e5
PLAN_KEYS: Final = ("hold_min", "vent_to_bar_g", "opening", "longest_min", "pump", "fast")


def usual_plan(setup: Setup) -> tuple[PlanStep, ...]:
    """Return: look, vent to the stop pressure, hold 10 min, again, 1 bar g, hold 10 min, zero."""
    stop_pa = stop_pressure_pa_gauge(setup)
    return (
        PlanStep(hold_s=90.0),
        PlanStep(vent_to_pa=stop_pa),
        PlanStep(hold_s=600.0),
        PlanStep(vent_to_pa=stop_pa),
        PlanStep(hold_s=600.0),
        PlanStep(vent_to_pa=LOW_HOLD_PA),
        PlanStep(hold_s=600.0),
        PlanStep(vent_to_pa=ZERO_PA, longest_s=900.0),
        PlanStep(hold_s=300.0),
    )


def plan_from(tables: Sequence[Mapping[str, Any]], setup: Setup) -> tuple[PlanStep, ...]:
    """Return the steps written in `[[plan]]` tables.

    Raises:
        RefusedInputError: an unknown key, or a step that neither holds nor vents.
    """
    steps = []
    for number, table in enumerate(tables, 1):
        wrong = set(table) - set(PLAN_KEYS)
        if wrong or ("hold_min" in table) == ("vent_to_bar_g" in table):
            raise RefusedInputError(
                f"[[plan]] step {number}: give hold_min or vent_to_bar_g, and optionally opening, "
                "longest_min, pump or fast"
            )
        vent_to = table.get("vent_to_bar_g")
        try:
            if vent_to == "stop":
                vent_to_pa: float | None = stop_pressure_pa_gauge(setup)
            else:
                vent_to_pa = None if vent_to is None else float(vent_to) * 1e5
            hold = table.get("hold_min")
            steps.append(
                PlanStep(
                    hold_s=None if hold is None else float(hold) * 60.0,
                    vent_to_pa=vent_to_pa,
                    opening=float(table.get("opening", 1.0)),
                    longest_s=float(table.get("longest_min", 60.0)) * 60.0,
                    pump=bool(table.get("pump", False)),
                    fast=bool(table.get("fast", False)),
                )
            )
        except (TypeError, ValueError):
            raise RefusedInputError(f"[[plan]] step {number}: a value is no number") from None
    return tuple(steps)
