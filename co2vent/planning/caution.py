"""The plan's assumptions and warnings, each one plain sentence."""

from collections.abc import Iterator
from typing import Final

from co2vent import co2
from co2vent.planning.exposure import (
    AMBIENT_AIR_PPM,
    IDLH,
    OXYGEN_METER_WARNING,
    oxygen_percent,
)
from co2vent.planning.quantity import Kind, Quantity, mass_quantity
from co2vent.planning.shapes import DEFAULT_LIQUID_FRACTION, PlanInput, PlanResult
from co2vent.sentence import Sentence, comma_listed
from co2vent.units import PSI_PA, STANDARD_ATMOSPHERE_PA, ZERO_CELSIUS_K

# 1 to 2 bar a minute over the last 10 bar: what a hand on the valve and a gauge can follow.
# Proposal, no source.
CALM_RATE_BAR_PER_MIN: Final = 2.0
SLOW_RATE_BAR_PER_MIN: Final = 1.0
CALM_OVER_BAR: Final = 10.0
NEAR_FULL_K: Final = 15.0  # warming that a section left shut sees easily; no source


def figure(words: str) -> Sentence:
    """Return a number with its unit as a sentence of its own, so that a screen can say it."""
    return Sentence("{figure}", figure=words)


def pressure_words(gauge_pa: float) -> str:
    """Return a gauge pressure in bar g and psig."""
    bar, psi = f"{gauge_pa / 1e5:.2f} bar g", f"{gauge_pa / PSI_PA:.1f} psig"
    return Quantity(f"{bar} ({psi})", Kind.PRESSURE, gauge_pa)


def absolute_words(pressure_pa: float) -> str:
    """Return an absolute pressure in bar and psi."""
    bar, psi = f"{pressure_pa / 1e5:.3f} bar absolute", f"{pressure_pa / PSI_PA:.2f} psia"
    return Quantity(f"{bar} ({psi})", Kind.ABSOLUTE, pressure_pa)


def celsius_words(temperature_k: float) -> str:
    """Return a temperature in degC and degF."""
    celsius = temperature_k - 273.15
    warm, warm_f = f"{celsius:.1f} degC", f"{celsius * 1.8 + 32.0:.1f} degF"
    return Quantity(f"{warm} ({warm_f})", Kind.TEMPERATURE, temperature_k)


def warming_words(kelvin: float) -> Quantity:
    """Return by how much something warms."""
    return Quantity(f"{kelvin:.1f} K", Kind.WARMING, kelvin)


def bar_words(bar: float, places: int = 0) -> Quantity:
    """Return a pressure difference given in bar."""
    return Quantity(f"{bar:.{places}f} bar", Kind.DIFFERENCE, bar * 1e5)


def assumptions(given: PlanInput) -> tuple[str, ...]:
    """Return what was assumed because it was not given."""
    said: list[str] = []
    if given.setup.ambient_pressure_assumed:
        sea_level = Quantity("101.325 kPa", Kind.DIFFERENCE, STANDARD_ATMOSPHERE_PA)
        said.append(
            Sentence("Altitude not given: sea level, {pressure}, is assumed.", pressure=sea_level)
        )
    if given.liquid_fraction is None:
        said.append(
            Sentence(
                "Liquid fraction not given: {share} of the volume is assumed.",
                share=f"{DEFAULT_LIQUID_FRACTION:g}",
            )
        )
    said += given.assumed
    if given.outer_area_m2 is None:
        said.append(
            Sentence("Outside surface not given: a cylinder eight diameters long is assumed.")
        )
    if given.volume_uncertainty_m3:
        share = 100.0 * given.volume_uncertainty_m3 / given.volume_m3
        said.append(
            Sentence(
                "The volume may be {share} more or less, and every mass with it.",
                share=f"{share:.0f} %",
            )
        )
    return tuple(said)


def warnings(given: PlanInput, plan: PlanResult) -> tuple[str, ...]:
    """Return everything in this plan that a careful colleague would point out."""
    return (
        *_charge_warnings(given, plan),
        *_pressure_warnings(given, plan),
        *_liquid_warnings(plan),
        *_gauge_warnings(plan),
        *_cold_warnings(given, plan),
        *_air_warnings(given, plan),
    )


