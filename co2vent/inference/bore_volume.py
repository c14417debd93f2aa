"""How large the section can be at most, from how fast its vapour leaves through a known bore.

Once only vapour is left, what leaves is what the gas loses: volume = flow / fall of density. The
bore passes no more than a perfect nozzle of its width, so the volume is at most that; how far the
valve stood open is not known, so there is no least.
"""

from math import pi

from co2vent.co2 import kernels, vapor_density_kg_m3
from co2vent.errors import OutOfRangeError
from co2vent.inference.lines import saturated_k
from co2vent.inference.outcome import Bounds
from co2vent.inference.vented import WARMEST_K

LEAST_FALL_PA = 5.0e4  # a shorter fall is mostly gauge error
LONGEST_GAP_S = 5.0  # between two readings; over a longer one the fall is not followed
# gas that cools as it expands loses less density than at one temperature, least of all when warm:
# no vapour from -56 to 40 degC, 1 to 10 bar, loses less than the warmest one at one temperature
# over this (Span-Wagner; a test holds it)
MOST_CP_CV = 1.38
# for the value if the valve stood wide open: a valve's port (common practice, no source) and gas
# half-way between cooling as it expands and following its metal
OPEN_COEFFICIENT = 0.8
MIDDLE_CP_CV = 1.2
MIDDLE_K = 250.0


class VolumeWatch:
    """Follows vents of vapour through a bore. Feed every reading in order of time."""

    __slots__ = ("_at_s", "_first_pa", "_flux_kg_m2", "_last_pa", "_likely_kg_m2", "at_most")

    def __init__(self) -> None:
        self.at_most: Bounds | None = None  # m3; the tightest so far
        self.reset()

    def reset(self) -> None:
        """The valve moved, the readings had a gap, or more than vapour may be inside."""
        self._at_s = self._first_pa = self._last_pa = float("nan")
        self._flux_kg_m2 = self._likely_kg_m2 = 0.0

    def see(self, at_s: float, pressure_pa: float, ambient_pa: float, bore_m: float) -> None:
        """Take one reading with the vent open and nothing but vapour inside. SI, absolute."""
        gap_s = at_s - self._at_s
        if gap_s > LONGEST_GAP_S:
            self.reset()
        if self._first_pa != self._first_pa:
            self._first_pa = pressure_pa
        elif pressure_pa > self._last_pa + LEAST_FALL_PA:
            self.reset()
            return
        else:
            middle_pa = 0.5 * (pressure_pa + self._last_pa)
            # the densest vapour passes a bore best
            self._flux_kg_m2 += gap_s * vapor_flux(middle_pa, saturated_k(middle_pa), ambient_pa)
            self._likely_kg_m2 += gap_s * vapor_flux(middle_pa, MIDDLE_K, ambient_pa)
        self._at_s, self._last_pa = at_s, pressure_pa
        if self._first_pa - pressure_pa >= LEAST_FALL_PA:
            self._judge(bore_m)

    def _judge(self, bore_m: float) -> None:
        area = pi / 4.0 * bore_m * bore_m
        try:
            least = (
                vapor_density(self._first_pa, WARMEST_K) - vapor_density(self._last_pa, WARMEST_K)
            ) / MOST_CP_CV
            likely = (
                vapor_density(self._first_pa, MIDDLE_K) - vapor_density(self._last_pa, MIDDLE_K)
            ) / MIDDLE_CP_CV
        except OutOfRangeError:
            return
        upper = area * self._flux_kg_m2 / least
        if self.at_most is None or self.at_most.upper is None or upper < self.at_most.upper:
            wide_open = OPEN_COEFFICIENT * area * self._likely_kg_m2 / likely
            self.at_most = Bounds(min(wide_open, upper), 0.0, upper)


def vapor_density(pressure_pa: float, gas_k: float) -> float:
    """Return the density [kg/m3] of vapour at `gas_k`, or saturated if that is colder."""
    return vapor_density_kg_m3(pressure_pa, max(gas_k, saturated_k(pressure_pa)))


def vapor_flux(pressure_pa: float, gas_k: float, ambient_pa: float) -> float:
    """Return what an ideal opening passes of such vapour to the air [kg/m2/s]."""
    gas_k = max(gas_k, saturated_k(pressure_pa))
    density = vapor_density_kg_m3(0.999 * pressure_pa, gas_k)
    return kernels.nozzle_flux_kg_s_m2(pressure_pa, density, gas_k, ambient_pa)
