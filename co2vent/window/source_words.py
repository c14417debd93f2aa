"""What the try of a source says: the verdict in a sentence, the figures, and how a row is read."""

import re
from dataclasses import dataclass
from typing import Final

from co2vent.guidance.events import Severity
from co2vent.readings.cells import to_number
from co2vent.readings.columns import HOW_TO_NAME, Role
from co2vent.readings.reading import Reading, Setup
from co2vent.units import PRESSURE_UNITS
from co2vent.window import text
from co2vent.window.text import UnitChoice
from co2vent.window.words import translate
from co2vent.wire.probe import LineKind, ProbedCell, ProbedLine
from co2vent.wire.source_check import Finding, Heard

LONGEST_SHOWN = 160  # characters of a raw line
_NETWORK = ("socket://", "tcp://", "modbus-tcp://", "rfc2217://")

# a Modbus device that is there and answers, but not with a value
_REFUSAL: Final = re.compile(r"Modbus exception \d+ \([^)]*\)")

_NO_FAULT = (LineKind.HEADER, LineKind.ABOUT, LineKind.BACK)


@dataclass(frozen=True, slots=True)
class CellWords:
    """A row of the table: the column, its text as it came, and what that is read as."""

    name: str
    raw: str
    read_as: str
    understood: bool


def printable(raw: str) -> str:
    """Return a raw line for the screen: short, control characters as escapes."""
    short = raw if len(raw) <= LONGEST_SHOWN else raw[: LONGEST_SHOWN - 1] + "…"
    return "".join(c if c.isprintable() else ascii(c)[1:-1] for c in short)


def severity_of(finding: Finding) -> Severity:
    """Return how loud the verdict is: something to do wherever the source is not as it must be."""
    if finding is Finding.ARRIVING:
        return Severity.DO
    if finding in (Finding.OPENING, Finding.WAITING, Finding.FILE_BEING_READ):
        return Severity.CALM
    return Severity.CAUTION


def verdict(heard: Heard, now_s: float, source: str, units: UnitChoice) -> str:
    """Return what was found, in a sentence that says what to do."""
    finding = heard.finding(now_s)
    if finding is Finding.SILENT:
        return silent_words(source, from_file=heard.from_file)
    refusal = _REFUSAL.search(heard.lost or heard.reason)
    if refusal is not None and finding in (Finding.NO_READING, Finding.LOST):
        return translate(
            "SourceTest",
            "The device answers but refuses ({exception}): check the unit number and the register "
            "map",
        ).format(exception=refusal[0])
    where = translate("SourceTest", "name the columns in the field above")
    reason = printable((heard.refused or heard.reason).replace(HOW_TO_NAME, where))
    return {
        Finding.OPENING: translate("SourceTest", "Opening the source…"),
        Finding.WAITING: translate("SourceTest", "The source is open; waiting for the first line…"),
        Finding.NO_LINE_END: translate(
            "SourceTest",
            "Data comes but no line ends: check baud rate and that the instrument ends its lines",
        ),
        Finding.NO_ROWS: translate(
            "SourceTest", "The names of the columns came, but no reading under them yet"
        ),
        Finding.UNREADABLE: translate(
            "SourceTest", "Data comes but it is no text: check baud rate, parity and cable"
        ),
        Finding.NO_COLUMNS: translate(
            "SourceTest",
            "Lines come but no pressure column: type what each value is into the field above, "
            "such as {example}",
        ),
        Finding.REFUSED: translate(
            "SourceTest", "Lines come but a job would refuse them: {reason}"
        ),
        Finding.NO_READING: translate("SourceTest", "Lines come but none is a reading: {reason}"),
        Finding.ARRIVING: translate("SourceTest", "Readings arrive, {rate}: pressure {pressure}"),
        Finding.PARTLY: translate(
            "SourceTest",
            "Readings arrive, {rate}: pressure {pressure}, but {rejected} of {lines} lines are "
            "none: {reason}",
        ),
        Finding.TOO_SLOW: translate(
            "SourceTest",
            "Readings arrive too slowly, one in {interval} s; a job needs one at least every 2 s",
        ),
        Finding.STOPPED: translate(
            "SourceTest",
            "Readings have stopped: check cable and instrument. The last was {pressure}, {age} s "
            "ago",
        ),
        Finding.FILE_BEING_READ: translate("SourceTest", "Reading what the file holds so far…"),
        Finding.FILE_STANDS: translate(
            "SourceTest",
            "The file can be read ({readings} readings) but nothing is added to it: is the other "
            "program recording?",
        ),
        Finding.LOST: translate("SourceTest", "The source has gone: {lost}"),
        Finding.ENDED: translate("SourceTest", "The stream has ended after {readings} readings"),
    }[finding].format(
        example="pressure_bar_g,line_temperature_degC",
        reason=reason,
        rate=rate_words(heard.interval_s),
        pressure=pressure_words(heard.newest, units),
        rejected=heard.rejected,
        lines=heard.lines,
        interval=text.number(heard.interval_s or 0.0, 1),
        age=text.number(heard.age_s(now_s) or 0.0, 1),
        readings=heard.readings,
        lost=printable(heard.lost),
    )  # fmt: skip


