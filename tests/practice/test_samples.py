"""The sample logs are what their generator makes, and show what their table says."""

from importlib.resources import files
from pathlib import Path

import pytest

from co2vent.practice.log_lines import TRUTH_HEADER
from co2vent.practice.make_samples import Sample, main, samples
from co2vent.readings.log_file import read_log
from co2vent.readings.reading import Reading
from co2vent.section_model.layout import COLUMN

FOLDER = Path(str(files("co2vent"))).parent / "sample_logs"


@pytest.fixture(scope="module")
def made() -> dict[str, Sample]:
    return {sample.name: sample for sample in samples()}


def test_the_shipped_logs_are_those_of_the_generator(tmp_path: Path) -> None:
    main(tmp_path)
    for path in sorted(tmp_path.iterdir()):
        shipped = (FOLDER / path.name).read_text(encoding="utf-8").splitlines()
        fresh = path.read_text(encoding="utf-8").splitlines()
        # the last digits may differ between processors; every row has its place
        assert len(shipped) == len(fresh), path.name
        assert shipped[:9] == fresh[:9], path.name
        assert path.stat().st_size < 400_000


def test_each_log_is_read_with_few_rejections_and_says_that_it_is_simulated(
    made: dict[str, Sample],
) -> None:
    assert len(made) >= 8
    for name, sample in made.items():
        log = read_log(FOLDER / f"{name}.csv")
        readings = [item for item in log.items() if isinstance(item, Reading)]
        assert log.setup.simulated, name
        over = int((sample.rows[:, COLUMN["gauge_pa"]] != sample.rows[:, COLUMN["gauge_pa"]]).sum())
        assert len(readings) == len(sample.rows) - over, name


def test_each_truth_has_the_columns_and_the_rows_of_its_log(made: dict[str, Sample]) -> None:
    for name, sample in made.items():
        lines = (FOLDER / f"{name}.truth.csv").read_text(encoding="utf-8").splitlines()
        assert lines[0] == TRUTH_HEADER
        assert len(lines) == len(sample.rows) + 1


def test_what_is_inside_at_the_end_is_what_the_sample_is_for(made: dict[str, Sample]) -> None:
    def end(name: str, column: str) -> float:
        return float(made[name].rows[-1, COLUMN[column]])

    assert end("vapour-only", "liquid_kg") < 1e-4
    assert end("liquid-left-bare", "liquid_kg") > 0.5
    assert end("liquid-left-insulated", "liquid_kg") > 5.0
    assert end("leak-by", "liquid_kg") < 1e-4
    assert end("leak-by", "leak_by_kg_per_s") == pytest.approx(8e-5)
    assert end("dry-ice", "solid_kg") > 0.2
    assert end("dry-ice", "pressure_pa") == pytest.approx(517_950.0, rel=0.005)
    full = made["liquid-full"].rows
    start = full[full[:, 0] < 240.0]
    assert start[-1, COLUMN["pressure_pa"]] - start[0, COLUMN["pressure_pa"]] > 10e5
    text = (FOLDER / "foreign-logger.csv").read_bytes()
    assert text.startswith(b"\xef\xbb\xbf")
    assert b"OL" in text
    assert text.count(b"P [bar g]") == 2
