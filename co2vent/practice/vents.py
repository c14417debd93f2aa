"""A whole simulated vent: a section, somebody at the valve, and every reading of it."""

from collections.abc import Callable, Iterator
from typing import Final

import numpy as np

from co2vent.practice.log_lines import Rows, header_lines, log_layout, row_line, to_reading
from co2vent.practice.operators import Operator, PlanOperator
from co2vent.practice.room_air import RoomAir
from co2vent.practice.scenario import Scenario
from co2vent.section_model.simulation import SectionRun

LONGEST_S: Final = 4.0 * 3600.0


def run_vent(
    scenario: Scenario,
    operator: Operator,
    *,
    seed: int = 0,
    longest_s: float = LONGEST_S,
    progress: Callable[[float], None] | None = None,
) -> Rows:
    """Return all rows (columns as `section_model.layout.OUTPUT`) of a vent run by `operator`.

    Ends when the operator is done or after `longest_s`. The valve moves between readings: an
    opening decided at one reading lasts until the next. Deterministic for a seed.
    """
    run = SectionRun(scenario.setting, seed=seed)
    row = run.first_row()
    rows = [row]
    while row[0] < longest_s:
        opening = operator(to_reading(scenario, row), float(row[0]))
        if operator.done:
            break
        run.set_pump(isinstance(operator, PlanOperator) and operator.pump)
        row = run.step(min(max(opening, 0.0), 1.0), 1)[0]
        rows.append(row)
        if progress is not None:
            progress(float(row[0]))
    return np.array(rows)


def log_lines(scenario: Scenario, rows: Rows) -> Iterator[str]:
    """Yield the lines of the readings log of a vent, without line ends."""
    yield from header_lines(scenario)
    layout, room = log_layout(scenario), RoomAir(scenario)
    for row in rows:
        yield row_line(layout, to_reading(scenario, row, room.ppm(row)), float(row[0]))
