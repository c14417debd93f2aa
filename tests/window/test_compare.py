"""A second vent laid over a replay: what can't be drawn is said, what is drawn is to scale."""

import numpy as np
import pytest

from co2vent.readings.reading import Reading
from co2vent.window.holds_plot import HoldsPlot
from co2vent.window.traces import Traces
from tests.window.conftest import a_hold, a_view, replayed, vent_log


def _traces(rise_pa_per_s: float = 10.0) -> Traces:
    traces = Traces()
    for at in range(301):
        traces.append(Reading(float(at), 630_000.0 + rise_pa_per_s * max(0, at - 60)))
    return traces


@pytest.fixture
def plot(qtbot) -> HoldsPlot:
    plot = HoldsPlot()
    qtbot.addWidget(plot)
    plot.resize(600, 400)
    plot.show()
    return plot


def _names(plot: HoldsPlot) -> list[str]:
    return [label.textItem.toPlainText() for label, _curve in plot._names]


def test_a_vent_without_a_hold_leaves_the_earlier_comparison(qtbot, look, log, tmp_path) -> None:
    good, empty = tmp_path / "good.csv", tmp_path / "nothing.csv"
    good.write_bytes(vent_log(700))
    lines = vent_log(3).decode().splitlines()
    open_only = [line.replace("closed", "open") for line in lines]
    empty.write_text("\n".join(open_only) + "\n")
    window, page = replayed(qtbot, look, log)
    page.compare(good)
    qtbot.waitUntil(page._plots.holds.isVisible, timeout=10_000)
    page.compare(empty)
    qtbot.waitUntil(lambda: page._other is None, timeout=10_000)
    assert page._plots.holds._other[2] == "good"
    assert "nothing" in page.message.text()
    assert "no hold" in page.message.text()
    window.go_to_start()


def test_rise_begins_at_nought_where_the_evidence_started_anew(plot) -> None:
    hold = a_hold(start_pressure_pa=2e7)  # of another moment than the hold's first reading
    traces = _traces()
    plot.show_holds(traces, len(traces), a_view(holds=(hold,)))
    _time, rise = plot._names[0][1].getData()
    assert rise[0] == 0.0
    assert rise[-1] == pytest.approx(240 * 10.0 / 1e5, rel=1e-3)
    assert np.all(rise >= 0.0)


def test_the_axis_shows_the_unit_that_its_name_says(plot, look) -> None:
    plot.set_sizes(look.sizes(plot))
    traces = _traces(rise_pa_per_s=0.1)  # a rise of 0.24 mbar
    plot.show_holds(traces, len(traces), a_view(holds=(a_hold(),)))
    plot.grab()
    axis = plot.plot.getAxis("left")
    assert axis.autoSIPrefixScale == 1.0
    assert "x0.001" not in axis.labelString()


def test_an_unvented_record_is_not_called_hold_nought(plot) -> None:
    traces = _traces()
    assert plot.compare_with(traces, (a_hold(number=0),), "tuesday")
    plot.show_holds(traces, len(traces), a_view(holds=(a_hold(number=0),)))
    names = [name.rstrip("━ ·") for name in _names(plot)]
    assert names == ["before the vent", "○ tuesday, before the vent"]
