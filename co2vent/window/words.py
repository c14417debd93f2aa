"""Words of the screen: short names of instructions and states, and the help behind each prompt.

The texts are marked for Qt's translation system and looked up when they are shown, so that a change
of language takes effect at once.
"""

from typing import Final

from PySide6.QtCore import QCoreApplication

from co2vent.inference.outcome import Charge, Instruction, LeakBy


class Translated(str):
    """Words of the screen that know where they stand in the catalogue.

    What keeps them can look them up again when the language of the screen changes; see `anew`.
    """

    __slots__ = ("context", "source")
    context: str
    source: str


def translate(context: str, source: str) -> str:
    """Return `source` in the language of the screen (lupdate knows this name)."""
    words = Translated(QCoreApplication.translate(context, source))
    words.context, words.source = context, source
    return words


def anew(words: str) -> str:
    """Return `words` in the present language of the screen, as far as they are the catalogue's."""
    return translate(words.context, words.source) if isinstance(words, Translated) else words


def QT_TRANSLATE_NOOP(context: str, source: str) -> str:
    """Mark `source` for the translators (lupdate knows this name) and return it as it is."""
    del context
    return source


_HEADLINES: Final[dict[Instruction, str]] = {
    Instruction.VENT: QT_TRANSLATE_NOOP("Prompt", "Vent"),
    Instruction.CLOSE_AND_HOLD: QT_TRANSLATE_NOOP("Prompt", "Close the vent and hold"),
    Instruction.KEEP_HOLDING: QT_TRANSLATE_NOOP("Prompt", "Keep holding"),
    Instruction.VENT_AGAIN: QT_TRANSLATE_NOOP("Prompt", "Vent again"),
    Instruction.VENT_TO_ZERO: QT_TRANSLATE_NOOP("Prompt", "Vapour only: vent to zero"),
    Instruction.HOLD_FOR_DRY_ICE: QT_TRANSLATE_NOOP("Prompt", "Dry ice: hold, keep clear"),
    Instruction.OPEN_BLEEDS: QT_TRANSLATE_NOOP("Prompt", "Open the bleeds at both ends"),
    Instruction.VENT_NOW: QT_TRANSLATE_NOOP("Prompt", "Vent now"),
    Instruction.CHECK_ISOLATION: QT_TRANSLATE_NOOP("Prompt", "Check the isolation"),
    Instruction.CHECK_VENT_LINE: QT_TRANSLATE_NOOP("Prompt", "Check the vent line"),
    Instruction.CHECK_GAUGE: QT_TRANSLATE_NOOP("Prompt", "Check the gauge"),
    Instruction.NO_DATA: QT_TRANSLATE_NOOP("Prompt", "No data: close the vent"),
    Instruction.WAIT: QT_TRANSLATE_NOOP("Prompt", "Wait"),
}

# What the core says beyond the short names, for the translators.
CORE_HEADLINES: Final = (
    QT_TRANSLATE_NOOP("Prompt", "No data"),
    QT_TRANSLATE_NOOP("Prompt", "Stop: dry ice forming"),
    QT_TRANSLATE_NOOP("Prompt", "Dry ice possible"),
    QT_TRANSLATE_NOOP("Prompt", "Close now: below the triple point"),
    QT_TRANSLATE_NOOP("Prompt", "Close: hold for dry ice"),
    QT_TRANSLATE_NOOP("Prompt", "Wait: watch the closed section"),
    QT_TRANSLATE_NOOP("Prompt", "Vent when ready"),
    QT_TRANSLATE_NOOP("Prompt", "Hold for dry ice"),
    QT_TRANSLATE_NOOP("Prompt", "Liquid: vent again"),
    QT_TRANSLATE_NOOP("Prompt", "Liquid: keep holding"),
    QT_TRANSLATE_NOOP("Prompt", "Liquid or leak-by: vent again"),
    QT_TRANSLATE_NOOP("Prompt", "Liquid or leak-by: keep holding"),
)

