"""Regenerate co2vent/co2/coefficients.py: `python tests/co2/fit_coefficients.py > that file`.

Short polynomials fitted by linear least squares to published equations:
- fluid: Span & Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509, as evaluated by CoolProp (HEOS),
  with the gas phase forced for cold and slightly supercooled gas;
- dry ice: Jaeger & Span, J. Chem. Eng. Data 57 (2012) 590 (see `dry_ice_equation.py`), taken
  along the sublimation line.
Weights: vapour pressure 2e-5 relative, vapour energy 5 J/kg, so that p and u come from one
Helmholtz function. The largest deviations are checked in test_against_reference_equation.py.
"""

import CoolProp
import numpy as np
from dry_ice_equation import dry_ice_state
from numpy.polynomial import polynomial

TRIPLE_T, TRIPLE_P, CRITICAL_T, CRITICAL_P = 216.592, 517_950.0, 304.1282, 7_377_300.0
CRITICAL_RHO = 467.6
R = 8.31451 / 0.0440098
LOWEST_T = 154.0

gas = CoolProp.AbstractState("HEOS", "CO2")
gas.specify_phase(CoolProp.iphase_gas)
liquid = CoolProp.AbstractState("HEOS", "CO2")
liquid.specify_phase(CoolProp.iphase_liquid)
saturated = CoolProp.AbstractState("HEOS", "CO2")


def round_figure(value: float) -> str:
    """Twelve figures, always a float literal."""
    return repr(float(f"{value:.12g}"))


def show(name: str, values: object, comment: str) -> None:
    """Print one table as a Python constant."""
    print(f"\n# {comment}")
    rows = np.atleast_2d(np.asarray(values, dtype=float))
    if rows.shape[0] == 1:
        inner = "".join(f"    {round_figure(v)},\n" for v in rows[0])
        print(f"{name}: Final = (\n{inner})")
    else:
        inner = "".join("    (" + ", ".join(map(round_figure, row)) + "),\n" for row in rows)
        print(f"{name}: Final = (\n{inner})")


def sublimation_pressure(temperature: np.ndarray) -> np.ndarray:
    """Span & Wagner eq. 3.12."""
    u = 1 - temperature / TRIPLE_T
    return TRIPLE_P * np.exp(
        TRIPLE_T / temperature * (-14.740846 * u + 2.4327015 * u**1.9 - 5.3061778 * u**2.9)
    )


def least_squares(columns: list, target: np.ndarray, weight: np.ndarray | float) -> np.ndarray:
    """Weighted linear fit with scaled columns."""
    a = np.stack(columns, 1) * np.reshape(weight * np.ones_like(target), (-1, 1))
    scale = np.linalg.norm(a, axis=0)
    return np.linalg.lstsq(a / scale, target * weight, rcond=None)[0] / scale


