"""The core: past + item -> new past + events. No clock, no port, no window; time is in the data.

    session = begin(setup)
    session, events = advance(session, reading_or_rejection_or_tick)
    session, events = finish(session)          # the record ends here
    view(session)                              # what a screen or a report needs

Live, replay and batch run this same code on the same items, so they say the same. A session is
handed over: after `advance` only the returned one may be used (its trace grows in place, because a
copy of an eight-hour trace at every reading would be the one slow thing here).
"""

from collections import deque
from dataclasses import replace
from math import inf, isfinite

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.guidance.events import Event, EventKind, Severity
from co2vent.guidance.fall_forecast import FallForecast
from co2vent.guidance.gauge_check import GaugeCheck
from co2vent.guidance.prompts import Situation, prompt_for
from co2vent.guidance.two_gauges import TwoGauges
from co2vent.guidance.valve import ValveFinder
from co2vent.guidance.vent_watch import Plateau, VentWatch
from co2vent.guidance.view import Item, Tick, View
from co2vent.inference.bore_volume import VolumeWatch
from co2vent.inference.cold_metal import cold_metal_share
from co2vent.inference.hold_facts import EarlierHold, HoldContext
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment, Instruction, LeakBy
from co2vent.inference.trace import GaugeWatch, HoldTrace
from co2vent.inference.vented import mass_vented
from co2vent.inference.verdict import judge
from co2vent.inference.wording import temperature_text
from co2vent.readings.limits import stop_pressure_pa
from co2vent.readings.reading import Gas, Reading, Setup
from co2vent.sentence import Sentence

