"""The core of a live vent: what it was given, the newest view of it, and what it has to say."""

import queue
from collections.abc import Callable
from typing import Final

from co2vent.guidance.events import Event, EventKind
from co2vent.guidance.session import Item, Session, View, advance, begin, finish, view
from co2vent.live.log_keeper import LogKeeper
from co2vent.readings.reading import Setup

MOST_FAULTS: Final = 5  # faults of this program after which it gives up


class LiveCore:
    """One session after another on one source: a fault of this program begins a new one."""

    def __init__(self, setup: Setup, log: LogKeeper, present_s: Callable[[], float]) -> None:
        """Begin; `present_s` gives the present on the time line of the readings."""
        self._log = log
        self._present_s = present_s
        self._session: Session = begin(setup)
        self._faults = 0
        self.view: View = view(self._session)
        self.events: queue.SimpleQueue[Event] = queue.SimpleQueue()

    @property
    def gave_up(self) -> bool:
        """Whether there were so many faults that nothing may look as if it went on."""
        return self._faults >= MOST_FAULTS

    def begin(self, setup: Setup) -> None:
        """Begin with what is known now."""
        self._session = begin(setup)

    def advance(self, item: Item) -> None:
        """Take an item; what it leads to is said and recorded."""
        if self.gave_up:
            return
        self._session, events = advance(self._session, item)
        self._publish(events)

    def show(self) -> None:
        """Make the newest state the one that others see: one assignment."""
        self.view = view(self._session)

    def tell(self, text: str, kind: EventKind = EventKind.NOTE, *, keep: bool = True) -> None:
        """Show and record something that the core does not know of."""
        self.events.put(Event(self._present_s(), kind, text))
        if keep:
            self._log.event(text)

    def begin_after_fault(self, error: Exception) -> None:
        """Say so and begin anew: what led to a fault is no evidence."""
        self._faults += 1
        text = f"a fault in this program ({type(error).__name__}): the evidence starts anew"
        self.tell(text, EventKind.GAUGE_FAULT)
        self._session = begin(self._session.setup)
        self.show()

    def finish(self) -> None:
        """Judge the running hold as it stands."""
        self._session, events = finish(self._session)
        self._publish(events)
        self.show()

    def _publish(self, events: list[Event] | tuple[Event, ...]) -> None:
        for event in events:
            self.events.put(event)
        self._log.events(events)
