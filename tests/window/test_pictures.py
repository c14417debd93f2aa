"""The pictures: lines, holds, curves, cursor, views, saving."""

from itertools import combinations

import numpy as np
import pytest
from pyqtgraph import TextItem
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QImage

from co2vent.guidance.session import View
from co2vent.inference.outcome import Bounds, Charge, Curve
from co2vent.readings.log_file import decode_log
from co2vent.readings.reading import Reading
from co2vent.window.export import free_path, log_lines
from co2vent.window.frame import Mode
from co2vent.window.heat_plot import HeatPlot
from co2vent.window.holds_plot import HoldsPlot
from co2vent.window.line_plot import LinePlot
from co2vent.window.name_places import covered, dense, pixels_of
from co2vent.window.text import UnitChoice
from co2vent.window.theme import OUTDOOR, PALETTES, luminance
from co2vent.window.trace_plot import TracePlot
from co2vent.window.traces import Traces
from co2vent.window.vent_page import VentPage
from tests.window.conftest import TRIPLE_PA, StandingFeed, a_hold, a_view, traces_of


@pytest.fixture
def plot(qtbot):
    plot = TracePlot()
    qtbot.addWidget(plot)
    plot.set_theme(OUTDOOR)
    plot.resize(700, 400)
    plot.show()
    return plot


def test_lines_stand_at_the_triple_point_and_the_stop_pressure(plot) -> None:
    view = a_view()
    plot.show_trace(traces_of(view), 301, view)
    # triple point 5.1795 bar abs (Span & Wagner 1996) less one atmosphere
    assert plot._triple.value() == pytest.approx(4.166, abs=0.001)
    assert plot._stop.value() == pytest.approx(5.196, abs=0.001)
    assert plot._triple.label.format == "triple point 4.17 bar g"


def test_axes_say_the_unit(plot) -> None:
    view = a_view()
    plot.set_units(UnitChoice.PSI)
    plot.show_trace(traces_of(view), 301, view)
    assert plot.pressure.getAxis("left").labelText == "psig"
    assert plot.temperature.getAxis("left").labelText == "°F"


def test_a_persons_zoom_survives_new_readings(plot) -> None:
    view = a_view()
    traces = traces_of(view)
    plot.show_trace(traces, 200, view)
    plot.pressure.setXRange(100, 150, padding=0)
    plot.range.taken_over()
    plot.show_trace(traces, 301, view)
    assert plot.pressure.viewRange()[0] == pytest.approx([100, 150])
    plot.next_extent()
    plot.show_trace(traces, 301, view)
    assert plot.pressure.viewRange()[0][1] > 300


def test_curves_of_the_hold_are_drawn_and_named(plot) -> None:
    curves = (
        Curve(Charge.VAPOR_ONLY, (60.0, 300.0), (6.3e5, 7.0e5)),
        Curve(Charge.TWO_PHASE, (60.0, 300.0), (6.3e5, 7.2e5)),
    )
    hold = a_hold(curves=curves)
    view = a_view(holds=(hold,), running_hold=hold)
    plot.show_trace(traces_of(view), 301, view)
    assert plot.holds._vapor.getData()[1][-1] == pytest.approx(7.0 - 1.01325)
    assert plot.holds._liquid_words.isVisible()
    bare = a_view(holds=(a_hold(),), running_hold=None)
    plot.show_trace(traces_of(bare), 301, bare)
    assert not plot.holds._liquid_words.isVisible()


def _two_curves(apart_pa: float) -> View:
    curves = (
        Curve(Charge.VAPOR_ONLY, (60.0, 180.0, 300.0), (6.3e5, 6.9e5, 7.0e5)),
        Curve(Charge.TWO_PHASE, (60.0, 180.0, 300.0), (6.3e5, 6.9e5, 7.0e5 + apart_pa)),
    )
    hold = a_hold(curves=curves)
    return a_view(holds=(hold,), running_hold=hold)


