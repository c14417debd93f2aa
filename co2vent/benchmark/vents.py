"""Vents whose contents are known, from either section model, in one shape for the benchmark."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

import numpy as np
from numpy.typing import NDArray

from co2vent.readings.reading import Reading, Setup

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True, kw_only=True)
class TrueHold:
    """A hold and what was inside at its end. SI, absolute."""

    number: int  # 0: the closed time before the first vent
    start_s: float
    end_s: float
    liquid_kg: float
    solid_kg: float
    metal_margin_k: float  # coldest metal above saturation at the end
    leak_by_kg_per_s: float


@dataclass(frozen=True, slots=True, kw_only=True)
class TrueVent:
    """What the person had (`setup`, `readings`) and what was inside at every reading."""

    model: str
    seed: int
    setup: Setup
    readings: list[Reading]
    holds: tuple[TrueHold, ...]
    volume_m3: float
    allowable_kg: float  # by the true volume
    at_s: Floats
    pressure_pa: Floats
    condensed_kg: Floats  # liquid and dry ice
    solid_kg: Floats

    def wet_at(self, at_s: float) -> bool:
        """Tell whether more than allowable was inside at the row at or before `at_s`."""
        row = int(np.searchsorted(self.at_s, at_s, side="right")) - 1
        return bool(self.condensed_kg[max(row, 0)] > self.allowable_kg)

    @property
    def dry_from_s(self) -> float | None:
        """When the contents fell below the allowable amount for good, `None` if they didn't."""
        wet = np.flatnonzero(self.condensed_kg > self.allowable_kg)
        if len(wet) == 0:
            return float(self.at_s[0])
        return None if wet[-1] + 1 >= len(self.at_s) else float(self.at_s[wet[-1] + 1])


def closed_spans(is_open: NDArray[np.bool_]) -> Iterator[tuple[int, int]]:
    """Yield first row and end of each hold: two rows or more with the valve shut."""
    changes = np.flatnonzero(np.diff(is_open.astype(int))) + 1
    for start, stop in pairwise([0, *changes.tolist(), len(is_open)]):
        if not is_open[start] and stop - start >= 2:
            yield start, stop


def first_model_vent(seed: int) -> TrueVent:
    """Return the vent of `seed` on the project's section model."""
    from co2vent.section_model.layout import COLUMN
    from co2vent.section_model.population import as_readings, draw_case, run_case

    case = draw_case(seed)
    run = run_case(case)
    solid = run.rows[:, COLUMN["solid_kg"]]
    return TrueVent(
        model="first",
        seed=seed,
        setup=case.setup,
        readings=as_readings(case, run.rows),
        holds=tuple(
            TrueHold(
                number=hold.number,
                start_s=hold.start_s,
                end_s=hold.end_s,
                liquid_kg=hold.liquid_kg,
                solid_kg=hold.solid_kg,
                metal_margin_k=hold.coldest_metal_above_saturation_k,
                leak_by_kg_per_s=hold.leak_by_kg_per_s,
            )
            for hold in run.holds
        ),
        volume_m3=case.setting.section.volume_m3,
        allowable_kg=case.allowable_kg,
        at_s=run.rows[:, COLUMN["elapsed_s"]],
        pressure_pa=run.rows[:, COLUMN["pressure_pa"]],
        condensed_kg=run.rows[:, COLUMN["liquid_kg"]] + solid,
        solid_kg=solid,
    )


def other_model_vent(seed: int) -> TrueVent:
    """Return the vent of `seed` on the second model, which shares only the CO2 properties."""
    from co2vent.benchmark.other_drawing import draw_other_case
    from co2vent.benchmark.other_population import allowable_kg, as_readings, run_other_case
    from co2vent.benchmark.other_run import ROW

    case = draw_other_case(seed)
    run = run_other_case(case)
    solid = run.rows[:, ROW["solid_kg"]]
    return TrueVent(
        model="second",
        seed=seed,
        setup=case.setup,
        readings=as_readings(case, run.rows),
        holds=tuple(
            TrueHold(
                number=hold.number,
                start_s=hold.start_s,
                end_s=hold.end_s,
                liquid_kg=hold.liquid_kg,
                solid_kg=hold.solid_kg,
                metal_margin_k=hold.metal_margin_k,
                leak_by_kg_per_s=hold.leak_by_kg_per_s,
            )
            for hold in run.holds
        ),
        volume_m3=case.section.volume,
        allowable_kg=allowable_kg(case.section.volume),
        at_s=run.rows[:, ROW["elapsed_s"]],
        pressure_pa=run.rows[:, ROW["pressure_pa"]],
        condensed_kg=run.rows[:, ROW["liquid_kg"]] + solid,
        solid_kg=solid,
    )


def third_model_vent(seed: int) -> TrueVent:
    """Return the vent of `seed` on the third model, which shares only the CO2 properties."""
    from co2vent.benchmark.plain_drawing import plain_model_vent

    return plain_model_vent(seed)


# the limits of the verdict were set on these two; the third only checks
MODELS: Final[dict[str, Callable[[int], TrueVent]]] = {
    "first": first_model_vent,
    "second": other_model_vent,
}
EVERY_MODEL: Final = MODELS | {"third": third_model_vent}
