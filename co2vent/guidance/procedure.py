"""What a job's procedure is: steps, confirmations, gates with number, unit and timeout, entries."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from math import isfinite
from typing import Final

from co2vent.readings.rows import MAX_PPM, MAX_PRESSURE_PA, MAX_VACUUM_PA, TEMPERATURE_RANGE_K
from co2vent.sentence import Sentence
from co2vent.units import MICRON_PA, PSI_PA, temperature_to_k

#: Nobody vents before these are confirmed, whatever a site's steps say.
VENTING_CONFIRMATIONS: Final = (
    "co2_meter",
    "second_person",
    "hose_restrained",
    "outlet_clear",
    "protection",
)


class StepKind(StrEnum):
    """What a step is, for the rules that don't depend on a site."""

    PREPARE = "prepare"
    ISOLATE = "isolate"
    CONNECT = "connect"
    VENT = "vent"
    HOLD = "hold"
    BLEEDS = "bleeds"
    OPEN = "open"
    WORK = "work"
    CLOSE = "close"
    STANDING_TEST = "standing_test"
    VACUUM_TEST = "vacuum_test"
    VAPOUR_BREAK = "vapour_break"
    RETURN = "return"


def _times(factor: float) -> Callable[[float], float]:
    return lambda value: value * factor


_GAUGE = {"bar_g": _times(1e5), "psig": _times(PSI_PA), "kPa_g": _times(1e3)}
_DIFFERENCE = {
    "bar": _times(1e5),
    "psi": _times(PSI_PA),
    "kPa": _times(1e3),
    "mbar": _times(100.0),
}
_TEMPERATURE: dict[str, Callable[[float], float]] = {
    "degC": lambda value: temperature_to_k(value, "degC"),
    "degF": lambda value: temperature_to_k(value, "degF"),
    "K": _times(1.0),
}
_COUNT = {"count": _times(1.0)}

#: What a gate may read, and the units it may be written in, as functions to SI.
QUANTITIES: Final[Mapping[str, Mapping[str, Callable[[float], float]]]] = {
    "pressure": _GAUGE,
    "pressure_shut": _GAUGE,
    "pressure_above_triple_point": _DIFFERENCE,
    "pressure_above_stop": _DIFFERENCE,
    "pressure_rise_rate": {
        "bar_per_min": _times(1e5 / 60.0),
        "psi_per_min": _times(PSI_PA / 60.0),
    },
    "line_temperature": _TEMPERATURE,
    "upper_temperature": _TEMPERATURE,
    "ambient_temperature": _TEMPERATURE,
    "metal_above_minimum": {"K": _times(1.0)},
    "line_above_saturation": {"K": _times(1.0)},
    "room_co2": {"ppm": _times(1.0)},
    "zero_offset": _DIFFERENCE,
    "vacuum": {"micron": _times(MICRON_PA), "Pa_a": _times(1.0), "mbar_a": _times(100.0)},
    "running_hold": {"s": _times(1.0), "min": _times(60.0)},
    "vapor_only_holds": _COUNT,
    "dry_ice_cleared": _COUNT,
    "standing_test_tight": _COUNT,
    "vacuum_test_passed": _COUNT,
}

