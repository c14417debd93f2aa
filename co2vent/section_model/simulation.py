"""One section being vented: step it, read its gauges, look at what is really inside.

    run = SectionRun(setting, seed=3)
    rows = run.step(valve=1.0, readings=60)      # columns as `layout.OUTPUT`
    run.truth().liquid_kg

A run is deterministic for its setting and seed, however it is cut into calls.
"""

from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from co2vent.section_model.fluid import FluidTables, co2_tables
from co2vent.section_model.layout import OUTPUT
from co2vent.section_model.packing import DISSOLVED_J_PER_KG, WATER_LATENT_J_PER_KG, Records, pack
from co2vent.section_model.parameters import Setting

NEVER: Final = float("inf")


@dataclass(frozen=True, slots=True, kw_only=True)
class PocketTruth:
    """What lies in one pocket. SI."""

    liquid_kg: float
    solid_kg: float
    condensed_k: float
    metal_k: float
    bound_kg: float  # CO2 in oil and desiccant


@dataclass(frozen=True, slots=True, kw_only=True)
class Truth:
    """What is really inside, at `time_s`. SI, absolute."""

    time_s: float
    pressure_pa: float
    liquid_kg: float
    solid_kg: float
    vapor_kg: float
    nitrogen_kg: float
    gas_k: float
    dry_metal_k: float
    leak_by_kg_per_s: float
    vented_kg: float
    relieved_kg: float
    lowest_pa: float
    hose_snow_kg: float
    pockets: tuple[PocketTruth, ...]


@dataclass(frozen=True, slots=True)
class Balance:
    """Mass and energy inside, and what has crossed the boundary since the start."""

    kg: float
    joule: float
    kg_in: float
    joule_in: float


class SectionRun:
    """A section that is stepped through time by its owner (no clock, no thread)."""

    def __init__(self, setting: Setting, seed: int = 0, fluid: FluidTables | None = None) -> None:
        """Pack `setting`; `seed` fixes the noise; `fluid` is CO2 unless given."""
        from co2vent.section_model.entry import run  # loads numba

        self._run = run
        self.setting = setting
        self.records: Records = pack(setting, co2_tables() if fluid is None else fluid)
        self._noise = np.random.default_rng(seed)

    @property
    def time_s(self) -> float:
        """Seconds since the start."""
        return float(self.records.state[0]["time_s"])

    def first_row(self) -> NDArray[np.float64]:
        """Return the row at the present time, without stepping: a log's first reading."""
        row: NDArray[np.float64] = self.step(0.0, 1, period_s=0.0)[0]
        return row

    def step(
        self,
        valve: float,
        readings: int,
        *,
        period_s: float | None = None,
        below_pa: float = -NEVER,
        above_pa: float = NEVER,
    ) -> NDArray[np.float64]:
        """Advance `readings` periods at a fixed valve opening (0..1); return one row a reading.

        Ends early after the row in which the gauge shows less than `below_pa` or more than
        `above_pa` (gauge pressures).
        """
        r = self.records
        period = self.setting.gauge.period_s if period_s is None else period_s
        out = np.empty((readings, len(OUTPUT)))
        noise = self._noise.standard_normal((readings, 3))
        done = self._run(
            r.fluid, r.section, r.pockets, r.state, r.pocket_state, r.gauge, r.gauge_state,
            valve, period, noise, below_pa, above_pa, out,
        )  # fmt: skip
        return out[:done]

    def truth(self) -> Truth:
        """Return what is really inside now."""
        st, ps = self.records.state[0], self.records.pocket_state
        pockets = tuple(
            PocketTruth(
                liquid_kg=float(p["condensed_kg"] * (1.0 - p["solid_share"])),
                solid_kg=float(p["condensed_kg"] * p["solid_share"]),
                condensed_k=float(p["condensed_k"]),
                metal_k=float(p["metal_k"]),
                bound_kg=float(p["dissolved_kg"] + p["adsorbed_kg"]),
            )
            for p in ps
        )
        return Truth(
            time_s=float(st["time_s"]),
            pressure_pa=float(st["pressure_pa"]),
            liquid_kg=sum(p.liquid_kg for p in pockets),
            solid_kg=sum(p.solid_kg for p in pockets),
            vapor_kg=float(st["gas_kg"]),
            nitrogen_kg=float(st["nitrogen_kg"]),
            gas_k=float(st["gas_k"]),
            dry_metal_k=float(st["dry_metal_k"]),
            leak_by_kg_per_s=float(st["leak_by_now_kg_per_s"]),
            vented_kg=float(st["vented_kg"]),
            relieved_kg=float(st["relieved_kg"]),
            lowest_pa=float(st["lowest_pa"]),
            hose_snow_kg=float(st["hose_snow_kg"]),
            pockets=pockets,
        )

    def balance(self) -> Balance:
        """Return mass and energy inside and crossed: inside minus crossed never changes."""
        r = self.records
        st, se = r.state[0], r.section[0]
        kg = float(st["gas_kg"])
        joule = float(st["gas_energy_j"] + st["dry_metal_k"] * se["dry_metal_j_per_k"])
        for p, po in zip(r.pocket_state, r.pockets, strict=True):
            bound = float(p["dissolved_kg"] + p["adsorbed_kg"])
            kg += float(p["condensed_kg"]) + bound
            joule += float(p["condensed_j"]) + bound * DISSOLVED_J_PER_KG
            joule += (
                float(p["metal_k"] * po["metal_j_per_k"])
                - float(p["water_kg"]) * WATER_LATENT_J_PER_KG
            )
        out = float(st["vented_kg"] + st["relieved_kg"] + st["leaked_out_kg"] + st["pumped_kg"])
        return Balance(
            kg=kg,
            joule=joule,
            kg_in=float(st["leaked_in_kg"]) - out,
            joule_in=float(st["leaked_in_j"] + st["heat_in_j"] - st["vented_j"]),
        )

    def set_pump(self, running: bool) -> None:
        """Start or stop the vacuum pump."""
        self.records.state[0]["pump_on"] = float(running)
