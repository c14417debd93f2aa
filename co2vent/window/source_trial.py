"""The try of a source before the job: begins and ends the test, and keeps its panel up to date."""

import time
from collections.abc import Mapping, Sequence
from typing import Final

from PySide6.QtCore import QObject, Qt, QTimer, Signal

from co2vent.guidance.events import Severity
from co2vent.window.look import Look
from co2vent.window.source_panel import SourcePanel
from co2vent.window.source_test import SourceTest
from co2vent.window.source_words import verdict
from co2vent.window.words import translate
from co2vent.wire.source import Source
from co2vent.wire.source_check import Finding, Heard

AGEING_MS: Final = 200  # how often age and silence are looked at


class SourceTrial(QObject):
    """At most one test at a time. What has ended is shown as ended, never as still going on."""

    turned = Signal(bool)  # a test runs, or none does

    def __init__(self, panel: SourcePanel, look: Look, parent: QObject) -> None:
        super().__init__(parent)
        self._panel = panel
        self._look = look
        self._test: SourceTest | None = None
        self.last: SourceTest | None = None  # stopped; may still be closing its source
        self._source = ""
        self._heard = Heard()
        self._said = ""  # in place of the verdict, once the test has ended
        self._ageing = QTimer(self)
        self._ageing.setInterval(AGEING_MS)
        self._ageing.timeout.connect(self._show)

    @property
    def running(self) -> bool:
        """Whether a source is being tried."""
        return self._test is not None

    def start(
        self,
        source: Source,
        name: str,
        columns: Sequence[str] | None,
        overrides: Mapping[str, str],
    ) -> None:
        """Try `source`, which the person calls `name`, until `stop`."""
        test = SourceTest(source, columns, overrides, before=self.last)
        self._test, self._source = test, name
        self._heard, self._said = Heard(), ""
        queued = Qt.ConnectionType.QueuedConnection  # they come from the thread
        test.heard.connect(self._take_heard, queued)
        test.ended.connect(self._take_end, queued)
        self._panel.forget()
        self._show()
        test.start()
        self._ageing.start()
        self.turned.emit(True)

    def stop(self, said: str = "") -> None:
        """Stop trying; `said` stands in place of the verdict, which holds no longer."""
        test, self._test = self._test, None
        if test is not None:
            self.last = test
            test.stop()
            self._ageing.stop()
            self.say(said or translate("Connect", "The test was stopped; the source is free again"))
            self.turned.emit(False)

    def say(self, said: str) -> None:
        """Put a sentence in place of the verdict."""
        self._said = said
        self._show()

    def forget(self) -> None:
        """What was shown is of another source, or was read in another way."""
        self.stop()
        if self._heard.opened_s is None and not self._said:
            return
        self._heard, self._said = Heard(), ""
        self._panel.forget()
        changed = translate("Connect", "Changed: test the source again")
        self._panel.verdict.say(changed, Severity.CAUTION)

    def _take_heard(self, test: SourceTest, heard: Heard) -> None:
        if test is self._test:
            self._heard = heard

    def _take_end(self, test: SourceTest, failure: str) -> None:
        if test is not self._test:
            return
        now_s = time.monotonic()
        if not failure and self._heard.finding(now_s) is Finding.ENDED:
            failure = verdict(self._heard, now_s, self._source, self._look.units)
        self.stop(failure or translate("Connect", "The test is over; test again"))

    def _show(self) -> None:
        now_s, units = time.monotonic(), self._look.units
        self._panel.show_heard(self._heard, now_s, self._source, units, self._said)
