"""A thing that can be done from the keyboard and from the page of further keys."""

from collections.abc import Callable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Command:
    """Drawing, words, keys of the keyboard and action."""

    drawing: str
    words: str
    shortcut: str
    action: Callable[[], object]
