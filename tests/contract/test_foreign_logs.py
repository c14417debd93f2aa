"""Logs of other loggers, times, optional columns: what they come to, read by the command."""

from pathlib import Path

import pytest

from tests.contract.command import HEADER, Json, assess, assess_all, run, vent_rows, write_log

PSI_PA = 6894.757293168  # pound-force per square inch, NIST SP 811 appendix B.8
AMBIENT_PA = 101_325.0


def write(folder: Path, texts: dict[str, str]) -> list[str]:
    """Write one log per text; return their names."""
    for name, text in texts.items():
        (folder / f"{name}.csv").write_bytes(text.encode("utf-8"))
    return [f"{name}.csv" for name in texts]


def only_hold(seen: Json) -> Json:
    """The hold of a log that is closed from its first row to its last."""
    assert len(seen["holds"]) == 1, seen["holds"]
    hold: Json = seen["holds"][0]
    return hold


# header -> pascals per unit, and what is added for an absolute pressure
HEADERS = {
    "Pressure (psig)": (PSI_PA, AMBIENT_PA),
    "pressure psig": (PSI_PA, AMBIENT_PA),
    '"Pressure, psig"': (PSI_PA, AMBIENT_PA),
    "Pressure [psia]": (PSI_PA, 0.0),
    "P [bar g]": (1e5, AMBIENT_PA),
    "Pressure (barg)": (1e5, AMBIENT_PA),
    "PRESSURE_BAR_G": (1e5, AMBIENT_PA),
    "Druck [bar(g)]": (1e5, AMBIENT_PA),
    "Pressure (bar abs)": (1e5, 0.0),
    "Gauge pressure (kPa)": (1e3, AMBIENT_PA),
    "Abs. pressure [MPa]": (1e6, 0.0),
}
NOT_CERTAIN = (
    "Pressure (bar)", "Pressure (psi)", "Pressure", "P [kPa]", "Gauge (bar)", "bar",
    "pressure_bars", "Suction Pressure", "pressure_torr_a", "Pressure (psig or bar g)",
)  # fmt: skip


def test_a_header_that_says_unit_and_gauge_or_absolute_is_read_and_no_other(
    tmp_path: Path,
) -> None:
    # of a size that is a pressure in each of the units
    shown = {1e6: 1.5, 1e3: 1500.0, 1e5: 15.0, PSI_PA: 220.0}
    texts = {}
    for n, (header, (pascals, _)) in enumerate(HEADERS.items()):
        rows = "".join(f"{at},{shown[pascals]}\n" for at in range(60))
        texts[f"h{n}"] = f"# altitude_m: 0\nelapsed_s,{header}\n{rows}"
    seen = assess_all(tmp_path, *write(tmp_path, texts))
    for one, (header, (pascals, above)) in zip(seen, HEADERS.items(), strict=True):
        pressure = only_hold(one)["end_pressure_pa"]
        assert pressure == pytest.approx(shown[pascals] * pascals + above, abs=1), header
    texts = {f"n{n}": f"elapsed_s,{header}\n0,15\n1,15\n" for n, header in enumerate(NOT_CERTAIN)}
    done = run("assess", "--json", *write(tmp_path, texts), cwd=tmp_path)
    assert done.returncode == 2
    assert all('"error"' in line for line in done.stdout.splitlines()), done.stdout
    assert len(done.stderr.splitlines()) == len(NOT_CERTAIN)


# first and second time -> seconds between them by ISO 8601
TIMES = {
    ("2026-02-03T10:00:00", "2026-02-03T10:01:00"): 60.0,
    ("2026-02-03 10:00:00", "2026-02-03 10:01:00.5"): 60.5,
    ("2026-02-03T10:00:00Z", "2026-02-03T11:01:00+01:00"): 60.0,
    ("2026-02-03T10:00:00.250-03:30", "2026-02-03T10:01:00.750-03:30"): 60.5,
    ("2026-02-03T23:59:59", "2026-02-04T00:00:59"): 60.0,
    # the hour that is left out when summer time begins: with a zone it is no gap
    ("2026-03-29T01:59:30+01:00", "2026-03-29T03:00:30+02:00"): 60.0,
    ("20260203T100000Z", "20260203T100100Z"): 60.0,
}


def test_iso_times_with_and_without_zone_become_seconds_since_the_first(tmp_path: Path) -> None:
    texts = {
        f"t{n}": f"time,pressure_bar_g,vent_valve\n{first},19,closed\n{second},19,closed\n"
        for n, (first, second) in enumerate(TIMES)
    }
    for one, (times, seconds) in zip(
        assess_all(tmp_path, *write(tmp_path, texts)), TIMES.items(), strict=True
    ):
        hold = only_hold(one)
        assert hold["start_s"] == 0.0, times
        assert hold["end_s"] == pytest.approx(seconds), times


