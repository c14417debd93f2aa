"""The log p-h diagram: values from published tables, honest marks, plain exports."""

import csv

import numpy as np
import pytest
from PySide6.QtCore import QLocale

from co2vent.inference.outcome import Charge
from co2vent.readings.log_file import decode_log
from co2vent.readings.reading import Gas, Reading, Setup
from co2vent.window.export import log_lines
from co2vent.window.frame import Mode
from co2vent.window.heat_plot import HeatPlot
from co2vent.window.plots_panel import PlotsPanel
from co2vent.window.sizes import sizes_for
from co2vent.window.text import UnitChoice
from co2vent.window.theme import OUTDOOR, PALETTES
from co2vent.window.traces import Traces
from co2vent.window.vapour_path import vapour_path
from co2vent.window.vent_page import VentPage
from tests.window.conftest import StandingFeed, a_hold, a_view, traces_of

BTU_LB = 2326.0  # J/kg, international table Btu and pound, exact by definition


@pytest.fixture
def plot(qtbot):
    plot = HeatPlot()
    qtbot.addWidget(plot)
    plot.set_sizes(sizes_for(1024, 600, 96.0))
    plot.set_theme(OUTDOOR)
    plot.resize(600, 330)
    plot.show()
    return plot


def shown(plot, view, rows=301):
    plot.show_path(traces_of(view), rows, view)
    return plot


def test_dome_is_that_of_a_published_table(plot) -> None:
    view = a_view()
    heat, up = shown(plot, view)._dome.getData()
    top = int(np.argmax(up))
    # Ohio University, thermodynamics property tables, R744: 0 degC, 3.4851 MPa,
    # hf 200.00, hg 430.89 kJ/kg; -20 degC, 1.9696 MPa, 154.45 and 436.89
    for pressure_pa, liquid, vapour in ((3.4851e6, 200.00, 430.89), (1.9696e6, 154.45, 436.89)):
        at = np.log10(pressure_pa)
        assert np.interp(at, up[: top + 1], heat[: top + 1]) == pytest.approx(liquid, abs=0.3)
        assert np.interp(at, up[: top - 1 : -1], heat[: top - 1 : -1]) == pytest.approx(
            vapour, abs=0.3
        )
    # critical point: 304.1282 K, 7.3773 MPa (Span & Wagner 1996)
    assert up[top] == pytest.approx(np.log10(7.3773e6), abs=1e-4)


def test_triple_point_line_reaches_from_dry_ice_to_vapour(plot) -> None:
    heat, up = shown(plot, a_view())._triple.getData()
    assert up == pytest.approx(np.log10(517_950.0), abs=1e-6)
    # sublimation at the triple point: heats of fusion 201.7 (Jaeger & Span 2012) and of
    # vaporisation 350.4 kJ/kg (Span & Wagner 1996) together
    assert heat[1] - heat[0] == pytest.approx(552.0, abs=2.0)


def test_pressures_stand_by_logarithm_and_read_as_gauge(plot) -> None:
    shown(plot, a_view())
    axis = plot._pressures
    assert axis.place(0.0) == pytest.approx(np.log10(101_325.0))
    (_spacing, places), *_ = axis.tickValues(*plot.plot.viewRange()[1], 300.0)
    assert "10" in axis.tickStrings(places, 1.0, 1.0)
    assert plot.plot.getAxis("left").labelText == "bar g"
    plot.set_units(UnitChoice.PSI)
    shown(plot, a_view())
    assert axis.place(100.0) == pytest.approx(np.log10(101_325.0 + 100 * 6894.757), abs=1e-6)
    assert plot.plot.getAxis("left").labelText == "psig"


def test_heat_names_its_unit_and_its_reference(plot) -> None:
    shown(plot, a_view())
    label = plot.plot.getAxis("bottom").labelText
    assert "kJ/kg" in label
    assert "200 = boiling liquid at 0 °C" in label
    plot.set_units(UnitChoice.PSI)
    heat, _up = shown(plot, a_view())._triple.getData()
    label = plot.plot.getAxis("bottom").labelText
    assert "Btu/lb" in label
    assert "86 = boiling liquid at 32 °F" in label  # 200 kJ/kg is 85.98 Btu/lb
    assert (heat[1] - heat[0]) * BTU_LB == pytest.approx(552e3, abs=2e3)


