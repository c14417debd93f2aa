"""What can be done from the start page."""

from typing import TYPE_CHECKING

from co2vent.window.start_page import Choice
from co2vent.window.words import translate

if TYPE_CHECKING:
    from co2vent.window.main_window import MainWindow


def start_choices(window: "MainWindow") -> list[Choice]:
    """Return the choices in the order in which people need them."""
    return [
        Choice(
            "connect",
            translate("Start", "Connect a gauge"),
            translate("Start", "Watch a live vent with prompts, and record it."),
            "C",
            window.open_connect,
        ),
        Choice(
            "open_log",
            translate("Start", "Open a recorded vent"),
            translate("Start", "A readings log, from this program or another logger."),
            "O",
            window.choose_log,
        ),
        Choice(
            "play",
            translate("Start", "Try a sample"),
            translate("Start", "Simulated vents that ship with the program, replayed."),
            "S",
            window.open_samples,
        ),
        Choice(
            "plan",
            translate("Start", "Plan a vent"),
            translate("Start", "Charge, stop pressure, dry ice, room and time beforehand."),
            "P",
            window.open_plan,
        ),
        Choice(
            "practise",
            translate("Start", "Practise"),
            translate("Start", "Work the valve of a simulated section; alone or with a class."),
            "E",
            window.open_class,
        ),
        Choice(
            "job",
            translate("Start", "A job"),
            translate("Start", "Step by step from the permit to the signed record."),
            "J",
            window.open_job,
        ),
    ]
