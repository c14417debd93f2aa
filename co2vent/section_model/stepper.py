"""The compiled physics, one step after another. Import it only when a run starts: it loads numba.

State is what is conserved: kilograms and joules of the gas space and of the condensed CO2 of each
pocket, joules of the metal. Every exchange takes from one and gives the same to another, so mass
and energy close to rounding whatever the step; temperatures, phases and the pressure follow from
them (`settling`). Steps adapt to the flows; boiling and condensing are solved implicitly.
"""

from math import exp

from co2vent.section_model.boundary import leak_in, leave
from co2vent.section_model.exchange import (
    DRY_KG,
    LOWEST_GAS_KG,
    boil,
    condense_on_metal,
    convection,
    give_condensed,
    wetted_shares,
)
from co2vent.section_model.fluid import CP, DP_DT, H_VAPOUR, RHO, Array, FluidTables, U
from co2vent.section_model.jit import Rec, jit
from co2vent.section_model.packing import NITROGEN_CV, STEAM_CV
from co2vent.section_model.property_lookup import (
    condensed_density,
    condensed_state,
    gas_energy,
    phase,
    saturation_k,
)
from co2vent.section_model.readout import read_gauge, write_row
from co2vent.section_model.settling import condensed_volume, settle
from co2vent.section_model.sorption import dry_out_water, sorb


@jit
def wetting(fl: FluidTables, po: Rec, ps: Rec, i: int) -> tuple[float, float, float]:
    """Return pocket i's (area wetted of its wet node, of the dry metal, surface) [m2]."""
    if ps[i].condensed_kg <= 0.0:
        return 0.0, 0.0, 0.0
    density = condensed_density(fl, ps[i].condensed_k, ps[i].solid_share)
    share, surface = wetted_shares(ps[i].condensed_kg / density / po[i].volume_m3)
    area = share * po[i].pocket_area_m2
    wet = min(area, po[i].area_m2)
    return wet, area - wet, surface * po[i].pocket_area_m2


@jit
def mean_gas_k(
    fl: FluidTables, se: Rec, po: Rec, st: Rec, ps: Rec, rho: float, capacity: float, dt: float
) -> float:
    """Return the gas temperature [K] averaged over the step.

    One exponential for all surfaces together, so that a thin gas cannot overshoot its metal.
    """
    total_w = mean_w = 0.0
    dry_exposed = se.dry_area_m2
    for i in range(ps.shape[0]):
        wet, on_dry, surface = wetting(fl, po, ps, i)
        dry_exposed -= on_dry
        h = convection(fl, se, st.gas_k, ps[i].metal_k, rho) * (po[i].area_m2 - wet)
        total_w += h
        mean_w += h * ps[i].metal_k
        h = se.interface_w_per_m2k * surface
        total_w += h
        mean_w += h * ps[i].condensed_k
    h = convection(fl, se, st.gas_k, st.dry_metal_k, rho) * max(dry_exposed, 0.0)
    total_w += h
    mean_w += h * st.dry_metal_k
    x = total_w * dt / capacity
    if x < 1e-9:
        return float(st.gas_k)
    mean = mean_w / total_w
    return float(mean - (mean - st.gas_k) * (1.0 - exp(-x)) / x)


@jit
def warm_full(
    se: Rec, po: Rec, st: Rec, ps: Rec, i: int, c: float, area: float, dry_area: float, dt: float
) -> None:
    """Exchange heat between metal and the liquid that fills the section (c: J/kgK)."""
    share = ps[i].solid_share
    contact = po[i].boil_w_per_m2k * (1.0 - share) + po[i].snow_contact_w_per_m2k * share
    capacity = ps[i].condensed_kg * c
    both = 1.0 / (1.0 / capacity + 1.0 / po[i].metal_j_per_k)
    heat = both * (ps[i].metal_k - ps[i].condensed_k) * (1.0 - exp(-contact * area * dt / both))
    ps[i].condensed_j += heat
    ps[i].metal_k -= heat / po[i].metal_j_per_k
    both = 1.0 / (1.0 / capacity + 1.0 / se.dry_metal_j_per_k)
    heat = both * (st.dry_metal_k - ps[i].condensed_k)
    heat *= 1.0 - exp(-contact * dry_area * dt / both)
    ps[i].condensed_j += heat
    st.dry_metal_k -= heat / se.dry_metal_j_per_k


