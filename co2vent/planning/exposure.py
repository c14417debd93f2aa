"""Published limits for CO2 in air, by country, each with its source; and what an oxygen meter sees.

Marks: "read" (the figure was read in the named public source), "from memory" (check it against
the document before quoting it).
"""

from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from co2vent.sentence import Sentence


class Country(StrEnum):
    """Whose limits to compare with."""

    US = "us"
    UK = "uk"
    EU = "eu"
    GERMANY = "de"


@dataclass(frozen=True, slots=True)
class ExposureLimit:
    """A limit in ppm by volume, over which time it is averaged, and where it comes from."""

    name: str
    ppm: float
    averaged: str
    source: str


_NIOSH_PAGE: Final = "NIOSH IDLH page for CAS 124-38-9; read"

IDLH: Final = ExposureLimit("IDLH", 40_000.0, Sentence("immediately dangerous"), _NIOSH_PAGE)

LIMITS: Final[dict[Country, tuple[ExposureLimit, ...]]] = {
    Country.US: (
        ExposureLimit("OSHA PEL", 5_000.0, "8 h", _NIOSH_PAGE),
        ExposureLimit("NIOSH REL / ACGIH TLV, short term", 30_000.0, "15 min", _NIOSH_PAGE),
        IDLH,
    ),
    Country.UK: (
        ExposureLimit("WEL, long term", 5_000.0, "8 h", "HSE EH40/2005; read at second hand"),
        ExposureLimit("WEL, short term", 15_000.0, "15 min", "HSE EH40/2005; read at second hand"),
        IDLH,
    ),
    Country.EU: (
        ExposureLimit(
            "indicative limit value", 5_000.0, "8 h", "Directive 2006/15/EC; read at second hand"
        ),
        IDLH,
    ),
    Country.GERMANY: (
        ExposureLimit("AGW", 5_000.0, "8 h", "TRGS 900; from memory"),
        ExposureLimit(
            "AGW, peak factor 2", 10_000.0, "15 min", "TRGS 900, category II (2); from memory"
        ),
        IDLH,
    ),
}

# EN 378-1 practical limit, 0.1 kg/m3 (from memory): about 54 000 ppm, above the IDLH. It limits
# charges; it is not a level to work at, so it is not among the limits.

# What outdoor air holds already; NOAA global mean of the 2020s, from memory.
AMBIENT_AIR_PPM: Final = 420.0
OXYGEN_IN_AIR_PERCENT: Final = 20.95  # dry air; CRC Handbook, from memory
OXYGEN_ALARM_PERCENT: Final = 19.5  # usual low alarm (OSHA 1910.146, from memory)

OXYGEN_METER_WARNING: Final = Sentence(
    "An oxygen meter is not a CO2 alarm: at 40 000 ppm CO2, immediately dangerous, it still shows "
    "about {oxygen} oxygen. Wear a CO2 meter.",
    oxygen="20.1 %",
)


def oxygen_percent(co2_ppm: float) -> float:
    """Return the oxygen left when CO2 displaces air evenly [% by volume]."""
    return OXYGEN_IN_AIR_PERCENT * (1.0 - co2_ppm / 1e6)
