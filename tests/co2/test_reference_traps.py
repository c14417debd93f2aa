"""What the reference library does where it must not be asked: pinned, so that a change shows."""

import pytest

from co2vent import co2
from co2vent.errors import OutOfRangeError


def test_coolprop_extrapolates_the_boiling_line_below_the_triple_point() -> None:
    import CoolProp
    from CoolProp.CoolProp import PropsSI

    if int(CoolProp.__version__.split(".")[0]) < 8:
        pytest.skip("older releases raise here")
    wrong = PropsSI("T", "P", 101_325, "Q", 1, "CO2")
    assert wrong == pytest.approx(185.10, abs=0.01)  # the trap: dry ice is at 194.69 K
    assert co2.equilibrium_temperature_k(101_325) == pytest.approx(194.686, abs=0.01)
    wrong = PropsSI("P", "T", 210, "Q", 1, "CO2")
    assert wrong == pytest.approx(384_846, abs=10)  # dry ice at 210 K: 327 089 Pa
    assert co2.equilibrium_pressure_pa(210) == pytest.approx(327_089, abs=50)


def test_boiling_line_is_refused_below_the_triple_point() -> None:
    for t in (216.5, 210.0, 194.7, 154.0):
        with pytest.raises(OutOfRangeError, match=r"216\.592"):
            co2.saturation_pressure_pa(t)
    for p in (517_949.0, 101_325.0):
        with pytest.raises(OutOfRangeError, match="517950"):
            co2.saturation_temperature_k(p)


def test_equilibrium_changes_branch_at_the_triple_point_itself() -> None:
    t, p = co2.TRIPLE_TEMPERATURE_K, co2.TRIPLE_PRESSURE_PA
    assert co2.equilibrium_pressure_pa(t) == co2.saturation_pressure_pa(t)
    assert co2.equilibrium_temperature_k(p) == co2.saturation_temperature_k(p) == t
    below = co2.equilibrium_pressure_pa(t - 0.5)
    assert below == co2.sublimation_pressure_pa(t - 0.5)
    steep = (p - below) / 0.5  # 35 kPa/K on the dry-ice side, 22.5 on the liquid side
    assert steep == pytest.approx(35_000, rel=0.02)
    assert co2.saturation_slope_pa_per_k(t) == pytest.approx(22_524, rel=1e-3)
