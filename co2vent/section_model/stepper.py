"""The compiled physics. Import it only when a run starts: importing it loads numba.

State is what is conserved: kilograms and joules of the gas space and of the condensed CO2 of each
pocket, joules of the metal. Every exchange takes from one and gives the same to another, so mass
and energy close to rounding whatever the step; temperatures and phases follow from the energies:
condensed CO2 whose energy lies between that of liquid and of dry ice at the triple point is a
mixture of both at the triple-point temperature. Sources stand in `co2vent.section_model.physics`.
"""

from math import exp, log, nan, pi, sin, sqrt

from numba import njit  # noqa: TID253 - this module is imported only when a run starts

G_ACCELERATION = 9.80665
LOWEST_GAS_KG = 1e-9
DRY_KG = 2e-7  # less condensed CO2 than this is evaporated at once
N2_R, N2_CV = 296.8, 743.0
STEAM_R, STEAM_CV, WATER_LATENT = 461.5, 1404.0, 2.501e6
DISSOLVED_H = 112_900.0  # energy of CO2 in oil or desiccant: liquid at -40 degC
MOLAR_CO2 = 0.0440098
VIRIAL_TERMS = 6
GAS_LOWEST_K, GAS_STEP_K = 140.0, 1.0
P, RHO, U, H_VAPOUR, CP, DP_DT, FULL_SLOPE = 0, 1, 2, 3, 4, 5, 6

jit = njit(cache=True, nogil=True, error_model="numpy")


@jit
def line_value(table, t0, dt, temperature, column):
    """Return a column of a phase's table at `temperature`, held at the ends."""
    x = (temperature - t0) / dt
    last = table.shape[0] - 1
    if x <= 0.0:
        return table[0, column]
    if x >= last:
        return table[last, column]
    i = int(x)
    f = x - i
    return table[i, column] * (1.0 - f) + table[i + 1, column] * f


@jit
def even_value(values, low, high, x):
    """Return the value at `x` of a curve given at equal steps from `low` to `high`."""
    last = values.shape[0] - 1
    y = (x - low) / (high - low) * last
    if y <= 0.0:
        return values[0]
    if y >= last:
        return values[last]
    i = int(y)
    f = y - i
    return values[i] * (1.0 - f) + values[i + 1] * f


@jit
def saturation_k(fl, pressure):
    """Return the temperature [K] of boiling or subliming at `pressure` [Pa]; 0 for a mere gas."""
    if not fl.condensable:
        return 0.0
    if pressure >= fl.triple_p:
        return even_value(
            fl.liquid_t_of_lnp, log(fl.liquid[0, P]), log(fl.liquid[-1, P]), log(pressure)
        )
    if pressure <= fl.solid[0, P]:
        return fl.solid_t0
    return even_value(fl.solid_t_of_lnp, log(fl.solid[0, P]), log(fl.solid[-1, P]), log(pressure))


@jit
def phase(fl, temperature, column):
    """Return a column of the liquid's table above the triple point, else of the solid's."""
    if temperature > fl.triple_t:
        return line_value(fl.liquid, fl.liquid_t0, fl.liquid_dt, temperature, column)
    return line_value(fl.solid, fl.solid_t0, fl.solid_dt, temperature, column)


@jit
def condensed_state(fl, energy):
    """Return (temperature [K], solid share by mass) of condensed CO2 with `energy` [J/kg]."""
    u_liquid = fl.liquid[0, U]
    u_solid = fl.solid[-1, U]
    if energy >= u_liquid:
        return even_value(fl.liquid_t_of_u, u_liquid, fl.liquid[-1, U], energy), 0.0
    if energy <= u_solid:
        return even_value(fl.solid_t_of_u, fl.solid[0, U], u_solid, energy), 1.0
    return fl.triple_t, (u_liquid - energy) / (u_liquid - u_solid)


