"""Hints for the first exercise, so that nobody needs an instructor to begin. Pure."""

from co2vent.window.class_run import ClassRun
from co2vent.window.words import translate

HOLD_ENOUGH_S = 300.0  # of the first hold, before the class is asked to commit itself


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
    if not vented and run.opening == 0.0:
        return translate("Guide", "Open the vent (O), a quarter a touch, and watch the margin.")
    if run.opening > 0.0:
        if latest is not None and latest.pressure_pa > view.stop_pressure_pa + 1.0e5:
            return translate("Guide", "The pressure falls. Slow down near the stop line.")
        return translate("Guide", "Near the stop line: close the vent (C).")
    if hold is not None and latest is not None and latest.at_s - hold.start_s > HOLD_ENOUGH_S:
        return translate("Guide", "Is it flat or still rising? Commit yourself: Predict (G).")
    return translate("Guide", "Hold: leave the vent shut and watch how the rise dies away, or not.")
