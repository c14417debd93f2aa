"""Alarms that latch: each stays until it was acknowledged and its cause has gone. Pure.

There are few, each asks for an action, and none can be put aside: silence stops the sound alone and
runs out by itself. A condition must last `ON_DELAY_S` to raise an alarm and be gone for
`OFF_DELAY_S` to count as gone, so that noise at a limit does not chatter.
"""

from dataclasses import dataclass, field
from enum import StrEnum
from typing import Final

from co2vent.guidance.events import Severity
from co2vent.guidance.session import View
from co2vent.inference.outcome import Charge, Instruction
from co2vent.window.words import translate

ON_DELAY_S: Final = 0.3  # two readings of a 10 Hz gauge; the core has its own deadbands
OFF_DELAY_S: Final = 3.0  # a value that hovers at a limit stays one alarm (common practice)
SILENCE_S: Final = 120.0  # the longest silence before the sound returns (common practice)


class AlarmKind(StrEnum):
    """All alarms there are."""

    BELOW_TRIPLE_POINT = "below_triple_point"
    DRY_ICE = "dry_ice"
    NO_DATA = "no_data"
    PRESSURE_HIGH = "pressure_high"
    VENT_LINE = "vent_line"
    GAUGE = "gauge"
    CLOSE_NOW = "close_now"
    NOT_RECORDING = "not_recording"


SEVERITY: Final = {
    AlarmKind.BELOW_TRIPLE_POINT: Severity.DANGER,
    AlarmKind.DRY_ICE: Severity.DANGER,
    AlarmKind.NO_DATA: Severity.DANGER,
    AlarmKind.PRESSURE_HIGH: Severity.DANGER,
    AlarmKind.VENT_LINE: Severity.DANGER,
    AlarmKind.GAUGE: Severity.CAUTION,
    AlarmKind.CLOSE_NOW: Severity.CAUTION,
    AlarmKind.NOT_RECORDING: Severity.CAUTION,
}

_BY_INSTRUCTION: Final = {
    Instruction.HOLD_FOR_DRY_ICE: AlarmKind.DRY_ICE,
    Instruction.NO_DATA: AlarmKind.NO_DATA,
    Instruction.VENT_NOW: AlarmKind.PRESSURE_HIGH,
    Instruction.CHECK_VENT_LINE: AlarmKind.VENT_LINE,
    Instruction.CHECK_GAUGE: AlarmKind.GAUGE,
}


def alarm_words(kind: AlarmKind) -> str:
    """Return the words of an alarm in the language of the screen."""
    return {
        AlarmKind.BELOW_TRIPLE_POINT: translate("Alarm", "Below the triple point"),
        AlarmKind.DRY_ICE: translate("Alarm", "Dry ice"),
        AlarmKind.NO_DATA: translate("Alarm", "No data"),
        AlarmKind.PRESSURE_HIGH: translate("Alarm", "Pressure too high"),
        AlarmKind.VENT_LINE: translate("Alarm", "Vent line"),
        AlarmKind.GAUGE: translate("Alarm", "Gauge"),
        AlarmKind.CLOSE_NOW: translate("Alarm", "Close the vent"),
        AlarmKind.NOT_RECORDING: translate("Alarm", "Not recording"),
    }[kind]


def conditions(view: View | None, *, stale: bool, not_recording: bool = False) -> set[AlarmKind]:
    """Return the alarm conditions that stand at this moment.

    Stale data raise their own alarm and leave the others as they latched: nothing new is concluded
    from old readings.
    """
    found: set[AlarmKind] = set()
    if not_recording:
        found.add(AlarmKind.NOT_RECORDING)
    if view is None or view.latest is None:
        return found
    if stale:
        found.add(AlarmKind.NO_DATA)
        return found
    prompt = view.prompt
    if prompt.instruction in _BY_INSTRUCTION and prompt.severity >= Severity.DO:
        found.add(_BY_INSTRUCTION[prompt.instruction])
    if prompt.instruction is Instruction.CLOSE_AND_HOLD and prompt.severity >= Severity.CAUTION:
        found.add(AlarmKind.CLOSE_NOW)
    running = view.running_hold
    if running is not None and running.charge is Charge.SOLID_PRESENT:
        found.add(AlarmKind.DRY_ICE)
    below = view.margin_pa is not None and view.margin_pa < 0.0
    if below and view.vapor_only_since_s is None:
        found.add(AlarmKind.BELOW_TRIPLE_POINT)
    return found


@dataclass(slots=True)
class Alarm:
    """One latched alarm."""

    kind: AlarmKind
    since_s: float
    present: bool = True
    acknowledged: bool = False
    absent_since_s: float | None = None

    @property
    def severity(self) -> Severity:
        """How it is shown and sounded."""
        return SEVERITY[self.kind]


@dataclass(slots=True)
class AlarmBook:
    """The latched alarms of one vent. Times [s] are of the screen's own monotonic clock."""

    alarms: dict[AlarmKind, Alarm] = field(default_factory=dict)
    silent_until_s: float = 0.0
    _pending_since_s: dict[AlarmKind, float] = field(default_factory=dict)

    def update(self, standing: set[AlarmKind], now_s: float) -> tuple[Alarm, ...]:
        """Take the standing conditions; return the alarms that are new."""
        raised: list[Alarm] = []
        for kind in standing:
            alarm = self.alarms.get(kind)
            if alarm is not None:
                if not alarm.present:
                    alarm.present, alarm.acknowledged = True, False
                    raised.append(alarm)
                alarm.absent_since_s = None
                continue
            first_s = self._pending_since_s.setdefault(kind, now_s)
            if now_s - first_s >= ON_DELAY_S:
                self.alarms[kind] = alarm = Alarm(kind, first_s)
                raised.append(alarm)
        for kind in list(self._pending_since_s):
            if kind not in standing or kind in self.alarms:
                del self._pending_since_s[kind]
        self._note_absent(standing, now_s)
        if raised:
            self.silent_until_s = 0.0  # a new alarm is heard even during a silence
        return tuple(raised)

    def _note_absent(self, standing: set[AlarmKind], now_s: float) -> None:
        for kind, alarm in list(self.alarms.items()):
            if kind in standing:
                continue
            if alarm.absent_since_s is None:
                alarm.absent_since_s = now_s
            if now_s - alarm.absent_since_s >= OFF_DELAY_S:
                alarm.present = False
                if alarm.acknowledged:
                    del self.alarms[kind]

    def acknowledge(self) -> tuple[AlarmKind, ...]:
        """Acknowledge all; those whose cause has gone leave. Return the kinds acknowledged."""
        done = tuple(alarm.kind for alarm in self.alarms.values() if not alarm.acknowledged)
        for kind, alarm in list(self.alarms.items()):
            alarm.acknowledged = True
            if not alarm.present:
                del self.alarms[kind]
        return done

    def silence(self, now_s: float) -> None:
        """Stop the sound for `SILENCE_S`; the display stays."""
        self.silent_until_s = now_s + SILENCE_S

    def silent_left_s(self, now_s: float) -> float:
        """Return the seconds [s] of silence left, 0 when sounding."""
        return max(0.0, self.silent_until_s - now_s)

    @property
    def standing(self) -> tuple[Alarm, ...]:
        """All latched alarms, worst and oldest first."""
        return tuple(sorted(self.alarms.values(), key=lambda a: (-a.severity, a.since_s)))

    @property
    def unacknowledged(self) -> tuple[Alarm, ...]:
        """The alarms nobody has acknowledged."""
        return tuple(alarm for alarm in self.standing if not alarm.acknowledged)
