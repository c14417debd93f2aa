"""CO2 in oil and desiccant, water in the section: slow sources of gas.

Oil: Raoult's law, an ideal screening estimate. Desiccant: Langmuir. Water: towards its saturation
pressure (Magnus form, WMO No. 8). All first order in time.
"""

from math import exp

from co2vent.section_model.fluid import H_VAPOUR, FluidTables, P
from co2vent.section_model.jit import Rec, jit
from co2vent.section_model.packing import (
    DISSOLVED_J_PER_KG,
    MOLAR_CO2,
    STEAM_CV,
    WATER_LATENT_J_PER_KG,
)
from co2vent.section_model.property_lookup import phase

STEAM_R = 461.5  # J/kgK


@jit
def water_pressure(temperature: float) -> float:
    """Return the pressure [Pa] over ice or water (Magnus form, WMO No. 8)."""
    t = temperature - 273.15
    if t >= 0.0:
        return 611.2 * exp(17.62 * t / (243.12 + t))
    return 611.2 * exp(22.46 * t / (272.62 + t))


@jit
def sorb(fl: FluidTables, po: Rec, st: Rec, ps: Rec, i: int, dt: float) -> None:
    """Let oil and desiccant of pocket i go towards equilibrium with the gas."""
    t = ps[i].metal_k
    saturated = phase(fl, min(max(t, fl.solid_t0), 303.0), P)
    for kind in range(2):
        if kind == 0:
            if po[i].oil_kg <= 0.0:
                continue
            # Raoult: mole fraction of CO2 in the oil is p over the saturation pressure
            x = min(0.9, st.co2_pa / saturated)
            goal = po[i].oil_kg * MOLAR_CO2 / po[i].oil_molar_mass * x / (1.0 - x)
            held = ps[i].dissolved_kg
        else:
            if po[i].desiccant_kg <= 0.0:
                continue
            half = po[i].desiccant_half_pa * exp(-po[i].desiccant_k * (1.0 / t - 1.0 / 273.15))
            goal = po[i].desiccant_kg * po[i].desiccant_full * st.co2_pa / (st.co2_pa + half)
            held = ps[i].adsorbed_kg
        kg = (held - goal) * (1.0 - exp(-dt / po[i].sorption_s))
        kg = min(max(kg, -0.02 * st.gas_kg), 0.02 * st.gas_kg)  # no more in one step
        h_vapour = phase(fl, min(t, 303.0), H_VAPOUR)
        st.gas_kg += kg
        st.gas_energy_j += kg * h_vapour
        ps[i].metal_k -= kg * (h_vapour - DISSOLVED_J_PER_KG) / po[i].metal_j_per_k
        if kind == 0:
            ps[i].dissolved_kg -= kg
        else:
            ps[i].adsorbed_kg -= kg


@jit
def dry_out_water(po: Rec, st: Rec, ps: Rec, i: int, dt: float, gas_m3: float) -> None:
    """Let water or ice of pocket i evaporate towards its saturation pressure."""
    t = ps[i].metal_k
    here = st.steam_kg * STEAM_R * st.gas_k / gas_m3
    goal = water_pressure(t)
    # relaxation of the partial pressure within seconds; a wide-open surface is assumed
    kg = (goal - here) * gas_m3 / (STEAM_R * st.gas_k) * (1.0 - exp(-dt / 5.0))
    kg = min(max(kg, -st.steam_kg), ps[i].water_kg)
    st.steam_kg += kg
    ps[i].water_kg -= kg
    energy = kg * (STEAM_CV + STEAM_R) * t
    st.gas_energy_j += energy
    ps[i].metal_k -= (energy + kg * WATER_LATENT_J_PER_KG) / po[i].metal_j_per_k