STALE_LEAST_S = 2.0  # a person at the valve must know within this that the numbers are old
STALE_INTERVALS = 2.5  # of the usual interval: one lost reading is no alarm
STALE_VENTING_MOST_S = 5.0  # a vent falls 0.2 bar in it; older than that is no guidance
REACTION_S = 3.0  # from prompt to valve shut, gloved hand on the valve (common practice, no source)
METAL_BACK_K = 2.0  # warmer than the minimum by this before it may be said again
NEAR_STOP_PA = 3.0e5  # where the rate of a vent tells what the next one will do
MOST_LEAD_PA = 2.0e5  # a vent at 30 bar a minute needs no earlier word than this
RATE_WINDOW_S = 6.0
LOOK_BACK_S = 45.0  # a closing found from the pressure is found so long after it, at most
HIGH_SHARE = 0.9  # of the lowest of relief setting, rated pressure and gauge range
FIRST_FIT_S = 8.0
LONGEST_FIT_EVERY_S = 20.0


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

    def __init__(self, setup: Setup) -> None:
        self.setup = setup
        self.stop_pa = stop_pressure_pa(setup)
        self.gauge = GaugeWatch()
        self.two_gauges = TwoGauges()
        self.finder = ValveFinder()
        self.latest: Reading | None = None
        self.readings = 0
        self.rejections = 0
        self.stale = False
        self.interval_s = 1.0
        self._intervals: deque[float] = deque(maxlen=9)
        self.told_valve: bool | None = None  # what a column or a person last said
        self.has_valve = False
        self.vent_open: bool | None = None
        self.vented = False  # the first vent has begun
        self.hold: HoldTrace | None = None
        self.hold_number = 0
        self.running: HoldAssessment | None = None
        self.ended: list[HoldAssessment] = []
        self.earlier: list[EarlierHold] = []
        self.next_fit_s = FIRST_FIT_S
        self.events: list[Event] = []
        self._new: list[Event] = []
        self._recent: deque[Reading] = deque()
        self._said_sparse = False
        self.highest_pa = -inf
        self.lowest_pa = inf
        self.first_pa: float | None = None
        self.first_line_k: float | None = None
        self.below_s = 0.0
        self.below_before_s = 0.0
        self._was_below = False
        self.vapor_only_since_s: float | None = None
        self.cleared_limit_kg: float | None = None
        self._cleared_before = False  # "vapour only" stood when the running hold began
        self.solid_seen = False
        self.low_hold_done = False
        self._fall_pa_per_s = 0.0  # fastest of the last vent, near the stop pressure
        self._metal_cold = False
        self._moved_s = 0.0  # when the valve last moved
        self.vent_watch = VentWatch()
        self.volume_watch = VolumeWatch()
        self.fall = FallForecast()
        self.gauge_check = GaugeCheck()
        self.gauge_fault: str | None = None
        self._high_pa = self._high_limit_pa() or inf
        self._prompt_due_s = -inf
        self.prompt = prompt_for(self._situation())

    # --- items ------------------------------------------------------------------------------

    def take(self, item: Item) -> tuple[Event, ...]:
        self._new = []
        if isinstance(item, Reading):
            self._take_reading(item)
        elif isinstance(item, Tick):
            self._check_stale(item.at_s)
        else:
            self.rejections += 1
            if item.over_range:
                self._say(
                    self._now(),
                    EventKind.ROW_REJECTED,
                    Sentence("line {line}: {reason}", line=str(item.line), reason=item.reason),
                )
                if self.hold is not None:
                    self._void_evidence(self._now(), Sentence("the gauge was out of range"))
        self.events.extend(self._new)
        return tuple(self._new)

    def end(self) -> tuple[Event, ...]:
        self._new = []
        if self.hold is not None and self.latest is not None:
            self._judge_hold(closed=False)
            self._refresh_prompt(self.latest.at_s)
        self.events.extend(self._new)
        return tuple(self._new)

    def _now(self) -> float:
        return self.latest.at_s if self.latest is not None else 0.0

    def _say(self, at_s: float, kind: EventKind, text: str) -> None:
        self._new.append(Event(at_s, kind, text))

    # --- one reading ------------------------------------------------------------------------

    def _take_reading(self, reading: Reading) -> None:
        last = self.latest
        at_s, pressure_pa = reading.at_s, reading.pressure_pa
        self.readings += 1
        if last is None:
            self.first_line_k = reading.line_temperature_k
        elif reading.segment != last.segment:
            why = Sentence("the clock ran backwards")
            self._say(
                at_s,
                EventKind.TIME_BROKEN,
                Sentence("the clock ran backwards; the hold starts anew"),
            )
            self._void_evidence(at_s, why)
            self._withdraw(why)
            self._recent.clear()
            self.fall.reset()
            self.finder.reset()
            self.gauge.forget_neighbours()
            last = None
        else:
            self._check_stale(at_s)
            self._learn_interval(at_s - last.at_s)
        if self.stale:
            self._come_back(at_s)
        self.latest = reading
        if reading.note:
            self._say(at_s, EventKind.NOTE, reading.note)
        self.gauge.see(pressure_pa)
        self._check_gauge(reading, last)
        self.highest_pa = max(self.highest_pa, pressure_pa)
        self.lowest_pa = min(self.lowest_pa, pressure_pa)
        self._count_below(reading, last)
        self._check_metal(reading)
        recent = self._recent
        recent.append(reading)
        keep_s = RATE_WINDOW_S if self.has_valve else max(LOOK_BACK_S, 4.0 * self.interval_s)
        while at_s - recent[0].at_s > keep_s and len(recent) > 2:
            recent.popleft()
        self._follow_valve(reading)
        if self.hold is not None:
            self.hold.add(
                at_s, pressure_pa, reading.line_temperature_k, reading.upper_temperature_k
            )
            if self.hold.duration_s >= self.next_fit_s:
                self._judge_hold(closed=False)
        else:
            self._watch_vent(reading)
        # in a calm hold the prompt hangs on the fits; a second is soon enough for its words
        if (
            self.hold is None
            or self._new
            or at_s >= self._prompt_due_s
            or pressure_pa >= self._high_pa
        ):
            self._refresh_prompt(at_s)

    def _learn_interval(self, interval_s: float) -> None:
        self._intervals.append(interval_s)
        if self.readings % 8 == 0 or self.readings < 12:
            self.interval_s = sorted(self._intervals)[len(self._intervals) // 2]

    @property
    def age_limit_s(self) -> float:
        limit = max(STALE_LEAST_S, STALE_INTERVALS * self.interval_s)
        return min(limit, STALE_VENTING_MOST_S) if self.vent_open else limit

    def _check_stale(self, at_s: float) -> None:
        last = self.latest
        if last is None or self.stale or at_s - last.at_s <= self.age_limit_s + 1e-9:
            return
        limit_s = self.age_limit_s
        self.stale = True
        if not self._sparse():
            self._said_sparse = self.interval_s > STALE_VENTING_MOST_S
            self._say(
                last.at_s + limit_s,
                EventKind.DATA_STALE,
                Sentence(
                    "no reading for {time}: close the vent and read the mechanical gauge",
                    time=f"{limit_s:.1f} s",
                ),
            )
        if self.hold is not None:
            why = Sentence("no reading for more than {time}", time=f"{limit_s:.1f} s")
            self._void_evidence(last.at_s + limit_s, why)
        self._withdraw(Sentence("readings stopped"))
        self.vent_watch.reset()
        self.fall.reset()
        self._refresh_prompt(last.at_s + limit_s)

    def _come_back(self, at_s: float) -> None:
        """Readings are back. After a true gap nothing from before it may be joined to them."""
        assert self.latest is not None
        self.stale = False
        if at_s - self.latest.at_s > STALE_INTERVALS * self.interval_s:
            self.finder.reset()
            self.gauge.forget_neighbours()
            self._recent.clear()
        if not self._sparse():
            text = Sentence("readings are back; a verdict starts from here")
            self._say(at_s, EventKind.DATA_BACK, text)

    def _sparse(self) -> bool:
        """Readings that come too seldom for a vent: stale between any two, which is said once."""
        return self._said_sparse and self.interval_s > STALE_VENTING_MOST_S

    def _withdraw(self, why: str) -> None:
        """Take back a standing "vapour only": recovery never restores an old verdict."""
        if self.vapor_only_since_s is not None:
            self.vapor_only_since_s = None
            self.cleared_limit_kg = None
            text = Sentence("vapour only no longer stands: {why}", why=why)
            self._say(self._now(), EventKind.VERDICT, text)

    def _void_evidence(self, at_s: float, why: str) -> None:
        """The hold goes on, its evidence starts again: what was read before does not count."""
        if self.hold is None:
            return
        started_s = self.running.start_s if self.running else self.hold.start_s
        start_pa = self.running.start_pressure_pa if self.running else self.hold.first_pa
        if self.hold.count == 0:
            start_pa = self.latest.pressure_pa if self.latest else 0.0
        self._say(
            at_s,
            EventKind.HOLD_VOIDED,
            Sentence(
                "hold {number}: {why}; its evidence starts anew",
                number=str(self.hold_number),
                why=why,
            ),
        )
        self.hold = HoldTrace(at_s)
        self.next_fit_s = FIRST_FIT_S
        self.running = HoldAssessment(
            number=self.hold_number,
            start_s=started_s,
            end_s=at_s,
            start_pressure_pa=start_pa,
            end_pressure_pa=self.latest.pressure_pa if self.latest else start_pa,
            reason=Sentence("Not known yet: {why}, so the hold's evidence starts anew.", why=why),
        )

    def _check_gauge(self, reading: Reading, last: Reading | None) -> None:
        setup = self.setup
        closed = self.hold is not None and self.has_valve and reading.vent_open is not True
        fault = self.gauge_check.fault(reading, last, setup, self.gauge, closed=closed)
        if fault is None:
            fault = self.two_gauges.fault(reading, setup, closed=self.hold is not None)
        if fault is not None and self.gauge_fault is None:
            text = Sentence("check the gauge: {fault}", fault=fault)
            self._say(reading.at_s, EventKind.GAUGE_FAULT, text)
            self._withdraw(fault)
            self._void_evidence(reading.at_s, fault)
        if fault is None and self.gauge_fault is not None:
            self._prompt_due_s = -inf
        self.gauge_fault = fault

    def _check_metal(self, reading: Reading) -> None:
        """Metal under its rated minimum is brittle: say it once each time it gets there."""
        least_k, line_k = self.setup.metal_minimum_temperature_k, reading.line_temperature_k
        if least_k is None or line_k is None:
            return
        if line_k < least_k and not self._metal_cold:
            self._metal_cold = True
            self._say(
                reading.at_s,
                EventKind.METAL_COLD,
                Sentence(
                    "the metal at {now} is below its rated minimum of {least}: no blows, no "
                    "repressurising until it has warmed",
                    now=temperature_text(line_k, self.setup),
                    least=temperature_text(least_k, self.setup),
                ),
            )
        elif line_k > least_k + METAL_BACK_K:
            self._metal_cold = False

    def _count_below(self, reading: Reading, last: Reading | None) -> None:
        if self.setup.gas is not Gas.CO2:
            return
        below = reading.pressure_pa < TRIPLE_PRESSURE_PA
        cleared = self.vapor_only_since_s is not None
        if below and last is not None:
            interval_s = min(reading.at_s - last.at_s, self.age_limit_s)
            self.below_s += interval_s
            if not cleared:
                self.below_before_s += interval_s
        if below and not self._was_below:
            text = (
                Sentence(
                    "below the local triple point with vapour only standing: watch for the shelf"
                )
                if cleared
                else Sentence(
                    "ALARM: below the local triple point before vapour only was shown; liquid left "
                    "turns to dry ice"
                )
            )
            self._say(reading.at_s, EventKind.BELOW_TRIPLE_POINT, text)
            self._was_below = True
        elif self._was_below and reading.pressure_pa > TRIPLE_PRESSURE_PA + 5_000.0:
            self._was_below = False

    # --- the valve --------------------------------------------------------------------------

    def _follow_valve(self, reading: Reading) -> None:
        if reading.vent_open is not None:
            self.has_valve = True
            self.told_valve = reading.vent_open
        if self.has_valve:
            open_now = bool(self.told_valve)
            if open_now != self.vent_open:
                self._set_valve(open_now, reading.at_s)
            return
        if self.vent_open is None:
            self._set_valve(False, reading.at_s)
        change = self.finder.see(
            reading.at_s,
            reading.pressure_pa,
            self.gauge.noise_pa,
            self.gauge.step_pa,
            self.interval_s,
        )
        if change is not None:
            self._set_valve(change.open, change.at_s)

    def _set_valve(self, open_now: bool, at_s: float) -> None:
        first = self.vent_open is None
        self.vent_open = open_now
        self._moved_s = at_s
        self.vent_watch.reset()
        self.volume_watch.reset()
        self.fall.reset()
        if open_now:
            if self.hold is not None:
                self._end_hold(at_s)
            self.vented = True
            self._fall_pa_per_s = 0.0
            self._say(
                at_s,
                EventKind.VENT_STARTED,
                Sentence("vent open")
                if self.has_valve
                else Sentence("vent open, found from the pressure"),
            )
        else:
            if not first:
                self._say(
                    at_s,
                    EventKind.VENT_CLOSED,
                    Sentence("vent closed")
                    if self.has_valve
                    else Sentence("vent closed, found from the pressure"),
                )
            self._start_hold(at_s)

    def _start_hold(self, at_s: float) -> None:
        if self.ended:
            self.hold_number = self.ended[-1].number + 1
        else:
            self.hold_number = 1 if self.vented else 0
        self.hold = HoldTrace(at_s)
        self._cleared_before = self.vapor_only_since_s is not None
        self.next_fit_s = FIRST_FIT_S
        self.running = None
        text = Sentence("hold {number} starts", number=str(self.hold_number))
        self._say(at_s, EventKind.HOLD_STARTED, text)
        # readings between the closing and its discovery belong to the hold
        for past in self._recent:
            if at_s <= past.at_s < self._now():
                self.hold.add(
                    past.at_s, past.pressure_pa, past.line_temperature_k, past.upper_temperature_k
                )

    def _end_hold(self, at_s: float) -> None:
        assert self.hold is not None
        self._judge_hold(closed=True)
        if self.running is not None:
            ended = replace(
                self.running,
                end_s=min(at_s, self.running.end_s) if not self.has_valve else self.running.end_s,
                closed=True,
            )
            self.ended.append(ended)
            self._say(
                at_s,
                EventKind.HOLD_ENDED,
                Sentence(
                    "hold {number} ends: {charge}. {reason}",
                    number=str(ended.number),
                    charge=ended.charge,
                    reason=ended.reason,
                ),
            )
            if (
                self.vapor_only_since_s is not None
                and ended.end_pressure_pa < TRIPLE_PRESSURE_PA
                and ended.charge is Charge.VAPOR_ONLY
            ):
                self.low_hold_done = True
        self.hold = None
        self.running = None

    # --- the verdict ------------------------------------------------------------------------

    def _context(self) -> HoldContext:
        latest = self.latest
        faults = (self.gauge_fault,) if self.gauge_fault else ()
        return HoldContext(
            setup=self.setup,
            number=self.hold_number,
            noise_pa=self.gauge.noise_pa,
            step_pa=self.gauge.step_pa,
            stop_pa=self.stop_pa,
            vented=self.vented,
            first_pa=self.highest_pa if isfinite(self.highest_pa) else None,
            lowest_pa=self.lowest_pa,
            # a hold's own verdict is no evidence for it
            cleared=self._cleared_before and self.vapor_only_since_s is not None,
            cleared_limit_kg=self.cleared_limit_kg,
            solid_seen=self.solid_seen,
            valve_known=self.has_valve,
            ambient_k=latest.ambient_temperature_k if latest else None,
            earlier=tuple(self.earlier),
            faults=faults,
            fall_pa_per_s=self._fall_pa_per_s,
        )

    def _judge_hold(self, *, closed: bool) -> None:
        hold = self.hold
        if hold is None or hold.count == 0:
            return
        started = self.running
        assessment, earlier = judge(hold, self._context())
        if started is not None and started.start_s < assessment.start_s:
            assessment = replace(
                assessment, start_s=started.start_s, start_pressure_pa=started.start_pressure_pa
            )
        duration_s = hold.duration_s
        self.next_fit_s = duration_s + min(max(2.0, 0.08 * duration_s), LONGEST_FIT_EVERY_S)
        before = started.charge if started is not None else Charge.UNDETERMINED
        self.running = assessment
        if closed and earlier is not None:
            self.earlier.append(earlier)
        self._heed(assessment, before)

    def _heed(self, hold: HoldAssessment, before: Charge) -> None:
        """Let the verdict change what stands."""
        if hold.charge is not before:
            self._say(
                hold.end_s,
                EventKind.VERDICT,
                Sentence(
                    "hold {number}: {charge}. {reason}",
                    number=str(hold.number),
                    charge=hold.charge,
                    reason=hold.reason,
                ),
            )
        if hold.charge is Charge.VAPOR_ONLY:
            if self.vapor_only_since_s is None:
                self.vapor_only_since_s = hold.end_s
            self.cleared_limit_kg = hold.detection_limit_kg
            self.solid_seen = False
        elif hold.charge is Charge.SOLID_PRESENT:
            if not self.solid_seen:
                text = Sentence("dry ice: {reason}", reason=hold.reason)
                self._say(hold.end_s, EventKind.SHELF, text)
            self.solid_seen = True
            self._withdraw(Sentence("dry ice shows"))
        elif hold.charge in (Charge.TWO_PHASE, Charge.SUBCOOLED_LIQUID):
            self._withdraw(Sentence("the hold shows liquid"))
            self.solid_seen = False
        elif hold.leak_by is LeakBy.SUSPECTED:
            self._withdraw(Sentence("flow into the section is suspected"))
        elif before is Charge.VAPOR_ONLY:
            self._withdraw(Sentence("the hold no longer shows it"))

    # --- while venting ----------------------------------------------------------------------

    def _watch_vent(self, reading: Reading) -> None:
        """A valve that is open and a pressure that does not fall is never a quiet hold."""
        self.fall.see(reading)
        if self.setup.gas is not Gas.CO2:
            return
        bore_m = self.setup.vent_bore_m
        if bore_m is not None and self.has_valve and self.vapor_only_since_s is not None:
            self.volume_watch.see(
                reading.at_s, reading.pressure_pa, self.setup.ambient_pressure_pa, bore_m
            )
        rate = self._rate()
        if rate is not None and reading.pressure_pa < self.stop_pa + NEAR_STOP_PA:
            self._fall_pa_per_s = max(self._fall_pa_per_s, -rate)
        before = self.vent_watch.plateau
        plateau = self.vent_watch.see(reading, self.setup, self.gauge)
        if plateau is before or plateau is None:
            return
        self._say(reading.at_s, plateau.kind, plateau.text)
        if plateau is Plateau.SHELF:
            self._withdraw(Sentence("the pressure stands at the triple point"))
            self.solid_seen = True

    def _rate(self) -> float | None:
        recent = self._recent
        if len(recent) < 2:
            return None
        last = first = recent[-1]
        for earlier in reversed(recent):
            # the closed time before an opening would make the fall look slower than it is
            if self.vent_open and earlier.at_s < self._moved_s:
                break
            first = earlier
            if last.at_s - first.at_s >= RATE_WINDOW_S:
                break
        span = last.at_s - first.at_s
        return (last.pressure_pa - first.pressure_pa) / span if span > 0 else None

    # --- prompt and view --------------------------------------------------------------------

    def _high_limit_pa(self) -> float | None:
        setup = self.setup
        limits = [
            limit
            for limit in (
                setup.relief_pressure_pa,
                setup.section_max_pressure_pa,
                setup.gauge_full_scale_pa,
            )
            if limit is not None
        ]
        if not limits:
            return None
        return setup.ambient_pressure_pa + HIGH_SHARE * (min(limits) - setup.ambient_pressure_pa)

    def _situation(self) -> Situation:
        latest = self.latest
        rate = self._rate()
        lead_pa = 0.0
        if rate is not None and rate < 0 and self.vent_open:
            # a collapse to saturation when a liquid-full section is opened is no steady fall
            lead_pa = min(-rate * (REACTION_S + self.interval_s), MOST_LEAD_PA)
        return Situation(
            setup=self.setup,
            latest=latest,
            stale=self.stale,
            vent_open=self.vent_open,
            vented=self.vented,
            stop_pa=self.stop_pa,
            lead_pa=lead_pa,
            rate_pa_per_s=rate,
            high_limit_pa=self._high_pa if isfinite(self._high_pa) else None,
            gauge_fault=self.gauge_fault,
            plateau=self.vent_watch.plateau,
            cleared=self.vapor_only_since_s is not None,
            solid_seen=self.solid_seen,
            low_hold_done=self.low_hold_done,
            hold=self.running,
            hold_age_s=self.hold.duration_s if self.hold is not None else None,
        )

    def _refresh_prompt(self, at_s: float) -> None:
        self._prompt_due_s = at_s + 1.0
        new = prompt_for(self._situation())
        old = self.prompt
        if new.instruction is not old.instruction or new.headline != old.headline:
            self.prompt = replace(new, since_s=at_s)
            if self._sparse() and Instruction.NO_DATA in (new.instruction, old.instruction):
                return
            text = Sentence(
                "{instruction}: {headline}. {reason}",
                instruction=new.instruction,
                headline=Sentence(new.headline),
                reason=new.reason,
            )
            self._say(at_s, EventKind.PROMPT, text)
            if new.instruction.value == "vent_now":
                self._say(at_s, EventKind.PRESSURE_HIGH, new.reason)
        else:
            self.prompt = replace(new, since_s=old.since_s)

    def view(self) -> View:
        latest = self.latest
        rate = self._rate()
        margin = latest.pressure_pa - TRIPLE_PRESSURE_PA if latest else None
        to_stop: float | None = None
        if latest is not None and rate is not None and rate < -1.0 and self.vent_open:
            to_stop = max((latest.pressure_pa - self.stop_pa) / -rate, 0.0)
        holds = tuple(self.ended) + ((self.running,) if self.running is not None else ())
        return View(
            setup=self.setup,
            latest=latest,
            prompt=self.prompt,
            stale=self.stale,
            age_limit_s=self.age_limit_s,
            vent_open=self.vent_open,
            triple_point_pa=TRIPLE_PRESSURE_PA,
            stop_pressure_pa=self.stop_pa,
            margin_pa=margin,
            rate_pa_per_s=rate,
            seconds_to_stop=to_stop,
            holds=holds,
            running_hold=self.running,
            vapor_only_since_s=self.vapor_only_since_s,
            mass_vented_kg=mass_vented(
                self.setup, self.first_mass_pa(), latest, self.vented, holds
            ),
            minimum_pressure_pa=self.lowest_pa if isfinite(self.lowest_pa) else None,
            seconds_below_triple_point=self.below_s,
            seconds_below_triple_point_before_vapor_only=self.below_before_s,
            events=tuple(self.events),
            readings=self.readings,
            rejections=self.rejections,
            volume_by_bore_m3=self.volume_watch.at_most,
            metal_below_minimum=cold_metal_share(
                self.setup.metal_minimum_temperature_k,
                self.lowest_pa if isfinite(self.lowest_pa) else None,
                latest.pressure_pa if latest else None,
                latest.line_temperature_k if latest else None,
                latest.upper_temperature_k if latest else None,
            ),
            stop_in_s=self._stop_in_s(),
        )

    def _stop_in_s(self) -> Bounds | None:
        if not self.vent_open or self.stale or self.vent_watch.plateau is not None:
            return None
        return self.fall.reaches(self.stop_pa, self.gauge)

    def first_mass_pa(self) -> float | None:
        """The pressure from which the mass vented is counted [Pa]."""
        return self.highest_pa if isfinite(self.highest_pa) else None


__all__ = ["Item", "Session", "Severity", "Tick", "View", "advance", "begin", "finish", "view"]
