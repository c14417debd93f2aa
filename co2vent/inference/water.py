"""Vapour pressure of water and ice: where the pressure in a wet section stops rising.

Sources: liquid: IAPWS SR1-86(1992), saturation pressure (Wagner and Pruss 1993, J. Phys. Chem.
Ref. Data 22, 783). Ice: Murphy and Koop (2005), Q. J. R. Meteorol. Soc. 131, 1539, eq. 7.
"""

from math import exp, log
from typing import Final

from co2vent.errors import OutOfRangeError

TRIPLE_POINT_K: Final = 273.16
CRITICAL_K: Final = 647.096
CRITICAL_PA: Final = 22.064e6
_LIQUID: Final = (
    (1.0, -7.85951783),
    (1.5, 1.84408259),
    (3.0, -11.7866497),
    (3.5, 22.6807411),
    (4.0, -15.9618719),
    (7.5, 1.80122502),
)


def water_vapour_pressure_pa(temperature_k: float) -> float:
    """Return the pressure of water vapour over ice, or from 273.16 K on over water [Pa].

    Raises:
        OutOfRangeError: below 110 K or above the critical point.
    """
    if not 110.0 <= temperature_k <= CRITICAL_K:
        raise OutOfRangeError("water vapour: use -163 to 374 degC")
    if temperature_k >= TRIPLE_POINT_K:
        tau = 1.0 - temperature_k / CRITICAL_K
        total = sum(factor * tau**power for power, factor in _LIQUID)
        return CRITICAL_PA * exp(CRITICAL_K / temperature_k * total)
    return exp(
        9.550426 - 5723.265 / temperature_k + 3.53068 * log(temperature_k)
        - 0.00728332 * temperature_k
    )  # fmt: skip
