"""Before the vent: everything that follows from section, charge, gauge, bore and room."""

from dataclasses import dataclass, replace
from math import isfinite
from typing import Final

from co2vent import co2
from co2vent.co2.ranges import LOWEST_SUBLIMATION_PA
from co2vent.errors import RefusedInputError
from co2vent.planning import boil_off, caution, exposure, room
from co2vent.planning.boil_down import VentPath, dry_ice_on_the_shelf_kg, vent_vapor_to
from co2vent.planning.charge import ChargeState, charge_at
from co2vent.planning.exposure import ExposureLimit
from co2vent.planning.gauge_fit import gauge_fit
from co2vent.planning.metal import METAL_RANGE_C, metal_checks
from co2vent.planning.quantity import Kind, Quantity
from co2vent.planning.shapes import LimitCheck, PlanInput, PlanResult
from co2vent.planning.trapped import trapped
from co2vent.planning.volume import cylinder_area_m2
from co2vent.readings.limits import stop_pressure_pa, triple_point_pa_gauge
from co2vent.sentence import Sentence

# GWP 1 by definition: kg of CO2 are kg of CO2 equivalent (Regulation (EU) 2024/573, article 3).
GWP: Final = 1.0
# kind, and SI value = number * factor + offset, of the units in which a limit may be said
_SAID_IN: Final = {
    "bar g": (Kind.PRESSURE, 1e5, 0.0),
    "bar absolute": (Kind.ABSOLUTE, 1e5, 0.0),
    "degC": (Kind.TEMPERATURE, 1.0, 273.15),
}


def _require(value: float | None, name: str, low: float, high: float, unit: str) -> None:
    if value is not None and not (isfinite(value) and low <= value <= high):
        raise RefusedInputError(
            Sentence(
                "{name} must be a number from {low} to {high}, not {value}",
                name=name,
                low=_limit(low, unit, f"{low:g}"),
                high=_limit(high, unit, f"{high:g} {unit}".rstrip()),
                value=_limit(value, unit, f"{value:g}"),
            )
        )


def _limit(value: float, unit: str, words: str) -> str:
    if unit not in _SAID_IN:
        return words
    kind, factor, offset = _SAID_IN[unit]
    return Quantity(words, kind, value * factor + offset)


def _checked(given: PlanInput) -> None:
    """Refuse what can't be meant."""
    if (given.temperature_k is None) == (given.pressure_pa_gauge is None):
        raise RefusedInputError(
            Sentence(
                "give the charge's temperature or its pressure before the vent: one of them, not "
                "both"
            )
        )
    _require(given.volume_m3 * 1e3, Sentence("the volume"), 1e-3, 1e6, "l")
    _require(given.liquid_fraction, Sentence("the liquid fraction (by volume)"), 0.0, 1.0, "")
    _require(given.vent_bore_m * 1e3, Sentence("the vent bore"), 0.1, 500.0, "mm")
    _require(given.discharge_coefficient, Sentence("the discharge coefficient"), 0.05, 1.0, "")
    _require(given.ambient_k - 273.15, Sentence("the ambient temperature"), -70.0, 70.0, "degC")
    _require(given.room_m3, Sentence("the room"), 0.1, 1e7, "m3")
    _require(given.air_changes_per_hour, Sentence("air changes per hour"), 0.0, 1000.0, "")
    if given.metal_minimum_k is not None:
        _require(
            given.metal_minimum_k - 273.15,
            Sentence("the metal's lowest rated temperature"),
            *METAL_RANGE_C,
            "degC",
        )
    if given.relief_pa_gauge is not None:
        _require(given.relief_pa_gauge / 1e5, Sentence("the relief setting"), 0.1, 1000.0, "bar g")
    if given.pressure_pa_gauge is not None:
        absolute = given.pressure_pa_gauge + given.setup.ambient_pressure_pa
        _require(
            absolute / 1e5,
            Sentence("the charge pressure"),
            LOWEST_SUBLIMATION_PA / 1e5,
            1e3,
            "bar absolute",
        )
    if given.temperature_k is not None:
        _require(
            given.temperature_k - 273.15, Sentence("the charge temperature"), -119.15, 100.0, "degC"
        )


