"""The shipped languages: complete, with the same placeholders, and they fit on the screen."""

import ast
import re
import shutil
import subprocess
import sys
from collections.abc import Iterator
from importlib.resources import files
from pathlib import Path
from xml.etree import ElementTree

import pytest
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QApplication

from co2vent.guidance import prompts, venting_prompts
from co2vent.guidance.events import Severity
from co2vent.inference.outcome import Bounds, Instruction
from co2vent.window.blind import blinded
from co2vent.window.frame import Mode
from co2vent.window.keys import Key, keyboard_words
from co2vent.window.languages import available, choose, install
from co2vent.window.main_window import MainWindow
from co2vent.window.shown import shown
from co2vent.window.text import UnitChoice, pressure
from co2vent.window.vent_page import VentPage
from co2vent.window.words import headline_of, said, translate
from tests.window.conftest import AMBIENT_PA, StandingFeed, a_prompt, a_view
from tests.window.test_sizes import _cut_off, _worst_view

LANGUAGES = ("de", "es", "nb")
FOLDER = Path(str(files("co2vent.window")))


@pytest.fixture
def spoken(qapp):
    def speak(language: str) -> None:
        install(qapp, language)

    yield speak
    install(qapp, "en")


def _messages(path: Path) -> dict[tuple[str, str], str]:
    found = {}
    for context in ElementTree.parse(path).getroot().iter("context"):
        name = context.findtext("name") or ""
        for message in context.iter("message"):
            translation = message.find("translation")
            done = translation is not None and translation.get("type") != "unfinished"
            source = message.findtext("source") or ""
            found[name, source] = (translation.text or "") if done else ""
    return found


def test_all_languages_ship() -> None:
    assert set(LANGUAGES) <= set(available())


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_string_of_the_screen_is_missing(language: str, tmp_path: Path) -> None:
    tool = shutil.which("pyside6-lupdate", path=str(Path(sys.executable).parent))
    if tool is None:
        pytest.skip("no pyside6-lupdate beside this Python")
    fresh = tmp_path / "fresh.ts"
    sources = sorted(str(path) for path in FOLDER.glob("*.py"))
    subprocess.run([tool, *sources, "-ts", str(fresh)], check=True, capture_output=True)
    have = _messages(FOLDER / f"co2vent_{language}.ts")
    missing = [key for key in _messages(fresh) if not have.get(key)]
    assert missing == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_placeholders_and_keys_are_kept(language: str) -> None:
    for (_context, source), words in _messages(FOLDER / f"co2vent_{language}.ts").items():
        if not words:
            continue  # the test above says so
        for pattern in (r"\{\w+\}", r"\([A-Z]\)", r"1 bar|10 bar|100 mm"):
            assert sorted(re.findall(pattern, source)) == sorted(re.findall(pattern, words)), words
        assert source.endswith(" ") == words.endswith(" "), source


@pytest.mark.parametrize("language", LANGUAGES)
def test_words_and_numbers_change_at_once(spoken, language: str) -> None:
    english = headline_of(Instruction.CLOSE_AND_HOLD)
    spoken(language)
    assert headline_of(Instruction.CLOSE_AND_HOLD) != english
    assert said("Dry ice possible", Instruction.HOLD_FOR_DRY_ICE) == translate(
        "Prompt", "Dry ice possible"
    )
    assert said("something new", Instruction.VENT) == headline_of(Instruction.VENT)
    assert pressure(517_950.0, AMBIENT_PA, "bar_g") == "4,17 bar g"
    spoken("en")
    assert headline_of(Instruction.CLOSE_AND_HOLD) == english


