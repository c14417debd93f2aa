"""Temperatures, phases and pressure that belong to the conserved masses and energies."""

from co2vent.section_model.fluid import FULL_CURVE, FULL_SLOPE, GAS_LOWEST_K, RHO, FluidTables, P
from co2vent.section_model.jit import Rec, jit
from co2vent.section_model.packing import NITROGEN_CV, NITROGEN_R, STEAM_CV
from co2vent.section_model.property_lookup import (
    condensed_density,
    condensed_state,
    even_value,
    gas_energy,
    gas_pressure,
    liquid_value,
)
from co2vent.section_model.sorption import STEAM_R


@jit
def solve_gas(
    fl: FluidTables,
    gas_kg: float,
    nitrogen_kg: float,
    steam_kg: float,
    energy: float,
    volume: float,
    guess: float,
) -> tuple[float, float, float]:
    """Return (temperature [K], CO2 pressure [Pa], total pressure [Pa]) of the gas space."""
    rho = gas_kg / volume
    other_cv = nitrogen_kg * NITROGEN_CV + steam_kg * STEAM_CV
    temperature = guess
    for _ in range(30):
        u, cv = gas_energy(fl, rho, temperature)
        step = (energy - gas_kg * u - other_cv * temperature) / (gas_kg * cv + other_cv)
        temperature += step
        if temperature < GAS_LOWEST_K:
            temperature = GAS_LOWEST_K
        if abs(step) < 1e-9 * temperature:
            break
    co2 = gas_pressure(fl, rho, temperature)
    other = (nitrogen_kg * NITROGEN_R + steam_kg * STEAM_R) * temperature / volume
    return temperature, co2, co2 + other


@jit
def condensed_volume(fl: FluidTables, ps: Rec) -> tuple[float, float, float]:
    """Return (m3 of condensed CO2 at saturation, kg of liquid, mean liquid temperature)."""
    volume = liquid = heat = 0.0
    for i in range(ps.shape[0]):
        if ps[i].condensed_kg > 0.0:
            volume += ps[i].condensed_kg / condensed_density(
                fl, ps[i].condensed_k, ps[i].solid_share
            )
            kg = ps[i].condensed_kg * (1.0 - ps[i].solid_share)
            liquid += kg
            heat += kg * ps[i].condensed_k
    return volume, liquid, (heat / liquid if liquid > 0.0 else 0.0)


@jit
def settle(fl: FluidTables, se: Rec, st: Rec, ps: Rec) -> float:
    """Find temperatures, phases and pressure from the conserved amounts; return m3 of gas."""
    for i in range(ps.shape[0]):
        if ps[i].condensed_kg > 0.0:
            t, share = condensed_state(fl, ps[i].condensed_j / ps[i].condensed_kg)
            ps[i].condensed_k = t
            ps[i].solid_share = share
    volume, liquid, mean_k = condensed_volume(fl, ps)
    gas_m3 = max(se.volume_m3 - volume, se.smallest_gas_m3)
    st.gas_k, st.co2_pa, st.pressure_pa = solve_gas(
        fl, st.gas_kg, st.nitrogen_kg, st.steam_kg, st.gas_energy_j, gas_m3, st.gas_k
    )
    room = se.volume_m3 - se.smallest_gas_m3
    if volume > room and liquid > 0.0:
        # no cushion left: along the isochore that was saturated at full_k the pressure rises
        # by FULL_SLOPE per kelvin
        solid_m3 = volume - liquid / liquid_value(fl, mean_k, RHO)
        rho = liquid / max(room - solid_m3, 1e-9)
        full_k = even_value(fl.liquid_t_of_rho, fl.liquid[-1, RHO], fl.liquid[0, RHO], rho)
        rise = max(0.0, mean_k - full_k)
        slope = liquid_value(fl, full_k, FULL_SLOPE) + liquid_value(fl, full_k, FULL_CURVE) * rise
        full = liquid_value(fl, full_k, P) + slope * rise
        st.pressure_pa = max(st.pressure_pa, full)
        st.co2_pa = max(st.co2_pa, full)
    return float(gas_m3)
