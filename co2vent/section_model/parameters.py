"""What a section, its surroundings, its vent and its gauges are made of. SI, absolute, kelvin."""

from dataclasses import dataclass, field
from math import pi
from typing import Final

from co2vent.units import STANDARD_ATMOSPHERE_PA

SMALLEST_GAS_SHARE: Final = 1e-3  # of the volume: below it the section counts as liquid-full
DISCHARGE_COEFFICIENT: Final = 0.85  # sharp valve seat; common practice, no source


@dataclass(frozen=True, slots=True, kw_only=True)
class MetalKind:
    """A metal of pipes and shells. Sources: common handbook values, from memory."""

    name: str
    density_kg_m3: float
    heat_capacity_j_per_kg_k: float  # near -30 degC
    conductivity_w_per_m_k: float


COPPER: Final = MetalKind(
    name="copper",
    density_kg_m3=8930.0,
    heat_capacity_j_per_kg_k=370.0,
    conductivity_w_per_m_k=390.0,
)
STEEL: Final = MetalKind(
    name="steel", density_kg_m3=7850.0, heat_capacity_j_per_kg_k=430.0, conductivity_w_per_m_k=50.0
)
STAINLESS: Final = MetalKind(
    name="stainless steel",
    density_kg_m3=7950.0,
    heat_capacity_j_per_kg_k=450.0,
    conductivity_w_per_m_k=14.0,
)
METALS: Final = {metal.name: metal for metal in (COPPER, STEEL, STAINLESS)}


@dataclass(frozen=True, slots=True, kw_only=True)
class Sorbent:
    """Oil or desiccant that holds CO2; zero masses mean none.

    Oil follows Raoult's law (mole fraction = p over saturation pressure), the desiccant a Langmuir
    isotherm whose half-filling pressure falls in the cold. Both approach equilibrium with one time
    constant. Screening level: no measured oil or core is behind the numbers.
    """

    oil_kg: float = 0.0
    oil_molar_mass_kg_per_mol: float = 0.6
    desiccant_kg: float = 0.0
    desiccant_full_kg_per_kg: float = 0.2
    desiccant_half_pa: float = 1.5e5  # at 273.15 K
    desiccant_energy_k: float = 3500.0  # adsorption energy over the gas constant
    time_constant_s: float = 400.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Pocket:
    """A low part of the section where liquid or dry ice can lie, with the metal it wets.

    `wet_share`: share of the pocket's metal that is its wet node; the rest joins the dry node.
    Heat transfer: boiling liquid 150 to 1500 W/m2K, dry ice on metal much less (a gas film keeps
    them apart); `boil_s` and `snow_s` are the times in which superheat is boiled or sublimed away.
    """

    volume_share: float = 1.0
    wet_share: float = 0.35
    boil_w_per_m2k: float = 500.0
    snow_contact_w_per_m2k: float = 100.0
    boil_s: float = 0.25
    snow_s: float = 5.0
    sorbent: Sorbent = field(default_factory=Sorbent)


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """A rigid section: a pipe or shell of one diameter and wall, with its pockets."""

    volume_m3: float = 0.0145
    diameter_m: float = 0.08
    wall_m: float = 0.004
    metal: MetalKind = STEEL
    extra_metal_share: float = 0.15  # valves and flanges, of the wall's mass
    outside_w_per_m2k: float = 10.0  # to the ambient: bare 8 to 15, insulated 0.3 to 1
    pockets: tuple[Pocket, ...] = (Pocket(),)
    gas_factor: float = 0.13  # Nu = gas_factor * Ra^(1/3)
    interface_w_per_m2k: float = 5.0
    surface_condensation_w_per_m2k: float = 300.0
    film_condensation_w_per_m2k: float = 300.0
    mist_s: float = 0.7

    @property
    def inner_area_m2(self) -> float:
        """Inner area of the wall [m2]."""
        return 4.0 * self.volume_m3 / self.diameter_m

    @property
    def metal_kg(self) -> float:
        """Mass of the metal [kg]."""
        wall = pi * (self.diameter_m + self.wall_m) * self.wall_m
        length = 4.0 * self.volume_m3 / (pi * self.diameter_m**2)
        return wall * length * self.metal.density_kg_m3 * (1.0 + self.extra_metal_share)

    @property
    def outer_area_m2(self) -> float:
        """Outer area of the wall [m2]."""
        return self.inner_area_m2 * (1.0 + 2.0 * self.wall_m / self.diameter_m)


