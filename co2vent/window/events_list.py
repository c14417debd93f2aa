"""The events of the vent, newest last; choosing one in a replay goes there."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QShowEvent
from PySide6.QtWidgets import QAbstractItemView, QListWidget, QListWidgetItem, QWidget

from co2vent.guidance.events import Event, EventKind
from co2vent.window import text
from co2vent.window.event_lines import Group, grouped, line_words
from co2vent.window.sentences import manner
from co2vent.window.sizes import Sizes
from co2vent.window.theme import Palette
from co2vent.window.words import translate


def _words(group: Group) -> str:
    return f"{text.duration(group[0].at_s)}  {line_words(group)}"


class EventsList(QListWidget):
    """A list that grows with the events."""

    chosen = Signal(float)  # the time [s] of the event

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._shown: tuple[Event, ...] = ()
        self._groups: list[Group] = []
        self._said_in: tuple[str, ...] = ()
        self._newest = -1  # the row of what happened last: notes may lie ahead of it
        self._scrolled_up = False  # by hand: then it stays there until something new happens
        self.setAccessibleName(translate("Spoken", "events"))
        self.setWordWrap(True)
        self.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.itemClicked.connect(self._choose)
        self.itemActivated.connect(self._choose)
        self.verticalScrollBar().actionTriggered.connect(self._scrolled_by_hand)

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
        Where language or units have changed all are said again.
        """
        said_in = manner()
        if events == self._shown and said_in == self._said_in:
            return
        self._say_again(said_in)
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
            item = QListWidgetItem(_words(group))
            item.setData(256, at_s)
            self.addItem(item)
        self._shown, self._groups = events, groups
        new = [place for place, group in enumerate(groups) if group not in old]
        happened = [
            place for place, group in enumerate(groups) if group[0].kind is not EventKind.NOTE
        ]
        if new or happened:
            self._newest = (new or happened)[-1]
            self._scrolled_up = self._scrolled_up and not new
        self._to_newest()

    def _say_again(self, said_in: tuple[str, ...]) -> None:
        if said_in != self._said_in:
            self._said_in = said_in
            for place, group in enumerate(self._groups):
                self.item(place).setText(_words(group))

    def _to_newest(self) -> None:
        if not self._scrolled_up and 0 <= self._newest < self.count():
            self.scrollToItem(self.item(self._newest))

    def _scrolled_by_hand(self) -> None:
        bar = self.verticalScrollBar()
        self._scrolled_up = bar.sliderPosition() < bar.maximum()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Keys move through the list; where they lead up it stays there."""
        super().keyPressEvent(event)
        bar = self.verticalScrollBar()
        self._scrolled_up = bar.value() < bar.maximum()

    def showEvent(self, event: QShowEvent) -> None:
        """The newest event is in view when the list is."""
        super().showEvent(event)
        self._to_newest()

    def doItemsLayout(self) -> None:
        """Lines wrap anew in another width: then the newest one is elsewhere."""
        super().doItemsLayout()
        self._to_newest()

    def _choose(self, item: QListWidgetItem) -> None:
        self.chosen.emit(float(item.data(256)))
