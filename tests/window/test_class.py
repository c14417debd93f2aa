"""The class: the trainee works the valve, the truth waits, the sheet says what happened."""

import re
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt

from co2vent.errors import RefusedInputError
from co2vent.inference.outcome import Charge
from co2vent.practice.exercises import exercises
from co2vent.readings.log_file import decode_log
from co2vent.section_model.simulation import PocketTruth
from co2vent.window.class_guide import hint
from co2vent.window.class_page import ClassPage
from co2vent.window.class_run import ClassRun, Task
from co2vent.window.class_start import ClassStart, changed_value
from co2vent.window.class_words import said_words, sheet_html
from co2vent.window.main_window import MainWindow
from co2vent.window.text import UnitChoice
from co2vent.window.truth_drawing import shares


def _task(place: int = 1, **changes) -> Task:
    exercise = exercises()[place]
    return Task(exercise=exercise, seed=exercise.seed, changes=changes)


@pytest.fixture
def run(clock) -> ClassRun:
    return ClassRun(_task(), clock)


@pytest.fixture
def page(qtbot, look, run, clock, tmp_path):
    look.kept["folder"] = str(tmp_path)
    page = ClassPage(run, look, guided=True)
    page.set_commands([])
    qtbot.addWidget(page)
    page.resize(1280, 720)
    page.show()
    page.apply_look()
    page.tick()
    yield page
    page.close_feed()


def _let_go(run: ClassRun, clock, seconds: float) -> None:
    run.paused = False
    for _ in range(round(seconds / (0.5 * run.speed))):
        clock.advance(0.5)
        run.frame()
    run.paused = True


def test_time_stands_while_paused_and_runs_with_the_speed(run, clock) -> None:
    clock.advance(10.0)
    run.frame()
    assert run.now_s == 0.0
    run.speed = 60.0
    _let_go(run, clock, 120.0)
    assert run.now_s == pytest.approx(120.0)
    assert run.view.latest.at_s == pytest.approx(120.0, abs=1.0)


def test_the_valve_moves_the_pressure(run, clock) -> None:
    before = run.view.latest.pressure_pa
    run.move_valve(1.0)
    _let_go(run, clock, 30.0)
    assert run.view.latest.pressure_pa < before
    assert run.view.vent_open


def test_truth_and_verdict_are_hidden_until_the_reveal(page, run, clock) -> None:
    _let_go(run, clock, 400.0)
    page.tick()
    assert page.panel.inside.text() == "Inside: hidden"
    assert "What would you do" in page.panel.prompt.headline.text()
    assert not page.reveal.isVisible()
    page.toggle_reveal()
    assert page.reveal.isVisible()
    assert page.panel.inside.text() != "Inside: hidden"
    grams = round(run.truth().liquid_kg * 1e3)
    assert f"Liquid {grams} g" in page.reveal.truth.text()


def test_predict_stops_time_and_commits(page, run, clock, qtbot) -> None:
    run.paused = False
    qtbot.keyClick(page, Qt.Key.Key_G)
    qtbot.waitUntil(page.predict.isVisible, timeout=2000)
    assert run.paused
    qtbot.keyClick(page, Qt.Key.Key_1)
    qtbot.waitUntil(lambda: bool(run.predictions), timeout=2000)
    assert run.declared is Charge.VAPOR_ONLY
    assert not page.predict.isVisible()


def test_score_says_when_liquid_was_called_vapour(page, run, clock) -> None:
    run.predict(Charge.VAPOR_ONLY)
    page.toggle_reveal()
    assert "WRONG" in page.reveal.score.text()
    assert "DANGEROUS" in page.reveal.score.text()


def test_banner_stays_and_the_log_says_simulated(page, run, clock, tmp_path) -> None:
    _let_go(run, clock, 20.0)
    page.tick()
    assert "CLASS" in page.panel.banner.words
    assert "SIMULATED" in page.panel.banner.words
    page.save_readings()
    log = decode_log(next(tmp_path.glob("*.csv")).read_bytes())
    assert log.setup.simulated
    assert len(log.readings) == len(run.traces)


def test_sheet_is_a_pdf_that_says_simulated_practice(page, run, tmp_path) -> None:
    page.save_sheet()
    path = next(tmp_path.glob("*.pdf"))
    assert path.read_bytes().startswith(b"%PDF")
    html = sheet_html(run, UnitChoice.BAR)
    assert html.count("SIMULATED PRACTICE") == 2
    assert run.task.exercise.debrief.split()[0] in html


def test_second_run_lies_beside_the_first(qtbot, look, run, clock) -> None:
    _let_go(run, clock, 300.0)
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    window.show()
    second = ClassRun(_task(1, **{"charge.liquid_fraction": 0.001}), clock)
    page = window.run_class(second, run)
    qtbot.waitUntil(lambda: page._plots is not None, timeout=5000)
    _let_go(second, clock, 300.0)
    page.redraw()

    def drawn() -> int:
        under = page._plots.trace._under.getData()[1]
        return 0 if under is None else under.size

    qtbot.waitUntil(lambda: drawn() > 100, timeout=3000)
    page.show_comparison()
    page.tick()
    qtbot.waitUntil(lambda: len(page._plots.holds._names) == 2, timeout=3000)  # 2 curves


