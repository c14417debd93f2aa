"""Contrast and luminance from the palette. Limits: WCAG 2.2, 1.4.6 (7:1) and 1.4.11 (3:1)."""

from itertools import combinations

import pytest

from co2vent.guidance.events import Severity
from co2vent.window.prompt_band import FLASH_HALF_PERIOD_MS, outline
from co2vent.window.theme import (
    LINE_CONTRAST_MIN,
    PALETTES,
    TEXT_CONTRAST_MIN,
    Palette,
    contrast,
    luminance,
)

ALL = [shown for palette in PALETTES.values() for shown in (palette, palette.practice())]
palettes = pytest.mark.parametrize("palette", ALL, ids=lambda p: f"{p.name} {p.page}")


def test_contrast_is_the_wcag_ratio() -> None:
    # WCAG 2.2 definition: black on white is 21:1; #767676 on white is the well-known 4.54:1
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#767676", "#ffffff") == pytest.approx(4.54, abs=0.01)
    assert contrast("#ff0000", "#ffffff") == pytest.approx(4.00, abs=0.01)


@palettes
def test_all_text_has_seven_to_one(palette: Palette) -> None:
    pairs = {
        "ink on page": (palette.ink, palette.page),
        "ink on surface": (palette.ink, palette.surface),
        "ink on hold": (palette.ink, palette.hold_shade),
        "faint on page": (palette.faint, palette.page),
        "faint on surface": (palette.faint, palette.surface),
        "key": (palette.key_ink, palette.key),
        "banner": (palette.banner.ink, palette.banner.ground),
        "triple point label": (palette.triple_point, palette.page),
        "triple point label in a hold": (palette.triple_point, palette.hold_shade),
        "stop label": (palette.stop, palette.page),
        "stop label in a hold": (palette.stop, palette.hold_shade),
        "vapour curve label": (palette.vapor_curve, palette.hold_shade),
        "liquid curve label": (palette.liquid_curve, palette.hold_shade),
        **{
            severity.name: (palette.band(severity).ink, palette.band(severity).ground)
            for severity in Severity
        },
    }
    poor = {name: round(contrast(*pair), 2) for name, pair in pairs.items()
            if contrast(*pair) < TEXT_CONTRAST_MIN}  # fmt: skip
    assert not poor


@palettes
def test_the_two_curves_of_a_hold_differ_in_luminance(palette: Palette) -> None:
    # no rule asks it of lines that differ in dash, width and signs too; 1.5 as for the severities
    assert contrast(palette.vapor_curve, palette.liquid_curve) >= 1.5


@palettes
def test_all_lines_have_three_to_one_on_page_and_hold(palette: Palette) -> None:
    for colour in (
        palette.trace, palette.temperature, palette.triple_point, palette.stop,
        palette.saturation, palette.vapor_curve, palette.liquid_curve, palette.rule, palette.ice,
        palette.liquid,
    ):  # fmt: skip
        assert contrast(colour, palette.page) >= LINE_CONTRAST_MIN, colour
    for colour in (palette.trace, palette.vapor_curve, palette.liquid_curve):
        assert contrast(colour, palette.hold_shade) >= LINE_CONTRAST_MIN, colour


@palettes
def test_grounds_of_the_four_states_differ_in_luminance(palette: Palette) -> None:
    grounds = [palette.band(severity).ground for severity in Severity]
    for one, other in combinations(grounds, 2):
        assert contrast(one, other) >= 1.5, (one, other)
    assert len({round(luminance(ground), 3) for ground in grounds}) == len(Severity)


def test_outlines_of_the_states_have_different_corners() -> None:
    from PySide6.QtCore import QRectF

    area = QRectF(0, 0, 100, 100)
    corners = [outline(severity, area) for severity in Severity]
    assert corners[0] is None  # a circle
    assert len({polygon.size() for polygon in corners[1:] if polygon is not None}) == 3


def test_flashing_keeps_to_the_limits() -> None:
    # IEC 60073 (from memory): slow 0.4-0.8 Hz, fast 1.4-2.8 Hz; WCAG 2.2, 2.3.1: under 3 a second
    caution, danger = (500.0 / FLASH_HALF_PERIOD_MS[s] for s in (Severity.CAUTION, Severity.DANGER))
    assert 0.4 <= caution <= 0.8
    assert 1.4 <= danger <= 2.8 < 3.0
