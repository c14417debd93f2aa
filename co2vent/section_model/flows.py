"""What flows through valves, hoses and leaks [kg/s].

Vapour: perfect nozzle with the ideal gas's k and the real inlet density, the form of ISO 9300 and
API 520 (within 1 % of real-gas isentropic flow, where the real cp/cv would be up to 47 % off).
Liquid: subcooled Bernoulli flow, and for flashing liquid the equilibrium rate model (Fauske 1985,
from memory), never more than Bernoulli allows. Discharge coefficients are in the areas.
"""

from math import sqrt

from co2vent.section_model.exchange import DRY_KG
from co2vent.section_model.fluid import CP, DP_DT, RHO, FluidTables, P
from co2vent.section_model.jit import Rec, jit
from co2vent.section_model.property_lookup import liquid_value


@jit
def gas_flux(pressure: float, rho: float, k: float, back_pressure: float) -> float:
    """Return kg/s per m2 of a perfect nozzle, choked or not, Z taken from the inlet density."""
    if pressure <= back_pressure or rho <= 0.0:
        return 0.0
    ratio = back_pressure / pressure
    critical = (2.0 / (k + 1.0)) ** (k / (k - 1.0))
    if ratio <= critical:
        return sqrt(k * pressure * rho * (2.0 / (k + 1.0)) ** ((k + 1.0) / (k - 1.0)))
    a = ratio ** (1.0 / k)
    return float(a * sqrt(2.0 * k / (k - 1.0) * pressure * rho * max(0.0, 1.0 - ratio / a)))


@jit
def liquid_flux(
    fl: FluidTables, temperature: float, pressure: float, back_pressure: float
) -> float:
    """Return kg/s per m2 of liquid flashing through a nozzle (equilibrium rate model, Fauske)."""
    saturated = liquid_value(fl, temperature, P)
    rho = liquid_value(fl, temperature, RHO)
    subcooled = 2.0 * rho * max(0.0, pressure - max(saturated, back_pressure))
    if saturated <= back_pressure:
        return sqrt(subcooled)
    # Clapeyron: latent heat over the change of volume is T dp/dT
    flashing = temperature * liquid_value(fl, temperature, DP_DT)
    equilibrium = flashing * flashing / (temperature * liquid_value(fl, temperature, CP))
    bernoulli = 2.0 * rho * (saturated - back_pressure)
    return sqrt(subcooled + min(equilibrium, bernoulli))


@jit
def leak_by_rate(se: Rec, pressure: float) -> float:
    """Return kg/s past a closed valve: full while choked, none from the supply pressure up."""
    if se.leak_by_kg_per_s <= 0.0 or pressure >= se.supply_pa:
        return 0.0
    k = 1.3
    choked = gas_flux(se.supply_pa, 1.0, k, 0.0)
    return float(se.leak_by_kg_per_s * gas_flux(se.supply_pa, 1.0, k, pressure) / choked)


@jit
def flows_out(
    fl: FluidTables,
    se: Rec,
    po: Rec,
    st: Rec,
    ps: Rec,
    valve: float,
    gas_m3: float,
    rho: float,
    k: float,
) -> tuple[float, float]:
    """Return (gas kg/s, condensed kg/s) through the vent."""
    opening = 1.0
    if se.snow_capacity_kg > 0.0:
        opening = max(0.0, 1.0 - st.hose_snow_kg / se.snow_capacity_kg)
    a, b = valve * se.vent_area_m2, opening * se.hose_area_m2
    if a <= 0.0 or b <= 0.0 or st.pressure_pa <= se.ambient_pa:
        return 0.0, 0.0
    area = a * b / sqrt(a * a + b * b)  # two restrictions in a row
    gas = area * gas_flux(st.pressure_pa, rho, k, se.ambient_pa)
    j = int(se.vent_pocket)
    liquid_kg = ps[j].condensed_kg * (1.0 - ps[j].solid_share)
    full = gas_m3 <= se.smallest_gas_m3
    if liquid_kg <= DRY_KG:
        return gas, 0.0
    fill = liquid_kg / liquid_value(fl, ps[j].condensed_k, RHO) / po[j].volume_m3
    share = 0.0  # of the opening that liquid takes
    if full:
        share = 1.0
    elif se.vent_low > 0.5:
        share = min(1.0, fill / 0.01)  # the last per cent drains as a mixture
    elif se.carry_over_fill < 1.0:
        # vapour bubbles swell the level in proportion to the velocity they rise with
        speed = gas / (rho * se.cross_section_m2)
        swollen = fill * (1.0 + speed / se.carry_over_velocity_m_per_s)
        share = min(0.6, max(0.0, (swollen - se.carry_over_fill) / (1.0 - se.carry_over_fill)))
    if share <= 0.0:
        return gas, 0.0
    liquid = share * area * liquid_flux(fl, ps[j].condensed_k, st.pressure_pa, se.ambient_pa)
    return gas * (1.0 - share), liquid
