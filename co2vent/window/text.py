"""Numbers and sentences of the screen. Everything shown as text is made here, from SI and absolute.

No number appears without its unit, and no pressure without gauge or absolute. Numbers follow the
locale of the screen; files never do.
"""

from enum import StrEnum

from PySide6.QtCore import QLocale

from co2vent.guidance.events import Event, EventKind
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment, Instruction
from co2vent.inference.wording import BAR_FROM_PA
from co2vent.units import PRESSURE_UNITS, PSI_PA, temperature_from_k
from co2vent.window.sentences import spoken
from co2vent.window.words import charge_words, leak_words, translate

POUND_KG = 0.45359237  # international pound, exact by definition
OUNCE_KG = POUND_KG / 16.0
LEAST_GRAMS = 0.1  # less is shown as nothing, or as less than this
LEAST_OUNCES = 0.01
LEAST_PERCENT = 0.01
DASH = "–"
MINUS = "−"


class UnitChoice(StrEnum):
    """Which units the screen speaks; the first of a pair is the large one."""

    BAR = "bar_g"
    PSI = "psig"
    BAR_AND_PSI = "bar_g+psig"
    PSI_AND_BAR = "psig+bar_g"

    @property
    def pressure(self) -> str:
        """The large pressure unit."""
        return self.value.partition("+")[0]

    @property
    def second_pressure(self) -> str | None:
        """The small pressure unit beside it, or None."""
        return self.value.partition("+")[2] or None

    @property
    def temperature(self) -> str:
        """The temperature unit that goes with the large pressure unit."""
        return temperature_of(self.pressure)


def temperature_of(pressure_unit: str) -> str:
    """Return the temperature unit that goes with a pressure unit."""
    return "degF" if pressure_unit.startswith("psi") else "degC"


def number(value: float, places: int) -> str:
    """Return `value` with `places` decimals in the locale of the screen, with a true minus."""
    locale = QLocale()
    locale.setNumberOptions(QLocale.NumberOption.OmitGroupSeparator)
    text = locale.toString(value, "f", places)
    if float(f"{value:.{places}f}") == 0.0:
        text = text.lstrip("-" + MINUS)
    return text.replace("-", MINUS)


def is_zero(digits: str) -> bool:
    """Return whether digits show nothing but zeros."""
    return not set(digits) & set("123456789")


def unit_words(unit: str) -> str:
    """Return a unit as it is written on the screen."""
    return {
        "bar_g": "bar g",
        "bar_a": "bar abs",
        "psig": "psig",
        "psia": "psia",
        "degC": "°C",
        "degF": "°F",
        "K": "K",
    }.get(unit, unit.replace("_", " "))


def pressure_digits(pressure_pa: float | None, ambient_pa: float, unit: str) -> str:
    """Return the digits of an absolute pressure in `unit`; a dash where there is none."""
    if pressure_pa is None:
        return DASH
    value = PRESSURE_UNITS[unit].from_absolute_pa(pressure_pa, ambient_pa)
    return number(value, 1 if unit.startswith("psi") else 2)


def pressure(pressure_pa: float | None, ambient_pa: float, unit: str) -> str:
    """Return an absolute pressure with its unit, which says gauge or absolute."""
    return f"{pressure_digits(pressure_pa, ambient_pa, unit)} {unit_words(unit)}"


def difference_unit(unit: str) -> str:
    """Return the unit of a pressure difference: neither gauge nor absolute."""
    return "psi" if unit.startswith("psi") else "bar"


def difference_digits(difference_pa: float | None, unit: str, *, sign: bool = False) -> str:
    """Return the digits of a pressure difference."""
    if difference_pa is None:
        return DASH
    psi = unit.startswith("psi")
    text = number(difference_pa / (PSI_PA if psi else 1e5), 1 if psi else 2)
    return f"+{text}" if sign and difference_pa > 0 else text


def difference(difference_pa: float | None, unit: str, *, sign: bool = False) -> str:
    """Return a pressure difference with its unit."""
    return f"{difference_digits(difference_pa, unit, sign=sign)} {difference_unit(unit)}"


def temperature(temperature_k: float | None, unit: str) -> str:
    """Return a temperature with its unit; a dash where it is not measured."""
    if temperature_k is None:
        return f"{DASH} {unit_words(unit)}"
    return f"{number(temperature_from_k(temperature_k, unit), 1)} {unit_words(unit)}"


