"""An assessment in plain lines, for a terminal."""

from typing import Any

from co2vent.inference.amounts import WARMING_W
from co2vent.inference.wording import duration_text
from co2vent.readings.metadata import meant_key


def _pressure(pascals: float, ambient_pa: float) -> str:
    gauge = pascals - ambient_pa
    return f"{gauge / 1e5:.2f} bar g ({gauge / 6894.757293168:.1f} psig)"


def _amount(name: str, bounds: dict[str, Any] | None) -> str | None:
    if bounds is None:
        return None
    upper = "no upper bound" if bounds["upper"] is None else f"at most {bounds['upper']:.3g} kg"
    lower = "" if not bounds["lower"] else f"at least {bounds['lower']:.3g} kg, "
    estimate = "" if bounds["estimate"] is None else f"about {bounds['estimate']:.3g} kg, "
    return f"    {name}: {estimate}{lower}{upper} (95 %)"


def assessment_lines(result: dict[str, Any]) -> list[str]:
    """Return the lines of one assessment (the JSON form of it)."""
    ambient = result["ambient_pressure_pa"]
    lines = [f"{result['file']}: {result['readings']} readings, {len(result['rejected'])} rejected"]
    if result["simulated"]:
        lines.append("  SIMULATED: these readings were computed, not measured")
    if damage := result.get("damage"):
        lines.append(f"  DAMAGED RECORDING: {damage}; the whole rows are read")
    lines.extend(
        f"  {unknown!r} is not read: write {meant}: and the value"
        for unknown in result.get("unknown_metadata", ())
        if (meant := meant_key(unknown))
    )
    lines.extend(
        f"  {column}: {count} cells are no value of it and were passed over"
        for column, count in result.get("dropped_cells", {}).items()
    )
    assumed = " (assumed: sea level)" if result["ambient_pressure_assumed"] else ""
    lines.append(
        f"  ambient {ambient / 1e3:.2f} kPa{assumed}, triple point "
        f"{_pressure(result['triple_point_pa_gauge'] + ambient, ambient)}, stop pressure "
        f"{_pressure(result['stop_pressure_pa_gauge'] + ambient, ambient)}"
    )
    for hold in result["holds"]:
        lines.append(
            f"  hold {hold['number']}: {hold['start_s']:.0f} to {hold['end_s']:.0f} s, "
            f"{_pressure(hold['start_pressure_pa'], ambient)} to "
            f"{_pressure(hold['end_pressure_pa'], ambient)}"
        )
        lines.append(f"    {hold['charge']}, leak-by {hold['leak_by']}: {hold['instruction']}")
        lines.append(f"    {hold['reason']}")
        for name, key in (("liquid", "liquid_kg"), ("dry ice", "dry_ice_kg")):
            if hold["charge"] == "undetermined" or not hold[key] or hold[key]["upper"] == 0.0:
                continue
            if text := _amount(name, hold[key]):
                lines.append(text)
        if hold["boil_off_s"] is not None:
            lines.append(
                "    half of the simulated sections that rise like this are not boiled off before "
                f"{duration_text(hold['boil_off_s'])}, with {WARMING_W:.0f} W of gentle warmth "
                f"not before {duration_text(hold['boil_off_warmed_s'])}"
            )
    if result["seconds_below_triple_point_before_vapor_only"] > 0:
        lines.append(
            "  below the triple point for "
            f"{result['seconds_below_triple_point_before_vapor_only']:.0f} s before vapour only"
        )
    found = result["section_volume_by_bore_m3"]
    if found:
        lines.append(
            f"  section volume at most {found['upper'] * 1e3:.3g} L, "
            f"{found['estimate'] * 1e3:.3g} L if the vent stood wide open (by its bore)"
        )
    share = result["metal_below_minimum_share"]
    if share and share["estimate"] is not None and share["upper"] > 0.0:
        lines.append(
            f"  metal below its rated minimum at the end: about {share['estimate']:.0%} "
            f"({share['lower']:.0%} to {share['upper']:.0%}, by two clamps)"
        )
    final = result["final"]
    lines.append(f"  at the end: {final['charge']}, {final['instruction']}. {final['reason']}")
    lines += [f"  line {row['line']} rejected: {row['reason']}" for row in result["rejected"][:5]]
    if len(result["rejected"]) > 5:
        lines.append(f"  and {len(result['rejected']) - 5} more rejected rows")
    return lines
