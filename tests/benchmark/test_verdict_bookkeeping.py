"""The benchmark's own counting: vents made by hand, an assessor that says what it is told."""

import json
from dataclasses import replace
from xml.etree import ElementTree

import numpy as np
import pytest

from co2vent.benchmark import verdict
from co2vent.benchmark.calibration_plot import calibration_svg
from co2vent.benchmark.figures import Share, calibration, figures, left_open, misses, upper_limit
from co2vent.benchmark.observing import Observed
from co2vent.benchmark.scoring import VentScore, form_of, matching, score_vent
from co2vent.benchmark.vents import TrueHold, TrueVent
from co2vent.cli.main import main
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment, LeakBy
from co2vent.readings.reading import Reading, Setup
from co2vent.sentence import Sentence, joined
from co2vent.units import PSI_PA

TRIPLE_PA = 517_950.0


def a_vent(
    *,
    dry_from_s: float | None = 0.0,
    left_kg: float = 0.05,
    rise_pa: float = 0.0,
    leak: float = 0.0,
    solid: bool = False,
    pressure_pa: float = 6.2e5,
) -> TrueVent:
    """Return 1000 s with holds from 0 to 100 s, 200 to 600 s and 700 to 1000 s."""
    at_s = np.arange(0.0, 1000.0)
    condensed = np.where(at_s < (np.inf if dry_from_s is None else dry_from_s), left_kg, 0.0)
    spans = ((0.0, 99.0), (200.0, 599.0), (700.0, 999.0))
    readings = []
    for t in at_s:
        span = next((s for s in spans if s[0] <= t <= s[1]), None)
        part = 0.0 if span is None else (t - span[0]) / (span[1] - span[0])
        readings.append(Reading(float(t), pressure_pa + rise_pa * part, vent_open=span is None))
    return TrueVent(
        model="first",
        seed=7,
        setup=Setup(section_volume_m3=4e-3),
        readings=readings,
        holds=tuple(
            TrueHold(
                number=i, start_s=a, end_s=b, liquid_kg=0.0 if solid else float(condensed[int(b)]),
                solid_kg=float(condensed[int(b)]) if solid else 0.0, metal_margin_k=20.0,
                leak_by_kg_per_s=leak,
            )
            for i, (a, b) in enumerate(spans)
        ),
        volume_m3=4e-3,
        allowable_kg=2e-3,
        at_s=at_s,
        pressure_pa=np.full(1000, pressure_pa),
        condensed_kg=condensed,
        solid_kg=condensed if solid else np.zeros(1000),
    )  # fmt: skip


def says(
    charge: Charge,
    *,
    bounds: Bounds | None = None,
    leak_by: LeakBy = LeakBy.NONE,
    cleared: list[tuple[float, float]] | None = None,
    dry_ice: list[tuple[float, float]] | None = None,
):  # type: ignore[no-untyped-def]
    """Return an assessor that says the same of every hold."""

    def assess(setup: Setup, readings: list[Reading]) -> Observed:
        holds = tuple(
            HoldAssessment(
                number=i, start_s=a, end_s=b, start_pressure_pa=6e5, end_pressure_pa=6e5,
                charge=charge, liquid_kg=bounds, leak_by=leak_by, reason="told so",
            )
            for i, (a, b) in enumerate(((1.0, 99.0), (202.0, 599.0), (699.0, 999.0)))
        )  # fmt: skip
        return Observed(holds, cleared or [], dry_ice or [])

    return assess


def scored(vent: TrueVent, **kwargs: object) -> VentScore:
    charge = kwargs.pop("charge", Charge.UNDETERMINED)
    return score_vent(vent, says(charge, **kwargs))  # type: ignore[arg-type]


def test_a_wet_hold_called_vapour_only_is_counted_and_listed() -> None:
    vents = [scored(a_vent(dry_from_s=None), charge=Charge.VAPOR_ONLY)]
    assert figures(vents).wet_cleared == Share(3, 3)
    found = misses(vents)
    assert [miss["hold"] for miss in found] == [0, 1, 2]
    assert found[0]["seed"] == 7
    assert "50.00 g liquid" in str(found[0]["truth"])


def test_a_verdict_that_stood_over_liquid_for_a_moment_counts_although_taken_back() -> None:
    score = scored(a_vent(dry_from_s=None), cleared=[(300.0, 301.0)])
    assert [hold.cleared_while_wet_s for hold in score.holds] == [None, 300.0, None]
    assert figures([score]).wet_cleared == Share(1, 3)


