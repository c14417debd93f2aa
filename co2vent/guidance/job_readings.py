"""From the session's view to what a job's gates can read."""

from co2vent.co2.lines import equilibrium_temperature_k
from co2vent.errors import OutOfRangeError
from co2vent.guidance.job import Observed
from co2vent.guidance.session import View
from co2vent.inference.criteria import CRITERIA
from co2vent.inference.lines import snow_k
from co2vent.inference.outcome import Charge, HoldAssessment, Instruction

LEAST_PA = -1.0e4  # gauge; what shows less than the air's pressure is in error (judgement)
SNOW_MARGIN_K = 10.0  # a clamp on insulated pipe beside snow is some kelvin warmer (judgement)


def observe(view: View, at_s: float) -> Observed:
    """Return the quantities that gates can read from `view` [SI], stamped with job time `at_s`.

    What isn't measured is absent, never zero.
    """
    latest, setup = view.latest, view.setup
    if latest is None:
        return Observed(at_s, stale=True, simulated=setup.simulated)
    clamps = [
        clamp
        for clamp in (latest.line_temperature_k, latest.upper_temperature_k)
        if clamp is not None
    ]
    line_above_k = metal_above_k = None
    if latest.line_temperature_k is not None:
        try:
            saturation_k = equilibrium_temperature_k(latest.pressure_pa)
        except OutOfRangeError:
            saturation_k = None  # no equilibrium at this pressure: nothing to compare with
        if saturation_k is not None:
            line_above_k = latest.line_temperature_k - saturation_k
    if clamps and setup.metal_minimum_temperature_k is not None:
        metal_above_k = min(clamps) - setup.metal_minimum_temperature_k
    hold = view.running_hold
    shown = _vapor_only_in_a_row(view)
    measured = {
        "pressure": latest.pressure_pa - setup.ambient_pressure_pa,
        "pressure_shut": _pressure_shut(view, clamps),
        "pressure_above_triple_point": view.margin_pa,
        "pressure_above_stop": latest.pressure_pa - view.stop_pressure_pa,
        "pressure_rise_rate": view.rate_pa_per_s,
        "line_temperature": latest.line_temperature_k,
        "upper_temperature": latest.upper_temperature_k,
        "ambient_temperature": latest.ambient_temperature_k,
        "metal_above_minimum": metal_above_k,
        "line_above_saturation": line_above_k,
        "room_co2": latest.room_co2_ppm,
        # Zero is also what the setup says when nobody checked it, so only a real offset counts.
        "zero_offset": abs(setup.zero_offset_pa) or None,
        "vacuum": latest.vacuum_pa,
        "running_hold": None if hold is None else hold.end_s - hold.start_s,
        "vapor_only_holds": float(len(shown)),
        "dry_ice_cleared": float(_dry_ice_cleared(view)),
    }
    values = {name: value for name, value in measured.items() if value is not None}
    ends_s = tuple(at_s - (latest.at_s - hold.end_s) for hold in shown)
    return Observed(
        at_s, stale=view.stale, values=values, simulated=setup.simulated, hold_ends_s=ends_s
    )


def _pressure_shut(view: View, clamps: list[float]) -> float | None:
    """Gauge pressure [Pa] that can show a rise; `None` if vented, over cold metal, or in error.

    Zero with the vent open shows no rise, and snow lies at zero: metal as cold as it speaks for it.
    """
    latest = view.latest
    if latest is None or latest.vent_open:
        return None
    if clamps and min(clamps) < snow_k(latest.pressure_pa) + SNOW_MARGIN_K:
        return None
    gauge_pa = latest.pressure_pa - view.setup.ambient_pressure_pa
    return gauge_pa if gauge_pa >= LEAST_PA else None


def _vapor_only_in_a_row(view: View) -> list[HoldAssessment]:
    """Return the latest holds that say vapour only, the newest first.

    A hold that just began says nothing yet; one that is old, or asks for a look at a valve or the
    gauge, speaks against those before it. None counts once the verdict was taken back.
    """
    found: list[HoldAssessment] = []
    if view.vapor_only_since_s is None:
        return found
    for index, hold in enumerate(reversed(view.holds)):
        if hold.charge is Charge.VAPOR_ONLY:
            found.append(hold)
        elif not (index == 0 and _says_nothing_yet(hold)):
            break
    return found


def _says_nothing_yet(hold: HoldAssessment) -> bool:
    return (
        not hold.closed
        and hold.charge is Charge.UNDETERMINED
        and hold.instruction in (Instruction.KEEP_HOLDING, Instruction.HOLD_FOR_DRY_ICE)
        and hold.end_s - hold.start_s < CRITERIA.ice_hold_s
    )


def _dry_ice_cleared(view: View) -> bool:
    """Say whether the latest hold lay below the triple point and bounds the dry ice."""
    if not view.holds:
        return False
    hold = view.holds[-1]
    return (
        hold.charge is Charge.VAPOR_ONLY
        and hold.start_pressure_pa <= view.triple_point_pa
        and view.vapor_only_since_s is not None
    )