@jit
def condensed_density(fl, temperature, solid_share):
    """Return the density [kg/m3] of condensed CO2, saturated."""
    if solid_share >= 1.0:
        return line_value(fl.solid, fl.solid_t0, fl.solid_dt, temperature, RHO)
    liquid = line_value(fl.liquid, fl.liquid_t0, fl.liquid_dt, temperature, RHO)
    if solid_share <= 0.0:
        return liquid
    return 1.0 / (solid_share / fl.solid[-1, RHO] + (1.0 - solid_share) / liquid)


@jit
def gas_row(fl, temperature):
    """Return (row, fraction) of the gas table at `temperature`."""
    x = (temperature - GAS_LOWEST_K) / GAS_STEP_K
    last = fl.gas.shape[0] - 2
    if x < 0.0:
        x = 0.0
    i = int(x)
    if i > last:
        i = last
    return i, x - i


@jit
def row_sum(table, row, first, rho):
    """Return the sum of factor_k rho^k of one row of the gas table."""
    total = 0.0
    for k in range(VIRIAL_TERMS - 1, -1, -1):
        total = (total + table[row, first + k]) * rho
    return total


@jit
def gas_energy(fl, rho, temperature):
    """Return (u [J/kg], du/dT [J/kgK]) of the gas."""
    i, f = gas_row(fl, temperature)
    low = fl.gas[i, 0] + row_sum(fl.gas, i, 1 + VIRIAL_TERMS, rho)
    high = fl.gas[i + 1, 0] + row_sum(fl.gas, i + 1, 1 + VIRIAL_TERMS, rho)
    return low * (1.0 - f) + high * f, (high - low) / GAS_STEP_K


@jit
def gas_pressure(fl, rho, temperature):
    """Return the pressure [Pa] of the gas."""
    i, f = gas_row(fl, temperature)
    low = row_sum(fl.gas, i, 1, rho)
    high = row_sum(fl.gas, i + 1, 1, rho)
    return rho * fl.gas_constant * temperature * (1.0 + low * (1.0 - f) + high * f)


@jit
def gas_density(fl, pressure, temperature):
    """Return the density [kg/m3] of the gas at `pressure`, from the dilute side."""
    rho = pressure / (fl.gas_constant * temperature)
    for _ in range(60):
        new = rho * pressure / gas_pressure(fl, rho, temperature)
        if abs(new - rho) < 1e-12 * rho:
            break
        rho = 0.5 * (rho + new)
    return rho


@jit
def ideal_k(fl, temperature):
    """Return cp/cv of the ideal gas: the real ratio overstates choked flow (ISO 9300 form)."""
    i, _ = gas_row(fl, temperature)
    cv = (fl.gas[i + 1, 0] - fl.gas[i, 0]) / GAS_STEP_K
    return 1.0 + fl.gas_constant / cv


@jit
def gas_flux(pressure, rho, k, back_pressure):
    """Return kg/s per m2 of a perfect nozzle, choked or not, Z taken from the inlet density."""
    if pressure <= back_pressure or rho <= 0.0:
        return 0.0
    ratio = back_pressure / pressure
    critical = (2.0 / (k + 1.0)) ** (k / (k - 1.0))
    if ratio <= critical:
        return sqrt(k * pressure * rho * (2.0 / (k + 1.0)) ** ((k + 1.0) / (k - 1.0)))
    a = ratio ** (1.0 / k)
    return a * sqrt(2.0 * k / (k - 1.0) * pressure * rho * max(0.0, 1.0 - ratio / a))


@jit
def liquid_flux(fl, temperature, pressure, back_pressure):
    """Return kg/s per m2 of liquid flashing through a nozzle (equilibrium rate model, Fauske)."""
    saturated = phase(fl, temperature, P)
    rho = phase(fl, temperature, RHO)
    subcooled = 2.0 * rho * max(0.0, pressure - max(saturated, back_pressure))
    if saturated <= back_pressure:
        return sqrt(subcooled)
    # Clapeyron: latent heat over the change of volume is T dp/dT
    flashing = temperature * phase(fl, temperature, DP_DT)
    equilibrium = flashing * flashing / (temperature * phase(fl, temperature, CP))
    bernoulli = 2.0 * rho * (saturated - back_pressure)
    return sqrt(subcooled + min(equilibrium, bernoulli))