def test_a_hold_that_dries_out_may_be_cleared_only_from_then_on() -> None:
    early = scored(a_vent(dry_from_s=400.0), charge=Charge.VAPOR_ONLY, cleared=[(399.0, 999.0)])
    assert early.holds[1].cleared_while_wet_s == 399.0
    fair = scored(a_vent(dry_from_s=400.0), charge=Charge.VAPOR_ONLY, cleared=[(430.0, 999.0)])
    assert misses([fair]) == misses([scored(a_vent(dry_from_s=400.0), charge=Charge.VAPOR_ONLY)])
    assert fair.cleared_after_s == 30.0
    assert fair.dry_from_s == 400.0


def test_the_rule_of_thumb_looks_only_at_the_rise() -> None:
    quiet = scored(a_vent(dry_from_s=None, rise_pa=0.9 * PSI_PA))
    loud = scored(a_vent(dry_from_s=None, rise_pa=1.1 * PSI_PA))
    both = figures([quiet, loud])
    assert both.wet_cleared_by_rule == Share(2, 4)  # hold 0 is before the vent
    assert both.wet_cleared_by_long_rule == Share(1, 4)  # 399 s, not 299 s
    dry = figures([scored(a_vent())])
    assert dry.dry_cleared_by_rule == Share(2, 2)
    assert dry.minutes_by_rule == pytest.approx(399 / 60)


def test_dry_holds_count_after_a_vent_without_leak_and_dry_from_their_start() -> None:
    score = scored(a_vent(dry_from_s=300.0), charge=Charge.VAPOR_ONLY, cleared=[(310.0, 999.0)])
    assert figures([score]).dry_cleared == Share(1, 1)
    leaking = scored(a_vent(leak=1e-4), charge=Charge.VAPOR_ONLY)
    assert figures([leaking]).dry_cleared == Share(0, 0)
    assert leaking.dry_from_s is None


def test_leaks_found_and_falsely_suspected_are_told_apart() -> None:
    leaking, tight = a_vent(leak=3e-5), a_vent()
    small = a_vent(leak=1e-5)
    vents = [scored(vent, leak_by=LeakBy.SUSPECTED) for vent in (leaking, tight, small)]
    found = figures(vents)
    assert found.leak_found_any == Share(1, 1)
    assert found.leak_found == Share(0, 0)  # all holds at one pressure
    assert found.leak_false == Share(1, 1)


def test_bounds_are_counted_on_both_sides_and_no_upper_bound_holds_everything() -> None:
    wet = a_vent(dry_from_s=None, left_kg=0.05)
    right = scored(wet, bounds=Bounds(0.04, 0.02, 0.06))
    high = scored(wet, bounds=Bounds(0.08, 0.06, 0.1))
    low = scored(wet, bounds=Bounds(0.02, 0.01, 0.04))
    open_ = scored(wet, bounds=Bounds(0.02, 0.01, None))
    found = figures([right, high, low, open_])
    assert found.covered == Share(6, 12)
    assert found.below == Share(3, 12)
    assert found.above == Share(3, 12)
    assert found.liquid_tight == Share(9, 12)
    assert found.liquid_factor == pytest.approx(1.6)  # of 1.25, 1.6 and 2.5
    assert found.liquid_unbounded == Share(3, 12)
    everything = calibration([right, high, low, open_])[0]
    assert (everything.stated, everything.found) == (0.95, Share(6, 12))


def test_a_shelf_must_be_said_within_three_minutes() -> None:
    vent = a_vent(dry_from_s=None, solid=True, pressure_pa=TRIPLE_PA)
    assert scored(vent, dry_ice=[(170.0, 999.0)]).shelf_recognised
    assert not scored(vent, dry_ice=[(190.0, 999.0)]).shelf_recognised
    assert not scored(vent).shelf_recognised
    assert figures([scored(a_vent(), dry_ice=[(5.0, 6.0)])]).shelf_false == Share(1, 1)


def test_limits_are_those_of_clopper_and_pearson() -> None:
    # Exact values: 1 - 0.05^(1/n) for none; beta quantiles by scipy.
    stats = pytest.importorskip("scipy.stats")
    assert upper_limit(0, 300) == pytest.approx(1 - 0.05 ** (1 / 300), rel=1e-9)
    assert upper_limit(0, 300) == pytest.approx(3 / 300, rel=0.01)  # the rule of three
    for count, of in ((1, 50), (7, 120), (46, 7864)):
        assert upper_limit(count, of) == pytest.approx(stats.beta.ppf(0.95, count + 1, of - count))
    assert upper_limit(5, 5) == 1.0


