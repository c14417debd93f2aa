"""Saves what the screen shows: picture, drawing, and the readings as a log. Files are new ones."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import numpy as np

from co2vent.guidance.events import EventKind
from co2vent.guidance.session import View
from co2vent.readings.log_writer import metadata_from_setup, metadata_lines
from co2vent.store.whole_file import atomic_write
from co2vent.units import ZERO_CELSIUS_K
from co2vent.window.frame import Mode
from co2vent.window.pyramid import Floats
from co2vent.window.traces import Column, Traces
from co2vent.window.vapour_path import VapourPath, vapour_path

_Cells = tuple[str, list[str]]  # a column's name, and its text in every row


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
    # pressures are absolute here, and the zero is taken off already
    told = metadata_from_setup(replace(setup, pressure_unit="bar_a", zero_offset_pa=0.0))
    told.pop("zero_reading", None)
    told.pop("altitude_m", None)
    told["ambient_pressure_kPa"] = f"{setup.ambient_pressure_pa / 1e3:.4f}"
    if mode is Mode.CLASS:
        told["simulated"] = "yes"
    yield from metadata_lines({"exported_from": mode.value} | told)
    pressure_pa, line_k = traces.pressure_pa(rows), traces.line_temperature_k(rows)
    temperatures = {
        "line_temperature_degC": line_k,
        "upper_temperature_degC": traces.upper_temperature_k(rows),
        "ambient_temperature_degC": traces.ambient_temperature_k(rows),
    }
    columns = [
        column
        for name, kelvin in temperatures.items()
        if (column := _degrees(name, kelvin)) is not None
    ]
    at_s = traces.at_s(rows)
    if view.valve_told and bool((np.diff(at_s) >= 0.0).all()):
        columns.append(("vent_valve", _valve(at_s, view)))
    if heat:
        yield "# enthalpy_reference: saturated liquid at 0 degC has 200 kJ/kg"
        yield "# enthalpy_from: clamp = vapour assumed as warm as the metal; saturated = assumed"
        columns += _heat(vapour_path(pressure_pa, line_k))
    yield ",".join(["elapsed_s", "pressure_bar_a", *(name for name, _cells in columns)])
    for row in np.flatnonzero(~np.isnan(pressure_pa)).tolist():  # a gap is missing rows
        cells = [f"{at_s[row]:.3f}", f"{pressure_pa[row] / 1e5:.5f}"]
        yield ",".join([*cells, *(column[row] for _name, column in columns)])


def _degrees(name: str, kelvin: Floats) -> _Cells | None:
    """Return a temperature's cells, or nothing where it was never measured."""
    if np.isnan(kelvin).all():
        return None
    celsius = kelvin.astype(np.float64) - ZERO_CELSIUS_K
    return name, ["" if value != value else f"{value:.2f}" for value in celsius.tolist()]


def _valve(at_s: Column, view: View) -> list[str]:
    """Return where the vent valve was at each reading, as the session was told."""
    is_open, before, cells = False, 0, []
    for event in view.events:
        if event.kind in (EventKind.VENT_STARTED, EventKind.VENT_CLOSED):
            until = int(np.searchsorted(at_s, event.at_s))
            cells += ["open" if is_open else "closed"] * (until - before)
            before, is_open = max(before, until), event.kind is EventKind.VENT_STARTED
    return cells + ["open" if is_open else "closed"] * (at_s.size - before)


def _heat(path: VapourPath) -> list[_Cells]:
    kilojoules = (path.enthalpy_j_kg / 1e3).tolist()
    bases = ["clamp" if by_clamp else "saturated" for by_clamp in path.by_clamp.tolist()]
    known = [value == value for value in kilojoules]
    return [
        ("vapour_enthalpy_kJ_per_kg", [f"{v:.1f}" if v == v else "" for v in kilojoules]),
        ("enthalpy_from", [b if k else "" for b, k in zip(bases, known, strict=True)]),
    ]


def save_log(
    path: Path, traces: Traces, rows: int, view: View, mode: Mode, *, heat: bool = False
) -> None:
    """Write the readings so far as a readings log, with the log p-h path where `heat` is wanted.

    Raises:
        StoreError: it could not be written whole.
    """
    text = "\n".join(log_lines(traces, rows, view, mode, heat=heat)) + "\n"
    atomic_write(path, text.encode())
