"""A measured blowdown: pure nitrogen from 150 bar (digitised; see the head of the data file).

The model has one gas temperature; the experiment measured the gas high and low in the vessel, so
the mean of the two is what it is compared with. The discharge coefficient of the orifice is not
given with the data: 0.74 follows from the first 15 s of the pressure.
"""

import csv
from pathlib import Path

import CoolProp
import numpy as np
import pytest
from numpy.typing import NDArray

from co2vent.section_model.fluid import FluidTables, gas_only
from co2vent.section_model.layout import COLUMN
from co2vent.section_model.parameters import (
    Contents,
    Gauge,
    Pocket,
    Section,
    Setting,
    Surroundings,
    VentPath,
)
from co2vent.section_model.simulation import SectionRun

DATA = Path(__file__).parent / "data" / "blowdown_n2.csv"
Array = NDArray[np.float64]


@pytest.fixture(scope="module")
def measured() -> dict[str, Array]:
    """Return the measured curves: rows of (time s, value)."""
    with DATA.open() as file:
        rows = list(csv.DictReader(line for line in file if not line.startswith("#")))
    names = {row["series"] for row in rows}
    return {
        name: np.array([(r["time_s"], r["value"]) for r in rows if r["series"] == name], float)
        for name in names
    }


def nitrogen() -> FluidTables:
    """Return nitrogen (Span et al. 2000, by CoolProp) as the model's fluid."""
    gas = CoolProp.AbstractState("HEOS", "Nitrogen")
    gas.specify_phase(CoolProp.iphase_gas)

    def pressure(rho: float, t: float) -> float:
        gas.update(CoolProp.DmassT_INPUTS, rho, t)
        return float(gas.p())

    def energy(rho: float, t: float) -> float:
        gas.update(CoolProp.DmassT_INPUTS, rho, t)
        return float(gas.umass())

    # conductivity and viscosity of dilute nitrogen at 273 K: handbook values, from memory
    return gas_only(
        pressure,
        energy,
        8.314462618 / 0.0280134,
        lambda _t: 200.0,
        conductivity_273=24.0e-3,
        conductivity_power=0.8,
        viscosity_273=16.6e-6,
        viscosity_power=0.72,
    )


@pytest.fixture(scope="module")
def modelled() -> Array:
    setting = Setting(
        section=Section(
            volume_m3=np.pi / 4 * 0.273**2 * 1.524,
            diameter_m=0.273,
            wall_m=0.025,
            pockets=(Pocket(wet_share=0.01),),
        ),
        contents=Contents(temperature_k=288.9, pressure_pa=150e5),
        surroundings=Surroundings(temperature_k=288.0),
        vent=VentPath(bore_m=6.35e-3, hose_bore_m=0.2, discharge_coefficient=0.74),
        gauge=Gauge(full_scale_pa=200e5),
    )
    run = SectionRun(setting, fluid=nitrogen())
    return np.concatenate([run.first_row()[None, :], run.step(1.0, 100)])


def test_the_pressure_falls_as_measured(measured: dict[str, Array], modelled: Array) -> None:
    times, expected = measured["pressure"].T
    found = np.interp(times, modelled[:, 0], modelled[:, COLUMN["pressure_pa"]] / 1e5)
    assert np.all(np.abs(found - expected) <= np.maximum(0.1 * expected, 1.0))


def test_the_gas_is_coldest_as_measured_and_warms_again_on_the_metal(
    measured: dict[str, Array], modelled: Array
) -> None:
    low, high = measured["gas_low"], measured["gas_high"]
    mean = 0.5 * (low[:, 1] + np.interp(low[:, 0], high[:, 0], high[:, 1]))
    coldest = int(mean.argmin())
    gas = modelled[:, COLUMN["gas_k"]]
    assert gas.min() == pytest.approx(mean[coldest], abs=5.0)
    assert modelled[gas.argmin(), 0] == pytest.approx(low[coldest, 0], abs=10.0)
    # re-warmed by more than 20 K at 90 s, as measured
    assert np.interp(90.0, modelled[:, 0], gas) - gas.min() > 20.0
    assert np.interp(90.0, low[:, 0], mean) - mean.min() > 20.0


def test_the_metal_cools_as_measured(measured: dict[str, Array], modelled: Array) -> None:
    outer, inner = measured["wall_outer"], measured["wall_inner"]
    mean = 0.5 * (np.interp(60.0, *outer.T) + np.interp(60.0, *inner.T))
    metal = np.interp(60.0, modelled[:, 0], modelled[:, COLUMN["dry_metal_k"]])
    assert metal == pytest.approx(mean, abs=3.0)
