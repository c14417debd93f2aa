"""An emulated serial device: a pseudo-terminal. Linux and macOS; elsewhere use TCP."""

import contextlib
import os
import select
import sys
import time
from typing import Final

from co2vent.errors import RefusedInputError
from co2vent.readings.reading import Reading

SEND_TIMEOUT_S: Final = 5.0  # a reader that takes nothing for so long is gone
_POLL_S = 0.05
_LINE_END = "\r\n"  # as instruments send it


class PtyOutlet:
    """A pseudo-terminal; its far end is opened like any serial device."""

    def __init__(self) -> None:
        """Make the pair."""
        if sys.platform == "win32":
            raise RefusedInputError("this system has no pseudo-terminals; use --to tcp:0")
        import pty
        import tty

        self._master, far = pty.openpty()
        tty.setraw(self._master)
        self.device = self.source = os.ttyname(far)
        # closed, so that the near end can tell whether anybody has opened it
        os.close(far)
        self._heard = b""
        os.set_blocking(self._master, False)

    def wait_for_reader(self, timeout_s: float) -> bool:
        """Return whether the far end is open."""
        poll = select.poll()
        poll.register(self._master, select.POLLHUP)
        hung_up = bool(poll.poll(0))
        if hung_up:
            select.select([], [], [], timeout_s)
        return not hung_up

    def put(self, texts: list[str], newest: Reading | None) -> None:
        """Send lines; waits while the queue is full, as long as somebody reads."""
        data = "".join(f"{text}{_LINE_END}" for text in texts).encode()
        give_up_s = time.monotonic() + SEND_TIMEOUT_S
        while data and time.monotonic() < give_up_s:
            try:
                data = data[os.write(self._master, data) :]
            except BlockingIOError:
                if not self.wait_for_reader(0.0):
                    return  # unread and unplugged: gone, as on a real wire
                select.select([], [self._master], [], _POLL_S)
            except OSError:
                return

    def take_commands(self) -> list[str]:
        """Return the lines that the far end wrote."""
        with contextlib.suppress(OSError):
            self._heard += os.read(self._master, 4096)
        *lines, self._heard = self._heard.replace(b"\r", b"\n").split(b"\n")
        self._heard = self._heard[-64:]
        return [line.decode("ascii", "replace").strip().lower() for line in lines if line]

    def drained(self) -> bool:
        """Return whether the far end has read everything."""
        import fcntl
        import struct
        import termios

        if not self.wait_for_reader(0.0):
            return True
        try:
            far = os.open(self.device, os.O_RDONLY | os.O_NOCTTY | os.O_NONBLOCK)
        except OSError:
            return True
        try:
            waiting = fcntl.ioctl(far, termios.FIONREAD, b"\0\0\0\0")
            return bool(struct.unpack("i", waiting)[0] == 0)
        except OSError:
            return True
        finally:
            os.close(far)

    def close(self) -> None:
        """Unplug it."""
        os.close(self._master)
