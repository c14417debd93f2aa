"""`co2vent simulate`: a simulated vent as a readings log, and what was really inside."""

import argparse
import sys
from collections.abc import Iterable
from itertools import takewhile
from pathlib import Path
from typing import Any, Final

from co2vent.cli.plan_options import (
    DEFAULT_ACCURACY_PERCENT,
    DEFAULT_BORE_MM,
    DEFAULT_FULL_SCALE_BAR,
    add_plan_options,
    number,
    section_from,
)
from co2vent.errors import OutOfRangeError, RefusedInputError
from co2vent.planning.shapes import (
    DEFAULT_AMBIENT_K,
    DEFAULT_DISCHARGE_COEFFICIENT,
    DEFAULT_LIQUID_FRACTION,
)
from co2vent.practice.log_lines import TRUTH_HEADER, truth_lines
from co2vent.practice.operators import Operator, PlanOperator, PromptOperator, RuleOperator
from co2vent.practice.plans import plan_from, usual_plan
from co2vent.practice.scenario import Scenario, scenario_from
from co2vent.practice.scenario_file import read_tables
from co2vent.practice.vents import log_lines, run_vent
from co2vent.readings.metadata import build_setup
from co2vent.store.whole_file import atomic_write
from co2vent.units import ZERO_CELSIUS_K

LONGEST_MIN: Final = 180.0
_HEAD_BYTES: Final = 1 << 16  # the metadata of any log
DEFAULT_AMBIENT_C: Final = DEFAULT_AMBIENT_K - ZERO_CELSIUS_K


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options of `simulate`: those of `plan`, and who works the valve."""
    out = parser.add_argument_group("what is written")
    out.add_argument("--log", type=Path, required=True, metavar="FILE", help="readings log (CSV)")
    out.add_argument(
        "--truth", type=Path, metavar="FILE", help="what was really inside, row by row (CSV)"
    )
    out.add_argument(
        "--replace", action="store_true",
        help="write over a file even if no simulation made it (an earlier simulated one goes "
        "without asking)",
    )  # fmt: skip
    model = parser.add_argument_group("the simulation")
    model.add_argument(
        "--section", type=Path, metavar="FILE.toml",
        help="section, charge, vent, leaks and gauge from a file; options win over it",
    )  # fmt: skip
    model.add_argument("--seed", type=int, default=0, help="of the gauge's noise (default 0)")
    model.add_argument(
        "--leak-by-g-per-s", type=number, metavar="G",
        help="flow past the closed isolation valve, g/s (default 0)",
    )  # fmt: skip
    model.add_argument("--insulated", action="store_true", help="the section is insulated")
    model.add_argument(
        "--operator", choices=["prompts", "plan", "rule"], default="prompts",
        help="who works the valve: prompts (default) does what the program says; plan a fixed "
        "schedule; rule vents until a hold rises by no more than 1 psi",
    )  # fmt: skip
    model.add_argument(
        "--for", type=number, dest="longest_min", default=LONGEST_MIN, metavar="MIN",
        help="longest vent, minutes (default %(default)g)",
    )  # fmt: skip
    add_plan_options(parser)
    parser.epilog = (
        "Every option has a default: 14.5 l at -10 degC, half liquid. The log says "
        "`simulated: yes`; no report of it can be signed as a job. The first run on a machine "
        "compiles the model, some 15 s; later ones start at once."
    )


def run(args: argparse.Namespace) -> int:
    """Simulate; write the log and the truth; return 0."""
    if not 0.1 <= args.longest_min <= 24 * 60:
        raise RefusedInputError("--for: give minutes from 0.1 to 1440")
    if args.truth is not None and args.truth.resolve() == args.log.resolve():
        raise RefusedInputError("--truth: give another file than --log")
    if not args.replace:
        _keep_real_files(args.log, args.truth)
    if args.seed < 0:
        raise RefusedInputError("--seed: give a whole number from 0 up")
    tables = read_tables(args.section) if args.section is not None else {}
    try:
        scenario = scenario_from(_merged(tables, args))
        operator = _operator(args.operator, scenario, tables.get("plan"))
        rows = run_vent(scenario, operator, seed=args.seed, longest_s=args.longest_min * 60.0)
    except OutOfRangeError as error:
        raise RefusedInputError(str(error)) from error
    _write(args.log, log_lines(scenario, rows))
    if args.truth is not None:
        _write(args.truth, truth_lines(rows))
    minutes = float(rows[-1, 0]) / 60.0
    print(f"{args.log}: {len(rows)} simulated readings, {minutes:.0f} min", file=sys.stderr)
    return 0


def _keep_real_files(log: Path, truth: Path | None) -> None:
    """Refuse to write over what no simulation made: a recorded vent can't be recorded again.

    Simulated files are written over as before: programs run `simulate` to one name many times.
    """
    for path, ours in ((log, _is_simulated), (truth, _is_truth)):
        if path is None or not path.is_file():
            continue  # a device or a pipe takes what comes
        try:
            with path.open("rb") as file:
                head = file.read(_HEAD_BYTES)
        except OSError as error:
            raise RefusedInputError(f"{path}: {error.strerror}; choose another name") from None
        if head and not ours(head):
            raise RefusedInputError(
                f"{path}: exists and was not simulated; choose another name, or add --replace"
            )


def _is_simulated(head: bytes) -> bool:
    """Say whether a log's metadata, the lines before its header, say that it is simulated."""
    lines = (line.strip() for line in head.decode("utf-8-sig", "replace").splitlines())
    for line in takewhile(lambda line: line.startswith("#"), lines):
        key, _, value = line[1:].partition(":")
        if key.strip() == "simulated":
            return value.strip().lower() == "yes"
    return False


