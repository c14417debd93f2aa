"""The report as PDF: a text document set by Qt, the traces as vectors, a head and foot per page."""

import os
import sys
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import Final

from PySide6.QtCore import (
    QBuffer,
    QIODevice,
    QMarginsF,
    QObject,
    QPointF,
    QRect,
    QRectF,
    QSizeF,
    Qt,
)
from PySide6.QtGui import (
    QColor,
    QFont,
    QGuiApplication,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
    QPen,
    QPolygonF,
    QPyTextObject,
    QTextCharFormat,
    QTextCursor,
    QTextDocument,
    QTextFormat,
)

from co2vent.errors import StoreError
from co2vent.report.details import details
from co2vent.report.drawing import Drawing, Label, shade
from co2vent.report.facts import LogFacts, ReportFacts
from co2vent.report.html import SIMULATED
from co2vent.report.summary import NEWEST_HOLDS, TraceMarkup, summary
from co2vent.report.trace import draw_trace
from co2vent.store.whole_file import atomic_write

PAPERS: Final = {
    "a4": QPageSize(QPageSize.PageSizeId.A4),
    "letter": QPageSize(QPageSize.PageSizeId.Letter),
}
DOTS_PER_INCH: Final = 600
MARGIN_MM: Final = 12.0
HEAD_MM, FOOT_MM = 8.0, 6.0
TRACE_MM: Final = 66.0
SMALLEST_BYTES: Final = 2_000  # a PDF with one page of text is several times that
_TRACE_OBJECT: Final = QTextFormat.ObjectTypes.UserObject.value + 1
_INDEX: Final = QTextFormat.Property.UserProperty.value + 1
_MARK: Final = "\ue000trace{}\ue001"  # private characters: no name or note can be mistaken for it

_STYLE: Final = """
body { font-size: 8.5pt; } h1 { font-size: 12pt; } h2 { font-size: 10.5pt; }
h3 { font-size: 9pt; } p { margin: 1px; } .small { font-size: 7pt; }
table.grid { border-collapse: collapse; border-style: solid; border-color: #555555; }
table.grid td, table.grid th { font-size: 7.6pt; text-align: left; }
table.verdict { border-collapse: collapse; border-style: solid; border-color: #000000; }
td.why { background-color: #f0f0f0; } td.name { background-color: #f0f0f0; }
"""


class _Traces(QPyTextObject):
    """Sets drawings into the text as vectors. Sizes are in dots of the page."""

    def __init__(self, drawings: list[Drawing], dots_per_mm: float, parent: QObject) -> None:
        super().__init__(parent)
        self._drawings = drawings
        self._scale = dots_per_mm

    def intrinsicSize(
        self, _document: QTextDocument, _position: int, text_format: QTextFormat
    ) -> QSizeF:
        drawing = self._drawings[int(text_format.property(_INDEX))]
        return QSizeF(drawing.width * self._scale, drawing.height * self._scale)

    def drawObject(
        self,
        painter: QPainter,
        rectangle: QRectF | QRect,
        _document: QTextDocument,
        _position: int,
        text_format: QTextFormat,
    ) -> None:
        drawing = self._drawings[int(text_format.property(_INDEX))]
        painter.save()
        painter.translate(QPointF(rectangle.topLeft()))
        paint(drawing, painter, self._scale)
        painter.restore()


def paint(drawing: Drawing, painter: QPainter, dots_per_mm: float) -> None:
    """Paint the drawing at the painter's origin."""
    scale = dots_per_mm
    for box in drawing.boxes:
        area = QRectF(box.x * scale, box.y * scale, box.width * scale, box.height * scale)
        painter.fillRect(area, QColor(shade(box.grey)))
    for stroke in drawing.strokes:
        pen = QPen(QColor(shade(stroke.grey)), stroke.width * scale)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        if stroke.dash:  # in units of the pen's width
            pen.setDashPattern([length / stroke.width for length in stroke.dash])
        painter.setPen(pen)
        painter.drawPolyline(QPolygonF([QPointF(x * scale, y * scale) for x, y in stroke.points]))
    painter.setPen(QColor("black"))
    for label in drawing.labels:
        _paint_label(label, painter, scale)


def _paint_label(label: Label, painter: QPainter, scale: float) -> None:
    font = QFont(painter.font())
    font.setPixelSize(max(1, round(label.size * scale)))
    font.setBold(label.bold)
    painter.setFont(font)
    width = painter.fontMetrics().horizontalAdvance(label.text)
    shift = {"start": 0.0, "middle": 0.5, "end": 1.0}[label.anchor] * width
    painter.drawText(QPointF(label.x * scale - shift, label.y * scale), label.text)


def report_pdf(facts: ReportFacts, paper: str = "a4") -> bytes:
    """Return the report as PDF.

    Raises:
        StoreError: what came out is no whole PDF.
    """
    application = _application()
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(DOTS_PER_INCH)
    writer.setPageSize(PAPERS[paper])
    writer.setPageMargins(
        QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM), QPageLayout.Unit.Millimeter
    )
    writer.setTitle(f"{facts.section or 'CO2 section'}: vent record")
    writer.setCreator(f"co2vent {facts.version}")
    _set_pages(facts, writer)
    buffer.close()
    data = bytes(buffer.data().data())
    if len(data) < SMALLEST_BYTES or not data.startswith(b"%PDF-") or b"%%EOF" not in data[-64:]:
        raise StoreError("the PDF did not come out whole; write .html instead")
    del application
    return data


