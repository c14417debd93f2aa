"""The section's volume: pipe standards, parts, gas expansion."""

from math import pi

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent.errors import OutOfRangeError, RefusedInputError
from co2vent.planning.expansion import nitrogen_density_kg_m3, volume_by_expansion
from co2vent.planning.pipes import find_pipe, pipe_sizes
from co2vent.planning.volume import PipeRun, find_part, parts, section_volume
from co2vent.readings.reading import Gas

# outer diameter and wall in inches: ASME B36.10M and B36.19M tables; ASTM B280 table 1
PUBLISHED_INCHES = {
    "ASME B36.10M, NPS 1/2, sch 80": (0.840, 0.147),
    "ASME B36.10M, NPS 1, sch 80": (1.315, 0.179),
    "ASME B36.10M, NPS 2, sch 40": (2.375, 0.154),
    "ASME B36.10M, NPS 4, sch 40": (4.500, 0.237),
    "ASME B36.10M, NPS 6, sch 80": (6.625, 0.432),
    "ASME B36.19M, NPS 3, sch 10S": (3.500, 0.120),
    "ASTM B280, 7/8 in OD, annealed": (0.875, 0.045),
    "ASTM B280, 1-3/8 in OD, drawn": (1.375, 0.055),
}


@pytest.mark.parametrize("key", PUBLISHED_INCHES)
def test_sizes_are_those_of_the_standards(key: str) -> None:
    outer, wall = PUBLISHED_INCHES[key]
    size = find_pipe(key)
    assert size.confidence == "published"
    assert size.outer_diameter_m == pytest.approx(outer * 0.0254, abs=1e-5)
    bore = (outer - 2 * wall) * 0.0254
    assert size.bore_m == pytest.approx(bore, abs=1e-5)
    assert size.volume_m3_per_m == pytest.approx(pi / 4 * bore**2, rel=2e-3)


def test_every_size_is_consistent_has_a_source_and_its_own_key() -> None:
    sizes = pipe_sizes()
    assert len(sizes) == 168
    assert len({size.key for size in sizes}) == len(sizes)
    for size in sizes:
        assert size.source
        assert size.volume_m3_per_m == pytest.approx(pi / 4 * size.bore_m**2, rel=0.01), size.key
        bore = size.outer_diameter_m - 2 * size.wall_thickness_m
        assert size.bore_m == pytest.approx(bore, abs=2e-5), size.key
        if "from memory" in size.source:
            assert size.confidence == "from memory"
        if "no source" in size.source:
            assert size.confidence == "common practice"


def test_a_size_is_found_by_its_words_and_an_ambiguous_one_is_refused() -> None:
    assert find_pipe("B36.10M, nps 2, SCH 40").bore_m == pytest.approx(0.0525)
    with pytest.raises(RefusedInputError, match="fits 2 sizes"):
        find_pipe("ASTM B280, 5/8 in OD")
    with pytest.raises(RefusedInputError, match="no pipe size"):
        find_pipe("NPS 99, sch 40")
    with pytest.raises(RefusedInputError, match="STANDARD, SIZE, WALL"):
        find_pipe(" , ")


def test_volume_of_pipes_and_parts_adds_fittings_and_says_how_far_off_it_may_be() -> None:
    pipe = find_pipe("ASME B36.10M, NPS 2, sch 40")
    built = section_volume([PipeRun(pipe, 3.5)], [(find_part("Y-strainer DN50"), 2)])
    # 3.5 m of 2.165 l/m, 10 % fittings, 2 strainers of 1.25 l: 10.83 l
    assert built.volume_m3 * 1e3 == pytest.approx(10.83, abs=0.02)
    # 10 % of the pipe and 0.25 l a strainer
    assert built.uncertainty_m3 * 1e3 == pytest.approx(0.83 + 0.5, abs=0.02)
    assert any("common practice" in note for note in built.notes)


def test_sizes_from_memory_and_hidden_pockets_are_said() -> None:
    remembered = next(size for size in pipe_sizes() if size.confidence == "from memory")
    cavity = find_part("ball valve cavity")
    assert cavity.separate_pocket
    built = section_volume([PipeRun(remembered, 1.0)], [(cavity, 1)])
    assert any("from memory" in note for note in built.notes)
    assert any("can't see" in note for note in built.notes)
    assert all(part.lowest_m3 < part.highest_m3 for part in parts())


