"""A gauge set on a bad day: the rows of a simulated vent through a wire that fails at random."""

import random
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Final

from co2vent.errors import SourceUnavailableError
from co2vent.wire.source import ReadOnlySource, lost

HEADER_EVERY_S: Final = 5.0
# Rows after a spoilt one that may be withheld: one joined to it, and three that restore trust.
DOUBTFUL_LINES: Final = 4
LONGEST_STEP_S: Final = 0.25  # the wire is looked at this often while nothing comes


@dataclass(slots=True)
class World:
    """Time, wound by whoever waits; the wall clock can be set and the machine can sleep."""

    now_s: float = 0.0
    wall_ahead_s: float = 0.0

    def steady(self) -> float:
        """Return the clock that never steps."""
        return self.now_s

    def wall(self) -> float:
        """Return the wall clock."""
        return 1.7e9 + self.now_s + self.wall_ahead_s

    def sleep(self, seconds: float) -> None:
        """Wait."""
        self.now_s += seconds


@dataclass(frozen=True, slots=True)
class Fault:
    """What goes wrong, from when, for how long."""

    kind: str
    from_s: float
    until_s: float

    def now(self, at_s: float) -> bool:
        """Return whether it is so at `at_s`."""
        return self.from_s <= at_s < self.until_s


@dataclass(frozen=True, slots=True)
class WireRow:
    """What the gauge set shows at a moment; `rest` are the cells behind the pressure."""

    due_s: float
    pressure: str
    rest: str


@dataclass(slots=True)
class Sent:
    """What went out, for the account afterwards."""

    pressures: set[str] = field(default_factory=set)  # whole, as text
    clean: int = 0  # rows that must have been accepted
    last_fresh_s: float = 0.0  # when the last row went out that anyone could take for new


