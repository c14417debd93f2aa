"""The two pressures everything turns on: the local triple point and the stop pressure."""

from typing import Final

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.readings.reading import Setup
from co2vent.units import PRESSURE_UNITS

# Distance kept above the triple point while liquid may be left, whatever the gauge: 15 psi
# (1.03 bar). Common practice, no source: hold at about 5.2 bar g or 75 psig.
SMALLEST_STOP_MARGIN_PA: Final = 1.03e5
# On top of what the gauge may be wrong by: sticking pointer, hose and valve pressure drop.
# Common practice, no source.
READING_ALLOWANCE_PA: Final = 0.3e5
# A gauge of unknown class that was not read open to air may be off at zero by about 1.5 psi
# (knocked or never reset). From memory. A given class covers the zero (EN 837-1: the class bounds
# the error over the whole scale); reading the zero removes this part.
UNREAD_ZERO_ALLOWANCE_PA: Final = 0.1e5
# A gauge set whose class is not given: twice the common 0.25 % (judgement; it covers the zero).
ASSUMED_CLASS: Final = 0.005
# Less air than at sea level at 2300 m (ISO 2533: 76.6 kPa); few plants stand higher.
ASSUMED_AIR_PA: Final = 0.25e5


def triple_point_pa_gauge(setup: Setup) -> float:
    """Return the triple point on a gauge at this site [Pa gauge]: 4.17 bar g at sea level."""
    return TRIPLE_PRESSURE_PA - setup.ambient_pressure_pa


def zero_uncertainty_pa(setup: Setup) -> float:
    """Return what the gauge's zero may still be off by [Pa]; 0 once it was read open to air."""
    read = setup.zero_was_read or setup.zero_offset_pa != 0.0
    covered = setup.gauge_accuracy_fraction is not None
    return 0.0 if read or covered else UNREAD_ZERO_ALLOWANCE_PA


def shown_too_high_pa(setup: Setup) -> float:
    """Return how much less than stated the absolute pressure may be, besides the gauge's class.

    A zero that was not read, and air that was taken for sea level's: at 2300 m it is 0.25 bar less,
    and what is melting dry ice there looks like 5.4 bar.
    """
    unit = PRESSURE_UNITS[setup.pressure_unit]
    assumed = setup.ambient_pressure_assumed and unit.gauge
    return zero_uncertainty_pa(setup) + (ASSUMED_AIR_PA if assumed else 0.0)


def stop_margin_pa(setup: Setup) -> float:
    """Return how far above the triple point a vent with liquid is stopped [Pa]."""
    wrong_by = setup.gauge_error_pa + zero_uncertainty_pa(setup)
    if setup.gauge_accuracy_fraction is None and setup.gauge_span_pa is not None:
        wrong_by = max(wrong_by, ASSUMED_CLASS * setup.gauge_span_pa)
    return max(SMALLEST_STOP_MARGIN_PA, wrong_by + READING_ALLOWANCE_PA)


def stop_pressure_pa(setup: Setup) -> float:
    """Return the pressure at which a vent with liquid is stopped [Pa absolute]."""
    return TRIPLE_PRESSURE_PA + stop_margin_pa(setup)


def stop_pressure_pa_gauge(setup: Setup) -> float:
    """Return the stop pressure on a gauge at this site [Pa gauge]: 5.20 bar g at sea level."""
    return stop_pressure_pa(setup) - setup.ambient_pressure_pa