def both(choice: UnitChoice, pressure_pa: float | None, ambient_pa: float) -> str:
    """Return a pressure in the chosen unit and, where chosen, the second one."""
    text = pressure(pressure_pa, ambient_pa, choice.pressure)
    if choice.second_pressure is None:
        return text
    return f"{text} / {pressure(pressure_pa, ambient_pa, choice.second_pressure)}"


def rate(rate_pa_per_s: float | None, unit: str) -> str:
    """Return a rate of fall or rise per minute, in words and with its unit."""
    if rate_pa_per_s is None:
        return translate("Text", "rate not known")
    per_minute = abs(rate_pa_per_s) * 60.0
    if unit.startswith("psi"):
        value, places, shown_unit = per_minute / PSI_PA, 2 if per_minute < PSI_PA else 1, "psi"
    elif per_minute >= BAR_FROM_PA:
        value, places, shown_unit = per_minute / 1e5, 2, "bar"  # as the prompts say it
    else:
        value, places, shown_unit = per_minute / 100.0, 0, "mbar"  # as the reasons say it
    if float(f"{value:.{places}f}") == 0.0:
        return translate("Text", "steady")
    shown = f"{number(value, places)} {shown_unit}"
    if rate_pa_per_s < 0:
        return translate("Text", "falling {rate}/min").format(rate=shown)
    return translate("Text", "rising {rate}/min").format(rate=shown)


def duration(seconds: float | None) -> str:
    """Return a duration as m:ss or h:mm:ss."""
    if seconds is None:
        return DASH
    whole = max(0, int(seconds))
    hours, rest = divmod(whole, 3600)
    minutes, second = divmod(rest, 60)
    return f"{hours}:{minutes:02d}:{second:02d}" if hours else f"{minutes}:{second:02d}"


def age(age_s: float | None) -> str:
    """Return the age of the newest reading in seconds."""
    if age_s is None:
        return translate("Text", "no reading yet")
    if age_s >= 60.0:
        return translate("Text", "reading {age} min old").format(age=duration(age_s))
    return translate("Text", "reading {age} s old").format(age=number(max(0.0, age_s), 1))


def mass(mass_kg: float, *, pounds: bool) -> str:
    """Return a mass with a unit that suits its size, in at most three significant digits."""
    if shows_nothing(mass_kg, pounds=pounds):
        return f"{number(0.0, 0)} {'oz' if pounds else 'g'}"
    if pounds:
        if mass_kg < 0.1 * POUND_KG:
            return f"{_significant(mass_kg / OUNCE_KG)} oz"
        return f"{_three_digits(mass_kg / POUND_KG)} lb"
    if mass_kg < 0.0995:
        return f"{number(mass_kg * 1000.0, 1 if mass_kg < 0.00995 else 0)} g"
    return f"{_three_digits(mass_kg)} kg"


def shows_nothing(mass_kg: float, *, pounds: bool) -> bool:
    """Return whether a mass is too small for its digits."""
    return mass_kg < _least_kg(pounds=pounds)


def _least_kg(*, pounds: bool) -> float:
    return LEAST_OUNCES * OUNCE_KG if pounds else LEAST_GRAMS * 1e-3


def _three_digits(value: float) -> str:
    """Return a number with two decimals, fewer where they would make more than three digits."""
    places = next((places for places in (2, 1) if round(value, places) < 10.0 ** (3 - places)), 0)
    return number(value, places)


def _significant(value: float) -> str:
    """Return a number below 10 with two significant digits."""
    return number(value, 1 - int(f"{value:.1e}".partition("e")[2]))


def mass_bounds(bounds: Bounds, *, pounds: bool) -> str:
    """Return an estimate with its bounds; a missing upper bound is said, never left out.

    An upper bound too small for its digits is said as less than the smallest mass that is shown.
    """
    if bounds.upper is None:
        if bounds.lower is not None and not shows_nothing(bounds.lower, pounds=pounds):
            least = mass(bounds.lower, pounds=pounds)
            return translate("Text", "at least {least}, no upper bound").format(least=least)
        return translate("Text", "no upper bound")
    low = mass(bounds.lower or 0.0, pounds=pounds)
    high = mass(bounds.upper, pounds=pounds)
    percent = number(bounds.confidence * 100.0, 0)
    if bounds.upper <= 0.0:
        return high
    if shows_nothing(bounds.upper, pounds=pounds):
        least = mass(_least_kg(pounds=pounds), pounds=pounds)
        return translate("Text", "less than {least} ({percent} %)").format(
            least=least, percent=percent
        )
    if shows_nothing(max(bounds.estimate or 0.0, bounds.lower or 0.0), pounds=pounds):
        return translate("Text", "at most {high} ({percent} %)").format(high=high, percent=percent)
    if bounds.estimate is None:
        return translate("Text", "{low} to {high} ({percent} %)").format(
            low=low, high=high, percent=percent
        )
    return translate("Text", "{best} ({low} to {high}, {percent} %)").format(
        best=mass(bounds.estimate, pounds=pounds), low=low, high=high, percent=percent
    )


