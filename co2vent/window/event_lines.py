"""The lines of the list of events: an event each, but a run of lost rows in one line. Pure.

An instrument out of its range loses row after row, and each lost row lets the hold's evidence start
anew: hundreds of lines would push out of sight what happened before.
"""

from collections.abc import Sequence
from typing import Final

from co2vent.guidance.events import Event, EventKind
from co2vent.sentence import Sentence
from co2vent.window import text
from co2vent.window.sentences import spoken
from co2vent.window.words import translate

Group = tuple[Event, ...]  # the events of one line, in order

_OF_A_RUN: Final = (EventKind.ROW_REJECTED, EventKind.HOLD_VOIDED)


def grouped(events: Sequence[Event]) -> list[Group]:
    """Return the events, those of a run of lost rows together.

    A run begins with a lost row and holds lost rows and what each of them ended; any other event
    ends it. One lost row alone is no run.
    """
    groups: list[Group] = []
    run: list[Event] = []

    def end_run() -> None:
        if len(_lost(run)) > 1:
            groups.append(tuple(run))
        else:
            groups.extend((event,) for event in run)
        run.clear()

    for event in events:
        if event.kind is EventKind.ROW_REJECTED or (run and event.kind in _OF_A_RUN):
            run.append(event)
        else:
            end_run()
            groups.append((event,))
    end_run()
    return groups


def _lost(events: Sequence[Event]) -> list[Event]:
    return [event for event in events if event.kind is EventKind.ROW_REJECTED]


def line_words(group: Group) -> str:
    """Return the words of one line, without its time."""
    lost = _lost(group)
    if len(lost) < 2:
        return _one(group[0])
    numbers = [_value(event, "line") for event in lost]
    if all(number.isdigit() for number in numbers):
        lines = sorted(map(int, numbers))
        words = translate("Events", "{count} rows lost, lines {first} to {last}: {reason}").format(
            count=len(lost), first=lines[0], last=lines[-1], reason=_reason(lost[0])
        )
    else:
        words = translate("Events", "{count} rows lost: {reason}").format(
            count=len(lost), reason=_reason(lost[0])
        )
    if len(lost) < len(group):
        words += translate("Events", "; the evidence of the hold starts anew")
    return words


def _one(event: Event) -> str:
    if event.kind is EventKind.HOLD_VOIDED and _value(event, "number") == "0":
        words = translate("Events", "Before the vent: {why}; the evidence starts anew")
        return words.format(why=spoken(_value(event, "why")))
    return text.event_words(event)


def _value(event: Event, name: str) -> str:
    """Return a value of the event's sentence; empty where it has none of that name."""
    return event.text.values.get(name, "") if isinstance(event.text, Sentence) else ""


def _reason(event: Event) -> str:
    """Return why a row was lost; the whole event where that was not told apart."""
    return spoken(_value(event, "reason")) or text.event_words(event)
