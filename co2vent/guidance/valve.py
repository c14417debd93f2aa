"""Where the vent valve is when no column says so: found from the pressure alone.

A section that is being vented falls; a closed one does not. A fall slower than about 0.1 bar a
minute is not taken for a vent: it could be a leaking hold, and a hold that falls is never quiet.
"""

from collections import deque
from dataclasses import dataclass
from math import inf

WINDOW_S = 40.0  # long enough for a throttled vent: 8 kPa in it are 0.12 bar a minute
OPEN_FALL_PA = 8_000.0  # least fall within the window that means venting
CLOSED_RISE_PA = 1_500.0  # least rise from the lowest that means closed
STALL_S = 10.0  # no new low for so long means closed; throttling a vent makes shorter bumps
LONGEST_STALL_S = 20.0


@dataclass(frozen=True, slots=True)
class ValveChange:
    """The valve opened or closed; `at_s` is when, which lies some seconds before it was seen."""

    open: bool
    at_s: float


class ValveFinder:
    """Decides from pressures whether the vent is open. Feed `see` in order of time."""

    __slots__ = ("_low_pa", "_low_s", "_rate", "_recent", "is_open")

    def __init__(self) -> None:
        self.is_open = False
        self._recent: deque[tuple[float, float]] = deque()
        self._low_pa = inf
        self._low_s = 0.0
        self._rate = 0.0

    def reset(self) -> None:
        """Forget the recent past (a gap or a broken time base)."""
        self._recent.clear()
        self._low_pa = inf

    def see(
        self, at_s: float, pressure_pa: float, noise_pa: float, step_pa: float, interval_s: float
    ) -> ValveChange | None:
        """Take one reading; return the change it reveals, if any.

        A slow logger (`interval_s`) widens the times, so that a few readings lie in each.
        """
        recent = self._recent
        recent.append((at_s, pressure_pa))
        window_s = max(WINDOW_S, 4.0 * interval_s)
        while at_s - recent[0][0] > window_s:
            recent.popleft()
        if not self.is_open:
            highest_s, highest_pa = max(recent, key=lambda pair: (pair[1], pair[0]))
            fall = max(OPEN_FALL_PA, 1.5 * step_pa, 6.0 * noise_pa)
            if highest_pa - pressure_pa >= fall:
                self.is_open = True
                self._low_pa, self._low_s = pressure_pa, at_s
                self._rate = (highest_pa - pressure_pa) / max(at_s - highest_s, 0.1)
                return ValveChange(True, highest_s)
            return None
        if pressure_pa < self._low_pa:
            span = at_s - recent[0][0]
            if span > 0:
                self._rate = max((recent[0][1] - pressure_pa) / span, 1.0)
            self._low_pa, self._low_s = pressure_pa, at_s
            return None
        rise = max(CLOSED_RISE_PA, 1.2 * step_pa, 5.0 * noise_pa)
        stall = min(max(STALL_S, 2.5 * step_pa / max(self._rate, 1.0)), LONGEST_STALL_S)
        # a bump while boiling sets in is not a closing: the low must also have lasted
        lasted = at_s - self._low_s
        if (
            pressure_pa - self._low_pa >= rise and lasted >= max(STALL_S, 0.9 * interval_s)
        ) or lasted >= max(1.5 * stall, 1.8 * interval_s):
            self.is_open = False
            closed_s = self._low_s
            self._recent = deque(pair for pair in recent if pair[0] >= closed_s)
            return ValveChange(False, closed_s)
        return None