@jit
def exchange(fl: FluidTables, se: Rec, po: Rec, st: Rec, ps: Rec, gas_m3: float, dt: float) -> None:
    """Exchange heat and mass between gas, condensed CO2, metal, oil and water."""
    full = gas_m3 <= se.smallest_gas_m3
    rho = (st.gas_kg + st.nitrogen_kg + st.steam_kg) / gas_m3
    saturated = saturation_k(fl, max(st.co2_pa, 1.0))
    _, cv = gas_energy(fl, st.gas_kg / gas_m3, st.gas_k)
    capacity = st.gas_kg * cv + st.nitrogen_kg * NITROGEN_CV + st.steam_kg * STEAM_CV
    gas_k = mean_gas_k(fl, se, po, st, ps, rho, capacity, dt)
    # kelvin of saturation temperature per kilogram of vapour added
    slope = 0.0
    if fl.condensable:
        slope = 1.1 * st.co2_pa / max(st.gas_kg, LOWEST_GAS_KG) / phase(fl, saturated, DP_DT)
    if fl.condensable and not full and st.gas_k < saturated - 1e-3:
        # supersaturated gas forms mist, which falls into the first pocket
        h_condensed = phase(fl, saturated, U) + st.co2_pa / phase(fl, saturated, RHO)
        latent = phase(fl, saturated, H_VAPOUR) - h_condensed
        kg = (saturated - st.gas_k) * (1.0 - exp(-dt / se.mist_s)) / (latent / capacity + slope)
        kg = min(kg, 0.05 * st.gas_kg)
        st.gas_kg -= kg
        st.gas_energy_j -= kg * h_condensed
        give_condensed(ps, 0, kg, h_condensed)
        saturated -= slope * kg
    convective_w_per_m2k = convection(fl, se, st.gas_k, st.dry_metal_k, rho)
    dry_exposed = se.dry_area_m2
    for i in range(ps.shape[0]):
        wet, on_dry, surface = wetting(fl, po, ps, i)
        dry_exposed -= on_dry
        exposed = po[i].area_m2 - wet
        if full:
            if ps[i].condensed_kg > 0.0:
                c = phase(fl, ps[i].condensed_k, CP)
                warm_full(se, po, st, ps, i, c, wet, on_dry, dt)
        else:
            h = convection(fl, se, st.gas_k, ps[i].metal_k, rho) * exposed
            heat = h * dt * (ps[i].metal_k - gas_k)
            st.gas_energy_j += heat
            ps[i].metal_k -= heat / po[i].metal_j_per_k
            if ps[i].condensed_kg > 0.0:
                heat_w = se.interface_w_per_m2k * surface * (gas_k - ps[i].condensed_k)
                st.gas_energy_j -= heat_w * dt
                kg = boil(
                    fl, se, po, st, ps, i, saturated, slope, wet, on_dry, surface, heat_w, dt
                )  # fmt: skip
                saturated += slope * kg
            if ps[i].water_kg > 0.0:
                dry_out_water(po, st, ps, i, dt, gas_m3)
            if fl.condensable:
                ps[i].metal_k = condense_on_metal(
                    fl, se, st, ps, i, ps[i].metal_k, po[i].metal_j_per_k, exposed, saturated,
                    slope, dt,
                )  # fmt: skip
        if po[i].oil_kg > 0.0 or po[i].desiccant_kg > 0.0:
            sorb(fl, po, st, ps, i, dt)
    dry_exposed = max(dry_exposed, 0.0)
    if not full:
        heat = convective_w_per_m2k * dry_exposed * dt * (st.dry_metal_k - gas_k)
        st.gas_energy_j += heat
        st.dry_metal_k -= heat / se.dry_metal_j_per_k
        if fl.condensable:
            st.dry_metal_k = condense_on_metal(
                fl, se, st, ps, 0, st.dry_metal_k, se.dry_metal_j_per_k, dry_exposed, saturated,
                slope, dt,
            )  # fmt: skip


