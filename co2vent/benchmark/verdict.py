"""`co2vent benchmark verdict`: thousands of vents with known contents, judged and counted.

Both section models, or a third, fixed seeds; beside the project's verdict the trade's rule of thumb
(no rise over 1 psi in the hold) in the same run. The same seeds are run whatever the number of
processes.
"""

import argparse
import json
import multiprocessing
import sys
import time
from collections.abc import Iterator, Sequence
from dataclasses import asdict
from pathlib import Path
from typing import Final

from co2vent.benchmark.calibration_plot import calibration_svg
from co2vent.benchmark.figures import Figures, Share, calibration, figures, left_open, misses
from co2vent.benchmark.observing import observe
from co2vent.benchmark.scoring import VentScore, score_vent
from co2vent.benchmark.vents import EVERY_MODEL, MODELS
from co2vent.errors import RefusedInputError

BATCH: Final = 40  # vents between two looks at how many holds there are


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options of `co2vent benchmark verdict`."""
    parser.add_argument(
        "--holds", type=int, default=5000, help="at least so many, half a model each"
    )
    parser.add_argument("--seed", type=int, default=0, help="the first seed")
    parser.add_argument(
        "--model", choices=["both", *EVERY_MODEL], default="both",
        help="both: the two that the limits were set on; third: a plain one that only checks",
    )  # fmt: skip
    parser.add_argument("--processes", type=int, default=2, help="at most two are used")
    parser.add_argument("--plot", type=Path, metavar="FILE.svg", help="draw the calibration")
    parser.add_argument("--json", type=Path, metavar="FILE", help="write all figures and scores")


def run(args: argparse.Namespace) -> int:
    """Run the benchmark, print the table; exit status 1 if a wet hold was called vapour only."""
    if args.holds < 1:
        raise RefusedInputError("--holds: give a number above zero")
    models = list(MODELS) if args.model == "both" else [args.model]
    started = time.monotonic()
    by_model = {
        model: collect(model, args.holds / len(models), args.seed, min(args.processes, 2))
        for model in models
    }
    took_s = time.monotonic() - started
    print(report(by_model))
    print(f"{took_s / 60:.1f} min, first seed {args.seed}")
    if args.json is not None:
        document = as_json(by_model) | {"first_seed": args.seed, "took_s": round(took_s, 1)}
        args.json.write_text(json.dumps(document, indent=1), encoding="utf-8")
    if args.plot is not None:
        every = [vent for vents in by_model.values() for vent in vents]
        args.plot.write_text(calibration_svg(calibration(every)), encoding="utf-8")
    return 1 if any(misses(vents) for vents in by_model.values()) else 0


def score_seed(task: tuple[str, int]) -> VentScore:
    """Draw, run, assess and score one vent."""
    model, seed = task
    return score_vent(EVERY_MODEL[model](seed), observe)


def collect(model: str, holds: float, first_seed: int, processes: int) -> list[VentScore]:
    """Score vents of `model` until there are `holds` holds; the same ones for any `processes`."""
    scores: list[VentScore] = []
    count = 0
    for batch in _batches(model, first_seed, processes):
        scores += batch
        count += sum(len(score.holds) for score in batch)
        if sys.stderr.isatty():
            print(f"\r{model} model: {count} holds", end="", file=sys.stderr, flush=True)
        if count >= holds:
            break
    if sys.stderr.isatty():
        print(file=sys.stderr)
    return scores


def _batches(model: str, first_seed: int, processes: int) -> Iterator[list[VentScore]]:
    seed = first_seed
    if processes < 2:
        while True:
            yield [score_seed((model, s)) for s in range(seed, seed + BATCH)]
            seed += BATCH
    with multiprocessing.get_context("spawn").Pool(processes) as pool:
        while True:
            tasks = [(model, s) for s in range(seed, seed + BATCH)]
            yield pool.map(score_seed, tasks, chunksize=4)
            seed += BATCH


ROWS: Final[tuple[tuple[str, str], ...]] = (
    ("holds assessed", "holds"),
    ("holds seen as holds", "holds_found"),
    ("wet holds called vapor_only, at any moment", "wet_cleared"),
    ("  rule of thumb: rise up to 1 psi", "wet_cleared_by_rule"),
    ("  the same, holds of 5 min or more", "wet_cleared_by_long_rule"),
    ("dry holds after a vent, no leak: called vapor_only", "dry_cleared"),
    ("  5 min or more, second or later, metal 5 K warm", "dry_cleared_warm"),
    ("  of those with a clamp", "dry_cleared_clamp"),
    ("  with neither a clamp nor metal told to be bare", "dry_cleared_blind"),
    ("  rule of thumb", "dry_cleared_by_rule"),
    ("  the same, holds of 5 min or more", "dry_cleared_by_long_rule"),
    ("leak-by of 0.02 g/s or more found, two pressures", "leak_found"),
    ("  no liquid at either of them", "leak_found_dry"),
    ("  the same, with a clamp", "leak_found_dry_clamp"),
    ("  found, all such vents", "leak_found_any"),
    ("  falsely suspected, vents without leak", "leak_false"),
    ("  falsely suspected, their holds", "leak_false_holds"),
    ("wet, liquid bounded within a factor 4", "liquid_tight"),
    ("  median factor off among those", "liquid_factor"),
    ("  no upper bound", "liquid_unbounded"),
    ("95 % bounds hold the liquid mass", "covered"),
    ("  truth below them / above them", "below"),
    ("", "above"),
    ("  the same for the volume share, volume not known", "share_covered"),
    ("  wet ones of them without an upper bound", "share_unbounded"),
    ("  median upper/lower, wet holds", "width_wet"),
    ("  median width, dry holds, in allowable amounts", "width_dry_allowables"),
    ("median minutes from dry to cleared", "minutes_to_clear"),
    ("  rule of thumb", "minutes_by_rule"),
    ("  means where both clear: project, rule", "mean_minutes_both"),
    ("dry-ice shelf of 3 min recognised within 3 min", "shelf_recognised"),
    ("  dry ice said where there never was any, vents", "shelf_false"),
)


def _cell(value: object, name: str) -> str:
    if isinstance(value, Share):
        text = value.text()
        if name.startswith("wet_cleared"):
            limit = value.upper()
            text += "" if limit is None else f", below {100 * limit:.2g} %"
        return text
    if isinstance(value, tuple):
        return ", ".join(f"{part:.1f}" for part in value)
    if isinstance(value, float):
        return f"{value:.2f}"
    return "-" if value is None else str(value)


def report(by_model: dict[str, list[VentScore]]) -> str:
    """Return the table, the calibration and the miss list as text."""
    columns: dict[str, Figures] = {model: figures(vents) for model, vents in by_model.items()}
    every = [vent for vents in by_model.values() for vent in vents]
    lines = [f"{'':52}" + "".join(f"{model + ' model':32}" for model in columns)]
    for title, name in ROWS:
        cells = [f"{_cell(getattr(column, name), name):32}" for column in columns.values()]
        lines.append(f"{title:52}" + "".join(cells).rstrip())
    lines += ["", "coverage of the liquid bounds, both models", ""]
    lines.append(f"{'holds':38}{'stated':>8}{'found':>28}{'truth below':>24}{'above':>24}")
    for row in calibration(every):
        lines.append(
            f"{row.group:38}{100 * row.stated:>7.4g}%{row.found.text():>28}"
            f"{row.below.text():>24}{row.above.text():>24}"
        )
    lines += ["", "dry holds after a vent, no leak, that were not called vapor_only: what was said"]
    reasons: dict[str, dict[str, int]] = {}
    for model, vents in by_model.items():
        for form, count in left_open(vents):
            reasons.setdefault(form, {})[model] = count
    for form, counts in sorted(reasons.items(), key=lambda item: -sum(item[1].values())):
        lines.append("".join(f"{counts.get(model, 0):6}" for model in columns) + f"  {form}")
    lines += ["", "wet holds over which vapor_only stood"]
    found = misses(every)
    lines += [
        f"{miss['model']} {miss['seed']} hold {miss['hold']}: {miss['truth']}; {miss['verdict']}"
        f"{_since(miss['cleared_while_wet_s'])}; {miss['reason']}"
        for miss in found
    ] or ["none"]
    return "\n".join(lines)


def _since(at_s: object) -> str:
    return f", wrong from {at_s:.0f} s" if isinstance(at_s, float) else ""


def as_json(by_model: dict[str, list[VentScore]]) -> dict[str, object]:
    """Return figures, calibration, misses and every score, JSON-ready."""
    every: Sequence[VentScore] = [vent for vents in by_model.values() for vent in vents]
    return {
        "format": "co2vent verdict benchmark 1",
        "figures": {model: _plain(figures(vents)) for model, vents in by_model.items()},
        "calibration": [
            {
                "holds": row.group, "stated": row.stated, "found": asdict(row.found),
                "below": asdict(row.below), "above": asdict(row.above),
            }
            for row in calibration(every)
        ],
        "misses": misses(every),
        "left_open": {model: dict(left_open(vents)) for model, vents in by_model.items()},
        "vents": [vent.plain() for vent in every],
    }  # fmt: skip


def _plain(found: Figures) -> dict[str, object]:
    result = asdict(found)
    for name in result:
        value = getattr(found, name)
        if isinstance(value, Share):
            result[name] |= {"share": value.value, "upper_limit_95": value.upper()}
    return result
