"""The core's sentences on a translated screen: all of them, with all their values, and they fit."""

import ast
import json
import re
from functools import cache

import pytest
from PySide6.QtCore import QTranslator

from co2vent.guidance.assess import assess_readings, assessment_json
from co2vent.guidance.events import Severity
from co2vent.guidance.view import View
from co2vent.inference.outcome import Charge, Instruction
from co2vent.inference.wording import kelvin_text, slope_text, warming_text
from co2vent.readings.log_file import read_log
from co2vent.readings.reading import Setup
from co2vent.sentence import Sentence, joined
from co2vent.window.frame import Mode
from co2vent.window.languages import install
from co2vent.window.sentences import speak_units, spoken
from co2vent.window.shown import shown
from co2vent.window.text import UnitChoice, event_words
from co2vent.window.vent_page import VentPage
from tests.window.catalogue import (
    FIELD,
    PACKAGE,
    WINDOW,
    core_texts,
    sentence_calls,
    sentence_templates,
)
from tests.window.conftest import StandingFeed, a_prompt, a_view
from tests.window.test_sizes import _cut_off

LANGUAGES = ("de", "es", "nb")
SAMPLES = ("vapour-only", "dry-ice", "leak-by", "liquid-full", "liquid-left-bare", "no-power")
FIGURE = re.compile(r"[+-]?\d+(\.\d+)?(e[+-]\d+)?( [^\d]+)?")
LEAST_REASON_PX = 11


@pytest.fixture
def spoken_in(qapp):
    def speak(language: str) -> None:
        install(qapp, language)

    yield speak
    install(qapp, "en")


def _compiled(language: str) -> QTranslator:
    translator = QTranslator()
    assert translator.load(str(WINDOW / f"co2vent_{language}.qm"))
    return translator


@cache
def _seen(name: str) -> View:
    log = read_log(PACKAGE.parent / "sample_logs" / f"{name}.csv")
    return assess_readings(log.setup, log.items())


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_text_of_the_core_has_its_translation_with_the_same_fields(language: str) -> None:
    catalogue = _compiled(language)
    for context, texts in core_texts().items():
        assert len(texts) > 20, context
        words = {text: catalogue.translate(context, text) for text in texts}
        assert [text for text, said in words.items() if not said] == []
        for text, said in words.items():
            assert sorted(FIELD.findall(text)) == sorted(FIELD.findall(said)), said


def test_every_sentence_is_made_from_a_fixed_template_or_a_text_that_is_collected() -> None:
    """Else the test above could not see it."""
    others = {
        (path.name, ast.unparse(call.args[0]))
        for path, call in sentence_calls()
        if not isinstance(call.args[0], ast.Constant) and path.name != "sentence.py"
    }
    fields = ("title", "look_for", "expected", "wrong", "debrief", "second_test")
    assert others == {
        # a headline has its words in the screen's own catalogue
        ("prompt_keeper.py", "new.headline"),
        ("procedure_text.py", "value.strip()"),
        ("exercises.py", "' '.join(table['story'].split())"),
        *(("exercises.py", f"table['{field}']") for field in fields),
        ("class_words.py", "name.partition('.')[2].replace('_', ' ')"),
    }


def _english(text: str, templates: set[str]) -> list[str]:
    """Return what of a sentence no catalogue can translate."""
    if not isinstance(text, Sentence):
        figure = FIGURE.fullmatch(text)
        return [] if not text or figure or isinstance(text, Charge | Instruction) else [text]
    known = text.template in templates or not any(map(str.isalpha, FIELD.sub("", text.template)))
    rest = [] if known else [text.template]
    return rest + [found for value in text.values.values() for found in _english(value, templates)]


@pytest.mark.parametrize("name", SAMPLES)
def test_a_whole_vent_leaves_no_english_behind(name: str) -> None:
    seen = _seen(name)
    words = (WINDOW / "words.py").read_text(encoding="utf-8")
    known = set(sentence_templates()) | set(re.findall(r'NOOP\("Prompt", "([^"]+)"\)', words))
    said = [event.text for event in seen.events if event.kind.value != "note"]
    said += [text for hold in seen.holds for text in (hold.reason, hold.next_step)]
    said += [seen.prompt.reason]
    assert len(said) > 8
    assert [left for text in said for left in _english(text, known)] == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_screen_speaks_and_files_stay_english(spoken_in, language: str) -> None:
    seen = _seen("leak-by")
    english = json.dumps(assessment_json(seen, "log"))
    reason = seen.prompt.reason
    assert "Flow past a closed valve suspected" in reason
    assert shown(seen, 0.1, UnitChoice.BAR).reason == reason
    events = [event_words(event) for event in seen.events]
    spoken_in(language)
    said = shown(seen, 0.1, UnitChoice.BAR).reason
    assert said == spoken(reason) != reason
    assert re.search(r"\d,\d\d bar g", said)
    assert not re.search(r"\d\.\d", said)
    translated = [event_words(event) for event in seen.events]
    same = [one for one, other in zip(events, translated, strict=True) if one == other]
    assert same == []
    assert json.dumps(assessment_json(seen, "log")) == english
    assert seen.prompt.reason == reason


