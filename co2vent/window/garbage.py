"""Garbage of reference cycles is collected in the window's thread alone.

Python collects it in whichever thread allocates next. A reader or replay thread that so ends a
widget's last signal connection holds a lock of Qt and waits for the interpreter, while the window's
thread holds the interpreter and waits for that lock: the screen stood still for ever (seen once in
some 10,000 tests that make pictures beside a replay).
"""

import gc
from typing import Final

from PySide6.QtCore import QObject, QTimer

EVERY_MS: Final = 100
# Python's own rule: everything is looked through only when a quarter more has grown old since; it
# takes 20 to 100 ms with the pictures loaded
GROWN: Final = 1.25


class GarbageTimer(QTimer):
    """Does what the automatic collection would do, at its own thresholds, in this thread."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._old = 0  # objects that the last full collection left
        self._look_again = 0  # at this count of the oldest generation
        self.setInterval(EVERY_MS)
        self.timeout.connect(self.collect)

    def start_collecting(self) -> None:
        """Take the collection over from the threads."""
        gc.disable()
        self.start()

    def collect(self) -> None:
        """Collect the oldest generation that is due; a young one takes well under a millisecond."""
        young, middle, old = (
            count > limit for count, limit in zip(gc.get_count(), gc.get_threshold(), strict=True)
        )
        if old and self._has_grown():
            gc.collect(2)
            self._old = len(gc.get_objects(generation=2))
            self._look_again = 0
        elif middle:
            gc.collect(1)
        elif young:
            gc.collect(0)

    def _has_grown(self) -> bool:
        count, limit = gc.get_count()[2], gc.get_threshold()[2]
        if count <= self._look_again:
            return False
        self._look_again = count + limit
        return len(gc.get_objects(generation=2)) > GROWN * self._old