@pytest.mark.parametrize("screen", [(1024, 600), (1920, 1080), (3840, 2160)], ids=str)
def test_name_of_the_heat_axis_is_whole_at_every_size(plot, screen) -> None:
    plot.resize(round(screen[0] * 0.55), round(screen[1] * 0.5))
    plot.set_sizes(sizes_for(*screen, 96.0))
    shown(plot, a_view())
    plot.grab()
    label = plot.plot.getAxis("bottom").label
    box = label.mapRectToScene(label.boundingRect())
    assert plot.widget.sceneRect().adjusted(-1, -1, 1, 4).contains(box)


def test_vapour_is_warm_only_where_the_clamp_is_clearly_above_boiling() -> None:
    # boiling at 6.0 bar abs is 220.1 K (-53.1 degC; Span & Wagner tables)
    path = vapour_path([6e5] * 5, [np.nan, 215.0, 221.0, 222.9, 263.15])
    assert path.by_clamp.tolist() == [False, False, False, False, True]
    saturated = path.enthalpy_j_kg[0]
    assert path.enthalpy_j_kg[1:4] == pytest.approx(saturated)
    # the gas's heat capacity there is 0.8 to 0.95 kJ/kgK (Span & Wagner tables)
    assert 0.8e3 < (path.enthalpy_j_kg[4] - saturated) / (263.15 - 220.1) < 0.95e3


def test_what_no_state_can_be_worked_out_for_is_left_out() -> None:
    path = vapour_path([np.nan, 9e6, 1e2, 6.0e5], [250.0, 310.0, 250.0, 400.0])
    assert np.isnan(path.enthalpy_j_kg).all()


def test_measured_and_assumed_are_drawn_apart_and_said(plot) -> None:
    view = a_view(holds=(), running_hold=None)
    traces = Traces()
    for at in range(100):
        traces.append(Reading(float(at), 6e5, 260.0 if at < 50 else None))
    plot.show_path(traces, 100, view)
    by_clamp, assumed = plot._path.getData()[0], plot._assumed.getData()[0]
    assert np.isfinite(by_clamp[:50]).all()
    assert np.isnan(by_clamp[50:]).all()
    assert np.isfinite(assumed[50:]).all()
    assert np.isnan(assumed[1:49]).all()
    assert plot._path.opts["pen"].style() != plot._assumed.opts["pen"].style()
    note = plot._words["note"].toPlainText()
    assert "Measured: pressure" in note
    assert note.count("assumed") == 2


def _mark(plot) -> str:
    return plot._now.opts["brush"].color().name()


def test_mark_is_filled_only_for_vapour_by_the_clamp(plot) -> None:
    warm = Reading(300.0, 6e5, 263.0)
    plot.show_path(traces_of(a_view()), 301, a_view(latest=warm, holds=(), running_hold=None))
    assert _mark(plot) == OUTDOOR.ink
    bare = Reading(300.0, 6e5, None)
    plot.show_path(traces_of(a_view()), 301, a_view(latest=bare, holds=(), running_hold=None))
    assert _mark(plot) == OUTDOOR.page
    assert "assumed" in plot.accessibleDescription()


@pytest.mark.parametrize("charge", [Charge.TWO_PHASE, Charge.SOLID_PRESENT])
def test_a_warm_clamp_makes_no_filled_mark_where_the_hold_shows_liquid(plot, charge) -> None:
    hold = a_hold(charge=charge)
    view = a_view(latest=Reading(300.0, 6e5, 263.0), holds=(hold,), running_hold=hold)
    plot.show_path(traces_of(view), 301, view)
    assert _mark(plot) == OUTDOOR.page
    assert plot._across.opts["pen"].widthF() > 1.0
    assert "not measured" in plot._words["across"].toPlainText()


def test_stale_or_foreign_gas_has_no_present_state(plot) -> None:
    for view in (a_view(stale=True), a_view(setup=Setup(gas=Gas.NITROGEN))):
        plot.show_path(traces_of(view), 301, view)
        assert plot._now.getData()[0].size == 0
        assert plot._across.getData()[0].size == 0
        assert not plot._words["across"].isVisible()
    assert plot._path.getData()[0].size == 0  # nitrogen has no path here


