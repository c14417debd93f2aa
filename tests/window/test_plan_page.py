"""The plan page says what the planner says."""

import pytest

from co2vent.errors import RefusedInputError
from co2vent.planning.plan import plan_vent
from co2vent.window.main_window import MainWindow
from co2vent.window.plan_fields import plan_input_from
from co2vent.window.plan_page import PlanPage


def test_typed_values_reach_the_planner_in_si() -> None:
    given = plan_input_from(
        {"volume_l": "14,5", "temperature_c": "−20", "liquid_percent": "30", "room_m3": "400"}
    )
    assert given.volume_m3 == pytest.approx(0.0145)
    assert given.temperature_k == pytest.approx(253.15)
    assert given.liquid_fraction == pytest.approx(0.3)
    assert given.room_m3 == 400.0
    # density of boiling CO2 at -20 degC: 1031.7 kg/m3, vapour 51.7 kg/m3 (Span & Wagner 1996)
    expected_kg = 0.0145 * (0.3 * 1031.7 + 0.7 * 51.7)
    assert plan_vent(given).charge_kg == pytest.approx(expected_kg, rel=2e-3)


@pytest.mark.parametrize(
    "typed",
    [{}, {"volume_l": "abc"}, {"volume_l": "nan"}, {"volume_l": "1e400"}, {"volume_l": "5 l"}],
)
def test_what_is_no_number_is_said(typed) -> None:
    with pytest.raises(RefusedInputError):
        plan_input_from(typed)


def test_page_reckons_while_typing(qtbot, look) -> None:
    page = PlanPage(look)
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    assert "volume" in page.figures.text()
    qtbot.keyClicks(page.fields["volume_l"], "14.5")
    qtbot.keyClicks(page.fields["temperature_c"], "-20")
    assert page.figures.text().startswith("Stop at 5.20 bar g (triple point 4.17 bar g)")
    assert "Assumed" in page.text.toPlainText()
    qtbot.keyClicks(page.fields["pressure_bar_g"], "19")
    assert page.text.toPlainText() == ""  # both given: refused, nothing old is left standing
    page._leave()
    again = PlanPage(look)
    qtbot.addWidget(again)
    assert again.fields["volume_l"].text() == "14.5"


@pytest.mark.parametrize("screen", [(1024, 600), (600, 1024)])
def test_fields_are_15_mm_high(qtbot, look, screen) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(*screen)
    window.show()
    window.open_plan()
    page = window.page
    qtbot.waitExposed(window)
    assert all(line.height() >= look.sizes(page).target_px for line in page.fields.values())
    assert page._scroll.verticalScrollBar().sizeHint().width() >= look.sizes(window).target_px
    window.go_to_start()