@jit
def wetted_shares(fill):
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
def convection(fl, se, temperature, wall, rho):
    """Return W/m2K of free convection between gas and wall: Nu = factor Ra^(1/3)."""
    x = 0.5 * (temperature + wall) / 273.15
    k = fl.conductivity_273 * x**fl.conductivity_power
    mu = fl.viscosity_273 * x**fl.viscosity_power
    i, _ = gas_row(fl, temperature)
    cp = (fl.gas[i + 1, 0] - fl.gas[i, 0]) / GAS_STEP_K + fl.gas_constant
    rayleigh = (
        G_ACCELERATION * abs(wall - temperature) / temperature * rho * rho * cp / (mu * k)
    )  # per m3: the length drops out at the power 1/3
    return se.gas_factor * k * rayleigh ** (1.0 / 3.0)


@jit
def solve_gas(fl, gas_kg, nitrogen_kg, steam_kg, energy, volume, guess):
    """Return (temperature [K], CO2 pressure [Pa], total pressure [Pa]) of the gas space."""
    rho = gas_kg / volume
    other_cv = nitrogen_kg * N2_CV + steam_kg * STEAM_CV
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
    other = (nitrogen_kg * N2_R + steam_kg * STEAM_R) * temperature / volume
    return temperature, co2, co2 + other


@jit
def condensed_volume(fl, ps):
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
def settle(fl, se, st, ps):
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
        solid_m3 = volume - liquid / phase(fl, mean_k, RHO)
        rho = liquid / max(room - solid_m3, 1e-9)
        full_k = even_value(fl.liquid_t_of_rho, fl.liquid[-1, RHO], fl.liquid[0, RHO], rho)
        full = phase(fl, full_k, P) + phase(fl, full_k, FULL_SLOPE) * max(0.0, mean_k - full_k)
        st.pressure_pa = max(st.pressure_pa, full)
        st.co2_pa = max(st.co2_pa, full)
    return gas_m3


@jit
def leak_by_rate(se, pressure):
    """Return kg/s past a closed valve: full while choked, none from the supply pressure up."""
    if se.leak_by_kg_per_s <= 0.0 or pressure >= se.supply_pa:
        return 0.0
    k = 1.3
    choked = gas_flux(se.supply_pa, 1.0, k, 0.0)
    return se.leak_by_kg_per_s * gas_flux(se.supply_pa, 1.0, k, pressure) / choked


@jit
def water_pressure(temperature):
    """Return the pressure [Pa] over ice or water (Magnus form, WMO No. 8)."""
    t = temperature - 273.15
    if t >= 0.0:
        return 611.2 * exp(17.62 * t / (243.12 + t))
    return 611.2 * exp(22.46 * t / (272.62 + t))


@jit
def take_condensed(fl, ps, i, kg):
    """Take `kg` of condensed CO2 out of pocket i; return its energy [J]."""
    joule = ps[i].condensed_j * kg / ps[i].condensed_kg
    ps[i].condensed_kg -= kg
    ps[i].condensed_j -= joule
    return joule


@jit
def give_condensed(ps, i, kg, enthalpy):
    """Add `kg` of condensed CO2 with `enthalpy` [J/kg] to pocket i."""
    ps[i].condensed_kg += kg
    ps[i].condensed_j += kg * enthalpy


@jit
def flows_out(fl, se, po, st, ps, valve, gas_m3, rho, k):
    """Return (gas kg/s, condensed kg/s, hose opening) of the vent."""
    opening = 1.0
    if se.snow_capacity_kg > 0.0:
        opening = max(0.0, 1.0 - st.hose_snow_kg / se.snow_capacity_kg)
    a, b = valve * se.vent_area_m2, opening * se.hose_area_m2
    if a <= 0.0 or b <= 0.0 or st.pressure_pa <= se.ambient_pa:
        return 0.0, 0.0, opening
    area = a * b / sqrt(a * a + b * b)  # two restrictions in a row
    gas = area * gas_flux(st.pressure_pa, rho, k, se.ambient_pa)
    j = int(se.vent_pocket)
    liquid_kg = ps[j].condensed_kg * (1.0 - ps[j].solid_share)
    full = gas_m3 <= se.smallest_gas_m3 * 1.0000001
    if liquid_kg <= DRY_KG:
        return gas, 0.0, opening
    fill = liquid_kg / phase(fl, max(ps[j].condensed_k, fl.triple_t), RHO) / po[j].volume_m3
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
        return gas, 0.0, opening
    liquid = share * area * liquid_flux(fl, ps[j].condensed_k, st.pressure_pa, se.ambient_pa)
    return gas * (1.0 - share), liquid, opening


