"""A slow vent of vapour: what boils, what is left, how long the vapour takes through the bore.

Rigid section, no heat from outside or from the metal, only vapour leaves, liquid and vapour at
equilibrium: dU = h_v dm. Heat from the walls, which is always there, leaves less liquid.
"""

from dataclasses import dataclass
from math import inf, pi
from typing import Final

from co2vent import co2
from co2vent.co2 import kernels
from co2vent.planning.charge import ChargeState

_STEPS: Final = 400  # halving them moves the liquid left by less than 1e-5 of the charge


@dataclass(frozen=True, slots=True)
class VentPath:
    """The end of a slow vent. `time_s` is None without a bore."""

    temperature_k: float
    liquid_kg: float
    vapor_kg: float
    vented_kg: float
    time_s: float | None
    highest_flow_kg_s: float | None


def _mixture(temperature_k: float) -> tuple[float, float, float, float, float]:
    """Return vapour density, density ratio, uL, uV and hV at saturation."""
    p = kernels.saturation_pressure_pa(temperature_k)
    liquid = kernels.liquid_density_kg_m3(temperature_k)
    vapor = kernels.boiling_vapor_density_kg_m3(temperature_k)
    h_vapor = kernels.vapor_enthalpy_saturated_j_kg(temperature_k)
    u_liquid = kernels.liquid_enthalpy_j_kg(temperature_k) - p / liquid
    return vapor, vapor / liquid, u_liquid, h_vapor - p / vapor, h_vapor


def vent_vapor_to(
    start: ChargeState,
    pressure_pa: float,
    *,
    bore_m: float | None = None,
    discharge_coefficient: float = 1.0,
    ambient_pressure_pa: float = 101_325.0,
) -> VentPath:
    """Return the state when a slow vent of `start` reaches `pressure_pa` (at or above the triple).

    No more liquid is reported than there was: vapour that cools as it expands can form mist, which
    the flow and the walls take away; mist counts as vapour here. With a bore, the time is that of
    choked or subcritical real-gas flow with the valve fully open all the way: the shortest.
    """
    target_k = co2.saturation_temperature_k(pressure_pa)
    volume, t = start.volume_m3, start.temperature_k
    liquid = start.liquid_kg
    _, _, u_l, u_v, h_v = _mixture(t)
    total, energy = start.total_kg, start.liquid_kg * u_l + start.vapor_kg * u_v
    step = max(0.0, t - target_k) / _STEPS
    opening = None if bore_m is None else discharge_coefficient * pi / 4.0 * bore_m * bore_m
    time = 0.0
    highest = 0.0
    for _ in range(_STEPS if step > 0.0 else 0):
        t_next = t - step
        rho_next, ratio_next, u_l, u_v, h_next = _mixture(t_next)
        h_mean = 0.5 * (h_v + h_next)
        # m = L + rho (V - L ratio/rho), U = L uL + (m - L) uV, U - U0 = h (m - m0): linear in L
        per_liquid = u_l - ratio_next * u_v - h_mean * (1.0 - ratio_next)
        constant = energy - h_mean * total + rho_next * volume * (h_mean - u_v)
        liquid = constant / per_liquid
        total_next = liquid * (1.0 - ratio_next) + rho_next * volume
        energy += h_mean * (total_next - total)
        if opening is not None:
            middle = t - 0.5 * step
            flow = opening * kernels.nozzle_flux_kg_s_m2(
                kernels.saturation_pressure_pa(middle),
                kernels.boiling_vapor_density_kg_m3(middle),
                middle,
                ambient_pressure_pa,
            )
            highest = max(highest, flow)
            time += (total - total_next) / flow if flow > 0.0 else inf
        t, total, h_v = t_next, total_next, h_next
    liquid = min(max(liquid, 0.0), start.liquid_kg)
    return VentPath(
        temperature_k=t,
        liquid_kg=liquid,
        vapor_kg=total - liquid,
        vented_kg=start.total_kg - total,
        time_s=None if opening is None else time,
        highest_flow_kg_s=None if opening is None else highest,
    )


def dry_ice_on_the_shelf_kg(liquid_at_triple_kg: float) -> float:
    """Return the dry ice [kg] when this liquid is vented through the triple point."""
    return co2.PLATEAU_SOLID_FRACTION * liquid_at_triple_kg


def snow_share_of_drained_liquid(temperature_k: float, ambient_pressure_pa: float) -> float:
    """Return the share of drained saturated liquid that is snow at the outlet (isenthalpic)."""
    outlet = co2.sublimation_temperature_k(ambient_pressure_pa)
    h_vapor = co2.vapor_enthalpy_saturated_j_kg(outlet)
    h_solid = co2.solid_enthalpy_j_kg(outlet)
    share = (h_vapor - co2.liquid_enthalpy_j_kg(temperature_k)) / (h_vapor - h_solid)
    return min(1.0, max(0.0, share))
