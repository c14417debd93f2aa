"""Texts: each number with its unit, each pressure with gauge or absolute."""

from dataclasses import replace

import pytest
from PySide6.QtCore import QLocale
from PySide6.QtGui import QTextLayout
from PySide6.QtWidgets import QApplication

from co2vent.guidance.events import Event, EventKind
from co2vent.guidance.situation import Situation
from co2vent.guidance.venting_prompts import venting
from co2vent.inference.outcome import Bounds
from co2vent.readings.reading import Reading, Setup
from co2vent.window import text
from co2vent.window.connect_form import example_words, field_words, optional_words
from co2vent.window.figures import Figure
from co2vent.window.fit_label import FitLabel
from co2vent.window.frame import Mode
from co2vent.window.languages import install
from co2vent.window.main_window import MainWindow
from co2vent.window.sentences import speak_units, spoken
from co2vent.window.shown import shown
from co2vent.window.status_row import StatusRow
from co2vent.window.text import UnitChoice
from co2vent.window.theme import PALETTES
from co2vent.window.trace_plot import TracePlot
from co2vent.window.traces import Traces
from co2vent.window.vent_page import VentPage
from co2vent.window.vent_panel import VentPanel
from co2vent.window.words import translate
from tests.window.conftest import AMBIENT_PA, STOP_PA, TRIPLE_PA, StandingFeed, a_hold, a_view


def test_pressure_says_gauge_or_absolute() -> None:
    # 5.18 bar abs is the triple point, 4.17 bar g and 60.4 psig at sea level (trade press)
    assert text.pressure(517_950.0, AMBIENT_PA, "bar_g") == "4.17 bar g"
    assert text.pressure(517_950.0, AMBIENT_PA, "psig") == "60.4 psig"
    assert text.pressure(517_950.0, AMBIENT_PA, "bar_a") == "5.18 bar abs"
    assert text.both(UnitChoice.BAR_AND_PSI, 517_950.0, AMBIENT_PA) == "4.17 bar g / 60.4 psig"


def test_temperature_in_both_systems() -> None:
    # -40 is the same in both (definition)
    assert text.temperature(233.15, "degC") == "−40.0 °C"
    assert text.temperature(233.15, "degF") == "−40.0 °F"
    assert text.temperature(None, "degC") == "– °C"


def test_nothing_measured_is_a_dash_not_a_number() -> None:
    assert text.pressure(None, AMBIENT_PA, "bar_g") == "– bar g"
    assert text.difference(None, "bar_g") == "– bar"


def test_minus_zero_is_zero() -> None:
    assert text.number(-0.001, 2) == "0.00"


def test_numbers_follow_the_locale_of_the_screen() -> None:
    QLocale.setDefault(QLocale(QLocale.Language.German, QLocale.Country.Germany))
    assert text.pressure(517_950.0, AMBIENT_PA, "bar_g") == "4,17 bar g"


@pytest.mark.parametrize(
    ("rate", "words"),
    [(-1000.0, "falling 600 mbar/min"), (1000.0, "rising 600 mbar/min"), (0.01, "steady"),
     (-2000.0, "falling 1.20 bar/min"), (99_999.0 / 60.0, "rising 1000 mbar/min"),
     (None, "rate not known")],
)  # fmt: skip
def test_rate_is_a_word_and_a_number(rate: float | None, words: str) -> None:
    assert text.rate(rate, "bar_g") == words


def test_the_time_before_the_vent_is_called_that_and_not_a_number() -> None:
    hold = a_hold(number=0, closed=False)
    assert text.hold_clock(hold, 260.0).startswith("Before the vent: ")
    assert text.hold_clock(a_hold(number=2, closed=False), 260.0).startswith("Hold 2: ")


def test_bounds_without_an_upper_one_are_said_to_have_none() -> None:
    assert text.mass_bounds(Bounds(None, 0.0, None), pounds=False) == "no upper bound"
    assert "no upper bound" in text.mass_bounds(Bounds(2.0, 1.0, None), pounds=False)
    assert (
        text.mass_bounds(Bounds(2.8, 1.9, 4.1), pounds=False)
        == "2.80 kg (1.90 kg to 4.10 kg, 95 %)"
    )


def test_pounds_go_with_psig() -> None:
    # 1 lb = 0.45359237 kg exactly (international pound)
    assert text.mass(0.45359237, pounds=True) == "1.00 lb"
    assert "lb" in text.inside(a_hold(), pounds=True)