@pytest.mark.parametrize("apart_pa", [0.0, 2e3, 2e4, 2e5])
def test_names_of_the_curves_keep_apart_however_close_they_are(plot, apart_pa: float) -> None:
    view = _two_curves(apart_pa)
    plot.show_trace(traces_of(view), 301, view)
    marks = plot.holds
    one, other = (
        words.mapRectToScene(words.boundingRect())
        for words in (marks._vapor_words, marks._liquid_words)
    )
    assert not one.intersects(other)
    assert marks._vapor_words.toPlainText()[0] != marks._liquid_words.toPlainText()[0]


@pytest.mark.parametrize("apart_pa", [0.0, 2e3, 2e4])
@pytest.mark.parametrize("low_pa", [6.25e5, 6.9e5])
def test_names_in_the_trace_keep_clear_of_its_lines(plot, apart_pa: float, low_pa: float) -> None:
    curves = tuple(
        Curve(charge, (60.0, 180.0, 300.0), (low_pa, low_pa + 6e4, low_pa + 7e4 + more))
        for charge, more in ((Charge.VAPOR_ONLY, 0.0), (Charge.TWO_PHASE, apart_pa))
    )
    hold = a_hold(number=0, start_s=0.0, curves=curves)  # its number stands where the vent began
    view = a_view(holds=(hold,), running_hold=hold, at_s=300.0)
    traces = Traces()
    for at in range(301):
        pressure_pa = max(9e5 - 6e3 * at, low_pa + 250.0 * at)
        traces.append(Reading(float(at), pressure_pa, 250.0))
    plot.show_trace(traces, 301, view)
    plot.show_trace(traces, 301, view)
    box, marks = plot.pressure.getViewBox(), plot.holds
    lines = np.vstack(
        [dense(*pixels_of(box, *line).T) for line in [*plot._trace_lines(), *plot._level_lines()]]
        + [dense(*pixels_of(box, *c.getData()).T) for c in (marks._vapor, marks._liquid)]
    )
    (number,) = (shade.label for shade in marks._shades.values())
    for words in (marks._vapor_words, marks._liquid_words, number):
        words.updateTransform(force=True)
        place = box.mapRectFromScene(words.mapRectToScene(words.boundingRect()))
        assert covered(place, lines, grounded=words is not number) == 0, words.toPlainText()


def _opaque(words: TextItem, *colours: str) -> bool:
    brush = words.fill
    return brush.style() == Qt.BrushStyle.SolidPattern and brush.color().name() in colours


@pytest.mark.parametrize("palette", PALETTES.values(), ids=lambda p: p.name)
def test_no_curve_strikes_through_a_name(plot, qtbot, palette) -> None:
    plot.set_theme(palette)
    view = _two_curves(0.0)
    plot.show_trace(traces_of(view), 301, view)
    marks = plot.holds
    for level in (plot._triple, plot._stop):
        assert _opaque(level.label, palette.page)
        assert level.zValue() > max(marks._vapor.zValue(), marks._vapor_signs.zValue())
    for words in (marks._vapor_words, marks._liquid_words):
        assert _opaque(words, palette.hold_shade)
    heat = HeatPlot()
    qtbot.addWidget(heat)
    heat.set_theme(palette)
    assert all(_opaque(words, palette.page) for words in heat._words.values())
    holds = HoldsPlot()
    qtbot.addWidget(holds)
    holds.set_theme(palette)
    holds.show_holds(traces_of(view), 301, view)
    assert all(_opaque(name, palette.page) for name, _curve in holds._names)
    assert all(name.zValue() > curve.zValue() for name, curve in holds._names)


def test_names_of_compared_holds_differ_as_their_lines_do(qtbot) -> None:
    holds = tuple(a_hold(number=number) for number in (1, 2, 3, 4))
    view = a_view(holds=holds)
    plot = HoldsPlot()
    qtbot.addWidget(plot)
    plot.compare_with(traces_of(view), holds, "hold")  # a log may be called so
    plot.show_holds(traces_of(view), 301, view)
    pieces = [
        (name.toPlainText().startswith("○"), name.toPlainText()[-3:]) for name, _ in plot._names
    ]
    assert len(set(pieces)) == len(pieces) == 8
    assert all(piece.strip("━ ·") == "" for _, piece in pieces)  # a piece of the line
    styles = [curve.opts["pen"].style() for _, curve in plot._names]
    assert len({(style, piece) for style, (_, piece) in zip(styles, pieces, strict=True)}) == 4