def test_change_one_thing(qtbot, look) -> None:
    page = ClassStart(look)
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    page.list.setCurrentRow(1)
    page.change.setCurrentIndex(page.change.findText("liquid fraction"))
    assert page.value.text() == "0.01"
    page.value.setText("0,2")
    assert page.task().changes == {"charge.liquid_fraction": 0.2}
    page.value.setText("plenty")
    page.begin()
    assert "write a number" in page.message.text()
    page.list.setCurrentRow(len(exercises()))
    page.value.setText("7")
    assert page.task() == Task(exercise=None, seed=7, changes={})
    with qtbot.waitSignal(page.ready, timeout=60_000) as made:
        page.begin()
    assert made.args[0].scenario.setup.simulated
    page.close_feed()


def test_switches_take_yes_and_no() -> None:
    exercise = exercises()[0]
    assert changed_value(exercise, "section.insulated", "yes") is True
    with pytest.raises(RefusedInputError):
        changed_value(exercise, "section.insulated", "maybe")


def test_hints_lead_through_the_first_exercise(clock) -> None:
    run = ClassRun(_task(0), clock)
    run.speed = 60.0
    said = [hint(run)]
    run.paused = False
    said.append(hint(run))
    run.move_valve(1.0)
    _let_go(run, clock, 30.0)
    run.paused = False
    said.append(hint(run))
    run.move_valve(0.0)
    _let_go(run, clock, 400.0)
    run.paused = False
    said.append(hint(run))
    run.predict(Charge.VAPOR_ONLY)
    said.append(hint(run))
    run.revealed = True
    said.append(hint(run))
    assert len(set(said)) == 6


def test_shares_of_the_volume_come_from_the_densities() -> None:
    # Span & Wagner 1996: liquid 1178.5, solid about 1512 kg/m3 at the triple point
    pocket = PocketTruth(
        liquid_kg=1.1785, solid_kg=1.512, condensed_k=216.6, metal_k=216.6, bound_kg=0.0
    )
    liquid, ice = shares(pocket, 0.01)
    assert liquid == pytest.approx(0.1, rel=2e-3)
    assert ice == pytest.approx(0.1, rel=2e-2)


@pytest.fixture
def begun(qtbot, look, run, clock):
    """A class in the window, with a minute of its run gone."""
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1280, 720)
    window.show()
    window.activateWindow()
    page = window.run_class(run)
    qtbot.waitUntil(page.pause_key.hasFocus)
    _let_go(run, clock, 60.0)
    yield window, page
    window.go_to_start()


def test_tab_and_enter_ask_before_a_run_is_lost(qtbot, begun) -> None:
    window, page = begun
    qtbot.keyClick(page.pause_key, Qt.Key.Key_Tab)
    qtbot.keyClick(window.focusWidget(), Qt.Key.Key_Return)
    assert window.page is page
    assert page.confirm.isVisible()
    assert page.confirm.keys[1].hasFocus()  # Go on
    qtbot.keyClick(window.focusWidget(), Qt.Key.Key_Return)
    assert window.page is page
    assert not page.confirm.isVisible()
    assert page.pause_key.hasFocus()


def test_time_stands_while_the_class_is_asked_and_goes_on_after_it(qtbot, begun) -> None:
    _window, page = begun
    page.run.paused = False
    qtbot.keyClick(page, Qt.Key.Key_Escape)
    assert page.run.paused
    qtbot.keyClick(page, Qt.Key.Key_N)
    assert not page.run.paused
    page.run.paused = True


def test_escape_closes_what_lies_over_a_class_before_it_leaves(qtbot, begun) -> None:
    window, page = begun
    for stroke, cover in ((Qt.Key.Key_G, page.predict), (Qt.Key.Key_R, page.reveal)):
        qtbot.keyClick(page, stroke)
        assert cover.isVisible()
        qtbot.keyClick(page, Qt.Key.Key_Escape)
        assert not cover.isVisible()
        assert not page.confirm.isVisible()
        assert window.page is page
    qtbot.keyClick(page, Qt.Key.Key_Escape)
    assert page.confirm.isVisible()
    qtbot.keyClick(page, Qt.Key.Key_Escape)  # Esc is no answer that loses a run
    assert not page.confirm.isVisible()
    qtbot.keyClick(page, Qt.Key.Key_Escape)
    qtbot.keyClick(page, Qt.Key.Key_E)
    assert window.page is window.start_page


def test_closing_the_window_asks_before_a_run_is_lost(qtbot, begun) -> None:
    window, page = begun
    window.close()
    assert window.isVisible()
    assert page.confirm.isVisible()
    qtbot.keyClick(page, Qt.Key.Key_Escape)
    assert not page.confirm.isVisible()
    window.close()
    qtbot.keyClick(page, Qt.Key.Key_E)
    assert not window.isVisible()