def share_bounds(bounds: Bounds) -> str:
    """Return a volume share with its bounds in per cent."""
    if bounds.upper is None:
        return translate("Text", "share of the volume: no upper bound")
    if 0.0 < bounds.upper * 100.0 < LEAST_PERCENT:
        return translate("Text", "less than {least} % of the volume").format(
            least=number(LEAST_PERCENT, 2)
        )
    low = number((bounds.lower or 0.0) * 100.0, 2)
    high = number(bounds.upper * 100.0, 2)
    return translate("Text", "{low} to {high} % of the volume").format(low=low, high=high)


def inside(hold: HoldAssessment | None, *, pounds: bool) -> str:
    """Return what the hold says is inside: the state and the liquid with its bounds."""
    if hold is None:
        return translate("Text", "Inside: no hold yet")
    state = charge_words(hold.charge)
    if hold.may_leak_by:
        state = translate("Text", "liquid, or leak-by")
    words = translate("Text", "Inside: {state}").format(state=state)
    ice = hold.dry_ice_kg
    ice_possible = ice is not None and (ice.upper is None or ice.upper > 0.0)
    liquid, share = hold.liquid_kg, hold.liquid_volume_fraction
    # below the triple point there is no liquid: a nought there would only hide the dry ice
    if liquid is not None and not (ice_possible and liquid.upper == 0.0):
        amount = mass_bounds(liquid, pounds=pounds)
        words += "\n" + translate("Text", "Liquid: {amount}").format(amount=amount)
    elif liquid is None and share is not None and not (ice_possible and share.upper == 0.0):
        amount = share_bounds(share)
        words += "\n" + translate("Text", "Liquid: {amount}").format(amount=amount)
    if ice is not None and ice_possible:
        amount = mass_bounds(ice, pounds=pounds)
        words += "\n" + translate("Text", "Dry ice: {amount}").format(amount=amount)
    return words


def power(hold: HoldAssessment | None, *, pounds: bool) -> str:
    """Return what the hold could have seen at best, and flow past the isolation valve."""
    if hold is None:
        return ""
    if hold.detection_limit_kg is not None:
        # too small for its digits: the smallest mass that is shown is still seen
        least = mass(max(hold.detection_limit_kg, _least_kg(pounds=pounds)), pounds=pounds)
        words = translate("Text", "This hold could see {least} or more").format(least=least)
    else:
        words = translate("Text", "Detection limit: not known yet")
    return f"{words}; {leak_words(hold.leak_by)}"


def hold_clock(hold: HoldAssessment | None, now_s: float) -> str:
    """Return the running hold's number, its time and the earliest time left."""
    if hold is None or hold.closed:
        return ""
    so_far = duration(max(now_s, hold.end_s) - hold.start_s)
    if hold.number == 0:
        words = translate("Text", "Before the vent: {time}").format(time=so_far)
    else:
        words = translate("Text", "Hold {number}: {time}").format(number=hold.number, time=so_far)
    if hold.time_left_s is not None and hold.time_left_s > 0.0:
        left = duration(hold.time_left_s)
        return words + " · " + translate("Text", "{time} left at least").format(time=left)
    return words


def event_words(event: Event) -> str:
    """Return an event as it is shown: in words, without the names that files use."""
    words = spoken(event.text)
    if event.kind is EventKind.NOTE:
        return words[:1].upper() + words[1:]  # a person's words stay as they were written
    for charge in Charge:
        words = words.replace(charge.value, charge_words(charge))
    for instruction in Instruction:
        if words.startswith(f"{instruction.value}: "):
            words = words.removeprefix(f"{instruction.value}: ")
            break
    return words[:1].upper() + words[1:]
