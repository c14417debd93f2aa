"""Live, recorded, replayed, assessed: the same holds, prompts and verdict for every shipped log."""

from importlib.resources import files
from pathlib import Path
from typing import Any

import pytest

from co2vent.guidance.assess import assess_readings, assessment_json
from co2vent.readings.log_file import read_log
from co2vent.wire.growing_file import GrowingFileSource

SAMPLES = sorted(
    Path(str(entry))
    for entry in files("co2vent.sample_logs").iterdir()
    if entry.name.endswith(".csv") and not entry.name.endswith(".truth.csv")
)


def assessed(path: Path) -> dict[str, object]:
    log = read_log(path)
    found = assessment_json(assess_readings(log.setup, log.items()), "", [])
    # a rejected row has another line number and over-range word in the recording
    found["events"] = [
        event | {"text": ""} if event["kind"] == "row_rejected" else event
        for event in found["events"]  # type: ignore[attr-defined]
    ]
    return found


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda path: path.stem)
def test_a_recording_of_a_sample_assesses_as_the_sample(
    sample: Path, tmp_path: Path, monitors: Any, until: Any
) -> None:
    log = read_log(sample)
    readings = len(log.readings)
    monitor = monitors(GrowingFileSource(sample), log="log.csv")
    until(lambda: monitor.view.readings == readings, 60.0)
    live = monitor.view
    monitor.stop()
    live = monitor.view if not monitor.view.stale else live
    recorded, direct = assessed(tmp_path / "log.csv"), assessed(sample)
    assert recorded == direct
    assert [hold.charge.value for hold in live.holds] == [
        hold["charge"]
        for hold in direct["holds"]  # type: ignore[attr-defined]
    ]
    assert live.vapor_only_since_s == direct["final"]["vapor_only_since_s"]  # type: ignore[index]
    assert read_log(tmp_path / "log.csv").setup.simulated
