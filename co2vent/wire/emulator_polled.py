"""An emulated instrument that speaks only when asked: a query and its answer on a device."""

import json
import tempfile
from pathlib import Path
from typing import Final

from co2vent.readings.log_writer import metadata_from_setup, one_line
from co2vent.readings.reading import Reading
from co2vent.units import PRESSURE_UNITS, temperature_from_k
from co2vent.wire.emulator_feed import Feed
from co2vent.wire.emulator_pty import PtyOutlet
from co2vent.wire.polling import DEFAULT_PERIOD_S, SHORTEST_PERIOD_S

QUERY: Final = "read?"
_PATTERN: Final = r"S=(?P<s>\S+) P=(?P<p>\S+) T=(?P<t>\S+)"
_NO_VALUE: Final = "----"


class PolledOutlet(PtyOutlet):
    """A pseudo-terminal on which `READ?` is answered with the newest row."""

    def __init__(self, feed: Feed, speed: float = 1.0) -> None:
        """Speak the units of `feed`; the dialogue's file is kept until it is closed."""
        super().__init__()
        self._feed = feed
        self._newest: Reading | None = None
        self._folder = tempfile.TemporaryDirectory(prefix="co2vent-emulate-")
        path = Path(self._folder.name) / "dialogue.toml"
        path.write_text(_dialogue(feed), encoding="utf-8")
        period_s = max(SHORTEST_PERIOD_S, min(DEFAULT_PERIOD_S, 0.4 * feed.interval_s / speed))
        self.source = f"polled:{self.device}?map={path}&period_s={period_s:.3g}"

    def put(self, texts: list[str], newest: Reading | None) -> None:
        """Show `newest` to the next query; lines are not sent unasked."""
        self._newest = newest or self._newest

    def take_commands(self) -> list[str]:
        """Answer the queries that came; return `open` and `closed`."""
        words = super().take_commands()
        for _ in range(words.count(QUERY)):
            if self._newest is not None:
                super().put([self._answer(self._newest)], None)
        return [word for word in words if word != QUERY]

    def close(self) -> None:
        """Unplug it."""
        super().close()
        self._folder.cleanup()

    def _answer(self, reading: Reading) -> str:
        setup = self._feed.setup
        unit = PRESSURE_UNITS[setup.pressure_unit]
        shown_pa = reading.pressure_pa + setup.zero_offset_pa
        pressure = unit.from_absolute_pa(shown_pa, setup.ambient_pressure_pa)
        line_k = reading.line_temperature_k
        line = _NO_VALUE if line_k is None else f"{temperature_from_k(line_k, 'degC'):.2f}"
        return f"S={reading.at_s:.3f} P={pressure:.4f} T={line}"


def _dialogue(feed: Feed) -> str:
    values = {**metadata_from_setup(feed.setup), "simulated": "yes"}
    metadata = "".join(f"{key} = {json.dumps(one_line(value))}\n" for key, value in values.items())
    columns = (
        ("s", "elapsed_s"),
        ("p", f"pressure_{feed.setup.pressure_unit}"),
        ("t", "line_temperature_degC"),
    )
    channels = "".join(f'\n[[channel]]\nfield = "{f}"\ncolumn = "{c}"\n' for f, c in columns)
    head = f"query = \"READ?\\r\\n\"\npattern = '{_PATTERN}'\n"
    return f"{head}\n[metadata]\n{metadata}{channels}"
