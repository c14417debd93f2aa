"""The job in the window: touched like a technician would, kept in its folder, reopened."""

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from shutil import which

import pytest
from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from co2vent.guidance.job import JobHead, Observed, Person, StepState
from co2vent.guidance.job_items import TestResult
from co2vent.guidance.procedure import VENTING_CONFIRMATIONS
from co2vent.guidance.procedure_text import default_procedure_text
from co2vent.guidance.session import View, begin, view
from co2vent.readings.reading import Reading, Setup
from co2vent.store.job_record import read_job
from co2vent.window.job_desk import JobDesk
from co2vent.window.job_gate_rows import GateRow
from co2vent.window.job_parts import ConfirmRow, EntryRow, ValveRow, WordsRow
from co2vent.window.keys import Key
from co2vent.window.languages import install
from co2vent.window.look import Look
from co2vent.window.main_window import MainWindow
from co2vent.window.page_stack import HoldsRun
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
    return [row for row in desk.page.step_view.rows if isinstance(row, kind)]


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
    assert "name first" in desk.page.answer.text()
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
    assert "does not meet" in desk.page.answer.text()


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
    assert "practice" in desk.page.answer.text()


@pytest.mark.skipif(which("pdftotext") is None, reason="poppler-utils not here")
def test_signing_and_the_report(desk: JobDesk) -> None:
    import subprocess

    to_protect(desk)
    write_line(desk, "sign", "technician")
    assert desk.page.answer.text().startswith("Signed, digest")
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
    rows = [f"{at_s},0.001,{400 + at_s // 15 + at_s % 3},15.0" for at_s in range(0, 900, 2)]
    head = "elapsed_s,pressure_bar_a,vacuum_micron,line_temperature_degC"
    log.write_text("\n".join([head, *rows]) + "\n", encoding="utf-8")
    desk.judge("vacuum", log)
    desk.judge("vacuum", tmp_path / "none.csv")
    assert "none.csv" in desk.page.answer.text()
    assert desk.job_file is not None
    (result,) = desk.job_file.job.tests
    assert (result.verdict, result.by, result.log) == ("tight_and_dry", "Ada Berg", "vac.csv")
    assert (desk.job_file.record.folder / "vac.csv").is_file()


def test_live_readings_reach_the_gates_and_practice_is_known(desk: JobDesk) -> None:
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
    assert PLANT_ROOM.caution.ground in desk.page.step_view.rows[1].words.styleSheet()  # type: ignore[attr-defined]


def gate_row(desk: JobDesk) -> GateRow:
    (row,) = rows(desk, GateRow)
    assert isinstance(row, GateRow)
    return row


def read_off(desk: JobDesk, words: str) -> None:
    gate_row(desk).field.setText(words)
    touch(gate_row(desk).key)


def a_vent(at_s: float = 0.0, simulated: bool = False, **measured: float) -> View:
    session = begin(Setup(simulated=simulated))
    session.take(Reading(at_s, 8e5, **measured))
    return view(session)


def a_log(path: Path, simulated: bool) -> Path:
    rows = [f"{at_s},0.001,{400 + at_s // 15 + at_s % 3},15.0" for at_s in range(0, 900, 2)]
    head = ["# simulated: yes"] if simulated else []
    head.append("elapsed_s,pressure_bar_a,vacuum_micron,line_temperature_degC")
    path.write_text("\n".join([*head, *rows]) + "\n", encoding="utf-8")
    return path


def test_a_bad_value_read_off_takes_the_gate_back(desk: JobDesk) -> None:
    to_protect(desk)
    for row in rows(desk, ConfirmRow):
        touch(row.key)
    read_off(desk, "400")
    assert desk.page.keys["done"].isEnabled()
    read_off(desk, "40000")
    assert "40000 ppm does not meet" in desk.page.answer.text()
    assert "40000 ppm (Ada Berg)" in gate_row(desk).state.text()
    assert not desk.page.keys["done"].isEnabled()
    assert desk.job_file is not None
    kept = (desk.job_file.record.folder / "job.jsonl").read_text(encoding="utf-8")
    assert "40000" in kept
    read_off(desk, "-50")
    assert "is no reading of" in desk.page.answer.text()
    assert not desk.page.keys["done"].isEnabled()
    assert gate_row(desk).field.text() == "-50", "it was not taken: it can be mended"
    read_off(desk, "much")
    assert "plain number" in desk.page.answer.text()


