"""A site's job read from TOML, checked whole, refused with the place and what to do.

The text is a site's own and may be damaged or hostile: size, depth, counts and lengths are bounded
before anything is believed. What protects a person can't be edited away: see `procedure_rules`.
"""

import hashlib
import re
from collections.abc import Mapping
from importlib.resources import files
from typing import Any, Final

from co2vent.errors import RefusedInputError
from co2vent.guidance.procedure import (
    QUANTITIES,
    Confirmation,
    Entry,
    Gate,
    Procedure,
    Step,
    StepKind,
)
from co2vent.guidance.procedure_rules import first_fault
from co2vent.readings.bounded_toml import read_toml
from co2vent.sentence import Sentence

FORMAT: Final = "co2vent job steps 1"

# Limits that keep a damaged or hostile file from taking the machine with it; a real job is a tenth.
MAX_BYTES: Final = 256_000
MAX_STEPS: Final = 80
MAX_ITEMS: Final = 40  # of one list in one step
MAX_TEXT: Final = 600  # characters of one text
MAX_DEPTH: Final = 8  # nested brackets
MAX_SECONDS: Final = 7 * 86_400.0


def default_procedure_text() -> str:
    """Return the text of the steps that the program brings along."""
    return (files("co2vent.guidance") / "job_steps.toml").read_text(encoding="utf-8")


def read_procedure(text: str, name: str = "job steps", *, stored: bool = False) -> Procedure:
    """Return the procedure in `text` (TOML); `name` is shown in errors.

    `stored`: the steps of a job that has begun, which must stay readable. Rules that are younger
    than the first jobs don't hold for them.

    Raises:
        RefusedInputError: naming the place and what to do. Nothing is read in part.
    """
    data = text.encode("utf-8", "surrogatepass")
    if len(data) > MAX_BYTES:
        raise RefusedInputError(f"{name}: larger than {MAX_BYTES // 1000} kB; shorten it")
    depth = deepest = 0
    for character in text:
        depth += (character in "[{") - (character in "]}")
        deepest = max(deepest, depth)
    if deepest > MAX_DEPTH:
        raise RefusedInputError(f"{name}: brackets nested deeper than {MAX_DEPTH}; flatten it")
    try:
        table = read_toml(text)
    except ValueError as error:
        raise RefusedInputError(f"{name}: not TOML: {error}; mend it there") from None
    return _Checker(name, text, stored).procedure(table, hashlib.sha256(data).hexdigest())


_ID = re.compile(r"[a-z][a-z0-9_]{0,39}")
_HEADER = re.compile(r"^\s*\[\[\s*step\s*\]\]", re.MULTILINE)
_MISSING: Final = object()


