"""Records of a vacuum test that look tight and prove nothing."""

from random import Random

import pytest

from co2vent.inference.vacuum_rise import VacuumVerdict, vacuum_rise_test
from co2vent.readings.reading import Reading
from co2vent.units import MICRON_PA


def vacuum(micron_at, seconds: float = 900.0) -> list[Reading]:
    noise = Random(3)
    return [
        Reading(
            float(at_s), 101_325.0, 285.0,
            vacuum_pa=max(micron_at(at_s) + noise.gauss(0.0, 1.0), 0.0) * MICRON_PA,
        )
        for at_s in range(0, int(seconds), 2)
    ]  # fmt: skip


@pytest.mark.parametrize(
    "course",
    [
        lambda _: 400.0,  # the pump holds it
        lambda s: max(400.0, 5000.0 - 15.0 * s),  # pumped down, and the pump goes on
        lambda s: 400.0 + s if s < 450 else max(300.0, 850.0 - 5.0 * (s - 450)),  # on again
    ],
    ids=["held", "pumped", "on_again"],
)
def test_a_pump_that_is_still_on_is_not_tight(course) -> None:
    """A volume that is shut off gains something always (judgement)."""
    found = vacuum_rise_test(vacuum(course))
    assert found.verdict is VacuumVerdict.NOT_KNOWN_YET
    assert "pump" in found.reason


def test_a_small_rise_that_levels_is_tight_as_before() -> None:
    found = vacuum_rise_test(vacuum(lambda s: 300.0 + 60.0 * (1.0 - 2.0 ** (-s / 60.0))))
    assert found.verdict is VacuumVerdict.TIGHT_AND_DRY
