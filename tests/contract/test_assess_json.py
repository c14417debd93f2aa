"""The shape, the types and the rules of null of `assess --json`."""

import math
import random
from pathlib import Path
from typing import Any

import pytest

from tests.contract.command import HEADER, Json, assess, assess_all, vent_rows, write_log

SAMPLE_LOGS = Path(__file__).parents[2] / "sample_logs"
CHARGES = {"subcooled_liquid", "two_phase", "vapor_only", "solid_present", "undetermined"}
INSTRUCTIONS = {
    "vent", "close_and_hold", "keep_holding", "vent_again", "vent_to_zero", "hold_for_dry_ice",
    "open_bleeds", "vent_now", "check_isolation", "check_vent_line", "check_gauge", "no_data",
    "wait",
}  # fmt: skip
LEAKS = {"none", "suspected", "undetermined"}
SAMPLES = [
    f"sample:{name}"
    for name in (
        "altitude-psig", "dry-ice", "foreign-logger", "leak-by", "liquid-full",
        "liquid-left-bare", "liquid-left-insulated", "no-power", "no-valve-column", "vapour-only",
    )
]  # fmt: skip


def is_number(value: Any) -> bool:
    return isinstance(value, (int, float)) and not isinstance(value, bool) and math.isfinite(value)


def check_bounds(bounds: Any, confidence: bool = True) -> None:
    if bounds is None:
        return
    assert {"estimate", "lower", "upper"} <= set(bounds)
    values = [bounds[key] for key in ("lower", "estimate", "upper") if bounds[key] is not None]
    assert all(is_number(value) and value >= 0 for value in values), bounds
    assert values == sorted(values), bounds
    if confidence:
        assert 0 < bounds["confidence"] < 1


def check_hold(hold: Json, volume_known: bool) -> None:
    assert isinstance(hold["number"], int)
    assert hold["number"] >= 0
    assert is_number(hold["start_s"])
    assert is_number(hold["end_s"])
    assert hold["end_s"] >= hold["start_s"]
    assert hold["start_pressure_pa"] >= 0
    assert hold["end_pressure_pa"] >= 0
    assert hold["charge"] in CHARGES
    assert hold["leak_by"] in LEAKS
    assert hold["instruction"] in INSTRUCTIONS
    assert isinstance(hold["reason"], str)
    assert hold["reason"].strip()
    assert "\n" not in hold["reason"]
    for key in ("liquid_kg", "dry_ice_kg", "liquid_volume_fraction"):
        check_bounds(hold[key])
    for key in ("detection_limit_kg", "dry_ice_kg_if_vented", "boil_off_s"):
        assert hold[key] is None or (is_number(hold[key]) and hold[key] >= 0), (key, hold)
    if not volume_known:
        for key in ("liquid_kg", "dry_ice_kg", "detection_limit_kg", "dry_ice_kg_if_vented"):
            assert hold[key] is None, key
    if hold["charge"] == "vapor_only":
        share = hold["liquid_kg"] if volume_known else hold["liquid_volume_fraction"]
        assert share is not None
        assert share["upper"] is not None
        if volume_known:
            assert hold["detection_limit_kg"] is not None


