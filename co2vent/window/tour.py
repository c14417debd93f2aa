"""A tour of the screen in a few sentences, for the first sample that somebody opens. Pure."""

from co2vent.window.words import translate


def tour_steps() -> tuple[str, ...]:
    """Return the sentences of the tour, in the language of the screen."""
    return (
        translate("Tour", "The band on top says what to do now, and under it why."),
        translate(
            "Tour",
            "First figure: how far above the triple point. Below it liquid turns to dry ice.",
        ),
        translate("Tour", "Second figure: the gauge. Its caption: how far to the stop pressure."),
        translate("Tour", "The trace: holds are shaded; N jumps to the next thing that happened."),
        translate("Tour", "The drawing: solid is surely liquid, hatched is possible, ? not known."),
        translate("Tour", "V turns the pictures, F1 explains the prompt, M has everything else."),
        translate("Tour", "If readings stop, the digits are struck through: close the vent."),
    )
