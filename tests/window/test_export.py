"""Readings saved from the window are a log: read again, they say what the vent itself said."""

from pathlib import Path

import pytest

from co2vent.guidance.assess import assess_readings
from co2vent.readings.log_file import decode_log
from co2vent.window.export import log_lines
from co2vent.window.frame import Mode
from co2vent.window.traces import Traces

SAMPLES = Path(__file__).parents[2] / "sample_logs"


@pytest.mark.parametrize(
    "name", ["vapour-only", "altitude-psig", "dry-ice", "leak-by", "no-valve-column"]
)
def test_saved_readings_give_the_same_verdicts_when_read_again(name: str) -> None:
    log = decode_log((SAMPLES / f"{name}.csv").read_bytes())
    before, traces = assess_readings(log.setup, log.items()), Traces()
    for reading in log.readings.readings():
        traces.append(reading)
    saved = "\n".join(log_lines(traces, len(traces), before, Mode.REPLAY)).encode()
    again = decode_log(saved)
    after = assess_readings(again.setup, again.items())
    assert [hold.charge for hold in after.holds] == [hold.charge for hold in before.holds]
    assert [hold.start_s for hold in after.holds] == pytest.approx(
        [hold.start_s for hold in before.holds], abs=0.01
    )
    assert after.valve_told == before.valve_told
    kept = (
        "section_volume_m3", "insulated", "simulated", "section_name", "relief_pressure_pa",
        "gauge_accuracy_fraction", "metal_minimum_temperature_k",
    )  # fmt: skip
    for key in kept:
        assert getattr(again.setup, key) == pytest.approx(getattr(log.setup, key))
    assert again.setup.zero_offset_pa == 0.0  # it was taken off the pressures
    assert again.setup.ambient_pressure_pa == pytest.approx(log.setup.ambient_pressure_pa)