class FaultyWire(ReadOnlySource):
    """Sends rows when they are due in `world`, spoilt by `faults`."""

    joins_midway = True
    stamped_on_arrival = True
    label = "faulty wire"

    def __init__(
        self,
        world: World,
        preamble: str,
        rows: Sequence[WireRow],
        faults: Sequence[Fault],
        rng: random.Random,
        *,
        timed: bool,
    ) -> None:
        """Send `rows` under `preamble`; `timed`: with a time column in front."""
        self.sent = Sent()
        self.ended = False
        self._world = world
        self._preamble = preamble
        self._rows = rows
        self._faults = faults
        self._rng = rng
        self._timed = timed
        self._next = 0
        self._header_due_s = 0.0
        self._doubtful = DOUBTFUL_LINES
        self._known = False  # the header has gone out whole
        self._last_line = ""
        self._last_whole = b""
        self._unended = False  # the line before lacks its end, and little else
        self._frozen: str | None = None
        self._kept: list[WireRow] = []
        self._jumped: set[Fault] = set()

    def open(self) -> None:
        """Plug in, where there is a plug."""
        if self._is("unplug"):
            raise SourceUnavailableError("not plugged in")
        self._skip()
        self._header_due_s = self._world.now_s
        self._doubtful = DOUBTFUL_LINES

    def close(self) -> None:
        """Unplug."""

    def read(self, timeout_s: float) -> bytes:
        """Wind time to the next row, at most a step; return what comes out of the wire."""
        world = self._world
        due_s = self._rows[self._next].due_s if self._next < len(self._rows) else float("inf")
        world.now_s = max(world.now_s, min(due_s, world.now_s + LONGEST_STEP_S))
        self._set_clock()
        if self._is("unplug"):
            self._skip()
            raise lost(self.label, "unplugged")
        out = b""
        if world.now_s >= self._header_due_s and not self._is("silence"):
            self._header_due_s = world.now_s + HEADER_EVERY_S
            out += self._spoil(self._preamble.encode(), is_header=True)
        while self._next < len(self._rows) and self._rows[self._next].due_s <= world.now_s:
            row = self._rows[self._next]
            self._next += 1
            out += self._send(row)
        if self._kept and not self._is("lag"):
            kept, self._kept = self._kept, []
            out = b"".join(map(self._send, kept)) + out
        self.ended = self._next >= len(self._rows)
        return out

    def _send(self, row: WireRow) -> bytes:
        if self._is("silence"):
            return b""
        if self._is("lag"):
            self._kept.append(row)
            return b""
        if self._is("stuck") and self._last_line:
            return self._spoil(self._last_line.encode())
        pressure = row.pressure
        if self._is("freeze"):
            self._frozen = pressure = self._frozen or pressure
        else:
            self._frozen = None
        jump = self._active("jump")
        if jump is not None and jump not in self._jumped:
            self._jumped.add(jump)
            pressure = f"{float(pressure) + 20.0:.3f}"
        over = self._is("over range")
        if over:
            pressure = "OL"
        else:
            self.sent.pressures.add(pressure)
        cells = f"{pressure}{row.rest}"
        if self._timed:
            cells = f"{row.due_s + self._source_clock_s(row.due_s):.1f},{cells}"
        line = f"{cells}\n"
        self._last_line = line
        return self._spoil(line.encode(), must_come=not over)

    def _spoil(self, line: bytes, *, is_header: bool = False, must_come: bool = False) -> bytes:
        """Return the line as it comes out of the wire."""
        rng = self._rng
        if self._is("garbage") and rng.random() < 0.7:
            self._doubtful = DOUBTFUL_LINES
            at = rng.randrange(len(line))
            noise = bytes(rng.choice(b"\x00\x01\x07\x80\xc3\xf8\xfe\xff") for _ in range(12))
            return line[:at] + noise + (line[at:] if rng.random() < 0.5 else b"")
        if self._is("cut lines") and self._timed and rng.random() < 0.3 and not is_header:
            self._doubtful = DOUBTFUL_LINES
            # not in the first cell: a time that loses digits is a time all the same
            cut = line[: rng.randrange(line.index(b","), len(line))]
            if cut.count(b",") == line.count(b","):
                self._unended = True
            return cut
        if self._unended and is_header:
            # the metadata line ends it: a row whose last cell is spoilt
            self.sent.last_fresh_s = self._world.now_s
        self._unended = False
        # a row again is no new one where it says so itself; else nobody can tell
        again = line == self._last_whole and self._timed
        if not (is_header or again or b"OL" in line):
            self.sent.last_fresh_s = self._world.now_s
            # one that may have been withheld would be new when it comes again
            self._last_whole = b"" if self._doubtful else line
        doubtful = self._doubtful > 0
        self._doubtful = max(0, self._doubtful - 1)
        if is_header:
            self._known = self._known or not doubtful or line.startswith(b"#")
        elif must_come and not doubtful and self._known:
            self.sent.clean += 1
        return line

    def _skip(self) -> None:
        while self._next < len(self._rows) and self._rows[self._next].due_s < self._world.now_s:
            self._next += 1

    def _set_clock(self) -> None:
        """Set the wall clock, or let the machine sleep, when its moment has come."""
        for kind, ahead_s in (("wall ahead", 3600.0), ("wall back", -3600.0), ("sleep", 600.0)):
            if self._active(kind) is not None:
                self._world.wall_ahead_s = ahead_s

    def _source_clock_s(self, at_s: float) -> float:
        """Return how far the instrument's own clock is off."""
        shift_s = 0.0
        for fault in self._faults:
            if at_s >= fault.from_s:
                shift_s += {"clock back": -120.0, "clock ahead": 900.0}.get(fault.kind, 0.0)
        return shift_s

    def _active(self, kind: str) -> Fault | None:
        at_s = self._world.now_s
        return next((f for f in self._faults if f.kind == kind and f.now(at_s)), None)

    def _is(self, kind: str) -> bool:
        return self._active(kind) is not None
