"""A simulated vent in words a crew would use: from its tables to the model's parameters.

The tables and their keys: `scenario_file.py`.
"""

from dataclasses import dataclass
from math import pi
from typing import Final

from co2vent.co2 import TRIPLE_TEMPERATURE_K, kernels
from co2vent.co2.atmosphere import ambient_pressure_pa
from co2vent.errors import RefusedInputError
from co2vent.practice.scenario_file import Table, checked
from co2vent.readings.reading import Gas, Setup
from co2vent.section_model.parameters import (
    METALS,
    Contents,
    Gauge,
    Leaks,
    Pocket,
    Section,
    Setting,
    Sorbent,
    Surroundings,
    VentPath,
)
from co2vent.units import PRESSURE_UNITS, ZERO_CELSIUS_K

BARE_W_PER_M2K: Final = 11.0  # still air to light wind, with frost; common practice, no source
INSULATED_W_PER_M2K: Final = 0.6
LONGEST_M: Final = 400.0
MOST_KG_PER_L: Final = 0.2  # of oil, desiccant or water
MOST_LEAK_BY_G_PER_S: Final = 10.0  # more is an open valve
HOSE_TO_VALVE: Final = 1.7  # bore of the hose over that of the valve


@dataclass(frozen=True, slots=True, kw_only=True)
class Scenario:
    """A simulated vent: the truth (`setting`), what the person knows (`setup`), what is logged."""

    setting: Setting
    setup: Setup
    log_valve: bool = True
    log_clamp: bool = True
    log_vacuum: bool = False
    room_m3: float | None = None  # None: the vent ends outdoors
    air_changes_per_hour: float = 0.0

    @property
    def ambient_pa(self) -> float:
        """True pressure of the air on site [Pa]."""
        return self.setting.surroundings.pressure_pa


#: What a value can be; beyond, the model would compute something that no plant does. Dry ice fills
#: a section to 1560 kg/m3; noise, lag and accuracy of what is sold as a gauge (judgement).
RANGES: Final = {
    ("section", "volume_l"): (0.2, 5000.0),
    ("section", "diameter_mm"): (5.0, 2000.0),
    ("section", "wall_mm"): (0.3, 100.0),
    ("charge", "dry_metal_c"): (-90.0, 60.0),
    ("charge", "wet_metal_c"): (-90.0, 60.0),
    ("charge", "superheat_k"): (0.0, 80.0),
    ("charge", "nitrogen_bar"): (0.0, 60.0),
    ("vent", "bore_mm"): (0.1, 100.0),
    ("vent", "discharge_coefficient"): (0.05, 1.0),
    ("leaks", "leak_out_bore_mm"): (0.0, 10.0),
    ("surroundings", "ambient_c"): (-60.0, 60.0),
    ("surroundings", "air_changes_per_hour"): (0.0, 1000.0),
    ("gauge", "full_scale"): (0.1, 1e5),
    ("gauge", "accuracy_percent"): (0.0, 10.0),
    ("gauge", "step"): (0.0, 1e3),
    ("gauge", "noise"): (0.0, 1e3),
    ("gauge", "lag_s"): (0.0, 120.0),
    ("gauge", "period_s"): (0.05, 60.0),
    ("gauge", "clamp_error_k"): (-30.0, 30.0),
}
DRY_ICE_KG_PER_L: Final = 1.56


def _check_ranges(t: Table) -> None:
    for (table, key), (low, high) in RANGES.items():
        value = t[table][key]
        if value is not None and not low <= value <= high:
            raise RefusedInputError(f"[{table}] {key} must lie between {low:g} and {high:g}")
    most_kg = DRY_ICE_KG_PER_L * t["section"]["volume_l"]
    if not 0.0 <= t["charge"]["solid_kg"] <= most_kg:
        raise RefusedInputError(
            f"[charge] solid_kg must lie between 0 and {most_kg:.3g}: the section holds no more"
        )