def _set_pages(facts: ReportFacts, writer: QPdfWriter) -> None:
    dots_per_mm = DOTS_PER_INCH / 25.4
    width, height = float(writer.width()), float(writer.height())
    page = QSizeF(width, height - (HEAD_MM + FOOT_MM) * dots_per_mm)
    newest = _holds_on_first_page(facts, writer, page)
    document = _document(
        lambda trace: summary(facts, trace, newest) + details(facts, trace, newest), writer, page
    )
    _keep_headings(document, page.height())
    painter = QPainter(writer)
    try:
        pages = document.pageCount()
        for number in range(pages):
            if number:
                writer.newPage()
            _head_and_foot(facts, painter, number + 1, pages, width, height, dots_per_mm)
            painter.save()
            painter.translate(0.0, HEAD_MM * dots_per_mm - number * page.height())
            document.drawContents(painter, QRectF(QPointF(0, number * page.height()), page))
            painter.restore()
    finally:
        painter.end()


def _holds_on_first_page(facts: ReportFacts, writer: QPdfWriter, page: QSizeF) -> int:
    """Return how many of the newest holds leave room for the signatures on the first page."""
    for newest in range(NEWEST_HOLDS + 1, 1, -1):
        document = _document(partial(summary, facts, newest=newest), writer, page)
        if document.pageCount() == 1:
            return newest
    return 1


def _document(
    markup: Callable[[TraceMarkup], str], writer: QPdfWriter, page: QSizeF
) -> QTextDocument:
    """Return the markup set for pages of this size, with its traces as objects."""
    dots_per_mm = DOTS_PER_INCH / 25.4
    drawings: list[Drawing] = []

    def trace(log: LogFacts) -> str:
        # A hair narrower than the text: an object that just fits may wrap to a new line.
        drawings.append(draw_trace(log, width=page.width() / dots_per_mm - 1.0, height=TRACE_MM))
        return f"<p>{_MARK.format(len(drawings) - 1)}</p>"

    document = QTextDocument()
    document.documentLayout().setPaintDevice(writer)
    document.setDocumentMargin(0)
    font = QFont("sans-serif")
    font.setPointSizeF(8.5)
    document.setDefaultFont(font)
    document.setDefaultStyleSheet(_STYLE)
    document.setHtml(f"<body>{markup(trace)}</body>")
    handler = _Traces(drawings, dots_per_mm, document)
    document.documentLayout().registerHandler(_TRACE_OBJECT, handler)
    for index in range(len(drawings)):
        _insert_trace(document.find(_MARK.format(index)), index)
    document.setPageSize(page)
    return document


def _keep_headings(document: QTextDocument, page_height: float) -> None:
    """Move headings that would stand alone at the foot of a page to the next one, from the top."""
    layout = document.documentLayout()
    block = document.begin()
    while block.isValid():
        following = block.next()
        if block.blockFormat().headingLevel() > 0 and following.isValid():
            top = layout.blockBoundingRect(block).top()
            # a table's head and a row of what follows, or a whole trace, belong on its page
            rectangle = layout.blockBoundingRect(following)
            drawn = "\ufffc" in following.text()
            room = rectangle.bottom() if drawn else rectangle.top() + 0.05 * page_height
            if int(top // page_height) != int(room // page_height):
                cursor = QTextCursor(block)
                moved = cursor.blockFormat()
                moved.setPageBreakPolicy(QTextFormat.PageBreakFlag.PageBreak_AlwaysBefore)
                cursor.setBlockFormat(moved)
                document.markContentsDirty(0, document.characterCount())  # else half of it moves
        block = following


def _insert_trace(cursor: QTextCursor, index: int) -> None:
    text_format = QTextCharFormat()
    text_format.setObjectType(_TRACE_OBJECT)
    text_format.setProperty(_INDEX, index)
    cursor.insertText("\ufffc", text_format)


def _head_and_foot(
    facts: ReportFacts,
    painter: QPainter,
    page: int,
    pages: int,
    width: float,
    height: float,
    dots_per_mm: float,
) -> None:
    if facts.simulated:
        area = QRectF(0, 0, width, (HEAD_MM - 2.0) * dots_per_mm)
        painter.setPen(QPen(QColor("black"), 0.5 * dots_per_mm))
        painter.drawRect(area)
        _set_font(painter, 3.6 * dots_per_mm, bold=True)
        painter.drawText(area, Qt.AlignmentFlag.AlignCenter, SIMULATED)
    _set_font(painter, 2.5 * dots_per_mm, bold=False)
    foot = QRectF(0, height - FOOT_MM * dots_per_mm, width, FOOT_MM * dots_per_mm)
    left = f"{facts.section or 'CO2 section'}, {facts.made_at}"
    if facts.record is not None:
        left += f", digest {facts.record.chain.digest[:16]}"
    bottom = Qt.AlignmentFlag.AlignBottom
    painter.setPen(QColor("black"))
    painter.drawText(foot, bottom | Qt.AlignmentFlag.AlignLeft, left[:140])
    painter.drawText(foot, bottom | Qt.AlignmentFlag.AlignRight, f"page {page} of {pages}")


def _set_font(painter: QPainter, pixels: float, bold: bool) -> None:
    font = QFont("sans-serif")
    font.setPixelSize(round(pixels))
    font.setBold(bold)
    painter.setFont(font)


def _application() -> QGuiApplication:
    """Return the running Qt application, or one without a display: setting text needs fonts."""
    running = QGuiApplication.instance()
    if isinstance(running, QGuiApplication):
        return running
    no_display = not (os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"))
    if sys.platform.startswith("linux") and no_display:
        os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    return QGuiApplication([])


def write_pdf(facts: ReportFacts, path: Path, paper: str = "a4") -> None:
    """Write the report to `path`, whole or not at all.

    Raises:
        StoreError: it could not be written; an older file there is untouched.
    """
    atomic_write(path, report_pdf(facts, paper))
