"""From the readable parameters to the records that the compiled stepper works on."""

from collections.abc import Mapping
from dataclasses import dataclass
from math import exp, pi
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from co2vent.errors import OutOfRangeError
from co2vent.section_model.fluid import (
    RHO,
    FluidTables,
    P,
    U,
    gas_density,
    gas_value,
    phase_value,
)
from co2vent.section_model.layout import (
    GAUGE,
    GAUGE_STATE,
    MAX_POCKETS,
    POCKET,
    POCKET_STATE,
    SECTION,
    STATE,
)
from co2vent.section_model.parameters import SMALLEST_GAS_SHARE, Gauge, Setting

MOLAR_CO2: Final = 0.0440098  # kg/mol
NITROGEN_R: Final = 296.8  # J/kgK
NITROGEN_CV: Final = 743.0
STEAM_CV: Final = 1404.0
WATER_LATENT_J_PER_KG: Final = 2.501e6
DISSOLVED_J_PER_KG: Final = 112_900.0  # of CO2 in oil or desiccant: liquid at -40 degC


@dataclass(frozen=True, slots=True)
class Records:
    """The packed records of one section; `state`, `pocket_state` and `gauge_state` change."""

    fluid: FluidTables
    section: NDArray[Any]
    pockets: NDArray[Any]
    state: NDArray[Any]
    pocket_state: NDArray[Any]
    gauge: NDArray[Any]
    gauge_state: NDArray[Any]


def fill(record: Any, values: Mapping[str, float]) -> None:
    """Set every field of a one-row record; a missing or unknown name is an error."""
    names = record.dtype.names or ()
    if set(names) != set(values):
        raise KeyError(f"record fields differ: {set(names) ^ set(values)}")
    for name in names:
        record[name] = values[name]


def pack(setting: Setting, fluid: FluidTables) -> Records:
    """Return the records of `setting` at its start.

    Raises OutOfRangeError when the contents don't fit or lie outside the property ranges.
    """
    s, v, k, c = setting.section, setting.vent, setting.leaks, setting.contents
    if not 1 <= len(s.pockets) <= MAX_POCKETS:
        raise OutOfRangeError(f"a section has 1 to {MAX_POCKETS} pockets, not {len(s.pockets)}")
    n = len(s.pockets)
    section, state = np.zeros(1, SECTION), np.zeros(1, STATE)
    pockets, pocket_state = np.zeros(n, POCKET), np.zeros(n, POCKET_STATE)
    area, outer = s.inner_area_m2, s.outer_area_m2
    heat_capacity = s.metal_kg * s.metal.heat_capacity_j_per_kg_k
    wet_share = sum(p.volume_share * p.wet_share for p in s.pockets)
    fill(
        section,
        {
            "volume_m3": s.volume_m3,
            "smallest_gas_m3": SMALLEST_GAS_SHARE * s.volume_m3,
            "dry_metal_j_per_k": heat_capacity * (1.0 - wet_share),
            "dry_area_m2": area * (1.0 - wet_share),
            "dry_outside_w_per_k": outer * (1.0 - wet_share) * s.outside_w_per_m2k,
            "gas_factor": s.gas_factor,
            "interface_w_per_m2k": s.interface_w_per_m2k,
            "surface_condensation_w_per_m2k": s.surface_condensation_w_per_m2k,
            "film_condensation_w_per_m2k": s.film_condensation_w_per_m2k,
            "mist_s": s.mist_s,
            "ambient_k": setting.surroundings.temperature_k,
            "ambient_pa": setting.surroundings.pressure_pa,
            "vent_area_m2": v.discharge_coefficient * pi / 4.0 * v.bore_m**2,
            "hose_area_m2": v.discharge_coefficient * pi / 4.0 * v.hose_bore_m**2,
            "vent_low": float(v.low_point),
            "vent_pocket": float(v.pocket),
            "carry_over_fill": v.carry_over_fill,
            "carry_over_velocity_m_per_s": v.carry_over_velocity_m_per_s,
            # vapour leaves over a length of some ten diameters of the surface
            "cross_section_m2": 10.0 * s.diameter_m**2,
            "snow_stick": v.snow_stick,
            "snow_capacity_kg": v.snow_capacity_kg,
            "hose_heat_w": v.hose_heat_w,
            "supply_pa": k.supply_pa,
            "leak_by_kg_per_s": k.leak_by_kg_per_s,
            "leak_by_h": k.supply_h_j_per_kg,
            "leak_out_area_m2": k.leak_out_area_m2,
            "relief_pa": k.relief_pa,
            "relief_area_m2": 0.7 * pi / 4.0 * k.relief_bore_m**2 if k.relief_pa > 0.0 else 0.0,
            "pump_m3_per_s": k.pump_m3_per_s,
            "pump_ultimate_pa": k.pump_ultimate_pa,
            "longest_step_s": setting.longest_step_s,
        },
    )
    half_perimeter = pi * s.diameter_m / 2.0
    for record, pocket in zip(pockets, s.pockets, strict=True):
        sorbent = pocket.sorbent
        share = pocket.volume_share * pocket.wet_share
        length = 4.0 * s.volume_m3 * pocket.volume_share / (pi * s.diameter_m**2)
        # along the circumference, from the middle of the wet arc to that of the dry one, both edges
        conduction = 2.0 * s.metal.conductivity_w_per_m_k * s.wall_m * length / half_perimeter
        fill(
            record,
            {
                "volume_m3": s.volume_m3 * pocket.volume_share,
                "metal_j_per_k": heat_capacity * share,
                "area_m2": area * share,
                "pocket_area_m2": area * pocket.volume_share,
                "outside_w_per_k": outer * share * s.outside_w_per_m2k,
                "to_dry_w_per_k": conduction,
                "boil_w_per_m2k": pocket.boil_w_per_m2k,
                "snow_contact_w_per_m2k": pocket.snow_contact_w_per_m2k,
                "boil_s": pocket.boil_s,
                "snow_s": pocket.snow_s,
                "oil_kg": sorbent.oil_kg,
                "oil_molar_mass": sorbent.oil_molar_mass_kg_per_mol,
                "desiccant_kg": sorbent.desiccant_kg,
                "desiccant_full": sorbent.desiccant_full_kg_per_kg,
                "desiccant_half_pa": sorbent.desiccant_half_pa,
                "desiccant_k": sorbent.desiccant_energy_k,
                "sorption_s": sorbent.time_constant_s,
            },
        )
    records = Records(
        fluid,
        section,
        pockets,
        state,
        pocket_state,
        pack_gauge(setting.gauge),
        np.zeros(1, GAUGE_STATE),
    )
    state["dry_metal_k"] = c.temperature_k if c.dry_metal_k is None else c.dry_metal_k
    pocket_state["metal_k"] = c.temperature_k if c.wet_metal_k is None else c.wet_metal_k
    pocket_state["water_kg"] = c.water_kg / n
    put_in(records, setting)
    return records


