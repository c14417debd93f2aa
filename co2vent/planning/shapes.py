"""What a plan is made from and what it says."""

from dataclasses import dataclass, field
from typing import Final

from co2vent.planning.boil_off import WayOut
from co2vent.planning.exposure import Country
from co2vent.planning.gauge_fit import GaugeFit
from co2vent.planning.metal import MetalCheck
from co2vent.readings.reading import Setup

DEFAULT_LIQUID_FRACTION: Final = 0.5
DEFAULT_BORE_M: Final = 0.006  # a 1/4 in service hose; common practice, no source
DEFAULT_DISCHARGE_COEFFICIENT: Final = 0.85  # sharp valve seat; common practice, no source
DEFAULT_AMBIENT_K: Final = 293.15


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanInput:
    """What is known before the vent. SI; exactly one of temperature and gauge pressure.

    `setup` holds the site (ambient pressure) and the gauge. The liquid fraction is by volume.
    """

    volume_m3: float
    temperature_k: float | None = None
    pressure_pa_gauge: float | None = None
    liquid_fraction: float | None = None  # None: half is assumed, and said
    setup: Setup = field(default_factory=Setup)
    volume_uncertainty_m3: float | None = None
    outer_area_m2: float | None = None  # None: a cylinder eight diameters long
    vent_bore_m: float = DEFAULT_BORE_M
    discharge_coefficient: float = DEFAULT_DISCHARGE_COEFFICIENT
    ambient_k: float = DEFAULT_AMBIENT_K
    relief_pa_gauge: float | None = None
    metal_minimum_k: float | None = None
    room_m3: float | None = None
    air_changes_per_hour: float | None = None
    country: Country = Country.US
    assumed: tuple[str, ...] = ()  # sentences on what the caller assumed

    @property
    def filled(self) -> float:
        """The liquid fraction that is reckoned with."""
        return DEFAULT_LIQUID_FRACTION if self.liquid_fraction is None else self.liquid_fraction


@dataclass(frozen=True, slots=True, kw_only=True)
class LimitCheck:
    """An exposure limit and whether the room would pass it."""

    name: str
    ppm: float
    averaged: str
    source: str
    passed_if_mixed: bool | None
    passed_in_floor_layer: bool | None


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanResult:
    """The plan. Absolute Pa unless the name says gauge; None where it can't be known."""

    ambient_pressure_pa: float
    ambient_pressure_assumed: bool
    triple_point_pa_gauge: float
    stop_pressure_pa_gauge: float
    stop_temperature_k: float
    volume_m3: float
    volume_uncertainty_m3: float | None
    charge_temperature_k: float | None
    saturation_pressure_pa: float | None
    charge_pressure_pa_gauge: float | None
    charge_kg: float | None
    liquid_kg: float | None
    vapor_kg: float | None
    dry_ice_kg: float | None
    liquid_left_at_stop_kg: float | None
    vented_to_stop_kg: float | None
    dry_ice_kg_if_vented_straight_down: float | None
    dry_ice_temperature_k: float  # under its own vapour at ambient pressure
    vent_to_stop_s: float | None
    highest_vent_flow_kg_s: float | None
    boil_off_energy_j: float | None
    boil_off_bare_not_before_s: float | None
    boil_off_insulated_not_before_s: float | None
    ways_to_remove_liquid: tuple[WayOut, ...]
    trapped_liquid_bar_per_k: float | None
    kelvin_to_relief: float | None
    liquid_full_at_k: float | None
    kelvin_to_relief_of_this_charge: float | None
    gauge_fit: GaugeFit
    metals: tuple[MetalCheck, ...]
    room_ppm_all_vented: float | None
    room_ppm_floor_layer: float | None
    room_ppm_while_ventilated: float | None
    room_oxygen_percent_all_vented: float | None
    ventilation_needed_m3_per_h: float | None  # with the vent fully open
    fresh_air_m3_per_kg: float  # to keep the 8 h limit, evenly mixed
    clearing_time_s: float | None
    clearing_time_poorly_mixed_s: float | None
    exposure_limits: tuple[LimitCheck, ...]
    co2e_kg: float | None
    assumptions: tuple[str, ...]
    warnings: tuple[str, ...]