_HELP: Final[dict[Instruction, str]] = {
    Instruction.VENT: QT_TRANSLATE_NOOP(
        "Prompt",
        "Open the vent slowly and watch the margin above the triple point. Fall slowly for "
        "the last 10 bar. The prompt to close comes early enough for your hand to reach the "
        "valve; do not wait for the stop line itself.",
    ),
    Instruction.CLOSE_AND_HOLD: QT_TRANSLATE_NOOP(
        "Prompt",
        "Shut the vent valve now and leave everything still. Below the triple point liquid "
        "turns to dry ice, and a gauge at zero would no longer prove anything.",
    ),
    Instruction.KEEP_HOLDING: QT_TRANSLATE_NOOP(
        "Prompt",
        "Leave the valve shut. The first minute is gas warming up in every case; only the "
        "later slope, and the next hold, tell liquid from gas. The time left is the earliest "
        "that the hold can decide, not a time after which the section is empty.",
    ),
    Instruction.VENT_AGAIN: QT_TRANSLATE_NOOP(
        "Prompt",
        "Liquid is indicated, or this hold could not exclude it. Vent from here back down "
        "towards the stop pressure, never lower, then hold again.",
    ),
    Instruction.VENT_TO_ZERO: QT_TRANSLATE_NOOP(
        "Prompt",
        "The hold shows no liquid above its detection limit. Vent down, stop near 1 bar gauge "
        "and hold for dry ice, then go on to zero. Watch for a shelf at the triple point: if "
        "the fall stalls there, close and treat it as dry ice.",
    ),
    Instruction.HOLD_FOR_DRY_ICE: QT_TRANSLATE_NOOP(
        "Prompt",
        "Dry ice is indicated or not excluded. Keep out of line of hose and cover: pressure "
        "may stand on both sides of a plug. The sentence under the prompt says whether the "
        "vented side stays open. Let ambient heat work; never strike, blow out or warm a "
        "plug. Snow that is shut in can rise far above the rated pressure: watch the gauge. "
        "No time alone ends this hold, and a gauge at zero is not proof of empty.",
    ),
    Instruction.OPEN_BLEEDS: QT_TRANSLATE_NOOP(
        "Prompt",
        "Open the bleeds at both ends and leave them open. A plug between the gauge and the "
        "section hides pressure. This is a reading, not permission to open.",
    ),
    Instruction.VENT_NOW: QT_TRANSLATE_NOOP(
        "Prompt",
        "The closed-in pressure is near a limit, or rises as a liquid-full section does. Open "
        "the vent now; stand clear of the outlet.",
    ),
    Instruction.CHECK_ISOLATION: QT_TRANSLATE_NOOP(
        "Prompt",
        "Pressure rises in a way that points to flow past a closed isolation valve. Re-seat "
        "and lock the valves, or double block and bleed. Venting alone will not end it.",
    ),
    Instruction.CHECK_VENT_LINE: QT_TRANSLATE_NOOP(
        "Prompt",
        "The vent is open but the pressure does not fall: a plug of dry ice in the vent line, "
        "or the shelf at the triple point. Close the vent. Do not look into, strike or heat "
        "the outlet.",
    ),
    Instruction.CHECK_GAUGE: QT_TRANSLATE_NOOP(
        "Prompt",
        "The gauge shows values that a live section would not, or has reached its limit. "
        "Compare with the mechanical gauge; check the line to the gauge for a plug.",
    ),
    Instruction.NO_DATA: QT_TRANSLATE_NOOP(
        "Prompt",
        "Close the vent. Read the mechanical gauge. If it rises, vent. Nothing shown before "
        "the gap holds any longer: the hold starts again when readings are back.",
    ),
    Instruction.WAIT: QT_TRANSLATE_NOOP("Prompt", "Nothing to do before the vent starts."),
}

_CHARGES: Final[dict[Charge, str]] = {
    Charge.SUBCOOLED_LIQUID: QT_TRANSLATE_NOOP("Charge", "full of liquid"),
    Charge.TWO_PHASE: QT_TRANSLATE_NOOP("Charge", "liquid and vapour"),
    Charge.VAPOR_ONLY: QT_TRANSLATE_NOOP("Charge", "vapour only"),
    Charge.SOLID_PRESENT: QT_TRANSLATE_NOOP("Charge", "dry ice"),
    Charge.UNDETERMINED: QT_TRANSLATE_NOOP("Charge", "not known yet"),
}

_LEAKS: Final[dict[LeakBy, str]] = {
    LeakBy.NONE: QT_TRANSLATE_NOOP("Charge", "no leak-by seen"),
    LeakBy.SUSPECTED: QT_TRANSLATE_NOOP("Charge", "leak-by suspected"),
    LeakBy.UNDETERMINED: QT_TRANSLATE_NOOP("Charge", "leak-by not determined"),
}


def headline_of(instruction: Instruction) -> str:
    """Return the few words of an instruction in the language of the screen."""
    return translate("Prompt", _HEADLINES[instruction])


def help_of(instruction: Instruction) -> str:
    """Return the help text behind an instruction."""
    return translate("Prompt", _HELP[instruction])


def charge_words(charge: Charge) -> str:
    """Return the words for what is inside."""
    return translate("Charge", _CHARGES[charge])


def leak_words(leak: LeakBy) -> str:
    """Return the words for flow past a closed isolation valve."""
    return translate("Charge", _LEAKS[leak])


def said(headline: str, instruction: Instruction) -> str:
    """Return the core's own headline in the language of the screen.

    The core speaks English. A headline that has no translation is replaced, on a translated screen,
    by the translated short name of the instruction, so that languages are not mixed.
    """
    translated = translate("Prompt", headline) if headline else ""
    if translated != headline:
        return translated
    short = headline_of(instruction)
    if short != _HEADLINES[instruction]:
        return short
    return headline or short
