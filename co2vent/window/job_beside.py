"""A job beside the vent: shown over it, fed by it once a person gave it the vent, kept while the
window lives.
"""

from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from co2vent.guidance.session import View

if TYPE_CHECKING:
    from co2vent.store.job_file import JobFile
    from co2vent.window.job_desk import JobDesk
    from co2vent.window.page_stack import PageStack


@dataclass(frozen=True, slots=True)
class Answer:
    """What a person said about one vent and one job."""

    job_file: "JobFile"
    vent: QWidget  # its page
    simulated: bool  # what was known of the vent then
    taken: bool


class JobBeside(QObject):
    """The one job of the window."""

    def __init__(self, window: "PageStack") -> None:
        super().__init__(window)
        self._window = window
        self.desk: JobDesk | None = None
        self._behind: QWidget | None = None
        self._answer: Answer | None = None
        self._asked: Answer | None = None  # what is being asked

    def open(self) -> None:
        """Show the job; a live vent goes on behind it."""
        from co2vent.window.job_desk import JobDesk

        window = self._window
        if self.desk is None:
            self.desk = JobDesk(window.look, parent=window)
            self.desk.shows_vent = False  # the window's strip says it above every page
            self.desk.back.connect(self.leave)
            self.desk.page.offer.taken.connect(lambda: self._take(taken=True))
            self.desk.page.offer.left.connect(lambda: self._take(taken=False))
            window.pages.addWidget(self.desk)
        if window.page is not self.desk:
            self._behind = window.page
            if self._answer is not None and not self._answer.taken:
                self._answer = None  # who left a vent out may have thought better of it
        window.pages.setCurrentWidget(self.desk)

    def leave(self) -> None:
        """Show what was there before the job."""
        behind, self._behind = self._behind, None
        self._window.pages.setCurrentWidget(behind or self._window.start_page)

    def observed(self, view: object) -> None:
        """Pass the view of a live vent on to the job, if that vent is the job's; ask otherwise.

        A job may lie open while somebody tries a simulated source: were it taken unasked, the job
        would be practice for good.
        """
        desk, vent = self.desk, self._window.live_page()
        if desk is None or not isinstance(view, View):
            return
        if desk.job_file is None or vent is None:
            desk.page.offer.hide()
            return
        answer, simulated = self._answer, view.setup.simulated
        if answer is not None and (
            answer.job_file is not desk.job_file
            or answer.vent is not vent
            or (simulated and not answer.simulated)  # said for a real one
        ):
            answer = self._answer = None
        if answer is None:
            self._asked = Answer(desk.job_file, vent, simulated, taken=False)
            desk.page.offer.ask(simulated=simulated and not desk.job_file.job.simulated)
            return
        desk.page.offer.hide()
        if answer.taken:
            desk.observe(view)

    def _take(self, *, taken: bool) -> None:
        asked, self._asked = self._asked, None
        if self.desk is None or asked is None or asked.job_file is not self.desk.job_file:
            return
        self.desk.page.offer.hide()
        self._answer = Answer(asked.job_file, asked.vent, asked.simulated, taken)

    def recorded(self, path: object) -> None:
        """Add a recording that has ended to the job, if the vent was the job's."""
        answer, self._answer, self._asked = self._answer, None, None
        desk = self.desk
        if desk is None:
            return
        desk.page.offer.hide()
        if answer is None or not answer.taken or answer.job_file is not desk.job_file:
            return
        if isinstance(path, Path):
            desk.attach_log(path)
