"""A view without its verdict, for teaching: what the gauge shows, nothing that was concluded."""

from dataclasses import replace
from typing import Final

from co2vent.guidance.events import EventKind, Prompt, Severity
from co2vent.guidance.session import View
from co2vent.inference.outcome import Charge, HoldAssessment, Instruction, LeakBy
from co2vent.window.words import QT_TRANSLATE_NOOP, translate

CONCLUDED: Final = frozenset(
    {
        EventKind.PROMPT,
        EventKind.VERDICT,
        EventKind.HOLD_ENDED,
        EventKind.HOLD_VOIDED,  # says why, which may be a fault of the gauge that was found
        EventKind.SHELF,
        EventKind.BELOW_TRIPLE_POINT,
        EventKind.PRESSURE_HIGH,
        EventKind.GAUGE_FAULT,
        EventKind.METAL_COLD,
        EventKind.NOTE,  # what somebody wrote may say what was concluded
    }
)


def help_words() -> str:
    """Return what stands in place of the help while prompt and verdict are hidden."""
    return translate(
        "Blind", "Help is hidden until the answer is given. B shows prompt, verdict and help."
    )


def hidden_name() -> str:
    """Return what stands in place of the name of an exercise or log, which may be the answer."""
    return translate("Blind", "name hidden (B)")


def blinded(view: View) -> View:
    """Return `view` with prompt, verdicts and their events taken out."""
    prompt = Prompt(
        Instruction.WAIT,
        QT_TRANSLATE_NOOP("Prompt", "What would you do now?"),  # translated where it is shown
        translate("Blind", "Prompt and verdict are hidden. B shows them."),
        Severity.CALM,
        view.prompt.since_s,
    )
    holds = tuple(_bare(hold) for hold in view.holds)
    return replace(
        view,
        prompt=prompt,
        holds=holds,
        running_hold=holds[-1] if view.running_hold is not None and holds else None,
        vapor_only_since_s=None,
        mass_vented_kg=None,
        events=tuple(event for event in view.events if event.kind not in CONCLUDED),
    )


def _bare(hold: HoldAssessment) -> HoldAssessment:
    """Return the hold with what was measured: its times, its pressures and its slope."""
    return replace(
        hold,
        charge=Charge.UNDETERMINED,
        leak_by=LeakBy.UNDETERMINED,
        liquid_kg=None,
        dry_ice_kg=None,
        liquid_volume_fraction=None,
        detection_limit_kg=None,
        dry_ice_kg_if_vented=None,
        boil_off_s=None,
        boil_off_warmed_s=None,
        time_left_s=None,
        next_step="",
        reason="",
        curves=(),
    )
