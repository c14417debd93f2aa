"""Heat and mass between CO2 and metal inside the section.

Gas on metal: turbulent free convection, Nu = 0.13 Ra^(1/3), in which the length drops out.
Evaporation is kinetic: superheat boils away within a time constant, condensation on the surface is
limited by a heat-transfer coefficient; neither is forced to equilibrium.
"""

from math import pi, sin

from co2vent.section_model.fluid import CP, GAS_STEP_K, H_VAPOUR, RHO, FluidTables, U
from co2vent.section_model.jit import Rec, jit
from co2vent.section_model.property_lookup import condensed_density, gas_row, phase

G_ACCELERATION = 9.80665
DRY_KG = 1e-9  # less condensed CO2 than this is evaporated at once
LOWEST_GAS_KG = 1e-9
LEAST_LATENT_J_PER_KG = 2e4  # next to the critical point, where the model ends


@jit
def wetted_shares(fill: float) -> tuple[float, float]:
    """Return (wetted share of wall, surface over wall area) of a horizontal cylinder."""
    if fill <= 0.0:
        return 0.0, 0.0
    if fill >= 1.0:
        return 1.0, 0.0
    mirrored = fill > 0.5
    f = 1.0 - fill if mirrored else fill
    target = 2.0 * pi * f
    theta = (6.0 * target) ** (1.0 / 3.0)  # theta - sin theta = target, from its series
    if theta > 0.3:
        theta += theta**3 / 60.0
        for _ in range(2):
            slope = 1.0 - (1.0 - 2.0 * sin(0.5 * theta) ** 2)
            theta -= (theta - sin(theta) - target) / slope
    surface = sin(0.5 * theta) / pi
    share = theta / (2.0 * pi)
    return (1.0 - share if mirrored else share), surface


@jit
def convection(fl: FluidTables, se: Rec, temperature: float, wall: float, rho: float) -> float:
    """Return W/m2K of free convection between gas and wall: Nu = factor Ra^(1/3)."""
    x = 0.5 * (temperature + wall) / 273.15
    k = fl.conductivity_273 * x**fl.conductivity_power
    mu = fl.viscosity_273 * x**fl.viscosity_power
    i, _ = gas_row(fl, temperature)
    cp = (fl.gas[i + 1, 0] - fl.gas[i, 0]) / GAS_STEP_K + fl.gas_constant
    rayleigh = (
        G_ACCELERATION * abs(wall - temperature) / temperature * rho * rho * cp / (mu * k)
    )  # per m3: the length drops out at the power 1/3
    return float(se.gas_factor * k * rayleigh ** (1.0 / 3.0))


@jit
def give_condensed(ps: Rec, i: int, kg: float, enthalpy: float) -> None:
    """Add `kg` of condensed CO2 with `enthalpy` [J/kg] to pocket i."""
    ps[i].condensed_kg += kg
    ps[i].condensed_j += kg * enthalpy


@jit
def boil(
    fl: FluidTables,
    se: Rec,
    po: Rec,
    st: Rec,
    ps: Rec,
    i: int,
    saturated: float,
    slope: float,
    area_wet: float,
    area_dry: float,
    surface: float,
    gas_heat_w: float,
    dt: float,
) -> float:
    """Exchange pocket i's condensed CO2 with metal and vapour, implicitly; return kg evaporated.

    Unknowns are the new temperature of the condensed CO2 and the mass evaporated, which raises
    the saturation temperature by `slope` [K/kg]; both are linear in the step, so the fast
    approach to equilibrium does not limit it.
    """
    m = ps[i].condensed_kg
    t = ps[i].condensed_k
    share = ps[i].solid_share
    mixed = 0.0 < share < 1.0
    heat_capacity = m * phase(fl, t, CP)
    contact = po[i].boil_w_per_m2k * (1.0 - share) + po[i].snow_contact_w_per_m2k * share
    wet, dry = contact * area_wet, contact * area_dry
    latent = max(phase(fl, t, H_VAPOUR) - ps[i].condensed_j / m, LEAST_LATENT_J_PER_KG)
    stiff = 1e12 if mixed else heat_capacity
    d = stiff + dt * (wet + dry)
    after = (stiff * t + dt * (wet * ps[i].metal_k + dry * st.dry_metal_k + gas_heat_w)) / d
    if after > saturated:
        rate = m * (1.0 - share) * fl.liquid[0, CP] / po[i].boil_s if mixed else 0.0
        if mixed:
            rate += m * share * fl.solid[-1, CP] / po[i].snow_s
        else:
            rate = heat_capacity / (po[i].snow_s if share >= 1.0 else po[i].boil_s)
            rate += 20.0 * (wet + dry)  # what the metal gives a thin film boils off at once
    else:
        rate = se.surface_condensation_w_per_m2k * surface
    g = rate / latent * dt
    kg = g * (after - saturated) / (1.0 + g * (latent / d + slope))
    if kg < 0.0:
        kg = max(kg, -0.1 * st.gas_kg)
    new_t = after - latent * kg / d
    from_wet = dt * wet * (ps[i].metal_k - new_t)
    from_dry = dt * dry * (st.dry_metal_k - new_t)
    if kg >= m - DRY_KG:
        # the last of it: the metal gives just what that takes
        kg = m
        needed = kg * phase(fl, t, H_VAPOUR) - ps[i].condensed_j - gas_heat_w * dt
        needed -= st.pressure_pa * kg / condensed_density(fl, t, share)
        from_wet, from_dry = needed, 0.0
    h_vapour = phase(fl, t if kg > 0.0 else saturated, H_VAPOUR)
    ps[i].metal_k -= from_wet / po[i].metal_j_per_k
    st.dry_metal_k -= from_dry / se.dry_metal_j_per_k
    ps[i].condensed_j += from_wet + from_dry + gas_heat_w * dt - kg * h_vapour
    ps[i].condensed_kg -= kg
    st.gas_kg += kg
    st.gas_energy_j += kg * h_vapour
    return float(kg)


@jit
def condense_on_metal(
    fl: FluidTables,
    se: Rec,
    st: Rec,
    ps: Rec,
    i: int,
    metal_k: float,
    metal_j_per_k: float,
    area: float,
    saturated: float,
    slope: float,
    dt: float,
) -> float:
    """Condense vapour on metal colder than saturation, into pocket i; return the metal's new T."""
    if metal_k >= saturated - 1e-6 or area <= 0.0 or st.gas_kg < LOWEST_GAS_KG * 10:
        return metal_k
    h_vapour = phase(fl, saturated, H_VAPOUR)
    h_condensed = phase(fl, saturated, U) + st.co2_pa / phase(fl, saturated, RHO)
    latent = h_vapour - h_condensed
    conductance = se.film_condensation_w_per_m2k * area * dt
    kg = conductance * (saturated - metal_k)
    kg /= latent * (1.0 + conductance / metal_j_per_k) + conductance * slope
    kg = min(kg, 0.05 * st.gas_kg)
    st.gas_kg -= kg
    st.gas_energy_j -= kg * h_vapour
    give_condensed(ps, i, kg, h_condensed)
    return float(metal_k + kg * latent / metal_j_per_k)
