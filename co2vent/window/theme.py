"""Two palettes and the contrast they must keep.

The outdoor palette is black on white with heavy strokes for daylight; the plant-room palette is
light on near-black. A step to take is shown as the inverse of the page, caution as amber, danger as
dark red with a striped frame: four luminances, so that a greyscale copy still tells them apart.
Contrast is computed by the WCAG 2.2 formula; text needs 7:1, plot lines 3:1.
"""

from dataclasses import dataclass, replace
from typing import Final

from co2vent.guidance.events import Severity

TEXT_CONTRAST_MIN: Final = 7.0  # WCAG 2.2, success criterion 1.4.6 (AAA)
LINE_CONTRAST_MIN: Final = 3.0  # WCAG 2.2, success criterion 1.4.11


@dataclass(frozen=True, slots=True)
class Band:
    """Ground and ink of one state."""

    ground: str
    ink: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Palette:
    """All colours of one theme, as #rrggbb."""

    name: str
    page: str
    surface: str
    ink: str
    faint: str  # secondary text, still 7:1 on page and surface
    rule: str  # frames and grid
    key: str  # ground of a key (button)
    key_ink: str
    calm: Band
    do: Band
    caution: Band
    danger: Band
    banner: Band  # replay, class and simulated
    trace: str
    temperature: str
    triple_point: str
    stop: str
    saturation: str
    vapor_curve: str
    liquid_curve: str
    hold_shade: str  # a quiet ground behind the trace, not text
    liquid: str
    ice: str
    practice_page: str  # the page of everything that is not a live vent on a real gauge

    def practice(self) -> "Palette":
        """Return the palette of replay, class and simulated data: another page, the same rest."""
        return replace(self, page=self.practice_page)

    def band(self, severity: Severity) -> Band:
        """Return the colours of a prompt of this severity."""
        return (self.calm, self.do, self.caution, self.danger)[int(severity)]


OUTDOOR: Final = Palette(
    name="outdoor",
    page="#ffffff",
    surface="#f4f5f6",
    ink="#000000",
    faint="#3c4248",
    rule="#7b8288",
    key="#e3e6e9",
    key_ink="#000000",
    calm=Band("#ffffff", "#000000"),
    do=Band("#10233f", "#ffffff"),
    caution=Band("#ffb000", "#000000"),
    danger=Band("#a00000", "#ffffff"),
    banner=Band("#4b2a6b", "#ffffff"),
    trace="#000000",
    temperature="#6b3a00",
    triple_point="#8f0000",
    stop="#5f3d00",
    saturation="#00557a",
    vapor_curve="#6b2a90",
    liquid_curve="#002338",
    hold_shade="#e4e8ec",
    liquid="#00557a",
    ice="#6f7f8c",
    practice_page="#f0eaf6",
)

PLANT_ROOM: Final = Palette(
    name="plant room",
    page="#0d1115",
    surface="#161c22",
    ink="#f4f6f8",
    faint="#bcc5cd",
    rule="#6c7884",
    key="#2a333c",
    key_ink="#ffffff",
    calm=Band("#161c22", "#f4f6f8"),
    do=Band("#f2f5f7", "#000000"),
    caution=Band("#ffb000", "#000000"),
    danger=Band("#a80000", "#ffffff"),
    banner=Band("#c9b3e6", "#000000"),
    trace="#f4f6f8",
    temperature="#ffb870",
    triple_point="#ff9e93",
    stop="#ffb000",
    saturation="#6fc3ff",
    vapor_curve="#eee2ff",
    liquid_curve="#6cbdf5",
    hold_shade="#202830",
    liquid="#6fc3ff",
    ice="#dfe8f0",
    practice_page="#1b1426",
)

PALETTES: Final = {palette.name: palette for palette in (OUTDOOR, PLANT_ROOM)}


def luminance(colour: str) -> float:
    """Return the relative luminance, 0 to 1, of #rrggbb (WCAG 2.2)."""
    channels = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    red, green, blue = (
        channel / 12.92 if channel <= 0.04045 else ((channel + 0.055) / 1.055) ** 2.4
        for channel in channels
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """Return the contrast ratio of two colours, 1 to 21 (WCAG 2.2)."""
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)
