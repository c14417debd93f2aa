"""A vent on the second section: somebody's hands on the valve, somebody's gauge and clamp."""

from typing import Final, NamedTuple

import numpy as np

from co2vent.benchmark.compiling import fast
from co2vent.benchmark.other_exchange import boundary_k, leak_by_kg_s
from co2vent.benchmark.other_section import (
    BODY_T,
    GAS_VOLUME,
    LAYERS,
    WALLS,
    Floats,
    SectionParameters,
    condensed_state,
    condensed_volume,
)
from co2vent.benchmark.other_step import layer_pressures, step

VENT_STEP_S: Final = 0.05
HOLD_STEP_S: Final = 0.1

ROW: Final = {
    name: i
    for i, name in enumerate(
        (
            "elapsed_s",
            "valve",  # as logged: late by what the person needs to mark it
            "shown_pa_gauge",  # NaN: over range
            "clamp_k",
            # the truth
            "valve_is_open",
            "pressure_pa",
            "liquid_kg",
            "solid_kg",
            "metal_margin_k",  # coldest piece of metal above saturation
            "leak_by_kg_per_s",
            "co2_pressure_pa",
        )
    )
}
COLUMNS: Final = len(ROW)


class Instruments(NamedTuple):
    """What the gauge and the clamp do to the truth."""

    zero_pa: float
    gain: float  # 1 +- the class
    lag_s: float
    step_pa: float
    noise_pa: float
    wander_pa: float  # slow, over some 100 s
    full_scale_pa: float  # gauge
    clamp_wall: int
    clamp_error_k: float
    clamp_lag_s: float
    clamp_ambient_share: float
    clamp_step_k: float
    mark_delay_s: float


@fast
def coldest_k(metal: Floats, body_k: float) -> float:
    """Return the temperature of the coldest metal."""
    coldest = body_k
    for w in range(WALLS):
        coldest = min(coldest, metal[w, 0])
    return coldest


@fast
def first_state(
    p: SectionParameters,
    gas: Floats,
    gas_t: Floats,
    cond: Floats,
    cond_t: Floats,
    solid: Floats,
    cond_v: Floats,
    extra: Floats,
) -> float:
    """Fill in the volumes of a state without doing work; return the pressure."""
    used = 0.0
    for r in range(3):
        cond_v[r] = 0.0
        if cond[r, 0] > 0.0:
            cond_t[r], solid[r] = condensed_state(cond[r, 0], cond[r, 1], cond_t[r])
            cond_v[r] = condensed_volume(cond[r, 0], solid[r], cond_t[r])
        used += cond_v[r]
    extra[GAS_VOLUME] = p.volume - used
    volume = extra[GAS_VOLUME] / LAYERS
    p_co2, p_all = np.empty(LAYERS), np.empty(LAYERS)
    layer_pressures(gas, gas_t, volume, p_co2, p_all)
    mean: float = (p_all[0] + p_all[1] + p_all[2]) / LAYERS
    return mean


@fast
def run(
    p: SectionParameters,
    seen: Instruments,
    gas: Floats,
    gas_t: Floats,
    cond: Floats,
    cond_t: Floats,
    metal: Floats,
    extra: Floats,
    first_hold_s: float,
    script: Floats,  # per vent: stop at [Pa, shown gauge], longest vent [s], hold [s]
    reaction_s: float,
    sample_s: float,
    seed: int,
) -> Floats:
    """Run the script; return one row a sample, columns as `ROW`. The state arrays are used up."""
    np.random.seed(seed)  # noqa: NPY002 (the only generator compiled code has)
    solid, cond_v = np.zeros(3), np.zeros(3)
    total_s = first_hold_s + script[:, 1].sum() + script[:, 2].sum() + 60.0
    rows = np.empty((int(total_s / sample_s) + 2, COLUMNS))
    count = 0
    pressure = first_state(p, gas, gas_t, cond, cond_t, solid, cond_v, extra)
    inside_pa = pressure  # what the gauge's own volume has reached
    clamp_k = metal[seen.clamp_wall, 1]
    wander = np.random.normal() * seen.wander_pa  # noqa: NPY002
    phase, phase_start, at_s, next_sample = -1, 0.0, 0.0, 0.0
    is_open, due_s, shown = False, -1.0, pressure - p.ambient_pa
    changed_s, was_open = -1e9, False
    while True:
        dt = VENT_STEP_S if is_open else HOLD_STEP_S
        if at_s >= next_sample - 1e-6:
            keep = np.exp(-sample_s / 100.0)
            wander = wander * keep + np.random.normal() * seen.wander_pa * np.sqrt(  # noqa: NPY002
                1.0 - keep * keep
            )
            value = (inside_pa - p.ambient_pa) * seen.gain + seen.zero_pa + wander
            value += np.random.normal() * seen.noise_pa  # noqa: NPY002
            shown = np.round(value / seen.step_pa) * seen.step_pa
            row = rows[count]
            row[0] = at_s
            row[1] = is_open if at_s - changed_s >= seen.mark_delay_s else was_open
            row[2] = shown if shown <= seen.full_scale_pa else np.nan
            row[3] = (
                np.round((clamp_k + seen.clamp_error_k) / seen.clamp_step_k) * seen.clamp_step_k
            )
            row[4] = is_open
            row[5] = pressure
            row[7] = min(solid.sum(), cond[:, 0].sum())
            row[6] = cond[:, 0].sum() - row[7]
            p_co2 = pressure * gas[0, 0] / (gas[0, 0] + gas[0, 1] * 1.571)  # mole share
            row[8] = coldest_k(metal, extra[BODY_T]) - boundary_k(p_co2)
            row[9] = leak_by_kg_s(p, pressure)
            row[10] = p_co2
            count += 1
            next_sample += sample_s
            # the hands
            if is_open:
                low = shown <= script[phase, 0]
                if due_s < 0.0 and (low or at_s - phase_start > script[phase, 1]):
                    due_s = at_s + reaction_s
                if due_s >= 0.0 and at_s >= due_s:
                    is_open, due_s, phase_start = False, -1.0, at_s
                    changed_s, was_open = at_s, True
            else:
                wait = first_hold_s if phase < 0 else script[phase, 2]
                if at_s - phase_start >= wait:
                    phase += 1
                    if phase >= len(script):
                        break
                    is_open, phase_start = True, at_s
                    changed_s, was_open = at_s, False
            if count >= len(rows):
                break
            continue
        pressure = step(
            p, gas, gas_t, cond, cond_t, solid, cond_v, metal, extra, is_open, at_s, dt, pressure
        )
        inside_pa += (pressure - inside_pa) * (1.0 - np.exp(-dt / seen.lag_s))
        outer = metal[seen.clamp_wall, 1]
        target = outer + seen.clamp_ambient_share * (p.ambient_k - outer)
        clamp_k += (target - clamp_k) * (1.0 - np.exp(-dt / seen.clamp_lag_s))
        at_s += dt
    return rows[:count]
