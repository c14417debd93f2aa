"""What a readings log may look like, and which ones are refused."""

from pathlib import Path

import pytest

from tests.contract.command import (
    HEADER,
    assess,
    assess_all,
    call,
    refused,
    run,
    strict,
    vent_rows,
    write_log,
)

# Pascals per unit: BIPM SI brochure; psi from the pound-force and the inch, NIST SP 811 app. B.8
UNITS = {
    "bar_g": (1e5, True), "bar_a": (1e5, False),
    "psig": (6894.757293168, True), "psia": (6894.757293168, False),
    "kPa_g": (1e3, True), "kPa_a": (1e3, False),
    "MPa_g": (1e6, True), "MPa_a": (1e6, False),
}  # fmt: skip


def test_every_pressure_unit_means_the_same_pressure(tmp_path: Path) -> None:
    ambient_pa = 98_000.0
    rows = vent_rows()
    logs = []
    for unit, (pascals, gauge) in UNITS.items():
        shown = []
        for at, bar_g, line, valve in rows:
            gauge_pa = float(bar_g) * 1e5
            value = (gauge_pa if gauge else gauge_pa + ambient_pa) / pascals
            shown.append([at, f"{value:.6f}", line, valve])
        logs.append(
            write_log(
                tmp_path / f"{unit}.csv", shown, HEADER.replace("bar_g", unit),
                ambient_pressure_kPa="98.0",
            ).name
        )  # fmt: skip
    seen = assess_all(tmp_path, *logs)
    assert [one["file"] for one in seen] == logs
    for one in seen:
        assert one["readings"] == len(rows)
        assert one["rejected"] == []
        assert one["ambient_pressure_pa"] == pytest.approx(ambient_pa)
        for hold, reference in zip(one["holds"], seen[0]["holds"], strict=True):
            for key in ("start_pressure_pa", "end_pressure_pa"):
                assert hold[key] == pytest.approx(reference[key], abs=1.0), one["file"]


REFUSED = {
    "no_pressure_column": "elapsed_s,line_temperature_degC\n0,-20\n1,-20\n",
    "no_unit": "elapsed_s,pressure\n0,19\n1,19\n",
    "gauge_or_absolute_not_said": "elapsed_s,pressure_bar\n0,19\n1,19\n",
    "psi_only": "elapsed_s,Pressure (psi)\n0,190\n1,190\n",
    "kpa_only": "elapsed_s,pressure_kPa\n0,190\n1,190\n",
    "unit_not_known": "elapsed_s,pressure_torr_g\n0,190\n1,190\n",
    "no_time": "pressure_bar_g,line_temperature_degC\n19,-20\n19,-20\n",
    "no_readings": "elapsed_s,pressure_bar_g\n",
    "nothing_but_words": "elapsed_s,pressure_bar_g\n0,OL\n1,OL\n",
    "empty": "",
    "metadata_only": "# altitude_m: 120\n",
    "two_pressure_columns": "elapsed_s,pressure_bar_g,pressure_psig\n0,19,275\n1,19,275\n",
    "no_header": "0,19\n1,19\n",
    "bad_altitude": "# altitude_m: high\nelapsed_s,pressure_bar_g\n0,19\n1,19\n",
    "bad_volume": "# section_volume_l: -3\nelapsed_s,pressure_bar_g\n0,19\n1,19\n",
    "bad_full_scale": "# gauge_full_scale: 60 bar\nelapsed_s,pressure_bar_g\n0,19\n1,19\n",
    "bad_gas": "# gas: argon\nelapsed_s,pressure_bar_g\n0,19\n1,19\n",
    "nan_volume": "# section_volume_l: nan\nelapsed_s,pressure_bar_g\n0,19\n1,19\n",
    "bad_temperature_unit": "elapsed_s,pressure_bar_g,line_temperature\n0,19,-20\n",
}


