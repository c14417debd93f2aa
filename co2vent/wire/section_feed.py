"""An emulated gauge set on a simulated section, whose vent valve the other end can move."""

from typing import Final

from co2vent.practice.live_section import LiveSection
from co2vent.practice.scenario import Scenario
from co2vent.readings.reading import Reading
from co2vent.wire.emulator_feed import FeedRow

LONGEST_S: Final = 12.0 * 3600.0  # then the exercise is over


class SectionFeed:
    """The rows of a `LiveSection`, as they come due."""

    def __init__(self, scenario: Scenario, seed: int = 0, longest_s: float = LONGEST_S) -> None:
        """Start the section, its vent valve closed."""
        self._section = LiveSection(scenario, seed)
        self._longest_s = longest_s
        self.preamble: tuple[str, ...] = tuple(self._section.log_header_lines())
        self.setup = scenario.setup
        self.interval_s = scenario.setting.gauge.period_s
        self.ended = False

    def rows_until(self, elapsed_s: float) -> list[FeedRow]:
        """Step the section to `elapsed_s`; return the rows of the way."""
        first = self._section.count
        items = self._section.step_to(min(elapsed_s, self._longest_s))
        self.ended = elapsed_s >= self._longest_s
        texts = self._section.log_lines(first)
        return [
            FeedRow(elapsed_s, text, item if isinstance(item, Reading) else None)
            for text, item in zip(texts, items, strict=True)
        ]

    def set_valve(self, is_open: bool) -> None:
        """Open or close the vent valve."""
        self._section.set_valve(1.0 if is_open else 0.0)