@jit
def sorb(fl, po, st, ps, i, dt):
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
        kg = max(kg, -0.02 * st.gas_kg)
        h_vapour = phase(fl, min(t, 303.0), H_VAPOUR)
        st.gas_kg += kg
        st.gas_energy_j += kg * h_vapour
        ps[i].metal_k -= kg * (h_vapour - DISSOLVED_H) / po[i].metal_j_per_k
        if kind == 0:
            ps[i].dissolved_kg -= kg
        else:
            ps[i].adsorbed_kg -= kg


@jit
def dry_out_water(po, st, ps, i, dt, gas_m3):
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
    ps[i].metal_k -= (energy + kg * WATER_LATENT) / po[i].metal_j_per_k


@jit
def boil(fl, se, po, st, ps, i, saturated, slope, area_wet, area_dry, surface, gas_heat_w, dt):
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
    latent = phase(fl, t, H_VAPOUR) - ps[i].condensed_j / m
    stiff = 1e12 if mixed else heat_capacity
    d = stiff + dt * (wet + dry)
    after = (stiff * t + dt * (wet * ps[i].metal_k + dry * st.dry_metal_k + gas_heat_w)) / d
    if after > saturated:
        rate = m * (1.0 - share) * fl.liquid[0, CP] / po[i].boil_s if mixed else 0.0
        if mixed:
            rate += m * share * fl.solid[-1, CP] / po[i].snow_s
        else:
            rate = heat_capacity / (po[i].snow_s if share >= 1.0 else po[i].boil_s)
            rate += wet + dry  # what the metal gives boils off at once
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
    return kg


@jit
def condense_on_metal(fl, se, st, ps, i, metal_k, metal_j_per_k, area, saturated, slope, dt):
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
    return metal_k + kg * latent / metal_j_per_k