def _is_truth(head: bytes) -> bool:
    return head.splitlines()[0] == TRUTH_HEADER.encode()


def _merged(tables: dict[str, Any], args: argparse.Namespace) -> dict[str, Any]:
    """Return the file's tables with the options laid over them."""
    merged = {
        name: dict(value) if isinstance(value, dict) else value for name, value in tables.items()
    }

    def put(group: str, key: str, value: object, default: object = None) -> None:
        table = merged.setdefault(group, {})
        if isinstance(table, dict) and value is not None and value != default:
            table[key] = value
        elif isinstance(table, dict) and default is not None:
            table.setdefault(key, default)

    if args.volume_l is not None or args.pipe or args.part or args.bottle is not None:
        built = section_from(args, build_setup({}))
        put("section", "volume_l", args.volume_l if built is None else built.volume_m3 * 1e3)
    if args.insulated:
        put("section", "insulated", True)
    charge = merged.get("charge", {})
    if args.temperature_c is not None and args.pressure_bar_g is not None:
        raise RefusedInputError("give --temperature-c or --pressure-bar-g of the charge, not both")
    if isinstance(charge, dict):
        if args.temperature_c is not None:
            charge.pop("pressure_bar_g", None)
        if args.pressure_bar_g is not None:
            charge.pop("temperature_c", None)
    put("charge", "temperature_c", args.temperature_c)
    put("charge", "pressure_bar_g", args.pressure_bar_g)
    if args.liquid_fraction is not None or "liquid_fraction" not in merged["charge"]:
        given = args.liquid_fraction
        put("charge", "liquid_fraction", DEFAULT_LIQUID_FRACTION if given is None else given)
    put("section", "metal_minimum_c", args.metal_minimum_c)
    put("surroundings", "altitude_m", args.altitude_m)
    put("surroundings", "room_m3", args.room_m3)
    put("surroundings", "air_changes_per_hour", args.air_changes_per_hour)
    put("surroundings", "ambient_c", args.ambient_c, DEFAULT_AMBIENT_C)
    put("vent", "bore_mm", args.vent_bore_mm)
    put("vent", "discharge_coefficient", args.discharge_coefficient, DEFAULT_DISCHARGE_COEFFICIENT)
    put("leaks", "leak_by_g_per_s", args.leak_by_g_per_s)
    put("leaks", "relief_bar_g", args.relief_bar_g)
    put("gauge", "full_scale", args.gauge_full_scale_bar)
    put("gauge", "accuracy_percent", args.gauge_accuracy_percent)
    if args.section is None:
        for group, key, value in (
            ("surroundings", "altitude_m", 0.0),
            ("vent", "bore_mm", DEFAULT_BORE_MM),
            ("gauge", "full_scale", DEFAULT_FULL_SCALE_BAR),
            ("gauge", "accuracy_percent", DEFAULT_ACCURACY_PERCENT),
        ):
            merged[group].setdefault(key, value)
    return merged


def _operator(name: str, scenario: Scenario, plan: object) -> Operator:
    setup = scenario.setup
    if name == "rule":
        return RuleOperator(setup)
    if name == "plan":
        steps = plan_from(plan, setup) if isinstance(plan, list) else usual_plan(setup)
        return PlanOperator(steps, setup.ambient_pressure_pa)
    return PromptOperator(setup)


def _write(path: Path, lines: Iterable[str]) -> None:
    atomic_write(path, "".join(f"{line}\n" for line in lines).encode("utf-8"))
