"""The events of a vent, in the order in which they were said."""

from collections.abc import Iterable

from co2vent.guidance.events import Event, EventKind


class EventLog:
    """Events of the item at hand (`new`), and all of the record (`every`)."""

    __slots__ = ("every", "new")

    def __init__(self) -> None:
        self.every: list[Event] = []
        self.new: list[Event] = []

    def begin_item(self) -> None:
        """An item comes: what is said from here on belongs to it."""
        if self.new:
            self.new = []

    def say(self, at_s: float, kind: EventKind, text: str) -> None:
        """Something happened at `at_s` of the data."""
        self.new.append(Event(at_s, kind, text))

    def end_item(self) -> tuple[Event, ...]:
        """Keep the item's events; return them."""
        if not self.new:
            return ()
        self.every.extend(self.new)
        return tuple(self.new)


def in_order_of_time(events: Iterable[Event]) -> list[Event]:
    """Return events as they happened: a valve found from the pressure is said some seconds late.

    Where the clock ran backwards a new stretch begins, which stays behind the one before.
    """
    ordered: list[Event] = []
    stretch: list[Event] = []
    for event in events:
        if event.kind is EventKind.TIME_BROKEN:
            ordered += sorted(stretch, key=_when)
            stretch = []
        stretch.append(event)
    return ordered + sorted(stretch, key=_when)


def _when(event: Event) -> float:
    return event.at_s