def check_assessment(seen: Json, volume_known: bool) -> None:
    assert seen["format"] == "co2vent assessment 1"
    assert isinstance(seen["file"], str)
    assert isinstance(seen["readings"], int)
    assert seen["readings"] > 0
    for row in seen["rejected"]:
        assert isinstance(row["line"], int)
        assert row["reason"]
    assert isinstance(seen["ambient_pressure_assumed"], bool)
    for key in ("ambient_pressure_pa", "triple_point_pa_gauge", "stop_pressure_pa_gauge",
                "minimum_pressure_pa_gauge", "seconds_below_triple_point",
                "seconds_below_triple_point_before_vapor_only"):  # fmt: skip
        assert is_number(seen[key]), key
    assert (
        seen["seconds_below_triple_point_before_vapor_only"] <= (seen["seconds_below_triple_point"])
    )
    for hold in seen["holds"]:
        check_hold(hold, volume_known)
    numbers = [hold["number"] for hold in seen["holds"]]
    assert numbers == sorted(set(numbers))
    if numbers:
        assert numbers == list(range(numbers[0], numbers[0] + len(numbers)))
        assert numbers[0] in (0, 1)
    final = seen["final"]
    assert final["charge"] in CHARGES
    assert final["instruction"] in INSTRUCTIONS
    assert final["reason"]
    since = final["vapor_only_since_s"]
    assert since is None or is_number(since)
    if final["charge"] == "vapor_only":
        assert since is not None
        assert any(hold["charge"] == "vapor_only" for hold in seen["holds"])
    vented = seen["mass_vented_kg"]
    check_bounds(vented, confidence=False)
    times = [event["at_s"] for event in seen["events"]]
    assert all(is_number(at) for at in times)
    assert all(event["kind"] and event["text"] for event in seen["events"])


def test_the_samples_keep_to_the_form_with_and_without_the_volume(tmp_path: Path) -> None:
    for seen in assess_all(tmp_path, *SAMPLES):
        check_assessment(seen, volume_known=True)
        assert seen["simulated"] is True


def pressures(values: list[float], step_s: float, line: str = "-20") -> list[list[str]]:
    return [[f"{n * step_s:.1f}", f"{p:.4f}", line, "closed"] for n, p in enumerate(values)]


def odd_logs(folder: Path) -> list[str]:
    """Logs that no vent makes: each one must be assessed, none may be reassuring."""
    noise = random.Random(5)

    def wavy(level: float, count: int = 200) -> list[float]:
        return [max(level + noise.gauss(0, 0.003), -1.0) for _ in range(count)]

    def log(name: str, rows: list[list[str]], header: str = HEADER, **metadata: str) -> str:
        return write_log(folder / f"{name}.csv", rows, header, **metadata).name

    names = [
        log("one_row", pressures([19.0], 1.0)),
        log("two_rows", pressures([19.0, 19.0], 1.0)),
        log("same_time", [["0", "19", "-20", "closed"]] * 5),
        log("one_row_open", [["0", "19", "-20", "open"]]),
        log("one_row_hold", [*([f"{n}", f"{19 - n / 10:.1f}", "-20", "open"] for n in range(60)),
                             ["60", "13.0", "-20", "closed"],
                             *([f"{n}", "12.0", "-20", "open"] for n in range(61, 90))]),
        log("ends_as_it_closes", [*([f"{n}", f"{19 - n / 10:.1f}", "-20", "open"]
                                    for n in range(60)), ["60", "13.0", "-20", "closed"]]),
        log("huge_times", [[f"{1e7 + n:.0f}", "19.0", "-20", "closed"] for n in range(50)]),
        log("negative_times", [[f"{n - 100}", "19.0", "-20", "closed"] for n in range(200)]),
        log("flutter", [[f"{n}", f"{12 + n % 3 / 10:.1f}", "-20", "closed" if n % 2 else "open"]
                        for n in range(120)]),
        log("hot_line", pressures(wavy(45.0), 1.0, line="35")),
        log("just_above_31", pressures(wavy(45.0), 1.0, line="31.01")),
        log("cold_line", pressures(wavy(1.0), 1.0, line="-90")),
        log("no_ppm_sense", [[f"{n}", "19.0", "-20", "closed", "5000000"] for n in range(50)],
            HEADER + ",room_co2_ppm"),
        log("jumps", [[f"{n}", f"{noise.choice([0, 19, 60, 5.1])}", "-20", "closed"]
                      for n in range(200)]),
        log("gaps", [[f"{n * 1000}", f"{19 + n / 100}", "-20", "closed"] for n in range(60)]),
        log("vacuum", [[f"{n}", "-0.99", "-20", "closed", f"{500 + n / 10:.1f}"]
                       for n in range(300)], HEADER + ",vacuum_micron"),
        log("vacuum_pa", [[f"{n}", "-0.99", "-20", "closed", "60"] for n in range(300)],
            HEADER + ",vacuum_Pa_a"),
        log("vacuum_mbar", [[f"{n}", "-0.99", "-20", "closed", "0.6"] for n in range(300)],
            HEADER + ",vacuum_mbar_a"),
        log("second_gauge", [[f"{n}", "19.0", "-20", "closed", "275.6"] for n in range(120)],
            HEADER + ",pressure_2_psig"),
    ]  # fmt: skip
    levels = (0.0, 0.5, 4.16, 4.2, 5.2, 10.0, 30.0, 60.0, 72.8, 74.0, 100.0)
    names += [log(f"level_{level}", pressures(wavy(level), 1.0)) for level in levels]
    dead = (-1.0, 0.0, 100.0, 500.0)  # a dead gauge, and far above any
    return names + [log(f"dead_{level}", pressures([level] * 200, 1.0)) for level in dead]


