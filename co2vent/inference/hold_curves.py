"""Curves over a hold, to see the verdict by."""

from co2vent.inference.envelope import Envelope
from co2vent.inference.hold_facts import Hold
from co2vent.inference.outcome import Charge, Curve


def curves_of(hold: Hold, limits: Envelope) -> tuple[Curve, ...]:
    """Curves to see the verdict by: the gas warming alone, and the least that liquid would add.

    The second one is drawn only where something gives the hold power; else there is no such least.
    """
    trend, blocks = hold.trend, hold.blocks
    if trend is None:
        return ()
    t, since = blocks.t, blocks.t - blocks.t[0]
    tau = min(trend.tau_s, 60.0)
    fade = (1.0 + t / (3.0 * tau)) ** -3.0
    gas = fade[0] - fade  # since the first block: the curve starts where the trace is
    level = max(min(trend.slope, limits.dry_most_slope), 0.0)
    left_pa = float(blocks.p[-1] - blocks.p[0] - level * since[-1])
    size = max(min(trend.warming_pa, left_pa / max(float(gas[-1]), 1e-3)), 0.0)
    dry = float(blocks.p[0]) + size * gas + level * since
    at = tuple((hold.trace.start_s + t).tolist())
    curves = [Curve(Charge.VAPOR_ONLY, at, tuple(dry.tolist()))]
    if limits.power.source:
        more = max(limits.power.least_wet_slope + limits.power.warming_slope - level, 0.0)
        curves.append(Curve(Charge.TWO_PHASE, at, tuple((dry + more * since).tolist())))
    return tuple(curves)
