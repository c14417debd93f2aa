"""One run of an exercise: the section, what the core makes of it, and what the trainee said.

No Qt and no clock of its own; the truth stays inside until it is asked for.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Final

from co2vent.guidance.session import Session, View, advance, begin, view
from co2vent.inference.outcome import Charge
from co2vent.practice.exercises import Exercise, random_scenario
from co2vent.practice.live_section import LiveSection
from co2vent.practice.scenario import Scenario
from co2vent.practice.score import Score, score
from co2vent.readings.reading import Reading
from co2vent.section_model.simulation import Truth
from co2vent.window.blind import blinded, hidden_name
from co2vent.window.frame import Frame, Mode
from co2vent.window.sentences import spoken
from co2vent.window.traces import Traces
from co2vent.window.words import translate

SPEEDS: Final = (1.0, 2.0, 5.0, 10.0, 30.0, 60.0, 120.0, 300.0)
LONGEST_TICK_S: Final = 0.5  # a window that was held up does not jump ahead
Change = float | bool | str


@dataclass(frozen=True, slots=True, kw_only=True)
class Prediction:
    """What the class committed to, and when."""

    at_s: float
    charge: Charge | None  # None: cannot be told yet


@dataclass(frozen=True, slots=True, kw_only=True)
class Task:
    """What is to be run: an exercise with changes, or a random section."""

    exercise: Exercise | None
    seed: int
    changes: Mapping[str, Change]

    @property
    def title(self) -> str:
        """The name on the screen."""
        if self.exercise is None:
            return translate("Class", "random section {seed}").format(seed=self.seed)
        return spoken(self.exercise.title)

    def scenario(self) -> Scenario:
        """Return the scenario.

        Raises:
            RefusedInputError: a change that cannot be.
        """
        if self.exercise is None:
            return random_scenario(self.seed)
        return self.exercise.scenario(self.changes)


class ClassRun:
    """The feed of the class page."""

    mode = Mode.CLASS

    def __init__(self, task: Task, clock: Callable[[], float]) -> None:
        """Build the section and take its first reading (slow the first time: compiles)."""
        self.task = task
        self.scenario = task.scenario()
        self.section = LiveSection(self.scenario, seed=task.seed)
        self.traces = Traces()
        self.predictions: list[Prediction] = []
        self.revealed = False
        self.blind = True
        self.paused = True
        self.speed = 10.0
        self._clock = clock
        self._ticked_s = clock()
        self._position_s = 0.0
        self._session: Session = begin(self.scenario.setup)
        self.view: View = view(self._session)
        self._step_to(0.0)

    def _step_to(self, position_s: float) -> None:
        items = self.section.step_to(position_s)
        for item in items:
            self._session, _events = advance(self._session, item)
            if isinstance(item, Reading):
                self.traces.append(item)
        if items:
            self.view = view(self._session)

    def frame(self) -> Frame:
        """Return the present moment; unless paused, time goes on."""
        now_s = self._clock()
        if not self.paused:
            passed_s = min(now_s - self._ticked_s, LONGEST_TICK_S)
            self._position_s += passed_s * self.speed
            self._step_to(self._position_s)
        self._ticked_s = now_s
        latest = self.view.latest
        hidden = self.blind and not self.revealed
        return Frame(
            view=blinded(self.view) if hidden else self.view,
            blind=hidden,
            rows=len(self.traces),
            age_s=None if latest is None else max(0.0, self._position_s - latest.at_s),
            source=hidden_name() if hidden else self.task.title,
        )

    @property
    def now_s(self) -> float:
        """The time [s] of the exercise."""
        return self._position_s

    @property
    def opening(self) -> float:
        """How far the vent valve is open, 0 to 1."""
        return self.section.valve

    def move_valve(self, opening: float) -> None:
        """Move the vent valve."""
        self.section.set_valve(opening)

    def predict(self, charge: Charge | None) -> Prediction | None:
        """Commit to what is inside now; once the truth was shown nothing is taken any more."""
        if self.revealed:
            return None
        made = Prediction(at_s=self._position_s, charge=charge)
        self.predictions.append(made)
        return made

    @property
    def declared(self) -> Charge | None:
        """What the class said last."""
        return self.predictions[-1].charge if self.predictions else None

    def faster(self) -> None:
        """Take the next higher speed."""
        self.speed = min((s for s in SPEEDS if s > self.speed), default=SPEEDS[-1])

    def slower(self) -> None:
        """Take the next lower speed."""
        self.speed = max((s for s in SPEEDS if s < self.speed), default=SPEEDS[0])

    # --- the reveal --------------------------------------------------------------------------

    def truth(self) -> Truth:
        """Return what is really inside now."""
        return self.section.truth()

    def score(self) -> Score:
        """Return the score sheet as things stand."""
        return score(self.scenario, self.section.rows, self.declared)

    def log_text(self) -> str:
        """Return the run as a readings log that says it is simulated."""
        return "\n".join([*self.section.log_header_lines(), *self.section.log_lines()]) + "\n"

    def close(self) -> None:
        """Nothing to stop: the section runs in the caller's time."""
