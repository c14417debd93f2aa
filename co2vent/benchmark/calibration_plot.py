"""Stated against found coverage as a picture: one line a group, with its 95 % interval."""

from collections.abc import Sequence
from html import escape
from typing import Final

from co2vent.benchmark.figures import Calibration, upper_limit

_LEFT: Final = 270
_WIDTH: Final = 420
_ROW: Final = 24
_LOW: Final = 0.5  # left end of the scale: a coverage below it is drawn at the end


def calibration_svg(rows: Sequence[Calibration]) -> str:
    """Return an SVG picture: dots are found coverages, bars their intervals, a tick the stated."""
    height = _ROW * (len(rows) + 3)
    parts = [
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{_LEFT + _WIDTH + 120}" '
        f'height="{height}" font-family="sans-serif" font-size="13">',
        '<rect width="100%" height="100%" fill="white"/>',
        f'<text x="8" y="{_ROW - 6}">Coverage of the liquid bounds: found (dot, 95 % interval), '
        "stated (tick)</text>",
    ]
    for i, row in enumerate(rows):
        if not row.found.of:
            continue
        y = _ROW * (i + 1.5)
        count, of = row.found.count, row.found.of
        # Two-sided 95 %: one-sided 97.5 % either way (Clopper and Pearson).
        high, low = upper_limit(count, of, 0.975), 1.0 - upper_limit(of - count, of, 0.975)
        parts += [
            f'<text x="8" y="{y + 4}">{escape(row.group)}</text>',
            f'<line x1="{_x(low)}" x2="{_x(high)}" y1="{y}" y2="{y}" stroke="#446" '
            'stroke-width="4"/>',
            f'<circle cx="{_x(count / of)}" cy="{y}" r="5" fill="#113"/>',
            f'<line x1="{_x(row.stated)}" x2="{_x(row.stated)}" y1="{y - 10}" y2="{y + 10}" '
            'stroke="#b30" stroke-width="2"/>',
            f'<text x="{_LEFT + _WIDTH + 12}" y="{y + 4}">{count} of {of}</text>',
        ]
    base = _ROW * (len(rows) + 1.5)
    for tenths in range(5, 11):
        x = _x(tenths / 10)
        parts.append(
            f'<line x1="{x}" x2="{x}" y1="{_ROW}" y2="{base}" stroke="#ccc"/>'
            f'<text x="{x - 14}" y="{base + 16}">{10 * tenths} %</text>'
        )
    return "\n".join([*parts, "</svg>", ""])


def _x(share: float) -> float:
    return round(_LEFT + _WIDTH * (max(share, _LOW) - _LOW) / (1.0 - _LOW), 1)
