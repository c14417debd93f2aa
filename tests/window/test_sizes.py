"""Sizes on the screen: 14 mm digits where the screen allows, 15 mm keys, nothing cut off."""

from itertools import combinations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from co2vent.guidance.events import Severity
from co2vent.inference.outcome import Bounds, Instruction
from co2vent.window.calibrate_page import CalibratePage
from co2vent.window.figures import Figure
from co2vent.window.fit_label import FitLabel
from co2vent.window.frame import Mode
from co2vent.window.keys import EDGES_PX, Key
from co2vent.window.look import Look
from co2vent.window.main_window import MainWindow
from co2vent.window.replay_feed import ReplayFeed
from co2vent.window.replay_index import ReplayIndex
from co2vent.window.replay_page import ReplayPage
from co2vent.window.sizes import (
    DIGIT_HEIGHT_FLOOR_MM,
    DIGIT_HEIGHT_MM,
    TARGET_MM,
    pixels,
    sizes_for,
)
from co2vent.window.start_page import StartPage
from co2vent.window.text import UnitChoice
from co2vent.window.vent_page import VentPage
from tests.window.conftest import StandingFeed, a_hold, a_prompt, a_view

SCREENS = [
    (1024, 600), (600, 1024), (1280, 800), (800, 1280), (1366, 768), (1920, 1080), (1080, 1920),
    (2560, 1440), (3840, 2160), (2160, 3840),
]  # fmt: skip


@pytest.mark.parametrize("screen", SCREENS, ids=lambda s: f"{s[0]}x{s[1]}")
def test_digits_are_14_mm_high_at_96_dots_per_inch(screen: tuple[int, int]) -> None:
    sizes = sizes_for(*screen, 96.0)
    assert sizes.digit_px >= pixels(DIGIT_HEIGHT_MM, 96.0) - 1


@pytest.mark.parametrize(("screen", "dpi"), [((1920, 1080), 110.0), ((3840, 2160), 163.0)])
def test_digits_are_14_mm_on_common_desk_screens(screen: tuple[int, int], dpi: float) -> None:
    # 20 inch at 1920x1080 has 110 dots per inch, 27 inch at 3840x2160 has 163 (geometry)
    assert sizes_for(*screen, dpi).digit_px >= pixels(DIGIT_HEIGHT_MM, dpi) - 1


def test_keys_are_15_mm_at_96_dots_per_inch() -> None:
    for screen in SCREENS:
        assert sizes_for(*screen, 96.0).target_px >= pixels(TARGET_MM, 96.0) - 1


def test_floor_is_20_minutes_of_arc_at_two_metres() -> None:
    # 20' at 2 m: 2000 mm x tan(20/60 deg) = 11.6 mm (geometry)
    assert pytest.approx(11.6, abs=0.05) == DIGIT_HEIGHT_FLOOR_MM


def test_a_driver_that_reports_nothing_does_not_shrink_the_digits() -> None:
    assert sizes_for(1024, 600, 0.0) == sizes_for(1024, 600, 96.0)


def test_calibration_corrects_the_screens_own_figure() -> None:
    wrong, right = sizes_for(1920, 1080, 60.0), sizes_for(1920, 1080, 60.0, calibration=2.0)
    assert right.digit_px >= wrong.digit_px


def _worst_view() -> object:
    hold = a_hold(
        number=12, start_s=0.0, end_s=7300.0, liquid_kg=Bounds(0.0123, 0.0001, 15.66),
        dry_ice_kg=Bounds(1.2, 0.2, 3.4), time_left_s=4000.0,
    )  # fmt: skip
    prompt = a_prompt(Instruction.CHECK_ISOLATION, Severity.CAUTION)
    reason = (
        "Flow past a closed valve suspected: the same slope at two pressures (286 mbar/min near "
        "6.21 bar g, 266 mbar/min near 7.96 bar g); liquid would slow as the pressure rises."
    )
    prompt = type(prompt)(
        prompt.instruction, "Check the isolation valve now", reason, Severity.CAUTION, 0.0
    )
    return a_view(5_312_345.0, 7300.0, prompt=prompt, holds=(hold,), running_hold=hold)


