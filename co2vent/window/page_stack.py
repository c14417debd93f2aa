"""The stack of pages of the window: what is in front, going back, faults, and the end."""

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING, Protocol, runtime_checkable

from PySide6.QtGui import QCloseEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QMainWindow,
    QMessageBox,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from co2vent.window.fault_page import FaultPage
from co2vent.window.job_beside import JobBeside
from co2vent.window.live_strip import LiveStrip
from co2vent.window.look import Look
from co2vent.window.vent_page import VentPage

if TYPE_CHECKING:
    from co2vent.window.live_page import LivePage
    from co2vent.window.start_page import StartPage


def close_feed(page: QWidget | None) -> None:
    """Let a page that has a feed let go of it."""
    close = getattr(page, "close_feed", None)
    if close is not None:
        close()


@runtime_checkable
class HoldsRun(Protocol):
    """A page with something that is lost when it is closed."""

    @property
    def would_lose(self) -> bool:
        """Whether there is anything to lose now."""

    def ask_before(self, action: Callable[[], object]) -> None:
        """Ask; do `action` if it may be lost."""


class PageStack(QMainWindow):
    """One page at a time; a live vent and a job may stand behind it."""

    start_page: "StartPage"

    def __init__(self, look: Look) -> None:
        super().__init__()
        self.look = look
        self.pages = QStackedWidget(self)
        self.job = JobBeside(self)
        self._closing = False
        self._agreed: tuple[object, ...] = ()  # pages whose loss was agreed to in this closing
        self.strip = LiveStrip(look, self)
        self.strip.touched.connect(self.show_live)
        back = QShortcut(QKeySequence("Ctrl+L"), self)
        back.activated.connect(self.show_live)
        centre = QWidget(self)
        column = QVBoxLayout(centre)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.strip)
        column.addWidget(self.pages, 1)
        self.setCentralWidget(centre)

    @property
    def page(self) -> QWidget:
        """The page that is shown."""
        return self.pages.currentWidget() or self.start_page

    def show_page(self, page: QWidget) -> None:
        """Put a page in front."""
        self.pages.addWidget(page)
        self.pages.setCurrentWidget(page)

    def go_to_start(self) -> None:
        """Leave the present page and show the start page."""
        page = self.page
        if page in (self.start_page, self.job.desk):
            self.pages.setCurrentWidget(self.start_page)
            return
        self.pages.setCurrentWidget(self.start_page)
        self.pages.removeWidget(page)
        close_feed(page)
        page.deleteLater()
        self.strip.hide()

    def show_fault(self, error: BaseException) -> None:
        """Put a fault page in front of a screen that has failed; a live vent is still recorded."""
        failed = self.page
        if isinstance(failed, FaultPage):
            return
        if isinstance(failed, VentPage):
            failed.stand_still()
        words = f"{type(error).__name__}: {error}"
        page = FaultPage(words, self.look, live=self.live_page() is not None, parent=self)

        def close_fault(then: Callable[[], object]) -> None:
            self.pages.removeWidget(page)
            page.deleteLater()
            self.pages.setCurrentWidget(failed)
            then()

        def again() -> None:
            close_fault(failed.go_on if isinstance(failed, VentPage) else lambda: None)

        page.again.connect(again)
        page.leave.connect(lambda: close_fault(self.go_to_start))
        self.show_page(page)
        page.apply_look()

    def complain(self, sentence: str) -> None:
        """Say what went wrong and what to do."""
        box = QMessageBox(QMessageBox.Icon.Warning, "co2vent", sentence, parent=self)
        box.open()

    def live_page(self) -> "LivePage | None":
        """Return the page of the vent that is live, wherever it stands among the pages."""
        from co2vent.window.live_page import LivePage

        pages = [self.pages.widget(place) for place in range(self.pages.count())]
        return next((page for page in pages if isinstance(page, LivePage)), None)

    def show_live(self) -> None:
        """Bring a live vent to the front: it has an alarm that must be seen."""
        live = self.live_page()
        if live is not None:
            self.pages.setCurrentWidget(live)

    def show_strip(self, page: "LivePage") -> None:
        """Show what a live vent says above the page in front of it."""
        panel = page.panel
        self.strip.show_live(panel.shown, panel.banner.words, in_front=self.page is page)

    def close_now(self) -> None:
        """Close without asking."""
        self._closing = True
        self.close()

    def _close_despite(self, agreed: tuple[object, ...]) -> None:
        """Go on closing: the next page may have something to lose too."""
        self._agreed = agreed
        self.close()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Ask where a vent is live, a class is on or words aren't kept; keep the choices."""
        agreed, self._agreed = self._agreed, ()
        for place in range(0 if self._closing else self.pages.count()):
            page: object = self.pages.widget(place)
            if isinstance(page, HoldsRun) and page.would_lose and page not in agreed:
                event.ignore()
                self.pages.setCurrentIndex(place)
                page.ask_before(partial(self._close_despite, (*agreed, page)))
                return
        for place in range(self.pages.count()):
            close_feed(self.pages.widget(place))
        self.look.save()
        super().closeEvent(event)
