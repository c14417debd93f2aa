"""A clamp that jumps up, or warms as no metal does, hangs in the air or was moved; one may freeze.

What it reads then gives a hold no power. Metal that was cold and is warm a minute later has not
boiled anything off; nor is a reading believed for some time after that, and not while it stands at
the ambient's.
"""

from co2vent.readings.reading import Reading

JUMP_K = 8.0  # more than noise and a clamp pressed on anew
# Steel of 4 mm in air 60 K warmer gains 0.04 K/s, a blower on a pipe a few tenths; a clamp that has
# come off warms with its own lag of 10 to 120 s, over 60 K (judgement)
WARMS_K_PER_S = 0.2
DOUBT_S = 900.0  # metal that really is warm shows by then that it stays so
AMBIENT_K = 3.0
# Metal cools in every vent: a value that never changes is a sensor's last one, sent again. One that
# has changed before is taken for that after a run this long that is so many times its longest
# (judgement; the runs of metal that comes to rest grow little by little)
FROZEN_S = 120.0
FROZEN_RUNS = 8.0
FROZEN_CHANGES = 10


class ClampWatch:
    """Follows the clamp at the lowest point. Feed every reading, in order of time.

    What it gains over `WARMS_K_PER_S` is added up, and is taken off again when it gains less: a lag
    or a silence makes a clamp that came off no slower than metal can be.
    """

    __slots__ = (
        "_at_s",
        "_changes",
        "_excess_k",
        "_jumped_s",
        "_line_k",
        "_longest_s",
        "_same_since_s",
        "doubted",
        "frozen",
    )

    def __init__(self) -> None:
        self._at_s = self._line_k = float("nan")
        self._excess_k = 0.0
        self._jumped_s: float | None = None
        self._same_since_s = 0.0
        self._longest_s = 0.0
        self._changes = 0
        self.doubted = False
        self.frozen = False  # it never changed, or has stopped to

    def see(self, reading: Reading) -> None:
        """Take a reading; one without a clamp is passed over."""
        line_k, at_s = reading.line_temperature_k, reading.at_s
        if line_k is None:
            return
        gap_s = at_s - self._at_s
        if gap_s < 0.0:
            gap_s = 0.0  # the clock ran back: how much time passed is not known
        gained_k = line_k - self._line_k - WARMS_K_PER_S * gap_s
        excess_k = self._excess_k + gained_k
        if excess_k > JUMP_K:
            self._jumped_s, self._excess_k = at_s, 0.0
        elif excess_k == excess_k:  # not NaN: it is not the first
            self._excess_k = excess_k if excess_k > 0.0 else 0.0
        self._see_change(line_k, at_s)
        self._at_s, self._line_k = at_s, line_k
        self.doubted = False
        if self._jumped_s is not None:
            ambient_k = reading.ambient_temperature_k
            in_air = ambient_k is not None and abs(line_k - ambient_k) < AMBIENT_K
            self.doubted = in_air or not at_s - self._jumped_s > DOUBT_S

    def _see_change(self, line_k: float, at_s: float) -> None:
        if self._line_k != self._line_k:  # the first reading
            self._same_since_s = at_s
        elif line_k != self._line_k or at_s < self._at_s:
            self._longest_s = max(self._longest_s, self._at_s - self._same_since_s)
            self._same_since_s = at_s
            self._changes += 1
        same_s = at_s - self._same_since_s
        stopped = same_s >= FROZEN_S and same_s > FROZEN_RUNS * self._longest_s
        self.frozen = not self._changes or (stopped and self._changes >= FROZEN_CHANGES)
