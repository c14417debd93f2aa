"""The job's steps, tests and the exercises on a translated screen: no English, nothing cut off."""

import dataclasses

import pytest
from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QAbstractButton

from co2vent.guidance.job import Job, JobHead
from co2vent.guidance.procedure_text import default_procedure_text, read_procedure
from co2vent.guidance.steps import begin_job
from co2vent.inference.standing_test import standing_test
from co2vent.inference.vacuum_rise import vacuum_rise_test
from co2vent.practice.exercises import exercises
from co2vent.readings.reading import Gas, Reading, Setup
from co2vent.sentence import Sentence
from co2vent.window.class_start import ClassStart
from co2vent.window.job_page import JobPage
from co2vent.window.job_parts import ConfirmRow, WrapLabel
from co2vent.window.languages import install
from co2vent.window.sentences import spoken
from tests.window.catalogue import core_texts, sentence_templates
from tests.window.test_sentences import _english
from tests.window.test_sizes import _cut_off

LANGUAGES = ("de", "es", "nb")
SCREENS = ((1024, 600), (600, 1024))


@pytest.fixture
def spoken_in(qapp):
    def speak(language: str) -> None:
        install(qapp, language)

    yield speak
    install(qapp, "en")


def _job_at(step: int) -> Job:
    job = begin_job(read_procedure(default_procedure_text()), JobHead(section="Strainer 4"))
    return dataclasses.replace(job, current=step)


def _too_low(page: JobPage) -> list[str]:
    """Return the texts that have less height than they need."""
    low = [
        label.text()
        for label in page.findChildren(WrapLabel)
        if label.isVisibleTo(page) and label.heightForWidth(label.width()) > label.height() + 1
    ]
    keys = [row for row in page.findChildren(ConfirmRow) if row.isVisibleTo(page)]
    return low + [key.text for key in keys if key.words.geometry().bottom() > key.key.height()]


@pytest.mark.parametrize("screen", SCREENS, ids=lambda s: f"{s[0]}x{s[1]}")
@pytest.mark.parametrize("language", LANGUAGES)
def test_every_step_is_said_and_fits(qtbot, look, spoken_in, language, screen) -> None:
    spoken_in(language)
    page = JobPage(look)
    qtbot.addWidget(page)
    page.resize(*screen)
    page.show()
    english = core_texts()["Steps"]
    for place in range(len(_job_at(0).steps)):
        page.show_job(_job_at(place))
        QCoreApplication.processEvents()
        parts = [*page.findChildren(WrapLabel), *page.findChildren(QAbstractButton)]
        shown = "\n".join(
            [part.text() for part in parts] + [part.accessibleName() for part in parts]
        )
        assert [text for text in english if len(text) > 12 and text in shown] == []
        qtbot.waitUntil(lambda: _too_low(page) == [], timeout=2000)  # the layout takes a few turns
        inside = page.step_view.widget()
        assert inside.width() <= page.step_view.viewport().width(), "nothing is cut off at the side"


def test_a_sites_own_words_stay_as_they_were_written(spoken_in) -> None:
    own = default_procedure_text().replace("Break the joint", "Open the {old} flange, 1.5 m up")
    spoken_in("de")
    titles = [spoken(step.title) for step in read_procedure(own).steps]
    assert "Open the {old} flange, 1.5 m up" in titles
    assert "Absperren, sichern, beschildern" in titles


def test_a_gates_condition_and_what_a_step_waits_for_are_said(spoken_in) -> None:
    job = _job_at(0)
    gates = {gate.id: gate for step in job.procedure.steps for gate in step.gates}
    assert gates["room_air"].condition == "CO2 in the air at most 5000 ppm, steady for 30 s"
    lacks = job.lacks()
    assert all(isinstance(lack, Sentence) for lack in lacks)
    spoken_in("nb")
    assert spoken(gates["room_air"].condition) == "CO2 i luften høyst 5000 ppm, stabilt i 30 s"
    assert spoken(gates["zero"].condition) == "manometerets nullavvik mot luft høyst 0,1 bar"
    assert [spoken(lack) for lack in lacks] == [
        "skriv opp: Varmeelementer, vifter og avriming på denne seksjonen, og hvordan de er låst"
    ]


@pytest.mark.parametrize("screen", SCREENS, ids=lambda s: f"{s[0]}x{s[1]}")
@pytest.mark.parametrize("language", LANGUAGES)
def test_every_exercise_is_told_and_fits(qtbot, look, spoken_in, language, screen) -> None:
    spoken_in(language)
    page = ClassStart(look)
    qtbot.addWidget(page)
    page.resize(*screen)
    page.show()
    page.apply_look()
    for place, exercise in enumerate(exercises()):
        page.list.setCurrentRow(place)
        QCoreApplication.processEvents()
        assert exercise.title not in page.list.item(place).text()
        story = page.story.text()
        assert spoken(exercise.story) in story
        assert exercise.story not in story
        assert exercise.look_for not in story
        assert _cut_off(page) == []


def test_verdicts_of_the_closed_sections_tests_leave_no_english_behind() -> None:
    setup = Setup(gas=Gas.NITROGEN)
    known = set(sentence_templates())
    for loss_pa, rise_pa in ((0.0, 0.05), (3.0, 0.5), (0.02, 0.0), (-3.0, 40.0)):
        rows = [
            Reading(
                10.0 * i, 41e5 - loss_pa * 10.0 * i + 50.0 * (i % 3), 278.0 + 0.01 * (i % 5),
                vacuum_pa=60.0 + rise_pa * i + 0.3 * (i % 2),
            )
            for i in range(250)
        ]  # fmt: skip
        for found in (standing_test(rows, setup), vacuum_rise_test(rows), standing_test([], setup)):
            said = (found.reason, found.next_step)
            assert [left for text in said for left in _english(text, known)] == []
