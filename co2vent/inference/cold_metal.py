"""How much of the section's metal may be colder than its rated minimum.

Metal is no colder than the coldest fluid it met: saturation, or snow, at the lowest pressure. How
much of it is as cold as that shows only where clamps sit; between two of them the metal is taken
to be spread evenly, which is an estimate and said as one.
"""

from co2vent.co2 import equilibrium_temperature_k
from co2vent.inference.criteria import CRITERIA
from co2vent.inference.outcome import Bounds


def cold_metal_share(
    minimum_k: float | None,
    lowest_pa: float | None,
    pressure_pa: float | None,
    line_k: float | None,
    upper_k: float | None,
) -> Bounds | None:
    """Return the share (0 to 1) of the metal below `minimum_k`; `None` where that is not told.

    Args:
        minimum_k: lowest rated temperature of the metal [K].
        lowest_pa: lowest pressure of the record so far [Pa].
        pressure_pa: pressure now [Pa].
        line_k: clamp at the lowest point now [K].
        upper_k: second clamp, on dry metal [K].
    """
    if minimum_k is None or lowest_pa is None or pressure_pa is None:
        return None
    if equilibrium_temperature_k(_within(lowest_pa)) >= minimum_k:
        return Bounds(0.0, 0.0, 0.0)
    if line_k is None or upper_k is None:
        # one clamp tells of its own place only
        return Bounds(None, 0.0, 1.0)
    error_k = CRITERIA.clamp_error_k
    cold_k, warm_k = min(line_k, upper_k), max(line_k, upper_k)
    coldest_k = min(equilibrium_temperature_k(_within(pressure_pa)), cold_k - error_k)
    return Bounds(
        _share(cold_k, warm_k, minimum_k),
        _share(cold_k + error_k, warm_k + error_k, minimum_k),
        _share(coldest_k, warm_k - error_k, minimum_k),
    )


def _within(pressure_pa: float) -> float:
    """A pressure for which the lines are known: 0.2 bar abs is snow at -100 degC."""
    return min(max(pressure_pa, 2.0e4), 7.3e6)


def _share(cold_k: float, warm_k: float, minimum_k: float) -> float:
    """The share below `minimum_k` of metal spread evenly between two temperatures."""
    if warm_k - cold_k < 0.1:
        return 1.0 if cold_k < minimum_k else 0.0
    return min(max((minimum_k - cold_k) / (warm_k - cold_k), 0.0), 1.0)