def test_refused_logs_give_one_line_in_order_and_status_2(tmp_path: Path) -> None:
    good = write_log(tmp_path / "good.csv")
    for name, text in REFUSED.items():
        (tmp_path / f"{name}.csv").write_text(text)
    (tmp_path / "folder.csv").mkdir()
    (tmp_path / "picture.csv").write_bytes(bytes(range(256)) * 40)
    names = [
        good.name, *(f"{name}.csv" for name in REFUSED),
        "folder.csv", "picture.csv", "missing.csv", good.name,
    ]  # fmt: skip
    done = run("assess", "--json", *names, cwd=tmp_path)
    lines = [strict(line) for line in done.stdout.splitlines()]
    assert [line["file"] for line in lines] == names
    for line in lines:
        if line["file"] == good.name:
            assert line["format"] == "co2vent assessment 1"
        elif line["file"] != "bad_temperature_unit.csv":
            assert set(line) == {"file", "error"}, line
            assert line["error"]
            assert "\n" not in line["error"]
    assert done.returncode == 2
    assert "Traceback" not in done.stderr
    assert len(done.stderr.splitlines()) == sum("error" in line for line in lines)


@pytest.mark.parametrize("name", ["no_unit", "gauge_or_absolute_not_said", "no_time", "empty"])
def test_a_refused_log_alone_is_one_line_on_stderr_and_status_2(name: str, tmp_path: Path) -> None:
    (tmp_path / "log.csv").write_text(REFUSED[name])
    done = run("assess", "log.csv", "--json", cwd=tmp_path)
    assert "log.csv" in refused(done)
    assert done.stdout == ""


def test_a_temperature_without_a_unit_is_never_read_as_one(tmp_path: Path) -> None:
    rows = [[row[0], row[1], row[2]] for row in vent_rows()]
    write_log(tmp_path / "log.csv", rows, "elapsed_s,pressure_bar_g,line_temperature")
    done = run("assess", "log.csv", "--json", cwd=tmp_path)
    if done.returncode == 0:
        holds = strict(done.stdout)["holds"]
        assert all(hold["saturation_pressure_pa"] is None for hold in holds)
    else:
        refused(done)


def test_foreign_shapes_of_the_same_log_give_the_same_holds(tmp_path: Path) -> None:
    rows = vent_rows()
    plain = write_log(tmp_path / "plain.csv", rows).read_text()
    comma = "\n".join(";".join(cell.replace(".", ",") for cell in row) for row in rows)
    header = "elapsed_s;Pressure (bar g);line_temperature_degC;vent_valve"
    variants = {
        "bom.csv": "\ufeff" + plain,
        "crlf.csv": plain.replace("\n", "\r\n"),
        "no_last_newline.csv": plain.rstrip("\n"),
        "semicolon.csv": f"{header}\n{comma}\n",
        "tab.csv": f"{header}\n{comma}\n".replace(";", "\t"),
        "bracket.csv": plain.replace("pressure_bar_g", "P [bar g]"),
        "repeated.csv": plain.replace("\n50.0,", f"\n{HEADER}\n50.0,"),
        "blank_lines.csv": plain.replace("\n50.0,", "\n\n50.0,"),
        "iso_z.csv": iso(rows, "Z"),
        "iso.csv": iso(rows, ""),
        "iso_offset.csv": iso(rows, "+02:00"),
        "capital_valve.csv": plain.replace("closed", "Closed").replace("open", "OPEN"),
    }
    for name, text in variants.items():
        (tmp_path / name).write_bytes(text.encode("utf-8"))
    seen = assess_all(tmp_path, "plain.csv", *variants)
    for one in seen:
        assert one["readings"] == len(rows), one["file"]
        assert one["rejected"] == [], one["file"]
        assert one["holds"] == seen[0]["holds"], one["file"]


