"""What can happen in a job: the items that its file keeps and that `advance_job` takes.

Times are seconds of the job, counted by whoever runs it. Names and texts are a person's own words.
"""

import dataclasses
import math
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any, Final

from co2vent.errors import RefusedInputError

MAX_NOTE: Final = 2000  # characters of anything that a person types


@dataclass(frozen=True, slots=True)
class Confirm:
    """`by` says yes to the confirmation `id`."""

    at_s: float
    id: str
    by: str


@dataclass(frozen=True, slots=True)
class Withdraw:
    """`by` takes the confirmation `id` back."""

    at_s: float
    id: str
    by: str
    reason: str


@dataclass(frozen=True, slots=True)
class WriteDown:
    """`by` fills the entry `id` of a step. A second value amends the first; both are kept."""

    at_s: float
    id: str
    value: str
    by: str


@dataclass(frozen=True, slots=True)
class Isolate:
    """`by` has put the valve `valve` in `position`, with lock and tag as named."""

    at_s: float
    valve: str
    position: str  # "shut" or "open"
    lock: str
    tag: str
    by: str


@dataclass(frozen=True, slots=True)
class Typed:
    """`by` read the value of the gate `id` off an instrument. `value` is in the gate's unit."""

    at_s: float
    id: str
    value: float
    by: str


@dataclass(frozen=True, slots=True)
class GateMet:
    """The readings met the gate `id`; `value` is in the gate's unit."""

    at_s: float
    id: str
    value: float


@dataclass(frozen=True, slots=True)
class GateLost:
    """A gate that was met is not any more."""

    at_s: float
    id: str
    reason: str


@dataclass(frozen=True, slots=True)
class GateTimedOut:
    """The gate `id` was not met within its time. It stays open: time passes no gate."""

    at_s: float
    id: str


@dataclass(frozen=True, slots=True)
class Done:
    """`by` says that the step is done; refused while something is missing."""

    at_s: float
    by: str


@dataclass(frozen=True, slots=True)
class Skip:
    """`by` leaves the step out for `reason`."""

    at_s: float
    reason: str
    by: str


@dataclass(frozen=True, slots=True)
class GoBack:
    """`by` returns to the earlier step `id`; what follows it must be done again."""

    at_s: float
    id: str
    reason: str
    by: str


@dataclass(frozen=True, slots=True)
class Note:
    """Anything that `by` wants on the record."""

    at_s: float
    text: str
    by: str


@dataclass(frozen=True, slots=True)
class TestResult:
    """A standing-pressure (`standing`) or vacuum-rise (`vacuum`) test as it was judged."""

    __test__ = False  # not a test case, whatever its name says to a test collector

    at_s: float
    test: str
    verdict: str
    reason: str
    by: str
    log: str = ""
    numbers: Mapping[str, float | str | None] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class LogAdded:
    """Readings that belong to the job: file name in its folder, digest, rows, simulated or not."""

    at_s: float
    name: str
    sha256: str
    readings: int
    simulated: bool


@dataclass(frozen=True, slots=True)
class SimulatedSeen:
    """Simulated readings were shown to the job's gates: it is practice from here on."""

    at_s: float


@dataclass(frozen=True, slots=True)
class Reopened:
    """The job was opened again after a stop: gates of the running step must be read anew."""

    at_s: float
    by: str


JobItem = (
    Confirm
    | Withdraw
    | WriteDown
    | Isolate
    | Typed
    | GateMet
    | GateLost
    | GateTimedOut
    | Done
    | Skip
    | GoBack
    | Note
    | TestResult
    | LogAdded
    | SimulatedSeen
    | Reopened
)

ITEM_NAMES: Final[dict[str, type[JobItem]]] = {
    "confirm": Confirm,
    "withdraw": Withdraw,
    "write_down": WriteDown,
    "isolate": Isolate,
    "typed": Typed,
    "gate_met": GateMet,
    "gate_lost": GateLost,
    "gate_timed_out": GateTimedOut,
    "done": Done,
    "skip": Skip,
    "go_back": GoBack,
    "note": Note,
    "test_result": TestResult,
    "log_added": LogAdded,
    "simulated_seen": SimulatedSeen,
    "reopened": Reopened,
}
_NAME_OF: Final = {kind: name for name, kind in ITEM_NAMES.items()}


def item_to_plain(item: JobItem) -> tuple[str, dict[str, Any]]:
    """Return the item's kind and its fields as plain values, for a file."""
    plain = {entry.name: getattr(item, entry.name) for entry in dataclasses.fields(item)}
    if isinstance(item, TestResult):
        plain["numbers"] = dict(item.numbers)
    return _NAME_OF[type(item)], plain


def item_from_plain(kind: str, plain: Mapping[str, Any]) -> JobItem:
    """Return the item of `kind`.

    Raises:
        RefusedInputError: an unknown kind, a missing field or a value of another type.
    """
    if kind not in ITEM_NAMES:
        raise RefusedInputError(f"job item {kind[:40]!r} is not known to this version")
    item_type = ITEM_NAMES[kind]
    try:
        item = item_type(**plain)
    except TypeError:
        raise RefusedInputError(f"job item {kind!r} has missing or unknown fields") from None
    for entry in dataclasses.fields(item):
        if not _fits(entry.name, getattr(item, entry.name)):
            raise RefusedInputError(f"job item {kind!r}: {entry.name} has a wrong value")
    return item


def _fits(name: str, value: object) -> bool:
    if name in ("at_s", "value") and not isinstance(value, str):
        return (
            isinstance(value, int | float)
            and not isinstance(value, bool)
            and (math.isfinite(value))
        )
    if name == "readings":
        return isinstance(value, int)
    if name == "simulated":
        return isinstance(value, bool)
    if name == "numbers":
        return isinstance(value, Mapping) and all(
            isinstance(key, str) and (entry is None or isinstance(entry, int | float | str))
            for key, entry in value.items()
        )
    return isinstance(value, str) and name != "at_s"
