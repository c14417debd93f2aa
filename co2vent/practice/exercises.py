"""The exercises: a scenario, what it shows, and checks that it really shows it.

`exercises.toml` holds them: the scenario's tables, a plan that a demonstrator would follow,
what to look for, the conclusion a novice draws, and the question for the debriefing. `checks` say
in numbers what the trace must show; `observe` measures them on a run.
"""

import tomllib
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Any, Final

import numpy as np

from co2vent.co2 import TRIPLE_PRESSURE_PA, kernels
from co2vent.errors import RefusedInputError
from co2vent.practice.log_lines import Rows
from co2vent.practice.operators import PlanOperator, PlanStep
from co2vent.practice.plans import plan_from
from co2vent.practice.scenario import Scenario, scenario_from
from co2vent.practice.scenario_file import KEYS
from co2vent.practice.vents import run_vent
from co2vent.section_model.layout import COLUMN
from co2vent.section_model.population import draw_case
from co2vent.sentence import Sentence

SHELF_PA: Final = 0.10e5  # around the triple point
LATE_S: Final = 180.0  # the last minutes of a hold, for its late slope


@dataclass(frozen=True, slots=True)
class Check:
    """A quantity of the run that must lie within bounds; `hold` counts from 0, before venting."""

    quantity: str
    low: float
    high: float
    hold: int = 0
    of_hold: int = 0  # the hold that a ratio compares with
    at_min: float | None = None


Measure = Callable[[Scenario, Rows, list[Rows], Check], float]


@dataclass(frozen=True, slots=True, kw_only=True)
class Exercise:
    """One exercise of the class. `change` names the variables worth changing, as `table.key`."""

    key: str
    title: str
    story: str
    look_for: str
    expected: str
    wrong: str
    debrief: str
    second_test: str
    change: tuple[str, ...]
    checks: tuple[Check, ...]
    tables: Mapping[str, Any]
    seed: int

    def scenario(self, changes: Mapping[str, float | bool | str] | None = None) -> Scenario:
        """Return the scenario, with `changes` such as `{"charge.liquid_fraction": 0.2}`.

        Raises:
            RefusedInputError: a change of something that is not there, or that cannot be.
        """
        tables = {k: dict(v) if isinstance(v, Mapping) else v for k, v in self.tables.items()}
        for name, value in (changes or {}).items():
            group, _, key = name.partition(".")
            if key not in KEYS.get(group, {}):
                raise RefusedInputError(f"nothing called {name!r} to change")
            tables.setdefault(group, {})[key] = value
        return scenario_from(tables)

    def plan(self, scenario: Scenario) -> tuple[PlanStep, ...]:
        """Return what a demonstrator does with the valve."""
        return plan_from(self.tables["plan"], scenario.setup)

    def run(self, changes: Mapping[str, float | bool | str] | None = None) -> Rows:
        """Return the rows of the exercise as a demonstrator shows it."""
        scenario = self.scenario(changes)
        operator = PlanOperator(self.plan(scenario), scenario.setup.ambient_pressure_pa)
        return run_vent(scenario, operator, seed=self.seed)


@cache
def exercises() -> tuple[Exercise, ...]:
    """Return all exercises, in the order of the class."""
    text = files("co2vent.practice").joinpath("exercises.toml").read_text(encoding="utf-8")
    made = []
    for number, (key, table) in enumerate(tomllib.loads(text).items(), 1):
        tables = {k: v for k, v in table.items() if k in KEYS or k == "plan"}
        made.append(
            Exercise(
                key=key,
                title=Sentence(table["title"]),
                story=Sentence(" ".join(table["story"].split())),
                look_for=Sentence(table["look_for"]),
                expected=Sentence(table["expected"]),
                wrong=Sentence(table["wrong"]),
                debrief=Sentence(table["debrief"]),
                second_test=Sentence(table["second_test"]),
                change=tuple(table["change"]),
                checks=tuple(Check(**check) for check in table["checks"]),
                tables=tables,
                seed=table.get("seed", number),
            )
        )
    return tuple(made)


def exercise(key: str) -> Exercise:
    """Return the exercise called `key`.

    Raises:
        RefusedInputError: there is none; the message lists the names.
    """
    for one in exercises():
        if one.key == key:
            return one
    names = ", ".join(one.key for one in exercises())
    raise RefusedInputError(f"no exercise {key!r}: use one of {names}, or random:SEED")


def random_scenario(seed: int) -> Scenario:
    """Return a random section of the benchmark's population, for a class that knows them all."""
    case = draw_case(seed)
    return Scenario(
        setting=case.setting,
        setup=case.setup,
        log_valve=True,
        log_clamp=case.clamp_logged,
    )


def is_exercise(name: str) -> bool:
    """Return whether `name` is an exercise's key or `random:SEED`."""
    seed = name.removeprefix("random:")
    return (seed != name and seed.isdecimal()) or any(one.key == name for one in exercises())