def _marked_texts() -> Iterator[tuple[Path, str, str]]:
    """Yield every text that the window's code asks for by its words, wherever it stands."""
    for path in sorted(FOLDER.glob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            name = getattr(getattr(node, "func", None), "id", "")
            if isinstance(node, ast.Call) and name in ("translate", "QT_TRANSLATE_NOOP"):
                words = [arg.value for arg in node.args if isinstance(arg, ast.Constant)]
                if len(words) == 2:
                    yield path, str(words[0]), str(words[1])


def test_every_text_in_the_code_is_in_every_catalogue() -> None:
    """The tool that collects texts overlooks some places, such as an f-string."""
    wanted = list(_marked_texts())
    assert len(wanted) > 300
    for language in LANGUAGES:
        have = _messages(FOLDER / f"co2vent_{language}.ts")
        assert [one for one in wanted if not have.get(one[1:])] == []


def test_headlines_of_the_core_can_be_translated() -> None:
    modules = (prompts, venting_prompts)
    source = "".join(Path(one.__file__).read_text(encoding="utf-8") for one in modules)
    headlines = set(re.findall(r'Instruction\.\w+,\s+"([^"]+)",', source))
    headlines |= set(re.findall(r'Instruction\.\w+: \("([^"]+)",', source))
    headlines |= set(re.findall(r'headline(?:, severity)? = "([^"]+)"', source))
    known = {text for context, text in _messages(FOLDER / "co2vent_de.ts") if context == "Prompt"}
    assert len(headlines) > 12
    assert headlines <= known


@pytest.mark.parametrize("screen", [(1024, 600), (600, 1024)], ids=lambda s: f"{s[0]}x{s[1]}")
@pytest.mark.parametrize("language", LANGUAGES)
def test_translated_pages_fit(qtbot, look, clock, spoken, language, screen) -> None:
    spoken(language)
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(*screen)
    window.show()
    assert _cut_off(window.page) == []
    look.units = UnitChoice.BAR_AND_PSI
    feed = StandingFeed(_worst_view(), Mode.REPLAY)
    page = VentPage(feed, look, clock)
    page.set_keys(page.common_keys())
    page.under.addSpacing(40)
    qtbot.addWidget(page)
    page.resize(*screen)
    page.show()
    page.apply_look()
    for instruction in Instruction:
        feed.view = a_view(prompt=a_prompt(instruction, Severity.DO))
        feed.age_s = 0.1
        page.tick()
        assert _cut_off(page) == []
        page.toggle_help()
        page.tick()
        assert page._help.fits
        page.toggle_help()
    feed.view = a_view(
        2.5e6, vent_open=True, rate_pa_per_s=-123_456.0, seconds_to_stop=500.0,
        stop_in_s=Bounds(510.0, 599.0, 1599.0, 0.9), holds=(), running_hold=None,
    )  # fmt: skip
    feed.age_s = 0.1
    page.tick()
    assert _cut_off(page) == []
    feed.view, feed.age_s = _worst_view(), 99.0
    page.tick()
    assert _cut_off(page) == []


def test_language_of_the_system_or_english() -> None:
    assert choose("de") == "de"
    assert choose("nn") == "nb"
    assert choose("xx") in available()


def test_language_key_turns_through_all(qtbot, look, spoken) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.show()
    seen = []
    for _ in available():
        window.next_language()
        seen.append(window.start_page.purpose.text())
    assert len(set(seen)) == len(available())
    assert window.page is window.start_page
    assert isinstance(QApplication.instance(), QApplication)


def test_keys_of_an_open_page_speak_the_new_language_at_once(qtbot, look, log, spoken) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.resize(1024, 600)
    window.show()
    page = window.replay(log, "vent.csv")
    page.replay.playing = False
    back = page.keys[0]
    english = back.text()
    assert page.play_key.text().endswith("(Space)")
    seen = set()
    for _ in LANGUAGES:
        window.next_language()
        said = translate("Key", "Back")
        qtbot.waitUntil(lambda said=said: back.accessibleName() == said, timeout=2000)
        assert "(Space)" not in page.play_key.text()
        saving = next(key for key in page._more.keys if key._keys == "Ctrl+P")
        assert saving.accessibleName() == translate("Command", "Save picture")
        assert keyboard_words("Ctrl+P") in saving.text()
        seen.add(back.text())
    assert len(seen | {english}) > len(LANGUAGES)
    window.next_language()
    qtbot.waitUntil(lambda: back.text() == english, timeout=2000)
    window.go_to_start()


def test_keys_of_the_keyboard_have_the_names_of_its_language(spoken) -> None:
    assert keyboard_words("Space") == "Space"
    assert keyboard_words("Ctrl+P") == "Ctrl+P"
    assert keyboard_words("+") == "+"
    spoken("de")
    assert keyboard_words("Ctrl+P") == "Strg+P"
    assert keyboard_words("Space") == "Leertaste"
    assert keyboard_words("Esc") == "Esc"


def test_blind_headline_is_translated(spoken) -> None:
    spoken("de")
    hidden = blinded(a_view())
    assert shown(hidden, 0.1, UnitChoice.BAR).headline == "Was würden Sie jetzt tun?"


def test_a_long_name_of_a_keyboards_key_stands_under_the_word(qtbot, look, spoken) -> None:
    spoken("de")
    key = Key("play", translate("Key", "Play"), "Space", lambda: None)
    qtbot.addWidget(key)
    key.show()
    key.set_sizes(look.sizes(key))
    key.resize(90, 60)
    assert key.text() == f"{translate('Key', 'Play')}\n(Leertaste)"
    metrics = QFontMetrics(key.font())
    assert metrics.horizontalAdvance("(Leertaste)") <= key.width()
    key.resize(300, 60)
    assert "\n" not in key.text()
