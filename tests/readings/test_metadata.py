"""Metadata: what is known of section and gauges, from lines and options."""

import argparse

import pytest

from co2vent.cli.metadata_options import add_metadata_options, column_names, metadata_overrides
from co2vent.errors import RefusedInputError
from co2vent.readings.columns import Role, resolve_columns
from co2vent.readings.log_file import decode_log
from co2vent.readings.log_writer import LogLayout, metadata_from_setup, metadata_lines
from co2vent.readings.metadata import METADATA_KEYS, build_setup, merge_metadata
from co2vent.readings.reading import Gas, Reading


def test_every_key_arrives_in_si_and_absolute() -> None:
    setup = build_setup(
        {
            "altitude_m": "2000",
            "section_volume_l": "14.5",
            "gauge_full_scale": "60 bar_g",
            "gauge_accuracy_percent": "0.5",
            "zero_reading": "-0.05 bar_g",
            "relief_pressure": "52 bar g",
            "section_max_pressure": "870 psig",
            "metal_minimum_temperature": "-20 degF",
            "gas": "nitrogen",
            "insulated": "yes",
            "section_name": "strainer 3",
            "simulated": "yes",
            "mood": "kept",
        }
    )
    ambient = 79_495.2  # ISO 2533, table value at 2000 m
    assert setup.ambient_pressure_pa == pytest.approx(ambient, abs=1.0)
    assert not setup.ambient_pressure_assumed
    assert setup.section_volume_m3 == pytest.approx(0.0145)
    assert setup.gauge_error_pa == pytest.approx(30_000)
    assert setup.zero_offset_pa == pytest.approx(-5000)
    assert setup.zero_was_read
    # In the frame of the readings, which have the zero reading taken off.
    assert setup.gauge_full_scale_pa == pytest.approx(60e5 + ambient + 5000, abs=1.0)
    assert setup.relief_pressure_pa == pytest.approx(52e5 + ambient, abs=1.0)
    assert setup.section_max_pressure_pa == pytest.approx(870 * 6894.757 + ambient, abs=2.0)
    assert setup.metal_minimum_temperature_k == pytest.approx(244.261, abs=1e-3)  # -28.889 degC
    assert setup.gas is Gas.NITROGEN
    assert setup.insulated is True
    assert setup.simulated
    assert setup.section_name == "strainer 3"


def test_without_altitude_sea_level_is_assumed_and_said() -> None:
    assert build_setup({}).ambient_pressure_assumed
    assert build_setup({}).ambient_pressure_pa == 101_325.0
    assert not build_setup({"ambient_pressure_kPa": "99.8"}).ambient_pressure_assumed


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("altitude_m", "high"),
        ("altitude_m", "1e9"),
        ("altitude_m", "nan"),
        ("ambient_pressure_kPa", "1013"),
        ("section_volume_l", "-3"),
        ("section_volume_l", "0"),
        ("gauge_full_scale", "60"),
        ("gauge_full_scale", "60 bar"),
        ("gauge_accuracy_percent", "0,5"),
        ("zero_reading", "0.1"),
        ("zero_reading", "2 bar_g"),
        ("relief_pressure", "52 bars"),
        ("metal_minimum_temperature", "-29"),
        ("gas", "propane"),
        ("insulated", "maybe"),
    ],
)
def test_a_value_that_isn_t_certain_is_refused_by_name(key: str, value: str) -> None:
    with pytest.raises(RefusedInputError, match=key):
        build_setup({key: value})
    with pytest.raises(RefusedInputError, match=f"line 1: {key}"):
        decode_log(f"# {key}: {value}\nelapsed_s,pressure_bar_g\n0,5\n".encode())


def test_an_absolute_zero_reading_needs_the_ambient_pressure() -> None:
    with pytest.raises(RefusedInputError, match="ambient_pressure_kPa or altitude_m"):
        build_setup({"zero_reading": "99.0 kPa_a"})
    setup = build_setup({"zero_reading": "99.0 kPa_a", "ambient_pressure_kPa": "98.5"})
    assert setup.zero_offset_pa == pytest.approx(500.0)


def test_the_zero_reading_is_taken_off_the_first_gauge_only() -> None:
    text = "elapsed_s,pressure_{0},pressure_2_{0}\n0,{1},{1}\n"
    head = "# ambient_pressure_kPa: 100\n# zero_reading: 0.3 bar_g\n"
    for unit, shown, expected in (("bar_g", "5.3", 6.0e5), ("bar_a", "6.3", 6.0e5)):
        log = decode_log((head + text.format(unit, shown)).encode())
        assert log.readings.pressure_2_pa is not None
        assert log.readings.pressure_pa[0] == pytest.approx(expected)
        assert log.readings.pressure_2_pa[0] == pytest.approx(6.3e5)


def test_an_option_wins_over_the_log_and_over_its_twin() -> None:
    log = b"# ambient_pressure_kPa: 80\n# section_volume_l: 3\nelapsed_s,pressure_bar_g\n0,5\n"
    found = decode_log(log, overrides={"altitude_m": "0", "section_volume_l": "4"}).setup
    assert found.ambient_pressure_pa == pytest.approx(101_325.0)
    assert found.section_volume_m3 == pytest.approx(0.004)
    assert merge_metadata({"gas": "co2"}, {}) == {"gas": "co2"}


