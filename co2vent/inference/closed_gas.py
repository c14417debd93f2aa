"""Gas shut in a section: how its pressure follows the temperature, as a real gas.

p2 = Z2 T2 / (Z1 T1) p1 at constant mass and volume, absolute pressure and kelvin.
"""

from typing import Final

import numpy as np
from numpy.typing import NDArray

from co2vent.co2.kernels import CRITICAL_T, equilibrium_pressure_pa, vapor_density_kg_m3
from co2vent.errors import OutOfRangeError
from co2vent.readings.reading import Gas

Floats = NDArray[np.float64]

GAS_CONSTANT: Final = 8.314462618  # J/(mol K), SI 2019, exact to the digits given
NITROGEN_KG_PER_MOL: Final = 28.0134e-3  # CIAAW 2007
CO2_KG_PER_MOL: Final = 44.0095e-3
CO2_RANGE_K: Final = (216.6, 333.15)
CO2_MOST_PA: Final = 70e5  # above lies the critical region, where a small error is a large one
#: CO2 counts as dry vapour up to this share of its saturation pressure: metal 3 to 4 K colder than
#: the clamp then stays dry. Liquid would hold the pressure up and hide a leak. Program's choice.
DRY_SHARE: Final = 0.9
NITROGEN_RANGE_PA: Final = (0.0, 160e5)
NITROGEN_RANGE_K: Final = (230.0, 330.0)

# Z - 1 = sum of c (p / 10 MPa)^i (300 K / T)^j, fitted here to the reference equation of Span,
# Lemmon, Jacobsen, Wagner and Yokozeki (2000), J. Phys. Chem. Ref. Data 29, 1361; within 0.07 %
# of it from 228 to 333 K up to 165 bar.
_NITROGEN: Final = (
    (1, 0, 0.03733319),
    (1, 1, 0.04029169),
    (1, 3, -0.09651743),
    (2, 0, -0.0041519),
    (2, 2, 0.02949331),
    (2, 4, -0.00092333),
    (3, 2, -0.00379099),
    (3, 5, 0.00352383),
)


def nitrogen_compressibility(pressure_pa: Floats, temperature_k: Floats) -> Floats:
    """Return Z of nitrogen.

    Raises:
        OutOfRangeError: above 160 bar absolute or outside 230 to 330 K.
    """
    low_k, high_k = NITROGEN_RANGE_K
    if np.any(pressure_pa <= 0.0) or np.any(pressure_pa > NITROGEN_RANGE_PA[1]):
        raise OutOfRangeError("nitrogen: use 0 to 160 bar absolute")
    if np.any(temperature_k < low_k) or np.any(temperature_k > high_k):
        raise OutOfRangeError("nitrogen: use -43 to 56 degC")
    x, u = pressure_pa / 1e7, 300.0 / temperature_k
    result: Floats = 1.0 + sum((c * x**i * u**j for i, j, c in _NITROGEN), np.zeros_like(x * u))
    return result


def gas_density_kg_m3(gas: Gas, pressure_pa: Floats, temperature_k: Floats) -> Floats:
    """Return the density of nitrogen or of CO2 vapour [kg/m3].

    Raises:
        OutOfRangeError: outside the range of the gas, or CO2 that would condense.
    """
    if gas is Gas.NITROGEN:
        z = nitrogen_compressibility(pressure_pa, temperature_k)
        density: Floats = pressure_pa * NITROGEN_KG_PER_MOL / (z * GAS_CONSTANT * temperature_k)
        return density
    low_k, high_k = CO2_RANGE_K
    if np.any(temperature_k < low_k) or np.any(temperature_k > high_k):
        raise OutOfRangeError("CO2 vapour: use -57 to 60 degC")
    if np.any(pressure_pa <= 0.0) or np.any(pressure_pa > CO2_MOST_PA):
        raise OutOfRangeError("CO2 vapour: use up to 70 bar absolute")
    pairs = list(zip(pressure_pa.tolist(), temperature_k.tolist(), strict=True))
    density = np.array([vapor_density_kg_m3(pressure, kelvin) for pressure, kelvin in pairs])
    wet = any(
        kelvin < CRITICAL_T and pressure > DRY_SHARE * equilibrium_pressure_pa(kelvin)
        for pressure, kelvin in pairs
    )
    if wet or not np.all(np.isfinite(density)):
        raise OutOfRangeError("CO2 this cold or this dense condenses: test at a lower pressure")
    return density


def pressure_slopes(gas: Gas, pressure_pa: float, temperature_k: float) -> tuple[float, float]:
    """Return how the pressure of a closed gas follows temperature and density.

    First dp/dT at constant density [Pa/K], then dp/drho at constant temperature [Pa m3/kg].
    """
    up, warm = 1e-3 * pressure_pa, 0.1
    pressures = np.array([pressure_pa - up, pressure_pa + up, pressure_pa, pressure_pa])
    kelvin = temperature_k + np.array([0.0, 0.0, -warm, warm])
    less, more, colder, warmer = gas_density_kg_m3(gas, pressures, kelvin).tolist()
    by_pressure = (more - less) / (2.0 * up)
    by_temperature = (warmer - colder) / (2.0 * warm)
    return -by_temperature / by_pressure, 1.0 / by_pressure