@pytest.mark.parametrize("length", [0.0, -1.0, float("nan"), float("inf")])
def test_lengths_that_cannot_be_are_refused(length: float) -> None:
    with pytest.raises(RefusedInputError, match="length"):
        section_volume([PipeRun(pipe_sizes()[0], length)])
    with pytest.raises(RefusedInputError, match="at least one"):
        section_volume([])


@pytest.mark.parametrize("t", [233.15, 263.15, 293.15, 323.15])
@pytest.mark.parametrize("bar", [0.5, 10.0, 50.0, 100.0])
def test_nitrogen_density_is_that_of_the_reference_equation(t: float, bar: float) -> None:
    from CoolProp.CoolProp import PropsSI

    expected = PropsSI("D", "T", t, "P", bar * 1e5, "Nitrogen")
    assert nitrogen_density_kg_m3(bar * 1e5, t) == pytest.approx(expected, rel=1e-3)


def test_nitrogen_agrees_with_another_library() -> None:
    import pyromat  # multi-phase nitrogen, Span et al. 2000 in other code

    nitrogen = pyromat.get("mp.N2")
    expected = float(nitrogen.d(T=293.15, p=52.0).item())
    assert nitrogen_density_kg_m3(52e5, 293.15) == pytest.approx(expected, rel=1e-3)


@settings(deadline=None)
@given(st.floats(0.5e-3, 0.2), st.floats(20e5, 90e5), st.floats(250.0, 310.0))
def test_expansion_finds_the_volume_again(volume: float, bottle_pa: float, t: float) -> None:
    # forward: masses add up, the common pressure is found by bisection
    bottle = 0.005
    start = 101_325.0
    mass = bottle * nitrogen_density_kg_m3(bottle_pa, t) + volume * nitrogen_density_kg_m3(start, t)
    low, high = start, bottle_pa
    for _ in range(80):
        middle = 0.5 * (low + high)
        held = (bottle + volume) * nitrogen_density_kg_m3(middle, t)
        low, high = (middle, high) if held < mass else (low, middle)
    got = volume_by_expansion(
        bottle_volume_m3=bottle,
        bottle_pressure_pa=bottle_pa,
        section_pressure_pa=start,
        common_pressure_pa=low,
        temperature_k=t,
    )
    assert got.volume_m3 == pytest.approx(volume, rel=1e-6)
    assert got.uncertainty_m3 == 0.0


def test_expansion_of_a_thin_gas_is_boyles_law_and_a_gauge_error_shows() -> None:
    # 2 l at 3 bar into 10 l at 1 bar: (2*3 + 10*1)/12 = 1.3333 bar; Boyle's law
    got = volume_by_expansion(
        bottle_volume_m3=0.002,
        bottle_pressure_pa=3e5,
        section_pressure_pa=1e5,
        common_pressure_pa=4e5 / 3,
        temperature_k=293.15,
        gauge_error_pa=500.0,
    )
    assert got.volume_m3 == pytest.approx(0.010, rel=1e-3)
    # 500 Pa of the 33 333 Pa rise is 1.5 %, and 0.3 % and 1.5 % from the other two readings
    assert got.uncertainty_m3 / got.volume_m3 == pytest.approx(0.033, abs=0.005)


def test_expansion_refuses_pressures_out_of_order_and_liquid() -> None:
    good = {
        "bottle_volume_m3": 0.005, "bottle_pressure_pa": 50e5, "section_pressure_pa": 1e5,
        "common_pressure_pa": 10e5, "temperature_k": 293.15,
    }  # fmt: skip
    for change in (
        {"common_pressure_pa": 60e5},
        {"section_pressure_pa": 11e5},
        {"bottle_pressure_pa": float("nan")},
        {"temperature_k": 200.0},
        {"bottle_pressure_pa": 150e5},
    ):
        with pytest.raises(RefusedInputError):
            volume_by_expansion(**{**good, **change})
    with pytest.raises(OutOfRangeError, match="not vapour"):
        volume_by_expansion(**{**good, "temperature_k": 263.15}, gas=Gas.CO2)
