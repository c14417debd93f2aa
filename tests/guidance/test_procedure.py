"""A site's own steps: accepted when whole, refused with the place and what to do otherwise."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent.errors import RefusedInputError
from co2vent.guidance.procedure import VENTING_CONFIRMATIONS, StepKind
from co2vent.guidance.procedure_rules import cautions
from co2vent.guidance.procedure_text import (
    MAX_BYTES,
    MAX_TEXT,
    default_procedure_text,
    read_procedure,
)

DEFAULT = default_procedure_text()


def edited(old: str, new: str) -> str:
    assert DEFAULT.count(old) >= 1
    return DEFAULT.replace(old, new, 1)


@pytest.mark.parametrize(
    ("text", "place", "what"),
    [
        (edited('kind = "prepare"', 'kind = "ponder"'), "step 1 (brief), line", "kind must be one"),
        (edited('unit = "ppm"', 'unit = "bar"'), "step 4 (protect), line", "unit of room_co2"),
        (edited("at_most = 5000", 'at_most = "low"'), "gate 1", "not a number"),
        (edited("at_most = 5000", "at_most = nan"), "gate 1", "not a number"),
        (edited("at_most = 5000", "at_most = inf"), "gate 1", "not a number"),
        (edited("at_most = 5000", "at_most = true"), "gate 1", "not a number"),
        (edited("at_most = 5000\n", "\n"), "gate 1", "at_least or at_most"),
        (edited("timeout = 1800", "timeout = -1"), "gate 1", "0 <= steady < timeout"),
        (edited('quantity = "room_co2"', 'quantity = "mood"'), "gate 1", "quantity must be"),
        (edited("skippable = true", "skipable = true"), "step 1 (brief)", "unknown key"),
        (edited('id = "co2_meter"', 'id = "nose"'), "", "'co2_meter' must be in or before"),
        (edited('id = "protection"', 'id = "coat"'), "", "'protection' must be in or before"),
        (edited('kind = "bleeds"', 'kind = "hold"'), "", '"bleeds" must come before'),
        (edited('id = "isolate"', 'id = "brief"'), "step 2 (brief), line", "used already"),
        (edited('id = "isolate"', 'id = "../x"'), "step 2, line", "small letters"),
        (edited("do = [", "do = [7,"), "step 1 (brief)", "do is missing or not a text"),
        (edited("Plan and brief", "It is safe to open"), "step 1", "safe to open"),
        (edited("Plan and brief", "Plan\\u0007"), "step 1", "control character"),
        (edited("Plan and brief", "x" * (MAX_TEXT + 1)), "step 1", "longer than"),
        (edited('format = "co2vent job steps 1"', ""), "", "first line must be"),
        ("[[step]\n", "", "not TOML"),
        ("a = " + "[" * 5000, "", "nested deeper"),
        ("#" * (MAX_BYTES + 1), "", "larger than"),
        ('format = "co2vent job steps 1"\ntitle = "t"\nstep = []', "", "at least one"),
        ('format = "co2vent job steps 1"\ntitle = "t"\nstep = 4', "", "[[step]] blocks"),
    ],
)
def test_a_fault_is_named_with_its_place(text: str, place: str, what: str) -> None:
    with pytest.raises(RefusedInputError) as caught:
        read_procedure(text, "site.toml")
    message = str(caught.value)
    assert message.startswith("site.toml: ")
    assert place in message
    assert what in message
    assert "\n" not in message.split("at line")[0]


def test_the_line_in_a_refusal_is_where_the_step_begins() -> None:
    text = edited('unit = "ppm"', 'unit = "bar"')
    with pytest.raises(RefusedInputError, match=r"line (\d+)") as caught:
        read_procedure(text)
    line = int(str(caught.value).split("line ")[1].split(":")[0])
    assert text.splitlines()[line - 1] == "[[step]]"
    assert text.splitlines()[line] == 'id = "protect"'


def test_a_site_may_change_numbers_units_and_order_of_its_own_steps() -> None:
    text = edited('at_most = 1.5\n  unit = "bar_g"', 'at_most = 20\n  unit = "psig"')
    gate = next(g for s in read_procedure(text).steps for g in s.gates if g.id == "low_pressure")
    # 1 psi = 6894.757 Pa (NIST SP 811)
    assert gate.to_si(20) == pytest.approx(137_895.15, rel=1e-6)
    assert gate.from_si(gate.to_si(20)) == pytest.approx(20)
    assert read_procedure(text).sha256 != read_procedure(DEFAULT).sha256


def test_temperatures_convert_both_ways() -> None:
    text = edited('at_least = 0\n  unit = "degC"', 'at_least = 32\n  unit = "degF"')
    gate = next(g for s in read_procedure(text).steps for g in s.gates if g.id == "metal_warm")
    assert gate.to_si(32) == pytest.approx(273.15)
    assert gate.from_si(233.15) == pytest.approx(-40.0)
    assert gate.allows(273.2)
    assert not gate.allows(273.1)


@pytest.mark.parametrize(
    "text",
    [
        edited('quantity = "pressure_above_triple_point"', 'quantity = "pressure_above_stop"'),
        edited('at_least = 4\n  unit = "bar"', 'at_least = 0.2\n  unit = "bar"'),
        edited('kind = "vapour_break"', 'kind = "work"'),
    ],
)
def test_a_site_can_not_let_liquid_into_a_vacuum(text: str) -> None:
    with pytest.raises(RefusedInputError, match="vapour_break"):
        read_procedure(text)


def made_skippable(identity: str) -> str:
    head, tail = DEFAULT.split(f'id = "{identity}"')
    return f'{head}id = "{identity}"' + tail.replace("skippable = false", "skippable = true", 1)


@pytest.mark.parametrize("identity", ["bleeds", "open"])
def test_bleeds_and_the_joint_can_not_be_made_skippable(identity: str) -> None:
    with pytest.raises(RefusedInputError, match=f"{identity} can't be skippable"):
        read_procedure(made_skippable(identity))


def test_steps_of_a_job_that_has_begun_stay_readable() -> None:
    """Jobs were begun when the joint could be left out; their folders must open."""
    steps = {step.id: step for step in read_procedure(made_skippable("open"), stored=True).steps}
    assert steps["open"].skippable


@settings(max_examples=150, deadline=None)
@given(st.data())
def test_damaged_text_is_refused_or_read_and_nothing_else(data: st.DataObject) -> None:
    """Cut, doubled and overwritten pieces of the steps, as an editor or a bad disk would do it."""
    text = DEFAULT
    for _ in range(data.draw(st.integers(1, 4))):
        at = data.draw(st.integers(0, len(text)))
        end = min(len(text), at + data.draw(st.integers(0, 200)))
        middle = data.draw(st.one_of(st.just(""), st.just(text[at:end] * 2), st.text(max_size=20)))
        text = text[:at] + middle + text[end:]
    try:
        procedure = read_procedure(text)
    except RefusedInputError:
        return
    kinds = [step.kind for step in procedure.steps]
    before = procedure.steps[: kinds.index(StepKind.VENT) + 1]
    confirmed = {item.id for step in before for item in step.confirmations}
    assert set(VENTING_CONFIRMATIONS) <= confirmed


def without(text: str, block: str) -> str:
    """The steps without the confirmation, gate or entry `block`."""
    head, tail = text.split(f'id = "{block}"')
    start = head.rindex("  [[step.")
    ends = [at for mark in ("[[step]]", "[[step.") if (at := tail.find(mark)) >= 0]
    return head[:start] + tail[min(ends) :]


def in_step(identity: str, old: str, new: str) -> str:
    """The steps with the first `old` after the step or block `identity` replaced."""
    head, tail = DEFAULT.split(f'id = "{identity}"')
    assert old in tail
    return f'{head}id = "{identity}"' + tail.replace(old, new, 1)


@pytest.mark.parametrize(
    ("text", "place", "what"),
    [
        (made_skippable("vapour_break"), "(vapour_break)", "can't be skippable"),
        (
            in_step("above_triple", "  source", "  by_hand = true\n  source"),
            "(vapour_break)",
            "'above_triple' of the vapour break can't be typed",
        ),
        (
            in_step("above_triple", "at_least = 4", "at_least = 1.0"),
            "(vapour_break)",
            "1.03 bar or more",
        ),
        (edited('kind = "vapour_break"', 'kind = "work"'), "", "vapour_break"),
        (in_step("room_air", "5000", "90000"), "(protect)", "more than 30000 ppm"),
        (in_step("room_air_open", "5000", "30001"), "(open)", "more than 30000 ppm"),
        (in_step("room_air", "at_most", "at_least"), "(protect)", "more than 30000 ppm"),
        (without(DEFAULT, "room_air"), "(vent)", "room_co2"),
        (without(DEFAULT, "room_air_open"), "(open)", "put back the gate on room_co2"),
        (without(DEFAULT, "no_rise"), "(bleeds)", "pressure_shut"),
        (in_step("no_rise", "at_most = 0.1", "at_most = 3"), "(bleeds)", "pressure_shut"),
        (in_step("no_rise", "steady = 300", "steady = 5"), "(bleeds)", "pressure_shut"),
        (in_step("no_rise", "  source", "  by_hand = true\n  source"), "(bleeds)", "by_hand"),
        (without(DEFAULT, "bleed_first_end"), "(bleeds)", "'bleed_first_end'"),
        (without(DEFAULT, "bleed_second_end"), "(bleeds)", "'bleed_second_end'"),
        (without(DEFAULT, "vapor_only_before"), "(open)", "vapor_only_holds"),
        (made_skippable("through_triple_point"), "(open)", "skippable = false"),
        (
            in_step("vapor_only_before", "at_least = 1", "at_least = 0"),
            "(open)",
            "vapor_only_holds",
        ),
        (
            in_step("dry_ice_bound", "  source", "  by_hand = true\n  source"),
            "(dry_ice_hold)",
            "can't be typed",
        ),
        (edited('kind = "open"', 'kind = "prepare"'), "(work)", 'kind "open"'),
    ],
)
def test_what_protects_a_person_can_not_be_edited_away(text: str, place: str, what: str) -> None:
    assert text != DEFAULT
    with pytest.raises(RefusedInputError) as caught:
        read_procedure(text, "site.toml")
    message = str(caught.value)
    assert place in message
    assert what in message
    assert "\n" not in message


@pytest.mark.parametrize(
    "text",
    [made_skippable("vapour_break"), without(DEFAULT, "no_rise"), without(DEFAULT, "room_air")],
)
def test_a_job_that_began_under_older_rules_opens_still(text: str) -> None:
    assert read_procedure(text, stored=True).steps


def test_a_job_that_ends_open_needs_no_vapour() -> None:
    """A section that is taken out of the plant is not filled again."""
    head, _ = DEFAULT.split('[[step]]\nid = "close"')
    assert read_procedure(head).steps[-1].id == "work"


@pytest.mark.parametrize(
    ("text", "words"),
    [
        (in_step("room_air", "5000", "15000"), "the air may hold 15000 ppm"),
        (without(DEFAULT, "isolation_watch"), "a valve may pass unseen"),
        (without(DEFAULT, "zero"), "No zero of the gauge"),
        (in_step("two_holds", "at_least = 2", "at_least = 1"), "no second is asked for"),
        (without(DEFAULT, "dry_ice_bound"), "rule dry ice out"),
        (without(DEFAULT, "metal"), "The metal's minimum temperature"),
    ],
)
def test_what_a_site_asks_less_of_is_said(text: str, words: str) -> None:
    (caution,) = cautions(read_procedure(text))
    assert words in caution


def test_the_shipped_steps_ask_nothing_less() -> None:
    assert cautions(read_procedure(DEFAULT)) == ()
