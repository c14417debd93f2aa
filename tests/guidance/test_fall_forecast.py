"""The foreseen time to the stop pressure: the law of choked flow, simulated vents."""

from itertools import groupby

import numpy as np
import pytest

from co2vent.benchmark.vents import MODELS
from co2vent.guidance.fall_forecast import CONFIDENCE, FallForecast
from co2vent.guidance.session import Tick, advance, begin, view
from co2vent.inference.trace import GaugeWatch
from co2vent.readings.reading import Reading, Setup


def _fed(falls: list[tuple[float, float]]) -> tuple[FallForecast, GaugeWatch]:
    forecast, gauge = FallForecast(), GaugeWatch()
    for at_s, pressure_pa in falls:
        forecast.see(Reading(at_s, pressure_pa))
        gauge.see(pressure_pa)
    return forecast, gauge


def test_a_fall_by_choked_flow_is_foreseen_where_it_arrives() -> None:
    # ISO 9300: critical mass flow goes with the pressure, so p = p0 exp(-t/T) in a rigid volume
    falls = [(float(at), 20e5 * float(np.exp(-at / 80.0))) for at in range(30)]
    forecast, gauge = _fed(falls)
    found = forecast.reaches(6.2e5, gauge)
    assert found is not None
    arrives_s = 80.0 * float(np.log(20.0 / 6.2)) - 29.0
    assert found.estimate == pytest.approx(arrives_s, rel=0.01)
    assert found.lower is not None
    assert found.upper is not None
    assert found.lower < arrives_s < found.upper
    straight_s = (falls[-1][1] - 6.2e5) / ((falls[-7][1] - falls[-1][1]) / 6.0)
    assert straight_s < arrives_s  # the straight line is the early one


def test_a_coarser_gauge_and_an_uneven_fall_give_wider_bounds() -> None:
    even = [(float(at), 20e5 * float(np.exp(-at / 200.0))) for at in range(30)]
    coarse = [(at, round(p / 1e4) * 1e4) for at, p in even]
    uneven = [(at, p if at > 23 else p + 2e4 * (23 - at)) for at, p in even]
    widths = []
    for falls in (even, coarse, uneven):
        forecast, gauge = _fed(falls)
        found = forecast.reaches(6.2e5, gauge)
        assert found is not None
        assert found.upper is not None
        assert found.lower is not None
        widths.append(found.upper / found.lower)
    assert widths[0] < widths[1]
    assert widths[0] < widths[2]


@pytest.mark.parametrize(
    "falls",
    [
        [],
        [(0.0, 20e5)],
        [(float(at), 20e5 - 5e4 * at) for at in range(5)],  # less than a window
        [(float(at), 20e5 + 1e3 * at) for at in range(20)],  # rising
        [(float(at), 20e5 - 10.0 * at) for at in range(20)],  # as good as still
        [(float(at), 6e5 - 1e4 * at) for at in range(20)],  # under the target
        [(float(at), 20e5 - 100.0 * at) for at in range(20)],  # hours ahead
    ],
    ids=["none", "one", "short", "rising", "still", "under", "far"],
)
def test_nothing_is_foreseen_where_nothing_can_be(falls: list[tuple[float, float]]) -> None:
    forecast, gauge = _fed(falls)
    assert forecast.reaches(6.2e5, gauge) is None


def _outcomes(model: str, seeds: range) -> list[tuple[float, float, float]]:
    """Return (lower, true, upper) at moments of vents that the fit has not seen."""
    outcomes = []
    for seed in seeds:
        gauge = GaugeWatch()
        readings = MODELS[model](seed).readings
        for is_open, group in groupby(readings, key=lambda reading: reading.vent_open):
            part = list(group)
            if not is_open:
                for reading in part:
                    gauge.see(reading.pressure_pa)
                continue
            # a person closes at a pressure read on the gauge: when was it first read?
            target_pa = part[-1].pressure_pa
            arrived_s = next(r.at_s for r in part if r.pressure_pa <= target_pa)
            forecast = FallForecast()
            every = max(1, len(part) // 14)
            for place, reading in enumerate(part):
                gauge.see(reading.pressure_pa)
                forecast.see(reading)
                if place % every or reading.at_s >= arrived_s:
                    continue
                found = forecast.reaches(target_pa, gauge)
                if found is not None and found.lower is not None and found.upper is not None:
                    outcomes.append((found.lower, arrived_s - reading.at_s, found.upper))
    return outcomes


@pytest.mark.parametrize("model", MODELS)
def test_bounds_hold_as_often_as_they_say(model: str) -> None:
    outcomes = np.array(_outcomes(model, range(9000, 9024)))
    lower, true, upper = outcomes.T
    inside = (lower <= true) & (true <= upper)
    assert len(outcomes) > 200
    assert inside.mean() == pytest.approx(CONFIDENCE, abs=0.05)
    assert (true < lower).mean() < 0.07  # sooner than said is the side that hurts
    assert np.median(upper / lower.clip(min=1.0)) < 3.0  # bounds that say something


def test_a_session_foresees_while_the_vent_is_open_and_not_in_a_hold() -> None:
    past = begin(Setup())
    foreseen = []
    for at in range(120):
        is_open = at < 60
        pressure_pa = 20e5 * float(np.exp(-min(at, 60) / 80.0))
        past, _events = advance(past, Reading(float(at), pressure_pa, vent_open=is_open))
        foreseen.append(view(past).stop_in_s)
    assert foreseen[4] is None  # not yet long enough
    assert all(bounds is not None for bounds in foreseen[10:60])
    assert all(bounds is None for bounds in foreseen[60:])


def test_a_session_foresees_nothing_over_a_gap() -> None:
    past = begin(Setup())
    for at in range(30):
        past, _events = advance(past, Reading(float(at), 20e5 - 2e4 * at, vent_open=True))
    assert view(past).stop_in_s is not None
    past, _events = advance(past, Tick(60.0))
    assert view(past).stop_in_s is None
    past, _events = advance(past, Reading(61.0, 13e5, vent_open=True))
    assert view(past).stop_in_s is None