def test_elapsed_s_is_the_time_of_everything_wherever_it_starts(tmp_path: Path) -> None:
    rows = "".join(f"{1000 + n},2026-02-03T10:00:{n:02}Z,19,closed\n" for n in range(30))
    texts = {"log": f"elapsed_s,time,pressure_bar_g,vent_valve\n{rows}"}
    seen = assess(tmp_path, *write(tmp_path, texts))
    assert only_hold(seen)["start_s"] == 1000.0
    assert only_hold(seen)["end_s"] == 1029.0
    assert all(1000 <= event["at_s"] <= 1029 for event in seen["events"])


def test_seconds_count_from_the_first_accepted_time(tmp_path: Path) -> None:
    bad = "2026-02-03T09:00:00Z,OL,closed\nyesterday,19,closed\n"
    good = "".join(f"2026-02-03T10:00:{n:02}Z,19,closed\n" for n in range(30))
    texts = {"log": f"time,pressure_bar_g,vent_valve\n{bad}{good}"}
    seen = assess(tmp_path, *write(tmp_path, texts))
    assert seen["readings"] == 30
    assert [entry["line"] for entry in seen["rejected"]] == [2, 3]
    assert only_hold(seen)["start_s"] == 0.0
    assert only_hold(seen)["end_s"] == 29.0


def test_a_zone_that_comes_and_goes_is_no_certain_time(tmp_path: Path) -> None:
    rows = "2026-02-03T10:00:00,19\n2026-02-03T10:00:01Z,19\n2026-02-03T10:00:02,19\n"
    seen = assess(tmp_path, *write(tmp_path, {"log": f"time,pressure_bar_g\n{rows}"}))
    assert seen["readings"] == 2
    assert [entry["line"] for entry in seen["rejected"]] == [3]


ALL_COLUMNS = (
    "elapsed_s,pressure_bar_g,line_temperature_degC,upper_temperature_degF,"
    "ambient_temperature_K,vent_valve,pressure_2_psig,vacuum_micron,room_co2_ppm,note"
)


def test_blank_and_over_range_optional_cells_keep_the_row_and_its_pressure(tmp_path: Path) -> None:
    full = '{n},19.{n:03},-20,14,290,closed,276,500,420,"frost, low point"\n'
    blank = "{n},19.{n:03},,,,,,,,\n"
    words = "{n},19.{n:03},OL,----,inf,closed,OVER,nan,OL,\n"
    texts = {
        name: ALL_COLUMNS + "\n" + "".join(row.format(n=n) for n in range(120))
        for name, row in {"full": full, "blank": blank, "words": words}.items()
    }
    for seen in assess_all(tmp_path, *write(tmp_path, texts)):
        assert seen["readings"] == 120, seen["file"]
        assert seen["rejected"] == [], seen["file"]
        assert seen["holds"][0]["end_pressure_pa"] == pytest.approx(
            19.119e5 + AMBIENT_PA, abs=1000
        ), seen["file"]
        known = seen["file"] == "full.csv"
        assert (seen["holds"][0]["saturation_pressure_pa"] is not None) == known, seen["file"]


@pytest.mark.parametrize("word", ["OL", "over", "----", "Err", "9999", "inf", "nan", "#N/A", ""])
def test_over_range_words_never_become_a_pressure(word: str, tmp_path: Path) -> None:
    rows = vent_rows()
    for row in rows[200:203]:
        row[1] = word
    write_log(tmp_path / "log.csv", rows)
    seen = assess(tmp_path, "log.csv")
    assert [entry["line"] for entry in seen["rejected"]] == [202, 203, 204]
    assert seen["readings"] == len(rows) - 3
    assert seen["holds"][-1]["end_pressure_pa"] < 10e5


def test_columns_names_a_semicolon_log_and_blank_names_are_passed_over(tmp_path: Path) -> None:
    rows = vent_rows()
    plain = write_log(tmp_path / "plain.csv", rows).name
    body = "".join(
        ";".join([row[0].replace(".", ","), "x", *(c.replace(".", ",") for c in row[1:])]) + "\n"
        for row in rows
    )
    (tmp_path / "bare.csv").write_text("Zeit;?;p;T;Ventil\n" + body)
    bare = assess(tmp_path, "bare.csv", "--columns", HEADER.replace(",", ",,", 1))
    assert bare["rejected"] == []
    assert bare["holds"] == assess(tmp_path, plain)["holds"]


def test_metadata_lines_are_read_wherever_the_header_is_not_yet(tmp_path: Path) -> None:
    body = "".join(",".join(row) + "\n" for row in vent_rows())
    texts = {
        "before": f"# altitude_m: 1500\n{HEADER}\n{body}",
        "behind": f"{HEADER}\n# altitude_m: 1500\n{body}",
        "spaced": f"#altitude_m : 1500\n# a word by hand\n{HEADER}\n{body}",
        "other": f"# logger: number 4\n# altitude_m: 1500\n{HEADER}\n{body}",
    }
    for seen in assess_all(tmp_path, *write(tmp_path, texts)):
        # US Standard Atmosphere 1976, table I: 84 556 Pa at 1500 m, from memory
        assert seen["ambient_pressure_pa"] == pytest.approx(84_556, abs=15), seen["file"]
        assert seen["ambient_pressure_assumed"] is False
        assert seen["rejected"] == []
