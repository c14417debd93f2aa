"""The local triple point and the stop pressure."""

import pytest

from co2vent.co2 import ambient_pressure_pa
from co2vent.readings.limits import (
    stop_pressure_pa,
    stop_pressure_pa_gauge,
    triple_point_pa_gauge,
    zero_uncertainty_pa,
)
from co2vent.readings.reading import Setup
from co2vent.units import PSI_PA

# 0.51795 MPa (Span & Wagner 1996) less the ISO 2533 atmosphere, computed by hand
TRIPLE_POINT_BAR_G = {-300: 4.130, 0: 4.166, 500: 4.225, 1000: 4.281, 1600: 4.344, 3000: 4.478}


@pytest.mark.parametrize("altitude_m", TRIPLE_POINT_BAR_G)
def test_triple_point_on_a_gauge_rises_with_altitude(altitude_m: int) -> None:
    setup = Setup(ambient_pressure_pa=ambient_pressure_pa(altitude_m))
    expected = TRIPLE_POINT_BAR_G[altitude_m]
    assert triple_point_pa_gauge(setup) / 1e5 == pytest.approx(expected, abs=0.001)


def test_sea_level_stop_is_75_psig_and_5_2_bar_g() -> None:
    stop = stop_pressure_pa_gauge(Setup())
    assert stop / 1e5 == pytest.approx(5.20, abs=0.005)
    assert stop / PSI_PA == pytest.approx(75.4, abs=0.1)


def test_a_coarse_gauge_raises_the_stop_pressure() -> None:
    # +-2.56 bar of class 1.6 on 160 bar, and 0.3 bar: 6.7 bar g at sea level
    coarse = Setup(gauge_span_pa=160e5, gauge_accuracy_fraction=0.016)
    assert stop_pressure_pa(coarse) == pytest.approx(517_950 + 2.56e5 + 0.3e5)


def test_a_zero_that_was_not_read_is_uncertain_unless_a_class_bounds_it() -> None:
    assert zero_uncertainty_pa(Setup()) == pytest.approx(0.1e5)
    assert zero_uncertainty_pa(Setup(zero_was_read=True)) == 0.0
    assert zero_uncertainty_pa(Setup(zero_offset_pa=-5e3)) == 0.0
    classed = Setup(gauge_span_pa=60e5, gauge_accuracy_fraction=0.01)
    assert zero_uncertainty_pa(classed) == 0.0  # EN 837-1: the class holds over the whole scale


def test_a_fine_gauge_does_not_lower_the_stop_below_the_smallest_margin() -> None:
    fine = Setup(gauge_span_pa=16e5, gauge_accuracy_fraction=0.0025, zero_was_read=True)
    assert stop_pressure_pa(fine) == pytest.approx(517_950 + 1.03e5)
