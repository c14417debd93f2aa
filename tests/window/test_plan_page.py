"""The plan page says what the planner says."""

import re

import pytest
from PySide6.QtCore import QLocale

from co2vent.errors import RefusedInputError
from co2vent.planning.plan import plan_vent
from co2vent.planning.text import plan_text
from co2vent.window.languages import install
from co2vent.window.main_window import MainWindow
from co2vent.window.plan_fields import plan_input_from
from co2vent.window.plan_page import PlanPage
from co2vent.window.plan_words import duration_words, headline_words, mass_words, said_in
from co2vent.window.text import UnitChoice


def test_typed_values_reach_the_planner_in_si() -> None:
    given = plan_input_from(
        {"volume_l": "14,5", "temperature": "−20", "liquid_percent": "30", "room_m3": "400"},
        UnitChoice.BAR,
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
        plan_input_from(typed, UnitChoice.BAR)


def test_page_reckons_while_typing(qtbot, look) -> None:
    page = PlanPage(look)
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    assert "volume" in page.figures.text()
    qtbot.keyClicks(page.fields["volume_l"], "14.5")
    qtbot.keyClicks(page.fields["temperature"], "-20")
    assert page.figures.text().startswith("Stop at 5.20 bar g (triple point 4.17 bar g)")
    assert "Assumed" in page.text.toPlainText()
    qtbot.keyClicks(page.fields["pressure"], "19")
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


def _plan():
    return plan_vent(
        plan_input_from(
            {"volume_l": "14.5", "temperature": "-10", "liquid_percent": "60"}, UnitChoice.BAR
        )
    )


def test_figures_follow_the_locale_and_the_units() -> None:
    plan = _plan()
    assert "4.01 kg" in headline_words(plan, UnitChoice.BAR)
    in_pounds = headline_words(plan, UnitChoice.PSI)
    assert " lb" in in_pounds
    assert "kg" not in in_pounds
    QLocale.setDefault(QLocale(QLocale.Language.German))
    words = headline_words(plan, UnitChoice.BAR)
    assert "5,20 bar g" in words
    assert "4,01 kg" in words
    assert duration_words(18.3 * 3600.0) == "18,3 h"
    assert mass_words(0.0, UnitChoice.BAR) == "none"
    assert mass_words(None, UnitChoice.BAR) == duration_words(None) == "not known"


@pytest.mark.parametrize("language", ["de", "es", "nb"])
def test_the_plan_speaks_the_language_of_the_screen(qtbot, qapp, look, language) -> None:
    def page_in(name: str) -> PlanPage:
        install(qapp, name)
        page = PlanPage(look)
        qtbot.addWidget(page)
        for field, words in {
            "volume_l": "14.5", "temperature": "-10", "liquid_percent": "60", "room_m3": "40",
            "air_changes_per_hour": "3", "relief": "50", "altitude_m": "120",
        }.items():  # fmt: skip
            page.fields[field].setText(words)
        return page

    try:
        plain = page_in("en")
        english = plain.text.toPlainText()
        assert "2,221 kJ" in english
        page = page_in(language)
        words = page.text.toPlainText()
        assert "2 221 kJ" in words
        assert "8,96 kg" in words
        assert "−10,0 °C" in words
        assert "deg" not in words
        assert not re.search(r"\d\.\d", words)
        citations = ("NIOSH", "IDLH", "CAS", "ACGIH", " read)")
        same = set(words.splitlines()) & set(english.splitlines()) - {""}
        assert [line for line in same if not any(one in line for one in citations)] == []
        page.fields["pressure"].setText("19")
        assert "charge" not in page.figures.text()
        page.fields["pressure"].setText("")
        page.fields["room_m3"].setText("-1")
        assert "must be" not in page.figures.text()
    finally:
        install(qapp, "en")


METRIC = re.compile(r"\bbar\b|°C|deg[CF]|\d K\b|/K\b|\bkg\b|\d g\b")


def _plan_page_in_psi(qtbot, look) -> PlanPage:
    look.units = UnitChoice.PSI
    page = PlanPage(look)
    qtbot.addWidget(page)
    page.resize(1280, 800)
    page.show()
    for field, words in {
        "volume_l": "14.5", "temperature": "14", "liquid_percent": "60", "room_m3": "40",
        "air_changes_per_hour": "3", "relief": "725", "altitude_m": "120", "vent_bore_mm": "9",
    }.items():  # fmt: skip
        page.fields[field].clear()
        qtbot.keyClicks(page.fields[field], words)
    return page


def test_the_whole_page_is_in_the_chosen_units(qtbot, look) -> None:
    page = _plan_page_in_psi(qtbot, look)
    labels = " ".join(label.text() for label in page._labels)
    assert "Charge, °F" in labels
    assert "Relief setting, psig" in labels
    assert METRIC.findall(labels) == []
    assert METRIC.findall(page.figures.text()) == []
    words = page.text.toPlainText().replace("A 16 or 25 bar gauge", "")
    assert "14.0 °F" in words  # what was typed, and no -10 degC beside it
    assert METRIC.findall(words) == []
    page.fields["ambient"].setText("300")
    assert METRIC.findall(page.figures.text()) == []  # a refusal too


def test_what_is_typed_turns_with_the_units_and_back(qtbot, look) -> None:
    page = _plan_page_in_psi(qtbot, look)
    in_psi = page.text.toPlainText()
    look.units = UnitChoice.BAR
    page.apply_look()
    assert page.fields["temperature"].text() == "-10"
    assert page.fields["relief"].text() == "49.99"
    assert page.fields["relief"].accessibleName() == "Relief setting, bar g"
    assert "psi" not in page.text.toPlainText()
    look.units = UnitChoice.PSI
    page.apply_look()
    assert page.fields["relief"].text() == "725"
    assert page.text.toPlainText() == in_psi
    page._leave()
    look.units = UnitChoice.BAR
    again = PlanPage(look)
    qtbot.addWidget(again)
    assert again.fields["relief"].text() == "49.99"


def test_both_units_where_both_are_chosen(qtbot, look) -> None:
    page = _plan_page_in_psi(qtbot, look)
    look.units = UnitChoice.PSI_AND_BAR
    page.apply_look()
    assert "14.0 °F / -10.0 °C" in page.text.toPlainText().replace("−", "-")


def test_the_plan_page_has_the_key_for_units_and_letters_to_read(qtbot, look) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    window.show()
    window.open_plan()
    page = window.page
    page.fields["volume_l"].setText("14.5")
    page.fields["temperature"].setText("-20")
    assert page.text.font().pixelSize() >= look.sizes(page).text_px
    assert not page.text.horizontalScrollBar().isVisible()
    page.keys[1].click()
    assert look.units is UnitChoice.PSI
    assert page.fields["temperature"].text() == "-4"
    window.go_to_start()


@pytest.mark.parametrize(
    ("units", "wanted", "unwanted"),
    [(UnitChoice.BAR, r"\d g of liquid", "kg of"), (UnitChoice.PSI, r"\d oz of liquid", "lb of")],
)
def test_small_masses_in_sentences_are_said_as_in_figures(units, wanted, unwanted) -> None:
    given = plan_input_from(
        {"volume_l": "0.1", "temperature": "-10", "liquid_percent": "60"}, UnitChoice.BAR
    )
    (left,) = [one for one in plan_vent(given).warnings if "of liquid is left" in one]
    words = said_in(left, units)
    assert re.search(wanted, words), words
    assert unwanted not in words


@pytest.mark.parametrize(
    ("units", "words"),
    [(UnitChoice.BAR, "1.013 bar abs\n"), (UnitChoice.PSI, "14.7 psia\n")],
)
def test_the_plan_says_which_air_pressure_it_used(units, words) -> None:
    given = plan_input_from({"volume_l": "14.5", "temperature": "-10"}, UnitChoice.BAR)
    plan = plan_text(given, plan_vent(given), say=lambda one: said_in(one, units))
    assert words in plan.partition("air pressure here")[2]