@jit
def conduct(se: Rec, po: Rec, st: Rec, ps: Rec, dt: float) -> None:
    """Let heat flow along the metal and from the surroundings."""
    for i in range(ps.shape[0]):
        heat = po[i].to_dry_w_per_k * (st.dry_metal_k - ps[i].metal_k) * dt
        ambient = po[i].outside_w_per_k * (se.ambient_k - ps[i].metal_k) * dt
        ps[i].metal_k += (heat + ambient) / po[i].metal_j_per_k
        st.dry_metal_k -= heat / se.dry_metal_j_per_k
        st.heat_in_j += ambient
    ambient = se.dry_outside_w_per_k * (se.ambient_k - st.dry_metal_k) * dt
    st.dry_metal_k += ambient / se.dry_metal_j_per_k
    st.heat_in_j += ambient


@jit
def gas_work(fl: FluidTables, se: Rec, po: Rec, st: Rec, ps: Rec, gas_m3: float) -> None:
    """Give the gas's work to the condensed CO2 as its space grows, and the other way round."""
    largest = 0
    for i in range(ps.shape[0]):
        if ps[i].condensed_kg > 0.0:
            t, share = condensed_state(fl, ps[i].condensed_j / ps[i].condensed_kg)
            ps[i].condensed_k = t
            ps[i].solid_share = share
        if ps[i].condensed_kg > ps[largest].condensed_kg:
            largest = i
    volume, _, _ = condensed_volume(fl, ps)
    grown = max(se.volume_m3 - volume, se.smallest_gas_m3) - gas_m3
    work = st.pressure_pa * grown
    if gas_m3 <= se.smallest_gas_m3:  # the first bubble does not have the liquid's pressure
        work = min(work, 0.2 * abs(st.gas_energy_j))
    st.gas_energy_j -= work
    if ps[largest].condensed_kg > DRY_KG:
        ps[largest].condensed_j += work
    else:
        ps[largest].metal_k += work / po[largest].metal_j_per_k


@jit
def substep(
    fl: FluidTables, se: Rec, po: Rec, st: Rec, ps: Rec, valve: float, longest: float
) -> float:
    """Advance by one step of at most `longest` seconds; return the seconds gone."""
    volume, _, _ = condensed_volume(fl, ps)
    gas_m3 = max(se.volume_m3 - volume, se.smallest_gas_m3)
    full = gas_m3 <= se.smallest_gas_m3
    dt = leave(fl, se, po, st, ps, valve, gas_m3, longest)
    leak_in(fl, se, st, ps, full, dt)
    exchange(fl, se, po, st, ps, gas_m3, dt)
    conduct(se, po, st, ps, dt)
    gas_work(fl, se, po, st, ps, gas_m3)
    settle(fl, se, st, ps)
    st.lowest_pa = min(st.lowest_pa, st.pressure_pa)
    st.time_s += dt
    st.steps += 1.0
    return dt


@jit
def run_rows(
    fl: FluidTables, se: Rec, po: Rec, st: Rec, ps: Rec, ga: Rec, gs: Rec, valve: float,
    period: float, noise: Array, below_pa: float, above_pa: float, out: Array,
) -> int:  # fmt: skip
    """Fill rows of `out`, one a `period`, at a fixed valve opening; return how many.

    Ends early, after the row, when the gauge shows less than `below_pa` or more than `above_pa`
    (gauge pressures as shown).
    """
    for row in range(out.shape[0]):
        left, end_s = period, st.time_s + period
        while left > 1e-12:
            left -= substep(fl, se, po, st, ps, valve, min(left, se.longest_step_s))
        st.time_s = end_s  # not the sum of many steps, which would drift in its last digits
        read_gauge(ga, gs, st, ps, se.ambient_pa, period, noise[row])
        write_row(fl, ga, gs, st, ps, valve, noise[row], out[row])
        if gs.shown_pa < below_pa or gs.shown_pa > above_pa:
            return row + 1
    return int(out.shape[0])
