"""`co2vent benchmark model`: how fast the section model runs, on one core, once compiled."""

import argparse
import json
import time
from dataclasses import dataclass
from typing import Final

DEMANDED: Final = 1_000.0  # times real time
CASES: Final = 60


@dataclass(frozen=True, slots=True)
class ModelSpeed:
    """Simulated and used seconds of a set of random vents; processor time of one core."""

    vents: int
    holds: int
    simulated_s: float
    processor_s: float
    slowest: float  # times real time, of the slowest vent

    @property
    def times_real_time(self) -> float:
        """Simulated over used time."""
        return self.simulated_s / self.processor_s


def measure(cases: int = CASES) -> ModelSpeed:
    """Run the first `cases` vents of the random population; the compilation is not counted."""
    from co2vent.section_model.population import draw_case, run_case

    run_case(draw_case(0))  # compiles
    simulated = used = 0.0
    holds = 0
    slowest = float("inf")
    for seed in range(cases):
        case = draw_case(seed)
        before = time.process_time()
        run = run_case(case)
        seconds = max(time.process_time() - before, 1e-6)
        simulated += float(run.rows[-1, 0])
        used += seconds
        holds += len(run.holds)
        slowest = min(slowest, float(run.rows[-1, 0]) / seconds)
    return ModelSpeed(cases, holds, simulated, used, slowest)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options."""
    parser.add_argument("--vents", type=int, default=CASES, help="how many (default %(default)d)")
    parser.add_argument("--json", action="store_true", help="one JSON object")


def run(args: argparse.Namespace) -> int:
    """Measure and print; 1 if the model is slower than demanded."""
    found = measure(max(1, args.vents))
    if args.json:
        print(
            json.dumps(
                {
                    "vents": found.vents,
                    "holds": found.holds,
                    "simulated_s": found.simulated_s,
                    "processor_s": found.processor_s,
                    "times_real_time": found.times_real_time,
                    "slowest_times_real_time": found.slowest,
                }
            )
        )
    else:
        print(
            f"section model: {found.vents} vents with {found.holds} holds, "
            f"{found.simulated_s / 3600:.1f} h simulated in {found.processor_s:.1f} s of one core: "
            f"{found.times_real_time:.0f} times real time, the slowest vent {found.slowest:.0f} "
            f"(demanded {DEMANDED:.0f})"
        )
    return 0 if found.times_real_time >= DEMANDED else 1