def scenario_from(tables: Table) -> Scenario:
    """Return the scenario that `tables` describe (see the module's head).

    Raises:
        RefusedInputError: an unknown key or a value that cannot be.
    """
    t = checked(tables)
    _check_ranges(t)
    air, log = t["surroundings"], t["log"]
    ambient_pa = ambient_pressure_pa(air["altitude_m"])
    ambient_k = air["ambient_c"] + ZERO_CELSIUS_K
    if air["room_m3"] is not None and not air["room_m3"] > 0.0:
        raise RefusedInputError("[surroundings] room_m3 must be above zero")
    coldest = t["section"]["metal_minimum_c"]
    contents = _contents(t["charge"], ambient_pa)
    section = _section(t["section"], t["charge"])
    gauge, unit = _gauge(t["gauge"])
    relief = t["leaks"]["relief_bar_g"]
    setting = Setting(
        section=section,
        contents=contents,
        surroundings=Surroundings(temperature_k=ambient_k, pressure_pa=ambient_pa),
        vent=_vent(t["vent"]),
        leaks=_leaks(t["leaks"], t["vacuum"], ambient_pa),
        gauge=gauge,
    )
    known_ambient = ambient_pressure_pa(0.0) if not log["altitude"] else ambient_pa
    setup = Setup(
        ambient_pressure_pa=known_ambient,
        ambient_pressure_assumed=not log["altitude"],
        altitude_m=air["altitude_m"] if log["altitude"] else None,
        section_name=t["section"]["name"],
        section_volume_m3=section.volume_m3 if log["volume"] else None,
        gauge_full_scale_pa=gauge.full_scale_pa + known_ambient,
        gauge_accuracy_fraction=gauge.accuracy_percent / 100.0,
        gauge_span_pa=gauge.full_scale_pa,
        relief_pressure_pa=None if relief is None else relief * 1e5 + known_ambient,
        metal_minimum_temperature_k=None if coldest is None else coldest + ZERO_CELSIUS_K,
        insulated=t["section"]["insulated"],
        gas=_gas(log["gas"]),
        simulated=True,
        pressure_unit=unit,
        temperature_unit="degF" if unit == "psig" else "degC",
    )
    return Scenario(
        setting=setting,
        setup=setup,
        log_valve=log["valve"],
        log_clamp=t["gauge"]["clamp"],
        log_vacuum=log["vacuum"],
        room_m3=air["room_m3"],
        air_changes_per_hour=air["air_changes_per_hour"],
    )


def _gas(name: str) -> Gas:
    if name not in set(Gas):
        raise RefusedInputError(f"[log] gas: use one of {', '.join(Gas)}")
    return Gas(name)


def _section(table: Table, charge: Table) -> Section:
    if table["metal"] not in METALS:
        raise RefusedInputError(f"[section] metal: use one of {', '.join(METALS)}")
    length_m = table["volume_l"] * 1e-3 / (pi / 4.0 * (table["diameter_mm"] * 1e-3) ** 2)
    if not length_m <= LONGEST_M:
        raise RefusedInputError(
            f"[section] {table['volume_l']:g} l at {table['diameter_mm']:g} mm is {length_m:.0f} m "
            f"of pipe: a section has at most {LONGEST_M:g} m; give a larger diameter_mm"
        )
    for key in ("oil_kg", "desiccant_kg", "water_kg"):
        if not 0.0 <= charge[key] <= MOST_KG_PER_L * table["volume_l"]:
            raise RefusedInputError(
                f"[charge] {key} must lie between 0 and {MOST_KG_PER_L:g} kg a litre of section"
            )
    outside = table["outside_w_per_m2k"]
    if outside is None:
        outside = INSULATED_W_PER_M2K if table["insulated"] else BARE_W_PER_M2K
    sorbent = Sorbent(oil_kg=charge["oil_kg"], desiccant_kg=charge["desiccant_kg"])
    return Section(
        volume_m3=table["volume_l"] * 1e-3,
        diameter_m=table["diameter_mm"] * 1e-3,
        wall_m=table["wall_mm"] * 1e-3,
        metal=METALS[table["metal"]],
        outside_w_per_m2k=outside,
        pockets=(Pocket(sorbent=sorbent),),
    )


