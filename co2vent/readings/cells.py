"""One cell of a log: strict numbers, words that mean "no value", valve words, times.

A cell either is a number in the plain decimal grammar below or it is not a number at all. Words
such as `nan`, `inf`, `1_000` or `0x1F`, which `float` or other readers take, are refused.
"""

import re
from datetime import UTC, date, datetime
from typing import Final

# At most 17 digits before and after the mark: more is not a measurement and hides overflow.
_NUMBER: Final = re.compile(
    r"[+-]?(?:[0-9]{1,17}(?:[.,][0-9]{0,17})?|[.,][0-9]{1,17})(?:[eE][+-]?[0-9]{1,3})?"
)

# What instruments print when they cannot show a value. SCPI-1999 vol. 1, 7.2.1 gives 9.91E37 for
# "not a number" and 9.9E37 for infinity; the words are common practice, no source.
_OVER_RANGE_WORDS: Final = frozenset(
    (
        "ol", "o.l", "+ol", "-ol", "0l", "o/l", "over", "overrange", "over-range", "over_range",
        "overload", "under", "underrange", "err", "error", "fault", "fail", "nan", "inf", "+inf",
        "-inf", "infinity", "ovr", "ovf", "hi", "lo", "++++", "^^^^", "####",
    )
)  # fmt: skip
_NO_VALUE_WORDS: Final = frozenset(("-", "--", "n/a", "na", "#n/a", "none", "null"))
_SCPI_NOT_A_NUMBER_FROM: Final = 9.8e37

_VALVE_WORDS: Final = {
    "open": True, "opened": True, "closed": False, "close": False, "shut": False,
}  # fmt: skip


def is_number(cell: str) -> bool:
    """Tell whether `cell` is a plain decimal number with a dot or a comma as its mark."""
    return _NUMBER.fullmatch(cell) is not None


def decimal_mark(cell: str) -> str | None:
    """Return the decimal mark in a number cell, `None` where it has none."""
    return "," if "," in cell else "." if "." in cell else None


def to_number(cell: str) -> float | None:
    """Return the value of a plain decimal number, `None` for anything else.

    >>> to_number("19,02"), to_number("1_000"), to_number("nan")
    (19.02, None, None)
    """
    if _NUMBER.fullmatch(cell) is None:
        return None
    value = float(cell.replace(",", "."))
    return value if abs(value) < _SCPI_NOT_A_NUMBER_FROM else None


def is_over_range(cell: str) -> bool:
    """Tell whether the instrument says that it cannot show the value."""
    word = cell.strip().lower()
    if word in _OVER_RANGE_WORDS or (len(word) >= 3 and not word.strip("-")):
        return True
    return _NUMBER.fullmatch(word) is not None and to_number(word) is None


def is_blank(cell: str) -> bool:
    """Tell whether the cell holds no value without saying why."""
    return not cell or cell.lower() in _NO_VALUE_WORDS


def valve_open(cell: str) -> bool | None:
    """Return whether the word says open; `None` where it says neither."""
    return _VALVE_WORDS.get(cell.lower())


_DATE: Final = re.compile(
    r"(?:([0-9]{4})-([0-9]{2})-([0-9]{2})|([0-9]{4})/([0-9]{1,2})/([0-9]{1,2})|([0-9]{1,2})\.([0-9]{1,2})\.([0-9]{4}))"
)
_CLOCK: Final = re.compile(
    r"([0-9]{1,4}):([0-5][0-9])(?::([0-5][0-9]|60)(?:[.,]([0-9]{1,9}))?)?"
    r"\s*(Z|z|[+-][0-9]{2}(?::?[0-9]{2})?)?"
)
_BASIC: Final = re.compile(r"([0-9]{4})([0-9]{2})([0-9]{2})T([0-9]{2})([0-9]{2})([0-9]{2})(.*)")


def to_date_days(cell: str) -> int | None:
    """Return the day number of `2026-01-31`, `2026/01/31` or `31.01.2026`, `None` otherwise.

    A date with slashes and the year last is refused: day and month could be either.
    """
    match = _DATE.fullmatch(cell)
    if match is None:
        return None
    y, m, d, y2, m2, d2, d3, m3, y3 = match.groups()
    try:
        return date(int(y or y2 or y3), int(m or m2 or m3), int(d or d2 or d3)).toordinal()
    except ValueError:
        return None


def to_clock_ns(cell: str) -> tuple[int, bool] | None:
    """Return (nanoseconds since midnight less the zone offset, zone given) of `10:31:05.2+01:00`.

    Hours may pass 24: an elapsed time in hours, minutes and seconds.
    """
    match = _CLOCK.fullmatch(cell)
    if match is None:
        return None
    hours, minutes, seconds, fraction, zone = match.groups()
    offset_s = 0
    if zone is not None and zone not in "Zz":
        digits = zone[1:].replace(":", "").ljust(4, "0")
        offset_s = (int(digits[:2]) * 3600 + int(digits[2:]) * 60) * (-1 if zone[0] == "-" else 1)
    whole_s = int(hours) * 3600 + int(minutes) * 60 + int(seconds or 0)
    return (whole_s - offset_s) * 10**9 + int((fraction or "0").ljust(9, "0")), zone is not None


def is_short_clock(cell: str) -> bool:
    """Tell whether a time has two fields, which may be hours or minutes first."""
    match = _CLOCK.fullmatch(cell)
    return match is not None and match.group(3) is None


def to_time_ns(cell: str) -> tuple[int, bool] | None:
    """Return (nanoseconds on a fixed scale, zone given) of an ISO 8601 time, `None` otherwise.

    Also `31.01.2026 10:31:05`, and a clock time alone (then the scale starts at midnight).
    Only differences between two such values mean anything.
    """
    basic = _BASIC.fullmatch(cell)
    if basic is not None:
        y, mo, d, h, mi, s, rest = basic.groups()
        cell = f"{y}-{mo}-{d}T{h}:{mi}:{s}{rest}"
    day, separator, clock = cell.partition("T")
    if not separator:
        day, separator, clock = cell.partition(" ")
    if not separator or ":" in day:  # no date: a clock time, perhaps with a blank before its zone
        # 05:30 alone may be minutes and seconds: read as hours it makes every rise 60 times slower
        return None if is_short_clock(cell) else to_clock_ns(cell)
    days = to_date_days(day)
    time_of_day = to_clock_ns(clock.strip())
    if days is None or time_of_day is None or int(clock.strip().partition(":")[0]) > 24:
        return None
    return days * 86_400 * 10**9 + time_of_day[0], time_of_day[1]


def utc_text(moment: datetime) -> str:
    """Return `moment` as ISO 8601 in UTC with milliseconds, as the log format wants it."""
    return moment.astimezone(UTC).isoformat(timespec="milliseconds").replace("+00:00", "Z")
