"""From a View and the age of its newest reading to what the screen says. Pure.

Staleness is decided here too, by the screen's own clock: when no reading has come for longer than
the limit, no verdict made from older readings is shown, whatever the View says.
"""

from dataclasses import dataclass
from enum import StrEnum

from co2vent.guidance.events import EventKind, Severity
from co2vent.guidance.session import View
from co2vent.inference.outcome import Bounds, HoldAssessment, Instruction
from co2vent.window import text
from co2vent.window.sentences import spoken
from co2vent.window.text import UnitChoice
from co2vent.window.words import headline_of, said, translate


class Below(StrEnum):
    """Whether the pressure stands below the triple point, and whether that is an alarm."""

    NO = "no"
    EXPECTED = "expected"  # vapour only stands: the vent goes on to zero
    ALARM = "alarm"


@dataclass(frozen=True, slots=True, kw_only=True)
class Shown:
    """All words of the vent screen for one moment."""

    instruction: Instruction
    severity: Severity
    headline: str
    reason: str
    stale: bool
    unread: bool  # nothing has come yet: there is nothing old
    pressure: str
    pressure_unit: str
    pressure_second: str
    margin: str
    margin_unit: str
    margin_caption: str
    below: Below
    stop: str
    rate: str
    close_in: str
    temperature: str
    vent: str
    hold_clock: str
    inside: str
    power: str
    age: str
    margin_pa: float | None
    stop_margin_pa: float | None
    hold: HoldAssessment | None  # the hold that `inside` speaks of
    liquid_share: Bounds | None


def latest_hold(view: View) -> HoldAssessment | None:
    """Return the running hold, else the last one that ended, else None."""
    if view.running_hold is not None:
        return view.running_hold
    return view.holds[-1] if view.holds else None


def waiting(age_s: float | None = None, trouble: str = "") -> Shown:
    """Return what the screen says before the first reading; `trouble` is why there is none."""
    advice = translate(
        "Text", "Keep the vent closed and read the mechanical gauge until readings arrive."
    )
    return Shown(
        instruction=Instruction.NO_DATA,
        severity=Severity.CAUTION,
        headline=translate("Text", "No reading yet"),
        reason=f"{trouble}. {advice}" if trouble else advice,
        stale=True,
        unread=True,
        pressure=text.DASH,
        pressure_unit="",
        pressure_second="",
        margin=text.DASH,
        margin_unit="",
        margin_caption=translate("Text", "margin: no reading yet"),
        below=Below.NO,
        stop=translate("Text", "gauge: no reading yet"),
        rate="",
        close_in="",
        temperature="",
        vent="",
        hold_clock="",
        inside=text.inside(None, pounds=False),
        power="",
        age=text.age(age_s),
        margin_pa=None,
        stop_margin_pa=None,
        hold=None,
        liquid_share=None,
    )


def shown(view: View, age_s: float | None, units: UnitChoice, share: Bounds | None = None) -> Shown:
    """Return what the screen says.

    `age_s` is the age [s] of the newest reading by the screen's own clock; `share` the liquid's
    volume share with its bounds, where it could be worked out.
    """
    latest = view.latest
    if latest is None:
        return waiting(age_s)
    stale = view.stale or age_s is None or age_s > view.age_limit_s
    ambient = view.setup.ambient_pressure_pa
    unit = units.pressure
    hold = latest_hold(view)
    now_s = latest.at_s + (age_s or 0.0)
    margin_pa = latest.pressure_pa - view.triple_point_pa
    pounds = unit.startswith("psi")
    prompt = view.prompt
    headline = said(prompt.headline, prompt.instruction)
    reason = spoken(prompt.reason)
    instruction, severity = prompt.instruction, prompt.severity
    if stale and instruction is not Instruction.NO_DATA:
        instruction, severity = Instruction.NO_DATA, Severity.DANGER
        headline = headline_of(instruction)
        reason = translate(
            "Text",
            "Close the vent and read the mechanical gauge; if it rises, vent. Nothing shown before "
            "counts any more.",
        )
        if age_s is not None:
            since = translate("Text", "No reading for {age} s.").format(age=text.number(age_s, 0))
            reason = f"{since} {reason}"
    second = units.second_pressure
    return Shown(
        instruction=instruction,
        severity=severity,
        headline=headline,
        reason=reason,
        stale=stale,
        unread=False,
        pressure=text.pressure_digits(latest.pressure_pa, ambient, unit),
        pressure_unit=text.unit_words(unit),
        pressure_second=""
        if second is None
        else text.pressure(latest.pressure_pa, ambient, second),
        margin=text.difference_digits(margin_pa, unit),
        margin_unit=text.difference_unit(unit),
        margin_caption=_margin_words(margin_pa, unit),
        below=_below(view, margin_pa, unit),
        stop=_stop_words(view, latest.pressure_pa, unit),
        rate="" if stale else text.rate(_rate(view), unit),
        close_in="" if stale else _close_words(view),
        temperature=_temperature_words(view, units, stale=stale),
        vent=_vent_words(view, stale=stale),
        hold_clock="" if stale else text.hold_clock(view.running_hold, now_s),
        inside=(
            translate("Text", "Inside: unknown while there are no readings")
            if stale
            else text.inside(hold, pounds=pounds)
        ),
        power="" if stale else text.power(hold, pounds=pounds),
        age=text.age(age_s),
        margin_pa=margin_pa,
        stop_margin_pa=view.stop_pressure_pa - view.triple_point_pa,
        hold=None if stale else hold,
        liquid_share=None if stale else share,
    )