def _charge_warnings(given: PlanInput, plan: PlanResult) -> Iterator[str]:
    if plan.charge_kg is None:
        if given.temperature_k is not None:
            yield Sentence(
                "{temperature} is above the critical temperature of {critical}: there is no liquid "
                "surface and no saturation pressure, so neither the charge nor anything that "
                "follows from it is known. Let it cool first.",
                temperature=celsius_words(given.temperature_k),
                critical=Quantity("31.0 degC", Kind.TEMPERATURE, co2.CRITICAL_TEMPERATURE_K),
            )
        else:
            yield Sentence(
                "The pressure is above the critical pressure, {critical} absolute: vapour and "
                "liquid can't be told apart and the charge is not known. Bring it down in the "
                "plant first.",
                critical=bar_words(co2.CRITICAL_PRESSURE_PA / 1e5, 1),
            )
        return
    assert plan.charge_temperature_k is not None
    if plan.charge_temperature_k < co2.TRIPLE_TEMPERATURE_K:
        yield Sentence(
            "The charge is below the triple point: no liquid can exist there, and what is not "
            "vapour is dry ice. Do not shut it in: when it warms it reaches the boiling "
            "pressure of the surroundings, and hundreds of bar where it fills half the section or "
            "more. Keep it vented at both ends until it has sublimed."
        )
        return
    if given.filled == 1.0:
        yield Sentence(
            "Liquid-full: there is no vapour space, and warming raises the pressure {slope} for "
            "each kelvin. Open a relief path before anything else.",
            slope=_slope_words(plan),
        )
    if given.filled == 0.0:
        yield Sentence(
            "No liquid is planned for; the holds must still show it. Cores, oil and low legs hold "
            "CO2 that a plan can't see."
        )


def _slope_words(plan: PlanResult) -> str:
    slope = plan.trapped_liquid_bar_per_k
    return Sentence("several bar") if slope is None else bar_words(slope, 1)


def _pressure_warnings(given: PlanInput, plan: PlanResult) -> Iterator[str]:
    if plan.charge_pressure_pa_gauge is None or plan.charge_temperature_k is None:
        return
    if given.relief_pa_gauge is not None:
        if plan.charge_pressure_pa_gauge >= given.relief_pa_gauge:
            yield Sentence(
                "The charge's pressure is at or above the relief setting: expect it to lift."
            )
        own = plan.kelvin_to_relief_of_this_charge
        if own is not None and 0.0 < own <= given.ambient_k - plan.charge_temperature_k:
            yield Sentence(
                "Shut in, this charge reaches the relief setting after {kelvin} of warming, "
                "before it is as warm as its surroundings: never leave it shut in unwatched.",
                kelvin=warming_words(own),
            )
        if own is None and plan.liquid_kg:
            yield Sentence(
                "After what warming this charge reaches the relief setting is not known here: "
                "take it that it does, and never leave it shut in unwatched."
            )
    full_at = plan.liquid_full_at_k
    if full_at is not None and given.filled < 1.0:
        rise = full_at - plan.charge_temperature_k
        if rise <= max(NEAR_FULL_K, given.ambient_k - plan.charge_temperature_k):
            yield Sentence(
                "The liquid swells and fills the section after {kelvin} of warming, at "
                "{temperature}; from there every kelvin adds several bar.",
                kelvin=warming_words(rise),
                temperature=celsius_words(full_at),
            )
    if (
        plan.liquid_kg
        and plan.charge_pressure_pa_gauge <= plan.stop_pressure_pa_gauge
        and plan.charge_temperature_k >= co2.TRIPLE_TEMPERATURE_K
    ):
        yield Sentence(
            "The charge is already at or below the stop pressure, {stop}: do not vent it while "
            "liquid may be there; let it warm first.",
            stop=pressure_words(plan.stop_pressure_pa_gauge),
        )


def _liquid_warnings(plan: PlanResult) -> Iterator[str]:
    ice = plan.dry_ice_kg_if_vented_straight_down
    if plan.liquid_left_at_stop_kg and ice:
        liquid, dry_ice = (mass_quantity(kg, digits=2) for kg in (plan.liquid_left_at_stop_kg, ice))
        if plan.vented_to_stop_kg:
            yield Sentence(
                "About {liquid} of liquid is left at the stop pressure, {stop}: vented straight "
                "down it would leave about {ice} of dry ice behind a gauge at zero. Hold above "
                "the triple point and boil it out.",
                liquid=liquid,
                stop=pressure_words(plan.stop_pressure_pa_gauge),
                ice=dry_ice,
            )
        else:
            yield Sentence(
                "About {liquid} of liquid is in it already: vented straight down it would leave "
                "about {ice} of dry ice behind a gauge at zero. Hold above the triple point and "
                "boil it out.",
                liquid=liquid,
                ice=dry_ice,
            )
    if plan.vent_to_stop_s and plan.charge_pressure_pa_gauge is not None:
        fall = (plan.charge_pressure_pa_gauge - plan.stop_pressure_pa_gauge) / 1e5
        rate = 60.0 * fall / plan.vent_to_stop_s
        if rate > CALM_RATE_BAR_PER_MIN:
            yield Sentence(
                "Fully open, the vent falls {fall} a minute on average: throttle it to {slow} to "
                "{calm} a minute over the last {end}.",
                fall=bar_words(rate),
                slow=Quantity(
                    f"{SLOW_RATE_BAR_PER_MIN:.0f}",
                    Kind.DIFFERENCE_DIGITS,
                    SLOW_RATE_BAR_PER_MIN * 1e5,
                ),
                calm=bar_words(CALM_RATE_BAR_PER_MIN),
                end=bar_words(CALM_OVER_BAR),
            )