def iso(rows: list[list[str]], zone: str) -> str:
    """The log with ISO 8601 times from 10:00 on."""
    lines = ["time,pressure_bar_g,line_temperature_degC,vent_valve"]
    for at, *rest in rows:
        seconds = float(at)
        minutes = int(seconds // 60)
        clock = f"2026-02-03T{10 + minutes // 60:02}:{minutes % 60:02}:{seconds % 60:04.1f}{zone}"
        lines.append(",".join([clock, *rest]))
    return "\n".join(lines) + "\n"


def test_a_row_that_cannot_be_a_reading_is_counted_with_its_line_and_reason(
    tmp_path: Path,
) -> None:
    good = vent_rows()
    bad = {
        5: "5.0,,-20.0,closed",
        6: "6.0,OL,-20.0,closed",
        7: "7.0,abc,-20.0,closed",
        8: "x,19.0,-20.0,closed",
        9: "9.0",
        10: "10.0,-3.0,-20.0,closed",
        11: "11.0,nan,-20.0,closed",
        12: "12.0,inf,-20.0,closed",
        13: "13.0,999,-20.0,closed",
        14: "14.0,1_9,-20.0,closed",
    }
    lines = ["# gauge_full_scale: 60 bar_g", HEADER]
    for n, row in enumerate(good):
        lines.append(bad.get(n, ",".join(row)))
    (tmp_path / "log.csv").write_text("\n".join(lines) + "\n")
    seen = assess(tmp_path, "log.csv")
    assert [entry["line"] for entry in seen["rejected"]] == [n + 3 for n in bad]
    assert all(entry["reason"] for entry in seen["rejected"])
    assert seen["readings"] == len(good) - len(bad)


def test_time_running_backwards_keeps_the_rows_and_voids_the_hold(tmp_path: Path) -> None:
    rows = vent_rows(hold_s=600)
    back = [list(row) for row in rows]
    for row in back[300:]:
        row[0] = f"{float(row[0]) - 250:.1f}"
    write_log(tmp_path / "back.csv", back, section_volume_l="14.5")
    seen = assess(tmp_path, "back.csv")
    assert seen["readings"] == len(rows)
    assert seen["rejected"] == []
    assert any(event["kind"] == "time_broken" for event in seen["events"])
    for hold in seen["holds"]:
        assert hold["end_s"] >= hold["start_s"]
        assert hold["charge"] != "vapor_only"
    assert seen["final"]["charge"] != "vapor_only"


def test_columns_names_the_columns_of_a_log_without_a_header_or_with_another(
    tmp_path: Path,
) -> None:
    rows = vent_rows()
    write_log(tmp_path / "plain.csv", rows)
    body = "\n".join(",".join(row) for row in rows) + "\n"
    (tmp_path / "bare.csv").write_text(body)
    (tmp_path / "other.csv").write_text("t,p,T,v\n" + body)
    plain = assess(tmp_path, "plain.csv")
    bare, other = assess_all(tmp_path, "bare.csv", "other.csv", "--columns", HEADER)
    for one in (bare, other):
        assert one["readings"] == len(rows)
        assert one["holds"] == plain["holds"]
    wrong = run("assess", "bare.csv", "--columns", "elapsed_s,pressure_bar,a,b", cwd=tmp_path)
    refused(wrong)
    refused(run("assess", "bare.csv", "--columns", "", cwd=tmp_path))


METADATA = {
    "altitude_m": ("1500", ("high", "nan", "99999", "1,5")),
    "ambient_pressure_kPa": ("84.5", ("0", "bar", "1013")),
    "section_volume_l": ("20", ("0", "-1", "inf", "much")),
    "gauge_full_scale": ("40 bar_g", ("40", "40 bar", "-1 bar_g", "bar_g")),
    "gauge_accuracy_percent": ("1.6", ("-1", "200", "x")),
    "zero_reading": ("0.05 bar_g", ("0.05", "5 bar_g", "x")),
    "relief_pressure": ("52 bar_g", ("52", "52 bar", "x")),
    "section_max_pressure": ("60 bar_g", ("60", "x bar_g")),
    "metal_minimum_temperature": ("-29 degC", ("-29", "cold")),
    "gas": ("nitrogen", ("argon", "co")),
    "insulated": ("yes", ("perhaps",)),
    "simulated": ("yes", ("perhaps",)),
    "vent_bore_mm": ("8", ("0", "wide")),
    "section_name": ("strainer 3", ()),
}


def option(key: str) -> str:
    return "--" + key.replace("_", "-")


def test_every_metadata_key_means_the_same_as_a_line_and_as_an_option(tmp_path: Path) -> None:
    lines = []
    for key, (value, _) in METADATA.items():
        lines.append(write_log(tmp_path / f"{key}.csv", **{key: value}).name)
    write_log(tmp_path / "log.csv")
    for key, seen in zip(METADATA, assess_all(tmp_path, *lines), strict=True):
        by_option = assess(tmp_path, "log.csv", option(key), METADATA[key][0])
        assert {**seen, "file": ""} == {**by_option, "file": ""}, key


def test_an_option_wins_over_the_line_of_the_log(tmp_path: Path) -> None:
    write_log(tmp_path / "log.csv", altitude_m="0", section_volume_l="5", insulated="no")
    seen = assess(tmp_path, "log.csv", "--altitude-m", "2000")
    # US Standard Atmosphere 1976, table I: 79 501 Pa at 2000 m, from memory
    assert seen["ambient_pressure_pa"] == pytest.approx(79_501, abs=15)
    assert seen["ambient_pressure_assumed"] is False
    seen = assess(tmp_path, "log.csv", "--ambient-pressure-kPa", "90")
    assert seen["ambient_pressure_pa"] == pytest.approx(90_000)


def test_a_bad_metadata_value_is_refused_as_a_line_and_as_an_option(tmp_path: Path) -> None:
    names = []
    for key, (_, wrong) in METADATA.items():
        for n, value in enumerate(wrong):
            names.append(write_log(tmp_path / f"{key}-{n}.csv", **{key: value}).name)
    done = run("assess", "--json", *names, cwd=tmp_path)
    assert done.returncode == 2
    for line in done.stdout.splitlines():
        answer = strict(line)
        assert "error" in answer, answer["file"]
    write_log(tmp_path / "log.csv")
    for key, (_, wrong) in METADATA.items():
        if wrong:
            done = call("assess", "log.csv", f"{option(key)}={wrong[0]}", cwd=tmp_path)
            assert option(key).lower() in refused(done).lower()


def test_the_zero_reading_is_subtracted_with_its_sign(tmp_path: Path) -> None:
    for name, value in (("high", "0.20 bar_g"), ("low", "-0.20 bar_g"), ("none", "0 bar_g")):
        write_log(tmp_path / f"{name}.csv", zero_reading=value, altitude_m="0")
    high, low, none = assess_all(tmp_path, "high.csv", "low.csv", "none.csv")
    for key in ("start_pressure_pa", "end_pressure_pa"):
        at = none["holds"][-1][key]
        assert high["holds"][-1][key] == pytest.approx(at - 20_000, abs=1)
        assert low["holds"][-1][key] == pytest.approx(at + 20_000, abs=1)


def test_no_altitude_means_sea_level_and_is_said_to_be_assumed(tmp_path: Path) -> None:
    write_log(tmp_path / "log.csv")
    seen = assess(tmp_path, "log.csv")
    assert seen["ambient_pressure_pa"] == 101_325.0
    assert seen["ambient_pressure_assumed"] is True
    assert "assumed" in run("assess", "log.csv", cwd=tmp_path).stdout


def test_the_stop_pressure_is_the_local_triple_point_and_its_margin(tmp_path: Path) -> None:
    # Triple point of CO2: 517 950 Pa, Span and Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509
    write_log(tmp_path / "fine.csv", gauge_full_scale="60 bar_g", gauge_accuracy_percent="0.5")
    write_log(tmp_path / "coarse.csv", gauge_full_scale="100 bar_g", gauge_accuracy_percent="2.5",
              ambient_pressure_kPa="90")  # fmt: skip
    fine, coarse = assess_all(tmp_path, "fine.csv", "coarse.csv")
    assert fine["triple_point_pa_gauge"] == pytest.approx(517_950 - 101_325, abs=20)
    margin = fine["stop_pressure_pa_gauge"] - fine["triple_point_pa_gauge"]
    assert margin == pytest.approx(103_000, abs=1)
    assert coarse["triple_point_pa_gauge"] == pytest.approx(517_950 - 90_000, abs=20)
    margin = coarse["stop_pressure_pa_gauge"] - coarse["triple_point_pa_gauge"]
    assert margin >= 250_000 + 30_000 - 1  # 2.5 % of 100 bar and 0.3 bar, the zero not read
