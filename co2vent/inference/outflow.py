"""How much has left through the vent: an opening that measures itself once only vapour is left.

Nobody knows how far a vent valve stands open. But while nothing but vapour is inside, what leaves
is what the gas loses: volume times the fall of its density. That gives the opening, and with it
what left before at the pressures and in the times that were read, if the hand opened the valve as
far each time and nothing but vapour came out (common practice, no source). So it is an estimate:
what is certain are the bounds of `vented.py`.
"""

from dataclasses import dataclass

from co2vent.errors import OutOfRangeError
from co2vent.inference.bore_volume import (
    LEAST_FALL_PA,
    LONGEST_GAP_S,
    MIDDLE_CP_CV,
    MIDDLE_K,
    vapor_density,
    vapor_flux,
)
from co2vent.inference.vented import HIGHEST_PA

LEAST_GAP_S = 0.45  # at 1 bar a second the flow changes by a tenth in it, and evenly


@dataclass(slots=True)
class _Fall:
    """One vent's fall with nothing but vapour inside."""

    first_pa: float
    last_pa: float
    flux_kg_m2: float = 0.0  # what an ideal opening passed in it


class OutflowWatch:
    """Follows the vents of a record. Feed every reading in order of time."""

    __slots__ = ("_at_s", "_fall", "_fallen_kg_m2", "_fallen_kg_m3", "_flux_kg_m2", "_pa", "_whole")

    def __init__(self) -> None:
        self._whole = True  # no part of a vent was missed
        self._flux_kg_m2 = 0.0  # what an ideal opening would have passed in all vents
        self._fallen_kg_m3 = 0.0  # density lost in vents of vapour alone ...
        self._fallen_kg_m2 = 0.0  # ... and what an ideal opening would have passed in them
        self._fall: _Fall | None = None
        self._at_s = self._pa = float("nan")

    def shut(self) -> None:
        """The vent is not open, or the valve just moved."""
        if self._fall is not None:
            self._end_fall(self._fall)
        self._at_s = self._pa = float("nan")

    def missed(self) -> None:
        """Readings stopped while the vent was open: how much left meanwhile is not known."""
        self._whole = False
        self.shut()

    def see(
        self,
        at_s: float,
        pressure_pa: float,
        ambient_pa: float,
        *,
        vapor_only: bool,
        last: bool = False,
    ) -> None:
        """Take one reading with the vent open. SI, absolute.

        A fall is straight enough over `LEAST_GAP_S`; of readings that come faster only some count,
        and the `last`.
        """
        gap_s, middle_pa = at_s - self._at_s, 0.5 * (pressure_pa + self._pa)
        if gap_s < LEAST_GAP_S and not last and vapor_only is (self._fall is not None):
            return
        self._at_s, self._pa = at_s, pressure_pa
        if self._fall is not None and not vapor_only:
            self._end_fall(self._fall)
        if vapor_only and self._fall is None:
            self._fall = _Fall(pressure_pa, pressure_pa)
        if gap_s != gap_s:
            return
        if gap_s > LONGEST_GAP_S or middle_pa > HIGHEST_PA:
            self.missed()
            return
        # beside liquid vapour is saturated
        passed = gap_s * vapor_flux(middle_pa, MIDDLE_K if vapor_only else 0.0, ambient_pa)
        self._flux_kg_m2 += passed
        if self._fall is not None:
            self._fall.last_pa = pressure_pa
            self._fall.flux_kg_m2 += passed

    def estimate_kg(self, volume_m3: float) -> float | None:
        """Return about how much has left a section of this volume; `None` where nothing tells.

        Needs a fall of 0.5 bar or more with only vapour inside, and readings through every vent.
        """
        if not self._whole:
            return None
        fallen_kg_m3, flux_kg_m2 = self._fallen_kg_m3, self._fallen_kg_m2
        if self._fall is not None:
            density, flux = _lost(self._fall)
            fallen_kg_m3, flux_kg_m2 = fallen_kg_m3 + density, flux_kg_m2 + flux
        if flux_kg_m2 <= 0.0:
            return None
        return volume_m3 * fallen_kg_m3 / flux_kg_m2 * self._flux_kg_m2

    def _end_fall(self, fall: _Fall) -> None:
        density, flux = _lost(fall)
        self._fallen_kg_m3 += density
        self._fallen_kg_m2 += flux
        self._fall = None


def _lost(fall: _Fall) -> tuple[float, float]:
    """Return the density that the gas lost and what an ideal opening passed; zeros if too short."""
    if fall.first_pa - fall.last_pa < LEAST_FALL_PA:
        return 0.0, 0.0
    try:
        lost = vapor_density(fall.first_pa, MIDDLE_K) - vapor_density(fall.last_pa, MIDDLE_K)
    except OutOfRangeError:
        return 0.0, 0.0
    return lost / MIDDLE_CP_CV, fall.flux_kg_m2
