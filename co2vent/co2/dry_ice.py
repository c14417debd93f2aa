"""How much dry ice is left when liquid is vented through the triple point."""

from math import exp
from typing import Final

from co2vent.co2 import kernels, ranges
from co2vent.co2.lines import FUSION_HEAT_J_KG

# At the shelf the part that boils takes its heat from the part that freezes, whatever the rate:
# h_fg / (h_fg + h_fus) = 0.6347 of the liquid becomes dry ice (0.631 to 0.635 over the spread of
# published heats of fusion).
PLATEAU_SOLID_FRACTION: Final = kernels.latent_heat_j_kg(kernels.TRIPLE_T) / (
    kernels.latent_heat_j_kg(kernels.TRIPLE_T) + FUSION_HEAT_J_KG
)
_STEPS: Final = 64


def solid_share_after_cooling(pressure_pa: float) -> float:
    """Return the share of dry ice left when it has cooled from the shelf to `pressure_pa` [Pa].

    It cools itself by subliming: exp(-integral of c dT / h), 0.951 down to 1 atm. Without heat
    from outside; heat only reduces it. Valid from 1.46 kPa to the triple pressure.
    """
    ranges.FROST_PRESSURE.require(pressure_pa, "solid_share_after_cooling")
    low = kernels.sublimation_temperature_k(pressure_pa)
    width = (kernels.TRIPLE_T - low) / _STEPS
    total = 0.0
    for step in range(_STEPS):
        t = low + (step + 0.5) * width
        total += kernels.solid_heat_capacity_j_kg_k(t) / kernels.sublimation_heat_j_kg(t) * width
    return exp(-total)
