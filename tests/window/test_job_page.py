"""The job in the window: touched like a technician would, kept in its folder, reopened."""

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from shutil import which

import pytest
from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from co2vent.guidance.job import JobHead, Observed, Person, StepState
from co2vent.guidance.procedure import VENTING_CONFIRMATIONS
from co2vent.store.job_record import read_job
from co2vent.window.job_desk import JobDesk
from co2vent.window.job_parts import ConfirmRow, EntryRow, GateRow, ValveRow
from co2vent.window.keys import Key
from co2vent.window.look import Look
from co2vent.window.theme import PLANT_ROOM

HEAD = JobHead(section="Strainer 4", people=(Person(name="Ada Berg", role="technician"),))


class Clock:
    def __init__(self) -> None:
        self.now = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)

    def __call__(self) -> datetime:
        self.now += timedelta(seconds=1)
        return self.now


@pytest.fixture
def look(tmp_path: Path) -> Look:
    return Look(path=tmp_path / "settings.json")


@pytest.fixture
def desk(qtbot: QtBot, look: Look, tmp_path: Path) -> Iterator[JobDesk]:
    desk = JobDesk(look, tmp_path, clock=Clock())
    qtbot.addWidget(desk)
    desk.resize(1024, 600)
    desk.show()
    yield desk
    desk.close()


def rows(desk: JobDesk, kind: type) -> list:  # type: ignore[type-arg]
    return [row for row in desk.page._rows if isinstance(row, kind)]


def touch(widget: QPushButton | Key) -> None:
    assert widget.isEnabled()
    QTest.mouseClick(widget, Qt.MouseButton.LeftButton)


def write_line(desk: JobDesk, key: str, words: str) -> None:
    touch(desk.page.keys[key])
    desk.page.line.setText(words)
    QTest.keyClick(desk.page.line, Qt.Key.Key_Return)


def to_protect(desk: JobDesk) -> None:
    desk.begin(HEAD, str(desk.start.fields["folder"].text()))
    for row in rows(desk, EntryRow):
        if row.entry.required:
            row.field.setText("fuse F12 out")
            touch(row.key)
    touch(desk.page.keys["done"])
    (valves,) = rows(desk, ValveRow)
    valves.valve.setText("V-101")
    touch(valves.key)
    for row in rows(desk, ConfirmRow):
        touch(row.key)
    touch(desk.page.keys["done"])
    write_line(desk, "skip", "proved this morning")


def test_a_job_is_begun_from_the_form_and_kept_as_it_goes(desk: JobDesk, tmp_path: Path) -> None:
    desk.start.fields["section"].setText("Strainer 4 <b>")
    touch(desk.start.keys[2])
    assert "at least one name" in desk.start.message.text()
    desk.start.fields["technician"].setText("Ada Berg")
    touch(desk.start.keys[2])
    assert desk.currentWidget() is desk.page
    assert desk.job_file is not None
    record = read_job(desk.job_file.record.folder)
    assert record.folder.parent == tmp_path
    assert record.job.head.section == "Strainer 4 <b>"


def test_the_five_points_gate_the_way_to_the_vent(desk: JobDesk) -> None:
    to_protect(desk)
    points = rows(desk, ConfirmRow)
    assert [row.confirmation.id for row in points] == list(VENTING_CONFIRMATIONS)
    (gate,) = rows(desk, GateRow)
    gate.field.setText("520")
    touch(gate.key)
    for row in points:
        assert not desk.page.keys["done"].isEnabled()
        touch(row.key)
    assert desk.page.keys["done"].isEnabled()
    touch(desk.page.keys["done"])
    assert desk.job_file is not None
    assert desk.job_file.job.steps[3].state is StepState.DONE


def test_a_confirmation_is_taken_back_with_a_reason(desk: JobDesk) -> None:
    to_protect(desk)
    first = rows(desk, ConfirmRow)[0]
    touch(first.key)
    touch(first.key)
    desk.page.line.setText("meter battery low")
    QTest.keyClick(desk.page.line, Qt.Key.Key_Return)
    assert desk.job_file is not None
    assert "co2_meter" not in desk.job_file.job.confirmed
    assert any("battery" in event.text for event in desk.job_file.job.history)


def test_nothing_is_done_without_a_name(desk: JobDesk) -> None:
    to_protect(desk)
    desk.page.person.clear()
    touch(rows(desk, ConfirmRow)[0].key)
    assert "name first" in desk.page.lacks.text()
    assert desk.job_file is not None
    assert "co2_meter" not in desk.job_file.job.confirmed


def test_what_is_being_typed_stays_when_readings_come(desk: JobDesk) -> None:
    to_protect(desk)
    (gate,) = rows(desk, GateRow)
    gate.field.setText("52")
    assert desk.job_file is not None
    desk.page.show_job(desk.job_file.job)
    assert rows(desk, GateRow)[0].field.text() == "52"


def test_a_refusal_is_said_in_words(desk: JobDesk) -> None:
    to_protect(desk)
    (gate,) = rows(desk, GateRow)
    gate.field.setText("9000")
    touch(gate.key)
    assert "does not meet" in desk.page.lacks.text()