@pytest.mark.parametrize("palette", PALETTES.values(), ids=lambda p: p.name)
@pytest.mark.parametrize("size", [(430, 280), (600, 270), (1500, 800)], ids=str)
def test_words_of_the_diagram_do_not_lie_on_each_other(qtbot, palette, size) -> None:
    plot = HeatPlot()
    qtbot.addWidget(plot)
    plot.set_sizes(sizes_for(1920, 1080, 96.0) if size[0] > 1000 else sizes_for(1024, 600, 96.0))
    plot.set_theme(palette)
    plot.resize(*size)
    plot.show()
    for pressure_pa in (5.0e5, 5.18e5, 6.0e5, 9e5, 30e5):
        view = a_view(latest=Reading(300.0, pressure_pa, 263.0), holds=(), running_hold=None)
        plot.show_path(traces_of(a_view()), 301, view)
        plot.grab()
        seen = [words for words in plot._words.values() if words.isVisible()]
        boxes = [words.mapRectToScene(words.boundingRect()) for words in seen]
        for at, one in enumerate(boxes):
            for other, beside in zip(boxes[at + 1 :], seen[at + 1 :], strict=True):
                common = one.intersected(other)
                touching = (seen[at].toPlainText(), beside.toPlainText(), pressure_pa)
                assert common.height() < 9 or common.width() < 9, touching


def test_it_is_off_at_first_and_reached_by_the_view_key(qtbot, look, clock, tmp_path) -> None:
    look.kept["folder"] = str(tmp_path / "saved")
    page = VentPage(StandingFeed(a_view(), Mode.REPLAY), look, clock)
    page.set_commands([])
    qtbot.addWidget(page)
    page.resize(1920, 1080)
    page.show()
    page.start()
    qtbot.waitUntil(lambda: page._plots is not None and page._plots.trace.isVisible(), timeout=5000)
    plots = page._plots
    assert not plots.heat.isVisible()
    presses = 0
    while not plots.heat.isVisible():
        page.next_view()
        presses += 1
        assert presses < 6
    assert not plots.trace.isVisible()
    page.tick()
    page.save_drawing()
    page.save_readings()
    page.close_feed()
    saved = {path.suffix: path for path in (tmp_path / "saved").iterdir()}
    svg = saved[".svg"].read_text()
    assert "REPLAY" in svg
    assert "critical point" in svg
    assert "vapour_enthalpy_kJ_per_kg" in saved[".csv"].read_text()


def test_saved_path_is_still_a_readings_log_and_says_its_basis() -> None:
    view = a_view()
    traces = Traces()
    for at, clamp_k in enumerate((263.15, None)):
        traces.append(Reading(float(at), 1.9696e6, clamp_k))
    lines = list(log_lines(traces, 2, view, Mode.LIVE, heat=True))
    rows = list(csv.DictReader(line for line in lines if not line.startswith("#")))
    assert [row["enthalpy_from"] for row in rows] == ["clamp", "saturated"]
    # saturated vapour at 19.696 bar abs: 436.89 kJ/kg (Ohio University tables)
    assert float(rows[1]["vapour_enthalpy_kJ_per_kg"]) == pytest.approx(436.89, abs=0.1)
    assert any("200 kJ/kg" in line for line in lines if line.startswith("#"))
    log = decode_log("\n".join(lines).encode())
    assert not log.rejections
    assert len(log.readings) == 2


def test_numbers_follow_the_locale(plot) -> None:
    QLocale.setDefault(QLocale(QLocale.Language.German))
    shown(plot, a_view())
    assert "4,17 bar g" in plot._words["triple"].toPlainText()
    assert plot.plot.getAxis("bottom").tickStrings([-100.0, 2.5], 1.0, 0.5) == ["−100,0", "2,5"]


def test_panel_counts_its_views(qtbot) -> None:
    panel = PlotsPanel()
    qtbot.addWidget(panel)
    panel.resize(600, 300)
    panel.show()
    seen = set()
    for _ in range(5):
        parts = (panel.trace, panel.line, panel.events, panel.holds, panel.heat)
        seen.add(tuple(part.isVisible() for part in parts))
        panel.next_view()
    assert len(seen) == 5
