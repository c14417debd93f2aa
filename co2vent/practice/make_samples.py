"""Make the sample logs again: `python -m co2vent.practice.make_samples FOLDER`.

Each log is written with its truth (`NAME.truth.csv`) and a table of all (`README.md`). The same
seeds give the same files.
"""

import sys
import tomllib
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from importlib.resources import files
from pathlib import Path
from typing import Any, Final

from co2vent.practice.log_lines import Rows, to_reading, truth_lines
from co2vent.practice.operators import PlanOperator
from co2vent.practice.plans import plan_from
from co2vent.practice.scenario import Scenario, scenario_from
from co2vent.practice.vents import log_lines, run_vent
from co2vent.section_model.layout import COLUMN
from co2vent.units import ZERO_CELSIUS_K

SAMPLE_KEYS: Final = ("title", "shows", "seed", "style", "plan")
LOGGER_HEADER: Final = "Time [s];P [bar g];T line [°C];T ambient [°C]"


@dataclass(frozen=True, slots=True)
class Sample:
    """One sample log and what was inside."""

    name: str
    title: str
    shows: str
    scenario: Scenario
    rows: Rows
    foreign: bool

    def lines(self) -> Iterable[str]:
        """Return the lines of the log."""
        return logger_lines(self) if self.foreign else log_lines(self.scenario, self.rows)


def make(name: str, table: Mapping[str, Any]) -> Sample:
    """Return the sample that a table of `samples.toml` describes."""
    scenario = scenario_from({key: v for key, v in table.items() if key not in SAMPLE_KEYS})
    setup = scenario.setup
    operator = PlanOperator(plan_from(table["plan"], setup), setup.ambient_pressure_pa)
    rows = run_vent(scenario, operator, seed=table["seed"])
    return Sample(
        name, table["title"], table["shows"], scenario, rows, table.get("style") == "logger"
    )


def samples() -> Iterator[Sample]:
    """Yield all samples."""
    text = files("co2vent.practice").joinpath("samples.toml").read_text(encoding="utf-8")
    for name, table in tomllib.loads(text).items():
        yield make(name, table)


def logger_lines(sample: Sample) -> Iterator[str]:
    """Yield the lines of a log as another logger would write it."""
    yield "\ufeff# simulated: yes"
    yield LOGGER_HEADER
    for number, row in enumerate(sample.rows):
        if number and number % 900 == 0:
            yield LOGGER_HEADER  # it starts a new page
        if number % 400 == 250:
            yield ""
        reading = to_reading(sample.scenario, row)
        if reading is None:
            cells = [f"{row[0]:.1f}", "OL", "", ""]
        else:
            bar = (reading.pressure_pa - sample.scenario.setup.ambient_pressure_pa) / 1e5
            line_k, air_k = reading.line_temperature_k, reading.ambient_temperature_k
            lost = number % 97 == 50  # the clamp's radio drops out now and then
            cells = [
                f"{row[0]:.1f}",
                f"{bar:.2f}",
                "" if line_k is None or lost else f"{line_k - ZERO_CELSIUS_K:.1f}",
                "" if air_k is None else f"{air_k - ZERO_CELSIUS_K:.1f}",
            ]
        yield ";".join(cells).replace(".", ",")


def readme_lines(made: Iterable[Sample]) -> Iterator[str]:
    """Yield the table of all samples."""
    yield "# Sample logs"
    yield ""
    yield "All simulated: a fish-processing cold store, strainer sections on CO2 evaporator feed"
    yield "lines. No gauge and no section was near them. Each log has beside it what was really"
    yield "inside at every reading (`NAME.truth.csv`). Open one with `co2vent replay sample:NAME`"
    yield "or judge it with `co2vent assess sample:NAME`. Made by"
    yield "`python -m co2vent.practice.make_samples FOLDER`; the same seeds give the same files."
    yield ""
    yield "| log | what it shows | section | minutes | left at the end: liquid / dry ice |"
    yield "| --- | --- | --- | --- | --- |"
    for sample in made:
        end = sample.rows[-1]
        litres = sample.scenario.setting.section.volume_m3 * 1e3
        kind = "insulated" if sample.scenario.setup.insulated else "bare"
        liquid, solid = end[COLUMN["liquid_kg"]], end[COLUMN["solid_kg"]]
        yield (
            f"| `{sample.name}` | {sample.title}. {sample.shows} | {litres:g} l, {kind} "
            f"| {end[0] / 60:.0f} | {liquid:.3f} kg / {solid:.3f} kg |"
        )


def main(folder: Path) -> None:
    """Write every sample, its truth and the table into `folder`."""
    made = list(samples())
    for sample in made:
        ends = "\r\n" if sample.foreign else "\n"
        _write(folder / f"{sample.name}.csv", sample.lines(), ends)
        _write(folder / f"{sample.name}.truth.csv", truth_lines(sample.rows))
    _write(folder / "README.md", readme_lines(made))


def _write(path: Path, lines: Iterable[str], ends: str = "\n") -> None:
    path.write_bytes("".join(f"{line}{ends}" for line in lines).encode("utf-8"))


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit("give the folder to write the sample logs to")
    main(Path(sys.argv[1]))