@jit
def substep(fl, se, po, st, ps, valve, longest):
    """Advance by one step of at most `longest` seconds; return the seconds gone."""
    n = ps.shape[0]
    volume, _, _ = condensed_volume(fl, ps)
    gas_m3 = max(se.volume_m3 - volume, se.smallest_gas_m3)
    rho = st.gas_kg / gas_m3
    other_kg = st.nitrogen_kg + st.steam_kg
    rho_all = rho + other_kg / gas_m3
    k = ideal_k(fl, st.gas_k)
    gas_out, condensed_out, hose = flows_out(fl, se, po, st, ps, valve, gas_m3, rho_all, k)
    j = int(se.vent_pocket)

    relief = 0.0
    if se.relief_area_m2 > 0.0:
        if st.pressure_pa >= se.relief_pa:
            st.relief_open = 1.0
        elif st.pressure_pa < 0.9 * se.relief_pa:
            st.relief_open = 0.0
        if st.relief_open > 0.5:
            relief = se.relief_area_m2 * gas_flux(st.pressure_pa, rho_all, k, se.ambient_pa)
    leak_out = se.leak_out_area_m2 * gas_flux(st.pressure_pa, rho_all, k, se.ambient_pa)
    pump = 0.0
    if st.pump_on > 0.5 and st.pressure_pa > se.pump_ultimate_pa:
        pump = se.pump_m3_per_s * rho_all * (1.0 - se.pump_ultimate_pa / st.pressure_pa)
    full = gas_m3 <= se.smallest_gas_m3 * 1.0000001 and volume > 0.0
    relief_liquid = 0.0
    if full and relief > 0.0:
        relief_liquid = se.relief_area_m2 * liquid_flux(
            fl, ps[j].condensed_k, st.pressure_pa, se.ambient_pa
        )
        relief = 0.0
    if full:
        leak_out = 0.0

    # how long a step the flows allow: 4 % of the gas, a fifth of the gas space
    dt = longest
    gas_total = gas_out + relief + leak_out + pump
    if gas_total > 0.0:
        dt = min(dt, 0.04 * (st.gas_kg + other_kg) / gas_total)
    if condensed_out + relief_liquid > 0.0:
        density = max(condensed_density(fl, ps[j].condensed_k, ps[j].solid_share), 1.0)
        dt = min(dt, 0.2 * gas_m3 * density / (condensed_out + relief_liquid))
        available = ps[j].condensed_kg * (1.0 - ps[j].solid_share)
        dt = min(dt, 0.5 * available / (condensed_out + relief_liquid) + 1e-4)
    dt = max(dt, min(1e-5, longest))

    # what leaves with the gas, in the proportions of the gas
    out = gas_total * dt
    if out > 0.0:
        share = min(0.5, out / (st.gas_kg + other_kg))
        u, _ = gas_energy(fl, rho, st.gas_k)
        energy = share * (st.gas_energy_j + st.pressure_pa * gas_m3)
        if full:
            energy = share * st.gas_energy_j
        kg = share * st.gas_kg
        other = share * other_kg
        st.gas_kg -= kg
        st.nitrogen_kg -= share * st.nitrogen_kg
        st.steam_kg -= share * st.steam_kg
        st.gas_energy_j -= energy
        st.vented_j += energy
        st.vented_kg += kg * gas_out / gas_total
        st.relieved_kg += kg * relief / gas_total
        st.leaked_out_kg += kg * leak_out / gas_total
        st.pumped_kg += kg * pump / gas_total
        st.vented_other_kg += other

    # what leaves as liquid
    wanted = (condensed_out + relief_liquid) * dt
    if wanted > 0.0 and ps[j].condensed_kg > 0.0:
        kg = min(wanted, 0.9 * ps[j].condensed_kg)
        t = ps[j].condensed_k
        density = condensed_density(fl, t, 0.0)
        # liquid leaves, dry ice stays: energy of the liquid, not of the mean
        energy = kg * line_value(fl.liquid, fl.liquid_t0, fl.liquid_dt, t, U)
        ps[j].condensed_kg -= kg
        ps[j].condensed_j -= energy
        work = 0.0 if full else st.pressure_pa * kg / density
        ps[j].condensed_j -= work  # given back when the gas space grows
        st.vented_j += energy + work
        st.vented_condensed_kg += kg * condensed_out / (condensed_out + relief_liquid)
        st.vented_kg += kg * condensed_out / (condensed_out + relief_liquid)
        st.relieved_kg += kg * relief_liquid / (condensed_out + relief_liquid)
        if se.snow_capacity_kg > 0.0 and condensed_out > 0.0:
            st.hose_snow_kg += 0.4 * se.snow_stick * condensed_out * dt
    if st.hose_snow_kg > 0.0:
        # 573 kJ/kg to sublime it at 1 atm
        st.hose_snow_kg = max(0.0, st.hose_snow_kg - se.hose_heat_w / 572_900.0 * dt)
    st.vent_now_kg_per_s = gas_out + condensed_out

    # leak past the closed isolation valve, flashed to the section's pressure
    rate = leak_by_rate(se, st.pressure_pa)
    st.leak_by_now_kg_per_s = rate
    if rate > 0.0:
        kg = rate * dt
        st.leaked_in_kg += kg
        st.leaked_in_j += kg * se.leak_by_h
        t = saturation_k(fl, st.co2_pa)
        h_vapour = phase(fl, t, H_VAPOUR)
        h_condensed = phase(fl, t, U) + st.co2_pa / phase(fl, t, RHO)
        dry = min(1.0, max(0.0, (se.leak_by_h - h_condensed) / (h_vapour - h_condensed)))
        if full:
            give_condensed(ps, 0, kg, se.leak_by_h)
        elif dry >= 1.0:
            st.gas_kg += kg
            st.gas_energy_j += kg * se.leak_by_h
        else:
            st.gas_kg += dry * kg
            st.gas_energy_j += dry * kg * h_vapour
            give_condensed(ps, 0, (1.0 - dry) * kg, 0.0)
            ps[0].condensed_j += kg * se.leak_by_h - dry * kg * h_vapour

    # gas with metal and surfaces: one exponential for all, so a thin gas cannot overshoot
    saturated = saturation_k(fl, max(st.co2_pa, 1.0))
    _, cv = gas_energy(fl, st.gas_kg / gas_m3, st.gas_k)
    heat_capacity = st.gas_kg * cv + st.nitrogen_kg * N2_CV + st.steam_kg * STEAM_CV
    total_w = mean_w = 0.0
    dry_exposed = se.dry_area_m2
    for i in range(n):
        fill = 0.0
        if ps[i].condensed_kg > 0.0:
            density = condensed_density(fl, ps[i].condensed_k, ps[i].solid_share)
            fill = ps[i].condensed_kg / density / po[i].volume_m3
        wetted, surface = wetted_shares(fill)
        area = wetted * po[i].pocket_area_m2
        wet = min(area, po[i].area_m2)
        dry_exposed -= area - wet
        exposed = po[i].area_m2 - wet
        h = convection(fl, se, st.gas_k, ps[i].metal_k, rho_all) * exposed
        total_w += h
        mean_w += h * ps[i].metal_k
        if fill > 0.0:
            h = se.interface_w_per_m2k * surface * po[i].pocket_area_m2
            total_w += h
            mean_w += h * ps[i].condensed_k
    dry_exposed = max(dry_exposed, 0.0)
    dry_w = convection(fl, se, st.gas_k, st.dry_metal_k, rho_all) * dry_exposed
    total_w += dry_w
    mean_w += dry_w * st.dry_metal_k
    gas_mean = st.gas_k
    if total_w > 0.0 and not full:
        mean = mean_w / total_w
        x = total_w * dt / heat_capacity
        gas_mean = mean - (mean - st.gas_k) * ((1.0 - exp(-x)) / x if x > 1e-9 else 1.0)
    if full:
        dry_w = 0.0
    heat = dry_w * dt * (st.dry_metal_k - gas_mean)
    st.gas_energy_j += heat
    st.dry_metal_k -= heat / se.dry_metal_j_per_k

    # kelvin of saturation temperature per kilogram of vapour added
    slope = 0.0
    if fl.condensable:
        slope = 1.1 * st.co2_pa / max(st.gas_kg, LOWEST_GAS_KG) / phase(fl, saturated, DP_DT)

    # supersaturated gas forms mist, which falls into the first pocket
    if fl.condensable and st.gas_k < saturated - 1e-3 and not full:
        h_condensed = phase(fl, saturated, U) + st.co2_pa / phase(fl, saturated, RHO)
        latent = phase(fl, saturated, H_VAPOUR) - h_condensed
        kg = (saturated - st.gas_k) * (1.0 - exp(-dt / se.mist_s))
        kg /= latent / heat_capacity + slope
        kg = min(kg, 0.05 * st.gas_kg)
        st.gas_kg -= kg
        st.gas_energy_j -= kg * h_condensed
        give_condensed(ps, 0, kg, h_condensed)
        saturated -= slope * kg

    for i in range(n):
        fill = 0.0
        if ps[i].condensed_kg > 0.0:
            density = condensed_density(fl, ps[i].condensed_k, ps[i].solid_share)
            fill = ps[i].condensed_kg / density / po[i].volume_m3
        wetted, surface = wetted_shares(fill)
        area = wetted * po[i].pocket_area_m2
        wet = min(area, po[i].area_m2)
        exposed = po[i].area_m2 - wet
        if not full:
            h = convection(fl, se, st.gas_k, ps[i].metal_k, rho_all) * exposed
            heat = h * dt * (ps[i].metal_k - gas_mean)
            st.gas_energy_j += heat
            ps[i].metal_k -= heat / po[i].metal_j_per_k
        if ps[i].condensed_kg > 0.0:
            if full:
                contact = po[i].boil_w_per_m2k * (1.0 - ps[i].solid_share)
                contact += po[i].snow_contact_w_per_m2k * ps[i].solid_share
                capacity = ps[i].condensed_kg * phase(fl, ps[i].condensed_k, CP)
                both = 1.0 / (1.0 / capacity + 1.0 / po[i].metal_j_per_k)
                heat = both * (ps[i].metal_k - ps[i].condensed_k)
                heat *= 1.0 - exp(-contact * wet * dt / both)
                ps[i].condensed_j += heat
                ps[i].metal_k -= heat / po[i].metal_j_per_k
                both = 1.0 / (1.0 / capacity + 1.0 / se.dry_metal_j_per_k)
                heat = both * (st.dry_metal_k - ps[i].condensed_k)
                heat *= 1.0 - exp(-contact * (area - wet) * dt / both)
                ps[i].condensed_j += heat
                st.dry_metal_k -= heat / se.dry_metal_j_per_k
            else:
                h = se.interface_w_per_m2k * surface * po[i].pocket_area_m2
                gas_heat_w = h * (gas_mean - ps[i].condensed_k)
                st.gas_energy_j -= gas_heat_w * dt
                kg = boil(
                    fl, se, po, st, ps, i, saturated, slope, wet, area - wet,
                    surface * po[i].pocket_area_m2, gas_heat_w, dt,
                )  # fmt: skip
                saturated += slope * kg
        if fl.condensable and not full:
            ps[i].metal_k = condense_on_metal(
                fl, se, st, ps, i, ps[i].metal_k, po[i].metal_j_per_k, exposed, saturated,
                slope, dt,
            )  # fmt: skip
        if po[i].oil_kg > 0.0 or po[i].desiccant_kg > 0.0:
            sorb(fl, po, st, ps, i, dt)
        if ps[i].water_kg > 0.0 and not full:
            dry_out_water(po, st, ps, i, dt, gas_m3)
    if fl.condensable and not full:
        st.dry_metal_k = condense_on_metal(
            fl, se, st, ps, 0, st.dry_metal_k, se.dry_metal_j_per_k, dry_exposed, saturated,
            slope, dt,
        )  # fmt: skip

    # metal: along itself and to the surroundings
    for i in range(n):
        heat = po[i].to_dry_w_per_k * (st.dry_metal_k - ps[i].metal_k) * dt
        ambient = po[i].outside_w_per_k * (se.ambient_k - ps[i].metal_k) * dt
        ps[i].metal_k += (heat + ambient) / po[i].metal_j_per_k
        st.dry_metal_k -= heat / se.dry_metal_j_per_k
        st.heat_in_j += ambient
    ambient = se.dry_outside_w_per_k * (se.ambient_k - st.dry_metal_k) * dt
    st.dry_metal_k += ambient / se.dry_metal_j_per_k
    st.heat_in_j += ambient

    # the gas gives work to the condensed CO2 as its space grows, and the other way round
    for i in range(n):
        if ps[i].condensed_kg > 0.0:
            t, share = condensed_state(fl, ps[i].condensed_j / ps[i].condensed_kg)
            ps[i].condensed_k = t
            ps[i].solid_share = share
    new_volume, _, _ = condensed_volume(fl, ps)
    new_gas_m3 = max(se.volume_m3 - new_volume, se.smallest_gas_m3)
    grown = new_gas_m3 - gas_m3
    if grown != 0.0:
        work = st.co2_pa * grown if full else st.pressure_pa * grown
        if full:
            work = min(work, 0.2 * abs(st.gas_energy_j))
        st.gas_energy_j -= work
        largest = 0
        for i in range(n):
            if ps[i].condensed_kg > ps[largest].condensed_kg:
                largest = i
        if ps[largest].condensed_kg > 0.0:
            ps[largest].condensed_j += work
        else:
            ps[largest].metal_k += work / po[largest].metal_j_per_k
    settle(fl, se, st, ps)
    st.lowest_pa = min(st.lowest_pa, st.pressure_pa)
    st.time_s += dt
    st.steps += 1.0
    return dt