def _gauge_warnings(plan: PlanResult) -> Iterator[str]:
    if plan.gauge_fit.verdict in ("coarse", "too coarse", "out of range"):
        yield plan.gauge_fit.text


def _cold_warnings(given: PlanInput, plan: PlanResult) -> Iterator[str]:
    cold = [metal for metal in plan.metals if metal.below_minimum]
    if cold:
        names = comma_listed(
            [
                Sentence(
                    "{metal} ({minimum})",
                    metal=metal.name,
                    minimum=Quantity(
                        f"{metal.minimum_c:.0f} degC",
                        Kind.TEMPERATURE,
                        metal.minimum_c + ZERO_CELSIUS_K,
                    ),
                )
                for metal in cold
            ]
        )
        charge_k = plan.charge_temperature_k
        if charge_k is not None and charge_k < plan.stop_temperature_k:
            yield Sentence(
                "The charge is at {temperature}, colder than the rated minimum of {metals}: never "
                "repressurise or strike it until it has warmed.",
                temperature=celsius_words(charge_k),
                metals=names,
            )
        else:
            yield Sentence(
                "Boiling liquid at the stop pressure is at {temperature}, colder than the rated "
                "minimum of {metals}: never repressurise or strike it until it has warmed.",
                temperature=celsius_words(plan.stop_temperature_k),
                metals=names,
            )
    if plan.liquid_left_at_stop_kg and given.ambient_k <= plan.stop_temperature_k:
        yield Sentence(
            "The surroundings are no warmer than liquid at the stop pressure: nothing boils it "
            "out, and a quiet hold proves nothing."
        )


def _air_warnings(given: PlanInput, plan: PlanResult) -> Iterator[str]:
    rise = plan.room_ppm_all_vented
    if rise is None:
        if given.room_m3 is None:
            yield Sentence(
                "No room was given: vent outdoors, away from intakes, doors, pits and low ground."
            )
    else:
        total = rise + AMBIENT_AIR_PPM
        layer = plan.room_ppm_floor_layer or 0.0
        passed = [limit for limit in plan.exposure_limits if limit.passed_if_mixed]
        if total >= IDLH.ppm:
            yield Sentence(
                "All of it in the room is {total} when mixed, above the IDLH of {limit}: nobody "
                "may be in the room, and the vent must lead outdoors.",
                total=f"{total:,.0f} ppm",
                limit="40,000 ppm",
            )
        elif passed:
            worst = passed[-1]
            yield Sentence(
                "All of it in the room is {total} when mixed, above the {name} of {limit} "
                "({averaged}): lead the vent outdoors.",
                total=f"{total:,.0f} ppm",
                name=worst.name,
                limit=f"{worst.ppm:,.0f} ppm",
                averaged=worst.averaged,
            )
        pooled = [limit for limit in plan.exposure_limits if limit.passed_in_floor_layer]
        if len(pooled) > len(passed):
            worst = pooled[-1]
            yield Sentence(
                "Unmixed it lies on the floor: up to {most} in the lowest half metre, above the "
                "{name} of {limit} ({averaged}). Nobody kneels or sits there; mind pits and stairs "
                "down.",
                most=f"{layer + AMBIENT_AIR_PPM:,.0f} ppm",
                name=worst.name,
                limit=f"{worst.ppm:,.0f} ppm",
                averaged=worst.averaged,
            )
        if total >= IDLH.ppm and rise < 1e6:
            oxygen = f"{oxygen_percent(rise):.1f} %"
            yield Sentence("Oxygen would still read {oxygen} then.", oxygen=oxygen)
    yield OXYGEN_METER_WARNING
