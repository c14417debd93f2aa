"""Small pieces of markup that browsers and a text document both set well. All texts are escaped."""

from collections.abc import Iterable, Sequence
from html import escape

from co2vent.report.values import DASH


def text(value: object) -> str:
    """Return `value` escaped on one line, without control characters; a dash if it is empty."""
    plain = "".join(c if c.isprintable() else " " for c in str(value)).strip()
    return escape(plain, quote=True) if plain else DASH


def heading(title: str, new_page: bool = False) -> str:
    """Return a heading; `new_page` starts a page with it."""
    style = ' style="page-break-before: always"' if new_page else ""
    return f"<h2{style}>{text(title)}</h2>"


def paragraph(words: str, kind: str = "") -> str:
    """Return a paragraph of the class `kind`."""
    return f'<p class="{kind}">{text(words)}</p>' if kind else f"<p>{text(words)}</p>"


def bullets(items: Iterable[str]) -> str:
    """Return a list."""
    return "<ul>" + "".join(f"<li>{text(item)}</li>" for item in items) + "</ul>"


def table(
    rows: Sequence[Sequence[object]], head: Sequence[str] = (), widths: Sequence[int] = ()
) -> str:
    """Return a table. A row of one cell spans all columns. `widths` are in percent."""
    columns = max((len(row) for row in rows), default=len(head))
    columns = max(columns, len(head))
    parts = ['<table class="grid" border="1" cellspacing="0" cellpadding="2" width="100%">']
    if head:
        cells = "".join(
            f"<th{_width(widths, index)}>{text(title)}</th>" for index, title in enumerate(head)
        )
        parts.append(f"<tr>{cells}</tr>")
    for row in rows:
        if len(row) == 1 and columns > 1:
            parts.append(f'<tr><td colspan="{columns}" class="why">{text(row[0])}</td></tr>')
            continue
        cells = "".join(
            f"<td{_width(widths, index) if not head else ''}>{text(cell)}</td>"
            for index, cell in enumerate(row)
        )
        parts.append(f"<tr>{cells}</tr>")
    return "".join(parts) + "</table>"


def pairs(entries: Sequence[tuple[str, object]]) -> str:
    """Return names and values, two pairs a line."""
    half = (len(entries) + 1) // 2
    parts = ['<table class="grid" border="1" cellspacing="0" cellpadding="2" width="100%">']
    for index in range(half):
        cells = ""
        for name, value in entries[index::half]:
            cells += f'<td width="17%" class="name"><b>{text(name)}</b></td>'
            cells += f'<td width="33%">{text(value)}</td>'
        if len(entries[index::half]) == 1:
            cells += '<td width="17%" class="name"></td><td width="33%"></td>'
        parts.append(f"<tr>{cells}</tr>")
    return "".join(parts) + "</table>"


def _width(widths: Sequence[int], index: int) -> str:
    return f' width="{widths[index]}%"' if index < len(widths) else ""
