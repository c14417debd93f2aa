"""The tube and pipe table: inner volume per metre by standard, size and wall."""

import csv
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

from co2vent.errors import RefusedInputError


@dataclass(frozen=True, slots=True)
class PipeSize:
    """One size of tube or pipe. `confidence`: published, from memory, or common practice."""

    standard: str
    material: str
    size: str
    wall: str  # schedule, temper, or the wall itself
    outer_diameter_m: float
    wall_thickness_m: float
    bore_m: float
    volume_m3_per_m: float
    confidence: str
    source: str
    note: str

    @property
    def key(self) -> str:
        """The name to type: standard, size, wall."""
        return f"{self.standard}, {self.size}, {self.wall}"


@cache
def pipe_sizes() -> tuple[PipeSize, ...]:
    """Return the table, in the order of its standards."""
    text = files("co2vent.planning").joinpath("pipe_volumes.csv").read_text(encoding="utf-8")
    return tuple(
        PipeSize(
            standard=row["standard"],
            material=row["material"],
            size=row["size"],
            wall=row["schedule_or_temper"],
            outer_diameter_m=float(row["od_mm"]) / 1e3,
            wall_thickness_m=float(row["wall_mm"]) / 1e3,
            bore_m=float(row["id_mm"]) / 1e3,
            volume_m3_per_m=float(row["litre_per_m"]) / 1e3,
            confidence=row["confidence"],
            source=row["source"],
            note=row["note"],
        )
        for row in csv.DictReader(text.splitlines())
    )


def find_pipe(words: str) -> PipeSize:
    """Return the one size whose standard, size and wall hold all of `words`, split at commas.

    Raises:
        RefusedInputError: none or several match; the message names some.
    """
    wanted = [word.strip().casefold() for word in words.split(",") if word.strip()]
    exact = [size for size in pipe_sizes() if _fields(size)[:3] == wanted]
    found = exact or [size for size in pipe_sizes() if _matches(size, wanted)]
    if wanted and len(found) == 1:
        return found[0]
    if not wanted or not found:
        raise RefusedInputError(
            f"no pipe size {words!r}: write STANDARD, SIZE, WALL as in "
            "'ASME B36.10M, NPS 2, sch 40'"
        )
    some = "; ".join(size.key for size in found[:4])
    raise RefusedInputError(f"pipe size {words!r} fits {len(found)} sizes, such as {some}")


def _fields(size: PipeSize) -> list[str]:
    return [f.casefold() for f in (size.standard, size.size, size.wall, size.material)]


def _matches(size: PipeSize, wanted: list[str]) -> bool:
    return all(any(word == f or word in f.split() for f in _fields(size)) for word in wanted)
