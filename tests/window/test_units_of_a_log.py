"""Units of the screen: those of the log until a person chooses."""

from co2vent.readings.log_file import LogFile, decode_log
from co2vent.window.look import Look
from co2vent.window.main_window import MainWindow
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
