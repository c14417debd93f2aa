"""`co2vent benchmark core`: properties against the reference library; the core on a long vent."""

import argparse
import json
import math
import time
from collections.abc import Callable, Iterator
from typing import Final

from co2vent.readings.reading import Reading, Setup

DEMANDED_RATIO: Final = 100.0  # saturation call against the reference library's plain call
HOURS: Final = 8.0
INTERVAL_S: Final = 0.1


def _microseconds(call: Callable[[float], object], value: float, repeats: int) -> float:
    """Best of five loops [us per call], processor time."""
    best = math.inf
    for _ in range(5):
        before = time.process_time()
        for _ in range(repeats):
            call(value)
        best = min(best, time.process_time() - before)
    return best / repeats * 1e6


def property_speed() -> dict[str, float | None]:
    """Scalar saturation pressure here and in CoolProp, if it is installed [us]."""
    from co2vent.co2 import saturation_pressure_pa

    own = _microseconds(saturation_pressure_pa, 253.15, 20_000)
    try:
        from CoolProp.CoolProp import PropsSI
    except ImportError:
        return {"own_us": own, "reference_us": None, "ratio": None}
    other = _microseconds(lambda t: PropsSI("P", "T", t, "Q", 1, "CO2"), 253.15, 2_000)
    return {"own_us": own, "reference_us": other, "ratio": other / own}


def long_vent(hours: float) -> Iterator[Reading]:
    """A made-up vent at 10 Hz: holds of 20 minutes with a short vent between."""
    pressure, began = 20e5, 0.0
    for index in range(int(hours * 3600 / INTERVAL_S)):
        at_s = index * INTERVAL_S
        phase = at_s % 1320.0
        is_open = phase < 120.0
        if is_open:
            pressure = max(pressure - 1_500.0 * INTERVAL_S * 10, 6.2e5)
            began = pressure
        else:
            pressure = began + 4e4 * (1.0 - math.exp(-(phase - 120.0) / 35.0))
        shown = round((pressure + 300.0 * math.sin(7.3 * index)) / 1_000.0) * 1_000.0
        yield Reading(at_s, shown, 255.0, vent_open=is_open)


def core_speed(hours: float = HOURS) -> dict[str, float]:
    """Time of the core over a long vent, with and without a fit at a reading."""
    from co2vent.guidance.session import begin

    session = begin(Setup(section_volume_m3=0.0145))
    items = list(long_vent(hours))
    plain: list[float] = []
    with_fit: list[float] = []
    clock = time.perf_counter
    began = clock()
    for item in items:
        due = session.holds.due_at_s <= item.at_s
        before = clock()
        session.take(item)
        (with_fit if due else plain).append(clock() - before)
    total = clock() - began
    plain.sort()
    with_fit.sort()
    return {
        "readings": len(items),
        "total_s": total,
        "plain_p99_ms": plain[int(0.99 * len(plain))] * 1e3,
        "fits": len(with_fit),
        "fit_p50_ms": with_fit[len(with_fit) // 2] * 1e3,
        "fit_p99_ms": with_fit[int(0.99 * len(with_fit))] * 1e3,
        "fits_s": sum(with_fit),
    }


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options."""
    parser.add_argument("--hours", type=float, default=HOURS, help="length of the vent at 10 Hz")
    parser.add_argument("--json", metavar="FILE", help="also write the figures as JSON")


def run(args: argparse.Namespace) -> int:
    """Print the figures; exit 1 if the saturation call misses the ratio."""
    speed, core = property_speed(), core_speed(args.hours)
    ratio = speed["ratio"]
    print(f"saturation pressure, scalar: {speed['own_us']:.2f} us", end="")
    print(
        "; CoolProp is not installed" if ratio is None else f", {ratio:.0f} x faster than PropsSI"
    )
    print(f"{core['readings']:.0f} readings ({args.hours:g} h at 10 Hz): {core['total_s']:.1f} s")
    print(f"  reading without a fit: {core['plain_p99_ms']:.3f} ms at the 99th percentile")
    print(
        f"  reading with a fit: {core['fit_p50_ms']:.1f} ms median, {core['fit_p99_ms']:.1f} ms at "
        f"the 99th percentile; {core['fits']:.0f} fits, {core['fits_s']:.1f} s"
    )
    if args.json:
        from pathlib import Path

        Path(args.json).write_text(json.dumps({"properties": speed, "core": core}), "utf-8")
    return 1 if ratio is not None and ratio < DEMANDED_RATIO else 0
