"""The holds as CSV, SI and absolute as in the assessment; texts can't run as formulas."""

import csv
import io
from pathlib import Path

from co2vent.inference.outcome import Bounds
from co2vent.readings.log_writer import FORMULA_STARTS
from co2vent.report.facts import ReportFacts
from co2vent.store.whole_file import atomic_write

COLUMNS = (
    "log",
    "simulated",
    "number",
    "start_s",
    "end_s",
    "start_pressure_pa",
    "end_pressure_pa",
    "charge",
    "leak_by",
    "liquid_kg",
    "liquid_kg_lower",
    "liquid_kg_upper",
    "dry_ice_kg",
    "dry_ice_kg_lower",
    "dry_ice_kg_upper",
    "liquid_volume_fraction",
    "detection_limit_kg",
    "slope_pa_per_s",
    "boil_off_not_before_s",
    "instruction",
    "reason",
)


def plain_text(words: str) -> str:
    """Return `words` so that no spreadsheet takes them for a formula."""
    first = next((c for c in words if c.isprintable() and not c.isspace()), "")
    return f"'{words}" if words.startswith(("\t", "\r", "\n")) or first in FORMULA_STARTS else words


def holds_csv(facts: ReportFacts) -> str:
    """Return the holds of every log, one a row; a number that isn't known is an empty cell."""
    out = io.StringIO()
    rows = csv.writer(out, lineterminator="\r\n")
    rows.writerow(COLUMNS)
    for log in facts.logs:
        simulated = "yes" if log.view.setup.simulated else "no"
        for hold in log.view.holds:
            slope = None if hold.slope_pa_per_s is None else hold.slope_pa_per_s.estimate
            share = hold.liquid_volume_fraction
            rows.writerow(
                (
                    plain_text(log.name),
                    simulated,
                    hold.number,
                    hold.start_s,
                    hold.end_s,
                    hold.start_pressure_pa,
                    hold.end_pressure_pa,
                    hold.charge.value,
                    hold.leak_by.value,
                    *_three(hold.liquid_kg),
                    *_three(hold.dry_ice_kg),
                    None if share is None else share.estimate,
                    hold.detection_limit_kg,
                    slope,
                    hold.boil_off_s,
                    hold.instruction.value,
                    plain_text(hold.reason),
                )
            )
    return out.getvalue()


def _three(bounds: Bounds | None) -> tuple[float | None, float | None, float | None]:
    if bounds is None:
        return (None, None, None)
    return (bounds.estimate, bounds.lower, bounds.upper)


def write_holds_csv(facts: ReportFacts, path: Path) -> None:
    """Write the holds to `path`, whole or not at all.

    Raises:
        StoreError: it could not be written.
    """
    atomic_write(path, holds_csv(facts).encode("utf-8"))
