"""What a source shows while it is tried: the verdict, how the newest row is read, raw lines."""

from PySide6.QtGui import QColor, QFontDatabase, QPainter, QPaintEvent, QTextCursor
from PySide6.QtWidgets import (
    QBoxLayout,
    QGridLayout,
    QLabel,
    QPlainTextEdit,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from co2vent.guidance.events import Severity
from co2vent.window.fit_label import FitLabel
from co2vent.window.sizes import Sizes
from co2vent.window.source_words import (
    CellWords,
    cell_words,
    figures,
    line_words,
    severity_of,
    tail_words,
    verdict,
)
from co2vent.window.text import UnitChoice
from co2vent.window.theme import OUTDOOR, Palette
from co2vent.window.words import translate
from co2vent.wire.source_check import Finding, Heard

_STYLES = ((False, False), (False, False), (True, False))  # bold, wrap
_NO_CELL = CellWords("", "", "", True)
MOST_CELLS = 7  # rows of the table that fit on the smallest screen


class VerdictBand(QWidget):
    """The verdict in large words on the ground of its severity."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._palette: Palette = OUTDOOR
        self.severity = Severity.CALM
        self.label = FitLabel(self, bold=True)
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 4, 10, 4)
        column.addWidget(self.label)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def say(self, words: str, severity: Severity) -> None:
        """Show the verdict; a reader of the screen hears it too."""
        self.label.say(words)
        if words != self.accessibleName():
            self.setAccessibleName(words)
        if severity is not self.severity:
            self.severity = severity
            self._paint_again()

    def set_look(self, palette: Palette, sizes: Sizes) -> None:
        """Take theme and sizes."""
        self._palette = palette
        self.label.set_max_px(round(sizes.text_px * 1.7))
        self.setFixedHeight(round(sizes.text_px * (6.6 if sizes.portrait else 4.8)))
        self._paint_again()

    def _paint_again(self) -> None:
        self.label.set_ink(self._palette.band(self.severity).ink)
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the ground, with a frame: the calm one is the page's own colour."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self._palette.band(self.severity).ground))
        painter.setPen(QColor(self._palette.ink))
        painter.drawRect(self.rect().adjusted(0, 0, -1, -1))
        painter.end()


class CellTable(QWidget):
    """The newest row: each column, its text as it came, and what that is read as."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(10)
        self._grid.setVerticalSpacing(2)
        self._rows = [
            tuple(FitLabel(self, bold=bold, wrap=wrap) for bold, wrap in _STYLES)
            for _ in range(MOST_CELLS)
        ]
        for place, row in enumerate(self._rows):
            for column, label in enumerate(row):
                self._grid.addWidget(label, place, column)
        for column, stretch in enumerate((5, 3, 8)):
            self._grid.setColumnStretch(column, stretch)
        self.setAccessibleName(translate("SourceTest", "how the newest row is read"))

    def show_cells(self, cells: list[CellWords]) -> None:
        """Show the rows; the least important are left out where there are too many."""
        for labels, cell in zip(self._rows, [*cells, *[_NO_CELL] * MOST_CELLS], strict=False):
            words = (cell.name, cell.raw, ("✗ " if not cell.understood else "") + cell.read_as)
            for label, shown in zip(labels, words, strict=True):
                label.say(shown)
            for label in labels:
                label.setVisible(cell is not _NO_CELL)
        said = "; ".join(f"{cell.name} {cell.raw}: {cell.read_as}" for cell in cells)
        if said != self.accessibleDescription():
            self.setAccessibleDescription(said)

    def set_look(self, palette: Palette, sizes: Sizes) -> None:
        """Take theme and sizes."""
        for place, (name, raw, read_as) in enumerate(self._rows):
            name.set_ink(palette.faint)
            raw.set_ink(palette.ink)
            read_as.set_ink(palette.ink)
            name.set_max_px(sizes.small_px)
            raw.set_max_px(sizes.text_px)
            read_as.set_max_px(round(sizes.text_px * (1.5 if place == 0 else 1.15)))
            self._grid.setRowStretch(place, 3 if place == 0 else 2)


class SourcePanel(QWidget):
    """Shows what was heard. Silence and age grow by themselves: call `show_heard` again."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.verdict = VerdictBand(self)
        self.figures = FitLabel(self)
        self.cells_title = QLabel(translate("SourceTest", "The newest row is read as"), self)
        self.cells = CellTable(self)
        self.lines_title = QLabel(translate("SourceTest", "Lines as they came"), self)
        self.lines = QPlainTextEdit(self)
        self.lines.setReadOnly(True)
        self.lines.setTabChangesFocus(True)
        self.lines.setAccessibleName(translate("SourceTest", "Lines as they came"))
        self.lines_title.setBuddy(self.lines)
        self._follows, self._writes, self._range = True, False, 0
        self.lines.verticalScrollBar().valueChanged.connect(self._scrolled)
        left, right = QVBoxLayout(), QVBoxLayout()
        left.addWidget(self.cells_title)
        left.addWidget(self.cells, 1)
        right.addWidget(self.lines_title)
        right.addWidget(self.lines, 1)
        self._halves = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._halves.setSpacing(14)
        self._halves.addLayout(left, 3)
        self._halves.addLayout(right, 2)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.verdict)
        column.addWidget(self.figures)
        column.addLayout(self._halves, 1)

    def show_heard(
        self, heard: Heard, now_s: float, source: str, units: UnitChoice, said: str = ""
    ) -> None:
        """Show it as it stands at `now_s`; `said` stands in place of the verdict."""
        finding = heard.finding(now_s)
        if said:
            self.verdict.say(said, Severity.CAUTION)
        else:
            self.verdict.say(verdict(heard, now_s, source, units), severity_of(finding))
        self.figures.say(figures(heard, now_s, ended=bool(said)))
        self.cells.show_cells(cell_words(heard.newest, units) if heard.newest is not None else [])
        for part in (self.cells_title, self.cells):
            part.setVisible(heard.newest is not None)
        lines = [line_words(line) for line in heard.recent]
        if heard.tail and finding in (Finding.UNREADABLE, Finding.NO_LINE_END):
            lines.append(tail_words(heard.tail))
        self._show_lines("\n".join(lines))

    def _show_lines(self, words: str) -> None:
        """Follow the newest line, unless the person has scrolled back to read an older one."""
        if not self._follows or words == self.lines.toPlainText():
            return
        self._writes = True
        self.lines.setPlainText(words)
        self.lines.moveCursor(QTextCursor.MoveOperation.End)
        bar = self.lines.verticalScrollBar()
        bar.setValue(bar.maximum())
        self._range = bar.maximum()
        self._writes = False

    def _scrolled(self, value: int) -> None:
        most = self.lines.verticalScrollBar().maximum()
        if not self._writes and most == self._range:
            self._follows = value >= most
        self._range = most  # a pane that became narrower moves too, and nobody has scrolled

    def forget(self) -> None:
        """Show nothing: what was shown is of another source."""
        self.verdict.say("", Severity.CALM)
        self.figures.say("")
        self.cells.show_cells([])
        self._follows = True
        self._show_lines("")

    def set_look(self, palette: Palette, sizes: Sizes) -> None:
        """Take theme and sizes."""
        self.verdict.set_look(palette, sizes)
        self.figures.set_ink(palette.ink)
        self.figures.set_max_px(sizes.text_px)
        self.figures.setFixedHeight(round(sizes.text_px * (2.8 if sizes.portrait else 1.5)))
        self.cells.set_look(palette, sizes)
        for title in (self.cells_title, self.lines_title):
            font = title.font()
            font.setPixelSize(sizes.small_px)
            title.setFont(font)
            title.setStyleSheet(f"color:{palette.faint}")
        mono = QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont)
        mono.setPixelSize(sizes.small_px)
        self.lines.setFont(mono)
        self._halves.setDirection(
            QBoxLayout.Direction.TopToBottom if sizes.portrait else QBoxLayout.Direction.LeftToRight
        )