def _charge(given: PlanInput) -> ChargeState | None:
    """Return the charge; None at and above the critical point, where the density isn't known."""
    if given.temperature_k is not None:
        temperature = given.temperature_k
        if temperature > co2.CRITICAL_TEMPERATURE_K:
            return None
        return charge_at(given.volume_m3, temperature, given.filled)
    assert given.pressure_pa_gauge is not None
    pressure = given.pressure_pa_gauge + given.setup.ambient_pressure_pa
    if pressure > co2.CRITICAL_PRESSURE_PA:
        return None
    temperature = co2.equilibrium_temperature_k(pressure)
    # the two fits are inverse within 2e-5 K; the pressure as given is the one to show
    return replace(charge_at(given.volume_m3, temperature, given.filled), pressure_pa=pressure)


@dataclass(frozen=True, slots=True)
class _Vent:
    """Masses and times of the vent."""

    to_stop: VentPath
    dry_ice_kg: float


def _vent(given: PlanInput, charge: ChargeState, stop_pa: float) -> _Vent:
    if charge.temperature_k < co2.TRIPLE_TEMPERATURE_K:
        still = VentPath(charge.temperature_k, 0.0, charge.vapor_kg, 0.0, 0.0, None)
        return _Vent(still, charge.solid_kg)
    triple = vent_vapor_to(charge, co2.TRIPLE_PRESSURE_PA)
    path = vent_vapor_to(
        charge,
        stop_pa,
        bore_m=given.vent_bore_m,
        discharge_coefficient=given.discharge_coefficient,
        ambient_pressure_pa=given.setup.ambient_pressure_pa,
    )
    return _Vent(path, dry_ice_on_the_shelf_kg(triple.liquid_kg))


@dataclass(frozen=True, slots=True)
class _Room:
    """The room after and during the vent; None without a room or a known mass."""

    mixed_ppm: float | None = None
    layer_ppm: float | None = None
    ventilated_ppm: float | None = None
    oxygen_percent: float | None = None
    needed_m3_h: float | None = None
    clearing_s: float | None = None
    clearing_poor_s: float | None = None
    limits: tuple[LimitCheck, ...] = ()


def _limit_checks(
    limits: tuple[ExposureLimit, ...], mixed: float | None, layer: float | None
) -> tuple[LimitCheck, ...]:
    def passed(rise: float | None, limit: float) -> bool | None:
        return None if rise is None else rise + exposure.AMBIENT_AIR_PPM > limit

    return tuple(
        LimitCheck(
            name=limit.name,
            ppm=limit.ppm,
            averaged=limit.averaged,
            source=limit.source,
            passed_if_mixed=passed(mixed, limit.ppm),
            passed_in_floor_layer=passed(layer, limit.ppm),
        )
        for limit in limits
    )


def _room(given: PlanInput, charge: ChargeState | None, vent: _Vent | None) -> _Room:
    limits = exposure.LIMITS[given.country]
    long_term = limits[0].ppm
    ambient = given.setup.ambient_pressure_pa
    needed = None
    if vent is not None and vent.to_stop.highest_flow_kg_s:
        flow = vent.to_stop.highest_flow_kg_s
        needed = room.ventilation_m3_per_h(flow, long_term, ambient)
    if charge is None or given.room_m3 is None:
        return _Room(needed_m3_h=needed, limits=_limit_checks(limits, None, None))
    mixed = room.mixed_rise_ppm(charge.total_kg, given.room_m3, ambient)
    layer = room.floor_layer_rise_ppm(charge.total_kg, given.room_m3, ambient)
    changes = given.air_changes_per_hour
    ventilated = clearing = poor = None
    if changes is not None:
        clearing = room.clearing_time_s(mixed, long_term, changes)
        poor = room.clearing_time_s(mixed, long_term, changes, room.POOR_MIXING_FACTOR)
        if vent is not None and vent.to_stop.time_s:
            ventilated = room.ventilated_rise_ppm(
                vent.to_stop.vented_kg, vent.to_stop.time_s, given.room_m3, changes, ambient
            )
    return _Room(
        mixed_ppm=mixed,
        layer_ppm=layer,
        ventilated_ppm=ventilated,
        oxygen_percent=exposure.oxygen_percent(mixed),
        needed_m3_h=needed,
        clearing_s=clearing,
        clearing_poor_s=poor,
        limits=_limit_checks(limits, mixed, layer),
    )