def test_the_second_job_of_a_window_has_its_gates_looked_at(desk: JobDesk) -> None:
    to_protect(desk)
    clock = desk._clock
    assert isinstance(clock, Clock)
    clock.now += timedelta(hours=2)
    desk.observe(a_vent(room_co2_ppm=470.0))
    touch(desk.page.keys["close"])
    to_protect(desk)
    desk.observe(a_vent(room_co2_ppm=480.0))
    assert "480 ppm" in gate_row(desk).state.text()


def test_words_stay_until_they_are_kept(desk: JobDesk) -> None:
    desk.begin(HEAD, str(desk.start.fields["folder"].text()))
    page = desk.page
    page.person.clear()
    entry = rows(desk, EntryRow)[-1]
    entry.field.setText("fuse F12 out")
    touch(entry.key)
    write_line(desk, "note", "frost at the low point")
    assert "name first" in page.answer.text()
    assert (entry.field.text(), page.line.text()) == ("fuse F12 out", "frost at the low point")
    assert page.line.isVisible()
    page.person.setText("Ada Berg")
    touch(entry.key)
    QTest.keyClick(page.line, Qt.Key.Key_Return)
    assert (entry.field.text(), page.line.text(), page.line.isVisible()) == ("", "", False)
    assert desk.job_file is not None
    job = desk.job_file.job
    assert [one.text for one in job.notes] == ["frost at the low point"]
    assert job.written["warm_parts"][-1].value == "fuse F12 out"
    assert not desk.would_lose


def test_a_valves_words_stay_without_a_name(desk: JobDesk) -> None:
    desk.begin(HEAD, str(desk.start.fields["folder"].text()))
    write_line(desk, "skip", "as on Monday")
    desk.page.person.clear()
    (valves,) = rows(desk, ValveRow)
    for field, words in zip(valves.fields(), ("V-101", "7", "tag 7"), strict=True):
        field.setText(words)
    touch(valves.key)
    assert [field.text() for field in valves.fields()] == ["V-101", "7", "tag 7"]
    desk.page.person.setText("Ada Berg")
    touch(valves.key)
    assert [field.text() for field in valves.fields()] == ["", "", ""]
    assert desk.job_file is not None
    assert desk.job_file.job.valves_shut == ("V-101",)


def test_a_reason_that_is_refused_stays_in_the_line(desk: JobDesk) -> None:
    to_protect(desk)
    touch(rows(desk, ConfirmRow)[0].key)
    touch(rows(desk, ConfirmRow)[0].key)
    desk.page.line.setText("no")
    QTest.keyClick(desk.page.line, Qt.Key.Key_Return)
    assert "give a reason" in desk.page.answer.text()
    assert (desk.page.line.text(), desk.page.line.isVisible()) == ("no", True)


def test_a_step_does_not_end_over_words_that_are_not_kept(desk: JobDesk) -> None:
    desk.begin(HEAD, str(desk.start.fields["folder"].text()))
    permit, parts = rows(desk, EntryRow)
    parts.field.setText("fuse F12 out")
    touch(parts.key)
    permit.field.setText("P-77")
    touch(desk.page.keys["done"])
    assert desk.page.title.text().startswith("1/21")
    assert "P-77" in desk.page.answer.text()
    write_line(desk, "skip", "day shift did it")
    assert desk.page.title.text().startswith("1/21")
    touch(permit.key)
    touch(desk.page.keys["done"])
    assert desk.page.title.text().startswith("2/21")


def test_quitting_asks_where_words_are_not_kept(qtbot: QtBot, look: Look, tmp_path: Path) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    with qtbot.waitActive(window):
        window.show()
    window.open_job()
    desk = window.job.desk
    assert desk is not None
    desk.begin(HEAD, str(tmp_path))
    rows(desk, EntryRow)[0].field.setText("P-77")
    assert isinstance(desk, HoldsRun)
    assert not window.close()
    assert desk.currentWidget() is desk.confirm
    QTest.keyClick(desk.confirm, Qt.Key.Key_Escape)
    assert desk.currentWidget() is desk.page
    assert rows(desk, EntryRow)[0].field.text() == "P-77"
    touch(desk.page.keys["close"])
    assert desk.currentWidget() is desk.confirm, "another job would take the words too"
    touch(desk.confirm.keys[1])
    assert not window.close()
    touch(desk.confirm.keys[0])
    assert not window.isVisible()


