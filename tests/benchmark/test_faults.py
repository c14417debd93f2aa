"""Some of the fault runs and a short soak; `co2vent benchmark faults` and `soak` run them all."""

import random
from pathlib import Path

import pytest

from co2vent.benchmark import faults
from co2vent.benchmark.fault_vents import Vent
from co2vent.benchmark.fault_wire import Fault, FaultyWire, WireRow, World
from co2vent.benchmark.faults import BadDisk, Tally, run_faults
from co2vent.benchmark.soak import soak
from co2vent.errors import SourceLostError


@pytest.mark.slow
def test_nothing_goes_wrong_on_a_bad_day() -> None:
    tally = run_faults(10)
    assert tally.wrong == {}
    assert tally.runs == 10
    assert tally.readings > 5000
    assert tally.faults["kill"] == 1


def quiet_vent(*, wet: bool) -> Vent:
    """A vent whose last hold is flat: any estimator that trusts it calls it clear."""
    rows = [WireRow(n * 1.0, f"{19.0 + n % 3 / 1000:.3f}", ",-20.00,closed") for n in range(60)]
    return Vent(
        tuple(rows),
        "pressure_bar_g,line_temperature_degC,vent_valve",
        "# altitude_m: 0\n# simulated: yes\n",
        (wet,) * 60,
        1.0,
    )


def test_the_benchmark_sees_a_wrong_verdict(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The check can fail: a core that always says `vapor_only` is found out."""
    from dataclasses import replace

    from co2vent.live import live_core

    real = live_core.view
    monkeypatch.setattr(
        live_core, "view", lambda session: replace(real(session), vapor_only_since_s=0.0)
    )
    tally = Tally()
    faults.run_one(1, quiet_vent(wet=True), tmp_path, tally)
    assert "vapor_only on a wet section" in tally.wrong


def test_the_benchmark_sees_a_screen_that_is_not_stale(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from dataclasses import replace

    from co2vent.live import live_core

    real = live_core.view
    monkeypatch.setattr(live_core, "view", lambda session: replace(real(session), stale=False))
    tally = Tally()
    faults.run_one(1, quiet_vent(wet=True), tmp_path, tally)
    assert "old readings not called stale" in tally.wrong


def test_the_benchmark_sees_a_lost_row(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from co2vent.store.recorder import Recorder

    real = Recorder.row
    monkeypatch.setattr(
        Recorder, "row", lambda self, text: None if text.startswith("7.0") else real(self, text)
    )
    monkeypatch.setattr(faults, "draw_faults", lambda rng, length_s: ([], None))
    tally = Tally()
    for seed in range(4):  # some have a time column, some are stamped on arrival
        faults.run_one(seed, quiet_vent(wet=True), tmp_path, tally)
    assert "the log differs from what was taken" in tally.wrong


def test_a_bad_disk_writes_a_part_and_then_nothing(tmp_path: Path) -> None:
    disk = BadDisk(3)
    with (tmp_path / "x").open("wb") as file:
        assert disk.write(file.fileno(), b"12345") == 3
        with pytest.raises(OSError, match="No space"):
            disk.write(file.fileno(), b"12345")


def test_a_faulty_wire_is_unplugged_when_it_should_be() -> None:
    world = World()
    rows = [WireRow(float(n), "19.0", "") for n in range(10)]
    wire = FaultyWire(
        world, "x\n", rows, [Fault("unplug", 3.0, 5.0)], random.Random(0), timed=False
    )
    wire.open()
    text = b""
    while world.now_s < 2.7:
        text += wire.read(1.0)
    with pytest.raises(SourceLostError):
        wire.read(1.0)
    assert world.now_s == pytest.approx(3.0)
    assert text.count(b"19.0\n") == 3


def test_a_short_soak_stays_flat() -> None:
    found = soak(0.05)
    assert found.readings == pytest.approx(1800, abs=2)
    assert found.growth_bytes < 20e6
