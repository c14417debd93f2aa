"""A class session around one section: work the valve, predict, go on, reveal, change one thing.

    lesson = Lesson.of(exercise("leak-by"))
    lesson.step_to(600.0)                        # the caller's clock, at any speed
    lesson.predict(Charge.TWO_PHASE, "it boils") # the class commits itself; the trace waits
    lesson.resume()
    shown = lesson.reveal(Charge.VAPOR_ONLY)     # truth, score, what the program said
    next_lesson = lesson.again({"leaks.leak_by_g_per_s": 0.0})   # run beside the first

The truth is not looked at before the reveal. Pure: no clock, no window.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum

from co2vent.guidance.session import Session, Tick, View, advance, begin, view
from co2vent.inference.outcome import Charge
from co2vent.practice.exercises import Exercise
from co2vent.practice.live_section import LiveSection
from co2vent.practice.log_lines import Rows
from co2vent.practice.scenario import Scenario
from co2vent.practice.score import Score, score, true_charge
from co2vent.readings.reading import Reading, Rejection
from co2vent.section_model.simulation import Truth

Changes = Mapping[str, float | bool | str]


class Stage(Enum):
    """Where the lesson stands."""

    RUNNING = "running"
    PREDICTING = "predicting"  # paused until the class has committed itself
    REVEALED = "revealed"


@dataclass(frozen=True, slots=True)
class Prediction:
    """What the class said, and when; `right` is known after the reveal."""

    at_s: float
    charge: Charge
    words: str
    right: bool | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Reveal:
    """What was really inside, beside what the gauge showed and the program said."""

    truth: Truth
    true_charge: Charge
    program: View
    score: Score
    predictions: tuple[Prediction, ...]
    rows: Rows


class Lesson:
    """One run of a class, with the program's own session following it."""

    def __init__(
        self, scenario: Scenario, seed: int = 0, exercise: Exercise | None = None,
        changes: Changes | None = None, earlier: tuple[Rows, ...] = (),
    ) -> None:  # fmt: skip
        """Start a run; `earlier` are the rows of runs to show it beside."""
        self.scenario = scenario
        self.exercise = exercise
        self.changes: Changes = dict(changes or {})
        self.earlier = earlier
        self.stage = Stage.RUNNING
        self.section = LiveSection(scenario, seed)
        self.session: Session = begin(scenario.setup)
        self._predictions: list[Prediction] = []

    @classmethod
    def of(
        cls, exercise: Exercise, changes: Changes | None = None, earlier: tuple[Rows, ...] = ()
    ) -> "Lesson":
        """Return a run of an exercise, with `changes` such as `{"section.insulated": True}`."""
        return cls(exercise.scenario(changes), exercise.seed, exercise, changes, earlier)

    def set_valve(self, opening: float) -> None:
        """Move the vent valve (0..1); a paused or revealed lesson does not move."""
        if self.stage is Stage.RUNNING:
            self.section.set_valve(opening)

    def step_to(self, time_s: float) -> list[Reading | Rejection]:
        """Go on to `time_s` and let the program follow; nothing while paused or revealed."""
        if self.stage is not Stage.RUNNING:
            return []
        items = self.section.step_to(time_s)
        for item in items:
            self.session, _ = advance(self.session, item)
            if isinstance(item, Rejection):
                self.session, _ = advance(self.session, Tick(self.section.time_s))
        return items

    def ask(self) -> None:
        """Pause: the class is to commit itself before the trace goes on."""
        if self.stage is Stage.RUNNING:
            self.stage = Stage.PREDICTING

    def predict(self, charge: Charge, words: str = "") -> None:
        """Note what the class says is inside; the lesson pauses if it did not yet."""
        self.ask()
        self._predictions.append(Prediction(self.section.time_s, charge, words))

    def resume(self) -> None:
        """Go on after a prediction."""
        if self.stage is Stage.PREDICTING:
            self.stage = Stage.RUNNING

    def reveal(self, declared: Charge | None = None) -> Reveal:
        """End the run: say what was inside; `declared` is what the class calls it at the end."""
        if self.section.count == 0:
            self.section.step_to(0.0)
        self.stage = Stage.REVEALED
        rows = self.section.rows
        sheet = score(self.scenario, rows, declared)
        times = rows[:, 0]
        predictions = tuple(
            Prediction(
                one.at_s,
                one.charge,
                one.words,
                one.charge is true_charge(rows[times <= one.at_s + 1e-6], sheet.allowable_kg),
            )
            for one in self._predictions
        )
        return Reveal(
            truth=self.section.truth(),
            true_charge=true_charge(rows, sheet.allowable_kg),
            program=view(self.session),
            score=sheet,
            predictions=predictions,
            rows=rows,
        )

    def again(self, changes: Changes) -> "Lesson":
        """Return a new run with further changes, to be shown beside this one.

        Raises:
            RefusedInputError: a change of something that is not there; a random section has none.
        """
        beside = (*self.earlier, self.section.rows)
        if self.exercise is None:
            return Lesson(self.scenario, self.section.seed, earlier=beside)
        return Lesson.of(self.exercise, {**self.changes, **changes}, beside)


def handout_lines(exercise: Exercise) -> list[str]:
    """Return the handout of an exercise as plain lines: without the answers' numbers."""
    return [
        f"SIMULATED PRACTICE: {exercise.title}",
        "",
        " ".join(exercise.story.split()),
        "",
        f"Look for: {exercise.look_for}",
        f"What a novice concludes: {exercise.wrong}",
        f"To discuss: {exercise.debrief}",
        f"Second test: {exercise.second_test}",
        "",
        f"What it shows: {exercise.expected}",
    ]