def test_each_page_is_asked_before_the_window_closes(qtbot: QtBot, look: Look) -> None:
    """A vent that may end says nothing of the words of the job behind it."""

    class Asked(QWidget):
        would_lose = True

        def ask_before(self, action: Callable[[], object]) -> None:
            self.then = action

    window = MainWindow(look)
    qtbot.addWidget(window)
    window.show()
    first, second = Asked(), Asked()
    for page in (first, second):
        window.show_page(page)
    window.close()
    first.then()
    assert window.isVisible()
    assert window.page is second
    window.close()
    assert window.page is first, "who went on is asked again"
    first.then()
    second.then()
    assert not window.isVisible()


def test_an_answer_stays_while_readings_come(desk: JobDesk) -> None:
    to_protect(desk)
    write_line(desk, "sign", "technician")
    assert not desk.page.line.isVisible()
    for at_s in range(3):
        desk.observe(a_vent(at_s, room_co2_ppm=480.0))
    assert desk.page.answer.text().startswith("Signed, digest")
    assert desk.page.answer.isVisible()
    assert desk.page.waits.words.text().startswith("6 missing. First: CO2 meter on")
    touch(rows(desk, ConfirmRow)[0].key)
    assert not desk.page.answer.isVisible(), "the next touch has its own answer"


def test_what_was_left_out_does_not_hide_what_the_joint_waits_for(desk: JobDesk) -> None:
    to_protect(desk)
    at_step(desk, "warm")
    write_line(desk, "skip", "warm already")
    assert desk.page.title.text().startswith("13/21")
    assert "Left out before the joint is broken" in desk.page.answer.text()
    assert "supervisor" in desk.page.waits.words.text()
    assert not desk.page.keys["skip"].isEnabled()


def test_a_simulated_log_chosen_by_mistake_leaves_the_job_real(
    desk: JobDesk, tmp_path: Path
) -> None:
    to_protect(desk)
    assert desk.job_file is not None
    desk.judge("vacuum", a_log(tmp_path / "practice.csv", simulated=True))
    assert "this log is simulated and the job is not" in desk.page.answer.text()
    desk.attach_log(tmp_path / "practice.csv")
    job = desk.job_file.job
    assert (job.simulated, job.logs, job.tests) == (False, (), ())
    assert desk.page.keys["sign"].isEnabled()
    assert not (desk.job_file.record.folder / "practice.csv").exists()
    desk.judge("vacuum", a_log(tmp_path / "real.csv", simulated=False))
    assert len(desk.job_file.job.tests) == 1


def test_a_simulated_log_is_welcome_in_practice(desk: JobDesk, tmp_path: Path) -> None:
    desk.begin(replace(HEAD, simulated=True), str(tmp_path / "jobs"))
    desk.judge("vacuum", a_log(tmp_path / "practice.csv", simulated=True))
    assert desk.job_file is not None
    assert len(desk.job_file.job.tests) == 1


def at_step(desk: JobDesk, identity: str) -> None:
    """Show a job whose running step is `identity`, all before it as it is in the file."""
    assert desk.job_file is not None
    job = desk.job_file.job
    index = next(i for i, step in enumerate(job.procedure.steps) if step.id == identity)
    records = list(job.steps)
    records[index] = records[job.current]
    desk.job_file.job = replace(job, steps=tuple(records), current=index)
    desk.page.show_job(desk.job_file.job)


def test_escape_is_back_everywhere(desk: JobDesk, qtbot: QtBot) -> None:
    for field in (desk.start, desk.start.fields["section"]):
        with qtbot.waitSignal(desk.back, timeout=1000):
            QTest.keyClick(field, Qt.Key.Key_Escape)
    to_protect(desk)
    touch(desk.page.keys["note"])
    desk.page.line.setText("half a wo")
    with qtbot.assertNotEmitted(desk.back):
        QTest.keyClick(desk.page.line, Qt.Key.Key_Escape)
    assert not desk.page.line.isVisible()
    assert desk.would_lose
    touch(desk.page.keys["note"])
    assert desk.page.line.text() == "half a wo", "and it is there again"
    QTest.keyClick(desk.page.line, Qt.Key.Key_Escape)
    with qtbot.waitSignal(desk.back, timeout=1000):
        QTest.keyClick(desk.page, Qt.Key.Key_Escape)


