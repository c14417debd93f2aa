"""Window tests: a vent to show, a clock moved by hand, and nothing left running afterwards."""

import gc
import threading
from collections.abc import Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QLocale, QTimer
from PySide6.QtWidgets import QApplication

from co2vent.guidance.events import Event, EventKind, Prompt, Severity
from co2vent.guidance.session import View
from co2vent.inference.outcome import Bounds, Charge, HoldAssessment, Instruction, LeakBy
from co2vent.readings.log_file import LogFile, decode_log
from co2vent.readings.reading import Reading, Setup
from co2vent.window import plots_panel  # noqa: F401 - no test is to wait for the library
from co2vent.window.frame import Frame, Mode
from co2vent.window.look import Look
from co2vent.window.main_window import MainWindow
from co2vent.window.replay_page import ReplayPage
from co2vent.window.sentences import speak_units
from co2vent.window.traces import Traces

AMBIENT_PA = 101_325.0
TRIPLE_PA = 517_950.0  # Span & Wagner 1996
STOP_PA = TRIPLE_PA + 103_000.0


class HandClock:
    """A clock that stands until it is moved."""

    def __init__(self) -> None:
        self.now_s = 1000.0

    def __call__(self) -> float:
        return self.now_s

    def advance(self, seconds: float) -> None:
        self.now_s += seconds


def a_hold(**changes: object) -> HoldAssessment:
    """A hold with liquid in it."""
    hold = HoldAssessment(
        number=1,
        start_s=60.0,
        end_s=300.0,
        start_pressure_pa=630_000.0,
        end_pressure_pa=760_000.0,
        charge=Charge.TWO_PHASE,
        leak_by=LeakBy.NONE,
        liquid_kg=Bounds(2.8, 1.9, 4.1),
        dry_ice_kg=Bounds(0.0, 0.0, 0.0),
        detection_limit_kg=0.004,
        time_left_s=120.0,
    )
    return replace(hold, **changes)


def a_view(pressure_pa: float = 760_000.0, at_s: float = 300.0, **changes: object) -> View:
    """A view in the middle of a hold."""
    hold = a_hold()
    view = View(
        setup=Setup(section_volume_m3=0.0145),
        latest=Reading(at_s, pressure_pa, 228.0),
        prompt=Prompt(
            Instruction.KEEP_HOLDING, "Keep holding", "Rising 14 mbar/min.", Severity.CALM, 60.0
        ),
        stale=False,
        age_limit_s=2.0,
        vent_open=False,
        triple_point_pa=TRIPLE_PA,
        stop_pressure_pa=STOP_PA,
        margin_pa=pressure_pa - TRIPLE_PA,
        rate_pa_per_s=23.0,
        seconds_to_stop=None,
        holds=(hold,),
        running_hold=hold,
        vapor_only_since_s=None,
        mass_vented_kg=None,
        minimum_pressure_pa=620_000.0,
        seconds_below_triple_point=0.0,
        seconds_below_triple_point_before_vapor_only=0.0,
        events=(Event(60.0, EventKind.HOLD_STARTED, "hold 1 starts"),),
        readings=300,
        rejections=0,
    )
    return replace(view, **changes)


def a_prompt(instruction: Instruction, severity: Severity) -> Prompt:
    """A prompt without words of its own."""
    return Prompt(instruction, "", "A reason with numbers, 5.21 bar g.", severity, 0.0)


def traces_of(view: View) -> Traces:
    """A falling trace that ends at the view's reading."""
    assert view.latest is not None
    traces = Traces()
    for at in range(301):
        share = at / 300.0
        pressure_pa = 1_900_000.0 + (view.latest.pressure_pa - 1_900_000.0) * share
        traces.append(Reading(view.latest.at_s - 300.0 + at, pressure_pa, 250.0 - 22.0 * share))
    return traces


class StandingFeed:
    """A feed whose view and age are set by the test."""

    def __init__(self, view: View | None, mode: Mode = Mode.LIVE) -> None:
        self.mode = mode
        self.view = view
        self.age_s: float | None = 0.1
        self.recording: bool | None = True
        self.traces = traces_of(view) if view is not None else Traces()
        self.closed = False

    def frame(self) -> Frame:
        return Frame(
            view=self.view, rows=len(self.traces), age_s=self.age_s, source="test",
            recording=self.recording,
        )  # fmt: skip

    def close(self) -> None:
        self.closed = True


def vent_log(rows: int = 900, head: str = "", step_s: float = 1.0) -> bytes:
    """A simulated vent as a log: closed, venting, one hold that rises and flattens."""
    lines = [
        "# simulated: yes", "# section_volume_l: 14.5", "# altitude_m: 120", *head.splitlines(),
        "elapsed_s,pressure_bar_g,line_temperature_degC,vent_valve",
    ]  # fmt: skip
    pressure = 19.0
    for row in range(rows):
        at_s = row * step_s
        if at_s < 30:
            valve = "closed"
        elif pressure > 5.6 and at_s < 400:
            valve, pressure = "open", pressure - 0.08 * step_s
        else:
            valve, pressure = "closed", pressure + 0.004 * step_s * max(0.1, 1 - at_s / 1000)
        line_c = -20.0 - 1.9 * (19.0 - pressure)
        lines.append(f"{at_s:g},{pressure:.3f},{line_c:.1f},{valve}")
    return ("\n".join(lines) + "\n").encode()


def replayed(qtbot, look: Look, log: LogFile) -> tuple[MainWindow, ReplayPage]:
    """A window that replays the log, known to its end and drawn."""
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    window.show()
    page = window.replay(log, "vent.csv")
    qtbot.waitUntil(lambda: page.replay.index.done and page._plots is not None, timeout=20_000)
    return window, page


@pytest.fixture(autouse=True)
def _units_of_the_beginning() -> None:
    """What one test's look chose is not the next one's."""
    speak_units("bar_g", "degC")


@pytest.fixture
def log() -> LogFile:
    """A short simulated vent that has been read."""
    return decode_log(vent_log())


@pytest.fixture
def look(tmp_path) -> Look:
    """Choices kept in the test's own folder."""
    return Look(path=tmp_path / "settings.json")


@pytest.fixture
def clock() -> HandClock:
    """A clock moved by hand."""
    return HandClock()


@pytest.fixture(autouse=True)
def _english() -> Iterator[None]:
    """Numbers with a decimal point, whatever the machine speaks."""
    before = QLocale()
    QLocale.setDefault(QLocale(QLocale.Language.English, QLocale.Country.UnitedKingdom))
    yield
    QLocale.setDefault(before)


@pytest.fixture(autouse=True)
def _garbage_is_collected_here() -> Iterator[None]:
    """As in the program: never in a thread, which may stand still for ever over a widget's end."""
    gc.disable()
    yield
    gc.collect(1)
    gc.enable()


@pytest.fixture(autouse=True)
def _nothing_left_running(qapp: QApplication, request: pytest.FixtureRequest) -> Iterator[None]:
    """Fail a test that leaves a thread or a running timer behind."""
    threads_before = set(threading.enumerate())
    yield
    if "qtbot" not in request.fixturenames:
        return
    for widget in QApplication.topLevelWidgets():
        widget.close()
        widget.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    qapp.processEvents()
    left = [t for t in threading.enumerate() if t not in threads_before and t.is_alive()]
    assert not left, f"threads left running: {left}"
    timers = [t for w in QApplication.topLevelWidgets() for t in w.findChildren(QTimer)]
    assert not [t for t in timers if t.isActive()], "a timer was left running"
