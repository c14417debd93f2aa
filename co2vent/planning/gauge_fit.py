"""Is this gauge good enough for this stop pressure?"""

from dataclasses import dataclass
from functools import reduce
from typing import Final

from co2vent.co2 import TRIPLE_TEMPERATURE_K, saturation_slope_pa_per_k
from co2vent.planning.quantity import Kind, Quantity
from co2vent.readings.limits import (
    SMALLEST_STOP_MARGIN_PA,
    stop_margin_pa,
    stop_pressure_pa_gauge,
)
from co2vent.readings.reading import Setup
from co2vent.sentence import Sentence, joined

# EN 837-2 (from memory): a steady pressure should stay below 75 % of full scale.
HIGHEST_USE_OF_SCALE: Final = 0.75
# From here on the class alone takes too much of the smallest margin for a calm decision.
COARSE_SHARE: Final = 0.3
NOT_GIVEN: Final = Sentence("Gauge range and class not given.")


@dataclass(frozen=True, slots=True)
class GaugeFit:
    """What the gauge's class costs. Pressures as differences or gauge [Pa]."""

    error_pa: float | None
    error_kelvin_at_triple_point: float | None  # along the boiling line, 0.225 bar/K
    margin_pa: float  # kept between triple point and stop pressure
    margin_used_fraction: float | None  # by the class
    verdict: str  # "good", "coarse", "too coarse", "out of range", "not known"
    text: str


def gauge_fit(setup: Setup, charge_pressure_pa: float | None) -> GaugeFit:
    """Return how well the gauge suits the stop pressure and the charge before the vent."""
    margin = stop_margin_pa(setup)
    stop_gauge = stop_pressure_pa_gauge(setup)
    span = setup.gauge_span_pa
    if span is None or setup.gauge_accuracy_fraction is None:
        return GaugeFit(None, None, margin, None, "not known", NOT_GIVEN)
    error = setup.gauge_error_pa
    used = error / margin
    kelvin = error / saturation_slope_pa_per_k(TRIPLE_TEMPERATURE_K)
    parts: list[str] = [
        Sentence(
            "The gauge's class is +-{error}: {share} of the {margin} kept above the triple point.",
            error=Quantity(f"{error / 1e5:.2f} bar", Kind.DIFFERENCE, error),
            share=f"{100 * used:.0f} %",
            margin=Quantity(f"{margin / 1e5:.2f} bar", Kind.DIFFERENCE, margin),
        )
    ]
    end = Quantity(f"{span / 1e5:.1f} bar g", Kind.PRESSURE, span)
    charge_gauge = None
    if charge_pressure_pa is not None:
        charge_gauge = charge_pressure_pa - setup.ambient_pressure_pa
    if stop_gauge > span:
        verdict = "out of range"
        parts.append(
            Sentence("It ends at {end}, below the stop pressure: it can't show it.", end=end)
        )
    elif charge_gauge is not None and charge_gauge > span:
        verdict = "out of range"
        parts.append(
            Sentence(
                "It ends at {end} and the section holds {charge}: it would be damaged.",
                end=end,
                charge=Quantity(f"{charge_gauge / 1e5:.1f} bar g", Kind.PRESSURE, charge_gauge),
            )
        )
    elif margin > SMALLEST_STOP_MARGIN_PA:
        verdict = "too coarse"
        parts.append(Sentence("The stop pressure had to be raised for it."))
    elif used > COARSE_SHARE:
        verdict = "coarse"
    else:
        verdict = "good"
    if verdict in ("coarse", "too coarse"):
        parts.append(
            Sentence(
                "A 16 or 25 bar gauge behind an isolating valve, opened below its range, is better."
            )
        )
    if (
        verdict == "good"
        and charge_gauge is not None
        and charge_gauge > HIGHEST_USE_OF_SCALE * span
    ):
        parts.append(Sentence("The charge stands above 75 % of its scale."))
    return GaugeFit(error, kelvin, margin, used, verdict, reduce(joined, parts))
