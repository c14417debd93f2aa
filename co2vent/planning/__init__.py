"""Before the vent: volume, charge, stop pressure, gauge fit, time, room, and the warnings."""

from co2vent.planning.exposure import LIMITS, Country, ExposureLimit
from co2vent.planning.gauge_fit import GaugeFit
from co2vent.planning.plan import plan_vent
from co2vent.planning.shapes import LimitCheck, PlanInput, PlanResult

__all__ = [
    "LIMITS",
    "Country",
    "ExposureLimit",
    "GaugeFit",
    "LimitCheck",
    "PlanInput",
    "PlanResult",
    "plan_vent",
]