def test_every_key_is_an_option() -> None:
    parser = argparse.ArgumentParser()
    add_metadata_options(parser)
    args = parser.parse_args(
        ["--altitude-m", "120", "--gauge-full-scale", "60 bar_g", "--insulated", "yes",
         "--ambient-pressure-kpa", "99", "--columns", "elapsed_s, pressure_bar_g"]
    )  # fmt: skip
    assert metadata_overrides(args) == {
        "altitude_m": "120", "gauge_full_scale": "60 bar_g", "insulated": "yes",
        "ambient_pressure_kPa": "99",
    }  # fmt: skip
    assert column_names(args) == ["elapsed_s", "pressure_bar_g"]
    options = {name for action in parser._actions for name in action.option_strings}
    assert {"--" + key.replace("_", "-") for key in METADATA_KEYS} <= options
    negative = parser.parse_args(["--zero-reading=-0.05 bar_g"])
    assert metadata_overrides(negative) == {"zero_reading": "-0.05 bar_g"}
    with pytest.raises(RefusedInputError, match="--gas"):
        metadata_overrides(parser.parse_args(["--gas", "helium"]))


@pytest.mark.parametrize(
    ("header", "role", "unit"),
    [
        ("Pressure (psig)", Role.PRESSURE, "psig"),
        ("P [bar g]", Role.PRESSURE, "bar_g"),
        ("P1 [bar(g)]", Role.PRESSURE, "bar_g"),
        ("p_abs/kPa", Role.PRESSURE, "kPa_a"),
        ("kPa a", Role.PRESSURE, "kPa_a"),
        ("PRESSURE_BAR_G", Role.PRESSURE, "bar_g"),
        ("Druck [bar Überdruck]", Role.PRESSURE, "bar_g"),
        ("Line pressure barg", Role.PRESSURE, "bar_g"),
        ("Pressure (MPa abs)", Role.PRESSURE, "MPa_a"),
        ("Gauge pressure (bar)", Role.PRESSURE, "bar_g"),
        ("pressure_2_psia", Role.PRESSURE_2, "psia"),
        ("Temp °C", Role.LINE_TEMPERATURE, "degC"),
        ("Line temp (degF)", Role.LINE_TEMPERATURE, "degF"),
        ("Temperatur [deg. C]", Role.LINE_TEMPERATURE, "degC"),
        ("Ambient temperature / °F", Role.AMBIENT_TEMPERATURE, "degF"),
        ("upper_temperature_K", Role.UPPER_TEMPERATURE, "K"),
        ("Sat. temp °C", None, None),
        ("Superheat K", None, None),
        ("Temp", None, None),
        ("Battery", None, None),
    ],
)
def test_headers_of_other_loggers_are_read_where_certain(
    header: str, role: Role | None, unit: str | None
) -> None:
    names = ["elapsed_s", header]
    if role is not Role.PRESSURE:
        names.append("pressure_bar_g")
    columns = resolve_columns(names)
    found = [column for column in columns.by_role.values() if column.index == 1]
    assert [column.role for column in found] == ([] if role is None else [role])
    for column in found:
        name = column.pressure_unit.name if column.pressure_unit else column.temperature_unit
        assert name == unit


def test_what_is_written_is_read_back() -> None:
    setup = build_setup(
        {
            "altitude_m": "850", "section_volume_l": "6", "gauge_full_scale": "870 psig",
            "gauge_accuracy_percent": "0.25", "zero_reading": "1.5 psig", "insulated": "no",
            "relief_pressure": "750 psig", "metal_minimum_temperature": "-29 degC",
            "simulated": "yes", "section_name": "strainer 3",
        },
        pressure_unit="psig", temperature_unit="degF",
    )  # fmt: skip
    readings = [
        Reading(0.0, 6.2e5, 250.0, None, 290.0, True, None, None, 512.0, "start, slowly"),
        Reading(0.5, 6.1e5, None, None, 290.0, None, None, None, None, None),
    ]
    quantities = (
        "line_temperature_k", "ambient_temperature_k", "vent_open", "room_co2_ppm", "note",
    )  # fmt: skip
    layout = LogLayout(setup, quantities, extra=("prompt",), row_check=True)
    lines = metadata_lines(metadata_from_setup(setup)) + [layout.header()]
    lines += [layout.row(reading, ["=vent, now"]) for reading in readings]
    log = decode_log(("\n".join(lines) + "\n").encode())
    assert log.rejections == ()
    assert log.setup.gauge_full_scale_pa == pytest.approx(setup.gauge_full_scale_pa)
    assert log.setup.relief_pressure_pa == pytest.approx(setup.relief_pressure_pa)
    for name in ("ambient_pressure_pa", "zero_offset_pa", "section_volume_m3", "insulated",
                 "gauge_error_pa", "metal_minimum_temperature_k", "simulated", "section_name",
                 "pressure_unit", "temperature_unit"):  # fmt: skip
        assert getattr(log.setup, name) == pytest.approx(getattr(setup, name))
    for found, given in zip(log.readings.readings(), readings, strict=True):
        assert found.pressure_pa == pytest.approx(given.pressure_pa, abs=10)  # 0.001 psi steps
        assert found.line_temperature_k == pytest.approx(given.line_temperature_k, abs=0.01)
        assert (found.vent_open, found.note) == (given.vent_open, given.note)
    assert "'=vent, now" in lines[-1]
