"""One writer per file. The lock goes with the process, however it ends: no stale lock is left."""

import os
import sys


def lock_exclusively(descriptor: int) -> bool:
    """Take the lock on an open file; return whether it was free. Closing the file gives it back."""
    if sys.platform == "win32":  # pragma: no cover - not run on this system
        import msvcrt

        # a byte far beyond any log: the lock is mandatory there and must not keep readers out
        os.lseek(descriptor, 1 << 40, os.SEEK_SET)
        try:
            msvcrt.locking(descriptor, msvcrt.LK_NBLCK, 1)
        except OSError:
            return False
        finally:
            os.lseek(descriptor, 0, os.SEEK_END)
        return True
    import fcntl

    try:
        fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except BlockingIOError:
        return False
    return True