def test_odd_logs_keep_to_the_form_and_reassure_nobody(tmp_path: Path) -> None:
    names = odd_logs(tmp_path)
    for volume in ((), ("--section-volume-l", "14.5")):
        for seen in assess_all(tmp_path, *names, *volume):
            check_assessment(seen, volume_known=bool(volume))
            assert seen["final"]["charge"] != "vapor_only", seen["file"]
            assert all(hold["charge"] != "vapor_only" for hold in seen["holds"]), seen["file"]


@pytest.mark.parametrize(("unit", "value"), [("degC", "31.2"), ("degF", "90"), ("K", "305")])
def test_a_line_above_31_degc_has_no_saturation_pressure_and_fails_nothing(
    unit: str, value: str, tmp_path: Path
) -> None:
    rows = vent_rows()
    hot = [[at, p, value, valve] for at, p, _, valve in rows]
    write_log(tmp_path / "hot.csv", hot, HEADER.replace("degC", unit), section_volume_l="14.5")
    write_log(tmp_path / "cold.csv", rows, section_volume_l="14.5")
    seen, cold = assess_all(tmp_path, "hot.csv", "cold.csv")
    check_assessment(seen, volume_known=True)
    assert all(hold["saturation_pressure_pa"] is None for hold in seen["holds"])
    assert any(hold["saturation_pressure_pa"] is not None for hold in cold["holds"])


def test_without_a_volume_masses_are_null_and_the_share_is_given(tmp_path: Path) -> None:
    write_log(tmp_path / "log.csv", vent_rows(hold_s=600))
    with_volume = assess(tmp_path, "log.csv", "--section-volume-l", "14.5")
    without = assess(tmp_path, "log.csv")
    check_assessment(without, volume_known=False)
    for one, other in zip(without["holds"], with_volume["holds"], strict=True):
        assert one["charge"] == other["charge"] or one["charge"] == "undetermined"
        assert one["liquid_kg"] is None
        assert one["dry_ice_kg"] is None
        assert one["liquid_volume_fraction"] is not None
        assert other["liquid_kg"] is not None
    assert without["mass_vented_kg"] is None


def test_hold_0_is_there_exactly_when_the_valve_was_closed_before_the_first_vent(
    tmp_path: Path,
) -> None:
    rows = vent_rows()
    write_log(tmp_path / "closed_first.csv", rows)
    write_log(tmp_path / "open_first.csv", [row for row in rows if float(row[0]) >= 30])
    write_log(tmp_path / "never_open.csv", [row for row in rows if float(row[0]) < 30])
    write_log(tmp_path / "never_closed.csv", [row for row in rows if 30 <= float(row[0]) < 90])
    first, second, third, fourth = assess_all(
        tmp_path, "closed_first.csv", "open_first.csv", "never_open.csv", "never_closed.csv"
    )
    assert [hold["number"] for hold in first["holds"]] == [0, 1]
    assert [hold["number"] for hold in second["holds"]] == [1]
    assert [hold["number"] for hold in third["holds"]] == [0]
    assert fourth["holds"] == []
    hold = first["holds"][1]
    assert hold["start_s"] == pytest.approx(90, abs=1.01)
    assert hold["end_s"] == pytest.approx(390, abs=1.01)


