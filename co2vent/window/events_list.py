"""The events of the vent, newest last; choosing one in a replay goes there."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QAbstractItemView, QListWidget, QListWidgetItem, QWidget

from co2vent.guidance.events import Event, EventKind
from co2vent.window import text
from co2vent.window.event_lines import Group, grouped, line_words
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette
from co2vent.window.words import translate


class EventsList(QListWidget):
    """A list that grows with the events."""

    chosen = Signal(float)  # the time [s] of the event

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._shown: tuple[Event, ...] = ()
        self._groups: list[Group] = []
        self.setAccessibleName(translate("Spoken", "events"))
        self.setWordWrap(True)
        self.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.itemClicked.connect(self._choose)
        self.itemActivated.connect(self._choose)

    def set_theme(self, palette: Palette) -> None:
        """Paint in the colours of `palette`."""
        self.setStyleSheet(
            f"QListWidget{{background:{palette.page};color:{palette.ink};border:0}}"
            f"QListWidget::item{{padding:3px;border-bottom:1px solid {palette.hold_shade}}}"
            f"QListWidget::item:selected{{background:{palette.key};color:{palette.key_ink}}}"
        )

    def set_sizes(self, sizes: Sizes) -> None:
        """Take the sizes of the screen."""
        font = self.font()
        font.setPixelSize(sizes.small_px)
        self.setFont(font)

    def show_events(self, events: tuple[Event, ...]) -> None:
        """Show the events so far, the newest one in view.

        After a seek backwards there are fewer; a note comes, changes and goes at its own place.
        """
        if events == self._shown:
            return
        groups, old = grouped(events), set(self._groups)
        known = 0
        for one, other in zip(groups, self._groups, strict=False):
            if one != other:
                break
            known += 1
        while self.count() > known:
            self.takeItem(self.count() - 1)
        for group in groups[known:]:
            at_s = group[0].at_s
            item = QListWidgetItem(f"{text.duration(at_s)}  {line_words(group)}")
            item.setData(256, at_s)
            self.addItem(item)
        self._shown, self._groups = events, groups
        new = [place for place, group in enumerate(groups) if group not in old]
        happened = [
            place for place, group in enumerate(groups) if group[0].kind is not EventKind.NOTE
        ]
        if new or happened:  # notes may lie ahead of the present moment
            self.scrollToItem(self.item((new or happened)[-1]))

    def _choose(self, item: QListWidgetItem) -> None:
        self.chosen.emit(float(item.data(256)))
