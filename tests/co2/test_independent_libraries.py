"""Libraries that are not CoolProp: another equation of state, other vapour-pressure fits.

PYroMat holds the same Span & Wagner equation in other code; its ps and ds are the paper's
auxiliary equations, as ours, so they check the wiring only; its enthalpies come from the equation.
cantera's CarbonDioxide (Reynolds 1979) is a wholly independent equation: its figures, computed
with cantera 3.2.0, stand here as numbers because the library is heavy to install.
"""

import math

import pytest

from co2vent import co2
from co2vent.units import ZERO_CELSIUS_K

# degC: bar, liquid kg/m3, vapour kg/m3, heat of vaporisation kJ/kg
CANTERA = {
    -55: (5.5463, 1174.46, 14.688, 349.39),
    -50: (6.8361, 1155.72, 17.958, 340.47),
    -40: (10.0668, 1116.98, 26.185, 322.21),
    -30: (14.3036, 1076.02, 37.178, 302.89),
    -20: (19.7209, 1032.00, 51.770, 281.86),
    -10: (26.5049, 983.63, 71.192, 258.30),
    0: (34.8580, 928.80, 97.481, 231.01),
    10: (45.0099, 863.32, 134.578, 197.83),
    20: (57.2474, 776.09, 192.753, 153.25),
}


@pytest.mark.parametrize("celsius", CANTERA)
def test_another_equation_of_state_agrees(celsius: int) -> None:
    bar, liquid, vapor, latent = CANTERA[celsius]
    t = celsius + ZERO_CELSIUS_K
    assert co2.saturation_pressure_pa(t) / 1e5 == pytest.approx(bar, rel=0.003)
    assert co2.liquid_density_kg_m3(t) == pytest.approx(liquid, rel=0.005)
    assert co2.vapor_density_saturated_kg_m3(t) == pytest.approx(vapor, rel=0.01)
    assert co2.latent_heat_j_kg(t) / 1e3 == pytest.approx(latent, rel=0.01)


@pytest.mark.parametrize("t", [217.0, 225.0, 240.0, 260.0, 280.0, 300.0])
def test_wagner_fit_of_the_vdi_heat_atlas_agrees(t: float) -> None:
    import chemicals.vapor_pressure as library

    row = library.Psat_data_VDI_PPDS_3.loc["124-38-9"]
    pressure = library.Wagner(t, row["Tc"], row["Pc"], row["A"], row["B"], row["C"], row["D"])
    assert co2.saturation_pressure_pa(t) == pytest.approx(float(pressure), rel=3e-4)


def test_fixed_points_of_the_chemicals_database_agree() -> None:
    from chemicals.critical import Pc, Tc
    from chemicals.triple import Pt, Tt

    assert Tt("124-38-9") == pytest.approx(co2.TRIPLE_TEMPERATURE_K, abs=0.003)
    assert Pt("124-38-9", method="STAVELEY") == pytest.approx(co2.TRIPLE_PRESSURE_PA, abs=100)
    assert Tc("124-38-9") == pytest.approx(co2.CRITICAL_TEMPERATURE_K, abs=0.01)
    assert Pc("124-38-9") == pytest.approx(co2.CRITICAL_PRESSURE_PA, abs=1000)


@pytest.mark.parametrize("t", [217.0, 235.0, 253.15, 263.15, 283.15, 293.15])
def test_pyromat_agrees_on_the_boiling_line(t: float) -> None:
    import pyromat

    fluid = pyromat.get("mp.CO2")
    liquid, vapor = (float(d.item()) for d in fluid.ds(T=t))
    h_liquid, h_vapor = (float(h.item()) for h in fluid.hs(T=t))
    assert co2.saturation_pressure_pa(t) / 1e5 == pytest.approx(float(fluid.ps(T=t)), rel=1e-4)
    assert co2.liquid_density_kg_m3(t) == pytest.approx(liquid, rel=1e-4)
    assert co2.vapor_density_saturated_kg_m3(t) == pytest.approx(vapor, rel=3e-4)
    assert co2.latent_heat_j_kg(t) / 1e3 == pytest.approx(h_vapor - h_liquid, rel=3e-4)


@pytest.mark.parametrize(("bar", "t"), [(1.0, 250.0), (6.0, 293.15), (20.0, 273.15), (40.0, 300.0)])
def test_pyromat_agrees_on_vapour(bar: float, t: float) -> None:
    import pyromat

    fluid = pyromat.get("mp.CO2")
    density = float(fluid.d(T=t, p=bar)[0])
    assert co2.vapor_density_kg_m3(bar * 1e5, t) == pytest.approx(density, rel=1e-4)
    # enthalpy differences, because the datum differs
    rise = float(fluid.h(T=t + 10, p=bar)[0]) - float(fluid.h(T=t, p=bar)[0])
    warmer = co2.vapor_density_kg_m3(bar * 1e5, t + 10)
    ours = co2.vapor_enthalpy_j_kg(warmer, t + 10) - co2.vapor_enthalpy_j_kg(density, t)
    assert ours / 1e3 == pytest.approx(rise, abs=0.05)


def test_thin_gas_follows_the_second_virial_coefficient() -> None:
    # B(273.15 K) = -149.3 +- 2 and B(300 K) = -121.5 +- 2 cm3/mol: Dymond & Smith, The Virial
    # Coefficients of Pure Gases and Mixtures (1980), values from memory
    for t, b in ((273.15, -149.3e-6), (300.0, -121.5e-6)):
        pressure = 1e5
        molar_density = co2.vapor_density_kg_m3(pressure, t) / co2.MOLAR_MASS_KG_PER_MOL
        z = pressure / (molar_density * 8.31451 * t)
        assert (z - 1) / molar_density == pytest.approx(b, abs=3e-6)
        assert math.isclose(z, co2.compressibility(pressure, t), rel_tol=1e-9)
