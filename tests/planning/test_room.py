"""CO2 in a room: published limits and worked figures."""

import pytest

from co2vent.planning.exposure import IDLH, LIMITS, Country, oxygen_percent
from co2vent.planning.room import (
    clearing_time_s,
    floor_layer_rise_ppm,
    mixed_rise_ppm,
    ventilated_rise_ppm,
    ventilation_m3_per_h,
)

SEA_LEVEL = 101_325.0


def test_limits_are_the_published_ones() -> None:
    # NIOSH IDLH page for 124-38-9: OSHA PEL 5000, NIOSH REL 5000 / STEL 30 000, IDLH 40 000 ppm
    assert [limit.ppm for limit in LIMITS[Country.US]] == [5000.0, 30_000.0, 40_000.0]
    # HSE EH40: WEL 5000 ppm 8 h, 15 000 ppm 15 min
    assert [limit.ppm for limit in LIMITS[Country.UK]] == [5000.0, 15_000.0, 40_000.0]
    # Directive 2006/15/EC: 5000 ppm, 9000 mg/m3
    assert LIMITS[Country.EU][0].ppm == 5000.0
    assert IDLH.ppm == 40_000.0
    assert all(limit.source for limits in LIMITS.values() for limit in limits)


@pytest.mark.parametrize(
    ("ppm", "mg_per_m3"),
    [(5000.0, 9000.0), (30_000.0, 54_000.0)],  # NIOSH, at 25 degC and 1 atm
)
def test_ppm_and_milligrams_agree_with_niosh(ppm: float, mg_per_m3: float) -> None:
    at_20 = mixed_rise_ppm(mg_per_m3 * 1e-6 * 1000.0, 1000.0, SEA_LEVEL)
    # the same mass takes up 293.15/298.15 of the volume at 20 degC
    assert at_20 * 298.15 / 293.15 == pytest.approx(ppm, rel=0.006)


@pytest.mark.parametrize(
    ("kg", "room_m3", "ppm"),
    # 0.5435 m3 of gas a kilogram at 20 degC and 1 atm (1.84 kg/m3, real gas)
    [(0.5, 30, 9060), (1, 30, 18_100), (1, 100, 5440), (5, 50, 54_400), (10, 1000, 5440)],
)
def test_mixed_room(kg: float, room_m3: float, ppm: float) -> None:
    assert mixed_rise_ppm(kg, room_m3, SEA_LEVEL) == pytest.approx(ppm, rel=0.003)


def test_concentration_limit_of_ashrae_34_agrees() -> None:
    # ASHRAE 34: RCL 40 000 ppm = 72 g/m3 (from memory)
    assert mixed_rise_ppm(0.072, 1.0, SEA_LEVEL) == pytest.approx(40_000, rel=0.03)


def test_thinner_air_at_altitude_is_displaced_more() -> None:
    high = mixed_rise_ppm(1.0, 100.0, 79_495.0)
    assert high == pytest.approx(5440 * 101_325 / 79_495, rel=0.005)


def test_floor_layer_is_six_times_the_mixed_room_and_never_more_than_all() -> None:
    assert floor_layer_rise_ppm(1.0, 300.0, SEA_LEVEL) == pytest.approx(6 * 1812, rel=0.01)
    assert floor_layer_rise_ppm(100.0, 30.0, SEA_LEVEL) == 1e6


def test_fresh_air_for_a_steady_vent() -> None:
    # 0.5435 m3 of gas a kilogram over 5000 - 420 ppm: 119 m3/h for each kg/h; 15 000: 37
    assert ventilation_m3_per_h(1 / 3600, 5000.0, SEA_LEVEL) == pytest.approx(119, abs=0.5)
    assert ventilation_m3_per_h(1 / 3600, 15_000.0, SEA_LEVEL) == pytest.approx(37, abs=0.5)


def test_clearing_follows_the_air_changes() -> None:
    # from 30 000 to 5000 ppm over 420 ppm outdoors at 4 a hour: ln(29580/4580)/4 h = 28 min
    assert clearing_time_s(29_580, 5000, 4.0) == pytest.approx(28 * 60, rel=0.01)
    assert clearing_time_s(29_580, 5000, 4.0, 3.0) == pytest.approx(3 * 28 * 60, rel=0.01)
    assert clearing_time_s(100, 5000, 4.0) == 0.0
    assert clearing_time_s(29_580, 5000, 0.0) is None


def test_ventilated_vent_lies_between_none_and_the_steady_state() -> None:
    still = ventilated_rise_ppm(1.0, 3600.0, 100.0, 0.0, SEA_LEVEL)
    assert still == pytest.approx(5440, rel=0.003)
    moving = ventilated_rise_ppm(1.0, 3600.0, 100.0, 4.0, SEA_LEVEL)
    steady = 5440 / 4  # one kilogram an hour into 400 m3/h
    assert moving == pytest.approx(steady * (1 - 2.718281828**-4), rel=0.003)


def test_an_oxygen_meter_hardly_moves_at_the_idlh() -> None:
    assert oxygen_percent(40_000) == pytest.approx(20.1, abs=0.05)
    assert oxygen_percent(69_000) == pytest.approx(19.5, abs=0.05)  # its usual alarm