@pytest.mark.parametrize("palette", PALETTES.values(), ids=lambda p: p.name)
def test_curves_on_each_other_are_told_apart_in_greyscale(plot, palette) -> None:
    plot.set_theme(palette)
    view = _two_curves(0.0)
    plot.show_trace(traces_of(view), 301, view)
    for item in plot._curves.values():
        item.setVisible(False)  # the trace itself does not count
    image = plot.grab().toImage().convertToFormat(QImage.Format.Format_Grayscale8)
    marks = plot.holds
    seen = []
    for signs in (marks._vapor_signs, marks._liquid_signs):
        x, y = signs.getData()
        at = plot.pressure.getViewBox().mapViewToScene(QPointF(float(x[1]), float(y[1])))
        place = plot.layout_widget.mapTo(plot, plot.layout_widget.mapFromScene(at))
        seen.append(image.pixelColor(place).value())
    ground = luminance(palette.hold_shade) > 0.5
    hollow, filled = seen
    assert abs(hollow - filled) > 80, seen  # of 255: one is the ground, the other the line
    assert (hollow > filled) is ground


def test_foreseen_fall_has_a_band_that_says_how_sure(plot) -> None:
    view = a_view(
        9e5, vent_open=True, rate_pa_per_s=-5e3, holds=(), running_hold=None,
        stop_in_s=Bounds(70.0, 50.0, 110.0, 0.9),
    )  # fmt: skip
    plot.show_trace(traces_of(view), 301, view)
    stop = plot._scale.up(view.stop_pressure_pa)
    fall = plot.fall
    for curve, seconds in ((fall.early, 50.0), (fall.line, 70.0), (fall.late, 110.0)):
        time_s, pressure = curve.getData()
        assert time_s[-1] == pytest.approx(300.0 + seconds)
        assert pressure[-1] == pytest.approx(stop)
    assert plot.fall.words.toPlainText() == "stop in 0:50 to 1:50 (90 %)"
    # equal shares in equal times (choked flow): half of the time, the geometric mean
    middle = np.interp(335.0, *plot.fall.line.getData())
    expected_pa = (9e5 * view.stop_pressure_pa) ** 0.5
    assert middle == pytest.approx(float(plot._scale.up(expected_pa)), rel=0.01)


@pytest.mark.parametrize("changes", [{"vent_open": False}, {"stale": True}, {"stop_in_s": None}])
def test_no_band_where_nothing_is_foreseen(plot, changes) -> None:
    falls = {
        "vent_open": True, "rate_pa_per_s": -5e3, "holds": (), "running_hold": None,
        "stop_in_s": Bounds(70.0, 50.0, 110.0, 0.9),
    }  # fmt: skip
    view = a_view(9e5, **{**falls, **changes})
    plot.show_trace(traces_of(view), 301, view)
    assert not plot.fall.words.isVisible()
    assert plot.fall.early.getData()[0] is None or not plot.fall.early.getData()[0].size
    straight = plot.fall.line.getData()[0]
    drawn = straight is not None and straight.size > 0
    assert drawn is ("stop_in_s" in changes)  # the present rate alone, as a line without a band


def test_cursor_by_keyboard_says_what_was_measured(plot, qtbot) -> None:
    view = a_view()
    plot.show_trace(traces_of(view), 301, view)
    qtbot.keyClick(plot, Qt.Key.Key_Left)
    assert "bar g" in plot.cursor_line.words
    assert "°C" in plot.cursor_line.words
    plot._put_cursor(290.0)
    row = traces_of(view).count_until(290.0) - 1
    pressure_pa = float(traces_of(view).pressure_pa()[row])
    assert f"{(pressure_pa - 101325) / 1e5:.2f} bar g" in plot.cursor_line.words
    qtbot.keyClick(plot, Qt.Key.Key_Escape)
    assert plot.cursor_line.words == ""