class _Checker:
    """Turns a TOML table into a procedure; knows where it is so that a refusal can say it."""

    def __init__(self, name: str, text: str, stored: bool) -> None:
        self._name = name
        self._stored = stored
        self._lines = [text.count("\n", 0, found.end()) + 1 for found in _HEADER.finditer(text)]
        self._place = ""

    def place(self, number: int, identity: str = "") -> str:
        named = f" ({identity})" if identity else ""
        line = f", line {self._lines[number - 1]}" if number <= len(self._lines) else ""
        return f"step {number}{named}{line}: "

    def fail(self, what: str) -> RefusedInputError:
        return RefusedInputError(f"{self._name}: {self._place}{what}")

    def procedure(self, table: Mapping[str, Any], sha256: str) -> Procedure:
        if table.get("format") != FORMAT:
            raise self.fail(f'the first line must be format = "{FORMAT}"')
        self.only(table, {"format", "title", "step"})
        title = self.text(table, "title")
        raw = self.tables(table, "step", MAX_STEPS)
        if not raw:
            raise self.fail("no [[step]]; add at least one")
        steps = tuple(self.step(number, entry) for number, entry in enumerate(raw, 1))
        self.check_whole(steps)
        return Procedure(title, steps, sha256)

    def step(self, number: int, raw: Mapping[str, Any]) -> Step:
        self._place = self.place(number)
        identity = self.identity(raw)
        place = self._place = self.place(number, identity)
        self.only(
            raw,
            {"id", "title", "kind", "do", "cautions", "goes_wrong", "source", "skippable"}
            | {"confirm", "gate", "entry"},
        )
        try:
            kind = StepKind(self.text(raw, "kind"))
        except ValueError:
            raise self.fail(f"kind must be one of {', '.join(StepKind)}") from None
        step = Step(
            id=identity,
            title=self.text(raw, "title"),
            kind=kind,
            do=self.texts(raw, "do"),
            cautions=self.texts(raw, "cautions"),
            goes_wrong=self.texts(raw, "goes_wrong"),
            source=self.text(raw, "source"),
            skippable=self.flag(raw, "skippable", True),
            confirmations=tuple(self.confirmations(raw, place)),
            gates=tuple(self.gates(raw, place)),
            entries=tuple(self.entries(raw, place)),
        )
        self._place = place
        if not step.do:
            raise self.fail("do is empty; say what to do in this step")
        return step

    def confirmations(self, raw: Mapping[str, Any], place: str) -> list[Confirmation]:
        found = []
        for index, entry in enumerate(self.tables(raw, "confirm", MAX_ITEMS), 1):
            self._place = f"{place}confirm {index}: "
            self.only(entry, {"id", "text"})
            found.append(Confirmation(self.identity(entry), self.text(entry, "text")))
        return found

    def entries(self, raw: Mapping[str, Any], place: str) -> list[Entry]:
        found = []
        for index, entry in enumerate(self.tables(raw, "entry", MAX_ITEMS), 1):
            self._place = f"{place}entry {index}: "
            self.only(entry, {"id", "text", "required"})
            required = self.flag(entry, "required", False)
            found.append(Entry(self.identity(entry), self.text(entry, "text"), required))
        return found

    def gates(self, raw: Mapping[str, Any], place: str) -> list[Gate]:
        found = []
        for index, entry in enumerate(self.tables(raw, "gate", MAX_ITEMS), 1):
            self._place = f"{place}gate {index}: "
            found.append(self.gate(entry))
        return found

    def gate(self, raw: Mapping[str, Any]) -> Gate:
        self.only(
            raw,
            {"id", "quantity", "at_least", "at_most", "unit", "steady", "timeout"}
            | {"on_timeout", "source", "by_hand"},
        )
        quantity = self.text(raw, "quantity")
        if quantity not in QUANTITIES:
            raise self.fail(f"quantity must be one of {', '.join(QUANTITIES)}")
        unit = self.text(raw, "unit")
        if unit not in QUANTITIES[quantity]:
            raise self.fail(f"unit of {quantity} must be one of {', '.join(QUANTITIES[quantity])}")
        at_least = self.number(raw, "at_least") if "at_least" in raw else None
        at_most = self.number(raw, "at_most") if "at_most" in raw else None
        if at_least is None and at_most is None:
            raise self.fail("give at_least or at_most, a number")
        if at_least is not None and at_most is not None and at_least > at_most:
            raise self.fail("at_least is above at_most; no reading can pass")
        steady = self.number(raw, "steady")
        timeout = self.number(raw, "timeout")
        if not 0.0 <= steady < timeout <= MAX_SECONDS:
            raise self.fail("steady and timeout are seconds: 0 <= steady < timeout, a week at most")
        return Gate(
            id=self.identity(raw),
            quantity=quantity,
            at_least=at_least,
            at_most=at_most,
            unit=unit,
            steady_s=steady,
            timeout_s=timeout,
            on_timeout=self.text(raw, "on_timeout"),
            source=self.text(raw, "source"),
            by_hand=self.flag(raw, "by_hand", False),
        )

    def check_whole(self, steps: tuple[Step, ...]) -> None:
        seen: set[str] = set()
        for number, step in enumerate(steps, 1):
            self._place = self.place(number, step.id)
            for identity in (
                step.id,
                *(item.id for item in step.confirmations),
                *(item.id for item in step.gates),
                *(item.id for item in step.entries),
            ):
                if identity in seen:
                    raise self.fail(f"id {identity!r} is used already; rename one")
                seen.add(identity)
        self._place = ""
        fault = first_fault(steps, stored=self._stored)
        if fault is not None:
            if fault.step is not None:
                self._place = self.place(fault.step, steps[fault.step - 1].id)
            raise self.fail(fault.words)

    # -- single values -------------------------------------------------------------------------

    def only(self, raw: Mapping[str, Any], known: set[str]) -> None:
        unknown = sorted(set(raw) - known)
        if unknown:
            raise self.fail(f"unknown key {unknown[0][:40]!r}; known: {', '.join(sorted(known))}")

    def identity(self, raw: Mapping[str, Any]) -> str:
        value = self.text(raw, "id")
        if not _ID.fullmatch(value):
            raise self.fail(f"id {value[:40]!r}: small letters, digits and _, 40 at most")
        return value

    def text(self, raw: Mapping[str, Any], key: str) -> str:
        return self.clean(raw.get(key, _MISSING), key)

    def clean(self, value: object, key: str) -> Sentence:
        if not isinstance(value, str) or not value.strip():
            raise self.fail(f'{key} is missing or not a text; write {key} = "…"')
        if len(value) > MAX_TEXT:
            raise self.fail(f"{key} is longer than {MAX_TEXT} characters; shorten it")
        if not value.isprintable():
            raise self.fail(f"{key} holds a control character or a line break; take it out")
        if "safe to open" in value.lower():
            raise self.fail(f"{key} says 'safe to open'; no step may promise that, reword it")
        return Sentence(value.strip())  # the program's own steps have translations on the screen

    def texts(self, raw: Mapping[str, Any], key: str) -> tuple[str, ...]:
        value = raw.get(key, [])
        if not isinstance(value, list) or len(value) > MAX_ITEMS:
            raise self.fail(f"{key} must be a list of at most {MAX_ITEMS} texts")
        return tuple(self.clean(item, key) for item in value)

    def tables(self, raw: Mapping[str, Any], key: str, most: int) -> list[Mapping[str, Any]]:
        value = raw.get(key, [])
        if not isinstance(value, list) or not all(isinstance(item, dict) for item in value):
            raise self.fail(f"{key} must be written as [[{key}]] blocks")
        if len(value) > most:
            raise self.fail(f"more than {most} {key} blocks; take some out")
        return value

    def number(self, raw: Mapping[str, Any], key: str) -> float:
        value = raw.get(key, _MISSING)
        if isinstance(value, bool) or not isinstance(value, int | float) or abs(value) > 1e9:
            raise self.fail(f"{key} is missing or not a number")
        if value != value:
            raise self.fail(f"{key} is not a number")
        return float(value)

    def flag(self, raw: Mapping[str, Any], key: str, default: bool) -> bool:
        value = raw.get(key, default)
        if not isinstance(value, bool):
            raise self.fail(f"{key} must be true or false")
        return value