def scenario_named(name: str) -> tuple[Scenario, int]:
    """Return scenario and seed of an exercise's key, or of `random:SEED`.

    Raises:
        RefusedInputError: no such exercise.
    """
    if name.startswith("random:") and name.removeprefix("random:").isdecimal():
        seed = int(name.removeprefix("random:"))
        return random_scenario(seed), seed
    one = exercise(name)
    return one.scenario(), one.seed


def holds(rows: Rows) -> list[Rows]:
    """Return the rows of each hold; the closed time before the first vent is hold 0."""
    closed = rows[:, COLUMN["valve"]] == 0.0
    edges = np.flatnonzero(np.diff(closed.astype(int))) + 1
    pieces = np.split(rows, edges)
    found = [piece for piece in pieces if piece[0, COLUMN["valve"]] == 0.0]
    return found if closed[0] else [rows[:0], *found]


def late_slope(hold: Rows) -> float:
    """Return the slope of the gauge over the hold's last minutes [Pa/s]."""
    late = hold[hold[:, 0] > hold[-1, 0] - LATE_S]
    return float(np.polyfit(late[:, 0], late[:, COLUMN["gauge_pa"]], 1)[0])


def rise(hold: Rows, at_min: float | None) -> float:
    """Return how far the gauge rose in a hold, to its end or to a minute of it [Pa]."""
    end_s = hold[-1, 0] if at_min is None else hold[0, 0] + 60.0 * at_min
    shown = hold[:, COLUMN["gauge_pa"]]
    return float(np.interp(end_s, hold[:, 0], shown)) - float(shown[0])


def observe(scenario: Scenario, rows: Rows, check: Check) -> float:
    """Measure a check's quantity on a run.

    Raises:
        RefusedInputError: an unknown quantity, or a hold that the run does not have.
    """
    measure = MEASURES.get(check.quantity)
    found = holds(rows)
    wanted = max(check.hold, check.of_hold)
    if measure is None or wanted >= len(found):
        raise RefusedInputError(f"{check.quantity} of hold {wanted}: the run has no such thing")
    return float(measure(scenario, rows, found, check))


def _triple(column: str) -> Measure:
    def minutes(_s: Scenario, rows: Rows, found: list[Rows], check: Check) -> float:
        chosen = found[check.hold] if column == "hold" else rows[rows[:, COLUMN["valve"]] > 0.0]
        near = np.abs(chosen[:, COLUMN["pressure_pa"]] - TRIPLE_PRESSURE_PA) < SHELF_PA
        period_s = float(rows[-1, 0] - rows[0, 0]) / (len(rows) - 1)
        return float(near.sum()) * period_s / 60.0

    return minutes


def _of(column: str, scale: float = 1.0, row: int = -1) -> Measure:
    return lambda _s, _rows, found, c: found[c.hold][row, COLUMN[column]] * scale


MEASURES: Final[dict[str, Measure]] = {
    "rise_bar": lambda _s, _rows, found, c: rise(found[c.hold], c.at_min) / 1e5,
    "rise_ratio": lambda _s, _rows, found, c: (
        rise(found[c.hold], c.at_min) / rise(found[c.of_hold], c.at_min)
    ),
    "late_mbar_per_min": lambda _s, _rows, found, c: late_slope(found[c.hold]) * 0.6,
    "late_ratio": lambda _s, _rows, found, c: (
        late_slope(found[c.hold]) / late_slope(found[c.of_hold])
    ),
    "gauge_range_bar": lambda _s, _rows, found, c: (
        np.ptp(found[c.hold][:, COLUMN["gauge_pa"]]) / 1e5
    ),
    "true_rise_bar": lambda _s, _rows, found, c: (
        (found[c.hold][-1, COLUMN["pressure_pa"]] - found[c.hold][0, COLUMN["pressure_pa"]]) / 1e5
    ),
    "gauge_bar_start": _of("gauge_pa", 1e-5, 0),
    "gauge_bar_end": _of("gauge_pa", 1e-5),
    "gauge_bar_top": lambda _s, _rows, found, c: (
        np.nanmax(found[c.hold][:, COLUMN["gauge_pa"]]) / 1e5
    ),
    "true_margin_bar_start": lambda _s, _rows, found, c: (
        (found[c.hold][0, COLUMN["pressure_pa"]] - TRIPLE_PRESSURE_PA) / 1e5
    ),
    "above_saturation_bar": lambda _s, _rows, found, c: (
        (found[c.hold][-1, COLUMN["pressure_pa"]] - _saturated_pa(found[c.hold][-1])) / 1e5
    ),
    "liquid_kg_start": _of("liquid_kg", 1.0, 0),
    "liquid_kg_end": _of("liquid_kg"),
    "solid_kg_start": _of("solid_kg", 1.0, 0),
    "solid_kg_end": _of("solid_kg"),
    "bound_kg_end": _of("bound_kg"),
    "pressure_pa_end": _of("pressure_pa"),
    "shelf_min_holding": _triple("hold"),
    "shelf_min_venting": _triple("vent"),
}


def _saturated_pa(row: Rows) -> float:
    """Return the saturation pressure of the clamp's temperature at a row [Pa]."""
    return float(kernels.equilibrium_pressure_pa(float(row[COLUMN["clamp_k"]])))
