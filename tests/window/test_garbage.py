"""Cyclic garbage that a thread leaves is collected in the window's thread.

A full stop of the screen was seen when a replay's thread collected a picture's signal connection:
Qt's lock there, the interpreter here, each waiting for the other.
"""

import gc
import threading
import time

from PySide6.QtWidgets import QApplication

from co2vent.window import garbage
from co2vent.window.garbage import GarbageTimer
from tests.window.test_process import run


class Ring:
    """A cycle that notes in which thread it ends."""

    def __init__(self, ended_in: list[int]) -> None:
        self.me = self
        self.ended_in = ended_in

    def __del__(self) -> None:
        self.ended_in.append(threading.get_ident())


def _leave_garbage(qapp: QApplication, ended_in: list[int]) -> None:
    def work() -> None:
        for _ in range(100):
            made = [Ring(ended_in) for _ in range(200)]
            del made
            time.sleep(0.005)

    thread = threading.Thread(target=work)
    thread.start()
    while thread.is_alive():
        qapp.processEvents()
        time.sleep(0.002)
    thread.join()


def test_a_threads_garbage_ends_in_the_windows_thread(qapp) -> None:
    ended_in: list[int] = []
    timer = GarbageTimer(qapp)
    timer.start_collecting()
    try:
        _leave_garbage(qapp, ended_in)
    finally:
        timer.stop()
        timer.deleteLater()
    assert len(ended_in) > 10_000
    assert set(ended_in) == {threading.get_ident()}


def test_without_it_the_thread_would_collect_its_own(qapp) -> None:
    """The check above can fail."""
    ended_in: list[int] = []
    gc.enable()
    try:
        _leave_garbage(qapp, ended_in)
    finally:
        gc.disable()
    assert set(ended_in) - {threading.get_ident()}


def test_everything_is_looked_through_only_when_enough_has_grown_old(qapp, monkeypatch) -> None:
    timer = GarbageTimer(qapp)
    keep: list[list[int]] = []

    def grow(rounds: int) -> int:
        before = gc.get_stats()[2]["collections"]
        for _ in range(rounds):
            keep.extend([[k] for k in range(gc.get_threshold()[0] + 100)])
            timer.collect()
        return gc.get_stats()[2]["collections"] - before

    gc.collect()
    assert grow(160) == 1  # the first look
    monkeypatch.setattr(garbage, "GROWN", 100.0)
    assert grow(320) == 0
    monkeypatch.setattr(garbage, "GROWN", 1.0)
    assert grow(320) >= 1
    timer.deleteLater()


def test_the_program_starts_with_it(tmp_path) -> None:
    done = run(
        "import gc\n"
        "from co2vent.window.app_instance import application\n"
        "from co2vent.window.garbage import GarbageTimer\n"
        "app = application()\n"
        "print(gc.isenabled(), app.findChild(GarbageTimer).isActive())\n"
    )
    assert done.stdout.split() == ["False", "True"], done.stderr
