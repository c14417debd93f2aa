"""Two serial devices that are not there, joined by a cable: one for each program."""

import os
import select
import sys
import threading

from co2vent.errors import RefusedInputError

_LOOK_S = 0.1


class PtyBridge:
    """What is written to `far` is read from `near`, and the other way round."""

    def __init__(self) -> None:
        """Make both ends and start the cable between them."""
        if sys.platform == "win32":
            raise RefusedInputError("this system has no pseudo-terminals; use modbus-tcp:0")
        import pty
        import tty

        pairs = [pty.openpty(), pty.openpty()]
        self._open = [descriptor for pair in pairs for descriptor in pair]
        for master, _ in pairs:
            tty.setraw(master)
        (self._far, far), (self._near, near) = pairs
        self.far, self.near = os.ttyname(far), os.ttyname(near)
        self._ended = threading.Event()
        self._thread = threading.Thread(target=self._carry, name="cable", daemon=True)
        self._thread.start()

    def close(self) -> None:
        """Unplug both ends."""
        self._ended.set()
        self._thread.join()
        for descriptor in self._open:
            os.close(descriptor)

    def _carry(self) -> None:
        other = {self._far: self._near, self._near: self._far}
        while not self._ended.is_set():
            for end in select.select(list(other), [], [], _LOOK_S)[0]:
                data = os.read(end, 4096)
                while data and not self._ended.is_set():
                    if select.select([], [other[end]], [], _LOOK_S)[1]:
                        data = data[os.write(other[end], data) :]
