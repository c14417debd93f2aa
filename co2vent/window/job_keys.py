"""The keys at the foot of the job page, each with a stroke that works while a field is typed into.

Function keys, because letters belong to the fields of a step.
"""

from collections.abc import Callable, Mapping

from PySide6.QtWidgets import QGridLayout, QWidget

from co2vent.window.keys import Key
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette
from co2vent.window.words import translate


class JobKeys(QGridLayout):
    """The keys in one row or, on a tall screen, in two."""

    def __init__(self, actions: Mapping[str, Callable[[], object]], page: QWidget) -> None:
        super().__init__()
        self.keys = {
            name: Key(drawing, words, shortcut, actions[name], page, listens=name != "done")
            for name, drawing, words, shortcut in (
                ("leave", "back", translate("Job", "Leave"), "Esc"),
                ("close", "open_log", translate("Job", "Put away"), "F2"),
                ("note", "note", translate("Job", "Note"), "F3"),
                ("back", "previous", translate("Job", "Step back"), "F4"),
                ("skip", "next", translate("Job", "Skip"), "F5"),
                ("report", "export", translate("Job", "Report"), "F6"),
                ("sign", "sign", translate("Job", "Sign"), "F7"),
                ("done", "acknowledge", translate("Job", "Step done"), "Ctrl+↵"),
            )
        }

    def set_look(self, palette: Palette, sizes: Sizes) -> None:
        """Take theme and sizes; in one row the last key, the way on, has two places."""
        columns = 4 if sizes.portrait else len(self.keys) + 1
        for place, (name, key) in enumerate(self.keys.items()):
            span = 2 if name == "done" and not sizes.portrait else 1
            self.addWidget(key, place // columns, place % columns, 1, span)
            self.setColumnStretch(place, int(place < columns))
            key.set_theme(palette)
            key.set_sizes(sizes)
        self.setColumnStretch(len(self.keys), int(not sizes.portrait))