@dataclass(frozen=True, slots=True, kw_only=True)
class Surroundings:
    """Air around the section."""

    temperature_k: float = 285.15
    pressure_pa: float = STANDARD_ATMOSPHERE_PA


@dataclass(frozen=True, slots=True, kw_only=True)
class VentPath:
    """Vent valve and hose.

    `low_point`: the vent takes liquid while there is some. `snow_capacity_kg`: dry ice that plugs
    the hose when liquid passes (0: a vent body with nothing narrower behind it).
    """

    bore_m: float = 0.004
    discharge_coefficient: float = DISCHARGE_COEFFICIENT
    hose_bore_m: float = 0.010
    low_point: bool = False
    pocket: int = 0
    carry_over_fill: float = 0.9
    carry_over_velocity_m_per_s: float = 0.25
    snow_capacity_kg: float = 0.0
    snow_stick: float = 0.02
    hose_heat_w: float = 25.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Leaks:
    """Flow past the closed isolation valve and out to the air; relief valve; vacuum pump."""

    leak_by_kg_per_s: float = 0.0  # while choked
    supply_pa: float = 27e5
    supply_h_j_per_kg: float = 435_000.0  # vapour; about 176 kJ/kg for liquid at -10 degC
    leak_out_area_m2: float = 0.0
    relief_pa: float = 0.0  # absolute; 0: no relief valve
    relief_bore_m: float = 0.006
    pump_m3_per_s: float = 0.0
    pump_ultimate_pa: float = 5.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Contents:
    """What the section holds at the start.

    `temperature_k`: of the CO2. `liquid_fraction`: of the volume, shared out over the pockets by
    `pocket_liquid` (shares of the liquid; `None`: by their volume). Without liquid `pressure_pa`
    may lie below saturation: superheated vapour. `solid_kg` starts as dry ice under its own
    vapour. Metal and gas start at the given temperatures, or that of the CO2.
    """

    temperature_k: float = 263.15
    pressure_pa: float | None = None
    liquid_fraction: float = 0.0
    pocket_liquid: tuple[float, ...] | None = None
    solid_kg: float = 0.0
    dry_metal_k: float | None = None
    wet_metal_k: float | None = None
    gas_k: float | None = None  # warmer than the liquid below it
    nitrogen_pa: float = 0.0
    water_kg: float = 0.0
    loaded: bool = True  # oil and desiccant start in equilibrium with the gas


@dataclass(frozen=True, slots=True, kw_only=True)
class Gauge:
    """The gauge set: one pressure gauge and one or two clamps. Pressures are gauge pressures."""

    full_scale_pa: float = 60e5
    accuracy_percent: float = 0.25  # of full scale; what its plate says
    step_pa: float = 1e3
    noise_pa: float = 300.0  # standard deviation
    lag_s: float = 0.2
    zero_pa: float = 0.0
    span_error: float = 0.0
    drift_pa_per_s: float = 0.0
    stuck_from_s: float = float("inf")
    stuck_until_s: float = float("inf")
    clamp: bool = True
    upper_clamp: bool = False
    clamp_pocket: int = 0
    clamp_error_k: float = 0.0
    clamp_lag_s: float = 15.0
    clamp_noise_k: float = 0.05
    clamp_step_k: float = 0.1
    upper_error_k: float = 0.0
    period_s: float = 1.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Setting:
    """Everything the model needs: section, contents, surroundings, vent, leaks, gauge."""

    section: Section = field(default_factory=Section)
    contents: Contents = field(default_factory=Contents)
    surroundings: Surroundings = field(default_factory=Surroundings)
    vent: VentPath = field(default_factory=VentPath)
    leaks: Leaks = field(default_factory=Leaks)
    gauge: Gauge = field(default_factory=Gauge)
    longest_step_s: float = 0.05
