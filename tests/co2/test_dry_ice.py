"""The dry-ice equation against its paper, and the short forms against the equation."""

import numpy as np
import pytest
from dry_ice_equation import G0_PUBLISHED, G1_PUBLISHED, dry_ice_state

from co2vent import co2

# Jaeger & Span, J. Chem. Eng. Data 57 (2012) 590, Table 5:
# p MPa, T K, g J/mol, v m3/mol, s J/molK, cp J/molK
TABLE_5 = [
    (0.51795, 216.592, -1447.007522, 2.848595255e-5, -18.03247012, 59.13420271),
    (100.0, 100.0, -2961.795962, 2.614596591e-5, -56.23154438, 39.11045710),
]


@pytest.mark.parametrize(("mpa", "t", "g", "v", "s", "cp"), TABLE_5)
def test_equation_reproduces_the_table_of_its_paper(
    mpa: float, t: float, g: float, v: float, s: float, cp: float
) -> None:
    state = dry_ice_state(t, mpa * 1e6, G0_PUBLISHED, G1_PUBLISHED)
    assert state.gibbs_j_mol == pytest.approx(g, rel=1e-7)
    assert state.volume_m3_mol == pytest.approx(v, rel=1e-5)
    assert state.entropy_j_mol_k == pytest.approx(s, rel=1e-5)
    assert state.heat_capacity_j_mol_k == pytest.approx(cp, rel=1e-5)


def test_short_forms_follow_the_equation_along_the_sublimation_line() -> None:
    for t in map(float, np.linspace(154.0, 216.592, 60)):
        state = dry_ice_state(t, co2.sublimation_pressure_pa(t))
        assert co2.solid_density_kg_m3(t) == pytest.approx(state.density_kg_m3, rel=1e-5)
        assert co2.solid_enthalpy_j_kg(t) == pytest.approx(state.enthalpy_j_kg, abs=10)
        assert co2.solid_entropy_j_kg_k(t) == pytest.approx(state.entropy_j_kg_k, abs=0.1)


def test_triple_point_values_are_within_a_thousandth_of_the_table() -> None:
    t = co2.TRIPLE_TEMPERATURE_K
    molar = co2.MOLAR_MASS_KG_PER_MOL
    volume = molar / co2.solid_density_kg_m3(t)
    assert volume == pytest.approx(2.848595e-5, rel=1e-3)
    # the paper's cp is at constant pressure; along the line the solid is squeezed as it warms,
    # which takes T v (expansivity 8.127788e-4 1/K) dp/dT = 0.3 % off
    slope = co2.sublimation_slope_pa_per_k(t)
    along_the_line = 59.13420 - t * volume * 8.127788321e-4 * slope
    assert co2.solid_heat_capacity_j_kg_k(t) * molar == pytest.approx(along_the_line, rel=1e-3)


def test_three_phases_have_the_same_gibbs_energy_at_the_triple_point() -> None:
    t = co2.TRIPLE_TEMPERATURE_K
    energies = [
        co2.liquid_enthalpy_j_kg(t) - t * co2.liquid_entropy_j_kg_k(t),
        co2.vapor_enthalpy_saturated_j_kg(t) - t * co2.vapor_entropy_saturated_j_kg_k(t),
        co2.solid_enthalpy_j_kg(t) - t * co2.solid_entropy_j_kg_k(t),
    ]
    assert max(energies) - min(energies) < 100  # of 350 000 J/kg of latent heat
