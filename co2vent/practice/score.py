"""The score sheet of a practice vent: what was kept, what was missed. From the truth, after it."""

from dataclasses import dataclass
from typing import Final

import numpy as np

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.inference.outcome import Charge
from co2vent.planning.quantity import Kind, Quantity
from co2vent.practice.log_lines import Rows
from co2vent.practice.scenario import Scenario
from co2vent.readings.limits import stop_margin_pa
from co2vent.section_model.layout import COLUMN
from co2vent.sentence import Sentence

ALLOWABLE_KG: Final = 2e-3
ALLOWABLE_KG_PER_M3: Final = 0.5
STOP_TOLERANCE_PA: Final = 0.05e5  # below the stop pressure: the hand at the valve takes a moment
TRACE_OF_LIQUID_KG: Final = 1e-4
FULL_SUBCOOLING_K: Final = 0.5
FULL_VAPOUR_SHARE: Final = 1e-3
OPENED_PA: Final = 0.1e5  # gauge: the section counts as vented out

STATES: Final = {
    Charge.SUBCOOLED_LIQUID: Sentence("subcooled liquid"),
    Charge.TWO_PHASE: Sentence("two phase"),
    Charge.VAPOR_ONLY: Sentence("vapour only"),
    Charge.SOLID_PRESENT: Sentence("solid present"),
    Charge.UNDETERMINED: Sentence("undetermined"),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Score:
    """How a practice vent went. SI; true pressures, absolute."""

    minutes: float
    vented_kg: float
    stop_kept: bool  # never below the stop pressure with liquid inside
    lowest_with_liquid_pa: float | None  # None: no liquid was ever inside
    seconds_below_stop_with_liquid: float
    seconds_below_triple_with_liquid: float
    most_dry_ice_kg: float
    left_kg: float  # liquid and dry ice at the end
    allowable_kg: float
    declared: Charge | None
    right: bool | None  # None: nothing was declared
    dangerous: bool  # called empty, or vented to zero and left, with liquid or dry ice inside

    def lines(self) -> list[str]:
        """Return the sheet as plain sentences."""
        sheet: list[str] = [
            Sentence(
                "Stop pressure {kept}: {below} below it with liquid inside, {triple} of them "
                "below the triple point.",
                kept=Sentence("kept") if self.stop_kept else Sentence("NOT KEPT"),
                below=f"{self.seconds_below_stop_with_liquid:.0f} s",
                triple=f"{self.seconds_below_triple_with_liquid:.0f} s",
            ),
            Sentence("Dry ice made: {mass} at most.", mass=_grams(self.most_dry_ice_kg)),
            Sentence(
                "Left inside at the end: {left} of liquid and dry ice (allowable {allowable}).",
                left=_grams(self.left_kg),
                allowable=_grams(self.allowable_kg),
            ),
            Sentence(
                "CO2 vented: {mass} in {time}.",
                mass=Quantity(f"{self.vented_kg:.2f} kg", Kind.MASS, self.vented_kg),
                time=f"{self.minutes:.0f} min",
            ),
        ]
        if self.declared is not None:
            sheet.append(
                Sentence(
                    "You said: {state}. That was {judged}.",
                    state=STATES[self.declared],
                    judged=Sentence("right") if self.right else Sentence("WRONG"),
                )
            )
        if self.dangerous:
            sheet.append(
                Sentence(
                    "DANGEROUS: the section was taken for empty with liquid or dry ice inside."
                )
            )
        return sheet


def _grams(mass_kg: float) -> Quantity:
    return Quantity(f"{mass_kg * 1e3:.0f} g", Kind.MASS, mass_kg)


def true_charge(rows: Rows, allowable_kg: float) -> Charge:
    """Return what was really inside at the last row."""
    end = rows[-1]
    liquid, solid = float(end[COLUMN["liquid_kg"]]), float(end[COLUMN["solid_kg"]])
    if liquid + solid <= allowable_kg:
        return Charge.VAPOR_ONLY
    if solid > 0.1 * allowable_kg:
        return Charge.SOLID_PRESENT
    # with no cushion of gas the pressure stands above the saturation of the liquid
    boiling_k = float(end[COLUMN["saturation_k"]])
    if boiling_k > float(end[COLUMN["condensed_k"]]) + FULL_SUBCOOLING_K and (
        float(end[COLUMN["vapor_kg"]]) < FULL_VAPOUR_SHARE * liquid
    ):
        return Charge.SUBCOOLED_LIQUID
    return Charge.TWO_PHASE


def score(scenario: Scenario, rows: Rows, declared: Charge | None = None) -> Score:
    """Return the score of a vent; `declared` is what the trainee said is inside at its end."""
    volume_m3 = scenario.setting.section.volume_m3
    allowable = max(ALLOWABLE_KG, ALLOWABLE_KG_PER_M3 * volume_m3)
    stop_pa = TRIPLE_PRESSURE_PA + stop_margin_pa(scenario.setup) - STOP_TOLERANCE_PA
    seconds = np.diff(rows[:, 0], prepend=rows[0, 0])
    pressure = rows[:, COLUMN["pressure_pa"]]
    liquid = rows[:, COLUMN["liquid_kg"]] > TRACE_OF_LIQUID_KG
    left = float(rows[-1, COLUMN["liquid_kg"]] + rows[-1, COLUMN["solid_kg"]])
    below_stop = float(seconds[liquid & (pressure < stop_pa)].sum())
    below_triple = float(seconds[liquid & (pressure < TRIPLE_PRESSURE_PA - 2e3)].sum())
    wet = left > allowable
    right = None if declared is None else declared is true_charge(rows, allowable)
    at_zero = float(pressure[-1]) - scenario.ambient_pa < OPENED_PA
    return Score(
        minutes=float(rows[-1, 0] - rows[0, 0]) / 60.0,
        vented_kg=float(rows[-1, COLUMN["vented_kg"]]),
        stop_kept=below_stop == 0.0,
        lowest_with_liquid_pa=float(pressure[liquid].min()) if liquid.any() else None,
        seconds_below_stop_with_liquid=below_stop,
        seconds_below_triple_with_liquid=below_triple,
        most_dry_ice_kg=float(rows[:, COLUMN["solid_kg"]].max()),
        left_kg=left,
        allowable_kg=allowable,
        declared=declared,
        right=right,
        dangerous=wet and (declared is Charge.VAPOR_ONLY or at_zero),
    )
