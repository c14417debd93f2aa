"""Standing-pressure test and vacuum-rise test, against outside figures.

Traces are made here from CoolProp's densities and textbook curves, not with the code under test.
"""

from collections.abc import Callable

import numpy as np
import pytest

from co2vent.errors import OutOfRangeError
from co2vent.inference.closed_gas import (
    gas_density_kg_m3,
    nitrogen_compressibility,
    pressure_slopes,
)
from co2vent.inference.held import fit_slope, student_975
from co2vent.inference.standing_test import StandingLimits, Tightness, standing_test
from co2vent.inference.vacuum_rise import VacuumVerdict, vacuum_rise_test
from co2vent.inference.water import water_vapour_pressure_pa
from co2vent.readings.reading import Gas, Reading, Setup
from co2vent.units import MICRON_PA

# -- nitrogen as a real gas -------------------------------------------------------------------


def test_nitrogen_is_within_a_tenth_of_a_percent_of_the_reference_equation() -> None:
    """CoolProp: Span et al. 2000. The aim is 1 % from 10 to 120 bar, -30 to 40 degC."""
    from CoolProp.CoolProp import PropsSI

    pressure, kelvin = (
        grid.ravel()
        for grid in np.meshgrid(np.linspace(1e5, 160e5, 21), np.linspace(233.15, 323.15, 11))
    )
    expected = PropsSI("Z", "P", pressure, "T", kelvin, "Nitrogen")
    assert np.abs(nitrogen_compressibility(pressure, kelvin) / expected - 1.0).max() < 1e-3


def test_nitrogen_agrees_with_an_independent_library() -> None:
    """PYroMat's own multi-phase nitrogen (its implementation, not CoolProp's)."""
    import pyromat

    nitrogen = pyromat.get("mp.N2")
    for bar, kelvin in ((10.0, 243.15), (53.0, 293.15), (91.0, 263.15), (121.0, 313.15)):
        expected = float(nitrogen.d(T=kelvin, p=bar)[0])
        found = gas_density_kg_m3(Gas.NITROGEN, np.array([bar * 1e5]), np.array([kelvin]))[0]
        assert found == pytest.approx(expected, rel=1e-3)


@pytest.mark.parametrize(
    ("bar_g", "bar_per_k"), [(10, 0.039), (30, 0.114), (52, 0.204), (90, 0.377), (120, 0.526)]
)
def test_nitrogen_slopes_are_those_of_the_published_table(bar_g: float, bar_per_k: float) -> None:
    """Real-gas standing-test slopes at 20 degC, computed with the reference equation; 3 digits."""
    slope, _ = pressure_slopes(Gas.NITROGEN, bar_g * 1e5 + 101_325.0, 293.15)
    assert slope / 1e5 == pytest.approx(bar_per_k, abs=0.0006)


@pytest.mark.parametrize("bar_g", [10.0, 52.0, 120.0])
@pytest.mark.parametrize("celsius", [-30.0, 0.0, 40.0])
def test_nitrogen_slopes_agree_with_coolprop(bar_g: float, celsius: float) -> None:
    from CoolProp.CoolProp import PropsSI

    pressure, kelvin = bar_g * 1e5 + 101_325.0, celsius + 273.15
    expected = PropsSI("d(P)/d(T)|D", "P", pressure, "T", kelvin, "Nitrogen")
    assert pressure_slopes(Gas.NITROGEN, pressure, kelvin)[0] == pytest.approx(expected, rel=0.01)


@pytest.mark.parametrize(("bar_g", "bar_per_k"), [(5.2, 0.023), (10, 0.043), (20, 0.095)])
def test_co2_vapour_slopes_agree_with_coolprop(bar_g: float, bar_per_k: float) -> None:
    """The table's temperature for CO2 is not stated: 20 degC gives its figures to 10 %."""
    from CoolProp.CoolProp import PropsSI

    pressure, kelvin = bar_g * 1e5 + 101_325.0, 293.15
    slope, _ = pressure_slopes(Gas.CO2, pressure, kelvin)
    expected = PropsSI("d(P)/d(T)|D", "P", pressure, "T", kelvin, "CO2")
    assert slope == pytest.approx(expected, rel=0.01)
    assert slope / 1e5 == pytest.approx(bar_per_k, rel=0.1)