def fit_vapor() -> None:
    """Ideal-gas heat capacity and the residual Helmholtz polynomial."""
    grid = np.linspace(150.0, 320.0, 80)
    cv0, u0, s0 = [], [], []
    for t in grid:
        gas.update(CoolProp.DmassT_INPUTS, 1e-7, t)
        cv0.append(gas.cp0mass() - R)
        u0.append(gas.umass())
        s0.append(gas.smass() + R * np.log(1e-7))
    k = polynomial.polyfit(grid / 200, cv0, 4)
    integral = polynomial.polyint(k) * 200
    u_zero = float(np.mean(u0 - polynomial.polyval(grid / 200, integral)))
    over_t = k[0] * np.log(grid / 200)
    for n in range(1, 5):
        over_t = over_t + k[n] / n * (grid / 200) ** n
    s_zero = float(np.mean(s0 - over_t))
    show("IDEAL_CV", k, "ideal-gas cv [J/kgK]: powers 0..4 of T/200 K")
    show(
        "IDEAL_ZERO", [u_zero, s_zero], "constants of the ideal-gas energy and entropy (IIR datum)"
    )

    rows = []
    cold, warm = np.linspace(150, 216, 23), np.linspace(216.6, 319, 52)
    for t in np.concatenate([cold, warm]):
        if t < TRIPLE_T:
            top = min(sublimation_pressure(t) / (R * t) * 1.55, 16.0)
        elif t < 297.5:
            saturated.update(CoolProp.QT_INPUTS, 1, t)
            top = min(saturated.rhomass() * 1.12, 260.0)
        else:
            top = 260.0
        for rho in np.concatenate([[1e-3], np.linspace(0.02, 1, 26) * top]):
            gas.update(CoolProp.DmassT_INPUTS, rho, t)
            if gas.p() > (65e5 if t > 297 else 68e5):
                break
            rows.append((t, rho, gas.p(), gas.umass(), gas.cvmass()))
    t, rho, p, u, cv = np.array(rows).T
    delta, tau, z = rho / CRITICAL_RHO, CRITICAL_T / t, p / (rho * R * t)
    u_ideal = polynomial.polyval(t / 200, integral) + u_zero
    cv_ideal = polynomial.polyval(t / 200, k)
    terms = [(i + 1, j) for i, top in enumerate((5, 5, 4, 4, 3, 3)) for j in range(top + 1)]
    i, j = np.array(terms).T
    b = delta[:, None] ** i * tau[:, None] ** j
    blocks = (
        (b * i, z - 1, 2e-5 * z),
        (b * j * R * t[:, None], u - u_ideal, 5.0 * (0.2 + delta)),
        (-b * j * (j - 1) * R, cv - cv_ideal, 2.0 * (0.2 + delta)),
    )
    a = np.vstack([m / s[:, None] for m, _, s in blocks])
    y = np.concatenate([v / s for _, v, s in blocks])
    scale = np.linalg.norm(a, axis=0)
    c = np.linalg.lstsq(a / scale, y, rcond=None)[0] / scale
    table = np.zeros((6, 6))
    for (row, power), value in zip(terms, c, strict=True):
        table[row - 1, power] = value
    show("RESIDUAL", table, "residual Helmholtz: row i-1, column j: factor of delta^i tau^j")


def fit_saturation() -> None:
    """Enthalpy and entropy of saturated liquid and vapour; the saturation temperature."""
    t = np.r_[np.linspace(TRIPLE_T, 303.15, 400), CRITICAL_T - np.geomspace(0.9, 1e-3, 60)]
    rows = []
    for value in t:
        saturated.update(CoolProp.QT_INPUTS, 0, value)
        row = [saturated.p(), saturated.hmass(), saturated.smass()]
        saturated.update(CoolProp.QT_INPUTS, 1, value)
        rows.append([*row, saturated.hmass(), saturated.smass()])
    p, h_l, s_l, h_v, s_v = np.array(rows).T
    u = 1 - t / CRITICAL_T
    powers = (2, 3, 4, 5, 6, 8)
    log_p = np.log(p / CRITICAL_P)
    c = least_squares([u ** (n / 2) for n in powers], log_p * t / CRITICAL_T, 1 / t)
    show("SATURATION_PRESSURE", c, "T/Tc ln(p/pc): powers 2, 3, 4, 5, 6, 8 of (1 - T/Tc)^(1/2)")
    log_p = CRITICAL_T / t * sum(a * u ** (n / 2) for a, n in zip(c, powers, strict=True))
    x = np.cbrt(1 - t / CRITICAL_T)
    weight = np.where(t <= 303.15, 1.0, 0.2)
    for name, value, degree, what in (
        ("LIQUID_ENTHALPY", h_l, 6, "saturated liquid enthalpy [J/kg]"),
        ("VAPOR_ENTHALPY", h_v, 6, "saturated vapour enthalpy [J/kg]"),
        ("LIQUID_ENTROPY", s_l, 6, "saturated liquid entropy [J/kgK]"),
        ("VAPOR_ENTROPY", s_v, 6, "saturated vapour entropy [J/kgK]"),
    ):
        c = least_squares([x**n for n in range(degree + 1)], value, weight)
        show(name, c, f"{what}: powers 0.. of (1 - T/Tc)^(1/3)")
    q = np.sqrt(-log_p)
    c = least_squares([q**n for n in range(2, 9)], CRITICAL_T / t - 1, t * t)
    show("SATURATION_TEMPERATURE", c, "Tc/T - 1: powers 2..8 of sqrt(ln(pc/p))")


