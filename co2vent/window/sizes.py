"""Sizes from the window and the screen: physical where the screen allows, never clipped.

A digit of 14 mm subtends 24 arc minutes at 2 m (human-factors guidance: 20 to 22 preferred; from
memory of MIL-STD-1472 and ISO 9241-303); 11.6 mm is 20 arc minutes, the floor. A touch target for a
gloved finger is 15 mm (common practice, no source).
"""

from dataclasses import dataclass
from typing import Final

DIGIT_HEIGHT_MM: Final = 14.0
DIGIT_HEIGHT_FLOOR_MM: Final = 11.6
TARGET_MM: Final = 15.0
MM_PER_INCH: Final = 25.4
LOWEST_DPI: Final = 96.0  # drivers report less, or 0: then sizes would shrink
HIGHEST_DPI: Final = 400.0
SMALLEST_LANDSCAPE: Final = (1024, 600)  # logical pixels
DIGIT_SHARE_OF_FONT: Final = 0.72  # digit height per font pixel size, DejaVu Sans Bold 0.729


@dataclass(frozen=True, slots=True)
class Sizes:
    """Logical pixels for everything that is drawn."""

    portrait: bool
    scale: float
    digit_px: int  # height of the large digits
    target_px: int  # least height of a key
    text_px: int  # plain text
    small_px: int  # secondary text
    gap_px: int

    @property
    def digit_font_px(self) -> int:
        """Font pixel size whose digits are `digit_px` high."""
        return round(self.digit_px / DIGIT_SHARE_OF_FONT)


def pixels(millimetres: float, dots_per_inch: float) -> float:
    """Return a length on the screen in logical pixels."""
    return millimetres / MM_PER_INCH * dots_per_inch


def sizes_for(
    width: int, height: int, dots_per_inch: float, text_scale: float = 1.0, calibration: float = 1.0
) -> Sizes:
    """Return the sizes for a window of `width` x `height` logical pixels.

    `dots_per_inch` is logical pixels per physical inch; `calibration` multiplies it where the
    person has measured that the screen's own figure is wrong.
    """
    dpi = min(max(dots_per_inch * calibration, LOWEST_DPI), HIGHEST_DPI)
    portrait = height > width
    long_side, short_side = SMALLEST_LANDSCAPE
    across, down = (short_side, long_side) if portrait else (long_side, short_side)
    room = min(width / across, height / down)  # how many times the smallest screen fits
    roomy = max(1.0, room)
    wanted_digit = pixels(DIGIT_HEIGHT_MM, dpi)
    # Above the smallest screen digits may grow with it; below 14 mm only when they would not fit.
    digit = max(wanted_digit, 54.0 * room)
    digit = min(digit, 62.0 * roomy)
    target = min(max(pixels(TARGET_MM, dpi), 44.0 * room), 64.0 * roomy)
    text = 16.0 * max(roomy, min(dpi / 96.0, roomy * 1.1)) * text_scale
    text = min(text, 19.0 * roomy)
    return Sizes(
        portrait=portrait,
        scale=room,
        digit_px=round(digit),
        target_px=round(target),
        text_px=round(text),
        small_px=round(text * 0.86),
        gap_px=max(4, round(6 * roomy)),
    )