@pytest.mark.parametrize(
    ("grams", "pounds", "words"),
    [(1.36, True, "0.048 oz"), (45.0, True, "1.6 oz"), (0.2, True, "0 oz"), (50.0, True, "0.11 lb"),
     (11_702.7, True, "25.8 lb"), (57_153.0, True, "126 lb"), (0.04, False, "0 g"),
     (0.12, False, "0.1 g"), (9_996.0, False, "10.0 kg"), (123_456.0, False, "123 kg")],
)  # fmt: skip
def test_masses_have_a_unit_and_digits_that_can_be_read(
    grams: float, pounds: bool, words: str
) -> None:
    # 1 oz = 28.349523125 g exactly (international avoirdupois ounce)
    assert text.mass(grams * 1e-3, pounds=pounds) == words


@pytest.mark.parametrize(
    ("grams", "pounds", "words"),
    [((0.0, 0.0, 1.36), True, "at most 0.048 oz (95 %)"),
     ((0.0, 0.0, 0.1), True, "less than 0.010 oz (95 %)"),
     ((0.0, 0.0, 0.04), False, "less than 0.1 g (95 %)"),
     ((0.01, 0.0, 2.0), False, "at most 2.0 g (95 %)"),
     ((1.0, 0.0, 2.0), False, "1.0 g (0 g to 2.0 g, 95 %)"),
     ((0.0, 0.0, 0.0), False, "0 g")],
)  # fmt: skip
def test_an_upper_bound_is_never_shown_as_nothing(
    grams: tuple[float, float, float], pounds: bool, words: str
) -> None:
    best, low, high = (value * 1e-3 for value in grams)
    assert text.mass_bounds(Bounds(best, low, high), pounds=pounds) == words
    assert text.share_bounds(Bounds(0.0, 0.0, 3e-5)) == "less than 0.01 % of the volume"
    limit = text.power(a_hold(detection_limit_kg=1e-5), pounds=pounds)
    assert "0.010 oz or more" in limit if pounds else "0.1 g or more" in limit


def test_a_nought_of_liquid_does_not_hide_the_dry_ice() -> None:
    none, unknown = Bounds(0.0, 0.0, 0.0), Bounds(None, 0.0, None)
    cold = a_hold(liquid_kg=none, dry_ice_kg=unknown)
    assert text.inside(cold, pounds=False).endswith("\nDry ice: no upper bound")
    assert "Liquid: " not in text.inside(cold, pounds=False)
    by_share = a_hold(liquid_kg=None, liquid_volume_fraction=none, dry_ice_kg=unknown)
    assert "Liquid: " not in text.inside(by_share, pounds=False)
    assert "Liquid: 0 g" in text.inside(a_hold(liquid_kg=none, dry_ice_kg=none), pounds=False)


def test_duration() -> None:
    assert text.duration(59.9) == "0:59"
    assert text.duration(3661) == "1:01:01"
    assert text.duration(None) == "–"


def test_events_are_shown_in_words_not_in_names_of_files() -> None:
    event = Event(1.0, EventKind.VERDICT, "hold 1: two_phase. Liquid: still rising.")
    assert text.event_words(event) == "Hold 1: liquid and vapour. Liquid: still rising."
    event = Event(1.0, EventKind.PROMPT, "vent_again: Liquid: vent again. Why.")
    assert text.event_words(event) == "Liquid: vent again. Why."


def test_hold_clock_says_time_and_time_left_at_least() -> None:
    assert text.hold_clock(a_hold(), 300.0) == "Hold 1: 4:00 · 2:00 left at least"
    assert text.hold_clock(a_hold(closed=True), 300.0) == ""


def test_at_the_triple_point_is_neither_above_nor_below() -> None:
    def caption(margin_pa: float) -> str:
        return shown(a_view(TRIPLE_PA + margin_pa), 0.1, UnitChoice.BAR).margin_caption

    assert caption(400.0) == caption(-400.0) == "AT the triple point"
    assert caption(-600.0) == "BELOW the triple point"
    assert caption(600.0) == "above the triple point"


