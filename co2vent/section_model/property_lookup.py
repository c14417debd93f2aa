"""Property lookups for the compiled stepper, in the tables of `co2vent.section_model.fluid`.

Condensed CO2 whose energy lies between that of liquid and of dry ice at the triple point is a
mixture of both at the triple-point temperature (phase rule).
"""

from math import log

from co2vent.section_model.fluid import (
    DENSEST,
    GAS_LOWEST_K,
    GAS_STEP_K,
    RHO,
    VIRIAL_TERMS,
    Array,
    FluidTables,
    P,
    U,
)
from co2vent.section_model.jit import jit


@jit
def line_value(table: Array, t0: float, dt: float, temperature: float, column: int) -> float:
    """Return a column of a phase's table at `temperature`, held at the ends."""
    x = (temperature - t0) / dt
    last = table.shape[0] - 1
    if x <= 0.0:
        return float(table[0, column])
    if x >= last:
        return float(table[last, column])
    i = int(x)
    f = x - i
    return float(table[i, column] * (1.0 - f) + table[i + 1, column] * f)


@jit
def even_value(values: Array, low: float, high: float, x: float) -> float:
    """Return the value at `x` of a curve given at equal steps from `low` to `high`."""
    last = values.shape[0] - 1
    y = (x - low) / (high - low) * last
    if y <= 0.0:
        return float(values[0])
    if y >= last:
        return float(values[last])
    i = int(y)
    f = y - i
    return float(values[i] * (1.0 - f) + values[i + 1] * f)


@jit
def saturation_k(fl: FluidTables, pressure: float) -> float:
    """Return the temperature [K] of boiling or subliming at `pressure` [Pa]; 0 for a mere gas."""
    if not fl.condensable:
        return 0.0
    if pressure >= fl.triple_p:
        return even_value(
            fl.liquid_t_of_lnp, log(fl.liquid[0, P]), log(fl.liquid[-1, P]), log(pressure)
        )
    if pressure <= fl.solid[0, P]:
        return fl.solid_t0
    return even_value(fl.solid_t_of_lnp, log(fl.solid[0, P]), log(fl.solid[-1, P]), log(pressure))


@jit
def phase(fl: FluidTables, temperature: float, column: int) -> float:
    """Return a column of the liquid's table above the triple point, else of the solid's."""
    if temperature > fl.triple_t:
        return line_value(fl.liquid, fl.liquid_t0, fl.liquid_dt, temperature, column)
    return line_value(fl.solid, fl.solid_t0, fl.solid_dt, temperature, column)


@jit
def liquid_value(fl: FluidTables, temperature: float, column: int) -> float:
    """Return a column of the liquid's table, also at the triple point itself."""
    return line_value(fl.liquid, fl.liquid_t0, fl.liquid_dt, temperature, column)


@jit
def condensed_state(fl: FluidTables, energy: float) -> tuple[float, float]:
    """Return (temperature [K], solid share by mass) of condensed CO2 with `energy` [J/kg]."""
    u_liquid = fl.liquid[0, U]
    u_solid = fl.solid[-1, U]
    if energy >= u_liquid:
        return even_value(fl.liquid_t_of_u, u_liquid, fl.liquid[-1, U], energy), 0.0
    if energy <= u_solid:
        return even_value(fl.solid_t_of_u, fl.solid[0, U], u_solid, energy), 1.0
    return fl.triple_t, (u_liquid - energy) / (u_liquid - u_solid)


@jit
def condensed_density(fl: FluidTables, temperature: float, solid_share: float) -> float:
    """Return the density [kg/m3] of condensed CO2, saturated."""
    if solid_share >= 1.0:
        return line_value(fl.solid, fl.solid_t0, fl.solid_dt, temperature, RHO)
    liquid = line_value(fl.liquid, fl.liquid_t0, fl.liquid_dt, temperature, RHO)
    if solid_share <= 0.0:
        return liquid
    return float(1.0 / (solid_share / fl.solid[-1, RHO] + (1.0 - solid_share) / liquid))


@jit
def gas_row(fl: FluidTables, temperature: float) -> tuple[int, float]:
    """Return (row, fraction) of the gas table at `temperature`."""
    x = (temperature - GAS_LOWEST_K) / GAS_STEP_K
    last = fl.gas.shape[0] - 2
    if x < 0.0:
        x = 0.0
    i = int(x)
    if i > last:
        i = last
    return i, x - i


@jit
def row_sum(table: Array, row: int, first: int, rho: float) -> float:
    """Return the sum of factor_k rho^k of one row of the gas table, held above its density."""
    rho = min(rho, table[row, DENSEST])
    total = 0.0
    for k in range(VIRIAL_TERMS - 1, -1, -1):
        total = (total + table[row, first + k]) * rho
    return total


@jit
def gas_energy(fl: FluidTables, rho: float, temperature: float) -> tuple[float, float]:
    """Return (u [J/kg], du/dT [J/kgK]) of the gas."""
    i, f = gas_row(fl, temperature)
    low = fl.gas[i, 0] + row_sum(fl.gas, i, 1 + VIRIAL_TERMS, rho)
    high = fl.gas[i + 1, 0] + row_sum(fl.gas, i + 1, 1 + VIRIAL_TERMS, rho)
    return low * (1.0 - f) + high * f, (high - low) / GAS_STEP_K


@jit
def gas_pressure(fl: FluidTables, rho: float, temperature: float) -> float:
    """Return the pressure [Pa] of the gas."""
    i, f = gas_row(fl, temperature)
    low = row_sum(fl.gas, i, 1, rho)
    high = row_sum(fl.gas, i + 1, 1, rho)
    return rho * fl.gas_constant * temperature * (1.0 + low * (1.0 - f) + high * f)


@jit
def ideal_k(fl: FluidTables, temperature: float) -> float:
    """Return cp/cv of the ideal gas: the real ratio overstates choked flow (ISO 9300 form)."""
    i, _ = gas_row(fl, temperature)
    cv = (fl.gas[i + 1, 0] - fl.gas[i, 0]) / GAS_STEP_K
    return float(1.0 + fl.gas_constant / cv)