def fit_sublimation() -> None:
    """Dry ice and the gas over it, along the sublimation line; the sublimation temperature."""
    t = np.linspace(LOWEST_T, TRIPLE_T, 150)
    p = sublimation_pressure(t)
    d = (t - TRIPLE_T) / 100
    solid = [dry_ice_state(tt, pp) for tt, pp in zip(t, p, strict=True)]
    vapor = []
    for tt, pp in zip(t, p, strict=True):
        gas.update(CoolProp.PT_INPUTS, pp, tt)
        vapor.append((np.log(gas.rhomass()), gas.hmass(), gas.smass()))
    for name, value, what in (
        ("SOLID_ENTHALPY", [s.enthalpy_j_kg for s in solid], "dry ice enthalpy [J/kg]"),
        ("SOLID_ENTROPY", [s.entropy_j_kg_k for s in solid], "dry ice entropy [J/kgK]"),
        ("SOLID_DENSITY", [s.density_kg_m3 for s in solid], "dry ice density [kg/m3]"),
        (
            "FROST_VAPOR_LOG_DENSITY",
            [v[0] for v in vapor],
            "ln density of gas over dry ice [kg/m3]",
        ),
        ("FROST_VAPOR_ENTHALPY", [v[1] for v in vapor], "enthalpy of gas over dry ice [J/kg]"),
        ("FROST_VAPOR_ENTROPY", [v[2] for v in vapor], "entropy of gas over dry ice [J/kgK]"),
    ):
        c = least_squares([d**n for n in range(6)], np.array(value), 1.0)
        show(name, c, f"{what}: powers 0..5 of (T - Tt)/100 K")
    q = np.sqrt(np.log(TRIPLE_P / p))
    c = least_squares([q**n for n in range(2, 11)], TRIPLE_T / t - 1, t * t)
    show("SUBLIMATION_TEMPERATURE", c, "Tt/T - 1: powers 2..10 of sqrt(ln(pt/p))")


def fit_liquid_full() -> None:
    """Liquid with no vapour space: isochores that start at saturation."""
    rows, start = [], []
    for t0 in np.linspace(TRIPLE_T, 298.65, 60):
        saturated.update(CoolProp.QT_INPUTS, 0, t0)
        rho, p0, u0 = saturated.rhomass(), saturated.p(), saturated.umass()
        start.append((t0, rho / 1000))
        for rise in np.geomspace(0.05, 60, 40):
            liquid.update(CoolProp.DmassT_INPUTS, rho, t0 + rise)
            if liquid.p() > 210e5:
                break
            energy = (liquid.umass() - u0) / rise
            rows.append((rho / 1000, rise / 10, (liquid.p() - p0) / rise, energy))
    t0, r0 = np.array(start).T
    c = least_squares([r0**n for n in range(7)], t0, 1.0)
    show("LIQUID_FULL_TEMPERATURE", c, "saturation temperature [K]: powers 0..6 of rho/1000")
    r, d, slope, cv = np.array(rows).T
    for name, value, degree, rises, what in (
        ("LIQUID_FULL_SLOPE", slope, 5, 3, "mean pressure rise [Pa/K]"),
        ("LIQUID_FULL_CV", cv, 3, 2, "mean cv [J/kgK]"),
    ):
        powers = [(m, n) for m in range(rises) for n in range(degree + 1 - m)]
        c = least_squares([r**n * d**m for m, n in powers], value, 1.0)
        table = np.zeros((rises, 6))
        for (m, n), factor in zip(powers, c, strict=True):
            table[m, n] = factor
        show(name, table, f"{what} on an isochore: row m, column n: (rise/10 K)^m (rho/1000)^n")


if __name__ == "__main__":
    print('"""Fitted coefficients; made by tests/co2/fit_coefficients.py, which says how."""')
    print("\nfrom typing import Final")
    fit_vapor()
    fit_saturation()
    fit_sublimation()
    fit_liquid_full()