def _cut_off(page: QWidget) -> list[str]:
    layout = page.layout()
    if layout is not None:
        layout.activate()
    cut = [
        label.text()
        for label in page.findChildren(FitLabel)
        if label.isVisibleTo(page) and label.text() and not (label.font_px and label.fits)
    ]
    for key in page.findChildren(Key):
        lines = key.text().split("\n")
        text_width = max(key.fontMetrics().horizontalAdvance(line) for line in lines)
        if key.isVisibleTo(page) and text_width + EDGES_PX > key.width():
            cut.append(f"key {key.text()} {text_width} > {key.width()}")
    return cut


def _overlapping(page: VentPage) -> list[str]:
    panel = page.panel
    parts = {
        "margin": panel.margin, "pressure": panel.pressure, "motion": panel.motion,
        "inside": panel.inside, "power": panel.power, "drawing": panel.drawing,
    }  # fmt: skip
    return [
        f"{one} over {other}"
        for one, other in combinations(parts, 2)
        if parts[one].geometry().intersects(parts[other].geometry())
    ]


@pytest.mark.parametrize("screen", SCREENS, ids=lambda s: f"{s[0]}x{s[1]}")
@pytest.mark.parametrize("units", [UnitChoice.BAR, UnitChoice.PSI_AND_BAR])
@pytest.mark.parametrize("text_scale", [1.0, 1.3])
def test_nothing_is_cut_off_or_painted_over(
    qtbot, look: Look, clock, screen: tuple[int, int], units: UnitChoice, text_scale: float
) -> None:
    look.units, look.text_scale = units, text_scale
    page = VentPage(StandingFeed(_worst_view(), Mode.REPLAY), look, clock)
    page.set_keys(page.common_keys())
    page.under.addSpacing(40)  # the replay's row
    qtbot.addWidget(page)
    page.resize(*screen)
    page.show()
    page.apply_look()
    page.tick()
    page.layout().activate()
    page.panel.layout().activate()
    assert _cut_off(page) == []
    assert _overlapping(page) == []


@pytest.mark.parametrize("screen", [(1024, 600), (1920, 1080)], ids=lambda s: f"{s[0]}x{s[1]}")
def test_painted_digits_are_14_mm(qtbot, look: Look, clock, screen: tuple[int, int]) -> None:
    page = VentPage(StandingFeed(a_view(), Mode.REPLAY), look, clock)
    qtbot.addWidget(page)
    page.resize(*screen)
    page.show()
    page.apply_look()
    page.tick()
    page.grab()
    for figure in page.findChildren(Figure):
        assert figure.painted_digit_px >= pixels(DIGIT_HEIGHT_MM, 96.0) - 2


@pytest.mark.parametrize("screen", [(1024, 600), (600, 1024)], ids=lambda s: f"{s[0]}x{s[1]}")
def test_replay_page_fits(qtbot, look: Look, clock, log, screen: tuple[int, int]) -> None:
    index = ReplayIndex(log)
    index.start()
    assert index.wait(20.0)
    page = ReplayPage(ReplayFeed(index, "vent.csv", clock), look)
    qtbot.addWidget(page)
    page.resize(*screen)
    page.show()
    page.apply_look()
    page.tick()
    page.layout().activate()
    assert _cut_off(page) == []
    assert all(key.height() >= pixels(TARGET_MM, 96.0) - 1 for key in page.keys)
    page.close_feed()


@pytest.mark.parametrize("screen", [(1024, 600), (600, 1024)], ids=lambda s: f"{s[0]}x{s[1]}")
def test_start_page_fits(qtbot, look: Look, screen: tuple[int, int]) -> None:
    from co2vent.window.main_window import MainWindow

    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(*screen)
    window.show()
    assert isinstance(window.page, StartPage)
    assert _cut_off(window.page) == []


def test_every_key_of_the_start_page_is_heard(qtbot, look: Look) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    window.show()
    with qtbot.waitActive(window):
        window.activateWindow()
    qtbot.keyClick(window.start_page, Qt.Key.Key_K)
    assert isinstance(window.page, CalibratePage)
    window.go_to_start()
