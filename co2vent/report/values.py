"""Values as a report prints them: both unit systems, bounds, and a dash where nothing is known."""

from collections.abc import Callable
from datetime import datetime, timedelta

from co2vent.guidance.events import Event, EventKind
from co2vent.inference.outcome import Bounds, Charge, Instruction, LeakBy
from co2vent.units import PSI_PA, temperature_from_k

DASH = "—"

CHARGES = {
    Charge.SUBCOOLED_LIQUID: "liquid-full",
    Charge.TWO_PHASE: "liquid and vapour",
    Charge.VAPOR_ONLY: "vapour only",
    Charge.SOLID_PRESENT: "dry ice",
    Charge.UNDETERMINED: "not known",
}
LEAKS = {
    LeakBy.NONE: "none seen",
    LeakBy.SUSPECTED: "suspected",
    LeakBy.UNDETERMINED: "not known",
}
INSTRUCTIONS = {
    Instruction.VENT: "vent",
    Instruction.CLOSE_AND_HOLD: "close and hold",
    Instruction.KEEP_HOLDING: "keep holding",
    Instruction.VENT_AGAIN: "vent again",
    Instruction.VENT_TO_ZERO: "vent to 1 bar g, hold for dry ice, then to zero",
    Instruction.HOLD_FOR_DRY_ICE: "hold for dry ice",
    Instruction.OPEN_BLEEDS: "open the bleeds at both ends and leave them open",
    Instruction.VENT_NOW: "vent now",
    Instruction.CHECK_ISOLATION: "check the isolation",
    Instruction.CHECK_VENT_LINE: "check the vent line",
    Instruction.CHECK_GAUGE: "check the gauge",
    Instruction.NO_DATA: "no data",
    Instruction.WAIT: "wait",
}


def event_words(event: Event) -> str:
    """Return an event in words, without the names that files use."""
    if event.kind is EventKind.NOTE:
        return f"Note: {event.text}"  # a person's words stay as they were written
    words = event.text
    if event.kind is EventKind.PROMPT:
        _, _, shown = words.partition(": ")  # the headline says what the instruction does
        return f"Prompt: {shown}"
    for charge, said in CHARGES.items():
        words = words.replace(f": {charge.value}.", f": {said}.")
    return words[:1].upper() + words[1:]


def gauge_pressure(pressure_pa: float | None, ambient_pa: float) -> str:
    """Return an absolute pressure [Pa] as `5.20 bar g (75.4 psig)`."""
    if pressure_pa is None:
        return DASH
    return gauge_difference(pressure_pa - ambient_pa)


def gauge_difference(pressure_pa_gauge: float | None) -> str:
    """Return a gauge pressure [Pa] as `5.20 bar g (75.4 psig)`."""
    if pressure_pa_gauge is None:
        return DASH
    return f"{pressure_pa_gauge / 1e5:.2f} bar g ({pressure_pa_gauge / PSI_PA:.1f} psig)"


def difference(pressure_pa: float | None) -> str:
    """Return a pressure difference [Pa] as `0.30 bar (4.4 psi)`."""
    if pressure_pa is None:
        return DASH
    return f"{pressure_pa / 1e5:.2f} bar ({pressure_pa / PSI_PA:.1f} psi)"


def temperature(temperature_k: float | None) -> str:
    """Return a temperature [K] as `-20.0 °C (-4.0 °F)`."""
    if temperature_k is None:
        return DASH
    celsius = temperature_from_k(temperature_k, "degC")
    return f"{celsius:.1f} °C ({temperature_from_k(temperature_k, 'degF'):.1f} °F)"


def duration(seconds: float | None) -> str:
    """Return a duration as `1:02:03`."""
    return DASH if seconds is None else str(timedelta(seconds=round(seconds)))


def rounded(number: float) -> str:
    """Return `number` with three digits, never as a power of ten while it can be read without."""
    return f"{number:.0f}" if 100.0 <= abs(number) < 1e7 else f"{number:.3g}"


def moment(stamp: str) -> str:
    """Return an ISO 8601 stamp to the second, with its zone."""
    try:
        return datetime.fromisoformat(stamp).isoformat(sep=" ", timespec="seconds")
    except ValueError:
        return stamp


def mass(kilograms: float | None) -> str:
    """Return a mass [kg] in kg, or in g below 0.1 kg."""
    if kilograms is None:
        return DASH
    return f"{kilograms * 1000:.3g} g" if abs(kilograms) < 0.1 else f"{kilograms:.3g} kg"


def bounded_mass(bounds: Bounds | None) -> str:
    """Return a bounded mass as `1.2 kg (0.8 kg to 1.9 kg)`; no upper bound is said."""
    if bounds is None:
        return DASH
    upper = "no upper bound" if bounds.upper is None else mass(bounds.upper)
    return f"{mass(bounds.estimate)} ({mass(bounds.lower)} to {upper})"


def bounded_share(bounds: Bounds | None) -> str:
    """Return a bounded volume share in percent."""
    if bounds is None:
        return DASH
    texts = [
        DASH if value is None else f"{value * 100:.3g} %"
        for value in (bounds.estimate, bounds.lower)
    ]
    upper = "no upper bound" if bounds.upper is None else f"{bounds.upper * 100:.3g} %"
    return f"{texts[0]} ({texts[1]} to {upper})"


def named_figure(name: str, value: float) -> tuple[str, str]:
    """Return a plan's figure as words and value: its name ends with its SI unit."""
    if name.endswith("temperature_k"):
        return name.removesuffix("_k").replace("_", " "), temperature(value)
    for ending, shown in _BY_ENDING:
        if "_per_" in name and "_per_" not in ending:
            continue  # a ratio's last unit is not the figure's
        if name.endswith(ending):
            return name.removesuffix(ending).replace("_", " "), shown(value)
    return name.replace("_", " "), rounded(value)


def _absolute(pressure_pa: float) -> str:
    return f"{pressure_pa / 1e5:.2f} bar a ({pressure_pa / PSI_PA:.1f} psia)"


_BY_ENDING: tuple[tuple[str, Callable[[float], str]], ...] = (
    ("_pa_gauge", gauge_difference),
    ("_pa", _absolute),
    ("_kg_s", lambda value: f"{rounded(value)} kg/s"),
    ("_kg", mass),
    ("_bar_per_k", lambda value: f"{rounded(value)} bar/K"),
    ("_m3_per_h", lambda value: f"{rounded(value)} m3/h"),
    ("_m3", lambda value: f"{rounded(value)} m3"),
    ("_s", duration),
    ("_j", lambda value: f"{rounded(value / 1e3)} kJ"),
)
