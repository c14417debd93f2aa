"""Records of vents in which liquid or dry ice was left to the last row, by another simulation.

A real-gas section with four pieces of metal and a pool of its own, written apart from this project
and its models (CoolProp, conservation of mass to 1e-14 kg). In each a low pocket boils beside the
clamp's metal, in balance with a vent that passes a few hundredths of a gram a second; 32 to 290 g
were left. Each was called "vapour only" for a time before the rules of `losses.py` and
`rose_beyond_clamp`.
"""

from pathlib import Path

import pytest

from co2vent.guidance.session import begin
from co2vent.readings.log_file import read_log

RECORDS = sorted((Path(__file__).parent / "wet_records").glob("*.csv"))


@pytest.mark.parametrize("path", RECORDS, ids=lambda path: path.stem)
def test_vapour_only_never_stands_while_liquid_is_left(path):
    log = read_log(path)
    session = begin(log.setup)
    for item in log.items():
        session.take(item)
        assert not session.standing.cleared, f"at {item.at_s} s"


def test_the_records_are_there():
    assert len(RECORDS) == 4