def pack_gauge(gauge: Gauge) -> NDArray[Any]:
    """Return the gauge's record."""
    record = np.zeros(1, GAUGE)
    for name in GAUGE.names or ():
        record[name] = getattr(gauge, name)
    return record


def put_in(records: Records, setting: Setting) -> None:
    """Put the starting CO2 (and nitrogen, oil charge) into the state records."""
    c, fluid = setting.contents, records.fluid
    st, ps = records.state[0], records.pocket_state
    volume = setting.section.volume_m3
    t = c.temperature_k
    liquid_m3 = min(c.liquid_fraction, 1.0) * volume
    pressure = c.pressure_pa
    if fluid.condensable:
        saturated = phase_value(fluid, t, P)
        if liquid_m3 > 0.0 and t <= fluid.triple_t:
            raise OutOfRangeError("liquid CO2 is not colder than -56.6 degC: raise the temperature")
        if t > 303.15 and liquid_m3 > 0.0:
            raise OutOfRangeError(
                "liquid CO2 is not warmer than 30 degC here: lower the temperature"
            )
        if pressure is None or liquid_m3 > 0.0 or c.solid_kg > 0.0:
            pressure = saturated
        elif t < 303.9 and pressure > saturated * 1.0001:
            raise OutOfRangeError(
                "vapour at this temperature cannot have that pressure: it would be liquid"
            )
    if pressure is None:
        raise OutOfRangeError("give the pressure of the gas at the start")
    if liquid_m3 > 0.0:
        density = phase_value(fluid, t, RHO)
        energy = phase_value(fluid, t, U)
        shares = c.pocket_liquid or tuple(p.volume_share for p in setting.section.pockets)
        for i, share in enumerate(shares):
            kg = liquid_m3 * density * share / sum(shares)
            ps[i]["condensed_kg"] = kg
            ps[i]["condensed_j"] = kg * energy
            ps[i]["condensed_k"] = t
    elif c.solid_kg > 0.0:
        ps[0]["condensed_kg"] = c.solid_kg
        ps[0]["condensed_j"] = c.solid_kg * phase_value(fluid, min(t, fluid.triple_t), U)
        ps[0]["condensed_k"] = min(t, fluid.triple_t)
        ps[0]["solid_share"] = 1.0
        liquid_m3 = c.solid_kg / phase_value(fluid, min(t, fluid.triple_t), RHO)
    gas_m3 = max(volume - liquid_m3, float(records.section[0]["smallest_gas_m3"]))
    if c.gas_k is not None:
        t = c.gas_k
    density = gas_density(fluid, pressure, t)
    _, u = gas_value(fluid, density, t)
    nitrogen = c.nitrogen_pa * gas_m3 / (NITROGEN_R * t)
    st["gas_kg"] = density * gas_m3
    st["nitrogen_kg"] = nitrogen
    st["gas_energy_j"] = st["gas_kg"] * u + nitrogen * NITROGEN_CV * t
    st["gas_k"] = t
    st["co2_pa"] = pressure
    st["pressure_pa"] = pressure + c.nitrogen_pa
    st["lowest_pa"] = st["pressure_pa"]
    if c.loaded and fluid.condensable:
        for i, pocket in enumerate(setting.section.pockets):
            load(records, i, pocket.sorbent.time_constant_s)


def load(records: Records, pocket: int, time_constant_s: float) -> None:
    """Bring oil and desiccant of a pocket to equilibrium with the gas, from outside the section."""
    po, ps, st = records.pockets[pocket], records.pocket_state[pocket], records.state[0]
    t = float(ps["metal_k"])
    saturated = phase_value(records.fluid, min(max(t, 160.0), 303.0), P)
    p = float(st["co2_pa"])
    if po["oil_kg"] > 0.0:
        x = min(0.9, p / saturated)
        ps["dissolved_kg"] = po["oil_kg"] * MOLAR_CO2 / po["oil_molar_mass"] * x / (1.0 - x)
    if po["desiccant_kg"] > 0.0:
        half = po["desiccant_half_pa"] * exp(-po["desiccant_k"] * (1.0 / t - 1.0 / 273.15))
        ps["adsorbed_kg"] = po["desiccant_kg"] * po["desiccant_full"] * p / (p + half)
