"""The core: past + item -> new past + events. No clock, no port, no window; time is in the data.

    session = begin(setup)
    session, events = advance(session, reading_or_rejection_or_tick)
    session, events = finish(session)          # the record ends here
    view(session)                              # what a screen or a report needs

Live, replay and batch run this same code on the same items, so they say the same. A session is
handed over: after `advance` only the returned one may be used (its trace grows in place, because a
copy of an eight-hour trace at every reading would be the one slow thing here).
"""

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.guidance.clamp_watch import ClampWatch
from co2vent.guidance.event_log import EventLog
from co2vent.guidance.events import Event, EventKind, Prompt, Severity
from co2vent.guidance.fall_forecast import FallForecast
from co2vent.guidance.freshness import Freshness
from co2vent.guidance.gauge_check import GaugeCheck
from co2vent.guidance.holds import Holds
from co2vent.guidance.limits_watch import ColdMetalWatch, TriplePointWatch
from co2vent.guidance.prompt_keeper import PromptKeeper, high_limit_pa
from co2vent.guidance.recent_readings import RecentReadings
from co2vent.guidance.situation import Situation
from co2vent.guidance.standing import Standing
from co2vent.guidance.two_gauges import TwoGauges
from co2vent.guidance.valve import ValveChange
from co2vent.guidance.vent_valve import VentValve
from co2vent.guidance.vent_watch import Plateau, VentWatch
from co2vent.guidance.view import Item, Tick, View
from co2vent.inference.bore_volume import VolumeWatch
from co2vent.inference.cold_metal import cold_metal_share
from co2vent.inference.criteria import CRITERIA
from co2vent.inference.hold_facts import HoldContext
from co2vent.inference.lines import saturated_k, snow_k
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment
from co2vent.inference.outflow import OutflowWatch
from co2vent.inference.trace import GaugeWatch
from co2vent.inference.vented import mass_vented
from co2vent.readings.limits import stop_pressure_pa
from co2vent.readings.reading import Gas, Reading, Rejection, Setup
from co2vent.sentence import Sentence

REACTION_S = 3.0  # from prompt to valve shut, gloved hand on the valve (common practice, no source)
MOST_LEAD_PA = 2.0e5  # a vent at 30 bar a minute needs no earlier word than this
NEAR_STOP_PA = 3.0e5  # where the rate of a vent tells what the next one will do


def begin(setup: Setup) -> "Session":
    """Return the past before any reading."""
    return Session(setup)


def advance(session: "Session", item: Item) -> tuple["Session", tuple[Event, ...]]:
    """Take one item; return the new past and what happened."""
    return session, session.take(item)


def finish(session: "Session") -> tuple["Session", tuple[Event, ...]]:
    """The record ends: judge the running hold once more, as it stands."""
    return session, session.end()


def view(session: "Session") -> View:
    """Return the session as a screen needs it."""
    return session.view()


