"""Round trips, order, and what happens outside the stated ranges."""

import math
from collections.abc import Callable

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent import co2
from co2vent.errors import OutOfRangeError

boiling_t = st.floats(216.592, 304.1282)
frost_t = st.floats(154.0, 216.592)


@settings(deadline=None)
@given(boiling_t)
def test_boiling_temperature_inverts_pressure_within_a_tenth_of_a_millikelvin(t: float) -> None:
    pressure = min(co2.saturation_pressure_pa(t), co2.CRITICAL_PRESSURE_PA)
    assert co2.saturation_temperature_k(pressure) == pytest.approx(t, abs=1e-4)


@settings(deadline=None)
@given(frost_t)
def test_frost_temperature_inverts_pressure_within_a_tenth_of_a_millikelvin(t: float) -> None:
    pressure = min(co2.sublimation_pressure_pa(t), co2.TRIPLE_PRESSURE_PA)
    assert co2.sublimation_temperature_k(pressure) == pytest.approx(t, abs=1e-4)


@settings(deadline=None)
@given(st.floats(154.0, 304.0), st.floats(1e-3, 20.0))
def test_equilibrium_pressure_rises_with_temperature(t: float, rise: float) -> None:
    warmer = min(t + rise, co2.CRITICAL_TEMPERATURE_K)
    assert co2.equilibrium_pressure_pa(warmer) > co2.equilibrium_pressure_pa(t)
    assert co2.vapor_density_saturated_kg_m3(warmer) > co2.vapor_density_saturated_kg_m3(t) * (
        1 - 5e-4  # the two published density branches meet within 3e-4 at the triple point
    )


@settings(deadline=None)
@given(boiling_t, boiling_t)
def test_liquid_gets_lighter_and_richer_in_heat_when_warmer(a: float, b: float) -> None:
    cold, warm = sorted((a, b))
    if warm - cold < 1e-3:
        return
    assert co2.liquid_density_kg_m3(cold) > co2.liquid_density_kg_m3(warm)
    assert co2.liquid_enthalpy_j_kg(cold) < co2.liquid_enthalpy_j_kg(warm)
    assert co2.latent_heat_j_kg(min(cold, 303.0)) > 0


@settings(deadline=None)
@given(st.floats(195.15, 313.15), st.floats(1e-4, 1.0))
def test_vapour_density_inverts_pressure(t: float, share: float) -> None:
    highest = co2.equilibrium_pressure_pa(t) if t < 297.0 else 60e5
    pressure = share * min(highest, 60e5)
    density = co2.vapor_density_kg_m3(pressure, t)
    assert co2.vapor_pressure_pa(density, t) == pytest.approx(pressure, rel=1e-9)
    assert 0 < co2.compressibility(pressure, t) <= 1


@settings(deadline=None)
@given(st.floats(225.0, 310.0), st.floats(0.02, 0.9))
def test_vapour_slopes_agree_with_differences(t: float, share: float) -> None:
    highest = co2.equilibrium_pressure_pa(t) if t < 297.0 else 55e5
    rho = co2.vapor_density_kg_m3(share * min(highest, 55e5), t)
    h = 1e-3
    cv = (
        co2.vapor_internal_energy_j_kg(rho, t + h) - co2.vapor_internal_energy_j_kg(rho, t - h)
    ) / (2 * h)
    assert co2.vapor_cv_j_kg_k(rho, t) == pytest.approx(cv, rel=1e-5)
    ds = (co2.vapor_entropy_j_kg_k(rho, t + h) - co2.vapor_entropy_j_kg_k(rho, t - h)) / (2 * h)
    assert t * ds == pytest.approx(cv, rel=1e-5)
    dp = (co2.vapor_pressure_pa(rho, t + h) - co2.vapor_pressure_pa(rho, t - h)) / (2 * h)
    assert co2.vapor_pressure_slope_pa_per_k(rho, t) == pytest.approx(dp, rel=1e-5)
    # Maxwell: du/dv at constant T equals T dp/dT - p
    step = rho * 1e-4
    du = co2.vapor_internal_energy_j_kg(rho + step, t) - co2.vapor_internal_energy_j_kg(
        rho - step, t
    )
    expected = t * dp - co2.vapor_pressure_pa(rho, t)
    assert -du / (2 * step) * rho * rho == pytest.approx(expected, rel=1e-4, abs=1.0)