QUANTITY_WORDS: Final = {
    "pressure": Sentence("pressure"),
    "pressure_shut": Sentence("pressure with the vent shut and no metal as cold as dry ice"),
    "pressure_above_triple_point": Sentence("pressure above the triple point"),
    "pressure_above_stop": Sentence("pressure above the stop pressure"),
    "pressure_rise_rate": Sentence("pressure rise"),
    "line_temperature": Sentence("line temperature"),
    "upper_temperature": Sentence("upper temperature"),
    "ambient_temperature": Sentence("ambient temperature"),
    "metal_above_minimum": Sentence("coldest clamp above the metal's minimum"),
    "line_above_saturation": Sentence("lowest clamp above saturation"),
    "room_co2": Sentence("CO2 in the air"),
    "zero_offset": Sentence("gauge open to air off zero by"),
    "vacuum": Sentence("vacuum"),
    "running_hold": Sentence("hold running"),
    "vapor_only_holds": Sentence("latest holds in a row that show vapour only"),
    "dry_ice_cleared": Sentence("latest low hold rules dry ice out"),
    "standing_test_tight": Sentence("standing-pressure test says tight"),
    "vacuum_test_passed": Sentence("vacuum-rise test says tight and dry"),
}
#: What an instrument can show at all (SI, gauge pressures stay gauge); anything else is a slip of
#: the finger or a fault. Pressures, temperatures, vacuum and air as in a readings log.
POSSIBLE: Final[Mapping[str, tuple[float, float]]] = {
    "pressure": (-1.25e5, MAX_PRESSURE_PA),
    "pressure_shut": (-1.25e5, MAX_PRESSURE_PA),
    "pressure_above_triple_point": (-MAX_PRESSURE_PA, MAX_PRESSURE_PA),
    "pressure_above_stop": (-MAX_PRESSURE_PA, MAX_PRESSURE_PA),
    "pressure_rise_rate": (-MAX_PRESSURE_PA, MAX_PRESSURE_PA),
    "line_temperature": TEMPERATURE_RANGE_K,
    "upper_temperature": TEMPERATURE_RANGE_K,
    "ambient_temperature": TEMPERATURE_RANGE_K,
    "metal_above_minimum": (-500.0, 500.0),
    "line_above_saturation": (-500.0, 500.0),
    "room_co2": (0.0, MAX_PPM),
    "zero_offset": (0.0, 2e6),  # its size
    "vacuum": (0.0, MAX_VACUUM_PA),
    "running_hold": (0.0, 7 * 86_400.0),
    "vapor_only_holds": (0.0, 1000.0),
    "dry_ice_cleared": (0.0, 1.0),
    "standing_test_tight": (0.0, 1.0),
    "vacuum_test_passed": (0.0, 1.0),
}
UNIT_WORDS: Final = {
    "bar_g": "bar g",
    "kPa_g": "kPa g",
    "bar_per_min": "bar/min",
    "psi_per_min": "psi/min",
    "degC": "°C",
    "degF": "°F",
    "Pa_a": "Pa",
    "mbar_a": "mbar",
    "count": "",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Gate:
    """A condition that readings decide. Limits are as written (`unit`); `to_si` converts them."""

    id: str
    quantity: str
    at_least: float | None
    at_most: float | None
    unit: str
    steady_s: float
    timeout_s: float
    on_timeout: str
    source: str
    by_hand: bool = False

    def to_si(self, value: float) -> float:
        """Return `value`, written in this gate's unit, in SI (gauge pressures stay gauge)."""
        return QUANTITIES[self.quantity][self.unit](value)

    def from_si(self, value: float) -> float:
        """Return the SI `value` in this gate's unit."""
        low, high = self.to_si(0.0), self.to_si(1.0)
        return (value - low) / (high - low)

    def allows(self, value_si: float) -> bool:
        """Say whether the SI value lies within the limits; a number that isn't one does not."""
        above = self.at_least is None or value_si >= self.to_si(self.at_least)
        below = self.at_most is None or value_si <= self.to_si(self.at_most)
        return above and below and value_si == value_si

    def possible(self, value: float) -> bool:
        """Say whether an instrument can show `value`, written in this gate's unit."""
        least, most = POSSIBLE[self.quantity]
        return isfinite(value) and least <= self.to_si(value) <= most

    @property
    def possible_words(self) -> tuple[str, str]:
        """The least and the most that an instrument can show, in this gate's unit."""
        least, most = (self.from_si(value_si) for value_si in POSSIBLE[self.quantity])
        return f"{least:.7g} {self.unit_words}".strip(), f"{most:.7g} {self.unit_words}".strip()

    @property
    def condition(self) -> str:
        """The condition in words, such as `CO2 in the air at most 5000 ppm, steady for 30 s`."""
        words, limits, steady = QUANTITY_WORDS[self.quantity], self._limits, ""
        if self.steady_s:
            steady = Sentence(", steady for {time}", time=f"{self.steady_s:g} s")
        if self.unit == "count" and self.at_least == 1.0:
            return Sentence("{quantity}{steady}", quantity=words, steady=steady)
        if self.unit == "count":
            return Sentence(
                "{quantity}: {limits}{steady}", quantity=words, limits=limits, steady=steady
            )
        return Sentence(
            "{quantity} {limits} {unit}{steady}",
            quantity=words,
            limits=limits,
            unit=self.unit_words,
            steady=steady,
        )

    @property
    def _limits(self) -> str:
        low = high = ""
        if self.at_least is not None:
            low = Sentence("at least {value}", value=f"{self.at_least:g}")
        if self.at_most is not None:
            high = Sentence("at most {value}", value=f"{self.at_most:g}")
        return Sentence("{low} and {high}", low=low, high=high) if low and high else low or high

    @property
    def unit_words(self) -> str:
        """The unit as people read it; empty for a count."""
        return UNIT_WORDS.get(self.unit, self.unit)


@dataclass(frozen=True, slots=True)
class Confirmation:
    """Something that a person says yes to, with a name and a time."""

    id: str
    text: str


@dataclass(frozen=True, slots=True)
class Entry:
    """Something to write down in a step."""

    id: str
    text: str
    required: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One step of the job: what to do, what can go wrong, and what lets the job go on."""

    id: str
    title: str
    kind: StepKind
    do: tuple[str, ...]
    cautions: tuple[str, ...]
    goes_wrong: tuple[str, ...]
    source: str
    skippable: bool
    confirmations: tuple[Confirmation, ...]
    gates: tuple[Gate, ...]
    entries: tuple[Entry, ...]


@dataclass(frozen=True, slots=True)
class Procedure:
    """A whole job. `sha256` is of the text it was read from, so that a record can name it."""

    title: str
    steps: tuple[Step, ...]
    sha256: str
