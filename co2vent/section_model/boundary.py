"""What crosses the section's boundary in a step: vent, relief valve, leaks, pump. It sets the step.

Every flow is taken from the state and added to the accounts, kilograms and joules alike.
"""

from math import exp

from co2vent.section_model.exchange import give_condensed
from co2vent.section_model.flows import flows_out, gas_flux, leak_by_rate, liquid_flux
from co2vent.section_model.fluid import H_VAPOUR, RHO, FluidTables, U
from co2vent.section_model.jit import Rec, jit
from co2vent.section_model.property_lookup import (
    condensed_density,
    ideal_k,
    liquid_value,
    phase,
    saturation_k,
)

SUBLIMATION_J_PER_KG = 572_900.0  # at 1 atm, Jaeger & Span 2012 with Span & Wagner 1996
GAS_SHARE_A_STEP = 0.01  # of the gas may leave in one step
SPACE_SHARE_A_STEP = 0.2  # of the gas space may be added in one step


@jit
def leave(
    fl: FluidTables, se: Rec, po: Rec, st: Rec, ps: Rec, valve: float, gas_m3: float, longest: float
) -> float:
    """Let gas and liquid leave; return the seconds that the flows allow the step to last."""
    full = gas_m3 <= se.smallest_gas_m3
    other_kg = st.nitrogen_kg + st.steam_kg
    rho = (st.gas_kg + other_kg) / gas_m3
    k = ideal_k(fl, st.gas_k)
    gas_out, condensed_out = flows_out(fl, se, po, st, ps, valve, gas_m3, rho, k)
    j = int(se.vent_pocket)
    relief = relief_liquid = 0.0
    if se.relief_area_m2 > 0.0:
        if st.pressure_pa >= se.relief_pa:
            st.relief_open = 1.0
        elif st.pressure_pa < 0.9 * se.relief_pa:
            st.relief_open = 0.0
        if st.relief_open > 0.5 and full:
            relief_liquid = se.relief_area_m2 * liquid_flux(
                fl, ps[j].condensed_k, st.pressure_pa, se.ambient_pa
            )
        elif st.relief_open > 0.5:
            relief = se.relief_area_m2 * gas_flux(st.pressure_pa, rho, k, se.ambient_pa)
    leak_out = pump = 0.0
    if not full:
        leak_out = se.leak_out_area_m2 * gas_flux(st.pressure_pa, rho, k, se.ambient_pa)
    if st.pump_on > 0.5 and st.pressure_pa > se.pump_ultimate_pa:
        pump = se.pump_m3_per_s * rho * (1.0 - se.pump_ultimate_pa / st.pressure_pa)

    dt = longest
    gas_total = gas_out + relief + leak_out + pump
    liquid_total = condensed_out + relief_liquid
    if gas_total > 0.02 * (st.gas_kg + other_kg):  # a fast vent: 2 % of the gas a second
        dt *= 0.5
    if gas_total > 0.0:
        dt = min(dt, GAS_SHARE_A_STEP * (st.gas_kg + other_kg) / gas_total)
    if liquid_total > 0.0:
        density = condensed_density(fl, ps[j].condensed_k, ps[j].solid_share)
        dt = min(dt, SPACE_SHARE_A_STEP * gas_m3 * density / liquid_total)
        available = ps[j].condensed_kg * (1.0 - ps[j].solid_share)
        dt = min(dt, 0.5 * available / liquid_total + 1e-4)
    leak = leak_by_rate(se, st.pressure_pa)
    if leak > 0.0:
        dt = min(dt, 2.0 * GAS_SHARE_A_STEP * (st.gas_kg + other_kg) / leak)
    dt = max(dt, min(1e-5, longest))

    if gas_total > 0.0:
        share = 1.0 - exp(-gas_total * dt / (st.gas_kg + other_kg))  # the flow falls with the gas
        energy = share * (st.gas_energy_j + (0.0 if full else st.pressure_pa * gas_m3))
        kg = share * st.gas_kg
        st.gas_kg -= kg
        st.nitrogen_kg -= share * st.nitrogen_kg
        st.steam_kg -= share * st.steam_kg
        st.gas_energy_j -= energy
        st.vented_j += energy
        st.vented_other_kg += share * other_kg
        st.vented_kg += kg * gas_out / gas_total
        st.relieved_kg += kg * relief / gas_total
        st.leaked_out_kg += kg * leak_out / gas_total
        st.pumped_kg += kg * pump / gas_total
    if liquid_total > 0.0:
        # liquid leaves and dry ice stays; the gas pushes it out (work given back by the gas as
        # its space grows)
        t = ps[j].condensed_k
        kg = min(liquid_total * dt, 0.9 * ps[j].condensed_kg)
        energy = kg * liquid_value(fl, t, U)
        if not full:
            energy += st.pressure_pa * kg / condensed_density(fl, t, 0.0)
        ps[j].condensed_kg -= kg
        ps[j].condensed_j -= energy
        st.vented_j += energy
        vented = kg * condensed_out / liquid_total
        st.vented_condensed_kg += vented
        st.vented_kg += vented
        st.relieved_kg += kg - vented
        if se.snow_capacity_kg > 0.0:
            # about 0.4 of liquid flashing to ambient pressure is dry ice
            st.hose_snow_kg += 0.4 * se.snow_stick * vented
    if st.hose_snow_kg > 0.0:
        cleared = se.hose_heat_w / SUBLIMATION_J_PER_KG * dt
        st.hose_snow_kg = max(0.0, st.hose_snow_kg - cleared)
    st.vent_now_kg_per_s = gas_out + condensed_out
    return dt


@jit
def leak_in(fl: FluidTables, se: Rec, st: Rec, ps: Rec, full: bool, dt: float) -> None:
    """Let CO2 pass the closed isolation valve, flashed to the section's pressure."""
    rate = leak_by_rate(se, st.pressure_pa)
    st.leak_by_now_kg_per_s = rate
    if rate <= 0.0:
        return
    kg = rate * dt
    st.leaked_in_kg += kg
    st.leaked_in_j += kg * se.leak_by_h
    if full:
        give_condensed(ps, 0, kg, se.leak_by_h)
        return
    t = saturation_k(fl, st.co2_pa)
    h_vapour = phase(fl, t, H_VAPOUR)
    h_condensed = phase(fl, t, U) + st.co2_pa / phase(fl, t, RHO)
    dry = min(1.0, max(0.0, (se.leak_by_h - h_condensed) / (h_vapour - h_condensed)))
    st.gas_kg += dry * kg
    if dry >= 1.0:
        st.gas_energy_j += kg * se.leak_by_h
    else:
        st.gas_energy_j += dry * kg * h_vapour
        give_condensed(ps, 0, (1.0 - dry) * kg, 0.0)
        ps[0].condensed_j += kg * se.leak_by_h - dry * kg * h_vapour
