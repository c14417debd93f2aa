"""Old readings are shown as old within the limit, by the screen's own clock; no verdict stays."""

from dataclasses import replace

import pytest

from co2vent.guidance.events import Severity
from co2vent.inference.outcome import Bounds, Charge, Instruction
from co2vent.window.frame import Mode
from co2vent.window.section_drawing import SectionDrawing
from co2vent.window.shown import shown, waiting
from co2vent.window.text import UnitChoice
from co2vent.window.theme import PALETTES
from co2vent.window.vent_page import VentPage
from tests.window.conftest import StandingFeed, a_hold, a_prompt, a_view


def _vapor_only():
    hold = a_hold(charge=Charge.VAPOR_ONLY)
    prompt = replace(
        a_prompt(Instruction.VENT_TO_ZERO, Severity.DO), headline="Vapour only: vent to zero"
    )
    return a_view(prompt=prompt, holds=(hold,), running_hold=hold, vapor_only_since_s=200.0)


def test_age_beyond_the_limit_is_stale_whatever_the_view_says() -> None:
    said = shown(_vapor_only(), 2.01, UnitChoice.BAR)
    assert said.stale
    assert said.instruction is Instruction.NO_DATA
    assert said.severity is Severity.DANGER
    assert "apour only" not in said.headline + said.reason + said.inside + said.power
    assert said.hold is None
    assert said.rate == said.close_in == said.hold_clock == ""


def test_age_below_the_limit_is_not_stale() -> None:
    said = shown(_vapor_only(), 1.99, UnitChoice.BAR)
    assert not said.stale
    assert said.instruction is Instruction.VENT_TO_ZERO


def test_unknown_age_is_stale() -> None:
    assert shown(_vapor_only(), None, UnitChoice.BAR).stale


def test_before_the_first_reading_there_is_no_number() -> None:
    said = waiting(None, "the port is closed")
    assert said.pressure == said.margin == "–"
    assert said.reason.startswith("the port is closed")


def test_before_the_first_reading_nothing_is_called_old(qtbot, look, clock) -> None:
    page = VentPage(StandingFeed(None, Mode.LIVE), look, clock)
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    page.tick()
    panel = page.panel
    for figure in (panel.margin, panel.pressure):
        assert "no reading yet" in figure.accessibleName()
        assert "STALE" not in figure.accessibleName()
        assert "triple point" not in figure.accessibleName()
    assert "STALE" not in panel.status.age.label.text()


def test_valve_and_temperature_are_struck_while_the_digits_are(qtbot, look, clock) -> None:
    feed = StandingFeed(a_view(valve_told=True), Mode.LIVE)
    page = VentPage(feed, look, clock)
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    page.tick()
    cells = (page.panel.status.valve, page.panel.status.temperature)
    page.apply_look()
    inks = [cell.label._ink for cell in cells]
    assert not any(cell.stale.isVisible() for cell in cells)
    feed.age_s = 9.0
    page.tick()
    for cell in cells:
        assert cell.stale.isVisible()
        assert cell.stale.text() == "STALE"
        assert cell.accessibleName().startswith("STALE: ")
        assert cell.label._font_of(12).strikeOut()
        assert cell.label._ink not in inks
        cell.layout().activate()
        assert cell.stale.geometry().right() < cell.label.geometry().left()
    assert page.panel.status.temperature.label.text() == "line −45.1 °C"
    feed.age_s = 0.1
    page.tick()
    assert not any(cell.stale.isVisible() for cell in cells)
    assert not any(cell.label._font_of(12).strikeOut() for cell in cells)
    assert [cell.label._ink for cell in cells] == inks


def test_what_was_never_known_is_not_called_old() -> None:
    view = a_view()
    assert view.latest is not None
    bare = replace(view, vent_open=None, latest=view.latest._replace(line_temperature_k=None))
    said = shown(bare, 9.0, UnitChoice.BAR)
    assert said.vent == said.temperature == ""


def test_page_turns_stale_by_its_clock_when_nothing_arrives(qtbot, look, clock) -> None:
    feed = StandingFeed(_vapor_only(), Mode.LIVE)
    page = VentPage(feed, look, clock)
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    page.tick()
    assert page.panel.prompt.headline.text() == "Vapour only: vent to zero"
    fresh = page.panel.grab().toImage()
    feed.age_s = 2.1  # the feed gives the same view, older
    page.tick()
    assert page.panel.prompt.severity is Severity.DANGER
    assert "STALE" in page.panel.status.age.label.text()
    assert "STALE" in page.panel.margin.accessibleName()
    assert "STALE" in page.panel.pressure.accessibleName()
    assert page.panel.grab().toImage() != fresh


def test_stale_digits_are_struck_through(qtbot, look, clock) -> None:
    feed = StandingFeed(a_view(), Mode.LIVE)
    page = VentPage(feed, look, clock)
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    page.apply_look()
    page.tick()
    fresh = page.panel.pressure.grab().toImage()
    feed.age_s = 9.0
    page.tick()
    old = page.panel.pressure.grab().toImage()
    dark = lambda image: sum(  # noqa: E731
        image.pixelColor(x, y).lightness() < 90
        for x in range(0, image.width() // 2, 2)
        for y in range(0, int(image.height() * 0.7), 2)
    )
    assert dark(old) > 1.1 * dark(fresh)


def test_no_drawing_looks_empty_while_dry_ice_is_not_bounded(qtbot, look, clock) -> None:
    hold = a_hold(
        charge=Charge.UNDETERMINED,
        liquid_kg=Bounds(0.0, 0.0, 0.0),
        dry_ice_kg=Bounds(None, 0.0, None),
    )
    feed = StandingFeed(a_view(holds=(hold,), running_hold=hold), Mode.LIVE)
    page = VentPage(feed, look, clock)
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    page.tick()
    unknown = page.panel.drawing.grab().toImage()
    bounded = a_hold(
        charge=Charge.UNDETERMINED,
        liquid_kg=Bounds(0.0, 0.0, 0.0),
        dry_ice_kg=Bounds(0.0, 0.0, 0.0),
    )
    feed.view = a_view(holds=(bounded,), running_hold=bounded)
    page.tick()
    assert page.panel.drawing.grab().toImage() != unknown
    assert page.panel.drawing._known


@pytest.mark.parametrize("palette", PALETTES.values(), ids=lambda p: p.name)
def test_dry_ice_without_an_upper_bound_is_hatched_to_the_top(qtbot, palette) -> None:
    def marked(*, known: bool) -> int:
        drawing = SectionDrawing()
        qtbot.addWidget(drawing)
        drawing.set_theme(palette)
        drawing.resize(240, 120)
        drawing.show_liquid(None, Charge.SOLID_PRESENT, known=known)
        image = drawing.grab().toImage()
        upper = [
            image.pixelColor(x, y).name() for x in range(50, 80) for y in range(30, 50)
        ]  # beside the question mark
        return len(upper) - upper.count(palette.surface)

    assert marked(known=True) == 0
    assert marked(known=False) > 50
