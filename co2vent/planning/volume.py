"""The section's volume, built from pipes and parts, with how far off it may be."""

import tomllib
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from math import isfinite, pi
from typing import Final

from co2vent.errors import RefusedInputError
from co2vent.planning.pipes import PipeSize

# Elbows, tees and valve bodies on a line, not measured one by one; common practice, no source
# (5 to 15 %).
FITTINGS_SHARE: Final = 0.10
# Mill tolerance of the wall (up to -12.5 %, which is 3 to 6 % of the bore's area in thick small
# pipe) and the spread of the fittings' share. Handbook figure and common practice.
PIPE_UNCERTAINTY: Final = 0.10
# A volume from tables is never said to be better than this; measure it by gas expansion instead.
SMALLEST_TABLE_UNCERTAINTY: Final = 0.10


@dataclass(frozen=True, slots=True)
class PipeRun:
    """A straight length of one size."""

    size: PipeSize
    length_m: float


@dataclass(frozen=True, slots=True)
class Part:
    """A shell, strainer, casing or cavity: smallest and largest usual volume [m3]."""

    name: str
    lowest_m3: float
    highest_m3: float
    separate_pocket: bool = False  # the section's gauge can't see it
    note: str = ""
    source: str = "common practice, no source"


@dataclass(frozen=True, slots=True)
class SectionVolume:
    """Volume with a bound on its error, and what in it deserves a second look."""

    volume_m3: float
    uncertainty_m3: float
    outer_area_m2: float  # of the pipes; parts are taken as cylinders of their volume
    notes: tuple[str, ...] = ()


@cache
def parts() -> tuple[Part, ...]:
    """Return the shipped parts; their volumes are common practice, no source."""
    text = files("co2vent.planning").joinpath("parts.toml").read_text(encoding="utf-8")
    return tuple(
        Part(
            name=row["name"],
            lowest_m3=row["litres"][0] / 1e3,
            highest_m3=row["litres"][1] / 1e3,
            separate_pocket=row.get("separate_pocket", False),
            note=row.get("note", ""),
        )
        for row in tomllib.loads(text)["part"]
    )


def find_part(name: str) -> Part:
    """Return the part of that name.

    Raises:
        RefusedInputError: no such part; the message lists them.
    """
    for part in parts():
        if part.name.casefold() == name.strip().casefold():
            return part
    known = "; ".join(part.name for part in parts())
    raise RefusedInputError(f"no part {name!r}: there are {known}")


def cylinder_area_m2(volume_m3: float) -> float:
    """Return the outside of a cylinder eight diameters long: where the shape is not known."""
    diameter = float((volume_m3 / (2.0 * pi)) ** (1.0 / 3.0))
    return pi * diameter * 8.0 * diameter + pi * diameter**2 / 2.0


def section_volume(runs: Sequence[PipeRun], held: Sequence[tuple[Part, int]] = ()) -> SectionVolume:
    """Return the volume of pipe runs (fittings added) and counted parts.

    Raises:
        RefusedInputError: nothing in it, or a length or count that can't be.
    """
    pipes = area = 0.0
    notes: list[str] = []
    for run in runs:
        if not (isfinite(run.length_m) and run.length_m > 0.0):
            raise RefusedInputError(f"a pipe's length must be above 0 m, not {run.length_m:g}")
        pipes += run.size.volume_m3_per_m * run.length_m
        area += pi * run.size.outer_diameter_m * run.length_m
        if run.size.confidence != "published":
            notes.append(f"{run.size.key}: {run.size.source}")
        elif run.size.note:
            notes.append(f"{run.size.key}: {run.size.note}")
    pipes *= 1.0 + FITTINGS_SHARE
    area *= 1.0 + FITTINGS_SHARE
    uncertainty = PIPE_UNCERTAINTY * pipes
    total = pipes
    for part, count in held:
        if count < 1:
            raise RefusedInputError(f"{part.name}: the count must be at least 1, not {count}")
        middle = 0.5 * (part.lowest_m3 + part.highest_m3)
        total += count * middle
        uncertainty += count * 0.5 * (part.highest_m3 - part.lowest_m3)
        area += count * cylinder_area_m2(middle)
        notes.append(f"{part.name}: {part.note or part.source}")
    if total <= 0.0:
        raise RefusedInputError("a section needs at least one pipe or part")
    uncertainty = max(uncertainty, SMALLEST_TABLE_UNCERTAINTY * total)
    return SectionVolume(total, uncertainty, area, tuple(dict.fromkeys(notes)))
