"""Every shipped log: what is said of it against what was inside, and live, replay and batch agree.

The truth beside each log comes from the section model, whose physics is checked elsewhere against
published tables; here only the verdicts are held against it.
"""

import csv
import json
from pathlib import Path

import pytest

from co2vent.cli.files import log_path, sample_names
from co2vent.guidance.assess import assess_readings, assessment_json, final_of
from co2vent.guidance.events import EventKind
from co2vent.guidance.session import Tick, advance, begin, finish, view
from co2vent.inference.outcome import Charge, LeakBy
from co2vent.readings.log_file import read_log
from co2vent.readings.reading import Reading

# name: charge at the end, charge of hold 0
EXPECTED = {
    "vapour-only": (Charge.VAPOR_ONLY, Charge.UNDETERMINED),
    "liquid-left-bare": (Charge.TWO_PHASE, Charge.UNDETERMINED),
    "liquid-left-insulated": (Charge.TWO_PHASE, Charge.UNDETERMINED),
    "leak-by": (Charge.UNDETERMINED, Charge.UNDETERMINED),
    "liquid-full": (Charge.TWO_PHASE, Charge.SUBCOOLED_LIQUID),
    "dry-ice": (Charge.SOLID_PRESENT, Charge.UNDETERMINED),
    "altitude-psig": (Charge.TWO_PHASE, Charge.UNDETERMINED),
    "foreign-logger": (Charge.TWO_PHASE, Charge.UNDETERMINED),
    "no-valve-column": (Charge.TWO_PHASE, Charge.UNDETERMINED),
    "no-power": (Charge.TWO_PHASE, Charge.UNDETERMINED),
}


def truth_of(name: str) -> list[dict[str, float]]:
    path = Path(str(log_path(f"sample:{name}")).replace(".csv", ".truth.csv"))
    with path.open(encoding="utf-8", newline="") as file:
        rows = csv.DictReader(line for line in file if not line.startswith("#"))
        return [{key: float(value) for key, value in row.items()} for row in rows]


def test_every_sample_is_expected_and_no_other():
    assert set(sample_names()) == set(EXPECTED)


@pytest.mark.parametrize("name", sorted(EXPECTED))
def test_a_sample_ends_as_it_really_did(name):
    log = read_log(log_path(f"sample:{name}"))
    seen = assess_readings(log.setup, log.items())
    assert log.setup.simulated
    assert (final_of(seen).charge, seen.holds[0].charge) == EXPECTED[name]
    if name == "leak-by":
        assert seen.holds[-1].leak_by is LeakBy.SUSPECTED
    json.dumps(assessment_json(seen, name), allow_nan=False)


@pytest.mark.parametrize("name", sorted(EXPECTED))
def test_vapour_only_is_never_said_over_more_than_the_allowable_amount(name):
    """Allowable: the larger of 2 g and half a gram per litre of section."""
    log = read_log(log_path(f"sample:{name}"))
    truth = truth_of(name)
    volume_m3 = log.setup.section_volume_m3 or 0.004
    allowable_kg = max(0.002, 0.5 * volume_m3)
    session = begin(log.setup)
    checked = 0
    for item in log.items():
        session, _ = advance(session, item)
        if not session.standing.cleared or not isinstance(item, Reading):
            continue
        row = min(truth, key=lambda row: abs(row["elapsed_s"] - item.at_s))
        assert row["liquid_kg"] + row["solid_kg"] <= allowable_kg
        checked += 1
    assert (checked > 0) == (name == "vapour-only")


def test_a_verdict_on_a_plain_dry_section_does_not_come_and_go():
    """Metal that warms unevenly lets its gas gain a little less than the clamp's warming gives."""
    log = read_log(log_path("sample:vapour-only"))
    seen = assess_readings(log.setup, log.items())
    verdicts = [event.text for event in seen.events if event.kind is EventKind.VERDICT]
    assert [text.split(".")[0] for text in verdicts] == [
        "hold 1: vapor_only",
        "hold 2: vapor_only",
    ]


@pytest.mark.parametrize("name", sorted(EXPECTED))
def test_live_and_batch_say_the_same_of_a_sample(name):
    log = read_log(log_path(f"sample:{name}"))
    session = begin(log.setup)
    for item in log.items():
        session, _ = advance(session, item)
        if isinstance(item, Reading):
            session, _ = advance(session, Tick(item.at_s + 0.4))
    session, _ = finish(session)
    live, batch = view(session), assess_readings(log.setup, log.items())
    assert live.holds == batch.holds
    assert live.events == batch.events
    assert live.prompt == batch.prompt


@pytest.mark.parametrize("name", ["liquid-left-bare", "vapour-only"])
def test_bounds_hold_what_was_inside(name):
    log = read_log(log_path(f"sample:{name}"))
    truth = truth_of(name)
    for hold in assess_readings(log.setup, log.items()).holds[1:]:
        row = min(truth, key=lambda row: abs(row["elapsed_s"] - hold.end_s))
        bounds = hold.liquid_kg
        assert bounds is not None
        assert bounds.lower is not None
        assert bounds.upper is not None
        assert bounds.lower <= row["liquid_kg"] <= bounds.upper


@pytest.mark.parametrize("interval_s", [10, 60])
@pytest.mark.parametrize(
    ("name", "charge"), [("dry-ice", Charge.SOLID_PRESENT), ("no-valve-column", Charge.TWO_PHASE)]
)
def test_a_slow_logger_finds_the_same_holds_and_the_same_contents(name, charge, interval_s):
    log = read_log(log_path(f"sample:{name}"))
    items = [item for item in log.items() if isinstance(item, Reading)]
    slow = [item for item in items if item.at_s % interval_s == 0]
    fast = assess_readings(log.setup, items)
    seen = assess_readings(log.setup, slow)
    assert final_of(seen).charge is charge
    assert len(seen.holds) >= sum(hold.end_s - hold.start_s > interval_s for hold in fast.holds)
    assert len(seen.events) < 40
    for hold in seen.holds[1:]:
        # on the shelf and over liquid nothing may bound the liquid by zero
        assert hold.liquid_kg is not None
        assert hold.liquid_kg.upper is None or hold.liquid_kg.upper > 0.1


def test_a_valve_that_is_said_to_be_shut_in_a_vent_is_not_believed():
    """A column that never says open: the vent is found from the pressure, and the dry ice too."""
    log = read_log(log_path("sample:dry-ice"))
    items = [
        item._replace(vent_open=False) if isinstance(item, Reading) else item
        for item in log.items()
    ]
    seen = assess_readings(log.setup, items)
    assert final_of(seen).charge is Charge.SOLID_PRESENT
    assert seen.mass_vented_kg is not None
    assert seen.mass_vented_kg.upper > 1.0
    assert any("said to be shut" in event.text for event in seen.events)