class Session:
    """The past of one vent. Use through `begin`, `advance`, `finish` and `view`."""

    __slots__ = (
        "_age_limit_s",
        "_fall_pa_per_s",
        "_high_pa",
        "_prompts",
        "clamp",
        "cold_metal",
        "fall",
        "freshness",
        "gauge",
        "gauge_check",
        "gauge_fault",
        "holds",
        "latest",
        "log",
        "outflow",
        "readings",
        "recent",
        "rejections",
        "setup",
        "standing",
        "stop_pa",
        "triple_point",
        "two_gauges",
        "valve",
        "vent_watch",
        "volume_watch",
    )

    def __init__(self, setup: Setup) -> None:
        self.setup = setup
        self.stop_pa = stop_pressure_pa(setup)
        self.log = EventLog()
        # the readings
        self.latest: Reading | None = None
        self.readings = 0
        self.rejections = 0
        self.freshness = Freshness()
        self.recent = RecentReadings()
        self.gauge = GaugeWatch()
        self.gauge_check = GaugeCheck()
        self.two_gauges = TwoGauges()
        self.gauge_fault: str | None = None
        self.triple_point = TriplePointWatch(self.log)
        self.cold_metal = ColdMetalWatch(self.log)
        self.clamp = ClampWatch()
        self.valve = VentValve(self.stop_pa)
        # while venting
        self.vent_watch = VentWatch()
        self.volume_watch = VolumeWatch()
        self.outflow = OutflowWatch()
        self.fall = FallForecast()
        self._age_limit_s = self.freshness.age_limit_s(None)
        self._fall_pa_per_s = 0.0  # fastest of the last vent, near the stop pressure
        # the holds and what they say
        self.holds = Holds(self.log)
        self.standing = Standing(self.log)
        self._high_pa = high_limit_pa(setup)
        self._prompts = PromptKeeper(self.log, self._situation())

    @property
    def prompt(self) -> Prompt:
        """The one thing to do now."""
        return self._prompts.prompt

    # --- items ------------------------------------------------------------------------------

    def take(self, item: Item) -> tuple[Event, ...]:
        """Take one item; return what happened.

        A log of hours at ten readings a second comes through here: each reading asks as little as
        it can, and what a section does not have is not asked for.
        """
        self.log.begin_item()
        if isinstance(item, Reading):
            self._take_reading(item)
        elif isinstance(item, Tick):
            self._check_stale(item.at_s)
        else:
            self._take_rejection(item)
        return self.log.end_item()

    def end(self) -> tuple[Event, ...]:
        """The record ends: judge the running hold as it stands."""
        self.log.begin_item()
        if self.holds.trace is not None and self.latest is not None:
            self._judge_hold(closed=False)
            self._refresh_prompt(self.latest.at_s)
        return self.log.end_item()

    def _now(self) -> float:
        return self.latest.at_s if self.latest is not None else 0.0

    def _take_rejection(self, rejection: Rejection) -> None:
        self.rejections += 1
        if not rejection.over_range:
            # rows without a value are a silence; a gauge out of range says so below
            if rejection.at_s is not None and self.latest is not None:
                self._check_stale(rejection.at_s)
            return
        self.log.say(
            self._now(),
            EventKind.ROW_REJECTED,
            Sentence("line {line}: {reason}", line=str(rejection.line), reason=rejection.reason),
        )
        why = Sentence("the gauge was out of range")
        self.standing.withdraw(why, self._now())
        self._void_hold(self._now(), why)
        if self.latest is not None:
            self._prompts.hurry()
            self._refresh_prompt(self._now())

    def _take_reading(self, reading: Reading) -> None:
        last = self.latest
        at_s = reading.at_s
        self.readings += 1
        if last is not None and reading.segment != last.segment:
            self._break_time(at_s)
            last = None
        elif last is not None:
            if at_s - last.at_s > self._age_limit_s:
                self._check_stale(at_s)
            if self.freshness.learn(at_s - last.at_s, self.readings):
                self._age_limit_s = self.freshness.age_limit_s(self.valve.open)
        if self.freshness.stale:
            self._come_back(at_s)
        self.latest = reading
        if reading.note:
            self.log.say(at_s, EventKind.NOTE, reading.note)
        self.gauge.see(reading.pressure_pa)
        self._check_gauge(reading, last)
        since_last_s = None if last is None else min(at_s - last.at_s, self._age_limit_s)
        self.triple_point.see(reading, since_last_s, self.setup, self.standing.cleared)
        if self.setup.metal_minimum_temperature_k is not None:
            self.cold_metal.see(reading, self.setup)
        self.clamp.see(reading)
        self.recent.add(reading, has_valve=self.valve.told_of, interval_s=self.freshness.interval_s)
        first = self.valve.open is None
        believed = not self.valve.refuted
        moved = self.valve.see(reading, self.gauge, self.freshness.interval_s)
        if believed and self.valve.refuted:
            why = Sentence(
                "the vent valve is said to be shut while the section is vented; from here it is "
                "found from the pressure"
            )
            self.log.say(at_s, EventKind.GAUGE_FAULT, why)
            self.standing.withdraw(why, at_s)
        if moved is not None:
            self._age_limit_s = self.freshness.age_limit_s(moved.open)
            self._valve_moved(moved, first=first)
        self.holds.see_pressure(reading.pressure_pa)
        if self.standing.cleared:
            self.standing.see_pressure(
                reading.pressure_pa, at_s, vent_open=self.valve.told_of and self.valve.open is True
            )
        if self.holds.trace is not None:
            if self.holds.add(reading):
                self._judge_hold(closed=False)
        else:
            self._watch_vent(reading)
        if (
            self.log.new
            or self._prompts.is_due(at_s)
            or (self._high_pa is not None and reading.pressure_pa >= self._high_pa)
        ):
            self._refresh_prompt(at_s)

    # --- time and gauge -----------------------------------------------------------------------

    def _break_time(self, at_s: float) -> None:
        """The clock ran backwards: nothing from before may be joined to what follows."""
        why = Sentence("the clock ran backwards")
        self.log.say(
            at_s,
            EventKind.TIME_BROKEN,
            Sentence("the clock ran backwards; the hold starts anew"),
        )
        self._void_hold(at_s, why)
        self.standing.withdraw(why, self._now())
        self.fall.reset()
        self.outflow.missed()
        self._forget_before()

    def _forget_before(self) -> None:
        self.valve.forget_before()
        self.gauge.forget_neighbours()
        self.recent.clear()

    def _check_stale(self, at_s: float) -> None:
        last, limit_s = self.latest, self._age_limit_s
        if last is None or self.freshness.stale or at_s - last.at_s <= limit_s + 1e-9:
            return
        since_s = last.at_s + limit_s
        limit = f"{limit_s:.1f} s"
        if self.freshness.turn_stale():
            self.log.say(
                since_s,
                EventKind.DATA_STALE,
                Sentence(
                    "no reading for {time}: close the vent and read the mechanical gauge",
                    time=limit,
                ),
            )
        why = Sentence("no reading for more than {time}", time=limit)
        self._void_hold(since_s, why)
        self.standing.withdraw(Sentence("readings stopped"), last.at_s)
        self.vent_watch.reset()
        self.fall.reset()
        self.outflow.missed()
        self._refresh_prompt(since_s)

    def _come_back(self, at_s: float) -> None:
        """Readings are back; a verdict does not come back with them."""
        assert self.latest is not None
        self.freshness.stale = False
        if self.freshness.is_gap(at_s - self.latest.at_s):
            self._forget_before()
        if not self.freshness.sparse:
            text = Sentence("readings are back; a verdict starts from here")
            self.log.say(at_s, EventKind.DATA_BACK, text)

    def _check_gauge(self, reading: Reading, last: Reading | None) -> None:
        setup = self.setup
        holding = self.holds.trace is not None
        closed = holding and self.valve.told_of and reading.vent_open is not True
        fault = self.gauge_check.fault(reading, last, setup, self.gauge, closed=closed)
        if fault is None and (reading.pressure_2_pa is not None or not holding):
            fault = self.two_gauges.fault(reading, setup, closed=holding)
        if fault is not None and self.gauge_fault is None:
            text = Sentence("check the gauge: {fault}", fault=fault)
            self.log.say(reading.at_s, EventKind.GAUGE_FAULT, text)
            self.standing.withdraw(fault, reading.at_s)
            self._void_hold(reading.at_s, fault)
        if fault is None and self.gauge_fault is not None:
            # what was read while the gauge was in doubt is no evidence once it is not
            self._void_hold(reading.at_s, self.gauge_fault)
            self._prompts.hurry()
        self.gauge_fault = fault

    # --- the valve ----------------------------------------------------------------------------

    def _valve_moved(self, change: ValveChange, *, first: bool) -> None:
        self.vent_watch.reset()
        self.volume_watch.reset()
        self.fall.reset()
        if not change.open:
            self._see_outflow(last=True)  # it was shut between the reading before and this one
        self.outflow.shut()
        at_s = change.at_s
        if change.open:
            if self.holds.trace is not None:
                self._end_hold(at_s)
            self._fall_pa_per_s = 0.0
            self.log.say(
                at_s,
                EventKind.VENT_STARTED,
                Sentence("vent open")
                if self.valve.told_of
                else Sentence("vent open, found from the pressure"),
            )
            return
        if not first:
            self.log.say(
                at_s,
                EventKind.VENT_CLOSED,
                Sentence("vent closed")
                if self.valve.told_of
                else Sentence("vent closed, found from the pressure"),
            )
        self.standing.hold_starts()
        past = self.recent.between(at_s, self._now())
        self.holds.start(at_s, self.valve.vented, past, self.triple_point.highest)

    # --- the verdict --------------------------------------------------------------------------

    def _context(self) -> HoldContext:
        latest, standing = self.latest, self.standing
        return HoldContext(
            setup=self.setup,
            number=self.holds.number,
            noise_pa=self.gauge.noise_pa,
            step_pa=self.gauge.step_pa,
            stop_pa=self.stop_pa,
            vented=self.holds.number > 0 and self.holds.fell,
            begun_pa=self.holds.begun_pa,
            clamp_frozen=self.clamp.frozen,
            clamp_doubted=self.clamp.doubted,
            first_pa=self.triple_point.highest,
            lowest_pa=self.triple_point.lowest_pa,
            # a hold's own verdict is no evidence for it
            cleared=standing.cleared_before,
            cleared_limit_kg=standing.cleared_limit_kg,
            solid_seen=standing.solid_seen,
            ice_possible=standing.ice_possible,
            valve_known=self.valve.told_of,
            ambient_k=latest.ambient_temperature_k if latest else None,
            earlier=tuple(self.holds.earlier),
            faults=(self.gauge_fault,) if self.gauge_fault else (),
            fall_pa_per_s=self._fall_pa_per_s,
        )

    def _judge_hold(self, *, closed: bool) -> None:
        judged = self.holds.judge(self._context(), closed=closed)
        if judged is not None:
            verdict, before = judged
            self.standing.heed(verdict, before, self._now())
            self._heed_clamp(verdict)

    def _heed_clamp(self, hold: HoldAssessment) -> None:
        """Metal at saturation is where liquid may lie: a verdict from before does not cover it."""
        young = hold.end_s - hold.start_s < CRITERIA.shortest_clear_s
        if self.latest is not None and hold.charge is not Charge.VAPOR_ONLY and not young:
            self._heed_cold_metal(self.latest)

    def _heed_cold_metal(self, reading: Reading) -> None:
        line_k, pressure_pa = reading.line_temperature_k, reading.pressure_pa
        if line_k is None:
            return
        below = pressure_pa < TRIPLE_PRESSURE_PA
        cold_k = snow_k(pressure_pa) if below else saturated_k(pressure_pa)
        if line_k - cold_k < CRITERIA.clamp_wet_k:
            self.standing.withdraw(Sentence("the lowest metal is at saturation"), reading.at_s)

    def _void_hold(self, at_s: float, why: str) -> None:
        """The running hold's evidence starts anew; the doubts it has raised do not."""
        self.holds.keep_part(self._context())
        self.holds.void(at_s, why, self.latest)

    def _end_hold(self, at_s: float) -> None:
        self._judge_hold(closed=True)
        ended = self.holds.end(at_s, valve_told=self.valve.told_of)
        if ended is not None:
            self.standing.hold_ended(ended)

    # --- while venting ------------------------------------------------------------------------

    def _watch_vent(self, reading: Reading) -> None:
        """A valve that is open and a pressure that does not fall is never a quiet hold."""
        self.fall.see(reading)
        if self.setup.gas is not Gas.CO2:
            return
        if self.valve.told_of:
            self._see_outflow()
        bore_m = self.setup.vent_bore_m
        if bore_m is not None and self.valve.told_of and self.standing.cleared:
            self.volume_watch.see(
                reading.at_s, reading.pressure_pa, self.setup.ambient_pressure_pa, bore_m
            )
        rate = self._rate()
        if rate is not None and reading.pressure_pa < self.stop_pa + NEAR_STOP_PA:
            self._fall_pa_per_s = max(self._fall_pa_per_s, -rate)
        if 0.0 < reading.pressure_pa < TRIPLE_PRESSURE_PA:
            self._heed_cold_metal(reading)
        before = self.vent_watch.plateau
        plateau = self.vent_watch.see(reading, self.setup, self.gauge)
        if plateau is before or plateau is None:
            return
        self.log.say(reading.at_s, plateau.kind, plateau.text)
        if plateau is Plateau.SHELF:
            why = Sentence("the pressure stands at the triple point")
            self.standing.withdraw(why, reading.at_s)
            self.standing.see_ice()
        elif not self.vent_watch.answered:
            # a gauge that does not show the vent may have been cut off in the hold before
            why = Sentence("the gauge does not answer the vent")
            self.standing.withdraw(why, reading.at_s)

    def _see_outflow(self, *, last: bool = False) -> None:
        if self.latest is not None:
            self.outflow.see(
                self.latest.at_s,
                self.latest.pressure_pa,
                self.setup.ambient_pressure_pa,
                vapor_only=self.standing.cleared,
                last=last,
            )

    def _rate(self) -> float | None:
        return self.recent.rate_pa_per_s(self.valve.opened_s)

    # --- prompt and view ----------------------------------------------------------------------

    def _situation(self) -> Situation:
        rate = self._rate()
        lead_pa = 0.0
        if rate is not None and rate < 0 and self.valve.open:
            # a collapse to saturation when a liquid-full section is opened is no steady fall
            lead_pa = min(-rate * (REACTION_S + self.freshness.interval_s), MOST_LEAD_PA)
        trace = self.holds.trace
        return Situation(
            setup=self.setup,
            latest=self.latest,
            stale=self.freshness.stale,
            vent_open=self.valve.open,
            vented=self.valve.vented,
            stop_pa=self.stop_pa,
            lead_pa=lead_pa,
            rate_pa_per_s=rate,
            high_limit_pa=self._high_pa,
            gauge_fault=self.gauge_fault,
            plateau=self.vent_watch.plateau,
            cleared=self.standing.cleared,
            solid_seen=self.standing.solid_seen,
            low_hold_done=self.standing.low_hold_done,
            hold=self.holds.running,
            hold_age_s=trace.duration_s if trace is not None else None,
        )

    def _refresh_prompt(self, at_s: float) -> None:
        self._prompts.refresh(self._situation(), at_s, sparse=self.freshness.sparse)

    def view(self) -> View:
        """Return all that a screen or a report needs."""
        setup, latest, rate = self.setup, self.latest, self._rate()
        to_stop: float | None = None
        if latest is not None and rate is not None and rate < -1.0 and self.valve.open:
            above_pa = latest.pressure_pa - self.stop_pa
            to_stop = above_pa / -rate if above_pa > 0.0 else None
        holds, triple_point = self.holds.every, self.triple_point
        volume = setup.section_volume_m3
        return View(
            setup=setup,
            latest=latest,
            prompt=self.prompt,
            stale=self.freshness.stale,
            age_limit_s=self._age_limit_s,
            vent_open=self.valve.open,
            valve_told=self.valve.told_of,
            triple_point_pa=TRIPLE_PRESSURE_PA,
            stop_pressure_pa=self.stop_pa,
            margin_pa=latest.pressure_pa - TRIPLE_PRESSURE_PA if latest else None,
            rate_pa_per_s=rate,
            seconds_to_stop=to_stop,
            holds=holds,
            running_hold=self.holds.running,
            vapor_only_since_s=self.standing.vapor_only_since_s,
            mass_vented_kg=mass_vented(
                setup,
                triple_point.highest,
                latest,
                self.valve.vented,
                holds,
                None if volume is None else self.outflow.estimate_kg(volume),
            ),
            minimum_pressure_pa=triple_point.lowest,
            seconds_below_triple_point=triple_point.below_s,
            seconds_below_triple_point_before_vapor_only=triple_point.below_before_s,
            events=tuple(self.log.every),
            readings=self.readings,
            rejections=self.rejections,
            volume_by_bore_m3=self.volume_watch.at_most,
            metal_below_minimum=cold_metal_share(
                setup.metal_minimum_temperature_k,
                triple_point.lowest,
                latest.pressure_pa if latest else None,
                latest.line_temperature_k if latest else None,
                latest.upper_temperature_k if latest else None,
            ),
            stop_in_s=self._stop_in_s(),
        )

    def _stop_in_s(self) -> Bounds | None:
        if not self.valve.open or self.freshness.stale or self.vent_watch.plateau is not None:
            return None
        return self.fall.reaches(self.stop_pa, self.gauge)


__all__ = ["Item", "Session", "Severity", "Tick", "View", "advance", "begin", "finish", "view"]