def test_a_class_that_has_not_begun_is_left_without_a_question(qtbot, look, run) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.show()
    page = window.run_class(run)
    page.uncover_or_leave()
    assert window.page is window.start_page


@pytest.mark.parametrize("screen", [(1024, 600), (1280, 800), (600, 1024)])
def test_rows_and_boxes_of_the_class_are_15_mm(qtbot, look, screen) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(*screen)
    window.show()
    window.open_class()
    page = window.page
    target_px = look.sizes(page).target_px
    row = page.list.visualItemRect(page.list.item(0))
    assert row.height() >= target_px
    assert min(page.change.height(), page.value.height()) >= target_px
    bar = page.list.verticalScrollBar()
    assert bar.sizeHint().width() >= look.sizes(window).target_px
    window.go_to_start()


def test_a_prediction_after_the_reveal_does_not_count(page, run, qtbot) -> None:
    run.predict(Charge.VAPOR_ONLY)
    page.toggle_reveal()
    before = run.score().lines()
    assert run.predict(Charge.TWO_PHASE) is None
    page.toggle_reveal()
    qtbot.keyClick(page, Qt.Key.Key_G)
    qtbot.waitUntil(page.message.isVisible, timeout=2000)
    assert "doesn't count" in page.message.text()
    assert not page.predict.isVisible()
    page._answered(Charge.TWO_PHASE)
    assert "doesn't count" in page.message.text()
    assert len(run.predictions) == 1
    assert run.declared is Charge.VAPOR_ONLY
    assert run.score().lines() == before


def test_time_stands_while_another_page_is_in_front(qtbot, look, run, clock) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    window.show()
    page = window.run_class(run)
    run.paused = False
    window.show_page(ClassStart(look))
    assert window.page is not page
    assert run.paused
    window.pages.setCurrentWidget(page)
    assert run.paused  # the class goes on when it says so
    run.paused = True


def test_reveal_speaks_one_choice_of_units(run) -> None:
    said = said_words(run, UnitChoice.PSI).splitlines()[0]
    assert said.endswith(" psig.")
    both = said_words(run, UnitChoice.PSI_AND_BAR).splitlines()[0]
    assert "psig / " in both
    assert both.endswith(" bar g.")
    assert said in sheet_html(run, UnitChoice.PSI)


def _pressure(run: ClassRun, pressure_pa: float) -> None:
    """Let the newest reading be of a pressure, the vent open."""
    latest = run.view.latest._replace(pressure_pa=pressure_pa)
    run.view = replace(run.view, latest=latest)


def test_hints_below_the_stop_line_and_the_triple_point(clock) -> None:
    run = ClassRun(_task(0), clock)
    run.paused = False
    run.move_valve(0.5)
    _pressure(run, run.view.stop_pressure_pa + 0.2e5)
    assert hint(run).startswith("Near the stop line")
    _pressure(run, run.view.stop_pressure_pa - 0.2e5)
    assert "at once" in hint(run)
    assert "Near" not in hint(run)
    _pressure(run, run.view.triple_point_pa - 0.2e5)
    assert "dry ice" in hint(run)
    assert "too far" in hint(run)
    run.move_valve(0.0)
    assert "dry ice" in hint(run)  # shut again: what was left is frozen all the same


def test_the_name_of_the_exercise_waits_for_the_answer(page, run) -> None:
    title = run.task.title
    assert title not in page.panel.status.source.label.text()
    run.revealed = True
    page.tick()
    assert title in page.panel.status.source.label.text()


def test_only_the_answer_that_was_given_is_ticked(page, run) -> None:
    page.ask()
    assert [key.ticked for key in page.predict.keys] == [False] * 5
    assert all(key.icon().isNull() for key in page.predict.keys)
    page.predict.keys[2].click()
    page.ask()
    assert [key.ticked for key in page.predict.keys] == [False, False, True, False, False]
    assert not page.predict.keys[2].icon().isNull()


def test_no_empty_box_asks_for_a_value(qtbot, look) -> None:
    start = ClassStart(look)
    qtbot.addWidget(start)
    start.show()
    assert start.what.text() == "Change one thing:"
    assert start.what.isVisible()
    assert not start.value.isVisible()
    start.change.setCurrentIndex(1)
    assert start.value.isVisible()
    assert start.value.text()
    start.list.setCurrentRow(start.list.count() - 1)
    assert start.value.isVisible()  # the seed
    start.list.setCurrentRow(0)
    assert not start.value.isVisible()


def test_the_score_speaks_the_chosen_units(page, run, look) -> None:
    run.predict(Charge.VAPOR_ONLY)
    look.units = UnitChoice.PSI
    page.toggle_reveal()
    score = page.reveal.score.text()
    assert " lb" in score
    assert not re.search(r"\d k?g\b", score)
    assert "You said: vapour only." in score
    assert not re.search(r"\d (k?g|g/s)\b", page.reveal.truth.text())
    look.units = UnitChoice.BAR
    page.toggle_reveal()
    page.toggle_reveal()
    assert " kg" in page.reveal.score.text()