def test_a_kill_and_the_job_opens_where_it_stopped(
    desk: JobDesk, qtbot: QtBot, look: Look, tmp_path: Path
) -> None:
    to_protect(desk)
    assert desk.job_file is not None
    again = JobDesk(look, tmp_path, clock=Clock())
    qtbot.addWidget(again)
    again.open_job(str(desk.job_file.record.folder))
    assert again.page.title.text().startswith("4/21")


def test_practice_can_not_be_signed_and_says_so(desk: JobDesk) -> None:
    desk.begin(
        JobHead(section="S", people=HEAD.people, simulated=True), desk.start.fields["folder"].text()
    )
    assert desk.page.banner.isVisible()
    assert not desk.page.keys["sign"].isEnabled()
    desk.sign("Ada", "technician")
    assert "practice" in desk.page.lacks.text()


@pytest.mark.skipif(which("pdftotext") is None, reason="poppler-utils not here")
def test_signing_and_the_report(desk: JobDesk) -> None:
    import subprocess

    to_protect(desk)
    write_line(desk, "sign", "technician")
    assert desk.page.lacks.text().startswith("Signed, digest")
    touch(desk.page.keys["report"])
    assert desk.job_file is not None
    (report,) = desk.job_file.record.folder.glob("report-*.pdf")
    words = subprocess.run(
        ["pdftotext", "-layout", str(report), "-"], capture_output=True, check=True, text=True
    ).stdout
    assert "Ada Berg" in words
    assert desk.job_file.digest[:16] in words


def test_a_test_is_judged_from_its_log(desk: JobDesk, tmp_path: Path) -> None:
    to_protect(desk)
    log = tmp_path / "vac.csv"
    rows = [f"{at_s},0.001,{400 + 8 * (at_s % 3)},15.0" for at_s in range(0, 900, 2)]
    head = "elapsed_s,pressure_bar_a,vacuum_micron,line_temperature_degC"
    log.write_text("\n".join([head, *rows]) + "\n", encoding="utf-8")
    desk.judge("vacuum", log)
    desk.judge("vacuum", tmp_path / "none.csv")
    assert "none.csv" in desk.page.lacks.text()
    assert desk.job_file is not None
    (result,) = desk.job_file.job.tests
    assert (result.verdict, result.by, result.log) == ("tight_and_dry", "Ada Berg", "vac.csv")
    assert (desk.job_file.record.folder / "vac.csv").is_file()


def test_live_readings_reach_the_gates_and_practice_is_known(desk: JobDesk) -> None:
    from co2vent.guidance.session import begin, view
    from co2vent.readings.reading import Reading, Setup

    to_protect(desk)
    session = begin(Setup(simulated=True))
    session.take(Reading(0.0, 8e5, room_co2_ppm=480.0))
    desk.observe(view(session))
    assert "480 ppm" in rows(desk, GateRow)[0].state.text()
    # 8 bar a at sea level is 6.99 bar g, 2.82 bar above 5.18 bar a
    assert "6.99" in desk.page.vent.text()
    assert "+2.82" in desk.page.vent.text()
    desk.page.vent._fell_silent()
    assert "mechanical gauge" in desk.page.vent.text()
    assert desk.job_file is not None
    assert desk.job_file.job.simulated
    assert desk.page.banner.isVisible()
    assert read_job(desk.job_file.record.folder).job.simulated


def test_a_job_is_put_away_and_another_begun(desk: JobDesk) -> None:
    to_protect(desk)
    touch(desk.page.keys["close"])
    assert desk.currentWidget() is desk.start
    desk.begin(
        JobHead(section="Other", people=(Person(name="Bo"),)), desk.start.fields["folder"].text()
    )
    assert desk.page.title.text().startswith("1/21")
    assert desk.page.person.text() == "Bo"


def test_gates_show_readings_and_their_loss(desk: JobDesk) -> None:
    to_protect(desk)
    assert desk.job_file is not None
    now = desk._clock()
    job_file = desk.job_file
    job_file.advance(Observed(job_file.at_s(now), False, {"room_co2": 450.0}), now)
    desk.page.show_job(job_file.job)
    assert "450 ppm" in rows(desk, GateRow)[0].state.text()
    job_file.advance(Observed(job_file.at_s(now) + 1, True, {}), now)
    desk.page.show_job(job_file.job)
    assert "no fresh reading" in rows(desk, GateRow)[0].state.text()


@pytest.mark.parametrize("size", [(1024, 600), (600, 1024), (1920, 1080)])
def test_everything_to_touch_is_large_enough(
    desk: JobDesk, look: Look, size: tuple[int, int]
) -> None:
    """15 mm for a gloved finger (common practice, no source), as the sizes compute it."""
    to_protect(desk)
    desk.resize(*size)
    desk.apply_look()
    QCoreApplication.processEvents()
    least = look.sizes(desk.page).target_px
    parts = [
        part
        for kind in (QPushButton, QLineEdit, Key)
        for part in desk.page.findChildren(kind)
        if part.isVisible()
    ]
    assert len(parts) > 10
    for part in parts:
        assert part.height() >= least, part.accessibleName()


def test_the_other_theme_is_taken(desk: JobDesk, look: Look) -> None:
    to_protect(desk)
    look.palette = PLANT_ROOM
    desk.apply_look()
    assert PLANT_ROOM.caution.ground in desk.page._rows[1].words.styleSheet()  # type: ignore[attr-defined]
