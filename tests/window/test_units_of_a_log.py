"""Units of the screen: those of the log until a person chooses."""

import pickle

from co2vent.inference.wording import (
    change_text,
    difference_text,
    loss_text,
    pressure_text,
    slope_text,
    temperature_text,
)
from co2vent.readings.log_file import LogFile, decode_log
from co2vent.readings.reading import Setup
from co2vent.sentence import Sentence
from co2vent.window.look import Look
from co2vent.window.main_window import MainWindow
from co2vent.window.sentences import spoken
from co2vent.window.text import UnitChoice


def _log(unit: str, pressure: float) -> LogFile:
    rows = [f"elapsed_s,pressure_{unit}", *(f"{at},{pressure}" for at in range(60))]
    return decode_log(("\n".join(rows) + "\n").encode())


def _window(qtbot, look: Look) -> MainWindow:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    window.show()
    return window


def test_a_log_is_shown_in_its_own_units(qtbot, look) -> None:
    window = _window(qtbot, look)
    for unit, choice in (
        ("psig", UnitChoice.PSI),
        ("bar_g", UnitChoice.BAR),
        ("psia", UnitChoice.PSI),
        ("kPa_g", UnitChoice.BAR),
    ):
        page = window.replay(_log(unit, 250.0), "vent.csv")
        assert look.units is choice
        assert page.panel.units is choice
        window.go_to_start()
    look.save()
    assert "units" not in look.kept  # nobody chose them
    assert not Look.load(look.path).units_chosen


def test_a_choice_of_a_person_stays(qtbot, look) -> None:
    window = _window(qtbot, look)
    window.next_units()
    window.next_units()
    chosen = look.units
    assert chosen is UnitChoice.BAR_AND_PSI
    window.replay(_log("psig", 250.0), "vent.csv")
    assert look.units is chosen
    window.go_to_start()
    again = Look.load(look.path)
    assert again.units is chosen
    again.follow("psig")
    assert again.units is chosen


def test_a_choice_back_to_the_first_units_stays_too(look) -> None:
    for _ in UnitChoice:
        look.next_units()
    assert look.units is UnitChoice.BAR
    look.follow("psig")
    assert look.units is UnitChoice.BAR


def test_a_live_vent_behind_keeps_its_units(qtbot, look, monkeypatch) -> None:
    window = _window(qtbot, look)
    monkeypatch.setattr(window, "live_page", lambda: window.start_page)
    window.replay(_log("psig", 250.0), "vent.csv")
    assert look.units is UnitChoice.BAR
    window.go_to_start()


def test_reasons_speak_the_units_that_a_person_chose_and_files_those_of_the_log(look) -> None:
    setup = Setup(pressure_unit="bar_g")
    reason = Sentence(
        "{pressure}, {slope}, {size}, {line}",
        pressure=pressure_text(5.1795e5, setup),
        slope=slope_text(100.0, setup),
        size=difference_text(1e5, setup),
        line=temperature_text(216.592, setup),
    )
    test = Sentence("{a}, {b}", a=change_text(6894.757, setup), b=loss_text(1.0, setup))
    # 1 psi = 6894.757 Pa (NIST SP 811); the triple point at sea level is 60.4 psig, -69.8 degF
    assert spoken(reason) == "4.17 bar g, 60 mbar/min, 1.00 bar, −57 °C"
    assert spoken(test) == "+69 mbar, 36 mbar/h"
    while look.units is not UnitChoice.PSI:
        look.next_units()
    assert spoken(reason) == "60.4 psig, 0.87 psi/min, 14.5 psi, −70 °F"
    assert spoken(test) == "+1.00 psi, 0.52 psi/h"
    assert reason == "4.17 bar g, 60 mbar/min, 1.00 bar, -57 degC"
    assert pickle.loads(pickle.dumps(reason)).values["size"].si == 1e5