@jit
def advance(fl, se, po, st, ps, valve, seconds):
    """Advance the section by `seconds` with the vent valve at `valve` (0..1)."""
    left = seconds
    while left > 1e-12:
        left -= substep(fl, se, po, st, ps, valve, min(left, se.longest_step_s))


@jit
def read_gauge(ga, gs, st, ps, ambient_pa, period, noise):
    """Update what the gauge set shows after `period` seconds; `noise`: three normal numbers."""
    pressure = st.pressure_pa - ambient_pa
    clamp = ps[int(ga.clamp_pocket)].metal_k + ga.clamp_error_k
    upper = st.dry_metal_k + ga.upper_error_k
    stuck = ga.stuck_from_s <= st.time_s < ga.stuck_until_s
    if gs.started < 0.5:
        gs.started = 1.0
        gs.pressure_pa, gs.clamp_k, gs.upper_k = pressure, clamp, upper
    elif not stuck:
        f = 1.0 if ga.lag_s <= 0.0 else 1.0 - exp(-period / ga.lag_s)
        gs.pressure_pa += f * (pressure - gs.pressure_pa)
    f = 1.0 if ga.clamp_lag_s <= 0.0 else 1.0 - exp(-period / ga.clamp_lag_s)
    gs.clamp_k += f * (clamp - gs.clamp_k)
    gs.upper_k += f * (upper - gs.upper_k)
    shown = gs.pressure_pa * (1.0 + ga.span_error) + ga.zero_pa + ga.drift_pa_per_s * st.time_s
    if not stuck:  # a shut-off gauge loses its noise too
        shown += ga.noise_pa * noise[0]
    if ga.step_pa > 0.0:
        shown = ga.step_pa * int(shown / ga.step_pa + (0.5 if shown >= 0.0 else -0.5))
    gs.over_range = 1.0 if shown > ga.full_scale_pa else 0.0
    gs.shown_pa = shown


