"""Hints for the first exercise, so that nobody needs an instructor to begin. Pure."""

from co2vent.guidance.session import View
from co2vent.window.class_run import ClassRun
from co2vent.window.words import translate

HOLD_ENOUGH_S = 300.0  # of the first hold, before the class is asked to commit itself
NEAR_STOP_PA = 1.0e5


def hint(run: ClassRun) -> str:
    """Return what to do next, in one sentence."""
    view = run.view
    latest = view.latest
    if run.revealed:
        return translate("Guide", "Read the reveal, then More: run again with one thing changed.")
    if run.predictions:
        return translate("Guide", "Press Reveal (R) to see what was really inside.")
    if run.paused:
        return translate("Guide", "Press Space to let the time go; - and + change its speed.")
    hold = view.running_hold
    vented = any(done.number > 0 for done in view.holds)
    if run.opening > 0.0:
        return _while_open(view)
    if latest is not None and latest.pressure_pa < view.triple_point_pa:
        return translate(
            "Guide",
            "Below the triple point: liquid that was left is dry ice now. Leave the vent shut and "
            "watch whether the pressure comes back.",
        )
    if not vented:
        return translate("Guide", "Open the vent (O), a quarter a touch, and watch the margin.")
    if hold is not None and latest is not None and latest.at_s - hold.start_s > HOLD_ENOUGH_S:
        return translate("Guide", "Is it flat or still rising? Commit yourself: Predict (G).")
    return translate("Guide", "Hold: leave the vent shut and watch how the rise dies away, or not.")


def _while_open(view: View) -> str:
    """Return the hint while the vent is open, by where the pressure stands."""
    pressure_pa = view.latest.pressure_pa if view.latest is not None else view.stop_pressure_pa
    if pressure_pa < view.triple_point_pa:
        return translate(
            "Guide",
            "Below the triple point: liquid that is left turns to dry ice. This vent has gone too "
            "far: close it at once (C).",
        )
    if pressure_pa < view.stop_pressure_pa:
        return translate("Guide", "Below the stop line: close the vent at once (C).")
    if pressure_pa > view.stop_pressure_pa + NEAR_STOP_PA:
        return translate("Guide", "The pressure falls. Slow down near the stop line.")
    return translate("Guide", "Near the stop line: close the vent (C).")
