"""What stands over a vent, and what a hold may lean on."""

from co2vent.guidance.event_log import EventLog
from co2vent.guidance.events import EventKind
from co2vent.guidance.standing import Standing
from co2vent.inference.outcome import Charge, HoldAssessment


def _hold(charge: Charge, end_s: float) -> HoldAssessment:
    return HoldAssessment(
        number=1,
        start_s=0.0,
        end_s=end_s,
        start_pressure_pa=3e5,
        end_pressure_pa=3.1e5,
        charge=charge,
        detection_limit_kg=0.004,
    )


def test_a_verdict_lost_in_a_hold_and_shown_again_is_no_evidence_for_that_hold():
    standing = Standing(EventLog())
    standing.heed(_hold(Charge.VAPOR_ONLY, 200.0), Charge.UNDETERMINED, 200.0)
    standing.hold_starts()
    assert standing.cleared_before
    standing.withdraw("readings stopped", 300.0)
    assert not standing.cleared_before
    standing.heed(_hold(Charge.VAPOR_ONLY, 700.0), Charge.UNDETERMINED, 700.0)
    assert standing.cleared
    assert not standing.cleared_before


def test_what_is_withdrawn_is_said_once():
    log = EventLog()
    standing = Standing(log)
    standing.heed(_hold(Charge.VAPOR_ONLY, 200.0), Charge.UNDETERMINED, 200.0)
    standing.heed(_hold(Charge.UNDETERMINED, 210.0), Charge.VAPOR_ONLY, 210.0)
    standing.heed(_hold(Charge.TWO_PHASE, 220.0), Charge.UNDETERMINED, 220.0)
    said = [event.text for event in log.new if event.kind is EventKind.VERDICT]
    assert sum("no longer stands" in text for text in said) == 1