@jit
def write_row(fl, ga, gs, st, ps, valve, noise, row):
    """Write one output row (columns as `layout.OUTPUT`)."""
    row[0] = st.time_s
    row[1] = valve
    row[2] = nan if gs.over_range > 0.5 else gs.shown_pa
    row[3] = gs.clamp_k + ga.clamp_noise_k * noise[1]
    row[4] = gs.upper_k + ga.clamp_noise_k * noise[2]
    row[5] = st.pressure_pa
    liquid = solid = bound = 0.0
    coldest = warmest = st.dry_metal_k
    largest = 0
    for i in range(ps.shape[0]):
        solid += ps[i].condensed_kg * ps[i].solid_share
        liquid += ps[i].condensed_kg * (1.0 - ps[i].solid_share)
        bound += ps[i].dissolved_kg + ps[i].adsorbed_kg
        coldest = min(coldest, ps[i].metal_k)
        warmest = max(warmest, ps[i].metal_k)
        if ps[i].condensed_kg > ps[largest].condensed_kg:
            largest = i
    row[6] = liquid
    row[7] = solid
    row[8] = st.gas_kg
    row[9] = st.leak_by_now_kg_per_s
    row[10] = saturation_k(fl, max(st.pressure_pa, 1.0))
    row[11] = ps[largest].metal_k
    row[12] = st.dry_metal_k
    row[13] = st.gas_k
    row[14] = coldest
    row[15] = st.vented_kg
    row[16] = bound
    row[17] = warmest


@jit
def run(fl, se, po, st, ps, ga, gs, valve, period, noise, below_pa, above_pa, out):
    """Fill rows of `out`, one a `period`, at a fixed valve opening; return how many.

    Ends early, after the row, when the gauge shows less than `below_pa` or more than `above_pa`
    (gauge pressures as shown).
    """
    for row in range(out.shape[0]):
        advance(fl, se, po, st, ps, valve, period)
        read_gauge(ga, gs, st, ps, se.ambient_pa, period, noise[row])
        write_row(fl, ga, gs, st, ps, valve, noise[row], out[row])
        if gs.shown_pa < below_pa or gs.shown_pa > above_pa:
            return row + 1
    return out.shape[0]
