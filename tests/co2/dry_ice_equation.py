"""The Gibbs equation for dry ice of Jaeger & Span, J. Chem. Eng. Data 57 (2012) 590.

Coefficients as quoted by open implementations that cite the paper. g0 and g1 are re-anchored so
that enthalpy and entropy share the fluid's datum (h' = 200 kJ/kg, s' = 1 kJ/kgK at 0 degC): heat
of fusion 8875 J/mol and equal Gibbs energies at the triple point.
"""

from dataclasses import dataclass
from math import atan, exp, log

MOLAR_MASS = 0.0440098
R = 8.314472
G0_PUBLISHED, G1_PUBLISHED = -2.6385478, 4.5088732
G0, G1 = -2.63851183, 4.50887433
G2, G3, G4, G5, G6, G7, G8, G9, G10 = (
    -2.0109135, -2.7976237, 0.26427834, 3.8259935, 0.31711996, 2.2087195e-3, -1.1289668,
    9.2923982e-3, 3391.4617,
)  # fmt: skip
A0, A1, A2, A3, A4, A5, A6, A7, A8 = (
    0.039993365, 2.3945101e-3, 0.32839467, 0.057918471, 2.3945101e-3, -2.6531689e-3, 0.16419734,
    0.17594802, 2.6531689e-3,
)  # fmt: skip


@dataclass(frozen=True)
class DryIceState:
    """Properties from the Gibbs equation; specific values in J and kg."""

    gibbs_j_mol: float
    volume_m3_mol: float
    entropy_j_mol_k: float
    heat_capacity_j_mol_k: float

    temperature_k: float

    @property
    def density_kg_m3(self) -> float:
        return MOLAR_MASS / self.volume_m3_mol

    @property
    def entropy_j_kg_k(self) -> float:
        return self.entropy_j_mol_k / MOLAR_MASS

    @property
    def enthalpy_j_kg(self) -> float:
        return (self.gibbs_j_mol + self.temperature_k * self.entropy_j_mol_k) / MOLAR_MASS


def gibbs_j_mol(temperature_k: float, pressure_pa: float, g0: float = G0, g1: float = G1) -> float:
    """Molar Gibbs energy."""
    t, q = temperature_k / 150.0, pressure_pa / 101325.0

    def einstein(g: float) -> float:
        return log((t * t + g * g) / (1 + g * g)) - 2 * t / g * (atan(t / g) - atan(1 / g))

    k = 0.22690751 * t * t - 0.07501975 * t + 0.26442913
    f = (
        A0 * (t * t - 1)
        + A1 * log((t * t - A2 * t + A3) / (1 - A2 + A3))
        + A4 * log((t * t + A2 * t + A3) / (1 + A2 + A3))
        + A5 * (atan((t - A6) / A7) - atan((1 - A6) / A7))
        + A8 * (atan((t + A6) / A7) - atan((1 + A6) / A7))
    )
    reduced = (
        g0
        + g1 * (t - 1)
        + G2 * (t - 1) ** 2
        + G3 * einstein(G4)
        + G5 * einstein(G6)
        + G7 * (q - 1) * (exp(f) + k * G8)
        + G9 * k * ((q + G10) ** (6 / 7) - (1 + G10) ** (6 / 7))
    )
    return R * 150.0 * reduced


def dry_ice_state(
    temperature_k: float, pressure_pa: float, g0: float = G0, g1: float = G1
) -> DryIceState:
    """Properties by central differences (rounding below 1e-7 relative)."""
    dt, dp = 0.02, 2000.0
    t, p = temperature_k, pressure_pa
    g = gibbs_j_mol(t, p, g0, g1)
    up, down = gibbs_j_mol(t + dt, p, g0, g1), gibbs_j_mol(t - dt, p, g0, g1)
    # wider step for the second derivative, where rounding matters most
    far_up, far_down = gibbs_j_mol(t + 0.5, p, g0, g1), gibbs_j_mol(t - 0.5, p, g0, g1)
    slope_p = (gibbs_j_mol(t, p + dp, g0, g1) - gibbs_j_mol(t, p - dp, g0, g1)) / (2 * dp)
    return DryIceState(
        gibbs_j_mol=g,
        volume_m3_mol=slope_p,
        entropy_j_mol_k=-(up - down) / (2 * dt),
        heat_capacity_j_mol_k=-t * (far_up - 2 * g + far_down) / 0.25,
        temperature_k=t,
    )
