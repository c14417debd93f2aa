"""The one compiled function that is called from outside, kept on disk between processes."""

from importlib.resources import files
from typing import Final
from zlib import crc32

from co2vent.section_model.fluid import Array, FluidTables
from co2vent.section_model.jit import Rec, jit_cached
from co2vent.section_model.stepper import run_rows

# all that the compiled code is made from
SOURCES: Final = (
    "boundary", "entry", "exchange", "flows", "fluid", "jit", "packing", "property_lookup",
    "readout", "settling", "sorption", "stepper",
)  # fmt: skip


def sources_stamp() -> int:
    """Return a number that changes with the sources of the compiled code.

    The cache on disk knows only the file of the function it keeps; the stamp, being part of that
    function, makes it know the others too.
    """
    folder = files("co2vent.section_model")
    stamp = 0
    for name in SOURCES:
        stamp = crc32((folder / f"{name}.py").read_bytes(), stamp)
    return stamp


def make_run(stamp: int):  # type: ignore[no-untyped-def]
    """Return `run_rows` compiled, for sources of this stamp."""

    @jit_cached
    def run(
        fl: FluidTables, se: Rec, po: Rec, st: Rec, ps: Rec, ga: Rec, gs: Rec, valve: float,
        period: float, noise: Array, below_pa: float, above_pa: float, out: Array,
    ) -> int:  # fmt: skip
        if stamp < 0:
            return 0
        return run_rows(
            fl, se[0], po, st[0], ps, ga[0], gs[0], valve, period, noise, below_pa, above_pa, out
        )

    return run


run = make_run(sources_stamp())