def plan_vent(given: PlanInput) -> PlanResult:
    """Return the plan for a vent.

    Nonsense that can still be a mistake in the field (a charge above the critical point, a stop
    pressure that the gauge can't show) gives a result with None where nothing is known, and a
    sentence in `warnings`.

    Raises:
        RefusedInputError: both or neither of temperature and pressure, or a value that can't be.
    """
    _checked(given)
    setup = given.setup
    stop_pa = stop_pressure_pa(setup)
    charge = _charge(given)
    vent = None if charge is None else _vent(given, charge, stop_pa)
    relief_pa = None
    if given.relief_pa_gauge is not None:
        relief_pa = given.relief_pa_gauge + setup.ambient_pressure_pa
    shut = trapped(charge, relief_pa)
    air = _room(given, charge, vent)
    stop_k = co2.saturation_temperature_k(stop_pa)
    # a charge that is colder than the stop temperature is not warmed by the vent
    coldest_k = stop_k if charge is None else min(stop_k, charge.temperature_k)

    left = energy = bare = insulated = None
    if vent is not None:
        left = vent.to_stop.liquid_kg
        boiling_k = max(vent.to_stop.temperature_k, co2.TRIPLE_TEMPERATURE_K)
        energy = left * co2.latent_heat_j_kg(min(boiling_k, stop_k))
        area = given.outer_area_m2 or cylinder_area_m2(given.volume_m3)
        drive = given.ambient_k - stop_k
        bare = boil_off.not_before_s(energy, area, drive, boil_off.BARE_W_PER_M2K)
        insulated = boil_off.not_before_s(energy, area, drive, boil_off.INSULATED_W_PER_M2K)

    result = PlanResult(
        ambient_pressure_pa=setup.ambient_pressure_pa,
        ambient_pressure_assumed=setup.ambient_pressure_assumed,
        triple_point_pa_gauge=triple_point_pa_gauge(setup),
        stop_pressure_pa_gauge=stop_pa - setup.ambient_pressure_pa,
        stop_temperature_k=stop_k,
        volume_m3=given.volume_m3,
        volume_uncertainty_m3=given.volume_uncertainty_m3,
        charge_temperature_k=given.temperature_k if charge is None else charge.temperature_k,
        saturation_pressure_pa=None if charge is None else charge.pressure_pa,
        charge_pressure_pa_gauge=(
            given.pressure_pa_gauge
            if charge is None
            else charge.pressure_pa - setup.ambient_pressure_pa
        ),
        charge_kg=None if charge is None else charge.total_kg,
        liquid_kg=None if charge is None else charge.liquid_kg,
        vapor_kg=None if charge is None else charge.vapor_kg,
        dry_ice_kg=None if charge is None else charge.solid_kg,
        liquid_left_at_stop_kg=left,
        vented_to_stop_kg=None if vent is None else vent.to_stop.vented_kg,
        dry_ice_kg_if_vented_straight_down=None if vent is None else vent.dry_ice_kg,
        dry_ice_temperature_k=co2.sublimation_temperature_k(setup.ambient_pressure_pa),
        vent_to_stop_s=None if vent is None else vent.to_stop.time_s,
        highest_vent_flow_kg_s=None if vent is None else vent.to_stop.highest_flow_kg_s,
        boil_off_energy_j=energy,
        boil_off_bare_not_before_s=bare,
        boil_off_insulated_not_before_s=insulated,
        ways_to_remove_liquid=boil_off.ways_out(
            energy_j=energy or 0.0,
            bare_s=bare,
            insulated_s=insulated,
            liquid_temperature_k=stop_k,
            ambient_pressure_pa=setup.ambient_pressure_pa,
        ),
        trapped_liquid_bar_per_k=shut.bar_per_k,
        kelvin_to_relief=shut.kelvin_to_relief,
        liquid_full_at_k=shut.full_at_k,
        kelvin_to_relief_of_this_charge=shut.kelvin_of_this_charge,
        gauge_fit=gauge_fit(setup, None if charge is None else charge.pressure_pa),
        metals=metal_checks(coldest_k, given.metal_minimum_k),
        room_ppm_all_vented=air.mixed_ppm,
        room_ppm_floor_layer=air.layer_ppm,
        room_ppm_while_ventilated=air.ventilated_ppm,
        room_oxygen_percent_all_vented=air.oxygen_percent,
        ventilation_needed_m3_per_h=air.needed_m3_h,
        fresh_air_m3_per_kg=room.ventilation_m3_per_h(
            1.0 / 3600.0, exposure.LIMITS[given.country][0].ppm, setup.ambient_pressure_pa
        ),
        clearing_time_s=air.clearing_s,
        clearing_time_poorly_mixed_s=air.clearing_poor_s,
        exposure_limits=air.limits,
        co2e_kg=None if charge is None else charge.total_kg * GWP,
        assumptions=caution.assumptions(given),
        warnings=(),
    )
    return replace(result, warnings=caution.warnings(given, result))