@pytest.mark.parametrize(
    "readings",
    [
        [],
        [Reading(0.0, 6e5)],
        [Reading(0.0, 6e5), Reading(100.0, 6e5, 230.0)],
        [Reading(float(at), 6e5, None) for at in range(5)],
    ],
    ids=["empty", "one", "gap", "no temperature"],
)
def test_thin_data_draw_without_complaint(plot, qtbot, readings) -> None:
    view = a_view(holds=(), running_hold=None)
    traces = Traces()
    for reading in readings:
        traces.append(reading)
    plot.show_trace(traces, len(traces), view)
    line = LinePlot()
    qtbot.addWidget(line)
    line.set_theme(OUTDOOR)
    line.show_path(traces, len(traces), view)
    plot.grab()
    line.grab()


def test_diagram_has_the_path_and_the_lines(qtbot) -> None:
    view = a_view()
    line = LinePlot()
    qtbot.addWidget(line)
    line.set_theme(OUTDOOR)
    line.show_path(traces_of(view), 301, view)
    temperature_c, pressure = line._saturation.getData()
    # saturation at -20 degC: 19.70 bar abs (Span & Wagner tables)
    assert np.interp(-20.0, temperature_c, pressure) + 1.01325 == pytest.approx(19.70, abs=0.02)
    temperature_c, pressure = line._sublimation.getData()
    # normal sublimation point: -78.46 degC at one atmosphere
    assert np.interp(-78.46, temperature_c, pressure) == pytest.approx(0.0, abs=0.01)
    assert line._path.getData()[0].size == 301


def test_names_of_compared_holds_keep_clear_of_all_curves(qtbot) -> None:
    def vent(rise_pa: float, noise_pa: float) -> Traces:
        traces = Traces()
        for at in range(601):
            gain = rise_pa * (1.0 - np.exp(-at / 60.0)) + noise_pa * (at % 2)
            traces.append(Reading(float(at), 6.3e5 + gain, 250.0))
        return traces

    holds = (a_hold(number=1, start_s=0.0, end_s=540.0), a_hold(number=2, start_s=0.0, end_s=600.0))
    view = a_view(holds=holds)
    plot = HoldsPlot()
    qtbot.addWidget(plot)
    plot.set_theme(OUTDOOR)
    plot.resize(560, 320)
    plot.show()
    plot.compare_with(vent(6e4, 300.0), holds, "vapour-only")
    for _ in range(2):
        plot.show_holds(vent(6e5, 300.0), 601, view)
    box = plot.plot.getViewBox()
    lines = np.vstack([dense(*pixels_of(box, *curve.getData()).T) for _label, curve in plot._names])
    for label, _curve in plot._names:
        label.updateTransform(force=True)
        place = box.mapRectFromScene(label.mapRectToScene(label.boundingRect()))
        assert covered(place, lines) == 0, label.toPlainText()


PATHS_C_BAR = {
    "dry ice": [(-8, 26), (-20, 7), (-28, 4.17), (-45, 0.5), (-40, 4.17), (-50, 4.17)],
    "liquid": [(-8, 26), (-12, 14), (-43, 5.2), (-44, 6.5), (-32, 11.5)],
    "vapour": [(3, 26), (3, 5.2), (7, 5.4)],
    "along the foot": [(-8, 26), (-56, 4.5), (25, 4.5), (25, 0.3), (-56, 0.3)],
}


