"""Small made-up vents for tests of the core: shapes only, no physics claimed."""

from collections.abc import Callable, Iterator
from math import exp

from co2vent.readings.reading import Reading

Rise = Callable[[float], float]


def vent(
    rises: list[Rise],
    *,
    start_pa: float = 19.7e5,
    stop_pa: float = 6.25e5,
    hold_s: float = 400.0,
    fall_pa_per_s: float = 2_500.0,
    interval_s: float = 0.5,
    closed_first_s: float = 90.0,
    valve: bool = True,
    line_k: float | None = None,
    step_pa: float = 1_000.0,
) -> Iterator[Reading]:
    """Yield a closed start, then vent-down and hold in turn; each hold rises by its function."""
    at_s, pressure_pa = 0.0, start_pa

    def reading(pa: float, is_open: bool) -> Reading:
        shown = round(pa / step_pa) * step_pa
        # metal cools in a vent; a clamp that never moves is none
        metal_k = None if line_k is None else line_k - 0.5 * is_open
        return Reading(at_s, shown, metal_k, vent_open=is_open if valve else None)

    while at_s < closed_first_s:
        yield reading(pressure_pa, False)
        at_s += interval_s
    for rise in rises:
        while pressure_pa > stop_pa:
            pressure_pa -= fall_pa_per_s * interval_s
            yield reading(pressure_pa, True)
            at_s += interval_s
        began_s, began_pa = at_s, pressure_pa
        while at_s - began_s < hold_s:
            pressure_pa = began_pa + rise(at_s - began_s)
            yield reading(pressure_pa, False)
            at_s += interval_s


def warming(size_pa: float, tau_s: float = 30.0, slope_pa_per_s: float = 0.2) -> Rise:
    """Gas warming on metal that itself warms a little."""
    return lambda s: size_pa * (1.0 - exp(-s / tau_s)) + slope_pa_per_s * s


def boiling(slope_pa_per_s: float, size_pa: float = 5e4) -> Rise:
    """Gas warming and a lasting rise."""
    return lambda s: size_pa * (1.0 - exp(-s / 30.0)) + slope_pa_per_s * s
