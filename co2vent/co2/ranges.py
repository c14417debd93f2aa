"""Stated ranges: a value outside one is an error with the range in its message, never a guess."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final, NoReturn

from co2vent.co2 import kernels
from co2vent.errors import OutOfRangeError


@dataclass(frozen=True, slots=True)
class Range:
    """The closed interval in which a property is valid."""

    quantity: str
    low: float
    high: float
    unit: str

    def refuse(self, value: float, what: str) -> NoReturn:
        """Raise `OutOfRangeError` for `value`."""
        raise OutOfRangeError(
            f"{what} needs a {self.quantity} from {self.low:.10g} to {self.high:.10g} {self.unit}, "
            f"not {value:.10g}"
        )

    def require(self, value: float, what: str) -> None:
        """Raise `OutOfRangeError` unless `value` is inside; NaN never is."""
        if not self.low <= value <= self.high:
            self.refuse(value, what)


# Span & Wagner eq. 3.12 rests on data from 154 K; the pressure there is 1.46 kPa
LOWEST_TEMPERATURE_K: Final = 154.0
LOWEST_SUBLIMATION_PA: Final = kernels.sublimation_pressure_pa(LOWEST_TEMPERATURE_K)
# the heat capacity of the liquid grows without bound towards the critical point
HIGHEST_HEAT_CAPACITY_TEMPERATURE_K: Final = 303.15
# fitted and checked to here: 60 bar and 40 degC with a margin
HIGHEST_VAPOR_TEMPERATURE_K: Final = 318.15
HIGHEST_VAPOR_PRESSURE_PA: Final = 6.5e6
HIGHEST_LIQUID_FULL_TEMPERATURE_K: Final = 298.15
HIGHEST_LIQUID_FULL_PRESSURE_PA: Final = 20e6

BOILING: Final = Range("temperature", kernels.TRIPLE_T, kernels.CRITICAL_T, "K")
BOILING_PRESSURE: Final = Range("pressure", kernels.TRIPLE_P, kernels.CRITICAL_P, "Pa")
LIQUID_HEAT_CAPACITY: Final = Range(
    "temperature", kernels.TRIPLE_T, HIGHEST_HEAT_CAPACITY_TEMPERATURE_K, "K"
)
FROST: Final = Range("temperature", LOWEST_TEMPERATURE_K, kernels.TRIPLE_T, "K")
FROST_PRESSURE: Final = Range("pressure", LOWEST_SUBLIMATION_PA, kernels.TRIPLE_P, "Pa")
EQUILIBRIUM: Final = Range("temperature", LOWEST_TEMPERATURE_K, kernels.CRITICAL_T, "K")
EQUILIBRIUM_PRESSURE: Final = Range("pressure", LOWEST_SUBLIMATION_PA, kernels.CRITICAL_P, "Pa")
MELTING: Final = Range("temperature", kernels.TRIPLE_T, 330.0, "K")
VAPOR_TEMPERATURE: Final = Range(
    "temperature", LOWEST_TEMPERATURE_K, HIGHEST_VAPOR_TEMPERATURE_K, "K"
)
VAPOR_PRESSURE: Final = Range("pressure", 0.0, HIGHEST_VAPOR_PRESSURE_PA, "Pa")
LIQUID_FULL: Final = Range("temperature", kernels.TRIPLE_T, HIGHEST_LIQUID_FULL_TEMPERATURE_K, "K")


def checked(kernel: Callable[[float], float], valid: Range, doc: str) -> Callable[[float], float]:
    """Return `kernel` behind its range check, with a docstring that states the range."""
    low, high, name = valid.low, valid.high, kernel.__name__

    def guarded(value: float) -> float:
        if not low <= value <= high:
            valid.refuse(value, name)
        return kernel(value)

    guarded.__name__ = guarded.__qualname__ = name
    guarded.__doc__ = (
        f"{doc} Valid for a {valid.quantity} from {low:.7g} to {high:.7g} {valid.unit}; "
        "outside, and for NaN, OutOfRangeError."
    )
    return guarded