def test_a_step_is_ended_and_walked_by_keyboard(desk: JobDesk) -> None:
    desk.begin(HEAD, str(desk.start.fields["folder"].text()))
    entry = rows(desk, EntryRow)[-1]
    entry.field.setFocus()
    QTest.keyClicks(entry.field, "fuse F12 out")
    QTest.keyClick(entry.field, Qt.Key.Key_Return)
    QTest.keyClick(entry.field, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert desk.page.title.text().startswith("2/21")
    QCoreApplication.processEvents()
    assert desk.focusWidget() is desk.page.step_view, "and not the field of the name"
    QTest.keyClick(desk.focusWidget(), Qt.Key.Key_Tab)
    (valves,) = rows(desk, ValveRow)
    assert desk.focusWidget() is valves.valve


def test_the_list_of_steps_follows_the_running_one(desk: JobDesk) -> None:
    to_protect(desk)
    steps = desk.page.steps
    for identity in ("record", "brief", "open"):
        at_step(desk, identity)
        QCoreApplication.processEvents()
        shown = steps.verticalScrollBar().value()
        place = steps.running_place()
        assert shown <= place.top()
        assert place.bottom() <= shown + steps.viewport().height(), identity
    assert steps.verticalScrollBar().maximum() > 0, "else nothing was shown"


def test_a_gate_that_a_test_decides_shows_its_verdict(desk: JobDesk) -> None:
    to_protect(desk)
    assert desk.job_file is not None
    at_step(desk, "standing_test")
    assert "not judged yet" in gate_row(desk).state.text()
    assert "reading" not in gate_row(desk).state.text()
    for verdict, words in (("leaking", "Leaking"), ("tight", "Tight")):
        desk.act(TestResult(0.0, "standing", verdict, "as it was", "Ada", "n2.csv"))
        assert gate_row(desk).state.text().endswith(f": {words}")


@pytest.mark.parametrize("simulated", [False, True])
def test_the_end_names_what_is_left_to_do(desk: JobDesk, simulated: bool) -> None:
    desk.begin(replace(HEAD, simulated=simulated), str(desk.start.fields["folder"].text()))
    at_step(desk, "record")
    write_line(desk, "skip", "read at the office")
    assert "Every step has ended" in desk.page.title.text()
    (row,) = rows(desk, WordsRow)
    words = row.words.text()
    assert "Report" in words
    assert "Put away" in words
    assert ("never signed" in words) is simulated
    assert ("Sign:" in words) is not simulated


def test_each_point_that_is_taken_back_has_its_own_reason(desk: JobDesk) -> None:
    to_protect(desk)
    first, second = rows(desk, ConfirmRow)[:2]
    for row in (first, second, first, second):
        touch(row.key)
    assert desk.page.line.isVisible(), "another point is no second touch on the first"
    desk.page.line.setText("called away")
    touch(first.key)
    assert desk.page.line.text() == ""
    touch(second.key)
    QTest.keyClick(desk.page.line, Qt.Key.Key_Return)
    assert desk.job_file is not None
    assert set(desk.job_file.job.confirmed) & {"co2_meter", "second_person"} == {"co2_meter"}


def _words_on(widget: QWidget) -> str:
    """All words on the page, but those of the keys at its foot, which speak for themselves."""
    return "\n".join(label.text() for label in widget.findChildren(QLabel) if label.isVisible())


def test_an_open_job_speaks_the_language_that_is_chosen(desk: JobDesk, qapp: QApplication) -> None:
    to_protect(desk)
    desk.observe(a_vent(1.0, simulated=True))
    gate_row(desk).field.setText("3,5")
    in_english = set(_words_on(desk.page).splitlines())
    try:
        install(qapp, "de")
        QCoreApplication.sendPostedEvents()
        words = _words_on(desk.page)
        assert "SIMULIERTE ÜBUNG" in words
        same = {
            line for line in in_english & set(words.splitlines()) if any(map(str.isalpha, line))
        }
        assert same == set()
        assert gate_row(desk).field.text() == "3,5"  # what is being typed stays
        assert desk.page.person.placeholderText() != "Your name"
        assert desk.page.person.text() == "Ada Berg"
        desk.put_away()
        desk._put_away()
        label = desk.start._form.labelForField(desk.start.fields["section"])
        assert isinstance(label, QLabel)
        assert label.text() == "Abschnitt"
    finally:
        install(qapp, "en")


def test_what_is_missing_stands_above_the_keys_and_leads_to_its_row(desk: JobDesk) -> None:
    to_protect(desk)
    page = desk.page
    QCoreApplication.processEvents()
    height = page.waits.height()
    (air,) = rows(desk, GateRow)
    for row in rows(desk, ConfirmRow):
        QTest.mouseClick(page.waits, Qt.MouseButton.LeftButton)
        assert desk.focusWidget() is row.key
        assert not row.visibleRegion().isEmpty(), "below the fold before"
        assert page.waits.words.text().endswith(row.text)
        QTest.keyClick(row.key, Qt.Key.Key_Space)
    assert page.waits.words.text().startswith("Missing: CO2 in the air at most 5000 ppm")
    assert page.waits.words.text().endswith("no fresh reading")
    for stroke in (QKeySequence("F9"), QKeySequence("Ctrl+Return")):
        page.step_view.setFocus()
        QTest.keySequence(page, stroke)
        assert desk.focusWidget() is air.field, "where the step can't end it shows why"
    read_off(desk, "450")
    assert page.waits.words.text().startswith("Nothing is missing here")
    assert not page.waits.key.isEnabled()
    assert page.waits.height() == height, "nothing jumps under a glove"


@pytest.mark.parametrize("screen", [(1024, 600), (600, 1024), (600, 600)])
def test_a_long_step_never_hides_what_it_waits_for(desk: JobDesk, screen: tuple[int, int]) -> None:
    to_protect(desk)
    desk.resize(*screen)
    QCoreApplication.processEvents()
    assert desk.job_file is not None
    for step in desk.job_file.job.procedure.steps:
        at_step(desk, step.id)
        QCoreApplication.processEvents()
        words = desk.page.waits.words
        assert words.font_px >= 14, words.text()
        assert words.fits
        assert desk.page.rect().contains(desk.page.waits.geometry())


def test_points_that_were_voided_can_be_confirmed_where_the_vent_waits(desk: JobDesk) -> None:
    to_protect(desk)
    at_step(desk, "vent")
    assert "CO2 meter on" in desk.page.waits.words.text()
    shown = rows(desk, ConfirmRow)
    assert [row.confirmation.id for row in shown] == list(VENTING_CONFIRMATIONS)
    for row in shown:
        touch(row.key)
    assert "pressure above the stop pressure" in desk.page.waits.words.text()
    assert rows(desk, ConfirmRow) == shown, "and they stay where they are"


def test_every_key_has_a_stroke_that_works_in_a_field_too(desk: JobDesk) -> None:
    to_protect(desk)
    (air,) = rows(desk, GateRow)
    for stroke, purpose in (("F3", "note"), ("F4", "back"), ("F7", "sign")):
        air.field.setFocus()
        QTest.keySequence(air.field, stroke)
        assert desk.page.line.purpose == purpose
        QTest.keyClick(desk.page.line, Qt.Key.Key_Escape)
    for key in desk.page.findChildren(Key):
        assert key.text().endswith(")"), f"{key.text()} says its stroke"
    QTest.keySequence(desk.page, "F2")
    assert desk.currentWidget() is desk.start


def test_a_sites_steps_that_ask_less_say_so_as_the_job_begins(
    desk: JobDesk, tmp_path: Path
) -> None:
    steps = tmp_path / "ours.toml"
    text = default_procedure_text().replace("at_most = 5000", "at_most = 15000")
    steps.write_text(text, encoding="utf-8")
    desk.begin(HEAD, str(tmp_path), str(steps))
    assert "ask less" in desk.page.answer.text()
    assert "15000 ppm of CO2" in desk.page.answer.text()
    desk.put_away()
    steps.write_text(text.replace("15000", "90000"), encoding="utf-8")
    desk.begin(HEAD, str(tmp_path), str(steps))
    assert desk.currentWidget() is desk.start
    assert "ours.toml: step 4 (protect)" in "".join(
        label.text() for label in desk.start.findChildren(QLabel)
    )


def test_another_language_keeps_what_is_typed_when_points_were_confirmed_again(
    desk: JobDesk, qapp: QApplication
) -> None:
    to_protect(desk)
    at_step(desk, "vent")
    for row in rows(desk, ConfirmRow):
        touch(row.key)
    try:
        install(qapp, "de")
        QCoreApplication.sendPostedEvents()
        assert not rows(desk, ConfirmRow), "nothing of them is left to do"
        assert "Stoppdruck" in desk.page.waits.words.text()
    finally:
        install(qapp, "en")


def test_the_form_is_left_and_sent_by_keyboard(desk: JobDesk) -> None:
    form = desk.start
    assert [key.text().rpartition(" ")[2] for key in form.keys] == ["(Esc)", "(Ctrl+O)", "(Ctrl+↵)"]
    form.fields["section"].setText("Strainer 4")
    form.fields["technician"].setText("Ada Berg")
    QTest.keySequence(form.fields["technician"], QKeySequence("Ctrl+Return"))
    assert desk.currentWidget() is desk.page
