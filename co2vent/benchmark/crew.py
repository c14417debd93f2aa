"""`co2vent benchmark crew`: a crew that does what the program says, on random sections.

The verdict benchmark's crews follow a script. Here the prompts themselves work the valve, by a hand
that throttles: what counts is where that ends, how long it takes, and whether it ends at all.
"""

import argparse
import json
import multiprocessing
import random
from collections.abc import Sequence
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any, Final

import numpy as np

from co2vent.benchmark.observing import observe
from co2vent.errors import RefusedInputError
from co2vent.inference.amounts import allowable_kg
from co2vent.inference.criteria import CRITERIA
from co2vent.inference.outcome import LeakBy

LONGEST_S: Final = 3.0 * 3600.0
ENDLESS: Final = 15  # holds; a crew has given up long before


@dataclass(frozen=True, slots=True, kw_only=True)
class CrewVent:
    """How one vent went."""

    seed: int
    leak_by_g_per_s: float
    clamp: bool
    holds: int
    took_s: float
    dry_from_s: float  # when less than the allowable amount was left for good
    cleared_at_s: float | None  # "vapour only" first said
    leak_said: bool
    cleared_while_wet: bool
    vented_over_estimate: float | None  # of the mass vented


def draw(seed: int) -> dict[str, Any]:
    """Return the tables of a random section (see `practice.scenario_file`)."""
    chance = random.Random(seed)
    wet = chance.random() < 0.6
    return {
        "leaks": {"leak_by_g_per_s": chance.choice([0, 0, 0, 0.02, 0.05, 0.1, 0.2, 0.3])},
        "section": {
            "volume_l": round(10.0 ** chance.uniform(0.2, 1.6), 2),
            "insulated": chance.random() < 0.4,
        },
        "charge": {
            "temperature_c": chance.choice([-30, -20, -10, 0]),
            "liquid_fraction": 10.0 ** chance.uniform(-3.0, -0.1) if wet else 0.0,
        },
        "surroundings": {"ambient_c": chance.choice([-5, 10, 20, 30])},
        "gauge": {"clamp": chance.random() < 0.6},
    }


def vent(seed: int) -> CrewVent:
    """Run one vent with the prompts at the valve, and compare with what was inside."""
    from co2vent.practice.log_lines import to_reading
    from co2vent.practice.operators import PromptOperator
    from co2vent.practice.scenario import scenario_from
    from co2vent.practice.vents import run_vent
    from co2vent.section_model.layout import COLUMN

    tables = draw(seed)
    scenario = scenario_from(tables)
    rows = run_vent(scenario, PromptOperator(scenario.setup), seed=seed, longest_s=LONGEST_S)
    shown = [to_reading(scenario, row) for row in rows]
    seen = observe(scenario.setup, [reading for reading in shown if reading is not None])
    at_s = rows[:, COLUMN["elapsed_s"]]
    left_kg = rows[:, COLUMN["liquid_kg"]] + rows[:, COLUMN["solid_kg"]]
    wet = left_kg > allowable_kg(scenario.setting.section.volume_m3, CRITERIA)
    vented = seen.mass_vented_kg
    return CrewVent(
        seed=seed,
        leak_by_g_per_s=tables["leaks"]["leak_by_g_per_s"],
        clamp=scenario.log_clamp,
        holds=sum(hold.number > 0 for hold in seen.holds),
        took_s=float(at_s[-1]),
        dry_from_s=float(at_s[wet][-1]) if wet.any() else 0.0,
        cleared_at_s=seen.cleared[0][0] if seen.cleared else None,
        leak_said=any(hold.leak_by is LeakBy.SUSPECTED for hold in seen.holds),
        cleared_while_wet=any(
            bool(wet[(at_s >= start) & (at_s <= stop)].any()) for start, stop in seen.cleared
        ),
        vented_over_estimate=None
        if vented is None or vented.estimate is None
        else float(rows[-1, COLUMN["vented_kg"]]) / vented.estimate,
    )


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options."""
    parser.add_argument("--vents", type=int, default=120, help="how many (default %(default)d)")
    parser.add_argument("--seed", type=int, default=0, help="the first seed")
    parser.add_argument("--processes", type=int, default=2, help="at most two are used")
    parser.add_argument("--json", type=Path, metavar="FILE", help="write every vent")


def run(args: argparse.Namespace) -> int:
    """Run, print the table; exit status 1 if "vapour only" stood over a wet section."""
    if args.vents < 1:
        raise RefusedInputError("--vents: give a number above zero")
    seeds = range(args.seed, args.seed + args.vents)
    if args.processes < 2:
        vents = [vent(seed) for seed in seeds]
    else:
        with multiprocessing.get_context("spawn").Pool(2) as pool:
            vents = pool.map(vent, seeds, chunksize=4)
    print(report(vents))
    if args.json is not None:
        document = {
            "format": "co2vent crew benchmark 1",
            "vents": [asdict(one) for one in vents],
        }
        args.json.write_text(json.dumps(document, indent=1), encoding="utf-8")
    return 1 if any(one.cleared_while_wet for one in vents) else 0


def report(vents: Sequence[CrewVent]) -> str:
    """Return the table."""
    lines = [
        f"{'':24}{'vents':>6}{'cleared':>9}{'wrongly':>9}{'leak said':>11}"
        f"{f'over {ENDLESS} holds':>15}{'holds':>7}{'minutes':>9}{'dry to cleared':>16}"
    ]
    for leaks in (False, True):
        for clamp in (True, False):
            part = [v for v in vents if (v.leak_by_g_per_s > 0) is leaks and v.clamp is clamp]
            if not part:
                continue
            cleared = [v for v in part if v.cleared_at_s is not None]
            waits = [max(v.cleared_at_s - v.dry_from_s, 0.0) for v in cleared if v.cleared_at_s]
            name = f"{'leak-by' if leaks else 'tight'}, {'clamp' if clamp else 'no clamp'}"
            median_wait = f"{np.median(waits) / 60.0:.1f}" if waits else "-"
            lines.append(
                f"{name:24}{len(part):>6}{len(cleared):>9}"
                f"{sum(v.cleared_while_wet for v in part):>9}"
                f"{sum(v.leak_said for v in part):>11}"
                f"{sum(v.holds > ENDLESS for v in part):>15}"
                f"{np.mean([v.holds for v in part]):>7.1f}"
                f"{np.mean([v.took_s for v in part]) / 60.0:>9.0f}{median_wait:>16}"
            )
    off = sorted(v.vented_over_estimate for v in vents if v.vented_over_estimate is not None)
    if off:
        low, middle, high = np.quantile(off, (0.05, 0.5, 0.95))
        lines.append(
            f"mass vented over its estimate, {len(off)} vents: {middle:.2f}, "
            f"90 % between {low:.2f} and {high:.2f}"
        )
    return "\n".join(lines)
