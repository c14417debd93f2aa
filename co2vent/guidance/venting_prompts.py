"""Prompts while the vent is open: it stands still, is below the triple point, or goes down."""

from co2vent.co2 import TRIPLE_PRESSURE_PA
from co2vent.guidance.events import Severity
from co2vent.guidance.situation import ZERO_GAUGE_PA, Said, Situation
from co2vent.inference.outcome import Instruction
from co2vent.inference.wording import difference_text, fall_text
from co2vent.sentence import Sentence, joined

LOW_HOLD_GAUGE_PA = 1.0e5  # where the last hold looks for dry ice
LOW_HOLD_WIDTH_PA = 0.5e5


def vent_stands_still(s: Situation) -> Said:
    """Valve open and no fall: never a quiet hold."""
    if not s.vent_open or s.plateau is None:
        return None
    if s.plateau == "shelf":
        return (
            Instruction.CHECK_VENT_LINE,
            "Stop: dry ice forming",
            Sentence(
                "The pressure stands at the triple point ({now}) with the vent open: liquid is "
                "freezing. Close the vent; keep out of line with hose and cover; never strike a "
                "plug.",
                now=s.now,
            ),
            Severity.DANGER,
        )
    return (
        Instruction.CHECK_VENT_LINE,
        "Check the vent line",
        Sentence(
            "The vent is open and the pressure stands at {now}: a plug of dry ice, a shut valve, "
            "a gauge cut off, or liquid that boils as fast as it leaves. Close the vent; keep out "
            "of line with hose and cover; no flame, no blows.",
            now=s.now,
        ),
        Severity.DANGER,
    )


def venting_below_triple(s: Situation) -> Said:
    """Below the triple point before "vapour only": liquid becomes dry ice."""
    if not s.vent_open or s.latest is None or s.cleared:
        return None
    if s.latest.pressure_pa >= TRIPLE_PRESSURE_PA:
        return None
    if s.gauge_pa <= ZERO_GAUGE_PA:
        return (
            Instruction.HOLD_FOR_DRY_ICE,
            "Dry ice possible",
            Sentence(
                "At {now} without a verdict before: snow can lie under a gauge at zero. Leave the "
                "vented side open, let it warm, keep out of line; a gauge at zero is no proof.",
                now=s.now,
            ),
            Severity.DANGER,
        )
    return (
        Instruction.CLOSE_AND_HOLD,
        "Close now: below the triple point",
        Sentence(
            "{now} is below the triple point ({triple}) and liquid was not excluded: it turns to "
            "dry ice. Close the vent and hold.",
            now=s.now,
            triple=s.triple,
        ),
        Severity.DANGER,
    )


def venting_cleared(s: Situation) -> Said:
    """Vapour only stands: down to about 1 bar g, hold for dry ice, on to zero, bleeds."""
    if not s.vent_open or not s.cleared or s.latest is None:
        return None
    if s.gauge_pa < -ZERO_GAUGE_PA - s.setup.gauge_error_pa:
        return (
            Instruction.CHECK_GAUGE,
            "Check the gauge",
            Sentence(
                "A vent that is open to the air can't stand at {now}: the gauge, its plug or its "
                "datum is wrong. Read the mechanical gauge.",
                now=s.now,
            ),
            Severity.DANGER,
        )
    if s.gauge_pa <= ZERO_GAUGE_PA:
        reason: str = Sentence(
            "At {now} after vapour only. Open both bleeds and leave them open; CO2 meter at "
            "the low spots; keep out of line of the cover. Then the site's own procedure.",
            now=s.now,
        )
        severity = Severity.DO
        if not s.low_hold_done:
            not_held = Sentence(
                "No hold near 1 bar g was made: snow can lie under a gauge at zero."
            )
            reason, severity = joined(not_held, reason), Severity.CAUTION
        return (Instruction.OPEN_BLEEDS, "Open the bleeds at both ends", reason, severity)
    low = LOW_HOLD_GAUGE_PA + s.lead_pa
    if (
        not s.low_hold_done
        and s.gauge_pa <= low
        and s.gauge_pa > LOW_HOLD_GAUGE_PA - LOW_HOLD_WIDTH_PA
    ):
        return (
            Instruction.CLOSE_AND_HOLD,
            "Close: hold for dry ice",
            Sentence(
                "Near 1 bar g ({now}): close and watch for a climb to {triple}, the sign of dry "
                "ice.",
                now=s.now,
                triple=s.triple,
            ),
            Severity.DO,
        )
    return (
        Instruction.VENT_TO_ZERO,
        "Vapour only: vent to zero",
        Sentence("Now {now}. On to zero.", now=s.now)
        if s.low_hold_done
        else Sentence(
            "Now {now}. Stop near 1 bar g and hold for dry ice; a stand near {triple} means dry "
            "ice.",
            now=s.now,
            triple=s.triple,
        ),
        Severity.DO,
    )


def venting(s: Situation) -> Said:
    """Liquid not excluded: down to the stop pressure, early enough for a gloved hand."""
    if not s.vent_open or s.latest is None:
        return None
    pressure_pa = s.latest.pressure_pa
    if pressure_pa - s.lead_pa <= s.stop_pa:
        rate = ""
        if s.rate_pa_per_s is not None and s.rate_pa_per_s < -100.0:
            rate = Sentence(", falling {fall}", fall=fall_text(-s.rate_pa_per_s, s.setup))
        return (
            Instruction.CLOSE_AND_HOLD,
            "Close the vent and hold",
            Sentence(
                "{now}{rate}; stop pressure {stop}, triple point {triple}.",
                now=s.now,
                rate=rate,
                stop=s.at(s.stop_pa),
                triple=s.triple,
            ),
            Severity.CAUTION,
        )
    return (
        Instruction.VENT,
        "Vent",
        Sentence(
            "{now}: {above} above the stop pressure of {stop}. Vapour from the top, slowly.",
            now=s.now,
            above=difference_text(pressure_pa - s.stop_pa, s.setup),
            stop=s.at(s.stop_pa),
        ),
        Severity.DO,
    )