def silent_words(source: str, *, from_file: bool) -> str:
    """Return what to look at where a source opens and gives nothing at all."""
    if from_file:
        return translate("SourceTest", "The file is empty: is the other program recording?")
    if source.lower().startswith(_NETWORK):
        return translate(
            "SourceTest",
            "The address answers but nothing comes: check that the instrument is on and sends",
        )
    return translate(
        "SourceTest",
        "The port opens but nothing comes: check baud rate, cable, and that the instrument is on "
        "and sends",
    )


def rate_words(interval_s: float | None) -> str:
    """Return how often readings come."""
    if interval_s is None:
        return translate("SourceTest", "the first one")
    if interval_s <= 0.0:
        return translate("SourceTest", "many a second")
    a_second = 1.0 / interval_s
    if a_second >= 0.95:
        shown = text.number(a_second, 0 if a_second >= 9.5 else 1)
        return translate("SourceTest", "{rate} a second").format(rate=shown)
    return translate("SourceTest", "one in {interval} s").format(
        interval=text.number(interval_s, 1)
    )


def figures(heard: Heard, now_s: float, *, ended: bool = False) -> str:
    """Return rate, age and counts in one line; of a test that has ended only the counts."""
    if heard.opened_s is None:
        return ""
    counts = translate(
        "SourceTest", "{lines} lines, {readings} readings, {rejected} not understood"
    )
    parts = [counts.format(lines=heard.lines, readings=heard.readings, rejected=heard.rejected)]
    if heard.passed_over:
        passed = translate("SourceTest", "{rows} rows too fast to be taken")
        parts.append(passed.format(rows=heard.passed_over))
    if not ended:
        age_s = heard.age_s(now_s)
        age = text.age(age_s)
        if age_s is None and heard.readings:
            age = translate("SourceTest", "age not known: the readings lay in the file before")
        parts.insert(0, age)
        if heard.interval_s is not None:
            parts.insert(0, rate_words(heard.interval_s))
    if heard.newest is not None and heard.newest.setup is not None and heard.newest.setup.simulated:
        parts.append(translate("Banner", "SIMULATED: invented readings"))
    return " · ".join(parts)


def pressure_words(line: ProbedLine | None, units: UnitChoice) -> str:
    """Return the pressure in the gauge's own unit and, where it is another, in the screen's."""
    if line is None or line.reading is None or line.setup is None:
        return text.DASH
    return _pressure(line.reading.pressure_pa, line.setup, units)


def cell_words(line: ProbedLine, units: UnitChoice) -> list[CellWords]:
    """Return how each cell of a row is read: what the job uses first, then what it leaves."""
    used = sorted((c for c in line.cells if c.role is not None), key=_importance)
    rows = [_cell(cell, line, units) for cell in used]
    left = [cell for cell in line.cells if cell.role is None]
    if left:
        names = ", ".join(printable(cell.name) for cell in left)
        values = ", ".join(printable(cell.raw) for cell in left)
        rows.append(CellWords(names, values, translate("SourceTest", "not used"), True))
    return rows


def line_words(line: ProbedLine) -> str:
    """Return a line as it came, marked, and why it is no reading where it is none."""
    raw = printable(line.raw)
    if line.reply:
        reply = translate("SourceTest", "reply {reply}").format(reply=printable(line.reply))
        raw = f"{reply} → {raw}" if line.kind is LineKind.READING else reply
    if line.kind is LineKind.READING:
        return f"✓ {raw}"
    if line.kind is LineKind.NO_HEADER:  # the verdict says why
        return f"✗ {raw}"
    words = {
        LineKind.HEADER: translate("SourceTest", "names of the columns"),
        LineKind.ABOUT: translate("SourceTest", "about the section"),
    }.get(line.kind, printable(line.says))
    mark = "·" if line.kind in _NO_FAULT else "✗"
    return f"{mark} {raw}  – {words}" if raw else f"{mark} {words}"


