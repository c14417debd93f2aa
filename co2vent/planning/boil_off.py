"""Getting the last liquid out: heat, time bare and insulated, the other ways and their hazards."""

from dataclasses import dataclass
from typing import Final

from co2vent.planning.boil_down import snow_share_of_drained_liquid
from co2vent.sentence import Sentence

# Heat transfer from still or lightly moving air to the outside of a pipe, upper ends of what
# handbooks give (bare 8 to 15, insulated 0.3 to 1 W/m2K; from memory): the times are "not before",
# once the metal has given its own heat: 25 kg of steel 40 K warmer hold 480 kJ, which boils 1.4 kg.
BARE_W_PER_M2K: Final = 15.0
INSULATED_W_PER_M2K: Final = 1.0
# A warm-air blower on the low points; half of 1 kW reaches the metal. Common practice, no source.
WARM_AIR_W: Final = 500.0


@dataclass(frozen=True, slots=True)
class WayOut:
    """One way to remove the liquid: the least time [s], where it can be said, and its hazards."""

    way: str
    not_before_s: float | None
    hazards: str


def not_before_s(energy_j: float, area_m2: float, drive_k: float, w_per_m2k: float) -> float | None:
    """Return the least time for ambient heat to boil the liquid [s]; None without a drive."""
    if energy_j == 0.0:
        return 0.0
    heat = w_per_m2k * area_m2 * drive_k
    return energy_j / heat if heat > 0.0 else None


def ways_out(
    *,
    energy_j: float,
    bare_s: float | None,
    insulated_s: float | None,
    liquid_temperature_k: float,
    ambient_pressure_pa: float,
) -> tuple[WayOut, ...]:
    """Return the ways to remove liquid that is left at the stop pressure; none if there is none."""
    if energy_j <= 0.0:
        return ()
    snow = 100.0 * snow_share_of_drained_liquid(liquid_temperature_k, ambient_pressure_pa)
    return (
        WayOut(
            Sentence(
                "hold and vent in short bursts while ambient heat boils it, bare pipe, its metal "
                "as cold as the liquid (warmer metal boils some of it sooner)"
            ),
            bare_s,
            Sentence(
                "the metal stays at the boiling temperature: never repressurise it, never strike it"
            ),
        ),
        WayOut(
            Sentence("the same, insulated pipe"),
            insulated_s,
            Sentence("a quiet gauge only means that little heat comes in"),
        ),
        WayOut(
            Sentence(
                "warm air on the low points, {heat} into the metal", heat=f"{WARM_AIR_W:.0f} W"
            ),
            energy_j / WARM_AIR_W,
            Sentence(
                "vent open or watched: a shut section climbs; no flame; not hotter than the hand "
                "bears"
            ),
        ),
        WayOut(
            Sentence("drain the liquid from a low point, outdoors only"),
            None,
            Sentence(
                "about {snow} of it turns to snow at the outlet and can plug it; keep the section "
                "above the stop pressure, hose restrained and bonded, nobody downhill",
                snow=f"{snow:.0f} %",
            ),
        ),
    )