def test_nitrogen_outside_its_range_is_refused() -> None:
    with pytest.raises(OutOfRangeError, match="160 bar"):
        nitrogen_compressibility(np.array([161e5]), np.array([293.15]))
    with pytest.raises(OutOfRangeError, match="-43"):
        nitrogen_compressibility(np.array([50e5]), np.array([220.0]))


# -- water ------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("celsius", "pascals"),
    [(0.01, 611.657), (5, 872.6), (10, 1228.2), (20, 2339.3), (30, 4246.9), (40, 7384.9)],
)
def test_water_vapour_pressure_is_that_of_iapws(celsius: float, pascals: float) -> None:
    """IAPWS SR1-86(1992); IAPWS-95 tables of Wagner and Pruss 2002 give the same digits."""
    assert water_vapour_pressure_pa(celsius + 273.15) == pytest.approx(pascals, rel=2e-4)


def test_water_agrees_with_an_independent_library() -> None:
    from chemicals import iapws11_Psub, iapws92_Psat

    for kelvin in (273.16, 290.0, 320.0, 373.15, 600.0):
        assert water_vapour_pressure_pa(kelvin) == pytest.approx(iapws92_Psat(kelvin), rel=1e-6)
    for kelvin in (213.15, 230.0, 243.15, 263.15, 273.0):  # IAPWS R14-08(2011)
        assert water_vapour_pressure_pa(kelvin) == pytest.approx(iapws11_Psub(kelvin), rel=2e-3)


def test_ice_has_the_check_value_of_the_sublimation_release() -> None:
    """IAPWS R14-08(2011), section 4: 230 K, 8.94735e-6 MPa."""
    assert water_vapour_pressure_pa(230.0) == pytest.approx(8.94735, rel=2e-3)


# -- trend ------------------------------------------------------------------------------------


def test_student_points_are_those_of_the_tables() -> None:
    """t(0.975): 5: 2.571, 10: 2.228, 30: 2.042 (Fisher and Yates tables)."""
    for freedom, point in ((5, 2.571), (10, 2.228), (30, 2.042)):
        assert student_975(freedom) == pytest.approx(point, rel=0.01)


@pytest.mark.parametrize("rho", [0.0, 0.7, 0.95])
def test_the_slope_bound_holds_with_correlated_noise(rho: float) -> None:
    """Monte Carlo over autoregressive noise: 95 % bounds miss the true slope in at most 9 %."""
    rng = np.random.default_rng(7)
    at_s = np.arange(1800.0)
    missed = 0
    for _ in range(300):
        shocks = rng.normal(size=1800)
        noise = np.empty(1800)
        noise[0] = shocks[0] / np.sqrt(1 - rho**2)
        for index in range(1, 1800):
            noise[index] = rho * noise[index - 1] + shocks[index]
        slope = fit_slope(at_s, 0.003 * at_s + noise)
        assert slope.lower is not None
        assert slope.upper is not None
        missed += not slope.lower <= 0.003 <= slope.upper
    assert missed <= 27


# -- standing-pressure test -------------------------------------------------------------------

STANDING = Setup(
    gas=Gas.NITROGEN,
    section_volume_m3=0.0145,
    gauge_span_pa=60e5,
    gauge_accuracy_fraction=0.0025,
)