TEMPERATURE_FUNCTIONS: list[tuple[Callable[[float], float], float, float]] = [
    (co2.saturation_pressure_pa, 216.592, 304.1282),
    (co2.saturation_slope_pa_per_k, 216.592, 304.1282),
    (co2.liquid_density_kg_m3, 216.592, 304.1282),
    (co2.liquid_enthalpy_j_kg, 216.592, 304.1282),
    (co2.liquid_entropy_j_kg_k, 216.592, 304.1282),
    (co2.latent_heat_j_kg, 216.592, 304.1282),
    (co2.liquid_heat_capacity_j_kg_k, 216.592, 303.15),
    (co2.sublimation_pressure_pa, 154.0, 216.592),
    (co2.solid_density_kg_m3, 154.0, 216.592),
    (co2.solid_enthalpy_j_kg, 154.0, 216.592),
    (co2.sublimation_heat_j_kg, 154.0, 216.592),
    (co2.equilibrium_pressure_pa, 154.0, 304.1282),
    (co2.vapor_density_saturated_kg_m3, 154.0, 304.1282),
    (co2.vapor_enthalpy_saturated_j_kg, 154.0, 304.1282),
    (co2.melting_pressure_pa, 216.592, 330.0),
    (co2.liquid_full_pressure_slope_pa_per_k, 216.592, 298.15),
    (co2.ambient_pressure_pa, -2000.0, 11_000.0),
]


@pytest.mark.parametrize(("function", "low", "high"), TEMPERATURE_FUNCTIONS)
def test_both_ends_are_valid_and_beyond_them_is_an_error_that_names_the_range(
    function: Callable[[float], float], low: float, high: float
) -> None:
    assert math.isfinite(function(low))
    assert math.isfinite(function(high))
    step = 1e-6 * max(abs(low), abs(high))
    for value in (low - step, high + step, math.inf, -math.inf, math.nan):
        with pytest.raises(OutOfRangeError, match=r"from .* to ") as error:
            function(value)
        assert f"{low:.10g}" in str(error.value)
        assert f"{value:.10g}" in str(error.value)


@pytest.mark.parametrize("bad", [math.nan, math.inf, -1.0, 0.0])
def test_pressures_that_are_no_pressure_are_refused(bad: float) -> None:
    for function in (
        co2.saturation_temperature_k,
        co2.sublimation_temperature_k,
        co2.equilibrium_temperature_k,
    ):
        with pytest.raises(OutOfRangeError):
            function(bad)


def test_vapour_refuses_what_would_be_liquid_or_too_hot_or_too_dense() -> None:
    with pytest.raises(OutOfRangeError, match="condenses at 2648"):
        co2.vapor_density_kg_m3(30e5, 263.15)
    with pytest.raises(OutOfRangeError, match="6500000"):
        co2.vapor_density_kg_m3(66e5, 313.15)
    with pytest.raises(OutOfRangeError, match=r"318\.15"):
        co2.vapor_density_kg_m3(1e5, 330.0)
    with pytest.raises(OutOfRangeError):
        co2.vapor_density_kg_m3(math.nan, 273.15)
    with pytest.raises(OutOfRangeError):
        co2.vapor_density_kg_m3(1e5, math.nan)
    with pytest.raises(OutOfRangeError, match="up to"):
        co2.vapor_pressure_pa(200.0, 250.0)
    with pytest.raises(OutOfRangeError):
        co2.vapor_enthalpy_j_kg(math.nan, 250.0)
    assert co2.vapor_density_kg_m3(0.0, 250.0) == 0.0