def test_without_a_valve_column_the_same_holds_are_found(tmp_path: Path) -> None:
    rows = vent_rows(hold_s=400)
    write_log(tmp_path / "with.csv", rows)
    write_log(
        tmp_path / "without.csv", [row[:3] for row in rows], HEADER.removesuffix(",vent_valve")
    )
    known, found = assess_all(tmp_path, "with.csv", "without.csv")
    assert [h["number"] for h in found["holds"]] == [h["number"] for h in known["holds"]]
    for one, other in zip(found["holds"], known["holds"], strict=True):
        assert one["start_s"] == pytest.approx(other["start_s"], abs=20)
        assert one["end_s"] == pytest.approx(other["end_s"], abs=20)


def test_time_and_depth_below_the_triple_point_are_counted(tmp_path: Path) -> None:
    rows = [row for row in vent_rows(hold_s=200) if float(row[0]) < 100 or float(row[0]) > 149]
    low = [[f"{at}.0", "3.00", "-60.0", "closed"] for at in range(100, 150)]
    rows = sorted(rows + low, key=lambda row: float(row[0]))
    write_log(tmp_path / "low.csv", rows, altitude_m="0")
    write_log(tmp_path / "never.csv", vent_rows(), altitude_m="0")
    seen, never = assess_all(tmp_path, "low.csv", "never.csv")
    # 3.00 bar g is under the triple point, 4.166 bar g at sea level, for 50 s
    assert seen["minimum_pressure_pa_gauge"] == pytest.approx(3e5, abs=1)
    assert seen["seconds_below_triple_point"] == pytest.approx(50, abs=1.01)
    assert seen["seconds_below_triple_point_before_vapor_only"] == pytest.approx(50, abs=1.01)
    assert never["seconds_below_triple_point"] == 0
    assert never["minimum_pressure_pa_gauge"] == pytest.approx(5.6e5, abs=1e4)


def slower(path: Path, every_s: float) -> list[list[str]]:
    """Rows of a one-second log as a slower logger would have kept them."""
    rows = [row.split(",") for row in path.read_text().splitlines() if row[0].isdigit()]
    return [row for row in rows if float(row[0]) % every_s == 0]


def test_slow_loggers_and_nitrogen_are_assessed(tmp_path: Path) -> None:
    header = "elapsed_s,pressure_bar_g,line_temperature_degC,ambient_temperature_degC,vent_valve"
    names = []
    for sample in ("liquid-left-bare", "liquid-left-insulated", "no-power", "leak-by", "dry-ice"):
        for every_s in (10, 60):
            rows = slower(SAMPLE_LOGS / f"{sample}.csv", every_s)
            path = tmp_path / f"{sample}-{every_s}.csv"
            names.append(write_log(path, rows, header, section_volume_l="14.5").name)
    rows = vent_rows(hold_s=600)
    names.append(write_log(tmp_path / "n2.csv", rows, section_volume_l="14.5", gas="nitrogen").name)
    for seen in assess_all(tmp_path, *names):
        check_assessment(seen, volume_known=True)
        assert seen["rejected"] == []
        assert not any(event["kind"] == "time_broken" for event in seen["events"])
        # in each of them liquid or dry ice is left, or a valve passes
        assert seen["final"]["charge"] != "vapor_only", seen["file"]
        assert all(hold["charge"] != "vapor_only" for hold in seen["holds"]), seen["file"]
