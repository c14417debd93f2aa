"""How the source and the recording stand, for a screen or a terminal."""

from dataclasses import dataclass
from enum import StrEnum

from co2vent.store.recorder import RecorderState


class SourceState(StrEnum):
    """What the source is doing."""

    OPENING = "opening"
    WAITING = "waiting"  # open; no reading has come yet
    LIVE = "live"
    LATE = "late"  # readings come, but seconds after they were taken
    LOST = "lost"
    UNREADABLE = "unreadable"
    ENDED = "ended"
    REFUSED = "refused"  # what it sends has no certain meaning
    FAILED = "failed"  # a fault of this program


@dataclass(frozen=True, slots=True, kw_only=True)
class Status:
    """Published whole, by one assignment."""

    source: SourceState
    label: str
    detail: str = ""
    rejected: int = 0
    last_rejection: str = ""
    recorder: RecorderState | None = None

    @property
    def not_recording(self) -> str:
        """Why nothing is being recorded though it should be; empty while all is well."""
        if self.recorder is None or self.recorder.recording:
            return ""
        return f"NOT RECORDING: {self.recorder.reason}"

    @property
    def disk_nearly_full(self) -> str:
        """How little room is left for the recording; empty while there is enough."""
        if self.recorder is None or not self.recorder.space_low:
            return ""
        return f"disk nearly full: {(self.recorder.bytes_free or 0) / 1e6:.0f} MB left"


@dataclass(frozen=True, slots=True)
class ValveSaid:
    """The person says that the vent valve is open or closed."""

    open: bool


@dataclass(frozen=True, slots=True)
class NoteSaid:
    """The person writes something down."""

    text: str


Command = ValveSaid | NoteSaid
