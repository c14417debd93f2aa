"""A section left shut warms at constant volume: pressures against the equation of state."""

from typing import Any

import pytest

from co2vent.planning.charge import charge_at
from co2vent.planning.trapped import trapped


def reference_pressure(density: float, t: float) -> float:
    """Pressure at constant density, whatever the phases (CoolProp)."""
    import CoolProp

    state: Any = CoolProp.AbstractState("HEOS", "CO2")
    state.update(CoolProp.DmassT_INPUTS, density, t)
    return float(state.p())


@pytest.mark.parametrize("filled", [0.0, 0.01, 0.05, 0.1, 0.3, 0.6, 0.85, 0.95, 1.0])
@pytest.mark.parametrize("bar", [21.0, 28.0, 45.0, 53.0])
def test_the_relief_setting_is_reached_where_the_equation_of_state_says(
    filled: float, bar: float
) -> None:
    charge = charge_at(0.01, 253.15, filled)
    kelvin = trapped(charge, bar * 1e5).kelvin_of_this_charge
    density = charge.total_kg / charge.volume_m3
    if kelvin is None:  # only where vapour stays below the setting up to 45 degC
        assert reference_pressure(density, 318.15) < bar * 1e5
        return
    # fits: 1e-4 of the pressure for vapour, 0.6 bar in liquid-full
    tolerance = 0.6e5 if filled > 0.6 else 2e-4 * bar * 1e5
    reached = reference_pressure(density, 253.15 + kelvin)
    assert reached == pytest.approx(bar * 1e5, abs=tolerance)


def test_a_setting_already_passed_needs_no_warming() -> None:
    assert trapped(charge_at(0.01, 253.15, 0.5), 15e5).kelvin_of_this_charge == 0.0


def test_what_is_not_described_is_not_made_up() -> None:
    assert trapped(None, 50e5).bar_per_k is None
    assert trapped(charge_at(0.01, 200.0, 0.5), 50e5).kelvin_of_this_charge is None
    assert trapped(charge_at(0.01, 301.0, 1.0), 90e5).bar_per_k is None
    far = trapped(charge_at(0.01, 253.15, 0.9), 250e5)
    assert far.kelvin_to_relief is None
    assert far.kelvin_of_this_charge is None