def standing_record(
    hours: float,
    leak_mbar_per_h: float = 0.0,
    celsius: Callable[[float], float] = lambda hour: 20.0,
    resolution_mbar: float = 1.0,
    seed: int = 3,
    bar_g: float = 52.0,
    clamp: bool = True,
    offset_k: Callable[[float], float] = lambda hour: 0.0,
) -> list[Reading]:
    """Return a nitrogen record: density from CoolProp, lost at a constant rate."""
    from CoolProp.CoolProp import PropsSI

    rng = np.random.default_rng(seed)
    pressure = bar_g * 1e5 + 101_325.0
    density = float(PropsSI("D", "T", 293.15, "P", pressure, "Nitrogen"))
    by_density = float(PropsSI("d(P)/d(D)|T", "T", 293.15, "P", pressure, "Nitrogen"))
    readings = []
    for at_s in np.arange(0.0, hours * 3600.0, 10.0):
        hour = at_s / 3600.0
        kelvin = round(celsius(hour) + 273.15, 2)
        left = density - leak_mbar_per_h * 100.0 * hour / by_density
        gas_k = kelvin + offset_k(hour)
        exact = float(PropsSI("P", "T", gas_k, "D", left, "Nitrogen"))
        shown = exact + rng.normal(0.0, 150.0)
        shown = round(shown / (100.0 * resolution_mbar)) * 100.0 * resolution_mbar
        line = kelvin + rng.normal(0.0, 0.03) if clamp else None
        readings.append(Reading(float(at_s), shown, line))
    return readings


def test_a_tight_section_in_rising_temperature_is_tight() -> None:
    """0.9 K in 3 h move the gauge by 0.18 bar; nothing is lost."""
    result = standing_test(standing_record(3.0, celsius=lambda hour: 18 + 0.3 * hour), STANDING)
    assert result.verdict is Tightness.TIGHT
    assert result.loss_pa_per_s is not None
    assert result.loss_pa_per_s.lower is not None
    assert result.loss_pa_per_s.upper is not None
    assert result.loss_pa_per_s.lower <= 0.0 <= result.loss_pa_per_s.upper


@pytest.mark.parametrize("mbar_per_h", [100.0, 300.0])
def test_a_leak_hidden_by_warming_is_found_and_bounded(mbar_per_h: float) -> None:
    """0.5 K/h is +102 mbar/h at 52 bar g: the gauge hardly falls, or rises."""
    record = standing_record(2.0, mbar_per_h, celsius=lambda hour: 18.0 + 0.5 * hour)
    result = standing_test(record, STANDING)
    assert result.verdict is Tightness.LEAKING
    assert result.loss_pa_per_s is not None
    assert result.loss_pa_per_s.lower is not None
    assert result.loss_pa_per_s.upper is not None
    assert result.loss_pa_per_s.lower * 36 <= mbar_per_h <= result.loss_pa_per_s.upper * 36
    # the same loss in kg/s by CoolProp's own d(rho)/dp
    from CoolProp.CoolProp import PropsSI

    by_density = PropsSI("d(P)/d(D)|T", "T", 293.15, "P", 53e5, "Nitrogen")
    expected = mbar_per_h * 100 / 3600 / by_density * 0.0145
    assert result.loss_kg_per_s is not None
    assert result.loss_kg_per_s.lower is not None
    assert result.loss_kg_per_s.upper is not None
    assert result.loss_kg_per_s.lower <= expected <= result.loss_kg_per_s.upper


def test_cooling_alone_is_not_a_leak() -> None:
    record = standing_record(2.0, celsius=lambda hour: 20.0 - 2.0 * hour)
    assert standing_test(record, STANDING).verdict is not Tightness.LEAKING


def test_a_leak_is_never_called_tight_over_many_records() -> None:
    """Twice the allowed loss (53 mbar/h), 30 seeds, temperature wandering by 1 K."""
    for seed in range(30):
        record = standing_record(
            1.0,
            110.0,
            celsius=lambda hour, seed=seed: 18.0 + np.sin(3 * hour + seed),  # type: ignore[misc]
            seed=seed,
        )
        assert standing_test(record, STANDING).verdict is not Tightness.TIGHT