def test_values_follow_the_locale_and_units_of_the_screen(spoken_in) -> None:
    cold = Sentence("{now} and {why}", now="-56.6 degC", why=Sentence("readings stopped"))
    assert spoken(cold) == "−56.6 °C and readings stopped"
    spoken_in("de")
    assert spoken(cold) == "−56,6 °C and keine Messwerte mehr"
    assert spoken("a person's note, 3.5 bar") == "a person's note, 3.5 bar"
    assert spoken(Sentence("line {line}: {reason}", line="7", reason="odd 1.5")) == (
        "Zeile 7: odd 1.5"
    )


def test_differences_of_temperature_follow_the_units_of_the_screen(spoken_in) -> None:
    drive = Sentence("the lowest metal is {drive} above saturation", drive=kelvin_text(60.0))
    warming = Sentence("{change}", change=warming_text(-1.5))
    assert drive == "the lowest metal is 60 K above saturation"  # as files say it
    speak_units("psig", "degF")
    assert spoken(drive) == "the lowest metal is 108 °F above saturation"
    assert spoken(warming) == "−2.7 °F"
    speak_units("bar_g", "degC")
    assert spoken(drive) == drive
    assert spoken(warming) == "−1.5 K"


def test_a_whole_vent_in_psi_says_no_kelvin(spoken_in) -> None:
    spoken_in("en")
    speak_units("psig", "degF")
    events = [spoken(event.text) for name in SAMPLES for event in _seen(name).events]
    assert [words for words in events if re.search(r"\d K\b", words)] == []


def test_a_fast_rise_is_said_in_bar_as_a_fall_is(spoken_in) -> None:
    spoken_in("de")
    setup = Setup()
    fast = Sentence("{slope}", slope=slope_text(2000.0, setup))
    assert fast == "1200 mbar/min"
    assert spoken(fast) == "1,20 bar/min"
    assert spoken(Sentence("{slope}", slope=slope_text(1000.0, setup))) == "600 mbar/min"


# What a field holds at its longest, in the unit with the longest words.
LONG = {
    "why": Sentence("dry metal that warms gives at most {most}", most="123 mbar/min"),
    "given": Sentence(
        " ({source})",
        source=Sentence("the lowest metal is {drive} above saturation", drive=kelvin_text(23.0)),
    ),
    "between": Sentence(
        "rising between {least} and {most}", least="-12 mbar/min", most="1234 mbar/min"
    ),
    "fault": Sentence(
        "the reading has not changed for {time}, though it used to show noise", time="3600 s"
    ),
    "shelf": Sentence("level for {time} after rising {rise}", time="120 s", rise="3.2 bar"),
    "detail": Sentence(
        "{slope}, {steepness} per kelvin", slope="12345 mbar/min", steepness="12.34 bar"
    ),
    "found": Sentence("Dry ice, or flow past a closed valve"),
    "rate": Sentence(", falling {fall}", fall="12.34 bar/min"),
    "time": "100 min",
}
STEP = Sentence(
    "Hold on to {pressure} before venting again; mild warmth on the low point speeds it.",
    pressure="0.812 MPa g",
)


def _long_reasons() -> list[Sentence]:
    """Every reason that can stand under a prompt, filled with long values."""
    makers = {"prompts.py", "session.py", "inference"}
    reasons = []
    for template, place in sentence_templates().items():
        if makers & set(place.parts) and template[:1] in "{" + "ABCDEFGHIJKLMNOPQRSTUVWXYZ":
            fields = [field[1:-1] for field in FIELD.findall(template)]
            filled = {field: LONG.get(field, "0.812 MPa g") for field in fields}
            reasons.append(Sentence(template, **filled))
    assert len(reasons) > 40
    return reasons + [
        joined(reason, STEP) for reason in reasons if reason.template.startswith("{inside}: ")
    ]


@pytest.mark.parametrize("screen", [(1024, 600), (600, 1024)], ids=lambda s: f"{s[0]}x{s[1]}")
@pytest.mark.parametrize("language", LANGUAGES)
def test_the_longest_reasons_fit_under_the_prompt(
    qtbot, look, clock, spoken_in, language, screen
) -> None:
    spoken_in(language)
    look.units = UnitChoice.BAR_AND_PSI
    prompt = a_prompt(Instruction.HOLD_FOR_DRY_ICE, Severity.DANGER)
    feed = StandingFeed(a_view(prompt=prompt), Mode.REPLAY)
    page = VentPage(feed, look, clock)
    page.set_keys(page.common_keys())
    qtbot.addWidget(page)
    page.resize(*screen)
    page.show()
    page.apply_look()
    longest = sorted(_long_reasons(), key=lambda reason: len(spoken(reason)))[-12:]
    for reason in longest:
        feed.view = a_view(prompt=type(prompt)(
            prompt.instruction, "Close now: below the triple point", reason, prompt.severity, 0.0
        ))  # fmt: skip
        feed.age_s = 0.1
        page.tick()
        assert page.panel.prompt.reason.text().replace("\u2060", "") == spoken(reason)
        assert _cut_off(page) == []
        assert page.panel.prompt.reason.font_px >= LEAST_REASON_PX, spoken(reason)
