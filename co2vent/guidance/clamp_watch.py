"""A clamp that jumps up hangs in the air or has a loose contact: metal warms slowly.

What it reads then gives a hold no power. Metal that was cold and is warm one reading later has not
boiled anything off; nor is a reading believed for some time after that, and not while it stands at
the ambient's.
"""

from co2vent.readings.reading import Reading

JUMP_K = 8.0  # more than noise and a clamp pressed on anew
WARMS_K_PER_S = 0.5  # a hot-air blower on a pipe; judgement
DOUBT_S = 900.0  # metal that really is warm shows by then that it stays so
AMBIENT_K = 3.0


class ClampWatch:
    """Follows the clamp at the lowest point. Feed every reading, in order of time."""

    __slots__ = ("_at_s", "_jumped_s", "_line_k", "doubted")

    def __init__(self) -> None:
        self._at_s = self._line_k = float("nan")
        self._jumped_s: float | None = None
        self.doubted = False

    def see(self, reading: Reading) -> None:
        """Take a reading; one without a clamp is passed over."""
        line_k, at_s = reading.line_temperature_k, reading.at_s
        if line_k is None:
            return
        gap_s = at_s - self._at_s
        if gap_s < 0.0:
            gap_s = 0.0  # the clock ran back: how much time passed is not known
        if line_k - self._line_k > JUMP_K + WARMS_K_PER_S * gap_s:
            self._jumped_s = at_s
        self._at_s, self._line_k = at_s, line_k
        self.doubted = False
        if self._jumped_s is not None:
            ambient_k = reading.ambient_temperature_k
            in_air = ambient_k is not None and abs(line_k - ambient_k) < AMBIENT_K
            self.doubted = in_air or not at_s - self._jumped_s > DOUBT_S
