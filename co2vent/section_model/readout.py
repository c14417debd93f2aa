"""What the gauge set shows, and one row of output a reading."""

from math import exp, nan

from co2vent.section_model.fluid import Array, FluidTables
from co2vent.section_model.jit import Rec, jit
from co2vent.section_model.property_lookup import saturation_k


@jit
def read_gauge(
    ga: Rec, gs: Rec, st: Rec, ps: Rec, ambient_pa: float, period: float, noise: Array
) -> None:
    """Update what the gauge set shows after `period` seconds; `noise`: three normal numbers."""
    pressure = st.pressure_pa - ambient_pa
    clamp = ps[int(ga.clamp_pocket)].metal_k + ga.clamp_error_k
    upper = st.dry_metal_k + ga.upper_error_k
    stuck = ga.stuck_from_s <= st.time_s < ga.stuck_until_s
    if gs.started < 0.5:
        gs.started = 1.0
        gs.pressure_pa, gs.clamp_k, gs.upper_k = pressure, clamp, upper
    elif not stuck:
        f = 1.0 if ga.lag_s <= 0.0 else 1.0 - exp(-period / ga.lag_s)
        gs.pressure_pa += f * (pressure - gs.pressure_pa)
    f = 1.0 if ga.clamp_lag_s <= 0.0 else 1.0 - exp(-period / ga.clamp_lag_s)
    gs.clamp_k += f * (clamp - gs.clamp_k)
    gs.upper_k += f * (upper - gs.upper_k)
    shown = gs.pressure_pa * (1.0 + ga.span_error) + ga.zero_pa + ga.drift_pa_per_s * st.time_s
    if not stuck:  # a shut-off gauge loses its noise too
        shown += ga.noise_pa * noise[0]
    if ga.step_pa > 0.0:
        shown = ga.step_pa * int(shown / ga.step_pa + (0.5 if shown >= 0.0 else -0.5))
    gs.over_range = 1.0 if shown > ga.full_scale_pa else 0.0
    gs.shown_pa = shown


@jit
def write_row(
    fl: FluidTables, ga: Rec, gs: Rec, st: Rec, ps: Rec, valve: float, noise: Array, row: Array
) -> None:
    """Write one output row (columns as `layout.OUTPUT`)."""
    row[0] = st.time_s
    row[1] = valve
    row[2] = nan if gs.over_range > 0.5 else gs.shown_pa
    row[3] = gs.clamp_k + ga.clamp_noise_k * noise[1]
    row[4] = gs.upper_k + ga.clamp_noise_k * noise[2]
    row[5] = st.pressure_pa
    liquid = solid = bound = 0.0
    coldest = warmest = st.dry_metal_k
    largest = 0
    for i in range(ps.shape[0]):
        solid += ps[i].condensed_kg * ps[i].solid_share
        liquid += ps[i].condensed_kg * (1.0 - ps[i].solid_share)
        bound += ps[i].dissolved_kg + ps[i].adsorbed_kg
        coldest = min(coldest, ps[i].metal_k)
        warmest = max(warmest, ps[i].metal_k)
        if ps[i].condensed_kg > ps[largest].condensed_kg:
            largest = i
    row[6] = liquid
    row[7] = solid
    row[8] = st.gas_kg
    row[9] = st.leak_by_now_kg_per_s
    row[10] = saturation_k(fl, max(st.pressure_pa, 1.0))
    row[11] = ps[largest].metal_k
    row[12] = st.dry_metal_k
    row[13] = st.gas_k
    row[14] = coldest
    row[15] = st.vented_kg
    row[16] = bound
    row[17] = warmest
    row[18] = ps[largest].condensed_k
