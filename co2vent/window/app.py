"""Starts the program's window, or says in one sentence why there can be none."""

import os
import signal
import sys
import threading
import traceback
from collections.abc import Callable
from pathlib import Path
from types import FrameType, TracebackType

from PySide6.QtCore import QSize, QTimer

from co2vent.errors import SourceUnavailableError
from co2vent.window.app_instance import application
from co2vent.window.languages import choose, install
from co2vent.window.look import Look
from co2vent.window.main_window import MainWindow

HEARTBEAT_MS = 200
NO_DISPLAY = (
    "no display to open the window on; start it in a desktop session, or use `co2vent record` and "
    "`co2vent assess`, which need none"
)

_asked_to_end = threading.Event()  # of this process, for good


def check_display() -> None:
    """Refuse early where Qt would abort the process.

    Raises:
        SourceUnavailableError: there is no display.
    """
    platform = os.environ.get("QT_QPA_PLATFORM", "xcb") or "xcb"
    if not sys.platform.startswith("linux") or not platform.startswith(("xcb", "wayland")):
        return  # drawn without a display server
    if not (os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY")):
        raise SourceUnavailableError(NO_DISPLAY)


def watch_for_faults(window: MainWindow) -> None:
    """Show a fault page for every exception that reaches Qt, and print where it came from."""

    def hook(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        if issubclass(kind, KeyboardInterrupt):
            window.close_now()
            return
        traceback.print_exception(kind, error, trace)
        window.show_fault(error)

    sys.excepthook = hook
    threading.excepthook = lambda fault: traceback.print_exception(
        fault.exc_type, fault.exc_value, fault.exc_traceback
    )


def note_requests_to_end() -> None:
    """Take note of Ctrl-C and of requests to end from now on; the window sees to them.

    A signal may come in the middle of an import, or before Qt waits for events, when closing the
    window would end nothing. Once recording has begun none may kill the process either.
    """

    def take_note(_number: int, _frame: FrameType | None) -> None:
        _asked_to_end.set()

    signal.signal(signal.SIGINT, take_note)
    signal.signal(signal.SIGTERM, take_note)


def close_on_signals(window: MainWindow) -> QTimer:
    """Close the window, and with it the record, on Ctrl-C and on a request to end.

    Return the timer that lets Python see the signal while Qt waits.
    """

    def close_if_asked() -> None:
        if _asked_to_end.is_set():
            window.close_now()

    note_requests_to_end()
    heartbeat = QTimer(window)
    heartbeat.timeout.connect(close_if_asked)
    heartbeat.start(HEARTBEAT_MS)
    return heartbeat


def run(
    first: Callable[[MainWindow], None] | None = None,
    *,
    settings: Path | None = None,
    size: tuple[int, int] | None = None,
    language: str = "",
) -> int:
    """Open the window, let `first` fill it, and run until it is closed; return the exit status."""
    check_display()
    app = application()
    look = Look.load(settings)
    if language:
        look.language = language
    look.language = choose(look.language)
    install(app, look.language)
    window = MainWindow(look)
    watch_for_faults(window)
    close_on_signals(window)
    if size is not None:
        window.resize(*size)
    else:
        # never larger than the screen: without a window manager nothing would shrink it
        room = window.screen().availableSize()
        window.resize(QSize(1280, 800).boundedTo(room))
    window.show()
    if first is not None:
        first(window)
    return app.exec()
