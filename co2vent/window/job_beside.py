"""A job beside the vent: shown over it, fed by it, kept while the window lives."""

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from co2vent.guidance.session import View

if TYPE_CHECKING:
    from co2vent.window.job_desk import JobDesk
    from co2vent.window.page_stack import PageStack


class JobBeside(QObject):
    """The one job of the window."""

    def __init__(self, window: "PageStack") -> None:
        super().__init__(window)
        self._window = window
        self.desk: JobDesk | None = None
        self._behind: QWidget | None = None

    def open(self) -> None:
        """Show the job; a live vent goes on behind it."""
        from co2vent.window.job_desk import JobDesk

        window = self._window
        if self.desk is None:
            self.desk = JobDesk(window.look, parent=window)
            self.desk.back.connect(self.leave)
            window.pages.addWidget(self.desk)
        if window.page is not self.desk:
            self._behind = window.page
        window.pages.setCurrentWidget(self.desk)

    def leave(self) -> None:
        """Show what was there before the job."""
        behind, self._behind = self._behind, None
        self._window.pages.setCurrentWidget(behind or self._window.start_page)

    def observed(self, view: object) -> None:
        """Pass the view of a live vent on to the job."""
        if self.desk is not None and isinstance(view, View):
            self.desk.observe(view)

    def recorded(self, path: object) -> None:
        """Add a recording that has ended to the job."""
        if self.desk is not None and isinstance(path, Path):
            self.desk.attach_log(path)
