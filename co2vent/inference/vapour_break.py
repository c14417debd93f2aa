"""The vapour break: no liquid into a section before vapour has lifted it above the triple point."""

from dataclasses import dataclass

from co2vent.units import ZERO_CELSIUS_K


@dataclass(frozen=True, slots=True)
class VapourBreak:
    """Whether liquid may follow the vapour that breaks a vacuum, and why not."""

    liquid_may_follow: bool
    reason: str


def vapour_break(
    pressure_pa: float | None,
    triple_point_pa: float,
    coldest_metal_k: float | None,
    metal_minimum_k: float | None,
    *,
    gauge_error_pa: float = 0.0,
    margin_pa: float = 4.0e5,
) -> VapourBreak:
    """Judge the vapour break. Unknown is no: a vacuum that takes liquid fills with dry ice.

    `margin_pa` above the triple point: two trade guidance texts break the vacuum with vapour to
    10 bar g, 5.8 bar above it; 4 bar is this program's choice.
    """
    if pressure_pa is None:
        return VapourBreak(False, "No pressure reading: vapour only.")
    above_pa = pressure_pa - gauge_error_pa - triple_point_pa
    if not above_pa >= margin_pa:
        return VapourBreak(
            False,
            f"{max(above_pa, 0.0) / 1e5:.1f} bar above the triple point, {margin_pa / 1e5:.1f} bar "
            "wanted: vapour only, liquid would freeze.",
        )
    if coldest_metal_k is None or metal_minimum_k is None:
        return VapourBreak(
            False, "Metal temperature or its minimum not known: no pressure on cold steel."
        )
    if not coldest_metal_k >= metal_minimum_k:
        return VapourBreak(
            False,
            f"Metal at {coldest_metal_k - ZERO_CELSIUS_K:.0f} °C, minimum "
            f"{metal_minimum_k - ZERO_CELSIUS_K:.0f} °C: warm it first.",
        )
    return VapourBreak(True, f"{above_pa / 1e5:.1f} bar above the triple point, metal warm enough.")
