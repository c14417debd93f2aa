"""The prompt as it stands: since when, and said again only when it changes."""

from dataclasses import replace
from math import inf

from co2vent.guidance.event_log import EventLog
from co2vent.guidance.events import EventKind
from co2vent.guidance.prompts import prompt_for
from co2vent.guidance.situation import Situation
from co2vent.inference.outcome import Instruction
from co2vent.readings.reading import Setup
from co2vent.sentence import Sentence

HIGH_SHARE = 0.9  # of the lowest of relief setting, rated pressure and gauge range
WORDS_EVERY_S = 1.0  # in a calm hold the prompt hangs on the fits; so soon its words are renewed
VENTING_EVERY_S = 0.2  # and so soon in a vent: no screen shows more, and a hand needs seconds


def high_limit_pa(setup: Setup) -> float | None:
    """The closed-in pressure [Pa] at which to vent now; `None` where no limit is told."""
    told = (setup.relief_pressure_pa, setup.section_max_pressure_pa, setup.gauge_full_scale_pa)
    limits = [limit for limit in told if limit is not None]
    if not limits:
        return None
    return setup.ambient_pressure_pa + HIGH_SHARE * (min(limits) - setup.ambient_pressure_pa)


class PromptKeeper:
    """Keeps the prompt of the newest situation."""

    __slots__ = ("_due_s", "_log", "prompt")

    def __init__(self, log: EventLog, situation: Situation) -> None:
        self._log = log
        self._due_s = -inf
        self.prompt = prompt_for(situation)

    def is_due(self, at_s: float) -> bool:
        """Whether the words are old enough to be renewed though nothing happened."""
        return at_s >= self._due_s

    def hurry(self) -> None:
        """Something changed that the next reading's prompt must say."""
        self._due_s = -inf

    def refresh(self, situation: Situation, at_s: float, *, sparse: bool) -> None:
        """Ask for the prompt anew. `sparse`: stale between any two readings, which isn't said."""
        self._due_s = at_s + (VENTING_EVERY_S if situation.vent_open else WORDS_EVERY_S) - 1e-9
        old = self.prompt
        new = prompt_for(situation, old.since_s)
        if new.instruction is old.instruction and new.headline == old.headline:
            self.prompt = new
            return
        self.prompt = replace(new, since_s=at_s)
        if sparse and Instruction.NO_DATA in (new.instruction, old.instruction):
            return
        text = Sentence(
            "{instruction}: {headline}. {reason}",
            instruction=new.instruction,
            headline=Sentence(new.headline),
            reason=new.reason,
        )
        self._log.say(at_s, EventKind.PROMPT, text)
        if new.instruction is Instruction.VENT_NOW:
            self._log.say(at_s, EventKind.PRESSURE_HIGH, new.reason)