@pytest.mark.parametrize("palette", PALETTES.values(), ids=lambda p: p.name)
def test_a_margin_below_the_triple_point_has_a_sign_and_warns(qtbot, look, clock, palette) -> None:
    feed = StandingFeed(a_view(TRIPLE_PA - 354_000.0), Mode.LIVE)
    look.palette = palette
    page = VentPage(feed, look, clock)
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    page.tick()

    def ground() -> str:
        image = page.panel.margin.grab().toImage()
        return image.pixelColor(image.width() - 3, image.height() // 2).name()

    assert page.panel.shown.margin == "−3.54"
    assert ground() == palette.danger.ground
    feed.view = a_view(TRIPLE_PA - 354_000.0, vapor_only_since_s=200.0)  # that is the way to zero
    page.tick()
    assert page.panel.shown.margin == "−3.54"
    assert ground() == palette.ink
    feed.view = a_view()
    page.tick()
    assert page.panel.shown.margin == "2.42"
    assert ground() not in (palette.ink, palette.danger.ground)
    feed.view = a_view(TRIPLE_PA - 400.0)
    page.tick()
    assert page.panel.shown.margin == "0.00"
    assert ground() not in (palette.ink, palette.danger.ground)


def test_time_to_the_stop_pressure_is_a_span_that_says_how_sure() -> None:
    falling = a_view(
        9e5, vent_open=True, seconds_to_stop=44.0, running_hold=None,
        stop_in_s=Bounds(70.0, 50.0, 110.0, 0.9),
    )  # fmt: skip
    assert shown(falling, 0.1, UnitChoice.BAR).close_in == "stop in 0:50 to 1:50 (90 %)"
    bare = replace(falling, stop_in_s=None)
    assert shown(bare, 0.1, UnitChoice.BAR).close_in == "stop pressure in 0:44"
    closed = replace(falling, vent_open=False)
    assert shown(closed, 0.1, UnitChoice.BAR).close_in == ""


def test_a_screen_reader_hears_a_name_once(qtbot) -> None:
    row = StatusRow()
    qtbot.addWidget(row)
    row.valve.say("vent valve: CLOSED")
    assert row.valve.accessibleName() == "vent valve: CLOSED"
    row.recording.say("recording")
    assert row.recording.accessibleName() == "recording"
    row.temperature.say("-20.0 °C")
    assert row.temperature.accessibleName() == "temperature: -20.0 °C"


@pytest.mark.parametrize(("language", "margin"), [("de", "Abstand"), ("es", "margen")])
def test_names_for_a_screen_reader_are_in_the_language_of_the_screen(
    qtbot, qapp, language: str, margin: str
) -> None:
    install(qapp, language)
    try:
        figure = Figure(translate("Spoken", "margin"))
        qtbot.addWidget(figure)
        figure.show_figure("1,2", "bar", "", stale=False)
        assert figure.accessibleName().startswith(f"{margin}: ")
        panel = VentPanel()
        qtbot.addWidget(panel)
        panel.margin.show_figure("1,2", "bar", "")
        assert panel.margin.accessibleName().startswith(f"{margin}: ")
    finally:
        install(qapp, "en")


@pytest.mark.parametrize(("unit", "words"), [("bar_g", "637 mbar/min"), ("psig", "9.2 psi/min")])
def test_the_figures_rate_is_in_the_unit_of_the_reason(unit: str, words: str) -> None:
    slope_pa_per_s = 637e2 / 60.0
    assert text.rate(-slope_pa_per_s, unit) == f"falling {words}"


@pytest.mark.parametrize("pressure_unit", ["bar_g", "psig", "kPa_g"])
@pytest.mark.parametrize("fall_pa_per_s", [130.0, 1000.0, 1999.0, 9000.0])
@pytest.mark.parametrize(("unit", "warmth"), [("bar_g", "degC"), ("psig", "degF")])
def test_prompt_and_figures_say_one_fall_in_one_unit(
    pressure_unit: str, fall_pa_per_s: float, unit: str, warmth: str
) -> None:
    at_pa = 6.4e5
    situation = Situation(
        setup=Setup(pressure_unit=pressure_unit), latest=Reading(100.0, at_pa, 250.0),
        stale=False, vent_open=True, vented=True, stop_pa=6.2e5, lead_pa=1e5,
        rate_pa_per_s=-fall_pa_per_s, high_limit_pa=None, gauge_fault=None, plateau=None,
        cleared=False, solid_seen=False, low_hold_done=False, hold=None, hold_age_s=None,
    )  # fmt: skip
    said = venting(situation)
    assert said is not None
    speak_units(unit, warmth)
    assert text.rate(-fall_pa_per_s, unit) in spoken(said[2])


def test_a_gauge_is_the_first_choice(qtbot, look) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    assert window.start_page.cards[0].key.accessibleName() == "Connect a gauge"


def test_what_may_stay_empty_says_so_and_examples_say_that_they_are() -> None:
    assert optional_words(field_words("relief_pressure")).endswith("(optional)")
    assert example_words("relief_pressure").startswith("e.g. ")


def test_the_words_of_the_stop_line_are_whole_in_a_low_plot(qtbot, look) -> None:
    plot = TracePlot()
    qtbot.addWidget(plot)
    plot.resize(620, 210)
    plot.set_sizes(look.sizes(plot))
    plot.show()
    seen = a_view(pressure_pa=TRIPLE_PA, at_s=300.0, rate_pa_per_s=0.0)
    traces = Traces()
    for at in range(301):  # stays below the stop line: the plot ends just above that
        traces.append(Reading(float(at), TRIPLE_PA - 4e5 * (1.0 - at / 300.0), 250.0))
    for _ in range(2):
        plot.show_trace(traces, len(traces), seen)
        QApplication.processEvents()
    view = plot.pressure.getViewBox().sceneBoundingRect()
    for level in (plot._stop, plot._triple):
        words = level.label.mapRectToScene(level.label.boundingRect())
        assert view.adjusted(-1, -1, 1, 1).contains(words)


@pytest.mark.parametrize("near", ["left", "right"])
def test_the_words_of_the_stop_line_keep_clear_of_the_trace(qtbot, look, near: str) -> None:
    plot = TracePlot()
    qtbot.addWidget(plot)
    plot.resize(420, 400)
    plot.set_sizes(look.sizes(plot))
    plot.show()
    seen = a_view(pressure_pa=STOP_PA, at_s=300.0, rate_pa_per_s=0.0)
    traces = Traces()
    for at in range(301):  # one end lies just under the line, where the words would stand first
        low = at >= 200 if near == "right" else at < 120
        traces.append(Reading(float(at), STOP_PA - 2e4 if low else 900_000.0, 250.0))
    for _ in range(2):  # the second time with the range settled
        plot.show_trace(traces, len(traces), seen)
        QApplication.processEvents()
    words = plot._stop.label.mapRectToScene(plot._stop.label.boundingRect())
    box = plot.pressure.getViewBox().mapSceneToView(words).boundingRect()
    time, value = plot._curves["pressure"].getData()
    inside = (time >= box.left()) & (time <= box.right())
    inside &= (value >= box.top()) & (value <= box.bottom())
    assert not inside.any()


def test_a_valve_that_nobody_recorded_is_not_said_as_a_fact() -> None:
    def valve(**changes: object) -> str:
        return shown(a_view(**changes), 0.1, UnitChoice.BAR).vent

    closed = Event(50.0, EventKind.VENT_CLOSED, "vent closed, found from the pressure")
    assert valve(valve_told=True) == "vent valve: CLOSED"
    assert valve(valve_told=True, vent_open=True) == "vent valve: OPEN"
    assert valve(vent_open=True) == "vent OPEN, by the pressure"
    assert valve(events=(closed,)) == "vent CLOSED, by the pressure"
    assert valve() == "vent valve: not recorded"
    assert valve(vent_open=None) == "vent valve: not known"


def test_a_rise_that_may_be_a_leaking_valve_is_not_called_liquid_inside() -> None:
    assert text.inside(a_hold(), pounds=False).startswith("Inside: liquid and vapour")
    unsure = a_hold(may_leak_by=True)
    assert text.inside(unsure, pounds=False).startswith("Inside: liquid, or leak-by")


@pytest.mark.parametrize(
    ("said", "kept"),
    [
        ("Before the vent: 0:23 · rising 1.22 bar/min", ["1.22 bar/min"]),
        ("Indique el volumen del tramo y los °C o bar g de la carga.", ["bar g"]),
        ("Hold 2: stop in 0:43 to 1:31 (90 %) at 5.21 bar g or 75.6 psig", ["90 %", "5.21 bar g"]),
    ],
)
def test_no_line_ends_within_a_figure_and_its_unit(qtbot, said: str, kept: list[str]) -> None:
    """Seen on small screens: "rising 1.22 bar/" over "min", "bar" over "g"."""
    label = FitLabel(max_px=20, bold=True)
    qtbot.addWidget(label)
    label.say(said)
    painted = label.painted
    plain = painted.replace("\u2060", "").replace("\u00a0", " ")
    assert plain == said
    layout = QTextLayout(painted, label.font())
    for width in range(120, 500, 5):
        layout.beginLayout()
        lines = []
        while (line := layout.createLine()).isValid():
            line.setLineWidth(width)
            lines.append(painted[line.textStart() : line.textStart() + line.textLength()])
        layout.endLayout()
        whole = [one.replace("\u2060", "").replace("\u00a0", " ") for one in lines]
        for figure in kept:
            assert any(figure in one for one in whole), whole
