"""A second gauge is compared with the first while the section is closed."""

from dataclasses import replace

from co2vent.guidance.events import EventKind
from co2vent.guidance.session import advance, begin, view
from co2vent.inference.outcome import Instruction
from co2vent.readings.reading import Reading, Setup

SETUP = Setup(gauge_full_scale_pa=61e5, gauge_span_pa=60e5, gauge_accuracy_fraction=0.005)


def seen(second_pa: float | None, seconds: int = 40, *, vent_open: bool = False, setup=SETUP):
    session = begin(setup)
    for n in range(seconds):
        pressure_pa = 19.0e5 + 300.0 * (n % 3)
        second = None if second_pa is None else second_pa + 300.0 * (n % 2)
        session, _ = advance(
            session, Reading(float(n), pressure_pa, vent_open=vent_open, pressure_2_pa=second)
        )
    return view(session)


def test_gauges_within_their_errors_agree() -> None:
    # 0.5 % of 60 bar are 0.3 bar for each
    for second_pa in (19.0e5, 19.7e5, 18.3e5, None):
        assert EventKind.GAUGE_FAULT not in [event.kind for event in seen(second_pa).events]


def test_gauges_that_stay_apart_are_to_be_checked_and_clear_nothing() -> None:
    shown = seen(17.5e5)
    assert shown.prompt.instruction is Instruction.CHECK_GAUGE
    assert "two gauges differ by 1.5" in shown.prompt.reason
    assert shown.vapor_only_since_s is None


def test_a_moment_apart_is_no_fault() -> None:
    assert seen(17.5e5, seconds=9).prompt.instruction is not Instruction.CHECK_GAUGE


def test_with_the_vent_open_the_ports_may_differ() -> None:
    shown = seen(17.5e5, vent_open=True)
    assert shown.prompt.instruction is not Instruction.CHECK_GAUGE


def test_without_a_known_accuracy_half_a_bar_is_allowed() -> None:
    unknown = replace(SETUP, gauge_accuracy_fraction=None)
    assert seen(19.4e5, setup=unknown).prompt.instruction is not Instruction.CHECK_GAUGE
    assert seen(19.8e5, setup=unknown).prompt.instruction is Instruction.CHECK_GAUGE
