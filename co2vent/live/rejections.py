"""Rows that were none: told in the log at most once a second, so that they do not fill a disk."""

from typing import Final

EVENT_EVERY_S: Final = 1.0


class Rejections:
    """Counts what has not been told yet."""

    def __init__(self) -> None:
        """Nothing was rejected."""
        self._untold = 0
        self._told_s = -EVENT_EVERY_S

    def words(self, reason: str, now_s: float) -> str | None:
        """Return what to write down for this one; `None` where the last was only just told."""
        self._untold += 1
        if now_s - self._told_s < EVENT_EVERY_S:
            return None
        more = f" (and {self._untold - 1} more)" if self._untold > 1 else ""
        self._untold, self._told_s = 0, now_s
        return f"rejected: {reason}{more}"
