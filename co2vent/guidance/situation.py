"""What the rules for a prompt look at, and what a rule says."""

from dataclasses import dataclass

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.guidance.events import Severity
from co2vent.inference.outcome import HoldAssessment, Instruction
from co2vent.inference.wording import pressure_text
from co2vent.readings.reading import Reading, Setup
from co2vent.sentence import Sentence

ZERO_GAUGE_PA = 1.5e4  # near enough to zero to open the bleeds


@dataclass(frozen=True, slots=True, kw_only=True)
class Situation:
    """What the rules look at. SI, absolute."""

    setup: Setup
    latest: Reading | None
    stale: bool
    vent_open: bool | None
    vented: bool
    stop_pa: float
    lead_pa: float  # how far the pressure falls while a hand closes the valve
    rate_pa_per_s: float | None
    high_limit_pa: float | None
    gauge_fault: str | None
    plateau: str | None  # "shelf" or "plug": vent open, no fall
    cleared: bool  # "vapour only" stands
    solid_seen: bool
    low_hold_done: bool
    hold: HoldAssessment | None
    hold_age_s: float | None

    @property
    def gauge_pa(self) -> float:
        """Pressure above ambient [Pa]."""
        return self.latest.pressure_pa - self.setup.ambient_pressure_pa if self.latest else 0.0

    def at(self, pressure_pa: float) -> str:
        """An absolute pressure in words."""
        return pressure_text(pressure_pa, self.setup)

    @property
    def now(self) -> str:
        """The newest pressure in words."""
        return self.at(self.latest.pressure_pa) if self.latest else Sentence("no pressure")

    @property
    def triple(self) -> str:
        """The local triple point in words."""
        return self.at(TRIPLE_PRESSURE_PA)


# instruction, headline, reason; `None`: the rule does not apply
Said = tuple[Instruction, str, str, Severity] | None