def tail_words(tail: bytes) -> str:
    """Return the end of a stream that holds no line, as it came."""
    shown = repr(tail)[2:-1]
    return translate("SourceTest", "as it came: {bytes}").format(bytes=shown)


def role_words(role: Role) -> str:
    """Return what a column holds."""
    return {
        Role.ELAPSED: translate("SourceTest", "time"),
        Role.TIME: translate("SourceTest", "time"),
        Role.DATE: translate("SourceTest", "date"),
        Role.PRESSURE: translate("SourceTest", "pressure"),
        Role.PRESSURE_2: translate("SourceTest", "second gauge"),
        Role.LINE_TEMPERATURE: translate("SourceTest", "line temperature"),
        Role.UPPER_TEMPERATURE: translate("SourceTest", "upper temperature"),
        Role.AMBIENT_TEMPERATURE: translate("SourceTest", "air temperature"),
        Role.VENT_VALVE: translate("SourceTest", "vent valve"),
        Role.VACUUM: translate("SourceTest", "vacuum"),
        Role.ROOM_CO2: translate("SourceTest", "CO2 in the room"),
        Role.NOTE: translate("SourceTest", "note"),
        Role.ROW_CHECK: translate("SourceTest", "check sum"),
    }[role]


def _importance(cell: ProbedCell) -> tuple[bool, bool]:
    time = cell.role in (Role.ELAPSED, Role.TIME, Role.DATE, Role.ROW_CHECK)
    return cell.role is not Role.PRESSURE, time


def _cell(cell: ProbedCell, line: ProbedLine, units: UnitChoice) -> CellWords:
    assert cell.role is not None
    name, raw = printable(cell.name), printable(cell.raw)
    if line.reading is None or line.setup is None:
        return CellWords(name, raw, "", True)
    if not raw:
        return CellWords(name, raw, translate("SourceTest", "empty"), True)
    if not cell.understood:
        return CellWords(name, raw, _why_not(cell), False)
    value = _value(cell, line.reading, line.setup, units)
    return CellWords(name, raw, f"{role_words(cell.role)} {value}", True)


def _why_not(cell: ProbedCell) -> str:
    """Return why a cell is no value of its column."""
    if cell.role is Role.VENT_VALVE:
        return translate("SourceTest", "neither open nor closed")
    if to_number(cell.raw) is None:
        return translate("SourceTest", "no number")
    return translate("SourceTest", "out of range")


def _value(cell: ProbedCell, reading: Reading, setup: Setup, units: UnitChoice) -> str:
    match cell.role:
        case Role.PRESSURE:
            return _pressure(reading.pressure_pa, setup, units)
        case Role.PRESSURE_2:
            return _pressure(reading.pressure_2_pa, setup, units)
        case Role.LINE_TEMPERATURE:
            return text.temperature(reading.line_temperature_k, setup.temperature_unit)
        case Role.UPPER_TEMPERATURE:
            return text.temperature(reading.upper_temperature_k, setup.temperature_unit)
        case Role.AMBIENT_TEMPERATURE:
            return text.temperature(reading.ambient_temperature_k, setup.temperature_unit)
        case Role.VENT_VALVE:
            if reading.vent_open is None:
                return text.DASH
            return (
                translate("SourceTest", "open")
                if reading.vent_open
                else translate("SourceTest", "closed")
            )
        case Role.VACUUM:
            return f"{text.number((reading.vacuum_pa or 0.0) / 100.0, 3)} mbar abs"
        case Role.ROOM_CO2:
            return f"{text.number(reading.room_co2_ppm or 0.0, 0)} ppm"
        case Role.ELAPSED:
            return f"{text.number(reading.at_s, 1)} s"
        case Role.ROW_CHECK:
            return translate("SourceTest", "right")
        case _:
            return printable(cell.raw)


def _pressure(pressure_pa: float | None, setup: Setup, units: UnitChoice) -> str:
    own = text.pressure(pressure_pa, setup.ambient_pressure_pa, setup.pressure_unit)
    if units.pressure == setup.pressure_unit or units.pressure not in PRESSURE_UNITS:
        return own
    return f"{own} = {text.pressure(pressure_pa, setup.ambient_pressure_pa, units.pressure)}"