def test_holds_are_matched_by_the_time_they_share() -> None:
    def assessed(start_s: float, end_s: float) -> HoldAssessment:
        return HoldAssessment(
            number=0, start_s=start_s, end_s=end_s, start_pressure_pa=6e5, end_pressure_pa=6e5
        )

    hold = a_vent().holds[1]
    near, far = assessed(205.0, 600.0), assessed(590.0, 700.0)
    assert matching(hold, (far, near)) is near
    assert matching(hold, (far,)) is None


def test_the_command_prints_and_writes_what_it_found(
    monkeypatch: pytest.MonkeyPatch, tmp_path, capsys: pytest.CaptureFixture[str]
) -> None:  # type: ignore[no-untyped-def]
    calls: list[int] = []

    def fake(seed: int) -> TrueVent:
        calls.append(seed)
        return a_vent(dry_from_s=None)

    monkeypatch.setitem(verdict.EVERY_MODEL, "first", fake)
    monkeypatch.setattr(verdict, "observe", says(Charge.VAPOR_ONLY))
    file = tmp_path / "found.json"
    status = main(
        ["benchmark", "verdict", "--model", "first", "--holds", "60", "--processes", "1",
         "--seed", "100", "--json", str(file)]
    )  # fmt: skip
    assert status == 1
    assert calls == list(range(100, 140))
    assert "120 of 120" in capsys.readouterr().out
    document = json.loads(file.read_text())
    assert document["format"] == "co2vent verdict benchmark 1"
    assert len(document["misses"]) == 120
    assert document["figures"]["first"]["wet_cleared"]["count"] == 120
    assert len(document["vents"]) == 40


def test_the_calibration_picture_has_a_dot_where_the_coverage_is() -> None:
    wet = a_vent(dry_from_s=None, left_kg=0.05)
    right, high = (scored(wet, bounds=Bounds(0.04, low, 0.09)) for low in (0.02, 0.06))
    rows = calibration([right, right, right, high])  # 75 % found of 95 % stated
    picture = ElementTree.fromstring(calibration_svg(rows))
    dots = [e for e in picture.iter() if e.tag.endswith("circle")]
    ticks = [e for e in picture.iter() if e.get("stroke") == "#b30"]
    assert len(dots) == len(ticks) == len([row for row in rows if row.found.of])
    # The scale runs from 50 to 100 % over 420 px from 270 px.
    assert float(dots[0].get("cx", "")) == pytest.approx(270 + 420 * 0.5)
    assert float(ticks[0].get("x1", "")) == pytest.approx(270 + 420 * 0.9)


def test_shares_of_an_unknown_volume_are_held_against_the_true_share() -> None:
    # 50 g in 4 L at 6.2 bar: 0.050 / 1163.6 / 0.004 = 0.01074 (CoolProp: 1163.6 kg/m3).
    vent = a_vent(dry_from_s=None, left_kg=0.05)

    def assess(setup: Setup, readings: list[Reading]) -> Observed:
        holds = says(Charge.TWO_PHASE)(setup, readings).holds
        shares = (Bounds(0.01, 0.0107, 0.0108), Bounds(0.01, 0.0, 0.0106), Bounds(0.01, 0.0, None))
        return Observed(
            tuple(
                replace(hold, liquid_volume_fraction=share)
                for hold, share in zip(holds, shares, strict=True)
            )
        )

    found = figures([score_vent(vent, assess)])
    assert found.share_covered == Share(2, 3)
    assert found.share_unbounded == Share(1, 3)


@pytest.mark.slow
def test_two_processes_score_the_same_vents_as_one(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(verdict, "BATCH", 3)
    alone = verdict.collect("second", 1, 40, 1)
    assert len(alone) == 3
    assert verdict.collect("second", 1, 40, 2) == alone


def test_why_dry_holds_stayed_open_is_counted_by_what_was_said() -> None:
    dry = score_vent(a_vent(), says(Charge.UNDETERMINED))
    cleared = score_vent(a_vent(), says(Charge.VAPOR_ONLY))
    leaking = score_vent(a_vent(leak=5e-5), says(Charge.UNDETERMINED))
    assert left_open([dry, cleared, leaking]) == [("told so", 2)]
    report = verdict.report({"first": [dry, cleared, leaking]})
    assert "     2  told so" in report.split("dry holds after a vent, no leak, that were not")[1]


def test_a_reason_without_its_numbers_and_without_the_step_after_it() -> None:
    why = Sentence("Not known: {between}.", between="1 to 2 mbar/min")
    assert form_of(joined(why, Sentence("Hold on."))) == "Not known: {between}."
    assert form_of("told so") == "told so"
