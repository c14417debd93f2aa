"""How parameters and state lie in memory for the compiled stepper: numpy record types.

SI throughout: pascal absolute, kelvin, kilogram, watt, joule, second. A name ending in `_w_per_k`
is a heat conductance. Energies are internal energies on the datum of `co2vent.co2`.
"""

from typing import Final

import numpy as np

MAX_POCKETS: Final = 4

SECTION: Final = np.dtype(
    [
        (name, np.float64)
        for name in (
            "volume_m3",
            "smallest_gas_m3",  # gas space left when the section counts as liquid-full
            "dry_metal_j_per_k",
            "dry_area_m2",
            "dry_outside_w_per_k",
            "gas_factor",  # Nu = factor * Ra^(1/3)
            "interface_w_per_m2k",  # gas to liquid surface
            "surface_condensation_w_per_m2k",  # vapour condensing on the liquid or solid surface
            "film_condensation_w_per_m2k",  # vapour condensing on colder metal
            "mist_s",
            "ambient_k",
            "ambient_pa",
            "vent_area_m2",  # discharge coefficient times area, fully open
            "hose_area_m2",  # the same for the hose
            "vent_low",  # 1: the vent is at the low point of the vent pocket
            "vent_pocket",
            "carry_over_fill",  # volume share of liquid from which a top vent carries it over
            "carry_over_velocity_m_per_s",
            "cross_section_m2",
            "snow_stick",  # share of the dry ice passing the hose that stays there
            "snow_capacity_kg",  # dry ice that plugs the hose; 0: it cannot plug
            "hose_heat_w",
            "supply_pa",
            "leak_by_kg_per_s",  # while choked
            "leak_by_h",  # J/kg of what leaks in
            "leak_out_area_m2",
            "relief_pa",
            "relief_area_m2",
            "pump_m3_per_s",
            "pump_ultimate_pa",
            "longest_step_s",
        )
    ]
)

POCKET: Final = np.dtype(
    [
        (name, np.float64)
        for name in (
            "volume_m3",
            "metal_j_per_k",
            "area_m2",  # inner area of the wet metal node
            "pocket_area_m2",  # inner area of the whole pocket, for level and surface
            "outside_w_per_k",
            "to_dry_w_per_k",
            "boil_w_per_m2k",
            "snow_contact_w_per_m2k",
            "boil_s",  # relaxation of superheated liquid towards saturation
            "snow_s",  # the same for dry ice
            "oil_kg",
            "oil_molar_mass",  # kg/mol
            "desiccant_kg",
            "desiccant_full",  # kg CO2 per kg desiccant
            "desiccant_half_pa",  # pressure of half filling at 273.15 K
            "desiccant_k",  # adsorption energy over R
            "sorption_s",
        )
    ]
)

STATE: Final = np.dtype(
    [
        (name, np.float64)
        for name in (
            "time_s",
            "gas_kg",
            "nitrogen_kg",
            "steam_kg",
            "gas_energy_j",
            "gas_k",
            "dry_metal_k",
            "pressure_pa",
            "co2_pa",
            "relief_open",
            "pump_on",
            "hose_snow_kg",
            "leak_by_now_kg_per_s",
            "vent_now_kg_per_s",
            # accounts since the start: what crossed the boundary
            "vented_kg",
            "vented_condensed_kg",
            "vented_other_kg",
            "vented_j",
            "relieved_kg",
            "leaked_in_kg",
            "leaked_in_j",
            "leaked_out_kg",
            "pumped_kg",
            "heat_in_j",
            "lowest_pa",
            "steps",
        )
    ]
)

POCKET_STATE: Final = np.dtype(
    [
        (name, np.float64)
        for name in (
            "condensed_kg",
            "condensed_j",
            "condensed_k",
            "solid_share",
            "metal_k",
            "dissolved_kg",  # CO2 in oil
            "adsorbed_kg",  # CO2 on desiccant
            "water_kg",
        )
    ]
)

GAUGE: Final = np.dtype(
    [
        (name, np.float64)
        for name in (
            "full_scale_pa",  # gauge pressure
            "step_pa",
            "noise_pa",
            "lag_s",
            "zero_pa",
            "span_error",  # of reading
            "drift_pa_per_s",
            "stuck_from_s",  # plugged or shut off from here on
            "stuck_until_s",
            "clamp_error_k",
            "clamp_lag_s",
            "clamp_noise_k",
            "clamp_pocket",
            "upper_error_k",
        )
    ]
)

GAUGE_STATE: Final = np.dtype(
    [
        (name, np.float64)
        for name in ("started", "pressure_pa", "clamp_k", "upper_k", "shown_pa", "over_range")
    ]
)

# columns of one output row of a run
OUTPUT: Final = (
    "elapsed_s",
    "valve",  # 0..1
    "gauge_pa",  # gauge pressure shown, Pa; NaN over range
    "clamp_k",
    "upper_k",
    "pressure_pa",  # true, absolute
    "liquid_kg",
    "solid_kg",
    "vapor_kg",
    "leak_by_kg_per_s",
    "saturation_k",
    "wet_metal_k",  # of the pocket with the most condensed CO2, else of the first
    "dry_metal_k",
    "gas_k",
    "coldest_metal_k",
    "vented_kg",
    "bound_kg",  # CO2 in oil and desiccant
    "warmest_metal_k",
    "condensed_k",  # of the pocket with the most condensed CO2
)
COLUMN: Final = {name: index for index, name in enumerate(OUTPUT)}