def _rate(view: View) -> float | None:
    """Return the rate [Pa/s] to show: in a hold its late slope, else that of the last seconds."""
    hold = view.running_hold
    if hold is not None and hold.slope_pa_per_s is not None:
        slope = hold.slope_pa_per_s.estimate
        if slope is not None:
            return slope
    return view.rate_pa_per_s


def _margin_words(margin_pa: float, unit: str) -> str:
    if text.is_zero(text.difference_digits(margin_pa, unit)):
        return translate("Text", "AT the triple point")
    if margin_pa < 0:
        return translate("Text", "BELOW the triple point")
    return translate("Text", "above the triple point")


def _below(view: View, margin_pa: float, unit: str) -> Below:
    """Return what the figure of the margin warns of; digits that show nought warn of nothing."""
    if margin_pa >= 0.0 or text.is_zero(text.difference_digits(margin_pa, unit)):
        return Below.NO
    return Below.ALARM if view.vapor_only_since_s is None else Below.EXPECTED


def _stop_words(view: View, pressure_pa: float, unit: str) -> str:
    above_pa = pressure_pa - view.stop_pressure_pa
    stop = text.pressure(view.stop_pressure_pa, view.setup.ambient_pressure_pa, unit)
    if above_pa >= 0:
        return translate("Text", "gauge · {gap} above stop {stop}").format(
            gap=text.difference(above_pa, unit), stop=stop
        )
    return translate("Text", "gauge · {gap} below stop {stop}").format(
        gap=text.difference(-above_pa, unit), stop=stop
    )


def fall_words(early_s: float, late_s: float, confidence: float) -> str:
    """Return the earliest and latest time to the stop pressure, and how sure they are."""
    return translate("Plot", "stop in {early} to {late} ({percent} %)").format(
        early=text.duration(early_s),
        late=text.duration(late_s),
        percent=text.number(100.0 * confidence, 0),
    )


def _close_words(view: View) -> str:
    """Return when the stop pressure is reached: earliest and latest, else at the present rate."""
    if view.seconds_to_stop is None or view.vent_open is False:
        return ""
    bounds = view.stop_in_s
    if bounds is not None and bounds.lower is not None and bounds.upper is not None:
        return fall_words(bounds.lower, bounds.upper, bounds.confidence)
    return translate("Text", "stop pressure in {time}").format(
        time=text.duration(view.seconds_to_stop)
    )


def _temperature_words(view: View, units: UnitChoice, *, stale: bool) -> str:
    latest = view.latest
    if latest is None or latest.line_temperature_k is None:
        return "" if stale else translate("Text", "line temperature not measured")
    words = text.temperature(latest.line_temperature_k, units.temperature)
    if units.second_pressure is not None:
        other = text.temperature_of(units.second_pressure)
        words += " / " + text.temperature(latest.line_temperature_k, other)
    return translate("Text", "line {temperature}").format(temperature=words)


def _vent_words(view: View, *, stale: bool) -> str:
    """Return where the vent valve is, and whether that was told or follows from the pressure."""
    if view.vent_open is None:
        return "" if stale else translate("Text", "vent valve: not known")
    if view.valve_told:
        if view.vent_open:
            return translate("Text", "vent valve: OPEN")
        return translate("Text", "vent valve: CLOSED")
    if view.vent_open:
        return translate("Text", "vent OPEN, by the pressure")
    if any(event.kind is EventKind.VENT_CLOSED for event in reversed(view.events)):
        return translate("Text", "vent CLOSED, by the pressure")
    return (
        "" if stale else translate("Text", "vent valve: not recorded")
    )  # closed is only where one begins