def test_liquid_full_refuses_a_section_with_vapour_in_it() -> None:
    density = co2.liquid_density_kg_m3(263.15)
    with pytest.raises(OutOfRangeError, match="not liquid-full"):
        co2.liquid_pressure_pa(density, 262.0)
    with pytest.raises(OutOfRangeError, match="highest described"):
        co2.liquid_pressure_pa(density, 300.0)
    with pytest.raises(OutOfRangeError):
        co2.liquid_pressure_pa(500.0, 300.0)
    with pytest.raises(OutOfRangeError):
        co2.kelvin_to_pressure(300.0, 60e5)
    assert co2.kelvin_to_pressure(293.15, 52e5) == 0.0  # 57 bar already


# K of warming from liquid-full at degC to bar absolute, computed with CoolProp isochores
KELVIN_TO = {
    (-50, 52): 2.84, (-50, 130): 7.79, (-20, 60): 3.82, (-10, 60): 3.74, (-10, 120): 10.4,
    (0, 90): 7.44, (10, 60): 2.57, (10, 130): 14.3, (20, 60): 0.64, (20, 130): 16.5,
}  # fmt: skip


@pytest.mark.parametrize(("celsius", "bar"), KELVIN_TO)
def test_kelvin_to_a_relief_setting(celsius: int, bar: int) -> None:
    rise = co2.kelvin_to_pressure(celsius + 273.15, bar * 1e5)
    assert rise == pytest.approx(KELVIN_TO[celsius, bar], rel=0.01)


def test_arrays_equal_scalars_and_give_nan_outside() -> None:
    t = np.array([100.0, 154.0, 190.0, 216.592, 217.0, 263.15, 304.1282, 304.2, np.nan])
    pairs = [
        (co2.saturation_pressure_pa_array, co2.saturation_pressure_pa),
        (co2.sublimation_pressure_pa_array, co2.sublimation_pressure_pa),
        (co2.equilibrium_pressure_pa_array, co2.equilibrium_pressure_pa),
        (co2.liquid_density_kg_m3_array, co2.liquid_density_kg_m3),
        (co2.vapor_density_saturated_kg_m3_array, co2.vapor_density_saturated_kg_m3),
        (co2.solid_density_kg_m3_array, co2.solid_density_kg_m3),
        (co2.liquid_enthalpy_j_kg_array, co2.liquid_enthalpy_j_kg),
        (co2.vapor_enthalpy_saturated_j_kg_array, co2.vapor_enthalpy_saturated_j_kg),
        (co2.solid_enthalpy_j_kg_array, co2.solid_enthalpy_j_kg),
    ]
    p = np.array([0.0, 1e3, 2e3, 101_325.0, 517_950.0, 517_955.0, 2e6, 7.3773e6, 8e6, np.nan])
    inverses = [
        (co2.saturation_temperature_k_array, co2.saturation_temperature_k),
        (co2.sublimation_temperature_k_array, co2.sublimation_temperature_k),
        (co2.equilibrium_temperature_k_array, co2.equilibrium_temperature_k),
    ]
    for values, functions in ((t, pairs), (p, inverses)):
        for on_array, scalar in functions:
            expected = []
            for value in map(float, values):
                try:
                    expected.append(scalar(value))
                except OutOfRangeError:
                    expected.append(math.nan)
            np.testing.assert_allclose(on_array(values), expected, rtol=1e-12)


def test_vapour_density_array_equals_scalar_and_gives_nan_for_liquid() -> None:
    p = np.array([0.0, 1e5, 20e5, 30e5, 60e5, 66e5, np.nan, -1.0, 1e5])
    t = np.array([250.0, 200.0, 263.15, 263.15, 310.0, 310.0, 300.0, 300.0, 400.0])
    got = co2.vapor_density_kg_m3_array(p, t)
    assert np.isnan(got).tolist() == [False, False, False, True, False, True, True, True, True]
    for value, pp, tt in zip(got, p, t, strict=True):
        if not math.isnan(value):
            assert value == pytest.approx(co2.vapor_density_kg_m3(float(pp), float(tt)))
