"""Word, shape and luminance: a greyscale picture still tells the states apart."""

from dataclasses import replace
from itertools import combinations

import numpy as np
import pytest
from PySide6.QtGui import QImage

from co2vent.guidance.events import Severity
from co2vent.inference.outcome import Charge, Instruction
from co2vent.window.frame import Mode
from co2vent.window.icons import pixmap
from co2vent.window.prompt_band import PromptBand
from co2vent.window.shown import shown
from co2vent.window.sizes import sizes_for
from co2vent.window.text import UnitChoice
from co2vent.window.theme import PALETTES
from co2vent.window.vent_page import VentPage
from co2vent.window.words import charge_words, headline_of, help_of
from tests.window.conftest import StandingFeed, a_prompt, a_view


def grey(image: QImage) -> np.ndarray:
    flat = image.convertToFormat(QImage.Format.Format_Grayscale8)
    rows = np.frombuffer(flat.constBits(), np.uint8).reshape(flat.height(), flat.bytesPerLine())
    return rows[:, : flat.width()].astype(float).copy()


@pytest.mark.parametrize("palette", PALETTES.values(), ids=lambda p: p.name)
def test_severities_differ_in_greyscale_without_reading_the_words(qtbot, palette) -> None:
    pictures = []
    for severity in Severity:
        band = PromptBand()
        qtbot.addWidget(band)
        band.resize(800, 120)
        band.set_theme(palette)
        band.set_sizes(sizes_for(1024, 600, 96.0))
        view = a_view(prompt=a_prompt(Instruction.WAIT, severity))
        band.show_prompt(shown(view, 0.1, UnitChoice.BAR), flashing=False)
        band.show()
        picture = grey(band.grab().toImage())
        pictures.append(picture[:, :110])  # the sign alone, without words
    for one, other in combinations(pictures, 2):
        assert abs(one - other).mean() > 10.0


def test_every_instruction_has_words_help_and_a_drawing_of_its_own(qapp) -> None:
    drawings = {}
    for instruction in Instruction:
        assert headline_of(instruction)
        assert len(help_of(instruction)) > 20
        drawings[instruction] = grey(pixmap(instruction.value, "#ffffff", 48).toImage())
    for one, other in combinations(Instruction, 2):
        assert abs(drawings[one] - drawings[other]).mean() > 3.0, (one, other)


def test_every_charge_has_words_of_its_own(qapp) -> None:
    assert len({charge_words(charge) for charge in Charge}) == len(Charge)


def test_nothing_on_the_screen_says_safe(qapp) -> None:
    texts = [headline_of(i) + help_of(i) for i in Instruction] + [charge_words(c) for c in Charge]
    for text in texts:
        assert "safe" not in text.lower()
        assert "you may open" not in text.lower()


@pytest.mark.parametrize("size", [16, 32, 128])
def test_program_icon_can_be_read_small(qapp, size: int) -> None:
    picture = grey(pixmap("program", None, size).toImage())
    assert picture.max() > 200  # the trace
    assert picture.min() < 60  # the ground
    top, bottom = picture[: size // 2], picture[size * 3 // 4 : size * 7 // 8]
    assert top.std() > 20
    assert bottom.std() > 20


def test_only_a_live_vent_on_a_real_gauge_has_the_plain_page(qtbot, look, clock) -> None:
    plain = look.palette.page

    def page_colour(mode: Mode, simulated: bool) -> str:
        view = a_view(setup=replace(a_view().setup, simulated=simulated))
        page = VentPage(StandingFeed(view, mode), look, clock)
        qtbot.addWidget(page)
        page.resize(1024, 600)
        page.show()
        page.tick()
        return page.panel.grab().toImage().pixelColor(4, 400).name()

    assert page_colour(Mode.LIVE, simulated=False) == plain
    for mode, simulated in ((Mode.LIVE, True), (Mode.REPLAY, False), (Mode.CLASS, True)):
        assert page_colour(mode, simulated) == look.palette.practice_page