def test_a_short_record_is_not_known_yet_and_says_how_long() -> None:
    result = standing_test(standing_record(0.25), STANDING)
    assert result.verdict is Tightness.NOT_KNOWN_YET
    assert result.next_step


def test_without_a_clamp_nothing_is_known() -> None:
    result = standing_test(standing_record(2.0, clamp=False), STANDING)
    assert result.verdict is Tightness.NOT_KNOWN_YET
    assert "clamp" in result.reason


def test_a_gauge_that_never_moves_proves_nothing_unless_it_was_seen_to_move() -> None:
    frozen = [
        Reading(reading.at_s, 53e5, reading.line_temperature_k) for reading in standing_record(3.0)
    ]
    assert standing_test(frozen, STANDING).verdict is Tightness.NOT_KNOWN_YET
    warmed = [
        Reading(reading.at_s, 53e5, 290.0 + 2.0 * reading.at_s / 3600.0) for reading in frozen
    ]
    seen = standing_test(warmed, STANDING, gauge_seen_moving=True)
    assert seen.verdict is not Tightness.TIGHT, "flat while the metal warms is a loss or a fault"


def test_an_inflow_is_told_not_called_tight() -> None:
    result = standing_test(standing_record(2.0, -300.0), STANDING)
    assert result.verdict is Tightness.NOT_KNOWN_YET
    assert "rises more than" in result.reason


def test_the_heat_of_filling_is_waited_for() -> None:
    """Gas 6 K above the clamp at first, fading with 15 min: it looks like a leak at first."""
    early = standing_test(
        standing_record(0.5, offset_k=lambda hour: 6.0 * np.exp(-hour / 0.25)), STANDING
    )
    assert early.verdict is Tightness.NOT_KNOWN_YET
    late = standing_test(
        standing_record(6.0, offset_k=lambda hour: 6.0 * np.exp(-hour / 0.25)), STANDING
    )
    assert late.verdict is Tightness.TIGHT


def test_a_coarse_gauge_can_not_say_tight_in_an_hour() -> None:
    """0.1 bar steps at 52 bar g are worth 0.5 K: the bound must hold the step."""
    record = standing_record(1.0, resolution_mbar=100.0, celsius=lambda hour: 20.0 + 1.0 * hour)
    assert standing_test(record, STANDING).verdict is not Tightness.TIGHT


def test_a_gap_begins_the_test_anew() -> None:
    record = standing_record(3.0)
    with_gap = record[:900] + record[-60:]
    result = standing_test(with_gap, STANDING)
    assert result.verdict is Tightness.NOT_KNOWN_YET
    assert result.begin_s >= record[-60].at_s


@pytest.mark.parametrize(
    ("mbar_per_h", "verdict"), [(0.0, Tightness.TIGHT), (150.0, Tightness.LEAKING)]
)
def test_co2_vapour_is_judged_as_a_real_gas(mbar_per_h: float, verdict: Tightness) -> None:
    """Densities by CoolProp at 20 bar g; warming by 0.5 K/h is +48 mbar/h (0.095 bar/K)."""
    from CoolProp.CoolProp import PropsSI

    rng = np.random.default_rng(2)
    pressure = 20e5 + 101_325.0
    density = float(PropsSI("D", "T", 290.0, "P", pressure, "CO2"))
    by_density = float(PropsSI("d(P)/d(D)|T", "T", 290.0, "P", pressure, "CO2"))
    record = []
    for at_s in np.arange(0.0, 4 * 3600.0, 20.0):
        kelvin = 290.0 + 0.5 * at_s / 3600.0
        left = density - mbar_per_h * 100.0 * at_s / 3600.0 / by_density
        shown = float(PropsSI("P", "T", kelvin, "D", left, "CO2")) + rng.normal(0.0, 100.0)
        record.append(Reading(float(at_s), round(shown, -2), kelvin + rng.normal(0.0, 0.03)))
    setup = Setup(gas=Gas.CO2, gauge_span_pa=40e5, gauge_accuracy_fraction=0.0025)
    assert standing_test(record, setup).verdict is verdict


