"""Numbers in sentences."""

from co2vent.inference.wording import difference_text, slope_text
from co2vent.readings.reading import Setup


def test_a_number_that_rounds_to_nothing_has_no_sign():
    assert slope_text(-0.4, Setup()) == "0 mbar/min"
    assert slope_text(-0.2, Setup(pressure_unit="psig")) == "0.00 psi/min"
    assert difference_text(-100.0, Setup()) == "0.00 bar"