def _contents(table: Table, ambient_pa: float) -> Contents:
    temperature_c, gauge_bar = table["temperature_c"], table["pressure_bar_g"]
    condensed = table["liquid_fraction"] > 0.0 or table["solid_kg"] > 0.0
    if temperature_c is not None and gauge_bar is not None and condensed:
        raise RefusedInputError(
            "[charge] give temperature_c or pressure_bar_g, not both: above liquid or dry ice one "
            "follows from the other"
        )
    if not 0.0 <= table["liquid_fraction"] <= 1.0:
        raise RefusedInputError("[charge] liquid_fraction is a share of the volume, 0 to 1")
    if gauge_bar is not None:
        pressure_pa = gauge_bar * 1e5 + ambient_pa
        if not 2e3 < pressure_pa < 70e5:
            raise RefusedInputError("[charge] pressure_bar_g must lie between -0.9 and 68")
        saturated_k = kernels.equilibrium_temperature_k(pressure_pa)
        if temperature_c is not None:
            saturated_k = temperature_c + ZERO_CELSIUS_K
    else:
        saturated_k = (-10.0 if temperature_c is None else temperature_c) + ZERO_CELSIUS_K
        if not 190.0 < saturated_k < 303.0:
            raise RefusedInputError("[charge] temperature_c must lie between -83 and 29")
        pressure_pa = kernels.equilibrium_pressure_pa(saturated_k)
    if table["liquid_fraction"] > 0.0 and saturated_k <= TRIPLE_TEMPERATURE_K:
        raise RefusedInputError(
            "[charge] liquid CO2 is not colder than -56.6 degC: raise the temperature or leave "
            "the liquid out"
        )
    kelvin = {
        key: None if table[key] is None else table[key] + ZERO_CELSIUS_K
        for key in ("dry_metal_c", "wet_metal_c")
    }
    return Contents(
        temperature_k=saturated_k + (table["superheat_k"] if not table["liquid_fraction"] else 0.0),
        pressure_pa=pressure_pa,
        liquid_fraction=table["liquid_fraction"],
        solid_kg=table["solid_kg"],
        dry_metal_k=kelvin["dry_metal_c"],
        wet_metal_k=kelvin["wet_metal_c"],
        nitrogen_pa=table["nitrogen_bar"] * 1e5,
        water_kg=table["water_kg"],
    )


def _vent(table: Table) -> VentPath:
    bore = table["bore_mm"] * 1e-3
    return VentPath(
        bore_m=bore,
        hose_bore_m=HOSE_TO_VALVE * bore,
        low_point=table["low_point"],
        discharge_coefficient=table["discharge_coefficient"],
        # a few centimetres of hose filled with snow of half the density of dry ice
        snow_capacity_kg=0.05 * 0.785 * (HOSE_TO_VALVE * bore) ** 2 * 800.0
        if table["plugs"]
        else 0.0,
    )


def _leaks(table: Table, vacuum: Table, ambient_pa: float) -> Leaks:
    supply_k = table["supply_c"] + ZERO_CELSIUS_K
    if not TRIPLE_TEMPERATURE_K < supply_k < 303.0:
        raise RefusedInputError("[leaks] supply_c must lie between -56 and 29")
    if not 0.0 <= table["leak_by_g_per_s"] <= MOST_LEAK_BY_G_PER_S:
        raise RefusedInputError(
            f"[leaks] leak_by_g_per_s must lie between 0 and {MOST_LEAK_BY_G_PER_S:g}: more is an "
            "open valve"
        )
    liquid, vapour = kernels.liquid_enthalpy_j_kg, kernels.vapor_enthalpy_saturated_j_kg
    relief = table["relief_bar_g"]
    return Leaks(
        leak_by_kg_per_s=table["leak_by_g_per_s"] * 1e-3,
        supply_pa=kernels.saturation_pressure_pa(supply_k),
        supply_h_j_per_kg=(liquid if table["supply_liquid"] else vapour)(supply_k),
        leak_out_area_m2=0.7 * 0.785 * (table["leak_out_bore_mm"] * 1e-3) ** 2,
        relief_pa=0.0 if relief is None else relief * 1e5 + ambient_pa,
        pump_m3_per_s=vacuum["pump_l_per_min"] / 60e3,
        pump_ultimate_pa=vacuum["ultimate_pa"],
    )


def _gauge(table: Table) -> tuple[Gauge, str]:
    unit = PRESSURE_UNITS.get(table["unit"])
    if unit is None or not unit.gauge:
        names = ", ".join(name for name, u in PRESSURE_UNITS.items() if u.gauge)
        raise RefusedInputError(f"[gauge] unit: use one of {names}")
    gauge = Gauge(
        full_scale_pa=table["full_scale"] * unit.pascals,
        accuracy_percent=table["accuracy_percent"],
        step_pa=table["step"] * unit.pascals,
        noise_pa=table["noise"] * unit.pascals,
        zero_pa=table["zero"] * unit.pascals,
        lag_s=table["lag_s"],
        period_s=table["period_s"],
        clamp=table["clamp"],
        clamp_error_k=table["clamp_error_k"],
        stuck_from_s=table["stuck_from_s"],
        stuck_until_s=table["stuck_until_s"],
    )
    return gauge, unit.name