@pytest.mark.parametrize("size", [(560, 320), (400, 240), (320, 230), (1100, 700)])
@pytest.mark.parametrize("path", PATHS_C_BAR.values(), ids=list(PATHS_C_BAR))
@pytest.mark.parametrize("units", [UnitChoice.BAR, UnitChoice.PSI])
def test_the_names_of_the_diagram_keep_clear_of_its_lines(qtbot, units, path, size) -> None:
    traces = Traces()
    for at, (celsius, bar_g) in enumerate(path):
        traces.append(Reading(float(at), (bar_g + 1.01325) * 1e5, celsius + 273.15))
    celsius, bar_g = path[-1]
    latest = Reading(float(len(path)), (bar_g + 1.01325) * 1e5, celsius + 273.15)
    line = LinePlot()
    qtbot.addWidget(line)
    line.set_theme(OUTDOOR)
    line.set_units(units)
    line.resize(*size)
    line.show()
    line.show_path(traces, len(path), a_view(latest=latest))
    view_box = line.plot.getViewBox()
    origin = view_box.mapRectToScene(view_box.boundingRect()).topLeft()
    room = view_box.boundingRect().translated(origin)
    lines = line._lines_px() + [origin.x(), origin.y()]
    boxes = {}
    for name, words in line._words.items():
        words.updateTransform(force=True)
        boxes[name] = words.mapRectToScene(words.boundingRect())
        assert room.contains(boxes[name].adjusted(4, 4, -4, -4)), name
    for name, other in combinations(boxes, 2):
        assert covered(boxes[name], lines[:0], [boxes[other]]) == 0, (name, other)
    for name, box in boxes.items():
        struck = covered(box, lines)
        assert not struck or line._words[name].fill.style() != Qt.BrushStyle.NoBrush, name
        assert not struck or path is PATHS_C_BAR["along the foot"] or size[0] <= 400, name


def test_holds_lie_over_each_other_from_their_own_beginning(qtbot) -> None:
    view = a_view()
    plot = HoldsPlot()
    qtbot.addWidget(plot)
    plot.set_theme(OUTDOOR)
    plot.compare_with(traces_of(view), view.holds, "other.csv")
    plot.show_holds(traces_of(view), 301, view)
    curves = [curve for _name, curve in plot._names]
    assert len(curves) == 2
    assert curves[0].getData()[0][0] == pytest.approx(0.0)


def test_names_of_equal_holds_lie_apart_and_a_second_vent_has_a_sign(qtbot) -> None:
    holds = tuple(a_hold(number=number) for number in (1, 2, 3))
    view = a_view(holds=holds)
    plot = HoldsPlot()
    qtbot.addWidget(plot)
    plot.set_theme(OUTDOOR)
    plot.resize(600, 300)
    plot.show()
    plot.compare_with(traces_of(view), holds[:1], "other")
    plot.show_holds(traces_of(view), 301, view)
    plot.grab()
    boxes = [name.mapRectToScene(name.boundingRect()) for name, _curve in plot._names]
    for at, box in enumerate(boxes):
        letters = box.adjusted(4, 4, -4, -4)  # the margin of a text in a picture
        assert not any(letters.intersects(other) for other in boxes[at + 1 :])
    names = [name.toPlainText() for name, _curve in plot._names]
    assert [name[0] == "○" for name in names] == [False, False, False, True]


def test_saved_readings_are_a_log_that_says_where_it_came_from() -> None:
    view = a_view()
    traces = traces_of(view)
    data = "\n".join(log_lines(traces, 301, view, Mode.CLASS)).encode()
    log = decode_log(data)
    assert log.setup.simulated
    assert log.metadata["exported_from"] == "class"
    np.testing.assert_allclose(log.readings.pressure_pa, traces.pressure_pa(), rtol=1e-5)
    assert not log.rejections


def test_saving_makes_new_files_only(tmp_path) -> None:
    (tmp_path / "live.csv").write_text("old")
    assert free_path(tmp_path, "live", "csv").name == "live-2.csv"


def test_everything_can_be_saved_from_the_page(qtbot, look, clock, tmp_path) -> None:
    look.kept["folder"] = str(tmp_path / "saved")
    page = VentPage(StandingFeed(a_view(), Mode.REPLAY), look, clock)
    page.set_commands([])
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    page.start()
    qtbot.waitUntil(lambda: page._plots is not None, timeout=5000)
    page.tick()
    page.save_picture()
    page.save_drawing()
    page.save_readings()
    page.close_feed()
    saved = sorted(path.suffix for path in (tmp_path / "saved").iterdir())
    assert saved == [".csv", ".png", ".svg"]
    svg = next((tmp_path / "saved").glob("*.svg")).read_text()
    assert "REPLAY" in svg
    assert page.message.text().startswith("Saved:")