def test_co2_that_condenses_is_no_standing_test() -> None:
    """At 0 degC CO2 condenses at 34.9 bar (Span and Wagner 1996)."""
    wet = [Reading(float(at_s), 36e5 + 100 * (at_s % 3), 271.0) for at_s in range(0, 4000, 10)]
    result = standing_test(wet, Setup(gas=Gas.CO2))
    assert result.verdict is Tightness.NOT_KNOWN_YET
    assert "condense" in result.reason


@pytest.mark.parametrize("pressure", [-5e3, 0.0, 50.0, 101_325.0, 1.4e5])
@pytest.mark.parametrize("gas", list(Gas))
def test_without_pressure_nothing_is_tested_and_nothing_fails(pressure: float, gas: Gas) -> None:
    flat = [
        Reading(float(at_s), pressure + (at_s % 3), 290.0 + 0.1 * (at_s % 7))
        for at_s in range(0, 4000, 10)
    ]
    result = standing_test(flat, Setup(gas=gas), gauge_seen_moving=True)
    assert result.verdict is Tightness.NOT_KNOWN_YET


@pytest.mark.parametrize(
    ("gas", "pressure", "kelvin"),
    [
        (Gas.CO2, 9e6, 320.0),
        (Gas.CO2, 1e6, 150.0),
        (Gas.NITROGEN, 2e7, 290.0),
        (Gas.NITROGEN, 5e6, 150.0),
    ],
)
def test_outside_the_range_of_the_gas_nothing_is_said(
    gas: Gas, pressure: float, kelvin: float
) -> None:
    record = [
        Reading(float(at_s), pressure + 100 * (at_s % 3), kelvin) for at_s in range(0, 4000, 10)
    ]
    result = standing_test(record, Setup(gas=gas))
    assert result.verdict is Tightness.NOT_KNOWN_YET
    assert "use" in result.reason


def test_a_site_may_allow_less() -> None:
    strict = StandingLimits(loss_share_per_h=1e-5)
    result = standing_test(standing_record(3.0), STANDING, strict)
    assert result.verdict is Tightness.NOT_KNOWN_YET


# -- vacuum-rise test -------------------------------------------------------------------------


def rise_record(
    curve: Callable[[float], float], minutes: float = 15.0, celsius: float | None = 15.0
) -> list[Reading]:
    """Return a pump-down of 5 min and then `curve` (micron over s since the pump was shut)."""
    rng = np.random.default_rng(5)
    kelvin = None if celsius is None else celsius + 273.15
    readings = []
    for at_s in np.arange(0.0, 300.0 + minutes * 60.0, 2.0):
        since_s = at_s - 300.0
        micron = curve(max(since_s, 0.0))
        if since_s < 0:
            micron += 4000.0 * np.exp(-at_s / 40.0) + 0.1 * micron * (-since_s / 300.0)
        shown = round(micron * (1.0 + rng.normal(0.0, 0.004)))
        readings.append(Reading(float(at_s), 101_325.0, kelvin, vacuum_pa=float(shown) * MICRON_PA))
    return readings


def verdict(curve: Callable[[float], float], **how: float | None) -> VacuumVerdict:
    return vacuum_rise_test(rise_record(curve, **how)).verdict  # type: ignore[arg-type]


def test_a_tight_dry_section_passes() -> None:
    assert verdict(lambda s: 320 + 60 * (1 - np.exp(-s / 90))) is VacuumVerdict.TIGHT_AND_DRY


@pytest.mark.parametrize("micron_per_min", [60.0, 300.0, 2000.0])
def test_a_straight_rise_is_a_leak(micron_per_min: float) -> None:
    assert verdict(lambda s: 300 + micron_per_min * s / 60) is VacuumVerdict.LEAK


