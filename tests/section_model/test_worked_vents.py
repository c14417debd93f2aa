"""Vents without heat, against equilibrium thermodynamics worked out apart from the model."""

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest

from co2vent.co2 import kernels
from co2vent.section_model.layout import COLUMN
from co2vent.section_model.parameters import Contents, Leaks, Section, Setting
from co2vent.section_model.simulation import SectionRun

# Rigid adiabatic vessel from which only vapour leaves, two-phase energy balance integrated with
# the Span & Wagner equation of state (CoolProp): start degC, then liquid left at the triple point
# as a share of the initial mass, from liquid-full and from half full by volume.
LIQUID_LEFT = [
    (-40.0, 0.908, 0.888),
    (-30.0, 0.852, 0.826),
    (-20.0, 0.794, 0.760),
    (-10.0, 0.735, 0.691),
    (0.0, 0.671, 0.616),
    (10.0, 0.601, 0.534),
    (20.0, 0.516, 0.440),
]

# Saturated liquid throttled to 101 325 Pa: start degC, share of dry ice (Span & Wagner 1996 for the
# fluid, Jaeger & Span 2012 for the solid)
DRY_ICE_FROM_LIQUID = [(-30.0, 0.505), (-20.0, 0.468), (-10.0, 0.430), (0.0, 0.389), (10.0, 0.344)]


def vent_to_triple(setting: Setting) -> tuple[float, float]:
    """Return (initial mass, liquid left when the pressure reaches the triple point) [kg]."""
    run = SectionRun(setting)
    start = run.truth()
    rows = run.step(1.0, 60_000, below_pa=kernels.TRIPLE_P + 2000.0 - 101_325.0)
    assert rows[-1, COLUMN["solid_kg"]] == 0.0
    return start.liquid_kg + start.vapor_kg, float(rows[-1, COLUMN["liquid_kg"]])


def exact(setting: Setting) -> Setting:
    """Return `setting` with a gauge that shows the pressure as it is."""
    gauge = replace(setting.gauge, step_pa=0.0, noise_pa=0.0, lag_s=0.0, period_s=1.0)
    return replace(setting, gauge=gauge)


@pytest.mark.parametrize(("start_c", "from_full", "from_half"), LIQUID_LEFT)
def test_slow_vapour_venting_leaves_the_liquid_of_the_table(
    adiabatic: Callable[..., Setting], start_c: float, from_full: float, from_half: float
) -> None:
    for fill, expected in ((0.9985, from_full), (0.5, from_half)):
        contents = Contents(temperature_k=start_c + 273.15, liquid_fraction=fill)
        total, liquid = vent_to_triple(
            exact(adiabatic(contents, bore_m=0.0012, longest_step_s=0.5))
        )
        assert liquid / total == pytest.approx(expected, rel=0.01)


def test_of_liquid_vented_at_the_triple_point_0_635_becomes_dry_ice_and_most_of_it_stays(
    adiabatic: Callable[..., Setting],
) -> None:
    # h_fg / (h_fg + h_fus) = 350.38 / 552.04 = 0.6347 (Span & Wagner 1996, Jaeger & Span 2012);
    # from there to 1 atm the dry ice cools itself by subliming 4.9 % of it
    contents = Contents(temperature_k=kernels.TRIPLE_T + 0.01, liquid_fraction=0.5)
    run = SectionRun(exact(adiabatic(contents, bore_m=0.0008)))
    liquid = run.truth().liquid_kg
    rows = run.step(1.0, 200_000, below_pa=4.0e5)
    frozen = rows[rows[:, COLUMN["liquid_kg"]] < 1e-6]
    shelf = rows[(rows[:, COLUMN["solid_kg"]] > 0.02) & (rows[:, COLUMN["liquid_kg"]] > 0.02)]
    assert frozen[0, COLUMN["solid_kg"]] / liquid == pytest.approx(0.635, abs=0.005)
    # the shelf: the phase rule pins the pressure while the three phases are together
    assert shelf[:, COLUMN["pressure_pa"]] == pytest.approx(517_950.0, rel=0.01)
    rows = run.step(1.0, 200_000, below_pa=3000.0)
    assert rows[-1, COLUMN["solid_kg"]] / frozen[0, COLUMN["solid_kg"]] == pytest.approx(
        0.951, rel=0.01
    )


@pytest.mark.parametrize(("start_c", "share"), DRY_ICE_FROM_LIQUID)
def test_liquid_throttled_into_the_open_section_leaves_the_dry_ice_of_the_table(
    adiabatic: Callable[..., Setting], start_c: float, share: float
) -> None:
    cold = kernels.sublimation_temperature_k(101_325.0)
    contents = Contents(temperature_k=cold, pressure_pa=101_300.0)
    setting = adiabatic(contents, bore_m=0.02)
    leak = Leaks(
        leak_by_kg_per_s=2e-4,
        supply_pa=kernels.saturation_pressure_pa(start_c + 273.15),
        supply_h_j_per_kg=kernels.liquid_enthalpy_j_kg(start_c + 273.15),
    )
    run = SectionRun(replace(setting, leaks=leak))
    first = run.step(1.0, 200)[-1]
    last = run.step(1.0, 600)[-1]
    # the leak is choked throughout: 0.2 g/s
    grown = last[COLUMN["solid_kg"]] - first[COLUMN["solid_kg"]]
    assert grown / (2e-4 * (last[0] - first[0])) == pytest.approx(share, rel=0.01)


# Trapped liquid at constant volume (Span & Wagner by CoolProp): start degC, bar/K at the start,
# bar abs after +5 K and +10 K
TRAPPED = [
    (-50.0, 15.93, 86, 165),
    (-20.0, 10.57, 73, 125),
    (-10.0, 8.94, 71, 116),
    (10.0, 5.78, 74, 104),
]


@pytest.mark.parametrize(("start_c", "per_k", "after_5", "after_10"), TRAPPED)
def test_liquid_full_pressure_per_kelvin(
    start_c: float, per_k: float, after_5: float, after_10: float
) -> None:
    t = start_c + 273.15
    contents = Contents(
        temperature_k=t, liquid_fraction=0.999, dry_metal_k=t + 60.0, wet_metal_k=t + 60.0
    )
    # no heat to the last bubble, which would otherwise count in the first second
    section = Section(gas_factor=0.0, interface_w_per_m2k=0.0)
    run = SectionRun(Setting(section=section, contents=contents))
    rows = run.step(0.0, 4000, period_s=0.05, above_pa=170e5)
    pressure = rows[:, COLUMN["pressure_pa"]] / 1e5
    liquid = rows[:, COLUMN["condensed_k"]] - t
    assert np.interp(5.0, liquid, pressure) == pytest.approx(after_5, rel=0.01)
    assert np.interp(10.0, liquid, pressure) == pytest.approx(after_10, rel=0.01)
    slope = (np.interp(0.8, liquid, pressure) - np.interp(0.3, liquid, pressure)) / 0.5
    assert slope == pytest.approx(per_k, rel=0.01)
