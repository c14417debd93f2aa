"""Append-only entries, one JSON line each, chained by digest so that a later change shows.

An entry's digest is the SHA-256 of the digest before it, a line feed and the entry's own canonical
JSON. The chain shows changes to whoever kept the last digest (it is printed on the report); it is
no proof against somebody who rewrites the whole file and every print of it.
"""

import hashlib
import json
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

FIRST_DIGEST: Final = hashlib.sha256(b"co2vent job 1").hexdigest()
MAX_LINE: Final = 1_000_000  # bytes; no honest entry comes near


@dataclass(frozen=True, slots=True)
class ChainEntry:
    """One line: its number (from 1), when it was written (ISO 8601, zone included) and what."""

    number: int
    at: str
    kind: str
    body: Mapping[str, Any]
    digest: str


@dataclass(frozen=True, slots=True)
class Chain:
    """The entries that hold together, the bytes of a torn last line, and what is wrong after."""

    entries: tuple[ChainEntry, ...]
    torn: bytes
    problem: str  # empty: every entry matches its digest

    @property
    def digest(self) -> str:
        """The last good entry's digest."""
        return self.entries[-1].digest if self.entries else FIRST_DIGEST


def _canonical(number: int, at: str, kind: str, body: Mapping[str, Any]) -> str:
    return json.dumps(
        {"n": number, "at": at, "kind": kind, "body": body},
        sort_keys=True,
        separators=(",", ":"),
        ensure_ascii=True,
        allow_nan=False,
    )


def next_entry(
    previous_digest: str, number: int, at: str, kind: str, body: Mapping[str, Any]
) -> ChainEntry:
    """Return the entry that follows `previous_digest`."""
    text = f"{previous_digest}\n{_canonical(number, at, kind, body)}"
    return ChainEntry(number, at, kind, body, hashlib.sha256(text.encode()).hexdigest())


def encode(entry: ChainEntry) -> bytes:
    """Return the entry's line, line feed included."""
    plain = json.loads(_canonical(entry.number, entry.at, entry.kind, entry.body))
    line = {**plain, "digest": entry.digest}
    return json.dumps(line, ensure_ascii=True, allow_nan=False).encode() + b"\n"


def decode(data: bytes) -> Chain:
    """Return the chain in `data`; what doesn't hold together ends it and is named. Never raises."""
    entries: list[ChainEntry] = []
    whole, _, torn = data.rpartition(b"\n")
    lines = whole.split(b"\n") if whole else []
    digest = FIRST_DIGEST
    for number, line in enumerate(lines, 1):
        entry = _entry(line)
        if entry is None:
            return Chain(tuple(entries), torn, f"line {number} can't be read")
        if entry.number != number:
            return Chain(tuple(entries), torn, f"line {number} is entry {entry.number}: lines lost")
        expected = next_entry(digest, number, entry.at, entry.kind, entry.body)
        if expected.digest != entry.digest:
            return Chain(tuple(entries), torn, f"entry {number} was changed after it was written")
        entries.append(entry)
        digest = entry.digest
    return Chain(tuple(entries), torn, "")


def _entry(line: bytes) -> ChainEntry | None:
    if len(line) > MAX_LINE:
        return None
    try:
        raw = json.loads(line)
        entry = ChainEntry(raw["n"], raw["at"], raw["kind"], raw["body"], raw["digest"])
        _canonical(entry.number, entry.at, entry.kind, entry.body)
    except (ValueError, KeyError, TypeError, RecursionError):
        return None
    texts = isinstance(entry.at, str) and isinstance(entry.kind, str)
    if not (texts and type(entry.number) is int and isinstance(entry.body, dict)):
        return None
    return entry