@pytest.mark.parametrize("celsius", [2.0, 15.0, 25.0])
@pytest.mark.parametrize("reading_over_true", [1.0, 2.0])
def test_a_level_at_the_water_pressure_is_moisture(
    celsius: float, reading_over_true: float
) -> None:
    """Water pressures by IAPWS; a hot-wire gauge shows twice as much."""
    from chemicals import iapws92_Psat

    level = float(iapws92_Psat(celsius + 273.15)) / MICRON_PA * reading_over_true
    found = verdict(lambda s: level - (level - 300) * np.exp(-s / 120), celsius=celsius)
    assert found is VacuumVerdict.MOISTURE


def test_ice_on_cold_metal_is_never_dry() -> None:
    """-30 degC: ice has 38 Pa = 285 micron, below the limit: holding 300 micron shows nothing."""
    assert verdict(lambda s: 300.0, celsius=-30.0) is not VacuumVerdict.TIGHT_AND_DRY


def test_a_first_rise_that_levels_too_high_is_outgassing() -> None:
    found = verdict(lambda s: 3000 - 2700 * np.exp(-s / 90), celsius=20.0)
    assert found is VacuumVerdict.OUTGASSING


def test_without_the_metal_temperature_dry_is_not_shown() -> None:
    assert verdict(lambda s: 320.0 + 0.01 * s, celsius=None) is VacuumVerdict.NOT_KNOWN_YET


def test_a_short_hold_or_a_high_start_is_not_known_yet() -> None:
    assert verdict(lambda s: 320.0, minutes=4.0) is VacuumVerdict.NOT_KNOWN_YET
    assert verdict(lambda s: 900.0) is VacuumVerdict.NOT_KNOWN_YET


def test_a_gauge_that_never_moves_or_a_running_pump_proves_nothing() -> None:
    frozen = [Reading(float(at_s), 1e5, 288.15, vacuum_pa=40.0) for at_s in range(0, 1200, 2)]
    assert vacuum_rise_test(frozen).verdict is VacuumVerdict.NOT_KNOWN_YET
    assert verdict(lambda s: 450 - 0.3 * s) is VacuumVerdict.NOT_KNOWN_YET


def test_the_leak_rate_is_rise_times_volume() -> None:
    """ISO 3530 / pressure-rise method: q = V dp/dt."""
    record = rise_record(lambda s: 300 + 120 * s / 60)
    leak = vacuum_rise_test(record, volume_m3=0.0145).leak_pa_m3_per_s
    assert leak is not None
    assert leak.estimate == pytest.approx(120 * 0.133322387415 / 60 * 0.0145, rel=0.05)


def test_no_leak_and_no_water_passes_over_many_records() -> None:
    """Leaks from 40 micron/min up, water at -5 to 30 degC with 30 s to 30 min to its level."""
    from chemicals import iapws11_Psub, iapws92_Psat

    rng = np.random.default_rng(11)
    for _ in range(60):
        celsius = float(rng.uniform(-5.0, 30.0))
        kelvin = celsius + 273.15
        level = float(iapws92_Psat(kelvin) if kelvin > 273.16 else iapws11_Psub(kelvin)) / MICRON_PA
        level *= float(rng.choice([1.0, 2.0]))
        tau_s, rate = 10 ** float(rng.uniform(1.5, 3.25)), 10 ** float(rng.uniform(1.6, 4.0))
        wet = rise_record(
            lambda s, level=level, tau_s=tau_s: level - (level - 300) * np.exp(-s / tau_s),  # type: ignore[misc]
            celsius=celsius,
        )
        leaking = rise_record(lambda s, rate=rate: 300 + rate * s / 60, celsius=celsius)  # type: ignore[misc]
        for record in (wet, leaking):
            assert vacuum_rise_test(record).verdict is not VacuumVerdict.TIGHT_AND_DRY
