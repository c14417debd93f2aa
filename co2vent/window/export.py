"""Saves what the screen shows: picture, drawing, and the readings as a log. Files are new ones."""

from collections.abc import Iterator
from pathlib import Path

import numpy as np

from co2vent.guidance.session import View
from co2vent.store.whole_file import atomic_write
from co2vent.units import ZERO_CELSIUS_K
from co2vent.window.frame import Mode
from co2vent.window.traces import Traces
from co2vent.window.vapour_path import vapour_path


def free_path(folder: Path, stem: str, ending: str) -> Path:
    """Return a name in `folder` that no file has yet."""
    path = folder / f"{stem}.{ending}"
    number = 2
    while path.exists():
        path = folder / f"{stem}-{number}.{ending}"
        number += 1
    return path


def log_lines(
    traces: Traces, rows: int, view: View, mode: Mode, *, heat: bool = False
) -> Iterator[str]:
    """Yield the readings so far as a readings log, absolute, that says where it came from.

    With `heat` two more columns, which readers of logs leave alone, hold the path of the log p-h
    diagram: the heat content of the vapour, and what it was worked out from.
    """
    setup = view.setup
    yield f"# exported_from: {mode.value}"
    yield f"# ambient_pressure_kPa: {setup.ambient_pressure_pa / 1e3:.4f}"
    if setup.section_volume_m3 is not None:
        yield f"# section_volume_l: {setup.section_volume_m3 * 1e3:g}"
    if setup.section_name:
        yield f"# section_name: {setup.section_name}"
    if setup.simulated or mode is Mode.CLASS:
        yield "# simulated: yes"
    line_k = traces.line_temperature_k(rows)
    has_line = bool(np.isfinite(line_k).any())
    pressure_pa = traces.pressure_pa(rows)
    path = vapour_path(pressure_pa, line_k) if heat else None
    if path is not None:
        yield "# enthalpy_reference: saturated liquid at 0 degC has 200 kJ/kg"
        yield "# enthalpy_from: clamp = vapour assumed as warm as the metal; saturated = assumed"
    heads = ",line_temperature_degC" if has_line else ""
    heads += ",vapour_enthalpy_kJ_per_kg,enthalpy_from" if path is not None else ""
    yield "elapsed_s,pressure_bar_a" + heads
    for at, time_s in enumerate(traces.at_s(rows).tolist()):
        value = float(pressure_pa[at])
        if np.isnan(value):
            continue  # a gap is missing rows, not an empty one
        row = f"{time_s:.3f},{value / 1e5:.5f}"
        if has_line:
            warm = float(line_k[at])
            row += "," if np.isnan(warm) else f",{warm - ZERO_CELSIUS_K:.2f}"
        if path is not None:
            kilojoules = float(path.enthalpy_j_kg[at]) / 1e3
            basis = "clamp" if path.by_clamp[at] else "saturated"
            row += ",," if np.isnan(kilojoules) else f",{kilojoules:.1f},{basis}"
        yield row


def save_log(
    path: Path, traces: Traces, rows: int, view: View, mode: Mode, *, heat: bool = False
) -> None:
    """Write the readings so far as a readings log, with the log p-h path where `heat` is wanted.

    Raises:
        StoreError: it could not be written whole.
    """
    text = "\n".join(log_lines(traces, rows, view, mode, heat=heat)) + "\n"
    atomic_write(path, text.encode())
