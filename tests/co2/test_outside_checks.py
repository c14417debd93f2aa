"""Published figures that do not come from this project or its fits; the source beside each."""

import pytest

from co2vent import co2
from co2vent.units import ZERO_CELSIUS_K


def test_triple_point_is_the_published_one() -> None:
    # Span & Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509: 216.592 K, 0.51795 MPa
    assert co2.saturation_pressure_pa(216.592) == pytest.approx(517_950, abs=100)
    assert co2.sublimation_pressure_pa(216.592) == pytest.approx(517_950, abs=100)
    assert co2.saturation_temperature_k(517_950) == pytest.approx(216.592, abs=0.003)
    assert co2.sublimation_temperature_k(517_950) == pytest.approx(216.592, abs=0.003)


def test_dry_ice_at_one_atmosphere_is_the_its_90_secondary_point() -> None:
    # Bedford et al., Metrologia 33 (1996) 133: 194.6857 K at 101 325 Pa
    assert co2.sublimation_temperature_k(101_325) == pytest.approx(194.6857, abs=0.01)


# Ohio University, thermodynamics property tables, R744 saturation (IIR datum):
# degC: MPa, vapour m3/kg, hf, hg kJ/kg
OHIO_TABLE = {
    -20: (1.9696, 0.019343, 154.45, 436.89),
    -10: (2.6487, 0.014048, 176.52, 435.14),
    0: (3.4851, 0.010241, 200.00, 430.89),
}


@pytest.mark.parametrize("celsius", OHIO_TABLE)
def test_saturation_table_of_a_university(celsius: int) -> None:
    pressure_mpa, vapor_m3_kg, liquid_kj, vapor_kj = OHIO_TABLE[celsius]
    t = celsius + ZERO_CELSIUS_K
    assert co2.saturation_pressure_pa(t) / 1e6 == pytest.approx(pressure_mpa, abs=0.0001)
    assert 1 / co2.vapor_density_saturated_kg_m3(t) == pytest.approx(vapor_m3_kg, rel=1e-3)
    assert co2.liquid_enthalpy_j_kg(t) / 1e3 == pytest.approx(liquid_kj, abs=0.05)
    assert co2.vapor_enthalpy_saturated_j_kg(t) / 1e3 == pytest.approx(vapor_kj, abs=0.05)


def test_heat_of_vaporisation_at_minus_10() -> None:
    # same table: hf 176.52, hfg 258.62 kJ/kg
    assert co2.liquid_enthalpy_j_kg(263.15) / 1e3 == pytest.approx(176.52, abs=0.03)
    assert co2.latent_heat_j_kg(263.15) / 1e3 == pytest.approx(258.62, abs=0.03)


def test_heat_of_sublimation_agrees_with_the_calorimeter() -> None:
    # Giauque & Egan, J. Chem. Phys. 5 (1937) 45: 6030 cal/mol = 25.23 kJ/mol (from memory)
    molar = co2.sublimation_heat_j_kg(194.686) * co2.MOLAR_MASS_KG_PER_MOL / 1e3
    assert molar == pytest.approx(25.23, abs=0.1)


def test_heat_of_fusion_lies_in_the_published_spread() -> None:
    # 8875 J/mol (Jaeger & Span 2012) to 9020 J/mol (CRC Handbook, in the chemicals library)
    molar = co2.FUSION_HEAT_J_KG * co2.MOLAR_MASS_KG_PER_MOL
    assert 8875 - 10 <= molar <= 9020


def test_shelf_turns_635_parts_in_a_thousand_to_dry_ice() -> None:
    # h_fg / (h_fg + h_fus); 0.631 to 0.635 over the spread of published heats of fusion
    assert pytest.approx(0.635, abs=0.005) == co2.PLATEAU_SOLID_FRACTION


def test_five_per_cent_of_the_dry_ice_sublimes_while_it_cools_to_one_atmosphere() -> None:
    # integral of c dT / h_sub with the Jaeger & Span solid and Span & Wagner gas: 0.951
    assert co2.solid_share_after_cooling(101_325) == pytest.approx(0.951, abs=0.001)
    assert co2.solid_share_after_cooling(517_950) == pytest.approx(1.0, abs=1e-6)


# ISO 2533 (published 898.74(6) and 794.95 hPa, from memory), ICAO Doc 7488 the same
@pytest.mark.parametrize(
    ("altitude_m", "pressure_pa"), [(0, 101_325.0), (1000, 89_874.6), (2000, 79_495.2)]
)
def test_standard_atmosphere(altitude_m: float, pressure_pa: float) -> None:
    assert co2.ambient_pressure_pa(altitude_m) == pytest.approx(pressure_pa, abs=1.0)


def test_melting_line_agrees_with_clapeyron() -> None:
    # Span & Wagner's melting equation, 46.76 bar/K at the triple point, against the heat of
    # fusion and the densities: catches a wrong datum or sign
    t = co2.TRIPLE_TEMPERATURE_K
    slope = (co2.melting_pressure_pa(t + 0.001) - co2.melting_pressure_pa(t)) / 0.001
    assert slope / 1e5 == pytest.approx(46.76, abs=0.01)
    volume = 1 / co2.liquid_density_kg_m3(t) - 1 / co2.solid_density_kg_m3(t)
    assert slope == pytest.approx(co2.FUSION_HEAT_J_KG / (t * volume), rel=0.02)


@pytest.mark.parametrize("t", [217.0, 230.0, 250.0, 270.0, 290.0])
def test_boiling_line_agrees_with_clapeyron(t: float) -> None:
    volume = 1 / co2.vapor_density_saturated_kg_m3(t) - 1 / co2.liquid_density_kg_m3(t)
    slope = co2.latent_heat_j_kg(t) / (t * volume)
    assert co2.saturation_slope_pa_per_k(t) == pytest.approx(slope, rel=2e-3)


@pytest.mark.parametrize("t", [170.0, 185.0, 200.0, 216.5])
def test_sublimation_line_agrees_with_clapeyron(t: float) -> None:
    # 1 %: the published sublimation equation and heats differ by up to 0.4 % in slope
    volume = 1 / co2.vapor_density_saturated_kg_m3(t) - 1 / co2.solid_density_kg_m3(t)
    slope = co2.sublimation_heat_j_kg(t) / (t * volume)
    assert co2.sublimation_slope_pa_per_k(t) == pytest.approx(slope, rel=0.01)


@pytest.mark.parametrize(
    ("temperature_k", "pressure_pa"),
    # Antoine equation fitted to Giauque & Egan's data, NIST Chemistry WebBook, 154.26-195.89 K:
    # log10(p/bar) = 6.81228 - 1301.679/(T - 3.494)
    [(t, 1e5 * 10 ** (6.81228 - 1301.679 / (t - 3.494))) for t in (160.0, 170.0, 180.0, 194.0)],
)
def test_sublimation_pressure_against_the_webbook(temperature_k: float, pressure_pa: float) -> None:
    assert co2.sublimation_pressure_pa(temperature_k) == pytest.approx(pressure_pa, rel=0.012)
