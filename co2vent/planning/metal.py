"""Rated minimum temperatures of common pipe metals against the cold of the vent."""

from dataclasses import dataclass
from typing import Final

from co2vent.sentence import Sentence

#: The lowest ratings that metals have, from austenitic steel (-196 degC) up: a slip of the finger
#: beyond it would pass every metal, or none. This program's choice.
METAL_RANGE_C: Final = (-200.0, 100.0)


@dataclass(frozen=True, slots=True)
class MetalLimit:
    """A metal and the lowest temperature it is rated for without impact tests [K]."""

    name: str
    minimum_k: float
    source: str


METALS: Final[tuple[MetalLimit, ...]] = (
    MetalLimit(
        Sentence("carbon steel A106 / A53 grade B"),
        244.15,
        "ASME B31.3 table A-1 extracts, -29 degC",
    ),
    MetalLimit(
        Sentence("low-temperature steel A333 grade 6"), 227.15, "ASME B31.3 extracts, -46 degC"
    ),
    MetalLimit(
        Sentence("austenitic stainless 304L / 316L"), 77.15, "ASME B31.3, -196 degC; from memory"
    ),
    MetalLimit(Sentence("copper"), 77.15, "no low limit is met in a vent; from memory"),
)


@dataclass(frozen=True, slots=True)
class MetalCheck:
    """Whether a metal is colder than its rating when the stop pressure is reached."""

    name: str
    minimum_c: float
    below_minimum: bool
    source: str


def metal_checks(
    coldest_k: float, section_minimum_k: float | None = None
) -> tuple[MetalCheck, ...]:
    """Return the checks at `coldest_k`: of the section's own rating if known, else of METALS."""
    metals = METALS
    if section_minimum_k is not None:
        metals = (MetalLimit(Sentence("this section"), section_minimum_k, "as given"),)
    return tuple(
        MetalCheck(m.name, round(m.minimum_k - 273.15, 2), coldest_k < m.minimum_k, m.source)
        for m in metals
    )
