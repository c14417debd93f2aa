"""Makes the bank of simulated wet holds that bounds the liquid (see `inference.liquid_bank`)."""

from pathlib import Path

import numpy as np

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.lines import saturated_k
from co2vent.inference.liquid_bank import features
from co2vent.inference.trace import HoldTrace
from co2vent.inference.trend import fit_trend
from co2vent.section_model.layout import COLUMN
from co2vent.section_model.population import as_readings, draw_case, run_case

FIRST_SEED = 1_000_000  # far from the seeds that the verdict benchmark draws


def make_bank(cases: int, out: Path) -> int:
    """Run `cases` random vents and store every wet hold; return how many holds it keeps."""
    rows: list[np.ndarray] = []
    liquid: list[float] = []
    for seed in range(FIRST_SEED, FIRST_SEED + cases):
        case = draw_case(seed)
        run = run_case(case)
        readings = as_readings(case, run.rows)
        shown = run.rows[np.isfinite(run.rows[:, COLUMN["gauge_pa"]])]
        volume = case.setting.section.volume_m3
        for hold in run.holds:
            if hold.number < 1 or not hold.wet or hold.leak_by_kg_per_s > 0.0:
                continue
            if hold.end_pressure_pa < TRIPLE_PRESSURE_PA + 2e4 or hold.liquid_kg <= 0.0:
                continue
            trace = HoldTrace(hold.start_s)
            first, last = np.searchsorted(shown[:, 0], [hold.start_s, hold.end_s])
            for reading in readings[first : last + 1]:
                trace.add(reading.at_s, reading.pressure_pa, reading.line_temperature_k, None)
            blocks = trace.arrays()
            gauge = case.setting.gauge
            trend = fit_trend(blocks, gauge.noise_pa, gauge.step_pa)
            if trend is None:
                continue
            line = blocks.line_k[np.isfinite(blocks.line_k)]
            # the bank keeps the clamp of every section; a log without one leaves it out
            clamp = float(line[-1]) if line.size else float(shown[last, COLUMN["clamp_k"]])
            drive = clamp - saturated_k(float(blocks.p[-1]))
            rows.append(features(trend, blocks, drive, case.setup.insulated))
            liquid.append(float(np.log(hold.liquid_kg / volume)))
    np.savez_compressed(
        out,
        features=np.array(rows, dtype=np.float32),
        ln_kg_per_m3=np.array(liquid, dtype=np.float32),
    )
    return len(rows)


if __name__ == "__main__":
    import sys

    target = Path(__file__).parent.parent / "inference" / "liquid_bank.npz"
    kept = make_bank(int(sys.argv[1]) if len(sys.argv) > 1 else 1500, target)
    print(f"{kept} wet holds in {target}")