def test_views_turn_with_one_key(qtbot, look, clock) -> None:
    page = VentPage(StandingFeed(a_view(), Mode.REPLAY), look, clock)
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    page.start()
    qtbot.waitUntil(lambda: page._plots is not None and page._plots.trace.isVisible(), timeout=5000)
    seen = []
    for _ in range(4):
        plots = page._plots
        seen.append([p.isVisible() for p in (plots.trace, plots.line, plots.events, plots.holds)])
        page.next_view()
    assert seen == [[at == place for at in range(4)] for place in range(4)]
    page.close_feed()


def test_help_and_further_keys_lie_over_the_pictures(qtbot, look, clock) -> None:
    page = VentPage(StandingFeed(a_view(), Mode.REPLAY), look, clock)
    page.set_commands([])
    qtbot.addWidget(page)
    page.resize(1024, 600)
    page.show()
    page.start()
    qtbot.waitUntil(lambda: page._plots is not None, timeout=5000)
    page.toggle_help()
    assert "first minute" in page._help.text()
    assert not page._plots.isVisible()
    assert page.panel.prompt.isVisible()
    page.toggle_more()
    assert page._more.isVisible()
    assert not page._help.isVisible()
    page.toggle_more()
    assert page._plots.isVisible()
    page.close_feed()


def test_zoom_turns_to_hold_close_up_and_whole(plot) -> None:
    view = a_view(at_s=600.0)
    traces = Traces()
    for at in range(601):
        pressure_pa = 2.0e6 - 5e4 * at if at < 26 else 7.0e5 + 100.0 * at
        traces.append(Reading(float(at), pressure_pa))
    hold = a_hold(start_s=100.0, end_s=600.0)
    view = a_view(7.6e5, 600.0, holds=(hold,), running_hold=hold)
    seen = []
    for _ in range(4):
        plot.show_trace(traces, 601, view)
        (start, _end), (low, high) = plot.pressure.viewRange()
        seen.append((start > 30.0, high - low < 1.0))
        plot.next_extent()
    assert seen == [(True, False), (True, True), (False, False), (True, False)]


@pytest.mark.parametrize("size", [(620, 260), (420, 400), (900, 500)])
@pytest.mark.parametrize("end_pa", [-43e3, -2e3, 4e3, 5e4, 3e5])
@pytest.mark.parametrize("vents", [True, False])
def test_no_name_hides_where_the_pressure_is(qtbot, size, end_pa: float, vents: bool) -> None:
    """Least of all under the triple point's line, where the trace runs along it."""
    plot = TracePlot()
    qtbot.addWidget(plot)
    plot.set_theme(OUTDOOR)
    plot.resize(*size)
    plot.show()
    traces = Traces()
    for at in range(301):
        pressure_pa = TRIPLE_PA + end_pa + (2.2e6 * np.exp(-(at - 120) / 20) if at > 120 else 2.2e6)
        traces.append(Reading(float(at), pressure_pa, 250.0))
    bounds = Bounds(60.0, 40.0, 100.0) if vents and end_pa > 2e5 else None
    view = a_view(
        pressure_pa=TRIPLE_PA + end_pa, vent_open=vents, stop_in_s=bounds, running_hold=None,
        rate_pa_per_s=-2e3 if vents else 0.0,
    )  # fmt: skip
    for _ in range(2):
        plot.show_trace(traces, 301, view)
    box = plot.pressure.getViewBox()
    lines = np.vstack([dense(*pixels_of(box, *line).T) for line in plot._trace_lines()])
    for words in (plot._stop.label, plot._triple.label, plot.fall.words):
        if words.isVisible():
            place = box.mapRectFromScene(words.mapRectToScene(words.boundingRect()))
            assert covered(place, lines, grounded=True) == 0, words.toPlainText()
